// A shop file from before the door was written down: filled past the services, then brought up to date.
import { join } from 'node:path';
import type Sqlite from 'better-sqlite3';
import { expect, test } from 'vitest';
import { openConnection, queriesOn } from '../../main/database/connection.ts';
import { migrate } from '../../main/database/migrate.ts';
import { migrations } from '../../migrations/index.ts';
import { deskOver, temporaryFolder } from '../desk.ts';

const at = "'2026-11-23T08:00:00.000Z'";

function fill(connection: Sqlite.Database): void {
  connection.exec(`
    insert into people values (1, 'RA', 'Rosa Aldane', null);
    insert into families values (1, 'KX3');
    insert into revisions values (1, 1, 1, '', ${at}, 1);
    insert into packs values (1, 1, 1, 'Forward', '');
    insert into slots values (1, 1, 1, 'steel', null, 1, 'KX3 forward', '');
    insert into checks values
      (1, 1, 1, 1, 'Forward clearance', 'Clearance', 'air', 'length', 'thou', 'range', 508000, null, 762000, 'mean', 'none', 4, '');
    insert into customers values (1, 'Tam Okoro', '555 0117', '', '');
    insert into units values (1, 1, 'KX3-19-2214', 'pickup', 'tow');
    insert into jobs values
      (1, 41, 1, 1, 1, 'Slips when hot.', 'T-9', null, null, ${at}, 1), (2, 42, 1, 1, 1, '', '', null, null, ${at}, 1);
    insert into stage_entries values (1, 1, 1, ${at}, 1), (2, 2, 1, ${at}, 1), (3, 1, 5, ${at}, 1), (4, 1, 3, ${at}, 1);
    insert into takes values (1, 1, 1, 'final', 'final', 'air', null, null, 'washer worn', ${at}, 1);
    insert into pieces (piece_id, kind, outline, tag, added_at, added_by)
      values (1, 'steel', 'KX3 forward', 'QX41', ${at}, 1);
    insert into piece_heights (piece_height_id, piece_id, height_nm, height_from, typed, reason, measured_at, measured_by)
      values (1, 1, 1955800, 'measured', '77', '', ${at}, 1);
    insert into mock_ups (mock_up_id, job_id, pack_id, number, note, made_at, made_by) values (1, 1, 1, 0, '', ${at}, 1);
    insert into mock_up_pieces values (1, 1, 1);
    insert into parts values (1, 'ZR-8055', 'Ring', 'snap ring', '', 'each', '', null, null, null, null, null, 0);
    insert into batches values (1, 1, null, 'LOT-19', '', '2026-11-20', 410, ${at}, 1);
    insert into movements values (1, 1, 'receive', 12, null, null, '', ${at}, 1), (2, 1, 'pull', -1, 1, null, '', ${at}, 1);
  `);
}

test('complaints, stages and every word of jobs from before are found as if written today', async () => {
  const file = join(temporaryFolder(), 'shop.thoubook');
  const before = openConnection(file, 'write');
  await migrate(queriesOn(before), Object.fromEntries(Object.entries(migrations).filter(([name]) => name < '0005')));
  fill(before);
  before.close();

  const { call } = await deskOver(file, 'write');
  const after = openConnection(file, 'read');
  expect(after.prepare('select job_id, complaint, fluid_level, written_at, written_by from intakes').all()).toEqual([
    {
      job_id: 1,
      complaint: 'Slips when hot.',
      fluid_level: 'not looked at',
      written_at: at.slice(1, -1),
      written_by: 1,
    },
    { job_id: 2, complaint: '', fluid_level: 'not looked at', written_at: at.slice(1, -1), written_by: 1 },
  ]);
  expect(after.prepare('select * from jobs_in_stages order by job_id').all()).toEqual([
    { job_id: 1, stage_id: 3, stage_entry_id: 4 },
    { job_id: 2, stage_id: 1, stage_entry_id: 2 },
  ]);
  after.close();
  const found = async (text: string) =>
    (await call('jobs.listJobs', { text, includeClosed: true })).map((job) => job.number);
  for (const text of ['slips', 'T-9', 'worn', 'qx4', 'r-805', 'lot-1', '41'])
    expect([text, await found(text)]).toEqual([text, [41]]);
  expect(await found('okoro')).toEqual([42, 41]);
  expect(await call('jobs.listJobs', { text: 'qx41', includeClosed: false })).toMatchObject([
    { stageName: 'Teardown', complaint: 'Slips when hot.', promisedOn: null },
  ]);
});
