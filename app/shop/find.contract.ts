// One search box for everything: what was found, by noun, and where each of it is looked at.
import { z } from 'zod';
import { id, line } from '../contract/fields.ts';
import { read } from '../contract/method.ts';

export const nouns = ['code', 'job', 'customer', 'unit', 'part', 'batch', 'plate', 'gauge', 'family'] as const;

/** Where a thing is looked at: a customer and a unit on their newest ticket, a batch with its part. */
export const place = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('job'), jobId: id }),
  z.strictObject({ kind: z.literal('part'), partId: id }),
  z.strictObject({ kind: z.literal('can'), canId: id, outline: z.string() }),
  z.strictObject({ kind: z.literal('plate'), pieceId: id, outline: z.string() }),
  z.strictObject({ kind: z.literal('gauge'), gaugeId: id }),
  z.strictObject({ kind: z.literal('family'), familyId: id }),
]);

export const foundGroup = z.strictObject({
  noun: z.enum(nouns),
  found: z.array(z.strictObject({ place, title: z.string(), more: z.string() })).min(1),
});

export const findContract = {
  'shop.findAnything': read(
    'what holds every word or part of a word: jobs, customers, units, parts, batches, plates, gauges, families, and what a ' +
      'label’s code means; the first one is meant most likely, eight of a noun at most',
    z.strictObject({ text: line }),
    z.array(foundGroup),
  ),
} as const;

export type Noun = (typeof nouns)[number];
export type Place = z.infer<typeof place>;
export type FoundGroup = z.infer<typeof foundGroup>;
