// The trace of one comeback: what on record of the build is unusual, what was found, and which cause it speaks for.
import { z } from 'zod';
import { id } from '../contract/fields.ts';
import { read } from '../contract/method.ts';
import { copies } from '../jobs/jobs.contract.ts';
import { quantities, unitNames } from '../quantities/units.ts';
import { causes, certainties } from './causes.ts';
import { tellings } from './what-a-check-tells.ts';

/** What of the ticket shows what a sentence says. */
export const opens = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('check'), jobId: id, checkId: id, takeId: id.nullable() }),
  z.strictObject({ kind: z.literal('lists'), jobId: id }),
  z.strictObject({ kind: z.literal('packs'), jobId: id }),
  z.strictObject({ kind: z.literal('batch'), partId: id, batchId: id }),
  z.strictObject({ kind: z.literal('teardown'), jobId: id }),
]);

export const findingKinds = [
  'place',
  'tightest spot',
  'uneven',
  'verdict',
  'override',
  'method',
  'setup',
  'not read',
  'line',
  'plates',
  'batch',
  'builder',
] as const;

export const traceFinding = z.strictObject({
  /** "Forward clearance": findings of one subject stand together. */
  subject: z.string(),
  kind: z.enum(findingKinds),
  sentence: z.string(),
  /** The chance of a build as unusual or more; null where it is told and not ranked. */
  p: z.number().nullable(),
  /** The chance of any unusual value of it. */
  byChance: z.number(),
  /** Worth a line whatever the others are: outside, overridden, off, never read. */
  isNotable: z.boolean(),
  /** How many of the others it was held against. */
  siblings: z.int().nonnegative(),
  /** Where it lies among them, in base units of `quantity`; null where it is no number. */
  place: z
    .strictObject({
      amount: z.number(),
      others: z.array(z.number()),
      low: z.number().nullable(),
      high: z.number().nullable(),
      quantity: z.enum(quantities),
      unit: z.enum(unitNames),
      side: z.enum(['low', 'high']).nullable(),
      distance: z.number(),
      middle: z.number().nullable(),
    })
    .nullable(),
  telling: z.enum(tellings).nullable(),
  packName: z.string().nullable(),
  opens: opens.nullable(),
});

/** One check as built and as found when it came back. */
export const asFoundNow = z.strictObject({
  name: z.string(),
  telling: z.enum(tellings),
  packName: z.string().nullable(),
  quantity: z.enum(quantities),
  unit: z.enum(unitNames),
  built: z.strictObject({ amount: z.number().nullable(), expanded: z.number().nullable() }),
  found: z.strictObject({ amount: z.number(), expanded: z.number().nullable() }),
  difference: z.number().nullable(),
  expanded: z.number().nullable(),
  says: z.enum(['more', 'less', 'no more than the readings can explain', 'not known']),
  sentence: z.string(),
  opens,
});

/** A part as the return teardown found it. */
export const foundPart = z.strictObject({
  words: z.string(),
  condition: z.string(),
  /** "9.0 thou gone"; empty where it was not measured. */
  gone: z.string(),
  note: z.string(),
});

export const causeLine = z.strictObject({
  /** What is on record. */
  sentence: z.string(),
  /** Why that matters to this cause, or how to look. */
  because: z.string(),
  opens: opens.nullable(),
});

export const causeOfTrace = z.strictObject({
  cause: z.enum(causes),
  /** What a person wrote down of it; null where nobody did. */
  certainty: z.enum(certainties).nullable(),
  speaksFor: z.array(causeLine),
  speaksAgainst: z.array(causeLine),
  lookNow: z.array(causeLine),
});

export const trace = z.strictObject({
  comebackId: id,
  returnJobId: id,
  returnJobNumber: z.int().positive(),
  builtJobId: id,
  builtJobNumber: z.int().positive(),
  familyName: z.string(),
  /** How many builds of the family it is held against. */
  siblings: z.int().nonnegative(),
  /** There are more: these are the nearest in the order they came in. */
  areNearest: z.boolean(),
  enoughSiblings: z.int().positive(),
  /** Most unusual first; then what is only told. */
  findings: z.array(traceFinding),
  looks: z.strictObject({
    /** Facts that were ranked. */
    ranked: z.int().nonnegative(),
    unusual: z.int().nonnegative(),
    /** How many as unusual would turn up by chance. */
    byChance: z.number(),
    sentence: z.string(),
  }),
  asFound: z.array(asFoundNow),
  foundParts: z.array(foundPart),
  /** Per pack: what the plates lost beside what the clearance gained. */
  wear: z.array(z.string()),
  causes: z.array(causeOfTrace),
  wouldSettle: z.array(z.string()),
});

export const traceContract = {
  'comebacks.trace': read(
    'the recorded build of a comeback beside its siblings, most unusual first, and what speaks for each cause',
    z.strictObject({ comebackId: id }),
    trace,
  ),
  'comebacks.printReport': read(
    'the report of a comeback as a PDF: for the shop with its trace, or a short one for the customer',
    z.strictObject({ comebackId: id, copy: z.enum(copies), paper: z.enum(['letter', 'A4']).optional() }),
    z.strictObject({ fileName: z.string(), pdfBase64: z.string() }),
  ),
} as const;

export type Opens = z.infer<typeof opens>;
export type TraceFinding = z.infer<typeof traceFinding>;
export type AsFoundNow = z.infer<typeof asFoundNow>;
export type FoundPart = z.infer<typeof foundPart>;
export type CauseLine = z.infer<typeof causeLine>;
export type CauseOfTrace = z.infer<typeof causeOfTrace>;
export type Trace = z.infer<typeof trace>;
