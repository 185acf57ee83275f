// What goes in and out of the shelves as lists, and what leads from one thing to another: scanned codes, traces, cores.
import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { type Call, expect, expectNoAxeComplaints, test } from './book.ts';

const blankPart = {
  partId: null,
  kind: 'friction',
  supplier: 'Brightwater Friction',
  unitOfIssue: 'each',
  bin: '',
  cost: '4.10',
  price: '',
  coreCharge: '',
  reorderPoint: null,
  reorderQuantity: null,
  familyIds: [],
  contents: [],
  by: 1,
};

async function goTo(page: Page, address: string): Promise<void> {
  await page.evaluate((hash) => {
    location.hash = hash;
  }, address);
}

/** A part nobody else's test counts on, one marked batch of it, and two of that on the first ticket. */
async function pulledBatch(call: Call) {
  const { partId } = await call('stock.savePart', { ...blankPart, number: 'TST-FR-1', description: 'Test friction' });
  const received = { partId, quantity: 5, receivedOn: '2026-11-02', mark: 'B-77', document: '', unitCost: '', by: 1 };
  const { batchId } = await call('stock.receiveBatch', received);
  const [job] = await call('jobs.listJobs', { text: 'Okoro', includeClosed: true });
  if (!job) throw new Error('the demo has a job of Okoro');
  await call('stock.pullForJob', { jobId: job.jobId, partId, batchId, quantity: 2, isSure: true, by: 1 });
  return { partId, batchId, job };
}

test('a file is tried out, then taken in; what was left out comes back as a file', async ({ page, call }) => {
  await goTo(page, '/stock/import');
  await expect(page.getByRole('button', { name: 'Choose a file' })).toBeFocused();
  await page.getByRole('textbox', { name: 'Or paste its text' }).focus();
  await page.keyboard.insertText(
    [
      'number;description;kind;cost;place',
      'TST-1;"Seal; inner";seal;1,15;F1',
      'TST-2;Bushing;bushing;3.75;G1',
      'TST-3;Thing;gizmo;2.00;G2',
    ].join('\n'),
  );
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');

  await expect(page.getByRole('button', { name: 'semicolon Separated by' })).toBeVisible();
  // The heading “place” says nothing to the book until a person says what it is.
  await page.getByRole('button', { name: 'Column place is' }).click();
  await page.getByRole('option', { name: 'bin' }).click();
  const rows = page.getByRole('table', { name: 'Rows of the file' });
  await expect(rows.getByRole('row', { name: /^3 \+ add new part/ })).toBeVisible();
  await expect(rows.getByRole('row', { name: /^2 × leave out .*1,15/ })).toBeVisible();
  await expect(rows.getByRole('row', { name: /^4 × leave out .*gizmo/ })).toBeVisible();
  await expectNoAxeComplaints(page);
  // Nothing is written before the key.
  const input = { text: 'TST-', kind: null, familyId: null, only: 'in use', offset: 0, limit: 10 };
  expect((await call('stock.listParts', input)).total).toBe(0);

  await page.getByRole('button', { name: 'Take in 1 row, leave out 2' }).click();
  await expect(page.getByText('Took in 1 row: 1 added, 0 changed.')).toBeVisible();
  const { parts } = await call('stock.listParts', input);
  expect(parts).toMatchObject([{ number: 'TST-2', bin: 'G1', cost_cents: 375 }]);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the rows left out' }).click(),
  ]);
  const rejects = await readFile(await download.path(), 'utf8');
  expect(rejects).toContain('TST-1;"Seal; inner"');
  expect(rejects).toContain('TST-3');
  expect(rejects).not.toContain('TST-2');
});

test('of a file of 20,000 rows the last is reached with one key, and only what is in sight is on the page', async ({
  page,
}) => {
  await goTo(page, '/stock/import');
  const lines = Array.from({ length: 20_000 }, (_, index) => `TST-${index + 1},Invented part,seal`);
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Choose a file' }).click(),
  ]);
  const text = ['number,description,kind', ...lines].join('\r\n');
  await chooser.setFiles({ name: 'parts.csv', mimeType: 'text/csv', buffer: Buffer.from(`\ufeff${text}`) });
  const list = page.getByRole('region', { name: 'Rows of the file' });
  await expect(page.getByRole('radio', { name: 'Added 20,000' })).toBeVisible({ timeout: 60_000 });
  await expect(list.getByRole('row', { name: /TST-1 / })).toBeVisible();
  await list.focus();
  await page.keyboard.press('End');
  await expect(list.getByRole('row', { name: /^20001 .*TST-20000 / })).toBeInViewport({ timeout: 60_000 });
  expect(await list.getByRole('row').count()).toBeLessThan(300);
});

test('a trace leads from a batch to the ticket and back, with what its packs read', async ({ page, call }) => {
  const { batchId, job } = await pulledBatch(call);
  await goTo(page, `/stock/trace/batch/${batchId}`);
  await expect(page.getByRole('heading', { name: 'TST-FR-1, batch B-77, 2 November 2026' })).toBeVisible();
  const unit = page.getByRole('table', { name: 'Units it went into, newest first' }).getByRole('row').nth(1);
  await expect(unit).toContainText('Tam Okoro');
  await expect(unit).toContainText('555 0117');
  await expect(unit).toContainText('still in');
  // The demo read the Forward as found: 32.0, 2.0 over its limit of 30.
  await expect(unit).toContainText(/Forward as found\s*32\.0\s*± 1\.5\s*loose by 2\.0/);
  await expectNoAxeComplaints(page);
  await unit.getByRole('link', { name: String(job.number), exact: true }).press('Enter');
  await expect(page.getByRole('heading', { name: `Job ${job.number}` })).toBeVisible();
  await page.goBack();
  await page.getByRole('link', { name: 'all batches of TST-FR-1' }).press('Enter');
  await expect(page.getByRole('heading', { name: 'TST-FR-1, Test friction' })).toBeVisible();
  await page.getByRole('link', { name: 'batch B-77, 2 November 2026: 3 on hand' }).press('Enter');
  await expect(page).toHaveURL(new RegExp(`#/stock/trace/batch/${batchId}$`));
});

test('what never left the shelf says so', async ({ page, call }) => {
  const { partId } = await call('stock.savePart', { ...blankPart, number: 'TST-9', description: 'Never used' });
  await goTo(page, `/stock/trace/part/${partId}`);
  await expect(page.getByText('Nothing of it went into a unit yet.')).toBeVisible();
});

test('a scanned code opens what it means, and an unknown one says so', async ({ page, call }) => {
  const { partId, batchId, job } = await pulledBatch(call);
  await goTo(page, '/stock/buy');
  await expect(page.getByRole('heading', { name: 'To buy' })).toBeVisible();
  await page.keyboard.press('/');
  await page.keyboard.type('THOU-B99999');
  await page.keyboard.press('Enter');
  await expect(page.getByText('Nothing in this book is called “THOU-B99999”.')).toBeVisible();
  await page.keyboard.press('Control+a');
  await page.keyboard.type(`THOU-B${batchId}`);
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(new RegExp(`#/stock/parts/${partId}$`));

  const { pieces } = await call('stock.listLoose', { outline: '' });
  await goTo(page, '/stock/buy');
  await expect(page.getByRole('heading', { name: 'To buy' })).toBeVisible();
  await page.keyboard.press('/');
  await page.keyboard.type(`THOU-S${pieces[0]?.pieceId}`);
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(new RegExp(`#/stock/plates/.+\\?plate=${pieces[0]?.pieceId}$`));

  await goTo(page, '/stock/buy');
  await expect(page.getByRole('heading', { name: 'To buy' })).toBeVisible();
  await page.keyboard.press('/');
  await page.keyboard.type(`THOU-J${job.jobId}`);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: `Job ${job.number}` })).toBeVisible();
});

test('a core is written down and settled in place; overdue is said in words', async ({ page, call }) => {
  const core = { direction: 'to send back', what: 'Test pump', quantity: 1, charge: '85', jobId: null, by: 1 };
  await call('stock.openCore', { ...core, dueOn: '2020-01-02' });
  await goTo(page, '/stock/buy');
  const pump = page.getByRole('table', { name: 'Cores' }).getByRole('row', { name: /Test pump/ });
  await expect(pump).toContainText('overdue since 2 Jan 2020');
  await expectNoAxeComplaints(page);

  await page.getByRole('button', { name: 'Write a core down…' }).press('Enter');
  const form = page.getByRole('dialog', { name: 'A core is owed' });
  await form.getByRole('textbox', { name: 'What' }).fill('Test converter');
  await form.getByRole('textbox', { name: 'Charge' }).fill('6O');
  await page.keyboard.press('Control+Enter');
  await expect(form.getByText('“6O” is not an amount of money: type it like 12.50.')).toBeVisible();
  await form.getByRole('textbox', { name: 'Charge' }).fill('60');
  await page.keyboard.press('Control+Enter');
  await expect(form).toBeHidden();
  const cores = page.getByRole('table', { name: 'Cores' });
  await expect(cores.getByRole('row', { name: /Test converter 1 60\.00/ })).toBeVisible();

  await pump.getByRole('button', { name: 'Settle…' }).press('Enter');
  const settle = page.getByRole('dialog', { name: '1 × Test pump' });
  await settle.getByRole('textbox', { name: 'Note' }).fill('credit note 311');
  await page.keyboard.press('Enter');
  await expect(pump).toBeHidden();
  await page.getByText('Settled ones too').click();
  await expect(pump).toContainText('sent back');
  await expect(pump).toContainText('credit note 311');
});

test('what runs low is added up and saved; a batch label comes out at exactly its size', async ({ page, call }) => {
  const { partId, batchId } = await pulledBatch(call);
  // 3 on hand of a reorder point of 4, bought by the dozen at 4.10: 49.20.
  await call('stock.savePart', {
    ...blankPart,
    partId,
    number: 'TST-FR-1',
    description: 'Test friction',
    reorderPoint: 4,
    reorderQuantity: 12,
  });
  await goTo(page, '/stock/buy');
  await expect(page.getByRole('row', { name: 'TST-FR-1 Test friction 3 4 12 each 4.10 49.20' })).toBeVisible();
  const [list] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Purchase list as PDF' }).click(),
  ]);
  expect((await readFile(await list.path())).subarray(0, 5).toString()).toBe('%PDF-');

  await goTo(page, `/stock/labels?of=batch:${batchId}&copies=2`);
  await expect(page.getByRole('textbox', { name: 'Copies of each' })).toHaveValue('2');
  const [labels] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the PDF' }).click(),
  ]);
  const pdf = await readFile(await labels.path(), 'latin1');
  // 50 × 25 mm at 72 points an inch: 141.73 × 70.87.
  expect(pdf.match(/\/MediaBox \[0 0 141\.73\d* 70\.86\d*\]/g)).toHaveLength(2);
  await expectNoAxeComplaints(page);
});
