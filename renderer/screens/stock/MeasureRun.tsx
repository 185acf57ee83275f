// The box so far: how many, how they spread, and how many went into each can.
import { plateHistogram } from '../../../app/charts/plate-histogram.ts';
import { FittedChart } from '../../charts/FittedChart.tsx';
import type { BoxSetUp, Measured } from './box-draft.ts';
import styles from './MeasureRun.module.css';
import screen from './MeasureScreen.module.css';
import { narrowestClass } from './plate-words.ts';
import { useLengthWords } from './use-length-words.ts';

export function MeasureRun({ run, setUp }: { run: readonly Measured[]; setUp: BoxSetUp }) {
  const words = useLengthWords();
  const counted = run.map(({ height_nm, into }) => ({
    height_nm: into.kind === 'can' ? into.can_nm : height_nm,
    mark: 'free' as const,
    count: 1,
  }));
  return (
    <aside className={screen.see} aria-label="The box so far">
      <p role="status">
        <span className="say">{run.length}</span> measured
      </p>
      <FittedChart
        draw={(width) => plateHistogram(counted, words, { width, height: 192, class_nm: narrowestClass(words.unit) })}
      />
      <CansOfRun run={run} />
      <p className={`small quiet ${styles.facts}`}>
        <span>
          {setUp.into === 'can'
            ? `${setUp.kind}s into cans of ${words.full(setUp.class_nm)} ${words.unit}`
            : `${setUp.kind}s one by one`}
        </span>
        {setUp.batch && <span>out of {setUp.batch.name}</span>}
        {setUp.micrometer !== '' && <span>micrometer {setUp.micrometer}</span>}
      </p>
    </aside>
  );
}

function CansOfRun({ run }: { run: readonly Measured[] }) {
  const words = useLengthWords();
  const byCan = Map.groupBy(
    run.flatMap(({ into }) => (into.kind === 'can' ? [into.can_nm] : [])),
    (can_nm) => can_nm,
  );
  if (byCan.size === 0) return null;
  return (
    <ul className={styles.cans} aria-label="Out of this box">
      {[...byCan]
        .toSorted(([one], [other]) => one - other)
        .map(([can_nm, plates]) => (
          <li key={can_nm}>
            <span>can {words.full(can_nm)}</span>
            <b>{plates.length}</b>
          </li>
        ))}
    </ul>
  );
}
