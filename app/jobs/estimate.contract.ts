// What a job comes to: lines by kind, estimates given and approved, deposits; and the rates the shop has set. Money is
// whole cents, quantities hundredths.
import { z } from 'zod';
import { done, id, instant, line, nothing, requiredLine, text } from '../contract/fields.ts';
import { read, write } from '../contract/method.ts';

export const lineKinds = ['labour', 'part', 'kit', 'sublet', 'core charge', 'other'] as const;
export const approvalWays = ['in person', 'phone', 'message'] as const;
export const depositWays = ['cash', 'card', 'check', 'transfer', 'other'] as const;

const cents = z.int();
const day = z.iso.date();

export const moneyTerms = z.strictObject({
  /** Of one hour; null: not set yet. */
  labourRate_cents: cents.nonnegative().nullable(),
  taxLabel: z.string(),
  taxPerHundredThousand: z.int().nonnegative().max(100_000),
  isLabourTaxable: z.boolean(),
});

export const estimateLine = z.strictObject({
  lineId: id,
  kind: z.enum(lineKinds),
  description: z.string(),
  quantity_hundredths: z.int().positive(),
  unitPrice_cents: cents,
  amount_cents: cents,
  /** The shop's own; null: not known. */
  unitCost_cents: cents.nonnegative().nullable(),
  isTaxable: z.boolean(),
  /** The batch it was pulled from, and how many of it the job holds now. */
  stock: z.strictObject({ batchId: id, pulled: z.int().nonnegative() }).nullable(),
  /** It stood on an estimate that was given. */
  wasGiven: z.boolean(),
  addedAt: instant,
  by: z.string(),
});

export const endedLine = estimateLine.extend({
  replacedById: id.nullable(),
  reason: z.string(),
  endedAt: instant,
  endedBy: z.string(),
});

export const totals = z.strictObject({
  lines_cents: cents,
  taxable_cents: cents,
  tax_cents: cents,
  total_cents: cents,
});

export const approval = z.strictObject({
  approvedBy: z.string(),
  how: z.enum(approvalWays),
  upTo_cents: cents.nonnegative(),
  approvedOn: day,
  note: z.string(),
  recordedAt: instant,
  by: z.string(),
});

export const givenEstimate = z.strictObject({
  estimateId: id,
  number: z.int().positive(),
  whatWasFound: text,
  taxLabel: z.string(),
  taxPerHundredThousand: z.int().nonnegative(),
  totals,
  deposited_cents: cents.nonnegative(),
  lineIds: z.array(id),
  givenAt: instant,
  by: z.string(),
  /** Oldest first. */
  approvals: z.array(approval),
});

/** One line as it was and as it is; null where it was not there, or is no more. */
export const lineChange = z.strictObject({
  /** The line as it is now, or the one that is no more. */
  lineId: id,
  description: z.string(),
  was_cents: cents.nullable(),
  is_cents: cents.nullable(),
  difference_cents: cents,
});

export const estimateChanges = z.strictObject({
  lines: z.array(lineChange),
  tax_difference_cents: cents,
  total_difference_cents: cents,
});

/** What is to be done next about the customer's word. */
export const approvalStates = ['nothing to give', 'to give', 'to approve', 'approved', 'over'] as const;

export const deposit = z.strictObject({
  depositId: id,
  amount_cents: cents,
  how: z.enum(depositWays),
  note: z.string(),
  receivedAt: instant,
  by: z.string(),
});

/** A part on the ticket that no line charges for yet, in whole. */
export const stockOffer = z.strictObject({
  batchId: id,
  kind: z.enum(['part', 'kit']),
  description: z.string(),
  quantity: z.int().positive(),
  unitPrice_cents: cents.nonnegative().nullable(),
  unitCost_cents: cents.nonnegative().nullable(),
});

export const estimateOfJob = z.strictObject({
  jobId: id,
  jobNumber: z.int().positive(),
  customerName: z.string(),
  isClosed: z.boolean(),
  terms: moneyTerms,
  lines: z.array(estimateLine),
  /** Taken off or replaced, oldest first. */
  endedLines: z.array(endedLine),
  totals,
  deposits: z.array(deposit),
  deposited_cents: cents.nonnegative(),
  balance_cents: cents,
  offers: z.array(stockOffer),
  /** Newest first. */
  estimates: z.array(givenEstimate),
  state: z.enum(approvalStates),
  /** The newest estimate says what the lines say now. */
  isGivenAsItStands: z.boolean(),
  /** The newest approval, with the estimate it stands on. */
  approved: approval.extend({ estimateNumber: z.int().positive() }).nullable(),
  /** Against the estimate approved last. */
  changesSinceApproval: estimateChanges.nullable(),
});

const typedLine = z.strictObject({
  kind: z.enum(lineKinds),
  description: requiredLine,
  quantity: line.describe('hours or pieces as typed; empty: one'),
  unitPrice: line.describe('as typed; empty: the shop’s labour rate, for labour'),
  unitCost: line.describe('as typed; empty: not known'),
  isTaxable: z.boolean(),
  batchId: id.nullable().describe('the batch on the ticket it charges for'),
});

export const estimateContract = {
  'jobs.getMoneyTerms': read('the labour rate and the tax this shop has set', nothing, moneyTerms),
  'jobs.setMoneyTerms': write(
    'set the labour rate and the tax; estimates given keep theirs',
    z.strictObject({
      labourRate: line.describe('of one hour, as typed; empty: not set'),
      taxLabel: requiredLine,
      taxRate: line.describe('percent, as typed; empty: none'),
      isLabourTaxable: z.boolean(),
      by: id,
    }),
    done,
  ),
  'jobs.getEstimate': read('what a job comes to and what was agreed', z.strictObject({ jobId: id }), estimateOfJob),
  'jobs.addLine': write(
    'one more line on a ticket',
    z.strictObject({ jobId: id, line: typedLine, by: id }),
    z.strictObject({ lineId: id }),
  ),
  'jobs.addLinesFromStock': write(
    'charge for parts on the ticket, at their prices',
    z.strictObject({ jobId: id, batchIds: z.array(id).min(1).max(200), by: id }),
    z.strictObject({ lineIds: z.array(id) }),
  ),
  'jobs.replaceLine': write(
    'put another line in the place of one; the old one stays in the book',
    z.strictObject({ lineId: id, line: typedLine, reason: line, by: id }),
    z.strictObject({ lineId: id }),
  ),
  'jobs.takeLineOff': write(
    'a line is charged no more; it stays in the book',
    z.strictObject({ lineId: id, reason: line, by: id }),
    done,
  ),
  'jobs.giveEstimate': write(
    'the lines as they stand are told the customer: a numbered estimate that never changes',
    z.strictObject({ jobId: id, whatWasFound: text, by: id }),
    z.strictObject({ estimateId: id, number: z.int().positive() }),
  ),
  'jobs.approveEstimate': write(
    'the customer says yes to the newest estimate, up to an amount',
    z.strictObject({
      estimateId: id,
      approvedBy: requiredLine,
      how: z.enum(approvalWays),
      upTo: line.describe('as typed; empty: the total of the estimate'),
      approvedOn: day.nullable().describe('today if null'),
      note: line,
      by: id,
    }),
    done,
  ),
  'jobs.recordDeposit': write(
    'money received ahead, or given back',
    z.strictObject({
      jobId: id,
      amount: line.describe('as typed; a minus sign gives it back'),
      how: z.enum(depositWays),
      note: line,
      by: id,
    }),
    z.strictObject({ depositId: id }),
  ),
  'jobs.printEstimate': read(
    'an estimate as it was given, as a PDF',
    z.strictObject({ jobId: id, number: z.int().positive(), paper: z.enum(['letter', 'A4']).optional() }),
    z.strictObject({ fileName: z.string(), pdfBase64: z.string() }),
  ),
} as const;

export type LineKind = (typeof lineKinds)[number];
export type ApprovalWay = (typeof approvalWays)[number];
export type ApprovalState = (typeof approvalStates)[number];
export type DepositWay = (typeof depositWays)[number];
export type MoneyTerms = z.infer<typeof moneyTerms>;
export type EstimateLine = z.infer<typeof estimateLine>;
export type EndedLine = z.infer<typeof endedLine>;
export type Approval = z.infer<typeof approval>;
export type GivenEstimate = z.infer<typeof givenEstimate>;
export type EstimateChanges = z.infer<typeof estimateChanges>;
export type EstimateOfJob = z.infer<typeof estimateOfJob>;
export type StockOffer = z.infer<typeof stockOffer>;
export type TypedLine = z.infer<typeof typedLine>;
