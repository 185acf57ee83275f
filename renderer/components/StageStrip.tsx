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

type StageStripProps = {
  stages: readonly StageMark[];
  /** Makes every stage but the present one a key that moves there. */
  onChoose?: (id: number) => void;
};

export function StageStrip({ stages, onChoose }: StageStripProps) {
  return (
    <ol aria-label="Stages" className={styles.strip}>
      {stages.map((stage) => (
        <li
          key={stage.id}
          className={classNames(styles.stage, styles[stage.state])}
          aria-current={stage.state === 'now' ? 'step' : undefined}
        >
          {onChoose && stage.state !== 'now' ? (
            <button type="button" className={styles.key} onClick={() => onChoose(stage.id)}>
              <span className="spoken">Move to </span>
              <StageWords stage={stage} />
            </button>
          ) : (
            <StageWords stage={stage} />
          )}
        </li>
      ))}
    </ol>
  );
}

function StageWords({ stage }: { stage: StageMark }) {
  return (
    <>
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
    </>
  );
}
