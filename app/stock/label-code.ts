// What the code on a label says: a few capitals and digits, for any general-purpose scanner to type.
import type { Labelled } from './lists.contract.ts';

const prefix = 'THOU-';
const letters = { part: 'P', batch: 'B', can: 'C', plate: 'S', job: 'J', gauge: 'G' } as const;

/**
 * What the code of a label says: 'THOU-P12' for part 12, 'THOU-B12' batch, 'THOU-C3' can, 'THOU-S45' plate, 'THOU-J214'
 * job, 'THOU-G3' gauge. Only characters of the QR code's alphanumeric mode (ISO/IEC 18004), so that the code stays small.
 */
export function labelCode(labelled: Labelled): string {
  return `${prefix}${letters[labelled.kind]}${idOf(labelled)}`;
}

function idOf(labelled: Labelled): number {
  switch (labelled.kind) {
    case 'part':
      return labelled.partId;
    case 'batch':
      return labelled.batchId;
    case 'can':
      return labelled.canId;
    case 'plate':
      return labelled.pieceId;
    case 'job':
      return labelled.jobId;
    case 'gauge':
      return labelled.gaugeId;
  }
}

/**
 * What a scanned or typed text points at, in capitals or small letters, blanks around it allowed; null where it is not
 * one of this book's codes.
 */
export function readLabelCode(text: string): Labelled | null {
  const [, letter, digits] = /^THOU-([PBCSJG])([1-9]\d{0,14})$/.exec(text.trim().toUpperCase()) ?? [];
  const id = Number(digits);
  switch (letter) {
    case 'P':
      return { kind: 'part', partId: id };
    case 'B':
      return { kind: 'batch', batchId: id };
    case 'C':
      return { kind: 'can', canId: id };
    case 'S':
      return { kind: 'plate', pieceId: id };
    case 'J':
      return { kind: 'job', jobId: id };
    case 'G':
      return { kind: 'gauge', gaugeId: id };
    default:
      return null;
  }
}
