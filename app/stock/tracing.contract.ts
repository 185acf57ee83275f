// From a batch, a kit, a can or a plate to every unit it went into, and what a scanned code means.
import { z } from 'zod';
import { computed_nm, id, instant, line } from '../contract/fields.ts';
import { read } from '../contract/method.ts';
import { phases, verdict } from '../readings/readings.contract.ts';

/** What can be traced; a part means all of its batches. */
export const traced = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('part'), partId: id }),
  z.strictObject({ kind: z.literal('batch'), batchId: id }),
  z.strictObject({ kind: z.literal('can'), canId: id }),
  z.strictObject({ kind: z.literal('plate'), pieceId: id }),
]);

/** One unit that something went into, with what its packs read. */
export const tracedUnit = z.strictObject({
  jobId: id,
  jobNumber: z.int().positive(),
  isClosed: z.boolean(),
  unitId: id,
  familyName: z.string(),
  serial: z.string(),
  vehicle: z.string(),
  customerName: z.string(),
  phone: z.string(),
  /** When it went in. */
  at: instant,
  /** "2 of batch …", "Forward, steel 3": what went where, one line each. */
  what: z.array(z.string()),
  /** Whether it is still there by the newest record of that ticket. */
  isStillIn: z.boolean(),
  clearances: z.array(
    z.strictObject({
      checkId: id,
      packId: id,
      packName: z.string(),
      /** As found says nothing of what went in later. */
      phase: z.enum(phases),
      mean_nm: computed_nm.nullable(),
      expanded_nm: computed_nm.nullable(),
      verdict,
    }),
  ),
});

export const tracingContract = {
  'stock.trace': read(
    'every unit that something went into, newest first, with the readings of those units, and where it came from',
    z.strictObject({ of: traced }),
    z.strictObject({
      title: z.string(),
      /** Where it came from, one step up each: the can, the batch, the kit. */
      from: z.array(z.strictObject({ of: traced, says: z.string() })),
      /** What came out of it: batches out of a kit, cans and plates out of a batch. */
      into: z.array(z.strictObject({ of: traced, says: z.string() })),
      onHand: z.int().nonnegative(),
      units: z.array(tracedUnit),
      /** What this trace cannot tell, in one sentence; empty where it tells all. */
      caution: z.string(),
    }),
  ),
  'stock.findCode': read(
    'what a scanned label, a plate’s tag or a part’s number means',
    z.strictObject({ code: line }),
    z
      .discriminatedUnion('kind', [
        z.strictObject({ kind: z.literal('part'), partId: id }),
        z.strictObject({ kind: z.literal('batch'), partId: id, batchId: id }),
        z.strictObject({ kind: z.literal('can'), canId: id, outline: z.string() }),
        z.strictObject({ kind: z.literal('plate'), pieceId: id, outline: z.string() }),
        z.strictObject({ kind: z.literal('job'), jobId: id }),
        z.strictObject({ kind: z.literal('gauge'), gaugeId: id }),
      ])
      .nullable(),
  ),
} as const;

export type Traced = z.infer<typeof traced>;
export type TracedUnit = z.infer<typeof tracedUnit>;
