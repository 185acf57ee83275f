// Seeded instances of several packs that share plates, from comfortable bins to awkward ones.
import type { JointRequest } from '../../app/selection/joint-request.ts';
import { seeded } from './seeded.ts';

const platesPerPack = 6;

/** Tenths of a thou. A bin is a list of single plates; what a pack wants is near the middle of its bin. */
export const bins = {
  '200 plates': (draw) => many(200, () => draw.whole(650, 900)),
  '60 plates': (draw) => many(60, () => draw.whole(650, 900)),
  'exactly enough': (draw, packs) => many(packs * platesPerPack, () => draw.whole(650, 900)),
  'cans by class ± 0.2': (draw, packs) =>
    many(Math.ceil(packs * platesPerPack * 1.3), () => 700 + 40 * draw.whole(0, 4) + draw.whole(-2, 2)),
  'four heights only': (draw, packs) => many(Math.ceil(packs * platesPerPack * 1.3), () => 700 + 37 * draw.whole(0, 3)),
  'sevens and a few odd': (draw, packs) =>
    many(
      Math.ceil(packs * platesPerPack * 1.5),
      (place) => 700 + 7 * draw.whole(0, 20) + (place < 3 ? draw.whole(1, 6) : 0),
    ),
} satisfies Record<string, (draw: ReturnType<typeof seeded>, packs: number) => number[]>;

export type BinKind = keyof typeof bins;
export const binKinds = Object.keys(bins) as BinKind[];

export function jointInstance(kind: BinKind, packs: number, seed: number): JointRequest {
  const draw = seeded(seed);
  const bin = bins[kind](draw, packs);
  const counts = new Map<number, number>();
  for (const height of bin) counts.set(height, (counts.get(height) ?? 0) + 1);
  const mean = bin.reduce((sum, height) => sum + height, 0) / bin.length;
  return {
    thicknesses: [...counts.keys()],
    stock: [...counts.values()],
    packs: many(packs, () => {
      const target = draw.whole(200, 500);
      const space = Math.round(platesPerPack * mean) + draw.whole(-120, 120) + target;
      return { space, plates: platesPerPack, target, lower: target - 100, upper: target + 100 };
    }),
    objective: 'sum',
  };
}

function many<T>(count: number, make: (place: number) => T): T[] {
  return Array.from({ length: count }, (_, place) => make(place));
}
