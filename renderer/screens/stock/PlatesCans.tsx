// The cans of an outline by class with their counts: how most shops keep their plates.
import { useRef, useState } from 'react';
import type { Can, OutlineLine } from '../../../app/stock/plates.contract.ts';
import { Button } from '../../components/Button.tsx';
import { classNames } from '../../components/class-names.ts';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { PopoverDialog } from '../../components/PopoverDialog.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { refusalAbout } from '../../rpc/failures.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { PlateMark } from './PlateMark.tsx';
import styles from './PlatesCans.module.css';
import { useFocusBack } from './use-focus-back.ts';
import { useLengthWords } from './use-length-words.ts';

type PlatesCansProps = {
  outline: string;
  kinds: OutlineLine['kinds'];
  cans: readonly Can[];
  opened: number | null;
  onOpen: (side: { can: number }) => void;
};

export function PlatesCans({ outline, kinds, cans, opened, onOpen }: PlatesCansProps) {
  const words = useLengthWords();
  const list = useRef<HTMLUListElement>(null);
  useFocusBack(list, opened);
  const total = cans.reduce((sum, can) => sum + can.count, 0);
  return (
    <div>
      <header className={styles.head}>
        <h2>
          {cans.length === 0 ? 'No cans' : `${total} in ${cans.length === 1 ? 'one can' : `${cans.length} cans`}`}
        </h2>
        <PopoverDialog words="Add a can" title={`A can of ${outline}`}>
          {(close) => <NewCan outline={outline} kind={kinds[0] ?? 'steel'} onDone={close} />}
        </PopoverDialog>
      </header>
      {cans.length > 0 && (
        <ul ref={list} className={styles.cans} aria-label="Cans">
          {cans.map((can) => (
            <li key={can.canId}>
              <button
                type="button"
                className={classNames(styles.can, can.count === 0 && styles.empty)}
                data-opens={can.canId}
                aria-current={can.canId === opened ? 'true' : undefined}
                onClick={() => onOpen({ can: can.canId })}
              >
                <span className={styles.height}>
                  <span className="spoken">Can </span>
                  {words.full(can.height_nm)}
                </span>{' '}
                {can.count === 0 ? <span /> : <PlateMark mark="free" />}
                <span className={styles.count}>
                  {can.count === 0 ? <span className="small quiet">empty</span> : <b>{can.count}</b>}{' '}
                  {can.count > 0 && <span className="spoken">in it</span>}
                  {kinds.length > 1 && <span className="small quiet">{can.kind}s</span>}
                </span>
              </button>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}

type NewCanProps = { outline: string; kind: Can['kind']; onDone: () => void };

function NewCan({ outline, kind, onDone }: NewCanProps) {
  const words = useLengthWords();
  const { person } = useAtBench();
  const [height, setHeight] = useState('');
  const [count, setCount] = useState('');
  const [isTried, setTried] = useState(false);
  const write = useWrite('stock.addCan');
  const isCounted = /^[1-9]\d{0,3}$/.test(count.trim());
  const add = () => {
    setTried(true);
    if (!isCounted) return;
    write.mutate({ kind, outline, typed: height, count: Number(count), by: person.personId }, { onSuccess: onDone });
  };
  return (
    <EnterThrough label="A new can" onFinish={add} className={styles.form}>
      <TextField
        label={`Height of its ${kind}s`}
        unit={words.unit}
        inputMode="decimal"
        autoFocus
        value={height}
        onChange={setHeight}
        refusal={refusalAbout('typed', write.error)}
      />
      <TextField
        label="How many are in it"
        inputMode="numeric"
        value={count}
        onChange={setCount}
        refusal={isTried && !isCounted ? 'Type a whole number from 1 to 9999.' : null}
      />
      <Button type="submit" kind="filled" isPending={write.isPending}>
        Add the can
      </Button>
      {refusalAbout('typed', write.error) === null && <FailureSentence error={write.error} />}
    </EnterThrough>
  );
}
