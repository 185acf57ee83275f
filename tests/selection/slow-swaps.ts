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
  const fitted = question.groups.flatMap((group) => group.fitted.map((piece) => ({ ...piece, group: group.name })));
  const plans: (SlowOption & { text: string })[] = [];
  for (let removed = 0; removed < 2 ** fitted.length; removed++) {
    const kept = 2 ** fitted.length - 1 - removed;
    const leaving = fitted.filter((_, place) => (removed >> place) & 1);
    let handfuls: { group: string; piece: Piece }[][] = [[]];
    for (const { name, loose } of question.groups) {
      const wanted = leaving.filter(({ group }) => group === name).length;
      const single: Piece[] = loose.flatMap((bin) => Array.from({ length: bin.count }, () => bin));
      const ofGroup = combinations(single, wanted).map((pieces) => pieces.map((piece) => ({ group: name, piece })));
      handfuls = handfuls.flatMap((sofar) => ofGroup.map((more) => [...sofar, ...more]));
    }
    for (const added of handfuls) {
      const perClass = [0, 0, 0, 0, 0, 0];
      for (const { piece } of added) perClass[piece.uncertaintyClass]!++;
      const clearance = question.clearanceKeeping(kept) - added.reduce((sum, { piece }) => sum + piece.height, 0);
      const chance = question.band?.chance(clearance, question.variance(kept, perClass)) ?? 0;
      const out = leaving.map(({ group, height }) => `${group}${height}`).sort();
      const into = added.map(({ group, piece }) => `${group}${piece.height}~${piece.uncertaintyClass}`).sort();
      const deviation = Math.abs(clearance - question.target);
      plans.push({ changes: leaving.length, clearance, chance, deviation, sets: new Set(), text: `${out} > ${into}` });
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
