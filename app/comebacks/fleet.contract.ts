// What the whole fleet says: how long builds last, how many came back of each quarter, and what goes together with it.
import { z } from 'zod';
import { done, id, nothing, requiredLine } from '../contract/fields.ts';
import { read } from '../contract/method.ts';
import { causes } from './causes.ts';
import { clocks, endings, reasonsLeftOut } from './follow-builds.ts';

const count = z.int().nonnegative();
const day = z.iso.date();
const chance = z.number().min(0).max(1);

export const fleetSelection = z.strictObject({
  familyId: id,
  packName: requiredLine.nullable().describe('null: the whole unit'),
  revision: z.int().positive().nullable(),
  cause: z.enum(causes).nullable().describe('null: any'),
  builderId: id.nullable(),
  batchId: id.nullable(),
  deliveredFrom: day.nullable(),
  deliveredUntil: day.nullable(),
  clock: z.enum(clocks),
  guessUse: z.boolean().default(false).describe('guess use that nobody wrote down from what the others ran a day'),
  groupBy: requiredLine.nullable().default(null).describe('a group of the answer’s groups to compare'),
});

/** An answer, or why there is none yet. */
const orNotEnough = <T extends z.ZodRawShape>(shape: T) =>
  z.discriminatedUnion('isEnough', [
    z.strictObject({ isEnough: z.literal(false), why: z.string() }),
    z.strictObject({ isEnough: z.literal(true), ...shape }),
  ]);

const limit = z.number().nullable();

export const curve = z.strictObject({
  builds: count,
  events: count,
  until: z.number(),
  steps: z.array(
    z.strictObject({
      time: z.number(),
      atRisk: count,
      events: count,
      survival: chance,
      lower: chance.nullable(),
      upper: chance.nullable(),
      cumulativeHazard: z.number(),
    }),
  ),
  median: z.number().nullable().describe('null: not reached'),
  atTimes: z.array(
    z.strictObject({
      time: z.number(),
      atRisk: count,
      cameBack: count,
      survival: chance,
      lower: chance.nullable(),
      upper: chance.nullable(),
    }),
  ),
});

const factor = z.strictObject({
  name: z.string(),
  level: z.string().nullable().describe('null: a number'),
  unit: z.string().nullable(),
  builds: count,
  events: count,
  unrecorded: count.describe('followed builds of which it was never recorded, left out here'),
  inLevel: z.strictObject({ builds: count, events: count }).nullable(),
  between: z.strictObject({ worse: z.number(), better: z.number() }).nullable(),
  by: z.enum(['cox', 'fisher']),
  ratio: limit.describe('of hazards by Cox, of odds by Fisher; null: without limit'),
  interval: z.tuple([limit, limit]),
  p: chance.describe('by likelihood ratio, or exact'),
  adjusted: chance.describe('over all that were tried'),
  isFound: z.boolean(),
  says: z.string(),
  settle: z.string(),
});

const heldAgainst = z.strictObject({
  factor: z.string(),
  within: z.string(),
  inside: z.array(
    z.strictObject({ part: z.enum(['in', 'out', 'below', 'above']), builds: count, events: count, ratio: limit }),
  ),
  ratio: limit,
  interval: z.tuple([z.number(), z.number()]).nullable(),
  mayBeShadow: z.boolean(),
});

export const fleetAnswer = z.strictObject({
  today: day,
  /** Delivered builds that the selection takes in, and how many of them were followed. */
  selected: count,
  followed: count,
  events: count,
  leftOut: z.array(z.strictObject({ why: z.enum(reasonsLeftOut), builds: count })),
  fromDelivery: count.describe('followed from delivery, because nobody said when it went into service'),
  usePerDay: z.strictObject({ median: z.number(), builds: count }).nullable(),
  guessed: count,
  endings: z.array(z.strictObject({ ending: z.enum(endings), builds: count })),
  survival: orNotEnough({ curve }),
  wear: orNotEnough({
    shape: z.number(),
    shapeInterval: z.tuple([limit, limit]),
    scale: z.number(),
    scaleInterval: z.tuple([limit, limit]),
    b10: z.number(),
  }),
  quarters: z.array(
    z.strictObject({
      quarter: z.string(),
      builds: count,
      cameBack: count,
      stillFollowed: count,
      share: chance,
      lower: chance,
      upper: chance,
    }),
  ),
  /** What builds can be compared by. */
  groups: z.array(z.string()),
  compared: orNotEnough({
    curves: z.array(z.strictObject({ level: z.string(), expected: z.number(), curve })),
    leftOut: count,
    chiSquare: z.number(),
    degreesOfFreedom: count,
    p: chance,
  }).nullable(),
  factors: orNotEnough({
    count: count.describe('how many were tried'),
    tried: z.array(factor).describe('the likeliest first: every find, and 100 at least where there are so many'),
    notTried: z.array(z.strictObject({ name: z.string(), why: z.string() })),
    shadows: z.array(
      z.strictObject({
        correlation: z.number(),
        builds: count,
        each: z.tuple([heldAgainst, heldAgainst]),
        says: z.string(),
      }),
    ),
  }),
});

const named = z.strictObject({ id, name: z.string(), builds: count });

export const fleetContract = {
  'comebacks.fleetChoices': read(
    'what builds can be chosen by: families with delivered builds, their revisions, packs, builders and batches',
    z.strictObject({ familyId: id.nullable() }),
    z.strictObject({
      families: z.array(named),
      revisions: z.array(z.int().positive()),
      packs: z.array(z.string()),
      builders: z.array(z.strictObject({ id, name: z.string() })),
      batches: z.array(named),
    }),
  ),
  'comebacks.askFleet': read(
    'what the delivered builds of a family say together; a later question ends the one that runs',
    fleetSelection,
    fleetAnswer,
  ),
  'comebacks.stopAsking': read('end the question that runs', nothing, done),
} as const;

export type FleetSelection = z.output<typeof fleetSelection>;
export type FleetAnswer = z.infer<typeof fleetAnswer>;
export type FactorTold = z.infer<typeof factor>;
export type CurveTold = z.infer<typeof curve>;
