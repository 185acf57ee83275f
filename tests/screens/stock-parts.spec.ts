// Parts by keyboard: received, pulled, returned, counted; refusals where the hand is; kits that open; an empty shop; axe.
import type { Page } from '@playwright/test';
import { type Call, expect, expectNoAxeComplaints, test } from './book.ts';

const blankPart = {
  partId: null,
  kind: 'other',
  supplier: '',
  unitOfIssue: 'each',
  bin: '',
  cost: '',
  price: '',
  coreCharge: '',
  reorderPoint: null,
  reorderQuantity: null,
  familyIds: [] as number[],
  contents: [],
  by: 1,
};

/** A part of the test's own, with so many on hand. */
async function shelve(call: Call, number: string, onHand: number, more: Partial<typeof blankPart> = {}) {
  const { partId } = await call('stock.savePart', { ...blankPart, ...more, number, description: 'Thrust bearing' });
  const batch = { partId, quantity: onHand, receivedOn: null, mark: `M-${number}`, document: '', unitCost: '', by: 1 };
  await call('stock.receiveBatch', batch);
  return partId;
}

async function openPart(page: Page, number: string): Promise<void> {
  await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Stock' }).press('Enter');
  await page.getByRole('grid', { name: 'Parts' }).waitFor();
  await page.keyboard.press('/');
  await page.keyboard.type(number);
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { level: 1, name: number }).waitFor();
}

/** The ticket of the demo's half-built unit, the hand on the line that pulls. */
async function goToPull(page: Page): Promise<void> {
  await page
    .getByRole('row', { name: /KX3-19-2214/ })
    .getByRole('link')
    .press('Enter');
  await page.getByRole('link', { name: 'Pull a part' }).waitFor();
  await page.keyboard.press('p');
  await expect(parts(page).getByRole('combobox', { name: 'Pull a part' })).toBeFocused();
}

const parts = (page: Page) => page.getByRole('region', { name: 'Parts', exact: true });
const lineOf = (page: Page, number: string) => parts(page).getByRole('row', { name: new RegExp(number) });

test('what came in is on hand after a number and a mark', async ({ page, call }) => {
  const partId = await shelve(call, 'TB-900', 3);
  await openPart(page, 'TB-900');
  await page.keyboard.press('r');
  await expect(page.getByRole('textbox', { name: 'How many came in' })).toBeFocused();
  await page.keyboard.type('12');
  await page.keyboard.press('Enter');
  await page.keyboard.type('FB-2260');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('status')).toHaveText('12 received, FB-2260.');
  await expect(page.getByText('15 on hand')).toBeVisible();
  await expect(
    page.getByRole('table', { name: 'Batches on hand' }).getByRole('row', { name: /FB-2260/ }),
  ).toContainText('12');
  const { onHand, batches } = await call('stock.getPart', { partId });
  expect([onHand, batches[0]?.mark, batches[0]?.onHand]).toEqual([15, 'FB-2260', 12]);
});

test('a receipt of nothing is refused at its field, and what was typed stays', async ({ page, call }) => {
  await shelve(call, 'TB-900', 3);
  await openPart(page, 'TB-900');
  await page.keyboard.press('r');
  const count = page.getByRole('textbox', { name: 'How many came in' });
  await page.keyboard.type('0');
  await page.keyboard.press('Enter');
  await page.keyboard.type('FB-2260');
  await page.keyboard.press('Enter');
  await expect(count).toBeFocused();
  await expect(count).toHaveAccessibleDescription('Type a whole number from 1 up.');
  await expect(page.getByRole('textbox', { name: 'Batch mark' })).toHaveValue('FB-2260');
  await expect(page.getByText('3 on hand')).toBeVisible();
});

test('a pull of more than there is says so and loses nothing; the right number then goes to the ticket', async ({
  page,
  call,
}) => {
  const partId = await shelve(call, 'TB-900', 3);
  await goToPull(page);
  await page.keyboard.type('TB-90');
  await page.getByRole('option', { name: /TB-900/ }).waitFor();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await expect(parts(page).getByRole('textbox', { name: 'How many' })).toBeFocused();
  await page.keyboard.type('4');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('alert')).toHaveText(
    'TB-900: 3 are on hand. If the shelf holds more, count the batch first.',
  );
  await expect(parts(page).getByRole('combobox', { name: 'Pull a part' })).toHaveValue('TB-900');
  await page.keyboard.press('Control+a');
  await page.keyboard.type('2');
  await page.keyboard.press('Enter');
  await expect(lineOf(page, 'TB-900')).toContainText('M-TB-900');
  await expect(page.getByRole('alert')).toBeHidden();
  expect(await call('stock.getPart', { partId })).toMatchObject({ onHand: 1 });
});

test('a scanned number is pulled at once, and a slip is taken back', async ({ page, call }) => {
  const partId = await shelve(call, 'TB-900', 3);
  await goToPull(page);
  await page.keyboard.type('TB-900');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('status')).toHaveText('1 TB-900 pulled.');
  await expect(lineOf(page, 'TB-900')).toBeVisible();
  await page.getByRole('button', { name: 'Take it back' }).press('Enter');
  await expect(lineOf(page, 'TB-900')).toBeHidden();
  const { onHand, movements } = await call('stock.getPart', { partId });
  expect(onHand).toBe(3);
  expect(movements.map(({ kind, change }) => [kind, change])).toEqual([
    ['return', 1],
    ['pull', -1],
    ['receive', 3],
  ]);
});

test('a part of another family is asked about, and pulled when meant', async ({ page, call }) => {
  const { familyId } = await call('specs.addFamily', { name: 'RV2', by: 1 });
  await shelve(call, 'RV2-TB-1', 2, { familyIds: [familyId] });
  await goToPull(page);
  await page.keyboard.type('RV2-TB-1');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('alert')).toHaveText('RV2-TB-1 is listed for RV2; this unit is a KX3.');
  await expect(lineOf(page, 'RV2-TB-1')).toBeHidden();
  await expect(page.getByRole('button', { name: 'Pull it anyway' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(lineOf(page, 'RV2-TB-1')).toBeVisible();
});

test('a kit opens into its parts, and one of them goes back to the shelf under the kit’s name', async ({
  page,
  call,
}) => {
  await goToPull(page);
  await expect(lineOf(page, 'KX3-GS-01')).toBeHidden();
  await lineOf(page, 'KX3-KIT-M').getByRole('button', { name: '13 parts in it' }).press('Enter');
  await lineOf(page, 'KX3-GS-01').getByRole('button', { name: 'Return KX3-GS-01' }).press('Enter');
  await expect(page.getByRole('status')).toHaveText('1 KX3-GS-01 back on the shelf.');
  await expect(lineOf(page, 'KX3-GS-01')).toBeHidden();
  await expect(lineOf(page, 'KX3-KIT-M')).toBeVisible();
  await openPart(page, 'KX3-GS-01');
  await expect(page.getByRole('link', { name: /kit KX3-KIT-M, 7916/ })).toBeVisible();
  const { parts: found } = await call('stock.listParts', {
    text: 'KX3-GS-01',
    kind: null,
    familyId: null,
    only: 'in use',
    offset: 0,
    limit: 1,
  });
  // Six came in one by one; the seventh came out of the kit.
  expect(found[0]?.onHand).toBe(7);
});

test('cost stays hidden until it is asked for', async ({ page }) => {
  await goToPull(page);
  await expect(lineOf(page, 'KX3-KIT-M')).toContainText('169.00');
  await expect(lineOf(page, 'KX3-KIT-M')).not.toContainText('96.00');
  await page.getByRole('button', { name: 'Show cost' }).press('Enter');
  await expect(lineOf(page, 'KX3-KIT-M')).toContainText('96.00');
});

test('a count asks why, and a scrap can be taken back', async ({ page, call }) => {
  const partId = await shelve(call, 'TB-900', 3);
  await openPart(page, 'TB-900');
  const choose = async (act: string) => {
    await page.getByRole('button', { name: 'Acts on M-TB-900' }).press('Enter');
    await page.getByRole('menuitem', { name: act }).press('Enter');
  };
  await choose('Count');
  await expect(page.getByRole('textbox', { name: 'Lie there' })).toBeFocused();
  await page.keyboard.type('5');
  await page.keyboard.press('Control+Enter');
  await expect(page.getByRole('textbox', { name: 'Why' })).toHaveAccessibleDescription('Say why, in a word or two.');
  await page.keyboard.type('two behind the shelf');
  await page.keyboard.press('Enter');
  await expect(page.getByText('5 on hand')).toBeVisible();

  await choose('Scrap');
  await page.keyboard.press('Enter');
  await page.keyboard.type('dropped');
  await page.keyboard.press('Enter');
  await expect(page.getByText('4 on hand')).toBeVisible();
  await page.getByRole('button', { name: 'Take it back' }).press('Enter');
  await expect(page.getByText('5 on hand')).toBeVisible();
  const { movements } = await call('stock.getPart', { partId });
  expect(movements.map(({ kind, change }) => [kind, change])).toEqual([
    ['count', 1],
    ['scrap', -1],
    ['count', 2],
    ['receive', 3],
  ]);
});

test('a new part by keyboard; a number that another has is refused where it stands', async ({ page, call }) => {
  await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Stock' }).press('Enter');
  await page.getByRole('grid', { name: 'Parts' }).waitFor();
  await page.keyboard.press('n');
  const number = page.getByRole('textbox', { name: 'Number' });
  await expect(number).toBeFocused();
  await page.keyboard.type('CP-38');
  await page.keyboard.press('Enter');
  await page.keyboard.type('Cup plug, half inch');
  await page.keyboard.press('Control+Enter');
  await expect(number).toHaveAccessibleDescription('There is already a part CP-38: Cup plug, 3/8 in.');
  await expect(number).toBeFocused();
  await page.keyboard.press('Control+a');
  await page.keyboard.type('CP-12');
  await page.keyboard.press('Control+Enter');
  await expect(page.getByRole('heading', { level: 1, name: 'CP-12' })).toBeVisible();
  const found = await call('stock.findCode', { code: 'CP-12' });
  expect(found).toMatchObject({ kind: 'part' });
});

test('the list is gone along, narrowed and come back to by keyboard', async ({ page }) => {
  await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Stock' }).press('Enter');
  await page.getByRole('row', { name: /CLN-20/ }).waitFor();
  await page.keyboard.press('f');
  await page.keyboard.type('seal');
  await expect(page.getByText('6 parts')).toBeVisible();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('End');
  await expect(page.getByRole('row', { selected: true })).toContainText('KX3-SL-41');
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { level: 1, name: 'KX3-SL-41' }).waitFor();
  await page.goBack();
  await expect(page.getByRole('row', { selected: true })).toContainText('KX3-SL-41');
  await page.getByRole('radio', { name: 'Low' }).press('Space');
  await expect(page.getByRole('row', { name: /KX3-SL-21/ })).toContainText('low');
  await expect(page.getByText('1 part', { exact: true })).toBeVisible();
});

test('axe finds nothing on the ticket’s parts', async ({ page }) => {
  await goToPull(page);
  await lineOf(page, 'KX3-KIT-M').getByRole('button', { name: '13 parts in it' }).press('Enter');
  await page.keyboard.press('c');
  await expectNoAxeComplaints(page);
});

test('axe finds nothing on the shelves', async ({ page, call }) => {
  await shelve(call, 'TB-900', 3);
  await openPart(page, 'TB-900');
  await page.keyboard.press('r');
  await page.keyboard.press('Control+Enter');
  await page.getByRole('button', { name: 'Acts on M-TB-900' }).press('Enter');
  await page.getByRole('menuitem', { name: 'Pull for a job' }).press('Enter');
  await expectNoAxeComplaints(page);
  await page.goBack();
  await page.getByRole('grid', { name: 'Parts' }).waitFor();
  await expectNoAxeComplaints(page);
});

test('axe finds nothing on the form of a part', async ({ page }) => {
  await openPart(page, 'KX3-KIT-M');
  await page.keyboard.press('e');
  await page.getByRole('textbox', { name: 'Number' }).fill('');
  await page.keyboard.press('Control+Enter');
  await expectNoAxeComplaints(page);
});

test.describe('on the first day', () => {
  test.use({ opensDemo: false });

  test('the empty shelves say how a part gets there', async ({ page, call }) => {
    const shop = { shopName: 'Bench', lengthUnit: 'thou', paper: 'letter', personName: 'A B', personInitials: 'AB' };
    await call('shop.createShop', shop);
    await page.reload();
    await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Stock' }).press('Enter');
    await expect(page.getByRole('heading', { name: 'The shelves are empty.' })).toBeVisible();
    await page.getByRole('link', { name: 'write down the first part' }).press('Enter');
    await expect(page.getByRole('textbox', { name: 'Number' })).toBeFocused();
  });
});

test('the parts of a kit are scanned one after another, and an unknown number stays where it was typed', async ({
  page,
  call,
}) => {
  const kit = await call('stock.findCode', { code: 'KX3-KIT-M' });
  if (kit?.kind !== 'part') throw new Error('the demo has no such kit');
  await page.goto(new URL(`/#/stock/parts/${kit.partId}`, page.url()).href);
  await page.getByRole('heading', { level: 1, name: 'KX3-KIT-M' }).waitFor();
  await page.keyboard.press('e');
  const entry = page.getByRole('combobox', { name: 'A part of it' });
  await entry.focus();
  for (const number of ['CP-38', 'XX-99']) {
    await page.keyboard.type(number);
    await page.keyboard.press('Enter');
    await expect(entry).toBeFocused();
  }
  await expect(page.getByRole('textbox', { name: 'How many CP-38' })).toHaveValue('1');
  await expect(page.getByText('No part that may lie in a kit is called XX-99.')).toBeVisible();
  await expect(entry).toHaveValue('XX-99');
});
