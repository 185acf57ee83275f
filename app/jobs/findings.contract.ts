// What teardown found, part by part: its condition, what is left of it, what is done about it, and the photos of it.
import { z } from 'zod';
import { done, id, instant, length_nm, line, requiredLine } from '../contract/fields.ts';
import { read, write } from '../contract/method.ts';

export const conditions = [
  'good',
  'worn',
  'burnt',
  'glazed',
  'flaked',
  'warped',
  'heat-spotted',
  'scored',
  'cracked',
  'loose',
  'stuck',
  'leaking',
  'broken',
  'missing',
] as const;

export const findingDecisions = ['not decided yet', 'reuse', 'replace', 'machine'] as const;

/** Where in its pack a part lay. */
export const packPlaces = ['piston end', 'middle', 'ring end'] as const;

const written = {
  part: requiredLine,
  packId: id.nullable(),
  /** The slot of the pack it lay in; the place then follows. */
  slotId: id.nullable(),
  place: z.enum(packPlaces).nullable(),
  condition: z.enum(conditions),
  /** The check that measured it, if one did. */
  checkId: id.nullable(),
  note: line,
};

export const findingTyped = z.strictObject({
  ...written,
  thickness: line.describe('what is left of it, as typed; empty: not measured'),
});

const findingCard = z.strictObject({
  ...written,
  packName: z.string().nullable(),
  slotName: z.string().nullable(),
  thickness_nm: length_nm.positive().nullable(),
  thicknessTyped: z.string(),
  /** The height its slot expects, to hold what is left against. */
  nominal_nm: length_nm.positive().nullable(),
  /** Why it stands in place of the one before; empty for the first. */
  reason: z.string(),
  at: instant,
  by: z.string(),
});

const decided = z.strictObject({ decision: z.enum(findingDecisions), note: z.string(), at: instant, by: z.string() });

/** As it was written down last. */
export const finding = findingCard.extend({
  findingId: id,
  decision: decided,
  /** Oldest first, as are the decisions before the one that holds. */
  earlier: z.array(findingCard),
  earlierDecisions: z.array(decided),
  photoIds: z.array(id),
  /** It stands on the estimate. */
  isCharged: z.boolean(),
});

export const suggestedPart = z.strictObject({
  part: z.string(),
  packId: id.nullable(),
  slotId: id.nullable(),
  /** Where it is known from: "Forward", "found before", "KX3-BU-01, 3 on hand". */
  note: z.string(),
});

export const findingsContract = {
  'jobs.listFindings': read('what teardown found on a job, in order', z.strictObject({ jobId: id }), z.array(finding)),
  'jobs.suggestParts': read(
    'names of parts that hold these words: of the job’s packs, of what this shop found before, of the stock',
    z.strictObject({ jobId: id, text: line }),
    z.array(suggestedPart),
  ),
  'jobs.recordFinding': write(
    'write down what was found of one part',
    z.strictObject({ jobId: id, finding: findingTyped, decision: z.enum(findingDecisions), by: id }),
    z.strictObject({ findingId: id }),
  ),
  'jobs.correctFinding': write(
    'write a finding down anew; the earlier words stay on record',
    z.strictObject({ findingId: id, finding: findingTyped, reason: requiredLine, by: id }),
    done,
  ),
  'jobs.withdrawFinding': write(
    'a finding was none: it stays on record and counts no more',
    z.strictObject({ findingId: id, reason: requiredLine, by: id }),
    done,
  ),
  'jobs.decideFinding': write(
    'decide what is done about a finding',
    z.strictObject({ findingId: id, decision: z.enum(findingDecisions), note: line, by: id }),
    done,
  ),
  'jobs.pinPhoto': write(
    'pin a photo of the ticket to a finding, or take it off again',
    z.strictObject({ findingId: id, photoId: id, isPinned: z.boolean(), by: id }),
    done,
  ),
  'jobs.chargeFinding': write(
    'a line of the estimate is for this finding',
    z.strictObject({ findingId: id, lineId: id, by: id }),
    done,
  ),
} as const;

export type Condition = (typeof conditions)[number];
export type FindingDecision = (typeof findingDecisions)[number];
export type PackPlace = (typeof packPlaces)[number];
export type FindingTyped = z.infer<typeof findingTyped>;
export type FindingCard = z.infer<typeof findingCard>;
export type Finding = z.infer<typeof finding>;
export type SuggestedPart = z.infer<typeof suggestedPart>;
