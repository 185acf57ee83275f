// What moves: in, to a job, back, out. Every act appends to the ledger; on hand is its sum and never below zero.
import { parseMoney } from '../../app/quantities/money.ts';
import type { PartOfJob } from '../../app/stock/parts.contract.ts';
import { accepted, found, Refused } from '../database/errors.ts';
import type { Reading, Writing } from '../database/tables.ts';
import { jobAtWork } from '../jobs/jobs.service.ts';
import { getSettings, personAtWork } from '../shop/shop.service.ts';
import { getUnit } from '../units/units.service.ts';
import { openCoreOfBatch } from './cores.service.ts';
import * as repository from './ledger.repository.ts';
import { findPart, listContents, listFamilies, type PartRow } from './parts.repository.ts';

export async function receiveBatch(
  writing: Writing,
  now: string,
  input: {
    partId: number;
    quantity: number;
    receivedOn: string | null;
    mark: string;
    document: string;
    unitCost: string;
    by: number;
  },
) {
  await personAtWork(writing, input.by);
  const part = found(await findPart(writing, input.partId), 'part');
  if (input.quantity < 1) {
    throw new Refused('nothing-received', 'Type how many came in: at least one.', 'quantity');
  }
  if (input.mark === '' && input.document === '') {
    throw new Refused(
      'unmarked',
      'Type the batch mark, or where the parts come unmarked the supplier’s invoice or packing slip.',
      'mark',
    );
  }
  const { decimalMark } = await getSettings(writing);
  const batchId = await layIn(writing, now, part, {
    ...input,
    kitBatchId: null,
    receivedOn: input.receivedOn ?? now.slice(0, 10),
    unitCost_cents:
      input.unitCost === '' ? part.cost_cents : accepted(parseMoney(input.unitCost, decimalMark), 'unitCost'),
  });
  if (part.core_charge_cents !== null) await openCoreOfBatch(writing, now, part, { ...input, batchId });
  return { batchId };
}

/** A new batch with all that came in; of a kit what lies in it is written down as it is today. */
export async function layIn(
  writing: Writing,
  now: string,
  part: PartRow,
  batch: {
    quantity: number;
    receivedOn: string;
    mark: string;
    document: string;
    kitBatchId: number | null;
    unitCost_cents: number | null;
    reason?: string;
    jobId?: number;
    by: number;
  },
): Promise<number> {
  const batchId = await repository.insertBatch(writing, { ...batch, partId: part.part_id, now });
  const { quantity, by } = batch;
  await repository.insertMovement(writing, { ...batch, batchId, kind: 'receive', change: quantity, by, now });
  if (part.kind === 'kit') {
    for (const line of await listContents(writing, part.part_id)) {
      await repository.insertKitBatchLine(writing, { batchId, partId: line.partId, quantity: line.quantity });
    }
  }
  return batchId;
}

export async function openKit(writing: Writing, now: string, input: { batchId: number; quantity: number; by: number }) {
  await personAtWork(writing, input.by);
  const { batch, part } = await batchAtHand(writing, input.batchId);
  const lines = await repository.listKitBatchLines(writing, input.batchId);
  if (part.kind !== 'kit' || lines.length === 0) {
    throw new Refused('not-a-kit', `${part.number} has no parts listed in it: there is nothing to take apart.`);
  }
  assertOnHand(batch, part, input.quantity);
  const { by, quantity } = input;
  await repository.insertMovement(writing, { batchId: input.batchId, kind: 'open', change: -quantity, by, now });
  const batches: Array<{ batchId: number; partId: number; quantity: number }> = [];
  for (const line of lines) {
    const change = quantity * line.quantity;
    const batchId = await outOfKit(writing, now, batch, line.partId, { change, reason: `out of ${part.number}`, by });
    batches.push({ batchId, partId: line.partId, quantity: change });
  }
  return { batches };
}

/** Parts of a kit laid in one by one: in the batch that came out of it before, or in a new one. */
async function outOfKit(
  writing: Writing,
  now: string,
  kit: repository.BatchRow,
  partId: number,
  move: { change: number; reason: string; jobId?: number; by: number },
): Promise<number> {
  const before = await repository.findBatchOutOf(writing, kit.batch_id, partId);
  if (before) {
    await repository.insertMovement(writing, { ...move, batchId: before.batch_id, kind: 'receive', now });
    return before.batch_id;
  }
  return layIn(writing, now, found(await findPart(writing, partId), 'part'), {
    ...move,
    quantity: move.change,
    receivedOn: kit.received_on,
    mark: '',
    document: kit.document,
    kitBatchId: kit.batch_id,
    unitCost_cents: null,
  });
}

export async function pullForJob(
  writing: Writing,
  now: string,
  input: { jobId: number; partId: number; batchId: number | null; quantity: number; isSure: boolean; by: number },
) {
  await personAtWork(writing, input.by);
  const job = await jobAtWork(writing, input.jobId);
  const part = found(await findPart(writing, input.partId), 'part');
  if (!input.isSure) await assertFits(writing, part, job.unit_id);
  const batches = (await repository.listBatches(writing, input.partId)).filter(
    (batch) => input.batchId === null || batch.batch_id === input.batchId,
  );
  const [named] = batches;
  if (input.batchId !== null) assertOnHand(found(named, 'batch of this part'), part, input.quantity);
  const onHand = batches.reduce((sum, batch) => sum + (batch.on_hand ?? 0), 0);
  if (onHand < input.quantity) throw tooFew(part, onHand);
  const pulled: Array<{ batchId: number; quantity: number }> = [];
  let left = input.quantity;
  for (const batch of batches) {
    const quantity = Math.min(left, batch.on_hand ?? 0);
    if (quantity === 0) continue;
    const { batch_id: batchId } = batch;
    const { jobId, by } = input;
    await repository.insertMovement(writing, {
      batchId,
      kind: 'pull',
      change: -quantity,
      jobId,
      price_cents: part.price_cents,
      by,
      now,
    });
    pulled.push({ batchId, quantity });
    left -= quantity;
  }
  return { pulled };
}

async function assertFits(reading: Reading, part: PartRow, unitId: number): Promise<void> {
  const families = await listFamilies(reading, part.part_id);
  if (families.length === 0) return;
  const unit = await getUnit(reading, unitId);
  if (families.some((family) => family.familyId === unit.familyId)) return;
  const names = families.map((family) => family.name).join(', ');
  throw new Refused('other-family', `${part.number} is listed for ${names}; this unit is a ${unit.familyName}.`);
}

export async function returnFromJob(
  writing: Writing,
  now: string,
  input: { jobId: number; batchId: number; partId: number | null; quantity: number; by: number },
) {
  await personAtWork(writing, input.by);
  const job = await jobAtWork(writing, input.jobId);
  const { batch, part } = await batchAtHand(writing, input.batchId);
  const held = await repository.heldByJob(writing, input.jobId, input.batchId);
  const { jobId, quantity, by } = input;
  if (input.partId === null || input.partId === part.part_id) {
    if (quantity > held) {
      throw new Refused(
        'more-than-pulled',
        `Job ${job.number} holds ${held} of ${part.number} from this batch.`,
        'quantity',
      );
    }
    // A kit of which something was left over already is not whole any more.
    if (part.kind === 'kit') await assertWhole(writing, { jobId, batch, part, kept: held - quantity });
    const { batchId } = input;
    await repository.insertMovement(writing, { batchId, kind: 'return', change: quantity, jobId, by, now });
    return { batchId };
  }
  const line = (await repository.listKitBatchLines(writing, input.batchId)).find(
    (each) => each.partId === input.partId,
  );
  const { partId, number, quantity: perKit } = found(line, `part in ${part.number}`);
  const leftOver = await repository.leftOverOfKit(writing, { jobId, kitBatchId: input.batchId, partId });
  const most = held * perKit - leftOver;
  if (quantity > most) {
    throw new Refused('more-than-pulled', `Job ${job.number} has ${most} of ${number} out of that kit.`, 'quantity');
  }
  const reason = `left over of ${part.number}, job ${job.number}`;
  return { batchId: await outOfKit(writing, now, batch, partId, { change: quantity, reason, jobId, by }) };
}

async function assertWhole(
  reading: Reading,
  kit: { jobId: number; batch: repository.BatchRow; part: PartRow; kept: number },
): Promise<void> {
  for (const line of await repository.listKitBatchLines(reading, kit.batch.batch_id)) {
    const leftOver = await repository.leftOverOfKit(reading, {
      jobId: kit.jobId,
      kitBatchId: kit.batch.batch_id,
      partId: line.partId,
    });
    if (leftOver > kit.kept * line.quantity) {
      throw new Refused('not-whole', `${line.number} of this kit went back on the shelf already: return its parts.`);
    }
  }
}

export async function scrapFromBatch(
  writing: Writing,
  now: string,
  input: { batchId: number; quantity: number; reason: string; by: number },
) {
  await personAtWork(writing, input.by);
  const { batch, part } = await batchAtHand(writing, input.batchId);
  assertOnHand(batch, part, input.quantity);
  const { batchId, quantity, reason, by } = input;
  await repository.insertMovement(writing, { batchId, kind: 'scrap', change: -quantity, reason, by, now });
  return {};
}

export async function countBatch(
  writing: Writing,
  now: string,
  input: { batchId: number; counted: number; reason: string; by: number },
) {
  await personAtWork(writing, input.by);
  const { batch } = await batchAtHand(writing, input.batchId);
  const change = input.counted - (batch.on_hand ?? 0);
  const { batchId, reason, by } = input;
  if (change !== 0) await repository.insertMovement(writing, { batchId, kind: 'count', change, reason, by, now });
  return {};
}

/** Plates taken out of a batch one by one, to be measured into cans or tagged; back with a negative number. */
export async function sortFromBatch(
  writing: Writing,
  now: string,
  input: { batchId: number; quantity: number; by: number },
): Promise<void> {
  const { batch, part } = await batchAtHand(writing, input.batchId);
  assertOnHand(batch, part, input.quantity);
  const { batchId, quantity, by } = input;
  await repository.insertMovement(writing, { batchId, kind: 'sort', change: -quantity, by, now });
}

export async function listPartsOfJob(reading: Reading, { jobId }: { jobId: number }): Promise<PartOfJob[]> {
  const rows = (await repository.listHeldByJob(reading, jobId)).filter((row) => row.change < 0);
  return Promise.all(
    rows.map(async (row) => ({
      batchId: row.batch_id,
      partId: row.part_id,
      number: row.number,
      description: row.description,
      kind: row.kind,
      unitOfIssue: row.unit_of_issue,
      quantity: -row.change,
      mark: row.mark,
      document: row.document,
      receivedOn: row.received_on,
      cost_cents: row.unit_cost_cents,
      price_cents: row.price_cents,
      contents: await contentsStillIn(reading, jobId, row),
      pulledAt: row.pulled_at,
      by: row.initials,
    })),
  );
}

/** What the kits brought along, less what was left over. */
async function contentsStillIn(
  reading: Reading,
  jobId: number,
  row: { batch_id: number; kind: PartOfJob['kind']; change: number },
): Promise<PartOfJob['contents']> {
  if (row.kind !== 'kit') return [];
  const lines = await repository.listKitBatchLines(reading, row.batch_id);
  const contents = await Promise.all(
    lines.map(async (line) => {
      const { partId } = line;
      const leftOver = await repository.leftOverOfKit(reading, { jobId, kitBatchId: row.batch_id, partId });
      return { ...line, quantity: -row.change * line.quantity - leftOver };
    }),
  );
  return contents.filter((line) => line.quantity > 0);
}

async function batchAtHand(reading: Reading, batchId: number): Promise<{ batch: repository.BatchRow; part: PartRow }> {
  const batch = found(await repository.findBatch(reading, batchId), 'batch');
  return { batch, part: found(await findPart(reading, batch.part_id), 'part') };
}

function assertOnHand(batch: repository.BatchRow, part: PartRow, wanted: number): void {
  const onHand = batch.on_hand ?? 0;
  if (wanted > onHand) throw tooFew(part, onHand, batch.mark || batch.document);
}

function tooFew(part: PartRow, onHand: number, batch = ''): Refused {
  const where = batch === '' ? 'on hand' : `left of batch ${batch}`;
  const count = onHand === 0 ? 'none is' : onHand === 1 ? 'one is' : `${onHand} are`;
  return new Refused(
    'too-few',
    `${part.number}: ${count} ${where}. If the shelf holds more, count the batch first.`,
    'quantity',
  );
}
