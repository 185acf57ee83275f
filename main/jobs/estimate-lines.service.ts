// The lines of a ticket: added, replaced, taken off. Nothing is edited; what ended stays in the book with its reason.
import type { TypedLine } from '../../app/jobs/estimate.contract.ts';
import { lineAmount_cents } from '../../app/jobs/estimate-total.ts';
import { parseMoneyOrCredit, parseQuantity } from '../../app/jobs/estimate-typed.ts';
import { formatMoney, parseMoney } from '../../app/quantities/money.ts';
import { accepted, found, Refused } from '../database/errors.ts';
import type { Writing } from '../database/tables.ts';
import { getSettings, personAtWork } from '../shop/shop.service.ts';
import { listPartsOfJob } from '../stock/ledger.service.ts';
import * as repository from './estimate.repository.ts';
import { getEstimate, getMoneyTerms } from './estimate.service.ts';
import { jobAtWork } from './jobs.service.ts';

const mostLines = 500;
const mostCents = 10_000_000_00;

export async function addLine(
  writing: Writing,
  now: string,
  input: { jobId: number; line: TypedLine; by: number },
): Promise<{ lineId: number }> {
  await personAtWork(writing, input.by);
  await jobAtWork(writing, input.jobId);
  const lines = await repository.listLines(writing, input.jobId);
  if (lines.filter((line) => line.ended_at === null).length >= mostLines) {
    throw new Refused('too-many-lines', `A ticket holds ${mostLines} lines at most: put some of them together.`);
  }
  const line = await lineToKeep(writing, input.jobId, input.line);
  return { lineId: await repository.insertLine(writing, { ...line, jobId: input.jobId, by: input.by, now }) };
}

export async function addLinesFromStock(
  writing: Writing,
  now: string,
  input: { jobId: number; batchIds: readonly number[]; by: number },
): Promise<{ lineIds: number[] }> {
  await personAtWork(writing, input.by);
  const { offers } = await getEstimate(writing, input);
  const { decimalMark } = await getSettings(writing);
  const lineIds: number[] = [];
  for (const batchId of new Set(input.batchIds)) {
    const offer = offers.find((each) => each.batchId === batchId);
    if (!offer) throw new Refused('nothing-to-charge', 'Every one of these stands on a line already, or came back.');
    if (offer.unitPrice_cents === null) {
      throw new Refused('unpriced', `${offer.description} has no price: type its line, or price it in Stock first.`);
    }
    const { lineId } = await addLine(writing, now, {
      ...input,
      line: {
        kind: offer.kind,
        description: offer.description,
        quantity: String(offer.quantity),
        unitPrice: formatMoney(offer.unitPrice_cents, decimalMark),
        unitCost: offer.unitCost_cents === null ? '' : formatMoney(offer.unitCost_cents, decimalMark),
        isTaxable: true,
        batchId,
      },
    });
    lineIds.push(lineId);
  }
  return { lineIds };
}

export async function replaceLine(
  writing: Writing,
  now: string,
  input: { lineId: number; line: TypedLine; reason: string; by: number },
): Promise<{ lineId: number }> {
  await personAtWork(writing, input.by);
  const before = await standingLine(writing, input);
  const line = await lineToKeep(writing, before.job_id, input.line);
  const lineId = await repository.insertLine(writing, { ...line, jobId: before.job_id, by: input.by, now });
  await repository.insertLineEnd(writing, { ...input, replacedById: lineId, now });
  return { lineId };
}

export async function takeLineOff(
  writing: Writing,
  now: string,
  input: { lineId: number; reason: string; by: number },
) {
  await personAtWork(writing, input.by);
  await standingLine(writing, input);
  await repository.insertLineEnd(writing, { ...input, replacedById: null, now });
  return {};
}

/** A line that still holds on an open job; once a customer was told of it, its end needs a reason. */
async function standingLine(writing: Writing, { lineId, reason }: { lineId: number; reason: string }) {
  const line = found(await repository.findLine(writing, lineId), 'line');
  await jobAtWork(writing, line.job_id);
  if (line.ended_at !== null) {
    throw new Refused('line-ended', `“${line.description}” was changed or taken off already: look at it as it is now.`);
  }
  if (line.was_given && reason === '') {
    throw new Refused('no-reason', 'The customer was told of this line: say why it changes.', 'reason');
  }
  return line;
}

async function lineToKeep(writing: Writing, jobId: number, typed: TypedLine): Promise<repository.LineToKeep> {
  const { decimalMark } = await getSettings(writing);
  const { kind, description, isTaxable, batchId } = typed;
  const quantity_hundredths = accepted(parseQuantity(typed.quantity, decimalMark), 'quantity');
  const unitPrice_cents =
    typed.unitPrice === ''
      ? await usualPrice(writing, kind)
      : accepted(parseMoneyOrCredit(typed.unitPrice, decimalMark), 'unitPrice');
  if (unitPrice_cents < 0 && kind !== 'core charge' && kind !== 'other') {
    throw new Refused('no-credit', 'Only a core charge or another line may be a credit.', 'unitPrice');
  }
  if (Math.abs(lineAmount_cents({ quantity_hundredths, unitPrice_cents })) > mostCents) {
    throw new Refused('too-much-money', 'This line comes to more than this book keeps: check it.', 'unitPrice');
  }
  if (batchId !== null) await assertPulled(writing, { jobId, batchId, kind });
  const unitCost_cents = typed.unitCost === '' ? null : accepted(parseMoney(typed.unitCost, decimalMark), 'unitCost');
  return { kind, description, isTaxable, batchId, quantity_hundredths, unitPrice_cents, unitCost_cents };
}

async function usualPrice(writing: Writing, kind: TypedLine['kind']): Promise<number> {
  const { labourRate_cents } = await getMoneyTerms(writing);
  if (kind !== 'labour') throw new Refused('no-price', 'Type the price of one.', 'unitPrice');
  if (labourRate_cents === null) {
    throw new Refused('no-rate', 'Type the price of an hour, or set the shop’s labour rate once.', 'unitPrice');
  }
  return labourRate_cents;
}

async function assertPulled(
  writing: Writing,
  { jobId, batchId, kind }: { jobId: number; batchId: number; kind: TypedLine['kind'] },
) {
  if (kind !== 'part' && kind !== 'kit') {
    throw new Refused('not-a-part', 'Only a part or a kit comes from stock.', 'kind');
  }
  const parts = await listPartsOfJob(writing, { jobId });
  if (!parts.some((part) => part.batchId === batchId)) {
    throw new Refused('not-pulled', 'None of this batch is on the ticket: pull it in Stock first.', 'batchId');
  }
}
