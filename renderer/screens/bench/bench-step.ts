// Where the hand is in reading a check: one step at a time, each with one prompt and one filled key.
import type { AtCheck } from './at-check.ts';
import { firstPlan, isOfThePackNow, isRead, type ReadingPlan } from './reading-plan.ts';

export type Step =
  | { readonly at: 'set up' }
  /** Ring seated, plates counted, last friction down? */
  | { readonly at: 'ring'; readonly plan: ReadingPlan }
  /** Air on and off twice. */
  | { readonly at: 'seat'; readonly plan: ReadingPlan }
  /** A take was left half read: did the drum move since? */
  | { readonly at: 'resume' }
  /** `plan` is what its first line begins; null goes on with the newest take. `rounds` asks for more than its own. */
  | { readonly at: 'read'; readonly plan: ReadingPlan | null; readonly rounds: number | null }
  | { readonly at: 'redo'; readonly readingId: number; readonly back: Step }
  | { readonly at: 'result' }
  | { readonly at: 'contents' }
  | { readonly at: 'mock-ups'; readonly back: Step }
  | { readonly at: 'swaps' }
  | { readonly at: 'swap'; readonly changes: number }
  | { readonly at: 'own swap' }
  | { readonly at: 'loose' }
  /** A height was written down wrong. */
  | { readonly at: 'correct'; readonly of: 'pack' | 'loose'; readonly back: Step }
  | { readonly at: 'washer' }
  | { readonly at: 'keep' };

export type Go = (step: Step) => void;

/** Where a check is taken up again: at the spot it was left, at its result, or at its beginning. */
export function firstStep(at: AtCheck): Step {
  const take = at.takes.at(-1);
  if (!take || !isOfThePackNow(take, at.pack)) return begin(at);
  if (isRead(take, at.check)) return { at: 'result' };
  const mayHaveMoved = (take.method === 'air' || take.method === 'feeler') && take.readings.length > 0;
  if (mayHaveMoved) return { at: 'resume' };
  return take.readings.length > 0 || take.method === 'air' ? goOn : begin(at);
}

export const goOn: Step = { at: 'read', plan: null, rounds: null };

/** A new take: by air the setup card comes first, anything else is read at once. */
export function begin(at: AtCheck): Step {
  return at.check.method === 'air' ? { at: 'set up' } : { at: 'read', plan: firstPlan(at), rounds: null };
}
