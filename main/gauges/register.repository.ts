// Gauges, their cards and their checks in and out of the file.
import type { GaugeCheck } from '../../app/gauges/register.contract.ts';
import type { Reading, Writing } from '../database/tables.ts';
import type { GaugeCardsTable, GaugesTable } from './gauges.tables.ts';

export function listGauges(reading: Reading) {
  return reading.selectFrom('gauges_as_known').selectAll().orderBy('is_retired').orderBy('tag').execute();
}

export function findGauge(reading: Reading, gaugeId: number) {
  return reading.selectFrom('gauges_as_known').selectAll().where('gauge_id', '=', gaugeId).executeTakeFirst();
}

export type GaugeRow = NonNullable<Awaited<ReturnType<typeof findGauge>>>;

export async function insertGauge(writing: Writing, gauge: Omit<GaugesTable, 'gauge_id'>): Promise<number> {
  const { gauge_id } = await writing.insertInto('gauges').values(gauge).returning('gauge_id').executeTakeFirstOrThrow();
  return gauge_id;
}

export async function insertCard(writing: Writing, card: Omit<GaugeCardsTable, 'gauge_card_id'>): Promise<void> {
  await writing.insertInto('gauge_cards').values(card).execute();
}

/** Oldest first, by the day of the check and then as written; with what stands in the place of each. */
export function listChecks(reading: Reading, gaugeId: number) {
  return checks(reading).where('gauge_checks.gauge_id', '=', gaugeId).execute();
}

export function listAllChecks(reading: Reading) {
  return checks(reading).execute();
}

export function findCheckOfGauge(reading: Reading, gaugeCheckId: number) {
  return checks(reading).where('gauge_checks.gauge_check_id', '=', gaugeCheckId).executeTakeFirst();
}

function checks(reading: Reading) {
  return reading
    .selectFrom('gauge_checks')
    .innerJoin('people', 'people.person_id', 'gauge_checks.checked_by')
    .leftJoin('gauge_checks as later', 'later.supersedes_id', 'gauge_checks.gauge_check_id')
    .selectAll('gauge_checks')
    .select(['people.initials', 'later.gauge_check_id as superseded_by_id'])
    .orderBy('gauge_checks.checked_on')
    .orderBy('gauge_checks.gauge_check_id');
}

export type GaugeCheckRow = Awaited<ReturnType<typeof listChecks>>[number];

export async function pointsByCheck(reading: Reading, gaugeCheckIds: readonly number[]) {
  const rows = await reading
    .selectFrom('gauge_check_points')
    .selectAll()
    .where('gauge_check_id', 'in', gaugeCheckIds)
    .orderBy('gauge_check_id')
    .orderBy('position')
    .execute();
  return Map.groupBy(rows, (row) => row.gauge_check_id);
}

export async function insertCheck(
  writing: Writing,
  check: {
    gaugeId: number;
    against: GaugeCheck['against'];
    checkedOn: string;
    permittedError: number | null;
    note: string;
    supersedesId: number | null;
    reason: string;
    points: ReadonlyArray<{ nominal: number; read: number; nominalTyped: string; readTyped: string }>;
    by: number;
    now: string;
  },
): Promise<number> {
  const { gauge_check_id } = await writing
    .insertInto('gauge_checks')
    .values({
      gauge_id: check.gaugeId,
      against: check.against,
      checked_on: check.checkedOn,
      permitted_error_amount: check.permittedError,
      note: check.note,
      supersedes_id: check.supersedesId,
      reason: check.reason,
      checked_at: check.now,
      checked_by: check.by,
    })
    .returning('gauge_check_id')
    .executeTakeFirstOrThrow();
  await writing
    .insertInto('gauge_check_points')
    .values(
      check.points.map((point, index) => ({
        gauge_check_id,
        position: index + 1,
        nominal_amount: point.nominal,
        read_amount: point.read,
        nominal_typed: point.nominalTyped,
        read_typed: point.readTyped,
      })),
    )
    .execute();
  return gauge_check_id;
}

export async function countTakes(reading: Reading, gaugeId: number): Promise<number> {
  const { takes } = await reading
    .selectFrom('take_gauges')
    .select((select) => select.fn.countAll<number>().as('takes'))
    .where('gauge_id', '=', gaugeId)
    .executeTakeFirstOrThrow();
  return takes;
}
