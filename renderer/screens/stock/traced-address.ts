// What is traced, as it stands in an address: its kind and its number in the book.
import type { Traced } from '../../../app/stock/tracing.contract.ts';
import { labelledAs } from './labelled-address.ts';

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

/** null where the address names nothing that can be traced: whatever has a label can, but a job or a gauge. */
export function tracedAt(kind: string, id: number): Traced | null {
  const labelled = labelledAs(kind, id);
  return labelled?.kind === 'job' || labelled?.kind === 'gauge' ? null : labelled;
}
