// What a ticket comes to and where its customer stands, read together from lines, estimates, approvals and deposits.
import type {
  Approval,
  EndedLine,
  EstimateLine,
  EstimateOfJob,
  GivenEstimate,
  MoneyTerms,
  StockOffer,
} from '../../app/jobs/estimate.contract.ts';
import { changesBetween } from '../../app/jobs/estimate-changes.ts';
import { approvalStateOf } from '../../app/jobs/estimate-standing.ts';
import { lineAmount_cents, totalsOf } from '../../app/jobs/estimate-total.ts';
import { parseTaxRate } from '../../app/jobs/estimate-typed.ts';
import { parseMoney } from '../../app/quantities/money.ts';
import type { PartOfJob } from '../../app/stock/parts.contract.ts';
import { getCustomer } from '../customers/customers.service.ts';
import { accepted } from '../database/errors.ts';
import type { Reading, Writing } from '../database/tables.ts';
import { getSettings, personAtWork } from '../shop/shop.service.ts';
import { listPartsOfJob } from '../stock/ledger.service.ts';
import * as repository from './estimate.repository.ts';
import { currentStage, listStageEntries } from './jobs.repository.ts';
import { getJobRow } from './jobs.service.ts';

const startingTerms: MoneyTerms = {
  labourRate_cents: null,
  taxLabel: 'Sales tax',
  taxPerHundredThousand: 0,
  isLabourTaxable: false,
};

/** The rates of the shop; `until` asks for those that held then. */
export async function getMoneyTerms(reading: Reading, until: string | null = null): Promise<MoneyTerms> {
  const row = await repository.findMoneyTerms(reading, until);
  if (!row) return startingTerms;
  return {
    labourRate_cents: row.labour_rate_cents,
    taxLabel: row.tax_label,
    taxPerHundredThousand: row.tax_per_hundred_thousand,
    isLabourTaxable: row.is_labour_taxable === 1,
  };
}

export async function setMoneyTerms(
  writing: Writing,
  now: string,
  input: { labourRate: string; taxLabel: string; taxRate: string; isLabourTaxable: boolean; by: number },
) {
  await personAtWork(writing, input.by);
  const { decimalMark } = await getSettings(writing);
  await repository.insertMoneyTerms(writing, {
    labourRate_cents:
      input.labourRate === '' ? null : accepted(parseMoney(input.labourRate, decimalMark), 'labourRate'),
    taxLabel: input.taxLabel,
    taxPerHundredThousand: accepted(parseTaxRate(input.taxRate, decimalMark), 'taxRate'),
    isLabourTaxable: input.isLabourTaxable,
    by: input.by,
    now,
  });
  return {};
}

export async function getEstimate(reading: Reading, { jobId }: { jobId: number }): Promise<EstimateOfJob> {
  const job = await getJobRow(reading, jobId);
  const closedAt = await closingOf(reading, jobId);
  const terms = await getMoneyTerms(reading, closedAt);
  const parts = await listPartsOfJob(reading, { jobId });
  const rows = await repository.listLines(reading, jobId);
  const lines = rows.filter((row) => row.ended_at === null).map((row) => lineOfRow(row, parts));
  const totals = totalsOf(lines, terms.taxPerHundredThousand);
  const deposits = await repository.listDeposits(reading, jobId);
  const deposited_cents = deposits.reduce((sum, deposit) => sum + deposit.amount_cents, 0);
  const approvals = await repository.listApprovals(reading, jobId);
  const estimates = await estimatesOf(reading, jobId, approvals);
  const isGivenAsItStands = saysTheSame(estimates[0], lines, terms);
  const newest = approvals.at(-1);
  const approved = newest ? { ...approvalOfRow(newest), estimateNumber: newest.estimate_number } : null;
  const approvedEstimate = estimates.find((each) => each.number === approved?.estimateNumber);
  return {
    jobId,
    jobNumber: job.number,
    customerName: (await getCustomer(reading, job.customer_id)).name,
    isClosed: closedAt !== null,
    terms,
    lines,
    endedLines: rows.flatMap((row) => endedOfRow(row, parts)),
    totals,
    deposits: deposits.map((row) => ({
      depositId: row.deposit_id,
      amount_cents: row.amount_cents,
      how: row.how,
      note: row.note,
      receivedAt: row.received_at,
      by: row.initials,
    })),
    deposited_cents,
    balance_cents: totals.total_cents - deposited_cents,
    offers: offersOf(parts, lines),
    estimates,
    isGivenAsItStands,
    state: approvalStateOf({
      total_cents: totals.total_cents,
      hasLines: lines.length > 0,
      isGivenAsItStands,
      approvedUpTo_cents: approved?.upTo_cents ?? null,
    }),
    approved,
    changesSinceApproval: approvedEstimate ? changesSince(approvedEstimate, rows, { lines, terms }) : null,
  };
}

/** What changed from an estimate that was given to the lines of `now`. */
export function changesSince(
  estimate: GivenEstimate,
  rows: readonly repository.LineRow[],
  now: { lines: readonly EstimateLine[]; terms: Pick<MoneyTerms, 'taxPerHundredThousand'> },
) {
  const replacedBy = new Map(
    rows.flatMap((row) => (row.replaced_by_id ? [[row.job_line_id, row.replaced_by_id]] : [])),
  );
  const before = { lines: linesOf(estimate, rows), taxPerHundredThousand: estimate.taxPerHundredThousand };
  const { taxPerHundredThousand } = now.terms;
  return changesBetween(before, { lines: now.lines, taxPerHundredThousand }, replacedBy);
}

/** The lines an estimate was given with, in its order. */
export function linesOf(estimate: GivenEstimate, rows: readonly repository.LineRow[]): EstimateLine[] {
  return estimate.lineIds.flatMap((lineId) =>
    rows.filter((row) => row.job_line_id === lineId).map((row) => lineOfRow(row, [])),
  );
}

/** The instant a closed job was closed at; null while it is open. */
async function closingOf(reading: Reading, jobId: number): Promise<string | null> {
  const stage = await currentStage(reading, jobId);
  if (stage.is_closed === 0) return null;
  return (await listStageEntries(reading, jobId)).at(-1)?.entered_at ?? null;
}

/** Newest first, each with its approvals. */
export async function estimatesOf(
  reading: Reading,
  jobId: number,
  approvals: Awaited<ReturnType<typeof repository.listApprovals>>,
): Promise<GivenEstimate[]> {
  const rows = await repository.listEstimates(reading, jobId);
  const lineIds = await repository.listEstimateLines(reading, jobId);
  return rows.map((row) => ({
    estimateId: row.estimate_id,
    number: row.number,
    whatWasFound: row.what_was_found,
    taxLabel: row.tax_label,
    taxPerHundredThousand: row.tax_per_hundred_thousand,
    totals: {
      lines_cents: row.total_cents - row.tax_cents,
      taxable_cents: row.taxable_cents,
      tax_cents: row.tax_cents,
      total_cents: row.total_cents,
    },
    deposited_cents: row.deposited_cents,
    lineIds: lineIds.filter((each) => each.estimate_id === row.estimate_id).map((each) => each.job_line_id),
    givenAt: row.given_at,
    by: row.initials,
    approvals: approvals.filter((each) => each.estimate_id === row.estimate_id).map(approvalOfRow),
  }));
}

function saysTheSame(estimate: GivenEstimate | undefined, lines: readonly EstimateLine[], terms: MoneyTerms): boolean {
  if (!estimate || estimate.lineIds.length !== lines.length) return false;
  const { taxPerHundredThousand, taxLabel } = terms;
  return (
    estimate.taxPerHundredThousand === taxPerHundredThousand &&
    estimate.taxLabel === taxLabel &&
    lines.every((line) => estimate.lineIds.includes(line.lineId))
  );
}

/** What was pulled for the job less what its lines charge for. */
function offersOf(parts: readonly PartOfJob[], lines: readonly EstimateLine[]): StockOffer[] {
  return parts.flatMap((part) => {
    const charged_hundredths = lines
      .filter((line) => line.stock?.batchId === part.batchId)
      .reduce((sum, line) => sum + line.quantity_hundredths, 0);
    const quantity = part.quantity - Math.ceil(charged_hundredths / 100);
    if (quantity <= 0) return [];
    return [
      {
        batchId: part.batchId,
        kind: part.kind === 'kit' ? 'kit' : 'part',
        description: `${part.number} ${part.description}`,
        quantity,
        unitPrice_cents: part.price_cents,
        unitCost_cents: part.cost_cents,
      },
    ];
  });
}

function lineOfRow(row: repository.LineRow, parts: readonly PartOfJob[]): EstimateLine {
  const priced = { quantity_hundredths: row.quantity_hundredths, unitPrice_cents: row.unit_price_cents };
  const pulled = parts.find((part) => part.batchId === row.batch_id)?.quantity ?? 0;
  return {
    lineId: row.job_line_id,
    kind: row.kind,
    description: row.description,
    ...priced,
    amount_cents: lineAmount_cents(priced),
    unitCost_cents: row.unit_cost_cents,
    isTaxable: row.is_taxable === 1,
    stock: row.batch_id === null ? null : { batchId: row.batch_id, pulled },
    wasGiven: Boolean(row.was_given),
    addedAt: row.added_at,
    by: row.initials,
  };
}

function endedOfRow(row: repository.LineRow, parts: readonly PartOfJob[]): EndedLine[] {
  if (row.ended_at === null) return [];
  return [
    {
      ...lineOfRow(row, parts),
      replacedById: row.replaced_by_id,
      reason: row.reason ?? '',
      endedAt: row.ended_at,
      endedBy: row.ended_by_initials ?? '',
    },
  ];
}

function approvalOfRow(row: Awaited<ReturnType<typeof repository.listApprovals>>[number]): Approval {
  return {
    approvedBy: row.approved_by,
    how: row.how,
    upTo_cents: row.up_to_cents,
    approvedOn: row.approved_on,
    note: row.note,
    recordedAt: row.recorded_at,
    by: row.initials,
  };
}
