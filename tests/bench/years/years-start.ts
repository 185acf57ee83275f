// How long from nothing to the first reply and to a screen that can be used, and how long the host's event loop is held
// while it backs up, traces and prints.
import { chromium } from '@playwright/test';
import { browserArguments, findBrowser } from '../../browser.ts';
import { median, milliseconds } from '../measure.ts';
import { startBare, stop, type YearsHost } from './years-host.ts';
import type { Inputs } from './years-reads.ts';

const starts = 5;
const acts = 10;

/** Medians over a few starts; the file is looked over at each. */
export async function sayStart(folder: string): Promise<void> {
  const reply: number[] = [];
  const screen: number[] = [];
  const browser = await chromium.launch({ executablePath: findBrowser(), args: browserArguments });
  for (let turn = 0; turn < starts; turn += 1) {
    const began = performance.now();
    const { child, address } = await startBare(folder);
    const { origin } = new URL(address);
    await fetch(`${origin}/`);
    reply.push(performance.now() - began);
    const page = await browser.newPage();
    await page.goto(address);
    await page.getByRole('navigation', { name: 'Places' }).waitFor();
    await page.getByRole('heading', { level: 1 }).waitFor();
    screen.push(performance.now() - began);
    await page.close();
    await stop(child);
  }
  await browser.close();
  console.log(
    `  From nothing: first reply ${milliseconds(median(reply))} ms, first screen ${milliseconds(median(screen))} ms, in a browser that runs already.`,
  );
}

/** The 99th hundredth of how late the event loop came round, and the latest, while each goes on. */
export async function sayHeldLoop(host: YearsHost, inputs: Inputs): Promise<void> {
  const during = async (what: string, act: () => Promise<unknown>) => {
    await host.pulse();
    await act();
    const { p99_ms, longest_ms } = await host.pulse();
    console.log(
      `  Event loop while it ${what}: p99 ${milliseconds(p99_ms)} ms late, at most ${milliseconds(longest_ms)} ms.`,
    );
  };
  const times = (act: (turn: number) => Promise<unknown>) => async () => {
    for (let turn = 0; turn < acts; turn += 1) await act(turn);
  };
  await during('backs up', () => host.call('backups.makeBackup', {}));
  await during(
    'traces',
    times((turn) => host.call('comebacks.trace', inputs['comebacks.trace'](turn))),
  );
  await during(
    'prints',
    times((turn) => host.call('jobs.printBuildReport', inputs['jobs.printBuildReport'](turn))),
  );
}
