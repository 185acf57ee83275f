// Parts came in: how many, and what tells the batch from others. Enter goes on, and finishes once there is enough.
import { type KeyboardEvent, useRef, useState } from 'react';
import type { Part } from '../../../app/stock/parts.contract.ts';
import { Button } from '../../components/Button.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useHandAtRefusal } from '../../frame/use-hand-at-refusal.ts';
import { Refused, refusalAbout } from '../../rpc/failures.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { countRefusal, countTyped } from '../../text/part-words.ts';
import { useMoneyWords } from '../../text/use-money-words.ts';
import styles from './PartForms.module.css';
import { useEscape } from './use-escape.ts';
import type { ShelfAct } from './use-take-back.ts';

type ReceiveFormProps = { part: Part; onDone: (act: ShelfAct) => void; onLeave: () => void };

const blank = { quantity: '', mark: '', document: '', receivedOn: '', unitCost: '' };
const shownFields = ['quantity', 'mark', 'document', 'receivedOn', 'unitCost'];

export function ReceiveForm({ part, onDone, onLeave }: ReceiveFormProps) {
  const [typed, setTyped] = useState(blank);
  const [isTried, setTried] = useState(false);
  const change = (more: Partial<typeof blank>) => setTyped((before) => ({ ...before, ...more }));
  const { person } = useAtBench();
  const money = useMoneyWords();
  const write = useWrite('stock.receiveBatch');
  const quantity = countTyped(typed.quantity);
  useEscape(onLeave);
  const box = useRef<HTMLDivElement>(null);
  useHandAtRefusal(box, write.error);

  // The hand belongs at what was refused.
  const goToRefused = () => {
    requestAnimationFrame(() => box.current?.querySelector<HTMLElement>('input[aria-invalid="true"]')?.focus());
  };
  const receive = () => {
    setTried(true);
    if (quantity === null) goToRefused();
    if (quantity === null || write.isPending) return;
    const { mark, document, receivedOn, unitCost } = typed;
    write.mutate(
      {
        partId: part.partId,
        quantity,
        mark,
        document,
        receivedOn: receivedOn === '' ? null : receivedOn,
        unitCost,
        by: person.personId,
      },
      {
        onSuccess: ({ batchId }) =>
          onDone({ words: `${quantity} received, ${mark.trim() || document.trim()}.`, batchId, back: -quantity }),
      },
    );
  };
  // A mark or a document is enough: the day is today and the cost the part's, unless one goes on to them with Tab.
  const finishHere = (event: KeyboardEvent, isEnough: boolean) => {
    if (event.key !== 'Enter' || event.repeat || !isEnough) return;
    event.preventDefault();
    receive();
  };
  const about = (field: string) => refusalAbout(field, write.error);
  return (
    <div ref={box}>
      <EnterThrough label="Receive" onFinish={receive} className={styles.line}>
        <span className={styles.few}>
          <TextField
            label="How many came in"
            inputMode="numeric"
            autoFocus
            value={typed.quantity}
            onChange={(quantity) => change({ quantity })}
            refusal={about('quantity') ?? (isTried && quantity === null ? countRefusal : null)}
          />
        </span>
        <span className={styles.some}>
          <TextField
            label="Batch mark"
            maxLength={200}
            value={typed.mark}
            onChange={(mark) => change({ mark })}
            onKeyDown={(event) => finishHere(event, typed.mark.trim() !== '')}
            refusal={about('mark')}
          />
        </span>
        <span className={styles.some}>
          <TextField
            label="or invoice, packing slip"
            maxLength={200}
            value={typed.document}
            onChange={(document) => change({ document })}
            onKeyDown={(event) => finishHere(event, true)}
            refusal={about('document')}
          />
        </span>
        <span className={styles.some}>
          <TextField
            label="Day, if not today"
            type="date"
            value={typed.receivedOn}
            onChange={(receivedOn) => change({ receivedOn })}
            refusal={about('receivedOn')}
          />
        </span>
        <span className={styles.few}>
          <TextField
            label={part.cost_cents === null ? 'Cost of one' : `Cost, if not ${money(part.cost_cents)}`}
            inputMode="decimal"
            maxLength={200}
            value={typed.unitCost}
            onChange={(unitCost) => change({ unitCost })}
            refusal={about('unitCost')}
          />
        </span>
        <span className={styles.keys}>
          <Button type="submit" kind="filled" keyHint="Enter" isPending={write.isPending}>
            Receive
          </Button>
          <Button onPress={onLeave} keyHint="Esc">
            Leave it
          </Button>
        </span>
      </EnterThrough>
      {!isShownAtField(write.error) && <FailureSentence error={write.error} />}
    </div>
  );
}

function isShownAtField(error: Error | null): boolean {
  return error instanceof Refused && error.field !== null && shownFields.includes(error.field);
}
