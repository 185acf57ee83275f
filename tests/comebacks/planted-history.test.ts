// An invented shop grown from a seed: a real file that the book opens, which says what was planted and nothing else.
import { createHash } from 'node:crypto';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { expect, test } from 'vitest';
import { fillShelf } from '../../main/comebacks/as-built.service.ts';
import { gatherFleet } from '../../main/comebacks/fleet-rows.service.ts';
import { openShop } from '../../main/database/open-shop.ts';
import { growHistory } from '../../main/shop/demo/history/grow-history.ts';
import { type Planting, plant } from '../../main/shop/demo/history/plant.ts';
import { addPerson, fillShop } from '../../main/shop/shop.service.ts';
import { deskOver, temporaryFolder, tickingClock } from '../desk.ts';
import { plantedRows } from './planted-rows.ts';

const planting: Planting = { builds: 60, seed: 11, effects: 'planted', families: 'all', until: '2026-11-20' };

async function grown(what: Planting): Promise<string> {
  const file = join(temporaryFolder(), 'shop.thoubook');
  const shop = await openShop(file, 'write', tickingClock());
  await shop.write((writing) =>
    fillShop(writing, {
      shopName: 'Harrow Lane Transmission',
      lengthUnit: 'thou',
      paper: 'letter',
      personName: 'Rosa Aldane',
      personInitials: 'RA',
      isDemo: false,
    }),
  );
  const { personId: second } = await shop.write((writing) =>
    addPerson(writing, { name: 'Jonas Hale', initials: 'JH' }),
  );
  const { personId: third } = await shop.write((writing) =>
    addPerson(writing, { name: 'Mira Tolland', initials: 'MT' }),
  );
  await growHistory(shop, what, [1, second, third]);
  await shop.close();
  return file;
}

/** Every row of every table that is no index of the search. */
function contentOf(file: string): string {
  const connection = new Sqlite(file, { readonly: true });
  const tables = connection
    .prepare<[], { name: string }>(
      "select name from sqlite_master where type = 'table' and name not glob 'job_words_*' and name not glob 'kysely*' order by name",
    )
    .all();
  const hash = createHash('sha256');
  for (const { name } of tables) hash.update(JSON.stringify([name, connection.prepare(`select * from ${name}`).all()]));
  connection.close();
  return hash.digest('hex');
}

test('the file is sound, and the ledger, the plates and what was said of them hold together', async () => {
  const connection = new Sqlite(await grown(planting), { readonly: true });
  expect(connection.pragma('integrity_check')).toEqual([{ integrity_check: 'ok' }]);
  expect(connection.pragma('foreign_key_check')).toEqual([]);
  const value = (sql: string) => connection.prepare(sql).pluck().get();
  expect(value('select min(had) from (select sum(change) as had from movements group by batch_id)')).toBeGreaterThan(
    -1,
  );
  expect(value('select count(*) from takes where take_id not in (select take_id from take_figures)')).toBe(0);
  expect(value('select count(*) from jobs where job_id not in (select rowid from job_words)')).toBe(0);
  // Every steel lies in one place: no plate is in the newest mock-up of two tickets.
  expect(
    value(`select count(*) from (
      select piece_id from mock_up_pieces as sits join mock_ups as here using (mock_up_id)
      where number = (select max(number) from mock_ups where job_id = here.job_id and pack_id = here.pack_id)
      group by piece_id having count(distinct job_id) > 1)`),
  ).toBe(0);
  connection.close();
});

test('a ticket reads as it was planted, with its comeback, its trace and its papers', async () => {
  const few = { ...planting, builds: 20 };
  const { call } = await deskOver(await grown(few), 'write');
  const jobs = await call('jobs.listJobs', { text: '', includeClosed: true });
  const planted = [...plant(few)];
  expect(jobs).toHaveLength(planted.length);
  let compared = 0;
  for (const { ticket } of planted) {
    const jobId = jobs.find(({ number }) => number === ticket.key)?.jobId;
    const job = await call('jobs.getJob', { jobId });
    expect(job.unit).toMatchObject({ serial: ticket.unit.serial, vehicle: ticket.unit.vehicle, use: ticket.unit.use });
    expect(job.customer).toMatchObject({ name: ticket.customer.name });
    for (const take of ticket.takes.filter(({ phase, method }) => phase === 'final' && method === 'air')) {
      // By hand: push-down and travel added, spot by spot, in thou.
      const spots = Map.groupBy(take.readings, ({ spot }) => spot);
      const means = [...spots.values()].map(
        (reads) => reads.reduce((sum, { typed }) => sum + addUp(typed), 0) / reads.length,
      );
      const mean = means.reduce((sum, each) => sum + each, 0) / means.length;
      const latest = job.checks.find(({ name }) => name === take.check)?.latest;
      expect(latest?.value).toBeCloseTo(mean * 25_400, 3);
      expect(latest).toMatchObject({ min: Math.min(...means) * 25_400, max: Math.max(...means) * 25_400 });
      compared += 1;
    }
    const { heldAgainst } = await call('comebacks.listOfJob', { jobId });
    expect(heldAgainst !== null).toBe(ticket.comeback !== null);
    if (heldAgainst && ticket.comeback) {
      const { comebackId } = heldAgainst;
      expect(heldAgainst).toMatchObject({ number: ticket.comeback.built, outcome: ticket.comeback.outcome });
      expect(await call('comebacks.getComeback', { comebackId })).toMatchObject({ ticket: { jobId } });
      expect((await call('comebacks.trace', { comebackId })).causes.length).toBeGreaterThan(0);
    }
    expect((await call('jobs.getDelivery', { jobId })).delivery).toMatchObject({ deliveredOn: ticket.delivery.on });
    const acts = await call('jobs.getHistory', { jobId });
    expect(acts.length).toBeGreaterThan(ticket.takes.length);
    expect(await call('jobs.listFindings', { jobId })).toHaveLength(ticket.findings.length);
  }
  expect(compared).toBeGreaterThan(40);
  for (const name of ['shop.getShop', 'jobs.listStages', 'specs.listFamilies', 'comebacks.getCost'] as const)
    expect(await call(name, {})).toBeTruthy();
  const back = planted.filter(({ ticket }) => ticket.comeback);
  expect(back.length).toBeGreaterThan(1);
  expect(await call('comebacks.listComebacks', { only: 'all' })).toHaveLength(back.length);
  const first = jobs.find(({ number }) => number === 1)?.jobId;
  expect((await call('jobs.printBuildReport', { jobId: first, copy: 'shop' })).pdfBase64.slice(0, 5)).toBe('JVBER');
});

/** "4 23" is 27. */
function addUp(typed: string): number {
  return typed.split(' ').reduce((sum, each) => sum + Number(each), 0);
}

test('the same seed grows the same file, another seed and no effects another', async () => {
  const small = { ...planting, builds: 25 };
  const first = contentOf(await grown(small));
  expect(contentOf(await grown(small))).toBe(first);
  expect(contentOf(await grown({ ...small, seed: 12 }))).not.toBe(first);
  const without = [...plant({ ...planting, effects: 'none' })];
  const builds = (of: typeof without) => of.filter(({ ticket }) => ticket.kind === 'build').map(({ truth }) => truth);
  expect(builds(without)).toEqual(builds([...plant(planting)]));
  expect(without.length).not.toBe([...plant(planting)].length);
});

test('a file gathers the very rows that are planted', async () => {
  const what = { ...planting, builds: 150, families: 'the first' as const };
  const shop = await openShop(await grown(what), 'write', tickingClock());
  const [{ family_id: familyId } = { family_id: 0 }] = await shop.read((reading) =>
    reading.selectFrom('families').selectAll().execute(),
  );
  await fillShelf(shop, familyId, () => true);
  const { rows } = await shop.read((reading) => gatherFleet(reading, familyId, what.until, null));
  await shop.close();
  const pure = plantedRows(what);
  const plain = ({ builds }: typeof rows) =>
    builds.map(({ jobId: _, builderId: __, batchIds: ___, ...build }) => build);
  expect(plain(pure)).toEqual(plain(rows));
  const byName = ({ columns }: typeof rows) => columns.toSorted((a, b) => (a.name < b.name ? -1 : 1));
  expect(byName(pure)).toEqual(byName(rows));
});
