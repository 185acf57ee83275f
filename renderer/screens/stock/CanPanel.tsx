// One can of an outline: counted, filled up, labelled, traced.
import { useState } from 'react';
import type { Can } from '../../../app/stock/plates.contract.ts';
import { Button } from '../../components/Button.tsx';
import { EmptyState } from '../../components/EmptyState.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { Notice } from '../../components/Notice.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { useWrite } from '../../rpc/use-write.ts';
import styles from './PlatePanel.module.css';
import { PlateSidePanel } from './PlateSidePanel.tsx';
import { useLengthWords } from './use-length-words.ts';

type CanPanelProps = { can: Can | undefined; onClose: () => void };

export function CanPanel({ can, onClose }: CanPanelProps) {
  if (!can) {
    return (
      <EmptyState level={2} title="That can is not of this outline." act={<Button onPress={onClose}>Close</Button>} />
    );
  }
  return <KnownCan can={can} onClose={onClose} />;
}

type Act = 'count' | 'add';
/** By how much it changed, for who slipped. */
type Done = { readonly says: string; readonly change: number };

function KnownCan({ can, onClose }: { can: Can; onClose: () => void }) {
  const words = useLengthWords();
  const { person } = useAtBench();
  const [act, setAct] = useState<Act | null>(null);
  const [done, setDone] = useState<Done | null>(null);
  const count = useWrite('stock.countCan');
  const move = useWrite('stock.moveInCan');
  const about = { canId: can.canId, by: person.personId };
  const finish = (says: Done | null) => ({
    onSuccess: () => {
      setAct(null);
      setDone(says);
    },
  });
  const countIt = (counted: number, reason: string) =>
    count.mutate(
      { ...about, count: counted, reason },
      finish({ says: `There are ${counted} in it now.`, change: counted - can.count }),
    );
  const putIn = (more: number, reason: string) =>
    move.mutate({ ...about, change: more, reason }, finish({ says: `${more} put in.`, change: more }));
  const undo = ({ change }: Done) => move.mutate({ ...about, change: -change, reason: 'taken back' }, finish(null));
  const begin = (next: Act) => {
    setDone(null);
    setAct(act === next ? null : next);
  };
  return (
    <PlateSidePanel title={`Can ${words.full(can.height_nm)}`} says={words.unit} onClose={onClose}>
      <p>
        <span className="say">{can.count}</span> {can.count === 1 ? can.kind : `${can.kind}s`} in it
      </p>
      <div className={styles.keys} data-acts>
        <Button onPress={() => begin('count')}>Count it</Button>
        <Button onPress={() => begin('add')}>Put more in</Button>
        <LinkKey to="/stock/labels" search={{ of: `can:${can.canId}` }}>
          Label
        </LinkKey>
        <LinkKey to="/stock/trace/$kind/$id" params={{ kind: 'can', id: String(can.canId) }}>
          Trace
        </LinkKey>
      </div>
      {done && (
        <div className={styles.keys}>
          <Notice kind="done">{done.says}</Notice>
          {done.change !== 0 && <Button onPress={() => undo(done)}>Take it back</Button>}
        </div>
      )}
      {act && (
        <CanCountForm
          key={act}
          act={act}
          isPending={count.isPending || move.isPending}
          onKeep={act === 'count' ? countIt : putIn}
        />
      )}
      <FailureSentence error={count.error ?? move.error} />
    </PlateSidePanel>
  );
}

type CanCountFormProps = {
  act: Act;
  isPending: boolean;
  onKeep: (typed: number, reason: string) => void;
};

function CanCountForm({ act, isPending, onKeep }: CanCountFormProps) {
  const [typed, setTyped] = useState('');
  const [reason, setReason] = useState(act === 'count' ? 'counted' : 'put in');
  const [isTried, setTried] = useState(false);
  const isCounted = (act === 'count' ? /^\d{1,4}$/ : /^[1-9]\d{0,3}$/).test(typed.trim());
  const keep = () => {
    setTried(true);
    if (!isCounted || reason.trim() === '') return;
    onKeep(Number(typed), reason);
  };
  return (
    <EnterThrough label={act === 'count' ? 'Count it' : 'Put more in'} onFinish={keep} className={styles.form}>
      <TextField
        label={act === 'count' ? 'How many are in it' : 'How many go in'}
        inputMode="numeric"
        autoFocus
        value={typed}
        onChange={setTyped}
        refusal={isTried && !isCounted ? `Type a whole number from ${act === 'count' ? '0' : '1'} to 9999.` : null}
      />
      <TextField
        label="Why"
        value={reason}
        onChange={setReason}
        refusal={isTried && reason.trim() === '' ? 'Say why, in a word.' : null}
      />
      <Button type="submit" kind="filled" isPending={isPending}>
        {act === 'count' ? 'It holds this many' : 'Put them in'}
      </Button>
    </EnterThrough>
  );
}
