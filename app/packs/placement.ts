// Which piece goes into which slot, so that the family's rules hold; the sums are settled before.
import { assert } from '../base/assert.ts';
import { accept, type Result, refuse } from '../base/result.ts';
import type { PieceKind, PlacementRule } from '../specs/spec-sheet.ts';

/** A slot, in order from the piston; pieces of the same kind and outline can stand in for each other. */
export type SlotToFill = { readonly kind: PieceKind; readonly outline: string };

export type PieceToPlace = {
  readonly id: string;
  readonly kind: PieceKind;
  readonly outline: string;
  readonly height_nm: number;
};

export type Placement = {
  /** One piece a slot, from the piston. */
  readonly pieces: readonly PieceToPlace[];
  /** Pieces that were in the pack and go into another slot, from the piston; slots count from 0. */
  readonly moved: readonly { readonly id: string; readonly fromSlot: number; readonly toSlot: number }[];
};

type FormatHeight = (height_nm: number) => string;

/** The rule as a person would say it: "The thinnest steel sits in slot 2 or 3, counted from the piston." */
export function ruleSentence(rule: PlacementRule): string {
  if (rule.kind === 'all-equal') return `All ${rule.pieceKind}s have the same height.`;
  const place = rule.places.map(String).join(' or ');
  return `The ${extremeName(rule)} ${rule.pieceKind} sits in slot ${place}, counted from the piston.`;
}

/**
 * The rules that a pack breaks, one plain sentence each: "The thinnest steel (84.0) must sit in slot 2 or 3, not in
 * slot 1." Slots are numbered among those of the rule's kind, 1 nearest to the piston. `heights_nm` has one height a
 * slot, null where it is not known; a kind with an unknown height is not judged. Of several pieces equally thin it is
 * enough that one sits where the rule wants it.
 */
export function brokenRules(
  slots: readonly Pick<SlotToFill, 'kind'>[],
  heights_nm: readonly (number | null)[],
  rules: readonly PlacementRule[],
  formatHeight: FormatHeight,
): string[] {
  return rules.flatMap((rule) => {
    const heights = heights_nm.filter((_, slot) => slots[slot]?.kind === rule.pieceKind);
    if (heights.length === 0 || !heights.every((height) => height !== null)) return [];
    const thinnest = Math.min(...heights);
    const thickest = Math.max(...heights);
    if (rule.kind === 'all-equal') {
      if (thinnest === thickest) return [];
      const range = `${formatHeight(thinnest)} to ${formatHeight(thickest)}`;
      return [`All ${rule.pieceKind}s must have the same height, not ${range}.`];
    }
    const extreme = rule.kind === 'thinnest-in' ? thinnest : thickest;
    if (rule.places.some((place) => heights[place - 1] === extreme)) return [];
    const found = heights.flatMap((height, index) => (height === extreme ? [index + 1] : []));
    const name = `${extremeName(rule)} ${rule.pieceKind} (${formatHeight(extreme)})`;
    return [`The ${name} must sit in slot ${rule.places.join(' or ')}, not in slot ${found.join(' or ')}.`];
  });
}

/**
 * Puts the added pieces into the empty slots (null in `kept`) and moves as few of the kept ones as the rules allow.
 * Equally few: the first way found going from the piston, each rule's piece taken in the order kept, then added.
 * Refuses in one sentence where the pieces do not fill the slots or no order satisfies a rule.
 */
export function placePieces(
  slots: readonly SlotToFill[],
  kept: readonly (PieceToPlace | null)[],
  added: readonly PieceToPlace[],
  rules: readonly PlacementRule[],
  formatHeight: FormatHeight,
): Result<Placement> {
  assert(kept.length === slots.length, 'one kept piece or null a slot');
  for (const slot of slots) {
    const empty = slots.filter((each, index) => fits(slot, each) && kept[index] === null).length;
    const ready = added.filter((piece) => fits(slot, piece)).length;
    if (empty !== ready)
      return refuse(
        'slots-not-filled',
        `There ${ready === 1 ? 'is' : 'are'} ${count(ready, slot.kind)} for ${count(empty, 'empty slot')}.`,
      );
  }
  const stray = added.find((piece) => !slots.some((slot) => fits(slot, piece)));
  if (stray) return refuse('no-slot', `This pack has no slot for a ${stray.kind} of that outline.`);
  const placement = bestPlacement(slots, kept, added, rules);
  const heights = (placement?.pieces ?? arrange(slots, kept, added, new Map()).pieces).map((piece) => piece.height_nm);
  const [broken] = brokenRules(slots, heights, rules, formatHeight);
  if (broken !== undefined) return refuse('rule-broken', broken);
  assert(placement !== null, 'an arrangement that breaks no rule was found');
  return accept(placement);
}

/** Each rule pins one piece that satisfies it to one of its places; every combination is tried. */
function bestPlacement(
  slots: readonly SlotToFill[],
  kept: readonly (PieceToPlace | null)[],
  added: readonly PieceToPlace[],
  rules: readonly PlacementRule[],
): Placement | null {
  const all = [...kept.filter((piece) => piece !== null), ...added];
  let best: Placement | null = null;
  const pinNext = (rest: readonly PlacementRule[], pinned: ReadonlyMap<number, PieceToPlace>) => {
    const [rule, ...later] = rest;
    if (rule === undefined) {
      const placement = arrange(slots, kept, added, pinned);
      if (best === null || placement.moved.length < best.moved.length) best = placement;
      return;
    }
    if (rule.kind === 'all-equal') return pinNext(later, pinned);
    const ofKind = all.filter((piece) => piece.kind === rule.pieceKind);
    if (ofKind.length === 0) return pinNext(later, pinned);
    const heights = ofKind.map((piece) => piece.height_nm);
    const extreme = rule.kind === 'thinnest-in' ? Math.min(...heights) : Math.max(...heights);
    const places = slots.flatMap((slot, index) => (slot.kind === rule.pieceKind ? [index] : []));
    for (const place of rule.places) {
      const slot = places[place - 1];
      if (slot === undefined) continue;
      for (const piece of ofKind) {
        if (piece.height_nm !== extreme || !fits(slots[slot]!, piece)) continue;
        const isElsewhere = [...pinned].some(([at, other]) => other === piece && at !== slot);
        if (isElsewhere || (pinned.get(slot) ?? piece) !== piece) continue;
        pinNext(later, new Map(pinned).set(slot, piece));
      }
    }
  };
  pinNext(rules, new Map());
  return best;
}

/** Pinned pieces where they are pinned, kept ones where they were if that is still free, the rest from the piston on. */
function arrange(
  slots: readonly SlotToFill[],
  kept: readonly (PieceToPlace | null)[],
  added: readonly PieceToPlace[],
  pinned: ReadonlyMap<number, PieceToPlace>,
): Placement {
  const isPinned = (piece: PieceToPlace) => [...pinned.values()].includes(piece);
  const placed: (PieceToPlace | null)[] = slots.map((_, slot) => {
    const piece = kept[slot] ?? null;
    return pinned.get(slot) ?? (piece !== null && isPinned(piece) ? null : piece);
  });
  const waiting = [...kept, ...added].filter((piece) => piece !== null && !placed.includes(piece)) as PieceToPlace[];
  for (const piece of waiting) {
    const slot = slots.findIndex((each, index) => placed[index] === null && fits(each, piece));
    assert(slot >= 0, 'as many pieces as slots of every outline');
    placed[slot] = piece;
  }
  const moved = placed.flatMap((piece, toSlot) => {
    const fromSlot = kept.indexOf(piece);
    return fromSlot === toSlot || fromSlot < 0 ? [] : [{ id: piece!.id, fromSlot, toSlot }];
  });
  return { pieces: placed as PieceToPlace[], moved };
}

function fits(a: Pick<SlotToFill, 'kind' | 'outline'>, b: Pick<SlotToFill, 'kind' | 'outline'>): boolean {
  return a.kind === b.kind && a.outline === b.outline;
}

function extremeName(rule: PlacementRule): string {
  return rule.kind === 'thinnest-in' ? 'thinnest' : 'thickest';
}

function count(number: number, name: string): string {
  return `${number} ${name}${number === 1 ? '' : 's'}`;
}
