// Recorded builds as the trace holds them beside one another, gathered off the shelf and from what was answered.
import type { LineOfList, RecordedBuild, RecordedCheck, RecordedLine } from '../../app/comebacks/recorded-build.ts';
import { checksWithin, type Extent, listsWithin } from '../../app/jobs/extent.ts';
import { standingOfLine } from '../../app/jobs/list-answers.ts';
import { writeDay } from '../../app/papers/dates.ts';
import type { Reading } from '../database/tables.ts';
import { answerOfRow } from '../jobs/lists.repository.ts';
import { listChecks } from '../specs/checks-of-sheets.repository.ts';
import { listLists } from '../specs/lists.repository.ts';
import * as repository from './trace.repository.ts';

/**
 * One build and its siblings, with what of the siblings can be held beside it: the checks and lines of its own sheet, and
 * its own batches. All of them stand on the shelf already.
 */
export async function recordedBuilds(
  reading: Reading,
  of: { readonly jobId: number; readonly revisionId: number; readonly extent: Extent },
  siblingIds: readonly number[],
): Promise<{ build: RecordedBuild; siblings: RecordedBuild[] }> {
  const jobIds = [of.jobId, ...siblingIds];
  const rows = await repository.buildsOf(reading, jobIds);
  const back = await repository.cameBack(reading, jobIds);
  const checks = await checksOfBuilds(reading, of, rows);
  const lines = await linesOfBuilds(reading, of, rows);
  const packs = Map.groupBy(await repository.packsOf(reading, jobIds), (row) => row.job_id);
  const batches = await batchesOfBuilds(reading, of.jobId, jobIds);
  const builds = rows.map(
    (row): RecordedBuild => ({
      jobId: row.job_id,
      jobNumber: row.number,
      builder: row.initials,
      hasComeBack: back.has(row.job_id),
      checks: checks.get(row.job_id) ?? [],
      lines: lines.get(row.job_id) ?? [],
      packs: (packs.get(row.job_id) ?? []).map((pack) => ({
        packId: pack.pack_id,
        name: pack.name,
        reusedPlates: pack.reused_plates,
      })),
      batches: batches.get(row.job_id) ?? [],
    }),
  );
  const build = builds.find(({ jobId }) => jobId === of.jobId);
  if (!build) throw new Error(`job ${of.jobId} is no build`);
  return { build, siblings: builds.filter(({ jobId }) => jobId !== of.jobId) };
}

type OfSheet = { readonly revisionId: number; readonly extent: Extent };
type BuildRow = { readonly job_id: number; readonly revision_id: number };

/** By job. A sibling’s check that is the same carries the check of the build it is held beside. */
async function checksOfBuilds(
  reading: Reading,
  { revisionId, extent }: OfSheet,
  builds: readonly BuildRow[],
): Promise<Map<number, RecordedCheck[]>> {
  const within = checksWithin(await listChecks(reading, revisionId), extent);
  const mine = new Map(within.map((check) => [check.checkId, check]));
  const same = (await repository.sameChecks(reading, revisionId)).filter((row) => mine.has(row.mine));
  const jobIds = builds.map((row) => row.job_id);
  const checkIds = same.map((row) => row.check_id);
  const figures = Map.groupBy(await repository.figuresOf(reading, jobIds, checkIds), (row) => row.job_id);
  const overrides = Map.groupBy(await repository.overridesOf(reading, jobIds), (row) => row.job_id);
  const byRevision = Map.groupBy(same, (row) => row.revision_id);
  return new Map(
    builds.map(({ job_id, revision_id }) => {
      const rows = new Map((figures.get(job_id) ?? []).map((row) => [row.check_id, row]));
      const stand = overrides.get(job_id) ?? [];
      const recorded = (byRevision.get(revision_id) ?? []).map(({ mine: mineId, check_id }): RecordedCheck => {
        const row = rows.get(check_id);
        const override = stand.findLast((each) => each.check_id === check_id);
        return {
          checkId: check_id,
          check: mine.get(mineId)!,
          take: row ? takeOfRow(row) : null,
          override: override ? { by: override.initials, reason: override.reason } : null,
        };
      });
      return [job_id, recorded];
    }),
  );
}

function takeOfRow(row: Awaited<ReturnType<typeof repository.figuresOf>>[number]): NonNullable<RecordedCheck['take']> {
  return {
    takeId: row.take_id,
    method: row.method,
    amount: row.amount,
    lowest: row.lowest,
    highest: row.highest,
    expanded: row.expanded,
    verdict: row.verdict,
    outsideBy: row.outside_by,
    setup:
      row.plates === null || row.wave_state === null || row.dial_base === null
        ? null
        : {
            plates: row.plates,
            waveState: row.wave_state,
            dialBase: row.dial_base,
            isPistonSeated: row.is_piston_seated === 1,
          },
  };
}

/** By job: the lines gone through at build, final and delivery. */
async function linesOfBuilds(
  reading: Reading,
  { revisionId, extent }: OfSheet,
  builds: readonly BuildRow[],
): Promise<Map<number, RecordedLine[]>> {
  const mine = new Map<number, LineOfList>();
  for (const list of listsWithin(await listLists(reading, revisionId), extent))
    for (const { lineId, words, asks } of list.lines) mine.set(lineId, { list: list.name, words, asks });
  const same = (await repository.sameLines(reading, revisionId)).filter((row) => mine.has(row.mine));
  const jobIds = builds.map((row) => row.job_id);
  const lineIds = same.map((row) => row.list_line_id);
  const answers = Map.groupBy(await repository.answersOf(reading, jobIds, lineIds), (row) => row.job_id);
  const byRevision = Map.groupBy(same, (row) => row.revision_id);
  return new Map(
    builds.map(({ job_id, revision_id }) => {
      const rows = new Map((answers.get(job_id) ?? []).map((row) => [row.list_line_id, row]));
      const recorded = (byRevision.get(revision_id) ?? []).map(({ mine: mineId, list_line_id }): RecordedLine => {
        const line = mine.get(mineId)!;
        const row = rows.get(list_line_id);
        const answer = row ? answerOfRow(row) : null;
        return { line, answer, standing: standingOfLine(line.asks, answer), reason: row?.reason ?? '' };
      });
      return [job_id, recorded];
    }),
  );
}

/** By job, only batches that the build itself has. */
async function batchesOfBuilds(reading: Reading, jobId: number, jobIds: readonly number[]) {
  const named = new Map(
    (await repository.batchesOf(reading, jobId)).map((row) => {
      const name = row.mark === '' ? row.document || `received ${writeDay(row.received_on)}` : `batch ${row.mark}`;
      return [row.batch_id, { batchId: row.batch_id, partId: row.part_id, name: `${row.number}, ${name}` }];
    }),
  );
  const byJob = new Map<number, RecordedBuild['batches'][number][]>();
  if (named.size === 0) return byJob;
  for (const { job_id, batch_id } of await repository.goingsOf(reading, jobIds, [...named.keys()])) {
    const batch = named.get(batch_id);
    if (batch) byJob.set(job_id, [...(byJob.get(job_id) ?? []), batch]);
  }
  return byJob;
}
