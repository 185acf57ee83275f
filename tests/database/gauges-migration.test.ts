// A shop file from before gauges were written down: its takes stand as they were, read with no gauge that is known.
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { openConnection, queriesOn } from '../../main/database/connection.ts';
import { migrate } from '../../main/database/migrate.ts';
import { migrations } from '../../migrations/index.ts';
import { deskOver, temporaryFolder } from '../desk.ts';

const at = "'2026-11-23T08:00:00.000Z'";

test('takes from before name no gauge, and a gauge can be written down', async () => {
  const file = join(temporaryFolder(), 'shop.thoubook');
  const before = openConnection(file, 'write');
  await migrate(queriesOn(before), Object.fromEntries(Object.entries(migrations).filter(([name]) => name < '0007')));
  before.exec(`
    insert into people values (1, 'RA', 'Rosa Aldane', null);
    insert into settings values
      (1, 0, 'Harrow Lane', 'thou', '.', 'letter', '', 25400, 50800, 101600, 17780, 17780, 5080, 50, 25400, 25400, 25400, 25400, 5080, 'guarded');
    insert into families values (1, 'KX3');
    insert into revisions values (1, 1, 1, '', ${at}, 1);
    insert into checks values
      (1, 1, 1, null, 'Rear end play', 'End play', 'dial', 'length', 'thou', 'range', 100000, null, 400000, 'mean', 'none', 1, '');
    insert into customers values (1, 'Tam Okoro', '', '', '');
    insert into units values (1, 1, '', '', 'tow');
    insert into jobs values (1, 41, 1, 1, 1, '', null, null, ${at}, 1);
    insert into stage_entries values (1, 1, 1, ${at}, 1);
    insert into takes values (1, 1, 1, 'final', 'final', 'dial', null, null, '', ${at}, 1);
    insert into take_figures values (1, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', null, null, null);
    insert into readings (reading_id, take_id, spot, method, typed, amount, taken_at, taken_by)
      values (1, 1, 1, 'dial', '11', 279400, ${at}, 1);
  `);
  before.close();

  const { call } = await deskOver(file, 'write');
  expect(await call('gauges.listGauges', {})).toEqual([]);
  expect(await call('readings.getTake', { takeId: 1 })).toMatchObject({ readings: [{ typed: '11' }] });
  const { gaugeId } = await call('gauges.saveGauge', {
    gaugeId: null,
    kind: 'dial plunger',
    tag: 'D1',
    unit: 'thou',
    resolution: '1',
    permittedError: '',
    statedIn: '',
    offSquareDegrees: 0,
    serial: '',
    intervalDays: null,
    by: 1,
  });
  expect(await call('gauges.getGauge', { gaugeId })).toMatchObject({ tag: 'D1', takes: 0 });
});
