// The whole shop as a folder of lists, so that somebody can leave this program with everything.
import { dayIn } from '../../app/jobs/calendar-days.ts';
import { Refused } from '../database/errors.ts';
import type { OpenShop } from '../database/open-shop.ts';
import { fillFolder } from '../exports/export-folder.ts';
import { ExportedFiles, exportsBeside } from '../exports/exported-files.ts';
import { figuresWith } from '../exports/figures.ts';
import { sheetsOfTables } from '../exports/table-sheets.ts';
import { copyPhotos } from '../photos/photos-export.service.ts';
import { sheetOfReadings, sheetOfTakes } from '../readings/readings-export.service.ts';
import { copyPictures } from '../specs/pictures-export.service.ts';
import { getSettings } from './shop.service.ts';

export type ExportProgress = { readonly file: string; readonly written: number };

/** The export of a desk while it runs: how far it is, and a way to stop it. */
export class ShopExport {
  #progress: ExportProgress | null = null;
  #isStopped = false;

  progress(): ExportProgress | null {
    return this.#progress;
  }

  /** It ends at the next page, and leaves nothing behind. */
  stop(): void {
    this.#isStopped = true;
  }

  /** Fills a folder in `folder`, or beside the shop file where that is empty; answers its path. One at a time. */
  async run(shop: OpenShop, { folder, withPhotos }: { folder: string; withPhotos: boolean }) {
    if (this.#progress)
      throw new Refused('export-runs', 'Everything is being exported already: wait, or stop it first.');
    this.#progress = { file: '', written: 0 };
    this.#isStopped = false;
    try {
      return {
        folder: await shop.readApart(async (reading) => {
          const settings = await getSettings(reading);
          const day = dayIn(shop.clock(), Intl.DateTimeFormat().resolvedOptions().timeZone);
          const parent = folder === '' ? exportsBeside(shop.file) : folder;
          return fillFolder(parent, `${settings.shopName}, everything, ${day}`, async (unfinished) => {
            const files = new ExportedFiles(unfinished, settings, (file, more) => this.#wrote(file, more));
            await files.addSheet(await sheetOfReadings(reading, { jobId: null }));
            await files.addSheet(await sheetOfTakes(reading, { jobId: null }));
            for (const sheet of await sheetsOfTables(reading, figuresWith(settings.decimalMark), [
              'readings',
              'takes',
            ])) {
              await files.addSheet(sheet);
            }
            if (withPhotos) {
              await files.addPhotos((into, watch) => copyPhotos(reading, shop.file, into, null, watch));
              await files.addPictures((into, watch) => copyPictures(reading, shop.file, into, null, watch));
            }
            await files.addReadme(`${settings.shopName}: everything in the book on ${day}`);
          });
        }),
      };
    } finally {
      this.#progress = null;
    }
  }

  #wrote(file: string, more: number): void {
    if (this.#isStopped) throw new Refused('stopped', 'The export was stopped: nothing of it was kept.');
    this.#progress = { file, written: (this.#progress?.written ?? 0) + more };
  }
}
