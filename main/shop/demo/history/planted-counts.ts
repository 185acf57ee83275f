// What became of a planted history, counted ticket by ticket, so that the truth can be written beside the file.
import type { Fate } from './fate.ts';
import type { BuildTruth } from './plan-build.ts';
import type { Planted, Planting } from './plant.ts';
import { plantedTruth } from './planted-truth.ts';

type Share = { builds: number; cameBack: number };

export class PlantedCounts {
  readonly #groups = new Map<string, Share>();
  readonly #returns = new Map<Fate['what'], number>();
  readonly #badMarks = new Set<string>();
  #tickets = 0;

  count({ ticket, truth, fate }: Planted): void {
    this.#tickets += 1;
    if (fate) this.#returns.set(fate.what, (this.#returns.get(fate.what) ?? 0) + 1);
    if (ticket.kind === 'reseal') return;
    for (const group of groupsOf(truth)) {
      const share = this.#shareOf(group);
      if (ticket.kind === 'build') share.builds += 1;
      else share.cameBack += 1;
    }
    const frictions = ticket.pulls.find(({ batch }) => batch.part.kind === 'friction');
    if (truth.hasBadFrictions && frictions) this.#badMarks.add(frictions.batch.mark);
  }

  #shareOf(group: string): Share {
    const share = this.#groups.get(group) ?? { builds: 0, cameBack: 0 };
    this.#groups.set(group, share);
    return share;
  }

  /** The figures that were planted, and what came of them in this shop. */
  truth(planting: Planting, people: readonly string[]) {
    return {
      ...planting,
      hands: people,
      planted: plantedTruth,
      badBatches: [...this.#badMarks],
      tickets: this.#tickets,
      returns: Object.fromEntries(this.#returns),
      groups: Object.fromEntries(this.#groups),
    };
  }
}

/** What a build truly was, in the words of the groups that are planted. */
function groupsOf(truth: BuildTruth): string[] {
  const isTight = truth.family.packs.some(({ lowest }, index) => (truth.clearances[index] ?? lowest) < lowest);
  return [
    'all builds',
    `hand ${truth.hand}`,
    isTight ? 'a pack truly below its limit' : 'no pack below its limit',
    ...(truth.isReadByFeeler ? ['second pack read by feeler'] : []),
    ...(truth.hasBadFrictions ? ['bad frictions'] : []),
    ...(Math.max(...truth.leakDowns) > 7 ? ['sealing rings leaking'] : []),
    ...(truth.coolerFlow < 1.15 ? ['low cooler flow'] : []),
    `plates ${truth.plates}`,
    `fluid ${truth.fluid}`,
  ];
}
