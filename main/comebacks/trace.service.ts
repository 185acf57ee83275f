// The trace of one comeback: its build and its siblings off the shelf, what its ticket read as found and found at
// teardown, and from these what is unusual and what speaks for which cause.
import { setImmediate as nextTurn } from 'node:timers/promises';
import { asFoundNow, foundParts, type ReadAsFound, wearOfPacks } from '../../app/comebacks/as-found-now.ts';
import type { Cause, Certainty } from '../../app/comebacks/causes.ts';
import { causesOfTrace } from '../../app/comebacks/causes-of-trace.ts';
import { enoughSiblings } from '../../app/comebacks/how-unusual.ts';
import type { Trace } from '../../app/comebacks/trace.contract.ts';
import { traceBuild } from '../../app/comebacks/trace-build.ts';
import { quietBatches } from '../../app/comebacks/trace-parts.ts';
import { checksWithin } from '../../app/jobs/extent.ts';
import { evaluateTake } from '../../app/readings/evaluate-take.ts';
import { standingTake } from '../../app/readings/standing-take.ts';
import type { Settings } from '../../app/shop/shop.contract.ts';
import { found } from '../database/errors.ts';
import { type OpenShop, openBeside } from '../database/open-shop.ts';
import type { Reading } from '../database/tables.ts';
import { extentOf } from '../jobs/extent.repository.ts';
import { listFindings } from '../jobs/findings.service.ts';
import { getJobRow } from '../jobs/jobs.service.ts';
import { wholeTakesOfJobs } from '../readings/whole-takes.repository.ts';
import { getSettings } from '../shop/shop.service.ts';
import { listChecks } from '../specs/checks-of-sheets.repository.ts';
import { reckonBuilds, reckoning } from './as-built.service.ts';
import { recordedBuilds } from './recorded-builds.service.ts';
import * as repository from './trace.repository.ts';

/** Siblings before the build, and after it: what a shop did long before and long after says less of it. */
const mostOnASide = 100;
/** Reckoned in one go, between which whoever else asks is answered. */
const buildsAtOnce = 8;

/** Reckons what of the build and its siblings is not on the shelf yet, then holds it beside them. */
export async function traceComeback(shop: OpenShop, input: { comebackId: number }): Promise<Trace> {
  const missing = await shop.read(async (reading) => {
    const { row, siblingIds } = await comebackAndSiblings(reading, input.comebackId);
    return repository.notOnShelf(reading, [row.built_job_id, ...siblingIds], reckoning);
  });
  if (missing.length > 0) await reckonBeside(shop, missing);
  return shop.readApart((reading) => traceOf(reading, input.comebackId));
}

/** Over a connection of its own, since who only asks may have the file open for reading; the shelf holds nothing new. */
async function reckonBeside({ file, clock }: OpenShop, jobIds: readonly number[]): Promise<void> {
  const beside = openBeside(file, clock);
  try {
    for (let from = 0; from < jobIds.length; from += buildsAtOnce) {
      await beside.write((writing) => reckonBuilds(writing, jobIds.slice(from, from + buildsAtOnce)));
      await nextTurn();
    }
  } finally {
    await beside.close();
  }
}

async function comebackAndSiblings(reading: Reading, comebackId: number) {
  const row = found(await repository.findComeback(reading, comebackId), 'comeback');
  const of = { jobId: row.built_job_id, familyId: row.family_id, returnJobId: row.job_id };
  const [before, after] = await repository.nearestBuilds(reading, of, mostOnASide);
  const areCut = before.length === mostOnASide || after.length === mostOnASide;
  return { row, siblingIds: [...before, ...after], areCut };
}

async function traceOf(reading: Reading, comebackId: number): Promise<Trace> {
  const { row, siblingIds, areCut } = await comebackAndSiblings(reading, comebackId);
  const settings = await getSettings(reading);
  const extent = await extentOf(reading, row.built_job_id);
  const of = { jobId: row.built_job_id, revisionId: row.revision_id, extent };
  const { build, siblings } = await recordedBuilds(reading, of, siblingIds);
  const traced = traceBuild(build, siblings, settings);
  const findings = await listFindings(reading, { jobId: row.job_id });
  const asFound = asFoundNow(build, await readAsFound(reading, row.job_id, settings), settings);
  const facts = {
    build,
    returnJobId: row.job_id,
    findings: traced.findings,
    asFound,
    found: findings,
    quietBatches: quietBatches(build, siblings).map(({ batch, builds }) => ({ name: batch.name, builds })),
    words: settings,
  };
  return {
    comebackId,
    returnJobId: row.job_id,
    returnJobNumber: row.number,
    builtJobId: row.built_job_id,
    builtJobNumber: row.built_number,
    familyName: row.family_name,
    siblings: siblings.length,
    areNearest: areCut,
    enoughSiblings,
    ...traced,
    asFound,
    foundParts: foundParts(findings, settings),
    wear: wearOfPacks(findings, asFound, settings),
    ...causesOfTrace(facts, await causesSaid(reading, comebackId)),
  };
}

/** What the return ticket read before anything was done, each check by the take that counts. */
async function readAsFound(reading: Reading, jobId: number, settings: Settings): Promise<ReadAsFound[]> {
  const job = await getJobRow(reading, jobId);
  const takes = (await wholeTakesOfJobs(reading, [jobId])).filter(({ phase }) => phase === 'as found');
  const checks = checksWithin(await listChecks(reading, job.revision_id), await extentOf(reading, jobId));
  return checks.flatMap((check) => {
    const take = standingTake(
      takes.filter(({ checkId }) => checkId === check.checkId),
      check,
    );
    if (!take) return [];
    const { mean, expanded } = evaluateTake({ ...take, check, settings });
    if (mean === null) return [];
    return [{ jobId, checkId: check.checkId, takeId: take.takeId, check, amount: mean, expanded }];
  });
}

const surest: readonly Certainty[] = ['known', 'suspected', 'not found'];

/** A cause may be said of several packs: the surest word counts. */
async function causesSaid(reading: Reading, comebackId: number): Promise<Map<Cause, Certainty>> {
  const said = new Map<Cause, Certainty>();
  for (const { cause, certainty } of await repository.causesOf(reading, comebackId)) {
    const before = said.get(cause);
    if (certainty === 'taken back') continue;
    if (before === undefined || surest.indexOf(certainty) < surest.indexOf(before)) said.set(cause, certainty);
  }
  return said;
}
