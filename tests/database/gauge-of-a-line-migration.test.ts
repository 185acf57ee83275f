// A shop file from before a line could name its gauge: its lines name none, and can be given one.
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { openConnection, queriesOn } from '../../main/database/connection.ts';
import { migrate } from '../../main/database/migrate.ts';
import { migrations } from '../../migrations/index.ts';
import { deskOver, temporaryFolder } from '../desk.ts';

const at = '2026-11-20T08:00:00.000Z';
const name = '0015-gauge-of-a-line';

test('lines from before name no gauge and can be given one', async () => {
  const file = join(temporaryFolder(), 'shop.thoubook');
  const connection = openConnection(file, 'write');
  const before = Object.fromEntries(Object.entries(migrations).filter(([key]) => key < name));
  await migrate(queriesOn(connection), before);
  expect(connection.pragma('user_version', { simple: true })).toBe(Object.keys(before).length);
  connection.exec(`
    insert into people values (1, 'RA', 'Rosa Aldane', null);
    insert into gauge_lines values (1, 'Bench gauge', 'practice', null, null, null, null, null, null, 'steady',
      '{number}', 'mm', 0, 1000, 5, 500, 100, 0);
    insert into gauges values (1, 'dial plunger', '${at}', 1);
  `);
  await migrate(queriesOn(connection), migrations);
  const refused = (statement: string) => expect(() => connection.exec(statement));
  refused('insert into line_gauges values (1, 2)').toThrow('FOREIGN KEY');
  connection.exec('insert into line_gauges values (1, 1)');
  refused('insert into line_gauges values (1, 1)').toThrow('UNIQUE');
  connection.exec('delete from line_gauges');
  connection.close();
  const { call } = await deskOver(file, 'read');
  expect(await call('indicators.listLines', {})).toMatchObject([{ name: 'Bench gauge', gaugeId: null }]);
});
