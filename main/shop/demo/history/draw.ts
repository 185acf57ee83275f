// Draws that look random and come out of one seed: the same seed draws the same shop on every machine.
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { mersenne } from 'pure-rand/generator/mersenne';

export type Draw = {
  /** Whether a thing of this probability happens. */
  readonly happens: (probability: number) => boolean;
  /** A whole number from `low` to `high`, both included. */
  readonly whole: (low: number, high: number) => number;
  /** By Box and Muller. */
  readonly normal: (mean: number, standardDeviation: number) => number;
  /** How long something lasts: Weibull, by the inverse of its distribution. */
  readonly weibull: (scale: number, shape: number) => number;
  readonly oneOf: <T>(among: readonly T[]) => T;
  /** Which of several, counted from 0, by their shares of the whole. */
  readonly byShare: (shares: readonly number[]) => number;
};

export function drawsFrom(seed: number): Draw {
  const generator = mersenne(seed);
  const fraction = () => uniformFloat64(generator);
  const whole = (low: number, high: number) => uniformInt(generator, low, high);
  return {
    happens: (probability) => fraction() < probability,
    whole,
    normal: (mean, standardDeviation) =>
      mean + standardDeviation * Math.sqrt(-2 * Math.log(1 - fraction())) * Math.cos(2 * Math.PI * fraction()),
    weibull: (scale, shape) => scale * (-Math.log(1 - fraction())) ** (1 / shape),
    oneOf: (among) => {
      const drawn = among[whole(0, among.length - 1)];
      if (drawn === undefined) throw new Error('nothing to draw from');
      return drawn;
    },
    byShare: (shares) => {
      const drawn = whole(
        1,
        shares.reduce((sum, share) => sum + share, 0),
      );
      let upTo = 0;
      return shares.findIndex((share) => {
        upTo += share;
        return drawn <= upTo;
      });
    },
  };
}
