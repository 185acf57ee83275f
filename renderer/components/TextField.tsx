// One line of typed text. A reading is typed here too: it is text until the one parser has read it.
import { TextField as AriaTextField, type TextFieldProps as AriaTextFieldProps, Input } from 'react-aria-components';
import { classNames } from './class-names.ts';
import field from './Field.module.css';
import { Field, type FieldSize, type FieldWords } from './Field.tsx';
import styles from './TextField.module.css';

export type TextFieldProps = FieldWords &
  Omit<AriaTextFieldProps, 'className' | 'style' | 'children' | 'render' | 'value' | 'onChange'> & {
    value: string;
    onChange: (typed: string) => void;
    placeholder?: string;
    /** Said once after the entry, such as "thou" or "psi". */
    unit?: string;
    size?: FieldSize;
  };

export function TextField({
  label,
  hint,
  refusal,
  isLabelHidden = false,
  placeholder,
  unit,
  size = 'desk',
  ...rest
}: TextFieldProps) {
  return (
    <AriaTextField {...rest} isInvalid={Boolean(refusal)} className={classNames(field.field, field[size])}>
      <Field label={label} hint={hint} refusal={refusal} isLabelHidden={isLabelHidden}>
        <span className={styles.line}>
          <Input className={classNames(field.entry)} placeholder={placeholder ?? ''} autoComplete="off" />
          {unit && <span className={styles.unit}>{unit}</span>}
        </span>
      </Field>
    </AriaTextField>
  );
}
