// A verdict: shape, word, colour, in that order of telling.
import { type Verdict as VerdictWord, verdictRole, verdictWords } from '../../app/charts/verdict-mark.ts';
import { VerdictMark } from '../charts/VerdictMark.tsx';
import { classNames } from './class-names.ts';
import styles from './Verdict.module.css';

/** As tall as the capitals beside it. */
const markSizes = { small: 12, body: 16, say: 28 } as const;

type VerdictProps = {
  verdict: VerdictWord;
  /** How far outside the limit, already written out: "2.0". */
  by?: string | null;
  /** In place of the verdict's own word: "not read yet". */
  words?: string;
  size?: 'small' | 'body' | 'say';
};

export function Verdict({ verdict, by = null, words, size = 'body' }: VerdictProps) {
  return (
    <span className={classNames(styles.verdict, styles[verdictRole(verdict)], styles[size])}>
      <VerdictMark verdict={verdict} size={markSizes[size]} />
      {words ?? verdictWords(verdict, by)}
    </span>
  );
}
