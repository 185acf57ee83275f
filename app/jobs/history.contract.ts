// Every act on a job in order, on the screen and on paper, and the blank sheet for the day the machine is dead.
import { z } from 'zod';
import { id, instant } from '../contract/fields.ts';
import { read } from '../contract/method.ts';

export const actKinds = [
  'door',
  'stage',
  'went on without',
  'promise',
  'call',
  'mock-up',
  'reading',
  'misread',
  'decision',
  'finding',
  'list',
  'part',
  'core',
  'estimate',
  'photo',
  'sign-off',
  'delivery',
  'comeback',
] as const;

export const act = z.strictObject({
  at: instant,
  by: z.string(),
  kind: z.enum(actKinds),
  /** What was done: "Forward clearance, final: 26.0 ± 1.5 thou, in". */
  says: z.string(),
  /** The rest of it, or empty: a note, a reason, what was swapped. */
  more: z.string(),
  checkId: id.nullable(),
});

const paper = z.enum(['letter', 'A4']).optional();
const printed = z.strictObject({ fileName: z.string(), pdfBase64: z.string() });

export const historyContract = {
  'jobs.getHistory': read('every act on a job, the first one first', z.strictObject({ jobId: id }), z.array(act)),
  'jobs.printBuildSheet': read('the history of a job as a PDF', z.strictObject({ jobId: id, paper }), printed),
  'jobs.printBenchSheet': read(
    'a blank bench sheet as a PDF: packs and checks of a family’s newest sheet, or of the sheet a job is built by',
    z.strictObject({ of: z.union([z.strictObject({ familyId: id }), z.strictObject({ jobId: id })]), paper }),
    printed,
  ),
} as const;

export type Act = z.infer<typeof act>;
export type ActKind = (typeof actKinds)[number];
