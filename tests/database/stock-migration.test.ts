import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { expect, test } from 'vitest';
import { openConnection, queriesOn } from '../../main/database/connection.ts';
import { migrate } from '../../main/database/migrate.ts';
import { migrations } from '../../migrations/index.ts';
import { temporaryFolder } from '../desk.ts';

const at = '2026-11-20T08:00:00.000Z';

test('plates, cans and their counts from before stand as they were once parts and batches are there', async () => {
  const file = join(temporaryFolder(), 'shop.thoubook');
  const connection = openConnection(file, 'write');
  const until = (last: string) => Object.fromEntries(Object.entries(migrations).filter(([name]) => name <= last));
  await migrate(queriesOn(connection), until('0002-what-a-take-leans-on'));
  expect(connection.pragma('user_version', { simple: true })).toBe(2);
  connection.exec(`
    insert into people values (1, 'RA', 'Rosa Aldane', null);
    insert into cans values (1, 'steel', 'KX3 forward', 1955800);
    insert into can_movements values (1, 1, 5, 'first count', '${at}', 1), (2, 1, -1, 'into a pack', '${at}', 1);
    insert into pieces values (1, 'steel', 'KX3 forward', '', 1, '${at}', 1), (2, 'steel', 'KX3 forward', 'A7', null, '${at}', 1);
    insert into piece_heights values (1, 1, 1955800, 'measured', '77', '', '${at}', 1),
      (2, 2, 1943100, 'measured', '76.5', '', '${at}', 1), (3, 2, 1930400, 'measured', '76', 'misread', '${at}', 1);
  `);
  await migrate(queriesOn(connection), until('0003-stock'));
  connection.close();

  const migrated = new Sqlite(file, { readonly: true });
  expect(migrated.pragma('user_version', { simple: true })).toBe(3);
  expect(migrated.prepare('select * from can_movements').all()).toEqual([
    {
      can_movement_id: 1,
      can_id: 1,
      change: 5,
      reason: 'first count',
      moved_at: at,
      moved_by: 1,
      typed: '',
      batch_id: null,
      takes_back_id: null,
    },
    {
      can_movement_id: 2,
      can_id: 1,
      change: -1,
      reason: 'into a pack',
      moved_at: at,
      moved_by: 1,
      typed: '',
      batch_id: null,
      takes_back_id: null,
    },
  ]);
  expect(
    migrated.prepare('select piece_id, tag, can_id, batch_id, height_nm, micrometer from pieces_as_known').all(),
  ).toEqual([
    { piece_id: 1, tag: '', can_id: 1, batch_id: null, height_nm: 1955800, micrometer: '' },
    { piece_id: 2, tag: 'A7', can_id: null, batch_id: null, height_nm: 1930400, micrometer: '' },
  ]);
  expect(migrated.prepare('select count(*) from movements').pluck().get()).toBe(0);
  expect(migrated.prepare('select count(*) from label_sizes').pluck().get()).toBe(3);
  migrated.close();
});
