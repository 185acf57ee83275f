// From Enter on a line to the next prompt on the screen, while no gauge runs, one at 10 Hz and one at 100 Hz. Needs
// `npm run build` first.
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Page } from '@playwright/test';
import { browserArguments, findBrowser } from '../browser.ts';
import { callOn } from '../screens/book.ts';
import { startServe } from '../serve-process.ts';

const takes = 6;
const spots = 4;
/** A drum is turned and a plate pushed between two lines: no hand is faster. */
const betweenLines_ms = 1000;

const built = join(import.meta.dirname, '../../dist/main/serve.js');

/** Prints the times; there is nothing to agree on. */
export async function benchAccept(): Promise<boolean> {
  console.log('\nFrom Enter on a line to the next prompt, while a gauge runs');
  if (!existsSync(built)) {
    console.log('not measured: npm run build first');
    return true;
  }
  const folder = mkdtempSync(join(tmpdir(), 'thoubook-'));
  const host = await startServe(built, folder);
  const browser = await chromium.launch({ executablePath: findBrowser(), args: browserArguments });
  try {
    const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
    await page.goto(host.address);
    await measure(page);
  } finally {
    await browser.close();
    await host.kill();
    rmSync(folder, { recursive: true, force: true });
  }
  return true;
}

async function measure(page: Page): Promise<void> {
  const call = callOn(page);
  await call('shop.openDemoShop', {});
  const [job] = await call('jobs.listJobs', { text: 'pickup', includeClosed: false });
  const { checks } = await call('jobs.getJob', { jobId: job?.jobId });
  const check = { jobId: job?.jobId, checkId: checks.find(({ name }) => name === 'Forward clearance')?.checkId };
  const setup = await call('readings.lastSetup', check);
  const shop = await call('shop.getShop', {});
  const lineOf = async (every_ms: number) => {
    const settings = { source: 'practice', practice: 'noisy', pattern: '{number}', unit: 'mm', isReversed: false };
    const still = { step_nm: 1000, stillWithin_steps: 26, stillFor_ms: 500, every_ms };
    return (await call('indicators.addLine', { name: `every ${every_ms} ms`, ...settings, ...still })).lineId;
  };
  for (const [words, lineId] of [
    ['no gauge', null],
    ['10 Hz', await lineOf(100)],
    ['100 Hz', await lineOf(10)],
  ] as const) {
    await page.evaluate(([key, habits]) => localStorage.setItem(key, habits), [
      `bench habits: ${shop.open ? shop.file : ''}`,
      JSON.stringify({ lineId, hasSounds: false }),
    ] as const);
    const times: number[] = [];
    for (let take = 0; take < takes; take += 1) {
      await call('readings.startTake', { ...check, phase: 'as found', mode: 'final', setup, note: '', by: 1 });
      await page.goto(new URL(`/#/bench/${check.jobId}/${check.checkId}`, page.url()).href);
      await page.reload();
      await page.getByRole('heading', { name: /Spot 1/ }).waitFor();
      if (lineId !== null) await page.getByText('At rest.').first().waitFor();
      for (let spot = 1; spot < spots; spot += 1) {
        await page.waitForTimeout(betweenLines_ms);
        times.push(await timeOfLine(page, spot + 1));
      }
    }
    times.sort((left, right) => left - right);
    const at = (share: number) => (times[Math.floor(share * (times.length - 1))] ?? 0).toFixed(0);
    console.log(
      `${words}: median ${at(0.5)} ms, 9 of 10 within ${at(0.9)} ms, worst ${at(1)} ms, ${times.length} lines, load ${loadavg()[0]?.toFixed(1)}`,
    );
  }
}

/** Milliseconds on the page's own clock from the key to the frame that shows the next spot's prompt. */
async function timeOfLine(page: Page, next: number): Promise<number> {
  await page.locator('input[data-entry-line]').fill('4 23');
  await page.evaluate(() => {
    const press = () => {
      document.documentElement.dataset.pressedAt = String(performance.now());
    };
    document.addEventListener('keydown', press, { capture: true, once: true });
  });
  const shown = page.waitForFunction(
    (wanted) => {
      const isThere = document.querySelector('h1')?.textContent?.includes(`Spot ${wanted}`);
      return isThere && performance.now() - Number(document.documentElement.dataset.pressedAt);
    },
    next,
    { polling: 'raf' },
  );
  await page.keyboard.press('Enter');
  return (await (await shown).jsonValue()) as number;
}
