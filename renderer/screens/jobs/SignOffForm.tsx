// Signing a job off: under the name of who is at the bench, on the stand or in the vehicle.
import { useState } from 'react';
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import { signOffPlaces } from '../../../app/jobs/stages.contract.ts';
import { Button } from '../../components/Button.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { RadioGroup } from '../../components/RadioGroup.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useWrite } from '../../rpc/use-write.ts';
import styles from './DoorForms.module.css';

export function SignOffForm({ job, onDone }: { job: Job; onDone: () => void }) {
  const { person } = useAtBench();
  const write = useWrite('jobs.signOff');
  const [place, setPlace] = useState<(typeof signOffPlaces)[number]>('on stand');
  const [note, setNote] = useState('');
  const open = job.missing.length;
  const sign = () => {
    if (write.isPending) return;
    write.mutate({ jobId: job.jobId, place, note, by: person.personId }, { onSuccess: onDone });
  };
  return (
    <EnterThrough label="Sign off" onFinish={sign} className={styles.form}>
      <p className="small quiet">
        {person.name} signs for what stands in the book now. What is read or rebuilt later has to be signed off again.
        {open > 0 && ` ${open === 1 ? 'One check is' : `${open} checks are`} still open.`}
      </p>
      <RadioGroup
        label="Checked"
        options={signOffPlaces.map((each) => ({ id: each, words: each }))}
        value={place}
        onChange={setPlace}
      />
      <TextField label="Note" value={note} onChange={setNote} maxLength={200} autoFocus />
      <Button type="submit" kind="filled" keyHint="Enter" isPending={write.isPending}>
        Sign off
      </Button>
      <FailureSentence error={write.error} />
    </EnterThrough>
  );
}
