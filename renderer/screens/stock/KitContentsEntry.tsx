// What lies in a kit, written down by typing or scanning the numbers of its parts.
import { useRef, useState } from 'react';
import { Button } from '../../components/Button.tsx';
import { Refusal } from '../../components/Refusal.tsx';
import { SuggestField } from '../../components/SuggestField.tsx';
import { TextField } from '../../components/TextField.tsx';
import { call } from '../../rpc/client.ts';
import { useFindParts } from '../../rpc/use-find-parts.ts';
import styles from './EditPartScreen.module.css';
import type { PartDraft } from './part-draft.ts';

type Line = PartDraft['contents'][number];

type KitContentsEntryProps = {
  contents: readonly Line[];
  onChange: (contents: readonly Line[]) => void;
  refusal: string | null | undefined;
};

export function KitContentsEntry({ contents, onChange, refusal }: KitContentsEntryProps) {
  const [typed, setTyped] = useState('');
  const [unknown, setUnknown] = useState('');
  const box = useRef<HTMLDivElement>(null);
  const { parts, suggestions } = useFindParts(typed);
  const found = parts.filter((part) => part.kind !== 'kit' && contents.every(({ partId }) => partId !== part.partId));
  // Scanned one after another, the next comes before the last is drawn.
  const newest = useRef(contents);
  newest.current = contents;
  const add = ({ partId, number, description }: Omit<Line, 'quantity'>) => {
    if (newest.current.some((line) => line.partId === partId)) return;
    newest.current = [...newest.current, { partId, number, description, quantity: '1' }];
    onChange(newest.current);
  };
  const take = (partId: number) => {
    const part = found.find((each) => each.partId === partId);
    if (!part) return;
    add(part);
    setTyped('');
  };
  /** A scanner is quicker than the list under the entry. */
  const lookUp = async (code: string) => {
    setTyped('');
    const meant = await call('stock.findCode', { code });
    const part = meant?.kind === 'part' ? await call('stock.getPart', { partId: meant.partId }) : null;
    if (part !== null && part.kind !== 'kit') return add(part);
    setUnknown(code);
    setTyped((now) => (now === '' ? code : now));
  };
  const exact = found.find(({ number }) => number.toLowerCase() === typed.trim().toLowerCase());
  const named = exact ?? (found.length === 1 ? found[0] : undefined);
  return (
    <div ref={box} className={styles.contents}>
      {contents.map((line, index) => (
        <div key={line.partId} className={styles.contentsLine}>
          <TextField
            label={`How many ${line.number}`}
            isLabelHidden
            inputMode="numeric"
            value={line.quantity}
            onChange={(quantity) => onChange(contents.with(index, { ...line, quantity }))}
          />
          <span>
            <span className="mono">{line.number}</span> {line.description}
          </span>
          <Button
            aria-label={`Take out ${line.number}`}
            onPress={() => {
              onChange(contents.toSpliced(index, 1));
              box.current?.querySelector<HTMLInputElement>('input[role="combobox"]')?.focus();
            }}
          >
            Take out
          </Button>
        </div>
      ))}
      <div
        className={styles.find}
        // Enter names the part, and the hand stays for the next; with nothing typed it goes on through the form.
        data-keeps-enter={typed.trim() === '' ? undefined : true}
        onKeyDownCapture={(event) => {
          if (event.key !== 'Enter' || typed.trim() === '' || isListOpen(event.target)) return;
          event.preventDefault();
          event.stopPropagation();
          if (named) take(named.partId);
          else void lookUp(typed.trim());
        }}
      >
        <SuggestField
          label="A part of it"
          hint="Type or scan its number, Enter; or a few letters, and choose."
          value={typed}
          onChange={(text) => {
            setTyped(text);
            setUnknown('');
          }}
          suggestions={suggestions.filter(({ id }) => found.some(({ partId }) => partId === id))}
          onTake={take}
        />
      </div>
      {unknown !== '' && <Refusal>No part that may lie in a kit is called {unknown}.</Refusal>}
      {refusal && <Refusal>{refusal}</Refusal>}
    </div>
  );
}

/** One of the list is chosen by the arrow keys: Enter means that one. */
function isListOpen(target: EventTarget): boolean {
  return target instanceof HTMLInputElement && target.getAttribute('aria-activedescendant') !== null;
}
