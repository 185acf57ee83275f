// The pull list of a unit on paper: planned in one view of the file, then painted outside of it.
import type { UnitObjective } from '../../app/packs/unit-plan.ts';
import { pullListPaper } from '../../app/papers/pull-list.ts';
import type { OpenShop } from '../database/open-shop.ts';
import { getJob } from '../jobs/ticket.service.ts';
import { getSettings } from '../shop/shop.service.ts';
import { paintInWorker } from '../workers/paint-paper.ts';
import { planUnit } from './packs.service.ts';

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
  const facts = await shop.read(async (reading) => {
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
      plan: await planUnit(reading, input),
      way: input.way,
    };
  });
  const pdf = await paintInWorker(pullListPaper(facts));
  return { fileName: `job ${facts.jobNumber} pull list.pdf`, pdfBase64: pdf.toString('base64') };
}
