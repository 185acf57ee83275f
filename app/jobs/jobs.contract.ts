// The ticket: from check-in through its stages, with every check of the spec and where it stands.
import { z } from 'zod';
import { done, id, instant, line, requiredLine, text } from '../contract/fields.ts';
import { read, write } from '../contract/method.ts';
import { customer } from '../customers/customers.contract.ts';
import { phases, verdict } from '../readings/readings.contract.ts';
import { exported, exportInto } from '../shop/export.contract.ts';
import { methods } from '../specs/spec-sheet.ts';
import { savedCheck } from '../specs/specs.contract.ts';
import { unit, uses } from '../units/units.contract.ts';
import { deliveryContract } from './delivery.contract.ts';
import { distance } from './distance.contract.ts';
import { blankDiagnosis, diagnosis, doorContract, intake, promise } from './door.contract.ts';
import { estimateContract } from './estimate.contract.ts';
import { extentContract, extentOfJob } from './extent.contract.ts';
import { findingsContract } from './findings.contract.ts';
import { historyContract } from './history.contract.ts';
import { listsContract } from './lists.contract.ts';
import { missingNeed, passedOver, signOff, stage, stagesContract } from './stages.contract.ts';

/** Where a check stands after one take. Amounts are base units of the check's quantity. */
export const standing = z.strictObject({
  takeId: id,
  /** How it was read, which may be another way than the spec means. */
  method: z.enum(methods),
  phase: z.enum(phases),
  mockUpNumber: z.int().nonnegative().nullable(),
  value: z.number().nullable(),
  min: z.number().nullable(),
  max: z.number().nullable(),
  expanded: z.number().nullable(),
  spots: z.int().nonnegative(),
  /** Spots of it where nothing was read yet; none where somebody said that it is enough. */
  unreadSpots: z.int().nonnegative(),
  verdict,
  variantName: z.string().nullable(),
  note: line,
  remarks: z.array(z.string()),
  supersededCount: z.int().nonnegative(),
  at: instant,
  by: z.string(),
});

export const checkOfJob = savedCheck.extend({
  asFound: standing.nullable(),
  /** The newest take of any phase: where the check stands now. */
  latest: standing.nullable(),
  override: z.strictObject({ by: z.string(), reason: z.string(), at: instant }).nullable(),
});

export const job = z.strictObject({
  jobId: id,
  number: z.int().positive(),
  customer,
  unit,
  revisionNumber: z.int().positive(),
  /** As it was written down last. */
  complaint: text,
  diagnosis: intake.shape.diagnosis,
  caseTag: line,
  distance: distance.nullable(),
  /** The small job it came in as; null: the whole rebuild. */
  extent: extentOfJob.nullable(),
  openedAt: instant,
  openedBy: z.string(),
  promised: promise.nullable(),
  signOff: signOff.nullable(),
  /** The day it was handed over; from then on nothing more is read or built on it. */
  deliveredOn: z.iso.date().nullable(),
  isClosed: z.boolean(),
  stageId: id,
  stages: z.array(
    stage.extend({
      enteredAt: instant.nullable(),
      enteredBy: z.string().nullable(),
      /** What it asks for and has not got as the job stands. */
      missing: z.array(missingNeed),
    }),
  ),
  /** What the job went on without, in order. */
  passedOver: z.array(passedOver),
  packs: z.array(z.strictObject({ packId: id, name: requiredLine, mockUpNumber: z.int().nonnegative().nullable() })),
  checks: z.array(checkOfJob),
  /** What the readings decided between: "sealing-ring groove: 90 wide". */
  variants: z.array(z.strictObject({ checkName: z.string(), variantName: z.string() })),
  /** What is open before the unit can go, first things first. */
  missing: z.array(z.strictObject({ checkId: id, what: z.string() })),
});

export const jobLine = z.strictObject({
  jobId: id,
  number: z.int().positive(),
  stageId: id,
  stageName: z.string(),
  isClosed: z.boolean(),
  openedAt: instant,
  /** When it came into its stage, and who moved it there. */
  enteredAt: instant,
  enteredBy: z.string(),
  promisedOn: z.iso.date().nullable(),
  deliveredOn: z.iso.date().nullable(),
  /** "Reseal"; empty for the whole rebuild. */
  extentName: z.string(),
  customerName: z.string(),
  familyName: z.string(),
  serial: z.string(),
  vehicle: z.string(),
  use: z.enum(uses),
  complaint: z.string(),
});

export const copies = ['shop', 'customer'] as const;

export const jobsContract = {
  ...estimateContract,
  ...stagesContract,
  ...doorContract,
  ...deliveryContract,
  ...extentContract,
  ...historyContract,
  ...listsContract,
  ...findingsContract,
  'jobs.listJobs': read(
    'jobs of which anything written down holds each of these words or parts of words, newest first, 500 at most',
    z.strictObject({ text: line, includeClosed: z.boolean() }),
    z.array(jobLine),
  ),
  'jobs.getJob': read('the whole ticket', z.strictObject({ jobId: id }), job),
  'jobs.checkIn': write(
    'open a ticket for a unit that came in',
    z.strictObject({
      customer: z.union([
        z.strictObject({ customerId: id }),
        z.strictObject({ name: requiredLine, phone: line, email: line }),
      ]),
      unit: z.union([
        z.strictObject({ unitId: id }),
        z.strictObject({ familyId: id, serial: line, vehicle: line, use: z.enum(uses) }),
      ]),
      complaint: text,
      caseTag: line,
      distance: distance.nullable(),
      diagnosis: diagnosis.default(blankDiagnosis),
      promisedOn: z.iso.date().nullable().default(null),
      /** A small job of the unit's family; null: the whole rebuild. */
      smallJobId: id.nullable().default(null),
      by: id,
    }),
    z.strictObject({ jobId: id, number: z.int().positive() }),
  ),
  'jobs.overrideCheck': write(
    'let a check stand as it is, with a reason',
    z.strictObject({ jobId: id, checkId: id, reason: requiredLine, by: id }),
    done,
  ),
  'jobs.printBuildReport': read(
    'the build report as a PDF',
    z.strictObject({ jobId: id, copy: z.enum(copies), paper: z.enum(['letter', 'A4']).optional() }),
    z.strictObject({ fileName: z.string(), pdfBase64: z.string() }),
  ),
  'jobs.exportJob': read(
    'one job as a folder: its papers, its photos, its readings and all that was written down of it',
    z.strictObject({ jobId: id, folder: exportInto }),
    exported,
  ),
} as const;

export type Job = z.infer<typeof job>;
export type JobLine = z.infer<typeof jobLine>;
export type CheckOfJob = z.infer<typeof checkOfJob>;
export type Standing = z.infer<typeof standing>;
