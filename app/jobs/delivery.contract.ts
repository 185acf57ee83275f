// Handing a unit over, and the warranty that runs from the day it goes into service.
import { z } from 'zod';
import { done, id, instant, line, requiredLine } from '../contract/fields.ts';
import { read, write } from '../contract/method.ts';
import { distance } from './distance.contract.ts';

/** What a shop stands in for, whichever comes first; nothing named is no warranty. */
export const warrantyTerms = z.strictObject({
  months: z.int().positive().max(240).nullable(),
  distance: z.strictObject({ amount: z.int().positive().max(10_000_000), unit: z.enum(['miles', 'km']) }).nullable(),
  passes: z.int().positive().max(100_000).nullable(),
});

export const handover = z.strictObject({
  deliveredTo: requiredLine,
  deliveredOn: z.iso.date(),
  /** What was on it when it left. */
  distance: distance.nullable(),
  handedOverById: id,
});

const stamp = { reason: z.string(), at: instant, by: z.string() };

export const delivery = handover.omit({ handedOverById: true }).extend({ handedOverBy: z.string(), ...stamp });

export const warrantyInService = z.strictObject({
  terms: warrantyTerms,
  /** The day the unit went into service; null until somebody says. */
  inServiceOn: z.iso.date().nullable(),
});

export const warranty = warrantyInService.extend(stamp);

export const deliveryOfJob = z.strictObject({
  delivery: delivery.nullable(),
  /** Superseded ones; null stands for a delivery taken back. */
  earlierDeliveries: z.array(z.union([delivery, z.strictObject({ deliveredOn: z.null(), ...stamp })])),
  warranty: warranty.nullable(),
  earlierWarranties: z.array(warranty),
  /** What this shop usually gives. */
  usualTerms: warrantyTerms,
});

export const deliveryContract = {
  'jobs.getDelivery': read(
    'whether a unit was handed over and how its warranty stands, with everything that was corrected, newest first',
    z.strictObject({ jobId: id }),
    deliveryOfJob,
  ),
  'jobs.deliver': write(
    'hand a unit over: to whom, when, what was on it, and the warranty it leaves with; its ticket goes on past that stage, with a reason where something is missing',
    z.strictObject({
      jobId: id,
      ...handover.shape,
      warranty: warrantyInService,
      reason: line.default('').describe('why it leaves without what its stages still ask for'),
      by: id,
    }),
    done,
  ),
  'jobs.correctDelivery': write(
    'write a delivery down anew with the reason; the earlier words stay on record',
    z.strictObject({ jobId: id, ...handover.shape, reason: requiredLine, by: id }),
    done,
  ),
  'jobs.takeBackDelivery': write(
    'the unit did not leave, or is back on the bench: the job can be read on again',
    z.strictObject({ jobId: id, reason: requiredLine, by: id }),
    done,
  ),
  'jobs.changeWarranty': write(
    'say from which day a unit is in service; another day or other terms with the reason',
    z.strictObject({ jobId: id, ...warrantyInService.shape, reason: line, by: id }),
    done,
  ),
} as const;

export type WarrantyTerms = z.infer<typeof warrantyTerms>;
export type WarrantyInService = z.infer<typeof warrantyInService>;
export type Warranty = z.infer<typeof warranty>;
export type Delivery = z.infer<typeof delivery>;
export type DeliveryOfJob = z.infer<typeof deliveryOfJob>;
export type Handover = z.infer<typeof handover>;
