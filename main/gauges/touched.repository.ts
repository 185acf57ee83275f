// The takes a gauge has read, with whose unit they were of.
import type { Reading } from '../database/tables.ts';

/** Newest first; only those that hold a reading. */
export function takesOfGauge(reading: Reading, gaugeId: number) {
  return reading
    .selectFrom('take_gauges')
    .innerJoin('takes', 'takes.take_id', 'take_gauges.take_id')
    .innerJoin('jobs', 'jobs.job_id', 'takes.job_id')
    .innerJoin('customers', 'customers.customer_id', 'jobs.customer_id')
    .innerJoin('units', 'units.unit_id', 'jobs.unit_id')
    .innerJoin('families', 'families.family_id', 'units.family_id')
    .select([
      'takes.take_id',
      'takes.started_at',
      'jobs.job_id',
      'jobs.number',
      'customers.name as customer',
      'families.name as family',
      'units.serial',
    ])
    .where('take_gauges.gauge_id', '=', gaugeId)
    .where((where) =>
      where.exists(
        where.selectFrom('readings').select('reading_id').whereRef('readings.take_id', '=', 'takes.take_id'),
      ),
    )
    .orderBy('takes.take_id', 'desc')
    .execute();
}
