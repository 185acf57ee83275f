// A shop file from before comebacks: what it delivered stands as built, and a figure put right leaves the shelf.
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { openConnection, queriesOn } from '../../main/database/connection.ts';
import { migrate } from '../../main/database/migrate.ts';
import { migrations } from '../../migrations/index.ts';
import { temporaryFolder } from '../desk.ts';

const at = "'2026-03-02T08:00:00.000Z'";

test('what an older file delivered is a build to trace to, and a misread put right is reckoned anew', async () => {
  const connection = openConnection(join(temporaryFolder(), 'shop.thoubook'), 'write');
  const upToHere = Object.keys(migrations).findIndex((name) => name.endsWith('-comebacks'));
  await migrate(queriesOn(connection), Object.fromEntries(Object.entries(migrations).slice(0, upToHere)));
  connection.exec(`
    insert into people values (1, 'RA', 'Rosa Aldane', null);
    insert into families values (1, 'KX3');
    insert into revisions values (1, 1, 1, '', ${at}, 1);
    insert into packs values (1, 1, 0, 'Forward', '');
    insert into checks values (1, 1, 0, 1, 'Forward clearance', 'Clearance', 'direct', 'length', 'thou', 'minimum',
      508000, null, null, 'mean', 'none', 1, '');
    insert into customers values (1, 'Tam Okoro', '', '', '');
    insert into units values (1, 1, '', '', 'tow');
    insert into jobs values (1, 41, 1, 1, 1, '', null, null, ${at}, 1);
    insert into jobs values (2, 42, 1, 1, 1, '', null, null, ${at}, 1);
    insert into deliveries values (1, 1, 'Tam Okoro', '2026-03-09', 118412, 'miles', 1, '', ${at}, 1);
    insert into deliveries values (2, 2, 'Tam Okoro', '2026-03-09', null, null, 1, '', ${at}, 1);
    insert into deliveries values (3, 2, '', null, null, null, 1, 'still here', ${at}, 1);
    insert into warranties values (1, 1, null, 12, null, null, null, '', ${at}, 1);
    insert into warranties values (2, 1, '2026-03-12', 12, null, null, null, '', ${at}, 1);
    insert into takes values (1, 1, 1, 'final', 'final', 'direct', null, null, '', ${at}, 1);
    insert into readings (reading_id, take_id, spot, method, typed, amount, taken_at, taken_by)
      values (1, 1, 1, 'direct', '26', 660400, ${at}, 1);
  `);
  await migrate(queriesOn(connection), migrations);

  expect(
    connection.prepare('select job_id, delivered_on, in_service_on, months from builds_as_delivered').all(),
  ).toEqual([{ job_id: 1, delivered_on: '2026-03-09', in_service_on: '2026-03-12', months: 12 }]);
  connection.exec(`
    insert into as_built values (1, 1, 1);
    insert into as_built_checks values (1, 1, 1, 660400, 660400, 660400, null, 'in', null);
    insert into readings (reading_id, take_id, spot, method, typed, amount, supersedes_id, reason, taken_at, taken_by)
      values (2, 1, 1, 'direct', '16', 406400, 1, 'read the wrong ring', ${at}, 1);
  `);
  expect(connection.prepare('select count(*) from as_built').pluck().get()).toBe(0);
  expect(connection.prepare('select count(*) from as_built_checks').pluck().get()).toBe(0);
  connection.close();
});
