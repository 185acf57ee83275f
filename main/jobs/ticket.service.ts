// The whole ticket: a job with every check of its spec and where its readings stand.
import type { CheckOfJob, Job, Standing } from '../../app/jobs/jobs.contract.ts';
import { missingOn } from '../../app/jobs/missing.ts';
import type { Take } from '../../app/readings/readings.contract.ts';
import type { SavedCheck } from '../../app/specs/specs.contract.ts';
import { getCustomer } from '../customers/customers.service.ts';
import type { Reading } from '../database/tables.ts';
import { newestMockUpNumbers } from '../packs/packs.repository.ts';
import { takesOfJob } from '../readings/readings.service.ts';
import { listChecks, listPacks } from '../specs/specs.repository.ts';
import { getUnit } from '../units/units.service.ts';
import * as repository from './jobs.repository.ts';
import { getJobRow } from './jobs.service.ts';

export async function getJob(reading: Reading, { jobId }: { jobId: number }): Promise<Job> {
  const row = await getJobRow(reading, jobId);
  const stages = await repository.listStages(reading);
  const entries = await repository.listStageEntries(reading, jobId);
  const current = await repository.currentStage(reading, jobId);
  const packs = await listPacks(reading, row.revision_id);
  const mockUps = await newestMockUpNumbers(reading, jobId);
  const checks = await checksOfJob(reading, jobId, row.revision_id);
  return {
    jobId,
    number: row.number,
    customer: await getCustomer(reading, row.customer_id),
    unit: await getUnit(reading, row.unit_id),
    revisionNumber: row.revision_number,
    complaint: row.complaint,
    caseTag: row.case_tag,
    distance:
      row.distance_amount === null || row.distance_unit === null
        ? null
        : { amount: row.distance_amount, unit: row.distance_unit },
    openedAt: row.opened_at,
    openedBy: row.initials,
    isClosed: current.is_closed === 1,
    stageId: current.stage_id,
    stages: stages.map((stage) => {
      const entry = entries.findLast((each) => each.stage_id === stage.stage_id);
      return {
        stageId: stage.stage_id,
        name: stage.name,
        isClosed: stage.is_closed === 1,
        enteredAt: entry?.entered_at ?? null,
        enteredBy: entry?.initials ?? null,
      };
    }),
    packs: packs.map((pack) => ({
      packId: pack.packId,
      name: pack.name,
      mockUpNumber: mockUps.find((each) => each.pack_id === pack.packId)?.number ?? null,
    })),
    checks,
    variants: checks.flatMap((check) => {
      const variantName = (check.latest ?? check.asFound)?.variantName;
      return variantName ? [{ checkName: check.name, variantName }] : [];
    }),
    missing: missingOn(checks),
  };
}

async function checksOfJob(reading: Reading, jobId: number, revisionId: number): Promise<CheckOfJob[]> {
  const checks = await listChecks(reading, revisionId);
  const takes = await takesOfJob(reading, jobId, checks);
  const overrides = await repository.listOverrides(reading, jobId);
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
      ),
      latest: standingOf(latest),
      override: holds ? { by: override.initials, reason: override.reason, at: override.overridden_at } : null,
    };
  });
}

/** The newest take that was read the way the spec means; only when there is none, the newest of another way. */
function standingTake(takes: readonly Take[], check: SavedCheck): Take | undefined {
  // That it would not hold air is a result too, even when no line could be read.
  const read = takes.filter(
    (take) => take.readings.length > 0 || take.notes.some((note) => note.what === 'will not hold air'),
  );
  return read.findLast((take) => take.method === check.method) ?? read.at(-1);
}

function standingOf(take: Take | undefined): Standing | null {
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
    verdict: evaluation.verdict,
    variantName: evaluation.variantName,
    note: take.note,
    remarks: evaluation.remarks,
    supersededCount: take.readings.filter((reading) => reading.supersededById !== null).length,
    at: take.startedAt,
    by: take.by,
  };
}
