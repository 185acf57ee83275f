// Small jobs of a family, such as a reseal: which stages they go through, which checks and lists of the sheet they take.
import { z } from 'zod';
import { done, id, requiredLine } from '../contract/fields.ts';
import { read, write } from '../contract/method.ts';

/** Checks and lists go by their names, so that a small job outlives the revisions of a sheet. */
const parts = {
  name: requiredLine,
  stageIds: z.array(id).max(50),
  checkNames: z.array(requiredLine).max(200),
  listNames: z.array(requiredLine).max(50),
};

export const smallJob = z.strictObject({ smallJobId: id, ...parts });

export const smallJobsContract = {
  'specs.listSmallJobs': read('the small jobs of a family', z.strictObject({ familyId: id }), z.array(smallJob)),
  'specs.saveSmallJob': write(
    'keep a small job of a family; jobs that came in before stay as they were taken on',
    z.strictObject({ familyId: id, smallJobId: id.nullable(), ...parts, by: id }),
    z.strictObject({ smallJobId: id }),
  ),
  'specs.dropSmallJob': write(
    'take a small job off a family; jobs that came in under it keep it',
    z.strictObject({ smallJobId: id, by: id }),
    done,
  ),
} as const;

export type SmallJob = z.infer<typeof smallJob>;
