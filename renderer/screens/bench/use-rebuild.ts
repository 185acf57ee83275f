// The ring is on again with other plates under it: the book gets the mock-up, and the hand goes straight to a quick read.
import type { PieceSource } from '../../../app/packs/packs.contract.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { useAtCheck, usePack } from './at-check.ts';
import type { Go } from './bench-step.ts';

type Placed = { readonly slotId: number; readonly from: PieceSource };

export function useRebuild(go: Go) {
  const { job, check, takes, lastSetup, by } = useAtCheck();
  const { packId } = usePack();
  const recording = useWrite('packs.recordMockUp');
  return {
    error: recording.error,
    /** What was refused is being changed. */
    forget: recording.reset,
    record(pieces: readonly Placed[], note: string, afterwards: () => void = () => undefined): void {
      if (recording.isPending) return;
      const setup = takes.at(-1)?.setup ?? lastSetup;
      const gaugeId = takes.at(-1)?.gauge?.gaugeId ?? null;
      recording.mutate(
        { jobId: job.jobId, packId, pieces: [...pieces], note, by },
        {
          onSuccess: () => {
            afterwards();
            if (!setup) return go({ at: 'set up' });
            go({
              at: 'ring',
              plan: { phase: 'mock-up', mode: 'quick', method: check.method, setup, gaugeId, note: '' },
            });
          },
        },
      );
    },
  };
}
