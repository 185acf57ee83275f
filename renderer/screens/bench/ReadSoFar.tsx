// What the lines of a take come to while it is still being read: the figure, the lines, the band.
import { useAtCheck } from './at-check.ts';
import { ReadingBand } from './ReadingBand.tsx';
import styles from './ReadSoFar.module.css';
import { ReadsTable, type ReadsTableProps } from './ReadsTable.tsx';
import { RunningReading } from './RunningReading.tsx';
import { expectedOf } from './reading-plan.ts';

export function ReadSoFar({ take, typing }: Required<ReadsTableProps>) {
  const expected = expectedOf(take, useAtCheck());
  return (
    <>
      <div className={styles.so}>
        <RunningReading evaluation={take.evaluation} expected={expected?.mean_nm ?? null} tells="range" />
        <ReadsTable take={take} typing={typing} />
      </div>
      <ReadingBand
        take={take}
        expected={expected && { value: expected.mean_nm, expanded: expected.expanded_nm, label: 'expected' }}
      />
    </>
  );
}
