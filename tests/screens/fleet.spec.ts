// What the fleet says, asked by keyboard: a selection, the sentences, the curve with its table, and a kind refusal.
import { expect, expectNoAxeComplaints, test } from './book.ts';

test('the fleet is asked by keyboard, says what stands out of how many tried, and every chart has its table', async ({
  page,
}) => {
  await page.getByRole('link', { name: 'Comebacks' }).focus();
  await page.keyboard.press('Enter');
  await page.getByRole('link', { name: 'Fleet' }).focus();
  await page.keyboard.press('Enter');
  const who = page.getByRole('region', { name: 'Who was followed' });
  await expect(who).toContainText(/\d+ delivered builds, \d+ of them followed, \d+ came back\./);
  const factors = page.getByRole('region', { name: 'What goes together with coming back' });
  await expect(factors).toContainText(/Of \d+ things tried, /);
  await factors.getByRole('button', { name: /All \d+ tried/ }).focus();
  await page.keyboard.press('Enter');
  await expect(factors.getByRole('table', { name: /All that was tried/ })).toContainText('Forward clearance');
  const last = page.getByRole('region', { name: 'How long they last' });
  await expect(last.getByRole('img', { name: /followed, \d+ came back/ })).toBeVisible();
  await expect(last.getByRole('table', { name: /at round times/ })).toBeVisible();
  const quarters = page.getByRole('region', { name: 'Came back, by quarter of delivery' });
  await expect(quarters.getByRole('img', { name: /Came back by quarter/ })).toBeVisible();
  await expect(quarters.getByRole('table', { name: /Came back by quarter/ })).toContainText('2026 Q1');
  const choose = async (label: RegExp, letters: string) => {
    await page.getByRole('button', { name: label }).focus();
    await page.keyboard.press('Enter');
    await expect(page.getByRole('listbox')).toBeVisible();
    await page.keyboard.type(letters);
    await page.keyboard.press('Enter');
    await expect(page.getByRole('listbox')).toBeHidden();
  };
  await choose(/Compare by/, 'Built');
  const compared = page.getByRole('region', { name: 'By Built by' });
  await expect(compared).toContainText(/log-rank p|Not enough yet/);
  await expectNoAxeComplaints(page);
  // What next to nothing came back for is told kindly, with counts.
  await choose(/Cause/, 'stack');
  await expect(last).toContainText(/Not enough yet: \d of 8 comebacks needed\./);
});
