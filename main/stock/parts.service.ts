// Parts: what they are called, what they fit, what lies in a kit.
import type { DecimalMark } from '../../app/quantities/format-amount.ts';
import { parseMoney } from '../../app/quantities/money.ts';
import type { Batch, Movement, Part, PartKind, PartLine, ReorderLine } from '../../app/stock/parts.contract.ts';
import { suggestedQuantity } from '../../app/stock/reorder.ts';
import { accepted, found, Refused } from '../database/errors.ts';
import type { Reading, Writing } from '../database/tables.ts';
import { getSettings, personAtWork } from '../shop/shop.service.ts';
import { listFamilies } from '../specs/specs.repository.ts';
import * as ledger from './ledger.repository.ts';
import * as repository from './parts.repository.ts';

export type PartTyped = {
  number: string;
  description: string;
  kind: PartKind;
  supplier: string;
  unitOfIssue: string;
  bin: string;
  cost: string;
  price: string;
  coreCharge: string;
  reorderPoint: number | null;
  reorderQuantity: number | null;
  familyIds: readonly number[];
};

/** The newest movements shown with a part. */
const movementsShown = 100;

export async function listParts(
  reading: Reading,
  input: repository.PartFilter & { offset: number; limit: number },
): Promise<{ total: number; parts: PartLine[] }> {
  const rows = await repository.listParts(reading, input);
  return { total: await repository.countParts(reading, input), parts: rows.map(lineOfRow) };
}

export async function getPart(reading: Reading, { partId }: { partId: number }): Promise<Part> {
  const row = found(await repository.findPart(reading, partId), 'part');
  const batches = await ledger.listBatches(reading, partId);
  const movements = await ledger.listMovementsOfPart(reading, partId, movementsShown);
  return {
    ...lineOfRow(row),
    coreCharge_cents: row.core_charge_cents,
    families: await repository.listFamilies(reading, partId),
    contents: await repository.listContents(reading, partId),
    inKits: await repository.listKitsWith(reading, partId),
    batches: batches.map(batchOfRow).reverse(),
    movements: movements.map(movementOfRow),
  };
}

export async function savePart(
  writing: Writing,
  input: PartTyped & {
    partId: number | null;
    contents: ReadonlyArray<{ partId: number; quantity: number }>;
    by: number;
  },
): Promise<{ partId: number }> {
  await personAtWork(writing, input.by);
  const { partId, contents } = input;
  if (contents.length > 0 && input.kind !== 'kit') {
    throw new Refused('not-a-kit', 'Only a kit has parts in it: choose the kind “kit”, or take them out.', 'kind');
  }
  const saved = await keepPart(writing, partId, input, await partHand(writing));
  for (const each of contents) await inKit(writing, saved, each.partId);
  if (new Set(contents.map((each) => each.partId)).size < contents.length) {
    throw new Refused('twice-in-kit', 'A part stands twice in this kit: give it one line with its number.', 'contents');
  }
  await repository.replaceContents(writing, saved, contents);
  return { partId: saved };
}

/** What writing a part leans on, looked up once for many of them. */
export type PartHand = { readonly decimalMark: DecimalMark; readonly familyIds: ReadonlySet<number> };

export async function partHand(reading: Reading): Promise<PartHand> {
  const { decimalMark } = await getSettings(reading);
  return { decimalMark, familyIds: new Set((await listFamilies(reading)).map((family) => family.family_id)) };
}

/** Writes what is said of a part, but what lies in a kit; refuses a number that another part has. */
export async function keepPart(
  writing: Writing,
  partId: number | null,
  typed: PartTyped,
  hand: PartHand,
): Promise<number> {
  const part = partToSave(typed, hand);
  const familyIds = [...new Set(typed.familyIds)];
  if (familyIds.some((familyId) => !hand.familyIds.has(familyId))) {
    throw new Refused('not-found', 'There is no such family.', 'familyIds');
  }
  const other = await repository.findNumbered(writing, part.number);
  if (other && other.part_id !== partId) {
    throw new Refused('number-taken', `There is already a part ${other.number}: ${other.description}.`, 'number');
  }
  if (partId === null) {
    const inserted = await repository.insertPart(writing, part);
    await repository.addFamilies(writing, inserted, familyIds);
    return inserted;
  }
  const before = found(await repository.findPart(writing, partId), 'part');
  if (before.kind === 'kit' && part.kind !== 'kit' && (await ledger.listBatches(writing, partId)).length > 0) {
    throw new Refused('was-a-kit', `${before.number} came in as a kit: it stays one.`, 'kind');
  }
  await repository.replacePart(writing, partId, part);
  await repository.replaceFamilies(writing, partId, familyIds);
  return partId;
}

function partToSave(typed: PartTyped, { decimalMark }: PartHand): repository.PartToSave {
  const money = (text: string, field: string) => (text === '' ? null : accepted(parseMoney(text, decimalMark), field));
  if (typed.reorderQuantity !== null && typed.reorderPoint === null) {
    throw new Refused('no-point', 'Say at how many to reorder, or leave the quantity empty.', 'reorderPoint');
  }
  return {
    number: typed.number,
    description: typed.description,
    kind: typed.kind,
    supplier: typed.supplier,
    unit_of_issue: typed.unitOfIssue,
    bin: typed.bin,
    cost_cents: money(typed.cost, 'cost'),
    price_cents: money(typed.price, 'price'),
    // No charge and a charge of nothing are the same.
    core_charge_cents: money(typed.coreCharge, 'coreCharge') || null,
    reorder_point: typed.reorderPoint,
    reorder_quantity: typed.reorderQuantity,
  };
}

async function inKit(reading: Reading, kitId: number, partId: number): Promise<void> {
  const part = found(await repository.findPart(reading, partId), 'part');
  if (partId === kitId) throw new Refused('kit-in-itself', 'A kit cannot lie in itself.', 'contents');
  if (part.kind === 'kit') {
    throw new Refused('kit-in-kit', `${part.number} is a kit itself: list its parts instead.`, 'contents');
  }
}

export async function retirePart(writing: Writing, input: { partId: number; isRetired: boolean; by: number }) {
  await personAtWork(writing, input.by);
  found(await repository.findPart(writing, input.partId), 'part');
  await repository.replacePart(writing, input.partId, { is_retired: input.isRetired ? 1 : 0 });
  return {};
}

export async function listReorder(reading: Reading): Promise<ReorderLine[]> {
  const everything = { text: '', kind: null, familyId: null, only: 'low', offset: 0, limit: null } as const;
  const rows = await repository.listParts(reading, everything);
  return rows
    .map(lineOfRow)
    .map((line) => {
      const suggested = suggestedQuantity(line);
      return {
        ...line,
        suggested,
        lineCost_cents: line.cost_cents === null ? null : suggested * line.cost_cents,
      };
    })
    .toSorted((a, b) => compareText(a.supplier, b.supplier) || compareText(a.number, b.number));
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

export function lineOfRow(row: repository.PartRow): PartLine {
  const onHand = row.on_hand ?? 0;
  return {
    partId: row.part_id,
    number: row.number,
    description: row.description,
    kind: row.kind,
    supplier: row.supplier,
    unitOfIssue: row.unit_of_issue,
    bin: row.bin,
    cost_cents: row.cost_cents,
    price_cents: row.price_cents,
    reorderPoint: row.reorder_point,
    reorderQuantity: row.reorder_quantity,
    isRetired: row.is_retired === 1,
    onHand,
    isLow: row.is_retired === 0 && row.reorder_point !== null && onHand <= row.reorder_point,
  };
}

function batchOfRow(row: ledger.BatchRow): Batch {
  return {
    batchId: row.batch_id,
    partId: row.part_id,
    mark: row.mark,
    document: row.document,
    receivedOn: row.received_on,
    unitCost_cents: row.unit_cost_cents,
    kit:
      row.kit_batch_id === null || row.kit_number === null
        ? null
        : {
            batchId: row.kit_batch_id,
            partNumber: row.kit_number,
            mark: row.kit_mark ?? '',
            document: row.kit_document ?? '',
            receivedOn: row.kit_received_on ?? row.received_on,
          },
    onHand: row.on_hand ?? 0,
    by: row.initials,
  };
}

function movementOfRow(row: Awaited<ReturnType<typeof ledger.listMovementsOfPart>>[number]): Movement {
  return {
    movementId: row.movement_id,
    batchId: row.batch_id,
    kind: row.kind,
    change: row.change,
    job: row.job_id === null || row.job_number === null ? null : { jobId: row.job_id, number: row.job_number },
    reason: row.reason,
    at: row.moved_at,
    by: row.initials,
  };
}
