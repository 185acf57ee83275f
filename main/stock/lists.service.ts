// Lists that leave the book: a list as a CSV file, what to buy as a paper.
import { purchaseList } from '../../app/papers/purchase-list.ts';
import { formatLength } from '../../app/quantities/format-amount.ts';
import { formatMoney } from '../../app/quantities/money.ts';
import type { Settings } from '../../app/shop/shop.contract.ts';
import { type CsvCell, delimiterFor, writeCsv } from '../../app/stock/csv-cells.ts';
import { type CsvExport, csvFields, type PrintedFile } from '../../app/stock/lists.contract.ts';
import type { OpenShop } from '../database/open-shop.ts';
import type { Reading } from '../database/tables.ts';
import { getSettings } from '../shop/shop.service.ts';
import { paintInWorker } from '../workers/paint-paper.ts';
import { listCores } from './cores.service.ts';
import * as repository from './lists.repository.ts';
import { listReorder } from './parts.service.ts';

/** A text as a file to save. */
export function csvFile(fileName: string, text: string): PrintedFile {
  return { fileName, mediaType: 'text/csv', base64: Buffer.from(text, 'utf8').toString('base64') };
}

/** One shelf of the book as a CSV file. The headings of the parts are those that can be taken in again. */
export async function exportCsv(shop: OpenShop, { what }: { what: CsvExport }): Promise<PrintedFile> {
  const now = shop.clock();
  return shop.read(async (reading) => {
    const settings = await getSettings(reading);
    const [headings, rows] = await lists[what](reading, writersFor(settings), now);
    const text = writeCsv([headings, ...rows], delimiterFor(settings.decimalMark));
    return csvFile(`${what} ${now.slice(0, 10)}.csv`, text);
  });
}

export async function printPurchaseList(
  shop: OpenShop,
  input: { paper?: 'letter' | 'A4' | undefined },
): Promise<PrintedFile> {
  const now = shop.clock();
  const printedOn = now.slice(0, 10);
  const paper = await shop.read(async (reading) => {
    const { shopName, isDemo, decimalMark, paper: usual } = await getSettings(reading);
    const cores = await listCores(reading, now, { includeSettled: false });
    return purchaseList({
      paper: input.paper ?? usual,
      decimalMark,
      shopName,
      isDemo,
      printedOn,
      lines: await listReorder(reading),
      cores: cores.filter((core) => core.direction === 'to send back'),
    });
  });
  const pdf = await paintInWorker(paper);
  return {
    fileName: `purchase list ${printedOn}.pdf`,
    mediaType: 'application/pdf',
    base64: pdf.toString('base64'),
  };
}

type List = readonly [headings: readonly string[], rows: ReadonlyArray<readonly CsvCell[]>];
type Writers = ReturnType<typeof writersFor>;

function writersFor({ decimalMark, lengthUnit }: Settings) {
  return {
    lengthUnit,
    money: (cents: number | null) => (cents === null ? '' : formatMoney(cents, decimalMark)),
    length: (length_nm: number) => formatLength(length_nm, lengthUnit, undefined, decimalMark),
  };
}

const orEmpty = (value: number | null): CsvCell => value ?? '';

const lists: Readonly<Record<CsvExport, (reading: Reading, write: Writers, now: string) => Promise<List>>> = {
  parts: async (reading, { money }) => [
    [...csvFields.parts, 'on hand', 'retired'],
    (await repository.listAllParts(reading)).map((row) => [
      row.number,
      row.description,
      row.kind,
      row.supplier,
      row.unit_of_issue,
      row.bin,
      money(row.cost_cents),
      money(row.price_cents),
      money(row.core_charge_cents),
      orEmpty(row.reorder_point),
      orEmpty(row.reorder_quantity),
      row.families.join('; '),
      row.on_hand,
      row.is_retired === 1 ? 'yes' : '',
    ]),
  ],
  // The empty last column makes it a sheet to count with.
  batches: async (reading, { money }) => [
    [
      'number',
      'description',
      'bin',
      'batch mark',
      'document',
      'received',
      'in kit',
      'cost',
      'by',
      'on hand',
      'counted',
    ],
    (await repository.listAllBatches(reading)).map((row) => [
      row.number,
      row.description,
      row.bin,
      row.mark,
      row.document,
      row.received_on,
      row.kit_number ?? '',
      money(row.unit_cost_cents),
      row.initials,
      row.on_hand,
      '',
    ]),
  ],
  movements: async (reading) => [
    ['at', 'number', 'batch mark', 'document', 'what', 'change', 'job', 'reason', 'by'],
    (await repository.listAllMovements(reading)).map((row) => [
      row.moved_at,
      row.number,
      row.mark,
      row.document,
      row.kind,
      row.change,
      orEmpty(row.job_number),
      row.reason,
      row.initials,
    ]),
  ],
  plates: async (reading, { length, lengthUnit }) => [
    ['outline', 'kind', `height, ${lengthUnit}`, 'tag', 'from', 'micrometer', 'at', 'by', 'not to be used'],
    (await repository.listAllPlates(reading)).map((row) => [
      row.outline,
      row.kind,
      length(row.height_nm),
      row.tag,
      row.height_from,
      row.micrometer,
      row.measured_at,
      row.initials,
      row.discarded ?? '',
    ]),
  ],
  cans: async (reading, { length, lengthUnit }) => [
    ['outline', 'kind', `height, ${lengthUnit}`, 'count'],
    (await repository.listAllCans(reading)).map((row) => [row.outline, row.kind, length(row.height_nm), row.count]),
  ],
  reorder: async (reading, { money }) => [
    ['supplier', 'number', 'description', 'bin', 'on hand', 'reorder point', 'buy', 'unit', 'cost each', 'line'],
    (await listReorder(reading)).map((line) => [
      line.supplier,
      line.number,
      line.description,
      line.bin,
      line.onHand,
      orEmpty(line.reorderPoint),
      line.suggested,
      line.unitOfIssue,
      money(line.cost_cents),
      money(line.lineCost_cents),
    ]),
  ],
  cores: async (reading, { money }, now) => [
    [
      'way',
      'what',
      'quantity',
      'charge each',
      'due',
      'supplier',
      'job',
      'since',
      'by',
      'settled',
      'settled at',
      'note',
    ],
    (await listCores(reading, now, { includeSettled: true })).map((core) => [
      core.direction,
      core.what,
      core.quantity,
      money(core.charge_cents),
      core.dueOn ?? '',
      core.part?.supplier ?? '',
      orEmpty(core.job?.number ?? null),
      core.openedAt,
      core.by,
      core.settled?.how ?? '',
      core.settled?.at ?? '',
      core.settled?.note ?? '',
    ]),
  ],
};
