// What is on record of one delivered build, as far as it can be held beside others of its family.
import type { Answer, LineStanding } from '../jobs/lists.contract.ts';
import type { Setup, Verdict } from '../readings/readings.contract.ts';
import type { Asks } from '../specs/spec-list.ts';
import type { Check, ReadingMethod } from '../specs/spec-sheet.ts';

/** Amounts are base units of the check’s quantity. */
export type RecordedTake = {
  readonly takeId: number;
  readonly method: ReadingMethod;
  readonly amount: number | null;
  readonly lowest: number | null;
  readonly highest: number | null;
  readonly expanded: number | null;
  readonly verdict: Verdict['word'];
  readonly outsideBy: number | null;
  readonly setup: Pick<Setup, 'plates' | 'waveState' | 'dialBase' | 'isPistonSeated'> | null;
};

/** A check that the build’s sheet asked for; `take` is the one that counts, null where none was read. */
export type RecordedCheck = {
  readonly checkId: number;
  readonly check: Check;
  readonly take: RecordedTake | null;
  /** Let stand as it is, by whom and why. */
  readonly override: { readonly by: string; readonly reason: string } | null;
};

export type LineOfList = { readonly list: string; readonly words: string; readonly asks: Asks };

/** A line of a list the build was gone through by, with its newest answer. */
export type RecordedLine = {
  readonly line: LineOfList;
  readonly answer: Answer | null;
  readonly standing: LineStanding;
  readonly reason: string;
};

export type RecordedPack = {
  readonly packId: number;
  readonly name: string;
  /** Plates that had sat in an earlier job; null where nobody wrote down what lay in it. */
  readonly reusedPlates: number | null;
};

export type RecordedBatch = { readonly batchId: number; readonly partId: number; readonly name: string };

export type RecordedBuild = {
  readonly jobId: number;
  readonly jobNumber: number;
  /** Initials of the person who read most of it; null where nobody did. */
  readonly builder: string | null;
  /** It came back and was not found to be without fault or somebody else’s. */
  readonly hasComeBack: boolean;
  readonly checks: readonly RecordedCheck[];
  readonly lines: readonly RecordedLine[];
  readonly packs: readonly RecordedPack[];
  readonly batches: readonly RecordedBatch[];
};

/** The same for two lines of lists that may be held beside one another. */
export function lineKey({ list, words, asks }: LineOfList): string {
  return JSON.stringify([list, words, asks]);
}

/** The same for two checks that may be held beside one another: their name and their limits. */
export function checkKey({ name, quantity, limits }: Pick<Check, 'name' | 'quantity' | 'limits'>): string {
  return JSON.stringify([name, quantity, limits]);
}
