// A planned swap in the trade's words.
import type { SwapOption } from '../../../app/packs/packs.contract.ts';

type Write = (length_nm: number) => string;

/** What changes in a slot: the plate that leaves it, the one that comes, or both. */
export type SlotChange = {
  readonly slotId: number;
  readonly slotName: string;
  readonly out: { readonly height_nm: number; readonly label: string } | null;
  readonly in: { readonly height_nm: number; readonly label: string } | null;
};

/** Slot by slot as they stand in the pack. */
export function slotChanges(option: SwapOption): SlotChange[] {
  const ids = [...new Set([...option.out, ...option.in].map((each) => each.slotId))].sort((a, b) => a - b);
  return ids.map((slotId) => {
    const out = option.out.find((each) => each.slotId === slotId);
    const into = option.in.find((each) => each.slotId === slotId);
    return {
      slotId,
      slotName: out?.slotName ?? into?.slotName ?? '',
      out: out ? { height_nm: out.piece.height_nm, label: out.piece.tag } : null,
      in: into ? { height_nm: into.height_nm, label: into.label } : null,
    };
  });
}

/** "steel 2: 76.5 A32 out, 83.0 A47 in", then what only moves. */
export function swapLines(option: SwapOption, write: Write): string[] {
  const lines = slotChanges(option).map((change) => {
    const parts = [
      change.out && `${write(change.out.height_nm)} ${change.out.label}`.trim().concat(' out'),
      change.in && `${write(change.in.height_nm)} ${change.in.label}`.trim().concat(' in'),
    ];
    return `${change.slotName}: ${parts.filter(Boolean).join(', ')}`;
  });
  return [...lines, ...option.moved.map((move) => move.sentence)];
}

/** "Ring off. Swap steel 2. Ring on." */
export function swapOrder(option: SwapOption): string {
  const names = slotChanges(option).map((change) => change.slotName);
  const plates = names.filter((name) => name !== 'snap ring');
  const ring = names.length > plates.length ? 'The other ring on.' : 'Ring on.';
  return ['Ring off.', plates.length > 0 && `Swap ${listed(plates)}.`, ring].filter(Boolean).join(' ');
}

function listed(names: readonly string[]): string {
  const last = names.at(-1) ?? '';
  return names.length < 2 ? last : `${names.slice(0, -1).join(', ')} and ${last}`;
}
