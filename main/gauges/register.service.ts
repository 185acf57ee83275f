// The register of gauges: write one down, check it, and say whether it can be relied on.
import { fits, type GaugeKind, mayStandOffSquare, quantityOf, unitsOfKind } from '../../app/gauges/gauge-kinds.ts';
import { gaugeStanding } from '../../app/gauges/gauge-standing.ts';
import { judgeCheck } from '../../app/gauges/judge-check.ts';
import type { Gauge, GaugeCheck } from '../../app/gauges/register.contract.ts';
import { parseAmount } from '../../app/quantities/parse-amount.ts';
import type { Quantity } from '../../app/quantities/units.ts';
import type { NamedGauge } from '../../app/readings/take-figures.ts';
import type { Settings } from '../../app/shop/shop.contract.ts';
import type { ReadingMethod } from '../../app/specs/spec-sheet.ts';
import { accepted, found, Refused } from '../database/errors.ts';
import type { Reading, Writing } from '../database/tables.ts';
import { getSettings, personAtWork } from '../shop/shop.service.ts';
import * as repository from './register.repository.ts';
import { lastGaugeOfJob } from './take-gauges.repository.ts';

/** `today` is yyyy-mm-dd where this machine stands. */
export async function listGauges(reading: Reading, today: string): Promise<Gauge[]> {
  const rows = await repository.listGauges(reading);
  const checks = Map.groupBy(
    await checksOfRows(reading, await repository.listAllChecks(reading)),
    (check) => check.gaugeId,
  );
  return rows.map((row) => gaugeOf(row, checks.get(row.gauge_id) ?? [], today));
}

export async function getGauge(reading: Reading, today: string, { gaugeId }: { gaugeId: number }) {
  const row = found(await repository.findGauge(reading, gaugeId), 'gauge');
  const checks = await checksOfGauge(reading, gaugeId);
  return {
    ...gaugeOf(row, checks, today),
    checks: checks.map(({ gaugeId: _, ...check }) => check).toReversed(),
    takes: await repository.countTakes(reading, gaugeId),
  };
}

/** Checks that found a gauge out and stand, newest first. */
export async function listFoundOut(reading: Reading) {
  const tags = new Map((await repository.listGauges(reading)).map((row) => [row.gauge_id, row.tag]));
  const checks = await checksOfRows(reading, await repository.listAllChecks(reading));
  return checks
    .filter((check) => check.isWithin === false && check.supersededById === null)
    .map(({ gaugeCheckId, gaugeId, checkedOn }) => ({ gaugeCheckId, tag: tags.get(gaugeId) ?? '', checkedOn }))
    .toReversed();
}

/** Oldest first, superseded ones among them. */
export async function checksOfGauge(reading: Reading, gaugeId: number): Promise<CheckOfGauge[]> {
  return checksOfRows(reading, await repository.listChecks(reading, gaugeId));
}

export async function saveGauge(
  writing: Writing,
  now: string,
  input: {
    gaugeId: number | null;
    kind: GaugeKind;
    tag: string;
    unit: string;
    resolution: string;
    permittedError: string;
    statedIn: string;
    offSquareDegrees: number;
    serial: string;
    intervalDays: number | null;
    by: number;
  },
) {
  await personAtWork(writing, input.by);
  const gauges = await repository.listGauges(writing);
  const isTag = (tag: string) => tag.toLowerCase() === input.tag.toLowerCase();
  if (gauges.some((each) => each.gauge_id !== input.gaugeId && isTag(each.tag))) {
    throw new Refused('tag-taken', `There is already a gauge “${input.tag}”: give this one another tag.`, 'tag');
  }
  const known =
    input.gaugeId === null
      ? null
      : found(
          gauges.find((each) => each.gauge_id === input.gaugeId),
          'gauge',
        );
  if (known && known.kind !== input.kind) {
    throw new Refused('kind', `${known.tag} is a ${known.kind}: retire it and write down another.`, 'kind');
  }
  if (!unitsOfKind(input.kind).includes(input.unit)) {
    throw new Refused('unit', `A ${input.kind} is not marked in ${input.unit}.`, 'unit');
  }
  const settings = await getSettings(writing);
  const gauge = { kind: input.kind, unit: input.unit };
  const resolution = positive(input.resolution, gauge, settings, 'resolution');
  const permittedError =
    input.permittedError === '' ? null : positive(input.permittedError, gauge, settings, 'permittedError');
  const gaugeId =
    known?.gauge_id ?? (await repository.insertGauge(writing, { kind: input.kind, added_at: now, added_by: input.by }));
  await repository.insertCard(writing, {
    gauge_id: gaugeId,
    tag: input.tag,
    unit: input.unit,
    resolution_amount: resolution,
    permitted_error_amount: permittedError,
    stated_in: input.statedIn,
    off_square_degrees: input.offSquareDegrees,
    serial: input.serial,
    interval_days: input.intervalDays,
    is_retired: known?.is_retired ?? 0,
    written_at: now,
    written_by: input.by,
  });
  return { gaugeId };
}

/** The gauge a take is to be read with: one that fits and is still in use. */
export async function gaugeAtHand(
  reading: Reading,
  gaugeId: number,
  check: { readonly name: string; readonly quantity: Quantity },
  method: ReadingMethod,
): Promise<NamedGauge & { readonly gaugeId: number }> {
  const gauge = found(await repository.findGauge(reading, gaugeId), 'gauge');
  if (gauge.is_retired === 1) throw new Refused('retired', `${gauge.tag} is retired: take another.`, 'gaugeId');
  if (!fits(gauge.kind, method, check.quantity)) {
    throw new Refused(
      'gauge',
      `${gauge.tag} is a ${gauge.kind}: it does not read ${check.name} by ${method}.`,
      'gaugeId',
    );
  }
  return {
    gaugeId,
    tag: gauge.tag,
    permittedError: gauge.permitted_error_amount,
    offSquareDegrees: gauge.off_square_degrees,
    isDial: mayStandOffSquare(gauge.kind),
    resolution: gauge.resolution_amount,
  };
}

/** A gauge that a line may speak for: it reads lengths and is still in use. */
export async function gaugeOnLine(reading: Reading, gaugeId: number): Promise<void> {
  const gauge = found(await repository.findGauge(reading, gaugeId), 'gauge');
  if (gauge.is_retired === 1) throw new Refused('retired', `${gauge.tag} is retired: take another.`, 'gaugeId');
  if (quantityOf(gauge.kind) !== 'length') {
    throw new Refused('gauge', `${gauge.tag} is a ${gauge.kind}: a line speaks for a gauge of lengths.`, 'gaugeId');
  }
}

export async function lastGauge(
  reading: Reading,
  input: { jobId: number; method: ReadingMethod },
): Promise<{ gaugeId: number; tag: string } | null> {
  const last = await lastGaugeOfJob(reading, input.jobId, input.method);
  return last ? { gaugeId: last.gauge_id, tag: last.tag } : null;
}

/** Not offered any more, or again; what it has read stays. */
export async function retireGauge(
  writing: Writing,
  now: string,
  input: { gaugeId: number; isRetired: boolean; by: number },
) {
  await personAtWork(writing, input.by);
  const { kind: _, gauge_card_id: __, ...card } = found(await repository.findGauge(writing, input.gaugeId), 'gauge');
  await repository.insertCard(writing, {
    ...card,
    is_retired: input.isRetired ? 1 : 0,
    written_at: now,
    written_by: input.by,
  });
  return {};
}

export async function recordCheck(
  writing: Writing,
  now: string,
  today: string,
  input: {
    gaugeId: number;
    against: GaugeCheck['against'];
    checkedOn: string;
    points: ReadonlyArray<{ nominal: string; read: string }>;
    note: string;
    supersedesId: number | null;
    reason: string;
    by: number;
  },
) {
  await personAtWork(writing, input.by);
  const gauge = found(await repository.findGauge(writing, input.gaugeId), 'gauge');
  if (input.checkedOn > today) throw new Refused('in-future', 'That day is still to come.', 'checkedOn');
  if (input.supersedesId !== null) {
    const misread = found(await repository.findCheckOfGauge(writing, input.supersedesId), 'check');
    if (misread.gauge_id !== input.gaugeId) throw new Refused('other-gauge', 'That check is of another gauge.');
    if (misread.superseded_by_id !== null) {
      throw new Refused('superseded', 'That check was superseded already: supersede the one in its place.');
    }
    if (input.reason === '') throw new Refused('reason', 'Say what was misread.', 'reason');
  }
  const settings = await getSettings(writing);
  const points = input.points.map(({ nominal, read }, index) => ({
    nominal: amountIn(nominal, gauge, settings, `points.${index}.nominal`),
    read: amountIn(read, gauge, settings, `points.${index}.read`),
    nominalTyped: nominal,
    readTyped: read,
  }));
  const gaugeCheckId = await repository.insertCheck(writing, {
    ...input,
    reason: input.supersedesId === null ? '' : input.reason,
    points,
    permittedError: gauge.permitted_error_amount,
    now,
  });
  return { gaugeCheckId };
}

/** Bare numbers are in the unit the gauge is marked in, whatever the shop's own. */
function amountIn(
  typed: string,
  gauge: { kind: GaugeKind; unit: string },
  { decimalMark }: Settings,
  field: string,
): number {
  return accepted(
    parseAmount(typed, { quantity: quantityOf(gauge.kind), unit: gauge.unit, decimalMark, what: 'a reading' }),
    field,
  );
}

function positive(typed: string, gauge: { kind: GaugeKind; unit: string }, settings: Settings, field: string): number {
  const amount = amountIn(typed, gauge, settings, field);
  if (amount <= 0) throw new Refused('not-positive', 'It must be more than nothing.', field);
  return amount;
}

type CheckOfGauge = GaugeCheck & { readonly gaugeId: number };

async function checksOfRows(reading: Reading, rows: readonly repository.GaugeCheckRow[]): Promise<CheckOfGauge[]> {
  const points = await repository.pointsByCheck(
    reading,
    rows.map((row) => row.gauge_check_id),
  );
  return rows.map((row) => checkOf(row, points.get(row.gauge_check_id) ?? []));
}

function checkOf(
  row: repository.GaugeCheckRow,
  rows: ReadonlyArray<{ nominal_amount: number; read_amount: number; nominal_typed: string; read_typed: string }>,
): CheckOfGauge {
  const points = rows.map((point) => ({ nominal: point.nominal_amount, read: point.read_amount }));
  const { errors, worst, isWithin } = judgeCheck(points, row.permitted_error_amount);
  return {
    gaugeId: row.gauge_id,
    gaugeCheckId: row.gauge_check_id,
    against: row.against,
    checkedOn: row.checked_on,
    permittedError: row.permitted_error_amount,
    points: rows.map((point, index) => ({
      nominal: point.nominal_amount,
      read: point.read_amount,
      error: errors[index] ?? 0,
      nominalTyped: point.nominal_typed,
      readTyped: point.read_typed,
    })),
    worst,
    isWithin,
    note: row.note,
    at: row.checked_at,
    by: row.initials,
    supersedesId: row.supersedes_id,
    supersededById: row.superseded_by_id,
    reason: row.reason,
  };
}

function gaugeOf(row: repository.GaugeRow, checks: readonly GaugeCheck[], today: string): Gauge {
  return {
    gaugeId: row.gauge_id,
    kind: row.kind,
    quantity: quantityOf(row.kind),
    tag: row.tag,
    unit: row.unit,
    resolution: row.resolution_amount,
    permittedError: row.permitted_error_amount,
    statedIn: row.stated_in,
    offSquareDegrees: row.off_square_degrees,
    serial: row.serial,
    intervalDays: row.interval_days,
    isRetired: row.is_retired === 1,
    standing: gaugeStanding(
      checks.filter((check) => check.supersededById === null),
      row.interval_days,
      today,
    ),
  };
}
