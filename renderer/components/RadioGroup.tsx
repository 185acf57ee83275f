// One of a few, side by side as keys: all can be read at once and one press chooses.
import {
  RadioGroup as AriaRadioGroup,
  type RadioGroupProps as AriaRadioGroupProps,
  Radio,
} from 'react-aria-components';
import { classNames } from './class-names.ts';
import field from './Field.module.css';
import { Field, type FieldWords } from './Field.tsx';
import styles from './RadioGroup.module.css';
import type { Option } from './Select.tsx';

export type RadioGroupProps<K extends string> = FieldWords &
  Pick<AriaRadioGroupProps, 'isDisabled' | 'isRequired' | 'name'> & {
    options: readonly Option<K>[];
    value: K | null;
    onChange: (id: K) => void;
    size?: 'desk' | 'bench';
  };

export function RadioGroup<K extends string>({
  label,
  hint,
  refusal,
  isLabelHidden = false,
  options,
  value,
  onChange,
  size = 'desk',
  ...rest
}: RadioGroupProps<K>) {
  return (
    <AriaRadioGroup
      {...rest}
      orientation="horizontal"
      isInvalid={Boolean(refusal)}
      value={value}
      onChange={(id) => onChange(id as K)}
      className={classNames(field.field)}
    >
      <Field label={label} hint={hint} refusal={refusal} isLabelHidden={isLabelHidden}>
        <div className={classNames(styles.keys, styles[size])}>
          {options.map((option) => (
            <Radio key={option.id} value={option.id} className={classNames(styles.key)}>
              {option.words}
            </Radio>
          ))}
        </div>
      </Field>
    </AriaRadioGroup>
  );
}
