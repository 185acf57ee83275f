// One search for everything, from every screen: / where nothing is being typed, Ctrl+K anywhere.
import { useNavigate } from '@tanstack/react-router';
import { useCallback, useEffect, useState } from 'react';
import type { FoundGroup, Noun, Place } from '../../app/shop/find.contract.ts';
import { FindBox } from '../components/FindBox.tsx';
import { KeyHint } from '../components/KeyHint.tsx';
import { call } from '../rpc/client.ts';
import { useRead } from '../rpc/use-read.ts';
import { FailureSentence } from './FailureSentence.tsx';
import { addressOfPlace } from './place-address.ts';
import { useLetterKey } from './use-letter-key.ts';

const titles: Readonly<Record<Noun, string>> = {
  code: 'This very one',
  job: 'Jobs',
  customer: 'Customers',
  unit: 'Units',
  part: 'Parts and kits',
  batch: 'Batches',
  plate: 'Plates',
  gauge: 'Gauges',
  family: 'Families',
};

export function FindAnything({ keyClass }: { keyClass: string | undefined }) {
  const [isOpen, setOpen] = useState(false);
  const open = useCallback(() => setOpen(true), []);
  useLetterKey('/', open);
  useControlK(open);
  return (
    <>
      <button type="button" className={keyClass} onClick={open} aria-keyshortcuts="/ Control+K">
        <KeyHint>/</KeyHint>
        Find
      </button>
      {isOpen && <OpenBox onClose={() => setOpen(false)} />}
    </>
  );
}

function OpenBox({ onClose }: { onClose: () => void }) {
  const [typed, setTyped] = useState('');
  const text = typed.trim();
  const read = useRead('shop.findAnything', text === '' ? null : { text }, { keepsLast: true });
  const navigate = useNavigate();
  const groups = text === '' ? [] : (read.data ?? []);
  const isBehind = text !== '' && (read.data === undefined || read.isPlaceholderData);
  const goTo = (place: Place | undefined) => {
    if (!place) return;
    onClose();
    void navigate(addressOfPlace(place));
  };
  return (
    <FindBox
      label="Find anything: a name, a number, a tag, a label"
      isOpen
      onClose={onClose}
      text={typed}
      onType={setTyped}
      groups={groups.map(itemsOf)}
      isBehind={isBehind}
      onTake={(id) => goTo(placeWith(groups, id))}
      onEnter={() => {
        // A scanner has typed and pressed Enter before the answer is there.
        if (text !== '')
          call('shop.findAnything', { text }).then(
            (found) => goTo(found[0]?.found[0]?.place),
            () => undefined,
          );
      }}
    >
      {read.error ? <FailureSentence error={read.error} /> : words(text, isBehind)}
    </FindBox>
  );
}

function words(text: string, isBehind: boolean): string {
  if (text === '')
    return 'Jobs, customers, units, parts, batches, plates, gauges, families; a scanned label goes straight there.';
  return isBehind ? 'Looking it up…' : `Nothing in this book is called “${text}”.`;
}

function itemsOf({ noun, found }: FoundGroup) {
  const items = found.map(({ title, more }, index) => ({ id: `${noun} ${index}`, words: title, more }));
  return { title: titles[noun], items };
}

function placeWith(groups: readonly FoundGroup[], id: string): Place | undefined {
  const [noun, index] = id.split(' ');
  return groups.find((group) => group.noun === noun)?.found[Number(index)]?.place;
}

function useControlK(act: () => void): void {
  useEffect(() => {
    const press = (event: globalThis.KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || event.key.toLowerCase() !== 'k') return;
      event.preventDefault();
      act();
    };
    document.addEventListener('keydown', press);
    return () => document.removeEventListener('keydown', press);
  }, [act]);
}
