// The transmissions themselves.
import type { Unit, Use } from '../../app/units/units.contract.ts';
import { found } from '../database/errors.ts';
import type { Reading, Writing } from '../database/tables.ts';

export async function findUnits(reading: Reading, { text }: { text: string }) {
  const fragment = `%${text.replace(/[\\%_]/g, '\\$&')}%`;
  const rows = await units(reading)
    .select((row) =>
      row
        .selectFrom('jobs')
        .whereRef('jobs.unit_id', '=', 'units.unit_id')
        .select(row.fn.countAll<number>().as('n'))
        .as('visits'),
    )
    .where((row) =>
      row.or([
        row('serial', 'like', fragment),
        row('vehicle', 'like', fragment),
        row('families.name', 'like', fragment),
      ]),
    )
    .orderBy('unit_id', 'desc')
    .limit(20)
    .execute();
  return rows.map((row) => ({ ...unitOfRow(row), visits: row.visits ?? 0 }));
}

export async function getUnit(reading: Reading, unitId: number): Promise<Unit> {
  return unitOfRow(found(await units(reading).where('unit_id', '=', unitId).executeTakeFirst(), 'unit'));
}

/** The unit that came in, which is added when it was never here. */
export async function unitAtCheckIn(
  writing: Writing,
  given: { unitId: number } | { familyId: number; serial: string; vehicle: string; use: Use },
): Promise<Unit> {
  if ('unitId' in given) return getUnit(writing, given.unitId);
  found(
    await writing.selectFrom('families').select('family_id').where('family_id', '=', given.familyId).executeTakeFirst(),
    'family',
  );
  const { unit_id } = await writing
    .insertInto('units')
    .values({ family_id: given.familyId, serial: given.serial, vehicle: given.vehicle, use: given.use })
    .returning('unit_id')
    .executeTakeFirstOrThrow();
  return getUnit(writing, unit_id);
}

function units(reading: Reading) {
  return reading
    .selectFrom('units')
    .innerJoin('families', 'families.family_id', 'units.family_id')
    .select(['unit_id', 'units.family_id', 'families.name as family_name', 'serial', 'vehicle', 'use']);
}

function unitOfRow(row: {
  unit_id: number;
  family_id: number;
  family_name: string;
  serial: string;
  vehicle: string;
  use: Use;
}): Unit {
  return {
    unitId: row.unit_id,
    familyId: row.family_id,
    familyName: row.family_name,
    serial: row.serial,
    vehicle: row.vehicle,
    use: row.use,
  };
}
