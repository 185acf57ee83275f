// What can be answered to a line of a list, and where the line stands then.
import { accept, type Result, refuse } from '../base/result.ts';
import type { Asks } from '../specs/spec-list.ts';
import type { Answer, LineStanding } from './lists.contract.ts';

const fitting: Readonly<Record<Asks['kind'], Answer['kind']>> = {
  tick: 'done',
  count: 'counted',
  choice: 'chosen',
  words: 'written',
  change: 'changed',
  stall: 'stalled',
};

/** The answer itself, or a refusal when the line asks for something else. Not so and does not apply fit every line. */
export function fittingAnswer(asks: Asks, given: Answer): Result<Answer> {
  if (given.kind === 'not so' || given.kind === 'does not apply') return accept(given);
  if (given.kind !== fitting[asks.kind]) return refuse('answer', 'This line asks for something else.');
  if (given.kind === 'chosen' && asks.kind === 'choice' && !asks.options.some(({ words }) => words === given.option)) {
    return refuse('answer', `Choose one of: ${asks.options.map(({ words }) => words).join(', ')}.`);
  }
  return accept(given);
}

/** Where a line stands with its newest answer; null is no answer. */
export function standingOfLine(asks: Asks, given: Answer | null): LineStanding {
  if (given === null) return 'open';
  switch (given.kind) {
    case 'does not apply':
      return 'does not apply';
    case 'not so':
      return 'off';
    case 'done':
    case 'written':
    case 'changed':
      return 'good';
    case 'counted':
      return asks.kind === 'count' && given.count === asks.expected ? 'good' : 'off';
    case 'chosen':
      return asks.kind === 'choice' && asks.options.some(({ words, isGood }) => isGood && words === given.option)
        ? 'good'
        : 'off';
    case 'stalled':
      return asks.kind === 'stall' && stallProblem(asks, given) === null ? 'good' : 'off';
  }
}

/** A line that keeps no gate shut: good, does not apply, or off with a reason why it stands. */
export function isSettled(standing: LineStanding, reason: string): boolean {
  return standing === 'good' || standing === 'does not apply' || (standing === 'off' && reason.trim() !== '');
}

/** What is off about a stall, in words; null where nothing is. */
export function stallProblem(
  asks: { readonly lowRpm: number; readonly highRpm: number; readonly longestSeconds: number },
  stall: { readonly rpm: number; readonly seconds: number },
): string | null {
  const problems = [
    stall.rpm < asks.lowRpm ? `low by ${asks.lowRpm - stall.rpm} rpm` : '',
    stall.rpm > asks.highRpm ? `high by ${stall.rpm - asks.highRpm} rpm` : '',
    stall.seconds > asks.longestSeconds ? `over the cap of ${asks.longestSeconds} s` : '',
  ].filter((each) => each !== '');
  return problems.length === 0 ? null : problems.join('; ');
}
