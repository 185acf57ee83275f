// One of a list that may be long: the choice stands in the key, the list opens below it.
import {
  Select as AriaSelect,
  type SelectProps as AriaSelectProps,
  Button,
  ListBox,
  ListBoxItem,
  Popover,
  SelectValue,
} from 'react-aria-components';
import { classNames } from './class-names.ts';
import field from './Field.module.css';
import { Field, type FieldSize, type FieldWords } from './Field.tsx';
import menu from './Menu.module.css';
import styles from './Select.module.css';

export type Option<K extends string | number> = { id: K; words: string };

export type SelectProps<K extends string | number> = FieldWords &
  Pick<AriaSelectProps<object>, 'isDisabled' | 'isRequired' | 'autoFocus' | 'name'> & {
    options: readonly Option<K>[];
    /** null: nothing chosen yet. */
    value: K | null;
    onChange: (id: K) => void;
    placeholder?: string;
    size?: FieldSize;
  };

export function Select<K extends string | number>({
  label,
  hint,
  refusal,
  isLabelHidden = false,
  options,
  value,
  onChange,
  placeholder = 'Choose…',
  size = 'desk',
  ...rest
}: SelectProps<K>) {
  return (
    <AriaSelect
      {...rest}
      isInvalid={Boolean(refusal)}
      value={value}
      onChange={(id) => onChange(id as K)}
      placeholder={placeholder}
      className={classNames(field.field, field[size])}
    >
      <Field label={label} hint={hint} refusal={refusal} isLabelHidden={isLabelHidden}>
        <Button className={classNames(field.entry, styles.chosen, Boolean(refusal) && styles.refused)}>
          <SelectValue className={classNames(styles.value)} />
          <svg className={styles.arrow} viewBox="0 0 16 16" aria-hidden="true">
            <path d="M3 6l5 5 5-5" fill="none" stroke="currentColor" strokeWidth="1.5" />
          </svg>
        </Button>
      </Field>
      <Popover className={classNames(menu.list, styles.list)} offset={4}>
        <ListBox items={options}>
          {(option) => (
            <ListBoxItem id={option.id} textValue={option.words} className={classNames(menu.item)}>
              {option.words}
            </ListBoxItem>
          )}
        </ListBox>
      </Popover>
    </AriaSelect>
  );
}
