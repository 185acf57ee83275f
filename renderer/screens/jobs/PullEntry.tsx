// The line that pulls a part: a number or a label's code and Enter, or a few letters and one of what they find.
import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import { Button } from '../../components/Button.tsx';
import { Refusal } from '../../components/Refusal.tsx';
import { SuggestField } from '../../components/SuggestField.tsx';
import { TextField } from '../../components/TextField.tsx';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { isOtherFamily, PullAnyway } from '../../frame/PullAnyway.tsx';
import { useLetterKey } from '../../frame/use-letter-key.ts';
import { call } from '../../rpc/client.ts';
import { refusalAbout } from '../../rpc/failures.ts';
import { useFindParts } from '../../rpc/use-find-parts.ts';
import { countRefusal, countTyped } from '../../text/part-words.ts';
import styles from './PartsOfJob.module.css';
import type { PartsOfJobActs, PartToPull } from './use-parts-of-job.ts';

/** Brings the line into sight and under the hand. */
function goToPullEntry(): void {
  const entry = document.querySelector<HTMLInputElement>(`#${lineId} input[role="combobox"]`);
  entry?.focus();
  // What the ticket took so far comes into sight with it.
  entry?.scrollIntoView({ block: 'center' });
}

const lineId = 'pull-a-part';

export function PullEntry({ acts, find }: { acts: PartsOfJobActs; find: string }) {
  const [typed, setTyped] = useState(find);
  const [quantity, setQuantity] = useState('1');
  const [chosen, setChosen] = useState<PartToPull | null>(null);
  const [unknown, setUnknown] = useState<string | null>(null);
  const box = useRef<HTMLDivElement>(null);
  const numberEntry = () => box.current?.querySelector<HTMLInputElement>('input[role="combobox"]');
  const quantityEntry = () => box.current?.querySelector<HTMLInputElement>('input:not([role="combobox"])');
  const { parts, suggestions } = useFindParts(chosen ? '' : typed);
  useLetterKey('p', goToPullEntry);
  // Who comes to this page has a part in hand.
  useEffect(goToPullEntry, []);

  // A line that went back took the focus with it.
  // biome-ignore lint/correctness/useExhaustiveDependencies: after every act.
  useEffect(() => {
    const frame = requestAnimationFrame(() => {
      if (acts.last && document.activeElement === document.body) numberEntry()?.focus();
    });
    return () => cancelAnimationFrame(frame);
  }, [acts.last]);

  const type = (next: string) => {
    setTyped(next);
    setChosen(null);
    setUnknown(null);
    acts.forgetPull();
  };
  const take = (partId: number) => {
    const part = parts.find((each) => each.partId === partId);
    if (!part) return;
    setChosen({ partId, batchId: null, number: part.number });
    setUnknown(null);
    setTyped(part.number);
    // The list gives the focus back to its line first.
    requestAnimationFrame(() => {
      quantityEntry()?.focus();
      quantityEntry()?.select();
    });
  };
  const pull = (part: PartToPull, isSure = false) => {
    const count = countTyped(quantity);
    if (count === null || acts.isPulling) return;
    setChosen(part);
    acts.pull(part, count, isSure, () => {
      setTyped('');
      setQuantity('1');
      setChosen(null);
      setUnknown(null);
      numberEntry()?.focus();
    });
  };
  const finish = async () => {
    const text = typed.trim();
    if (text === '') return;
    const part = chosen ?? (await partCalled(text).catch(() => null));
    const [first, second] = parts;
    if (part) pull(part);
    else if (first && !second) take(first.partId);
    else if (second) setUnknown(`Several parts hold “${text}”: go down the list to the one you mean.`);
    else setUnknown(`No part in use is called “${text}”.`);
  };
  const press = (event: KeyboardEvent) => {
    if (event.key !== 'Enter' || event.repeat || event.defaultPrevented || isOnKey(event.target)) return;
    // Enter on a line of the list chooses it.
    if (event.target instanceof Element && event.target.getAttribute('aria-activedescendant')) return;
    event.preventDefault();
    event.stopPropagation();
    void finish();
  };

  const { pullError } = acts;
  const aboutCount = refusalAbout('quantity', pullError) ?? (countTyped(quantity) === null ? countRefusal : null);
  return (
    <div ref={box} id={lineId} className={styles.pull} onKeyDownCapture={press}>
      <span className={styles.number}>
        <SuggestField
          label="Pull a part (P)"
          value={typed}
          onChange={type}
          suggestions={suggestions}
          onTake={take}
          refusal={unknown}
        />
      </span>
      <span className={styles.count}>
        <TextField label="How many" inputMode="numeric" value={quantity} onChange={setQuantity} />
      </span>
      <span className={styles.key}>
        <Button onPress={() => void finish()} isPending={acts.isPulling}>
          Pull
        </Button>
      </span>
      <div className={styles.refusal}>
        {aboutCount && <Refusal>{aboutCount}</Refusal>}
        <PullAnyway error={pullError} onSure={() => chosen && pull(chosen, true)} />
        {!aboutCount && !isOtherFamily(pullError) && <FailureSentence error={pullError} />}
      </div>
    </div>
  );
}

/** What a number or a scanned label means, if it is a part or one batch of it. */
async function partCalled(code: string): Promise<PartToPull | null> {
  const meant = await call('stock.findCode', { code });
  if (meant?.kind === 'part') return { partId: meant.partId, batchId: null, number: code };
  if (meant?.kind !== 'batch') return null;
  const { number } = await call('stock.getPart', { partId: meant.partId });
  return { partId: meant.partId, batchId: meant.batchId, number };
}

function isOnKey(target: EventTarget): boolean {
  return target instanceof HTMLButtonElement;
}
