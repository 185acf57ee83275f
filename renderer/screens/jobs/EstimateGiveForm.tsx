// The lines as they stand become a numbered estimate, with what was found in words a customer reads.
import type { EstimateOfJob } from '../../../app/jobs/estimate.contract.ts';
import { Button } from '../../components/Button.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { TextArea } from '../../components/TextArea.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { useDraft } from '../../text/use-draft.ts';
import styles from './EstimateScreen.module.css';

export function EstimateGiveForm({ estimate }: { estimate: EstimateOfJob }) {
  const { file } = useOpenShop();
  const { person } = useAtBench();
  const write = useWrite('jobs.giveEstimate');
  const newest = estimate.estimates[0];
  const number = (newest?.number ?? 0) + 1;
  const found = useDraft(`what was found: ${file}, job ${estimate.jobId}, ${number}`, newest?.whatWasFound ?? '');
  const give = () => {
    if (write.isPending) return;
    const input = { jobId: estimate.jobId, whatWasFound: found.value, by: person.personId };
    write.mutate(input, { onSuccess: found.clear });
  };
  return (
    <EnterThrough label="Give the estimate" onFinish={give} className={styles.form}>
      <TextArea
        label="What was found"
        hint="Stands on the paper above the lines. Ctrl and Enter gives it."
        rows={4}
        maxLength={4000}
        value={found.value}
        onChange={found.change}
      />
      <Button type="submit" kind="filled" isPending={write.isPending}>
        {`Give estimate ${number}`}
      </Button>
      <FailureSentence error={write.error} />
    </EnterThrough>
  );
}
