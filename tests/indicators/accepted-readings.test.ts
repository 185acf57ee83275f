// A reading accepted off a gauge's line: kept with its trace, and never made up in a real job.
import { expect, test } from 'vitest';
import { deskIn, shopWithKx3 } from '../desk.ts';

const says = {
  pattern: '{number}',
  unit: 'mm',
  isReversed: false,
  step_nm: 1000,
  stillWithin_steps: 5,
  stillFor_ms: 500,
  every_ms: 50,
} as const;
const serial = {
  source: 'serial',
  name: 'Bench gauge',
  ...says,
  path: '/dev/ttyUSB0',
  baudRate: 9600,
  dataBits: 8,
  parity: 'none',
  stopBits: 1,
  request: '',
} as const;
const practice = { source: 'practice', name: 'Practice', ...says, practice: 'noisy' } as const;

const heard = (lineId: number) => ({
  lineId,
  samples: [
    [0, 0],
    [600, -101_600],
    [1300, 0],
    [2100, 584_200],
  ] as [number, number][],
  heard: 44,
  rest_nm: 0,
  pressed_nm: -101_600,
  air_nm: 584_200,
});

async function takeOfEndPlay() {
  const at = await shopWithKx3();
  const { jobId } = await at.call('jobs.checkIn', {
    customer: { name: 'Tam Okoro', phone: '', email: '' },
    unit: { familyId: at.familyId, serial: '1', vehicle: '', use: 'tow' },
    complaint: '',
    caseTag: '',
    distance: null,
    by: at.by,
  });
  const job = await at.call('jobs.getJob', { jobId });
  const checkId = job.checks.find(({ name }) => name === 'Front end play')?.checkId;
  const { takeId } = await at.call('readings.startTake', {
    jobId,
    checkId,
    phase: 'as found',
    mode: 'final',
    setup: null,
    note: '',
    by: at.by,
  });
  return { ...at, takeId };
}

test('the trace stands beside its reading as it was heard, under the line’s name of that day', async () => {
  const { call, takeId, by } = await takeOfEndPlay();
  const { lineId } = await call('indicators.addLine', serial);
  const line = { takeId, spot: 1, typed: '0.5842 mm', by };
  const { readingId, take } = await call('readings.recordReading', { ...line, heard: heard(lineId) });
  expect(take.readings).toMatchObject([{ readingId, value: 584_200 }]);
  await call('readings.recordReading', line);
  await call('indicators.changeLine', { lineId, settings: { ...serial, name: 'Old gauge' } });
  const { lineId: _, ...kept } = heard(lineId);
  expect(await call('indicators.listTraces', { takeId })).toEqual([
    { readingId, ...kept, lineName: 'Bench gauge', isPractice: false },
  ]);
});

test('a reading put in the place of a misread one brings its own trace; the first one’s stays', async () => {
  const { call, takeId, by } = await takeOfEndPlay();
  const { lineId } = await call('indicators.addLine', serial);
  const first = await call('readings.recordReading', { takeId, spot: 1, typed: '0.5842 mm', by, heard: heard(lineId) });
  const again = { readingId: first.readingId, typed: '0.584 mm', reason: 'the dial was bumped', by };
  const second = await call('readings.supersedeReading', { ...again, heard: { ...heard(lineId), heard: 51 } });
  expect(await call('indicators.listTraces', { takeId })).toMatchObject([
    { readingId: first.readingId, heard: 44 },
    { readingId: second.readingId, heard: 51 },
  ]);
});

test('what the practice gauge made up is refused in a real job, whole, and marked in the demo shop', async () => {
  const { call, refusal, takeId, by } = await takeOfEndPlay();
  const { lineId } = await call('indicators.addLine', practice);
  const line = { takeId, spot: 1, typed: '0.5842 mm', by };
  expect(await refusal('readings.recordReading', { ...line, heard: heard(lineId) })).toMatchObject({
    code: 'practice',
    message: expect.stringContaining('demo shop'),
  });
  expect((await call('readings.getTake', { takeId })).readings).toEqual([]);

  const demo = await deskIn();
  await demo.call('shop.openDemoShop', {});
  const [practised] = await demo.call('indicators.listLines', {});
  const [job] = await demo.call('jobs.listJobs', { text: 'pickup', includeClosed: false });
  const { checks } = await demo.call('jobs.getJob', { jobId: job?.jobId });
  const checkId = checks.find(({ name }) => name === 'Rear end play')?.checkId;
  const { takeId: demoTake } = await demo.call('readings.startTake', {
    jobId: job?.jobId,
    checkId,
    phase: 'final',
    mode: 'final',
    setup: null,
    note: '',
    by: 1,
  });
  await demo.call('readings.recordReading', {
    ...line,
    takeId: demoTake,
    by: 1,
    heard: heard(practised?.lineId ?? 0),
  });
  expect(await demo.call('indicators.listTraces', { takeId: demoTake })).toMatchObject([{ isPractice: true }]);
});

test('a line that cannot be meant is refused at its field; one no longer used is not opened', async () => {
  const { call, refusal } = await shopWithKx3();
  const { lineId } = await call('indicators.addLine', serial);
  expect(await refusal('indicators.addLine', serial)).toMatchObject({ field: 'name' });
  expect(await refusal('indicators.addLine', { ...serial, name: 'B', pattern: 'A' })).toMatchObject({
    field: 'pattern',
  });
  expect(await refusal('indicators.addLine', { ...serial, name: 'B', request: '\\q' })).toMatchObject({
    field: 'request',
  });
  expect(await refusal('indicators.addLine', { ...serial, name: 'B', baudRate: 0 })).toMatchObject({
    field: 'baudRate',
  });
  await call('indicators.retireLine', { lineId });
  expect(await refusal('indicators.hearLine', { lineId })).toMatchObject({ code: 'retired' });
  expect(await call('indicators.listLines', {})).toMatchObject([{ name: 'Bench gauge', isRetired: true }]);
});
