// Freezes a shop file of the newest schema as SQL text, once: `npx node tests/database/frozen/freeze.ts SHOPFILE`.
// What was released is never written again; a migration that has not landed yet may be frozen anew by taking its text
// away first.
import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';

type Part = { readonly type: string; readonly name: string; readonly sql: string };

/** Everything a shop file holds, its words in their order: tables, rows, then what watches over them. */
function textOf(file: Sqlite.Database): string {
  const parts = file
    .prepare<[], Part>("select type, name, sql from sqlite_schema where sql is not null and name not like 'sqlite%'")
    .all();
  const searched = parts.filter(({ sql }) => /^create virtual table/i.test(sql)).map(({ name }) => name);
  // A table for searching makes its own tables below it.
  const own = parts.filter(({ name }) => !searched.some((word) => name.startsWith(`${word}_`)));
  const tables = own.filter(({ type }) => type === 'table');
  return [
    ...['application_id', 'user_version'].map((name) => `pragma ${name} = ${file.pragma(name, { simple: true })}`),
    ...tables.map(({ sql }) => sql),
    ...tables.flatMap(({ name }) => rowsOf(file, name, searched.includes(name))),
    ...own.filter(({ type }) => type !== 'table').map(({ sql }) => sql),
  ]
    .map((statement) => `${statement};\n`)
    .join('');
}

function rowsOf(file: Sqlite.Database, table: string, isSearched: boolean): string[] {
  const columns = file.prepare<[], string>(`select name from pragma_table_info('${table}')`).pluck().all();
  const named = isSearched ? ['rowid', ...columns] : columns;
  const values = named.map((name) => `quote("${name}")`).join(` || ', ' || `);
  const rows = file.prepare<[], string>(`select '(' || ${values} || ')' from "${table}"`).pluck().all();
  if (rows.length === 0) return [];
  return [`insert into "${table}"${isSearched ? ` (${named.join(', ')})` : ''} values\n  ${rows.join(',\n  ')}`];
}

const [path] = process.argv.slice(2);
if (!path) throw new Error('Name the shop file to freeze.');
const file = new Sqlite(path, { readonly: true });
const number = String(file.pragma('user_version', { simple: true })).padStart(4, '0');
const target = join(import.meta.dirname, `${number}.sql`);
if (existsSync(target)) throw new Error(`${number} is frozen already.`);
writeFileSync(target, textOf(file));
console.log(`Wrote ${number}.sql.`);
