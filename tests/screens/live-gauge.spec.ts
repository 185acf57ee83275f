// A whole spot read off a running gauge with Enter alone, by its own practice gauge; then by a pedal, by a cable that
// types, and what is said where a line is gone.
import { expect, expectNoAxeComplaints, test } from './book.ts';

test('a spot is read off the gauge by Enter, kept with its trace, and a line can always be typed', async ({
  page,
  call,
}) => {
  const [job] = await call('jobs.listJobs', { text: 'pickup', includeClosed: false });
  const { checks } = await call('jobs.getJob', { jobId: job?.jobId });
  const checkId = checks.find(({ name }) => name === 'Forward clearance')?.checkId;
  const [line] = await call('indicators.listLines', {});
  const gauges = await call('gauges.listGauges', {});
  const dial = gauges.find(({ kind, isRetired }) => kind === 'dial plunger' && !isRetired);
  const { lineId: practiceId, isRetired: _, ...settings } = line ?? { lineId: 0, isRetired: false };
  await call('indicators.changeLine', { lineId: practiceId, settings: { ...settings, gaugeId: dial?.gaugeId } });
  const go = (path: string) => page.goto(new URL(`/#${path}`, page.url()).href);

  // The bench is told which gauge it reads, and its pedal by pressing it.
  await go('/lines');
  await page.getByRole('radio', { name: line?.name ?? '' }).press('Space');
  // The line brings its gauge of the register, and what is to be known about it.
  await expect(page.getByText(new RegExp(`^(It is )?${dial?.tag} `))).toBeVisible();
  await page.getByRole('button', { name: 'Bind a pedal by pressing it' }).press('Enter');
  await page.keyboard.press('g');
  await expect(page.getByText('g has its own meaning here')).toBeVisible();
  await page.getByRole('button', { name: 'Bind a pedal by pressing it' }).press('Enter');
  await page.keyboard.press('F9');
  await expect(page.getByText('The pedal is F9')).toBeVisible();
  await expectNoAxeComplaints(page);

  // One more read of the pack as it was found: Enter takes what it stands at, step by step.
  const { takeId } = await call('readings.startTake', {
    jobId: job?.jobId,
    checkId,
    phase: 'as found',
    mode: 'final',
    setup: await call('readings.lastSetup', { jobId: job?.jobId, checkId }),
    note: '',
    by: 1,
  });
  await go(`/bench/${job?.jobId}/${checkId}`);
  const gauge = page.getByRole('region', { name: `Gauge ${line?.name}` });
  await expect(gauge).toContainText('practice, made up');
  // Too early: nothing is accepted, and it says what is missing.
  await expect(gauge).toContainText('At rest. Push lightly to the stop.');
  await page.keyboard.press('Enter');
  await expect(gauge.getByRole('alert')).toContainText('Not yet. At rest.');
  await expect(gauge).toContainText('Enter accepts it.', { timeout: 30_000 });
  await expectNoAxeComplaints(page);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: /Spot 2/ })).toBeVisible();

  const { readings } = await call('readings.getTake', { takeId });
  const [trace] = await call('indicators.listTraces', { takeId });
  expect(trace).toMatchObject({ readingId: readings[0]?.readingId, isPractice: true, lineName: line?.name });
  // The practice spots' truth, app/indicators/simulated-plate.ts: 3 or 4 down, 22 to 24 up, seen in steps of 1 µm.
  expect(Math.round((readings[0]?.push ?? 0) / 25_400)).toBe(Math.round(-(trace?.pressed_nm ?? 0) / 25_400));
  expect([25, 26, 27, 28]).toContain(Math.round((readings[0]?.value ?? 0) / 25_400));

  // Misread: the right one comes off the gauge too, by the pedal.
  await page.keyboard.press('r');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: /what is right/ })).toBeVisible();
  await expect(gauge).toContainText('Enter accepts it.', { timeout: 30_000 });
  await page.keyboard.press('F9');
  await expect(page.getByRole('heading', { name: /Spot 2/ })).toBeVisible();
  const [misread, right] = (await call('readings.getTake', { takeId })).readings;
  expect(misread?.supersededById).toBe(right?.readingId);

  // A cable that types like a keyboard: fast, ended by Enter.
  await page.keyboard.type('4 23\n', { delay: 1 });
  await expect(page.getByRole('heading', { name: /Spot 3/ })).toBeVisible();
  expect((await call('readings.getTake', { takeId })).readings[2]).toMatchObject({ typed: '4 23' });

  // The ticket shows what the gauge said, and that it was made up.
  await go(`/jobs/${job?.jobId}/checks/${checkId}`);
  const traces = page.getByRole('list', { name: 'Traces of the gauge' });
  await expect(traces.getByRole('img', { name: /The gauge’s trace: pressed −[34]\.\d, air 2[234]\.\d/ })).toHaveCount(
    2,
  );
  await expect(traces).toContainText('Practice, made up.');

  // A line that is not there says so where the hand is, and typing goes on.
  const { lineId } = await call('indicators.addLine', {
    source: 'serial',
    name: 'Pulled out',
    path: '/dev/no-such-gauge',
    baudRate: 9600,
    dataBits: 8,
    parity: 'none',
    stopBits: 1,
    request: '',
    pattern: '{number}',
    unit: 'mm',
    isReversed: false,
    step_nm: 1000,
    stillWithin_steps: 5,
    stillFor_ms: 500,
    every_ms: 100,
  });
  expect(lineId).toBeGreaterThan(0);
  await go('/lines');
  await page.getByRole('radio', { name: 'Pulled out' }).press('Space');
  await go(`/bench/${job?.jobId}/${checkId}`);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('region', { name: 'Gauge Pulled out' })).toContainText('plug it in again');
  await page.keyboard.type('4 24\n', { delay: 1 });
  const last = async () => (await call('readings.getTake', { takeId })).readings.at(-1)?.typed;
  await expect.poll(last).toBe('4 24');
});
