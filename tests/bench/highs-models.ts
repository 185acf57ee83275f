// The same questions as integer programs, for the general solver HiGHS: counts per distinct height, whole objective.
import type loadHighs from 'highs';
import type { JointRequest } from '../../app/selection/joint-request.ts';

export type Highs = Awaited<ReturnType<typeof loadHighs>>;

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

/** The smallest sum of |clearance − target| over packs that share plates, as a model. */
export function jointModel({ thicknesses, stock, packs }: JointRequest): string {
  const name = (pack: number, lot: number) => `x${pack}_${lot}`;
  const rows = packs.flatMap(({ space, plates, target, lower, upper }, pack) => {
    const sum = thicknesses.map((height, lot) => `+ ${height} ${name(pack, lot)}`).join(' ');
    return [
      `above${pack}: ${sum} - d${pack} <= ${space - target}`,
      `below${pack}: ${sum} + d${pack} >= ${space - target}`,
      `tight${pack}: ${sum} <= ${space - lower}`,
      `loose${pack}: ${sum} >= ${space - upper}`,
      `plates${pack}: ${thicknesses.map((_, lot) => name(pack, lot)).join(' + ')} = ${plates}`,
    ];
  });
  const shared = thicknesses.map(
    (_, lot) => `stock${lot}: ${packs.map((_, pack) => name(pack, lot)).join(' + ')} <= ${stock[lot]}`,
  );
  const variables = packs.flatMap((_, pack) => thicknesses.map((_, lot) => name(pack, lot)));
  const bounds = packs.flatMap(({ plates }, pack) =>
    thicknesses.map((_, lot) => ` 0 <= ${name(pack, lot)} <= ${Math.min(plates, stock[lot]!)}`),
  );
  const deviations = packs.map((_, pack) => `d${pack}`);
  return `Minimize
 obj: ${deviations.join(' + ')}
Subject To
 ${[...rows, ...shared].join('\n ')}
Bounds
${bounds.join('\n')}
General
 ${[...deviations, ...variables].join(' ')}
End
`;
}
