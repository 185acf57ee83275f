// In which order a repeat test hands out its parts, so that nobody reads the same part twice in a row on purpose.

export type StudySize = { readonly parts: number; readonly people: number; readonly trials: number };

/** Everything counted from 0. */
export type StudyPlace = { readonly part: number; readonly person: number; readonly trial: number };

/**
 * Trial after trial; in each the people in an order drawn anew, and under each person's hands all parts in an order drawn
 * anew. So a person reads a whole round before handing on, and every round that is whole is balanced. The same seed draws
 * the same order.
 */
export function studyOrder({ parts, people, trials }: StudySize, seed: number): StudyPlace[] {
  const draw = drawsFrom(seed);
  return Array.from({ length: trials }, (_, trial) =>
    shuffled(people, draw).flatMap((person) => shuffled(parts, draw).map((part) => ({ part, person, trial }))),
  ).flat();
}

/** 0 … count − 1, every order equally likely (R. Fisher and F. Yates; R. Durstenfeld 1964). */
function shuffled(count: number, draw: (below: number) => number): number[] {
  const order = Array.from({ length: count }, (_, index) => index);
  for (let last = count - 1; last > 0; last -= 1) {
    const other = draw(last + 1);
    [order[last], order[other]] = [order[other]!, order[last]!];
  }
  return order;
}

/** Whole numbers from 0 up to a bound: a Weyl sequence through an avalanche of 32 bits (G. Steele et al. 2014). */
function drawsFrom(seed: number): (below: number) => number {
  let state = seed | 0;
  return (below) => {
    state = (state + 0x9e3779b9) | 0;
    let mixed = Math.imul(state ^ (state >>> 16), 0x85ebca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
    return Math.floor((((mixed ^ (mixed >>> 16)) >>> 0) / 2 ** 32) * below);
  };
}
