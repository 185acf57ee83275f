// Pulling parts for a ticket and giving them back, and what was done last so that a slip can be taken back.
import { useState } from 'react';
import { useAtBench } from '../../frame/at-bench.ts';
import { useWrite } from '../../rpc/use-write.ts';

export type LastAct = {
  /** "2 KX3-BU-01 pulled." */
  readonly words: string;
  /** Null where it cannot be taken back by one act. */
  readonly takeBack: (() => void) | null;
};

export type PartToPull = { readonly partId: number; readonly batchId: number | null; readonly number: string };

export type PartToReturn = {
  readonly batchId: number;
  readonly number: string;
  readonly quantity: number;
  /** The whole line, or one part of a kit. */
  readonly of: { readonly whole: number } | { readonly partOfKit: number };
};

export type PartsOfJobActs = ReturnType<typeof usePartsOfJob>;

export function usePartsOfJob(jobId: number) {
  const [last, setLast] = useState<LastAct | null>(null);
  const { person } = useAtBench();
  const by = person.personId;
  const pullWrite = useWrite('stock.pullForJob');
  const returnWrite = useWrite('stock.returnFromJob');

  const pull = (part: PartToPull, quantity: number, isSure: boolean, onDone: () => void) => {
    const { partId, batchId, number } = part;
    returnWrite.reset();
    pullWrite.mutate(
      { jobId, partId, batchId, quantity, isSure, by },
      {
        onSuccess: ({ pulled }) => {
          const giveBack = async () => {
            for (const each of pulled) await returnWrite.mutateAsync({ jobId, ...each, partId: null, by });
            setLast(null);
          };
          // What goes wrong on the way back is the write's own error.
          setLast({ words: `${quantity} ${number} pulled.`, takeBack: () => void giveBack().catch(() => {}) });
          onDone();
        },
      },
    );
  };

  const giveBack = ({ batchId, number, quantity, of }: PartToReturn, onDone: () => void) => {
    pullWrite.reset();
    const partId = 'partOfKit' in of ? of.partOfKit : null;
    returnWrite.mutate(
      { jobId, batchId, partId, quantity, by },
      {
        onSuccess: () => {
          const words = `${quantity} ${number} back on the shelf.`;
          const again = 'whole' in of ? { partId: of.whole, batchId, number } : null;
          setLast({ words, takeBack: again && (() => pull(again, quantity, true, () => setLast(null))) });
          onDone();
        },
      },
    );
  };

  return {
    last,
    pull,
    giveBack,
    isPulling: pullWrite.isPending,
    pullError: pullWrite.error,
    /** What was typed is another part now. */
    forgetPull: pullWrite.reset,
    returnError: returnWrite.error,
  };
}
