// One line of typed text with what the book already knows offered below it: typing goes on, or one is taken.
import { useContext, useEffect, useRef } from 'react';
import { ComboBox, ComboBoxStateContext, Input, ListBox, ListBoxItem, Popover } from 'react-aria-components';
import { classNames } from './class-names.ts';
import field from './Field.module.css';
import { Field, type FieldWords } from './Field.tsx';
import menu from './Menu.module.css';
import styles from './SuggestField.module.css';

export type Suggestion = {
  id: number;
  words: string;
  /** What tells it from others of the same words: "2 visits". */
  note: string;
};

type SuggestFieldProps = FieldWords & {
  value: string;
  onChange: (typed: string) => void;
  suggestions: readonly Suggestion[];
  onTake: (id: number) => void;
  autoFocus?: boolean;
};

export function SuggestField({
  label,
  hint,
  refusal,
  isLabelHidden = false,
  value,
  onChange,
  suggestions,
  onTake,
  autoFocus = false,
}: SuggestFieldProps) {
  // Taking one also rewrites the line, which then is not what a person typed.
  const wasTaken = useRef(false);
  return (
    <ComboBox
      allowsCustomValue
      menuTrigger="input"
      items={suggestions}
      inputValue={value}
      selectedKey={null}
      isInvalid={Boolean(refusal)}
      autoFocus={autoFocus}
      onInputChange={(typed) => {
        if (wasTaken.current) wasTaken.current = false;
        else if (typed !== value) onChange(typed);
      }}
      onSelectionChange={(id) => {
        if (id === null) return;
        wasTaken.current = true;
        onTake(Number(id));
      }}
      // What is offered was found by whoever asks; all of it fits.
      defaultFilter={() => true}
      className={classNames(field.field)}
    >
      <Field label={label} hint={hint} refusal={refusal} isLabelHidden={isLabelHidden}>
        <Input className={classNames(field.entry)} autoComplete="off" />
      </Field>
      <Popover className={classNames(menu.list, styles.list)} offset={4}>
        <ListBox<Suggestion>>
          {(item) => (
            <ListBoxItem id={item.id} textValue={item.words} className={classNames(menu.item)}>
              <span>{item.words}</span>
              <span className="small quiet">{item.note}</span>
            </ListBoxItem>
          )}
        </ListBox>
      </Popover>
      <OpensWhenFound found={suggestions.map((each) => each.id).join(' ')} />
    </ComboBox>
  );
}

/** What was looked up arrives after the letter was typed, so the list is opened when it does. */
function OpensWhenFound({ found }: { found: string }) {
  const state = useContext(ComboBoxStateContext);
  const newest = useRef(state);
  newest.current = state;
  useEffect(() => {
    if (found !== '' && newest.current?.isFocused) newest.current.open(null, 'input');
  }, [found]);
  return null;
}
