// Whom to call: builds that share something, who was put on the list and why, and what came of each call.
import { z } from 'zod';
import { done, id, instant, line, nothing, requiredLine } from '../contract/fields.ts';
import { read, write } from '../contract/method.ts';
import { distance } from '../jobs/distance.contract.ts';
import { printedFile } from '../stock/lists.contract.ts';
import { outcomes } from './causes.ts';
import { deliveredBuild, service } from './log.contract.ts';

const day = z.iso.date();
const jobNumber = z.int().positive();

/** What builds may have in common; a finding means the same part in the same condition within its family. */
export const sharedThing = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('batch'), batchId: id }),
  z.strictObject({ kind: z.literal('plate'), pieceId: id }),
  z.strictObject({ kind: z.literal('gauge'), gaugeCheckId: id }),
  z.strictObject({ kind: z.literal('finding'), findingId: id }),
]);

export const sharedKinds = ['batch', 'plate', 'gauge', 'finding', 'other'] as const;

/** A build somebody may have to call about, as it stands today. */
export const buildToCall = deliveredBuild.extend({
  /** Until today, or until it came back or came in again. */
  service,
  /** The newest ticket of the unit since, with what stood on it then. */
  seenSince: z.strictObject({ jobId: id, number: jobNumber, on: day, distance: distance.nullable() }).nullable(),
  cameBack: z.array(z.strictObject({ comebackId: id, number: jobNumber, cameBackOn: day, outcome: z.enum(outcomes) })),
});

export const buildThatShares = buildToCall.extend({
  /** One line each: "4 × KX3-FR-2, F2207", "Forward clearance could say tight". */
  what: z.array(z.string()),
  /** It is on the list already. */
  isOnList: z.boolean(),
});

export const cameOfCalls = ['reached', 'not reached', 'comes in', 'looked at', 'taken off'] as const;

export const callMade = z.strictObject({
  cameOfIt: z.enum(cameOfCalls),
  note: z.string(),
  at: instant,
  by: z.string(),
});

export const unitToCall = z.strictObject({
  unitToCallId: id,
  build: buildToCall,
  shares: z.enum(sharedKinds),
  what: z.string(),
  whatToCheck: z.string(),
  reason: z.string(),
  at: instant,
  by: z.string(),
  /** Newest first. */
  calls: z.array(callMade),
});

export const callsContract = {
  'comebacks.suggestShared': read(
    'what builds may share that holds these words; without words what is most likely asked for',
    z.strictObject({ text: line }),
    z.array(z.strictObject({ of: sharedThing, says: z.string(), more: z.string() })),
  ),
  'comebacks.listSharing': read(
    'delivered builds that share a batch, a plate, a gauge that was found out, or a finding; 300 at most',
    z.strictObject({ of: sharedThing }),
    z.strictObject({
      title: z.string(),
      builds: z.array(buildThatShares),
      /** Builds with it that have not left yet. */
      stillHere: z.int().nonnegative(),
      caution: z.string(),
    }),
  ),
  'comebacks.putOnList': write(
    'put delivered builds on the list of whom to call, with the reason and what to check',
    z.strictObject({
      jobIds: z.array(id).min(1, 'must name a build').max(300),
      shares: z.enum(sharedKinds),
      what: requiredLine,
      whatToCheck: line,
      reason: requiredLine,
      by: id,
    }),
    done,
  ),
  'comebacks.listToCall': read(
    'whom to call and what came of it, those still to be called first',
    nothing,
    z.array(unitToCall),
  ),
  'comebacks.noteCall': write(
    'write down what came of a call; taken off needs the reason',
    z.strictObject({ unitToCallId: id, cameOfIt: z.enum(cameOfCalls), note: line, by: id }),
    done,
  ),
  'comebacks.exportToCall': read('whom to call as a CSV file', nothing, printedFile),
  'comebacks.printToCall': read(
    'whom to call as a PDF',
    z.strictObject({ paper: z.enum(['letter', 'A4']).optional() }),
    z.strictObject({ fileName: z.string(), pdfBase64: z.string() }),
  ),
} as const;

export type SharedThing = z.infer<typeof sharedThing>;
export type BuildToCall = z.infer<typeof buildToCall>;
export type BuildThatShares = z.infer<typeof buildThatShares>;
export type UnitToCall = z.infer<typeof unitToCall>;
export type CameOfCall = (typeof cameOfCalls)[number];
