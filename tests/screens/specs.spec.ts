// Spec sheets by keyboard: a newcomer's first one, limits refused in place, the next revision, a draft, and axe.
import type { Locator, Page } from '@playwright/test';
import { kx3Sheet } from '../../main/shop/demo/kx3-sheet.ts';
import { expect, expectNoAxeComplaints, test } from './book.ts';

// 1 thou = 25 400 nm exactly.
const thou = (value: number) => value * 25_400;

async function tabTo(page: Page, target: Locator): Promise<void> {
  await target.waitFor();
  for (let presses = 0; presses < 80; presses++) {
    if (await target.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error('the keyboard does not get there');
}

const placeSpecs = (page: Page) =>
  page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Specs' });

async function openEditor(page: Page, family: string): Promise<void> {
  await placeSpecs(page).click();
  await page.getByRole('link', { name: family }).click();
  await page.getByRole('link', { name: 'Edit the sheet' }).click();
}

test('a newcomer makes a family with one pack and its clearance check by keyboard alone', async ({ page, call }) => {
  await tabTo(page, placeSpecs(page));
  await page.keyboard.press('Enter');
  await page.getByRole('table', { name: 'Families' }).waitFor();
  await page.keyboard.press('n');
  await expect(page.getByRole('textbox', { name: 'New family' })).toBeFocused();
  await page.keyboard.type('T3');
  await page.keyboard.press('Enter');

  await expect(page.getByRole('textbox', { name: 'New pack' })).toBeFocused();
  await page.keyboard.type('Front');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('textbox', { name: 'Steels', exact: true })).toBeFocused();
  await page.keyboard.type('4');
  await page.keyboard.press('Enter');
  await page.keyboard.type('4');
  await page.keyboard.press('Control+Enter');

  await expect(page.getByRole('button', { name: 'Add its clearance check' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('textbox', { name: 'Limits' })).toBeFocused();
  await page.keyboard.type('25 20-30');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('textbox', { name: 'New check' })).toBeFocused();
  await page.keyboard.type('Front end play');
  await page.keyboard.press('Enter');
  await page.keyboard.type('min 4');
  await page.keyboard.press('Enter');
  // What is missing is asked for where it goes.
  await expect(page.getByRole('textbox', { name: 'Heading' })).toBeFocused();
  await page.keyboard.type('End play');
  await page.keyboard.press('Enter');
  // The next check takes after the one above: a name and its limits are enough.
  await page.keyboard.type('Rear end play');
  await page.keyboard.press('Enter');
  await page.keyboard.type('4-19');
  await page.keyboard.press('Control+s');

  await expect(page.getByRole('status')).toHaveText('Revision 1 is saved.');
  await expect(page.getByRole('region', { name: 'Front' })).toContainText('4 × (steel, friction), backing plate');
  await expect(page.getByRole('row', { name: /Front clearance/ })).toContainText('20–30');
  const [family] = (await call('specs.listFamilies', {})).filter(({ name }) => name === 'T3');
  const { packs, checks } = await call('specs.getRevision', { familyId: family?.familyId });
  expect(packs[0]?.slots.map(({ kind }) => kind)).toEqual([
    ...Array.from({ length: 4 }, () => ['steel', 'friction']).flat(),
    'backing plate',
  ]);
  expect(checks).toMatchObject([
    {
      packName: 'Front',
      method: 'air',
      limits: { kind: 'target', target: thou(25), low: thou(20), high: thou(30) },
    },
    { name: 'Front end play', packName: null, group: 'End play', limits: { kind: 'minimum', low: thou(4) } },
    { name: 'Rear end play', group: 'End play', limits: { kind: 'range', low: thou(4), high: thou(19) } },
  ]);
});

test('limits upside down are refused in place, and nothing typed is lost', async ({ page, call }) => {
  await openEditor(page, 'KX3');
  await page.getByRole('button', { name: 'Edit Rear end play' }).press('Enter');
  const limits = page.getByRole('textbox', { name: 'Limits' });
  await limits.fill('19-4');
  await page.keyboard.press('Enter');
  await expect(limits).toBeFocused();
  await expect(limits).toHaveAccessibleDescription(/The low limit 19\.0 is not below the high limit 4\.0\./);
  await page.keyboard.press('Control+s');
  await expect(page.getByRole('alert')).toContainText('Not saved. Rear end play: The low limit 19.0');

  await page.reload();
  await expect(page.getByText('19-4')).toBeVisible();
  expect(await call('specs.getRevision', { familyId: 1 })).toMatchObject({ number: 1 });
  await page.getByRole('button', { name: 'Edit Rear end play' }).press('Enter');
  await limits.fill('4-19.5');
  await page.keyboard.press('Control+s');
  await expect(page.getByRole('status')).toHaveText('Revision 2 is saved.');
  const { checks } = await call('specs.getRevision', { familyId: 1 });
  const edited = kx3Sheet.checks.map((check) =>
    check.name === 'Rear end play' ? { ...check, limits: { kind: 'range', low: thou(4), high: thou(19.5) } } : check,
  );
  expect(checks.map(({ checkId: _, packId: __, ...check }) => check)).toEqual(edited);
});

test('a sheet that a job uses is saved as the next revision, and the earlier one stays to be seen', async ({
  page,
  call,
}) => {
  const { familyId } = await call('specs.addFamily', { name: 'T3', by: 1 });
  const sheet = { packs: [], checks: kx3Sheet.checks.filter(({ name }) => name === 'Rear end play') };
  await call('specs.saveSheet', { familyId, sheet, sourceNote: 'old book', by: 1 });
  await call('jobs.checkIn', {
    customer: { name: 'Ilse Brandvold', phone: '', email: '' },
    unit: { familyId, serial: 'T3-1', vehicle: 'van', use: 'street' },
    complaint: '',
    caseTag: '',
    distance: null,
    by: 1,
  });
  await openEditor(page, 'T3');
  await expect(page.getByText('Revision 1 is in use by a job; saving makes revision 2.')).toBeVisible();
  await page.getByRole('textbox', { name: 'Source of the sheet' }).fill('new book');
  await page.getByRole('button', { name: 'Save as revision 2' }).press('Enter');
  await expect(page.getByRole('status')).toHaveText('Revision 2 is saved.');
  await expect(page.getByText('new book')).toBeVisible();
  // The keyboard goes on from the sheet, not from the top of the window.
  await expect(page.getByRole('main')).toBeFocused();
  await page
    .getByRole('navigation', { name: 'Revisions' })
    .getByRole('link', { name: '1', exact: true })
    .press('Enter');
  await expect(page.getByText('old book')).toBeVisible();
  await expect(page.getByText('The newest is revision 2.')).toBeVisible();
});

test('a pack is changed slot by slot, and what is taken out can be put back', async ({ page, call }) => {
  await openEditor(page, 'KX3');
  await page.getByRole('button', { name: 'Edit Direct', exact: true }).press('Enter');
  await page.getByRole('button', { name: 'Take friction 4 out' }).press('Enter');
  await expect(page.getByRole('textbox', { name: 'Height of friction 4' })).toBeHidden();
  await page.getByRole('button', { name: 'Undo' }).press('Enter');
  const height = page.getByRole('textbox', { name: 'Height of friction 4' });
  await height.fill('90');
  await height.press('Alt+ArrowUp');
  await expect(height).toBeFocused();
  await page.getByRole('textbox', { name: 'Places of rule 1' }).fill('5');
  await page.keyboard.press('Control+s');
  await expect(page.getByRole('alert').last()).toHaveText('Direct has a rule for steel 5 but holds only 4.');
  await page.getByRole('textbox', { name: 'Places of rule 1' }).fill('2 3');
  await page.keyboard.press('Control+s');
  await expect(page.getByRole('status')).toHaveText('Revision 2 is saved.');
  const { packs } = await call('specs.getRevision', { familyId: 1 });
  const direct = packs.find(({ name }) => name === 'Direct');
  expect(direct?.slots.slice(6).map(({ kind, nominal_nm }) => [kind, nominal_nm])).toEqual([
    ['friction', thou(90)],
    ['steel', null],
    ['backing plate', thou(310)],
  ]);
});

test('a draft is announced everywhere and can be thrown away', async ({ page }) => {
  await openEditor(page, 'KX3');
  await page.getByRole('textbox', { name: 'Source of the sheet' }).fill('a better book');
  await placeSpecs(page).click();
  await expect(page.getByRole('row', { name: /KX3/ })).toContainText('not saved yet');
  await page.getByRole('link', { name: 'KX3' }).click();
  await page.getByRole('link', { name: 'Go on with the draft' }).click();
  await expect(page.getByRole('textbox', { name: 'Source of the sheet' })).toHaveValue('a better book');
  await page.getByRole('button', { name: 'Throw the draft away' }).press('Enter');
  await page.getByRole('button', { name: 'Throw it away' }).press('Enter');
  await expect(page.getByRole('textbox', { name: 'Source of the sheet' })).toHaveValue('invented, for the demo');
  await page.getByRole('link', { name: 'Back to the sheet' }).click();
  await expect(page.getByRole('link', { name: 'Edit the sheet' })).toBeVisible();
});

// One pack and three checks show everything a long sheet does, and axe looks at every element.
const shortSheet = {
  packs: kx3Sheet.packs.filter(({ name }) => name === 'Low/reverse'),
  checks: kx3Sheet.checks.filter(({ name }) =>
    ['Low/reverse clearance', 'Front end play', 'Sealing-ring groove width'].includes(name),
  ),
};

test('axe finds nothing on the sheet and its editor', async ({ page, call }) => {
  const { familyId } = await call('specs.addFamily', { name: 'T3', by: 1 });
  await call('specs.saveSheet', { familyId, sheet: shortSheet, sourceNote: 'a book', by: 1 });
  await placeSpecs(page).click();
  await page.getByRole('table', { name: 'Families' }).waitFor();
  await expectNoAxeComplaints(page);
  await page.getByRole('link', { name: 'T3' }).click();
  await page.getByRole('table', { name: 'Checks' }).waitFor();
  await expectNoAxeComplaints(page);
  await page.getByRole('link', { name: 'Edit the sheet' }).click();
  await page.getByRole('button', { name: 'Edit Low/reverse', exact: true }).click();
  await page.getByRole('button', { name: 'Lay it out again from counts' }).click();
  await page.getByRole('textbox', { name: 'Height of steel 2' }).fill('.5');
  await page.keyboard.press('Tab');
  await expectNoAxeComplaints(page);
  await page.getByRole('button', { name: 'Edit Front end play' }).click();
  await page.getByRole('textbox', { name: 'Limits' }).fill('24-10');
  await page.keyboard.press('Control+s');
  await expectNoAxeComplaints(page);
});

test.describe('on the first day', () => {
  test.use({ opensDemo: false });

  test('the empty place says what a family is and starts one', async ({ page, call }) => {
    const shop = { shopName: 'Bench', lengthUnit: 'thou', paper: 'letter', personName: 'A B', personInitials: 'AB' };
    await call('shop.createShop', shop);
    await page.reload();
    await page.getByRole('link', { name: 'Start a family in Specs' }).press('Enter');
    await expect(page.getByText('A family is one kind of unit')).toBeVisible();
    await expectNoAxeComplaints(page);
    await expect(page.getByRole('textbox', { name: 'New family' })).toBeFocused();
    await page.keyboard.type('T3');
    await page.keyboard.press('Enter');
    await expect(page.getByRole('heading', { level: 1, name: 'T3' })).toBeVisible();
  });
});
