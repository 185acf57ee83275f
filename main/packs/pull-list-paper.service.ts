// The pull list of a unit on paper: read in one view of the file, planned and painted outside of it.
import type { UnitObjective } from '../../app/packs/unit-plan.ts';
import { pullListPaper } from '../../app/papers/pull-list.ts';
import type { OpenShop } from '../database/open-shop.ts';
import { getJob } from '../jobs/ticket.service.ts';
import { getSettings } from '../shop/shop.service.ts';
import { paintInWorker } from '../workers/paint-paper.ts';
import { packsOfUnit } from './packs.service.ts';
import { planPacks } from './unit-plan.service.ts';

export async function printPullList(
  shop: OpenShop,
  input: {
    jobId: number;
    objective: UnitObjective;
    way: 'inOrder' | 'together';
    paper?: 'letter' | 'A4' | undefined;
  },
): Promise<{ fileName: string; pdfBase64: string }> {
  const printedOn = shop.clock().slice(0, 10);
  const { asked, ...facts } = await shop.read(async (reading) => {
    const settings = await getSettings(reading);
    const job = await getJob(reading, input);
    const paper = input.paper ?? settings.paper;
    return {
      paper,
      settings,
      shopName: settings.shopName,
      isDemo: settings.isDemo,
      jobNumber: job.number,
      caseTag: job.caseTag,
      family: job.unit.familyName,
      printedOn,
      asked: await packsOfUnit(reading, input.jobId),
      way: input.way,
    };
  });
  const plan = await planPacks(asked, input.objective);
  const pdf = await paintInWorker(pullListPaper({ ...facts, plan }));
  return { fileName: `job ${facts.jobNumber} pull list.pdf`, pdfBase64: pdf.toString('base64') };
}
