// A part that is not listed for the unit's family: said once, and pulled all the same by one key.
import { Button } from '../components/Button.tsx';
import { Refusal } from '../components/Refusal.tsx';
import { Refused } from '../rpc/failures.ts';
import styles from './PullAnyway.module.css';

/** Shows nothing unless `error` is that refusal. */
export function PullAnyway({ error, onSure }: { error: Error | null; onSure: () => void }) {
  if (!isOtherFamily(error)) return null;
  return (
    <div className={styles.anyway}>
      <Refusal>{error.message}</Refusal>
      <Button onPress={onSure} autoFocus>
        Pull it anyway
      </Button>
    </div>
  );
}

export function isOtherFamily(error: Error | null): error is Refused {
  return error instanceof Refused && error.code === 'other-family';
}
