// A plate measured again: its new height counts from now on, the old one stays on record.
import { useState } from 'react';
import { Button } from '../../components/Button.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { refusalAbout } from '../../rpc/failures.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { useDraft } from '../../text/use-draft.ts';
import styles from './PlatePanel.module.css';
import { useLengthWords } from './use-length-words.ts';

export function PlateMeasureForm({ pieceId, onDone }: { pieceId: number; onDone: () => void }) {
  const words = useLengthWords();
  const { person } = useAtBench();
  const typed = useDraft(`height of plate ${pieceId}`, '');
  const [reason, setReason] = useState('measured again');
  const write = useWrite('stock.remeasurePiece');
  const measure = () =>
    write.mutate(
      { pieceId, typed: typed.value, reason, by: person.personId },
      {
        onSuccess: () => {
          typed.clear();
          onDone();
        },
      },
    );
  return (
    <EnterThrough label="Measure again" onFinish={measure} className={styles.form}>
      <TextField
        label="Height"
        hint="Or several around the plate, with blanks between."
        unit={words.unit}
        inputMode="decimal"
        autoFocus
        value={typed.value}
        onChange={typed.change}
        refusal={refusalAbout('typed', write.error)}
      />
      <TextField label="Why" value={reason} onChange={setReason} refusal={refusalAbout('reason', write.error)} />
      <Button type="submit" kind="filled" isPending={write.isPending}>
        It is this high now
      </Button>
      {refusalAbout('typed', write.error) === null && <FailureSentence error={write.error} />}
    </EnterThrough>
  );
}
