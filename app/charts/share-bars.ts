// How a whole divides up: one bar a share, the figure at its end.
import { type Chart, line, rect, round, type Shape, text, textSizes } from './shapes.ts';
import { textWidth } from './text-box.ts';

/** `share` of the whole, 0 … 1. */
export type Share = { readonly name: string; readonly share: number };

const row = 40;

export function shareBars(shares: readonly Share[], width: number): Chart {
  const size = textSizes.screen.small;
  const named = Math.max(0, ...shares.map(({ name }) => textWidth(name, size))) + 16;
  const figures = shares.map(({ share }) => `${Math.round(100 * share)} of 100`);
  const room = Math.max(40, width - named - Math.max(0, ...figures.map((figure) => textWidth(figure, size))) - 16);
  const shapes: Shape[] = shares.flatMap(({ name, share }, index) => {
    const middle = index * row + row / 2;
    const long = round(Math.max(0, Math.min(1, share)) * room);
    return [
      text(0, middle + 5, name),
      rect(named, middle - 10, Math.max(long, 1), 20, { fill: 'steel', stroke: 'ink', strokeWidth: 1, hatch: 'steel' }),
      text(named + long + 8, middle + 5, figures[index] ?? '', { weight: 'semibold' }),
    ];
  });
  const height = shares.length * row;
  shapes.push(line(named, 0, named, height, { stroke: 'ink', strokeWidth: 1 }));
  const title = shares.map(({ name }, index) => `${name} ${figures[index]}`).join(', ');
  return { medium: 'screen', width, height, title: `${title}.`, shapes };
}
