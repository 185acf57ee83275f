// Tags on a picture: inside it, apart from each other and off the other points wherever there is room.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type MarkedPoint, picturePoints, tickStates } from '../../app/charts/picture-points.ts';
import { boxesOverlap } from '../../app/charts/text-box.ts';
import { verdicts } from '../../app/charts/verdict-mark.ts';

const mark = fc.oneof(
  fc.record({ kind: fc.constant('verdict' as const), verdict: fc.constantFrom(...verdicts) }),
  fc.record({ kind: fc.constant('tick' as const), state: fc.constantFrom(...tickStates) }),
  fc.constant({ kind: 'blank' as const }),
  fc.constant({ kind: 'none' as const }),
);
const point: fc.Arbitrary<MarkedPoint> = fc.record({
  label: fc.constantFrom('A', 'C1', 'ball 12'),
  x_permille: fc.integer({ min: 0, max: 1000 }),
  y_permille: fc.integer({ min: 0, max: 1000 }),
  figure: fc.constantFrom('', '3.0 psi', '12.5 psi'),
  mark,
});

test('tags of up to eight points anywhere lie inside the picture and over no other tag', () => {
  fc.assert(
    fc.property(fc.array(point, { maxLength: 8 }), fc.constantFrom('screen', 'paper'), (points, medium) => {
      const size = medium === 'screen' ? { width: 600, height: 450 } : { width: 360, height: 270 };
      const { tags } = picturePoints(points, { ...size, medium }, '');
      expect(tags).toHaveLength(points.length);
      for (const [index, tag] of tags.entries()) {
        expect(tag.left >= 0 && tag.top >= 0 && tag.right <= size.width && tag.bottom <= size.height).toBe(true);
        expect(tags.slice(index + 1).some((other) => boxesOverlap(tag, other))).toBe(false);
      }
    }),
  );
});

test('every verdict and every tick is told by its shape, not by its colour alone', () => {
  const shapesOf = (each: MarkedPoint['mark']) => {
    const marked = { label: 'A', x_permille: 500, y_permille: 500, figure: '', mark: each };
    const { chart } = picturePoints([marked], { width: 600, height: 450, medium: 'screen' }, '');
    return JSON.stringify(chart.shapes, (key, value) => (key === 'fill' || key === 'stroke' ? undefined : value));
  };
  const told = [
    ...(['in', 'high', 'too close to call', 'not read'] as const).map((verdict) =>
      shapesOf({ kind: 'verdict', verdict }),
    ),
    ...tickStates.map((state) => shapesOf({ kind: 'tick', state })),
  ];
  expect(new Set(told).size).toBe(told.length);
});
