// The last act on a shelf and how it is taken back when it was a slip: by one more line in the ledger.
import { useState } from 'react';
import type { Part } from '../../../app/stock/parts.contract.ts';
import { useAtBench } from '../../frame/at-bench.ts';
import { useWrite } from '../../rpc/use-write.ts';

export type ShelfAct = {
  /** "3 of FB-2231 scrapped." */
  readonly words: string;
  readonly batchId: number;
  /** What has to be added to the batch to be where one was. */
  readonly back: number;
  /** The ticket it went to. */
  readonly jobId?: number;
};

export function useTakeBack(part: Part) {
  const [last, setLast] = useState<ShelfAct | null>(null);
  const { person } = useAtBench();
  const count = useWrite('stock.countBatch');
  const giveBack = useWrite('stock.returnFromJob');
  const by = person.personId;
  const takeBack = () => {
    if (!last) return;
    const { batchId, back, jobId } = last;
    const done = { onSuccess: () => setLast(null) };
    if (jobId !== undefined) {
      giveBack.mutate({ jobId, batchId, partId: null, quantity: back, by }, done);
      return;
    }
    const onHand = part.batches.find((batch) => batch.batchId === batchId)?.onHand ?? 0;
    count.mutate({ batchId, counted: onHand + back, reason: 'taken back, a slip', by }, done);
  };
  return {
    last,
    /** null: done, and nothing to take back. */
    did: (act: ShelfAct | null) => setLast(act),
    takeBack,
    error: count.error ?? giveBack.error,
  };
}
