// An offer written as a line: the one parser of typed lines must read back what the gauge showed, to the nanometre.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { typedOffer } from '../../app/indicators/typed-offer.ts';
import { type LineField, parseLine } from '../../app/readings/typed-line.ts';

const field = (decimalMark: '.' | ',', more: Partial<LineField> = {}): LineField => ({
  method: 'air',
  quantity: 'length',
  unit: 'thou',
  decimalMark,
  dialFaceCounts: 100,
  isZeroedAgain: false,
  meaning: null,
  ...more,
});

// Whole steps of a millimetre gauge (1 µm) and of an inch gauge (0.0001 in = 2540 nm), up to 5 mm and 0.2 in.
const gauges = fc.constantFrom({ unit: 'mm', step_nm: 1000 } as const, { unit: 'in', step_nm: 2540 } as const);
const counts = fc.integer({ min: 1, max: 2000 });
const mark = fc.constantFrom('.', ',') as fc.Arbitrary<'.' | ','>;

test('push and air come back as they were shown, however long the push is', () => {
  fc.assert(
    fc.property(gauges, counts, counts, mark, ({ unit, step_nm }, push, air, decimalMark) => {
      const offer = { kind: 'push and air', push_nm: push * step_nm, air_nm: air * step_nm } as const;
      expect(parseLine(typedOffer(offer, unit, decimalMark), field(decimalMark))).toMatchObject({
        ok: true,
        value: { push: push * step_nm, air: air * step_nm, waver: 0 },
      });
    }),
  );
});

test('so do the whole, a travel and a size', () => {
  fc.assert(
    fc.property(gauges, counts, mark, ({ unit, step_nm }, count, decimalMark) => {
      const length = count * step_nm;
      const whole = typedOffer({ kind: 'whole', air_nm: length }, unit, decimalMark);
      const said = field(decimalMark, { isZeroedAgain: true, meaning: 'total' });
      expect(parseLine(whole, said)).toMatchObject({ ok: true, value: { air: length, push: null } });
      for (const [kind, method] of [
        ['travel', 'dial'],
        ['size', 'direct'],
      ] as const) {
        const typed = typedOffer({ kind, amount_nm: length }, unit, decimalMark);
        expect(parseLine(typed, field(decimalMark, { method }))).toMatchObject({ ok: true, value: { amount: length } });
      }
    }),
  );
});

test('reads as a person would have typed it', () => {
  expect(typedOffer({ kind: 'push and air', push_nm: 101_600, air_nm: 584_000 }, 'mm', '.')).toBe('-0.1016 0.584 mm');
  expect(typedOffer({ kind: 'whole', air_nm: 685_800 }, 'in', ',')).toBe('0,0270 in');
});
