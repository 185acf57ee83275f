// A plate taken off the list for good, with the reason.
import { useState } from 'react';
import { Button } from '../../components/Button.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useWrite } from '../../rpc/use-write.ts';
import styles from './PlatePanel.module.css';

export function PlateDiscardForm({ pieceId, onDone }: { pieceId: number; onDone: () => void }) {
  const { person } = useAtBench();
  const [reason, setReason] = useState('');
  const [isTried, setTried] = useState(false);
  const write = useWrite('stock.discardPiece');
  const discard = () => {
    setTried(true);
    if (reason.trim() === '') return;
    write.mutate({ pieceId, reason, by: person.personId }, { onSuccess: onDone });
  };
  return (
    <EnterThrough label="Discard" onFinish={discard} className={styles.form}>
      <TextField
        label="Why it is thrown away"
        autoFocus
        value={reason}
        onChange={setReason}
        refusal={isTried && reason.trim() === '' ? 'Say why: dished, hot spots, cracked tooth.' : null}
      />
      <Button type="submit" kind="filled" isPending={write.isPending}>
        Discard it
      </Button>
      <FailureSentence error={write.error} />
    </EnterThrough>
  );
}
