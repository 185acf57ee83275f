// The register on a real file: what is written down, how a check is judged, when the next is due. Expected errors are
// read less nominal by hand; due days are counted on the calendar.
import { describe, expect, test } from 'vitest';
import type { Input } from '../../app/contract/contract.ts';
import { gaugeStanding } from '../../app/gauges/gauge-standing.ts';
import { shopWithKx3 } from '../desk.ts';

const thou = 25_400;

const dial: Input<'gauges.saveGauge'> = {
  gaugeId: null,
  kind: 'dial plunger',
  tag: 'D1',
  unit: 'thou',
  resolution: '1',
  permittedError: '0.5',
  statedIn: 'certificate of 2024',
  offSquareDegrees: 5,
  serial: 'S-100',
  intervalDays: 90,
  by: 1,
};

async function shopWithDial(more: Partial<typeof dial> = {}) {
  const at = await shopWithKx3();
  const { gaugeId } = await at.call('gauges.saveGauge', { ...dial, ...more });
  const check = (checkedOn: string, points: Array<[nominal: string, read: string]>, rest = {}) =>
    at.call('gauges.recordCheck', {
      gaugeId,
      against: 'blocks',
      checkedOn,
      points: points.map(([nominal, read]) => ({ nominal, read })),
      note: '',
      by: 1,
      ...rest,
    });
  const gauge = () => at.call('gauges.getGauge', { gaugeId });
  return { ...at, gaugeId, check, gauge };
}

describe('what is written down of a gauge', () => {
  test('comes back in base units, and a later card stands in its place', async () => {
    const { call, gaugeId, gauge } = await shopWithDial();
    expect(await gauge()).toMatchObject({
      tag: 'D1',
      quantity: 'length',
      resolution: thou,
      permittedError: thou / 2,
      standing: { word: 'never checked', checkedOn: null, dueOn: null },
      checks: [],
      takes: 0,
    });
    await call('gauges.retireGauge', { gaugeId, isRetired: true, by: 1 });
    await call('gauges.saveGauge', { ...dial, gaugeId, permittedError: '' });
    expect(await gauge()).toMatchObject({ permittedError: null, isRetired: true });
    expect(await call('gauges.listGauges', {})).toHaveLength(1);
  });

  test('a pressure gauge is kept in pascals', async () => {
    const { gauge } = await shopWithDial({
      kind: 'pressure gauge',
      unit: 'kPa',
      resolution: '10',
      permittedError: '5',
    });
    expect(await gauge()).toMatchObject({ quantity: 'pressure', resolution: 10_000, permittedError: 5_000 });
  });

  test.each<[string, Partial<typeof dial>, string]>([
    ['a tag that is taken, whatever its capitals', { tag: 'd1' }, 'tag'],
    ['a unit it cannot be marked in', { tag: 'D2', unit: 'psi' }, 'unit'],
    ['a resolution of nothing', { tag: 'D2', resolution: '0' }, 'resolution'],
    ['a permitted error that is no number', { tag: 'D2', permittedError: 'half' }, 'permittedError'],
  ])('refuses %s at its field', async (_, more, field) => {
    const { refusal } = await shopWithDial();
    expect(await refusal('gauges.saveGauge', { ...dial, ...more })).toMatchObject({ kind: 'refusal', field });
  });

  test('a dial does not become a micrometer', async () => {
    const { refusal, gaugeId } = await shopWithDial();
    expect(await refusal('gauges.saveGauge', { ...dial, gaugeId, kind: 'micrometer' })).toMatchObject({
      field: 'kind',
    });
  });
});

describe('a check against blocks', () => {
  test('gives the error by point and the worst, and is inside up to the permitted error', async () => {
    const { check, gauge } = await shopWithDial();
    await check('2026-11-20', [
      ['10', '10'],
      ['50', '49.5'],
      ['100', '100.2'],
    ]);
    const { checks, standing } = await gauge();
    expect(checks[0]?.points.map(({ error }) => error)).toEqual([0, -0.5 * thou, 0.2 * thou]);
    expect(checks[0]).toMatchObject({ worst: -0.5 * thou, isWithin: true, by: 'RA' });
    // 20 November and 90 days: 10 days to the 30th, 31 of December, 31 of January, 18 of February.
    expect(standing).toEqual({ word: 'good', checkedOn: '2026-11-20', dueOn: '2027-02-18' });
  });

  test('is found out when one error is larger than permitted, and good again after a good check', async () => {
    const { check, gauge } = await shopWithDial();
    await check('2026-11-20', [['50', '50.6']]);
    expect((await gauge()).standing.word).toBe('found out');
    await check('2026-11-21', [['50', '50.1']]);
    expect((await gauge()).standing.word).toBe('good');
  });

  test('is judged by the permitted error of its day', async () => {
    const { call, check, gauge, gaugeId } = await shopWithDial();
    await check('2026-11-20', [['50', '50.6']]);
    await call('gauges.saveGauge', { ...dial, gaugeId, permittedError: '1' });
    expect((await gauge()).checks[0]).toMatchObject({ isWithin: false, permittedError: thou / 2 });
  });

  test('misread is superseded with a reason, and no longer counts', async () => {
    const { check, gauge, refusal, gaugeId } = await shopWithDial();
    const { gaugeCheckId } = await check('2026-11-20', [['50', '51']]);
    const again = { supersedesId: gaugeCheckId, reason: 'block 51, not 50' };
    expect(
      await refusal('gauges.recordCheck', {
        gaugeId,
        against: 'blocks',
        checkedOn: '2026-11-20',
        points: [{ nominal: '51', read: '51' }],
        note: '',
        supersedesId: gaugeCheckId,
        by: 1,
      }),
    ).toMatchObject({ field: 'reason' });
    await check('2026-11-20', [['51', '51']], again);
    const { checks, standing } = await gauge();
    expect(standing.word).toBe('good');
    expect(checks.map(({ supersededById, reason }) => [supersededById === null, reason])).toEqual([
      [true, 'block 51, not 50'],
      [false, ''],
    ]);
    await expect(check('2026-11-20', [['51', '51']], again)).rejects.toThrow('superseded already');
  });

  test('of a day to come, and a point that is no number, are refused where they stand', async () => {
    const { refusal, gaugeId } = await shopWithDial();
    const input = { gaugeId, against: 'blocks', note: '', by: 1 };
    const points = [{ nominal: '10', read: '10' }];
    expect(await refusal('gauges.recordCheck', { ...input, checkedOn: '2027-01-01', points })).toMatchObject({
      field: 'checkedOn',
    });
    expect(
      await refusal('gauges.recordCheck', {
        ...input,
        checkedOn: '2026-11-20',
        points: [...points, { nominal: '20', read: 'twenty' }],
      }),
    ).toMatchObject({ field: 'points.1.read' });
  });
});

describe('the day a check is due', () => {
  const once = [{ checkedOn: '2026-02-27', isWithin: true }];

  test('is the last on which it is good: the day after it is overdue', () => {
    expect(gaugeStanding(once, 2, '2026-03-01').word).toBe('good');
    expect(gaugeStanding(once, 2, '2026-03-02').word).toBe('overdue');
  });

  test('never comes without an interval', () => {
    expect(gaugeStanding(once, null, '2036-01-01')).toEqual({ word: 'good', checkedOn: '2026-02-27', dueOn: null });
  });

  test('does not hide that it was found out', () => {
    expect(gaugeStanding([{ checkedOn: '2026-02-27', isWithin: false }], 2, '2036-01-01').word).toBe('found out');
  });
});
