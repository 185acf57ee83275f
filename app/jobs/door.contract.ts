// At the door: what a unit does and what was seen of it before anything came apart, earlier visits, calls, promises.
import { z } from 'zod';
import { done, id, instant, line, requiredLine, text } from '../contract/fields.ts';
import { read, write } from '../contract/method.ts';
import { warrantyInService } from './delivery.contract.ts';
import { distance } from './distance.contract.ts';

export const fluidLevels = ['not looked at', 'none on the stick', 'low', 'full', 'over full'] as const;
export const fluidColours = ['not looked at', 'clear red', 'dark red', 'brown', 'black', 'milky'] as const;
export const fluidSmells = ['not looked at', 'none', 'sharp', 'burnt'] as const;

/** What is found out with the unit still closed. */
export const diagnosis = z.strictObject({
  codes: line,
  fluidLevel: z.enum(fluidLevels),
  fluidColour: z.enum(fluidColours),
  fluidSmell: z.enum(fluidSmells),
  /** What lies in the pan. */
  pan: line,
  installedBy: line,
  /** What was changed in the vehicle since it last ran well. */
  vehicleChanges: line,
});

export const intake = z.strictObject({ complaint: text, diagnosis, at: instant, by: z.string() });

export const promise = z.strictObject({ on: z.iso.date(), reason: z.string(), at: instant, by: z.string() });

export const callDirections = ['they called', 'we called'] as const;
export const call = z.strictObject({
  callId: id,
  direction: z.enum(callDirections),
  withWhom: z.string(),
  said: z.string(),
  at: instant,
  by: z.string(),
});

export const visit = z.strictObject({
  jobId: id,
  number: z.int().positive(),
  openedAt: instant,
  stageName: z.string(),
  isClosed: z.boolean(),
  customerName: z.string(),
  complaint: z.string(),
  /** With which warranty it left; null where no delivery is written down. */
  left: warrantyInService.extend({ deliveredOn: z.iso.date(), distanceAtDelivery: distance.nullable() }).nullable(),
});

export const doorContract = {
  'jobs.listIntakes': read(
    'what was said and seen at the door, with every correction, newest first',
    z.strictObject({ jobId: id }),
    z.array(intake),
  ),
  'jobs.correctIntake': write(
    'write down anew what was said and seen at the door; the earlier words stay on record',
    z.strictObject({ jobId: id, complaint: text, diagnosis, by: id }),
    done,
  ),
  'jobs.listVisits': read(
    'every visit of a unit, or of any unit with this serial, newest first',
    z.strictObject({ unitId: id.nullable(), serial: line }),
    z.array(visit),
  ),
  'jobs.listPromises': read(
    'the days promised for a job, newest first',
    z.strictObject({ jobId: id }),
    z.array(promise),
  ),
  'jobs.promiseDay': write(
    'promise a day, or another day with the reason',
    z.strictObject({ jobId: id, on: z.iso.date(), reason: line, by: id }),
    done,
  ),
  'jobs.listCalls': read('the calls about a job, newest first', z.strictObject({ jobId: id }), z.array(call)),
  'jobs.logCall': write(
    'write a call down: who, what was said',
    z.strictObject({
      jobId: id,
      direction: z.enum(callDirections),
      withWhom: requiredLine,
      said: text.min(1, 'must not be empty'),
      by: id,
    }),
    done,
  ),
} as const;

export const blankDiagnosis: Diagnosis = {
  codes: '',
  fluidLevel: 'not looked at',
  fluidColour: 'not looked at',
  fluidSmell: 'not looked at',
  pan: '',
  installedBy: '',
  vehicleChanges: '',
};

export type Diagnosis = z.infer<typeof diagnosis>;
export type Intake = z.infer<typeof intake>;
export type DayPromised = z.infer<typeof promise>;
export type Call = z.infer<typeof call>;
export type Visit = z.infer<typeof visit>;
