// The lists a job is gone through by, and the answers to their lines.
import { listsWithin } from '../../app/jobs/extent.ts';
import { fittingAnswer, isSettled, standingOfLine } from '../../app/jobs/list-answers.ts';
import type { Answer, ListOfJob } from '../../app/jobs/lists.contract.ts';
import type { ListTime } from '../../app/specs/spec-list.ts';
import { accepted, found } from '../database/errors.ts';
import type { Reading, Writing } from '../database/tables.ts';
import { personAtWork } from '../shop/shop.service.ts';
import { listLists } from '../specs/lists.repository.ts';
import { extentOf } from './extent.repository.ts';
import { getJobRow, jobAtBench, jobAtWork } from './jobs.service.ts';
import { insertAnswer, listAnswers } from './lists.repository.ts';

export async function listListsOfJob(
  reading: Reading,
  { jobId, when }: { jobId: number; when: ListTime | null },
): Promise<ListOfJob[]> {
  const lists = await listsOfJob(reading, await getJobRow(reading, jobId));
  return lists.filter((list) => when === null || list.when === when);
}

export async function listsOfJob(reading: Reading, job: { job_id: number; revision_id: number }): Promise<ListOfJob[]> {
  const lists = listsWithin(await listLists(reading, job.revision_id), await extentOf(reading, job.job_id));
  if (lists.length === 0) return [];
  const answers = Map.groupBy(await listAnswers(reading, job.job_id), ({ lineId }) => lineId);
  return lists.map((list) => ({
    ...list,
    lines: list.lines.map((line) => {
      const all = answers.get(line.lineId) ?? [];
      const given = all.at(-1)?.given ?? null;
      const standing = standingOfLine(line.asks, given?.answer ?? null);
      return {
        ...line,
        given,
        earlier: Math.max(0, all.length - 1),
        standing,
        isSettled: isSettled(standing, given?.reason ?? ''),
      };
    }),
  }));
}

export function openLinesOf({ name, when, lines }: ListOfJob) {
  return { name, when, openLines: lines.filter((line) => !line.isSettled).length };
}

/** Appends the answer; the newest counts. Refuses a line that is not on the job's sheet, and an answer that does not fit. */
export async function answerLine(
  writing: Writing,
  now: string,
  input: { jobId: number; lineId: number; answer: Answer; reason: string; by: number },
) {
  await personAtWork(writing, input.by);
  // Once the unit has left, an answer may be put right with its reason; nothing new is answered.
  const answers = await listAnswers(writing, input.jobId);
  const isPutRight = input.reason !== '' && answers.some(({ lineId }) => lineId === input.lineId);
  const job = await (isPutRight ? jobAtWork : jobAtBench)(writing, input.jobId);
  const lists = listsWithin(await listLists(writing, job.revision_id), await extentOf(writing, input.jobId));
  const line = found(
    lists.flatMap(({ lines }) => lines).find(({ lineId }) => lineId === input.lineId),
    'line on this job’s sheet',
  );
  const answer = accepted(fittingAnswer(line.asks, input.answer), 'answer');
  await insertAnswer(writing, { ...input, answer, now });
  const standing = standingOfLine(line.asks, answer);
  return { standing, isSettled: isSettled(standing, input.reason) };
}
