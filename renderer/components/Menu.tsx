// A key that opens a short list of acts or of people.
import { Menu as AriaMenu, Button, MenuItem, MenuTrigger, Popover } from 'react-aria-components';
import { classNames } from './class-names.ts';
import { KeyHint } from './KeyHint.tsx';
import styles from './Menu.module.css';

export type MenuEntry<K extends string | number> = { id: K; words: string; keyHint?: string; isDisabled?: boolean };

export type MenuProps<K extends string | number> = {
  /** What the key is, in full, for who cannot see where it stands; holds `words`. */
  label: string;
  words: string;
  /** How the key looks, from the style sheet of where it stands. */
  keyClass: string | undefined;
  keyHint?: string;
  items: readonly MenuEntry<K>[];
  onChoose: (id: K) => void;
  /** Where something else than the key opens the list too, such as a letter. */
  isOpen?: boolean;
  onOpenChange?: (isOpen: boolean) => void;
};

export function Menu<K extends string | number>({
  label,
  words,
  keyClass,
  keyHint,
  items,
  onChoose,
  ...open
}: MenuProps<K>) {
  return (
    <MenuTrigger {...open}>
      <Button className={classNames(keyClass)} aria-label={label}>
        {keyHint && <KeyHint>{keyHint}</KeyHint>}
        {words}
      </Button>
      <Popover className={classNames(styles.list)} offset={4}>
        <AriaMenu items={items} onAction={(id) => onChoose(id as K)}>
          {(item) => (
            <MenuItem
              id={item.id}
              // Typed in an open list, the hint goes to its line: initials to a person.
              textValue={item.keyHint ? `${item.keyHint} ${item.words}` : item.words}
              isDisabled={item.isDisabled ?? false}
              className={classNames(styles.item)}
            >
              {item.keyHint && <KeyHint>{item.keyHint}</KeyHint>}
              {item.words}
            </MenuItem>
          )}
        </AriaMenu>
      </Popover>
    </MenuTrigger>
  );
}
