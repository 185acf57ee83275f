// The job of the example unit as the bench does it, call by call: each step is one call of the contract.
// Its readings are invented and agree with the KX3 sheet; every sum can be checked by hand.
import type { MethodName, Output } from '../../../app/contract/contract.ts';
import { chanceWords } from '../../../app/packs/chance-words.ts';
import { formatLength } from '../../../app/quantities/format-amount.ts';
import type { Phase, Setup } from '../../../app/readings/readings.contract.ts';
import type { Revision } from '../../../app/specs/specs.contract.ts';
import { answerLists } from './kx3-lists.ts';
import type { OffTheLine } from './kx3-trace.ts';

/** Calls a method and answers its value, or throws when it was refused. */
export type Caller = <M extends MethodName>(method: M, input: unknown) => Promise<Output<M>>;

/** Hears what was done, one line at a time. */
export type Teller = (line: string) => void;

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

const heights = {
  Forward: {
    steel: ['77.0', '76.5', '78.0', '77.5'],
    steelTags: ['A31', 'A32', 'A33', 'A34'],
    friction: ['79.5', '80.0', '80.0', '80.5'],
    'backing plate': ['250.0'],
  },
  Direct: {
    steel: ['92.0', '91.0', '92.5', '91.5'],
    steelTags: ['B11', 'B12', 'B13', 'B14'],
    friction: ['84.0', '84.5', '84.0', '84.5'],
    'backing plate': ['310.0'],
  },
  'Low/reverse': {
    steel: ['70.0', '70.5', '69.5', '70.0', '70.0'],
    steelTags: ['', '', '', '', ''],
    friction: ['80.0', '80.0', '80.0', '80.0', '80.0'],
    'backing plate': ['200.0'],
    'wave plate': ['85.0'],
    'snap ring': ['74.0'],
  },
} as const;

const looseSteels = {
  'KX3 forward': [
    ['A41', '74.0'],
    ['A42', '75.5'],
    ['A43', '78.5'],
    ['A44', '79.5'],
    ['A45', '80.5'],
    ['A47', '83.0'],
  ],
  'KX3 direct': [
    ['B21', '84.0'],
    ['B22', '87.0'],
    ['B23', '89.5'],
    ['B24', '90.0'],
    ['B25', '93.0'],
  ],
} as const;

/** Puts the loose steels of the bench into the book. */
export async function layOutLooseSteels(call: Caller, by: number): Promise<void> {
  for (const [outline, steels] of Object.entries(looseSteels)) {
    for (const [tag, typed] of steels) await call('stock.addPiece', { kind: 'steel', outline, tag, typed, by });
  }
}

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

/** What was measured before anything came apart, and what then lay in the packs. */
export async function measureAsFound(job: JobAtHand, offTheLine: OffTheLine = {}): Promise<void> {
  for (const [name, lines] of Object.entries(asFoundLines)) {
    const accepted = offTheLine[name];
    if (accepted) await readCheck(job, name, 'as found', [accepted.typed], { heard: accepted.heard });
    else await readCheck(job, name, 'as found', lines);
  }
  await readCheck(job, 'Front end play', 'as found', ['31']);
  await readCheck(job, 'Rear end play', 'as found', ['11']);
  await readCheck(job, 'Converter hub to pump bushing', 'as found', ['5.0']);
  for (const name of ['Forward', 'Direct', 'Low/reverse'] as const) await enterFoundPack(job, name);
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

/** Enters what was found in a pack, plate by plate. */
export async function enterFoundPack({ call, jobId, sheet, by }: JobAtHand, name: keyof typeof heights): Promise<void> {
  const pack = packNamed(sheet, name);
  const found: Record<string, readonly string[]> = heights[name];
  const counted = new Map<string, number>();
  const pieces = pack.slots.map((slot) => {
    const place = counted.get(slot.kind) ?? 0;
    counted.set(slot.kind, place + 1);
    const tag = slot.kind === 'steel' ? heights[name].steelTags[place] : undefined;
    return { slotId: slot.slotId, from: { typed: found[slot.kind]?.[place] ?? '', ...(tag ? { tag } : {}) } };
  });
  await call('packs.recordMockUp', { jobId, packId: pack.packId, pieces, note: '', by });
}

const asFoundLines = {
  'Forward clearance': ['4 27', '5 27', '5 28', '4 28'],
  'Direct clearance': ['5 32', '5 33', '6 33', '5 33'],
  'Low/reverse clearance': ['12 60'],
} as const;

/** Makes a call that must be refused, and answers its sentence. */
export type RefusedCaller = (method: MethodName, input: unknown) => Promise<string>;

/** Builds the unit: packs brought into the band by swaps, then everything else read. */
export async function buildKx3(job: JobAtHand, tell: Teller, refused: RefusedCaller): Promise<void> {
  await swapOneSteel(job, 'Forward', ['4 21', '4 22', '5 22', '5 21'], tell);
  await swapDirect(job, tell, refused);
  await changeRing(job, tell);
  await fitWasher(job, tell);
  await readMechanical(job, tell);
  await answerLists(job, 'build');
  await readCircuits(job);
  await answerLists(job, 'final');
}

type Option = Output<'packs.planSwaps'>['options'][number];

async function planOf({ call, jobId, sheet }: JobAtHand, name: string, tell: Teller, changes: number): Promise<Option> {
  const { packId } = packNamed(sheet, name);
  const plan = await call('packs.planSwaps', { jobId, packId });
  for (const option of plan.options.slice(0, 3))
    tell(`${name}, ${option.changes} ${option.changes === 1 ? 'change' : 'changes'}: ${sayOption(option)}`);
  tell(`${name}: ${plan.advice}`);
  const option = plan.options.find((each) => each.changes === changes);
  if (!option) throw new Error(`${name} has no plan with ${changes} changes`);
  return option;
}

function sayOption(option: Option): string {
  const out = option.out.map((each) => thouOf(each.piece.height_nm)).join(', ');
  const into = option.in.map((each) => `${thouOf(each.height_nm)} (${each.label}) into ${each.slotName}`).join(', ');
  const chance = option.probabilityInBand === null ? '' : `, ${chanceWords(option.probabilityInBand)} in the band`;
  const swap = option.changes === 0 ? 'as it is' : `${out} out, ${into}`;
  return `${swap}, should read ${thouOf(option.predicted_nm)} ± ${thouOf(option.expanded_nm)}${chance}`;
}

const thouOf = (length_nm: number): string => formatLength(length_nm, 'thou');

/** The pieces of an option as a mock-up: what comes in, and what moves to another slot. */
export function piecesOf(option: Option) {
  return [
    ...option.in.map(({ slotId, from }) => ({ slotId, from })),
    ...option.moved.map(({ toSlotId, pieceId }) => ({ slotId: toSlotId, from: { pieceId } })),
  ];
}

async function swapOneSteel(job: JobAtHand, name: string, lines: readonly string[], tell: Teller): Promise<void> {
  const option = await planOf(job, name, tell, 1);
  const { packId } = packNamed(job.sheet, name);
  await job.call('packs.recordMockUp', {
    jobId: job.jobId,
    packId,
    pieces: piecesOf(option),
    note: 'one swap',
    by: job.by,
  });
  await tellFinal(job, name, lines, option, tell);
}

async function tellFinal(
  job: JobAtHand,
  name: string,
  lines: readonly string[],
  option: Option,
  tell: Teller,
): Promise<void> {
  const { evaluation } = await readCheck(job, `${name} clearance`, 'final', lines);
  const range = `${thouOf(evaluation.min ?? 0)} to ${thouOf(evaluation.max ?? 0)}`;
  tell(
    `${name}: predicted ${thouOf(option.predicted_nm)}, read ${thouOf(evaluation.mean ?? 0)}, ${range}, ${evaluation.verdict.word}.`,
  );
}

// The thin steel belongs in the middle of this pack: slot 1 is refused, slot 2 is taken.
async function swapDirect(job: JobAtHand, tell: Teller, refused: RefusedCaller): Promise<void> {
  const { call, jobId, sheet, by } = job;
  const pack = packNamed(sheet, 'Direct');
  const steels = pack.slots.filter((slot) => slot.kind === 'steel');
  const option = await planOf(job, 'Direct', tell, 1);
  const thin = option.in[0]?.from;
  const first = {
    jobId,
    packId: pack.packId,
    pieces: [{ slotId: steels[0]?.slotId, from: thin }],
    note: 'thin steel nearest the piston',
    by,
  };
  tell(`Direct, thin steel in slot 1: ${await refused('packs.recordMockUp', first)}`);
  await call('packs.recordMockUp', { jobId, packId: pack.packId, pieces: piecesOf(option), note: 'one swap', by });
  await tellFinal(job, 'Direct', ['5 39', '5 40', '6 41', '5 39'], option, tell);
}

async function changeRing(job: JobAtHand, tell: Teller): Promise<void> {
  const { call, jobId, sheet, by } = job;
  const pack = packNamed(sheet, 'Low/reverse');
  const ring = pack.slots.find((slot) => slot.kind === 'snap ring');
  const option = await planOf(job, 'Low/reverse', tell, 1);
  await call('packs.recordMockUp', {
    jobId,
    packId: pack.packId,
    pieces: [{ slotId: ring?.slotId, from: { catalogue_nm: 86 * 25_400 } }],
    note: 'ring 74 to 86',
    by,
  });
  const { evaluation } = await readCheck(job, 'Low/reverse clearance', 'final', ['10 50', '10 50'], { spots: [1, 1] });
  tell(
    `Low/reverse: ring 86 in, predicted ${thouOf(option.predicted_nm)}, read ${thouOf(evaluation.mean ?? 0)}, ${evaluation.verdict.word}.`,
  );
}

async function fitWasher(job: JobAtHand, tell: Teller): Promise<void> {
  const { call, jobId, sheet, by } = job;
  const { checkId } = checkNamed(sheet, 'Front end play');
  const { sentence } = await call('packs.planShim', { jobId, checkId, shimIn: '66' });
  tell(`Front end play: ${sentence}`);
  const { takeId } = await call('readings.startTake', {
    jobId,
    checkId,
    phase: 'final',
    mode: 'final',
    setup: null,
    note: 'washer 78.0',
    by,
  });
  const { readingId } = await call('readings.recordReading', { takeId, spot: 1, typed: '12', by });
  await call('readings.supersedeReading', { readingId, typed: '19', reason: 'misread by a number on the face', by });
  tell('Front end play: 12 was misread and superseded; 19.0 read.');
}

async function readMechanical(job: JobAtHand, tell: Teller): Promise<void> {
  const reads: ReadonlyArray<readonly [name: string, typed: string, note?: string]> = [
    ['Rear end play', '11'],
    ['Pump gear side', '1.4'],
    ['Outer gear to pocket', '5'],
    ['Inner gear to crescent', '7'],
    ['Stator bushing', '1.5025 1.5000 in'],
    ['Converter hub to pump bushing', '3.0', 'bushing changed'],
    ['Sealing ring side', '90.0 88.0'],
    ['Servo travel', '125'],
    ['Converter hub depth', '1 3/16'],
    ['Converter pull-out', '5/32'],
  ];
  for (const [name, typed, note] of reads) await readCheck(job, name, 'final', [typed], note ? { note } : {});
  const groove = await readCheck(job, 'Sealing-ring groove width', 'final', ['90.0']);
  tell(`Sealing-ring groove: ${groove.evaluation.variantName}.`);
}

async function readCircuits(job: JobAtHand): Promise<void> {
  const reads: ReadonlyArray<readonly [name: string, typed: string]> = [
    ['Port A, Forward', '3'],
    ['Port B, Direct', '4'],
    ['Port C3, Low/reverse', '6'],
    ['Port C4, servo apply', '2'],
    ['Line, idle, P/N', '82'],
    ['Line, idle, D', '82'],
    ['Line, idle, R', '128'],
    ['Line, full throttle, D', '164'],
    ['Line, full throttle, R', '262'],
    ['Cooler flow in 30 s', '1.3'],
    ['Pump bolts', '18'],
    ['Extension housing', '24'],
    ['Band locknut', '35'],
    ['Valve body', '100'],
    ['Pan', '120'],
  ];
  for (const [name, typed] of reads) await readCheck(job, name, 'final', [typed]);
}
