// A box of plates, measured one after another: into the can of its class or among the single plates, and back.
import type { Settings } from '../../app/shop/shop.contract.ts';
import type { PieceKind } from '../../app/specs/spec-sheet.ts';
import { type PlateHeight, parsePlateHeight } from '../../app/stock/plate-heights.ts';
import { plateName } from '../../app/stock/plate-words.ts';
import { oddHeight } from '../../app/stock/unlikely-height.ts';
import { accepted, found, Refused } from '../database/errors.ts';
import type { Reading, Writing } from '../database/tables.ts';
import { getSettings, personAtWork } from '../shop/shop.service.ts';
import * as cans from './cans.repository.ts';
import { sortFromBatch } from './ledger.service.ts';
import * as repository from './plates.repository.ts';
import { assertOutOfPacks, canClass, insertMeasured, plateToldApart } from './plates.service.ts';

type MeasuredPlate = {
  kind: PieceKind;
  outline: string;
  typed: string;
  into: { kind: 'single'; tag: string } | { kind: 'can'; class_nm: number };
  batchId: number | null;
  micrometer: string;
  isSure: boolean;
  by: number;
};

export async function addMeasured(writing: Writing, now: string, input: MeasuredPlate) {
  await personAtWork(writing, input.by);
  const settings = await getSettings(writing);
  const height = accepted(parsePlateHeight(input.typed, input.kind, settings), 'typed');
  if (!input.isSure) await assertLikely(writing, input, height, settings);
  const { batchId, by } = input;
  if (batchId !== null) await sortFromBatch(writing, now, { batchId, quantity: 1, by });
  const { height_nm } = height;
  if (input.into.kind === 'single') {
    const plate = { ...input, ...height, tag: input.into.tag };
    const pieceId = await insertMeasured(writing, now, plate, settings);
    return { height_nm, into: { kind: 'single' as const, pieceId } };
  }
  const can_nm = canClass(height_nm, input.into.class_nm);
  const { kind, outline, typed } = input;
  const canId = await cans.canOfHeight(writing, { kind, outline, height_nm: can_nm });
  const measured = { canId, change: 1, reason: cans.canReasons.measured, typed, batchId, by, now };
  const canMovementId = await cans.moveInCan(writing, measured);
  const { count } = found(await cans.findCan(writing, canId), 'can');
  return { height_nm, into: { kind: 'can' as const, canId, canMovementId, can_nm, count } };
}

async function assertLikely(
  reading: Reading,
  plate: { kind: PieceKind; outline: string },
  height: PlateHeight,
  settings: Settings,
): Promise<void> {
  const known = await repository.listKnownHeights(reading, plate.kind, plate.outline);
  const odd = oddHeight(height, known, settings);
  if (odd !== null) throw new Refused('unlikely', odd, 'typed');
}

export async function takeBackMeasured(
  writing: Writing,
  now: string,
  input: { canMovementId: number | null; pieceId: number | null; by: number },
) {
  await personAtWork(writing, input.by);
  if (input.canMovementId !== null && input.pieceId === null) {
    await takeOutOfCan(writing, now, { canMovementId: input.canMovementId, by: input.by });
  } else if (input.pieceId !== null && input.canMovementId === null) {
    await takeOffList(writing, now, { pieceId: input.pieceId, by: input.by });
  } else {
    throw new Refused('which-one', 'Say which one to take back: the single plate, or the one in the can.');
  }
  return {};
}

async function takeOutOfCan(writing: Writing, now: string, input: { canMovementId: number; by: number }) {
  const move = found(await cans.findCanMovement(writing, input.canMovementId), 'plate in a can');
  if (move.reason !== cans.canReasons.measured || move.change !== 1) {
    throw new Refused('not-measured', 'That was no plate measured into a can: count the can instead.');
  }
  if (move.was_taken_back) throw new Refused('taken-back', 'That plate was taken back already.');
  const can = found(await cans.findCan(writing, move.can_id), 'can');
  if (can.count < 1) throw new Refused('can-empty', 'The can is empty by now: count it again.');
  const { can_id: canId, batch_id: batchId } = move;
  const { by, canMovementId: takesBackId } = input;
  await cans.moveInCan(writing, { canId, change: -1, reason: cans.canReasons.mistyped, batchId, takesBackId, by, now });
  if (batchId !== null) await sortFromBatch(writing, now, { batchId, quantity: -1, by });
}

async function takeOffList(writing: Writing, now: string, input: { pieceId: number; by: number }) {
  const settings = await getSettings(writing);
  const plate = await plateToldApart(writing, input.pieceId, settings);
  assertOutOfPacks(plate, settings);
  if (await repository.wasEverFitted(writing, input.pieceId)) {
    throw new Refused(
      'was-used',
      `${plateName(plate, settings)} sat in a pack already: measure it again, or take it off the list.`,
    );
  }
  await repository.insertDiscard(writing, { ...input, reason: 'mistyped', wasMistyped: true, now });
  const { batch_id: batchId } = plate;
  if (batchId !== null) await sortFromBatch(writing, now, { batchId, quantity: -1, by: input.by });
}
