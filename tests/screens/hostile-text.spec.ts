// Whatever somebody typed, or a list brought in, is shown as text on every page and never obeyed.
import { join } from 'node:path';
import { hostile, makeHostile } from '../security/hostile-text.ts';
import { callOn, expect, test } from './book.ts';

const pages = [
  ...['/jobs', '/jobs/new', '/jobs/1', '/jobs/1/door', '/jobs/1/parts', '/jobs/1/teardown', '/jobs/1/estimate'],
  ...['/jobs/1/build', '/jobs/1/final', '/jobs/1/delivery', '/jobs/1/history', '/jobs/1/papers', '/jobs/1/photos'],
  ...['/jobs/1/checks/1', '/jobs/1/clutch/1', '/bench', '/bench/1/1', '/bench/1/swaps', '/lines', '/stock'],
  ...['/stock/parts/1', '/stock/parts/1/edit', '/stock/plates', '/stock/buy', '/stock/import', '/stock/labels'],
  ...['/stock/trace/part/1', '/comebacks', '/comebacks/new', '/comebacks/1', '/comebacks/fleet', '/comebacks/calls'],
  ...['/comebacks/cost', '/comebacks/sharing', '/specs', '/specs/1', '/specs/1/edit', '/specs/1/small-jobs'],
  ...['/gauges', '/gauges/1', '/gauges/studies', '/gauges/studies/1', '/gauges/methods', '/gauges/builds', '/shop'],
];

test('text written to be obeyed is shown as text on every page', async ({ page, book }) => {
  test.setTimeout(120_000);
  await book.kill();
  makeHostile(join(book.folder, 'demo.thoubook'));
  const trouble: string[] = [];
  page.on('dialog', (dialog) => {
    trouble.push(`a dialog: ${dialog.message()}`);
    void dialog.dismiss();
  });
  page.on('pageerror', (error) => trouble.push(`${page.url()}: ${error.message}`));
  page.on('console', (line) => {
    if (/Content Security Policy|Content-Security-Policy/.test(line.text()))
      trouble.push(`${page.url()}: ${line.text()}`);
  });
  const address = await book.start();
  const { origin } = new URL(address);
  await page.goto(address);
  let shown = 0;
  for (const path of pages) {
    // Loaded anew, so that what stands there is this page and not the one before; looked at once it stands still.
    await page.goto('about:blank');
    await page.goto(`${origin}/#${path}`);
    const main = page.getByRole('main');
    await expect(async () => {
      const before = await main.textContent();
      await page.waitForTimeout(150);
      expect(before).not.toBe('');
      expect(await main.textContent()).toBe(before);
    }).toPass({ intervals: [50] });
    await expect(page.getByText('Something went wrong inside Thoubook.')).toHaveCount(0);
    const seen = await page.evaluate(() => ({
      hacked: 'hacked' in window,
      elements: document.querySelectorAll('img[src="x"], body script').length,
      text: document.body.textContent ?? '',
    }));
    if (seen.hacked || seen.elements > 0) trouble.push(`${path}: it was obeyed`);
    if (seen.text.includes('<script>window.hacked=1</script>')) shown += 1;
  }
  expect(trouble).toEqual([]);
  expect(shown).toBeGreaterThan((2 / 3) * pages.length);
  const job = await callOn(page)('jobs.getJob', { jobId: 1 });
  expect(job.customer.name).toContain(hostile);
});
