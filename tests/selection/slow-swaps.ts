// The obvious slow form of the search: every removal, every handful of loose pieces, one at a time.
import type { SwapQuestion } from '../../app/selection/swap-question.ts';

export type SlowOption = {
  readonly changes: number;
  readonly clearance: number;
  readonly chance: number;
  readonly deviation: number;
  /** Removed and added heights of every equally good set, as text. */
  readonly sets: ReadonlySet<string>;
};

type Piece = { readonly id: string; readonly height: number; readonly uncertaintyClass: number };

export function slowSwaps(question: SwapQuestion): SlowOption[] {
  const named = question.groups.flatMap(({ name, fitted, readBefore = [] }) => [
    ...fitted.map((piece) => ({ ...piece, group: name, isFitted: true })),
    ...readBefore.map((piece) => ({ ...piece, group: name, isFitted: false })),
  ]);
  const plans: (SlowOption & { text: string })[] = [];
  for (let inPack = 0; inPack < 2 ** named.length; inPack++) {
    const isIn = (_: unknown, place: number) => ((inPack >> place) & 1) === 1;
    const leaving = named.filter((piece, place) => piece.isFitted && !isIn(piece, place));
    const returning = named.filter((piece, place) => !piece.isFitted && isIn(piece, place));
    let handfuls: { group: string; piece: Piece }[][] = [[]];
    for (const { name, loose } of question.groups) {
      const ofGroup = ({ group }: { group: string }) => group === name;
      const wanted = leaving.filter(ofGroup).length - returning.filter(ofGroup).length;
      const single: Piece[] = loose.flatMap((bin) => Array.from({ length: bin.count }, () => bin));
      const choices = wanted < 0 ? [] : combinations(single, wanted);
      const more = choices.map((pieces) => pieces.map((piece) => ({ group: name, piece })));
      handfuls = handfuls.flatMap((sofar) => more.map((next) => [...sofar, ...next]));
    }
    for (const added of handfuls) {
      const perClass = [0, 0, 0, 0, 0, 0];
      for (const { piece } of added) perClass[piece.uncertaintyClass]!++;
      const { spaceLeft, variance } = question.predict(inPack, perClass);
      const clearance = spaceLeft - added.reduce((sum, { piece }) => sum + piece.height, 0);
      const chance = question.band?.chance(clearance, variance) ?? 0;
      const out = leaving.map(({ group, height }) => `${group}${height}`).sort();
      const back = returning.map(({ group, height }) => `${group}${height}`).sort();
      const into = added.map(({ group, piece }) => `${group}${piece.height}~${piece.uncertaintyClass}`).sort();
      const deviation = Math.abs(clearance - question.target);
      plans.push({
        changes: leaving.length,
        clearance,
        chance,
        deviation,
        sets: new Set(),
        text: `${out} < ${back} > ${into}`,
      });
    }
  }
  const options: SlowOption[] = [];
  for (const [changes, ofThese] of Map.groupBy(plans, (plan) => plan.changes)) {
    const chance = Math.max(...ofThese.map((plan) => plan.chance));
    const likely = ofThese.filter((plan) => plan.chance >= chance - 1e-12);
    const deviation = Math.min(...likely.map((plan) => plan.deviation));
    const best = likely.filter((plan) => plan.deviation <= deviation + 1e-6);
    const clearance = Math.max(...best.map((plan) => plan.clearance));
    const sets = new Set(best.map(({ text }) => text));
    options.push({ changes, clearance, chance, deviation, sets });
  }
  return options.toSorted((a, b) => a.changes - b.changes);
}

export function combinations<T>(from: readonly T[], size: number): T[][] {
  if (size === 0) return [[]];
  return from.flatMap((first, place) => combinations(from.slice(place + 1), size - 1).map((rest) => [first, ...rest]));
}
