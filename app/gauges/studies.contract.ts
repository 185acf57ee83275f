// Repeat tests: several hands read the same parts several times, in an order drawn by lot and blind to what was read.
import { z } from 'zod';
import { done, id, instant, line, nothing, requiredLine } from '../contract/fields.ts';
import { read, write } from '../contract/method.ts';
import { pooledMethods } from '../readings/take-figures.ts';

const head = z.strictObject({
  studyId: id,
  name: z.string(),
  method: z.enum(pooledMethods),
  gauge: z.strictObject({ gaugeId: id, tag: z.string() }).nullable(),
  parts: z.array(z.string()),
  people: z.array(z.strictObject({ personId: id, initials: z.string(), name: z.string() })),
  trials: z.int().positive(),
  tolerance_nm: z.int().positive().nullable(),
  startedAt: instant,
  by: z.string(),
  /** How many readings are taken, and of how many. */
  taken: z.int().nonnegative(),
  outOf: z.int().positive(),
});

const place = z.strictObject({ place: z.int().positive(), part: z.string(), initials: z.string(), round: z.int() });

const studyLine = z.strictObject({
  source: z.enum(['part', 'repeatability', 'reproducibility', 'interaction', 'gauge', 'total']),
  share: z.number().describe('of the total variance'),
  standardDeviation: z.number().describe('nm'),
  percentStudyVariation: z.number(),
  percentTolerance: z.number().nullable(),
});

export const studyResult = z.strictObject({
  sentence: z.string(),
  lines: z.array(studyLine),
  distinctCategories: z.number().nullable(),
  isPooled: z.boolean(),
  pInteraction: z.number().nullable(),
  byRanges: z.array(studyLine).nullable(),
  repeatability: z.strictObject({ standardDeviation: z.number(), degreesOfFreedom: z.number() }),
});

export const study = head.extend({
  /** What to read next; null once all is read. */
  next: place.nullable(),
  /** The reading before, which may have been misread; never what it said. */
  before: place.nullable(),
  results: studyResult.nullable(),
  /** Why there are none though all is read. */
  why: z.string().nullable(),
  /** What every cell holds, once all is read. */
  reads: z.array(
    z.strictObject({
      place: z.int().positive(),
      part: z.string(),
      initials: z.string(),
      round: z.int(),
      amount_nm: z.int(),
      typed: z.string(),
    }),
  ),
});

export const studiesContract = {
  'gauges.listStudies': read('the repeat tests, newest first', nothing, z.array(head)),
  'gauges.getStudy': read('a repeat test: what to read next, or what it says', z.strictObject({ studyId: id }), study),
  'gauges.startStudy': write(
    'begin a repeat test; its order is drawn by lot',
    z.strictObject({
      name: requiredLine,
      method: z.enum(pooledMethods),
      gaugeId: id.nullable(),
      parts: z.array(requiredLine).min(2).max(20),
      people: z.array(id).min(2).max(8),
      trials: z.int().min(2).max(10),
      tolerance: line.describe('the width of the band; empty: none'),
      by: id,
    }),
    z.strictObject({ studyId: id }),
  ),
  'gauges.recordStudyRead': write(
    'the reading that was asked for',
    z.strictObject({ studyId: id, place: z.int().positive(), typed: requiredLine, by: id }),
    done,
  ),
  'gauges.supersedeStudyRead': write(
    'a reading of the test was misread: put the right one in its place, with a reason',
    z.strictObject({ studyId: id, place: z.int().positive(), typed: requiredLine, reason: requiredLine, by: id }),
    done,
  ),
} as const;

export type StudyHead = z.infer<typeof head>;
export type Study = z.infer<typeof study>;
export type StudyResult = z.infer<typeof studyResult>;
