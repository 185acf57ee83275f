// What the book knows of a job when a stage asks for it; only as much is looked up as is asked.
import { checksWithin, listsWithin, packsWithin } from '../../app/jobs/extent.ts';
import type { CheckOfJob } from '../../app/jobs/jobs.contract.ts';
import type { Need } from '../../app/jobs/needs.ts';
import type { SignOff } from '../../app/jobs/stages.contract.ts';
import type { NeedFacts } from '../../app/jobs/unmet-needs.ts';
import { formatLength } from '../../app/quantities/format-amount.ts';
import type { Reading } from '../database/tables.ts';
import { newestMockUpNumbers } from '../packs/packs.repository.ts';
import { getSettings } from '../shop/shop.service.ts';
import { listChecks } from '../specs/checks-of-sheets.repository.ts';
import { listLists } from '../specs/lists.repository.ts';
import { listPacks } from '../specs/packs-of-sheets.repository.ts';
import { checksOfJob } from './checks-of-job.service.ts';
import { deliveredOn } from './delivery.repository.ts';
import { listIntakes, listPromises } from './door.repository.ts';
import { getEstimate } from './estimate.service.ts';
import { extentOf } from './extent.repository.ts';
import { listUndecided } from './findings.repository.ts';
import { listsOfJob, openLinesOf } from './lists-of-job.service.ts';
import { lastWorkedAt, listSignOffs, openCoresOf, unmeasuredPlatesOf } from './stages.repository.ts';

type JobRow = { job_id: number; revision_id: number };

const askLists: readonly Need[] = ['teardown lists done', 'build lists done', 'final lists done'];
const askChecks: readonly Need[] = ['as-found clearances read', 'pack checks settled', 'all checks settled'];

/** `checks` where they are known already; `asked` where only some needs are tested. */
export async function needFactsOf(
  reading: Reading,
  job: JobRow,
  { checks, asked }: { checks?: readonly CheckOfJob[]; asked?: readonly Need[] },
): Promise<NeedFacts> {
  const isAsked = (...needs: readonly Need[]) => asked === undefined || needs.some((need) => asked.includes(need));
  const jobId = job.job_id;
  const [intake] = isAsked('complaint said') ? await listIntakes(reading, jobId) : [];
  const [promised] = isAsked('date promised') ? await listPromises(reading, jobId) : [];
  return {
    complaint: intake?.complaint ?? '',
    packs: isAsked('packs entered as found') ? await packsOfJob(reading, job) : [],
    checks: checks ?? (isAsked(...askChecks) ? await checksOfJob(reading, jobId, job.revision_id) : []),
    promisedOn: promised?.on ?? null,
    estimate: isAsked('estimate approved') ? (await getEstimate(reading, { jobId })).state : 'approved',
    isSignedOff: isAsked('signed off') && (await newestSignOff(reading, jobId))?.isOutdated === false,
    isDelivered: isAsked('delivery recorded') && (await deliveredOn(reading, jobId)) !== null,
    openCores: isAsked('cores settled') ? (await coresOpenOn(reading, jobId)).map(({ what }) => what) : [],
    unmeasuredPlates: isAsked('plates measured again')
      ? (await platesOutOf(reading, jobId)).map(({ what }) => what)
      : [],
    undecided: isAsked('findings decided')
      ? (await listUndecided(reading, jobId)).map(({ part, pack_name }) => [pack_name ?? '', part].join(' ').trim())
      : [],
    lists: isAsked(...askLists) ? (await listsOfJob(reading, job)).map(openLinesOf) : [],
  };
}

export async function packsOfJob(reading: Reading, job: JobRow) {
  const packs = await packsTaken(reading, job);
  const mockUps = await newestMockUpNumbers(reading, job.job_id);
  return packs.map(({ packId, name }) => ({
    packId,
    name,
    mockUpNumber: mockUps.find((each) => each.pack_id === packId)?.number ?? null,
  }));
}

/** The packs of its sheet that the job takes. */
async function packsTaken(reading: Reading, job: JobRow) {
  const packs = await listPacks(reading, job.revision_id);
  const extent = await extentOf(reading, job.job_id);
  if (extent === null) return packs;
  const checks = checksWithin(await listChecks(reading, job.revision_id), extent);
  const lists = listsWithin(await listLists(reading, job.revision_id), extent);
  return packsWithin(packs, [...checks, ...lists], extent);
}

/** A sign-off speaks for what stood then: a reading, a mock-up or an answer after it outdates it. */
export async function newestSignOff(reading: Reading, jobId: number): Promise<SignOff | null> {
  const newest = (await listSignOffs(reading, jobId)).at(-1);
  if (!newest) return null;
  const workedAt = await lastWorkedAt(reading, jobId);
  return {
    place: newest.place,
    note: newest.note,
    at: newest.signed_at,
    by: newest.initials,
    isOutdated: workedAt !== null && workedAt > newest.signed_at,
  };
}

export async function coresOpenOn(reading: Reading, jobId: number) {
  const rows = await openCoresOf(reading, jobId);
  return rows.map(({ core_id, direction, what, quantity }) => ({
    coreId: core_id,
    direction,
    what: quantity === 1 ? what : `${quantity} × ${what}`,
  }));
}

/** "steel A33, 78.0 out of Forward". */
export async function platesOutOf(reading: Reading, jobId: number) {
  const rows = await unmeasuredPlatesOf(reading, jobId);
  const { lengthUnit, decimalMark } = await getSettings(reading);
  return rows.map(({ piece_id, kind, tag, height_nm, pack_name }) => ({
    pieceId: piece_id,
    what: `${[kind, tag].filter(Boolean).join(' ')}, ${formatLength(height_nm, lengthUnit, undefined, decimalMark)} out of ${pack_name}`,
  }));
}
