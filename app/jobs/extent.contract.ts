// What a job takes on: the whole rebuild, or a small job that goes through some of the stages with some of the sheet.
import { z } from 'zod';
import { done, id, instant, requiredLine } from '../contract/fields.ts';
import { write } from '../contract/method.ts';

export const extentOfJob = z.strictObject({
  /** "Reseal". */
  name: requiredLine,
  /** That it became the whole rebuild after all, and why. */
  widened: z.strictObject({ reason: z.string(), at: instant, by: z.string() }).nullable(),
});

export const extentContract = {
  'jobs.widenJob': write(
    'make a small job the whole rebuild, with the reason; it is never made smaller again',
    z.strictObject({ jobId: id, reason: requiredLine, by: id }),
    done,
  ),
} as const;

export type ExtentOfJob = z.infer<typeof extentOfJob>;
