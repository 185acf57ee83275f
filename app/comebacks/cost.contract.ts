// What comebacks cost, beside what was delivered: by quarter and family, and told for each cause.
import { z } from 'zod';
import { id, nothing } from '../contract/fields.ts';
import { read } from '../contract/method.ts';
import { causes } from './causes.ts';

const count = z.int().nonnegative();

/** Each comeback counts once, in the quarter it came back, under the family of its build. */
export const costCell = z.strictObject({
  /** "2026 Q3". */
  quarter: z.string(),
  familyId: id,
  delivered: count,
  cameBack: count,
  ours: count,
  /** Of those in warranty or out of goodwill: what is known of their cost. */
  cost_cents: count,
  /** In warranty or out of goodwill, and nobody said what it cost. */
  unpriced: count,
  /** Whether they are covered is not decided yet, so they are not in the cost. */
  undecided: count,
});

/** Told for each known or suspected cause, so these do not add up to the whole; null: nobody said one. */
export const costOfCause = z.strictObject({
  quarter: z.string(),
  familyId: id,
  cause: z.enum(causes).nullable(),
  cameBack: count,
  cost_cents: count,
});

export const costContract = {
  'comebacks.getCost': read(
    'warranty cost by quarter and family beside jobs delivered, and told for each cause',
    nothing,
    z.strictObject({
      families: z.array(z.strictObject({ familyId: id, name: z.string() })),
      cells: z.array(costCell),
      causes: z.array(costOfCause),
    }),
  ),
} as const;

export type CostCell = z.infer<typeof costCell>;
export type CostOfCause = z.infer<typeof costOfCause>;
