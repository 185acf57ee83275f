// What the customer was told, what they said to it, and what they paid ahead.
import type { ApprovalWay, DepositWay } from '../../app/jobs/estimate.contract.ts';
import { parseMoneyOrCredit } from '../../app/jobs/estimate-typed.ts';
import { formatMoney, parseMoney } from '../../app/quantities/money.ts';
import { accepted, found, Refused } from '../database/errors.ts';
import type { Writing } from '../database/tables.ts';
import { getSettings, personAtWork } from '../shop/shop.service.ts';
import * as repository from './estimate.repository.ts';
import { getEstimate } from './estimate.service.ts';
import { jobAtWork } from './jobs.service.ts';

export async function giveEstimate(
  writing: Writing,
  now: string,
  input: { jobId: number; whatWasFound: string; by: number },
) {
  await personAtWork(writing, input.by);
  await jobAtWork(writing, input.jobId);
  const { lines, terms, totals, deposited_cents, estimates, isGivenAsItStands } = await getEstimate(writing, input);
  if (lines.length === 0) throw new Refused('no-lines', 'There is no line yet: an estimate needs one.');
  const [newest] = estimates;
  if (newest && isGivenAsItStands && newest.whatWasFound === input.whatWasFound) {
    throw new Refused('said-already', `Estimate ${newest.number} says this already: nothing changed since.`);
  }
  const number = (newest?.number ?? 0) + 1;
  const lineIds = lines.map((line) => line.lineId);
  const estimateId = await repository.insertEstimate(writing, {
    ...input,
    number,
    terms,
    totals,
    deposited_cents,
    lineIds,
    now,
  });
  return { estimateId, number };
}

export async function approveEstimate(
  writing: Writing,
  now: string,
  input: {
    estimateId: number;
    approvedBy: string;
    how: ApprovalWay;
    upTo: string;
    approvedOn: string | null;
    note: string;
    by: number;
  },
) {
  await personAtWork(writing, input.by);
  const estimate = found(await repository.findEstimate(writing, input.estimateId), 'estimate');
  await jobAtWork(writing, estimate.job_id);
  const [newest] = await repository.listEstimates(writing, estimate.job_id);
  if (newest && newest.number !== estimate.number) {
    throw new Refused('not-the-newest', `Estimate ${newest.number} was given since: ask for a word on that one.`);
  }
  const approvedOn = input.approvedOn ?? now.slice(0, 10);
  if (approvedOn > latestDayAt(now)) throw new Refused('not-yet', 'That day is yet to come.', 'approvedOn');
  if (approvedOn < earliestDayAt(estimate.given_at)) {
    throw new Refused('before-given', 'That is before the estimate was given.', 'approvedOn');
  }
  const { decimalMark } = await getSettings(writing);
  await repository.insertApproval(writing, {
    estimate_id: estimate.estimate_id,
    approved_by: input.approvedBy,
    how: input.how,
    up_to_cents:
      input.upTo === '' ? Math.max(0, estimate.total_cents) : accepted(parseMoney(input.upTo, decimalMark), 'upTo'),
    approved_on: approvedOn,
    note: input.note,
    recorded_at: now,
    recorded_by: input.by,
  });
  return {};
}

export async function recordDeposit(
  writing: Writing,
  now: string,
  input: { jobId: number; amount: string; how: DepositWay; note: string; by: number },
) {
  await personAtWork(writing, input.by);
  await jobAtWork(writing, input.jobId);
  const { decimalMark } = await getSettings(writing);
  const amount_cents = accepted(parseMoneyOrCredit(input.amount, decimalMark), 'amount');
  if (amount_cents === 0) throw new Refused('nothing', 'Type how much was received.', 'amount');
  const deposits = await repository.listDeposits(writing, input.jobId);
  const held_cents = deposits.reduce((sum, deposit) => sum + deposit.amount_cents, 0);
  if (held_cents + amount_cents < 0) {
    throw new Refused('more-than-held', `Only ${formatMoney(held_cents, decimalMark)} is held.`, 'amount');
  }
  const depositId = await repository.insertDeposit(writing, {
    job_id: input.jobId,
    amount_cents,
    how: input.how,
    note: input.note,
    received_at: now,
    received_by: input.by,
  });
  return { depositId };
}

const hour_ms = 3_600_000;

// Instants are UTC and days the shop's own: clocks on earth run from 12 hours behind UTC to 14 ahead of it.
function latestDayAt(instant: string): string {
  return new Date(Date.parse(instant) + 14 * hour_ms).toISOString().slice(0, 10);
}

function earliestDayAt(instant: string): string {
  return new Date(Date.parse(instant) - 12 * hour_ms).toISOString().slice(0, 10);
}
