// The limits of a check as one typed line, in the shop's words, and back: "20-30", "25 20-30", "min 1.125", "max 10",
// "90 wide: 90±3, 118 wide: 118±3". What could mean two things is asked, never guessed.
import { accept, type Result, refuse } from '../base/result.ts';
import type { AmountField } from '../quantities/parse-amount.ts';
import { unitNamed } from '../quantities/units.ts';
import { exactText, parseAmounts } from './exact-text.ts';
import { limitsProblem } from './sheet-problems.ts';
import type { Limits } from './spec-sheet.ts';

const figures = String.raw`[+−-]?(?:(?:\d+\s+)?\d+/\d+|[\d.,]*\d)`;
const unit = String.raw`(?:\s*(?!(?:to|min|max|or)\b)(?:[a-z°]+(?:[-.·][a-z]+)?|"))?`;
const amount = `(${figures}${unit})`;
const dash = String.raw`\s*(?:-|–|to)\s*`;
const within = String.raw`\s*±\s*`;
const whole = (pattern: string) => new RegExp(`^(?:${pattern})$`, 'i');

const range = whole(`${amount}${dash}${amount}`);
const target = whole(String.raw`${amount}(?:\s*[,;]?\s+|\s*\()${amount}${dash}${amount}\)?`);
const targetWithin = whole(`${amount}${within}${amount}`);
const minimum = whole(String.raw`(?:min(?:imum)?\.?|at least|≥|>=)\s*${amount}|${amount}\s*(?:min(?:imum)?|or more)`);
const maximum = whole(String.raw`(?:max(?:imum)?\.?|at most|≤|<=)\s*${amount}|${amount}\s*(?:max(?:imum)?|or less)`);
const variant = new RegExp(String.raw`\s*(?:([^±]+?)\s*:\s*)?${amount}${within}${amount}\s*(?:[,;]\s+|;|$)`, 'iy');
const alone = whole(amount);
const twoAlone = whole(String.raw`${amount}[,;]?\s+${amount}`);
// "1-3/16" is one size to some and two to others.
const hyphenatedFraction = /(?:^|\s)\d+-\d+\/\d+/;

/**
 * The limits that a typed line means, in base units. Bare figures are in the field's unit; a unit at the end holds for
 * all of them. `+-` and `+/-` serve as ±. Variants that were given no name are called by their nominal. Refuses in one
 * sentence: letters, one lone figure, two that could be a range or a target, a hyphenated fraction, limits upside down,
 * a target outside them, variants that overlap, and whatever `parseAmount` refuses.
 */
export function parseLimits(typed: string, field: AmountField): Result<Limits> {
  const text = typed.trim().replace(/\+\/?-/g, '±');
  const read = readLimits(text, typed.trim(), field);
  if (!read.ok) return read;
  const problem = limitsProblem(read.value, unitNamed(field.unit));
  if (problem !== undefined) return refuse('limits', problem.charAt(0).toUpperCase() + problem.slice(1));
  return read;
}

/** The limits as a line that `parseLimits` reads back as the same; for variants, as long as no name holds a ±. */
export function limitsText(limits: Limits, field: AmountField): string {
  const written = (amounts: readonly number[], join: (figures: readonly string[]) => string) => {
    const exact = exactText(amounts, field);
    return `${join(exact.figures)} ${exact.unit}`.trim();
  };
  switch (limits.kind) {
    case 'range':
      return written([limits.low, limits.high], ([low = '', high = '']) => stretch(low, high));
    case 'target':
      return written(
        [limits.target, limits.low, limits.high],
        ([aim = '', low = '', high = '']) => `${aim} ${stretch(low, high)}`,
      );
    case 'minimum':
      return written([limits.low], ([low = '']) => `min ${low}`);
    case 'maximum':
      return written([limits.high], ([high = '']) => `max ${high}`);
    case 'variants':
      return written(
        limits.variants.flatMap(({ nominal, within }) => [nominal, within]),
        (all) =>
          limits.variants.map(({ name }, index) => `${name}: ${all[2 * index]} ± ${all[2 * index + 1]}`).join(', '),
      );
  }
}

function stretch(low: string, high: string): string {
  return `${low}${/^−/.test(low) || /^−/.test(high) ? ' to ' : '–'}${high}`;
}

function readLimits(text: string, typed: string, field: AmountField): Result<Limits> {
  if (text === '') return refuse('empty', 'Type the limits, such as 20-30, 25 20-30, min 5 or max 10.');
  if (hyphenatedFraction.test(text)) {
    return refuse(
      'which-fraction',
      `Is “${typed}” one size or a range? Write one size with a blank, a range with “to”.`,
    );
  }
  const amounts = (pattern: RegExp) => {
    const match = pattern.exec(text)?.slice(1);
    return (
      match &&
      parseAmounts(
        match.filter((each) => each !== undefined),
        field,
      )
    );
  };
  const kinds: ReadonlyArray<readonly [RegExp, (amounts: readonly number[]) => Limits]> = [
    [range, ([low = 0, high = 0]) => ({ kind: 'range', low, high })],
    [target, ([aim = 0, low = 0, high = 0]) => ({ kind: 'target', target: aim, low, high })],
    [targetWithin, ([aim = 0, by = 0]) => ({ kind: 'target', target: aim, low: aim - by, high: aim + by })],
    [minimum, ([low = 0]) => ({ kind: 'minimum', low })],
    [maximum, ([high = 0]) => ({ kind: 'maximum', high })],
  ];
  for (const [pattern, limitsOf] of kinds) {
    const read = amounts(pattern);
    if (read) return read.ok ? accept(limitsOf(read.value)) : read;
  }
  const single = amounts(alone);
  if (single) {
    return single.ok
      ? refuse(
          'which-limit',
          `Is “${typed}” the least, the most or the target? Type min, max, or a target with its range.`,
        )
      : single;
  }
  if (twoAlone.test(text)) {
    return refuse('range-or-target', `“${typed}” is not clear: type a range as 20-30, a target as 25 20-30.`);
  }
  return (
    readVariants(text, field) ??
    refuse('not-limits', `“${typed}” is not a limit: type 20-30, 25 20-30, min 5 or max 10.`)
  );
}

/** Two or more of "name: nominal ± within"; undefined when the line is no such list. */
function readVariants(text: string, field: AmountField): Result<Limits> | undefined {
  const entries: Array<{ readonly name: string; readonly typed: readonly [string, string] }> = [];
  for (let from = 0; from < text.length; from = variant.lastIndex) {
    variant.lastIndex = from;
    const [, name, nominal, by] = variant.exec(text) ?? [];
    if (nominal === undefined || by === undefined) return undefined;
    entries.push({ name: name ?? nominal.trim(), typed: [nominal, by] });
  }
  if (entries.length === 1)
    return refuse('one-variant', `“${text}” names one variant: type two or more to tell apart.`);
  const amounts = parseAmounts(
    entries.flatMap((entry) => entry.typed),
    field,
  );
  if (!amounts.ok) return amounts;
  const variants = entries.map(({ name }, index) => ({
    name,
    nominal: amounts.value[2 * index] ?? 0,
    within: amounts.value[2 * index + 1] ?? 0,
  }));
  const flat = variants.find(({ within }) => within <= 0);
  if (flat) return refuse('within', `${flat.name}: what stands behind ± must be more than nothing.`);
  return accept({ kind: 'variants', variants });
}
