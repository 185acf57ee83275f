// A shop file from before takes wrote down what they lean on: filled past the services, then brought up to date.
import { join } from 'node:path';
import type Sqlite from 'better-sqlite3';
import { expect, test } from 'vitest';
import { openConnection } from '../../main/database/connection.ts';
import { openShop } from '../../main/database/open-shop.ts';
import * as oneUnit from '../../migrations/0001-one-unit.ts';
import { deskOver, temporaryFolder, tickingClock } from '../desk.ts';

const at = "'2026-11-23T08:00:00.000Z'";

// A changed hand force, 0.9 by air, 0.4 by dial, the simple rule: the settings as they stand are what counts.
const settings = `insert into settings values (1, 0, 'Harrow Lane Transmission', 'thou', '.', 'letter', '',
  25400, 50800, 101600, 22860, 10160, 2540, 30, 12700, 25400, 25400, 25400, 5080, 'simple')`;

function fill(connection: Sqlite.Database): void {
  connection.exec(`
    ${settings};
    insert into people values (1, 'RA', 'Rosa Aldane', null);
    insert into families values (1, 'KX3');
    insert into revisions values (1, 1, 1, '', ${at}, 1);
    insert into packs values (1, 1, 1, 'Forward', '');
    insert into checks values
      (1, 1, 1, 1, 'Forward clearance', 'Clearance', 'air', 'length', 'thou', 'range', 508000, null, 762000, 'mean', 'none', 4, ''),
      (2, 1, 2, null, 'Front end play', 'End play', 'dial', 'length', 'thou', 'range', 127000, null, 609600, 'mean', 'none', 1, ''),
      (3, 1, 3, null, 'Line pressure', 'Pressure', 'direct', 'pressure', 'psi', 'minimum', 482633, null, null, 'mean', 'none', 1, '');
    insert into customers values (1, 'Tam Okoro', '', '', '');
    insert into units values (1, 1, '1', '', 'tow');
    insert into jobs values (1, 1, 1, 1, 1, '', '', null, null, ${at}, 1);
    insert into setups values (1, 'drum', 1, null, '', 'none', 'soaked', 1, 'plunger', 100, '');
    insert into takes values
      (1, 1, 1, 'final', 'final', 'air', null, 1, '', ${at}, 1),
      (2, 1, 1, 'final', 'quick', 'feeler', null, null, '', ${at}, 1),
      (3, 1, 2, 'final', 'quick', 'dial', null, null, '', ${at}, 1),
      (4, 1, 3, 'final', 'quick', 'direct', null, null, '', ${at}, 1);
    insert into readings (reading_id, take_id, spot, method, typed, push_amount, air_amount, taken_at, taken_by)
      values (1, 1, 1, 'air', '4 25', 101600, 635000, ${at}, 1);
  `);
}

test('takes from before lean on the settings as they stood, and are judged as they were', async () => {
  const file = join(temporaryFolder(), 'shop.thoubook');
  await (await openShop(file, 'write', tickingClock(), { '0001-one-unit': oneUnit })).close();
  const before = openConnection(file, 'write');
  fill(before);
  before.close();

  const { call } = await deskOver(file, 'write');
  const after = openConnection(file, 'read');
  const figures = after.prepare('select * from take_figures order by take_id').all();
  expect(after.prepare('select count(*) from readings').pluck().get()).toBe(1);
  after.close();
  const unlearned = {
    hand_force_half_width_nm: 12_700,
    base_on_pump_half_width_nm: 25_400,
    dial_resolution_nm: 25_400,
    micrometer_uncertainty_nm: 5_080,
    repeat_limit_nm: 50_800,
    uneven_limit_nm: 101_600,
    decision_rule: 'simple',
    feeler_pairs: null,
    feeler_bias_nm: null,
    feeler_bias_standard_uncertainty_nm: null,
  };
  const stated = (repeatability_nm: number) => ({
    repeatability_nm,
    repeatability_degrees_of_freedom: 30,
    repeatability_from: 'stated',
  });
  const none = { repeatability_nm: null, repeatability_degrees_of_freedom: null, repeatability_from: null };
  expect(figures).toEqual([
    { take_id: 1, ...stated(22_860), ...unlearned },
    { take_id: 2, ...none, ...unlearned },
    { take_id: 3, ...stated(10_160), ...unlearned },
    { take_id: 4, ...none, ...unlearned },
  ]);

  await call('shop.changeSettings', { decisionRule: 'guarded', handForceHalfWidth_nm: 254_000 });
  const { evaluation } = await call('readings.getTake', { takeId: 1 });
  // 29 against 20 to 30 by the simple rule, u = √(0.9² + (0.5/√3)² + 2/12) thou: JCGM 100:2008 4.3.7, F.2.2.1.
  expect([evaluation.mean, evaluation.verdict.word]).toEqual([29 * 25_400, 'in']);
  expect(evaluation.standardUncertainty).toBeCloseTo(Math.sqrt(0.81 + 0.25 / 3 + 2 / 12) * 25_400, 6);
});
