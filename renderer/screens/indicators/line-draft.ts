// A line's settings while they are typed: text until they are read.
import type { GaugeLine, LineSettings } from '../../../app/indicators/indicators.contract.ts';
import type { PracticeKind } from '../../../app/indicators/simulated-plate.ts';
import { type DecimalMark, formatAmount } from '../../../app/quantities/format-amount.ts';
import { parseAmount } from '../../../app/quantities/parse-amount.ts';
import { unitNamed } from '../../../app/quantities/units.ts';

export type LineDraft = {
  readonly name: string;
  readonly pattern: string;
  readonly unit: 'mm' | 'in';
  readonly isReversed: boolean;
  readonly step: string;
  readonly stillWithin: string;
  readonly stillFor: string;
  readonly every: string;
  readonly path: string;
  readonly baudRate: string;
  readonly dataBits: '7' | '8';
  readonly parity: 'none' | 'even' | 'odd';
  readonly stopBits: '1' | '2';
  readonly request: string;
  readonly practice: PracticeKind;
  readonly gaugeId: number | null;
};

const usual: LineDraft = {
  name: '',
  pattern: '{number}',
  unit: 'mm',
  isReversed: false,
  step: '0.001',
  stillWithin: '5',
  stillFor: '500',
  every: '100',
  path: '',
  baudRate: '9600',
  dataBits: '8',
  parity: 'none',
  stopBits: '1',
  request: '',
  practice: 'steady',
  gaugeId: null,
};

/** A new line begins with what is usual, a known one with what it has. */
export function draftOf(line: GaugeLine | null, source: LineSettings['source'], decimalMark: DecimalMark): LineDraft {
  if (!line) {
    const own = source === 'practice' ? { name: 'Practice gauge', every: '50' } : {};
    return { ...usual, step: usual.step.replace('.', decimalMark), ...own };
  }
  const { step_nm, unit } = line;
  const decimals = unit === 'mm' ? 6 : 8;
  const says = {
    name: line.name,
    pattern: line.pattern,
    unit,
    isReversed: line.isReversed,
    step: formatAmount(step_nm, unitNamed(unit), { decimals, decimalMark }).replace(/0+$/, ''),
    stillWithin: String(line.stillWithin_steps),
    stillFor: String(line.stillFor_ms),
    every: String(line.every_ms),
    gaugeId: line.gaugeId,
  };
  if (line.source === 'practice') return { ...usual, ...says, practice: line.practice };
  const { path, baudRate, dataBits, parity, stopBits, request } = line;
  return {
    ...usual,
    ...says,
    path,
    baudRate: String(baudRate),
    dataBits: `${dataBits}`,
    parity,
    stopBits: `${stopBits}`,
    request,
  };
}

/** What is sent; a count that is no number goes as it cannot be, so that main refuses it at its field. */
export function settingsOf(
  draft: LineDraft,
  source: LineSettings['source'],
  decimalMark: DecimalMark,
): { readonly settings: LineSettings; readonly refusal: null } | { readonly settings: null; readonly refusal: string } {
  const step = parseAmount(draft.step, { quantity: 'length', unit: draft.unit, decimalMark, what: 'one count' });
  if (!step.ok) return { settings: null, refusal: step.refusal.message };
  const says = {
    name: draft.name,
    pattern: draft.pattern,
    unit: draft.unit,
    isReversed: draft.isReversed,
    step_nm: step.value,
    stillWithin_steps: whole(draft.stillWithin),
    stillFor_ms: whole(draft.stillFor),
    every_ms: whole(draft.every),
    gaugeId: draft.gaugeId,
  };
  if (source === 'practice') return { settings: { source, ...says, practice: draft.practice }, refusal: null };
  const settings: LineSettings = {
    source,
    ...says,
    path: draft.path,
    baudRate: whole(draft.baudRate),
    dataBits: draft.dataBits === '7' ? 7 : 8,
    parity: draft.parity,
    stopBits: draft.stopBits === '2' ? 2 : 1,
    request: draft.request,
  };
  return { settings, refusal: null };
}

function whole(typed: string): number {
  return /^\d{1,7}$/.test(typed.trim()) ? Number(typed) : 0;
}
