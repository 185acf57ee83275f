// A shop file from before gauges on a line: its readings stand as they were, and may now have a trace beside them.
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { openConnection, queriesOn } from '../../main/database/connection.ts';
import { migrate } from '../../main/database/migrate.ts';
import { migrations } from '../../migrations/index.ts';
import { temporaryFolder } from '../desk.ts';

const at = '2026-11-20T08:00:00.000Z';
const name = '0008-gauge-lines';

test('readings from before stand as they are, and lines and traces can be written', async () => {
  const connection = openConnection(join(temporaryFolder(), 'shop.thoubook'), 'write');
  const before = Object.fromEntries(Object.entries(migrations).filter(([key]) => key < name));
  await migrate(queriesOn(connection), before);
  expect(connection.pragma('user_version', { simple: true })).toBe(Object.keys(before).length);
  connection.exec(`
    insert into people values (1, 'RA', 'Rosa Aldane', null);
    insert into families values (1, 'KX3');
    insert into revisions values (1, 1, 1, '', '${at}', 1);
    insert into checks values
      (1, 1, 1, null, 'Rear end play', 'End play', 'dial', 'length', 'thou', 'range', 100000, null, 400000, 'mean', 'none', 1, '');
    insert into customers values (1, 'Tam Okoro', '', '', '');
    insert into units values (1, 1, '', '', 'tow');
    insert into jobs values (1, 41, 1, 1, 1, '', null, null, '${at}', 1);
    insert into takes values (1, 1, 1, 'final', 'final', 'dial', null, null, '', '${at}', 1);
    insert into readings (reading_id, take_id, spot, method, typed, amount, taken_at, taken_by)
      values (1, 1, 1, 'dial', '11', 279400, '${at}', 1);
  `);
  const readingsBefore = connection.prepare('select * from readings').all();

  await migrate(queriesOn(connection), migrations);
  // Later migrations may add columns; what stood there stands.
  expect(connection.prepare('select * from readings').all()).toMatchObject(readingsBefore);
  const serial = `'serial', '/dev/ttyUSB0', 9600, 8, 'none', 1, '', null`;
  const says = `'{number}', 'mm', 0, 1000, 5, 500, 100, 0`;
  connection.exec(`
    insert into gauge_lines values (1, 'Bench gauge', ${serial}, ${says});
    insert into gauge_lines values (2, 'Practice', 'practice', null, null, null, null, null, null, 'steady', ${says});
    insert into reading_traces values (1, 'Bench gauge', 0, x'0000', 2, 0, -101600, 584200);
  `);
  const refused = (statement: string) => expect(() => connection.exec(statement));
  refused(`insert into gauge_lines values (3, 'x', 'practice', ${serial.slice(10)}, ${says})`).toThrow('CHECK');
  refused(`insert into gauge_lines values (3, 'x', ${serial.replace('9600', 'null')}, ${says})`).toThrow('CHECK');
  refused(`insert into reading_traces values (1, 'again', 0, x'00', 1, 0, null, null)`).toThrow('UNIQUE');
  connection.close();
});
