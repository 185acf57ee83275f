// One shop file of every schema that was released, written by the program of then (its demo shop, and acts and rows beside
// it) and frozen as SQL text in `frozen/`; what that program said of it stands here beside what this one says.
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import { backupFolderOf } from '../../main/database/back-up.ts';
import { openShop } from '../../main/database/open-shop.ts';
import { migrations } from '../../migrations/index.ts';
import { deskOver, temporaryFolder, tickingClock } from '../desk.ts';
import { frozenFolder, thaw } from './thaw.ts';

const frozen = readdirSync(frozenFolder)
  .filter((name) => name.endsWith('.sql'))
  .map((name) => name.slice(0, 4));

type Row = Readonly<Record<string, unknown>>;
type Rows = ReadonlyMap<string, readonly Row[]>;

function thawed(number: string): string {
  const file = join(temporaryFolder(), 'shop.thoubook');
  thaw(number, file);
  return file;
}

/** Every row of every table of ours; of the table that is searched, the words by job. */
function rowsOf(file: string): Rows {
  const connection = new Sqlite(file, { readonly: true });
  const names = connection
    .prepare<[], string>(
      "select name from pragma_table_list where schema = 'main' and type in ('table', 'virtual') and name not like 'sqlite%' and name not like 'kysely%'",
    )
    .pluck()
    .all();
  const rows = new Map(
    names.map((name) => [
      name,
      connection.prepare<[], Row>(`select ${name === 'job_words' ? 'rowid,' : ''} * from "${name}"`).all(),
    ]),
  );
  connection.close();
  return rows;
}

/** What a table's new columns hold in rows that were there before them. */
function defaultsOf(file: string, table: string): Row {
  const connection = new Sqlite(file, { readonly: true });
  const columns = connection
    .prepare<[], { name: string; value: unknown }>(
      `select name, iif(dflt_value is null, null, trim(dflt_value, '''')) as value from pragma_table_info('${table}')`,
    )
    .all();
  connection.close();
  return Object.fromEntries(columns.map(({ name, value }) => [name, value]));
}

/** Columns that moved away; the rows they moved to are looked at below. */
const moved: Readonly<Record<string, readonly string[]>> = { jobs: ['complaint'] };

function asKept(table: string, row: Row): string {
  const left = Object.entries(row).filter(([column]) => !moved[table]?.includes(column));
  return JSON.stringify(left.toSorted(([a], [b]) => (a < b ? -1 : 1)).map(([name, value]) => [name, String(value)]));
}

const thou = 25_400;
/** What the program of then said of job 1: nanometres of the mean and of its expanded uncertainty, and the verdict. */
const saidFirst = [
  ['Forward clearance', 32 * thou, 39_315, 'loose'],
  ['Direct clearance', 38 * thou, 39_315, 'tight'],
  ['Low/reverse clearance', 72 * thou, 49_829, 'loose'],
  ['Front end play', 31 * thou, 32_417, 'loose'],
  ['Rear end play', 11 * thou, 32_417, 'in'],
  ['Converter hub to pump bushing', 5 * thou, 11_143, 'loose'],
];
/** The newer files went through a few hundred acts more. */
const saidAfterMore = [
  ['Forward clearance', 829_733, 40_606, 'loose'],
  ['Direct clearance', 901_700, 39_315, 'tight'],
  ['Low/reverse clearance', 1_435_200, 43_082, 'tight'],
  ['Front end play', 673_100, 27_006, 'loose'],
  ['Rear end play', 533_400, 24_959, 'loose'],
  ['Converter hub to pump bushing', 127_000, 11_143, 'loose'],
];
const saidOf: Readonly<Record<string, typeof saidFirst>> = { '0015': saidAfterMore, '0016': saidAfterMore };

test('the newest schema has its frozen file', () => {
  expect(frozen.at(-1)).toBe(Object.keys(migrations).at(-1)?.slice(0, 4));
});

describe.each(frozen)('a shop file of schema %s', (number) => {
  test('is brought up to date with every row as it was, and is backed up first', async () => {
    const file = thawed(number);
    const before = rowsOf(file);
    await (await openShop(file, 'write', tickingClock())).close();
    const after = rowsOf(file);
    for (const [table, rows] of before) {
      const now = after.get(table) ?? [];
      if (table === 'job_words') {
        const words = new Map(now.map((row) => [row.rowid, String(row.words)]));
        expect(rows.filter((row) => !words.get(row.rowid)?.includes(String(row.words)))).toEqual([]);
        continue;
      }
      const defaults = defaultsOf(file, table);
      const kept = rows.map((row) => asKept(table, { ...defaults, ...row }));
      const there = now.map((row) => asKept(table, row));
      expect([table, kept.filter((row) => !there.includes(row))]).toEqual([table, []]);
      // What a new shop is given on top, one that is at work is not.
      expect([table, there.length]).toEqual([table, kept.length]);
    }
    const isNewest = Number(number) === Object.keys(migrations).length;
    const backups = existsSync(backupFolderOf(file)) ? readdirSync(backupFolderOf(file)) : [];
    expect(backups.filter((name) => name.endsWith('.thoubook')).length).toBe(isNewest ? 0 : 1);
  });

  test('says of its readings what the program of then said', async () => {
    const file = thawed(number);
    const { call } = await deskOver(file, 'write');
    const { checks } = await call('jobs.getJob', { jobId: 1 });
    const said = checks.flatMap(({ name, latest }) =>
      latest ? [[name, Math.round(latest.value ?? 0), Math.round(latest.expanded ?? 0), latest.verdict?.word]] : [],
    );
    expect(said).toEqual(saidOf[number] ?? saidFirst);
  });

  test('still takes nothing back that was written down', async () => {
    const file = thawed(number);
    await (await openShop(file, 'write', tickingClock())).close();
    const connection = new Sqlite(file);
    for (const table of ['readings', 'piece_heights', 'can_movements', 'discards', 'overrides', 'stage_entries']) {
      expect(() => connection.exec(`delete from ${table}`)).toThrow(`append-only: ${table}`);
    }
    connection.close();
  });
});

test('what the customer said moves from the ticket to its door, word for word', async () => {
  const file = thawed('0001');
  const said = rowsOf(file).get('jobs') ?? [];
  await (await openShop(file, 'write', tickingClock())).close();
  const doors = rowsOf(file).get('intakes') ?? [];
  expect(said.length).toBeGreaterThan(1);
  expect(doors.map(({ job_id, complaint }) => [job_id, complaint])).toEqual(
    said.map(({ job_id, complaint }) => [job_id, complaint]),
  );
});
