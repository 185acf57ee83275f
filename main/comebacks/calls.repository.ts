// Whom to call and what came of it, in and out of the file; only ever appended, the newest counts.
import type { CameOfCall, UnitToCall } from '../../app/comebacks/calls.contract.ts';
import type { Reading, Writing } from '../database/tables.ts';

type Stamp = { by: number; now: string };

export async function insertUnitToCall(
  writing: Writing,
  row: Stamp & Pick<UnitToCall, 'shares' | 'what' | 'whatToCheck' | 'reason'> & { jobId: number },
): Promise<void> {
  await writing
    .insertInto('units_to_call')
    .values({
      job_id: row.jobId,
      shares: row.shares,
      what: row.what,
      what_to_check: row.whatToCheck,
      reason: row.reason,
      added_at: row.now,
      added_by: row.by,
    })
    .execute();
}

export async function insertCall(
  writing: Writing,
  row: Stamp & { unitToCallId: number; cameOfIt: CameOfCall; note: string },
): Promise<void> {
  await writing
    .insertInto('units_called')
    .values({
      unit_to_call_id: row.unitToCallId,
      came_of_it: row.cameOfIt,
      note: row.note,
      called_at: row.now,
      called_by: row.by,
    })
    .execute();
}

/** Newest first; of one build where it is named. */
export function listUnitsToCall(reading: Reading, jobId: number | null) {
  return reading
    .selectFrom('units_to_call')
    .innerJoin('people', 'people.person_id', 'added_by')
    .selectAll('units_to_call')
    .select('people.initials')
    .$if(jobId !== null, (query) => query.where('job_id', '=', jobId))
    .orderBy('unit_to_call_id', 'desc')
    .execute();
}

export function findUnitToCall(reading: Reading, unitToCallId: number) {
  return reading.selectFrom('units_to_call').selectAll().where('unit_to_call_id', '=', unitToCallId).executeTakeFirst();
}

/** Newest first; of one build where it is named. */
export function listCalls(reading: Reading, jobId: number | null) {
  return reading
    .selectFrom('units_called')
    .innerJoin('units_to_call', 'units_to_call.unit_to_call_id', 'units_called.unit_to_call_id')
    .innerJoin('people', 'people.person_id', 'called_by')
    .select(['units_called.unit_to_call_id', 'came_of_it', 'note', 'called_at', 'initials', 'what'])
    .$if(jobId !== null, (query) => query.where('job_id', '=', jobId))
    .orderBy('unit_called_id', 'desc')
    .execute();
}
