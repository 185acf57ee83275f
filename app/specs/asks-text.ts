// What a line of a list expects, as a person types it: a count, choices, or how fast and how long a stall may be.
import { accept, type Result, refuse } from '../base/result.ts';
import type { Asks } from './spec-list.ts';

const offMark = /\s*\(off\)$/i;
const stall = /^(\d{3,5})\s*(?:-|–|to)\s*(\d{3,5})\s*(?:rpm)?[\s,]+(\d{1,2})\s*s?$/i;

/** Reads "4", "smooth, scored (off)" or "2100-2400, 5 s" by the kind of line; the other kinds expect nothing. */
export function parseAsks(kind: Asks['kind'], typed: string): Result<Asks> {
  const text = typed.trim();
  switch (kind) {
    case 'tick':
    case 'words':
    case 'change':
      return accept({ kind });
    case 'count':
      return /^\d{1,3}$/.test(text)
        ? accept({ kind, expected: Number(text) })
        : refuse('count', 'Type how many there should be, such as 4.');
    case 'choice': {
      const options = text
        .split(',')
        .map((each) => each.trim())
        .filter((each) => each !== '')
        .map((each) => ({ words: each.replace(offMark, ''), isGood: !offMark.test(each) }));
      return options.length >= 2 && options.length <= 12
        ? accept({ kind, options })
        : refuse('choice', 'Type two to twelve choices with commas, such as smooth, scored (off).');
    }
    case 'stall': {
      const [, low, high, seconds] = stall.exec(text) ?? [];
      const longestSeconds = Number(seconds);
      return seconds !== undefined && longestSeconds >= 1 && longestSeconds <= 60
        ? accept({ kind, lowRpm: Number(low), highRpm: Number(high), longestSeconds })
        : refuse('stall', 'Type the speed and the longest time, such as 2100-2400 rpm, 5 s.');
    }
  }
}

/** A line that `parseAsks` reads back as the same; empty where nothing is expected. */
export function asksText(asks: Asks): string {
  switch (asks.kind) {
    case 'tick':
    case 'words':
    case 'change':
      return '';
    case 'count':
      return String(asks.expected);
    case 'choice':
      return asks.options.map(({ words, isGood }) => (isGood ? words : `${words} (off)`)).join(', ');
    case 'stall':
      return `${asks.lowRpm}–${asks.highRpm} rpm, ${asks.longestSeconds} s`;
  }
}
