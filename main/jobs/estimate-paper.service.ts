// An estimate as it was given, on paper: its facts read in one view of the file, then painted outside of it.
import { type EstimateFacts, estimatePaper } from '../../app/papers/estimate.ts';
import { unitOnPaper } from '../../app/papers/unit-on-paper.ts';
import { found } from '../database/errors.ts';
import type { OpenShop } from '../database/open-shop.ts';
import type { Reading } from '../database/tables.ts';
import { getSettings } from '../shop/shop.service.ts';
import { paintInWorker } from '../workers/paint-paper.ts';
import * as repository from './estimate.repository.ts';
import { changesSince, estimatesOf, linesOf } from './estimate.service.ts';
import { getJob } from './ticket.service.ts';

type PrintInput = { jobId: number; number: number; paper?: 'letter' | 'A4' | undefined };

export async function printEstimate(shop: OpenShop, input: PrintInput) {
  const facts = await shop.read((reading) => factsOf(reading, input));
  const pdf = await paintInWorker(estimatePaper(facts));
  return {
    fileName: `job ${facts.jobNumber} estimate ${facts.number}.pdf`,
    pdfBase64: pdf.toString('base64'),
  };
}

async function factsOf(reading: Reading, input: PrintInput): Promise<EstimateFacts> {
  const settings = await getSettings(reading);
  const job = await getJob(reading, input);
  const rows = await repository.listLines(reading, input.jobId);
  const estimates = await estimatesOf(reading, input.jobId, await repository.listApprovals(reading, input.jobId));
  const estimate = found(
    estimates.find((each) => each.number === input.number),
    'estimate',
  );
  // What the customer said yes to before this one was given.
  const before = estimates.find((each) => each.number < estimate.number && each.approvals.length > 0);
  const lines = linesOf(estimate, rows);
  return {
    paper: input.paper ?? settings.paper,
    decimalMark: settings.decimalMark,
    shopName: settings.shopName,
    isDemo: settings.isDemo,
    jobNumber: job.number,
    number: estimate.number,
    givenOn: estimate.givenAt.slice(0, 10),
    givenBy: estimate.by,
    customerName: job.customer.name,
    unit: unitOnPaper(job),
    complaint: job.complaint,
    whatWasFound: estimate.whatWasFound,
    lines,
    totals: estimate.totals,
    taxLabel: estimate.taxLabel,
    taxPerHundredThousand: estimate.taxPerHundredThousand,
    deposited_cents: estimate.deposited_cents,
    approvals: estimate.approvals,
    changes: before ? { sinceNumber: before.number, ...changesSince(before, rows, { lines, terms: estimate }) } : null,
  };
}
