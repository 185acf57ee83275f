// Where a check stands, as its row and its page say it.
import type { BandFacts } from '../../../app/charts/band-axis.ts';
import { type Verdict as VerdictWord, verdictWords } from '../../../app/charts/verdict-mark.ts';
import type { CheckOfJob, Standing } from '../../../app/jobs/jobs.contract.ts';
import { shownVerdict } from '../../../app/readings/verdict-words.ts';
import type { Settings } from '../../../app/shop/shop.contract.ts';
import type { Check } from '../../../app/specs/spec-sheet.ts';
import { amountWords } from '../../text/amount-words.ts';
import { drawnLimits } from '../../text/check-words.ts';

export type SaidVerdict = { readonly mark: VerdictWord; readonly words: string };

/** The verdict's shape and its words: "loose by 2.0", the variant it decided for, "not read yet". */
export function saidVerdict(
  standing: Pick<Standing, 'verdict' | 'variantName'> | null,
  check: Pick<Check, 'quantity' | 'unit'>,
  settings: Settings,
): SaidVerdict {
  if (!standing) return { mark: 'not read', words: 'not read yet' };
  const { verdict, variantName } = standing;
  const mark = shownVerdict(verdict, check.quantity);
  if (variantName !== null) return { mark, words: variantName };
  const by = verdict.by === null ? null : amountWords(check, settings).full(verdict.by);
  return { mark, words: verdictWords(mark, by) };
}

/** What the small band of a row draws. What was found is drawn beside what is now, not under it. */
export function bandOf(check: CheckOfJob): Omit<BandFacts, 'readings' | 'guard' | 'predicted'> {
  const { latest, asFound } = check;
  const isStillAsFound = latest?.takeId === asFound?.takeId;
  return {
    ...drawnLimits(check.limits),
    now: latest?.value == null ? null : { label: 'now', value: latest.value, expanded: latest.expanded },
    asFound: isStillAsFound ? null : (asFound?.value ?? null),
  };
}

/** "as found", "mock-up 2", "final". */
export function phaseWords({ phase, mockUpNumber }: Pick<Standing, 'phase' | 'mockUpNumber'>): string {
  return phase === 'mock-up' ? `mock-up ${mockUpNumber ?? ''}`.trim() : phase;
}

/** The unit of a group, said once, or null where its checks have several. */
export function sharedUnit(checks: readonly CheckOfJob[], settings: Settings): string | null {
  const units = new Set(checks.map((check) => amountWords(check, settings).unit));
  return units.size === 1 ? ([...units][0] ?? null) : null;
}
