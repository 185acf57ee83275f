// The estimate: from nothing to a customer's yes by keyboard, what changed since, money ahead, the paper.
import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { type Call, expect, expectNoAxeComplaints, test } from './book.ts';

/** The ticket of the demo that nothing was pulled for. */
async function emptyTicket(call: Call): Promise<number> {
  const [line] = await call('jobs.listJobs', { text: 'Brandvold', includeClosed: false });
  if (!line) throw new Error('the demo has no job of Brandvold');
  return line.jobId;
}

async function goTo(page: Page, address: string): Promise<void> {
  await page.evaluate((hash) => {
    location.hash = hash;
  }, address);
}

async function setTerms(call: Call): Promise<void> {
  const terms = { labourRate: '115', taxLabel: 'Sales tax', taxRate: '8.875', isLabourTaxable: false, by: 1 };
  await call('jobs.setMoneyTerms', terms);
}

const washer = {
  kind: 'part',
  description: 'Thrust washer',
  quantity: '2',
  unitPrice: '9.50',
  unitCost: '3.10',
  isTaxable: true,
  batchId: null,
};

test('by keyboard alone: rates, two lines, the estimate given, and the yes by phone', async ({ page, call }) => {
  const jobId = await emptyTicket(call);
  await goTo(page, `/jobs/${jobId}`);
  await page.getByRole('link', { name: 'Estimate' }).press('Enter');
  await expect(page.getByRole('heading', { name: 'No line yet.' })).toBeVisible();

  await page.getByRole('button', { name: 'Rates and tax…' }).press('Enter');
  await page.getByRole('textbox', { name: 'Labour, per hour' }).focus();
  await page.keyboard.type('115');
  await page.keyboard.press('Enter');
  await page.keyboard.press('Enter');
  await page.keyboard.press('Control+A');
  await page.keyboard.type('8.875');
  await page.keyboard.press('Control+Enter');
  await expect(page.getByRole('dialog')).toHaveCount(0);

  const add = page.getByRole('form', { name: 'Add a line' });
  await add.getByRole('radio', { name: 'Labour' }).focus();
  await page.keyboard.press('Enter');
  for (const entry of ['Rebuild', '18.5', '']) {
    await page.keyboard.type(entry);
    await page.keyboard.press('Enter');
  }
  await page.keyboard.press('Enter');
  const lines = page.getByRole('table', { name: 'Lines' });
  // 18.5 × 115.00.
  await expect(lines.getByRole('row', { name: /^Rebuild/ })).toContainText('2127.50');

  // The hand is back at what the next line is for; one step back is its kind.
  await expect(add.getByRole('textbox', { name: 'What' })).toBeFocused();
  await page.keyboard.press('Shift+Tab');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Enter');
  for (const entry of ['Thrust washer', '2', '9.50']) {
    await page.keyboard.type(entry);
    await page.keyboard.press('Enter');
  }
  await page.keyboard.press('Enter');
  // 19.00 × 8.875 % = 1.68625, so 1.69; 2,127.50 + 19.00 + 1.69.
  await expect(lines.getByRole('row', { name: /^Total/ })).toContainText('2148.19');
  await expect(page.getByText('Half a cent goes away from zero.')).toBeVisible();

  await page.getByRole('textbox', { name: 'What was found' }).focus();
  await page.keyboard.type('Direct drum burnt.');
  await page.keyboard.press('Control+Enter');
  await expect(page.getByRole('heading', { name: 'Waits for a yes' })).toBeVisible();
  await page.getByRole('textbox', { name: 'Who said yes' }).focus();
  await page.keyboard.press('Control+Enter');
  await expect(page.getByRole('heading', { name: 'Approved', exact: true })).toBeVisible();
  await expect(page.getByText(/Estimate 1 approved by Ilse Brandvold by phone on/)).toBeVisible();
  const { state, approved } = await call('jobs.getEstimate', { jobId });
  expect([state, approved?.upTo_cents, approved?.by]).toEqual(['approved', 214_819, 'RA']);
  await goTo(page, `/jobs/${jobId}`);
  await expect(page.getByRole('link', { name: 'Approved up to 2148.19' })).toBeVisible();
});

test('a change after the yes asks why, stands beside its difference, and over the amount a new yes', async ({
  page,
  call,
}) => {
  const jobId = await emptyTicket(call);
  await setTerms(call);
  await call('jobs.addLine', { jobId, line: washer, by: 1 });
  const { estimateId } = await call('jobs.giveEstimate', { jobId, whatWasFound: 'Worn.', by: 1 });
  const said = { approvedBy: 'Ilse Brandvold', how: 'message', upTo: '', approvedOn: null, note: '', by: 1 };
  await call('jobs.approveEstimate', { estimateId, ...said });
  await goTo(page, `/jobs/${jobId}/estimate`);
  await page
    .getByRole('row', { name: /^Thrust washer/ })
    .getByRole('button', { name: 'Change…' })
    .press('Enter');
  const change = page.getByRole('form', { name: 'Change Thrust washer' });
  await change.getByRole('textbox', { name: 'Quantity' }).fill('3');
  await page.keyboard.press('Control+Enter');
  await expect(change.getByText('Say why it changes.')).toBeVisible();
  await expect(change.getByRole('textbox', { name: 'Why' })).toBeFocused();
  await page.keyboard.type('a third is scored');
  await page.keyboard.press('Enter');

  await expect(page.getByRole('heading', { name: 'Over what was approved' })).toBeVisible();
  const changed = page.getByRole('table', { name: 'Changed since approved' });
  await expect(changed.getByRole('row', { name: /^Thrust washer/ })).toContainText(/19\.00\s*28\.50\s*\+9\.50/);
  // 28.50 × 8.875 % = 2.529375, so 2.53; 2.53 − 1.69 = 0.84; 9.50 + 0.84.
  await expect(changed.getByRole('row', { name: /^In all/ })).toContainText('+10.34');
  await page.getByRole('button', { name: 'Give estimate 2' }).press('Enter');
  await page.getByRole('button', { name: 'Write down the yes' }).press('Enter');
  await expect(page.getByRole('heading', { name: 'Approved', exact: true })).toBeVisible();
  await page.getByRole('button', { name: 'One line changed or taken off' }).press('Enter');
  await expect(page.getByText(/changed: a third is scored \(RA/)).toBeVisible();
});

test('parts on the ticket are charged at their prices; what they cost us shows only when asked', async ({
  page,
  call,
}) => {
  const jobId = await emptyTicket(call);
  const part = { number: 'KX3-TW-9', description: 'Thrust washer', kind: 'washer', cost: '3.10', price: '9.50' };
  const said = {
    supplier: '',
    unitOfIssue: 'each',
    bin: '',
    coreCharge: '',
    reorderPoint: null,
    reorderQuantity: null,
  };
  const { partId } = await call('stock.savePart', {
    ...part,
    ...said,
    partId: null,
    familyIds: [],
    contents: [],
    by: 1,
  });
  const came = { partId, quantity: 5, receivedOn: null, mark: 'TW-1', document: '', unitCost: '', by: 1 };
  await call('stock.receiveBatch', came);
  await call('stock.pullForJob', { jobId, partId, batchId: null, quantity: 2, by: 1 });
  await goTo(page, `/jobs/${jobId}/estimate`);
  const offers = page.getByRole('region', { name: 'On the ticket, not charged yet' });
  await offers.getByRole('button', { name: 'Charge KX3-TW-9 Thrust washer' }).press('Enter');
  // 2 × 9.50.
  await expect(page.getByRole('table', { name: 'Lines' }).getByRole('row', { name: /^KX3-TW-9/ })).toContainText(
    '19.00',
  );
  await expect(offers).toHaveCount(0);
  await expect(page.getByRole('columnheader', { name: 'our cost' })).toHaveCount(0);
  await page.getByRole('button', { name: 'Show cost' }).press('Enter');
  await expect(page.getByRole('columnheader', { name: 'our cost' })).toBeVisible();
  await expect(page.getByRole('row', { name: /^Our cost/ })).toContainText('6.20');
});

test('what cannot be taken is said at its entry, and what was typed survives', async ({ page, call }) => {
  const jobId = await emptyTicket(call);
  await goTo(page, `/jobs/${jobId}/estimate`);
  const add = page.getByRole('form', { name: 'Add a line' });
  await add.getByRole('textbox', { name: 'What' }).fill('Rebuild');
  await add.getByRole('textbox', { name: 'Hours' }).fill('18,5');
  await page.keyboard.press('Control+Enter');
  await expect(add.getByText('“18,5” is not a quantity: type it like 2 or 1.25.')).toBeVisible();
  await expect(add.getByRole('textbox', { name: 'Hours' })).toBeFocused();
  await page.reload();
  await expect(add.getByRole('textbox', { name: 'Hours' })).toHaveValue('18,5');
  await page.getByRole('button', { name: 'Money received…' }).press('Enter');
  const money = page.getByRole('form', { name: 'Money received ahead' });
  await money.getByRole('textbox', { name: 'How much' }).fill('-5');
  await page.keyboard.press('Control+Enter');
  await expect(money.getByText('Only 0.00 is held.')).toBeVisible();
  await money.getByRole('textbox', { name: 'How much' }).fill('500');
  await page.keyboard.press('Control+Enter');
  await expect(page.getByRole('region', { name: 'Deposits' })).toContainText('500.00');
});

test('the estimate is shown on paper and saved as a PDF', async ({ page, call }) => {
  const jobId = await emptyTicket(call);
  await call('jobs.addLine', { jobId, line: washer, by: 1 });
  await call('jobs.giveEstimate', { jobId, whatWasFound: '', by: 1 });
  await goTo(page, `/jobs/${jobId}/estimate`);
  await page.getByRole('link', { name: 'Estimate 1 on paper' }).press('Enter');
  await page.getByRole('radio', { name: 'A4' }).press('Space');
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the PDF' }).press('Enter');
  const file = await (await saving).path();
  expect((await readFile(file)).subarray(0, 5).toString()).toBe('%PDF-');
});

test('nothing for axe to complain of', async ({ page, call }) => {
  const jobId = await emptyTicket(call);
  await setTerms(call);
  await goTo(page, `/jobs/${jobId}/estimate`);
  await expect(page.getByRole('heading', { name: 'No line yet.' })).toBeVisible();
  await expectNoAxeComplaints(page);
  const { lineId } = await call('jobs.addLine', { jobId, line: washer, by: 1 });
  const { estimateId } = await call('jobs.giveEstimate', { jobId, whatWasFound: 'Worn.', by: 1 });
  const said = { approvedBy: 'Ilse Brandvold', how: 'phone', upTo: '', approvedOn: null, note: '', by: 1 };
  await call('jobs.approveEstimate', { estimateId, ...said });
  await call('jobs.replaceLine', { lineId, line: { ...washer, quantity: '3' }, reason: 'scored', by: 1 });
  await expect(page.getByRole('heading', { name: 'Over what was approved' })).toBeVisible();
  await page.getByRole('button', { name: 'Show cost' }).press('Enter');
  await page.getByRole('button', { name: 'One estimate given' }).press('Enter');
  await expectNoAxeComplaints(page);
  await page.getByRole('button', { name: 'Change…' }).press('Enter');
  await expect(page.getByRole('form', { name: 'Change Thrust washer' })).toBeVisible();
  await expectNoAxeComplaints(page);
});
