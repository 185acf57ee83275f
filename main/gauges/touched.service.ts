// Which readings a gauge touched that was found out, and what each of them could have said.
import { quantityOf } from '../../app/gauges/gauge-kinds.ts';
import { errorSpan } from '../../app/gauges/judge-check.ts';
import type { TouchedTake } from '../../app/gauges/touched.contract.ts';
import { dayAfter, dayIn } from '../../app/jobs/calendar-days.ts';
import { found, Refused } from '../database/errors.ts';
import type { Reading } from '../database/tables.ts';
import { takesHadTheirGaugeErred } from '../readings/readings.service.ts';
import { findCheckOfGauge, findGauge } from './register.repository.ts';
import { checksOfGauge } from './register.service.ts';
import { takesOfGauge } from './touched.repository.ts';

/** Both days count, because which came first on them is not known. `timeZone` is where this machine stands. */
export async function listTouched(reading: Reading, timeZone: string, { gaugeCheckId }: { gaugeCheckId: number }) {
  const { gauge_id: gaugeId } = found(await findCheckOfGauge(reading, gaugeCheckId), 'check');
  const gauge = found(await findGauge(reading, gaugeId), 'gauge');
  const checks = (await checksOfGauge(reading, gaugeId)).filter((check) => check.supersededById === null);
  const at = checks.findIndex((check) => check.gaugeCheckId === gaugeCheckId);
  const check = checks[at];
  if (check?.isWithin !== false) throw new Refused('not-out', 'That check did not find the gauge out.');
  const sinceOn = checks.slice(0, at).findLast((each) => each.isWithin)?.checkedOn ?? null;
  const untilOn = checks.slice(at + 1).find((each) => each.isWithin)?.checkedOn ?? null;
  const error = errorSpan(check.points.map((point) => point.error));
  const rows = (await takesOfGauge(reading, gaugeId)).filter(({ started_at }) =>
    isWithin(started_at, { sinceOn, untilOn }, timeZone),
  );
  const takeIds = rows.map((row) => row.take_id);
  const judged = await takesHadTheirGaugeErred(reading, takeIds, [error.low, error.high]);
  const byTake = new Map(judged.map((each) => [each.take.takeId, each]));
  const takes = rows.map((row) => touchedOf(row, byTake.get(row.take_id)!, error));
  const { tag, unit } = gauge;
  const quantity = quantityOf(gauge.kind);
  return { gaugeId, tag, quantity, unit, foundOn: check.checkedOn, sinceOn, untilOn, error, takes };
}

function isWithin(
  at: string,
  { sinceOn, untilOn }: { sinceOn: string | null; untilOn: string | null },
  timeZone: string,
): boolean {
  // Asking the zone takes most of the time, and it moves a day by one at most.
  const day = at.slice(0, 10);
  const [before, after] = [dayAfter(day, -1), dayAfter(day, 1)];
  if ((sinceOn !== null && after < sinceOn) || (untilOn !== null && before > untilOn)) return false;
  if ((sinceOn === null || before >= sinceOn) && (untilOn === null || after <= untilOn)) return true;
  const here = dayIn(at, timeZone);
  return (sinceOn === null || here >= sinceOn) && (untilOn === null || here <= untilOn);
}

function touchedOf(
  row: Awaited<ReturnType<typeof takesOfGauge>>[number],
  { take, check, words }: Awaited<ReturnType<typeof takesHadTheirGaugeErred>>[number],
  error: { low: number; high: number },
): TouchedTake {
  const { mean, verdict } = take.evaluation;
  return {
    takeId: row.take_id,
    jobId: row.job_id,
    jobNumber: row.number,
    checkId: check.checkId,
    checkName: check.name,
    customer: row.customer,
    unit: `${row.family} ${row.serial}`.trim(),
    at: row.started_at,
    by: take.by,
    mean,
    word: verdict.word,
    couldBe: mean === null ? null : { low: mean - error.high, high: mean - error.low },
    couldSay: [...new Set(words)].filter((word) => word !== verdict.word),
  };
}
