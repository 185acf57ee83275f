// The row of keys at the foot of the bench: large to press, and each with the letter that does the same.
import { type ReactNode, useEffect, useRef } from 'react';
import { Toolbar } from 'react-aria-components';
import button from './Button.module.css';
import { Button } from './Button.tsx';
import { classNames } from './class-names.ts';
import styles from './KeyBar.module.css';
import { Menu } from './Menu.tsx';

export type BenchKey = {
  /** As the keyboard names it: "Enter", "S", "+". */
  key: string;
  words: string;
  onPress: () => void;
  /** The act the prompt asks for; one in a row. */
  isFilled?: boolean;
  /** Goes behind More where the screen is narrow, or always. Its letter works all the same. */
  isRare?: boolean | 'always';
  isDisabled?: boolean;
};

type KeyBarProps = {
  keys: readonly BenchKey[];
  /** An `EntryLine` of size `key`, where the huge one is not on the screen. */
  entry?: ReactNode;
};

export function KeyBar({ keys, entry }: KeyBarProps) {
  const bar = useRef<HTMLElement>(null);
  useKeys(keys, bar);
  const inRow = keys.filter((each) => each.isRare !== 'always');
  const rare = keys.filter((each) => each.isRare);
  return (
    <footer ref={bar} className={styles.bar}>
      {entry}
      <Toolbar aria-label="Keys" className={classNames(styles.keys)}>
        {inRow.map((each) => (
          <span key={each.key} className={classNames(each.isRare && styles.rare)}>
            <Button
              size="bench"
              kind={each.isFilled ? 'filled' : 'plain'}
              keyHint={each.key}
              isDisabled={each.isDisabled ?? false}
              onPress={each.onPress}
            >
              {each.words}
            </Button>
          </span>
        ))}
        {rare.length > 0 && (
          <span className={classNames(styles.more, inRow.length < keys.length && styles.always)}>
            <Menu
              label="More keys"
              words="More"
              keyClass={classNames(button.key, button.plain, button.bench)}
              items={rare.map((each) => ({
                id: each.key,
                words: each.words,
                keyHint: each.key,
                isDisabled: each.isDisabled ?? false,
              }))}
              onChoose={(key) => rare.find((each) => each.key === key)?.onPress()}
            />
          </span>
        )}
      </Toolbar>
    </footer>
  );
}

/**
 * The letters act while the hand is at the bench: in an empty entry line, on the row itself, or nowhere in particular.
 * Whoever types a line, or stands in another control, types letters.
 */
function useKeys(keys: readonly BenchKey[], bar: { readonly current: HTMLElement | null }): void {
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.altKey || event.metaKey || event.repeat || event.defaultPrevented) return;
      const pressed = keys.find((each) => each.key.toLowerCase() === event.key.toLowerCase());
      if (!pressed || pressed.isDisabled || !isAtBench(event.target, bar.current)) return;
      // Enter on a key in the row presses that key.
      if (event.key === 'Enter' && event.target instanceof HTMLButtonElement) return;
      event.preventDefault();
      pressed.onPress();
    };
    document.addEventListener('keydown', press);
    return () => document.removeEventListener('keydown', press);
  }, [keys, bar]);
}

function isAtBench(target: EventTarget | null, bar: HTMLElement | null): boolean {
  if (target instanceof HTMLInputElement) return 'entryLine' in target.dataset && target.value === '';
  // The page round the row takes the focus when what had it is gone.
  return target instanceof Node && bar !== null && (bar.contains(target) || target.contains(bar));
}
