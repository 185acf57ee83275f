// The rows of what a job comes to: its lines, its estimates, their approvals, its deposits, the shop's rates.
import type { Generated } from 'kysely';
import type { ApprovalWay, DepositWay, LineKind } from '../../app/jobs/estimate.contract.ts';

export interface MoneyTermsTable {
  money_terms_id: Generated<number>;
  labour_rate_cents: number | null;
  tax_label: string;
  tax_per_hundred_thousand: number;
  is_labour_taxable: number;
  set_at: string;
  set_by: number;
}

export interface JobLinesTable {
  job_line_id: Generated<number>;
  job_id: number;
  kind: LineKind;
  description: string;
  quantity_hundredths: number;
  unit_price_cents: number;
  unit_cost_cents: number | null;
  is_taxable: number;
  batch_id: number | null;
  added_at: string;
  added_by: number;
}

export interface JobLineEndsTable {
  job_line_id: number;
  replaced_by_id: number | null;
  reason: string;
  ended_at: string;
  ended_by: number;
}

export interface EstimatesTable {
  estimate_id: Generated<number>;
  job_id: number;
  number: number;
  what_was_found: string;
  tax_label: string;
  tax_per_hundred_thousand: number;
  taxable_cents: number;
  tax_cents: number;
  total_cents: number;
  deposited_cents: number;
  given_at: string;
  given_by: number;
}

export interface EstimateLinesTable {
  estimate_id: number;
  position: number;
  job_line_id: number;
}

export interface ApprovalsTable {
  approval_id: Generated<number>;
  estimate_id: number;
  approved_by: string;
  how: ApprovalWay;
  up_to_cents: number;
  approved_on: string;
  note: string;
  recorded_at: string;
  recorded_by: number;
}

export interface DepositsTable {
  deposit_id: Generated<number>;
  job_id: number;
  amount_cents: number;
  how: DepositWay;
  note: string;
  received_at: string;
  received_by: number;
}

export type EstimateTables = {
  money_terms: MoneyTermsTable;
  job_lines: JobLinesTable;
  job_line_ends: JobLineEndsTable;
  estimates: EstimatesTable;
  estimate_lines: EstimateLinesTable;
  approvals: ApprovalsTable;
  deposits: DepositsTable;
};
