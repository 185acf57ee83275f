// One finding after the other, by keyboard: Enter from entry to entry, and the last one writes it down.
import { useRef, useState } from 'react';
import { findingDecisions } from '../../../app/jobs/findings.contract.ts';
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import { Button } from '../../components/Button.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { RadioGroup } from '../../components/RadioGroup.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { refusalAbout } from '../../rpc/failures.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { useDraft } from '../../text/use-draft.ts';
import { FindingFields, withWholeCondition } from './FindingFields.tsx';
import { blankFinding, type NewFinding, nextFinding, typedFinding } from './finding-draft.ts';
import styles from './Teardown.module.css';
import { usePacksOfSheet } from './use-packs-of-sheet.ts';

export function FindingEntry({ job }: { job: Job }) {
  const { file } = useOpenShop();
  const { person } = useAtBench();
  const packs = usePacksOfSheet(job);
  const draft = useDraft<NewFinding>(`finding: ${file}, job ${job.jobId}`, blankFinding);
  const [isTried, setTried] = useState(false);
  const box = useRef<HTMLDivElement>(null);
  const write = useWrite('jobs.recordFinding');
  const finding = typedFinding(draft.value);
  const change = (some: Partial<NewFinding>) => {
    if (write.error) write.reset();
    draft.change({ ...draft.value, ...some });
  };
  const keep = () => {
    setTried(finding === null);
    if (finding === null || write.isPending) return;
    const { decision } = draft.value;
    write.mutate(
      { jobId: job.jobId, finding, decision, by: person.personId },
      {
        onSuccess: () => {
          draft.change(nextFinding(withWholeCondition(draft.value), packs));
          const entry = box.current?.querySelector<HTMLInputElement>('input');
          entry?.focus();
          requestAnimationFrame(() => entry?.select());
        },
      },
    );
  };
  return (
    <div ref={box}>
      <EnterThrough label="Write a finding down" onFinish={keep} className={styles.entry}>
        <FindingFields
          job={job}
          packs={packs}
          draft={draft.value}
          onChange={change}
          isTried={isTried}
          error={write.error}
        >
          <RadioGroup
            label="Decision"
            options={findingDecisions.map((id) => ({ id, words: id }))}
            value={draft.value.decision}
            onChange={(decision) => change({ decision })}
          />
        </FindingFields>
        <Button type="submit" kind="filled" keyHint="Enter" isPending={write.isPending}>
          Write it down
        </Button>
        {refusalAbout('thickness', write.error) === null && <FailureSentence error={write.error} />}
      </EnterThrough>
    </div>
  );
}
