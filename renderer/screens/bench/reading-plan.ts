// What a take is for and which spot of it comes next.

import type { CheckOfJob } from '../../../app/jobs/jobs.contract.ts';
import type { PackOfJob } from '../../../app/packs/packs.contract.ts';
import { isHardPart } from '../../../app/readings/hard-part.ts';
import { mockUpRead } from '../../../app/readings/mock-up-read.ts';
import type { Phase, Reading, Setup, Take } from '../../../app/readings/readings.contract.ts';
import type { ReadingMethod } from '../../../app/specs/spec-sheet.ts';
import { normalCoverageFactor } from '../../../app/statistics/normal.ts';
import type { AtCheck } from './at-check.ts';

export type ReadingPlan = {
  readonly phase: Phase;
  readonly mode: 'quick' | 'final';
  readonly method: ReadingMethod;
  readonly setup: Setup | null;
  /** null: none is named. */
  readonly gaugeId: number | null;
  /** What was changed before it. */
  readonly note: string;
};

const stagesBeforeTeardown = 2;
const stagesBeforeBuild = 4;

/** The likeliest plan: as found before anything came apart, a quick one in mock-up, else final. */
export function firstPlan({ job, check, pack, takes, lastSetup }: AtCheck): ReadingPlan {
  const last = takes.at(-1);
  const stage = job.stages.findIndex((each) => each.stageId === job.stageId);
  const isApart = stage >= stagesBeforeTeardown || job.packs.some((each) => each.mockUpNumber !== null);
  const isTooLate = isHardPart(check) ? stage >= stagesBeforeBuild : isApart;
  const isRebuilt = pack !== null && last !== undefined && !isOfThePackNow(last, pack);
  const isStillMockUp = last?.phase === 'mock-up' && last.evaluation.verdict.word !== 'in';
  const isAsFound = !last && !isTooLate && check.quantity !== 'torque';
  const phase = isAsFound ? 'as found' : isRebuilt || isStillMockUp ? 'mock-up' : 'final';
  return {
    phase,
    mode: phase === 'mock-up' ? 'quick' : 'final',
    method: check.method,
    setup: check.method === 'air' ? lastSetup : null,
    gaugeId: null,
    note: '',
  };
}

/** The same once more. */
export function planOf({ phase, mode, method, setup, gauge, note }: Take): ReadingPlan {
  return { phase, mode, method, setup, gaugeId: gauge?.gaugeId ?? null, note };
}

/** A take of an earlier mock-up says nothing about what sits in the pack now. */
export function isOfThePackNow(take: Take, pack: PackOfJob | null): boolean {
  const newest = pack?.mockUps.at(-1);
  return !newest || mockUpRead(take) === newest.number;
}

/** In nanometres; of what gives no value, nothing. */
export function valuesAtOthers(standing: readonly Reading[], spot: number): number[] {
  return standing.flatMap((reading) => (reading.spot === spot || reading.value === null ? [] : [reading.value]));
}

export function wasRead(takes: readonly Take[]): boolean {
  return takes.some((take) => take.readings.length > 0);
}

export function standingReadings(take: Take): readonly Reading[] {
  return take.readings.filter((reading) => reading.supersededById === null);
}

/** Every clearance that was read and stands, in the order of reading. */
/** Every reading that stands as it is judged: a feeler's less its bias, where the take has one. */
export function valuesRead(take: Take): readonly { readonly spot: number; readonly value: number }[] {
  const bias = take.evaluation.feelerBias?.bias ?? 0;
  return standingReadings(take).flatMap(({ spot, value }) => (value === null ? [] : [{ spot, value: value - bias }]));
}

export function spotsOf(take: Pick<Take, 'mode'>, check: Pick<CheckOfJob, 'spots'>): number {
  return take.mode === 'quick' ? 1 : check.spots;
}

/** How often each spot is read: a quick take reads its one spot twice. */
export function roundsOf(take: Pick<Take, 'mode'>): number {
  return take.mode === 'quick' ? 2 : 1;
}

/** How often the least read spot was read. */
export function roundsRead(take: Take, check: Pick<CheckOfJob, 'spots'>): number {
  const standing = standingReadings(take);
  const spots = Array.from({ length: spotsOf(take, check) }, (_, index) => index + 1);
  return Math.min(...spots.map((spot) => standing.filter((reading) => reading.spot === spot).length));
}

/** Spots in the order they are read: one after another, or each across from the last where they are even. */
export function spotsInOrder(spots: number, order: 'around' | 'across'): readonly number[] {
  const half = spots / 2;
  return Array.from({ length: spots }, (_, index) =>
    order === 'across' && spots % 2 === 0 ? (index % 2) * half + Math.floor(index / 2) + 1 : index + 1,
  );
}

/** The next spot: first the one that is asked about once more, then the first that was read too few times. */
export function spotToRead(
  take: Take,
  check: Pick<CheckOfJob, 'spots'>,
  rounds: number | null,
  order: 'around' | 'across' = 'around',
): number | null {
  const hasEnded = take.notes.some(({ what }) => what === 'enough' || what === 'will not hold air');
  if (rounds === null && hasEnded) return null;
  const asked = take.evaluation.asks[0];
  if (asked) return asked.spot;
  const standing = standingReadings(take);
  for (const spot of spotsInOrder(spotsOf(take, check), order)) {
    const reads = standing.filter((reading) => reading.spot === spot).length;
    if (reads < (rounds ?? roundsOf(take))) return spot;
  }
  return null;
}

export function isRead(take: Take, check: Pick<CheckOfJob, 'spots'>): boolean {
  return spotToRead(take, check, null) === null;
}

/** "mark" or "90°": where a spot lies on the drum. */
export function spotName(spot: number, spots: number): string {
  return spot === 1 ? 'mark' : `${Math.round(degreesOf(spot, spots))}°`;
}

/** From the mark. */
export function degreesOf(spot: number, spots: number): number {
  return ((spot - 1) * 360) / spots;
}

/** What a line not yet written is kept as; before the take begins it belongs to the check. */
export function draftOfSpot(take: Take | null, { job, check }: AtCheck, spot: number): string {
  const of = take ? `take ${take.takeId}` : `new take of check ${check.checkId}, job ${job.jobId}`;
  return `reading of ${of}, spot ${spot}`;
}

/** "as found", "mock-up 2", "final, mock-up 2". */
export function phaseWords({ phase, mockUpNumber }: Pick<Take, 'phase' | 'mockUpNumber'>): string {
  if (phase === 'as found' || !mockUpNumber) return phase;
  return phase === 'mock-up' ? `mock-up ${mockUpNumber}` : `${phase}, mock-up ${mockUpNumber}`;
}

/** What the plates were expected to read: null as found, by another way than the spec means, and where nothing was. */
export function expectedOf(
  take: Take,
  { check, pack }: Pick<AtCheck, 'check' | 'pack'>,
): { mean_nm: number; expanded_nm: number } | null {
  if (take.phase === 'as found' || take.method !== check.method) return null;
  const predicted = pack?.mockUps.find((mockUp) => mockUp.number === take.mockUpNumber)?.predicted;
  if (!predicted) return null;
  return { mean_nm: predicted.mean_nm, expanded_nm: normalCoverageFactor(0.95) * predicted.standardDeviation_nm };
}
