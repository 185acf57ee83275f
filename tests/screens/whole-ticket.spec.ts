// One unit from the door to the door, by keyboard: taken in as a small job, read, torn down, paid for, built, handed over.
import type { Page } from '@playwright/test';
import { expect, expectNoAxeComplaints, test } from './book.ts';

async function goTo(page: Page, address: string): Promise<void> {
  await page.evaluate((hash) => {
    location.hash = hash;
  }, address);
}

/** A move that nothing stands in the way of. */
async function moveTo(page: Page, stage: string): Promise<void> {
  await page.getByRole('button', { name: `Move to ${stage}` }).press('Enter');
  await expect(page.getByRole('list', { name: 'Stages' }).locator('[aria-current="step"]')).toContainText(stage);
}

async function openPage(page: Page, name: string): Promise<void> {
  const way = page.getByRole('navigation', { name: 'Pages of the ticket' }).getByRole('link', { name, exact: true });
  await way.press('Enter');
  await expect(way).toHaveAttribute('aria-current', 'page');
}

test('a reseal goes from the door to the door, and its history tells every act of it', async ({ page, call }) => {
  // What this shop's reseal takes: one check, and two of the family's lists.
  await goTo(page, '/specs/1/small-jobs');
  const reseal = page.getByRole('form', { name: 'Reseal', exact: true });
  for (const turned of ['Pump bolts', 'Extension housing', 'Pan', 'Cooler flow in 30 s', 'Converter', 'Cooler']) {
    await reseal.getByRole('checkbox', { name: turned, exact: true }).press('Space');
  }
  await reseal.getByRole('button', { name: 'Keep Reseal' }).press('Enter');
  await expect(reseal.getByText('Kept.')).toBeVisible();

  await goTo(page, '/jobs/new');
  await expect(page.getByRole('combobox', { name: 'Name or phone' })).toBeFocused();
  for (const entry of ['Ada Verne', '555 0190', '', 'KX3-21-0305', 'flatbed truck']) {
    await page.keyboard.type(entry);
    await page.keyboard.press('Enter');
  }
  await page.getByRole('radio', { name: 'the whole rebuild' }).focus();
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Enter');
  await page.keyboard.type('Drips at the front when it stands.');
  await page.getByLabel('Ready on').fill('2028-02-29');
  await page.keyboard.press('Control+Enter');
  await expect(page.getByRole('heading', { name: /^Job \d{3}$/ })).toBeVisible();
  await expect(page.getByText('Reseal', { exact: true })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Move to Teardown' })).toHaveCount(0);
  const [line] = await call('jobs.listJobs', { text: 'KX3-21-0305', includeClosed: false });
  const jobId = line?.jobId ?? 0;
  for (const name of [
    'Door',
    'Teardown',
    'Build',
    'Final',
    'Delivery',
    'Estimate',
    'Parts',
    'Photos',
    'Papers',
    'History',
    'Checks',
  ]) {
    await openPage(page, name);
  }

  // Thrust washer, 10 to 24: as found it stands at 21.
  await page.getByRole('link', { name: 'Read at the bench' }).press('Enter');
  await page.getByRole('link', { name: /^Front end play/ }).press('Enter');
  await expect(page.getByRole('textbox', { name: /^travel, thou/ })).toBeFocused();
  await page.getByRole('button', { name: /Read with/ }).press('Enter');
  await page.getByRole('option', { name: 'Lever 2' }).press('Enter');
  await expect(page.getByRole('listbox')).toHaveCount(0);
  await page.keyboard.type('21');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1 })).toContainText('21.0');

  await goTo(page, `/jobs/${jobId}/teardown`);
  const entry = page.getByRole('form', { name: 'Write a finding down' });
  await entry.getByRole('combobox', { name: 'Part' }).focus();
  for (const typed of ['front seal', 'leaking', '']) {
    await page.keyboard.type(typed);
    await page.keyboard.press('Enter');
  }
  // Past reuse to replace.
  await expect(entry.getByRole('radio', { name: 'not decided yet' })).toBeFocused();
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Control+Enter');
  const seal = page.getByRole('table', { name: 'Findings' }).getByRole('row').filter({ hasText: 'front seal' });
  await expect(seal).toContainText('leaking');

  await openPage(page, 'Estimate');
  const offered = page.getByRole('table', { name: 'To be replaced, not charged yet' });
  await offered.getByRole('button', { name: 'Price of front seal' }).press('Enter');
  await expect(page.getByRole('textbox', { name: 'Price of one' })).toBeFocused();
  await page.keyboard.type('14.50');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('table', { name: 'Lines' }).getByRole('row', { name: /^front seal/ })).toContainText(
    '14.50',
  );
  await expect(offered).toHaveCount(0);
  await page.getByRole('textbox', { name: 'What was found' }).fill('The front seal leaks.');
  await page.keyboard.press('Control+Enter');
  await expect(page.getByRole('textbox', { name: 'Who said yes' })).toHaveValue('Ada Verne');
  await page.getByRole('button', { name: 'Write down the yes' }).press('Enter');
  await expect(page.getByRole('heading', { name: 'Approved', exact: true })).toBeVisible();

  await openPage(page, 'Build');
  await moveTo(page, 'Build');
  await answerFirst(page, 'Build', 'Source', '1');
  await moveTo(page, 'Final check');
  await answerFirst(page, 'Final', 'Cooler and lines', '1');
  // It does not leave before somebody signs for it.
  await page.getByRole('button', { name: 'Move to Ready' }).press('Enter');
  await expect(page.getByRole('form', { name: 'Move to Ready' })).toContainText('not signed off');
  await page.getByRole('button', { name: 'Stay' }).press('Enter');
  await page.getByRole('button', { name: 'Sign off' }).press('Enter');
  await expect(page.getByRole('textbox', { name: 'Note' })).toBeFocused();
  await page.keyboard.type('dry after an hour');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('region', { name: 'Sign-off, on stand or in vehicle' })).toContainText(
    'dry after an hour',
  );
  await moveTo(page, 'Ready');

  await openPage(page, 'Delivery');
  const handover = page.getByRole('form', { name: 'Hand it over' });
  await expect(handover.getByRole('textbox', { name: 'Handed to' })).toHaveValue('Ada Verne');
  await handover.getByRole('textbox', { name: 'Odometer' }).fill('118,412');
  await page.keyboard.press('Control+Enter');
  await expect(page.getByRole('region', { name: 'Handed over' })).toContainText('to Ada Verne');
  await expect(page.getByRole('region', { name: 'Warranty' })).toContainText('12,000 miles');

  await openPage(page, 'Papers');
  await page.getByRole('link', { name: 'Build report, customer’s copy' }).press('Enter');
  await expect(page.locator('iframe')).toHaveAttribute('title', /\.pdf$/);
  await expect(page.getByRole('radio', { name: 'Customer’s copy' })).toBeChecked();
  await expectNoAxeComplaints(page);

  await goTo(page, `/jobs/${jobId}/history`);
  const acts = [
    /Handed over|Delivered/,
    /Into Ready/,
    /Signed off on stand/,
    /Cooler, Cooler and lines: flushed/,
    /Into Final check/,
    /Converter, Source: new/,
    /Into Build/,
    /Estimate 1 approved by Ada Verne, phone/,
    /Estimate 1 given: 14\.50/,
    /front seal: leaking, to be replaced/,
    /Front end play, as found: 21\.0/,
    /Checked in for Ada Verne/,
  ];
  const told = page.getByRole('table', { name: 'What was done' }).getByRole('row');
  await expect(told.filter({ hasText: new RegExp(acts.map(({ source }) => source).join('|')) })).toHaveText(acts);
  const job = await call('jobs.getJob', { jobId });
  const checkId = job.checks[0]?.checkId;
  expect(await call('readings.listTakes', { jobId, checkId })).toMatchObject([{ gauge: { tag: 'Lever 2' } }]);
  // Nothing was gone on without, nothing is open.
  expect(job).toMatchObject({ passedOver: [], missing: [], signOff: { note: 'dry after an hour' } });
});

/** Answers the one line of a page's list with a key of its own. */
async function answerFirst(page: Page, of: string, words: string, key: string): Promise<void> {
  await openPage(page, of);
  const line = page.getByRole('listitem', { name: words, exact: true });
  await line.getByRole('button').first().focus();
  await page.keyboard.press(key);
  await expect(line.getByRole('button', { name: 'Again' })).toBeVisible();
}
