// What a reading looks like on a line, written in a few plain pieces, and the number found in a frame by it.
// The pieces are matched by hand and not by a regular expression, so that no pattern can make a frame cost more than
// its length times its length.
import { accept, type Result, refuse } from '../base/result.ts';

type Piece =
  | { readonly kind: 'number' | 'unit' | 'digits' | 'letters' | 'any' | 'blanks' }
  | { readonly kind: 'exactly'; readonly text: string };

export type ReadingPattern = readonly Piece[];

/** A number as it stood in the frame, and the unit if the frame named it. */
export type FoundNumber = { readonly number: string; readonly unit: 'mm' | 'in' | null };

const pieceNames = ['number', 'unit', 'digits', 'letters', 'any'] as const;
const mostPieces = 24;

/**
 * A pattern from its text: `{number}` is the reading with its sign, `{unit}` is mm or in, `{digits}`, `{letters}` and
 * `{any}` are passed over, a blank stands for any blanks or none, everything else stands for itself. "01A{number}".
 */
export function parsePattern(text: string): Result<ReadingPattern> {
  const pieces: Piece[] = [];
  for (const [part] of text.trim().matchAll(/\{[^{}]*\}|\s+|[{}]|[^{}\s]+/g)) {
    const name = pieceNames.find((each) => part === `{${each}}`);
    if (name) pieces.push({ kind: name });
    else if (part.trim() === '') pieces.push({ kind: 'blanks' });
    else if (/[{}]/.test(part)) {
      return refuse('piece', `${part} is no piece: use {number}, {unit}, {digits}, {letters} or {any}.`);
    } else pieces.push({ kind: 'exactly', text: part });
  }
  const count = (kind: Piece['kind']) => pieces.filter((piece) => piece.kind === kind).length;
  if (count('number') !== 1) return refuse('number', 'Say once where the reading stands: {number}.');
  if (count('unit') > 1) return refuse('unit', '{unit} can stand only once.');
  if (pieces.length > mostPieces) return refuse('pieces', `More than ${mostPieces} pieces: use {any}.`);
  return accept(pieces);
}

/** The number in a frame that is as the pattern says from end to end; null where it is not. */
export function findNumber(pattern: ReadingPattern, frame: string): FoundNumber | null {
  // Where a piece was tried at a place and what follows did not fit, it never will: each pair is tried once.
  const failed = new Set<number>();
  const match = (index: number, at: number): Partial<FoundNumber> | null => {
    const piece = pattern[index];
    if (!piece) return at === frame.length ? {} : null;
    const key = index * (frame.length + 1) + at;
    if (failed.has(key)) return null;
    for (const end of endsOf(piece, frame, at)) {
      const rest = match(index + 1, end);
      if (rest === null) continue;
      if (piece.kind === 'number') return { ...rest, number: frame.slice(at, end) };
      if (piece.kind === 'unit') return { ...rest, unit: frame[at]?.toLowerCase() === 'm' ? 'mm' : 'in' };
      return rest;
    }
    failed.add(key);
    return null;
  };
  const found = match(0, 0);
  return found?.number === undefined ? null : { number: found.number, unit: found.unit ?? null };
}

/** Where a piece that begins `at` may end, likeliest first. */
function endsOf(piece: Piece, frame: string, at: number): readonly number[] {
  const run = (isOne: RegExp) => {
    let end = at;
    while (isOne.test(frame[end] ?? '')) end += 1;
    return end;
  };
  const longestFirst = (end: number) => Array.from({ length: end - at }, (_, back) => end - back);
  switch (piece.kind) {
    case 'exactly':
      return frame.startsWith(piece.text, at) ? [at + piece.text.length] : [];
    case 'blanks':
      return [run(/\s/)];
    case 'digits':
      return longestFirst(run(/\d/));
    case 'letters':
      return longestFirst(run(/[a-z]/i));
    case 'any':
      return Array.from({ length: frame.length - at + 1 }, (_, more) => at + more);
    case 'unit': {
      const end = /^["]/.test(frame.slice(at)) ? at + 1 : run(/[a-z]/i);
      return /^(mm|in|inch|")$/i.test(frame.slice(at, end)) ? [end] : [];
    }
    case 'number': {
      const [number] = /^[+-]?[ ]*(\d+[.,]?\d*|[.,]\d+)/.exec(frame.slice(at)) ?? [];
      return number === undefined ? [] : [at + number.length];
    }
  }
}

const perUnit_nm = { mm: 1_000_000n, in: 25_400_000n } as const;
const largest_nm = 1_000_000_000n;

/** The number in whole nanometres; null where it is finer than one or longer than a metre. */
export function lengthOf({ number, unit }: FoundNumber, unitOfLine: 'mm' | 'in'): number | null {
  const [whole = '', decimals = ''] = number.replace(/[+\- ]/g, '').split(/[.,]/);
  const scaled = BigInt(whole + decimals) * perUnit_nm[unit ?? unitOfLine];
  const divisor = 10n ** BigInt(decimals.length);
  if (scaled % divisor !== 0n || scaled / divisor > largest_nm) return null;
  const length = Number(scaled / divisor);
  return number.startsWith('-') && length !== 0 ? -length : length;
}
