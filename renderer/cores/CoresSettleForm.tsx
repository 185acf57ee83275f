// How one core ended: back where it belongs, charged, or given up.
import { useState } from 'react';
import type { Core, coreEndings } from '../../app/stock/parts.contract.ts';
import { Button } from '../components/Button.tsx';
import { EnterThrough } from '../components/EnterThrough.tsx';
import { RadioGroup } from '../components/RadioGroup.tsx';
import { TextField } from '../components/TextField.tsx';
import { useAtBench } from '../frame/at-bench.ts';
import { FailureSentence } from '../frame/FailureSentence.tsx';
import { useWrite } from '../rpc/use-write.ts';
import styles from './Cores.module.css';

type Ending = (typeof coreEndings)[number];

const wordsOf: Record<Ending, string> = {
  'sent back': 'Sent back',
  'came back': 'Came back',
  charged: 'Charged',
  'written off': 'Written off',
};

export function CoresSettleForm({ core, onDone }: { core: Core; onDone: () => void }) {
  const endings: readonly Ending[] = [
    core.direction === 'to send back' ? 'sent back' : 'came back',
    'charged',
    'written off',
  ];
  const [how, setHow] = useState<Ending>(endings[0] ?? 'charged');
  const [note, setNote] = useState('');
  const { person } = useAtBench();
  const write = useWrite('stock.settleCore');
  const settle = () =>
    write.mutate({ coreId: core.coreId, how, note: note.trim(), by: person.personId }, { onSuccess: onDone });
  return (
    <EnterThrough label="Settle this core" onFinish={settle} className={styles.form}>
      <RadioGroup
        label="How it ended"
        options={endings.map((id) => ({ id, words: wordsOf[id] }))}
        value={how}
        onChange={setHow}
      />
      <TextField label="Note" hint="Credit note, carrier; or nothing." value={note} onChange={setNote} />
      <Button type="submit" kind="filled" isPending={write.isPending}>
        Settle it
      </Button>
      <FailureSentence error={write.error} />
    </EnterThrough>
  );
}
