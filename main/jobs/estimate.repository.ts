// Lines, estimates, approvals and deposits of a ticket in and out of the file; all of it is only ever appended to.
import type { MoneyTerms, TypedLine } from '../../app/jobs/estimate.contract.ts';
import type { Reading, Writing } from '../database/tables.ts';
import type { ApprovalsTable, DepositsTable } from './estimate.tables.ts';

/** The rates that hold now, or held until `until`. */
export function findMoneyTerms(reading: Reading, until: string | null) {
  return reading
    .selectFrom('money_terms')
    .selectAll()
    .$if(until !== null, (rows) => rows.where('set_at', '<=', until ?? ''))
    .orderBy('money_terms_id', 'desc')
    .limit(1)
    .executeTakeFirst();
}

export async function insertMoneyTerms(writing: Writing, terms: MoneyTerms & { by: number; now: string }) {
  await writing
    .insertInto('money_terms')
    .values({
      labour_rate_cents: terms.labourRate_cents,
      tax_label: terms.taxLabel,
      tax_per_hundred_thousand: terms.taxPerHundredThousand,
      is_labour_taxable: terms.isLabourTaxable ? 1 : 0,
      set_at: terms.now,
      set_by: terms.by,
    })
    .execute();
}

export type LineRow = Awaited<ReturnType<typeof listLines>>[number];

/** Every line a ticket ever had, oldest first, with its end if it has one. */
export function listLines(reading: Reading, jobId: number) {
  return lines(reading).where('job_lines.job_id', '=', jobId).execute();
}

export function findLine(reading: Reading, lineId: number) {
  return lines(reading).where('job_lines.job_line_id', '=', lineId).executeTakeFirst();
}

function lines(reading: Reading) {
  return reading
    .selectFrom('job_lines')
    .innerJoin('people', 'people.person_id', 'job_lines.added_by')
    .leftJoin('job_line_ends', 'job_line_ends.job_line_id', 'job_lines.job_line_id')
    .leftJoin('people as enders', 'enders.person_id', 'job_line_ends.ended_by')
    .selectAll('job_lines')
    .select(['people.initials', 'replaced_by_id', 'reason', 'ended_at', 'enders.initials as ended_by_initials'])
    .select((row) =>
      row
        .exists(
          row
            .selectFrom('estimate_lines')
            .whereRef('estimate_lines.job_line_id', '=', 'job_lines.job_line_id')
            .select('estimate_id'),
        )
        .as('was_given'),
    )
    .orderBy('job_lines.job_line_id');
}

export type LineToKeep = Pick<TypedLine, 'kind' | 'description' | 'isTaxable' | 'batchId'> & {
  quantity_hundredths: number;
  unitPrice_cents: number;
  unitCost_cents: number | null;
};

export async function insertLine(
  writing: Writing,
  line: LineToKeep & { jobId: number; by: number; now: string },
): Promise<number> {
  const { job_line_id } = await writing
    .insertInto('job_lines')
    .values({
      job_id: line.jobId,
      kind: line.kind,
      description: line.description,
      quantity_hundredths: line.quantity_hundredths,
      unit_price_cents: line.unitPrice_cents,
      unit_cost_cents: line.unitCost_cents,
      is_taxable: line.isTaxable ? 1 : 0,
      batch_id: line.batchId,
      added_at: line.now,
      added_by: line.by,
    })
    .returning('job_line_id')
    .executeTakeFirstOrThrow();
  return job_line_id;
}

export async function insertLineEnd(
  writing: Writing,
  end: { lineId: number; replacedById: number | null; reason: string; by: number; now: string },
) {
  await writing
    .insertInto('job_line_ends')
    .values({
      job_line_id: end.lineId,
      replaced_by_id: end.replacedById,
      reason: end.reason,
      ended_at: end.now,
      ended_by: end.by,
    })
    .execute();
}

/** Newest first. */
export function listEstimates(reading: Reading, jobId: number) {
  return estimates(reading).where('job_id', '=', jobId).orderBy('number', 'desc').execute();
}

export function findEstimate(reading: Reading, estimateId: number) {
  return estimates(reading).where('estimate_id', '=', estimateId).executeTakeFirst();
}

function estimates(reading: Reading) {
  return reading
    .selectFrom('estimates')
    .innerJoin('people', 'people.person_id', 'estimates.given_by')
    .selectAll('estimates')
    .select('people.initials');
}

export function listEstimateLines(reading: Reading, jobId: number) {
  return reading
    .selectFrom('estimate_lines')
    .innerJoin('estimates', 'estimates.estimate_id', 'estimate_lines.estimate_id')
    .select(['estimate_lines.estimate_id', 'job_line_id'])
    .where('job_id', '=', jobId)
    .orderBy('position')
    .execute();
}

export async function insertEstimate(
  writing: Writing,
  estimate: {
    jobId: number;
    number: number;
    whatWasFound: string;
    terms: MoneyTerms;
    totals: { taxable_cents: number; tax_cents: number; total_cents: number };
    deposited_cents: number;
    lineIds: readonly number[];
    by: number;
    now: string;
  },
): Promise<number> {
  const { estimate_id } = await writing
    .insertInto('estimates')
    .values({
      job_id: estimate.jobId,
      number: estimate.number,
      what_was_found: estimate.whatWasFound,
      tax_label: estimate.terms.taxLabel,
      tax_per_hundred_thousand: estimate.terms.taxPerHundredThousand,
      taxable_cents: estimate.totals.taxable_cents,
      tax_cents: estimate.totals.tax_cents,
      total_cents: estimate.totals.total_cents,
      deposited_cents: estimate.deposited_cents,
      given_at: estimate.now,
      given_by: estimate.by,
    })
    .returning('estimate_id')
    .executeTakeFirstOrThrow();
  await writing
    .insertInto('estimate_lines')
    .values(estimate.lineIds.map((job_line_id, index) => ({ estimate_id, position: index + 1, job_line_id })))
    .execute();
  return estimate_id;
}

/** Oldest first. */
export function listApprovals(reading: Reading, jobId: number) {
  return reading
    .selectFrom('approvals')
    .innerJoin('estimates', 'estimates.estimate_id', 'approvals.estimate_id')
    .innerJoin('people', 'people.person_id', 'approvals.recorded_by')
    .selectAll('approvals')
    .select(['people.initials', 'estimates.number as estimate_number'])
    .where('job_id', '=', jobId)
    .orderBy('approval_id')
    .execute();
}

export async function insertApproval(writing: Writing, approval: Omit<ApprovalsTable, 'approval_id'>) {
  await writing.insertInto('approvals').values(approval).execute();
}

/** Oldest first. */
export function listDeposits(reading: Reading, jobId: number) {
  return reading
    .selectFrom('deposits')
    .innerJoin('people', 'people.person_id', 'deposits.received_by')
    .selectAll('deposits')
    .select('people.initials')
    .where('job_id', '=', jobId)
    .orderBy('deposit_id')
    .execute();
}

export async function insertDeposit(writing: Writing, deposit: Omit<DepositsTable, 'deposit_id'>): Promise<number> {
  const { deposit_id } = await writing
    .insertInto('deposits')
    .values(deposit)
    .returning('deposit_id')
    .executeTakeFirstOrThrow();
  return deposit_id;
}
