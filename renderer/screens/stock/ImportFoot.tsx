// The key that imports, saying what it will do.
import { useState } from 'react';
import type { Output } from '../../../app/contract/contract.ts';
import { Button } from '../../components/Button.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useWrite } from '../../rpc/use-write.ts';
import styles from './ImportFoot.module.css';
import type { SourceText } from './import-source-text.ts';
import type { ImportChoice } from './use-import-preview.ts';

export type Imported = Output<'stock.importCsv'>;

type ImportFootProps = {
  source: SourceText;
  choice: ImportChoice;
  totals: Imported['totals'];
  onDone: (imported: Imported) => void;
};

export function ImportFoot({ source, choice, totals, onDone }: ImportFootProps) {
  const [reason, setReason] = useState('');
  const [isTried, setTried] = useState(false);
  const { person } = useAtBench();
  const write = useWrite('stock.importCsv');
  const isCount = choice.target === 'counts';
  const isUnreasoned = isCount && reason.trim() === '';
  const takeIn = () => {
    setTried(true);
    if (isUnreasoned) return;
    const { target, delimiter, mapping } = choice;
    write.mutate(
      {
        target,
        text: source.text,
        delimiter,
        mapping: mapping && [...mapping],
        reason: reason.trim(),
        by: person.personId,
      },
      { onSuccess: onDone },
    );
  };
  const count = totals.add + totals.change;
  return (
    <EnterThrough label="Import" onFinish={takeIn} className={styles.foot}>
      {isCount && (
        <TextField
          label="Why these counts"
          hint="Stands in the ledger beside each: “yearly count”."
          value={reason}
          onChange={setReason}
          refusal={isTried && isUnreasoned ? 'Say why they were counted.' : null}
        />
      )}
      <Button type="submit" kind="filled" isDisabled={count === 0} isPending={write.isPending}>
        {keyWords(count, totals.reject)}
      </Button>
      <FailureSentence error={write.error} />
    </EnterThrough>
  );
}

/** "1 row", "1,240 rows". */
export function rowsWords(count: number): string {
  return count === 1 ? '1 row' : `${count.toLocaleString('en-US')} rows`;
}

function keyWords(count: number, rejected: number): string {
  if (count === 0) return 'Nothing to take in';
  return rejected === 0
    ? `Take in ${rowsWords(count)}`
    : `Take in ${rowsWords(count)}, leave out ${rejected.toLocaleString('en-US')}`;
}
