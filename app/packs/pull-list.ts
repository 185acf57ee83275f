// The plates of a plan as one walks to the bins for them.
import type { SwapOption, UnitPlan } from './packs.contract.ts';

export type PulledPlate = {
  /** Where it lies: "Cans", "Loose plates", "Out of another pack", "To buy". */
  readonly place: string;
  /** Its tag, its can, or "catalogue". */
  readonly label: string;
  readonly height_nm: number;
  readonly packName: string;
  readonly slotName: string;
};

/** What to fetch, one place after the other and thin before thick, and what comes out in the order of the packs. */
export function pullList(
  plan: UnitPlan | null,
  way: 'inOrder' | 'together',
): { readonly into: readonly PulledPlate[]; readonly out: readonly PulledPlate[] } {
  const packs = (plan?.packs ?? []).flatMap(({ name, ...pack }) => {
    const { option } = pack[way];
    return option ? [{ name, option }] : [];
  });
  const fitted = new Set(packs.flatMap(({ option }) => option.out.map(({ piece }) => piece.pieceId)));
  const into = packs.flatMap(({ name, option }) =>
    option.in.map(({ from, label, height_nm, slotName }) => ({
      place: placeOf(from, fitted),
      label,
      height_nm,
      slotName,
      packName: name,
    })),
  );
  const out = packs.flatMap(({ name, option }) =>
    option.out.map(({ piece, slotName }) => ({
      place: name,
      label: piece.tag,
      height_nm: piece.height_nm,
      slotName,
      packName: name,
    })),
  );
  return {
    into: into.toSorted(
      (one, other) =>
        places.indexOf(one.place) - places.indexOf(other.place) ||
        one.height_nm - other.height_nm ||
        one.label.localeCompare(other.label, 'en'),
    ),
    out,
  };
}

const places = ['Loose plates', 'Cans', 'Out of another pack', 'To buy'];

function placeOf(from: SwapOption['in'][number]['from'], fitted: ReadonlySet<number>): string {
  if ('canId' in from) return 'Cans';
  if ('pieceId' in from) return fitted.has(from.pieceId) ? 'Out of another pack' : 'Loose plates';
  return 'To buy';
}
