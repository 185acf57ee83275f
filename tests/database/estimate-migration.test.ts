// A shop file from before estimates: its tickets stand as they were, and the new tables hold what is put into them.
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { openConnection, queriesOn } from '../../main/database/connection.ts';
import { migrate } from '../../main/database/migrate.ts';
import { migrations } from '../../migrations/index.ts';
import { temporaryFolder } from '../desk.ts';

const at = '2026-11-20T08:00:00.000Z';
const name = '0004-estimates';

test('tickets and batches from before stand as they are, and lines, estimates and deposits can be written', async () => {
  const connection = openConnection(join(temporaryFolder(), 'shop.thoubook'), 'write');
  const before = Object.fromEntries(Object.entries(migrations).filter(([key]) => key < name));
  await migrate(queriesOn(connection), before);
  expect(connection.pragma('user_version', { simple: true })).toBe(Object.keys(before).length);
  connection.exec(`
    insert into people values (1, 'RA', 'Rosa Aldane', null);
    insert into families values (1, 'KX3');
    insert into revisions values (1, 1, 1, '', '${at}', 1);
    insert into customers values (1, 'Tam Okoro', '', '', '');
    insert into units values (1, 1, '1', '', 'tow');
    insert into jobs (job_id, number, customer_id, unit_id, revision_id, complaint, case_tag, opened_at, opened_by)
      values (1, 1, 1, 1, 1, 'slips', '', '${at}', 1);
    insert into parts values (1, 'KX3-F-FR', 'Forward friction', 'friction', '', 'each', '', 410, 750, null, null, null, 0);
    insert into batches values (1, 1, null, 'B-7', '', '2026-11-20', 410, '${at}', 1);
  `);
  const jobsBefore = connection.prepare('select job_id, number from jobs').all();
  const batchesBefore = connection.prepare('select * from batches').all();

  await migrate(queriesOn(connection), migrations);
  expect(connection.prepare('select job_id, number from jobs').all()).toEqual(jobsBefore);
  expect(connection.prepare('select * from batches').all()).toEqual(batchesBefore);
  expect(connection.prepare('select count(*) from job_lines').pluck().get()).toBe(0);

  connection.exec(`
    insert into job_lines values (1, 1, 'part', 'KX3-F-FR Forward friction', 400, 750, 410, 1, 1, '${at}', 1);
    insert into deposits values (1, 1, 20000, 'cash', '', '${at}', 1);
  `);
  const refused = (statement: string) => expect(() => connection.exec(statement));
  refused(`insert into deposits values (2, 1, -20001, 'cash', '', '${at}', 1)`).toThrow('below zero');
  refused(`insert into job_lines values (2, 1, 'part', 'x', 100, -1, null, 1, null, '${at}', 1)`).toThrow('CHECK');
  refused(`insert into job_lines values (2, 1, 'labour', 'x', 100, 1, null, 1, 1, '${at}', 1)`).toThrow('CHECK');
  connection.close();
});
