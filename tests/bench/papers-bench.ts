// How long a build report takes to become a PDF, beside Chromium printing the same words, tables and charts.
import { rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium } from '@playwright/test';
import { buildReport } from '../../app/papers/build-report.ts';
import { paintInWorker } from '../../main/workers/paint-paper.ts';
import { browserArguments, findBrowser } from '../browser.ts';
import { kx3 } from '../papers/kx3-report.ts';
import { median, milliseconds, printTable, quantile } from './measure.ts';
import { paperAsHtml } from './paper-as-html.ts';

const turns = 20;

type Times = { readonly first: number; readonly later: readonly number[]; readonly bytes: number };

/** Prints what comes out; there is nothing to agree on. */
export async function benchPapers(): Promise<boolean> {
  const paper = buildReport(kx3);
  const file = join(tmpdir(), `thoubook-bench-paper-${process.pid}.html`);
  writeFileSync(file, paperAsHtml(paper));
  const painter = await timed(() => paintInWorker(paper));
  const began = performance.now();
  const browser = await chromium.launch({ executablePath: findBrowser(), args: browserArguments });
  const page = await browser.newPage();
  const started = performance.now() - began;
  const printed = await timed(async () => {
    await page.goto(pathToFileURL(file).href);
    return page.pdf({ format: 'Letter', tagged: true });
  });
  await browser.close();
  rmSync(file);
  console.log(`\nThe build report of job 214 as a PDF; ${turns} times each, a browser that is running already.`);
  const row = (name: string, { first, later, bytes }: Times, before = 0) => [
    name,
    milliseconds(before + first),
    milliseconds(median(later)),
    milliseconds(quantile(later, 0.95)),
    `${(bytes / 1000).toFixed(0)} kB`,
  ];
  printTable(
    ['', 'the first, from nothing, ms', 'median ms', 'p95 ms', 'size'],
    [row('the painter', painter), row('Chromium', printed, started)],
  );
  console.log(`  Chromium takes ${(median(printed.later) / median(painter.later)).toFixed(1)} times as long.`);
  return true;
}

async function timed(make: () => Promise<Uint8Array>): Promise<Times> {
  const times: number[] = [];
  let bytes = 0;
  for (let turn = 0; turn <= turns; turn += 1) {
    const start = performance.now();
    bytes = (await make()).length;
    times.push(performance.now() - start);
  }
  const [first = Number.NaN, ...later] = times;
  return { first, later, bytes };
}
