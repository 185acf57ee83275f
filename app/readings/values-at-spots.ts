// Values read at spots around a part: their mean, how uneven they are, how the part is tilted, and how sure the mean is.
import { meanOf } from '../statistics/summary.ts';
import { type BudgetLine, type CombinedUncertainty, combine } from '../statistics/uncertainty-budget.ts';
import { repeatabilityLine } from './budget-lines.ts';
import { type FirstHarmonic, fitFirstHarmonic } from './first-harmonic.ts';
import type { Sureness } from './judge-take.ts';
import { type Repeatability, repeatabilityOfRepeats } from './repeatability.ts';

/** Repeats at one place; `degrees` from the mark, null where the place is not known. At least one value. */
export type SpotValues = { readonly degrees: number | null; readonly values: readonly number[] };

export type Uncertainty =
  | ({ readonly known: true } & CombinedUncertainty)
  | { readonly known: false; readonly reason: string };

export type SpotSummary = {
  /** Of each spot, in the order given. */
  readonly means: readonly number[];
  readonly mean: number;
  readonly min: number;
  readonly max: number;
  /** max − min: mostly the part, not the error of the mean. */
  readonly uneven: number;
  readonly harmonic: FirstHarmonic | null;
  readonly uncertainty: Uncertainty;
};

/** What one read is worth: how well it repeats, and the lines of the budget that more reads do not shrink. */
export type ReadQuality = {
  /** null: known only from the repeats at the spots themselves, if there are any. */
  readonly repeatability: Repeatability | null;
  readonly fixedLines: readonly BudgetLine[];
  /** Whether the fixed lines alone make an uncertainty where nothing was read twice and no repeatability is stated. */
  readonly standsAlone: boolean;
  readonly coverage: number;
};

/** At least one spot. Any one unit throughout. Differences from spot to spot are the part's, not the mean's error. */
export function summariseSpots(spots: readonly SpotValues[], quality: ReadQuality): SpotSummary {
  const means = spots.map((spot) => meanOf(spot.values));
  const repeatability = quality.repeatability ?? repeatabilityOfRepeats(spots.map((spot) => spot.values));
  const placed = spots.flatMap(({ degrees, values }, i) =>
    degrees === null ? [] : [{ degrees, value: means[i]!, reads: values.length }],
  );
  return {
    means,
    mean: meanOf(means),
    min: Math.min(...means),
    max: Math.max(...means),
    uneven: Math.max(...means) - Math.min(...means),
    harmonic: placed.length === spots.length ? fitFirstHarmonic(placed, repeatability) : null,
    uncertainty: uncertaintyOfMean(
      spots.map((spot) => spot.values.length),
      { ...quality, repeatability },
    ),
  };
}

/**
 * How sure the mean of spot means is, from how often each spot was read. With equally many reads at each the scatter is
 * s / √(all reads) (JCGM 100:2008 4.2.3); the fixed lines stay as they are.
 */
export function uncertaintyOfMean(readsAtSpots: readonly number[], quality: ReadQuality): Uncertainty {
  const { repeatability, fixedLines, standsAlone, coverage } = quality;
  if (!repeatability && !standsAlone) {
    return { known: false, reason: 'Repeatability unknown: nothing was read twice and none is stated.' };
  }
  const perRead = Math.sqrt(readsAtSpots.reduce((sum, reads) => sum + 1 / reads, 0)) / readsAtSpots.length;
  const scatter: BudgetLine[] = repeatability
    ? [
        {
          name: repeatabilityLine,
          standardUncertainty: repeatability.standardDeviation * perRead,
          degreesOfFreedom: repeatability.degreesOfFreedom,
        },
      ]
    : [];
  const combined = combine(
    [...scatter, ...fixedLines].filter((line) => line.standardUncertainty > 0),
    coverage,
  );
  return combined.ok
    ? { known: true, ...combined.value }
    : { known: false, reason: 'The repeats do not scatter at all and nothing else is stated.' };
}

/** How sure the mean is, and one spot by itself: as if it had been read as often as the least read one. */
export function surenessAt(
  readsAtSpots: readonly number[],
  quality: ReadQuality,
): { readonly ofMean: Sureness | null; readonly ofSpot: Sureness | null } {
  return {
    ofMean: surenessOf(uncertaintyOfMean(readsAtSpots, quality)),
    ofSpot: surenessOf(uncertaintyOfMean([Math.min(...readsAtSpots)], quality)),
  };
}

function surenessOf(uncertainty: Uncertainty): Sureness | null {
  return uncertainty.known
    ? { standardUncertainty: uncertainty.combined, coverageFactor: uncertainty.coverageFactor }
    : null;
}
