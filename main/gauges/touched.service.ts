// Which readings a gauge touched that was found out, and what each of them could have said.
import { quantityOf } from '../../app/gauges/gauge-kinds.ts';
import { errorSpan } from '../../app/gauges/judge-check.ts';
import type { TouchedTake } from '../../app/gauges/touched.contract.ts';
import { dayIn } from '../../app/jobs/calendar-days.ts';
import { found, Refused } from '../database/errors.ts';
import type { Reading } from '../database/tables.ts';
import { takeHadItsGaugeErred } from '../readings/readings.service.ts';
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
  const takes: TouchedTake[] = [];
  for (const row of await takesOfGauge(reading, gaugeId)) {
    const day = dayIn(row.started_at, timeZone);
    if ((sinceOn !== null && day < sinceOn) || (untilOn !== null && day > untilOn)) continue;
    takes.push(await touchedOf(reading, row, error));
  }
  const { tag, unit } = gauge;
  const quantity = quantityOf(gauge.kind);
  return { gaugeId, tag, quantity, unit, foundOn: check.checkedOn, sinceOn, untilOn, error, takes };
}

async function touchedOf(
  reading: Reading,
  row: Awaited<ReturnType<typeof takesOfGauge>>[number],
  error: { low: number; high: number },
): Promise<TouchedTake> {
  const { take, check, words } = await takeHadItsGaugeErred(reading, row.take_id, [error.low, error.high]);
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
