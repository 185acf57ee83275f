// A verdict: shape, word, colour, in that order of telling.
import { type Verdict as VerdictWord, verdictRole, verdictWords } from '../../app/charts/verdict-mark.ts';
import { classNames } from './class-names.ts';
import styles from './Verdict.module.css';
import { VerdictMark } from './VerdictMark.tsx';

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
      <VerdictMark verdict={verdict} />
      {words ?? verdictWords(verdict, by)}
    </span>
  );
}
