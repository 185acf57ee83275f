// The stages a job goes through, what each asks for before a job moves past it, and the sign-off.
import { z } from 'zod';
import { done, id, instant, line, nothing, requiredLine } from '../contract/fields.ts';
import { read, write } from '../contract/method.ts';
import { needs } from './needs.ts';

const need = z.enum(needs);

export const stage = z.strictObject({
  stageId: id,
  name: requiredLine,
  isClosed: z.boolean(),
  /** What it asks for before a job moves past it. */
  needs: z.array(need),
});

export const missingNeed = z.strictObject({ stageId: id, stageName: z.string(), need, what: z.string() });

/** A need that was passed over, by whom and why. */
export const passedOver = z.strictObject({
  stageName: z.string(),
  need,
  what: z.string(),
  reason: z.string(),
  at: instant,
  by: z.string(),
});

export const signOffPlaces = ['on stand', 'in vehicle'] as const;

export const signOff = z.strictObject({
  place: z.enum(signOffPlaces),
  note: z.string(),
  at: instant,
  by: z.string(),
  /** Something was read, rebuilt or answered since, so it does not count any more. */
  isOutdated: z.boolean(),
});

export const stagesContract = {
  'jobs.listStages': read('the stages a job goes through, in order', nothing, z.array(stage)),
  'jobs.changeStageNeeds': write(
    'what a stage asks for before a job moves past it, from now on',
    z.strictObject({ stageId: id, needs: z.array(need).max(needs.length), by: id }),
    done,
  ),
  'jobs.moveToStage': write(
    'move a job to a stage: back at any time, forward when nothing is missing or with a reason why it goes on without',
    z.strictObject({ jobId: id, stageId: id, reason: line.default(''), by: id }),
    done,
  ),
  'jobs.listMissing': read(
    'what each of these jobs misses for its next stage',
    z.strictObject({ jobIds: z.array(id).max(50) }),
    z.array(z.strictObject({ jobId: id, nextStageId: id.nullable(), missing: z.array(missingNeed) })),
  ),
  'jobs.listWithStock': read(
    'what is open between a job and the stock: cores, and plates that came out and were not measured again',
    z.strictObject({ jobId: id }),
    z.strictObject({
      cores: z.array(
        z.strictObject({ coreId: id, direction: z.enum(['to send back', 'due to us']), what: z.string() }),
      ),
      plates: z.array(z.strictObject({ pieceId: id, what: z.string() })),
    }),
  ),
  'jobs.signOff': write(
    'sign a job off: what was built was checked, on the stand or in the vehicle',
    z.strictObject({ jobId: id, place: z.enum(signOffPlaces), note: line, by: id }),
    done,
  ),
} as const;

export type Stage = z.infer<typeof stage>;
export type SignOff = z.infer<typeof signOff>;
