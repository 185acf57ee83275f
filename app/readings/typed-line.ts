// One typed line of a reading, as a builder means it: "4 23", "4+23" on a number pad, "96 23" off a dial that ran
// backwards, "4-5 23" for a wavering needle, "30 31 tight" for leaves. What is ambiguous is asked, never guessed.
import { accept, type Result, refuse } from '../base/result.ts';
import { type DecimalMark, formatAmount, formatLengthTwice } from '../quantities/format-amount.ts';
import { type AmountField, parseAmount } from '../quantities/parse-amount.ts';
import { type LengthUnit, type Quantity, unitNamed } from '../quantities/units.ts';
import type { ReadingMethod } from '../specs/spec-sheet.ts';

export type LineField = {
  readonly method: ReadingMethod;
  readonly quantity: Quantity;
  /** The unit of bare numbers. */
  readonly unit: string;
  readonly decimalMark: DecimalMark;
  /** Counts of the dial's face to one turn. */
  readonly dialFaceCounts: number;
  readonly isZeroedAgain: boolean;
  /** What a lone number by air stands for; null asks. */
  readonly meaning: 'air only' | 'total' | null;
};

/** Amounts in base units of the quantity; lengths in nanometres. */
export type TypedReading =
  | {
      readonly method: 'air';
      readonly push: number | null;
      readonly air: number;
      readonly isZeroedAgain: boolean;
      readonly isAirOnly: boolean;
      /** Half of how far the needle wavered, push and travel together. */
      readonly waver: number;
    }
  | { readonly method: 'feeler'; readonly goes: number; readonly stops: number; readonly feel: '' | 'tight' | 'easy' }
  | {
      readonly method: 'dial' | 'direct' | 'count' | 'drop';
      readonly amount: number;
      /** Both numbers, where two were typed: bore and shaft, start and end, the dial at either end. */
      readonly between?: { readonly first: number; readonly second: number };
    };

const inch_nm = 25_400_000;
const metre_nm = 1_000_000_000;

/** The reading a typed line means, or the question to ask about it. */
export function parseLine(typed: string, field: LineField): Result<TypedReading> {
  switch (field.method) {
    case 'air':
      return parseAirLine(typed, field);
    case 'feeler':
      return parseFeelerLine(typed, field);
    default:
      return parseAmountLine(typed, field, field.method);
  }
}

/** What a reading says by itself, in base units; null for air only, which is no clearance. */
export function valueOfReading(reading: TypedReading): number | null {
  switch (reading.method) {
    case 'air':
      if (reading.isAirOnly) return null;
      return reading.isZeroedAgain ? reading.air : reading.air + (reading.push ?? 0);
    case 'feeler':
      return (reading.goes + reading.stops) / 2;
    default:
      return reading.amount;
  }
}

/** The reading said back at once: a length in both units, anything else in its own. */
export function sayBack(reading: TypedReading, field: Pick<LineField, 'quantity' | 'unit' | 'decimalMark'>): string {
  const value = valueOfReading(reading);
  if (value === null && reading.method === 'air') return `air only: ${sayAmount(reading.air, field)}`;
  return sayAmount(value ?? 0, field);
}

function sayAmount(amount: number, field: Pick<LineField, 'quantity' | 'unit' | 'decimalMark'>): string {
  if (field.quantity === 'length') {
    const unit: LengthUnit = field.unit === 'mm' ? 'mm' : 'thou';
    return formatLengthTwice(amount, unit, field.decimalMark);
  }
  return `${formatAmount(amount, unitNamed(field.unit), { decimalMark: field.decimalMark })} ${field.unit}`.trim();
}

function amountField(field: LineField, what: string): AmountField {
  const largest = field.method === 'direct' ? metre_nm : inch_nm;
  return {
    quantity: field.quantity,
    unit: field.unit,
    decimalMark: field.decimalMark,
    what,
    ...(field.quantity === 'length' ? { largest } : {}),
  };
}

// "4 23", "4+23", ".004 .023 in": numbers apart by blanks or a plus; a unit at the end holds for all bare numbers.
function numbersOf(typed: string): string[] {
  const text = typed
    .trim()
    .replace(/−/g, '-')
    .replace(/(\d)\s+(thou|th|t|mil|inches|inch|in|mm|psi|kPa|bar)(?=\s|\+|$)/gi, '$1$2');
  const isInchFraction = /^-?(\d+\s+)?\d+\/\d+(in|inch|")?$/i.test(text);
  const parts = isInchFraction ? [text] : text.split(/\s*\+\s*|\s+/).filter((part) => part !== '');
  const unit = /\d([a-z"]+)$/i.exec(parts.at(-1) ?? '')?.[1] ?? '';
  return parts.map((part) => (/\d$/.test(part) && !part.includes('/') ? part + unit : part));
}

function parseAirLine(typed: string, field: LineField): Result<TypedReading> {
  const parts = numbersOf(typed);
  const numbers: Array<{ amount: number; waver: number }> = [];
  for (const part of parts) {
    const number = parseWavering(part, amountField(field, 'a clearance'));
    if (!number.ok) return number;
    numbers.push(number.value);
  }
  const [first, second] = numbers;
  if (!first) return refuse('empty', 'Type push-down and air travel, such as 4\u00a023.');
  if (numbers.length > 2) {
    return refuse(
      'too-many-numbers',
      `“${typed.trim()}” holds ${numbers.length} numbers: type push-down and air travel, such as 4\u00a023.`,
    );
  }
  if (!second) {
    if (field.meaning === null) {
      return refuse(
        'one-number',
        `Is ${typed.trim()} the air travel alone, or the whole clearance? Press A for air only, T for the whole.`,
      );
    }
    if (first.amount < 0) return negative(typed);
    const isAirOnly = field.meaning === 'air only';
    return accept({
      method: 'air',
      push: null,
      air: first.amount,
      isZeroedAgain: !isAirOnly,
      isAirOnly,
      waver: first.waver,
    });
  }
  if (second.amount < 0) return negative(typed);
  // One count of the face is 0.001 in on an inch dial and 0.01 mm on a metric one.
  const face_nm = field.dialFaceCounts * (field.unit === 'mm' ? 10_000 : 25_400);
  const pressed = Math.abs(first.amount);
  const push = first.amount > 0 && pressed > face_nm / 2 && pressed <= face_nm ? face_nm - pressed : pressed;
  return accept({
    method: 'air',
    push,
    air: second.amount,
    isZeroedAgain: field.isZeroedAgain,
    isAirOnly: false,
    waver: field.isZeroedAgain ? second.waver : first.waver + second.waver,
  });
}

function negative(typed: string): ReturnType<typeof refuse> {
  return refuse('negative', `“${typed.trim()}”: air lifts the plate, so air travel is typed without a minus.`);
}

function parseWavering(part: string, field: AmountField): Result<{ amount: number; waver: number }> {
  const match = /^(-?[\d.,]+)([a-z"]*)-([\d.,]+)([a-z"]*)$/i.exec(part);
  if (!match) {
    const amount = parseAmount(part, field);
    return amount.ok ? accept({ amount: amount.value, waver: 0 }) : amount;
  }
  const [, lowText = '', lowUnit = '', highText = '', highUnit = ''] = match;
  const low = parseAmount(lowText + (lowUnit || highUnit), field);
  if (!low.ok) return low;
  const high = parseAmount(highText + highUnit, field);
  if (!high.ok) return high;
  if (high.value <= low.value)
    return refuse('waver', `“${part}” runs backwards: type the lower end of the waver first.`);
  return accept({ amount: Math.floor((low.value + high.value) / 2), waver: Math.ceil((high.value - low.value) / 2) });
}

function parseFeelerLine(typed: string, field: LineField): Result<TypedReading> {
  const feel = /\btight\b/i.test(typed) ? 'tight' : /\beasy\b/i.test(typed) ? 'easy' : '';
  const numbers = numbersOf(typed.replace(/\b(tight|easy|goes|stops)\b/gi, ' '));
  if (numbers.length !== 2) {
    return refuse('two-leaves', 'Type the leaf that goes and the leaf that stops, such as 30\u00a031.');
  }
  const leaves: number[] = [];
  for (const part of numbers) {
    const leaf = parseAmount(part, amountField(field, 'a feeler leaf'));
    if (!leaf.ok) return leaf;
    if (leaf.value <= 0) return refuse('negative', `“${typed.trim()}”: a leaf has a thickness above nothing.`);
    leaves.push(leaf.value);
  }
  const [goes = 0, stops = 0] = leaves;
  if (stops <= goes) {
    const said = (amount: number) => sayAmount(amount, field);
    return refuse(
      'leaves',
      `The leaf that stops (${said(stops)}) must be thicker than the one that goes (${said(goes)}).`,
    );
  }
  return accept({ method: 'feeler', goes, stops, feel });
}

function parseAmountLine(
  typed: string,
  field: LineField,
  method: 'dial' | 'direct' | 'count' | 'drop',
): Result<TypedReading> {
  const text =
    method === 'direct'
      ? typed.replace(/(\d\s*[a-z"]*)\s*-\s*(?=[\d.,])/gi, (all, before) => (all.includes('/') ? all : `${before} `))
      : typed;
  const whats = { dial: 'a travel', direct: 'a size', count: 'a count', drop: 'a pressure' };
  const amounts: number[] = [];
  for (const part of inInches(numbersOf(text), field)) {
    const amount = parseAmount(part, amountField(field, whats[method]));
    if (!amount.ok) return amount;
    amounts.push(amount.value);
  }
  const [first, second] = amounts;
  if (first === undefined) return refuse('empty', `Type ${whats[method]} first.`);
  if (amounts.length > (method === 'count' ? 1 : 2)) {
    return refuse(
      'too-many-numbers',
      `“${typed.trim()}” holds ${amounts.length} numbers, too many for ${whats[method]}.`,
    );
  }
  if (second === undefined) {
    return first < 0 && method !== 'dial'
      ? refuse('negative', `“${typed.trim()}” is below nothing.`)
      : accept({ method, amount: Math.abs(first) });
  }
  const amount = method === 'dial' ? Math.abs(second - first) : first - second;
  if (amount < 0) {
    return method === 'direct'
      ? refuse('negative', `“${typed.trim()}”: the shaft is larger than the bore; type the bore first.`)
      : refuse('negative', `“${typed.trim()}”: the pressure rose; type the pressure at the start first.`);
  }
  return accept({ method, amount, between: { first, second } });
}

// A bore and a shaft off an inch micrometer, "1.5025 1.5000". Nothing at a bench reads thousandths of a thou, so such
// a pair can only be inches.
function inInches(numbers: readonly string[], { method, unit }: LineField): readonly string[] {
  const isPair = method === 'direct' && unit === 'thou' && numbers.length === 2;
  return isPair && numbers.every((each) => /^\d*[.,]\d{3,}$/.test(each)) ? numbers.map((each) => `${each}in`) : numbers;
}
