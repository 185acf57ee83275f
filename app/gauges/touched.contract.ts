// A gauge that was found out: which readings it touched since it was last good.
import { z } from 'zod';
import { id, instant } from '../contract/fields.ts';
import { read } from '../contract/method.ts';
import { quantities, unitNames } from '../quantities/units.ts';
import { verdict } from '../readings/readings.contract.ts';

const day = z.iso.date();
/** Base units of what the gauge reads; not whole where it is a mean. */
const amount = z.number();

export const touchedTake = z.strictObject({
  takeId: id,
  jobId: id,
  jobNumber: z.int().positive(),
  checkId: id,
  checkName: z.string(),
  customer: z.string(),
  unit: z.string(),
  at: instant,
  by: z.string(),
  mean: amount.nullable(),
  word: verdict.shape.word,
  /** What the mean could have been, had the gauge been right. */
  couldBe: z.strictObject({ low: amount, high: amount }).nullable(),
  /** What else the verdict could have been. */
  couldSay: z.array(verdict.shape.word),
});

export const touchedContract = {
  'gauges.listTouched': read(
    'the readings a gauge took between its last good check and the next one, when this check found it out',
    z.strictObject({ gaugeCheckId: id }),
    z.strictObject({
      gaugeId: id,
      tag: z.string(),
      quantity: z.enum(quantities),
      unit: z.enum(unitNames),
      foundOn: day,
      sinceOn: day.nullable().describe('the last good check before; null: never'),
      untilOn: day.nullable().describe('the next good check after; null: none yet'),
      /** How far off the check found it: from the least to the most, nothing between them. */
      error: z.strictObject({ low: amount, high: amount }),
      takes: z.array(touchedTake),
    }),
  ),
} as const;

export type TouchedTake = z.infer<typeof touchedTake>;
