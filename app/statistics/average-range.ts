// A gauge study by averages and ranges, the way it is done with pencil and paper.
import type { CrossedStudy } from './crossed-study.ts';
import { meanOf } from './summary.ts';

// 1/d₂ for the number of trials, and 1/d₂* of one subgroup for the number of appraisers or parts, from two upwards, to
// the four decimals in which they are tabled. AIAG MSA 4th edition prints them up to 3 trials and 10 parts; the further
// ones are 1/√(d₂² + d₃²) of the range of normal values, integrated numerically.
const perRange = [0.8862, 0.5908, 0.4857, 0.4299, 0.3946, 0.3698, 0.3512, 0.3367, 0.3249];
const perSingleRange = [
  // biome-ignore lint/suspicious/noApproximativeNumericConstant: the table has four decimals
  0.7071, 0.5231, 0.4467, 0.403, 0.3742, 0.3534, 0.3375, 0.3249, 0.3146, 0.3059, 0.2985, 0.2921, 0.2864, 0.2814, 0.277,
  0.2729, 0.2692, 0.2659, 0.2628, 0.2599, 0.2573, 0.2548, 0.2525, 0.2504,
];

/**
 * Variances of repeatability, reproducibility and part; this method cannot tell the interaction apart, so it is 0. null
 * where the study is larger than the tables. Source: AIAG Measurement Systems Analysis, 4th edition, III B.
 */
export function averageRange({ cells, parts, appraisers, trials }: CrossedStudy) {
  const forTrials = perRange[trials - 2];
  const forAppraisers = perSingleRange[appraisers - 2];
  const forParts = perSingleRange[parts - 2];
  if (forTrials === undefined || forAppraisers === undefined || forParts === undefined) return null;
  const averageCellRange = meanOf(cells.flatMap((row) => row.map(rangeOf)));
  const partMeans = cells.map((row) => meanOf(row.flat()));
  const appraiserMeans = Array.from({ length: appraisers }, (_, j) => meanOf(cells.flatMap((row) => row[j]!)));
  const repeatability = (averageCellRange * forTrials) ** 2;
  return {
    repeatability,
    reproducibility: Math.max(0, (rangeOf(appraiserMeans) * forAppraisers) ** 2 - repeatability / (parts * trials)),
    interaction: 0,
    part: (rangeOf(partMeans) * forParts) ** 2,
  };
}

function rangeOf(values: readonly number[]): number {
  return Math.max(...values) - Math.min(...values);
}
