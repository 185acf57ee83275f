// An answer to a line of a list as a person types it, and in words.
import { accept, type Result, refuse } from '../base/result.ts';
import type { Asks } from '../specs/spec-list.ts';
import { stallProblem } from './list-answers.ts';
import type { Answer } from './lists.contract.ts';

const change = /^(.+?)\s*(?:>|→)\s*(.+)$/;
const stall = /^(\d{2,5})\s*(?:rpm)?[\s,]+(\d{1,3})\s*s?$/i;

/**
 * Reads "-" as does not apply and "n" as not so on every line; else what the line asks for: "4", a choice by its
 * number or its first letters, ".062 > .086", "2250 4" for a stall of 2250 rpm held 4 s.
 */
export function parseAnswer(asks: Asks, typed: string): Result<Answer> {
  const text = typed.trim();
  if (text === '-' || text === '–') return accept({ kind: 'does not apply' });
  if (/^n$/i.test(text)) return accept({ kind: 'not so' });
  switch (asks.kind) {
    case 'tick':
      return /^(y|ok|done)?$/i.test(text) ? accept({ kind: 'done' }) : refuse('tick', 'Enter ticks it, n says not so.');
    case 'count':
      return /^\d{1,3}$/.test(text)
        ? accept({ kind: 'counted', count: Number(text) })
        : refuse('count', 'Type how many you counted.');
    case 'choice':
      return chosen(asks.options, text);
    case 'words':
      return text === ''
        ? refuse('words', 'Type what you saw, or - when it does not apply.')
        : accept({ kind: 'written', words: text });
    case 'change': {
      const [, from, to] = change.exec(text) ?? [];
      return from !== undefined && to !== undefined
        ? accept({ kind: 'changed', from, to })
        : refuse('change', 'Type old and new with > between them, such as .062 > .086.');
    }
    case 'stall': {
      const [, rpm, seconds] = stall.exec(text) ?? [];
      return Number(rpm) > 0 && Number(seconds) > 0
        ? accept({ kind: 'stalled', rpm: Number(rpm), seconds: Number(seconds) })
        : refuse('stall', 'Type the speed and how long it was held, such as 2250 4.');
    }
  }
}

function chosen(options: ReadonlyArray<{ readonly words: string }>, text: string): Result<Answer> {
  const lower = text.toLowerCase();
  const numbered = /^\d{1,2}$/.test(text) ? options[Number(text) - 1] : undefined;
  const begun = lower === '' ? [] : options.filter(({ words }) => words.toLowerCase().startsWith(lower));
  const option =
    options.find(({ words }) => words.toLowerCase() === lower) ??
    numbered ??
    (begun.length === 1 ? begun[0] : undefined);
  return option
    ? accept({ kind: 'chosen', option: option.words })
    : refuse('choice', `Choose one of: ${options.map(({ words }) => words).join(', ')}.`);
}

/** "4 in, 5 asked for"; a stall says what is off about it. */
export function sayAnswer(asks: Asks, answer: Answer): string {
  switch (answer.kind) {
    case 'done':
    case 'not so':
    case 'does not apply':
      return answer.kind;
    case 'counted':
      return asks.kind === 'count' && asks.expected !== answer.count
        ? `${answer.count} in, ${asks.expected} asked for`
        : String(answer.count);
    case 'chosen':
      return answer.option;
    case 'written':
      return answer.words;
    case 'changed':
      return `${answer.from} → ${answer.to}`;
    case 'stalled': {
      const problem = asks.kind === 'stall' ? stallProblem(asks, answer) : null;
      const said = `${answer.rpm} rpm for ${answer.seconds} s`;
      return problem === null ? said : `${said}: ${problem}`;
    }
  }
}

/** What a line asks for, in small words beside it; empty where its words say it all. */
export function sayAsks(asks: Asks): string {
  switch (asks.kind) {
    case 'tick':
    case 'words':
      return '';
    case 'count':
      return `${asks.expected} asked for`;
    case 'choice':
      return asks.options.map(({ words }) => words).join(' or ');
    case 'change':
      return 'old > new';
    case 'stall':
      return `${asks.lowRpm}–${asks.highRpm} rpm, ${asks.longestSeconds} s at most`;
  }
}
