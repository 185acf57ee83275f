// A shop file from before lists: what its stages asked for and what was passed over stand as they were, still guarded.
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { openConnection, queriesOn } from '../../main/database/connection.ts';
import { migrate } from '../../main/database/migrate.ts';
import { migrations } from '../../migrations/index.ts';
import { deskIn, deskOver, temporaryFolder } from '../desk.ts';

const at = "'2026-11-23T08:00:00.000Z'";
const listNeeds = ['teardown lists done', 'build lists done', 'final lists done'];

test('a shop at work keeps its needs and what it went on without, and answers no list it never had', async () => {
  const file = join(temporaryFolder(), 'shop.thoubook');
  const before = openConnection(file, 'write');
  const upToHere = Object.keys(migrations).findIndex((name) => name.endsWith('-lists'));
  await migrate(queriesOn(before), Object.fromEntries(Object.entries(migrations).slice(0, upToHere)));
  before.exec(`
    insert into people values (1, 'RA', 'Rosa Aldane', null);
    insert into settings values
      (1, 0, 'Harrow Lane', 'thou', '.', 'letter', '', 25400, 50800, 101600, 17780, 17780, 5080, 50, 25400, 25400, 25400, 25400, 5080, 'guarded');
    insert into families values (1, 'KX3');
    insert into revisions values (1, 1, 1, '', ${at}, 1);
    insert into customers values (1, 'Tam Okoro', '', '', '');
    insert into units values (1, 1, '', '', 'tow');
    insert into jobs values (1, 41, 1, 1, 1, '', null, null, ${at}, 1);
    insert into intakes values (1, 1, '', '', 'not looked at', 'not looked at', 'not looked at', '', '', '', ${at}, 1);
    insert into stage_entries values (1, 1, 1, ${at}, 1), (2, 1, 5, ${at}, 1);
    insert into needs_passed_over values (2, 4, 'date promised', 'no day is promised', 'parts on the way');
    delete from stage_needs where need = 'date promised';
  `);
  const asked = () => before.prepare('select * from stage_needs order by stage_id, need').all();
  const askedBefore = asked();
  before.close();

  const { call, desk } = await deskOver(file, 'write');
  const stages = await call('jobs.listStages', {});
  expect(stages.flatMap(({ stageId, needs }) => needs.map((need) => ({ stage_id: stageId, need })))).toEqual(
    askedBefore,
  );
  expect(await call('jobs.getJob', { jobId: 1 })).toMatchObject({
    passedOver: [
      { stageName: 'Waiting', need: 'date promised', what: 'no day is promised', reason: 'parts on the way' },
    ],
  });
  const asksEverything = { stageId: 5, needs: listNeeds, by: 1 };
  await call('jobs.changeStageNeeds', asksEverything);
  await call('jobs.moveToStage', { jobId: 1, stageId: 6, by: 1 });
  await desk.close();

  const after = openConnection(file, 'write');
  expect(() => after.exec(`update needs_passed_over set reason = ''`)).toThrow('append-only');
  expect(() => after.exec('delete from needs_passed_over')).toThrow('append-only');
  expect(after.prepare("select name from sqlite_schema where name like '%before'").all()).toEqual([]);
  after.close();
});

test('a new shop asks for its lists from the first day', async () => {
  const { call } = await deskIn();
  await call('shop.createShop', {
    shopName: 'Harrow Lane Transmission',
    lengthUnit: 'thou',
    paper: 'letter',
    personName: 'Rosa Aldane',
    personInitials: 'RA',
  });
  const stages = await call('jobs.listStages', {});
  expect(stages.filter(({ needs }) => needs.some((need) => listNeeds.includes(need))).map(({ name }) => name)).toEqual([
    'Teardown',
    'Build',
    'Final check',
  ]);
});
