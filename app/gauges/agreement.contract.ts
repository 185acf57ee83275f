// Two ways of reading held against each other, and one check followed over the builds of a family.
import { z } from 'zod';
import { id, instant, line, requiredLine } from '../contract/fields.ts';
import { read, write } from '../contract/method.ts';
import { quantities, unitNames } from '../quantities/units.ts';

export const pairedMethods = ['air', 'feeler', 'dial', 'direct'] as const;

/** Nanometres, not whole because they are means. */
const length = z.number();
const interval = z.tuple([length, length]);

export const methodPair = z.strictObject({
  what: z.string(),
  first: length,
  second: length,
  at: instant,
  by: z.string(),
  /** Where it was read, for a pair of the book. */
  job: z.strictObject({ jobId: id, number: z.int().positive() }).nullable(),
  /** For a pair that was entered. */
  methodPairId: id.nullable(),
});

export const methodAgreement = z.strictObject({
  n: z.int(),
  bias: length,
  standardDeviation: length,
  biasInterval: interval,
  limits: interval,
  lowerLimitInterval: interval,
  upperLimitInterval: interval,
});

export const agreementContract = {
  'gauges.compareMethods': read(
    'two methods on the same things: by how much they disagree, from pairs in the book and pairs entered',
    z.strictObject({ first: z.enum(pairedMethods), second: z.enum(pairedMethods) }),
    z.strictObject({
      pairs: z.array(methodPair),
      agreement: methodAgreement.nullable(),
      /** Second over first with an error of one size in both. */
      line: z.strictObject({ slope: z.number(), intercept: length }).nullable(),
      /** Why nothing can be said yet. */
      why: z.string().nullable(),
    }),
  ),
  'gauges.addPair': write(
    'the same thing read two ways, both typed; a misread pair is superseded with a reason',
    z.strictObject({
      what: requiredLine,
      first: z.enum(pairedMethods),
      second: z.enum(pairedMethods),
      firstTyped: requiredLine,
      secondTyped: requiredLine,
      supersedesId: id.nullable().default(null),
      reason: line.default(''),
      by: id,
    }),
    z.strictObject({ methodPairId: id }),
  ),
  'gauges.chartCheck': read(
    'one check over the builds of a family, as it was read last on each: what falls outside what the others do',
    z.strictObject({ familyId: id, checkName: requiredLine }),
    z.strictObject({
      points: z.array(
        z.strictObject({
          jobId: id,
          jobNumber: z.int().positive(),
          checkId: id,
          at: instant,
          by: z.string(),
          mean: z.number(),
          isOutside: z.boolean(),
        }),
      ),
      quantity: z.enum(quantities),
      unit: z.enum(unitNames),
      chart: z.strictObject({ mean: z.number(), lower: z.number(), upper: z.number() }).nullable(),
      /** Why there are no limits yet. */
      why: z.string().nullable(),
    }),
  ),
} as const;

export type MethodPair = z.infer<typeof methodPair>;
export type MethodAgreement = z.infer<typeof methodAgreement>;
