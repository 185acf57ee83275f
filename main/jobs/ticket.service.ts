// The whole ticket: a job with what was said of it, every check of its spec, its stages and what they still ask for.

import { stagesWithin } from '../../app/jobs/extent.ts';
import type { Job } from '../../app/jobs/jobs.contract.ts';
import { missingOn } from '../../app/jobs/missing.ts';
import { missingAt } from '../../app/jobs/stage-moves.ts';
import { getCustomer } from '../customers/customers.service.ts';
import { found } from '../database/errors.ts';
import type { Reading } from '../database/tables.ts';
import { getUnit } from '../units/units.service.ts';
import { checksOfJob } from './checks-of-job.service.ts';
import { deliveredOn } from './delivery.repository.ts';
import { listIntakes, listPromises } from './door.repository.ts';
import { extentOf, standingExtent } from './extent.repository.ts';
import { currentStage, listStageEntries } from './jobs.repository.ts';
import { getJobRow } from './jobs.service.ts';
import { needFactsOf, newestSignOff, packsOfJob } from './need-facts.service.ts';
import { listPassedOver, listStages } from './stages.repository.ts';

export async function getJob(reading: Reading, { jobId }: { jobId: number }): Promise<Job> {
  const row = await getJobRow(reading, jobId);
  const entries = await listStageEntries(reading, jobId);
  const current = await currentStage(reading, jobId);
  const checks = await checksOfJob(reading, jobId, row.revision_id);
  const facts = await needFactsOf(reading, row, { checks });
  const [intake] = await listIntakes(reading, jobId);
  const { complaint, diagnosis } = found(intake, 'intake');
  const [promised = null] = await listPromises(reading, jobId);
  const stages = stagesWithin(await listStages(reading), await extentOf(reading, jobId));
  const passedOver = await listPassedOver(reading, jobId);
  return {
    jobId,
    number: row.number,
    customer: await getCustomer(reading, row.customer_id),
    unit: await getUnit(reading, row.unit_id),
    revisionNumber: row.revision_number,
    complaint,
    diagnosis,
    caseTag: row.case_tag,
    distance:
      row.distance_amount === null || row.distance_unit === null
        ? null
        : { amount: row.distance_amount, unit: row.distance_unit },
    extent: await standingExtent(reading, jobId),
    openedAt: row.opened_at,
    openedBy: row.initials,
    promised,
    signOff: await newestSignOff(reading, jobId),
    deliveredOn: await deliveredOn(reading, jobId),
    isClosed: current.is_closed === 1,
    stageId: current.stage_id,
    stages: stages.map((stage) => {
      const entry = entries.findLast((each) => each.stage_id === stage.stageId);
      return {
        ...stage,
        enteredAt: entry?.entered_at ?? null,
        enteredBy: entry?.initials ?? null,
        missing: missingAt(stage, facts),
      };
    }),
    passedOver: passedOver.map((each) => ({
      stageName: each.name,
      need: each.need,
      what: each.what,
      reason: each.reason,
      at: each.entered_at,
      by: each.initials,
    })),
    packs: await packsOfJob(reading, row),
    checks,
    variants: checks.flatMap((check) => {
      const variantName = (check.latest ?? check.asFound)?.variantName;
      return variantName ? [{ checkName: check.name, variantName }] : [];
    }),
    missing: missingOn(checks),
  };
}
