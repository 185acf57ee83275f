// A window whose host was ended and started again: it says so, loses nothing, and goes on once the browser is let in.
import { expect, test } from './book.ts';

test('a window that is no longer let in says what to do, and what was typed goes on', async ({ page, call, book }) => {
  const [job] = await call('jobs.listJobs', { text: 'pickup', includeClosed: false });
  const { checks } = await call('jobs.getJob', { jobId: job?.jobId });
  const check = { jobId: job?.jobId, checkId: checks.find(({ name }) => name === 'Forward clearance')?.checkId };
  const setup = await call('readings.lastSetup', check);
  await call('readings.startTake', { ...check, phase: 'as found', mode: 'final', setup, note: '', by: 1 });
  await page.goto(new URL(`/#/bench/${check.jobId}/${check.checkId}`, page.url()).href);
  const entry = page.getByRole('textbox', { name: /push-down/ });
  await entry.fill('4 2');

  await book.kill();
  await expect(page.getByText('Thoubook does not answer.')).toBeVisible();
  await page.keyboard.type('3');

  const address = await book.start();
  const sentence = page.getByText('This window is no longer let in: open Thoubook again');
  await expect(sentence).toBeVisible();
  // Said once more where the hand is.
  await page.keyboard.press('Enter');
  await expect(sentence).toHaveCount(2);
  await expect(entry).toHaveValue('4 23');

  // Opened again: the line stands there as it was typed, and the first window is let in with it.
  const again = await page.context().newPage();
  await again.goto(address);
  await again.goto(page.url());
  await expect(again.getByRole('heading', { name: /Spot 1/ })).toBeVisible();
  await expect(again.getByRole('textbox', { name: /push-down/ })).toHaveValue('4 23');
  await expect(sentence).toHaveCount(1);
  await entry.press('Enter');
  await expect(page.getByRole('heading', { name: /Spot 2/ })).toBeVisible();
  await expect(sentence).toHaveCount(0);
});
