// One job as a folder: its papers, its photos, its readings and everything else that was written down of it.
import { dayIn } from '../../app/jobs/calendar-days.ts';
import type { OpenShop } from '../database/open-shop.ts';
import type { Reading } from '../database/tables.ts';
import type { CsvSheet } from '../exports/csv-sheet.ts';
import { fillFolder } from '../exports/export-folder.ts';
import { ExportedFiles, exportsBeside } from '../exports/exported-files.ts';
import { figuresWith } from '../exports/figures.ts';
import { sheetsOfJob } from '../exports/table-sheets.ts';
import { copyPhotos } from '../photos/photos-export.service.ts';
import { sheetOfReadings, sheetOfTakes } from '../readings/readings-export.service.ts';
import { getSettings } from '../shop/shop.service.ts';
import { copyPictures } from '../specs/pictures-export.service.ts';
import { printBuildReport } from './build-report.service.ts';
import { printEstimate } from './estimate-paper.service.ts';
import { getHistory, printBuildSheet } from './history.service.ts';
import { getJobRow } from './jobs.service.ts';
import { getJob } from './ticket.service.ts';

/** Fills a folder named after the job in `folder`, or beside the shop file where that is empty; answers its path. */
export async function exportJob(shop: OpenShop, { jobId, folder }: { jobId: number; folder: string }) {
  const { job, settings, estimates } = await shop.read(async (reading) => ({
    job: await getJob(reading, { jobId }),
    settings: await getSettings(reading),
    estimates: await reading
      .selectFrom('estimates')
      .select('number')
      .where('job_id', '=', jobId)
      .orderBy('number')
      .execute(),
  }));
  const day = dayIn(shop.clock(), Intl.DateTimeFormat().resolvedOptions().timeZone);
  const name = `job ${job.number} ${job.unit.familyName} ${job.unit.serial} ${job.customer.name}, ${day}`;
  const filled = await fillFolder(folder === '' ? exportsBeside(shop.file) : folder, name, async (unfinished) => {
    const files = new ExportedFiles(unfinished, settings, () => undefined);
    await files.addPaper(await printBuildReport(shop, { jobId, copy: 'shop' }), 'the build report in full');
    await files.addPaper(
      await printBuildReport(shop, { jobId, copy: 'customer' }),
      'the build report for the customer',
    );
    await files.addPaper(await printBuildSheet(shop, { jobId }), 'everything that was done, in order');
    for (const { number } of estimates) {
      await files.addPaper(await printEstimate(shop, { jobId, number }), `estimate ${number} as it was given`);
    }
    await shop.readApart(async (reading) => {
      await files.addSheet(await sheetOfReadings(reading, { jobId }));
      await files.addSheet(await sheetOfTakes(reading, { jobId }));
      await files.addSheet(sheetOfHistory(reading, jobId));
      for (const sheet of await sheetsOfJob(reading, figuresWith(settings.decimalMark), jobId, ['readings', 'takes'])) {
        await files.addSheet(sheet);
      }
      await files.addPhotos((into, watch) => copyPhotos(reading, shop.file, into, jobId, watch));
      const { revision_id } = await getJobRow(reading, jobId);
      await files.addPictures((into, watch) => copyPictures(reading, shop.file, into, revision_id, watch));
    });
    await files.addReadme(`${settings.shopName}: job ${job.number} as it stood on ${day}`);
  });
  return { folder: filled };
}

function sheetOfHistory(reading: Reading, jobId: number): CsvSheet {
  return {
    name: 'history',
    says: 'every act on the job, the first one first',
    headings: ['at', 'by', 'kind', 'what', 'more'],
    rows: (async function* () {
      for (const { at, by, kind, says, more } of await getHistory(reading, { jobId })) yield [at, by, kind, says, more];
    })(),
  };
}
