// The loose plates at hand, and how one becomes a piece of a pack.
import type { PieceSource } from '../../app/packs/packs.contract.ts';
import { formatLength } from '../../app/quantities/format-amount.ts';
import { parseAmount } from '../../app/quantities/parse-amount.ts';
import type { PieceKind } from '../../app/specs/spec-sheet.ts';
import type { SavedSlot } from '../../app/specs/specs.contract.ts';
import { accepted, found, Refused } from '../database/errors.ts';
import type { Reading, Writing } from '../database/tables.ts';
import { getSettings, personAtWork } from '../shop/shop.service.ts';
import * as repository from './stock.repository.ts';

// Common practice, no source: outside of these a unit or a figure was mistyped. Plates between a fiftieth and four tenths
// of an inch; backing plates, apply plates and rings up to an inch.
const thinnest_nm = 508_000;
const thickestPlate_nm = 10_160_000;
const thickestPart_nm = 25_400_000;
const isPlate = (kind: PieceKind): boolean => kind === 'steel' || kind === 'friction' || kind === 'wave plate';

export async function listLoose(reading: Reading, { outline }: { outline: string }) {
  return {
    outlines: await repository.listOutlines(reading),
    pieces: await repository.listLoosePieces(reading, outline),
    cans: await repository.listCans(reading, outline),
  };
}

export async function addPiece(
  writing: Writing,
  now: string,
  input: { kind: PieceKind; outline: string; tag: string; typed: string; by: number },
) {
  await personAtWork(writing, input.by);
  const pieceId = await measuredPiece(writing, now, input);
  return { pieceId };
}

async function measuredPiece(
  writing: Writing,
  now: string,
  piece: { kind: PieceKind; outline: string; tag: string; typed: string; by: number },
): Promise<number> {
  const height_nm = await heightTyped(writing, piece.kind, piece.typed);
  if (/^[\d.,]+$/.test(piece.tag)) {
    throw new Refused('tag', `“${piece.tag}” looks like another height: give a tag a letter.`, 'tag');
  }
  if (piece.tag !== '' && (await repository.findPieceTagged(writing, piece.outline, piece.tag))) {
    throw new Refused('tag-taken', `There is already a plate with the tag ${piece.tag}: give this one another.`, 'tag');
  }
  return repository.insertPiece(writing, { ...piece, height_nm, heightFrom: 'measured', canId: null, now });
}

async function heightTyped(reading: Reading, kind: PieceKind, typed: string): Promise<number> {
  const { lengthUnit, decimalMark } = await getSettings(reading);
  const height = parseAmount(typed, {
    quantity: 'length',
    unit: lengthUnit,
    decimalMark,
    largest: isPlate(kind) ? thickestPlate_nm : thickestPart_nm,
    what: `a ${kind}`,
  });
  const height_nm = accepted(height, 'typed');
  if (height_nm < thinnest_nm) {
    const shown = `${formatLength(height_nm, lengthUnit, undefined, decimalMark)} ${lengthUnit}`;
    throw new Refused('implausible', `“${typed}” would be ${shown}, too thin for a ${kind}: check it.`, 'typed');
  }
  return height_nm;
}

export async function remeasurePiece(
  writing: Writing,
  now: string,
  input: { pieceId: number; typed: string; reason: string; by: number },
) {
  await personAtWork(writing, input.by);
  const piece = found(await repository.findPiece(writing, input.pieceId), 'plate');
  const height_nm = await heightTyped(writing, piece.kind, input.typed);
  await repository.insertHeight(writing, { ...input, height_nm, heightFrom: 'measured', now });
  return {};
}

export async function discardPiece(
  writing: Writing,
  now: string,
  input: { pieceId: number; reason: string; by: number },
) {
  await personAtWork(writing, input.by);
  const piece = found(await repository.findPiece(writing, input.pieceId), 'plate');
  const place = await repository.whereabouts(writing, piece.pieceId);
  if (place) {
    const named = await nameOf(writing, piece.height_nm, piece.tag);
    throw new Refused(
      'piece-in-use',
      `${named} sits in ${place.pack_name} of job ${place.job_number}: take it out first.`,
    );
  }
  if (await repository.findDiscard(writing, piece.pieceId))
    throw new Refused('discarded', 'That plate was taken off the list already.');
  await repository.insertDiscard(writing, { ...input, now });
  return {};
}

export async function addCan(
  writing: Writing,
  now: string,
  input: { kind: PieceKind; outline: string; typed: string; count: number; by: number },
) {
  await personAtWork(writing, input.by);
  const height_nm = await heightTyped(writing, input.kind, input.typed);
  const { kind, outline } = input;
  if (await repository.findCanOf(writing, kind, outline, height_nm)) {
    throw new Refused(
      'can-exists',
      `There is already a can of ${input.typed} for ${outline}: count that one.`,
      'typed',
    );
  }
  const canId = await repository.insertCan(writing, { kind, outline, height_nm });
  await repository.moveInCan(writing, { canId, change: input.count, reason: 'first count', by: input.by, now });
  return { canId };
}

export async function countCan(
  writing: Writing,
  now: string,
  input: { canId: number; count: number; reason: string; by: number },
) {
  await personAtWork(writing, input.by);
  const can = found(await repository.findCan(writing, input.canId), 'can');
  const change = input.count - can.count;
  if (change !== 0) await repository.moveInCan(writing, { ...input, change, now });
  return {};
}

/**
 * The piece that a person put into `slot` of the pack `pack` of a job: one at hand, one measured just now, one out
 * of a can, or one bought by its catalogue height. Refuses what does not fit or sits somewhere else.
 */
export async function pieceForSlot(
  writing: Writing,
  now: string,
  slot: SavedSlot,
  from: PieceSource,
  pack: { jobId: number; packId: number; by: number },
): Promise<number> {
  const made = { kind: slot.kind, outline: slot.outline, by: pack.by, now };
  if ('typed' in from) {
    return measuredPiece(writing, now, { ...made, tag: from.tag ?? '', typed: from.typed });
  }
  if ('catalogue_nm' in from) {
    if (!slot.catalogue_nm.includes(from.catalogue_nm)) {
      throw new Refused('not-in-catalogue', `This ${slot.kind} is not made in that height.`);
    }
    const { lengthUnit } = await getSettings(writing);
    const typed = formatLength(from.catalogue_nm, lengthUnit);
    return repository.insertPiece(writing, {
      ...made,
      tag: '',
      height_nm: from.catalogue_nm,
      heightFrom: 'catalogue',
      typed,
      canId: null,
    });
  }
  if ('canId' in from) return pieceOutOfCan(writing, slot, from.canId, made);
  const piece = found(await repository.findPiece(writing, from.pieceId), 'plate');
  if (await repository.findDiscard(writing, piece.pieceId)) {
    const named = await nameOf(writing, piece.height_nm, piece.tag);
    throw new Refused('discarded', `${named} was taken off the list: it is not to be used.`);
  }
  const place = await repository.whereabouts(writing, piece.pieceId);
  if (place && (place.job_id !== pack.jobId || place.pack_id !== pack.packId)) {
    const named = await nameOf(writing, piece.height_nm, piece.tag);
    throw new Refused(
      'piece-in-use',
      `${named} sits in ${place.pack_name} of job ${place.job_number}: a plate cannot be in two packs.`,
    );
  }
  if (piece.kind !== slot.kind || piece.outline !== slot.outline) {
    throw new Refused(
      'does-not-fit',
      `That is a ${piece.kind} for ${piece.outline}; this slot takes a ${slot.kind} for ${slot.outline}.`,
    );
  }
  return piece.pieceId;
}

/** The plate of a slot that nobody measured, at its nominal height; refuses a slot that has none. */
export async function nominalPieceForSlot(
  writing: Writing,
  now: string,
  slot: SavedSlot,
  name: string,
  by: number,
): Promise<number> {
  if (slot.nominal_nm === null) throw new Refused('height', `${name}: type its height first.`, `slot ${slot.slotId}`);
  const { lengthUnit } = await getSettings(writing);
  return repository.insertPiece(writing, {
    kind: slot.kind,
    outline: slot.outline,
    tag: '',
    height_nm: slot.nominal_nm,
    heightFrom: 'nominal',
    typed: formatLength(slot.nominal_nm, lengthUnit),
    canId: null,
    by,
    now,
  });
}

async function pieceOutOfCan(
  writing: Writing,
  slot: SavedSlot,
  canId: number,
  made: { kind: PieceKind; outline: string; by: number; now: string },
): Promise<number> {
  const can = found(await repository.findCan(writing, canId), 'can');
  if (can.kind !== slot.kind || can.outline !== slot.outline) {
    throw new Refused(
      'does-not-fit',
      `That can holds ${can.kind}s for ${can.outline}; this slot takes a ${slot.kind} for ${slot.outline}.`,
    );
  }
  const { lengthUnit } = await getSettings(writing);
  const height = formatLength(can.height_nm, lengthUnit);
  if (can.count < 1) throw new Refused('can-empty', `The can of ${height} is empty: count it again or take another.`);
  await repository.moveInCan(writing, { canId, change: -1, reason: 'into a pack', by: made.by, now: made.now });
  return repository.insertPiece(writing, {
    ...made,
    tag: '',
    height_nm: can.height_nm,
    heightFrom: 'measured',
    typed: height,
    canId,
  });
}

async function nameOf(reading: Reading, height_nm: number, tag: string): Promise<string> {
  const { lengthUnit } = await getSettings(reading);
  const height = `${formatLength(height_nm, lengthUnit)} ${lengthUnit}`;
  return tag === '' ? `The plate of ${height}` : `${tag} (${height})`;
}
