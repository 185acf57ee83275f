// Which batch of a part is open on the bench: the next one is opened when the last is used up.
import { dayAfter } from '../../../../app/jobs/calendar-days.ts';
import type { PlantedBatch } from './planted-ticket.ts';

export class BatchesInUse {
  readonly #open = new Map<string, { batch: PlantedBatch; left: number }>();
  #opened = 0;

  /** Takes `quantity` on `day` out of the open batch, or opens one of `size` that came in a week before. */
  take(
    part: PlantedBatch['part'],
    { quantity, size, day }: { quantity: number; size: number; day: string },
  ): { batch: PlantedBatch; isNew: boolean } {
    const open = this.#open.get(part.number);
    if (open && open.left >= quantity) {
      open.left -= quantity;
      return { batch: open.batch, isNew: false };
    }
    this.#opened += 1;
    const mark = `${part.kind === 'fluid' ? 'L' : 'FB'}-${day.slice(2, 4)}${String(this.#opened).padStart(3, '0')}`;
    const batch = { part, mark, receivedOn: dayAfter(day, -7), received: size };
    this.#open.set(part.number, { batch, left: size - quantity });
    return { batch, isNew: true };
  }
}
