// One CSV file of an export, written page by page, so that a long list is never in memory whole.
import { type FileHandle, open } from 'node:fs/promises';
import { join } from 'node:path';
import { byteOrderMark, type CsvCell, type CsvDelimiter, writeCsvRows } from '../../app/stock/csv-cells.ts';

export type CsvSheet = {
  /** Without its ending. */
  readonly name: string;
  /** One line about what stands in it. */
  readonly says: string;
  readonly headings: readonly string[];
  readonly rows: AsyncIterable<readonly CsvCell[]>;
};

const rowsAPage = 500;

/** Writes `name.csv` and answers how many rows it has; no file where there is none. `watch` is told of every page. */
export async function writeSheet(
  folder: string,
  sheet: CsvSheet,
  delimiter: CsvDelimiter,
  watch: (rows: number) => void,
): Promise<number> {
  let file: FileHandle | undefined;
  let page: Array<readonly CsvCell[]> = [];
  let count = 0;
  const flush = async () => {
    if (page.length === 0) return;
    if (!file) {
      file = await open(join(folder, `${sheet.name}.csv`), 'wx');
      await file.appendFile(byteOrderMark + writeCsvRows([sheet.headings], delimiter));
    }
    // The disk answers later, and until it does everybody else is served.
    await file.appendFile(writeCsvRows(page, delimiter));
    count += page.length;
    watch(page.length);
    page = [];
  };
  try {
    for await (const row of sheet.rows) {
      page.push(row);
      if (page.length === rowsAPage) await flush();
    }
    await flush();
  } finally {
    await file?.close();
  }
  return count;
}
