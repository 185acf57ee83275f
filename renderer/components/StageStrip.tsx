// The stages of a job as a ruler: done has a tick, now the heavy rule, what lies ahead a hairline.
import { classNames } from './class-names.ts';
import styles from './StageStrip.module.css';
import { TickMark } from './TickMark.tsx';

export type StageMark = {
  id: number;
  words: string;
  /** Under it: "16 Nov", "5 things missing". */
  note: string;
  state: 'done' | 'now' | 'ahead';
};

export function StageStrip({ stages }: { stages: readonly StageMark[] }) {
  return (
    <ol aria-label="Stages" className={styles.strip}>
      {stages.map((stage) => (
        <li
          key={stage.id}
          className={classNames(styles.stage, styles[stage.state])}
          aria-current={stage.state === 'now' ? 'step' : undefined}
        >
          <span className={styles.words}>
            {stage.state === 'done' && (
              <>
                <TickMark />
                <span className="spoken">done: </span>
              </>
            )}
            {stage.words}
          </span>
          <span className={styles.note}>{stage.note}</span>
        </li>
      ))}
    </ol>
  );
}
