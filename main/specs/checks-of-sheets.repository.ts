// The checks of spec sheets out of the file: one statement for each thing they hold, however many checks they are.
import type { Limits } from '../../app/specs/spec-sheet.ts';
import type { SavedCheck } from '../../app/specs/specs.contract.ts';
import { among } from '../database/among.ts';
import type { Reading } from '../database/tables.ts';

export async function listChecks(reading: Reading, revisionId: number): Promise<SavedCheck[]> {
  return filled(
    reading,
    await checks(reading).where('checks.revision_id', '=', revisionId).orderBy('checks.position').execute(),
  );
}

export async function findCheck(reading: Reading, checkId: number): Promise<SavedCheck | undefined> {
  return (await findChecks(reading, [checkId]))[0];
}

/** Those of these checks that are there, in no promised order. */
export async function findChecks(reading: Reading, checkIds: readonly number[]): Promise<SavedCheck[]> {
  return filled(reading, await checks(reading).where('check_id', 'in', among(checkIds)).execute());
}

function checks(reading: Reading) {
  return reading
    .selectFrom('checks')
    .leftJoin('packs', 'packs.pack_id', 'checks.pack_id')
    .selectAll('checks')
    .select('packs.name as pack_name');
}

type CheckRow = Awaited<ReturnType<ReturnType<typeof checks>['execute']>>[number];
type Variants = Extract<Limits, { kind: 'variants' }>['variants'];

async function filled(reading: Reading, rows: readonly CheckRow[]): Promise<SavedCheck[]> {
  if (rows.length === 0) return [];
  const these = among(rows.map((row) => row.check_id));
  const shims = Map.groupBy(
    await reading.selectFrom('check_shims').selectAll().where('check_id', 'in', these).orderBy('height_nm').execute(),
    (row) => row.check_id,
  );
  const variants = Map.groupBy(
    await reading.selectFrom('check_variants').selectAll().where('check_id', 'in', these).orderBy('position').execute(),
    (row) => row.check_id,
  );
  return rows.map((row) => ({
    checkId: row.check_id,
    packId: row.pack_id,
    packName: row.pack_name,
    name: row.name,
    group: row.heading,
    method: row.method,
    quantity: row.quantity,
    unit: row.unit as SavedCheck['unit'],
    limits: limitsOf(
      row,
      (variants.get(row.check_id) ?? []).map((each) => ({
        name: each.name,
        nominal: each.nominal_amount,
        within: each.within_amount,
      })),
    ),
    holdsFor: row.holds_for,
    waveState: row.wave_state,
    spots: row.spots,
    shims_nm: (shims.get(row.check_id) ?? []).map((each) => each.height_nm),
    sourceNote: row.source_note,
  }));
}

// The table's CHECKs promise that the amounts a kind of limit needs are there.
function limitsOf(row: CheckRow, variants: Variants): Limits {
  const [low, target, high] = [row.low_amount ?? 0, row.target_amount ?? 0, row.high_amount ?? 0];
  switch (row.limit_kind) {
    case 'range':
      return { kind: 'range', low, high };
    case 'target':
      return { kind: 'target', low, target, high };
    case 'minimum':
      return { kind: 'minimum', low };
    case 'maximum':
      return { kind: 'maximum', high };
    case 'variants':
      return { kind: 'variants', variants };
  }
}
