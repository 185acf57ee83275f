// What keeps a job from moving past a stage, in words.
import type { ListTime } from '../specs/spec-list.ts';
import type { ApprovalState } from './estimate.contract.ts';
import type { CheckOfJob } from './jobs.contract.ts';
import { missingOn } from './missing.ts';
import type { Need } from './needs.ts';

/** What the book knows of a job when it is asked to move on. */
export type NeedFacts = {
  readonly complaint: string;
  readonly packs: ReadonlyArray<{ readonly name: string; readonly mockUpNumber: number | null }>;
  readonly checks: readonly CheckOfJob[];
  readonly promisedOn: string | null;
  readonly estimate: ApprovalState;
  /** Signed off, and nothing read, rebuilt or answered since. */
  readonly isSignedOff: boolean;
  readonly isDelivered: boolean;
  readonly openCores: readonly string[];
  /** Plates that came out of its packs and were not measured since. */
  readonly unmeasuredPlates: readonly string[];
  /** Parts found at teardown that nobody decided on. */
  readonly undecided: readonly string[];
  /** Every list of its sheet, and how many lines of it are neither good nor off with a reason. */
  readonly lists: ReadonlyArray<{ readonly name: string; readonly when: ListTime; readonly openLines: number }>;
};

const estimateWords: Readonly<Record<ApprovalState, string | null>> = {
  'nothing to give': 'no estimate is written',
  'to give': 'the estimate is not given',
  'to approve': 'the estimate is not approved',
  approved: null,
  over: 'the total is over what was approved',
};

/** What keeps a need from being met, as the end of a sentence; null where it is met. */
export function whatIsMissing(need: Need, facts: NeedFacts): string | null {
  switch (need) {
    case 'complaint said':
      return facts.complaint.trim() === '' ? 'what it does and when is not written down' : null;
    case 'as-found clearances read':
      return sayOf(
        facts.checks.filter((check) => check.packId !== null && check.asFound === null).map(({ name }) => name),
        'not read as found',
      );
    case 'packs entered as found':
      return sayOf(
        facts.packs.filter((pack) => pack.mockUpNumber === null).map(({ name }) => name),
        'not entered plate by plate',
      );
    case 'date promised':
      return facts.promisedOn === null ? 'no day is promised' : null;
    case 'estimate approved':
      return estimateWords[facts.estimate];
    case 'pack checks settled':
      return sayOf(openNames(facts.checks.filter((check) => check.packId !== null)), 'not settled');
    case 'all checks settled':
      return sayOf(openNames(facts.checks), 'not settled');
    case 'signed off':
      return facts.isSignedOff ? null : 'not signed off since the last reading or answer';
    case 'delivery recorded':
      return facts.isDelivered ? null : 'the delivery is not written down';
    case 'cores settled':
      return sayOf(facts.openCores, 'core not settled');
    case 'plates measured again':
      return sayOf(facts.unmeasuredPlates, 'came out and not measured again');
    case 'findings decided':
      return sayOf(facts.undecided, 'reuse, replace or machine is not decided');
    case 'teardown lists done':
      return sayOf(openLists(facts, 'teardown'), 'lines open');
    case 'build lists done':
      return sayOf(openLists(facts, 'build'), 'lines open');
    case 'final lists done':
      return sayOf(openLists(facts, 'final'), 'lines open');
  }
}

function openNames(checks: readonly CheckOfJob[]): string[] {
  const open = new Set(missingOn(checks).map(({ checkId }) => checkId));
  return checks.filter((check) => open.has(check.checkId)).map(({ name }) => name);
}

/** "Forward before the snap ring (2)". */
function openLists({ lists }: NeedFacts, when: ListTime): string[] {
  return lists
    .filter((list) => list.when === when && list.openLines > 0)
    .map(({ name, openLines }) => `${name} (${openLines})`);
}

const namedAtMost = 4;

/** "Forward, Direct: not settled", naming a few and counting the others. */
function sayOf(names: readonly string[], what: string): string | null {
  if (names.length === 0) return null;
  const others = names.length - namedAtMost;
  const said = names.slice(0, namedAtMost).join(', ');
  return `${said}${others > 0 ? ` and ${others} more` : ''}: ${what}`;
}
