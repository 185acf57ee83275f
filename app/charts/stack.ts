// A pack as a list of heights from the piston to the snap ring, and where each lies in a drawing to scale.

export type PieceKind = 'apply plate' | 'wave plate' | 'steel' | 'friction' | 'backing plate' | 'snap ring';

export type StackPiece = {
  readonly kind: PieceKind;
  readonly label: string;
  readonly height_nm: number;
  /** The mark scribed on the piece, if it has one. */
  readonly tag?: string;
  readonly change?: 'leaves' | 'enters';
};

/**
 * Pieces from the piston up. A last piece of kind *snap ring* is selective: its height counts and it lies above the
 * clearance. Without one the ring is fixed and only its lower face matters.
 */
export type Stack = {
  readonly pieces: readonly StackPiece[];
  /** The gap that is left, drawn to scale; null while it is not known. Less than nothing is drawn as none. */
  readonly clearance_nm: number | null;
};

export function selectiveRing(stack: Stack): StackPiece | null {
  return stack.pieces.find((piece) => piece.kind === 'snap ring') ?? null;
}

/** From the piston's face to the far end of what is drawn to scale: pieces and clearance. */
export function stackHeight_nm(stack: Stack): number {
  return stack.pieces.reduce((sum, piece) => sum + piece.height_nm, 0) + Math.max(0, stack.clearance_nm ?? 0);
}

/** Chart units per nanometre, where the piston's face lies, and how tall a fixed ring is drawn. */
export type StackFrame = { readonly perNanometre: number; readonly floor: number; readonly fixedRing: number };

export type PlacedPiece = { readonly piece: StackPiece; readonly top: number; readonly bottom: number };

export type PlacedStack = {
  /** From the piston up. */
  readonly plates: readonly PlacedPiece[];
  readonly ring: { readonly piece: StackPiece | null; readonly top: number; readonly bottom: number };
  /** Between the last plate and the ring's lower face; null while it is not known. */
  readonly clearance: { readonly top: number; readonly bottom: number; readonly clearance_nm: number } | null;
};

/** Every piece's place, built up from the floor; the chart's y grows downward. */
export function placeStack(stack: Stack, frame: StackFrame): PlacedStack {
  const plates: PlacedPiece[] = [];
  let bottom = frame.floor;
  for (const piece of stack.pieces) {
    if (piece.kind === 'snap ring') continue;
    const top = bottom - piece.height_nm * frame.perNanometre;
    plates.push({ piece, top, bottom });
    bottom = top;
  }
  const { clearance_nm } = stack;
  const face = bottom - Math.max(0, clearance_nm ?? 0) * frame.perNanometre;
  const piece = selectiveRing(stack);
  const ringHeight = piece === null ? frame.fixedRing : piece.height_nm * frame.perNanometre;
  return {
    plates,
    ring: { piece, top: face - ringHeight, bottom: face },
    clearance: clearance_nm === null ? null : { top: face, bottom, clearance_nm },
  };
}
