// Bytes of a gauge's line to readings, in every way they can be split and spoilt.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cutFrames, longestFrame_bytes, nothingPending } from '../../app/indicators/frames.ts';
import { freshReader, readBytes } from '../../app/indicators/read-line.ts';
import { findNumber, lengthOf, parsePattern } from '../../app/indicators/reading-pattern.ts';

function pattern(text: string) {
  const parsed = parsePattern(text);
  if (!parsed.ok) throw new Error(parsed.refusal.message);
  return parsed.value;
}

const lengthIn = (text: string, frame: string, unit: 'mm' | 'in' = 'mm') => {
  const found = findNumber(pattern(text), frame);
  return found && lengthOf(found, unit);
};

/** Any bytes, with ends of frames among them. */
const bytes = fc.array(fc.oneof(fc.nat(255), fc.constantFrom(0x0a, 0x0d, 0x03, 0x02, 0x2b, 0x31, 0x2e)), {
  maxLength: 300,
});

describe('frames', () => {
  test('come out the same however the bytes are split', () => {
    fc.assert(
      fc.property(bytes, fc.array(fc.nat(300), { maxLength: 8 }), (all, cuts) => {
        const whole = cutFrames(nothingPending, all);
        const frames: string[] = [];
        let [pending, spoilt, from] = [nothingPending, 0, 0];
        for (const cut of [...cuts.toSorted((a, b) => a - b), all.length]) {
          const part = cutFrames(pending, all.slice(from, Math.max(from, cut)));
          frames.push(...part.frames);
          pending = part.pending;
          spoilt += part.spoilt;
          from = Math.max(from, cut);
        }
        expect({ frames, pending, spoilt }).toEqual(whole);
      }),
    );
  });

  test('agree with splitting the whole text, where nothing is spoilt', () => {
    const line = fc.stringMatching(/^[ -~]{0,64}$/);
    fc.assert(
      fc.property(fc.array(line, { maxLength: 8 }), fc.constantFrom('\r\n', '\r', '\n', '\x03'), (lines, end) => {
        const sent = Buffer.from(lines.map((each) => each + end).join(''), 'latin1');
        const { frames, spoilt } = cutFrames(nothingPending, sent);
        expect(frames).toEqual(lines.map((each) => each.trim()).filter((each) => each !== ''));
        expect(spoilt).toBe(0);
      }),
    );
  });

  test('with a noise byte, or too long, are counted and not read', () => {
    const spoilt = (text: string) => cutFrames(nothingPending, Buffer.from(text, 'latin1'));
    expect(spoilt('+0.1\xff2\r\n+0.2\r\n')).toMatchObject({ frames: ['+0.2'], spoilt: 1 });
    expect(spoilt(`${'1'.repeat(longestFrame_bytes + 1)}\r\n+0.2\r\n`)).toMatchObject({ frames: ['+0.2'], spoilt: 1 });
    expect(spoilt(`${'1'.repeat(longestFrame_bytes)}\n`).frames).toEqual(['1'.repeat(longestFrame_bytes)]);
    expect(spoilt('+0.\x02+0.300\x03')).toMatchObject({ frames: ['+0.300'], spoilt: 1 });
  });

  test('never hold more than a frame may, whatever comes', () => {
    fc.assert(
      fc.property(bytes, (all) => {
        expect(cutFrames(nothingPending, all).pending.text.length).toBeLessThanOrEqual(longestFrame_bytes);
      }),
    );
  });
});

describe('what a reading looks like', () => {
  // By hand: 1 in = 25 400 000 nm, 1 mm = 1 000 000 nm.
  test.each([
    ['{number}', '+00.584', 'mm', 584_000],
    ['{number}', '-0.0235', 'in', -596_900],
    ['{number}', '- 1,250', 'mm', -1_250_000],
    ['01A{number}', '01A+000.010', 'mm', 10_000],
    ['{digits}A{number}', '17A-00.1', 'mm', -100_000],
    ['{number} {unit}', '0.5 in', 'mm', 12_700_000],
    ['{number} {unit}', '0.5mm', 'in', 500_000],
    ['{number}{unit}', '.5"', 'mm', 12_700_000],
    ['{letters} = {number} {any}', 'H = 1.5 mm OK', 'mm', 1_500_000],
  ] as const)('%s finds the number in %s', (text, frame, unit, length) => {
    expect(lengthIn(text, frame, unit)).toBe(length);
  });

  test.each([
    ['{number}', '01A+00.5'],
    ['{number}', 'Err'],
    ['{number} {unit}', '0.5 kg'],
    ['A{number}', '+0.5'],
    // Finer than a nanometre, longer than a metre.
    ['{number}', '0.0000001'],
    ['{number}', '1001'],
  ])('%s reads nothing in %s', (text, frame) => {
    expect(lengthIn(text, frame)).toBeNull();
  });

  test('a pattern that cannot be meant is refused in a sentence', () => {
    for (const text of [
      '',
      'A',
      '{number}{number}',
      '{number}{unit}{unit}',
      '{reading}',
      '{number',
      '{any} '.repeat(30),
    ]) {
      expect(parsePattern(text)).toMatchObject({ ok: false, refusal: { message: expect.stringMatching(/\.$/) } });
    }
  });

  test('a length is read back exactly as it was shown', () => {
    fc.assert(
      fc.property(fc.integer({ min: -999_999_999, max: 999_999_999 }), (length_nm) => {
        const digits = String(Math.abs(length_nm)).padStart(7, '0');
        const frame = `${length_nm < 0 ? '-' : '+'}${digits.slice(0, -6)}.${digits.slice(-6)}`;
        expect(lengthIn('{number}', frame)).toBe(length_nm);
      }),
    );
  });

  test('no pattern makes a frame cost more than each piece tried at each place', () => {
    const costly = pattern('{any}{letters}{any}{letters}{any}{letters}{any}{letters}{any}{letters}{any}{number}!');
    const frame = 'a'.repeat(longestFrame_bytes);
    // 2^64 ways by trying them all; the test would not come back.
    expect(findNumber(costly, frame)).toBeNull();
    fc.assert(
      fc.property(fc.stringMatching(/^[ -~]{0,64}$/), (any) => {
        expect(findNumber(costly, any)).toBeNull();
      }),
    );
  });
});

test('a line says what it read and what it could not, and turns round a gauge that counts down', () => {
  const words = { pattern: pattern('{number}'), unit: 'mm', isReversed: true } as const;
  const read = readBytes(freshReader, Buffer.from('+0.1\r\nnoise\r\n-0.2\r\n0.0\r\n+0.', 'latin1'), 40, words);
  expect(read.samples).toEqual([
    { at_ms: 40, value_nm: -100_000 },
    { at_ms: 40, value_nm: 200_000 },
    { at_ms: 40, value_nm: 0 },
  ]);
  expect(read.reader).toMatchObject({ readings: 3, garbled: 1, lastFrame: '0.0' });
  expect(readBytes(read.reader, Buffer.from('3\r'), 90, words).samples).toEqual([{ at_ms: 90, value_nm: -300_000 }]);
});
