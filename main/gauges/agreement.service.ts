// Method against method, and a check over the builds: gathered from the book, said by the statistics.
import type { MethodPair, pairedMethods } from '../../app/gauges/agreement.contract.ts';
import { tooFewBuilds } from '../../app/gauges/enough-builds.ts';
import { meanOverSpots, pairsOfStates } from '../../app/gauges/pairs-in-book.ts';
import { lineField } from '../../app/readings/line-field.ts';
import { parseLine, valueOfReading } from '../../app/readings/typed-line.ts';
import { agreement } from '../../app/statistics/agreement.ts';
import { demingLine } from '../../app/statistics/deming.ts';
import { individualsChart } from '../../app/statistics/individuals-chart.ts';
import { accepted, found, Refused } from '../database/errors.ts';
import type { Reading, Writing } from '../database/tables.ts';
import { takesNumbered } from '../readings/readings.service.ts';
import { readsOfTakes } from '../readings/take-figures.repository.ts';
import { getSettings, personAtWork } from '../shop/shop.service.ts';
import { findCheck } from '../specs/checks-of-sheets.repository.ts';
import * as repository from './agreement.repository.ts';

type PairedMethod = (typeof pairedMethods)[number];

/** So many builds fit beside each other on a chart. */
const mostBuilds = 60;

export async function compareMethods(
  reading: Reading,
  { first, second }: { first: PairedMethod; second: PairedMethod },
) {
  if (first === second) throw new Refused('same-method', 'Choose two different ways of reading.', 'second');
  const pairs = [
    ...(await pairsInBook(reading, first, second)),
    ...(await repository.enteredPairs(reading, [first, second])).map((row): MethodPair => {
      const isAsAsked = row.first_method === first;
      return {
        what: row.what,
        first: isAsAsked ? row.first_nm : row.second_nm,
        second: isAsAsked ? row.second_nm : row.first_nm,
        at: row.paired_at,
        by: row.initials,
        job: null,
        methodPairId: row.method_pair_id,
      };
    }),
  ];
  const firsts = pairs.map((pair) => pair.first);
  const seconds = pairs.map((pair) => pair.second);
  const agreed = agreement(firsts, seconds);
  const line = demingLine(firsts, seconds, 1);
  return {
    pairs,
    agreement: agreed.ok
      ? {
          ...agreed.value,
          biasInterval: pairOf(agreed.value.biasInterval),
          limits: pairOf(agreed.value.limits),
          lowerLimitInterval: pairOf(agreed.value.lowerLimitInterval),
          upperLimitInterval: pairOf(agreed.value.upperLimitInterval),
        }
      : null,
    line: agreed.ok && line.ok ? line.value : null,
    why: agreed.ok ? null : pairs.length < 2 ? `Not enough yet: ${pairs.length} of 2 pairs.` : agreed.refusal.message,
  };
}

function pairOf([lower, upper]: readonly [number, number]): [number, number] {
  return [lower, upper];
}

async function pairsInBook(reading: Reading, first: PairedMethod, second: PairedMethod): Promise<MethodPair[]> {
  const takes = await repository.pairableTakes(reading, [first, second]);
  const methodsOf = Map.groupBy(takes, stateOf);
  const alike = takes.filter((take) => new Set(methodsOf.get(stateOf(take))?.map(({ method }) => method)).size > 1);
  const reads = Map.groupBy(
    await readsOfTakes(
      reading,
      alike.map((take) => take.take_id),
    ),
    (read) => read.takeId,
  );
  const means = alike.flatMap((take) => {
    const values = (reads.get(take.take_id) ?? []).flatMap((read) => {
      const value = valueOfReading(read.reading);
      return value === null ? [] : [{ spot: read.spot, value }];
    });
    const mean = meanOverSpots(values);
    return mean === null ? [] : [{ state: stateOf(take), isFirst: take.method === first, mean, take }];
  });
  return pairsOfStates(means).map(({ take, ...pair }) => ({
    ...pair,
    what: `${take.pack}, ${take.phase === 'as found' ? 'as found' : `mock-up ${take.number ?? 0}`}`,
    at: take.started_at,
    by: take.initials,
    job: { jobId: take.job_id, number: take.job_number },
    methodPairId: null,
  }));
}

/** As found is mock-up 0. */
function stateOf(take: repository.PairableTakeRow): string {
  return `${take.job_id} ${take.pack_id} ${take.phase === 'as found' ? 0 : (take.number ?? 0)}`;
}

export async function addPair(
  writing: Writing,
  now: string,
  input: {
    what: string;
    first: PairedMethod;
    second: PairedMethod;
    firstTyped: string;
    secondTyped: string;
    supersedesId: number | null;
    reason: string;
    by: number;
  },
) {
  await personAtWork(writing, input.by);
  if (input.first === input.second) throw new Refused('same-method', 'Choose two different ways of reading.', 'second');
  if (input.supersedesId !== null) {
    const misread = found(await repository.isSuperseded(writing, input.supersedesId), 'pair');
    if (misread.method_pair_id !== null) throw new Refused('superseded', 'That pair was superseded already.');
    if (input.reason === '') throw new Refused('reason', 'Say what was misread.', 'reason');
  }
  const methodPairId = await repository.insertPair(writing, {
    what: input.what,
    first_method: input.first,
    second_method: input.second,
    first_nm: await clearanceTyped(writing, input.first, input.firstTyped, 'firstTyped'),
    second_nm: await clearanceTyped(writing, input.second, input.secondTyped, 'secondTyped'),
    first_typed: input.firstTyped,
    second_typed: input.secondTyped,
    supersedes_id: input.supersedesId,
    reason: input.supersedesId === null ? '' : input.reason,
    paired_at: now,
    paired_by: input.by,
  });
  return { methodPairId };
}

async function clearanceTyped(reading: Reading, method: PairedMethod, typed: string, field: string): Promise<number> {
  const how = lineField({ quantity: 'length', unit: 'thou' }, method, null, await getSettings(reading));
  const value = valueOfReading(accepted(parseLine(typed, { ...how, isZeroedAgain: false, meaning: 'total' }), field));
  if (value === null) throw new Refused('air-only', 'Air only is no clearance: type push-down and air travel.', field);
  return Math.round(value);
}

export async function chartCheck(reading: Reading, input: { familyId: number; checkName: string }) {
  const rows = (await repository.finalTakes(reading, input.familyId, input.checkName, mostBuilds)).toReversed();
  const known = await takesNumbered(
    reading,
    rows.map((row) => row.take_id),
  );
  const takes = rows.flatMap((row) => {
    const take = found(known.get(row.take_id), 'take');
    const { mean } = take.evaluation;
    return mean === null ? [] : [{ ...take, mean, jobNumber: row.job_number }];
  });
  const last = takes.at(-1);
  const check = last ? await findCheck(reading, last.checkId) : undefined;
  const chart = individualsChart(takes.map((take) => take.mean));
  const why = tooFewBuilds(takes.length) ?? (chart.ok ? null : chart.refusal.message);
  const limits = why === null && chart.ok ? chart.value : null;
  return {
    points: takes.map((take, index) => ({
      jobId: take.jobId,
      jobNumber: take.jobNumber,
      checkId: take.checkId,
      at: take.startedAt,
      by: take.by,
      mean: take.mean,
      isOutside: limits?.outside.includes(index) ?? false,
    })),
    quantity: check?.quantity ?? 'length',
    unit: check?.unit ?? 'thou',
    chart: limits && { mean: limits.mean, lower: limits.lower, upper: limits.upper },
    why,
  };
}
