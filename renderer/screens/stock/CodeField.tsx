// The line a scanner types into: what the label means opens at Enter.
import { type KeyboardEvent, useCallback, useRef, useState } from 'react';
import { TextField } from '../../components/TextField.tsx';
import { useLetterKey } from '../../frame/use-letter-key.ts';
import styles from './CodeField.module.css';
import { useFindCode } from './use-find-code.ts';

export function CodeField() {
  const [code, setCode] = useState('');
  const [refusal, setRefusal] = useState<string | null>(null);
  const findCode = useFindCode();
  const box = useRef<HTMLElement>(null);
  useLetterKey(
    '/',
    useCallback(() => box.current?.querySelector('input')?.focus(), []),
  );
  const look = async (event: KeyboardEvent) => {
    const scanned = code.trim();
    if (event.key !== 'Enter' || event.repeat || scanned === '') return;
    event.preventDefault();
    try {
      setRefusal((await findCode(scanned)) ? null : `Nothing in this book is called “${scanned}”.`);
    } catch (failure) {
      setRefusal((failure as Error).message);
    }
  };
  return (
    <search ref={box} className={styles.code}>
      <TextField
        label="Scan a label"
        isLabelHidden
        placeholder="Scan a label, type a number"
        maxLength={200}
        value={code}
        onChange={(typed) => {
          setCode(typed);
          setRefusal(null);
        }}
        onKeyDown={(event) => void look(event)}
        refusal={refusal}
      />
    </search>
  );
}
