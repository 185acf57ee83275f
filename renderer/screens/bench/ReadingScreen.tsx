// One check of one unit, read at the bench step by step.
import { useState } from 'react';
import type { CheckOfJob, Job } from '../../../app/jobs/jobs.contract.ts';
import { EmptyState } from '../../components/EmptyState.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { useRead } from '../../rpc/use-read.ts';
import { amountWords } from '../../text/amount-words.ts';
import { type AtCheck, AtCheckProvider } from './at-check.ts';
import { useRememberPlace } from './bench-place.ts';
import { firstStep, type Step } from './bench-step.ts';
import { StepAtBench } from './StepAtBench.tsx';

export function ReadingScreen({ jobId, checkId }: { jobId: number; checkId: number }) {
  const job = useRead('jobs.getJob', { jobId });
  return (
    <Loaded read={job}>
      {(found) => {
        const check = found.checks.find((each) => each.checkId === checkId);
        if (!check)
          return <EmptyState title={`Job ${found.number} has no such check.`}>Choose one at the bench.</EmptyState>;
        if (found.isClosed) return <ClosedJob job={found} />;
        return <CheckAtBench key={`${jobId} ${checkId}`} job={found} check={check} />;
      }}
    </Loaded>
  );
}

function ClosedJob({ job }: { job: Job }) {
  const toTicket = (
    <LinkKey to="/jobs/$jobId" params={{ jobId: String(job.jobId) }}>
      See the ticket
    </LinkKey>
  );
  return (
    <EmptyState title={`Job ${job.number} is closed.`} act={toTicket}>
      What was read stands on its ticket; nothing more is read on a closed job.
    </EmptyState>
  );
}

function CheckAtBench({ job, check }: { job: Job; check: CheckOfJob }) {
  const of = { jobId: job.jobId, checkId: check.checkId };
  const shop = useOpenShop();
  const { person } = useAtBench();
  const takes = useRead('readings.listTakes', of);
  const lastSetup = useRead('readings.lastSetup', of);
  const pack = useRead('packs.getPack', check.packId === null ? null : { jobId: job.jobId, packId: check.packId });
  useRememberPlace(job.jobId, check.checkId);
  const at = (packOfJob: AtCheck['pack'], found: Pick<AtCheck, 'takes' | 'lastSetup'>): AtCheck => ({
    job,
    check,
    pack: packOfJob,
    ...found,
    settings: shop.settings,
    words: amountWords(check, shop.settings),
    by: person.personId,
  });
  return (
    <Loaded read={takes}>
      {(allTakes) => (
        <Loaded read={lastSetup}>
          {(setup) => {
            const found = { takes: allTakes, lastSetup: setup };
            if (check.packId === null) return <StepByStep at={at(null, found)} />;
            return <Loaded read={pack}>{(packOfJob) => <StepByStep at={at(packOfJob, found)} />}</Loaded>;
          }}
        </Loaded>
      )}
    </Loaded>
  );
}

function StepByStep({ at }: { at: AtCheck }) {
  const [step, go] = useState<Step>(() => firstStep(at));
  return (
    <AtCheckProvider value={at}>
      <StepAtBench step={step} go={go} />
    </AtCheckProvider>
  );
}
