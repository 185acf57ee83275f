// CSV files in: what each row would do, and then all good rows at once or none.
import type { DecimalMark } from '../../app/quantities/format-amount.ts';
import { formatMoney } from '../../app/quantities/money.ts';
import { type CsvDelimiter, writeCsv } from '../../app/stock/csv-cells.ts';
import { type CsvMapping, checkMapping, fieldsOf, mapByHeadings, missingFields } from '../../app/stock/csv-columns.ts';
import { planCount } from '../../app/stock/csv-counts.ts';
import { type PartSaid, planPart } from '../../app/stock/csv-parts.ts';
import type { CsvFate, CsvRow, CsvTarget, PrintedFile } from '../../app/stock/lists.contract.ts';
import { accepted, Refused } from '../database/errors.ts';
import type { Reading, Writing } from '../database/tables.ts';
import { getSettings, personAtWork } from '../shop/shop.service.ts';
import { listFamilies } from '../specs/specs.repository.ts';
import { countBatch } from './ledger.service.ts';
import * as repository from './lists.repository.ts';
import { csvFile } from './lists.service.ts';
import { type CsvFile, readCsvFile } from './lists-file.ts';
import { keepPart, partHand } from './parts.service.ts';

export type CsvInput = {
  target: CsvTarget;
  text: string;
  delimiter: CsvDelimiter | null;
  mapping: (string | null)[] | null;
};

/** A row with what it would do, and how it is done. */
type PlannedRow = CsvRow & { readonly act: ((writing: Writing, hand: Hand) => Promise<unknown>) | null };
type FileRow = CsvFile['rows'][number];
type RowPlanner = (row: FileRow) => PlannedRow;
type Hand = { readonly now: string; readonly reason: string; readonly by: number };
/** The heading over the reasons in a file of rejected rows. */
const why = 'why';

type Plan = { readonly file: CsvFile; readonly mapping: CsvMapping; readonly rows: readonly PlannedRow[] };

export async function previewCsv(
  reading: Reading,
  input: CsvInput & { show: 'all' | CsvFate; offset: number; limit: number },
) {
  const { file, mapping, rows } = await planFile(reading, input);
  const shown = rows.filter((row) => input.show === 'all' || row.fate === input.show);
  return {
    delimiter: file.delimiter,
    headings: [...file.headings],
    mapping: [...mapping],
    missing: [...missingFields(input.target, mapping)],
    totals: totalsOf(rows),
    rows: shown.slice(input.offset, input.offset + input.limit).map(({ act: _, ...row }) => row),
  };
}

export async function importCsv(writing: Writing, now: string, input: CsvInput & { reason: string; by: number }) {
  await personAtWork(writing, input.by);
  if (input.target === 'counts' && input.reason === '') {
    throw new Refused('reason', 'Say why it was counted: it stands in the ledger.', 'reason');
  }
  const { file, mapping, rows } = await planFile(writing, input);
  const [missing] = missingFields(input.target, mapping);
  if (missing !== undefined) throw new Refused('columns', `Choose which column is the ${missing} first.`);
  for (const { act, line } of rows) {
    try {
      await act?.(writing, { now, reason: input.reason, by: input.by });
    } catch (thrown) {
      if (!(thrown instanceof Refused)) throw thrown;
      throw new Refused(thrown.code, `Line ${line}: ${thrown.message} Nothing was taken in.`);
    }
  }
  const rejected = rows.filter((row) => row.fate === 'reject');
  return { totals: totalsOf(rows), rejects: rejected.length === 0 ? null : rejectsFile(file, rejected, now) };
}

async function planFile(reading: Reading, input: CsvInput): Promise<Plan> {
  const file = readCsvFile(input.text, input.delimiter, input.target);
  const mapping =
    input.mapping === null
      ? mapByHeadings(input.target, file.headings)
      : accepted(checkMapping(input.target, file.headings, input.mapping), 'mapping');
  const missing = missingFields(input.target, mapping);
  if (missing.length > 0) {
    const says = `not looked at: choose which column is the ${missing.join(' and the ')}`;
    return { file, mapping, rows: file.rows.map((row) => planned(row, 'reject', says, null)) };
  }
  const { decimalMark } = await getSettings(reading);
  const plan = input.target === 'parts' ? planParts : planCounts;
  const planRow = await plan(reading, mapping, decimalMark);
  return { file, mapping, rows: file.rows.map((row) => tooWide(file, row) ?? planRow(row)) };
}

/** A mark between columns inside a cell that is not quoted moves all that follows one column on. */
function tooWide(file: CsvFile, row: FileRow): PlannedRow | null {
  const width = file.headings.length;
  if (row.cells.slice(width).every((cell) => cell.trim() === '')) return null;
  return planned(row, 'reject', `has ${row.cells.length} cells where the headings are ${width}`, null);
}

function planned(row: FileRow, fate: CsvFate, says: string, act: PlannedRow['act']): PlannedRow {
  return { line: row.line, cells: [...row.cells], fate, says, act };
}

async function planParts(reading: Reading, mapping: CsvMapping, decimalMark: DecimalMark): Promise<RowPlanner> {
  const familyIds = new Map((await listFamilies(reading)).map((family) => [family.name, family.family_id]));
  const hand = await partHand(reading);
  const known = { decimalMark, families: [...familyIds.keys()].toSorted() };
  const parts = new Map(
    (await repository.listAllParts(reading)).map((row) => [
      row.number.toLowerCase(),
      { partId: row.part_id, said: partSaid(row, decimalMark) },
    ]),
  );
  const lines = new Map<string, number>();
  return (row) => {
    const fields = fieldsOf(mapping, row.cells);
    const key = (fields.get('number') ?? '').toLowerCase();
    const earlier = lines.get(key);
    if (key !== '' && earlier !== undefined) return planned(row, 'reject', `stands in line ${earlier} already`, null);
    lines.set(key, row.line);
    const before = parts.get(key);
    const { fate, says, part } = planPart(fields, before?.said, known);
    if (part === null) return planned(row, fate, says, null);
    const typed = { ...part, familyIds: part.families.flatMap((name) => familyIds.get(name) ?? []) };
    return planned(row, fate, says, (writing) => keepPart(writing, before?.partId ?? null, typed, hand));
  };
}

type PartRow = Awaited<ReturnType<typeof repository.listAllParts>>[number];

function partSaid(row: PartRow, decimalMark: DecimalMark): PartSaid {
  const money = (cents: number | null) => (cents === null ? '' : formatMoney(cents, decimalMark));
  return {
    number: row.number,
    description: row.description,
    kind: row.kind,
    supplier: row.supplier,
    unitOfIssue: row.unit_of_issue,
    bin: row.bin,
    cost: money(row.cost_cents),
    price: money(row.price_cents),
    coreCharge: money(row.core_charge_cents),
    reorderPoint: row.reorder_point,
    reorderQuantity: row.reorder_quantity,
    families: row.families.toSorted(),
  };
}

async function planCounts(reading: Reading, mapping: CsvMapping, decimalMark: DecimalMark): Promise<RowPlanner> {
  const batches = Map.groupBy(await repository.listAllBatches(reading), (row) => row.part_id);
  const parts = new Map(
    (await repository.listAllParts(reading)).map((part) => [
      part.number.toLowerCase(),
      (batches.get(part.part_id) ?? []).map((batch) => ({
        batchId: batch.batch_id,
        mark: batch.mark,
        document: batch.document,
        onHand: batch.on_hand,
      })),
    ]),
  );
  const lines = new Map<number, number>();
  return (row) => {
    const fields = fieldsOf(mapping, row.cells);
    const { fate, says, batchId, counted } = planCount(
      fields,
      parts.get((fields.get('number') ?? '').toLowerCase()),
      decimalMark,
    );
    if (batchId === null) return planned(row, fate, says, null);
    const earlier = lines.get(batchId);
    if (earlier !== undefined) return planned(row, 'reject', `the same batch stands in line ${earlier} already`, null);
    lines.set(batchId, row.line);
    const act: PlannedRow['act'] = (writing, { now, reason, by }) =>
      countBatch(writing, now, { batchId, counted, reason, by });
    return planned(row, fate, says, fate === 'change' ? act : null);
  };
}

function totalsOf(rows: readonly CsvRow[]): Record<CsvFate, number> {
  const totals = { add: 0, change: 0, same: 0, reject: 0 };
  for (const { fate } of rows) totals[fate] += 1;
  return totals;
}

/** The rejected rows as they stood, with why in a last column; mended, the file can be taken in as it is. */
function rejectsFile(file: CsvFile, rejected: readonly PlannedRow[], now: string): PrintedFile {
  // A file of rejects that comes back has the old reasons in it.
  const old = file.headings.indexOf(why);
  const told = [file.headings, ...rejected.map((row) => row.cells)].map((row) => row.filter((_, at) => at !== old));
  const width = told.reduce((most, row) => Math.max(most, row.length), 0);
  const reasons = [why, ...rejected.map((row) => row.says)];
  const rows = told.map((row, at) => [...row, ...Array<string>(width - row.length).fill(''), reasons[at]!]);
  return csvFile(`rejected rows ${now.slice(0, 10)}.csv`, writeCsv(rows, file.delimiter));
}
