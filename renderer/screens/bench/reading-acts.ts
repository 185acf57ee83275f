// What the hand writes while reading a check: a take begun, a line, a correction, a note at a spot.
import type { NoteKind, Take } from '../../../app/readings/readings.contract.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { useAtCheck } from './at-check.ts';
import type { ReadingPlan } from './reading-plan.ts';
import type { Meaning } from './use-reading-line.ts';

export type LineToWrite = {
  readonly takeId: number;
  readonly spot: number;
  readonly typed: string;
  readonly isZeroedAgain: boolean;
  readonly meaning: Meaning;
};

export function useReadingActs() {
  const { job, check, by } = useAtCheck();
  const starting = useWrite('readings.startTake');
  const recording = useWrite('readings.recordReading');
  const superseding = useWrite('readings.supersedeReading');
  const noting = useWrite('readings.noteAtSpot');
  const beginning = ({ phase, mode, method, setup, note }: ReadingPlan) => ({
    jobId: job.jobId,
    checkId: check.checkId,
    phase,
    mode,
    method,
    setup,
    note,
    by,
  });
  return {
    error: starting.error ?? noting.error,
    async start(plan: ReadingPlan): Promise<number> {
      return (await starting.mutateAsync(beginning(plan))).takeId;
    },
    async record(line: LineToWrite): Promise<Take> {
      return (await recording.mutateAsync({ ...line, by })).take;
    },
    async supersede(line: Omit<LineToWrite, 'takeId' | 'spot'> & { readingId: number; reason: string }): Promise<Take> {
      return (await superseding.mutateAsync({ ...line, by })).take;
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
