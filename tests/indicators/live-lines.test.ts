// Gauges on real lines: a pair of pseudo-terminals with the serial port's own driver at one end.
import { describe, expect, onTestFinished, test, vi } from 'vitest';
import type { LineSettings } from '../../app/indicators/indicators.contract.ts';
import { type LineNews, standingSentence } from '../../app/indicators/line-news.ts';
import { requestBytes } from '../../app/indicators/request-bytes.ts';
import { LiveLines } from '../../main/indicators/live-lines.service.ts';
import { temporaryFolder } from '../desk.ts';
import { hasSocat, ptyIn } from './pty.ts';

const says = {
  name: 'Bench gauge',
  pattern: '{number}',
  unit: 'mm',
  isReversed: false,
  step_nm: 1000,
  stillWithin_steps: 5,
  stillFor_ms: 500,
  every_ms: 50,
  gaugeId: null,
} as const;

const serial = (path: string, other: Partial<Extract<LineSettings, { source: 'serial' }>> = {}): LineSettings => ({
  source: 'serial',
  ...says,
  path,
  baudRate: 9600,
  dataBits: 8,
  parity: 'none',
  stopBits: 1,
  request: '',
  ...other,
});

async function plugged() {
  const pty = await ptyIn(temporaryFolder());
  onTestFinished(() => pty.unplug());
  return pty;
}

/** Open lines, and all they told. */
function hearing() {
  const lines = new LiveLines();
  const news: LineNews[] = [];
  lines.onNews((each) => news.push(each));
  onTestFinished(() => lines.leaveAll());
  const values = () => news.flatMap(({ samples }) => samples.map(([, value_nm]) => value_nm));
  const until = (check: () => void) => vi.waitFor(check, { timeout: 20_000, interval: 20 });
  const stands = (standing: LineNews['standing']) => until(() => expect(news.at(-1)?.standing).toBe(standing));
  return { lines, news, values, until, stands };
}

describe.skipIf(!hasSocat)('a line (skipped where socat is not installed)', () => {
  test('gives its readings however its frames are split, and counts what it cannot read', async () => {
    const pty = await plugged();
    const { lines, news, values, until } = hearing();
    expect(await lines.hear(1, serial(pty.path))).toBe('open');
    for (const part of ['+00.', '1', '02\r', '\n-00.584\r\nfa', '\xf0\r\n+0.0', '00\r\n', 'Err\r\n+00.003\r\n']) {
      await pty.say(part);
    }
    await until(() => expect(values()).toEqual([102_000, -584_000, 0, 3_000]));
    expect(news.at(-1)).toMatchObject({ standing: 'open', readings: 4, garbled: 2, lastFrame: '+00.003' });
    const times = news.flatMap(({ samples }) => samples.map(([at_ms]) => at_ms));
    expect(times).toEqual(times.toSorted((a, b) => a - b));
  });

  test('that is pulled out says so, and comes back when it is plugged in again', async () => {
    const pty = await plugged();
    const { lines, news, values, until, stands } = hearing();
    await lines.hear(1, serial(pty.path));
    await pty.say('+1.0\r\n+2.');
    await until(() => expect(values()).toEqual([1_000_000]));
    await pty.unplug();
    await stands('away');
    expect(standingSentence(news.at(-1) as LineNews)).toContain('plug it in again');
    await pty.plugIn();
    await until(() => expect(news.at(-1)?.standing).not.toBe('away'));
    // The half frame from before is gone with the line.
    await pty.say('+3.0\r\n');
    await until(() => expect(values()).toEqual([1_000_000, 3_000_000]));
  });

  test('that somebody else has says so, and is taken up when they leave it', async () => {
    const pty = await plugged();
    const first = hearing();
    const second = hearing();
    await first.lines.hear(1, serial(pty.path));
    expect(await second.lines.hear(1, serial(pty.path))).toBe('taken');
    expect(second.news.at(-1)).toMatchObject({ standing: 'taken', samples: [] });
    expect(standingSentence(second.news.at(-1) as LineNews)).toContain('Another program');
    await pty.say('+1.0\r\n');
    await first.until(() => expect(first.values()).toEqual([1_000_000]));
    await first.lines.leave(1);
    await second.stands('open');
    await pty.say('+2.0\r\n');
    await second.until(() => expect(second.values()).toEqual([2_000_000]));
  });

  test('is opened once for two windows, and again when it is set otherwise', async () => {
    const pty = await plugged();
    const { lines, values, until } = hearing();
    await Promise.all([lines.hear(1, serial(pty.path)), lines.hear(1, serial(pty.path))]);
    expect(await lines.hear(1, serial(pty.path))).toBe('open');
    expect(await lines.hear(1, serial(pty.path, { unit: 'in', isReversed: true }))).toBe('open');
    await pty.say('+0.001\r\n');
    await until(() => expect(values()).toEqual([-25_400]));
  });

  test('that says nothing, or nothing that can be read, says so; a reading makes it good', async () => {
    const pty = await plugged();
    const { lines, news, stands } = hearing();
    await lines.hear(1, serial(pty.path));
    await stands('silent');
    await pty.say('\x80\x80\r\n\x81\r\nfull\r\nof noise\r\n');
    await stands('garbled');
    expect(standingSentence(news.at(-1) as LineNews)).toContain('“of noise” is not what a reading');
    await pty.say('+0.5\r\n');
    await stands('open');
    expect(standingSentence(news.at(-1) as LineNews)).toBeNull();
  });

  test('is asked where the gauge wants to be asked', async () => {
    const pty = await plugged();
    const { lines, values, until } = hearing();
    await lines.hear(1, serial(pty.path, { request: '?\\r' }));
    await until(() => expect(pty.heard()).toMatch(/^(\?\r)+$/));
    await pty.say('+0.5\r\n');
    await until(() => expect(values()).toEqual([500_000]));
  });

  test('stays whole and small through ten hours at ten readings a second, said as fast as the line takes them', async () => {
    const pty = await plugged();
    const lines = new LiveLines();
    onTestFinished(() => lines.leaveAll());
    let [heard, largest, last] = [0, 0, null as LineNews | null];
    lines.onNews((news) => {
      heard += news.samples.length;
      largest = Math.max(largest, news.samples.at(-1)?.[1] ?? 0);
      last = news;
    });
    await lines.hear(1, serial(pty.path));
    const readings = 360_000;
    const hour = Array.from({ length: readings / 10 }, (_, index) => `+${(index % 900) / 1000}\r\n`).join('');
    for (let tenth = 0; tenth < 10; tenth += 1) await pty.say(`${hour}nois\x90e\r\n`);
    await vi.waitFor(() => expect(last).toMatchObject({ readings, garbled: 10 }), { timeout: 60_000, interval: 100 });
    expect(heard).toBe(readings);
    expect(largest).toBe(899_000);
  });
});

test('a line that is not there says so, and forgets it when it is left', async () => {
  const { lines, news } = hearing();
  expect(await lines.hear(1, serial('/dev/no-such-gauge'))).toBe('away');
  await lines.leave(1);
  expect(news.at(-1)?.standing).toBe('closed');
});

test('the practice gauge speaks like any other', async () => {
  const { lines, values, until } = hearing();
  await lines.hear(2, { source: 'practice', ...says, every_ms: 20, practice: 'steady' });
  await until(() => expect(values().length).toBeGreaterThan(20));
  expect(new Set(values())).toEqual(new Set([0]));
});

test('a request is typed with names for what cannot be typed', () => {
  const bytes = (text: string) => requestBytes(text);
  expect(bytes('?\\r\\n\\x05\\\\')).toEqual({ ok: true, value: [0x3f, 0x0d, 0x0a, 0x05, 0x5c] });
  expect(bytes('')).toEqual({ ok: true, value: [] });
  for (const wrong of ['\\q', '\\x5', 'é', 'a\\']) expect(bytes(wrong)).toMatchObject({ ok: false });
});
