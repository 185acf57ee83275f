// One line to add something by its name: type, Enter.
import { useId } from 'react';
import { Button } from '../../components/Button.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useDraft } from '../../text/use-draft.ts';
import styles from './AddLine.module.css';

type AddLineProps = {
  label: string;
  words: string;
  hint?: string;
  placeholder?: string;
  /** Names what is typed here, so that it outlives the window. */
  draftKey: string;
  refusal?: string | null;
  isFilled?: boolean;
  autoFocus?: boolean;
  /** `taken` empties the line. */
  onAdd: (name: string, taken: () => void) => void;
};

export function AddLine({
  label,
  words,
  hint,
  placeholder = '',
  draftKey,
  refusal = null,
  isFilled = false,
  autoFocus = false,
  onAdd,
}: AddLineProps) {
  const typed = useDraft(draftKey, '');
  const hintId = useId();
  const add = () => {
    const name = typed.value.trim();
    if (name !== '') onAdd(name, typed.clear);
  };
  return (
    <EnterThrough label={words} className={styles.add} onFinish={add}>
      <div className={styles.line}>
        <TextField
          label={label}
          value={typed.value}
          onChange={typed.change}
          placeholder={placeholder}
          refusal={refusal}
          maxLength={200}
          autoFocus={autoFocus}
          {...(hint && { 'aria-describedby': hintId })}
        />
        <Button onPress={add} kind={isFilled ? 'filled' : 'plain'} keyHint="Enter">
          {words}
        </Button>
      </div>
      {hint && (
        <p id={hintId} className="small quiet">
          {hint}
        </p>
      )}
    </EnterThrough>
  );
}
