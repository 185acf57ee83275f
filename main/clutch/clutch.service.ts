// The clutch of a pack on a job: its figures off the sheet, what the vehicle asks, today's clearance, and the estimates.
import type { ClutchLoad, ClutchOfJob } from '../../app/clutch/clutch.contract.ts';
import { clutchEstimate, frictionSurfaces, usualCheckingPressure_Pa } from '../../app/clutch/clutch-estimate.ts';
import { loadSentence } from '../../app/clutch/clutch-words.ts';
import { loadFields } from '../../app/clutch/load-fields.ts';
import { parseAmount } from '../../app/quantities/parse-amount.ts';
import { boundsOf } from '../../app/readings/judge-take.ts';
import type { Settings } from '../../app/shop/shop.contract.ts';
import { accepted, found, Refused } from '../database/errors.ts';
import type { Reading, Writing } from '../database/tables.ts';
import { getJobRow, jobAtBench } from '../jobs/jobs.service.ts';
import { type MockUpAtHand, packAtHand } from '../packs/pack-at-hand.service.ts';
import { getSettings, personAtWork } from '../shop/shop.service.ts';
import { findRevision } from '../specs/specs.repository.ts';
import { insertLoad, listLoads } from './clutch.repository.ts';

export async function getClutch(reading: Reading, input: { jobId: number; packId: number }): Promise<ClutchOfJob> {
  const job = await getJobRow(reading, input.jobId);
  const revision = found(await findRevision(reading, job.revision_id), 'spec sheet');
  const { pack, check, mockUps } = await packAtHand(reading, input);
  const load = (await listLoads(reading, input.jobId)).at(-1) ?? null;
  const newest = mockUps.findLast(({ take }) => take !== null)?.take ?? null;
  const air_pa = newest?.setup?.air_pa ?? null;
  const facts = {
    figures: pack.clutch,
    surfaces: frictionSurfaces(pack.slots),
    checkingPressure_Pa: air_pa ?? usualCheckingPressure_Pa,
    clearance: clearanceToday(mockUps, check?.limits ?? null),
    load,
  };
  return {
    ...facts,
    jobNumber: job.number,
    familyId: revision.family_id,
    familyName: revision.family_name,
    revisionNumber: revision.number,
    packId: pack.packId,
    packName: pack.name,
    hasWavePlate: pack.slots.some(({ kind }) => kind === 'wave plate'),
    isPressureOnCard: air_pa !== null,
    estimate: clutchEstimate(facts),
  };
}

/** As read where the newest mock-up was, else as it should read, else what the sheet aims at. */
function clearanceToday(
  mockUps: readonly MockUpAtHand[],
  limits: Parameters<typeof boundsOf>[0] | null,
): ClutchOfJob['clearance'] {
  const newest = mockUps.at(-1);
  const bounds = limits === null ? null : boundsOf(limits);
  const band = { low_nm: bounds?.lower ?? null, high_nm: bounds?.upper ?? null };
  const target = limits?.kind === 'target' ? limits.target : null;
  const read = newest?.take?.evaluation.mean ?? null;
  const predicted = newest?.predicted?.mean_nm ?? null;
  if (read !== null && read > 0) return { today_nm: read, from: 'as read', ...band };
  if (predicted !== null && predicted > 0) return { today_nm: predicted, from: 'as predicted', ...band };
  return target !== null && target > 0 ? { today_nm: target, from: 'the target', ...band } : null;
}

export async function stateLoad(
  writing: Writing,
  now: string,
  input: { jobId: number; engineTorque: string; converterRatio: string; reason: string; by: number },
) {
  await personAtWork(writing, input.by);
  await jobAtBench(writing, input.jobId);
  const load = readLoad(input, await getSettings(writing));
  const isStated = (await listLoads(writing, input.jobId)).length > 0;
  if (isStated && input.reason === '') throw new Refused('reason', 'Say why it is another figure now.', 'reason');
  await insertLoad(writing, { ...input, ...load, now });
  return {};
}

function readLoad(input: { engineTorque: string; converterRatio: string }, settings: Settings): ClutchLoad {
  const { engineTorque, converterRatio } = loadFields(settings);
  const engineTorque_mNm = accepted(parseAmount(input.engineTorque, engineTorque), 'engineTorque');
  const converterRatio_millionths = accepted(parseAmount(input.converterRatio, converterRatio), 'converterRatio');
  if (engineTorque_mNm <= 0) throw new Refused('not-positive', 'The torque must be more than zero.', 'engineTorque');
  if (converterRatio_millionths <= 0)
    throw new Refused('not-positive', 'The ratio must be more than zero: 1 with no converter.', 'converterRatio');
  return { engineTorque_mNm, converterRatio_millionths };
}

/** What was stated about a job's vehicle, as acts of its history. */
export async function loadActs(reading: Reading, jobId: number, settings: Settings) {
  const loads = await listLoads(reading, jobId);
  return loads.map((load) => ({
    at: load.at,
    by: load.by,
    kind: 'decision' as const,
    says: loadSentence(load, settings),
    more: load.reason,
  }));
}
