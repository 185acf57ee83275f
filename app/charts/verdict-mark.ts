// The shape that says a verdict before its word and its colour do. These shapes mean nothing else anywhere.
import { type Chart, circle, line, type PaintRole, path, type Shape } from './shapes.ts';

export const verdicts = ['in', 'tight', 'loose', 'low', 'high', 'too close to call', 'not judged', 'not read'] as const;
export type Verdict = (typeof verdicts)[number];

const roles: Record<Verdict, PaintRole> = {
  in: 'in',
  tight: 'out',
  loose: 'out',
  low: 'out',
  high: 'out',
  'too close to call': 'close',
  'not judged': 'quiet',
  'not read': 'quiet',
};

/** The paint role of a verdict's shape and word. */
export function verdictRole(verdict: Verdict): PaintRole {
  return roles[verdict];
}

/** "in", "tight by 2.0", "too close to call": the word that stands beside the shape; `by` is already written out. */
export function verdictWords(verdict: Verdict, by: string | null): string {
  const takesAmount = verdictRole(verdict) === 'out';
  return takesAmount && by !== null ? `${verdict} by ${by}` : verdict;
}

/**
 * The shapes in a square of `size` with its corner at `x`, `y`: filled circle in, crossed square tight, loose, low or
 * high, half-filled diamond too close to call, dash not judged or not read.
 */
export function verdictShapes(verdict: Verdict, x: number, y: number, size: number): readonly Shape[] {
  const at = (share: number) => Math.round(share * size * 100) / 100;
  const role = verdictRole(verdict);
  const point = (across: number, down: number) => `${x + at(across)} ${y + at(down)}`;
  const stroke = { stroke: role, strokeWidth: at(1 / 8) };
  switch (role) {
    case 'in':
      return [circle(x + at(0.5), y + at(0.5), at(7 / 16), { fill: role })];
    case 'out': {
      const [near, far] = [1.75 / 16, 14.25 / 16];
      const square = `M${point(near, near)}L${point(far, near)}L${point(far, far)}L${point(near, far)}Z`;
      const cross = `M${point(near, near)}L${point(far, far)}M${point(far, near)}L${point(near, far)}`;
      return [path(square, stroke), path(cross, stroke)];
    }
    case 'close': {
      const half = `M${point(0.5, 1 / 16)}L${point(0.5, 15 / 16)}L${point(1 / 16, 0.5)}Z`;
      const whole = `M${point(0.5, 1 / 16)}L${point(15 / 16, 0.5)}L${point(0.5, 15 / 16)}L${point(1 / 16, 0.5)}Z`;
      return [path(half, { fill: role }), path(whole, stroke)];
    }
    default:
      return [line(x + at(3 / 16), y + at(0.5), x + at(13 / 16), y + at(0.5), stroke)];
  }
}

/** The shape as a chart of its own; its title is empty because the word always stands beside it. */
export function verdictMark(verdict: Verdict, size: number): Chart {
  return { medium: 'screen', width: size, height: size, title: '', shapes: verdictShapes(verdict, 0, 0, size) };
}
