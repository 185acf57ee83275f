// Readings one after the other, with what they belong to, for a list that is too long for memory.
import type { Reading } from '../database/tables.ts';

/** In the order they were typed; of one job, or of all where `jobId` is null. */
export function streamReadings(reading: Reading, jobId: number | null) {
  let readings = reading
    .selectFrom('readings')
    .innerJoin('takes', 'takes.take_id', 'readings.take_id')
    .innerJoin('jobs', 'jobs.job_id', 'takes.job_id')
    .innerJoin('checks', 'checks.check_id', 'takes.check_id')
    .innerJoin('people', 'people.person_id', 'readings.taken_by')
    .leftJoin('packs', 'packs.pack_id', 'checks.pack_id')
    .leftJoin('mock_ups', 'mock_ups.mock_up_id', 'takes.mock_up_id')
    .leftJoin('readings as later', 'later.supersedes_id', 'readings.reading_id')
    .selectAll('readings')
    .select([
      'jobs.number as job_number',
      'packs.name as pack_name',
      'checks.name as check_name',
      'checks.quantity',
      'takes.phase',
      'mock_ups.number as mock_up_number',
      'people.initials',
      'later.reading_id as superseded_by_id',
      'later.reason as superseded_reason',
    ])
    .orderBy('readings.reading_id');
  if (jobId !== null) readings = readings.where('takes.job_id', '=', jobId);
  return readings.stream();
}
