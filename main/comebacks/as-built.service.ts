// Puts delivered builds on the shelf: each check with its standing take judged, each pack with its mock-ups, and who
// built it. What a ticket says of its job and what the shelf says of its build are the same figures.
import { evaluateTake } from '../../app/readings/evaluate-take.ts';
import { standingTake } from '../../app/readings/standing-take.ts';
import type { SavedCheck } from '../../app/specs/specs.contract.ts';
import type { OpenShop } from '../database/open-shop.ts';
import type { Reading, Writing } from '../database/tables.ts';
import { type WholeTake, wholeTakesOfJobs } from '../readings/whole-takes.repository.ts';
import { getSettings } from '../shop/shop.service.ts';
import { listChecks } from '../specs/checks-of-sheets.repository.ts';
import * as repository from './as-built.repository.ts';

/** Raised whenever the same readings would be reckoned to other figures; what an earlier one filled is done anew. */
export const reckoning = 1;

/** So many builds are read, judged and written at once: a fraction of a second. */
export const buildsAtOnce = 100;

/** The delivered builds, of one family or of all, that have no figures; oldest first. */
export function missingBuilds(reading: Reading, familyId: number | null = null): Promise<number[]> {
  return repository.missingJobIds(reading, reckoning, familyId);
}

/**
 * Fills what is missing of a family, some builds at a time, each lot wholly or not at all. `tell` hears how far it is and
 * says whether to go on.
 */
export async function fillShelf(
  shop: OpenShop,
  familyId: number,
  tell: (done: number, of: number) => boolean,
): Promise<'nothing missing' | 'filled' | 'stopped'> {
  const jobIds = await shop.read((reading) => missingBuilds(reading, familyId));
  for (let done = 0; done < jobIds.length; done += buildsAtOnce) {
    if (!tell(done, jobIds.length)) return 'stopped';
    const some = jobIds.slice(done, done + buildsAtOnce);
    await shop.writeAfterReading((writing) => reckonBuilds(writing, some));
  }
  return jobIds.length === 0 ? 'nothing missing' : 'filled';
}

/** Fills the figures of these builds in one go, in place of what stood there. */
export async function reckonBuilds(writing: Writing, jobIds: readonly number[]): Promise<void> {
  if (jobIds.length === 0) return;
  const settings = await getSettings(writing);
  const takes = Map.groupBy(await wholeTakesOfJobs(writing, jobIds), (take) => take.jobId);
  const jobs = await repository.revisionsOfJobs(writing, jobIds);
  const checks = await checksOfRevisions(writing, new Set(jobs.map((job) => job.revision_id)));
  const standing = jobs.map((job) => {
    const ofJob = takes.get(job.job_id) ?? [];
    const byCheck = Map.groupBy(ofJob, (take) => take.checkId);
    const each = (checks.get(job.revision_id) ?? []).flatMap((check) => {
      const take = standingTake(byCheck.get(check.checkId) ?? [], check);
      return take ? [{ check, take }] : [];
    });
    return { jobId: job.job_id, builder: builderOf(ofJob), each };
  });
  await repository.putOnShelf(writing, jobIds, {
    builds: standing.map(({ jobId, builder }) => ({ job_id: jobId, reckoning, builder })),
    checks: standing.flatMap(({ jobId, each }) =>
      each.map(({ check, take }) => {
        const { mean, min, max, expanded, verdict } = evaluateTake({ ...take, check, settings });
        return {
          job_id: jobId,
          check_id: check.checkId,
          take_id: take.takeId,
          amount: mean,
          lowest: min,
          highest: max,
          expanded,
          verdict: verdict.word,
          outside_by: verdict.by,
        };
      }),
    ),
    packs: await repository.mockUpsOfJobs(writing, jobIds),
  });
}

async function checksOfRevisions(
  reading: Reading,
  revisionIds: ReadonlySet<number>,
): Promise<Map<number, SavedCheck[]>> {
  const checks = new Map<number, SavedCheck[]>();
  for (const revisionId of revisionIds) checks.set(revisionId, await listChecks(reading, revisionId));
  return checks;
}

/**
 * Who read most of the final takes, and of equally many whoever read the last; where there is no final take, of all.
 * null where nothing was read.
 */
function builderOf(takes: readonly WholeTake[]): number | null {
  const read = takes.filter((take) => take.readings.length > 0);
  const final = read.filter((take) => take.phase === 'final');
  const counted = new Map<number, number>();
  let builder: number | null = null;
  for (const { startedBy } of final.length > 0 ? final : read) {
    counted.set(startedBy, (counted.get(startedBy) ?? 0) + 1);
    if (builder === null || counted.get(startedBy)! >= counted.get(builder)!) builder = startedBy;
  }
  return builder;
}
