// The job of the example unit as the bench does it, call by call: checked in, moved on and read, each step one call of
// the contract. Its stages stand beside it: kx3-as-found.ts, kx3-swaps.ts and kx3-build.ts.
// Its readings are invented and agree with the KX3 sheet; every sum can be checked by hand.
import type { MethodName, Output } from '../../../app/contract/contract.ts';
import type { Phase, Setup } from '../../../app/readings/readings.contract.ts';
import type { Revision } from '../../../app/specs/specs.contract.ts';
import type { OffTheLine } from './kx3-trace.ts';

/** Calls a method and answers its value, or throws when it was refused. */
export type Caller = <M extends MethodName>(method: M, input: unknown) => Promise<Output<M>>;

const air_pa = 275_790;

export const usualSetup: Setup = {
  dialBase: 'drum',
  isPistonSeated: true,
  air_pa,
  port: 'A',
  waveState: 'none',
  plates: 'soaked',
  isOpenEndUp: true,
  dialType: 'plunger',
  dialFaceCounts: 100,
  mark: 'paint dot on the drum',
};

/** Moves a job to the stage of this name. */
export async function moveTo({ call, jobId, by }: JobAtHand, name: string): Promise<void> {
  const stages = await call('jobs.listStages', {});
  await call('jobs.moveToStage', { jobId, stageId: stages.find((stage) => stage.name === name)?.stageId, by });
}

export type JobAtHand = {
  readonly call: Caller;
  readonly jobId: number;
  readonly sheet: Revision;
  readonly by: number;
};

export function checkNamed(sheet: Revision, name: string): Revision['checks'][number] {
  const check = sheet.checks.find((each) => each.name === name);
  if (!check) throw new Error(`no check is called ${name}`);
  return check;
}

export function packNamed(sheet: Revision, name: string): Revision['packs'][number] {
  const pack = sheet.packs.find((each) => each.name === name);
  if (!pack) throw new Error(`no pack is called ${name}`);
  return pack;
}

/** Checks the unit of the example in. */
export async function openJob(call: Caller, familyId: number, by: number): Promise<JobAtHand> {
  const { jobId } = await call('jobs.checkIn', {
    customer: { name: 'Tam Okoro', phone: '555 0117', email: '' },
    unit: { familyId, serial: 'KX3-19-2214', vehicle: 'half-ton pickup', use: 'tow' },
    complaint: 'Slips 2–3 when hot.',
    caseTag: '1',
    distance: { amount: 118_400, unit: 'miles' },
    diagnosis: {
      codes: 'ratio, third gear',
      fluidLevel: 'low',
      fluidColour: 'brown',
      fluidSmell: 'burnt',
      pan: 'dark fines, one curl of brass',
      installedBy: 'the works, never out',
      vehicleChanges: 'trailer brakes added in spring',
    },
    by,
  });
  return { call, jobId, sheet: await call('specs.getRevision', { familyId }), by };
}

/** Reads a check: one line a spot, in order; several lines a spot when `spots` says which. */
export async function readCheck(
  { call, jobId, sheet, by }: JobAtHand,
  name: string,
  phase: Phase,
  lines: readonly string[],
  more: {
    spots?: readonly number[];
    setup?: Partial<Setup>;
    note?: string;
    mode?: 'quick' | 'final';
    heard?: OffTheLine[string]['heard'];
  } = {},
): Promise<Output<'readings.getTake'>> {
  const check = checkNamed(sheet, name);
  const { takeId } = await call('readings.startTake', {
    jobId,
    checkId: check.checkId,
    phase,
    mode: more.mode ?? 'final',
    setup: check.method === 'air' ? { ...usualSetup, waveState: check.waveState, ...more.setup } : null,
    note: more.note ?? '',
    by,
  });
  for (const [index, typed] of lines.entries()) {
    const spot = more.spots?.[index] ?? index + 1;
    await call('readings.recordReading', { takeId, spot, typed, heard: more.heard ?? null, by });
  }
  return call('readings.getTake', { takeId });
}
