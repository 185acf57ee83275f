// What builds share, as a part of an address and back.
import type { SharedThing } from '../../../app/comebacks/calls.contract.ts';

export function sharedAddress(of: SharedThing): { kind: SharedThing['kind']; id: string } {
  return { kind: of.kind, id: String(idOf(of)) };
}

function idOf(of: SharedThing): number {
  switch (of.kind) {
    case 'batch':
      return of.batchId;
    case 'plate':
      return of.pieceId;
    case 'gauge':
      return of.gaugeCheckId;
    case 'finding':
      return of.findingId;
  }
}

/** null where the address names nothing that can be shared. */
export function sharedAt(kind: string, id: number): SharedThing | null {
  if (!Number.isInteger(id) || id <= 0) return null;
  switch (kind) {
    case 'batch':
      return { kind, batchId: id };
    case 'plate':
      return { kind, pieceId: id };
    case 'gauge':
      return { kind, gaugeCheckId: id };
    case 'finding':
      return { kind, findingId: id };
  }
  return null;
}
