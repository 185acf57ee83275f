// The clutch of a pack by keyboard: from the bench to its figures, what the vehicle asks, and what a pack lacks.
import { expect, expectNoAxeComplaints, test } from './book.ts';

test('the clutch says what pushes it and what it holds, and takes what the vehicle asks by keyboard', async ({
  page,
}) => {
  await page.evaluate(() => {
    location.hash = '/bench?unit=1';
  });
  await page.getByRole('link', { name: 'Forward', exact: true }).press('Enter');
  await expect(page.getByRole('heading', { name: 'The clutch: Forward' })).toBeVisible();
  // example-unit: starts at 15.3 psi, 40 psi push with 503 lbf, 311 net; 32.0 thou as found take 0.402 in³.
  const piston = page.getByRole('region', { name: /Piston/ });
  for (const figure of ['15.3 psi', '503 lbf', '311 lbf', 'Hand off before air']) {
    await expect(piston.getByText(figure).first()).toBeVisible();
  }
  const fill = page.getByRole('region', { name: /Fill and drag/ });
  await expect(fill.getByText('0.402 in³', { exact: true }).first()).toBeVisible();
  await expect(fill.getByRole('img', { name: /Open drag, today 1 over clearance/ })).toBeVisible();

  await page.getByRole('textbox', { name: 'Engine torque' }).fill('220 in');
  await page.getByRole('textbox', { name: 'Converter ratio' }).fill('1.9');
  await page.getByRole('button', { name: 'State it' }).press('Enter');
  await expect(page.getByText('“in” is not a unit for the engine’s torque.')).toBeVisible();
  await page.getByRole('textbox', { name: 'Engine torque' }).fill('220');
  await page.getByRole('button', { name: 'State it' }).press('Enter');
  // By hand: 467 lb-ft by wear over 220 · 1.9 · 1 = 418.
  const torque = page.getByRole('region', { name: /Torque it holds/ });
  await expect(torque.getByText('1.12 times')).toBeVisible();
  await expectNoAxeComplaints(page);

  await page.getByRole('link', { name: 'Its figures in Specs' }).press('Enter');
  await page
    .getByRole('button', { name: /Forward/ })
    .first()
    .press('Enter');
  await expect(page.getByRole('textbox', { name: 'Return springs, installed' })).toHaveValue('192');
  await page.getByRole('textbox', { name: 'Piston, inside' }).fill('5');
  await page.keyboard.press('Tab');
  await expect(page.getByText('Clutch: The piston must be larger outside than inside.')).toBeVisible();
});
