// The plates at hand, one by one and in cans: put in, measured again, looked over, put back, taken off the list.
import { formatLength } from '../../app/quantities/format-amount.ts';
import { parseAmount } from '../../app/quantities/parse-amount.ts';
import type { Settings } from '../../app/shop/shop.contract.ts';
import type { PieceKind } from '../../app/specs/spec-sheet.ts';
import { classOfHeight, type PlateHeight, parsePlateHeight } from '../../app/stock/plate-heights.ts';
import { faultsOf, plateName } from '../../app/stock/plate-words.ts';
import type { Flatness } from '../../app/stock/plates.contract.ts';
import { accepted, found, Refused } from '../database/errors.ts';
import type { Reading, Writing } from '../database/tables.ts';
import { getSettings, personAtWork } from '../shop/shop.service.ts';
import * as cans from './cans.repository.ts';
import * as repository from './plates.repository.ts';

/** As far off flat as a plate can be; beyond it a unit or a figure was mistyped. Common practice, no source. */
const mostOffFlat_nm = 2_540_000;

export async function listLoose(reading: Reading, { outline }: { outline: string }) {
  return {
    outlines: await repository.listOutlines(reading),
    pieces: await repository.listLoosePieces(reading, outline),
    cans: await cans.listCans(reading, outline),
  };
}

export async function addPiece(
  writing: Writing,
  now: string,
  input: { kind: PieceKind; outline: string; tag: string; typed: string; by: number },
) {
  await personAtWork(writing, input.by);
  const settings = await getSettings(writing);
  const height = accepted(parsePlateHeight(input.typed, input.kind, settings), 'typed');
  const pieceId = await insertMeasured(writing, now, { ...input, ...height, micrometer: '', batchId: null }, settings);
  return { pieceId };
}

/** A new single plate at its measured height, under a tag that no other plate of the outline has. */
export async function insertMeasured(
  writing: Writing,
  now: string,
  plate: PlateHeight & {
    kind: PieceKind;
    outline: string;
    tag: string;
    typed: string;
    micrometer: string;
    batchId: number | null;
    by: number;
  },
  settings: Settings,
): Promise<number> {
  if (/^[\d.,]+$/.test(plate.tag)) {
    throw new Refused('tag', `“${plate.tag}” looks like another height: give a tag a letter.`, 'tag');
  }
  if (plate.tag !== '' && (await repository.findPieceTagged(writing, plate.outline, plate.tag))) {
    throw new Refused('tag-taken', `There is already a plate with the tag ${plate.tag}: give this one another.`, 'tag');
  }
  return repository.insertPiece(writing, {
    ...plate,
    heightFrom: 'measured',
    standardUncertainty_nm: settings.micrometerUncertainty_nm,
    canId: null,
    now,
  });
}

export async function remeasurePiece(
  writing: Writing,
  now: string,
  input: { pieceId: number; typed: string; reason: string; by: number },
) {
  await personAtWork(writing, input.by);
  const settings = await getSettings(writing);
  const plate = await plateToldApart(writing, input.pieceId, settings);
  const height = accepted(parsePlateHeight(input.typed, plate.kind, settings), 'typed');
  await repository.insertHeight(writing, {
    ...input,
    ...height,
    heightFrom: 'measured',
    standardUncertainty_nm: settings.micrometerUncertainty_nm,
    now,
  });
  return {};
}

export async function discardPiece(
  writing: Writing,
  now: string,
  input: { pieceId: number; reason: string; by: number },
) {
  await personAtWork(writing, input.by);
  const settings = await getSettings(writing);
  const plate = await plateToldApart(writing, input.pieceId, settings);
  assertOutOfPacks(plate, settings);
  await repository.insertDiscard(writing, { ...input, wasMistyped: false, now });
  return {};
}

export async function lookOverPlate(
  writing: Writing,
  now: string,
  input: {
    pieceId: number;
    flat: Flatness;
    hasHotSpots: boolean;
    isGlazed: boolean;
    isConed: boolean;
    isUsable: boolean;
    note: string;
    offFlat: string;
    by: number;
  },
) {
  await personAtWork(writing, input.by);
  const settings = await getSettings(writing);
  await plateToldApart(writing, input.pieceId, settings);
  const look = { ...input, offFlat_nm: offFlatTyped(input, settings) };
  if (!look.isUsable && faultsOf(look, settings) === '') {
    throw new Refused('why', 'Say what is wrong with it, so that the next hand knows.', 'note');
  }
  await repository.insertLook(writing, { ...look, now });
  return {};
}

function offFlatTyped(look: { flat: Flatness; offFlat: string }, settings: Settings): number | null {
  if (look.offFlat === '') return null;
  if (look.flat !== 'not flat') {
    throw new Refused(
      'flat',
      'Only a plate that is not flat is off by something: say so, or leave it empty.',
      'offFlat',
    );
  }
  const { lengthUnit: unit, decimalMark } = settings;
  const off = parseAmount(look.offFlat, {
    quantity: 'length',
    unit,
    decimalMark,
    largest: mostOffFlat_nm,
    what: 'how far a plate is off flat',
  });
  const offFlat_nm = accepted(off, 'offFlat');
  if (offFlat_nm <= 0) throw new Refused('flat', 'It is off flat by more than nothing, or it is flat.', 'offFlat');
  return offFlat_nm;
}

export async function putInCan(
  writing: Writing,
  now: string,
  input: { pieceId: number; class_nm: number | null; by: number },
) {
  await personAtWork(writing, input.by);
  const settings = await getSettings(writing);
  const plate = await plateToldApart(writing, input.pieceId, settings);
  assertOutOfPacks(plate, settings);
  if (plate.state === 'do not use') {
    const look = await repository.newestLook(writing, plate.piece_id);
    const why = look ? faultsOf(look, settings) : '';
    throw new Refused('rejected', `${plateName(plate, settings)} is not to be used: ${why}.`);
  }
  if (plate.outline === '') throw new Refused('no-outline', 'Only plates with an outline go into a can.');
  const { kind, outline } = plate;
  const height_nm = input.class_nm === null ? plate.height_nm : canClass(plate.height_nm, input.class_nm);
  const canId = await cans.canOfHeight(writing, { kind, outline, height_nm });
  await cans.moveInCan(writing, { canId, change: 1, reason: cans.canReasons.putBack, by: input.by, now });
  await repository.insertCanReturn(writing, { pieceId: plate.piece_id, canId, by: input.by, now });
  return { canId };
}

/** The class a height falls into, or a refusal where classes are wider than the plate. */
export function canClass(height_nm: number, class_nm: number): number {
  const can_nm = classOfHeight(height_nm, class_nm);
  if (can_nm === 0) throw new Refused('class', 'These classes are wider than the plate is thick.', 'class_nm');
  return can_nm;
}

export async function addCan(
  writing: Writing,
  now: string,
  input: { kind: PieceKind; outline: string; typed: string; count: number; by: number },
) {
  await personAtWork(writing, input.by);
  const settings = await getSettings(writing);
  const { height_nm } = accepted(parsePlateHeight(input.typed, input.kind, settings), 'typed');
  const { kind, outline } = input;
  if (await cans.findCanOf(writing, kind, outline, height_nm)) {
    const shown = formatLength(height_nm, settings.lengthUnit, undefined, settings.decimalMark);
    throw new Refused('can-exists', `There is already a can of ${shown} for ${outline}: count that one.`, 'typed');
  }
  const canId = await cans.insertCan(writing, { kind, outline, height_nm });
  await cans.moveInCan(writing, { canId, change: input.count, reason: 'first count', by: input.by, now });
  return { canId };
}

export async function countCan(
  writing: Writing,
  now: string,
  input: { canId: number; count: number; reason: string; by: number },
) {
  await personAtWork(writing, input.by);
  const can = found(await cans.findCan(writing, input.canId), 'can');
  const change = input.count - can.count;
  if (change !== 0) await cans.moveInCan(writing, { ...input, change, now });
  return {};
}

export async function moveInCan(
  writing: Writing,
  now: string,
  input: { canId: number; change: number; reason: string; by: number },
) {
  await personAtWork(writing, input.by);
  const can = found(await cans.findCan(writing, input.canId), 'can');
  if (can.count + input.change < 0) {
    throw new Refused('can-empty', `There are only ${can.count} in this can: count it again or take fewer.`, 'change');
  }
  await cans.moveInCan(writing, { ...input, now });
  return {};
}

/** A plate that is still one by itself; refuses one among others in a can, and one taken off the list. */
export async function plateToldApart(
  reading: Reading,
  pieceId: number,
  settings: Settings,
): Promise<repository.Standing> {
  const plate = found(await repository.findStanding(reading, pieceId), 'plate');
  if (plate.returned_can_id !== null) {
    throw new Refused('in-can', `${plateName(plate, settings)} went into a can: it is not told apart any more.`);
  }
  if (plate.discard_reason !== null) {
    throw new Refused('discarded', `${plateName(plate, settings)} was taken off the list: it is not to be used.`);
  }
  return plate;
}

export function assertOutOfPacks(plate: repository.Standing, settings: Settings): void {
  if (plate.job_id !== null) {
    throw new Refused(
      'piece-in-use',
      `${plateName(plate, settings)} sits in ${plate.pack_name} of job ${plate.job_number}: take it out first.`,
    );
  }
}
