// Plates that go from one pack of a unit into another: which pack is taken apart first, and which trades no order allows.

/** A plate that leaves the pack `from` and goes into the pack `to`. */
export type Handover = {
  readonly from: number;
  readonly to: number;
  readonly pieceId: number;
  /** "91.0 B12". */
  readonly plate: string;
};

/**
 * The plates of one pack that could only leave it once something came back for them: a plate sits in one pack at a time,
 * so of two packs that trade plates neither can be built first. Empty where the packs can be built one after the other.
 */
export function tradedBothWays(handovers: readonly Handover[]): readonly Handover[] {
  const onRound = handovers.filter(({ from, to }) => reaches(handovers, to, from));
  return onRound.filter(({ from }) => from === onRound[0]?.from);
}

function reaches(handovers: readonly Handover[], start: number, end: number): boolean {
  const reached = new Set([start]);
  // A set that grows while it is walked is walked to its new end.
  for (const pack of reached) for (const { from, to } of handovers) if (from === pack) reached.add(to);
  return reached.has(end);
}

/** "First take apart Direct: its 91.0 B12 goes into Forward.", giving packs before those that wait for them. */
export function orderOfWork(handovers: readonly Handover[], nameOf: (packId: number) => string): readonly string[] {
  const rank = (pack: number): number =>
    Math.max(0, ...handovers.filter(({ to }) => to === pack).map(({ from }) => 1 + rank(from)));
  const givers = [...new Set(handovers.map(({ from }) => from))].toSorted((one, other) => rank(one) - rank(other));
  return givers.map((giver, index) => {
    const given = handovers
      .filter(({ from }) => from === giver)
      .map(({ plate, to }) => `its ${plate} goes into ${nameOf(to)}`);
    return `${index === 0 ? 'First' : 'Then'} take apart ${nameOf(giver)}: ${given.join(', ')}.`;
  });
}
