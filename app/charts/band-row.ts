// The small band of a row of checks, on the ticket and on paper.
import { scaleLinear } from 'd3-scale';
import { type AmountWords, bandStretch } from './amounts.ts';
import { type Axis, arrow, type BandFacts, bandSentence, bar, beyond } from './band-axis.ts';
import { type Chart, circle, line, type Medium, rect, round, type Shape } from './shapes.ts';

/**
 * The small band of a row of checks: limits always at the same places, so that rows compare down the page. The value
 * is a filled dot with its ± bar, as found an open dot, predicted an open one with a dashed bar above them; what lies off
 * the scale is an arrow at the edge.
 */
export function bandRow(
  facts: Omit<BandFacts, 'readings' | 'guard' | 'predicted'> & Partial<Pick<BandFacts, 'predicted'>>,
  words: AmountWords,
  { width, height, medium }: { readonly width: number; readonly height: number; readonly medium: Medium },
): Chart {
  const unit = medium === 'paper' ? 0.75 : 1;
  const { low, high } = facts.limits;
  // Where a limit is set the scale hangs on nothing else, so that rows of equal limits compare.
  const values = [facts.now?.value, facts.asFound].filter((each) => each !== null && each !== undefined);
  const placing = low === null && high === null ? values : [];
  const stretch = bandStretch(facts.limits, facts.target, placing, words.perUnit);
  const [left, right] = [5 * unit, width - 5 * unit];
  const scale = scaleLinear([stretch.low, stretch.high], [width * 0.214, width * 0.786]);
  const axis: Axis = { x: (amount) => round(scale(amount)), left, right };
  const middle = height / 2;
  const base = height * 0.75;
  const radius = 3.75 * unit;
  const shapes: Shape[] = [];
  if (medium === 'screen') {
    const [from, to] = [low === null ? 0 : axis.x(low), high === null ? width : axis.x(high)];
    if (low !== null || high !== null)
      shapes.push(rect(from, height * 0.1, to - from, base - height * 0.1, { fill: 'well' }));
  }
  shapes.push(line(0, base, width, base, { stroke: 'mark', strokeWidth: unit }));
  for (const limit of [low, high]) {
    if (limit === null) continue;
    shapes.push(
      line(axis.x(limit), height * 0.1, axis.x(limit), height * 0.95, {
        depicts: 'limit',
        stroke: 'ink',
        strokeWidth: 1.75 * unit,
      }),
    );
  }
  if (facts.target !== null && beyond(axis, facts.target) === null) {
    const x = axis.x(facts.target);
    shapes.push(
      line(x, height * 0.2, x, base, {
        depicts: 'target',
        stroke: 'mark',
        strokeWidth: unit,
        dash: [2 * unit, 2 * unit],
      }),
    );
  }
  if (facts.asFound !== null) {
    const side = beyond(axis, facts.asFound);
    const paint = { depicts: 'as found', fill: 'face', stroke: 'ink', strokeWidth: unit } as const;
    shapes.push(
      side === null
        ? circle(axis.x(facts.asFound), middle, 3 * unit, paint)
        : arrow(axis, side, middle, 3.5 * unit, paint),
    );
  }
  const predicted = facts.predicted ?? null;
  if (predicted !== null) {
    const side = beyond(axis, predicted.value);
    const above = height * 0.25;
    const paint = { depicts: 'predicted', fill: 'face', stroke: 'act', strokeWidth: unit } as const;
    const dash = [3 * unit, 2 * unit];
    shapes.push(...bar(axis, predicted, above, 0, { stroke: 'act', strokeWidth: 1.25 * unit, dash }));
    shapes.push(
      side === null
        ? circle(axis.x(predicted.value), above, 3 * unit, paint)
        : arrow(axis, side, above, 3.5 * unit, paint),
    );
  }
  if (facts.now !== null) {
    const side = beyond(axis, facts.now.value);
    const paint = { depicts: 'now', fill: 'ink' } as const;
    if (side === null) {
      shapes.push(...bar(axis, facts.now, middle, 0, { stroke: 'ink', strokeWidth: 1.25 * unit }));
      shapes.push(circle(axis.x(facts.now.value), middle, radius, paint));
    } else {
      shapes.push(arrow(axis, side, middle, radius, paint));
    }
  }
  return { medium, width, height, title: bandSentence({ ...facts, readings: [], predicted }, words), shapes };
}
