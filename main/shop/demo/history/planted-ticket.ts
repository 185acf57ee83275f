// A ticket as it was written long ago, in plain data: what a hand typed, when, and what is true behind it.
import type { Cause, Covering, Outcome } from '../../../../app/comebacks/causes.ts';
import type { Distance } from '../../../../app/jobs/distance.contract.ts';
import type { Condition, PackPlace } from '../../../../app/jobs/findings.contract.ts';
import type { Answer } from '../../../../app/jobs/lists.contract.ts';
import type { Phase, Setup } from '../../../../app/readings/readings.contract.ts';
import type { PieceKind, ReadingMethod } from '../../../../app/specs/spec-sheet.ts';
import type { Use } from '../../../../app/units/units.contract.ts';

/** Hands are counted from 0, in the order the shop's people are given. */
type Stamp = { readonly hand: number; readonly at: string };

export type PlantedReading = {
  readonly spot: number;
  readonly typed: string;
  /** A misread line, put right by this one: which of the take, and why. */
  readonly puts?: { readonly right: number; readonly reason: string };
};

export type PlantedTake = Stamp & {
  readonly check: string;
  readonly phase: Phase;
  readonly method: ReadingMethod;
  readonly setup: Setup | null;
  /** Which mock-up of its pack it read; null where the pack was not written down plate by plate. */
  readonly mockUp: number | null;
  readonly readings: readonly PlantedReading[];
};

export type PlantedPlate = {
  readonly key: string;
  readonly kind: PieceKind;
  readonly outline: string;
  readonly tag: string;
  /** In thou as measured; null where nobody measures it and its nominal height is taken. */
  readonly typed: string | null;
  readonly height_nm: number;
};

/** What lies in the pack, slot by slot from the piston. */
export type PlantedMockUp = Stamp & {
  readonly pack: string;
  readonly number: number;
  readonly plates: readonly PlantedPlate[];
};

export type PlantedAnswer = Stamp & { readonly list: string; readonly words: string; readonly answer: Answer };

export type PlantedBatch = {
  readonly part: { readonly number: string; readonly description: string; readonly kind: 'friction' | 'fluid' };
  readonly mark: string;
  readonly receivedOn: string;
  readonly received: number;
};

export type PlantedPull = Stamp & { readonly batch: PlantedBatch; readonly quantity: number };

export type PlantedFinding = Stamp & {
  readonly part: string;
  readonly pack: string | null;
  /** A friction of the pack and where it sat. */
  readonly place: PackPlace | null;
  readonly condition: Condition;
  readonly thickness: string;
};

export type PlantedComeback = {
  /** The ticket it is held against. */
  readonly built: number;
  readonly cameBackOn: string;
  readonly outcome: Outcome;
  readonly covered: Covering;
  readonly cost_cents: number | null;
  readonly causes: ReadonlyArray<{
    readonly cause: Cause;
    readonly pack: string | null;
    readonly certainty: 'known' | 'suspected';
  }>;
};

export type PlantedDelivery = Stamp & {
  readonly to: string;
  readonly on: string;
  readonly distance: Distance | null;
  readonly inServiceOn: string | null;
  readonly months: number | null;
  readonly passes: number | null;
};

export type PlantedTicket = {
  /** In the order the tickets were opened, from 1. */
  readonly key: number;
  readonly kind: 'build' | 'comeback' | 'reseal';
  readonly family: string;
  readonly customer: { readonly key: number; readonly name: string; readonly phone: string };
  readonly unit: { readonly key: number; readonly serial: string; readonly vehicle: string; readonly use: Use };
  readonly opened: Stamp;
  readonly complaint: string;
  readonly distance: Distance | null;
  readonly stages: ReadonlyArray<Stamp & { readonly name: string }>;
  readonly mockUps: readonly PlantedMockUp[];
  readonly takes: readonly PlantedTake[];
  readonly answers: readonly PlantedAnswer[];
  readonly pulls: readonly PlantedPull[];
  readonly findings: readonly PlantedFinding[];
  readonly overrides: ReadonlyArray<Stamp & { readonly check: string; readonly reason: string }>;
  readonly signedOff: Stamp;
  readonly delivery: PlantedDelivery;
  readonly comeback: PlantedComeback | null;
};
