// A box to type into and what was found below it, in groups: arrows go along, Enter takes one, Escape closes.
import { type KeyboardEvent, type ReactNode, useRef } from 'react';
import {
  Autocomplete,
  Dialog,
  Header,
  Input,
  ListBox,
  ListBoxItem,
  ListBoxSection,
  Modal,
  ModalOverlay,
  TextField,
} from 'react-aria-components';
import { classNames } from './class-names.ts';
import styles from './FindBox.module.css';

export type FoundItem = { readonly id: string; readonly words: string; readonly more: string };
export type FoundItems = { readonly title: string; readonly items: readonly FoundItem[] };

type FindBoxProps = {
  label: string;
  isOpen: boolean;
  onClose: () => void;
  text: string;
  onType: (text: string) => void;
  groups: readonly FoundItems[];
  /** What was found belongs to an earlier text: Enter then waits for `onEnter`. */
  isBehind: boolean;
  onTake: (id: string) => void;
  /** Enter before anything could be chosen. */
  onEnter: () => void;
  /** Said below the box where nothing is listed. */
  children: ReactNode;
};

export function FindBox(props: FindBoxProps) {
  const { label, isOpen, onClose, text, onType, groups, isBehind, onTake, onEnter, children } = props;
  const input = useRef<HTMLInputElement>(null);
  const press = (event: KeyboardEvent) => {
    const isChosen = input.current?.getAttribute('aria-activedescendant');
    if (event.key === 'Escape') onClose();
    else if (event.key === 'Enter' && (isBehind || !isChosen)) onEnter();
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <ModalOverlay isOpen={isOpen} onOpenChange={onClose} isDismissable className={classNames(styles.over)}>
      <Modal className={classNames(styles.sheet)}>
        <Dialog aria-label={label} className={classNames(styles.dialog)}>
          <div onKeyDownCapture={press}>
            <Autocomplete inputValue={text} onInputChange={onType}>
              <TextField aria-label={label} autoFocus maxLength={200}>
                <Input ref={input} className={classNames(styles.entry)} placeholder={label} autoComplete="off" />
              </TextField>
              <ListBox
                aria-label="Found"
                className={classNames(styles.list)}
                onAction={(id) => onTake(String(id))}
                renderEmptyState={() => <p className={styles.nothing}>{children}</p>}
              >
                {groups.map(({ title, items }) => (
                  <ListBoxSection key={title} id={title} className={classNames(styles.group)}>
                    <Header className={classNames(styles.title)}>{title}</Header>
                    {items.map(({ id, words, more }) => (
                      <ListBoxItem key={id} id={id} textValue={words} className={classNames(styles.item)}>
                        <span>{words}</span>
                        <span className="small quiet">{more}</span>
                      </ListBoxItem>
                    ))}
                  </ListBoxSection>
                ))}
              </ListBox>
            </Autocomplete>
          </div>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
