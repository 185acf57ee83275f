// What is kept of a trace: no extreme is lost, and it comes back as it was put in.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mostKeptSamples, packTrace, thinTrace, unpackTrace } from '../../app/indicators/kept-trace.ts';
import type { Sample } from '../../app/indicators/read-line.ts';

const trace = fc
  .array(fc.tuple(fc.integer({ min: 0, max: 200 }), fc.integer({ min: -3_000_000, max: 3_000_000 })), {
    maxLength: 900,
  })
  .map((steps) => {
    let at_ms = 0;
    return steps.map(([later, value_nm]): Sample => {
      at_ms += later;
      return { at_ms, value_nm };
    });
  });

test('a thinned trace keeps both ends, the highest and the lowest, each at its time, and nothing it was not given', () => {
  fc.assert(
    fc.property(trace, (samples) => {
      const kept = thinTrace(samples);
      expect(kept.length).toBeLessThanOrEqual(Math.max(mostKeptSamples, 0));
      expect(kept.every((each) => samples.includes(each))).toBe(true);
      expect(kept).toEqual(kept.toSorted((a, b) => a.at_ms - b.at_ms));
      if (samples.length === 0) return;
      const highest = Math.max(...samples.map((each) => each.value_nm));
      const lowest = Math.min(...samples.map((each) => each.value_nm));
      const values = kept.map((each) => each.value_nm);
      expect(values).toContain(highest);
      expect(values).toContain(lowest);
      expect([kept[0], kept.at(-1)]).toEqual([samples[0], samples.at(-1)]);
    }),
  );
});

test('a packed trace unpacks to the same, in few bytes', () => {
  fc.assert(
    fc.property(trace, (samples) => {
      expect(unpackTrace(packTrace(samples))).toEqual(samples);
    }),
  );
  const still = Array.from({ length: 240 }, (_, index): Sample => ({ at_ms: index * 50, value_nm: 0 }));
  expect(packTrace(still).length).toBeLessThan(500);
});
