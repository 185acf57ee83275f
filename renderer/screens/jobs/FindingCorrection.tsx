// A finding written down wrong: another card in its place with the reason, or taken back.
import { useState } from 'react';
import { partWords } from '../../../app/jobs/finding-words.ts';
import type { Finding } from '../../../app/jobs/findings.contract.ts';
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import { Button } from '../../components/Button.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { PopoverDialog } from '../../components/PopoverDialog.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { refusalAbout } from '../../rpc/failures.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { FindingFields } from './FindingFields.tsx';
import { draftOfFinding, typedFinding } from './finding-draft.ts';
import styles from './Teardown.module.css';
import { usePacksOfSheet } from './use-packs-of-sheet.ts';

export function FindingCorrection({ job, finding }: { job: Job; finding: Finding }) {
  const name = partWords(finding);
  return (
    <PopoverDialog words="Correct…" title={`Correct ${name}`} aria-label={`Correct ${name}`}>
      {(close) => <CorrectForm job={job} finding={finding} onDone={close} />}
    </PopoverDialog>
  );
}

function CorrectForm({ job, finding, onDone }: { job: Job; finding: Finding; onDone: () => void }) {
  const { person } = useAtBench();
  const by = person.personId;
  const packs = usePacksOfSheet(job);
  const [draft, setDraft] = useState(() => draftOfFinding(finding));
  const [reason, setReason] = useState('');
  const [isTried, setTried] = useState(false);
  const correct = useWrite('jobs.correctFinding');
  const withdraw = useWrite('jobs.withdrawFinding');
  const { findingId } = finding;
  const typed = typedFinding(draft);
  const isReasoned = reason.trim() !== '';
  const keep = () => {
    setTried(true);
    if (typed && isReasoned) correct.mutate({ findingId, finding: typed, reason, by }, { onSuccess: onDone });
  };
  const takeBack = () => {
    setTried(true);
    if (isReasoned) withdraw.mutate({ findingId, reason, by }, { onSuccess: onDone });
  };
  const isAtField = refusalAbout('thickness', correct.error) !== null;
  return (
    <EnterThrough label="Correct a finding" onFinish={keep} className={styles.correction}>
      <FindingFields
        job={job}
        packs={packs}
        draft={draft}
        onChange={(some) => setDraft({ ...draft, ...some })}
        isTried={isTried}
        error={correct.error}
      />
      <TextField
        label="Why"
        value={reason}
        onChange={setReason}
        refusal={isTried && !isReasoned ? 'Say why: the words before stay on record.' : null}
      />
      <span className={styles.keys}>
        <Button type="submit" kind="filled" keyHint="Enter" isPending={correct.isPending}>
          Put it right
        </Button>
        <Button onPress={takeBack} isPending={withdraw.isPending}>
          Take it back
        </Button>
      </span>
      {!isAtField && <FailureSentence error={correct.error ?? withdraw.error} />}
    </EnterThrough>
  );
}
