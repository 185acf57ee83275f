// Where a function of one variable passes through zero.

/**
 * The root between `from` and `to`, where `f` has opposite signs, to the last digits a double can hold. No derivative,
 * no failure: where it cannot interpolate it halves.
 * Source: T. Chandrupatla, Advances in Engineering Software 28, 1997, 145.
 */
export function rootBetween(f: (x: number) => number, from: number, to: number): number {
  let [a, b] = [to, from];
  let [fa, fb] = [f(a), f(b)];
  let [c, fc] = [a, fa];
  let share = 0.5;
  for (let round = 0; round < 400; round++) {
    const x = a + share * (b - a);
    const fx = f(x);
    if (Math.sign(fx) === Math.sign(fa)) {
      [c, fc] = [a, fa];
    } else {
      [c, fc] = [b, fb];
      [b, fb] = [a, fa];
    }
    [a, fa] = [x, fx];
    const [best, value] = Math.abs(fa) < Math.abs(fb) ? [a, fa] : [b, fb];
    const closest = (2 ** -52 * Math.abs(best) + 1e-300) / Math.abs(b - a);
    if (value === 0 || closest > 0.5) return best;
    const xi = (a - b) / (c - b);
    const phi = (fa - fb) / (fc - fb);
    const isSmooth = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi;
    share = isSmooth
      ? (fa / (fb - fa)) * (fc / (fb - fc)) + ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb))
      : 0.5;
    share = Number.isFinite(share) ? Math.min(1 - closest, Math.max(closest, share)) : 0.5;
  }
  return a;
}

/**
 * The root on one side of `start`, found by steps that double; null where the function keeps its sign within `steps`
 * of them.
 */
export function rootBeside(f: (x: number) => number, start: number, firstStep: number, steps = 60): number | null {
  const sign = Math.sign(f(start));
  let [last, step] = [start, firstStep];
  for (let i = 0; i < steps; i++) {
    const next = last + step;
    if (Math.sign(f(next)) !== sign) return rootBetween(f, last, next);
    [last, step] = [next, step * 2];
  }
  return null;
}
