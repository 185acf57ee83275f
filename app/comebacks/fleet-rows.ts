// What is on record of all delivered builds of a family, column by column, as the questions about the fleet need it.
import type { Distance } from '../jobs/distance.contract.ts';
import type { Cause, Certainty, Outcome } from './causes.ts';
import type { ShopWords } from './say-amount.ts';
import type { Telling } from './what-a-check-tells.ts';

/** A later day on which the unit of a build was here again. */
export type LaterVisit = {
  readonly day: string;
  readonly distance: Distance | null;
  /** null: an ordinary job, held against no build or against another one. */
  readonly comeback: {
    readonly outcome: Outcome;
    readonly causes: ReadonlyArray<{
      readonly cause: Cause;
      readonly packName: string | null;
      readonly certainty: Certainty;
    }>;
  } | null;
};

export type FleetBuild = {
  readonly jobId: number;
  readonly revisionNumber: number;
  readonly builderId: number | null;
  readonly batchIds: readonly number[];
  readonly deliveredOn: string;
  readonly distanceAtDelivery: Distance | null;
  readonly inServiceOn: string | null;
  /** Of its warranty; null: no term of months. */
  readonly months: number | null;
  /** By day. */
  readonly laterVisits: readonly LaterVisit[];
};

/** One number of each build, in the order of the builds; null where it was never recorded. */
export type NumberColumn = {
  readonly kind: 'number';
  readonly name: string;
  readonly packName: string | null;
  /** The unit of the check; "" for a count. */
  readonly unit: string;
  readonly tells: Telling | 'reused plates';
  readonly values: ReadonlyArray<number | null>;
};

export const groupings = ['method', 'plates', 'builder', 'use', 'installer', 'batch', 'choice'] as const;

/** What each build belongs to, by one way of grouping; null where that was never recorded. */
export type GroupColumn = {
  readonly kind: 'group';
  readonly name: string;
  readonly packName: string | null;
  readonly grouping: (typeof groupings)[number];
  readonly levels: ReadonlyArray<readonly string[] | null>;
};

export type FactorColumn = NumberColumn | GroupColumn;

export type FleetRows = {
  readonly today: string;
  readonly builds: readonly FleetBuild[];
  readonly columns: readonly FactorColumn[];
  readonly words: ShopWords;
};
