// The figures a take leans on, in and out of the file, and the readings they are learned from.
import type { OwnRead, PairableTake } from '../../app/readings/own-reads.ts';
import type { PooledMethod, TakeFigures } from '../../app/readings/take-figures.ts';
import { among } from '../database/among.ts';
import type { Reading, Writing } from '../database/tables.ts';
import { typedColumns, typedReadingOf } from './readings.repository.ts';
import type { TakeFiguresTable } from './readings.tables.ts';

/**
 * How far back a shop's own repeats are looked for: the newest takes with a repeat, among the newest takes there are.
 * A hundred and fifty repeats know a standard deviation to 6 parts in 100 (JCGM 100:2008 E.4.3); older ones are of other
 * hands and another dial; and the look-back stays at a few milliseconds after twenty years, 300,000 readings.
 */
const takesWithRepeats = 150;
const takesLookedThrough = 1000;
/** So many pairs know the bias to a sixth of what one pair scatters by. */
const feelerTakesLookedBackOn = 40;

export async function insertTakeFigures(writing: Writing, takeId: number, figures: TakeFigures): Promise<void> {
  await writing.insertInto('take_figures').values(rowOfFigures(takeId, figures)).execute();
}

export function rowOfFigures(takeId: number, figures: TakeFigures) {
  const { repeatability, feeler } = figures;
  return {
    take_id: takeId,
    repeatability_nm: repeatability?.standardDeviation ?? null,
    repeatability_degrees_of_freedom: repeatability?.degreesOfFreedom ?? null,
    repeatability_from: repeatability?.from ?? null,
    hand_force_half_width_nm: figures.handForceHalfWidth_nm,
    base_on_pump_half_width_nm: figures.baseOnPumpHalfWidth_nm,
    dial_resolution_nm: figures.dialResolution_nm,
    micrometer_uncertainty_nm: figures.micrometerUncertainty_nm,
    repeat_limit_nm: figures.repeatLimit_nm,
    uneven_limit_nm: figures.unevenLimit_nm,
    decision_rule: figures.decisionRule,
    feeler_pairs: feeler?.pairs ?? null,
    feeler_bias_nm: feeler?.bias?.value ?? null,
    feeler_bias_standard_uncertainty_nm: feeler?.bias?.standardUncertainty ?? null,
  };
}

export function figuresOfRow(
  row: TakeFiguresTable,
  gauge: { tag: string; permitted_error_amount: number | null; off_square_degrees: number } | undefined,
): TakeFigures {
  const bias_nm = row.feeler_bias_nm;
  return {
    repeatability:
      row.repeatability_nm === null || row.repeatability_from === null
        ? null
        : {
            standardDeviation: row.repeatability_nm,
            degreesOfFreedom: row.repeatability_degrees_of_freedom ?? 0,
            from: row.repeatability_from,
          },
    handForceHalfWidth_nm: row.hand_force_half_width_nm,
    baseOnPumpHalfWidth_nm: row.base_on_pump_half_width_nm,
    dialResolution_nm: row.dial_resolution_nm,
    micrometerUncertainty_nm: row.micrometer_uncertainty_nm,
    repeatLimit_nm: row.repeat_limit_nm,
    unevenLimit_nm: row.uneven_limit_nm,
    decisionRule: row.decision_rule,
    feeler:
      row.feeler_pairs === null
        ? null
        : {
            pairs: row.feeler_pairs,
            bias:
              bias_nm === null
                ? null
                : { value: bias_nm, standardUncertainty: row.feeler_bias_standard_uncertainty_nm ?? 0 },
          },
    gauge: gauge
      ? { tag: gauge.tag, permittedError: gauge.permitted_error_amount, offSquareDegrees: gauge.off_square_degrees }
      : null,
  };
}

/** What stands in the newest takes of lengths by this method that hold a repeat. */
export async function newestRepeats(reading: Reading, method: PooledMethod): Promise<OwnRead[]> {
  const newest = reading
    .selectFrom('takes')
    .innerJoin('checks', 'checks.check_id', 'takes.check_id')
    .select('take_id')
    .where('takes.method', '=', method)
    .where('checks.quantity', '=', 'length')
    .orderBy('take_id', 'desc')
    .limit(takesLookedThrough)
    .as('newest');
  const withRepeats = reading
    .selectFrom(newest)
    .select('newest.take_id')
    .where((where) =>
      where.exists(
        where
          .selectFrom('readings as repeated')
          .select('repeated.spot')
          .whereRef('repeated.take_id', '=', 'newest.take_id')
          .groupBy('repeated.spot')
          .having((having) => having.fn.countAll(), '>', 1),
      ),
    )
    .orderBy('newest.take_id', 'desc')
    .limit(takesWithRepeats);
  const rows = await standingReads(reading).where('readings.take_id', 'in', withRepeats).execute();
  return rows.map(ownReadOf);
}

/**
 * Takes of one pack that may pair, oldest first: this person's by feeler, and anybody's by air in the same jobs. The
 * pack is the one of that name in any revision of the family; what was not mocked up has no state to be alike in.
 */
export async function pairableTakes(reading: Reading, packId: number, personId: number): Promise<PairableTake[]> {
  const alike = await reading
    .selectFrom('packs as this')
    .innerJoin('revisions as of_this', 'of_this.revision_id', 'this.revision_id')
    .innerJoin('revisions', 'revisions.family_id', 'of_this.family_id')
    .innerJoin('packs', (join) =>
      join.onRef('packs.revision_id', '=', 'revisions.revision_id').onRef('packs.name', '=', 'this.name'),
    )
    .innerJoin('checks', 'checks.pack_id', 'packs.pack_id')
    .select('checks.check_id')
    .where('this.pack_id', '=', packId)
    .where('checks.quantity', '=', 'length')
    .execute();
  const checkIds = alike.map(({ check_id }) => check_id);
  const feeler = await takesInState(reading, checkIds, 'feeler')
    .where('takes.started_by', '=', personId)
    .where((where) =>
      where.exists(
        where
          .selectFrom('takes as by_air')
          .select('by_air.take_id')
          .whereRef('by_air.job_id', '=', 'takes.job_id')
          .where('by_air.check_id', 'in', checkIds)
          .where('by_air.method', '=', 'air'),
      ),
    )
    .orderBy('takes.take_id', 'desc')
    .limit(feelerTakesLookedBackOn)
    .execute();
  const jobIds = [...new Set(feeler.map(({ job_id }) => job_id))];
  const air = await takesInState(reading, checkIds, 'air').where('takes.job_id', 'in', jobIds).execute();
  return [
    ...feeler.map((row) => ({ takeId: row.take_id, state: stateOf(row), method: 'feeler' as const })),
    ...air.map((row) => ({ takeId: row.take_id, state: stateOf(row), method: 'air' as const })),
  ].toSorted((a, b) => a.takeId - b.takeId);
}

export async function readsOfTakes(reading: Reading, takeIds: readonly number[]): Promise<OwnRead[]> {
  const rows = await standingReads(reading).where('readings.take_id', 'in', among(takeIds)).execute();
  return rows.map(ownReadOf);
}

function takesInState(reading: Reading, checkIds: readonly number[], method: 'air' | 'feeler') {
  return reading
    .selectFrom('takes')
    .leftJoin('mock_ups', 'mock_ups.mock_up_id', 'takes.mock_up_id')
    .select(['takes.take_id', 'takes.job_id', 'takes.phase', 'mock_ups.number'])
    .where('takes.check_id', 'in', checkIds)
    .where('takes.method', '=', method)
    .where((where) => where.or([where('takes.phase', '=', 'as found'), where('mock_ups.number', 'is not', null)]))
    .where((where) =>
      where.not(
        where.exists(
          where
            .selectFrom('spot_notes')
            .select('spot_note_id')
            .whereRef('spot_notes.take_id', '=', 'takes.take_id')
            .where('what', '=', 'will not hold air'),
        ),
      ),
    );
}

/** As found is mock-up 0. */
function stateOf(row: { job_id: number; phase: string; number: number | null }): string {
  return `${row.job_id} ${row.phase === 'as found' ? 0 : row.number}`;
}

function standingReads(reading: Reading) {
  return reading
    .selectFrom('readings')
    .leftJoin('readings as later', 'later.supersedes_id', 'readings.reading_id')
    .select(['readings.take_id', 'readings.spot', ...typedColumns])
    .where('later.reading_id', 'is', null);
}

function ownReadOf(row: { take_id: number; spot: number } & Parameters<typeof typedReadingOf>[0]): OwnRead {
  return { takeId: row.take_id, spot: row.spot, reading: typedReadingOf(row) };
}
