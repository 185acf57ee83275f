// Which gauge read a take, in and out of the file.
import type { ReadingMethod } from '../../app/specs/spec-sheet.ts';
import { among } from '../database/among.ts';
import type { Reading, Writing } from '../database/tables.ts';

export async function insertGaugeOfTake(
  writing: Writing,
  takeId: number,
  gauge: { gaugeId: number; permittedError: number | null; offSquareDegrees: number },
): Promise<void> {
  await writing
    .insertInto('take_gauges')
    .values({
      take_id: takeId,
      gauge_id: gauge.gaugeId,
      permitted_error_amount: gauge.permittedError,
      off_square_degrees: gauge.offSquareDegrees,
    })
    .execute();
}

/** With the tag each gauge has now. */
export function gaugesOfTakes(reading: Reading, takeIds: readonly number[]) {
  return reading
    .selectFrom('take_gauges')
    .innerJoin('gauges_as_known', 'gauges_as_known.gauge_id', 'take_gauges.gauge_id')
    .selectAll('take_gauges')
    .select('gauges_as_known.tag')
    .where('take_id', 'in', among(takeIds))
    .execute();
}

/** Of the newest take of this job that was read this way and names one still in use. */
export function lastGaugeOfJob(reading: Reading, jobId: number, method: ReadingMethod) {
  return reading
    .selectFrom('takes')
    .innerJoin('take_gauges', 'take_gauges.take_id', 'takes.take_id')
    .innerJoin('gauges_as_known', 'gauges_as_known.gauge_id', 'take_gauges.gauge_id')
    .select(['gauges_as_known.gauge_id', 'gauges_as_known.tag'])
    .where('takes.job_id', '=', jobId)
    .where('takes.method', '=', method)
    .where('gauges_as_known.is_retired', '=', 0)
    .orderBy('takes.take_id', 'desc')
    .limit(1)
    .executeTakeFirst();
}
