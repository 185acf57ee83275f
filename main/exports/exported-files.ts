// What an export writes into its folder, file by file, and the page that lists it at the end.
import { mkdirSync } from 'node:fs';
import { writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { Settings } from '../../app/shop/shop.contract.ts';
import { type CsvDelimiter, delimiterFor } from '../../app/stock/csv-cells.ts';
import { type CsvSheet, writeSheet } from './csv-sheet.ts';
import { plainName } from './export-folder.ts';
import { type FileInFolder, readme } from './readme.ts';

/** Told of everything that was written: the file, and how many rows or photos more. It throws to stop the export. */
export type Watch = (file: string, more: number) => void;

/** Copies files into a folder; answers how many, and a sentence for each that could not be read. */
type CopyFiles = (
  folder: string,
  watch: (more: number) => void,
) => Promise<{ readonly count: number; readonly troubles: readonly string[] }>;

export class ExportedFiles {
  readonly folder: string;
  readonly #settings: Settings;
  readonly #delimiter: CsvDelimiter;
  readonly #watch: Watch;
  readonly #files: FileInFolder[] = [];
  readonly #troubles: string[] = [];

  constructor(folder: string, settings: Settings, watch: Watch) {
    this.folder = folder;
    this.#settings = settings;
    this.#delimiter = delimiterFor(settings.decimalMark);
    this.#watch = watch;
  }

  async addSheet(sheet: CsvSheet): Promise<void> {
    const name = `${sheet.name}.csv`;
    const rows = await writeSheet(this.folder, sheet, this.#delimiter, (more) => this.#watch(name, more));
    if (rows > 0) this.#files.push({ name, says: sheet.says });
  }

  async addPaper(paper: { fileName: string; pdfBase64: string }, says: string): Promise<void> {
    const name = `${plainName(paper.fileName.replace(/\.pdf$/, ''))}.pdf`;
    await writeFile(join(this.folder, name), Buffer.from(paper.pdfBase64, 'base64'), { flag: 'wx' });
    this.#watch(name, 1);
    this.#files.push({ name, says });
  }

  /** `copy` puts the photos into a folder of their own. */
  async addPhotos(copy: CopyFiles): Promise<void> {
    await this.#addCopies('photos', 'the photos, each by its photo_id and what it shows', copy);
  }

  /** `copy` puts the pictures of the spec sheets into a folder of their own. */
  async addPictures(copy: CopyFiles): Promise<void> {
    await this.#addCopies('pictures', 'the pictures of the spec sheets, each by its picture_id and title', copy);
  }

  async #addCopies(name: string, says: string, copy: CopyFiles): Promise<void> {
    const { count, troubles } = await copy(join(this.folder, name), (more) => this.#watch(name, more));
    if (count > 0) this.#files.push({ name, says });
    this.#troubles.push(...troubles);
  }

  async addReadme(title: string): Promise<void> {
    const page = readme({
      title,
      lengthUnit: this.#settings.lengthUnit,
      delimiter: this.#delimiter,
      files: this.#files,
      troubles: this.#troubles,
    });
    await writeFile(join(this.folder, 'README.txt'), page, { flag: 'wx' });
  }
}

/** Where exports go when no folder was named: beside the shop file, in a folder that is made for them. */
export function exportsBeside(shopFile: string): string {
  const folder = join(dirname(shopFile), 'exports');
  mkdirSync(folder, { recursive: true });
  return folder;
}
