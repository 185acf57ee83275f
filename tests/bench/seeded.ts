// Numbers that look random and are the same on every run, so that an instance can be named by its seed.

export type Draw = {
  /** A whole number from `low` to `high`, both included. */
  readonly whole: (low: number, high: number) => number;
  /** Normal, by Box and Muller. */
  readonly normal: (mean: number, standardDeviation: number) => number;
};

/** Source: T. Ettinger's mulberry32, a 32-bit counter-based generator (public domain). */
export function seeded(seed: number): Draw {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  return {
    whole: (low, high) => low + Math.floor(next() * (high - low + 1)),
    normal: (mean, standardDeviation) =>
      mean + standardDeviation * Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next()),
  };
}
