// A shop file from before deliveries were written down: jobs are whole rebuilds, stages ask for what they asked for.
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { openConnection, queriesOn } from '../../main/database/connection.ts';
import { migrate } from '../../main/database/migrate.ts';
import { migrations } from '../../migrations/index.ts';
import { deskOver, temporaryFolder } from '../desk.ts';

const at = "'2026-11-23T08:00:00.000Z'";

test('a job from before is a whole rebuild that was not handed over yet, and can be', async () => {
  const file = join(temporaryFolder(), 'shop.thoubook');
  const before = openConnection(file, 'write');
  await migrate(queriesOn(before), Object.fromEntries(Object.entries(migrations).filter(([name]) => name < '0011')));
  before.exec(`
    insert into people values (1, 'RA', 'Rosa Aldane', null);
    insert into settings values
      (1, 0, 'Harrow Lane', 'thou', '.', 'letter', 'one year', 25400, 50800, 101600, 17780, 17780, 5080, 50, 25400, 25400, 25400, 25400, 5080, 'guarded');
    insert into families values (1, 'KX3');
    insert into revisions values (1, 1, 1, '', ${at}, 1);
    insert into customers values (1, 'Tam Okoro', '', '', '');
    insert into units values (1, 1, '', '', 'tow');
    insert into jobs values (1, 41, 1, 1, 1, '', null, null, ${at}, 1);
    insert into intakes values (1, 1, '', '', 'full', 'brown', 'burnt', '', '', '', ${at}, 1);
    insert into stage_entries values (1, 1, 1, ${at}, 1);
  `);
  before.close();

  const { call } = await deskOver(file, 'write');
  expect(await call('jobs.getJob', { jobId: 1 })).toMatchObject({ extent: null, deliveredOn: null });
  const ready = (await call('jobs.listStages', {})).find(({ name }) => name === 'Ready');
  expect(ready?.needs).toEqual([]);
  const none = { months: null, distance: null, passes: null };
  expect((await call('jobs.getDelivery', { jobId: 1 })).usualTerms).toEqual(none);
  await call('jobs.deliver', {
    reason: 'they know what is open',
    jobId: 1,
    deliveredTo: 'Tam Okoro',
    deliveredOn: '2026-11-23',
    distance: null,
    handedOverById: 1,
    warranty: { terms: { ...none, months: 6 }, inServiceOn: null },
    by: 1,
  });
  expect((await call('jobs.getJob', { jobId: 1 })).deliveredOn).toBe('2026-11-23');
});
