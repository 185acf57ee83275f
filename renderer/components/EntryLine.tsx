// Where a reading is typed at the bench: one line of text, kept as typed, huge while a spot is being read.
import { type ReactNode, useId } from 'react';
import { Input, Label, TextField, type TextFieldProps } from 'react-aria-components';

import { classNames } from './class-names.ts';
import styles from './EntryLine.module.css';
import { Refusal } from './Refusal.tsx';

type KeyPress = Parameters<NonNullable<TextFieldProps['onKeyDown']>>[0];

type EntryLineProps = {
  /** What is typed: "push-down + air travel, thou". */
  label: string;
  value: string;
  onChange: (typed: string) => void;
  /** Enter on a line that is not empty. On an empty one, Enter belongs to the filled key. */
  onCommit: (typed: string) => void;
  /** `read` is huge, `key` stands in the row of keys. */
  size?: 'read' | 'key';
  placeholder?: string;
  /** What it was understood as, said back at once: "26.0 thou · 0.660 mm". */
  saidBack?: ReactNode;
  refusal?: string | null;
  /** While the line is being committed it cannot be typed over. */
  isCommitting?: boolean;
  autoFocus?: boolean;
};

export function EntryLine({
  label,
  value,
  onChange,
  onCommit,
  size = 'read',
  placeholder = '',
  saidBack,
  refusal = null,
  isCommitting = false,
  autoFocus = true,
}: EntryLineProps) {
  const besideId = useId();
  const commitOnEnter = (event: KeyPress) => {
    // Whatever is not for this line goes on to the row of keys.
    if (event.key !== 'Enter' || value.trim() === '') return event.continuePropagation();
    event.preventDefault();
    if (!event.repeat && !isCommitting) onCommit(value);
  };
  return (
    <div className={classNames(styles.line, styles[size])}>
      <TextField
        value={value}
        onChange={onChange}
        onKeyDown={commitOnEnter}
        isInvalid={refusal !== null}
        isReadOnly={isCommitting}
        autoFocus={autoFocus}
        aria-describedby={besideId}
      >
        <Label className="spoken">{label}</Label>
        <Input
          className={classNames(styles.entry)}
          placeholder={placeholder}
          autoComplete="off"
          autoCorrect="off"
          spellCheck={false}
          data-entry-line
        />
      </TextField>
      <div id={besideId} className={styles.beside}>
        {size === 'read' && (
          <span className={styles.label} aria-hidden="true">
            {label}
          </span>
        )}
        {refusal === null ? <output className={styles.saidBack}>{saidBack}</output> : <Refusal>{refusal}</Refusal>}
      </div>
    </div>
  );
}
