// What was answered to the lines of lists, in and out of the file.
import type { Answer } from '../../app/jobs/lists.contract.ts';
import type { Reading, Writing } from '../database/tables.ts';
import type { ListAnswersTable } from './jobs.tables.ts';

export type AnswerToKeep = {
  jobId: number;
  lineId: number;
  answer: Answer;
  reason: string;
  by: number;
  now: string;
};

export async function insertAnswer(writing: Writing, given: AnswerToKeep): Promise<void> {
  await writing.insertInto('list_answers').values(rowOfAnswer(given)).execute();
}

export function rowOfAnswer({ answer, ...given }: AnswerToKeep) {
  return {
    job_id: given.jobId,
    list_line_id: given.lineId,
    says: answer.kind,
    words:
      answer.kind === 'chosen'
        ? answer.option
        : answer.kind === 'written'
          ? answer.words
          : answer.kind === 'changed'
            ? answer.from
            : '',
    became: answer.kind === 'changed' ? answer.to : '',
    number: answer.kind === 'counted' ? answer.count : answer.kind === 'stalled' ? answer.rpm : null,
    seconds: answer.kind === 'stalled' ? answer.seconds : null,
    reason: given.reason,
    answered_at: given.now,
    answered_by: given.by,
  };
}

/** Every answer of a job, the first one first. */
export async function listAnswers(reading: Reading, jobId: number) {
  const rows = await reading
    .selectFrom('list_answers')
    .innerJoin('people', 'people.person_id', 'list_answers.answered_by')
    .selectAll('list_answers')
    .select('people.initials')
    .where('job_id', '=', jobId)
    .orderBy('list_answer_id')
    .execute();
  return rows.map((row) => ({
    lineId: row.list_line_id,
    given: { answer: answerOfRow(row), reason: row.reason, at: row.answered_at, by: row.initials },
  }));
}

// The table's CHECKs promise that the words and numbers a kind of answer needs are there.
export function answerOfRow(row: Pick<ListAnswersTable, 'says' | 'words' | 'became' | 'number' | 'seconds'>): Answer {
  switch (row.says) {
    case 'counted':
      return { kind: 'counted', count: row.number ?? 0 };
    case 'chosen':
      return { kind: 'chosen', option: row.words };
    case 'written':
      return { kind: 'written', words: row.words };
    case 'changed':
      return { kind: 'changed', from: row.words, to: row.became };
    case 'stalled':
      return { kind: 'stalled', rpm: row.number ?? 0, seconds: row.seconds ?? 0 };
    case 'done':
    case 'not so':
    case 'does not apply':
      return { kind: row.says };
  }
}
