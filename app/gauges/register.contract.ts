// The shop's gauges: what each can do, how it was checked, and which readings it touched.
import { z } from 'zod';
import { done, id, instant, line, nothing, requiredLine } from '../contract/fields.ts';
import { read, write } from '../contract/method.ts';
import { quantities, unitNames } from '../quantities/units.ts';
import { methods } from '../specs/spec-sheet.ts';
import { gaugeKinds } from './gauge-kinds.ts';
import { standingWords } from './gauge-standing.ts';

/** Base units of the gauge's quantity. */
const amount = z.int();
const day = z.iso.date();

export const checkedAgainst = ['blocks', 'leaves', 'ring', 'another gauge'] as const;

export const gauge = z.strictObject({
  gaugeId: id,
  kind: z.enum(gaugeKinds),
  quantity: z.enum(quantities),
  /** The name or tag that stands on it. */
  tag: requiredLine,
  unit: z.enum(unitNames),
  resolution: amount,
  permittedError: amount.nullable().describe('as its certificate or maker states it; null: not stated'),
  statedIn: line.describe('where the permitted error is stated'),
  /** How far out of square it may stand with what moves it. */
  offSquareDegrees: z.int(),
  serial: line,
  intervalDays: z.int().positive().nullable(),
  isRetired: z.boolean(),
  standing: z.strictObject({ word: z.enum(standingWords), checkedOn: day.nullable(), dueOn: day.nullable() }),
});

export const gaugeCheck = z.strictObject({
  gaugeCheckId: id,
  against: z.enum(checkedAgainst),
  checkedOn: day,
  permittedError: amount.nullable(),
  points: z.array(
    z.strictObject({ nominal: amount, read: amount, error: amount, nominalTyped: z.string(), readTyped: z.string() }),
  ),
  worst: amount,
  isWithin: z.boolean().nullable(),
  note: z.string(),
  at: instant,
  by: z.string(),
  supersedesId: id.nullable(),
  supersededById: id.nullable(),
  reason: z.string(),
});

export const registerContract = {
  'gauges.listGauges': read('every gauge and whether it can be relied on today', nothing, z.array(gauge)),
  'gauges.getGauge': read(
    'one gauge with its checks, newest first',
    z.strictObject({ gaugeId: id }),
    gauge.extend({ checks: z.array(gaugeCheck), takes: z.int().nonnegative() }),
  ),
  'gauges.saveGauge': write(
    'write down a gauge, or what is now known of it; takes that have begun keep what they began with',
    z.strictObject({
      gaugeId: id.nullable(),
      kind: z.enum(gaugeKinds),
      tag: requiredLine,
      unit: z.enum(unitNames),
      resolution: requiredLine,
      permittedError: line.describe('empty: not stated'),
      statedIn: line,
      offSquareDegrees: z.int().min(0).max(60),
      serial: line,
      intervalDays: z.int().min(1).max(3660).nullable(),
      by: id,
    }),
    z.strictObject({ gaugeId: id }),
  ),
  'gauges.retireGauge': write(
    'a gauge is not used any more, or again; what it has read stays',
    z.strictObject({ gaugeId: id, isRetired: z.boolean(), by: id }),
    done,
  ),
  'gauges.recordCheck': write(
    'a gauge was checked against something known, point by point; a misread check is superseded with a reason',
    z.strictObject({
      gaugeId: id,
      against: z.enum(checkedAgainst),
      checkedOn: day,
      points: z
        .array(z.strictObject({ nominal: requiredLine, read: requiredLine }))
        .min(1)
        .max(40),
      note: line,
      supersedesId: id.nullable().default(null),
      reason: line.default(''),
      by: id,
    }),
    z.strictObject({ gaugeCheckId: id }),
  ),
  'gauges.lastGauge': read(
    'the gauge to offer as "same as last time": of the newest take of this job that was read this way',
    z.strictObject({ jobId: id, method: z.enum(methods) }),
    z.strictObject({ gaugeId: id, tag: z.string() }).nullable(),
  ),
} as const;

export type Gauge = z.infer<typeof gauge>;
export type GaugeCheck = z.infer<typeof gaugeCheck>;
