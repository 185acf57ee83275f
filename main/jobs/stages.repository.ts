// Stages, what they ask for, and the moves of jobs from one to the next, in and out of the file.
import type { Need } from '../../app/jobs/needs.ts';
import type { StageOnTheWay } from '../../app/jobs/stage-moves.ts';
import type { SignOff, Stage } from '../../app/jobs/stages.contract.ts';
import type { Reading, Writing } from '../database/tables.ts';

export async function listStages(reading: Reading): Promise<Stage[]> {
  const rows = await reading.selectFrom('stages').selectAll().orderBy('position').execute();
  const asked = await reading.selectFrom('stage_needs').selectAll().execute();
  return rows.map((row) => ({
    stageId: row.stage_id,
    name: row.name,
    isClosed: row.is_closed === 1,
    needs: asked.filter((each) => each.stage_id === row.stage_id).map(({ need }) => need),
  })) satisfies StageOnTheWay[];
}

export async function replaceStageNeeds(writing: Writing, stageId: number, needs: readonly Need[]): Promise<void> {
  await writing.deleteFrom('stage_needs').where('stage_id', '=', stageId).execute();
  for (const need of new Set(needs)) {
    await writing.insertInto('stage_needs').values({ stage_id: stageId, need }).execute();
  }
}

export async function enterStage(
  writing: Writing,
  entry: { jobId: number; stageId: number; by: number; now: string },
): Promise<number> {
  const { stage_entry_id } = await writing
    .insertInto('stage_entries')
    .values({ job_id: entry.jobId, stage_id: entry.stageId, entered_at: entry.now, entered_by: entry.by })
    .returning('stage_entry_id')
    .executeTakeFirstOrThrow();
  return stage_entry_id;
}

export async function insertPassedOver(
  writing: Writing,
  stageEntryId: number,
  passed: { stageId: number; need: Need; what: string },
  reason: string,
): Promise<void> {
  await writing
    .insertInto('needs_passed_over')
    .values({
      stage_entry_id: stageEntryId,
      stage_id: passed.stageId,
      need: passed.need,
      what: passed.what,
      reason,
    })
    .execute();
}

export function listPassedOver(reading: Reading, jobId: number) {
  return reading
    .selectFrom('needs_passed_over')
    .innerJoin('stage_entries', 'stage_entries.stage_entry_id', 'needs_passed_over.stage_entry_id')
    .innerJoin('stages', 'stages.stage_id', 'needs_passed_over.stage_id')
    .innerJoin('people', 'people.person_id', 'stage_entries.entered_by')
    .select([
      'needs_passed_over.stage_entry_id',
      'stages.name',
      'need',
      'what',
      'reason',
      'stage_entries.entered_at',
      'people.initials',
    ])
    .where('stage_entries.job_id', '=', jobId)
    .orderBy('stage_entries.stage_entry_id')
    .orderBy('stages.position')
    .execute();
}

export async function insertSignOff(
  writing: Writing,
  signOff: { jobId: number; place: SignOff['place']; note: string; by: number; now: string },
): Promise<void> {
  await writing
    .insertInto('sign_offs')
    .values({
      job_id: signOff.jobId,
      place: signOff.place,
      note: signOff.note,
      signed_at: signOff.now,
      signed_by: signOff.by,
    })
    .execute();
}

export function listSignOffs(reading: Reading, jobId: number) {
  return reading
    .selectFrom('sign_offs')
    .innerJoin('people', 'people.person_id', 'sign_offs.signed_by')
    .selectAll('sign_offs')
    .select('people.initials')
    .where('job_id', '=', jobId)
    .orderBy('sign_off_id')
    .execute();
}

/** When something was last read, rebuilt or answered on a job; null where nothing was. */
export async function lastWorkedAt(reading: Reading, jobId: number): Promise<string | null> {
  const read = await reading
    .selectFrom('readings')
    .innerJoin('takes', 'takes.take_id', 'readings.take_id')
    .where('takes.job_id', '=', jobId)
    .select((row) => row.fn.max('taken_at').as('at'))
    .executeTakeFirst();
  const rebuilt = await reading
    .selectFrom('mock_ups')
    .where('job_id', '=', jobId)
    .select((row) => row.fn.max('made_at').as('at'))
    .executeTakeFirst();
  const answered = await reading
    .selectFrom('list_answers')
    .innerJoin('list_lines', 'list_lines.list_line_id', 'list_answers.list_line_id')
    .innerJoin('lists', 'lists.list_id', 'list_lines.list_id')
    .where('job_id', '=', jobId)
    .where('gone_through', '<>', 'delivery')
    .select((row) => row.fn.max('answered_at').as('at'))
    .executeTakeFirst();
  return (
    [read?.at, rebuilt?.at, answered?.at]
      .filter((at) => at != null)
      .toSorted()
      .at(-1) ?? null
  );
}

export function openCoresOf(reading: Reading, jobId: number) {
  return reading
    .selectFrom('cores')
    .leftJoin('core_settlements', 'core_settlements.core_id', 'cores.core_id')
    .select(['cores.core_id', 'direction', 'what', 'quantity'])
    .where('job_id', '=', jobId)
    .where('core_settlements.core_id', 'is', null)
    .orderBy('cores.core_id')
    .execute();
}

/** Single plates that sat in a pack of this job, are in none now, and were not measured since they came out. */
export function unmeasuredPlatesOf(reading: Reading, jobId: number) {
  return (
    reading
      .selectFrom('mock_ups')
      .innerJoin('mock_up_pieces', 'mock_up_pieces.mock_up_id', 'mock_ups.mock_up_id')
      .innerJoin('pieces_as_known', 'pieces_as_known.piece_id', 'mock_up_pieces.piece_id')
      .innerJoin('packs', 'packs.pack_id', 'mock_ups.pack_id')
      .leftJoin('discards', 'discards.piece_id', 'mock_up_pieces.piece_id')
      .leftJoin('can_returns', 'can_returns.piece_id', 'mock_up_pieces.piece_id')
      .select(['pieces_as_known.piece_id', 'kind', 'tag', 'height_nm', 'packs.name as pack_name'])
      .where('mock_ups.job_id', '=', jobId)
      .where('discards.piece_id', 'is', null)
      .where('can_returns.piece_id', 'is', null)
      // The newest mock-up that names the plate is not the newest of its pack: it came out with the one after.
      .where((row) =>
        row.not(
          row.exists(
            row
              .selectFrom('mock_up_pieces as again')
              .whereRef('again.piece_id', '=', 'mock_up_pieces.piece_id')
              .whereRef('again.mock_up_id', '>', 'mock_ups.mock_up_id')
              .select('again.mock_up_id'),
          ),
        ),
      )
      .where((row) =>
        row.exists(
          row
            .selectFrom('mock_ups as next')
            .whereRef('next.job_id', '=', 'mock_ups.job_id')
            .whereRef('next.pack_id', '=', 'mock_ups.pack_id')
            .where('next.number', '=', (next) => next('mock_ups.number', '+', 1))
            .whereRef('next.made_at', '>=', 'pieces_as_known.measured_at')
            .select('next.mock_up_id'),
        ),
      )
      .orderBy('packs.position')
      .orderBy('pieces_as_known.piece_id')
      .execute()
  );
}
