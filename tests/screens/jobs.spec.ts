// Jobs: the board, check-in, the ticket, a check with its readings, the build report.
import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { type Call, expect, expectNoAxeComplaints, test } from './book.ts';

/** The demo's first job and one of its checks, by name. */
async function checkOfFirstJob(call: Call, name: string) {
  const [line] = (await call('jobs.listJobs', { text: 'Okoro', includeClosed: true })).slice(-1);
  const job = await call('jobs.getJob', { jobId: line?.jobId });
  const check = job.checks.find((each) => each.name === name);
  if (!check) throw new Error(`no check is called ${name}`);
  return { job, check };
}

async function goTo(page: Page, address: string): Promise<void> {
  await page.evaluate((hash) => {
    location.hash = hash;
  }, address);
}

/** N on the board, and the hand at the first entry. */
async function beginCheckIn(page: Page): Promise<void> {
  await expect(page.getByRole('table', { name: 'Jobs by stage' })).toBeVisible();
  await page.keyboard.press('n');
  await expect(page.getByRole('combobox', { name: 'Name or phone' })).toBeFocused();
}

test('a unit is checked in by keyboard alone and its ticket opens', async ({ page, call }) => {
  await beginCheckIn(page);
  const typed = ['Ada Verne', '555 0190', 'ada@verne.example', 'KX3-21-0305', 'flatbed truck'];
  for (const entry of typed) {
    await page.keyboard.type(entry);
    await page.keyboard.press('Enter');
  }
  // The one family is chosen already; of the uses the second is meant.
  await expect(page.getByRole('radio', { name: 'KX3' })).toBeFocused();
  await page.keyboard.press('Enter');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Enter');
  // A whole rebuild, which is chosen already.
  await page.keyboard.press('Enter');
  await page.keyboard.type('No reverse.');
  await page.keyboard.press('Tab');
  await page.keyboard.type('118,400');
  await page.keyboard.press('Enter');
  await page.keyboard.press('Enter');
  await page.keyboard.type('T-9');
  await page.keyboard.press('Enter');
  await page.keyboard.type('third gear ratio');
  await page.keyboard.press('Enter');
  await page.keyboard.type('dark fines');
  await page.keyboard.press('Enter');
  // Level, colour and smell are each chosen with the arrows, or left as not looked at.
  await page.keyboard.press('ArrowRight');
  for (let choice = 0; choice < 3; choice += 1) await page.keyboard.press('Enter');
  await page.keyboard.press('Control+Enter');

  await expect(page.getByRole('heading', { name: /^Job \d{3}$/ })).toBeVisible();
  // The keyboard goes on from the ticket, and its first key leads to the bench.
  await expect(page.getByRole('main')).toBeFocused();
  await page.keyboard.press('Tab');
  const toBench = page.getByRole('link', { name: 'Read at the bench' });
  await expect(toBench).toBeFocused();
  await expect(page.getByText('Ada Verne, 555 0190')).toBeVisible();
  await expect(page.getByText('flatbed truck, tow')).toBeVisible();
  await expect(page.getByText('118,400 miles')).toBeVisible();
  const missing = page.getByRole('region', { name: 'Missing' });
  await expect(missing.getByRole('link', { name: 'Forward clearance' })).toBeVisible();
  const [line] = await call('jobs.listJobs', { text: 'T-9', includeClosed: false });
  const { diagnosis } = await call('jobs.getJob', { jobId: line?.jobId });
  expect(diagnosis).toMatchObject({ codes: 'third gear ratio', fluidLevel: 'none on the stick', pan: 'dark fines' });
  expect(line).toMatchObject({ serial: 'KX3-21-0305', use: 'tow', complaint: 'No reverse.' });
  await toBench.press('Enter');
  await expect(page).toHaveURL(new RegExp(`#/bench\\?unit=${line?.jobId}$`));
});

test('who and what was here before is found by a fragment and taken', async ({ page, call }) => {
  await beginCheckIn(page);
  await page.keyboard.type('oko');
  await expect(page.getByRole('option', { name: 'Tam Okoro' })).toBeVisible();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await expect(page.getByText('Was here before: 555 0117.')).toBeVisible();
  await page.keyboard.press('Enter');
  await page.keyboard.type('2214');
  await expect(page.getByRole('option', { name: 'KX3 KX3-19-2214' })).toBeVisible();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await expect(page.getByText('half-ton pickup, tow: was here once.')).toBeVisible();
  await page.keyboard.press('Control+Enter');
  await expect(page.getByRole('heading', { name: /^Job \d{3}$/ })).toBeVisible();
  const units = await call('units.findUnits', { text: '2214' });
  expect(units.map((unit) => unit.visits)).toEqual([2]);
  expect(await call('customers.findCustomers', { text: 'Okoro' })).toHaveLength(1);
});

test('what cannot be taken is said where it stands, and nothing typed is lost', async ({ page, call }) => {
  await beginCheckIn(page);
  await page.getByRole('textbox', { name: 'Odometer' }).fill('118k');
  await page.getByRole('textbox', { name: 'What it does, and when' }).fill('Slips when hot.');
  await page.keyboard.press('Control+Enter');
  await expect(page.getByText('Type whose unit it is.')).toBeVisible();
  await expect(page.getByText('“118k” is not a whole number: type it in figures, such as 118400.')).toBeVisible();
  await expect(page.getByRole('combobox', { name: 'Name or phone' })).toBeFocused();
  await page.reload();
  await expect(page.getByRole('textbox', { name: 'Odometer' })).toHaveValue('118k');
  await expect(page.getByRole('textbox', { name: 'What it does, and when' })).toHaveValue('Slips when hot.');
  expect(await call('jobs.listJobs', { text: '', includeClosed: false })).toHaveLength(2);
  await page.getByRole('button', { name: 'Begin again' }).press('Enter');
  await expect(page.getByRole('combobox', { name: 'Name or phone' })).toBeFocused();
  await expect(page.getByRole('textbox', { name: 'Odometer' })).toHaveValue('');
});

test('the board finds a job by a fragment, and arrows and Enter open it', async ({ page }) => {
  const board = page.getByRole('table', { name: 'Jobs by stage' });
  await expect(board.getByRole('link')).toHaveText(['2', '1']);
  await page.getByRole('searchbox').fill('pickup');
  await expect(board.getByRole('link')).toHaveText(['1']);
  await page.getByRole('searchbox').fill('nobody');
  await expect(page.getByRole('heading', { name: 'No open job holds “nobody”.' })).toBeVisible();
  await page.getByRole('searchbox').fill('');
  await expect(board.getByRole('link')).toHaveText(['2', '1']);
  await board.getByRole('link', { name: '2' }).focus();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'Job 1' })).toBeVisible();
});

test('closing is said plainly, and a closed job refuses until an open stage is entered', async ({ page, call }) => {
  const { job, check } = await checkOfFirstJob(call, 'Forward clearance');
  await goTo(page, `/jobs/${job.jobId}`);
  await page.getByRole('button', { name: 'Move to Closed' }).press('Enter');
  await expect(page.getByText('Once it is closed nothing more is written to it')).toBeVisible();
  await page.getByRole('button', { name: 'Close the job' }).press('Enter');
  await expect(page.getByText('Say why it goes on without; it stays on the ticket.')).toBeVisible();
  await page.keyboard.type('Sold as a core.');
  await page.getByRole('button', { name: 'Close the job' }).press('Enter');
  await expect(page.getByText('Job 1 is closed: nothing more is written to it.')).toBeVisible();

  await goTo(page, `/jobs/${job.jobId}/checks/${check.checkId}`);
  await page.getByRole('textbox', { name: 'Reason' }).fill('Customer agrees.');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('alert')).toHaveText('Job 1 is closed: move it to an open stage to write to it.');
  await expect(page.getByRole('textbox', { name: 'Reason' })).toHaveValue('Customer agrees.');
  expect((await checkOfFirstJob(call, 'Forward clearance')).check.override).toBeNull();

  await goTo(page, `/jobs/${job.jobId}`);
  await page.getByRole('button', { name: /Move to (done: )?Build/ }).press('Enter');
  const stages = page.getByRole('list', { name: 'Stages', exact: true });
  await expect(stages.getByRole('listitem').filter({ hasText: 'Build' })).toHaveAttribute('aria-current', 'step');
  expect((await checkOfFirstJob(call, 'Forward clearance')).job.isClosed).toBe(false);
});

test('a check is let stand with a reason, under the name of who is at the bench', async ({ page, call }) => {
  const { job, check } = await checkOfFirstJob(call, 'Front end play');
  await goTo(page, `/jobs/${job.jobId}`);
  const missing = page.getByRole('region', { name: 'Missing' });
  await missing.getByRole('link', { name: 'Front end play' }).press('Enter');
  await expect(page.getByRole('heading', { name: 'Front end play' })).toBeVisible();
  await page.getByRole('button', { name: 'Let it stand' }).press('Enter');
  await expect(page.getByText('Say why it may stand.')).toBeVisible();
  await page.keyboard.type('Thrust washer on order, core unit.');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'Stands by decision' })).toBeVisible();

  await goTo(page, `/jobs/${job.jobId}`);
  const row = page.getByRole('row').filter({ has: page.getByRole('link', { name: 'Front end play' }) });
  await expect(row).toContainText('let stand by RA: Thrust washer on order, core unit.');
  await expect(row).toContainText('loose by 7.0');
  await expect(missing.getByRole('link', { name: 'Front end play' })).toHaveCount(0);
  const { override } = (await checkOfFirstJob(call, check.name)).check;
  expect(override).toMatchObject({ by: 'RA', reason: 'Thrust washer on order, core unit.' });
});

test('a misread line stays on its check, struck through, with why and by whom', async ({ page, call }) => {
  const { job, check } = await checkOfFirstJob(call, 'Front end play');
  const by = 1;
  const { takeId } = await call('readings.startTake', {
    jobId: job.jobId,
    checkId: check.checkId,
    phase: 'final',
    mode: 'final',
    setup: null,
    note: 'washer 78.0',
    by,
  });
  const { readingId } = await call('readings.recordReading', { takeId, spot: 1, typed: '12', by });
  const reason = 'misread by a number on the face';
  await call('readings.supersedeReading', { readingId, typed: '19', reason, by });

  await goTo(page, `/jobs/${job.jobId}/checks/${check.checkId}`);
  const final = page.getByRole('region', { name: /^Final/ });
  // 12 thou is 0.3048 mm, 19 thou is 0.4826 mm: exactly, at 25.4 µm a thou.
  await expect(final.locator('s')).toHaveText(['12', '12.0 thou · 0.305 mm']);
  await expect(final.getByRole('row').nth(1)).toContainText(`misread: ${reason} (RA)`);
  await expect(final.getByRole('row').nth(2)).toContainText('19.0 thou · 0.483 mm');
  await final.getByRole('button', { name: /^Why ±/ }).press('Enter');
  await expect(final.getByRole('table', { name: 'Uncertainty budget' })).toContainText('dial resolution');
  await expect(page.getByRole('region', { name: /^As found/ })).toContainText('loose by 7.0');
  await expect(page.getByRole('link', { name: 'Read it at the bench' })).toBeVisible();
});

test('the pack stands to scale beside its mock-ups, with what was predicted beside what was read', async ({ page }) => {
  await page.getByRole('table', { name: 'Jobs by stage' }).getByRole('link', { name: '1' }).press('Enter');
  const packs = page.getByRole('region', { name: 'Packs and variants' });
  await expect(packs.getByRole('img', { name: /to scale, from the piston up: steel 1 A31 77.0/ })).toBeVisible();
  await expect(packs.getByRole('table', { name: 'Mock-ups' }).getByRole('row').nth(1)).toContainText('32.0 ±');
});

test('the customer’s copy is shown, and saved as a PDF', async ({ page }) => {
  await goTo(page, '/jobs/1/papers');
  await page.getByRole('link', { name: 'Build report, customer’s copy' }).press('Enter');
  await page.getByRole('radio', { name: 'A4' }).press('Space');
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the PDF' }).press('Enter');
  const file = await (await saving).path();
  expect((await readFile(file)).subarray(0, 5).toString()).toBe('%PDF-');
});

test('nothing for axe to complain of on the board and at check-in', async ({ page }) => {
  await expect(page.getByRole('table', { name: 'Jobs by stage' })).toBeVisible();
  await expectNoAxeComplaints(page);
  await beginCheckIn(page);
  await expectNoAxeComplaints(page);
});

test('nothing for axe to complain of on the ticket and its checks', async ({ page }) => {
  await goTo(page, '/jobs/1');
  await expect(page.getByRole('table', { name: 'Mock-ups' })).toBeVisible();
  await expectNoAxeComplaints(page);
  await goTo(page, '/jobs/1/checks/1');
  await expect(page.getByRole('table', { name: 'Readings as typed' })).toBeVisible();
  await page.getByRole('button', { name: /^Why ±/ }).click();
  await expectNoAxeComplaints(page);
});

test('a place is met at its beginning, however far down the one before was left', async ({ page }) => {
  await page.goto(new URL('/#/jobs/1', page.url()).href);
  const pan = page.getByRole('link', { name: /^Pan/ });
  await pan.scrollIntoViewIfNeeded();
  await expect(page.getByRole('heading', { level: 1 })).not.toBeInViewport();
  await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Bench' }).press('Enter');
  await expect(page.getByRole('heading', { level: 1, name: /checks are open/ })).toBeInViewport();
  await expect.poll(() => page.getByRole('main').evaluate((main) => main.scrollTop)).toBe(0);
});
