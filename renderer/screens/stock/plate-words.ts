// What is known of plates, in a few words each.
import type { AmountWords } from '../../../app/charts/amounts.ts';
import type { LengthUnit } from '../../../app/quantities/units.ts';
import type { OutlineLine, Plate, PlateInFull } from '../../../app/stock/plates.contract.ts';

/** The word beside the square: "free", "in 214", "again", "dished". */
export function stateWords({ state, where, why }: Pick<Plate, 'state' | 'where' | 'why'>): string {
  // To be read again; two words do not fit beside the square in a narrow column.
  if (state === 'read again') return 'again';
  if (state === 'in a unit') return where === null ? 'in a unit' : `in ${where.jobNumber}`;
  // The first of what is wrong is enough beside the square; the plate itself says it all.
  return state === 'do not use' && why !== '' ? why.replace(/,.*| by .*/, '') : state;
}

/** "A47", or "no tag". */
export function tagWords(tag: string): string {
  return tag === '' ? 'no tag' : tag;
}

/** "steels", "steels and wave plates". */
export function kindsWords(kinds: OutlineLine['kinds']): string {
  return kinds.length === 0 ? 'plates' : kinds.map((kind) => `${kind}s`).join(' and ');
}

/** "Forward of KX3, Overdrive of RV2". */
export function packsWords(packs: OutlineLine['packs']): string {
  return packs.map(({ packName, familyName }) => `${packName} of ${familyName}`).join(', ');
}

/** "not flat by 3.0, hot spots: do not use". */
export function lookWords(look: PlateInFull['looks'][number], words: AmountWords): string {
  const offFlat = look.offFlat_nm === null ? '' : ` by ${words.full(look.offFlat_nm)}`;
  const seen = [
    look.flat === 'not tried' ? '' : look.flat + (look.flat === 'not flat' ? offFlat : ''),
    look.hasHotSpots ? 'hot spots' : '',
    look.isGlazed ? 'glazed' : '',
    look.isConed ? 'coned' : '',
    look.note,
  ].filter((each) => each !== '');
  const verdict = look.isUsable ? 'usable' : 'do not use';
  return seen.length === 0 ? verdict : `${seen.join(', ')}: ${verdict}`;
}

// The narrowest class shops keep cans in; the picture of an outline has its columns as wide.
const classes_nm: Record<LengthUnit, readonly number[]> = {
  thou: [12_700, 25_400, 50_800],
  mm: [10_000, 20_000, 50_000],
};

export function canClasses(unit: LengthUnit): readonly number[] {
  return classes_nm[unit];
}

export function narrowestClass(unit: LengthUnit): number {
  return classes_nm[unit][0] ?? 10_000;
}
