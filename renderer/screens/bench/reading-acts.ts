// What the hand writes while reading a check: a take begun, a line, a correction, a note at a spot.
import { useQueryClient } from '@tanstack/react-query';
import type { HeardTrace } from '../../../app/indicators/indicators.contract.ts';
import type { NoteKind, Take } from '../../../app/readings/readings.contract.ts';
import { call } from '../../rpc/client.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { useAtCheck } from './at-check.ts';
import type { ReadingPlan } from './reading-plan.ts';
import type { Meaning } from './use-reading-line.ts';

type Line = { readonly typed: string; readonly isZeroedAgain: boolean; readonly meaning: Meaning };

export function useReadingActs() {
  const { job, check, by } = useAtCheck();
  const queryClient = useQueryClient();
  const starting = useWrite('readings.startTake');
  const noting = useWrite('readings.noteAtSpot');
  const of = { jobId: job.jobId, checkId: check.checkId };
  const beginning = ({ phase, mode, method, setup, gaugeId, note }: ReadingPlan) => ({
    ...of,
    phase,
    mode,
    method,
    setup,
    gaugeId,
    note,
    by,
  });
  // The hand must not wait for the next prompt until everything else on the screen was read again.
  const show = (take: Take): Take => {
    queryClient.setQueryData<Take[]>(['readings.listTakes', of], (takes) =>
      takes?.map((each) => (each.takeId === take.takeId ? take : each)),
    );
    void queryClient.invalidateQueries();
    return take;
  };
  return {
    error: starting.error ?? noting.error,
    async start(plan: ReadingPlan): Promise<number> {
      return (await starting.mutateAsync(beginning(plan))).takeId;
    },
    async record(
      line: Line & { readonly takeId: number; readonly spot: number; readonly heard: HeardTrace | null },
    ): Promise<Take> {
      return show((await call('readings.recordReading', { ...line, by })).take);
    },
    async supersede(line: Line & { readonly readingId: number; readonly reason: string }): Promise<Take> {
      return show((await call('readings.supersedeReading', { ...line, by })).take);
    },
    /** From a key: begins the take, then goes on; a failure stands in `error`. */
    startThen(plan: ReadingPlan, goOn: () => void): void {
      if (starting.isPending) return;
      starting.mutate(beginning(plan), { onSuccess: goOn });
    },
    noteThen(takeId: number, spot: number, what: NoteKind, goOn: () => void): void {
      if (noting.isPending) return;
      noting.mutate({ takeId, spot, what, by }, { onSuccess: goOn });
    },
  };
}
