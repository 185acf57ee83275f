// Let a check stand as it is although it is not in: with the reason, which goes on the report.
import { useNavigate } from '@tanstack/react-router';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { TextField } from '../../components/TextField.tsx';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { refusalAbout } from '../../rpc/failures.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { useAtCheck } from './at-check.ts';
import type { Go } from './bench-step.ts';
import { CheckPage } from './CheckPage.tsx';
import { resultSentence } from './result-words.ts';
import { useBenchDraft } from './use-bench-draft.ts';
import { useBeside } from './use-beside.tsx';

export function KeepStep({ go }: { go: Go }) {
  const beside = useBeside();
  const at = useAtCheck();
  const { job, check, takes, by } = at;
  const navigate = useNavigate();
  const keeping = useWrite('jobs.overrideCheck');
  const reason = useBenchDraft(`reason to keep check ${check.checkId}, job ${job.jobId}`, '');
  const take = takes.at(-1);
  const keep = () =>
    keeping.mutate(
      { jobId: job.jobId, checkId: check.checkId, reason: reason.value, by },
      {
        onSuccess: () => {
          reason.clear();
          void navigate({ to: '/bench', search: { unit: job.jobId } });
        },
      },
    );
  const refusal = refusalAbout('reason', keeping.error);
  return (
    <CheckPage
      phase={take?.phase ?? null}
      prompt={
        <>
          <h1 className="say">{take ? resultSentence(take, at) : ''} Keep it as it is: why?</h1>
          <p className="quiet">The reason and your name stand on the report.</p>
        </>
      }
      keys={[
        { key: 'Enter', words: 'Keep as is', isFilled: true, onPress: keep },
        { key: 'B', words: 'Back', onPress: () => go({ at: 'result' }) },
      ]}
      aside={beside}
    >
      <EnterThrough label="Keep as is" onFinish={keep}>
        <TextField
          label="Reason"
          size="bench"
          value={reason.value}
          onChange={reason.change}
          refusal={refusal}
          autoFocus
        />
      </EnterThrough>
      {refusal === null && <FailureSentence error={keeping.error} />}
    </CheckPage>
  );
}
