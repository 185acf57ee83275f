// The same questions as integer programs, for the general solver HiGHS: counts per distinct height, whole objective.
import loadHighs from 'highs';

export type Highs = Awaited<ReturnType<typeof loadHighs>>;
export { loadHighs };

type Terms = readonly { readonly height: number; readonly count: number }[];

function distinct(heights: readonly number[]): Terms {
  return [...Map.groupBy(heights, (height) => height)].map(([height, equal]) => ({ height, count: equal.length }));
}

/** The smallest |clearance − target| with exactly so many changes. */
export function solveSwaps(
  highs: Highs,
  instance: {
    readonly fitted: readonly number[];
    readonly loose: readonly number[];
    readonly space: number;
    readonly target: number;
  },
  changes: number,
): number {
  const out = distinct(instance.fitted);
  const into = distinct(instance.loose);
  const outNames = out.map((_, index) => `o${index}`);
  const intoNames = into.map((_, index) => `i${index}`);
  const clearanceNow = instance.fitted.reduce((left, height) => left - height, instance.space);
  const sum = [
    ...out.map(({ height }, index) => `+ ${height} o${index}`),
    ...into.map(({ height }, index) => `- ${height} i${index}`),
  ].join(' ');
  const model = `Minimize
 obj: d
Subject To
 above: ${sum} - d <= ${instance.target - clearanceNow}
 below: ${sum} + d >= ${instance.target - clearanceNow}
 out: ${outNames.join(' + ')} = ${changes}
 in: ${intoNames.join(' + ')} = ${changes}
Bounds
${[...out, ...into].map(({ count }, index) => ` 0 <= ${[...outNames, ...intoNames][index]} <= ${Math.min(count, changes)}`).join('\n')}
General
 d ${[...outNames, ...intoNames].join(' ')}
End
`;
  // Without presolve it was faster on these: of eight forms tried, the best from 400 plates up.
  const solution = highs.solve(model, { output_flag: false, mip_rel_gap: 0, mip_abs_gap: 0, presolve: 'off' });
  if (solution.Status !== 'Optimal') throw new Error(`HiGHS ended with ${solution.Status}`);
  return Math.round(solution.ObjectiveValue);
}
