// The plates of a plan as one walks to the bins for them.
import type { SwapOption } from '../../../app/packs/packs.contract.ts';

export type PulledPlate = {
  /** Its tag, its can, or "catalogue". */
  readonly label: string;
  readonly height_nm: number;
  readonly packName: string;
  readonly slotName: string;
};

/** What to fetch, one place after the other and thin before thick, and what comes out in the order of the packs. */
export function pullList(packs: ReadonlyArray<{ readonly name: string; readonly option: SwapOption }>): {
  into: PulledPlate[];
  out: PulledPlate[];
} {
  const into = packs.flatMap(({ name, option }) =>
    option.in.map(({ label, height_nm, slotName }) => ({ label, height_nm, slotName, packName: name })),
  );
  const out = packs.flatMap(({ name, option }) =>
    option.out.map(({ piece, slotName }) => ({
      label: piece.tag,
      height_nm: piece.height_nm,
      slotName,
      packName: name,
    })),
  );
  return {
    into: into.toSorted((one, other) => one.label.localeCompare(other.label, 'en') || one.height_nm - other.height_nm),
    out,
  };
}
