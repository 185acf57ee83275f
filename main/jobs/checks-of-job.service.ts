// Every check of a job's spec and where its readings stand.
import { checksWithin } from '../../app/jobs/extent.ts';
import type { CheckOfJob, Standing } from '../../app/jobs/jobs.contract.ts';
import type { Take } from '../../app/readings/readings.contract.ts';
import { standingTake } from '../../app/readings/standing-take.ts';
import type { SavedCheck } from '../../app/specs/specs.contract.ts';
import type { Reading } from '../database/tables.ts';
import { takesOfJob } from '../readings/readings.service.ts';
import { listChecks } from '../specs/checks-of-sheets.repository.ts';
import { extentOf } from './extent.repository.ts';
import { listOverrides } from './jobs.repository.ts';

export async function checksOfJob(reading: Reading, jobId: number, revisionId: number): Promise<CheckOfJob[]> {
  const checks = checksWithin(await listChecks(reading, revisionId), await extentOf(reading, jobId));
  const takes = await takesOfJob(reading, jobId, checks);
  const overrides = await listOverrides(reading, jobId);
  return checks.map((check) => {
    const all = takes.get(check.checkId) ?? [];
    const latest = standingTake(all, check);
    const override = overrides.findLast((each) => each.check_id === check.checkId);
    // A check read again after an override speaks for itself.
    const holds = override && (!latest || latest.startedAt <= override.overridden_at);
    return {
      ...check,
      asFound: standingOf(
        standingTake(
          all.filter((take) => take.phase === 'as found'),
          check,
        ),
        check,
      ),
      latest: standingOf(latest, check),
      override: holds ? { by: override.initials, reason: override.reason, at: override.overridden_at } : null,
    };
  });
}

function standingOf(take: Take | undefined, check: SavedCheck): Standing | null {
  if (!take) return null;
  const { evaluation } = take;
  return {
    takeId: take.takeId,
    method: take.method,
    phase: take.phase,
    mockUpNumber: take.mockUpNumber,
    value: evaluation.mean,
    min: evaluation.min,
    max: evaluation.max,
    expanded: evaluation.expanded,
    spots: evaluation.spots.length,
    unreadSpots: unreadSpotsOf(take, check),
    verdict: evaluation.verdict,
    variantName: evaluation.variantName,
    note: take.note,
    remarks: evaluation.remarks,
    supersededCount: take.readings.filter((reading) => reading.supersededById !== null).length,
    at: take.startedAt,
    by: take.by,
  };
}

function unreadSpotsOf(take: Take, check: SavedCheck): number {
  const hasEnded = take.notes.some(({ what }) => what === 'enough' || what === 'will not hold air');
  // A quick take reads one spot twice.
  return hasEnded || take.mode === 'quick' ? 0 : Math.max(0, check.spots - take.evaluation.spots.length);
}
