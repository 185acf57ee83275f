// What is known of the plates: every outline, the list of one with its picture, one plate in full, what happened last.
import { formatLength } from '../../app/quantities/format-amount.ts';
import type { Settings } from '../../app/shop/shop.contract.ts';
import { faultsOf } from '../../app/stock/plate-words.ts';
import type { OutlineLine, Plate, PlateInFull, PlateState } from '../../app/stock/plates.contract.ts';
import { found } from '../database/errors.ts';
import type { Reading } from '../database/tables.ts';
import { getSettings } from '../shop/shop.service.ts';
import { listCans } from './cans.repository.ts';
import { listLooks, pieceOfRow } from './plates.repository.ts';
import * as repository from './plates-list.repository.ts';

export async function listOutlines(reading: Reading): Promise<OutlineLine[]> {
  const kinds = Map.groupBy(await repository.listKinds(reading), (row) => row.outline);
  const packs = Map.groupBy(await repository.listPacksOfOutlines(reading), (row) => row.outline);
  const loose = Map.groupBy(await repository.countLoose(reading), (row) => row.outline);
  const cans = Map.groupBy(await listCans(reading, ''), (can) => can.outline);
  return [...kinds].map(([outline, rows]) => ({
    outline,
    kinds: rows.map((row) => row.kind),
    packs: (packs.get(outline) ?? []).map((row) => ({
      familyId: row.family_id,
      familyName: row.family_name,
      packId: row.pack_id,
      packName: row.name,
    })),
    free: totalOf(loose.get(outline)),
    inCans: totalOf(cans.get(outline)),
  }));
}

function totalOf(counted: ReadonlyArray<{ count: number }> = []): number {
  return counted.reduce((sum, { count }) => sum + count, 0);
}

export async function listPlates(
  reading: Reading,
  input: { outline: string; text: string; state: PlateState | null; offset: number; limit: number },
) {
  const settings = await getSettings(reading);
  const { lengthUnit } = settings;
  const { outline, text, state } = input;
  const histogram = await repository.countByHeight(reading, { outline, text: '', lengthUnit });
  const matching = text === '' ? histogram : await repository.countByHeight(reading, { outline, text, lengthUnit });
  const countIn = (wanted: PlateState) => totalOf(matching.filter((each) => each.state === wanted));
  const byState = {
    free: countIn('free'),
    'in a unit': countIn('in a unit'),
    'read again': countIn('read again'),
    'do not use': countIn('do not use'),
  };
  const rows = await repository.listWindow(reading, { ...input, lengthUnit });
  return {
    total: state === null ? totalOf(matching) : byState[state],
    byState,
    plates: rows.map((row) => plateOfRow(row, settings)),
    cans: await listCans(reading, outline),
    histogram,
  };
}

export async function getPlate(reading: Reading, { pieceId }: { pieceId: number }): Promise<PlateInFull> {
  const settings = await getSettings(reading);
  const row = found(await repository.findPlate(reading, pieceId), 'plate');
  const heights = await repository.listHeights(reading, pieceId);
  return {
    ...plateOfRow(row, settings),
    batchId: row.batch_id,
    heights: heights.map((height) => ({
      height_nm: height.height_nm,
      heightFrom: height.height_from,
      points_nm: height.points_nm,
      typed: height.typed,
      micrometer: height.micrometer,
      standardUncertainty_nm: height.standard_uncertainty_nm,
      reason: height.reason,
      at: height.measured_at,
      by: height.initials,
    })),
    looks: await listLooks(reading, pieceId),
  };
}

function plateOfRow(row: repository.PlateRow, settings: Settings): Plate {
  const { job_id: jobId, job_number: jobNumber, pack_id: packId, pack_name: packName } = row;
  const isPlaced = jobId !== null && jobNumber !== null && packId !== null && packName !== null;
  return {
    ...pieceOfRow(row),
    state: row.state,
    why: whyNotFree(row, settings),
    where: isPlaced ? { jobId, jobNumber, packId, packName } : null,
    canId: row.can_id,
    spread_nm: row.spread_nm,
    measuredAt: row.measured_at,
    measuredBy: row.initials,
  };
}

function whyNotFree(row: repository.PlateRow, settings: Settings): string {
  const sits = row.job_number === null ? '' : `in ${row.pack_name} of job ${row.job_number}`;
  switch (row.state) {
    case 'free':
      return '';
    case 'in a unit':
      return sits;
    case 'read again':
      return 'came out of a pack since it was measured';
    case 'do not use':
      return [unusableBecause(row, settings), sits].filter(Boolean).join(', ');
  }
}

function unusableBecause(row: repository.PlateRow, settings: Settings): string {
  if (row.returned_can_nm !== null) {
    return `among the others in the can of ${formatLength(row.returned_can_nm, settings.lengthUnit, undefined, settings.decimalMark)}`;
  }
  if (row.discard_reason !== null) return row.discard_reason;
  if (row.flat === null) return '';
  return faultsOf(
    {
      flat: row.flat,
      offFlat_nm: row.off_flat_nm,
      hasHotSpots: row.has_hot_spots === 1,
      isGlazed: row.is_glazed === 1,
      isConed: row.is_coned === 1,
      note: row.note ?? '',
    },
    settings,
  );
}
