// A unit that came back: on which ticket, held against which build, what came of it, and why.
import { z } from 'zod';
import { done, id, instant, line, requiredLine, text } from '../contract/fields.ts';
import { read, write } from '../contract/method.ts';
import { customer } from '../customers/customers.contract.ts';
import { warrantyInService } from '../jobs/delivery.contract.ts';
import { distance } from '../jobs/distance.contract.ts';
import { jobsContract } from '../jobs/jobs.contract.ts';
import { unit } from '../units/units.contract.ts';
import { causes, certainties, coverings, outcomes } from './causes.ts';

const day = z.iso.date();
const cents = z.int().nonnegative();
const jobNumber = z.int().positive();

/** A build that left, and the warranty it left with. */
export const deliveredBuild = z.strictObject({
  jobId: id,
  number: jobNumber,
  unit,
  customer: customer.omit({ note: true }),
  caseTag: line,
  deliveredOn: day,
  left: warrantyInService.extend({ distanceAtDelivery: distance.nullable() }),
});

const returned = z.strictObject({ comebackId: id, jobId: id, number: jobNumber, cameBackOn: day });

export const buildToHold = deliveredBuild.extend({
  /** Open tickets of the same unit that are held against no build yet. */
  openTickets: z.array(z.strictObject({ jobId: id, number: jobNumber, openedAt: instant, complaint: text })),
  /** What it came back as before, newest first. */
  cameBack: z.array(returned),
});

const written = {
  cameBackOn: day,
  customerSays: text,
  /** What was on it at return. */
  distance: distance.nullable(),
  outcome: z.enum(outcomes),
  covered: z.enum(coverings),
  coveredNote: line,
  note: text,
};

/** Everything that is written of a comeback beside its causes; the newest counts. */
export const comebackCard = z.strictObject({
  ...written,
  cost_cents: cents.nullable(),
  /** Why it stands in place of the one before; empty for the first. */
  reason: z.string(),
  at: instant,
  by: z.string(),
});

export const causeSaid = z.strictObject({
  cause: z.enum(causes),
  /** A pack of the recorded build, or the whole unit. */
  packId: id.nullable(),
  packName: z.string().nullable(),
  certainty: z.enum([...certainties, 'taken back']),
  note: z.string(),
  at: instant,
  by: z.string(),
});

/** Whole days of service until the return, counted from the day in service or, where nobody said it, from delivery. */
export const service = z.strictObject({
  from: day,
  isAssumed: z.boolean(),
  days: z.int(),
  /** Since delivery; null where it was not written down at both ends in one unit. */
  used: distance.nullable(),
});

export const comeback = z.strictObject({
  comebackId: id,
  build: deliveredBuild,
  ticket: z.strictObject({
    jobId: id,
    number: jobNumber,
    stageName: z.string(),
    isClosed: z.boolean(),
    openedAt: instant,
    deliveredOn: day.nullable(),
  }),
  service,
  card: comebackCard,
  /** Newest first. */
  earlierCards: z.array(comebackCard),
  /** As they stand, in the order they were first said. */
  causes: z.array(causeSaid),
  /** Whatever was said of a cause and stands no more, newest first. */
  earlierCauses: z.array(causeSaid),
  /** Packs of the build that a cause may lie in. */
  packs: z.array(z.strictObject({ packId: id, name: z.string() })),
  /** What the lines of the return ticket come to before tax; null: it has none. */
  lines_cents: z.int().nullable(),
  /** What is recorded on the return ticket. */
  recorded: z.strictObject({
    asFoundChecks: z.int().nonnegative(),
    findings: z.int().nonnegative(),
    photos: z.int().nonnegative(),
  }),
});

export const comebackLine = z.strictObject({
  comebackId: id,
  jobId: id,
  number: jobNumber,
  builtJobId: id,
  builtNumber: jobNumber,
  familyName: z.string(),
  serial: z.string(),
  vehicle: z.string(),
  customerName: z.string(),
  cameBackOn: day,
  service,
  outcome: z.enum(outcomes),
  covered: z.enum(coverings),
  cost_cents: cents.nullable(),
  /** Known and suspected ones, each once. */
  causes: z.array(z.enum(causes)),
});

export const comebackFilters = ['all', 'open', 'ours'] as const;

/** A ticket already open, or one that is opened with the comeback in one act. */
const ticket = z.union([
  z.strictObject({ jobId: id }),
  z.strictObject({ checkIn: jobsContract['jobs.checkIn'].input.omit({ by: true }) }),
]);

export const logContract = {
  'comebacks.findBuilds': read(
    'delivered builds of the units that hold these words: case tag, serial, job number, customer; newest first',
    z.strictObject({ text: line }),
    z.array(buildToHold),
  ),
  'comebacks.logComeback': write(
    'hold a ticket against a build that came back, opening the ticket if there is none',
    z.strictObject({
      builtJobId: id,
      ticket,
      cameBackOn: day,
      customerSays: text,
      distance: distance.nullable(),
      covered: z.enum(coverings),
      coveredNote: line,
      by: id,
    }),
    z.strictObject({ comebackId: id, jobId: id, number: jobNumber }),
  ),
  'comebacks.listComebacks': read(
    'units that came back, newest first, 500 at most',
    z.strictObject({ only: z.enum(comebackFilters) }),
    z.array(comebackLine),
  ),
  'comebacks.getComeback': read(
    'one comeback with everything said of it',
    z.strictObject({ comebackId: id }),
    comeback,
  ),
  'comebacks.listOfJob': read(
    'the build a ticket is held against, and the tickets its own build came back as',
    z.strictObject({ jobId: id }),
    z.strictObject({
      heldAgainst: z
        .strictObject({ comebackId: id, jobId: id, number: jobNumber, outcome: z.enum(outcomes) })
        .nullable(),
      cameBack: z.array(returned),
    }),
  ),
  'comebacks.writeCard': write(
    'write down anew what a comeback turned out to be; the earlier words stay on record',
    z.strictObject({
      comebackId: id,
      ...written,
      cost: line.describe('money as typed; empty: not known'),
      reason: line,
      by: id,
    }),
    done,
  ),
  'comebacks.sayCause': write(
    'say of a cause, in a pack or in the whole unit, that it is known, suspected or not found',
    z.strictObject({
      comebackId: id,
      cause: z.enum(causes),
      packId: id.nullable(),
      certainty: z.enum(certainties),
      note: line,
      by: id,
    }),
    done,
  ),
  'comebacks.takeBackCause': write(
    'what was said of a cause was a mistake: it stays on record and counts no more',
    z.strictObject({ comebackId: id, cause: z.enum(causes), packId: id.nullable(), reason: requiredLine, by: id }),
    done,
  ),
} as const;

export type DeliveredBuild = z.infer<typeof deliveredBuild>;
export type BuildToHold = z.infer<typeof buildToHold>;
export type ComebackCard = z.infer<typeof comebackCard>;
export type CauseSaid = z.infer<typeof causeSaid>;
export type Service = z.infer<typeof service>;
export type Comeback = z.infer<typeof comeback>;
export type ComebackLine = z.infer<typeof comebackLine>;
export type ComebackFilter = (typeof comebackFilters)[number];
