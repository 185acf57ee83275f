// What is traced, as it stands in an address: its kind and its number in the book.
import type { Traced } from '../../../app/stock/tracing.contract.ts';

export function addressOf(of: Traced): { readonly kind: Traced['kind']; readonly id: string } {
  switch (of.kind) {
    case 'part':
      return { kind: of.kind, id: String(of.partId) };
    case 'batch':
      return { kind: of.kind, id: String(of.batchId) };
    case 'can':
      return { kind: of.kind, id: String(of.canId) };
    case 'plate':
      return { kind: of.kind, id: String(of.pieceId) };
  }
}

/** null where the address names nothing that can be traced. */
export function tracedAt(kind: string, id: number): Traced | null {
  if (!Number.isSafeInteger(id) || id <= 0) return null;
  switch (kind) {
    case 'part':
      return { kind, partId: id };
    case 'batch':
      return { kind, batchId: id };
    case 'can':
      return { kind, canId: id };
    case 'plate':
      return { kind, pieceId: id };
    default:
      return null;
  }
}
