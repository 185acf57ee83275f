// Teardown by keyboard: frictions of a stack written down one after the other, decided, corrected, priced, with photos.
import { greyJpeg } from '../photos/small-jpeg.ts';
import { expect, expectNoAxeComplaints, test } from './book.ts';

test('a stack is written down plate by plate, and each finding is corrected, priced and pinned where it stands', async ({
  page,
  call,
}) => {
  await page.evaluate(() => {
    location.hash = '/jobs/1/teardown';
  });
  const entry = page.getByRole('form', { name: 'Write a finding down' });
  const part = entry.getByRole('combobox', { name: 'Part' });
  await part.pressSequentially('low fric');
  await expect(page.getByRole('option').first()).toContainText('friction 1');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await expect(part).toHaveValue('friction 1');
  await page.keyboard.press('Enter');
  await page.keyboard.type('b');
  await page.keyboard.press('Enter');
  await page.keyboard.type('71');
  await page.keyboard.press('Control+Enter');
  await expect(entry).toContainText('Is it burnt or broken?');
  await expect(entry.getByRole('combobox', { name: 'Condition' })).toBeFocused();
  await page.keyboard.type('ur');
  await page.keyboard.press('Enter');
  await page.keyboard.press('Enter');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Enter');
  await page.keyboard.press('Enter');
  // The next friction stands there with the same condition and decision.
  await expect(part).toHaveValue('friction 2');
  await expect(part).toBeFocused();
  await page.keyboard.press('Control+Enter');
  await expect(part).toHaveValue('friction 3');
  const found = page.getByRole('table', { name: 'Findings' });
  const first = found.getByRole('row').filter({ hasText: 'Low/reverse friction 1' });
  await expect(first).toContainText('burnt, 71.0 of 80.0 thou left');

  await first.getByRole('button', { name: 'Correct Low/reverse friction 1' }).press('Enter');
  const correction = page.getByRole('form', { name: 'Correct a finding' });
  await correction.getByRole('combobox', { name: 'Condition' }).fill('glaz');
  for (const next of ['Left, thou', 'Note', 'Why']) {
    await page.keyboard.press('Enter');
    await expect(correction.getByRole('textbox', { name: next })).toBeFocused();
  }
  await page.keyboard.type('washed');
  await page.keyboard.press('Enter');
  await expect(first).toContainText('glazed, 71.0 of 80.0 thou left');
  await expect(first).toContainText('washed, RA');

  await first.getByRole('button', { name: 'Price of Low/reverse friction 1' }).press('Enter');
  await page.getByRole('textbox', { name: 'Price of one' }).fill('4.20');
  await page.keyboard.press('Enter');
  await expect(first).toContainText('on the estimate');

  await first.getByRole('button', { name: 'Photos of Low/reverse friction 1' }).press('Enter');
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Choose photos' }).click();
  await (await chooser).setFiles([{ name: 'friction.jpg', mimeType: 'image/jpeg', buffer: greyJpeg }]);
  await expect(page.getByRole('dialog').getByRole('checkbox')).toBeChecked();
  await page.keyboard.press('Escape');
  await expect(first.getByRole('img')).toBeVisible();

  await expect(page.getByRole('table', { name: 'Hard parts measured' })).toContainText('loose by 0.5');
  await expectNoAxeComplaints(page);
  expect((await call('jobs.listFindings', { jobId: 1 })).slice(-2)).toMatchObject([
    { condition: 'glazed', place: 'piston end', decision: { decision: 'replace' }, isCharged: true },
    { condition: 'burnt', place: 'middle', thickness_nm: null },
  ]);
});
