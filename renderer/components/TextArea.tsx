// Several lines of typed text: a complaint, a note.
import { TextArea as AriaTextArea, TextField as AriaTextField } from 'react-aria-components';
import { classNames } from './class-names.ts';
import field from './Field.module.css';
import { Field } from './Field.tsx';
import styles from './TextArea.module.css';
import type { TextFieldProps } from './TextField.tsx';

export type TextAreaProps = Omit<TextFieldProps, 'unit' | 'type'> & { rows?: number };

export function TextArea({
  label,
  hint,
  refusal,
  isLabelHidden = false,
  placeholder,
  rows = 3,
  ...rest
}: TextAreaProps) {
  return (
    <AriaTextField {...rest} isInvalid={Boolean(refusal)} className={classNames(field.field)}>
      <Field label={label} hint={hint} refusal={refusal} isLabelHidden={isLabelHidden}>
        <AriaTextArea
          className={classNames(field.entry, styles.lines)}
          placeholder={placeholder ?? ''}
          rows={rows}
          autoComplete="off"
        />
      </Field>
    </AriaTextField>
  );
}
