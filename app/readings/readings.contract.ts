// What the gauge said, how, by whom. A take is one go at one check: a setup card, then line after line.
// Readings are appended and, when misread, superseded with a reason; nothing is ever edited.
import { z } from 'zod';
import { done, id, instant, line, nothing, requiredLine } from '../contract/fields.ts';
import { read, write } from '../contract/method.ts';
import { heardTrace } from '../indicators/indicators.contract.ts';
import { settings } from '../shop/shop.contract.ts';
import { methods, waveStates } from '../specs/spec-sheet.ts';

export const phases = ['as found', 'mock-up', 'final'] as const;

export const setup = z.strictObject({
  dialBase: z.enum(['drum', 'pump or lower drum']),
  /** Stroked twice and down at rest; a held-up piston reads tight. */
  isPistonSeated: z.boolean(),
  /** While flowing; null where no air is used. */
  air_pa: z.int().positive().nullable(),
  port: line,
  waveState: z.enum(waveStates),
  plates: z.enum(['soaked', 'dry']),
  isOpenEndUp: z.boolean(),
  dialType: z.enum(['plunger', 'lever']),
  /** Counts of the dial's face to one turn, such as 100. */
  dialFaceCounts: z.int().min(10).max(1000),
  /** Where the mark on the drum is. */
  mark: line,
});

/** Amounts here are base units of the check's quantity, not whole because they are means. */
const amount = z.number();

export const verdict = z.strictObject({
  word: z.enum(['in', 'tight', 'loose', 'too close to call', 'not judged']),
  /** How far outside the limit, for tight and loose. */
  by: amount.nullable(),
  probabilityConforming: z.number().nullable(),
  /** Why it is not judged, or why it is too close: one plain sentence, else empty. */
  reason: z.string(),
});

export const evaluation = z.strictObject({
  spots: z.array(
    z.strictObject({
      spot: z.int().positive(),
      degrees: z.number(),
      push: amount.nullable(),
      air: amount.nullable(),
      value: amount,
      reads: z.int().positive(),
    }),
  ),
  /** What is judged, as are the spots: a feeler reading less its bias, where there is one; any other as it was read. */
  mean: amount.nullable(),
  min: amount.nullable(),
  max: amount.nullable(),
  harmonic: z
    .strictObject({ amplitude: amount, loosestAtDegrees: z.number().nullable(), isCocked: z.boolean() })
    .nullable(),
  standardUncertainty: amount.nullable(),
  effectiveDegreesOfFreedom: z.number().nullable().describe('null means without limit, or unknown'),
  coverageFactor: z.number().nullable(),
  expanded: amount.nullable(),
  budget: z.array(
    z.strictObject({
      name: z.string(),
      /** "the shop’s own, 46 repeats", "starting value": what a line rests on, where that is not plain. */
      basis: z.string(),
      standardUncertainty: amount,
      share: z.number(),
    }),
  ),
  /** A feeler where the check is meant by air: its pairs with air, and their bias once they are enough to correct by. */
  feelerBias: z.strictObject({ pairs: z.int().nonnegative(), bias: amount.nullable(), meanAsRead: amount }).nullable(),
  /** The shop's rule and limit when the take began, which it is judged by whatever they are now. */
  decisionRule: settings.shape.decisionRule,
  unevenLimit_nm: settings.shape.unevenLimit_nm,
  verdict,
  /** Inside these the verdict is "in" under the shop's rule; null when the band is too narrow for this method. */
  acceptance: z.strictObject({ lower: amount.nullable(), upper: amount.nullable() }).nullable(),
  variantName: z.string().nullable(),
  /** What a person should know beside the number, one plain sentence each. */
  remarks: z.array(z.string()),
  /** What would decide it, when it is too close to call. */
  whatWouldDecide: z.string().nullable(),
  /** Spots to read once more, and why. */
  asks: z.array(z.strictObject({ spot: z.int().positive(), why: z.string() })),
});

/** What the shop's own repeats say of one reading by a method so far. */
const ownRepeatability = z.strictObject({
  /** One standard deviation, in nanometres; null without a single repeat. */
  standardDeviation_nm: amount.nullable(),
  repeats: z.int().nonnegative().describe('readings, less one for each spot of each take'),
  isUsed: z.boolean().describe('a take begun now leans on it and not on the starting value'),
});

export const noteKinds = ['lost zero', 'not back to zero', 'will not hold air', 'plates re-clocked', 'enough'] as const;

export const reading = z.strictObject({
  readingId: id,
  spot: z.int().positive(),
  typed: z.string(),
  method: z.enum(methods),
  push: amount.nullable(),
  air: amount.nullable(),
  /** What it says, in base units: the clearance, the middle of goes and stops, bore minus shaft, the drop. */
  value: amount.nullable(),
  /** The two numbers it lies between, where two were typed: bore and shaft, start and end, the dial at either end. */
  first: amount.nullable(),
  second: amount.nullable(),
  isAirOnly: z.boolean(),
  /** Said back at once: "27.0 thou · 0.686 mm". */
  saidBack: z.string(),
  at: instant,
  by: z.string(),
  supersededById: id.nullable(),
  supersedesId: id.nullable(),
  reason: z.string(),
});

export const take = z.strictObject({
  takeId: id,
  jobId: id,
  checkId: id,
  phase: z.enum(phases),
  mode: z.enum(['quick', 'final']),
  method: z.enum(methods),
  mockUpNumber: z.int().nonnegative().nullable(),
  note: line,
  setup: setup.nullable(),
  /** What read it; null where nobody said. */
  gauge: z.strictObject({ gaugeId: id, tag: z.string() }).nullable(),
  startedAt: instant,
  by: z.string(),
  readings: z.array(reading),
  notes: z.array(z.strictObject({ spot: z.int().positive(), what: z.enum(noteKinds), at: instant, by: z.string() })),
  evaluation,
});

export const readingsContract = {
  'readings.lastSetup': read(
    'the setup card to offer as "same as last time": of this check, else of this job, else none',
    z.strictObject({ jobId: id, checkId: id }),
    setup.nullable(),
  ),
  'readings.latestTake': read(
    'the newest take of a check, to go on where it stopped',
    z.strictObject({ jobId: id, checkId: id }),
    take.nullable(),
  ),
  'readings.getTake': read('one take with its readings and what they say', z.strictObject({ takeId: id }), take),
  'readings.listTakes': read(
    'every take of a check, oldest first',
    z.strictObject({ jobId: id, checkId: id }),
    z.array(take),
  ),
  'readings.getRepeatability': read(
    'how well one reading repeats, from the shop’s own newest takes, by each method whose repeats are pooled',
    nothing,
    z.strictObject({
      /** From so many repeats on they stand in place of the starting value. */
      enoughRepeats: z.int().positive(),
      air: ownRepeatability,
      dial: ownRepeatability,
      direct: ownRepeatability,
    }),
  ),
  'readings.startTake': write(
    'begin reading a check; of a pack it belongs to the newest mock-up',
    z.strictObject({
      jobId: id,
      checkId: id,
      phase: z.enum(phases),
      mode: z.enum(['quick', 'final']),
      /** How it is read; left out, the way the spec means it. Another way is judged with a remark. */
      method: z.enum(methods).optional(),
      setup: setup.nullable().describe('needed by air'),
      gaugeId: id.nullable().default(null).describe('which gauge reads it; none is allowed'),
      note: line.describe('what was changed before it: "bushing changed", "washer 78.0"'),
      by: id,
    }),
    z.strictObject({ takeId: id }),
  ),
  'readings.recordReading': write(
    'append one typed line at a spot',
    z.strictObject({
      takeId: id,
      spot: z.int().min(1).max(12),
      typed: requiredLine,
      /** The dial was zeroed again on the pressed plate, so air travel already holds the push-down. */
      isZeroedAgain: z.boolean().default(false),
      /** For a lone number by air, which is asked about otherwise. */
      meaning: z.enum(['air only', 'total']).nullable().default(null),
      heard: heardTrace.nullable().default(null).describe('the trace of a gauge’s line that it was accepted from'),
      by: id,
    }),
    z.strictObject({ readingId: id, take }),
  ),
  'readings.supersedeReading': write(
    'a reading was misread: put the right one in its place, with a reason',
    z.strictObject({
      readingId: id,
      typed: requiredLine,
      isZeroedAgain: z.boolean().default(false),
      meaning: z.enum(['air only', 'total']).nullable().default(null),
      reason: requiredLine,
      heard: heardTrace.nullable().default(null).describe('the trace of a gauge’s line that it was accepted from'),
      by: id,
    }),
    z.strictObject({ readingId: id, take }),
  ),
  'readings.noteAtSpot': write(
    'note what happened at a spot: lost zero, will not hold air, plates re-clocked',
    z.strictObject({ takeId: id, spot: z.int().min(1).max(12), what: z.enum(noteKinds), by: id }),
    done,
  ),
} as const;

export type Phase = (typeof phases)[number];
export type Setup = z.infer<typeof setup>;
export type Verdict = z.infer<typeof verdict>;
export type Evaluation = z.infer<typeof evaluation>;
export type Reading = z.infer<typeof reading>;
export type Take = z.infer<typeof take>;
export type OwnRepeatability = z.infer<typeof ownRepeatability>;
export type NoteKind = (typeof noteKinds)[number];
