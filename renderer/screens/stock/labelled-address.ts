// What labels are to be printed of, as it stands in an address: "batch:12", or several with commas between.
import type { Labelled } from '../../../app/stock/lists.contract.ts';

/** What the text names, in its order; what cannot be read in it is left out. */
export function labelledAt(text: string): Labelled[] {
  return text.split(',').flatMap((each) => {
    const [, kind, digits] = /^(\w+):([1-9]\d{0,14})$/.exec(each) ?? [];
    const labelled = labelledAs(kind, Number(digits));
    return labelled === null ? [] : [labelled];
  });
}

/** null where kind and number name nothing that can have a label. */
export function labelledAs(kind: string | undefined, id: number): Labelled | null {
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
    case 'job':
      return { kind, jobId: id };
    case 'gauge':
      return { kind, gaugeId: id };
    default:
      return null;
  }
}
