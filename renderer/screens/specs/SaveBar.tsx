// The foot of a sheet being edited: what was just taken away, why it was not saved, and the keys that end it.
import { Button } from '../../components/Button.tsx';
import { Notice } from '../../components/Notice.tsx';
import { Refusal } from '../../components/Refusal.tsx';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { ThrowAway } from './DraftNotice.tsx';
import styles from './SaveBar.module.css';

type SaveBarProps = {
  words: string;
  isChanged: boolean;
  /** Saving is the next act: no row is open. */
  isNext: boolean;
  isSaving: boolean;
  /** What has to be put right first; the first is said in full. */
  problems: readonly string[];
  error: Error | null;
  taken: { what: string; undo: () => void } | null;
  onSave: () => void;
  onThrow: () => void;
};

export const undoKeyId = 'undo-taking-away';

export function SaveBar({ words, isChanged, isNext, isSaving, problems, error, taken, onSave, onThrow }: SaveBarProps) {
  const [first, ...more] = problems;
  return (
    <footer className={styles.bar}>
      {first !== undefined && (
        <Refusal>
          Not saved. {first}
          {more.length > 0 && ` ${more.length === 1 ? 'One more thing is' : `${more.length} more things are`} marked.`}
        </Refusal>
      )}
      <FailureSentence error={error} />
      {taken && (
        <div className={styles.keys}>
          <Notice kind="done">{taken.what}.</Notice>
          <Button id={undoKeyId} onPress={taken.undo}>
            Undo
          </Button>
        </div>
      )}
      <div className={styles.keys}>
        <Button
          kind={isNext ? 'filled' : 'plain'}
          keyHint="Ctrl+S"
          isDisabled={!isChanged}
          isPending={isSaving}
          onPress={onSave}
        >
          {words}
        </Button>
        {isChanged && <ThrowAway onThrow={onThrow} />}
      </div>
    </footer>
  );
}
