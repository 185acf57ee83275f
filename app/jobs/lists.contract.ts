// The lists of a job: every line of its sheet's lists with what was answered to it, and where it stands.
import { z } from 'zod';
import { id, instant, line, requiredLine } from '../contract/fields.ts';
import { read, write } from '../contract/method.ts';
import { listTimes } from '../specs/spec-list.ts';
import { savedLine, savedList } from '../specs/specs.contract.ts';

/** What can be answered. Which kind fits a line is said in list-answers.ts. */
export const answer = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('done') }),
  z.strictObject({ kind: z.literal('not so') }),
  z.strictObject({ kind: z.literal('does not apply') }),
  z.strictObject({ kind: z.literal('counted'), count: z.int().nonnegative().max(999) }),
  z.strictObject({ kind: z.literal('chosen'), option: requiredLine }),
  z.strictObject({ kind: z.literal('written'), words: requiredLine }),
  z.strictObject({ kind: z.literal('changed'), from: requiredLine, to: requiredLine }),
  z.strictObject({
    kind: z.literal('stalled'),
    rpm: z.int().positive().max(20_000),
    seconds: z.int().positive().max(600),
  }),
]);

export const lineStandings = ['open', 'good', 'off', 'does not apply'] as const;

const given = z.strictObject({ answer, reason: line, at: instant, by: z.string() });

export const lineOfJob = savedLine.extend({
  /** The newest answer. */
  given: given.nullable(),
  /** How many answers stood before it. */
  earlier: z.int().nonnegative(),
  standing: z.enum(lineStandings),
  /** Good, does not apply, or off with a reason. */
  isSettled: z.boolean(),
});

export const listOfJob = savedList.extend({ lines: z.array(lineOfJob) });

export const listsContract = {
  'jobs.listListsOfJob': read(
    'the lists a job is gone through by, with their answers; those of one time, or all',
    z.strictObject({ jobId: id, when: z.enum(listTimes).nullable().default(null) }),
    z.array(listOfJob),
  ),
  'jobs.answerLine': write(
    'answer a line of a list; the newest answer counts, a reason says why it stands when it is off',
    z.strictObject({ jobId: id, lineId: id, answer, reason: line.default(''), by: id }),
    z.strictObject({ standing: z.enum(lineStandings), isSettled: z.boolean() }),
  ),
} as const;

export type Answer = z.infer<typeof answer>;
export type LineStanding = (typeof lineStandings)[number];
export type ListOfJob = z.infer<typeof listOfJob>;
export type LineOfJob = z.infer<typeof lineOfJob>;
export type GivenAnswer = z.infer<typeof given>;
