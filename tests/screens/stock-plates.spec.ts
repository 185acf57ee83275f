// Plates by keyboard: a box measured by Enter alone, a figure that is asked about, a slip taken back, a plate looked
// over, a can counted, twenty thousand plates, and axe.
import type { Page } from '@playwright/test';
import { type Call, expect, expectNoAxeComplaints, test } from './book.ts';

const outline = 'KX3 forward';
const by = 1;
// 1 thou = 25 400 nm exactly.
const thou = (value: number) => value * 25_400;

async function openPlates(page: Page, path = ''): Promise<void> {
  await page.goto(`${new URL(page.url()).origin}/#/stock/plates/${encodeURIComponent(outline)}${path}`);
}

async function beginBox(page: Page): Promise<void> {
  await openPlates(page, '/measure');
  await expect(page.getByRole('radio', { name: 'Steels' })).toBeFocused();
  // Kind, where they go, class, batch, micrometer: Enter goes through and begins.
  for (let entry = 0; entry < 5; entry++) await page.keyboard.press('Enter');
  await expect(entryLine(page)).toBeFocused();
}

const entryLine = (page: Page) => page.getByRole('textbox', { name: /^Height of steel/ });
const boxSoFar = (page: Page) => page.getByRole('complementary', { name: 'The box so far' });

async function countsOf(call: Call): Promise<Array<readonly [number, number]>> {
  const { cans } = await call('stock.listLoose', { outline });
  return cans.map((can) => [can.height_nm, can.count] as const);
}

test('a box of twelve measured by Enter alone fills the cans of its classes', async ({ page, call }) => {
  await beginBox(page);
  // Half thou classes: 77.25 and 77.74 go to 77.5, 77.75 goes up to 78.0.
  for (const typed of '77.0 77.1 77.25 77.5 77.6 77.74 77.75 78.0 78.2 78.3 76.9 77.5'.split(' ')) {
    await page.keyboard.type(typed);
    await page.keyboard.press('Enter');
  }
  await expect(boxSoFar(page)).toContainText('12 measured');
  expect(await countsOf(call)).toEqual([
    [thou(77), 3],
    [thou(77.5), 5],
    [thou(78), 3],
    [thou(78.5), 1],
  ]);
  await expect(page.getByRole('list', { name: 'The last few' }).getByRole('listitem').last()).toHaveText(
    '77.5→can 77.5, 5 in it',
  );
  await expect(boxSoFar(page).getByRole('img')).toHaveAccessibleName('12 plates from 77 to 78.5: 12 free.');
  // The figure is read across the bench.
  expect(
    await entryLine(page).evaluate((entry) => Number.parseFloat(getComputedStyle(entry).fontSize)),
  ).toBeGreaterThan(63);
});

test('an unlikely height is asked about in place, and Enter again takes it', async ({ page, call }) => {
  await beginBox(page);
  await page.keyboard.type('177.4');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('alert')).toContainText('177.4 thou is far from the others');
  expect(await countsOf(call)).toEqual([]);
  await page.keyboard.press('Enter');
  await expect(boxSoFar(page)).toContainText('1 measured');
  expect(await countsOf(call)).toEqual([[thou(177.5), 1]]);

  // A slip is emptied, and nothing of it stays.
  await page.keyboard.type('774');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('alert')).toBeVisible();
  for (let figure = 0; figure < 3; figure++) await page.keyboard.press('Backspace');
  await expect(page.getByRole('alert')).toBeHidden();
  await page.keyboard.type('77.4');
  await page.keyboard.press('Enter');
  await expect(boxSoFar(page)).toContainText('2 measured');
  expect(await countsOf(call)).toEqual([
    [thou(77.5), 1],
    [thou(177.5), 1],
  ]);
});

test('the number pad is enough: + between points, − takes the last one back', async ({ page, call }) => {
  await beginBox(page);
  for (const key of ['7', '7', '.', '3', '+', '7', '7', '.', '5', 'Enter', '7', '8', 'Enter']) {
    await page.keyboard.press(key === 'Enter' ? 'NumpadEnter' : key);
  }
  await expect(boxSoFar(page)).toContainText('2 measured');
  await page.keyboard.press('NumpadSubtract');
  await expect(boxSoFar(page)).toContainText('1 measured');
  // The mean of 77.3 and 77.5 is 77.4.
  await expect(page.getByRole('list', { name: 'The last few' })).toHaveText('77.4→can 77.5, 1 in it');
  expect(await countsOf(call)).toEqual([
    [thou(77.5), 1],
    [thou(78), 0],
  ]);
});

test('nothing typed or measured is lost when the window is closed', async ({ page }) => {
  await beginBox(page);
  await page.keyboard.type('77.5');
  await page.keyboard.press('Enter');
  await expect(boxSoFar(page)).toContainText('1 measured');
  await page.keyboard.type('78.');
  await page.reload();
  await expect(entryLine(page)).toHaveValue('78.');
  await expect(entryLine(page)).toBeFocused();
  await expect(boxSoFar(page)).toContainText('1 measured');
});

test('single plates get tags that count up, and a tag that is taken is not given twice', async ({ page, call }) => {
  await openPlates(page, '/measure');
  await page.getByRole('radio', { name: 'One by one, each with a tag' }).press('Space');
  await page.getByRole('textbox', { name: 'First tag' }).fill('A46');
  await page.keyboard.press('Control+Enter');
  for (const typed of ['77.0', '77.5']) {
    await page.keyboard.type(typed);
    await page.keyboard.press('Enter');
  }
  // A47 is one of the loose steels of the demo.
  await expect(page.getByRole('alert')).toContainText(
    'There is already a plate A47. Enter writes this one down as A48.',
  );
  await page.keyboard.press('Enter');
  await expect(boxSoFar(page)).toContainText('2 measured');
  const { pieces } = await call('stock.listLoose', { outline });
  expect(pieces.filter(({ tag }) => /A4[68]/.test(tag)).map(({ tag, height_nm }) => [tag, height_nm])).toEqual([
    ['A46', thou(77)],
    ['A48', thou(77.5)],
  ]);
});

test('a plate is opened by keyboard, looked over and rejected, and the list says why', async ({ page, call }) => {
  await openPlates(page);
  const list = page.getByRole('list', { name: 'Single plates, by thickness' });
  await list.getByRole('button').first().focus();
  await page.keyboard.press('End');
  await expect(list.getByRole('button', { name: 'A47 83.0 free' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: 'Measure again' })).toBeFocused();
  await page.getByRole('button', { name: 'Look over' }).press('Enter');
  await page.getByRole('checkbox', { name: 'Hot spots' }).press('Space');
  await page.getByRole('radio', { name: 'Not to be used' }).press('Space');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('status').filter({ hasText: 'A47 is looked over.' })).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(list.getByRole('button', { name: 'A47 83.0 hot spots' })).toBeFocused();
  const { byState } = await call('stock.listPlates', { outline, text: '', state: null, offset: 0, limit: 1 });
  expect(byState).toMatchObject({ free: 5, 'do not use': 1 });
});

test('a can is counted, and a slip is counted back', async ({ page, call }) => {
  await call('stock.addCan', { kind: 'steel', outline, typed: '77.5', count: 9, by });
  await openPlates(page);
  await page.getByRole('button', { name: 'Can 77.5 9 in it' }).press('Enter');
  await expect(page.getByRole('button', { name: 'Count it' })).toBeFocused();
  await page.keyboard.press('Enter');
  await page.keyboard.type('90');
  await page.keyboard.press('Enter');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Take it back' }).press('Enter');
  await expect(page.getByRole('button', { name: 'Can 77.5 9 in it' })).toBeVisible();
  expect(await countsOf(call)).toEqual([[thou(77.5), 9]]);
});

test('axe finds nothing on the plates', async ({ page, call }) => {
  await call('stock.addCan', { kind: 'steel', outline, typed: '77.5', count: 9, by });
  await openPlates(page);
  await expect(page.getByRole('heading', { name: /^One swap/ })).toBeVisible();
  await expectNoAxeComplaints(page);
  await page.getByRole('button', { name: 'A47 83.0 free' }).press('Enter');
  await page.getByRole('button', { name: 'Look over' }).press('Enter');
  await expect(page.getByRole('button', { name: 'Keep what was seen' })).toBeVisible();
  await expectNoAxeComplaints(page);
  await openPlates(page, '/measure');
  await expect(page.getByRole('button', { name: /Begin to measure/ })).toBeVisible();
  await expectNoAxeComplaints(page);
  await page.getByRole('button', { name: /Begin to measure/ }).press('Enter');
  await page.keyboard.type('774');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('alert')).toBeVisible();
  await expectNoAxeComplaints(page);
});
