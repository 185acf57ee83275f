// Every table of the shop file as a list, read off the file's own schema, so that none is ever left out: its columns as
// they are, and beside each number that points at something the name of that.
import { sql } from 'kysely';
import type { Reading } from '../database/tables.ts';
import type { CsvSheet } from './csv-sheet.ts';
import type { Figures } from './figures.ts';
import { sayTable } from './table-words.ts';

type Pointer = { readonly from: string; readonly table: string };
type TableOfFile = {
  readonly name: string;
  readonly columns: readonly string[];
  readonly pointers: readonly Pointer[];
};

/** What a row is called where another points at it: the heading, and where it comes from. */
const namesOf: Readonly<Record<string, ReadonlyArray<readonly [heading: string, from: string]>>> = {
  people: [['initials', 'initials']],
  customers: [['name', 'name']],
  families: [['name', 'name']],
  units: [['serial', 'serial']],
  jobs: [['number', 'number']],
  stages: [['name', 'name']],
  packs: [['name', 'name']],
  checks: [['name', 'name']],
  parts: [['number', 'number']],
  estimates: [['number', 'number']],
  mock_ups: [['number', 'number']],
  pieces: [['tag', 'tag']],
  batches: [
    ['part', '(select number from parts where parts.part_id = batches.part_id)'],
    ['mark', 'mark'],
  ],
};

/** All tables but those `without`. */
export async function sheetsOfTables(
  reading: Reading,
  figures: Figures,
  without: readonly string[],
): Promise<CsvSheet[]> {
  const tables = await listTables(reading);
  return tables
    .filter(({ name }) => !without.includes(name))
    .map((table) => sheetOf(reading, figures, table, sql`true`));
}

/** The rows of one job: those that name it, those that name one of them, and the customer and unit it names. */
export async function sheetsOfJob(
  reading: Reading,
  figures: Figures,
  jobId: number,
  without: readonly string[],
): Promise<CsvSheet[]> {
  const tables = await listTables(reading);
  const owned = new Map<string, Condition>([['jobs', sql`it.job_id = ${jobId}`]]);
  for (let isGrowing = true; isGrowing; ) {
    isGrowing = false;
    for (const { name, pointers } of tables) {
      const up = owned.has(name) ? undefined : pointers.find(({ table }) => owned.has(table));
      if (!up) continue;
      const rows = sql`select it.rowid from ${sql.table(up.table)} as it where ${owned.get(up.table)}`;
      owned.set(name, sql`it.${sql.ref(up.from)} in (${rows})`);
      isGrowing = true;
    }
  }
  for (const [table, column] of [
    ['customers', 'customer_id'],
    ['units', 'unit_id'],
  ] as const) {
    owned.set(table, sql`it.${sql.ref(column)} = (select ${sql.ref(column)} from jobs where job_id = ${jobId})`);
  }
  return tables.flatMap((table) => {
    const condition = owned.get(table.name);
    return condition && !without.includes(table.name) ? [sheetOf(reading, figures, table, condition)] : [];
  });
}

type Condition = ReturnType<typeof sql>;

function sheetOf(reading: Reading, figures: Figures, table: TableOfFile, condition: Condition): CsvSheet {
  const named = table.pointers.flatMap(({ from, table: to }) =>
    (namesOf[to] ?? []).map(([heading, column]) => ({
      heading: `${from.replace(/_id$/, '')} ${heading}`,
      select: sql`(select ${sql.raw(column)} from ${sql.table(to)} where rowid = it.${sql.ref(from)})`,
    })),
  );
  const headings = [...table.columns, ...named.map(({ heading }) => heading)];
  const selected = [
    ...table.columns.map((column) => sql`it.${sql.ref(column)} as ${sql.ref(column)}`),
    ...named.map(({ heading, select }) => sql`${select} as ${sql.ref(heading)}`),
  ];
  const from = sql<Record<string, unknown>>`(select ${sql.join(selected)} from ${sql.table(table.name)} as it
    where ${condition} order by 1)`.as('rows');
  const rows = reading.selectFrom(from).selectAll();
  return {
    name: table.name.replaceAll('_', ' '),
    says: sayTable(table.name),
    headings,
    rows: (async function* () {
      for await (const row of rows.stream()) yield headings.map((heading) => figures.cell(row[heading]));
    })(),
  };
}

async function listTables(reading: Reading): Promise<TableOfFile[]> {
  const tables = await reading
    .selectFrom(sql<{ name: string; type: string }>`pragma_table_list`.as('listed'))
    .select('name')
    // Of the others the shadows belong to the search, and views hold nothing of their own.
    .where('type', '=', 'table')
    .where('name', 'not like', 'sqlite_%')
    .where('name', 'not like', 'kysely_%')
    .orderBy('name')
    .execute();
  return Promise.all(
    tables.map(async ({ name }) => ({
      name,
      columns: await columnsOf(reading, name),
      pointers: await pointersOf(reading, name),
    })),
  );
}

async function columnsOf(reading: Reading, table: string): Promise<string[]> {
  const columns = sql<{ cid: number; name: string }>`pragma_table_info(${sql.lit(table)})`.as('columns');
  return (await reading.selectFrom(columns).select('name').orderBy('cid').execute()).map(({ name }) => name);
}

async function pointersOf(reading: Reading, table: string): Promise<Pointer[]> {
  const pointers = sql<Pointer & { id: number }>`pragma_foreign_key_list(${sql.lit(table)})`.as('pointers');
  const rows = await reading.selectFrom(pointers).select(['from', 'table']).orderBy('id', 'desc').execute();
  // A row that points at its like needs no other name than the number.
  return rows.filter(({ table: to }) => to !== table);
}
