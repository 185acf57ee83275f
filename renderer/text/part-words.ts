// Batches, movements and counts of parts, in words.
import type { Batch, Movement } from '../../app/stock/parts.contract.ts';
import { sayDay } from './say-date.ts';

/** A business day as the shop says it: the same day wherever this machine stands. */
export function sayBusinessDay(day: string): string {
  return sayDay(`${day}T12:00`);
}

/** What tells a batch from others: its mark, or where parts come unmarked the kit or the document they came with. */
export function batchWords(batch: Pick<Batch, 'mark' | 'document'> & { readonly kit?: Batch['kit'] }): string {
  if (batch.mark !== '') return batch.mark;
  if (!batch.kit) return batch.document;
  const { partNumber, mark, document, receivedOn } = batch.kit;
  return [`kit ${partNumber}`, mark || document, sayBusinessDay(receivedOn)].filter((each) => each !== '').join(', ');
}

/** What moved, without the ticket it moved for. */
export function movementWords({ kind, change, reason, job }: Movement): string {
  switch (kind) {
    case 'receive':
      return reason === '' ? 'received' : reason;
    case 'pull':
      return 'pulled for';
    case 'return':
      return job ? 'back from' : 'came back';
    case 'scrap':
      return `scrapped: ${reason}`;
    case 'count':
      return `counted: ${reason}`;
    case 'open':
      return 'taken apart';
    case 'sort':
      return change < 0 ? 'measured, one by one' : 'back from the measured ones';
  }
}

/** "+12", "−1". */
export function changeWords(change: number): string {
  return change > 0 ? `+${change}` : `−${-change}`;
}

/** The whole number from 1 up that was typed, or null. */
export function countTyped(typed: string): number | null {
  return /^[1-9]\d{0,5}$/.test(typed.trim()) ? Number(typed) : null;
}

export const countRefusal = 'Type a whole number from 1 up.';
