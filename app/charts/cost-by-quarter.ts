// Cost quarter after quarter as bars, with what came back and what was delivered counted below each.
import { scaleLinear } from 'd3-scale';
import { type Chart, line, rect, round, type Shape, text } from './shapes.ts';
import { textWidth } from './text-box.ts';

export type QuarterBar = {
  readonly quarter: string;
  /** Whole cents. */
  readonly cost: number;
  readonly cameBack: number;
  readonly delivered: number;
};

const room = { top: 28, bottom: 64 };

/** At least one quarter. `money` writes cents out; the newest quarters are drawn where not all have room. */
export function costByQuarter(
  bars: readonly QuarterBar[],
  money: (cents: number) => string,
  { width, height }: { readonly width: number; readonly height: number },
): Chart {
  const least =
    Math.max(...bars.flatMap(({ cost, quarter }) => [textWidth(money(cost), 14), textWidth(quarter, 14)])) + 16;
  const shown = bars.slice(-Math.max(1, Math.floor(width / least)));
  const wide = width / shown.length;
  const base = height - room.bottom;
  const y = scaleLinear([0, Math.max(1, ...shown.map(({ cost }) => cost))], [base, room.top]);
  const shapes: Shape[] = shown.flatMap(({ quarter, cost, cameBack, delivered }, index) => {
    const middle = round(wide * (index + 0.5));
    const half = round(Math.min(32, wide / 2 - 8));
    const top = round(y(cost));
    return [
      ...(cost === 0
        ? []
        : [
            rect(middle - half, top, 2 * half, round(base - top), {
              fill: 'steel',
              stroke: 'ink',
              strokeWidth: 1,
              hatch: 'steel',
            } as const),
          ]),
      text(middle, top - 8, cost === 0 && cameBack === 0 ? '–' : money(cost), { anchor: 'middle', weight: 'semibold' }),
      text(middle, base + 18, quarter, { anchor: 'middle' }),
      text(middle, base + 38, `${cameBack} back`, { anchor: 'middle', role: 'quiet' }),
      text(middle, base + 56, `${delivered} built`, { anchor: 'middle', role: 'quiet' }),
    ];
  });
  shapes.push(line(0, base, width, base, { stroke: 'ink', strokeWidth: 1 }));
  const title = shown
    .map(
      ({ quarter, cost, cameBack, delivered }) =>
        `${quarter}: ${money(cost)}, ${cameBack} came back, ${delivered} delivered`,
    )
    .join('; ');
  return { medium: 'screen', width, height, title: `${title}.`, shapes };
}
