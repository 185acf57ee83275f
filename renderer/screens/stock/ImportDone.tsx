// What was taken in, and the rows left out as a file to mend and take in again.
import { Button } from '../../components/Button.tsx';
import { Notice } from '../../components/Notice.tsx';
import { saveFile } from '../../rpc/printed-file.ts';
import styles from './ImportDone.module.css';
import { type Imported, rowsWords } from './ImportFoot.tsx';

export function ImportDone({ imported, onLeave }: { imported: Imported; onLeave: () => void }) {
  const { totals, rejects } = imported;
  return (
    <div className={styles.done}>
      <Notice kind="done">
        Took in {rowsWords(totals.add + totals.change)}: {totals.add} added, {totals.change} changed.
        {totals.same > 0 && ` ${rowsWords(totals.same)} said what the book says already.`}
      </Notice>
      {rejects && (
        <p>
          {rowsWords(totals.reject)} left out. In the file you can save here each stands beside its reason: mend it
          there and take it in again.
        </p>
      )}
      <div className={styles.keys}>
        {rejects && (
          <Button kind="filled" autoFocus onPress={() => saveFile(rejects)}>
            Save the rows left out
          </Button>
        )}
        <Button autoFocus={!rejects} onPress={onLeave}>
          Another file
        </Button>
      </div>
    </div>
  );
}
