// Packs of a unit that take the same plates, put to the joint optimiser, and its counts put back as plates in slots.
import { assert } from '../base/assert.ts';
import { formatLength } from '../quantities/format-amount.ts';
import type { JointRequest } from '../selection/joint-request.ts';
import { type JointSelection, selectPlatesJointly } from '../selection/select-plates-jointly.ts';
import { problemsInJointSelection } from '../selection/verify.ts';
import { probabilityInside } from '../statistics/conformity.ts';
import { normalCoverageFactor } from '../statistics/normal.ts';
import { type GapKnowledge, learnGap, predictClearance } from './gap.ts';
import { type Handover, orderOfWork, tradedBothWays } from './handovers.ts';
import { packEvidence, pieceName } from './pack-evidence.ts';
import type { Piece, SwapOption } from './packs.contract.ts';
import { placeSet } from './swap-plan.ts';
import { type Choice, choicesOf, type PackToPlan } from './swap-search.ts';
import { targetOf } from './target-of-pack.ts';

export type SharedPlan = {
  readonly packIds: readonly number[];
  /** NotBothWays: better ones trade plates both ways, which cannot be built. Refused: it was never searched. */
  readonly status: JointSelection['status'] | 'NotBothWays' | 'Refused';
  /** How it ended, for a person: proven, impossible and what to buy, or how near it is known to be. */
  readonly sentence: string;
  /** Which pack is taken apart first, where a plate goes from one into another. */
  readonly order: readonly string[];
  /** True when the options leave a pack outside its limits. */
  readonly isOnlyNearest: boolean;
  /** By pack; a pack without one cannot be built from the best sharing. */
  readonly options: ReadonlyMap<number, SwapOption>;
};

/** A sharing before it is known whether the packs can be built one after the other. */
type Attempt = Omit<SharedPlan, 'order'> & { readonly handovers: readonly Handover[] };

/** A plate that may go into any of the packs; `owner` is the pack it sits in now. */
type Source = Choice & { readonly owner: number | null; readonly piece: Piece | null };

// 0.0001 in where every height is a whole number of them, else a thousandth of a millimetre.
const tenth_nm = 2_540;
const micrometre_nm = 1_000;

/**
 * The best sharing of the plates in these packs and of those loose, among packs that were all read. Where it would trade
 * plates both ways, those of one pack are held in it and the rest is shared out again, which is not proven the best of
 * what can be built.
 */
export function sharePlates(asked: readonly PackToPlan[], objective: JointRequest['objective']): SharedPlan {
  const held: Handover[] = [];
  for (;;) {
    const shared = shareBut(held, asked, objective);
    const traded = tradedBothWays(shared.handovers);
    if (traded.length === 0) {
      const order = orderOfWork(shared.handovers, nameIn(asked));
      return { ...shared, order, ...(held.length > 0 && withoutTrades(asked, held, shared)) };
    }
    held.push(...traded);
  }
}

function withoutTrades(
  asked: readonly PackToPlan[],
  held: readonly Handover[],
  { status, isOnlyNearest }: Attempt,
): Pick<SharedPlan, 'status' | 'sentence'> {
  const why = 'The best sharing trades plates both ways, and a plate sits in one pack at a time';
  // Nothing of a pack is left to share out.
  if (status === 'Refused') return { status: 'NotBothWays', sentence: `${why}: go pack after pack.` };
  const stays = held.map(({ plate, from }) => `${plate} in ${nameIn(asked)(from)}`).join(', ');
  const kept = `${why}; this one keeps ${stays}.`;
  return { status: 'NotBothWays', sentence: isOnlyNearest ? `${kept} It does not bring every pack in.` : kept };
}

function shareBut(
  held: readonly Handover[],
  asked: readonly PackToPlan[],
  objective: JointRequest['objective'],
): Attempt {
  const packIds = asked.map(({ pack }) => pack.packId);
  const isHeld = (id: string) => held.some(({ pieceId }) => pieceName(pieceId) === id);
  const sources = sourcesOf(asked).filter(({ id }) => !isHeld(id));
  const isInTenths = sources.every(({ height_nm }) => height_nm % tenth_nm === 0);
  const step_nm = isInTenths ? tenth_nm : micrometre_nm;
  const steps = (length_nm: number) => Math.round(length_nm / step_nm);
  const request: JointRequest = {
    thicknesses: sources.map(({ height_nm }) => steps(height_nm)),
    stock: sources.map(({ count, heightFrom }) => (heightFrom === 'catalogue' ? 0 : count)),
    packs: asked.map((pack) => {
      const now = adjustersOf(pack).filter(({ pieceId }) => !isHeld(pieceName(pieceId)));
      // What the pack is expected to read as it sits, and the measured heights of what could leave it.
      const space = steps(
        predicted(
          pack,
          pack.fitted.map(({ piece }) => piece),
        ).mean + now.reduce((sum, { height_nm }) => sum + height_nm, 0),
      );
      const target = steps(targetOf(pack));
      const { lower, upper } = pack.bounds;
      return {
        space,
        plates: now.length,
        target,
        lower: lower === null ? Math.min(0, target) : steps(lower),
        upper: upper === null ? Math.max(space, target) : steps(upper),
      };
    }),
    objective,
  };
  const answer = selectPlatesJointly(request);
  if (!answer.ok) {
    const nothing = { isOnlyNearest: false, options: new Map(), handovers: [] };
    return { packIds, status: 'Refused', sentence: answer.refusal.message, ...nothing };
  }
  const selection = answer.value;
  // Added up again by code that shares nothing with the search: a plan that does not add up never reaches the bench.
  const problems = problemsInJointSelection(request, selection);
  assert(problems.length === 0, problems.join(' '));
  const plan = planIn(selection);
  const given = plan
    ? handOut(
        asked,
        sources,
        request,
        plan.packs.map(({ counts }) => counts),
      )
    : [];
  const handovers = given.flatMap((plates, at) => handoversTo(asked[at]!, plates));
  const options = new Map(
    given.flatMap((plates, at): Array<[number, SwapOption]> => {
      const option = optionOf(asked[at]!, plates, isHeld);
      return option ? [[packIds[at]!, option]] : [];
    }),
  );
  const broken = asked.filter(({ pack }) => plan && !options.has(pack.packId)).map(({ pack }) => pack.name);
  const sentence =
    broken.length > 0
      ? `No order of the plates shared out to ${broken.join(' and ')} keeps the family’s rules.`
      : sentenceOn(asked, selection, step_nm);
  return {
    packIds,
    status: selection.status,
    sentence,
    isOnlyNearest: selection.status === 'Infeasible',
    options,
    handovers,
  };
}

function nameIn(asked: readonly PackToPlan[]): (packId: number) => string {
  return (packId) => asked.find(({ pack }) => pack.packId === packId)?.pack.name ?? '';
}

function handoversTo({ pack, settings }: PackToPlan, given: readonly Source[]): Handover[] {
  return given.flatMap(({ owner, piece }): Handover[] => {
    if (owner === null || owner === pack.packId || !piece) return [];
    const height = formatLength(piece.height_nm, settings.lengthUnit, undefined, settings.decimalMark);
    const plate = [height, piece.tag].filter(Boolean).join(' ');
    return [{ from: owner, to: pack.packId, pieceId: piece.pieceId, plate }];
  });
}

function planIn(selection: JointSelection) {
  switch (selection.status) {
    case 'Optimal':
      return selection;
    case 'Infeasible':
      return selection.nearest;
    case 'BudgetExhausted':
      return selection.best;
  }
}

function adjustersOf({ pack, fitted }: PackToPlan): Piece[] {
  const slots = new Set(pack.slots.filter((slot) => slot.isAdjuster).map(({ slotId }) => slotId));
  return fitted.filter(({ slotId }) => slots.has(slotId)).map(({ piece }) => piece);
}

function sourcesOf(asked: readonly PackToPlan[]): Source[] {
  const pieces = new Map(asked.flatMap(({ loosePieces }) => loosePieces).map((piece) => [piece.pieceId, piece]));
  const loose = new Map(asked.flatMap(choicesOf).map((choice) => [choice.id, choice]));
  const fitted = asked.flatMap((each) =>
    adjustersOf(each).map(
      (piece): Source => ({
        ...piece,
        id: pieceName(piece.pieceId),
        count: 1,
        label: [piece.tag, `from ${each.pack.name}`].filter(Boolean).join(' '),
        from: { pieceId: piece.pieceId },
        owner: each.pack.packId,
        piece,
      }),
    ),
  );
  const fromBins = [...loose.values()].map(
    (choice): Source => ({
      ...choice,
      owner: null,
      piece: ('pieceId' in choice.from && pieces.get(choice.from.pieceId)) || null,
    }),
  );
  return [...fitted, ...fromBins];
}

/** Of equally high plates each pack keeps its own; the rest comes from the bins, then from the other packs. */
function handOut(
  asked: readonly PackToPlan[],
  sources: readonly Source[],
  { thicknesses }: JointRequest,
  counts: readonly (readonly number[])[],
): Source[][] {
  const left = sources.map(({ count, heightFrom }) => (heightFrom === 'catalogue' ? 0 : count));
  const wanted = counts.map((given) => {
    const byHeight = new Map<number, number>();
    given.forEach((count, at) => {
      if (count > 0) byHeight.set(thicknesses[at]!, (byHeight.get(thicknesses[at]!) ?? 0) + count);
    });
    return byHeight;
  });
  const given: Source[][] = asked.map(() => []);
  const hand = (pack: number, isHis: (source: Source) => boolean): void => {
    sources.forEach((source, at) => {
      if (!isHis(source)) return;
      const height = thicknesses[at]!;
      while (left[at]! > 0 && (wanted[pack]!.get(height) ?? 0) > 0) {
        left[at]! -= 1;
        wanted[pack]!.set(height, wanted[pack]!.get(height)! - 1);
        given[pack]!.push(source);
      }
    });
  };
  for (const isHis of [
    ({ owner }: Source, packId: number) => owner === packId,
    ({ owner }: Source) => owner === null,
    () => true,
  ]) {
    for (const [at, { pack }] of asked.entries()) hand(at, (source) => isHis(source, pack.packId));
  }
  return given;
}

function optionOf(asked: PackToPlan, given: readonly Source[], isHeld: (id: string) => boolean): SwapOption | null {
  const { packId } = asked.pack;
  const kept = new Set(given.filter(({ owner }) => owner === packId).map(({ id }) => id));
  const add = given.filter(({ owner }) => owner !== packId);
  const remove = adjustersOf(asked)
    .map(({ pieceId }) => pieceName(pieceId))
    .filter((id) => !kept.has(id) && !isHeld(id));
  const placed = placeSet(asked, { remove, add }, add);
  if (!placed) return null;
  const staying = asked.fitted.map(({ piece }) => piece).filter(({ pieceId }) => !remove.includes(pieceName(pieceId)));
  // A plate of a can has no name yet: each stands for one that was measured as the can says.
  const coming = add.map((source, at): Piece => source.piece ?? { ...unnamed, ...shapeOf(source), pieceId: -1 - at });
  const { mean, standardDeviation } = predicted(asked, [...staying, ...coming]);
  return {
    ...placed,
    changes: remove.length,
    predicted_nm: mean,
    standardDeviation_nm: standardDeviation,
    expanded_nm: normalCoverageFactor(0.95) * standardDeviation,
    probabilityInBand: probabilityInside(mean, standardDeviation, asked.bounds),
    isNoBetter: false,
    equallyGood: 1,
  };
}

const unnamed = { tag: '', standardUncertainty_nm: null };
const shapeOf = ({ kind, outline, height_nm, heightFrom }: Source) => ({ kind, outline, height_nm, heightFrom });

function predicted({ records, settings }: PackToPlan, pieces: readonly Piece[]) {
  const knowledge = learnGap(packEvidence(records, pieces, settings));
  assert(knowledge.ok, 'only packs that were read share their plates');
  return clearanceOf(knowledge.value, pieces);
}

function clearanceOf(knowledge: GapKnowledge, pieces: readonly Piece[]) {
  const prediction = predictClearance(
    knowledge,
    pieces.map(({ pieceId }) => pieceName(pieceId)),
  );
  assert(prediction.ok, 'every piece of the candidate is part of the evidence');
  return prediction.value;
}

function sentenceOn(asked: readonly PackToPlan[], selection: JointSelection, step_nm: number): string {
  const { settings } = asked[0]!;
  const shown = (steps: number) =>
    `${formatLength(steps * step_nm, settings.lengthUnit, undefined, settings.decimalMark)} ${settings.lengthUnit}`;
  switch (selection.status) {
    case 'Optimal':
      return `Proven: no other sharing comes nearer. ${shown(selection.sum)} off in all, the farthest ${shown(selection.largest)}.`;
    case 'BudgetExhausted': {
      const what = selection.boundOn === 'sum' ? 'in all' : 'for the farthest';
      const bound = `none can be under ${shown(selection.bound)} ${what}`;
      if (!selection.best) return `The search ended before it found a sharing that fits; ${bound}.`;
      return `Not proven best: the search ended at ${shown(selection.best[selection.boundOn])} ${what}, and ${bound}.`;
    }
    case 'Infeasible': {
      const { blockedBy, buy } = selection;
      const who =
        blockedBy === 'stock'
          ? 'There are too few plates for all packs.'
          : blockedBy === 'jointly'
            ? 'Each pack could be brought in alone, not all at once.'
            : `${asked[blockedBy]!.pack.name} cannot be brought within its limits with any plates at hand.`;
      const purchase = buy
        ? `Buy ${buy.pieces} of ${shown(buy.thickness)}, then all fit.`
        : 'No single height on the list would make all fit.';
      return `${who} ${purchase}`;
    }
  }
}
