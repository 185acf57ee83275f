// A line that names its gauge of the register: known with the line, changed with it, and refused where it cannot be.
import { expect, test } from 'vitest';
import { shopWithKx3 } from '../desk.ts';

const settings = {
  source: 'practice',
  name: 'Bench gauge',
  practice: 'steady',
  pattern: '{number}',
  unit: 'mm',
  isReversed: false,
  step_nm: 1000,
  stillWithin_steps: 5,
  stillFor_ms: 500,
  every_ms: 50,
} as const;

async function shopWithGauges() {
  const at = await shopWithKx3();
  const card = { permittedError: '', statedIn: '', offSquareDegrees: 0, serial: '', intervalDays: null, by: at.by };
  const save = async (kind: string, tag: string, unit: string, resolution: string) =>
    (await at.call('gauges.saveGauge', { gaugeId: null, kind, tag, unit, resolution, ...card })).gaugeId;
  return {
    ...at,
    dial: await save('dial plunger', 'D1', 'mm', '0.001'),
    pressure: await save('pressure gauge', 'P1', 'psi', '1'),
  };
}

test('the gauge stands with the line until another or none is named', async () => {
  const { call, dial } = await shopWithGauges();
  const { lineId } = await call('indicators.addLine', { ...settings, gaugeId: dial });
  const gauge = async () => (await call('indicators.listLines', {})).map(({ gaugeId }) => gaugeId);
  expect(await gauge()).toEqual([dial]);
  await call('indicators.changeLine', { lineId, settings });
  expect(await gauge()).toEqual([null]);
  await call('indicators.changeLine', { lineId, settings: { ...settings, gaugeId: dial } });
  expect(await gauge()).toEqual([dial]);
});

test('a gauge of something else, a retired one and one that is not there are refused, and nothing is kept', async () => {
  const { call, refusal, dial, pressure, by } = await shopWithGauges();
  const add = (gaugeId: number) => refusal('indicators.addLine', { ...settings, gaugeId });
  expect(await add(pressure)).toMatchObject({ field: 'gaugeId', message: expect.stringContaining('P1 is a pressure') });
  expect(await add(99)).toMatchObject({ kind: 'refusal' });
  await call('gauges.retireGauge', { gaugeId: dial, isRetired: true, by });
  expect(await add(dial)).toMatchObject({ field: 'gaugeId', message: expect.stringContaining('D1 is retired') });
  expect(await call('indicators.listLines', {})).toEqual([]);
});
