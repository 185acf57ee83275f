// What was said, seen and promised at the door, in and out of the file; only ever appended.
import type { Call, Diagnosis } from '../../app/jobs/door.contract.ts';
import type { Reading, Writing } from '../database/tables.ts';

type Stamp = { jobId: number; by: number; now: string };

export async function insertIntake(
  writing: Writing,
  intake: Stamp & { complaint: string; diagnosis: Diagnosis },
): Promise<void> {
  const { diagnosis } = intake;
  await writing
    .insertInto('intakes')
    .values({
      job_id: intake.jobId,
      complaint: intake.complaint,
      codes: diagnosis.codes,
      fluid_level: diagnosis.fluidLevel,
      fluid_colour: diagnosis.fluidColour,
      fluid_smell: diagnosis.fluidSmell,
      pan: diagnosis.pan,
      installed_by: diagnosis.installedBy,
      vehicle_changes: diagnosis.vehicleChanges,
      written_at: intake.now,
      written_by: intake.by,
    })
    .execute();
}

/** Newest first, as are the lists below. */
export async function listIntakes(reading: Reading, jobId: number) {
  const rows = await reading
    .selectFrom('intakes')
    .innerJoin('people', 'people.person_id', 'intakes.written_by')
    .selectAll('intakes')
    .select('people.initials')
    .where('job_id', '=', jobId)
    .orderBy('intake_id', 'desc')
    .execute();
  return rows.map((row) => ({
    complaint: row.complaint,
    diagnosis: {
      codes: row.codes,
      fluidLevel: row.fluid_level,
      fluidColour: row.fluid_colour,
      fluidSmell: row.fluid_smell,
      pan: row.pan,
      installedBy: row.installed_by,
      vehicleChanges: row.vehicle_changes,
    } satisfies Diagnosis,
    at: row.written_at,
    by: row.initials,
  }));
}

export async function insertPromise(writing: Writing, promise: Stamp & { on: string; reason: string }): Promise<void> {
  await writing
    .insertInto('promises')
    .values({
      job_id: promise.jobId,
      promised_on: promise.on,
      reason: promise.reason,
      promised_at: promise.now,
      promised_by: promise.by,
    })
    .execute();
}

export async function listPromises(reading: Reading, jobId: number) {
  const rows = await reading
    .selectFrom('promises')
    .innerJoin('people', 'people.person_id', 'promises.promised_by')
    .selectAll('promises')
    .select('people.initials')
    .where('job_id', '=', jobId)
    .orderBy('promise_id', 'desc')
    .execute();
  return rows.map((row) => ({ on: row.promised_on, reason: row.reason, at: row.promised_at, by: row.initials }));
}

export async function insertCall(
  writing: Writing,
  call: Stamp & { direction: Call['direction']; withWhom: string; said: string },
): Promise<void> {
  await writing
    .insertInto('calls')
    .values({
      job_id: call.jobId,
      direction: call.direction,
      with_whom: call.withWhom,
      said: call.said,
      logged_at: call.now,
      logged_by: call.by,
    })
    .execute();
}

export async function listCalls(reading: Reading, jobId: number): Promise<Call[]> {
  const rows = await reading
    .selectFrom('calls')
    .innerJoin('people', 'people.person_id', 'calls.logged_by')
    .selectAll('calls')
    .select('people.initials')
    .where('job_id', '=', jobId)
    .orderBy('call_id', 'desc')
    .execute();
  return rows.map((row) => ({
    callId: row.call_id,
    direction: row.direction,
    withWhom: row.with_whom,
    said: row.said,
    at: row.logged_at,
    by: row.initials,
  }));
}
