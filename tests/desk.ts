// A desk on a folder of its own for a test: real SQLite files, calls as the shells make them, a clock that ticks.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import type { MethodName, Output } from '../app/contract/contract.ts';
import type { Failure } from '../app/contract/reply.ts';
import { openShop } from '../main/database/open-shop.ts';
import type { Clock } from '../main/ports/clock.ts';
import { dispatch } from '../main/rpc/dispatch.ts';
import { kx3Sheet } from '../main/shop/demo/kx3-sheet.ts';
import { Desk } from '../main/shop/desk.ts';

export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'thoubook-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** A second later at every look, from 23 November 2026 on. */
export function tickingClock(): Clock {
  let seconds = 0;
  return () => {
    seconds += 1;
    return new Date(Date.UTC(2026, 10, 23, 8) + seconds * 1000).toISOString();
  };
}

export type DeskForTest = {
  readonly desk: Desk;
  readonly folder: string;
  call<M extends MethodName>(method: M, input: unknown): Promise<Output<M>>;
  /** Makes a call that must fail and answers the failure. */
  refusal(method: string, input: unknown): Promise<Failure>;
};

/** A second later at every look too, from the day it was set to last. */
export function calendarClock(from: string): Clock & { setTo(day: string): void } {
  let now = Date.parse(`${from}T09:00:00Z`);
  const clock = () => {
    now += 1000;
    return new Date(now).toISOString();
  };
  const setTo = (day: string) => {
    now = Date.parse(`${day}T09:00:00Z`);
  };
  return Object.assign(clock, { setTo });
}

export async function deskIn(folder = temporaryFolder(), clock = tickingClock()): Promise<DeskForTest> {
  const desk = await Desk.at(folder, clock);
  onTestFinished(() => desk.close());
  return deskFor(desk, folder);
}

export async function deskOver(file: string, mode: 'read' | 'write'): Promise<DeskForTest> {
  const shop = await openShop(file, mode, tickingClock());
  const desk = Desk.over(shop, temporaryFolder());
  onTestFinished(() => desk.close());
  return deskFor(desk, desk.folder);
}

function deskFor(desk: Desk, folder: string): DeskForTest {
  return {
    desk,
    folder,
    call: async (method, input) => {
      const reply = await dispatch(desk, method, input);
      if (!reply.ok) throw new Error(`${method}: ${reply.error.message}`);
      return reply.value;
    },
    refusal: async (method, input) => {
      const reply = await dispatch(desk, method as MethodName, input);
      if (reply.ok) throw new Error(`${method} was not refused`);
      return reply.error;
    },
  };
}

/** A new shop with the KX3 sheet in it. */
export async function shopWithKx3(clock?: Clock) {
  const at = await deskIn(temporaryFolder(), clock);
  await at.call('shop.createShop', {
    shopName: 'Harrow Lane Transmission',
    lengthUnit: 'thou',
    paper: 'letter',
    personName: 'Rosa Aldane',
    personInitials: 'RA',
  });
  const { familyId } = await at.call('specs.addFamily', { name: 'KX3', by: 1 });
  await at.call('specs.saveSheet', { familyId, sheet: kx3Sheet, sourceNote: '', by: 1 });
  return { ...at, familyId, by: 1 };
}
