// Delivered builds as a comeback needs them: whose they are, how they left, what they came back as.
import type { BuildToHold, DeliveredBuild } from '../../app/comebacks/log.contract.ts';
import { readLabelCode } from '../../app/stock/label-code.ts';
import { getCustomer } from '../customers/customers.service.ts';
import { Refused } from '../database/errors.ts';
import type { Reading } from '../database/tables.ts';
import { listDeliveries, listWarranties } from '../jobs/delivery.repository.ts';
import { newestJobsHolding } from '../jobs/jobs.repository.ts';
import { getJobRow } from '../jobs/jobs.service.ts';
import { getUnit } from '../units/units.service.ts';
import * as repository from './builds.repository.ts';
import { listComebacksOf } from './log.repository.ts';

const mostBuilds = 20;

/** A unit is the same by its row, or by its family and serial, because the door may have taken it in as a new one. */
export async function findBuilds(reading: Reading, { text }: { text: string }): Promise<BuildToHold[]> {
  const jobIds = await jobsMeant(reading, text);
  const unitIds = await repository.unitsOfJobs(reading, jobIds);
  const builds = await repository.listBuildsOfUnits(reading, unitIds, mostBuilds);
  return Promise.all(
    builds.map(async ({ job_id }) => {
      const build = await buildAsDelivered(reading, job_id);
      const comebacks = await listComebacksOf(reading, [job_id]);
      return {
        ...build,
        openTickets: await repository.listOpenTickets(reading, await repository.sameUnits(reading, build.unit), job_id),
        cameBack: comebacks
          .filter((each) => each.built_job_id === job_id)
          .map((each) => ({
            comebackId: each.comeback_id,
            jobId: each.job_id,
            number: each.number,
            cameBackOn: each.came_back_on,
          })),
      };
    }),
  );
}

async function jobsMeant(reading: Reading, text: string): Promise<number[]> {
  const labelled = readLabelCode(text);
  if (labelled) return labelled.kind === 'job' ? [labelled.jobId] : [];
  const words = text.split(/\s+/).filter((word) => word !== '');
  if (words.length === 0) return [];
  const numbered = /^[1-9]\d{0,8}$/.test(text) ? await repository.findJobNumbered(reading, Number(text)) : undefined;
  if (numbered) return [numbered.job_id];
  return newestJobsHolding(reading, words, 2 * mostBuilds);
}

/** A build as it left last, or a refusal where it never did. */
export async function buildAsDelivered(reading: Reading, jobId: number): Promise<DeliveredBuild> {
  const job = await getJobRow(reading, jobId);
  const deliveries = await listDeliveries(reading, jobId);
  const delivery = deliveries.flatMap((each) => (each.deliveredOn === null ? [] : [each]))[0];
  if (!delivery) throw new Refused('not-delivered', `Job ${job.number} was not handed over, so it cannot come back.`);
  const [warranty] = await listWarranties(reading, jobId);
  const { note: _, ...customer } = await getCustomer(reading, job.customer_id);
  return {
    jobId,
    number: job.number,
    unit: await getUnit(reading, job.unit_id),
    customer,
    caseTag: job.case_tag,
    deliveredOn: delivery.deliveredOn,
    left: {
      terms: warranty?.terms ?? { months: null, distance: null, passes: null },
      inServiceOn: warranty?.inServiceOn ?? null,
      distanceAtDelivery: delivery.distance,
    },
  };
}
