// A call written down: who, which way, what was said.
import { useState } from 'react';
import { callDirections } from '../../../app/jobs/door.contract.ts';
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import { Button } from '../../components/Button.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { RadioGroup } from '../../components/RadioGroup.tsx';
import { TextArea } from '../../components/TextArea.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { useDraft } from '../../text/use-draft.ts';
import styles from './DoorForms.module.css';

type CallDraft = { direction: (typeof callDirections)[number]; withWhom: string; said: string };

export function CallForm({ job, onDone }: { job: Job; onDone: () => void }) {
  const { file } = useOpenShop();
  const { person } = useAtBench();
  const write = useWrite('jobs.logCall');
  const [isTried, setTried] = useState(false);
  const draft = useDraft<CallDraft>(`call: ${file}, job ${job.jobId}`, {
    direction: 'we called',
    withWhom: job.customer.name,
    said: '',
  });
  const { direction, withWhom, said } = draft.value;
  const change = (more: Partial<CallDraft>) => draft.change({ ...draft.value, ...more });
  const keep = () => {
    setTried(true);
    if (withWhom.trim() === '' || said.trim() === '' || write.isPending) return;
    write.mutate(
      { jobId: job.jobId, direction, withWhom, said, by: person.personId },
      {
        onSuccess: () => {
          draft.clear();
          onDone();
        },
      },
    );
  };
  return (
    <EnterThrough label="Write a call down" onFinish={keep} className={styles.form}>
      <RadioGroup
        label="Who called"
        options={callDirections.map((each) => ({ id: each, words: each }))}
        value={direction}
        onChange={(chosen) => change({ direction: chosen })}
      />
      <TextField
        label="With whom"
        value={withWhom}
        onChange={(typed) => change({ withWhom: typed })}
        refusal={isTried && withWhom.trim() === '' ? 'Say with whom.' : null}
        maxLength={200}
      />
      <TextArea
        label="What was said"
        value={said}
        onChange={(typed) => change({ said: typed })}
        refusal={isTried && said.trim() === '' ? 'Say what was said.' : null}
        maxLength={4000}
        autoFocus
      />
      <Button type="submit" kind="filled" keyHint="Ctrl Enter" isPending={write.isPending}>
        Write it down
      </Button>
      <FailureSentence error={write.error} />
    </EnterThrough>
  );
}
