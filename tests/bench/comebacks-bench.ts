// What is asked of a shop file with many comebacks in it, and how long the event loop waits meanwhile.
import { mkdtempSync, rmSync } from 'node:fs';
import { loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { monitorEventLoopDelay } from 'node:perf_hooks';
import type { Input, MethodName, Output } from '../../app/contract/contract.ts';
import { systemClock } from '../../main/ports/clock.ts';
import { dispatch } from '../../main/rpc/dispatch.ts';
import { growHistory } from '../../main/shop/demo/history/grow-history.ts';
import { Desk } from '../../main/shop/desk.ts';
import { median, milliseconds, printTable, quantile } from './measure.ts';

const builds = 50_000;
const repeats = 9;

/** Prints what comes out; there is nothing to agree with. */
export async function benchComebacks(): Promise<boolean> {
  const folder = mkdtempSync(join(tmpdir(), 'thoubook-bench-'));
  try {
    await makeShop(folder);
    await askAll(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
  return true;
}

async function makeShop(folder: string): Promise<void> {
  const desk = await Desk.at(folder, systemClock);
  await call(desk, 'shop.createShop', {
    shopName: 'Harrow Lane Transmission',
    lengthUnit: 'thou',
    paper: 'letter',
    personName: 'Rosa Aldane',
    personInitials: 'RA',
  });
  await call(desk, 'shop.changeSettings', { warrantyMonths: 24, warrantyDistance: 24_000 });
  const { personId: second } = await call(desk, 'shop.addPerson', { name: 'Jonas Hale', initials: 'JH' });
  const { personId: third } = await call(desk, 'shop.addPerson', { name: 'Mira Tolland', initials: 'MT' });
  const until = systemClock().slice(0, 10);
  const planting = { builds, seed: 1, effects: 'planted', until, families: 'the first' } as const;
  const { rows } = await growHistory(desk.shop(), planting, [1, second, third]);
  const [jobs, readings, comebacks] = ['jobs', 'readings', 'comebacks'].map((table) =>
    (rows.get(table) ?? 0).toLocaleString('en'),
  );
  console.log(`\nComebacks: ${jobs} jobs, ${readings} readings, ${comebacks} comebacks, one family, seed 1.`);
  await desk.close();
}

async function askAll(folder: string): Promise<void> {
  let desk = await Desk.at(folder, systemClock);
  const { families } = await call(desk, 'comebacks.fleetChoices', { familyId: null });
  const familyId = families[0]?.id ?? 0;
  const everyBuild = { revision: null, builderId: null, batchId: null, deliveredFrom: null, deliveredUntil: null };
  const question = { familyId, packName: null, cause: null, ...everyBuild, clock: 'days' } as const;
  const ask = () => call(desk, 'comebacks.askFleet', question);
  const filled = await timedAct(ask);
  const { followed, events, factors } = filled.value;
  const tried = factors.isEnough ? factors.count : 0;
  console.log(`${followed.toLocaleString('en')} builds followed, ${events} came back, ${tried} factors tried.`);
  console.log(`Reckoning what was read: ${Math.round((1000 * builds) / filled.milliseconds)} builds a second.`);
  const opened = await several(3, async () => {
    await desk.close();
    desk = await Desk.at(folder, systemClock);
    return timedAct(ask);
  });
  const written = await several(repeats, async () => {
    await call(desk, 'shop.changeSettings', { warrantyMonths: 24 });
    return timedAct(ask);
  });
  const again = await several(repeats, () => timedAct(ask));
  const ids = (await call(desk, 'comebacks.listComebacks', { only: 'ours' })).map(({ comebackId }) => comebackId);
  let place = 0;
  const trace = () => {
    place += 37;
    return timedAct(() => call(desk, 'comebacks.trace', { comebackId: ids[place % ids.length]! }));
  };
  await trace();
  const traced = await several(repeats, trace);
  await desk.close();
  printTable(
    ['what', 'median ms', 'worst ms', 'event loop waits at most, ms'],
    [
      ['fleet, the file just opened', ...told(opened)],
      ['fleet, after a write', ...told(written)],
      ['fleet, asked again', ...told(again)],
      ['trace of one', ...told(traced)],
    ],
  );
  console.log(
    `Load of the machine: ${loadavg()
      .map((each) => each.toFixed(1))
      .join(', ')}.`,
  );
}

type Timed<T> = { readonly milliseconds: number; readonly waited: number; readonly value: T };

/** With the longest that anything else on the event loop had to wait meanwhile. */
async function timedAct<T>(act: () => Promise<T>): Promise<Timed<T>> {
  const loop = monitorEventLoopDelay({ resolution: 1 });
  loop.enable();
  const start = performance.now();
  const value = await act();
  const took = performance.now() - start;
  loop.disable();
  return { milliseconds: took, waited: Number.isFinite(loop.max) ? loop.max / 1e6 : 0, value };
}

async function several<T>(times: number, act: () => Promise<Timed<T>>): Promise<Timed<T>[]> {
  const all: Timed<T>[] = [];
  for (let i = 0; i < times; i++) all.push(await act());
  return all;
}

function told(timed: readonly Timed<unknown>[]): string[] {
  const took = timed.map((each) => each.milliseconds);
  return [median(took), quantile(took, 1), Math.max(...timed.map((each) => each.waited))].map(milliseconds);
}

async function call<M extends MethodName>(desk: Desk, method: M, input: Input<M>): Promise<Output<M>> {
  const reply = await dispatch(desk, method, input);
  if (!reply.ok) throw new Error(`${method}: ${reply.error.message}`);
  return reply.value;
}
