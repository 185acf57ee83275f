// The bench round every step: the unit and the other open ones above, the prompt, the work, the drawing, the keys.
import type { ReactNode } from 'react';
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import { type BenchKey, KeyBar } from '../../components/KeyBar.tsx';
import { UnitTabs } from '../../components/UnitTabs.tsx';
import styles from './BenchPage.module.css';
import { byNumber, useOpenUnits, useTurnToUnit } from './bench-place.ts';
import { usePedal } from './use-pedal.ts';
import { useTypeAnywhere } from './use-type-anywhere.ts';

/** Beyond these the way to another unit goes behind More, and tabs stand round the unit in hand. */
const mostInRow = 4;
const mostTabs = 6;

type BenchPageProps = {
  job: Job;
  title: string;
  /** After the unit, on its line: the check, the phase, how it stands. */
  facts?: ReactNode;
  /** What the hand does next, its heading first. */
  prompt: ReactNode;
  /** Beside prompt and work, from top to bottom. */
  aside?: ReactNode;
  keys: readonly BenchKey[];
  children?: ReactNode;
};

export function BenchPage({ job, title, facts, prompt, aside, keys, children }: BenchPageProps) {
  const units = byNumber(useOpenUnits().data ?? []);
  const turnTo = useTurnToUnit();
  useTypeAnywhere();
  usePedal(keys);
  const here = units.findIndex((unit) => unit.jobId === job.jobId);
  const other = units[(here + 1) % units.length];
  const turn: BenchKey[] =
    other && other.jobId !== job.jobId
      ? [
          {
            key: 'U',
            words: `Other unit, ${other.number}`,
            isRare: keys.length > mostInRow ? 'always' : true,
            onPress: () => turnTo(other.jobId),
          },
        ]
      : [];
  return (
    <div className={styles.page}>
      <title>{`${title} · Thoubook`}</title>
      <header className={styles.head}>
        <b>Job {job.number}</b>
        <span>
          {job.unit.familyName}, {job.unit.use}
        </span>
        {facts}
        <UnitTabs
          label="Open units"
          units={unitsNear(units, here).map((unit) => ({ id: unit.jobId, words: String(unit.number) }))}
          currentId={job.jobId}
          onChoose={turnTo}
        />
      </header>
      <section className={styles.prompt} aria-live="polite">
        {prompt}
      </section>
      <div className={styles.work}>{children}</div>
      {aside !== undefined && <aside className={styles.aside}>{aside}</aside>}
      <div className={styles.keys}>
        <KeyBar keys={[...keys, ...turn]} />
      </div>
    </div>
  );
}

function unitsNear<T>(units: readonly T[], here: number): readonly T[] {
  const first = Math.max(0, Math.min(here - 2, units.length - mostTabs));
  return units.slice(first, first + mostTabs);
}
