// What the hand writes while reading a check: a take begun, a line, a correction, a note at a spot.
import { useQueryClient } from '@tanstack/react-query';
import type { HeardTrace } from '../../../app/indicators/indicators.contract.ts';
import type { NoteKind, Take } from '../../../app/readings/readings.contract.ts';
import { call } from '../../rpc/client.ts';
import { beforeReadingAgain } from '../../rpc/query-client.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { useAtCheck } from './at-check.ts';
import type { ReadingPlan } from './reading-plan.ts';
import type { Meaning } from './use-reading-line.ts';

type Line = {
  readonly typed: string;
  readonly isZeroedAgain: boolean;
  readonly meaning: Meaning;
  readonly heard: HeardTrace | null;
};

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
  const queryKey = ['readings.listTakes', of];
  // The next prompt comes from the write's own answer; everything else on the screen is read again behind it.
  const show = (write: () => Promise<{ readonly take: Take }>): Promise<Take> =>
    beforeReadingAgain(queryClient, async () => {
      // What was asked before this line came would take it off the screen again.
      void queryClient.cancelQueries({ queryKey });
      const { take } = await write();
      queryClient.setQueryData<Take[]>(queryKey, (takes) => takes && withTake(takes, take));
      return take;
    });
  return {
    error: starting.error ?? noting.error,
    /** A line of a take, or the first line of a plan, which begins it. */
    record(of: { readonly takeId: number } | ReadingPlan, line: Line & { readonly spot: number }): Promise<Take> {
      return show(async () => {
        const { takeId } = 'takeId' in of ? of : await call('readings.startTake', beginning(of));
        return call('readings.recordReading', { ...line, takeId, by });
      });
    },
    supersede(line: Line & { readonly readingId: number; readonly reason: string }): Promise<Take> {
      return show(() => call('readings.supersedeReading', { ...line, by }));
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

function withTake(takes: readonly Take[], take: Take): Take[] {
  const isKnown = takes.some(({ takeId }) => takeId === take.takeId);
  return isKnown ? takes.map((each) => (each.takeId === take.takeId ? take : each)) : [...takes, take];
}
