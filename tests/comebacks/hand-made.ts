// Shops made by hand for the trace: builds of the invented family with numbers that a test sets.
import type { RecordedBuild, RecordedCheck, RecordedLine, RecordedTake } from '../../app/comebacks/recorded-build.ts';
import type { Finding } from '../../app/jobs/findings.contract.ts';
import { standingOfLine } from '../../app/jobs/list-answers.ts';
import type { Answer } from '../../app/jobs/lists.contract.ts';
import { kx3Sheet } from '../../main/shop/demo/kx3-sheet.ts';

export const thou = 25_400;
export const psi = 6_894.757293168;
export const words = { lengthUnit: 'thou', decimalMark: '.' } as const;

export const plainTake: RecordedTake = {
  takeId: 1,
  method: 'air',
  amount: null,
  lowest: null,
  highest: null,
  expanded: 1.5 * thou,
  verdict: 'in',
  outsideBy: null,
  setup: null,
};

const soaked = { plates: 'soaked', waveState: 'none', dialBase: 'drum', isPistonSeated: true } as const;

/** A check of the sheet as a build read it; null was never read. */
export function recorded(name: string, take: Partial<RecordedTake> | null): RecordedCheck {
  const index = kx3Sheet.checks.findIndex((check) => check.name === name);
  const check = kx3Sheet.checks[index];
  if (!check) throw new Error(`the sheet has no check ${name}`);
  const ofPack = check.packName === null ? {} : { setup: { ...soaked, waveState: check.waveState } };
  return {
    checkId: index + 1,
    check,
    take: take && { ...plainTake, method: check.method, ...ofPack, ...take },
    override: null,
  };
}

/** A clearance in thou: its mean, and spots a thou either side of it. */
export function clearance(name: string, mean: number, more: Partial<RecordedTake> = {}): RecordedCheck {
  return recorded(name, { amount: mean * thou, lowest: (mean - 1) * thou, highest: (mean + 1) * thou, ...more });
}

/** A line of the sheet as a build answered it. */
export function answered(list: string, lineWords: string, answer: Answer | null, reason = ''): RecordedLine {
  const line = kx3Sheet.lists.find(({ name }) => name === list)?.lines.find(({ words: each }) => each === lineWords);
  if (!line) throw new Error(`${list} has no line ${lineWords}`);
  return { line: { list, ...line }, answer, standing: standingOfLine(line.asks, answer), reason };
}

export function build(jobNumber: number, of: Partial<RecordedBuild> = {}): RecordedBuild {
  return {
    jobId: jobNumber,
    jobNumber,
    builder: 'RA',
    hasComeBack: false,
    checks: [],
    lines: [],
    packs: kx3Sheet.packs.map(({ name }, index) => ({ packId: index + 1, name, reusedPlates: 0 })),
    batches: [],
    ...of,
  };
}

/** So many builds, numbered from 1. */
export function builds(count: number, of: (index: number) => Partial<RecordedBuild>): RecordedBuild[] {
  return Array.from({ length: count }, (_, index) => build(index + 1, of(index)));
}

/** A plate of a pack, 80.0 thou new, as teardown found it. */
export function foundPart(packName: string, slotName: string, of: Partial<Finding> = {}): Finding {
  return {
    findingId: 1,
    part: slotName,
    packId: 1,
    packName,
    slotId: 1,
    slotName,
    place: 'middle',
    condition: 'good',
    thickness_nm: null,
    thicknessTyped: '',
    nominal_nm: 80 * thou,
    checkId: null,
    note: '',
    reason: '',
    at: '2026-11-25T08:00:00.000Z',
    by: 'RA',
    decision: { decision: 'replace', note: '', at: '2026-11-25T08:00:00.000Z', by: 'RA' },
    earlier: [],
    earlierDecisions: [],
    photoIds: [],
    isCharged: false,
    ...of,
  };
}
