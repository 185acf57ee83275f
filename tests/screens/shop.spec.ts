// The first steps and the shop: who works here, what is set, where the book lies.
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, expectNoAxeComplaints, test } from './book.ts';

test.describe('on the first day', () => {
  test.use({ opensDemo: false });

  test('three steps by Enter alone start an empty shop that says what to do next', async ({ page, call, book }) => {
    await expect(page.getByRole('textbox', { name: 'Shop name' })).toBeFocused();
    await page.keyboard.type('Quarry Street Gearbox');
    // Units and paper are taken as they stand.
    for (const _ of ['to units', 'to paper', 'to the name']) await page.keyboard.press('Enter');
    await page.keyboard.type('Nell Ibarra');
    await page.keyboard.press('Enter');
    await page.keyboard.press('Enter');
    await expect(page.getByRole('heading', { name: 'Everything stays on this machine' })).toBeVisible();
    await expect(page.getByText(book.folder)).toBeVisible();
    await page.keyboard.press('Enter');
    await expect(page.getByRole('button', { name: 'Start empty' })).toBeFocused();
    await page.keyboard.press('Enter');

    await expect(page.getByRole('heading', { name: 'First a unit family, then the first job.' })).toBeVisible();
    await expect(page.getByText('Demo shop')).toHaveCount(0);
    await expect(page.getByRole('link', { name: 'Start a family in Specs' })).toBeVisible();
    expect(await call('shop.getShop', {})).toMatchObject({
      open: true,
      isDemo: false,
      settings: { shopName: 'Quarry Street Gearbox', lengthUnit: 'thou', paper: 'letter' },
      people: [{ name: 'Nell Ibarra', initials: 'NI' }],
    });
  });

  test('what is empty is said, and going on waits for it', async ({ page }) => {
    await page.getByRole('button', { name: 'Go on' }).press('Enter');
    await expect(page.getByText('Type the name that stands on your papers.')).toBeVisible();
    await expect(page.getByRole('textbox', { name: 'Shop name' })).toBeFocused();
  });

  test('the demo is marked on every screen, and left for a shop of one’s own and back', async ({ page, call }) => {
    await page.getByRole('button', { name: 'Just look round the demo shop' }).press('Enter');
    await expect(page.getByRole('table', { name: 'Jobs by stage' })).toBeVisible();
    const places = page.getByRole('navigation', { name: 'Places' });
    for (const place of ['Bench', 'Specs', 'Shop']) {
      await places.getByRole('link', { name: place }).press('Enter');
      await expect(places.getByText('Demo shop')).toBeVisible();
    }
    await page.getByRole('button', { name: 'Leave the demo and start your own shop' }).press('Enter');
    await page.getByRole('textbox', { name: 'Shop name' }).first().fill('Quarry Street Gearbox');
    await page.getByRole('textbox', { name: 'Your name' }).fill('Nell Ibarra');
    await page.getByRole('button', { name: 'Start your shop' }).press('Enter');
    await expect(page.getByRole('heading', { name: 'First a unit family, then the first job.' })).toBeVisible();
    await expect(places.getByText('Demo shop')).toHaveCount(0);
    expect(await call('jobs.listJobs', { text: '', includeClosed: true })).toEqual([]);

    await places.getByRole('link', { name: 'Shop' }).press('Enter');
    await page.getByRole('button', { name: 'Open the demo shop' }).press('Enter');
    await expect(page.getByRole('table', { name: 'Jobs by stage' })).toBeVisible();
    await places.getByRole('link', { name: 'Shop' }).press('Enter');
    await page.getByRole('button', { name: 'Leave the demo, open your shop' }).press('Enter');
    await expect(page.getByRole('heading', { name: 'First a unit family, then the first job.' })).toBeVisible();
  });

  test('nothing for axe to complain of', async ({ page }) => {
    await page.getByRole('textbox', { name: 'Shop name' }).fill('Quarry Street Gearbox');
    await page.getByRole('textbox', { name: 'Your name' }).fill('Nell Ibarra');
    await expectNoAxeComplaints(page);
    await page.getByRole('button', { name: 'Go on' }).press('Enter');
    await expect(page.getByRole('heading', { name: 'Everything stays on this machine' })).toBeVisible();
    await expectNoAxeComplaints(page);
    await page.getByRole('button', { name: 'Go on' }).press('Enter');
    await expect(page.getByRole('button', { name: 'Start empty' })).toBeVisible();
    await expectNoAxeComplaints(page);
  });
});

test.describe('in the shop', () => {
  test.beforeEach(async ({ page }) => {
    await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Shop' }).press('Enter');
    await expect(page.getByRole('heading', { name: 'Shop', exact: true })).toBeVisible();
  });

  test('a length is typed in any unit, kept exactly, and refused in one sentence', async ({ page, call }) => {
    const repeat = page.getByRole('textbox', { name: 'Two reads agree within' });
    await expect(repeat).toHaveValue('2');
    await repeat.fill('two');
    await expect(page.getByText('“two” is not such a length: type it in figures.')).toBeVisible();
    await repeat.fill('0');
    await expect(page.getByText('It must be more than nothing.')).toBeVisible();
    // 0.0762 mm / 25.4 µm a thou = 3 thou.
    await repeat.fill('0.0762 mm');
    const bench = page.getByRole('region', { name: 'At the bench' });
    await bench.getByRole('button', { name: 'Keep these' }).press('Enter');
    await expect(repeat).toHaveValue('3');
    expect(await call('shop.getShop', {})).toMatchObject({ settings: { repeatLimit_nm: 76_200 } });
  });

  test('the unit of the shop changes what every screen writes, and nothing that was read', async ({ page }) => {
    const units = page.getByRole('region', { name: 'Name, units and paper' });
    await units.getByRole('radio', { name: 'thou (0.001 in)' }).press('ArrowRight');
    await units.getByRole('button', { name: 'Keep these' }).press('Enter');
    await expect(units.getByText('Kept.')).toBeVisible();
    // One thou is 0.0254 mm.
    await expect(page.getByRole('textbox', { name: 'Back to zero within' })).toHaveValue('0.0254');
    await page.getByRole('link', { name: 'Jobs' }).press('Enter');
    await page.getByRole('table', { name: 'Jobs by stage' }).getByRole('link', { name: '1' }).press('Enter');
    // 32 thou is 0.8128 mm, 2 thou over the limit is 0.0508 mm.
    const row = page.getByRole('row').filter({ has: page.getByRole('link', { name: 'Forward clearance' }) });
    await expect(row).toContainText('0.813');
    await expect(row).toContainText('loose by 0.051');
  });

  test('somebody is added, put at the bench, and retired; the last one stays', async ({ page, call }) => {
    await page.getByRole('textbox', { name: 'Name', exact: true }).fill('Rafe Amsel');
    await page.keyboard.press('Enter');
    await page.keyboard.type('RA');
    await page.keyboard.press('Enter');
    await expect(page.getByText("RA are somebody else's initials: choose others.")).toBeVisible();
    await page.getByRole('textbox', { name: 'Initials' }).last().fill('RF');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Put at the bench: Rafe Amsel' }).press('Enter');
    await expect(page.getByRole('button', { name: 'RF: Rafe Amsel is at the bench' })).toBeVisible();
    const rosa = page.getByRole('row').filter({ hasText: 'Rosa Aldane' });
    await rosa.getByRole('button', { name: 'Retire…' }).press('Enter');
    await page.getByRole('button', { name: 'Retire RA' }).press('Enter');
    await expect(page.getByText(/^No longer here: .*Rosa Aldane \(RA\)/)).toBeVisible();
    const jonas = page.getByRole('row').filter({ hasText: 'Jonas Hale' });
    await jonas.getByRole('button', { name: 'Retire…' }).press('Enter');
    await page.getByRole('button', { name: 'Retire JH' }).press('Enter');
    await expect(jonas).toHaveCount(0);
    await page.getByRole('button', { name: 'Retire…' }).press('Enter');
    await page.getByRole('button', { name: 'Retire RF' }).press('Enter');
    await expect(page.getByRole('alert')).toHaveText('Somebody has to work here: add another person first.');
    expect(await call('shop.getShop', {})).toMatchObject({
      people: [{ isRetired: true }, { isRetired: true }, { initials: 'MT', isRetired: true }, { isRetired: false }],
    });
  });

  test('a backup is made, rehearsed, and said to restore, in a folder that is named', async ({ page, book }) => {
    const backups = join(book.folder, 'backups');
    expect(existsSync(backups) ? readdirSync(backups) : []).toEqual([]);
    await page.getByRole('button', { name: 'Back up now' }).press('Enter');
    await expect(page.getByText('Backed up and checked:')).toContainText(backups);
    expect(readdirSync(backups).filter((name) => name.endsWith('.thoubook'))).toHaveLength(1);
    await page.getByRole('button', { name: 'Rehearse and bring back' }).press('Enter');
    await page.getByRole('button', { name: /^Rehearse the backup of/ }).press('Enter');
    await expect(page.getByText(/^It restores: \d+ jobs, \d+ readings/)).toBeVisible();
    await page.getByRole('button', { name: 'Bring this one back…' }).press('Enter');
    await expect(page.getByRole('heading', { name: 'Put it in place of the shop file?' })).toBeVisible();
    await expectNoAxeComplaints(page);
    await page.getByRole('button', { name: 'Leave everything as it is' }).press('Enter');

    await page.getByRole('textbox', { name: 'Second place' }).fill(join(book.folder, 'no such folder'));
    await page.keyboard.press('Enter');
    await expect(page.getByText('There is no such folder: plug the stick in')).toBeVisible();
  });

  test('the light changes at once and is kept', async ({ page }) => {
    await page.getByRole('radio', { name: 'daylight, paper' }).press('ArrowRight');
    await expect(page.locator('html')).toHaveAttribute('data-theme', 'bay');
    await page.reload();
    await expect(page.locator('html')).toHaveAttribute('data-theme', 'bay');
  });

  test('nothing for axe to complain of', async ({ page }) => {
    await expectNoAxeComplaints(page);
  });
});

test('what the program is made of is read in place, and diagnostics are written, by the keyboard alone', async ({
  page,
  book,
}) => {
  await page.getByRole('link', { name: 'Shop', exact: true }).press('Enter');
  await page.getByRole('link', { name: 'About and diagnostics' }).press('Enter');
  await expect(page.getByRole('heading', { name: 'About Thoubook' })).toBeVisible();
  await page.getByRole('button', { name: /^kysely [\d.]+: MIT$/ }).press('Enter');
  await expect(page.getByText('Permission is hereby granted, free of charge')).toBeVisible();
  await page.getByRole('button', { name: 'Write diagnostics' }).press('Enter');
  await expect(page.getByText(join(book.folder, 'diagnostics.txt'))).toBeVisible();
  expect(existsSync(join(book.folder, 'diagnostics.txt'))).toBe(true);
  await expectNoAxeComplaints(page);
});
