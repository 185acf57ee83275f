// One clutch pack's clearance by air: what push-down and air travel add up to, spot by spot, and how sure that is.
import { accept, type Result, refuse } from '../base/result.ts';
import { decimalsOf, roundToDecimals } from '../quantities/decimals.ts';
import { type BudgetLine, rectangular, roundingOf } from '../statistics/uncertainty-budget.ts';
import { baseOnPumpLine, handForceLine, permittedErrorLine, resolutionLine } from './budget-lines.ts';
import type { Repeatability } from './repeatability.ts';
import { type SpotSummary, summariseSpots } from './values-at-spots.ts';

/** One read at one spot. Without a push-down it is air only: a true record, but no clearance. */
export type AirRead = {
  readonly push: number | null;
  readonly air: number;
  /** The dial was zeroed again on the pressed plate, so the air travel already holds the push-down. */
  readonly isZeroedAgain?: boolean;
};

export type AirSpot = { readonly degrees: number | null; readonly reads: readonly AirRead[] };

/** What the shop states about its method, all in the unit of the reads; a half-width of 0 leaves its line out. */
export type AirMethod = {
  /** null: known only from the repeats at the spots themselves, if there are any. */
  readonly repeatability: Repeatability | null;
  readonly handForceHalfWidth: number;
  /** Not 0 only where the dial's base sits on the pump or a lower drum. */
  readonly baseOnPumpHalfWidth: number;
  readonly dialResolution: number;
  readonly dialPermittedError: number;
  readonly coverage: number;
};

export type AirClearance = Omit<SpotSummary, 'means'> & {
  readonly spots: readonly { readonly degrees: number | null; readonly clearance: number; readonly reads: number }[];
};

/**
 * The clearance of one read: push-down + air travel, or the air travel alone where the dial was zeroed again. Added as the
 * decimals they were typed as, so that 0.1 and 0.7 are 0.8.
 */
export function clearanceOfRead(read: AirRead): Result<number> {
  if (read.push === null) return refuse('air-only', 'A read without its push-down is air only, not a clearance.');
  if (!(read.push >= 0) || !(read.air >= 0)) {
    return refuse('negative', 'Push-down and air travel are both zero or more.');
  }
  if (read.isZeroedAgain) return accept(read.air);
  return accept(roundToDecimals(read.push + read.air, mostDecimals(read.push, read.air)));
}

/**
 * The clearance of a pack: spot means, their mean, how uneven, the first harmonic, and the uncertainty of the mean as an
 * open budget. Several reads at a spot are repeats. Everything in one length unit. Refuses no spots, a spot without
 * reads, the same spot twice, air only, and a negative travel. Unknown repeatability is no refusal: the plain number
 * stands and its uncertainty says why it is unknown. Source: JCGM 100:2008; each line says its own.
 */
export function clearanceByAir(spots: readonly AirSpot[], method: AirMethod): Result<AirClearance> {
  if (spots.length === 0) return refuse('no-spots', 'There is no spot to take a clearance from.');
  const clearances: number[][] = [];
  for (const spot of spots) {
    if (spot.reads.length === 0) return refuse('no-reads', 'A spot has no reads.');
    const ofSpot: number[] = [];
    for (const read of spot.reads) {
      const clearance = clearanceOfRead(read);
      if (!clearance.ok) return clearance;
      ofSpot.push(clearance.value);
    }
    clearances.push(ofSpot);
  }
  const places = spots.flatMap((spot) => (spot.degrees === null ? [] : [((spot.degrees % 360) + 360) % 360]));
  if (new Set(places).size < places.length) {
    return refuse('spot-twice', 'Two spots have the same place: reads at one place are repeats of one spot.');
  }
  const summary = summariseSpots(
    spots.map(({ degrees }, i) => ({ degrees, values: clearances[i]! })),
    {
      repeatability: method.repeatability,
      fixedLines: airLines(method),
      standsAlone: false,
      coverage: method.coverage,
    },
  );
  const { means, ...rest } = summary;
  return accept({
    ...rest,
    uneven: roundToDecimals(rest.max - rest.min, mostDecimals(rest.max, rest.min)),
    spots: spots.map((spot, i) => ({ degrees: spot.degrees, clearance: means[i]!, reads: spot.reads.length })),
  });
}

function mostDecimals(first: number, second: number): number {
  return Math.max(decimalsOf(first), decimalsOf(second));
}

/** The lines of the budget that belong to the method and that more reads do not shrink. */
export function airLines(method: Omit<AirMethod, 'repeatability' | 'coverage'>): BudgetLine[] {
  const typeB = (name: string, standardUncertainty: number): BudgetLine => ({
    name,
    standardUncertainty,
    degreesOfFreedom: Number.POSITIVE_INFINITY,
  });
  return [
    typeB(handForceLine, rectangular(method.handForceHalfWidth)),
    typeB(baseOnPumpLine, rectangular(method.baseOnPumpHalfWidth)),
    typeB(resolutionLine, dialRounding(method.dialResolution)),
    // A permitted error of indication is stated for a travel, so it holds once for the difference. GUM F.2.2.2, 4.3.7.
    typeB(permittedErrorLine, rectangular(method.dialPermittedError)),
  ];
}

/**
 * A travel is a difference of two dial states (the rest between push and air cancels), and each is rounded to the
 * resolution on its own: twice the variance of GUM F.2.2.1. It is not divided by the number of reads, because a hand
 * that repeats well rounds the same way every time.
 */
export function dialRounding(resolution: number): number {
  return Math.SQRT2 * roundingOf(resolution);
}
