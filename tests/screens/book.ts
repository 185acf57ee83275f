// A book for each screen test: the built host on a folder of its own, with the demo shop open and a page on it.
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test as base, expect, type Page } from '@playwright/test';
import type { Result, RunOnly, run } from 'axe-core';
import type { MethodName, Output } from '../../app/contract/contract.ts';
import type { Reply } from '../../app/contract/reply.ts';
import { type ServeProcess, startServe } from '../serve-process.ts';

const serve = join(import.meta.dirname, '../../dist/main/serve.js');
const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

export type Book = {
  readonly folder: string;
  /** Stops the host at once, as a power cut would. */
  kill(): Promise<void>;
  /** Starts the host again on the same folder, at the same port, and answers its address. */
  start(): Promise<string>;
};

export type Call = <M extends MethodName>(method: M, input: unknown) => Promise<Output<M>>;

type Fixtures = {
  /** false starts on an empty folder, as on the first day. */
  opensDemo: boolean;
  book: Book;
  call: Call;
};

/** One for each worker: a folder with the demo shop as it is when it has just been opened. */
type WorkerFixtures = { readonly demoFolder: string };

export const test = base.extend<Fixtures, WorkerFixtures>({
  opensDemo: [true, { option: true }],

  demoFolder: [
    // biome-ignore lint/correctness/noEmptyPattern: Playwright reads a fixture's needs off this pattern.
    async ({}, use) => {
      if (!existsSync(serve)) throw new Error('dist is not built: npm run build first.');
      const folder = mkdtempSync(join(tmpdir(), 'thoubook-'));
      const host = await startServe(serve, folder);
      const entered = await fetch(host.address, { redirect: 'manual' });
      const cookie = entered.headers.get('set-cookie')?.split(';')[0] ?? '';
      const headers = { 'content-type': 'application/json', cookie };
      const asked = new URL('/rpc/shop.openDemoShop', host.address);
      const reply = (await (await fetch(asked, { method: 'POST', headers, body: '{}' })).json()) as Reply<unknown>;
      await host.kill();
      if (!reply.ok) throw new Error(`The demo shop did not open: ${reply.error.message}`);
      await use(folder);
      rmSync(folder, { recursive: true, force: true });
    },
    { scope: 'worker' },
  ],

  book: async ({ opensDemo, demoFolder }, use) => {
    const folder = mkdtempSync(join(tmpdir(), 'thoubook-'));
    if (opensDemo) cpSync(demoFolder, folder, { recursive: true });
    let host: ServeProcess | undefined;
    const start = async () => {
      host = await startServe(serve, folder, host && new URL(host.address).port);
      return host.address;
    };
    const kill = async () => host?.kill();
    await use({ folder, start, kill });
    await kill();
    rmSync(folder, { recursive: true, force: true });
  },

  page: async ({ page, book }, use) => {
    await page.goto(await book.start());
    await use(page);
  },

  call: async ({ page }, use) => use(callOn(page)),
});

/** Calls the contract from the page, as the renderer does. */
export function callOn(page: Page): Call {
  return async <M extends MethodName>(method: M, input: unknown): Promise<Output<M>> => {
    const response = await page.request.post(new URL(`/rpc/${method}`, page.url()).href, { data: input as object });
    const reply = (await response.json()) as Reply<Output<M>>;
    if (!reply.ok) throw new Error(`${method}: ${reply.error.message}`);
    return reply.value;
  };
}

/** Fails with what axe found on the page as it stands: everything in paper, and in bay the contrast, all that differs. */
export async function expectNoAxeComplaints(page: Page): Promise<void> {
  // Put into the page once, and asked there: AxeBuilder brings it along for every question and sums up in a second page.
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axeSource);
  await showIn(page, 'bay');
  const inBay = await violationsOn(page, { type: 'rule', values: ['color-contrast', 'link-in-text-block'] });
  await showIn(page, 'paper');
  const inPaper = await violationsOn(page, {
    type: 'tag',
    values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'],
  });
  const complaints = [...inBay, ...inPaper].map(
    ({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' | ')}`,
  );
  expect(complaints).toEqual([]);
}

/** Puts the page into a theme and waits until it stands still. */
function showIn(page: Page, theme: 'paper' | 'bay'): Promise<void> {
  return page.evaluate(async (name) => {
    document.documentElement.dataset.theme = name;
    // A button fades to its new colour, and is to be judged by the colour it comes to; one that is gone will not. What
    // is folded away stands still until it is opened, and what runs for ever comes to no colour.
    const fading = document.getAnimations().filter(({ effect }) => {
      const isShown = effect instanceof KeyframeEffect && effect.target?.checkVisibility();
      return isShown && effect.getComputedTiming().endTime !== Infinity;
    });
    await Promise.allSettled(fading.map(({ finished }) => finished));
  }, theme);
}

function violationsOn(page: Page, runOnly: RunOnly): Promise<Result[]> {
  return page.evaluate(async (runOnly) => {
    const { axe } = window as unknown as { axe: { run: typeof run } };
    // What was announced last stands in the announcer for a while, named by a key that may be gone by then.
    const page = { exclude: ['[data-live-announcer]'] };
    // The only frames are the browser's own view of a PDF.
    return (await axe.run(page, { runOnly, resultTypes: ['violations'], iframes: false })).violations;
  }, runOnly);
}

export { expect };
