// A share of each of some groups in their order, with how sure it is: a dot between its limits.
import { scaleLinear } from 'd3-scale';
import { type Chart, circle, line, round, type Shape, text } from './shapes.ts';
import { textWidth } from './text-box.ts';

export type SharesFacts = {
  readonly shares: ReadonlyArray<{
    readonly name: string;
    readonly share: number;
    readonly lower: number;
    readonly upper: number;
    /** Not all of the group has been followed to the end: drawn hollow. */
    readonly isOpen: boolean;
  }>;
  readonly title: string;
};

const room = { top: 12, bottom: 32, left: 56, right: 16 };

/** At least one group. */
export function sharesInOrder(
  { shares, title }: SharesFacts,
  sayShare: (share: number) => string,
  { width, height }: { readonly width: number; readonly height: number },
): Chart {
  const bottom = height - room.bottom;
  const y = scaleLinear([0, Math.max(0.01, ...shares.map(({ upper }) => upper))], [bottom, room.top]).nice(4);
  const x = scaleLinear([-0.5, shares.length - 0.5], [room.left, width - room.right]);
  const shapes: Shape[] = y
    .ticks(4)
    .flatMap((share) => [
      line(room.left, round(y(share)), width - room.right, round(y(share)), { stroke: 'line', strokeWidth: 1 }),
      text(room.left - 8, round(y(share)) + 5, sayShare(share), { anchor: 'end', role: 'quiet' }),
    ]);
  const widest = Math.max(...shares.map(({ name }) => textWidth(name, 14))) + 16;
  const every = Math.max(1, Math.ceil((widest * shares.length) / (width - room.left - room.right)));
  for (const [index, { name, share, lower, upper, isOpen }] of shares.entries()) {
    const at = round(x(index));
    shapes.push(
      line(at, round(y(lower)), at, round(y(upper)), { depicts: 'guard', stroke: 'ink', strokeWidth: 1 }),
      circle(at, round(y(share)), 4, {
        depicts: 'reading',
        fill: isOpen ? 'ground' : 'ink',
        stroke: 'ink',
        strokeWidth: 1.5,
      }),
    );
    if (index % every === 0) shapes.push(text(at, height - 8, name, { role: 'quiet', anchor: 'middle' }));
  }
  return { medium: 'screen', width, height, title, shapes };
}
