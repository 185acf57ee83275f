// The two tails of a distribution at one point, and the point where a tail has a given size.

/** The probability at or below a point and the probability above it; each is right in its own smallest digits. */
export type Tails = { readonly lower: number; readonly upper: number };

/**
 * The point x > 0 at which a distribution of positive values has the tails asked for, matched on the smaller one.
 * `at` gives the tails at x and how fast they change with log x. Newton's method on the logarithms of both, where
 * the curves of the gamma, beta and t families are concave, held inside a bracket. Relative error below 1e-12.
 */
export function pointWithTails(wanted: Tails, at: (x: number) => Tails & { readonly slope: number }): number {
  if (wanted.lower <= 0) return 0;
  if (wanted.upper <= 0) return Number.POSITIVE_INFINITY;
  const onUpper = wanted.upper < wanted.lower;
  let x = 1;
  let below = 0;
  let above = Number.POSITIVE_INFINITY;
  for (let round = 0; round < 500; round++) {
    const here = at(x);
    const tail = onUpper ? here.upper : here.lower;
    const logStep = (onUpper ? Math.log(tail / wanted.upper) : Math.log(wanted.lower / tail)) * (tail / here.slope);
    const isTooSmall = onUpper ? tail > wanted.upper : tail < wanted.lower;
    if (isTooSmall) below = x;
    else above = x;
    let next = x * Math.exp(Math.max(-2, Math.min(2, logStep)));
    if (Math.abs(next - x) <= 4e-16 * x) return next;
    if (!(next > below && next < above)) {
      next =
        above === Number.POSITIVE_INFINITY ? below * 4 : below === 0 ? above / 4 : Math.sqrt(below) * Math.sqrt(above);
    }
    if (next === x || next === below || next === above) return next;
    x = next;
  }
  return x;
}
