// Before the first plate of a box: what they are, where they go, what they came in, what they are measured with.
import { useEffect, useRef, useState } from 'react';
import { type PieceKind, pieceKinds } from '../../../app/specs/spec-sheet.ts';
import { Button } from '../../components/Button.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { RadioGroup } from '../../components/RadioGroup.tsx';
import { TextField } from '../../components/TextField.tsx';
import { call } from '../../rpc/client.ts';
import { useDraft } from '../../text/use-draft.ts';
import type { BoxSetUp } from './box-draft.ts';
import styles from './MeasureSetUp.module.css';
import { canClasses, narrowestClass } from './plate-words.ts';
import { useLengthWords } from './use-length-words.ts';

type MeasureSetUpProps = {
  kind: PieceKind;
  /** How it was set up before, for who changes something. */
  last: BoxSetUp | null;
  onSetUp: (setUp: BoxSetUp) => void;
};

export function MeasureSetUp({ kind, last, onSetUp }: MeasureSetUpProps) {
  const words = useLengthWords();
  const [into, setInto] = useState<BoxSetUp['into']>(last?.into ?? 'can');
  const [kindChosen, setKind] = useState(last?.kind ?? kind);
  const [class_nm, setClass] = useState(last?.class_nm ?? narrowestClass(words.unit));
  const [tag, setTag] = useState(last?.tag ?? '');
  const [batch, setBatch] = useState('');
  // The same micrometer lies at the same bench tomorrow.
  const micrometer = useDraft('micrometer for boxes', '');
  const [refusal, setRefusal] = useState<string | null>(null);
  const isHeight = /^[\d.,]+$/.test(tag.trim());
  const form = useRef<HTMLDivElement>(null);
  useEffect(() => form.current?.querySelector<HTMLInputElement>('input:checked')?.focus(), []);
  const begin = async () => {
    if (into === 'single' && isHeight) return;
    try {
      const found = batch.trim() === '' ? null : await batchCalled(batch.trim());
      onSetUp({
        kind: kindChosen,
        into,
        class_nm,
        tag: tag.trim(),
        batch: found,
        micrometer: micrometer.value.trim(),
      });
    } catch (failure) {
      setRefusal((failure as Error).message);
    }
  };
  return (
    <EnterThrough label="Set up" onFinish={() => void begin()} className={styles.form}>
      <div ref={form} className={styles.wide}>
        <RadioGroup
          label="They are"
          options={pieceKinds.map((id) => ({ id, words: `${id.charAt(0).toUpperCase()}${id.slice(1)}s` }))}
          value={kindChosen}
          onChange={setKind}
        />
      </div>
      <div className={styles.wide}>
        <RadioGroup
          label="They go"
          options={[
            { id: 'can', words: 'Into cans by class' },
            { id: 'single', words: 'One by one, each with a tag' },
          ]}
          value={into}
          onChange={setInto}
        />
      </div>
      {into === 'can' ? (
        <div className={styles.wide}>
          <RadioGroup
            label={`A class is, ${words.unit}`}
            options={canClasses(words.unit).map((each) => ({ id: String(each), words: words.full(each) }))}
            value={String(class_nm)}
            onChange={(id) => setClass(Number(id))}
          />
        </div>
      ) : (
        <TextField
          label="First tag"
          hint="It counts up by itself: A12, A13 … Empty: no tags."
          maxLength={20}
          value={tag}
          onChange={setTag}
          refusal={isHeight ? 'That looks like a height: give a tag a letter.' : null}
        />
      )}
      <TextField
        label="Out of which batch"
        hint="Scan its label or type its part number; empty: none."
        maxLength={200}
        value={batch}
        onChange={(typed) => {
          setBatch(typed);
          setRefusal(null);
        }}
        refusal={refusal}
      />
      <TextField
        label="Micrometer"
        hint="Its name or number; may stay empty."
        maxLength={100}
        value={micrometer.value}
        onChange={micrometer.change}
      />
      <Button type="submit" kind="filled" size="bench" keyHint="Enter">
        Begin to measure
      </Button>
    </EnterThrough>
  );
}

/** The batch that a label names, or the newest one of a part that has something in it. */
async function batchCalled(code: string): Promise<BoxSetUp['batch']> {
  const found = await call('stock.findCode', { code });
  if (found?.kind !== 'batch' && found?.kind !== 'part') {
    throw new Error(`Nothing in stock is called “${code}”: scan the label of its batch, or leave this empty.`);
  }
  const part = await call('stock.getPart', { partId: found.partId });
  const batch = part.batches.find((each) =>
    found.kind === 'batch' ? each.batchId === found.batchId : each.onHand > 0,
  );
  if (!batch || batch.onHand === 0) {
    throw new Error(`Nothing of ${part.number} is on hand to be measured: receive it first, or leave this empty.`);
  }
  const mark = [batch.mark, batch.document].find((each) => each !== '') ?? `received ${batch.receivedOn}`;
  return { batchId: batch.batchId, name: `${part.number}, ${mark}` };
}
