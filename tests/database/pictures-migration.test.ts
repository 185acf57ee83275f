// A shop file from before pictures: its sheets have none, and one that no job uses takes them.
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { openConnection, queriesOn } from '../../main/database/connection.ts';
import { migrate } from '../../main/database/migrate.ts';
import { migrations } from '../../migrations/index.ts';
import { deskOver, temporaryFolder } from '../desk.ts';
import { greyJpeg } from '../photos/small-jpeg.ts';

test('sheets from before have no pictures and can be given some', async () => {
  const file = join(temporaryFolder(), 'shop.thoubook');
  const before = openConnection(file, 'write');
  const upToHere = Object.keys(migrations).findIndex((name) => name.endsWith('-pictures'));
  await migrate(queriesOn(before), Object.fromEntries(Object.entries(migrations).slice(0, upToHere)));
  before.exec(`
    insert into people values (1, 'RA', 'Rosa Aldane', null);
    insert into families values (1, 'KX3');
    insert into revisions values (1, 1, 1, '', '2026-11-23T08:00:00.000Z', 1);
    insert into checks values
      (1, 1, 1, null, 'Port A', 'Leak-down', 'drop', 'pressure', 'psi', 'maximum', null, null, 68948, 'mean', 'none', 1, '');
  `);
  before.close();

  const { call } = await deskOver(file, 'write');
  const { packs, checks, pictures } = await call('specs.getRevision', { familyId: 1 });
  expect([packs, checks.length, pictures]).toEqual([[], 1, []]);
  const kept = await call('specs.keepPicture', { of: { jpegBase64: greyJpeg.toString('base64') }, by: 1 });
  const [{ checkId: _, packId: __, ...check } = checks[0]!] = checks;
  const points = [
    { label: 'A', note: '', x_permille: 0, y_permille: 1000, checkName: 'Port A', listName: null, lineWords: null },
  ];
  const sheet = { packs: [], checks: [check], pictures: [{ title: 'Pump face', ...kept, points }] };
  await call('specs.saveSheet', { familyId: 1, sheet, sourceNote: '', by: 1 });
  expect(await call('specs.getRevision', { familyId: 1 })).toMatchObject({
    pictures: [{ title: 'Pump face', points: [{ label: 'A', checkName: 'Port A' }] }],
  });
});
