// Parts, their batches and the ledger of what moved: in, to a job, back, out.
import { z } from 'zod';
import { done, id, instant, line, requiredLine } from '../contract/fields.ts';
import { read, write } from '../contract/method.ts';

export const partKinds = [
  'steel',
  'friction',
  'pressure plate',
  'snap ring',
  'seal',
  'bushing',
  'washer',
  'valve-body part',
  'fluid',
  'kit',
  'other',
] as const;

/** receive: it came in. open: a kit taken apart. sort: plates measured into cans or tagged. */
export const movementKinds = ['receive', 'pull', 'return', 'scrap', 'count', 'open', 'sort'] as const;

const cents = z.int().nonnegative();
const quantity = z.int().positive().max(1_000_000);
/** A business day. */
export const day = z.iso.date();

export const partLine = z.strictObject({
  partId: id,
  number: z.string(),
  description: z.string(),
  kind: z.enum(partKinds),
  supplier: z.string(),
  unitOfIssue: z.string(),
  bin: z.string(),
  cost_cents: cents.nullable(),
  price_cents: cents.nullable(),
  reorderPoint: z.int().nonnegative().nullable(),
  reorderQuantity: z.int().positive().nullable(),
  isRetired: z.boolean(),
  onHand: z.int().nonnegative(),
  /** At or under its reorder point. */
  isLow: z.boolean(),
});

export const batch = z.strictObject({
  batchId: id,
  partId: id,
  /** The batch mark on the box, or empty where the parts come unmarked. */
  mark: z.string(),
  document: z.string(),
  receivedOn: day,
  unitCost_cents: cents.nullable(),
  /** The kit it lay in. */
  kit: z
    .strictObject({
      batchId: id,
      partNumber: z.string(),
      mark: z.string(),
      document: z.string(),
      receivedOn: day,
    })
    .nullable(),
  onHand: z.int().nonnegative(),
  by: z.string(),
});

export const movement = z.strictObject({
  movementId: id,
  batchId: id,
  kind: z.enum(movementKinds),
  change: z.int(),
  job: z.strictObject({ jobId: id, number: z.int().positive() }).nullable(),
  reason: z.string(),
  at: instant,
  by: z.string(),
});

export const part = partLine.extend({
  coreCharge_cents: cents.nullable(),
  families: z.array(z.strictObject({ familyId: id, name: z.string() })),
  /** What lies in it, for a kit. */
  contents: z.array(z.strictObject({ partId: id, number: z.string(), description: z.string(), quantity })),
  inKits: z.array(z.strictObject({ partId: id, number: z.string(), description: z.string(), quantity })),
  /** Newest first. */
  batches: z.array(batch),
  /** The newest hundred, newest first. */
  movements: z.array(movement),
});

/** One batch of one part on a ticket: what was pulled less what came back. */
export const partOfJob = z.strictObject({
  batchId: id,
  partId: id,
  number: z.string(),
  description: z.string(),
  kind: z.enum(partKinds),
  unitOfIssue: z.string(),
  quantity: z.int().nonnegative(),
  mark: z.string(),
  document: z.string(),
  receivedOn: day,
  cost_cents: cents.nullable(),
  price_cents: cents.nullable(),
  /** What a kit brought along. */
  contents: z.array(z.strictObject({ partId: id, number: z.string(), description: z.string(), quantity })),
  pulledAt: instant,
  by: z.string(),
});

export const coreDirections = ['to send back', 'due to us'] as const;
export const coreEndings = ['sent back', 'came back', 'charged', 'written off'] as const;

export const core = z.strictObject({
  coreId: id,
  direction: z.enum(coreDirections),
  what: z.string(),
  quantity,
  charge_cents: cents.nullable(),
  dueOn: day.nullable(),
  isOverdue: z.boolean(),
  part: z.strictObject({ partId: id, number: z.string(), supplier: z.string() }).nullable(),
  job: z.strictObject({ jobId: id, number: z.int().positive() }).nullable(),
  openedAt: instant,
  by: z.string(),
  settled: z.strictObject({ how: z.enum(coreEndings), note: z.string(), at: instant, by: z.string() }).nullable(),
});

export const reorderLine = partLine.extend({
  /** What brings it back over its point: the reorder quantity, as often as needed. */
  suggested: quantity,
  lineCost_cents: cents.nullable(),
});

export const partsContract = {
  'stock.listParts': read(
    'parts whose number, description, supplier, bin or batch mark holds this text, by number, a window of the list',
    z.strictObject({
      text: line,
      kind: z.enum(partKinds).nullable(),
      familyId: id.nullable(),
      only: z.enum(['in use', 'low', 'retired']),
      offset: z.int().nonnegative(),
      limit: z.int().positive().max(500),
    }),
    z.strictObject({ total: z.int().nonnegative(), parts: z.array(partLine) }),
  ),
  'stock.listSuppliers': read('every supplier named so far', z.strictObject({}), z.array(z.string())),
  'stock.getPart': read('a part with its batches and what moved', z.strictObject({ partId: id }), part),
  'stock.savePart': write(
    'a new part, or what is said of one; what moved stays as it is',
    z.strictObject({
      partId: id.nullable(),
      number: requiredLine,
      description: requiredLine,
      kind: z.enum(partKinds),
      supplier: line,
      unitOfIssue: requiredLine,
      bin: line,
      cost: line.describe('as typed; empty where unknown'),
      price: line,
      coreCharge: line,
      reorderPoint: z.int().nonnegative().max(1_000_000).nullable(),
      reorderQuantity: quantity.nullable(),
      familyIds: z.array(id).max(200).describe('empty: it fits any'),
      contents: z.array(z.strictObject({ partId: id, quantity })).max(200),
      by: id,
    }),
    z.strictObject({ partId: id }),
  ),
  'stock.retirePart': write(
    'a part is not bought any more, or is again',
    z.strictObject({ partId: id, isRetired: z.boolean(), by: id }),
    done,
  ),
  'stock.receiveBatch': write(
    'parts came in: one batch, told apart by its mark or by the supplier’s document',
    z.strictObject({
      partId: id,
      quantity: z.int().max(1_000_000),
      receivedOn: day.nullable().describe('today if null'),
      mark: line,
      document: line,
      unitCost: line.describe('as typed; empty: the part’s cost'),
      by: id,
    }),
    z.strictObject({ batchId: id }),
  ),
  'stock.openKit': write(
    'take kits apart: their parts lie in stock one by one from now on',
    z.strictObject({ batchId: id, quantity, by: id }),
    z.strictObject({ batches: z.array(z.strictObject({ batchId: id, partId: id, quantity })) }),
  ),
  'stock.pullForJob': write(
    'parts leave the shelf for a ticket, from the batch named or from the oldest',
    z.strictObject({
      jobId: id,
      partId: id,
      batchId: id.nullable(),
      quantity,
      /** The person was told that the part is not listed for this family, and means it. */
      isSure: z.boolean().default(false),
      by: id,
    }),
    z.strictObject({ pulled: z.array(z.strictObject({ batchId: id, quantity })) }),
  ),
  'stock.returnFromJob': write(
    'parts pulled for a ticket come back; of a pulled kit, one of its parts may',
    z.strictObject({
      jobId: id,
      batchId: id,
      partId: id.nullable().describe('a part of the kit that was pulled; null: the whole'),
      quantity,
      by: id,
    }),
    z.strictObject({ batchId: id }),
  ),
  'stock.scrapFromBatch': write(
    'parts are thrown away, with a reason',
    z.strictObject({ batchId: id, quantity, reason: requiredLine, by: id }),
    done,
  ),
  'stock.countBatch': write(
    'a batch was counted: correct it, with a reason',
    z.strictObject({ batchId: id, counted: z.int().nonnegative().max(1_000_000), reason: requiredLine, by: id }),
    done,
  ),
  'stock.listPartsOfJob': read('what a ticket holds from stock', z.strictObject({ jobId: id }), z.array(partOfJob)),
  'stock.listReorder': read(
    'what is at or under its reorder point, by supplier',
    z.strictObject({}),
    z.array(reorderLine),
  ),
  'stock.listCores': read(
    'cores to send back and cores due to us, the earliest due first',
    z.strictObject({ includeSettled: z.boolean(), jobId: id.optional().describe('only those of this job') }),
    z.array(core),
  ),
  'stock.openCore': write(
    'a core is owed, one way or the other',
    z.strictObject({
      direction: z.enum(coreDirections),
      what: requiredLine,
      quantity,
      charge: line,
      dueOn: day.nullable(),
      jobId: id.nullable(),
      by: id,
    }),
    z.strictObject({ coreId: id }),
  ),
  'stock.settleCore': write(
    'a core went back, came back, was charged or is written off',
    z.strictObject({ coreId: id, how: z.enum(coreEndings), note: line, by: id }),
    done,
  ),
} as const;

export type PartKind = (typeof partKinds)[number];
export type MovementKind = (typeof movementKinds)[number];
export type PartLine = z.infer<typeof partLine>;
export type Part = z.infer<typeof part>;
export type Batch = z.infer<typeof batch>;
export type Movement = z.infer<typeof movement>;
export type PartOfJob = z.infer<typeof partOfJob>;
export type Core = z.infer<typeof core>;
export type ReorderLine = z.infer<typeof reorderLine>;
