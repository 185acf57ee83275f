// Packs of a unit made up for the tests of its plan: steels only, read once, with every way to hand plates to two.
import type { Piece, UnitPlan } from '../../app/packs/packs.contract.ts';
import type { PackToPlan } from '../../app/packs/swap-search.ts';
import { startingSettings } from '../../app/shop/starting-settings.ts';

export const thou = 25_400;
export const steel = (pieceId: number, height: number): Piece => ({
  pieceId,
  kind: 'steel',
  outline: 'shared',
  tag: `T${pieceId}`,
  height_nm: height * thou,
  heightFrom: 'measured',
  standardUncertainty_nm: null,
});

/** A pack of steels only, read once as it sits. */
export function packOf(
  packId: number,
  { heights, reads, target, band }: { heights: readonly number[]; reads: number; target: number; band: number },
  loosePieces: readonly Piece[],
): PackToPlan {
  const fitted = heights.map((height, index) => ({
    slotId: packId * 10 + index,
    piece: steel(packId * 10 + index, height),
  }));
  return {
    pack: {
      packId,
      name: `Pack ${packId}`,
      note: '',
      rules: [],
      clutch: null,
      slots: fitted.map(({ slotId }) => ({
        slotId,
        kind: 'steel',
        outline: 'shared',
        nominal_nm: null,
        isAdjuster: true,
        catalogue_nm: [],
        facing: '',
      })),
    },
    bounds: { lower: (target - band) * thou, upper: (target + band) * thou },
    target: target * thou,
    fitted,
    loosePieces,
    cans: [],
    records: [
      { pieces: fitted.map(({ piece }) => piece), read: { mean_nm: reads * thou, standardUncertainty_nm: 0.5 * thou } },
    ],
    settings: startingSettings({ shopName: 'Harrow Lane Transmission', lengthUnit: 'thou', paper: 'letter' }),
  };
}

export const inThou = (length_nm: number) => Math.round((length_nm / thou) * 1000) / 1000;

export function readsOf(plan: UnitPlan, which: 'inOrder' | 'together'): Array<number | null> {
  return plan.packs.map((pack) => {
    const option = pack[which].option;
    return option && inThou(option.predicted_nm);
  });
}

/** Every way to give each of two packs its plates: the slower obvious form. */
export function* handings(heights: readonly number[], first: number, second: number): Generator<[number, number]> {
  const owners = heights.map(() => 0);
  for (let code = 0; code < 3 ** heights.length; code += 1) {
    let rest = code;
    const sums = [0, 0, 0];
    const counts = [0, 0, 0];
    for (let at = 0; at < owners.length; at += 1) {
      const owner = rest % 3;
      rest = Math.floor(rest / 3);
      sums[owner]! += heights[at]!;
      counts[owner]! += 1;
    }
    if (counts[1] === first && counts[2] === second) yield [sums[1]!, sums[2]!];
  }
}
