// For each cause a builder wants to tell apart: what is on record for it, against it, and what is missing.
import { boundsOf } from '../readings/judge-take.ts';
import { methodWords } from '../readings/method-words.ts';
import type { CauseFacts, Fact, FactLine } from './cause-facts.ts';
import { causeRules } from './cause-rules.ts';
import { type Cause, type Certainty, causes } from './causes.ts';
import type { RecordedCheck } from './recorded-build.ts';
import { sayAmount } from './say-amount.ts';
import type { CauseLine, CauseOfTrace, Trace } from './trace.contract.ts';

type Ruled = CauseOfTrace & { readonly suspects: readonly FactLine[]; readonly least: number };

/**
 * Every cause with what speaks for and against it, the rules as they stand in cause-rules.ts: those with the most unusual
 * fact for them first, then those with any, then the others in the order they are asked. Nothing here decides.
 */
export function causesOfTrace(
  facts: CauseFacts,
  said: ReadonlyMap<Cause, Certainty>,
): Pick<Trace, 'causes' | 'wouldSettle'> {
  const ruled = causes.map((cause) => ruledCause(cause, facts, said.get(cause) ?? null)).toSorted(strongestFirst);
  const suspects = ruled.slice(0, firstSuspects).flatMap((each) => each.suspects);
  return {
    causes: ruled.map(({ suspects: _, least: __, ...cause }) => cause),
    wouldSettle: [...new Set(suspects.flatMap((line) => settles(line, facts)))],
  };
}

/** So many causes are asked what would settle them. */
const firstSuspects = 3;

function ruledCause(cause: Cause, facts: CauseFacts, certainty: Certainty | null): Ruled {
  const { speaksFor, speaksAgainst, lookNow } = causeRules[cause];
  const suspects = speaksFor.flatMap(([fact]) => fact(facts));
  return {
    cause,
    certainty,
    speaksFor: linesOf(speaksFor, facts),
    speaksAgainst: linesOf(speaksAgainst, facts),
    lookNow: linesOf(lookNow, facts),
    suspects,
    least: suspects.reduce((least, { p }) => Math.min(least, p ?? 1), suspects.length > 0 ? 1 : 2),
  };
}

function linesOf(rules: ReadonlyArray<readonly [Fact, string]>, facts: CauseFacts): CauseLine[] {
  return rules.flatMap(([fact, because]) => fact(facts).map(({ sentence, opens }) => ({ sentence, because, opens })));
}

function strongestFirst(a: Ruled, b: Ruled): number {
  return (
    a.least - b.least || b.suspects.length - a.suspects.length || causes.indexOf(a.cause) - causes.indexOf(b.cause)
  );
}

/** What to measure now, or to read in pairs, that would confirm a suspect or clear it. */
function settles({ finding, opens, sentence }: FactLine, { build, asFound, words }: CauseFacts): string[] {
  if (opens?.kind === 'batch') {
    const name = sentence.split(':')[0] ?? '';
    return [`Look at the other builds with ${name}, and hold what is left of it beside another batch.`];
  }
  if (opens?.kind === 'packs') return ['Lay the plates that ran before on a flat one, and look for spots of heat.'];
  const recorded = build.checks.find(({ check }) => check.name === finding?.subject);
  if (!finding || !recorded) return [];
  const { check } = recorded;
  if (finding.kind === 'method') {
    const [by, meant] = [methodWords(recorded.take?.method ?? check.method), methodWords(check.method)];
    return [`Read ${check.name} at the same spots ${meant} and ${by}: the pairs tell how far the second is out.`];
  }
  if (finding.kind === 'setup')
    return [`Read ${check.name} at the same spots set up both ways: the pairs tell what the setup did to it.`];
  if (finding.kind !== 'place' || asFound.some(({ name }) => name === check.name)) return [];
  const clears = clearedBy(recorded, finding.place?.side ?? null);
  if (clears === null) return [];
  const by = methodWords(check.method);
  const read = `Read ${check.name}${by === '' ? '' : ` ${by}`} as found`;
  const bound = sayAmount(clears.bound, check, words);
  return finding.telling === 'clearance'
    ? [`${read}, then measure every friction: less the wear, ${bound} or ${clears.way} clears it.`]
    : [`${read}: ${bound} or ${clears.way} clears it.`];
}

/** The limit it lies near, and on which side of it all is well. */
function clearedBy({ check }: RecordedCheck, side: 'low' | 'high' | null): { bound: number; way: string } | null {
  const { lower, upper } = boundsOf(check.limits);
  if (side === 'low' && lower !== null) return { bound: lower, way: 'more' };
  return side === 'high' && upper !== null ? { bound: upper, way: 'less' } : null;
}
