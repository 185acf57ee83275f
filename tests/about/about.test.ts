import { existsSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { faultsIn } from '../../app/about/diagnostics.ts';
import { appendToLog, readLog } from '../../main/ports/log-file.ts';
import { dispatch } from '../../main/rpc/dispatch.ts';
import { shopWithKx3, temporaryFolder } from '../desk.ts';

test('a log never takes more than three times its size, and keeps the newest entries', () => {
  const file = join(temporaryFolder(), 'faults.log');
  const entry = (place: number) => `entry ${place} ${'x'.repeat(90_000)}\n`;
  for (let place = 1; place <= 40; place += 1) appendToLog(file, entry(place));
  const sizes = ['', '.1', '.2'].map((ending) => statSync(`${file}${ending}`).size);
  expect(Math.max(...sizes)).toBeLessThanOrEqual(500_000);
  expect(existsSync(`${file}.3`)).toBe(false);
  const kept = [...readLog(file).matchAll(/^entry (\d+)/gm)].map(([, place]) => Number(place));
  expect(kept).toEqual(Array.from({ length: kept.length }, (_, place) => 41 - kept.length + place));
  expect(kept.length).toBeGreaterThan(10);
});

test('what a fault said is not told on, only where it came from, whatever it quoted', () => {
  const secret = 'Tam Okoro 555 0142';
  fc.assert(
    fc.property(
      fc.array(fc.constantFrom(secret, '\n', '    at ', '(', ')', ':1:2', 'x.ts', 'Error', ' '), { maxLength: 12 }),
      (said) => {
        const log = `20261201120000-1 jobs.getJob\nError: ${said.join('')}\n    at readJob (/home/x/main/jobs.service.ts:12:7)\n`;
        const told = JSON.stringify(faultsIn(log));
        expect(told).not.toContain('Tam');
        expect(told).not.toContain('0142');
        expect(told).not.toContain('home');
        expect(told).toContain('jobs.service.ts:12:7');
      },
    ),
    { examples: [[[secret, '\n', '    at ', secret, ' (', 'x.ts', ':1:2', ')']]] },
  );
});

test('diagnostics say what the file holds and where it failed, and nothing that was typed', async () => {
  const { desk, call, familyId, by } = await shopWithKx3();
  await call('jobs.checkIn', {
    customer: { name: 'Tam Okoro', phone: '555 0117', email: 'tam@okoro.example' },
    unit: { familyId, serial: 'KX3-19-2214', vehicle: 'half-ton pickup', use: 'tow' },
    complaint: 'Slips 2–3 when hot.',
    caseTag: 'T-1',
    distance: null,
    by,
  });
  desk.logFault('jobs.getJob', new TypeError('Tam Okoro has no pickup KX3-19-2214'));
  const reply = await dispatch(desk, 'about.writeDiagnostics', {});
  if (!reply.ok) throw new Error(reply.error.message);
  const text = readFileSync(reply.value.file, 'utf8');
  expect(text).toMatch(/^ {2}jobs: 1$/m);
  expect(text).toMatch(/^ {2}lengthUnit: thou$/m);
  expect(text).toMatch(/jobs\.getJob TypeError about\.test\.ts:\d+:\d+/);
  // Everything that was typed into this book.
  const typed = await desk.shop().read(async (reading) => {
    const customers = await reading.selectFrom('customers').select('name').execute();
    const people = await reading.selectFrom('people').select('name').execute();
    const families = await reading.selectFrom('families').select('name').execute();
    const packs = await reading.selectFrom('packs').select('name').execute();
    const units = await reading.selectFrom('units').select('serial as name').execute();
    const settings = await reading.selectFrom('settings').select('shop_name as name').execute();
    return [customers, people, families, packs, units, settings].flat().map(({ name }) => name);
  });
  expect(typed.length).toBeGreaterThan(5);
  for (const name of ['slips', 'half-ton', '555 0117', 'okoro.example', ...typed.filter((each) => each.length > 1)]) {
    expect(text.toLowerCase()).not.toContain(name.toLowerCase());
  }
});

test('what is known of the program counts its faults, also those that stepped aside', async () => {
  const { desk } = await shopWithKx3();
  writeFileSync(`${desk.faultLog()}.1`, '20261201120000-1 host\nError: x\n20261201120001-2 host\nError: y\n');
  writeFileSync(desk.faultLog(), '20261201120002-1 jobs.getJob\nError: z\n');
  const reply = await dispatch(desk, 'about.getAbout', {});
  expect(reply).toMatchObject({ ok: true, value: { faultLog: { faults: 3 }, folder: desk.folder } });
});
