// Deliveries and warranties in and out of the file; only ever appended, the newest counts.
import type { Handover, WarrantyInService } from '../../app/jobs/delivery.contract.ts';
import type { Distance } from '../../app/jobs/distance.contract.ts';
import type { Reading, Writing } from '../database/tables.ts';

type Stamp = { jobId: number; reason: string; by: number; now: string };

export async function insertDelivery(writing: Writing, delivery: Stamp & Handover): Promise<void> {
  await insertDeliveryRow(writing, delivery, {
    delivered_to: delivery.deliveredTo,
    delivered_on: delivery.deliveredOn,
    distance_amount: delivery.distance?.amount ?? null,
    distance_unit: delivery.distance?.unit ?? null,
    handed_over_by: delivery.handedOverById,
  });
}

/** A row without a day: the unit is here again. */
export async function insertTakenBack(writing: Writing, stamp: Stamp): Promise<void> {
  await insertDeliveryRow(writing, stamp, {
    delivered_to: '',
    delivered_on: null,
    distance_amount: null,
    distance_unit: null,
    handed_over_by: stamp.by,
  });
}

async function insertDeliveryRow(
  writing: Writing,
  { jobId, reason, by, now }: Stamp,
  what: {
    delivered_to: string;
    delivered_on: string | null;
    distance_amount: number | null;
    distance_unit: Distance['unit'] | null;
    handed_over_by: number;
  },
): Promise<void> {
  await writing
    .insertInto('deliveries')
    .values({ job_id: jobId, ...what, reason, recorded_at: now, recorded_by: by })
    .execute();
}

/** Newest first, as are the warranties. */
export async function listDeliveries(reading: Reading, jobId: number) {
  const rows = await reading
    .selectFrom('deliveries')
    .innerJoin('people', 'people.person_id', 'deliveries.recorded_by')
    .innerJoin('people as handers', 'handers.person_id', 'deliveries.handed_over_by')
    .selectAll('deliveries')
    .select(['people.initials', 'handers.initials as hander'])
    .where('job_id', '=', jobId)
    .orderBy('delivery_id', 'desc')
    .execute();
  return rows.map((row) => {
    const stamp = { reason: row.reason, at: row.recorded_at, by: row.initials };
    if (row.delivered_on === null) return { deliveredOn: null, ...stamp };
    return {
      deliveredTo: row.delivered_to,
      deliveredOn: row.delivered_on,
      distance: distanceOf(row),
      handedOverBy: row.hander,
      ...stamp,
    };
  });
}

/** The day a unit left; null while it is here. */
export async function deliveredOn(reading: Reading, jobId: number): Promise<string | null> {
  const newest = await reading
    .selectFrom('deliveries')
    .select('delivered_on')
    .where('job_id', '=', jobId)
    .orderBy('delivery_id', 'desc')
    .limit(1)
    .executeTakeFirst();
  return newest?.delivered_on ?? null;
}

export async function insertWarranty(writing: Writing, warranty: Stamp & WarrantyInService): Promise<void> {
  const { months, distance, passes } = warranty.terms;
  await writing
    .insertInto('warranties')
    .values({
      job_id: warranty.jobId,
      in_service_on: warranty.inServiceOn,
      months,
      distance_amount: distance?.amount ?? null,
      distance_unit: distance?.unit ?? null,
      passes,
      reason: warranty.reason,
      set_at: warranty.now,
      set_by: warranty.by,
    })
    .execute();
}

export async function listWarranties(reading: Reading, jobId: number) {
  const rows = await reading
    .selectFrom('warranties')
    .innerJoin('people', 'people.person_id', 'warranties.set_by')
    .selectAll('warranties')
    .select('people.initials')
    .where('job_id', '=', jobId)
    .orderBy('warranty_id', 'desc')
    .execute();
  return rows.map((row) => ({
    terms: { months: row.months, distance: distanceOf(row), passes: row.passes },
    inServiceOn: row.in_service_on,
    reason: row.reason,
    at: row.set_at,
    by: row.initials,
  }));
}

function distanceOf<U extends Distance['unit']>(row: { distance_amount: number | null; distance_unit: U | null }) {
  return row.distance_amount === null || row.distance_unit === null
    ? null
    : { amount: row.distance_amount, unit: row.distance_unit };
}
