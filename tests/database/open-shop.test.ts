import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { sql } from 'kysely';
import { describe, expect, test } from 'vitest';
import { assertPragmas, openConnection, queriesOn } from '../../main/database/connection.ts';
import { storageErrorOf } from '../../main/database/errors.ts';
import { migrate } from '../../main/database/migrate.ts';
import { openShop } from '../../main/database/open-shop.ts';
import { migrations } from '../../migrations/index.ts';
import { shopWithKx3, temporaryFolder, tickingClock } from '../desk.ts';

const codeOf = (opening: Promise<unknown>) =>
  opening.then(
    () => 'opened',
    (thrown) => storageErrorOf(thrown)?.code,
  );

async function newShopFile(): Promise<string> {
  const file = join(temporaryFolder(), 'shop.thoubook');
  await (await openShop(file, 'write', tickingClock())).close();
  return file;
}

describe('a long read', () => {
  test('lets the other windows in between its questions', async () => {
    const shop = await openShop(await newShopFile(), 'read', tickingClock());
    let turns = 0;
    const others = setInterval(() => {
      turns += 1;
    });
    const until = performance.now() + 100;
    await shop.readApart(async (reading) => {
      while (performance.now() < until) await reading.selectFrom('people').selectAll().execute();
    });
    clearInterval(others);
    await shop.close();
    expect(turns).toBeGreaterThan(0);
  });
});

describe('a shop file is opened so that nothing written is lost', () => {
  test('the pragmas the book relies on still hold after a write', async () => {
    const file = join(temporaryFolder(), 'shop.thoubook');
    const connection = openConnection(file, 'write');
    connection.exec('create table written (at text); insert into written values (1)');
    assertPragmas(connection);
    expect(connection.pragma('synchronous', { simple: true })).toBe(2);
    expect(connection.pragma('journal_mode', { simple: true })).toBe('wal');
    connection.close();
  });

  test('the schema is the one a reviewer can read in tests/database/schema.sql', async () => {
    const connection = new Sqlite(await newShopFile(), { readonly: true });
    const statements = connection
      .prepare(
        "select sql from sqlite_schema where sql is not null and name not like 'kysely%' order by type desc, name",
      )
      .pluck()
      .all();
    connection.close();
    await expect(`${statements.join(';\n\n')};\n`).toMatchFileSnapshot('schema.sql');
  });

  test('every table of ours is strict', async () => {
    const connection = new Sqlite(await newShopFile(), { readonly: true });
    const loose = connection
      .prepare(
        "select name from pragma_table_list where schema = 'main' and type = 'table' and strict = 0 and name not like 'sqlite%' and name not like 'kysely%'",
      )
      .pluck()
      .all();
    connection.close();
    expect(loose).toEqual([]);
  });
});

describe('a file that is not a sound shop file of this program is refused and left as it is', () => {
  test('a text file', async () => {
    const file = join(temporaryFolder(), 'shop.thoubook');
    writeFileSync(file, 'not a database, but long enough to look at');
    expect(await codeOf(openShop(file, 'write', tickingClock()))).toBe('foreign');
    expect(readFileSync(file, 'utf8')).toBe('not a database, but long enough to look at');
  });

  test('somebody else’s database', async () => {
    const file = join(temporaryFolder(), 'shop.thoubook');
    new Sqlite(file).exec('create table theirs (a)').close();
    const before = readFileSync(file);
    expect(await codeOf(openShop(file, 'write', tickingClock()))).toBe('foreign');
    expect(readFileSync(file)).toEqual(before);
  });

  test('a shop file of a newer program', async () => {
    const file = await newShopFile();
    const connection = new Sqlite(file);
    connection.pragma(`user_version = ${Object.keys(migrations).length + 1}`);
    connection.pragma('journal_mode = delete');
    connection.close();
    const before = readFileSync(file);
    expect(await codeOf(openShop(file, 'write', tickingClock()))).toBe('newer');
    expect(readFileSync(file)).toEqual(before);
  });

  test('a damaged shop file', async () => {
    const { desk, folder } = await shopWithKx3();
    await desk.close();
    const damaged = join(temporaryFolder(), 'shop.thoubook');
    const bytes = readFileSync(join(folder, 'shop.thoubook'));
    // Everything after the first page, which holds the header and the schema's root, is overwritten.
    writeFileSync(damaged, bytes.fill(0x5a, 4096));
    expect(await codeOf(openShop(damaged, 'write', tickingClock()))).toBe('damaged');
  });

  test('an older file is not opened for reading only, because reading must not change it', async () => {
    const file = join(temporaryFolder(), 'shop.thoubook');
    writeFileSync(file, '');
    expect(await codeOf(openShop(file, 'read', tickingClock()))).toBe('older');
  });
});

describe('a file is brought up to date whole or not at all', () => {
  test('a migration that fails half way leaves no half schema behind', async () => {
    const connection = openConnection(join(temporaryFolder(), 'shop.thoubook'), 'write');
    const failing = {
      ...migrations,
      '9999-fails': {
        up: async (database: Parameters<(typeof migrations)[string]['up']>[0]) => {
          await sql`create table half_done (a integer) strict`.execute(database);
          throw new Error('the power went');
        },
      },
    };
    await expect(migrate(queriesOn(connection), failing)).rejects.toThrow('could not be brought up to date');
    expect(connection.prepare('select name from sqlite_schema').pluck().all()).toEqual([]);
    expect(connection.pragma('user_version', { simple: true })).toBe(0);
    connection.close();
  });

  test('before a migration a whole copy of the file as it was goes into the backup folder', async () => {
    const file = await newShopFile();
    const next = {
      ...migrations,
      '9999-next': {
        up: async (database: Parameters<(typeof migrations)[string]['up']>[0]) => {
          await sql`create table next_thing (a integer) strict`.execute(database);
          await sql.raw(`pragma user_version = ${Object.keys(migrations).length + 1}`).execute(database);
        },
      },
    };
    await (await openShop(file, 'write', tickingClock(), next)).close();
    const [name = '', ...others] = readdirSync(join(file, '../backups')).filter((each) => each.endsWith('.thoubook'));
    expect(others).toEqual([]);
    const schemaOf = (path: string) => {
      const connection = new Sqlite(path, { readonly: true });
      const next = connection.prepare("select count(*) from sqlite_schema where name = 'next_thing'").pluck().get();
      const version = connection.pragma('user_version', { simple: true });
      connection.close();
      return [version, next];
    };
    expect(schemaOf(join(file, '../backups', name))).toEqual([Object.keys(migrations).length, 0]);
    expect(schemaOf(file)).toEqual([Object.keys(migrations).length + 1, 1]);
  });

  test('a backup made by hand opens as a shop file and holds what was written last', async () => {
    const { call } = await shopWithKx3();
    const { file } = await call('backups.makeBackup', {});
    const copy = new Sqlite(file, { readonly: true });
    expect(copy.prepare('select name from families').pluck().all()).toEqual(['KX3']);
    copy.close();
  });
});

describe('what is append-only cannot be changed, not even by replacing', () => {
  const tables = [
    'readings',
    'takes',
    'take_figures',
    'setups',
    'mock_ups',
    'mock_up_pieces',
    'pieces',
    'piece_heights',
    'discards',
    'piece_height_points',
    'piece_looks',
    'can_movements',
    'can_returns',
    'batches',
    'kit_batch_lines',
    'movements',
    'cores',
    'core_settlements',
    'stage_entries',
    'overrides',
    'intakes',
    'promises',
    'calls',
    'sign_offs',
    'needs_passed_over',
    'deliveries',
    'warranties',
    'job_extents',
    'job_extent_stages',
    'job_extent_parts',
    'jobs_widened',
    'spot_notes',
    'money_terms',
    'job_lines',
    'job_line_ends',
    'estimates',
    'estimate_lines',
    'approvals',
    'deposits',
    'gauges',
    'gauge_cards',
    'gauge_checks',
    'gauge_check_points',
    'take_gauges',
    'findings',
    'finding_cards',
    'finding_decisions',
    'finding_photos',
    'finding_lines',
    'studies',
    'study_parts',
    'study_people',
    'study_reads',
    'method_pairs',
    'reading_traces',
    'list_answers',
    'clutch_loads',
    'comebacks',
    'comeback_cards',
    'comeback_causes',
    'units_to_call',
    'units_called',
  ];

  test.each(tables)('%s', async (table) => {
    const { call, desk, folder, familyId, by } = await shopWithKx3();
    const { jobId } = await call('jobs.checkIn', {
      customer: { name: 'Tam Okoro', phone: '', email: '' },
      unit: { familyId, serial: '1', vehicle: '', use: 'tow' },
      complaint: '',
      caseTag: '',
      distance: null,
      by,
    });
    await desk.close();
    const connection = openConnection(join(folder, 'shop.thoubook'), 'write');
    fillOneRowOf(connection, table, jobId);
    const [row] = connection.prepare(`select * from ${table} limit 1`).all() as Record<string, unknown>[];
    expect(row).toBeDefined();
    const columns = Object.keys(row ?? {});
    const replace = `insert or replace into ${table} (${columns.join(', ')}) values (${columns.map((name) => `@${name}`).join(', ')})`;
    expect(() => connection.prepare(replace).run(row)).toThrow('append-only');
    expect(() => connection.exec(`update ${table} set ${columns[0]} = ${columns[0]}`)).toThrow('append-only');
    expect(() => connection.exec(`delete from ${table}`)).toThrow('append-only');
    connection.close();
  });
});

// One row in every append-only table, written past the services so that the triggers alone are on trial.
function fillOneRowOf(connection: Sqlite.Database, table: string, jobId: number): void {
  if (connection.prepare(`select count(*) from ${table}`).pluck().get() !== 0) return;
  const at = "'2026-11-23T08:00:00.000Z'";
  connection.exec(`
    insert into cans (can_id, kind, outline, height_nm) values (1, 'steel', 'KX3 forward', 1955800);
    insert into parts values (1, 'KX3-F-FR', 'Forward friction', 'friction', '', 'each', '', null, null, null, null, null, 0);
    insert into batches values (1, 1, null, 'B-7', '', '2026-11-20', 410, ${at}, 1);
    insert into kit_batch_lines values (1, 1, 4);
    insert into movements values (1, 1, 'receive', 12, null, null, '', ${at}, 1);
    insert into cores values (1, 'due to us', 'case', 1, null, null, null, ${jobId}, ${at}, 1);
    insert into core_settlements values (1, 'came back', '', ${at}, 1);
    insert into can_movements (can_movement_id, can_id, change, reason, moved_at, moved_by)
      values (1, 1, 5, 'count', ${at}, 1);
    insert into pieces (piece_id, kind, outline, tag, added_at, added_by)
      values (1, 'steel', 'KX3 forward', 'A1', ${at}, 1);
    insert into piece_heights (piece_height_id, piece_id, height_nm, height_from, typed, reason, measured_at, measured_by)
      values (1, 1, 1955800, 'measured', '77', '', ${at}, 1);
    insert into piece_height_points values (1, 1, 1955800);
    insert into piece_looks values (1, 1, 'flat', null, 0, 0, 0, 1, '', ${at}, 1);
    insert into can_returns values (1, 1, ${at}, 1);
    insert into discards values (1, 'hot spots', ${at}, 1, 0);
    insert into mock_ups (mock_up_id, job_id, pack_id, number, note, made_at, made_by)
      select 1, ${jobId}, min(pack_id), 0, '', ${at}, 1 from packs;
    insert into mock_up_pieces select 1, min(slot_id), 1 from slots;
    insert into setups values (1, 'drum', 1, null, '', 'none', 'soaked', 1, 'plunger', 100, '');
    insert into takes select 1, ${jobId}, min(check_id), 'final', 'final', 'air', null, 1, '', ${at}, 1 from checks;
    insert into take_figures values (1, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', null, null, null);
    insert into readings (reading_id, take_id, spot, method, typed, push_amount, air_amount, taken_at, taken_by)
      values (1, 1, 1, 'air', '4 23', 101600, 584200, ${at}, 1);
    insert into spot_notes values (1, 1, 1, 'enough', ${at}, 1);
    insert into reading_traces values (1, 'Bench gauge', 0, x'0000', 2, 0, null, null);
    insert into money_terms values (1, 11500, 'Sales tax', 8875, 0, ${at}, 1);
    insert into job_lines values (1, ${jobId}, 'labour', 'Rebuild', 1800, 11500, null, 0, null, ${at}, 1);
    insert into job_line_ends values (1, null, 'taken off', ${at}, 1);
    insert into estimates values (1, ${jobId}, 1, '', 'Sales tax', 8875, 0, 0, 207000, 0, ${at}, 1);
    insert into estimate_lines values (1, 1, 1);
    insert into approvals values (1, 1, 'Tam Okoro', 'phone', 207000, '2026-11-23', '', ${at}, 1);
    insert into deposits values (1, ${jobId}, 50000, 'cash', '', ${at}, 1);
    insert into promises values (1, ${jobId}, '2026-11-27', '', ${at}, 1);
    insert into calls values (1, ${jobId}, 'they called', 'Tam Okoro', 'When is it done?', ${at}, 1);
    insert into sign_offs values (1, ${jobId}, 'on stand', '', ${at}, 1);
    insert into deliveries values (1, ${jobId}, 'Tam Okoro', '2026-11-23', 118412, 'miles', 1, '', ${at}, 1);
    insert into warranties values (1, ${jobId}, null, 12, 12000, 'miles', null, '', ${at}, 1);
    insert into job_extents values (${jobId}, 'Reseal');
    insert into job_extent_stages values (${jobId}, 1);
    insert into job_extent_parts values (${jobId}, 'check', 'Front end play');
    insert into jobs_widened values (${jobId}, 'brass in the pan', ${at}, 1);
    insert into needs_passed_over select min(stage_entry_id), 1, 'date promised', 'no day', 'no parts yet'
      from stage_entries;
    insert into overrides select 1, ${jobId}, min(check_id), 'because', ${at}, 1 from checks;
    insert into gauges values (1, 'dial plunger', ${at}, 1);
    insert into gauge_cards values (1, 1, 'D1', 'thou', 25400, 12700, 'certificate', 5, '', 90, 0, ${at}, 1);
    insert into gauge_checks values (1, 1, 'blocks', '2026-11-20', 12700, '', null, '', ${at}, 1);
    insert into gauge_check_points values (1, 1, 254000, 254000, '10', '10');
    insert into take_gauges values (1, 1, 12700, 5);
    insert into studies values (1, 'Dial D1 on Forward', 'air', 1, 2, null, 7, ${at}, 1);
    insert into study_parts values (1, 1, 'pack 1');
    insert into study_people values (1, 1, 1);
    insert into study_reads values (1, 1, 1, '4 23', 685800, null, '', ${at}, 1);
    insert into list_answers select 1, ${jobId}, min(list_line_id), 'not so', '', '', null, null, 'new one comes', ${at}, 1
      from list_lines;
    insert into clutch_loads values (1, ${jobId}, 298280, 1900000, '', ${at}, 1);
    insert into findings values (1, ${jobId});
    insert into finding_cards values (1, 1, 'pump bushing', null, null, null, 'worn', null, '', null, '', 0, '', ${at}, 1);
    insert into finding_decisions values (1, 1, 'replace', '', ${at}, 1);
    insert into photos values
      (1, ${jobId}, '${'a'.repeat(64)}', '${'b'.repeat(64)}', 4, 3, '', null, 0, null, ${at}, 1, null);
    insert into finding_photos values (1, 1, 1, 1, ${at}, 1);
    insert into finding_lines values (1, 1, ${at}, 1);
    insert into jobs select 9000, 9000, customer_id, unit_id, revision_id, '', null, null, opened_at, 1
      from jobs where job_id = ${jobId};
    insert into comebacks values (1, 9000, ${jobId}, ${at}, 1);
    insert into comeback_cards values
      (1, 1, '2026-11-23', 'slips hot', 130000, 'miles', 'ours', 'in warranty', '', 41000, '', '', ${at}, 1);
    insert into comeback_causes values (1, 1, 'too tight', null, 'suspected', '', ${at}, 1);
    insert into units_to_call values (1, ${jobId}, 'batch', 'friction B-7', 'Forward', 'burnt in two', ${at}, 1);
    insert into units_called values (1, 1, 'reached', '', ${at}, 1);
    insert into method_pairs values (1, 'KX3 forward', 'feeler', 'air', 660400, 685800, '26', '27', null, '', ${at}, 1);
  `);
}
