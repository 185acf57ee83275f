// A shop file from before clutch figures: its packs have none, and a sheet that no job uses takes them.
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { noClutchFigures } from '../../app/clutch/clutch-figures.ts';
import { openConnection, queriesOn } from '../../main/database/connection.ts';
import { migrate } from '../../main/database/migrate.ts';
import { migrations } from '../../migrations/index.ts';
import { deskOver, temporaryFolder } from '../desk.ts';

test('packs from before have no clutch figures and can be given some', async () => {
  const file = join(temporaryFolder(), 'shop.thoubook');
  const before = openConnection(file, 'write');
  const upToHere = Object.keys(migrations).findIndex((name) => name.endsWith('-clutch-figures'));
  await migrate(queriesOn(before), Object.fromEntries(Object.entries(migrations).slice(0, upToHere)));
  before.exec(`
    insert into people values (1, 'RA', 'Rosa Aldane', null);
    insert into families values (1, 'KX3');
    insert into revisions values (1, 1, 1, '', '2026-11-23T08:00:00.000Z', 1);
    insert into packs values (1, 1, 0, 'Forward', '');
    insert into slots values (1, 1, 1, 'friction', null, 0, '', '');
  `);
  before.close();

  const { call } = await deskOver(file, 'write');
  const { packs } = await call('specs.getRevision', { familyId: 1 });
  expect(packs).toMatchObject([{ name: 'Forward', clutch: null }]);
  const { packId: _, slots, ...pack } = packs[0]!;
  const clutch = { ...noClutchFigures, pistonOutside_nm: 127_000_000, speed2_rpm: -3400 };
  const sheet = { packs: [{ ...pack, slots: slots.map(({ slotId: _, ...slot }) => slot), clutch }], checks: [] };
  await call('specs.saveSheet', { familyId: 1, sheet, sourceNote: '', by: 1 });
  expect((await call('specs.getRevision', { familyId: 1 })).packs[0]?.clutch).toEqual(clutch);
});
