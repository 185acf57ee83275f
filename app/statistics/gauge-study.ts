// The gauge and the hand behind it: crossed repeatability and reproducibility by analysis of variance.
import { accept, type Result, refuse } from '../base/result.ts';
import { averageRange } from './average-range.ts';
import { type CrossedStudy, crossStudy, type StudyRow } from './crossed-study.ts';
import { fTails } from './f-distribution.ts';
import { meanOf } from './summary.ts';

export const sourcesOfVariation = [
  'repeatability',
  'reproducibility',
  'interaction',
  'gauge',
  'part',
  'total',
] as const;
export type BySource = Readonly<Record<(typeof sourcesOfVariation)[number], number>>;

/** Variances and what is read off them; `gauge` is the first three together, `total` the gauge and the part. */
export type GaugeComponents = {
  readonly variances: BySource;
  readonly standardDeviations: BySource;
  /** 100 · σ / σ(total). Percentages of spreads, so they do not add up to 100. */
  readonly percentStudyVariation: BySource;
  /** 100 · 6σ / tolerance; null where no tolerance is given. */
  readonly percentTolerance: BySource | null;
  /** 1.41 · σ(part) / σ(gauge), not truncated; null where the gauge shows no variation. */
  readonly distinctCategories: number | null;
};

export type EffectTable = Readonly<Record<'part' | 'appraiser' | 'interaction' | 'repeatability', number>>;

export type GaugeStudy = {
  readonly anova: {
    readonly sumsOfSquares: EffectTable & { readonly total: number };
    readonly degreesOfFreedom: EffectTable & { readonly total: number };
    readonly meanSquares: EffectTable;
    /** Interaction over repeatability; null where the trials never differ. */
    readonly fInteraction: number | null;
    readonly pInteraction: number | null;
  };
  readonly withInteraction: GaugeComponents;
  readonly pooled: GaugeComponents;
  readonly chosen: GaugeComponents;
  readonly isPooled: boolean;
  /** null where the study is larger than the table of constants. */
  readonly averageRange: GaugeComponents | null;
};

/** When interaction and repeatability are taken together: never, always, or where p is above a value. */
export type PoolingRule = 'never' | 'always' | { readonly above: number };

/**
 * Random effects of a crossed study, the interaction kept and pooled side by side, and the average-and-range method
 * beside both. Negative variance estimates are 0. Refuses what `crossStudy` refuses and a study without any variation.
 * A square of the unit that is too large for a double is infinite, one that is too small is 0; spreads and ratios hold.
 * Source: AIAG Measurement Systems Analysis, 4th edition, III B; expected mean squares of the two-way random model.
 */
export function gaugeStudy(
  rows: readonly StudyRow[],
  pooling: PoolingRule,
  tolerance: number | null = null,
): Result<GaugeStudy> {
  const crossed = crossStudy(rows);
  if (!crossed.ok) return crossed;
  const study = crossed.value;
  const { parts, appraisers, trials, unit } = study;
  const sumsOfSquares = sumsOfSquaresOf(study);
  if (!(sumsOfSquares.total > 0))
    return refuse('zero-variance', 'All values are equal: there is nothing to divide up.');
  const degreesOfFreedom = {
    part: parts - 1,
    appraiser: appraisers - 1,
    interaction: (parts - 1) * (appraisers - 1),
    repeatability: parts * appraisers * (trials - 1),
    total: parts * appraisers * trials - 1,
  };
  const meanSquares = {
    part: sumsOfSquares.part / degreesOfFreedom.part,
    appraiser: sumsOfSquares.appraiser / degreesOfFreedom.appraiser,
    interaction: sumsOfSquares.interaction / degreesOfFreedom.interaction,
    repeatability: sumsOfSquares.repeatability / degreesOfFreedom.repeatability,
  };
  const fInteraction = meanSquares.repeatability > 0 ? meanSquares.interaction / meanSquares.repeatability : null;
  const pInteraction =
    fInteraction === null
      ? null
      : fTails(fInteraction, degreesOfFreedom.interaction, degreesOfFreedom.repeatability).upper;
  const pooledMeanSquare =
    (sumsOfSquares.interaction + sumsOfSquares.repeatability) /
    (degreesOfFreedom.interaction + degreesOfFreedom.repeatability);
  const against = (error: number, repeatability: number) => {
    const above = (meanSquare: number, divisor: number) => Math.max(0, (meanSquare - error) / divisor);
    return describeComponents(
      {
        repeatability,
        reproducibility: above(meanSquares.appraiser, parts * trials),
        interaction: Math.max(0, (error - repeatability) / trials),
        part: above(meanSquares.part, appraisers * trials),
      },
      unit,
      tolerance,
    );
  };
  const withInteraction = against(meanSquares.interaction, meanSquares.repeatability);
  const pooled = against(pooledMeanSquare, pooledMeanSquare);
  const isPooled =
    typeof pooling === 'object' ? pInteraction !== null && pInteraction > pooling.above : pooling === 'always';
  const ranges = averageRange(study);
  return accept({
    anova: {
      sumsOfSquares: mapValues(sumsOfSquares, (square) => square * unit * unit),
      degreesOfFreedom,
      meanSquares: mapValues(meanSquares, (square) => square * unit * unit),
      fInteraction,
      pInteraction,
    },
    withInteraction,
    pooled,
    chosen: isPooled ? pooled : withInteraction,
    isPooled,
    averageRange: ranges && describeComponents(ranges, unit, tolerance),
  });
}

function sumsOfSquaresOf({ cells, parts, appraisers, trials }: CrossedStudy) {
  const cellMeans = cells.map((row) => row.map(meanOf));
  const partMeans = cellMeans.map(meanOf);
  const appraiserMeans = Array.from({ length: appraisers }, (_, j) => meanOf(cellMeans.map((row) => row[j]!)));
  const grandMean = meanOf(partMeans);
  const squares = (values: readonly number[]) => values.reduce((sum, value) => sum + value * value, 0);
  const offset = (i: number, j: number) => cellMeans[i]![j]! - grandMean;
  const trialsApart = cells.flatMap((row, i) =>
    row.flatMap((cell, j) => cell.map((value) => value - cellMeans[i]![j]!)),
  );
  const part = appraisers * trials * squares(partMeans.map((mean) => mean - grandMean));
  const appraiser = parts * trials * squares(appraiserMeans.map((mean) => mean - grandMean));
  const interaction =
    trials *
    squares(
      cellMeans.flatMap((row, i) =>
        row.map((_, j) => offset(i, j) - (partMeans[i]! - grandMean) - (appraiserMeans[j]! - grandMean)),
      ),
    );
  const repeatability = squares(trialsApart);
  const total = squares(cells.flat(2).map((value) => value - grandMean));
  return { part, appraiser, interaction, repeatability, total };
}

/** `parts` are variances in squares of `unit`. */
function describeComponents(
  parts: Omit<BySource, 'gauge' | 'total'>,
  unit: number,
  tolerance: number | null,
): GaugeComponents {
  const gauge = parts.repeatability + parts.reproducibility + parts.interaction;
  const inUnits: BySource = { ...parts, gauge, total: gauge + parts.part };
  const spreads = mapValues(inUnits, Math.sqrt);
  const deviations = mapValues(spreads, (spread) => spread * unit);
  return {
    variances: mapValues(inUnits, (variance) => variance * unit * unit),
    standardDeviations: deviations,
    percentStudyVariation: mapValues(spreads, (spread) => (100 * spread) / spreads.total),
    percentTolerance: tolerance === null ? null : mapValues(deviations, (deviation) => (600 * deviation) / tolerance),
    distinctCategories: gauge > 0 ? (1.41 * spreads.part) / spreads.gauge : null,
  };
}

function mapValues<Name extends string>(from: Readonly<Record<Name, number>>, map: (value: number) => number) {
  return Object.fromEntries(Object.entries<number>(from).map(([name, value]) => [name, map(value)])) as Record<
    Name,
    number
  >;
}
