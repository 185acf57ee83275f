// How this check read before, newest first: what a reading after rework is compared with.

import type { Take } from '../../../app/readings/readings.contract.ts';
import { shownVerdict } from '../../../app/readings/verdict-words.ts';
import { Verdict } from '../../components/Verdict.tsx';
import { sayDay } from '../../text/say-date.ts';
import { useAtCheck } from './at-check.ts';
import styles from './EarlierTakes.module.css';
import { phaseWords } from './reading-plan.ts';

export function EarlierTakes({ takes }: { takes: readonly Take[] }) {
  const { check, words } = useAtCheck();
  const read = takes.filter((take) => take.readings.length > 0).reverse();
  return (
    <section>
      <h2 className={styles.head}>Read before</h2>
      <ol>
        {read.map(({ takeId, phase, mockUpNumber, evaluation, note, startedAt, by }) => (
          <li key={takeId} className={styles.take}>
            <p className={styles.line}>
              <span>{phaseWords({ phase, mockUpNumber })}</span>
              {evaluation.mean !== null && <b>{words.full(evaluation.mean)}</b>}
              <Verdict
                verdict={shownVerdict(evaluation.verdict, check.quantity)}
                by={evaluation.verdict.by === null ? null : words.full(evaluation.verdict.by)}
              />
            </p>
            <p className={styles.small}>
              {sayDay(startedAt)}, {by}
              {note !== '' && `: ${note}`}
            </p>
          </li>
        ))}
      </ol>
    </section>
  );
}
