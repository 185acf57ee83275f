// What teardown found, in and out of the file; only ever appended.
import type { FindingDecision } from '../../app/jobs/findings.contract.ts';
import type { Reading, Writing } from '../database/tables.ts';
import type { FindingCardsTable } from './findings.tables.ts';

type Stamp = { by: number; now: string };

export async function insertFinding(writing: Writing, jobId: number): Promise<number> {
  const { finding_id } = await writing
    .insertInto('findings')
    .values({ job_id: jobId })
    .returning('finding_id')
    .executeTakeFirstOrThrow();
  return finding_id;
}

export type CardToKeep = Pick<
  FindingCardsTable,
  'part' | 'pack_id' | 'slot_id' | 'place' | 'condition' | 'thickness_nm' | 'thickness_typed' | 'check_id' | 'note'
>;

export async function insertCard(
  writing: Writing,
  card: CardToKeep,
  more: Stamp & { findingId: number; isWithdrawn: boolean; reason: string },
): Promise<void> {
  await writing
    .insertInto('finding_cards')
    .values({
      ...card,
      finding_id: more.findingId,
      is_withdrawn: more.isWithdrawn ? 1 : 0,
      reason: more.reason,
      written_at: more.now,
      written_by: more.by,
    })
    .execute();
}

export async function insertDecision(
  writing: Writing,
  row: Stamp & { findingId: number; decision: FindingDecision; note: string },
): Promise<void> {
  await writing
    .insertInto('finding_decisions')
    .values({
      finding_id: row.findingId,
      decision: row.decision,
      note: row.note,
      decided_at: row.now,
      decided_by: row.by,
    })
    .execute();
}

export async function insertPin(
  writing: Writing,
  row: Stamp & { findingId: number; photoId: number; isPinned: boolean },
): Promise<void> {
  await writing
    .insertInto('finding_photos')
    .values({
      finding_id: row.findingId,
      photo_id: row.photoId,
      is_pinned: row.isPinned ? 1 : 0,
      pinned_at: row.now,
      pinned_by: row.by,
    })
    .execute();
}

export async function insertFindingLine(writing: Writing, row: Stamp & { findingId: number; lineId: number }) {
  await writing
    .insertInto('finding_lines')
    .values({ finding_id: row.findingId, job_line_id: row.lineId, linked_at: row.now, linked_by: row.by })
    .onConflict((same) => same.doNothing())
    .execute();
}

/** The job of a finding and its newest card, withdrawn or not. */
export function findFinding(reading: Reading, findingId: number) {
  return reading
    .selectFrom('findings')
    .innerJoin('finding_cards', 'finding_cards.finding_id', 'findings.finding_id')
    .selectAll('finding_cards')
    .select('findings.job_id')
    .where('findings.finding_id', '=', findingId)
    .orderBy('finding_card_id', 'desc')
    .limit(1)
    .executeTakeFirst();
}

export type CardRow = Awaited<ReturnType<typeof listCards>>[number];

/** Every card of a job, oldest first, as are the lists below. */
export function listCards(reading: Reading, jobId: number) {
  return reading
    .selectFrom('findings')
    .innerJoin('finding_cards', 'finding_cards.finding_id', 'findings.finding_id')
    .innerJoin('people', 'people.person_id', 'finding_cards.written_by')
    .selectAll('finding_cards')
    .select('people.initials')
    .where('findings.job_id', '=', jobId)
    .orderBy('finding_card_id')
    .execute();
}

export function listDecisions(reading: Reading, jobId: number) {
  return reading
    .selectFrom('findings')
    .innerJoin('finding_decisions', 'finding_decisions.finding_id', 'findings.finding_id')
    .innerJoin('people', 'people.person_id', 'finding_decisions.decided_by')
    .selectAll('finding_decisions')
    .select('people.initials')
    .where('findings.job_id', '=', jobId)
    .orderBy('finding_decision_id')
    .execute();
}

/** Every pinning and unpinning of photos that are still on the ticket. */
export function listPins(reading: Reading, jobId: number) {
  return reading
    .selectFrom('findings')
    .innerJoin('finding_photos', 'finding_photos.finding_id', 'findings.finding_id')
    .innerJoin('photos', 'photos.photo_id', 'finding_photos.photo_id')
    .innerJoin('people', 'people.person_id', 'finding_photos.pinned_by')
    .select(['finding_photos.finding_id', 'finding_photos.photo_id', 'is_pinned', 'pinned_at', 'people.initials'])
    .select('photos.caption')
    .where('findings.job_id', '=', jobId)
    .where('photos.removed_at', 'is', null)
    .orderBy('finding_photo_id')
    .execute();
}

export function listFindingLines(reading: Reading, jobId: number) {
  return reading
    .selectFrom('findings')
    .innerJoin('finding_lines', 'finding_lines.finding_id', 'findings.finding_id')
    .select(['finding_lines.finding_id', 'job_line_id'])
    .where('findings.job_id', '=', jobId)
    .execute();
}

/** What a stage may ask about: the parts nobody decided on. */
export function listUndecided(reading: Reading, jobId: number): Promise<{ part: string; pack_name: string | null }[]> {
  return reading
    .selectFrom('findings_as_known')
    .leftJoin('packs', 'packs.pack_id', 'findings_as_known.pack_id')
    .select(['part', 'packs.name as pack_name'])
    .where('job_id', '=', jobId)
    .where('decision', '=', 'not decided yet')
    .orderBy('finding_id')
    .execute();
}

/** Names of parts this shop wrote down before that hold every one of the words, the most frequent first. */
export function listPartsFoundBefore(reading: Reading, words: readonly string[], limit: number) {
  return words
    .reduce(
      (rows, word) => rows.where('part', 'like', `%${word}%`),
      reading.selectFrom('finding_cards').select(['part', (row) => row.fn.countAll<number>().as('times')]),
    )
    .where('slot_id', 'is', null)
    .groupBy('part')
    .orderBy('times', 'desc')
    .orderBy('part')
    .limit(limit)
    .execute();
}
