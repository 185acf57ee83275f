// A shop file into whose every free text somebody wrote what a browser, a database, a spreadsheet or a paper could obey.
import Sqlite from 'better-sqlite3';

/** Its image would run `window.hacked`, its script too; the rest is for SQL, spreadsheets and PDF readers. */
export const hostile =
  `=cmd|' /C calc'!A0 "><img src=x onerror="window.hacked=1"><script>window.hacked=1</script>` +
  `'; drop table jobs; -- ) /S /JavaScript /JS (app.alert(1)) >> \u202eevil`;

/** Text that a figure, a day or a file is read from, or that is looked up by its exact words. */
const isNoFreeText =
  /(_at|_on|sha256|typed|unit|outline|^kind|^use|^need|code|colour|number|^tag|^label|^cause|certainty)$/;

/** Writes `text` after every free text of `file`, past the triggers that guard the words; answers into how many columns. */
export function makeHostile(file: string, text = hostile): number {
  const connection = new Sqlite(file);
  const guards = connection
    .prepare<[], { name: string; sql: string }>("select name, sql from sqlite_schema where type = 'trigger'")
    .all();
  for (const { name } of guards) connection.exec(`drop trigger "${name}"`);
  const columns = connection
    .prepare<[], { table: string; column: string }>(
      `select tables.name as "table", columns.name as "column" from pragma_table_list as tables
        join pragma_table_info(tables.name) as columns
        where tables.type = 'table' and tables.schema = 'main' and columns.type = 'TEXT' and tables.name not like 'kysely%'
          and tables.name not like 'sqlite%'`,
    )
    .all()
    .filter(({ column }) => !isNoFreeText.test(column));
  let written = 0;
  for (const { table, column } of columns) {
    // What may only be one of a few words refuses every row, and so does a name that many rows share and must not.
    const { changes } = connection
      .prepare(`update or ignore "${table}" set "${column}" = "${column}" || ? where "${column}" <> ''`)
      .run(text);
    if (changes > 0) written += 1;
  }
  for (const { sql } of guards) connection.exec(sql);
  connection.close();
  return written;
}
