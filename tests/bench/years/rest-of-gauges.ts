// The gauges of a shop of many years: checked every quarter, one found out now and then; most takes name theirs.
import type Sqlite from 'better-sqlite3';
import { dayAfter } from '../../../app/jobs/calendar-days.ts';
import type { BulkInserts } from '../../../main/shop/demo/history/bulk-inserts.ts';

const gauges = 12;

export function writeGauges(connection: Sqlite.Database, inserts: BulkInserts, years: number): void {
  const today = new Date().toISOString();
  const first = `${dayAfter(today.slice(0, 10), -years * 365)}T08:00:00.000Z`;
  for (let gauge = 1; gauge <= gauges; gauge += 1) {
    const gaugeId = inserts.insert('gauges', { kind: 'dial plunger', added_at: first, added_by: 1 });
    inserts.insert('gauge_cards', {
      gauge_id: gaugeId,
      tag: `Dial ${gauge}`,
      unit: 'thou',
      resolution_amount: 25_400,
      permitted_error_amount: 12_700,
      stated_in: 'certificate',
      off_square_degrees: 4,
      serial: `HL-${gauge}`,
      interval_days: 90,
      is_retired: 0,
      written_at: first,
      written_by: 1,
    });
    for (let quarter = 0; quarter < years * 4; quarter += 1) {
      const on = dayAfter(first.slice(0, 10), quarter * 91);
      writeCheck(inserts, gaugeId, on, gauge === 3 && quarter === years * 4 - 2);
    }
  }
  // Two takes of three, by whoever read it.
  connection.exec(`insert into take_gauges (take_id, gauge_id, permitted_error_amount, off_square_degrees)
    select take_id, take_id % ${gauges} + 1, 12700, 4 from takes
    where method in ('air', 'dial') and take_id % 3 <> 0`);
  for (let pair = 0; pair < 60; pair += 1) {
    inserts.insert('method_pairs', {
      what: `Pack ${pair + 1}`,
      first_method: 'air',
      second_method: 'feeler',
      first_nm: (30 + (pair % 7)) * 25_400,
      second_nm: (32 + (pair % 5)) * 25_400,
      first_typed: String(30 + (pair % 7)),
      second_typed: String(32 + (pair % 5)),
      supersedes_id: null,
      reason: '',
      paired_at: first,
      paired_by: 1,
    });
  }
}

function writeCheck(inserts: BulkInserts, gaugeId: number, on: string, isFoundOut: boolean): void {
  const checkId = inserts.insert('gauge_checks', {
    gauge_id: gaugeId,
    against: 'blocks',
    checked_on: on,
    permitted_error_amount: 12_700,
    note: '',
    supersedes_id: null,
    reason: '',
    checked_at: `${on}T08:00:00.000Z`,
    checked_by: 1,
  });
  for (const [index, thou] of [50, 100, 200].entries()) {
    inserts.insert('gauge_check_points', {
      gauge_check_id: checkId,
      position: index + 1,
      nominal_amount: thou * 25_400,
      read_amount: (thou + (isFoundOut ? 2 : 0.2)) * 25_400,
      nominal_typed: String(thou),
      read_typed: String(thou + (isFoundOut ? 2 : 0.2)),
    });
  }
}
