// Saves what can be read of a damaged shop file, row by row, on top of the newest sound backup or of an empty file.
import { copyFileSync } from 'node:fs';
import Sqlite from 'better-sqlite3';
import { openConnection } from '../database/connection.ts';
import { openShop } from '../database/open-shop.ts';

export type Salvaged = { readonly rowsSaved: number; readonly tablesCutShort: readonly string[] };

/**
 * Makes `target` hold everything of `base` (null: of an empty shop file) and every row of `damaged` that can be read
 * and is not there yet. `damaged` is only read. A row that points to one that is lost is left out.
 */
export async function salvage(damaged: string, base: string | null, target: string, now: string): Promise<Salvaged> {
  if (base !== null) copyFileSync(base, target);
  await (await openShop(target, 'write', () => now)).close();
  const whole = openConnection(target, 'write');
  const broken = openBroken(damaged);
  try {
    // Triggers guard what hands do, and these rows passed them once. Those that gather the words to search by stay.
    const triggers = whole
      .prepare("select name, sql from sqlite_schema where type = 'trigger' and sql not like '%job_words%'")
      .all() as { name: string; sql: string }[];
    whole.pragma('foreign_keys = off');
    const result = whole.transaction(() => {
      for (const { name } of triggers) whole.exec(`drop trigger "${name}"`);
      const tables = tablesOf(whole);
      const saved = tables.map((table) => ({ table, ...saveTable(broken, whole, table) }));
      const lost = dropOrphans(whole, tables);
      for (const { sql } of triggers) whole.exec(sql);
      return {
        rowsSaved: saved.reduce((sum, each) => sum + each.rows, 0) - lost,
        tablesCutShort: saved.filter((each) => each.isCutShort).map((each) => each.table),
      };
    })();
    whole.pragma('wal_checkpoint(truncate)');
    return result;
  } finally {
    broken?.close();
    whole.close();
  }
}

/** Without the checks that opening a shop makes: it is known to be damaged. */
function openBroken(file: string): Sqlite.Database | undefined {
  try {
    const connection = new Sqlite(file, { readonly: true });
    connection.pragma('cell_size_check = on');
    return connection;
  } catch {
    return undefined;
  }
}

/** Those that others point to come first, for the words to search by are gathered row by row. */
function tablesOf(whole: Sqlite.Database): string[] {
  const names = whole
    .prepare("select name from sqlite_schema where type = 'table' and sql not like 'create virtual%' order by name")
    .pluck()
    .all() as string[];
  // What is derived is reckoned anew; the migrator's notes and the words to search by belong to the file itself.
  const left = new Set(names.filter((name) => !/^(sqlite_|kysely_|as_built|job_words)/.test(name)));
  const ordered: string[] = [];
  while (left.size > 0) {
    const waits = (name: string) => keysOf(whole, name).some(({ table }) => table !== name && left.has(table));
    // A ring of tables that point to each other is taken as it comes.
    const next = [...left].find((name) => !waits(name)) ?? [...left][0]!;
    left.delete(next);
    ordered.push(next);
  }
  return ordered;
}

type ForeignKey = { readonly table: string; readonly from: string; readonly to: string | null };

function keysOf(connection: Sqlite.Database, table: string): ForeignKey[] {
  return connection.pragma(`foreign_key_list("${table}")`) as ForeignKey[];
}

/** From both ends of the table, for a hole in its middle stops either walk. */
function saveTable(
  broken: Sqlite.Database | undefined,
  whole: Sqlite.Database,
  table: string,
): { rows: number; isCutShort: boolean } {
  const columns = columnsOf(whole, table).filter((column) => columnsOf(broken, table).includes(column));
  if (!broken || columns.length === 0) return { rows: 0, isCutShort: true };
  const names = columns.map((column) => `"${column}"`).join(', ');
  const put = whole.prepare(
    `insert or ignore into "${table}" (${names}) values (${columns.map(() => '?').join(', ')})`,
  );
  let rows = 0;
  let isCutShort = false;
  for (const direction of ['asc', 'desc']) {
    try {
      const read = broken
        .prepare(`select ${names} from "${table}" order by "${firstKey(whole, table)}" ${direction}`)
        .raw();
      for (const row of read.iterate()) rows += put.run(row as unknown[]).changes;
      if (direction === 'asc') break;
    } catch {
      isCutShort = true;
    }
  }
  return { rows, isCutShort };
}

function columnsOf(connection: Sqlite.Database | undefined, table: string): string[] {
  try {
    return (
      (connection?.pragma(`table_info("${table}")`) as { name: string }[] | undefined)?.map((each) => each.name) ?? []
    );
  } catch {
    return [];
  }
}

function firstKey(whole: Sqlite.Database, table: string): string {
  const columns = whole.pragma(`table_info("${table}")`) as { name: string; pk: number }[];
  return (columns.find((each) => each.pk === 1) ?? columns[0])?.name ?? 'rowid';
}

/** Rows that point to what could not be saved; taking one out may leave another without its own. */
function dropOrphans(whole: Sqlite.Database, tables: readonly string[]): number {
  let dropped = 0;
  for (let before = -1; before !== dropped; ) {
    before = dropped;
    for (const table of tables) {
      for (const { table: parent, from, to } of keysOf(whole, table)) {
        const key = to ?? firstKey(whole, parent);
        dropped += whole
          .prepare(
            `delete from "${table}" where "${from}" is not null
             and not exists (select 1 from "${parent}" as parent where parent."${key}" = "${table}"."${from}")`,
          )
          .run().changes;
      }
    }
  }
  return dropped;
}
