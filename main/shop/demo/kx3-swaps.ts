// The packs of the example unit brought into the band: the plan asked for, what came in, and the reading after it.
import type { MethodName, Output } from '../../../app/contract/contract.ts';
import { chanceWords } from '../../../app/packs/chance-words.ts';
import { formatLength } from '../../../app/quantities/format-amount.ts';
import { type Caller, type JobAtHand, packNamed, readCheck } from './kx3-job.ts';

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

/** Hears what was done, one line at a time. */
export type Teller = (line: string) => void;

/** Makes a call that must be refused, and answers its sentence. */
export type RefusedCaller = (method: MethodName, input: unknown) => Promise<string>;

/** Brings the three packs into the band, one swap each. */
export async function swapIntoBand(job: JobAtHand, tell: Teller, refused: RefusedCaller): Promise<void> {
  await swapOneSteel(job, 'Forward', ['4 21', '4 22', '5 22', '5 21'], tell);
  await swapDirect(job, tell, refused);
  await changeRing(job, tell);
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
function piecesOf(option: Option) {
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
