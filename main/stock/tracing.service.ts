// From a batch, a kit, a can or a plate to every unit it went into, with what those units read; and where it came from.
import { writeDay } from '../../app/papers/dates.ts';
import { formatLength } from '../../app/quantities/format-amount.ts';
import { readLabelCode } from '../../app/stock/label-code.ts';
import type { Traced, TracedUnit } from '../../app/stock/tracing.contract.ts';
import { found } from '../database/errors.ts';
import type { Reading } from '../database/tables.ts';
import { findGauge } from '../gauges/register.repository.ts';
import { takesNumbered } from '../readings/readings.service.ts';
import { getSettings } from '../shop/shop.service.ts';
import { findCan } from './cans.repository.ts';
import { findBatch, listBatches } from './ledger.repository.ts';
import { findPart, findPartNumbered } from './parts.repository.ts';
import { findPiece } from './plates.repository.ts';
import * as repository from './tracing.repository.ts';

type Clearances = TracedUnit['clearances'];
type Step = { of: Traced; says: string };
/** One thing that went into one ticket. */
type Going = { jobId: number; at: string; what: string; isStillIn: boolean };
export type Trail = { title: string; from: Step[]; into: Step[]; onHand: number; goings: Going[]; caution: string };

/** More units than this are not read out; the sentence says how many there are. */
const mostUnits = 300;

const mixedInCan =
  'Plates in a can are not told apart: a unit is listed when a plate was taken from the can, whichever box it came in.';

export async function trace(reading: Reading, { of }: { of: Traced }) {
  const trail = await trailOf(reading, of);
  const jobIds = [...new Set(trail.goings.toSorted(newestFirst).map((going) => going.jobId))];
  const facts = new Map((await repository.jobFacts(reading, jobIds)).map((row) => [row.job_id, row]));
  const told = jobIds.slice(0, mostUnits);
  const clearances = await clearancesOf(reading, told);
  const units = told.map((jobId): TracedUnit => {
    const job = found(facts.get(jobId), 'job');
    const goings = trail.goings.filter((going) => going.jobId === jobId);
    return {
      jobId,
      jobNumber: job.number,
      isClosed: job.is_closed === 1,
      unitId: job.unit_id,
      familyName: job.family_name,
      serial: job.serial,
      vehicle: job.vehicle,
      customerName: job.customer_name,
      phone: job.phone,
      at: goings.map((going) => going.at).toSorted()[0] ?? '',
      what: [...new Set(goings.map((going) => going.what))],
      isStillIn: goings.some((going) => going.isStillIn),
      clearances: clearances.get(jobId) ?? [],
    };
  });
  const more = jobIds.length - units.length;
  const caution = [more > 0 ? `${more} older units are not shown.` : '', trail.caution].filter(Boolean).join(' ');
  return { title: trail.title, from: trail.from, into: trail.into, onHand: trail.onHand, units, caution };
}

function newestFirst(a: Going, b: Going): number {
  return a.at < b.at ? 1 : a.at > b.at ? -1 : b.jobId - a.jobId;
}

/** Where it came from and every ticket it went into, without what those read. */
export function trailOf(reading: Reading, of: Traced): Promise<Trail> {
  switch (of.kind) {
    case 'part':
      return trailOfPart(reading, of.partId);
    case 'batch':
      return trailOfBatch(reading, of.batchId);
    case 'can':
      return trailOfCan(reading, of.canId);
    case 'plate':
      return trailOfPlate(reading, of.pieceId);
  }
}

async function trailOfPart(reading: Reading, partId: number): Promise<Trail> {
  const part = found(await findPart(reading, partId), 'part');
  const batches = await listBatches(reading, partId);
  const batchIds = batches.map((batch) => batch.batch_id);
  // Pulled in a kit it went in without ever lying on the shelf by itself.
  const kitBatchIds = await repository.kitBatchesHolding(reading, partId);
  return {
    title: `${part.number}, ${part.description}`,
    from: [],
    into: batches.map((batch) => ({
      of: { kind: 'batch' as const, batchId: batch.batch_id },
      says: `${nameOfBatch(batch)}: ${batch.on_hand ?? 0} on hand`,
    })),
    onHand: part.on_hand ?? 0,
    goings: [...(await goingsOfBatches(reading, batchIds)), ...(await goingsOfBatches(reading, kitBatchIds))],
    caution: kitBatchIds.length > 0 ? 'Units that had a whole kit with this part in it are listed too.' : '',
  };
}

async function trailOfBatch(reading: Reading, batchId: number): Promise<Trail> {
  const batch = found(await findBatch(reading, batchId), 'batch');
  const part = found(await findPart(reading, batch.part_id), 'part');
  const children = await repository.batchesOutOf(reading, [batchId]);
  const batchIds = [batchId, ...children.map((child) => child.batch_id)];
  const cans = await repository.cansFilledFrom(reading, batchIds);
  const { lengthUnit } = await getSettings(reading);
  return {
    title: `${part.number}, ${nameOfBatch(batch)}`,
    from: [
      ...(batch.kit_batch_id === null
        ? []
        : [
            {
              of: { kind: 'batch' as const, batchId: batch.kit_batch_id },
              says: `out of kit ${batch.kit_number}, ${batch.kit_document || writeDay(batch.kit_received_on ?? batch.received_on)}`,
            },
          ]),
      { of: { kind: 'part', partId: part.part_id }, says: `all batches of ${part.number}` },
    ],
    into: [
      ...children.map((child) => ({
        of: { kind: 'batch' as const, batchId: child.batch_id },
        says: `${child.number}, laid in by itself`,
      })),
      ...cans.map((can) => ({
        of: { kind: 'can' as const, canId: can.can_id },
        says: `${can.count} measured into can ${formatLength(can.height_nm, lengthUnit)}, ${can.outline}`,
      })),
    ],
    onHand: batch.on_hand ?? 0,
    goings: await goingsOfBatches(reading, batchIds),
    caution: cans.length > 0 ? `${mixedInCan} Trace the can to see them.` : '',
  };
}

async function trailOfCan(reading: Reading, canId: number): Promise<Trail> {
  const can = found(await findCan(reading, canId), 'can');
  const { lengthUnit } = await getSettings(reading);
  const from: Step[] = [];
  for (const batchId of await repository.batchesInCan(reading, canId)) from.push(await stepToBatch(reading, batchId));
  return {
    title: `Can ${formatLength(can.height_nm, lengthUnit)} ${lengthUnit}, ${can.kind}s for ${can.outline}`,
    from,
    into: [],
    onHand: can.count,
    goings: (await repository.sittingsOutOfCan(reading, canId)).map(goingOfSitting),
    caution: mixedInCan,
  };
}

async function trailOfPlate(reading: Reading, pieceId: number): Promise<Trail> {
  const piece = found(await findPiece(reading, pieceId), 'plate');
  const { lengthUnit } = await getSettings(reading);
  const height = `${formatLength(piece.height_nm, lengthUnit)} ${lengthUnit}`;
  const origin = await reading
    .selectFrom('pieces')
    .select(['can_id', 'batch_id'])
    .where('piece_id', '=', pieceId)
    .executeTakeFirstOrThrow();
  const sittings = await repository.sittingsOfPlate(reading, pieceId);
  return {
    title: `${piece.tag === '' ? `${piece.kind} of ${height}` : `${piece.tag}, ${height}`}, ${piece.outline}`,
    from: [
      ...(origin.can_id === null
        ? []
        : [{ of: { kind: 'can' as const, canId: origin.can_id }, says: 'out of its can' }]),
      ...(origin.batch_id === null ? [] : [await stepToBatch(reading, origin.batch_id)]),
    ],
    into: [],
    onHand: sittings.some((sitting) => sitting.later === 0) ? 0 : 1,
    goings: sittings.map(goingOfSitting),
    caution: '',
  };
}

async function stepToBatch(reading: Reading, batchId: number): Promise<Step> {
  const batch = found(await findBatch(reading, batchId), 'batch');
  const part = found(await findPart(reading, batch.part_id), 'part');
  return { of: { kind: 'batch', batchId }, says: `from ${part.number}, ${nameOfBatch(batch)}` };
}

function nameOfBatch(batch: {
  mark: string;
  document: string;
  received_on: string;
  kit_number?: string | null;
  kit_mark?: string | null;
}): string {
  const kit = batch.kit_number == null ? '' : `kit ${batch.kit_number}, `;
  return batch.mark === ''
    ? `${kit}${batch.kit_mark || batch.document || 'unmarked'}, ${writeDay(batch.received_on)}`
    : `batch ${batch.mark}, ${writeDay(batch.received_on)}`;
}

async function goingsOfBatches(reading: Reading, batchIds: readonly number[]): Promise<Going[]> {
  const pulls = await repository.pullsOfBatches(reading, batchIds);
  const sittings = await repository.sittingsOutOfBatches(reading, batchIds);
  return [
    ...pulls.flatMap((pull) =>
      pull.job_id === null || pull.change >= 0
        ? []
        : [
            {
              jobId: pull.job_id,
              at: pull.at,
              what: `${countOf(-pull.change, pull.unit_of_issue)} ${pull.number}, ${pull.mark || pull.document}`,
              isStillIn: true,
            },
          ],
    ),
    ...sittings.map(goingOfSitting),
  ];
}

/** "4 ×", or with its unit where that is not the piece: "9 quart of". */
function countOf(count: number, unit: string): string {
  return unit === 'each' ? `${count} ×` : `${count} ${unit} of`;
}

function goingOfSitting(sitting: repository.Sitting): Going {
  const isStillIn = sitting.later === 0;
  const name = sitting.tag === '' ? '' : `${sitting.tag}: `;
  return {
    jobId: sitting.job_id,
    at: sitting.at,
    what: `${name}${sitting.pack_name}, ${sitting.kind} ${sitting.place}${isStillIn ? '' : ', taken out again'}`,
    isStillIn,
  };
}

/** What each of these jobs read, by job. */
async function clearancesOf(reading: Reading, jobIds: readonly number[]): Promise<Map<number, Clearances>> {
  const newest = await repository.newestClearances(reading, jobIds);
  const takes = await takesNumbered(
    reading,
    newest.map((row) => row.take_id),
  );
  const clearances = newest.map((row) => {
    const { evaluation, phase } = found(takes.get(row.take_id), 'take');
    return {
      jobId: row.job_id,
      clearance: {
        checkId: row.check_id,
        packId: row.pack_id,
        packName: row.pack_name,
        phase,
        mean_nm: evaluation.mean,
        expanded_nm: evaluation.expanded,
        verdict: evaluation.verdict,
      },
    };
  });
  return new Map(
    [...Map.groupBy(clearances, ({ jobId }) => jobId)].map(([jobId, of]) => [
      jobId,
      of.map(({ clearance }) => clearance),
    ]),
  );
}

/** What a scanned label means; else the part with that number, else the plate with that tag if there is only one. */
export async function findCode(reading: Reading, { code }: { code: string }) {
  const labelled = readLabelCode(code);
  switch (labelled?.kind) {
    case 'part':
      return (await findPart(reading, labelled.partId)) ? labelled : null;
    case 'batch': {
      const batch = await findBatch(reading, labelled.batchId);
      return batch ? { ...labelled, partId: batch.part_id } : null;
    }
    case 'can': {
      const can = await findCan(reading, labelled.canId);
      return can ? { ...labelled, outline: can.outline } : null;
    }
    case 'plate': {
      const piece = await findPiece(reading, labelled.pieceId);
      return piece ? { ...labelled, outline: piece.outline } : null;
    }
    case 'job':
      return (await repository.findJobId(reading, labelled.jobId)) ? labelled : null;
    case 'gauge':
      return (await findGauge(reading, labelled.gaugeId)) ? labelled : null;
  }
  const part = await findPartNumbered(reading, code);
  if (part) return { kind: 'part' as const, partId: part.part_id };
  const [plate, second] = code === '' ? [] : await repository.platesTagged(reading, code);
  return plate && !second ? { kind: 'plate' as const, pieceId: plate.piece_id, outline: plate.outline } : null;
}
