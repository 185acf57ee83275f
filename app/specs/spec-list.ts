// A list of a spec sheet: what somebody looks at, counts or notes beside the numbers that have limits.
import { z } from 'zod';
import { line, requiredLine } from '../contract/fields.ts';

/** When a list is gone through; each has its page on the ticket. */
export const listTimes = ['as found', 'teardown', 'build', 'final', 'delivery'] as const;

/** What a line asks for. change: old and new, as a hole drilled. stall: how fast, and held for how long. */
export const asks = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('tick') }),
  z.strictObject({ kind: z.literal('count'), expected: z.int().nonnegative().max(999) }),
  z.strictObject({
    kind: z.literal('choice'),
    options: z
      .array(z.strictObject({ words: requiredLine, isGood: z.boolean() }))
      .min(2)
      .max(12),
  }),
  z.strictObject({ kind: z.literal('words') }),
  z.strictObject({ kind: z.literal('change') }),
  z.strictObject({
    kind: z.literal('stall'),
    lowRpm: z.int().positive().max(20_000),
    highRpm: z.int().positive().max(20_000),
    longestSeconds: z.int().positive().max(60),
  }),
]);

export const listLine = z.strictObject({ words: requiredLine, asks });

export const specList = z.strictObject({
  name: requiredLine,
  when: z.enum(listTimes),
  /** The pack it is about, by name, or null. */
  packName: requiredLine.nullable(),
  lines: z.array(listLine).max(60),
  sourceNote: line,
});

export type ListTime = (typeof listTimes)[number];
export type Asks = z.infer<typeof asks>;
export type ListLine = z.infer<typeof listLine>;
export type SpecList = z.infer<typeof specList>;
