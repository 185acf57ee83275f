// Lists that leave and enter the book as files: CSV in with a dry run first, CSV and PDF out, labels.
import { z } from 'zod';
import { id, line, requiredLine } from '../contract/fields.ts';
import { read, write } from '../contract/method.ts';
import { csvDelimiters } from './csv-cells.ts';

export const csvTargets = ['parts', 'counts'] as const;
export const csvExports = ['parts', 'batches', 'movements', 'plates', 'cans', 'reorder', 'cores'] as const;

/** What a column of the file is taken for; the names are those of the export. */
export const csvFields = {
  parts: [
    'number',
    'description',
    'kind',
    'supplier',
    'unit of issue',
    'bin',
    'cost',
    'price',
    'core charge',
    'reorder point',
    'reorder quantity',
    'families',
  ],
  counts: ['number', 'batch mark', 'document', 'counted'],
} as const;

const csvText = z.string().max(3_500_000, 'holds more than 3.5 million characters: split the file');
/** For each column of the file, in its order: the field it fills, or null to leave it out. */
const mapping = z.array(z.string().nullable()).max(200);

const csvInput = {
  target: z.enum(csvTargets),
  text: csvText,
  /** As found in the file if null. */
  delimiter: z.enum(csvDelimiters).nullable(),
  /** As the headings say if null. */
  mapping: mapping.nullable(),
};

export const csvFates = ['add', 'change', 'same', 'reject'] as const;

export const csvRow = z.strictObject({
  /** As counted in the file; the headings are line 1. */
  line: z.int().positive(),
  fate: z.enum(csvFates),
  /** "new part", "cost 4.10 → 4.35", or why it is rejected. */
  says: z.string(),
  cells: z.array(z.string()),
});

const totals = z.strictObject({
  add: z.int().nonnegative(),
  change: z.int().nonnegative(),
  same: z.int().nonnegative(),
  reject: z.int().nonnegative(),
});

export const printedFile = z.strictObject({ fileName: z.string(), mediaType: z.string(), base64: z.string() });

export const labelled = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('part'), partId: id }),
  z.strictObject({ kind: z.literal('batch'), batchId: id }),
  z.strictObject({ kind: z.literal('can'), canId: id }),
  z.strictObject({ kind: z.literal('plate'), pieceId: id }),
  z.strictObject({ kind: z.literal('job'), jobId: id }),
  z.strictObject({ kind: z.literal('gauge'), gaugeId: id }),
]);

export const labelSize = z.strictObject({
  labelSizeId: id,
  name: z.string(),
  width_um: z.int().positive(),
  height_um: z.int().positive(),
});

export const listsContract = {
  'stock.previewCsv': read(
    'what a CSV file would do, row by row, without doing it',
    z.strictObject({
      ...csvInput,
      show: z.enum(['all', ...csvFates]),
      offset: z.int().nonnegative(),
      limit: z.int().positive().max(1000),
    }),
    z.strictObject({
      delimiter: z.enum(csvDelimiters),
      headings: z.array(z.string()),
      mapping,
      /** Fields that must be mapped before anything can be imported. */
      missing: z.array(z.string()),
      totals,
      rows: z.array(csvRow),
    }),
  ),
  'stock.importCsv': write(
    'take in every good row of a CSV file at once; the others come back as a file of their own',
    z.strictObject({
      ...csvInput,
      reason: line.describe('stands in the ledger beside each count; empty for parts'),
      by: id,
    }),
    z.strictObject({ totals, rejects: printedFile.nullable() }),
  ),
  'stock.exportCsv': read('a list as a CSV file', z.strictObject({ what: z.enum(csvExports) }), printedFile),
  'stock.printPurchaseList': read(
    'what to buy, by supplier, as a PDF',
    z.strictObject({ paper: z.enum(['letter', 'A4']).optional() }),
    printedFile,
  ),
  'stock.listLabelSizes': read('the label sizes of this shop', z.strictObject({}), z.array(labelSize)),
  'stock.saveLabelSize': write(
    'a new label size, or another measure for one; typed in millimetres or with a unit',
    z.strictObject({
      labelSizeId: id.nullable(),
      name: requiredLine,
      width: requiredLine,
      height: requiredLine,
      by: id,
    }),
    z.strictObject({ labelSizeId: id }),
  ),
  'stock.printLabels': read(
    'labels, one a page of exactly that size',
    z.strictObject({
      labelSizeId: id,
      labels: z
        .array(z.strictObject({ of: labelled, copies: z.int().positive().max(200) }))
        .min(1)
        .max(500),
    }),
    printedFile,
  ),
} as const;

export type CsvTarget = (typeof csvTargets)[number];
export type CsvExport = (typeof csvExports)[number];
export type CsvFate = (typeof csvFates)[number];
export type CsvRow = z.infer<typeof csvRow>;
export type PrintedFile = z.infer<typeof printedFile>;
export type Labelled = z.infer<typeof labelled>;
export type LabelSize = z.infer<typeof labelSize>;
