// A part to be replaced as a line of the estimate: its price is typed, the rest is known.
import { useState } from 'react';
import { partWords } from '../../../app/jobs/finding-words.ts';
import type { Finding } from '../../../app/jobs/findings.contract.ts';
import { Button } from '../../components/Button.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { PopoverDialog } from '../../components/PopoverDialog.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { refusalAbout } from '../../rpc/failures.ts';
import { useWrite } from '../../rpc/use-write.ts';
import styles from './Teardown.module.css';

export function FindingOnEstimate({ jobId, finding }: { jobId: number; finding: Finding }) {
  if (finding.isCharged) return <span className="small quiet">on the estimate</span>;
  return (
    <PopoverDialog
      words="Price…"
      title={`Price of ${partWords(finding)}`}
      aria-label={`Price of ${partWords(finding)}`}
    >
      {(close) => <PriceForm jobId={jobId} finding={finding} onDone={close} />}
    </PopoverDialog>
  );
}

function PriceForm({ jobId, finding, onDone }: { jobId: number; finding: Finding; onDone: () => void }) {
  const { person } = useAtBench();
  const by = person.personId;
  const [unitPrice, setPrice] = useState('');
  const add = useWrite('jobs.addLine');
  const charge = useWrite('jobs.chargeFinding');
  const line = {
    kind: 'part',
    description: partWords(finding),
    quantity: '1',
    unitPrice: unitPrice.trim(),
    unitCost: '',
    isTaxable: true,
    batchId: null,
  } as const;
  const put = () => {
    if (add.isPending || charge.isPending) return;
    add.mutate(
      { jobId, line, by },
      {
        onSuccess: ({ lineId }) => charge.mutate({ findingId: finding.findingId, lineId, by }, { onSuccess: onDone }),
      },
    );
  };
  const aboutPrice = refusalAbout('unitPrice', add.error);
  return (
    <EnterThrough label={`Price of ${partWords(finding)}`} onFinish={put} className={styles.form}>
      <TextField
        label="Price of one"
        inputMode="decimal"
        autoFocus
        value={unitPrice}
        onChange={setPrice}
        refusal={aboutPrice}
      />
      <Button type="submit" kind="filled" keyHint="Enter" isPending={add.isPending || charge.isPending}>
        Onto the estimate
      </Button>
      {aboutPrice === null && <FailureSentence error={add.error ?? charge.error} />}
    </EnterThrough>
  );
}
