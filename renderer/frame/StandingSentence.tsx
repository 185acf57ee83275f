// What to do when this window has lost its book, over whatever stands on the screen; what was typed stands there still.
import { Refusal } from '../components/Refusal.tsx';
import { standingWords, useStanding } from '../rpc/standing.ts';
import styles from './StandingSentence.module.css';

export function StandingSentence() {
  const standing = useStanding();
  if (standing === 'let in') return null;
  return (
    <div className={styles.standing}>
      <Refusal>{standingWords[standing]}</Refusal>
    </div>
  );
}
