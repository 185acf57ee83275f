// Where the build stands in one line: what is open, what is off, what reads outside its limits.
import { verdictRole } from '../charts/verdict-mark.ts';
import { shownVerdict } from '../readings/verdict-words.ts';
import type { CheckOfJob } from './jobs.contract.ts';
import type { ListOfJob } from './lists.contract.ts';

type CheckStanding = Pick<CheckOfJob, 'name' | 'latest' | 'quantity' | 'override'>;

/**
 * "Open: 3 lines, 2 checks. Off: Check balls. Outside the limits: Direct clearance (tight)." What somebody let stand with a
 * reason is not named again; a check that is judged by no limits counts as read.
 */
export function sayBuild(checks: readonly CheckStanding[], lists: readonly ListOfJob[]): string {
  const lines = lists.flatMap((list) => list.lines.filter((line) => !line.isSettled));
  const read = checks
    .filter(({ override }) => override === null)
    .map(({ name, latest, quantity }) => ({ name, verdict: shownVerdict(latest?.verdict ?? null, quantity) }));
  const outside = read.filter(({ verdict }) => verdictRole(verdict) === 'out');
  const openLines = lines.filter(({ standing }) => standing === 'open').length;
  const openChecks = read.filter(({ verdict }) => verdict === 'not read').length;
  const parts = [
    ['Open', [...some(openLines, 'line'), ...some(openChecks, 'check')]],
    ['Off', lines.filter(({ standing }) => standing === 'off').map(({ words }) => words)],
    ['Outside the limits', outside.map(({ name, verdict }) => `${name} (${verdict})`)],
    ['Too close to call', read.filter(({ verdict }) => verdict === 'too close to call').map(({ name }) => name)],
  ] as const;
  const said = parts.filter(([, items]) => items.length > 0).map(([what, items]) => `${what}: ${items.join(', ')}.`);
  return said.length === 0 ? 'Everything is answered, read and in.' : said.join(' ');
}

function some(count: number, what: string): string[] {
  return count === 0 ? [] : [`${count} ${what}${count === 1 ? '' : 's'}`];
}
