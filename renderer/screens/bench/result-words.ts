// The sentence a take ends in, and the act it leads to.
import type { AmountWords } from '../../../app/charts/amounts.ts';
import type { PackOfJob } from '../../../app/packs/packs.contract.ts';
import type { Take } from '../../../app/readings/readings.contract.ts';
import type { Check } from '../../../app/specs/spec-sheet.ts';
import type { AtCheck } from './at-check.ts';
import { verdictSentence } from './check-facts.ts';
import { expectedOf } from './reading-plan.ts';

/** "26.0 ± 1.5, 25 to 27. In." */
export function resultSentence({ evaluation }: Take, { check, words }: Pick<AtCheck, 'check' | 'words'>): string {
  const { mean, min, max, expanded, spots, verdict, variantName, remarks } = evaluation;
  if (mean === null || min === null || max === null) return remarks[0] ?? verdict.reason;
  if (variantName !== null) return `${words.full(mean)}: ${variantName}.`;
  const sure = expanded === null ? '' : ` ± ${words.full(expanded)}`;
  const range = spots.length > 1 ? `, ${words.short(min)} to ${words.short(max)}` : '';
  return `${words.full(mean)}${sure}${range}. ${verdictSentence(verdict, check, words)}`;
}

/** "Predicted 25.5 ± 3.2, read 26.0." once a mock-up was read that the plates had something to say about. */
export function expectedSentence(take: Take, at: Pick<AtCheck, 'check' | 'pack' | 'words'>): string | null {
  const { full } = at.words;
  const { mean } = take.evaluation;
  const expected = expectedOf(take, at);
  if (!expected || mean === null) return null;
  return `Predicted ${full(expected.mean_nm)} ± ${full(expected.expanded_nm)}, read ${full(mean)}.`;
}

/** "Mock-up 1: predicted 25.5, read 26.0. In." of what sits in the pack now. */
export function newestSentence({ mockUps }: PackOfJob, check: Pick<Check, 'quantity'>, words: AmountWords): string {
  const newest = mockUps.at(-1);
  if (!newest) return 'Nothing is entered yet.';
  const { number, predicted, read } = newest;
  const figures = [
    predicted && `predicted ${words.full(predicted.mean_nm)}`,
    read ? `read ${words.full(read.mean_nm)}. ${verdictSentence(read.verdict, check, words)}` : 'not read yet.',
  ];
  return `${number === 0 ? 'As found' : `Mock-up ${number}`}: ${figures.filter(Boolean).join(', ')}`;
}

export type NextAct = 'keep it' | 'read it final' | 'what to swap' | 'fit a washer' | 'measure more' | 'read it again';

/** What the filled key does after a take. */
export function nextAct(
  { evaluation, mode, phase, method }: Take,
  { check, pack }: Pick<AtCheck, 'check' | 'pack'>,
): NextAct {
  switch (evaluation.verdict.word) {
    case 'in':
      return mode === 'quick' && phase !== 'as found' ? 'read it final' : 'keep it';
    case 'too close to call':
      return 'measure more';
    case 'not judged':
      return 'read it again';
    default:
      if (pack && method === check.method) return 'what to swap';
      return check.shims_nm.length > 0 ? 'fit a washer' : 'read it again';
  }
}
