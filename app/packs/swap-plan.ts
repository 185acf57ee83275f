// What to swap in a pack: the book's records put as a question to the optimiser, and its answer put back as plates in
// slots, with what the pack should then read and how sure that is.
import { accept, type Result, refuse } from '../base/result.ts';
import { formatLength } from '../quantities/format-amount.ts';
import type { Swap, SwapAnswer } from '../selection/next-swaps.ts';
import { normalCoverageFactor } from '../statistics/normal.ts';
import { chanceWords } from './chance-words.ts';
import { learnGap } from './gap.ts';
import { packEvidence, pieceName } from './pack-evidence.ts';
import type { SwapOption } from './packs.contract.ts';
import { type PieceToPlace, placePieces } from './placement.ts';
import { slotName } from './slot-name.ts';
import { type Choice, choicesOf, type PackToPlan, searchSwaps } from './swap-search.ts';

export type SwapPlan = {
  readonly options: SwapOption[];
  readonly advice: string;
  readonly adviseChanges: number | null;
  readonly basis: string;
  readonly buy: string | null;
};

/** A plan this likely to be in the band is good enough to stop at. */
export const enough = 0.95;

/**
 * For every number of changes the loose pieces with the best chance of being in the band, in slots that keep the
 * family's rules. Exact: see `nextSwaps`. Refuses a pack without adjusters, and one that was never read.
 */
export function planSwaps(asked: PackToPlan): Result<SwapPlan> {
  const knowledge = learnGap(packEvidence(asked.records, [], asked.settings));
  if (!knowledge.ok) {
    return refuse('not-read', `Read ${asked.pack.name} first: without a reading nothing is known about its gap.`);
  }
  const choices = choicesOf(asked);
  const search = searchSwaps(asked, knowledge.value, choices);
  if (!search.ok) return search;
  const { answer, step_nm } = search.value;
  const options = answer.options.flatMap((option): SwapOption[] => {
    const { clearance, variance } = option;
    const placed = firstThatFits(asked, option.equallyGood, choices);
    if (!placed) return [];
    const standardDeviation_nm = Math.sqrt(variance) * step_nm;
    return [
      {
        ...placed,
        changes: option.changes,
        predicted_nm: clearance * step_nm,
        standardDeviation_nm,
        expanded_nm: normalCoverageFactor(0.95) * standardDeviation_nm,
        probabilityInBand: option.chance,
        isNoBetter: option.isNoBetter,
        equallyGood: option.equallyGood.length,
      },
    ];
  });
  const advised = advisedOf(options);
  return accept({
    options,
    adviseChanges: advised?.changes ?? null,
    advice: adviceOn(asked, answer, advised),
    basis: basisOf(asked),
    buy: answer.status === 'Infeasible' ? buySentence(asked, answer, step_nm) : null,
  });
}

/** A plan with few changes, judged good enough: the fewest that reach it, else the fewest that cannot be bettered. */
function advisedOf(options: readonly SwapOption[]): SwapOption | undefined {
  const chance = (option: SwapOption) => option.probabilityInBand ?? 0;
  const best = Math.max(...options.map(chance));
  return options.find((option) => chance(option) >= Math.min(enough, best) - 1e-9);
}

function adviceOn(asked: PackToPlan, answer: SwapAnswer, advised: SwapOption | undefined): string {
  if (!advised) return `No plates at hand can be put into ${asked.pack.name} under the family’s rules.`;
  const { changes, probabilityInBand } = advised;
  const chance = probabilityInBand === null ? '' : `, ${chanceWords(probabilityInBand)} in the band`;
  if (changes === 0) {
    return answer.status === 'Infeasible'
      ? `Nothing at hand does better than what is in now${chance}.`
      : `Stop here: it is as good as it gets${chance}.`;
  }
  const swaps = changes === 1 ? 'One swap' : `${changes} swaps`;
  const does = changes === 1 ? 'does' : 'do';
  return answer.status === 'Infeasible'
    ? `Nothing at hand brings it into the band; ${swaps.toLowerCase()} ${does} best${chance}.`
    : `${swaps} will do${chance}.`;
}

function basisOf({ records, settings }: PackToPlan): string {
  const read = records.filter((record) => record.read).length;
  const restack = formatLength(settings.restack_nm, settings.lengthUnit, undefined, settings.decimalMark);
  return `From ${read} reading${read === 1 ? '' : 's'} of this pack and the heights of its plates; a pack put back together reads ${restack} ${settings.lengthUnit} differently (one standard deviation).`;
}

function buySentence(
  { settings }: PackToPlan,
  answer: SwapAnswer & { status: 'Infeasible' },
  step_nm: number,
): string | null {
  if (!answer.buy) return 'No single height that could be bought would bring it into the band.';
  const shown = (steps: number) =>
    `${formatLength(steps * step_nm, settings.lengthUnit, undefined, settings.decimalMark)} ${settings.lengthUnit}`;
  const { pieces, height, clearance } = answer.buy;
  return `Buy ${pieces} of ${shown(height)}: it should then read ${shown(clearance)}.`;
}

type Placed = Pick<SwapOption, 'out' | 'in' | 'moved'>;

// Placement decides slots, not sums: of the equally good sets the first that the family's rules let in.
function firstThatFits(asked: PackToPlan, sets: readonly Swap[], choices: readonly Choice[]): Placed | undefined {
  for (const set of sets) {
    const placed = placeSet(asked, set, choices);
    if (placed) return placed;
  }
  return undefined;
}

/** A set put into slots so that the family’s rules hold; undefined where no order does. */
export function placeSet(
  { pack, fitted, settings }: PackToPlan,
  set: { readonly remove: readonly string[]; readonly add: ReadonlyArray<{ readonly id: string }> },
  choices: readonly Choice[],
): Placed | undefined {
  const shown = (height_nm: number) => formatLength(height_nm, settings.lengthUnit, undefined, settings.decimalMark);
  const pieceIn = (slotId: number) => fitted.find((each) => each.slotId === slotId)?.piece;
  const leaves = (slotId: number) => set.remove.includes(pieceName(pieceIn(slotId)?.pieceId ?? 0));
  const kept = pack.slots.map((slot): PieceToPlace | null => {
    const piece = pieceIn(slot.slotId);
    return !piece || leaves(slot.slotId) ? null : { ...piece, id: pieceName(piece.pieceId) };
  });
  // A can may give several plates, so each plate that comes in gets a name of its own.
  const entering = set.add.flatMap((added, index) => {
    const choice = choices.find((each) => each.id === added.id);
    return choice ? [{ choice, piece: { ...choice, id: `${choice.id} #${index}` } }] : [];
  });
  const placement = placePieces(
    pack.slots,
    kept,
    entering.map(({ piece }) => piece),
    pack.rules,
    shown,
  );
  if (!placement.ok) return undefined;
  const { pieces, moved } = placement.value;
  return {
    out: pack.slots.flatMap((slot, index) => {
      const piece = pieceIn(slot.slotId);
      return piece && leaves(slot.slotId)
        ? [{ slotId: slot.slotId, slotName: slotName(pack.slots, index), piece }]
        : [];
    }),
    in: pack.slots.flatMap((slot, index) => {
      const choice = entering.find(({ piece }) => piece.id === pieces[index]?.id)?.choice;
      if (!choice) return [];
      const { height_nm, label, from } = choice;
      return [{ slotId: slot.slotId, slotName: slotName(pack.slots, index), height_nm, label, from }];
    }),
    moved: moved.flatMap(({ fromSlot, toSlot }) => {
      const [from, to] = [pack.slots[fromSlot], pack.slots[toSlot]];
      const piece = from && pieceIn(from.slotId);
      if (!from || !to || !piece) return [];
      const name = `${piece.tag ? `${piece.tag}, ` : ''}${shown(piece.height_nm)}`;
      const sentence = `Move ${name} from ${slotName(pack.slots, fromSlot)} to ${slotName(pack.slots, toSlot)}.`;
      return [{ fromSlotId: from.slotId, toSlotId: to.slotId, pieceId: piece.pieceId, sentence }];
    }),
  };
}
