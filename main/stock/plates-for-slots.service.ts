// How a plate becomes a piece of a pack: one at hand, one just measured, one out of a can, one bought, one expected.
import type { PieceSource } from '../../app/packs/packs.contract.ts';
import { formatLength } from '../../app/quantities/format-amount.ts';
import type { Settings } from '../../app/shop/shop.contract.ts';
import type { PieceKind } from '../../app/specs/spec-sheet.ts';
import type { SavedSlot } from '../../app/specs/specs.contract.ts';
import { parsePlateHeight } from '../../app/stock/plate-heights.ts';
import { faultsOf, plateName } from '../../app/stock/plate-words.ts';
import { accepted, found, Refused } from '../database/errors.ts';
import type { Reading, Writing } from '../database/tables.ts';
import { currentStage } from '../jobs/jobs.repository.ts';
import { getJobRow } from '../jobs/jobs.service.ts';
import { getSettings } from '../shop/shop.service.ts';
import { canReasons, findCan, moveInCan } from './cans.repository.ts';
import * as repository from './plates.repository.ts';
import { insertMeasured, plateToldApart } from './plates.service.ts';

/** The pack of a ticket that a plate goes into, and whose hand puts it there. */
export type IntoPack = { readonly jobId: number; readonly packId: number; readonly by: number };

/**
 * The piece that a person put into `slot` of a pack. Refuses what does not fit, is not to be used, or sits somewhere
 * else; a plate that an earlier closed ticket of the same unit left in it is taken over.
 */
export async function pieceForSlot(
  writing: Writing,
  now: string,
  slot: SavedSlot,
  from: PieceSource,
  pack: IntoPack,
): Promise<number> {
  const settings = await getSettings(writing);
  const made = { kind: slot.kind, outline: slot.outline, by: pack.by };
  if ('typed' in from) {
    const height = accepted(parsePlateHeight(from.typed, slot.kind, settings), 'typed');
    const plate = { ...made, ...height, tag: from.tag ?? '', typed: from.typed, micrometer: '', batchId: null };
    return insertMeasured(writing, now, plate, settings);
  }
  if ('catalogue_nm' in from) {
    if (!slot.catalogue_nm.includes(from.catalogue_nm)) {
      throw new Refused('not-in-catalogue', `This ${slot.kind} is not made in that height.`);
    }
    const height = { height_nm: from.catalogue_nm, heightFrom: 'catalogue' } as const;
    return insertUnmeasured(writing, now, { ...made, ...height, canId: null }, settings);
  }
  if ('canId' in from) return pieceOutOfCan(writing, now, { ...made, canId: from.canId }, settings);
  const plate = await plateForPack(writing, from.pieceId, pack, settings);
  if (plate.kind !== slot.kind || plate.outline !== slot.outline) {
    throw new Refused(
      'does-not-fit',
      `That is a ${plate.kind} for ${plate.outline}; this slot takes a ${slot.kind} for ${slot.outline}.`,
    );
  }
  return plate.piece_id;
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
  const { kind, outline, nominal_nm: height_nm } = slot;
  const plate = { kind, outline, height_nm, heightFrom: 'nominal', canId: null, by } as const;
  return insertUnmeasured(writing, now, plate, await getSettings(writing));
}

/** The plate that stays where the last mock-up had it; refuses one that went elsewhere since, or is not to be used. */
export async function pieceThatStays(writing: Writing, pieceId: number, pack: IntoPack): Promise<number> {
  return (await plateForPack(writing, pieceId, pack, await getSettings(writing))).piece_id;
}

async function plateForPack(
  reading: Reading,
  pieceId: number,
  pack: IntoPack,
  settings: Settings,
): Promise<repository.Standing> {
  const plate = await plateToldApart(reading, pieceId, settings);
  if (plate.state === 'do not use') {
    const look = found(await repository.newestLook(reading, pieceId), 'look at this plate');
    throw new Refused('rejected', `${plateName(plate, settings)} is not to be used: ${faultsOf(look, settings)}.`);
  }
  const isElsewhere = plate.job_id !== null && (plate.job_id !== pack.jobId || plate.pack_id !== pack.packId);
  if (isElsewhere && !(await isLeftInUnit(reading, plate, pack))) {
    throw new Refused(
      'piece-in-use',
      `${plateName(plate, settings)} sits in ${plate.pack_name} of job ${plate.job_number}: a plate cannot be in two packs.`,
    );
  }
  return plate;
}

/** A closed ticket left it in the unit that this ticket is for. */
async function isLeftInUnit(reading: Reading, plate: repository.Standing, pack: IntoPack): Promise<boolean> {
  if (plate.job_id === null || plate.job_id === pack.jobId) return false;
  const job = await getJobRow(reading, pack.jobId);
  if (plate.unit_id !== job.unit_id) return false;
  return (await currentStage(reading, plate.job_id)).is_closed === 1;
}

async function pieceOutOfCan(
  writing: Writing,
  now: string,
  from: { kind: PieceKind; outline: string; canId: number; by: number },
  settings: Settings,
): Promise<number> {
  const can = found(await findCan(writing, from.canId), 'can');
  if (can.kind !== from.kind || can.outline !== from.outline) {
    throw new Refused(
      'does-not-fit',
      `That can holds ${can.kind}s for ${can.outline}; this slot takes a ${from.kind} for ${from.outline}.`,
    );
  }
  if (can.count < 1) {
    const height = formatLength(can.height_nm, settings.lengthUnit, undefined, settings.decimalMark);
    throw new Refused('can-empty', `The can of ${height} is empty: count it again or take another.`);
  }
  await moveInCan(writing, { canId: can.canId, change: -1, reason: canReasons.intoPack, by: from.by, now });
  return insertUnmeasured(writing, now, { ...from, height_nm: can.height_nm, heightFrom: 'measured' }, settings);
}

/** A new plate at a height that nobody typed for it. */
function insertUnmeasured(
  writing: Writing,
  now: string,
  plate: {
    kind: PieceKind;
    outline: string;
    height_nm: number;
    heightFrom: 'measured' | 'catalogue' | 'nominal';
    canId: number | null;
    by: number;
  },
  { lengthUnit, decimalMark }: Settings,
): Promise<number> {
  const typed = formatLength(plate.height_nm, lengthUnit, undefined, decimalMark);
  return repository.insertPiece(writing, { ...plate, tag: '', typed, now });
}
