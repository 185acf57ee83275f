// From the door to the door: earlier visits, gates, calls and promises, the board's keys, the history and its papers.
import type { Page } from '@playwright/test';
import { expect, expectNoAxeComplaints, test } from './book.ts';

async function goTo(page: Page, address: string): Promise<void> {
  await page.evaluate((hash) => {
    location.hash = hash;
  }, address);
}

test('a unit that comes back shows its visits while its serial is typed, and on its ticket', async ({ page }) => {
  await expect(page.getByRole('table', { name: 'Jobs by stage' })).toBeVisible();
  await page.keyboard.press('n');
  await expect(page.getByRole('combobox', { name: 'Name or phone' })).toBeFocused();
  await page.keyboard.type('Tam Okoro');
  // What is offered stands in front of the form until it is taken or waved away.
  await expect(page.getByRole('option', { name: 'Tam Okoro' })).toBeVisible();
  await page.keyboard.press('Escape');
  await page.getByRole('combobox', { name: 'Serial' }).fill('kx3-19-2214');
  await expect(page.getByRole('option', { name: 'KX3 KX3-19-2214' })).toBeVisible();
  await page.keyboard.press('Escape');
  const visits = page.getByRole('region', { name: 'Was here before' });
  await expect(visits.getByRole('link', { name: 'Job 1' })).toBeVisible();
  await page.keyboard.press('Control+Enter');
  await expect(page.getByRole('heading', { name: /^Job \d{3}$/ })).toBeVisible();
  await visits.getByRole('link', { name: 'Job 1' }).press('Enter');
  await expect(page.getByRole('heading', { name: 'Job 1' })).toBeVisible();
});

test('a stage is not passed without what it asks for, unless it is said why', async ({ page, call }) => {
  await goTo(page, '/jobs/2');
  await page.getByRole('button', { name: 'Move to Teardown' }).press('Enter');
  const gate = page.getByRole('form', { name: 'Move to Teardown' });
  await expect(gate).toContainText('Forward clearance, Direct clearance, Low/reverse clearance: not read as found');
  await expect(gate.getByRole('button', { name: 'Stay' })).toBeFocused();
  await gate.getByRole('textbox', { name: 'Why it goes on without' }).fill('came in apart');
  await page.keyboard.press('Enter');
  await expect(page.getByText('Left As found without: Forward clearance')).toBeVisible();
  const { passedOver } = await call('jobs.getJob', { jobId: 2 });
  expect(passedOver).toMatchObject([{ stageName: 'As found', reason: 'came in apart', by: 'RA' }]);
});

test('a call and another day are written down by keyboard, the earlier day stays', async ({ page, call }) => {
  await goTo(page, '/jobs/1/door');
  await page.getByRole('button', { name: 'Write a call down' }).press('Enter');
  await expect(page.getByRole('textbox', { name: 'What was said' })).toBeFocused();
  await page.keyboard.type('Monday is fine.');
  await page.keyboard.press('Control+Enter');
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await page.getByRole('button', { name: 'Promise another day' }).press('Enter');
  await page.getByLabel('Day', { exact: true }).fill('2028-02-29');
  await page.keyboard.press('Control+Enter');
  await expect(page.getByText('Say why another day is promised.')).toBeVisible();
  await page.getByRole('textbox', { name: 'Why another day' }).fill('washer on order');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await expect(page.getByRole('region', { name: 'Calls' })).toContainText('Monday is fine.');
  await expect(page.getByRole('region', { name: 'Days promised' })).toContainText('washer on order');
  await expect(page.getByRole('region', { name: 'Days promised' }).locator('s')).toHaveCount(1);
  expect((await call('jobs.listPromises', { jobId: 1 }))[0]).toMatchObject({ on: '2028-02-29' });
});

test('on the board M moves a job on or says what is missing, and a late day says so in words', async ({
  page,
  call,
}) => {
  await call('jobs.promiseDay', { jobId: 2, on: '2020-01-31', reason: '', by: 1 });
  await page.reload();
  const board = page.getByRole('table', { name: 'Jobs by stage' });
  await expect(board.getByRole('row').filter({ hasText: 'Brandvold' })).toContainText('late');
  await board.getByRole('link', { name: '2' }).focus();
  await page.keyboard.press('m');
  await expect(board.getByRole('rowheader', { name: /^As found/ })).toBeVisible();
  const row = board.getByRole('row').filter({ hasText: 'Brandvold' });
  // As found asks for one thing, and it is not there.
  await expect(row.getByRole('cell').last()).toHaveText('1');
  await board.getByRole('link', { name: '2' }).focus();
  await page.keyboard.press('m');
  await expect(page.getByRole('alert')).toContainText('Before Teardown: Forward clearance');
  await page.getByRole('searchbox').fill('a43');
  await expect(page.getByRole('heading', { name: 'No open job holds “a43”.' })).toBeVisible();
  await page.getByRole('searchbox').fill('a3');
  await expect(board.getByRole('link')).toHaveText(['1']);
});

test('the history reads from the newest act back, and nothing for axe to complain of', async ({ page }) => {
  await goTo(page, '/jobs/1/door');
  await page.getByRole('button', { name: 'Move to Closed' }).press('Enter');
  await expect(page.getByRole('region', { name: 'Said and seen' })).toContainText('smells burnt');
  await expectNoAxeComplaints(page);
  await page.getByRole('link', { name: 'History' }).press('Enter');
  const rows = page.getByRole('table', { name: 'What was done' }).getByRole('row');
  await expect(rows.filter({ hasText: /Checked in for Tam Okoro|entered as found|Into Teardown|Called/ })).toHaveText([
    /Called Tam Okoro/,
    /Into Teardown/,
    /Low\/reverse: entered as found/,
    /Direct: entered as found/,
    /Forward: entered as found/,
    /Checked in for Tam Okoro/,
  ]);
  await expectNoAxeComplaints(page);
});
