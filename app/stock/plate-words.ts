// What was seen on a plate, and why it is not free, in few words.
import { formatLength } from '../quantities/format-amount.ts';
import type { LengthWords } from './plate-heights.ts';
import type { Flatness } from './plates.contract.ts';

export type Look = {
  readonly flat: Flatness;
  readonly offFlat_nm: number | null;
  readonly hasHotSpots: boolean;
  readonly isGlazed: boolean;
  readonly isConed: boolean;
  readonly note: string;
};

/** What is wrong with a plate: "not flat by 4.0 thou, hot spots, coned"; empty where nothing was seen. */
export function faultsOf(look: Look, { lengthUnit, decimalMark }: LengthWords): string {
  const by =
    look.offFlat_nm === null
      ? ''
      : ` by ${formatLength(look.offFlat_nm, lengthUnit, undefined, decimalMark)} ${lengthUnit}`;
  return [
    look.flat === 'not flat' ? `not flat${by}` : '',
    look.hasHotSpots ? 'hot spots' : '',
    look.isGlazed ? 'glazed' : '',
    look.isConed ? 'coned' : '',
    look.note,
  ]
    .filter(Boolean)
    .join(', ');
}

/** A plate in a sentence: its tag and height, or its height alone. */
export function plateName(plate: { tag: string; height_nm: number }, { lengthUnit, decimalMark }: LengthWords): string {
  const height = `${formatLength(plate.height_nm, lengthUnit, undefined, decimalMark)} ${lengthUnit}`;
  return plate.tag === '' ? `The plate of ${height}` : `${plate.tag} (${height})`;
}
