// What would decide a take that is too close to call: it is judged again with more reads, or with a line of its budget
// made smaller, as if everything that was read stayed where it is.
import type { Check } from '../specs/spec-sheet.ts';
import type { BudgetLine } from '../statistics/uncertainty-budget.ts';
import {
  baseOnPumpLine,
  betweenLeavesLine,
  feelerBiasLine,
  gaugeErrorLine,
  handForceLine,
  leafLine,
  micrometerLine,
  offSquareLine,
  permittedErrorLine,
  resolutionLine,
  waveringLine,
} from './budget-lines.ts';
import { boundsOf, judgeTake } from './judge-take.ts';
import type { TakeFigures } from './take-figures.ts';
import { type ReadQuality, surenessAt } from './values-at-spots.ts';

/** Amounts in base units of the check's quantity. */
export type CloseCall = {
  readonly check: Pick<Check, 'limits' | 'holdsFor' | 'unit' | 'quantity'>;
  readonly rule: TakeFigures['decisionRule'];
  readonly mean: number;
  readonly min: number;
  readonly max: number;
  readonly readsAtSpots: readonly number[];
  readonly quality: ReadQuality;
  /** The repeatability is that of these reads alone, so every further one adds a degree of freedom to it. */
  readonly isLearning: boolean;
};

export type Remedy =
  | { readonly kind: 'reads'; readonly more: number }
  /** The line at `share` of what it is now: 0.5 is half, 0 is gone. */
  | { readonly kind: 'line'; readonly line: BudgetLine; readonly share: number };

export type WhatWouldDecide =
  /** Any of these by itself, more reads first, then the largest line. */
  | { readonly kind: 'one'; readonly remedies: readonly Remedy[] }
  /** None by itself; all of these, and none of them can be left out. */
  | { readonly kind: 'together'; readonly remedies: readonly Remedy[] }
  /** How far what is judged lies from the limit it is too close to. */
  | { readonly kind: 'nothing'; readonly distance: number };

/** More reads than this nobody takes at one check. */
export const mostMoreReads = 12;

// A fault goes, a gauge is changed for one of the next step or of tenths, a hand learns to do it half as loosely.
const sharesOfLine: Readonly<Record<string, readonly number[]>> = {
  [baseOnPumpLine]: [0],
  [waveringLine]: [0],
  [offSquareLine]: [0],
  [resolutionLine]: [0.5, 0.1],
  [permittedErrorLine]: [0.5, 0.1],
  [gaugeErrorLine]: [0.5, 0.1],
  [leafLine]: [0.5, 0.1],
  [micrometerLine]: [0.5, 0.1],
  [handForceLine]: [0.5],
  [betweenLeavesLine]: [0.5],
  [feelerBiasLine]: [0.5],
};

/**
 * Every remedy is judged as the take itself is (`judgeTake`: JCGM 106:2012 8.3, ISO 14253-1:2017 5), so it counts when
 * the verdict becomes in, tight or loose. Null when the take is decided as it stands.
 */
export function whatWouldDecide(call: CloseCall): WhatWouldDecide | null {
  if (isDecided(call)) return null;
  const lines = call.quality.fixedLines
    .filter((line) => line.standardUncertainty > 0)
    .toSorted((a, b) => b.standardUncertainty - a.standardUncertainty);
  const reads = fewestReads(call, []);
  const single = [
    ...(reads ? [reads] : []),
    ...lines.flatMap((line) => {
      const least = remediesOf(line).find((remedy) => isDecided(withRemedies(call, [remedy])));
      return least ? [least] : [];
    }),
  ];
  if (single.length > 0) return { kind: 'one', remedies: single };
  return together(call, lines) ?? { kind: 'nothing', distance: distanceOf(call) };
}

function isDecided(call: CloseCall): boolean {
  const sure = surenessAt(call.readsAtSpots, call.quality);
  if (!sure.ofMean || !sure.ofSpot) return false;
  const { mean, min, max, check, rule } = call;
  return judgeTake(check, { mean, min, max, ...sure }, rule).verdict.word !== 'too close to call';
}

function remediesOf(line: BudgetLine): Remedy[] {
  return (sharesOfLine[line.name] ?? []).map((share) => ({ kind: 'line', line, share }));
}

function fewestReads(call: CloseCall, besides: readonly Remedy[]): Remedy | null {
  if (!call.quality.repeatability) return null;
  for (let more = 1; more <= mostMoreReads; more += 1) {
    const reads = { kind: 'reads', more } as const;
    if (isDecided(withRemedies(call, [...besides, reads]))) return reads;
  }
  return null;
}

/** The largest lines first until it is decided, then without whatever was not needed after all. */
function together(call: CloseCall, lines: readonly BudgetLine[]): WhatWouldDecide | null {
  const strongest = lines.flatMap((line) => remediesOf(line).slice(-1));
  const most: Remedy[] = call.quality.repeatability ? [{ kind: 'reads', more: mostMoreReads }] : [];
  let chosen: readonly Remedy[] = [...strongest, ...most];
  if (!isDecided(withRemedies(call, chosen))) return null;
  for (const remedy of chosen.toReversed()) {
    const others = chosen.filter((each) => each !== remedy);
    if (isDecided(withRemedies(call, others))) chosen = others;
  }
  const besides = chosen.filter((each) => each.kind === 'line');
  const reads = besides.length < chosen.length ? fewestReads(call, besides) : null;
  return { kind: 'together', remedies: [...besides, ...(reads ? [reads] : [])] };
}

function withRemedies(call: CloseCall, remedies: readonly Remedy[]): CloseCall {
  let now = call;
  for (const remedy of remedies) now = remedy.kind === 'reads' ? withReads(now, remedy.more) : withLine(now, remedy);
  return now;
}

function withLine(call: CloseCall, { line, share }: Extract<Remedy, { kind: 'line' }>): CloseCall {
  const fixedLines = call.quality.fixedLines.map((each) => (each.name === line.name ? shrunk(each, share) : each));
  return { ...call, quality: { ...call.quality, fixedLines } };
}

function withReads(call: CloseCall, more: number): CloseCall {
  const { quality, isLearning } = call;
  const { repeatability } = quality;
  const readsAtSpots = spreadOver(call.readsAtSpots, more);
  if (!isLearning || !repeatability) return { ...call, readsAtSpots };
  const degreesOfFreedom = repeatability.degreesOfFreedom + more;
  return { ...call, readsAtSpots, quality: { ...quality, repeatability: { ...repeatability, degreesOfFreedom } } };
}

/** A bias half as uncertain is one learned from four times as many pairs (JCGM 100:2008 4.2.3). */
function shrunk(line: BudgetLine, share: number): BudgetLine {
  const standardUncertainty = share * line.standardUncertainty;
  if (line.name !== feelerBiasLine) return { ...line, standardUncertainty };
  return { ...line, standardUncertainty, degreesOfFreedom: (line.degreesOfFreedom + 1) / share ** 2 - 1 };
}

/** The spot that was read least often comes next. */
function spreadOver(readsAtSpots: readonly number[], more: number): number[] {
  const reads = [...readsAtSpots];
  for (let read = 0; read < more; read += 1) {
    const least = reads.indexOf(Math.min(...reads));
    reads[least] = (reads[least] ?? 0) + 1;
  }
  return reads;
}

function distanceOf({ check, mean, min, max }: CloseCall): number {
  const { lower, upper } = boundsOf(check.limits);
  const [atLow, atHigh] = {
    mean: [[mean], [mean]],
    'tightest spot': [[min], [min]],
    'every spot': [[min], [max]],
    'mean and tightest': [[mean, min], [mean]],
  }[check.holdsFor];
  const from = (limit: number | null, values: readonly number[] | undefined) =>
    limit === null ? [] : (values ?? []).map((value) => Math.abs(value - limit));
  return Math.min(...from(lower, atLow), ...from(upper, atHigh));
}
