// A shop file from before teardown was written down: a bushing read then keeps its one number and what was typed.
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { openConnection, queriesOn } from '../../main/database/connection.ts';
import { migrate } from '../../main/database/migrate.ts';
import { migrations } from '../../migrations/index.ts';
import { deskOver, temporaryFolder } from '../desk.ts';

const at = "'2026-11-23T08:00:00.000Z'";

test('a pair read before stands as typed, one read today keeps both numbers, and findings are taken', async () => {
  const file = join(temporaryFolder(), 'shop.thoubook');
  const before = openConnection(file, 'write');
  await migrate(queriesOn(before), Object.fromEntries(Object.entries(migrations).filter(([name]) => name < '0010')));
  before.exec(`
    insert into people values (1, 'RA', 'Rosa Aldane', null);
    insert into settings values
      (1, 0, 'Harrow Lane', 'thou', '.', 'letter', '', 25400, 50800, 101600, 17780, 17780, 5080, 50, 25400, 25400, 25400, 25400, 5080, 'guarded');
    insert into families values (1, 'KX3');
    insert into revisions values (1, 1, 1, '', ${at}, 1);
    insert into checks values
      (1, 1, 1, null, 'Stator bushing', 'Bushings', 'direct', 'length', 'thou', 'range', 25400, null, 88900, 'mean', 'none', 1, '');
    insert into customers values (1, 'Tam Okoro', '', '', '');
    insert into units values (1, 1, '', '', 'tow');
    insert into jobs values (1, 41, 1, 1, 1, '', null, null, ${at}, 1);
    insert into intakes values (1, 1, '', '', 'not looked at', 'not looked at', 'not looked at', '', '', '', ${at}, 1);
    insert into stage_entries values (1, 1, 1, ${at}, 1);
    insert into takes values (1, 1, 1, 'as found', 'final', 'direct', null, null, '', ${at}, 1);
    insert into take_figures values (1, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', null, null, null);
    insert into readings (reading_id, take_id, spot, method, typed, amount, taken_at, taken_by)
      values (1, 1, 1, 'direct', '1.5025 1.5000 in', 63500, ${at}, 1);
  `);
  before.close();

  const { call } = await deskOver(file, 'write');
  const { take } = await call('readings.recordReading', { takeId: 1, spot: 1, typed: '1.5030 1.5000', by: 1 });
  expect(take.readings).toMatchObject([
    { typed: '1.5025 1.5000 in', first: null, second: null, value: 63_500 },
    { typed: '1.5030 1.5000', first: 38_176_200, second: 38_100_000, value: 76_200 },
  ]);
  const finding = {
    part: 'stator bushing',
    packId: null,
    slotId: null,
    place: null,
    condition: 'good',
    thickness: '',
    checkId: 1,
    note: '',
  };
  await call('jobs.recordFinding', { jobId: 1, finding, decision: 'reuse', by: 1 });
  expect(await call('jobs.listFindings', { jobId: 1 })).toMatchObject([{ part: 'stator bushing', checkId: 1 }]);
});
