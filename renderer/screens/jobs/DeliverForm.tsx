// Handing a unit over: the delivery and the warranty it leaves with, in one go.
import { useRef, useState } from 'react';
import type { DeliveryOfJob } from '../../../app/jobs/delivery.contract.ts';
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import { readTerms, typedTerms } from '../../../app/jobs/typed-terms.ts';
import { warrantyWords } from '../../../app/jobs/warranty.ts';
import { Button } from '../../components/Button.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { RadioGroup } from '../../components/RadioGroup.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { useHandAtRefusal } from '../../frame/use-hand-at-refusal.ts';
import { WarrantyFields } from '../../frame/WarrantyFields.tsx';
import { refusalAbout } from '../../rpc/failures.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { today } from '../../text/say-date.ts';
import { useDraft } from '../../text/use-draft.ts';
import styles from './DeliveryScreen.module.css';
import { sayBusinessDay } from './days.ts';
import { HandoverEntry } from './HandoverEntry.tsx';
import { handoverOf, handoverRefusals } from './handover-draft.ts';
import { TakenBack } from './TakenBack.tsx';

export function DeliverForm({ job, known }: { job: Job; known: DeliveryOfJob }) {
  const { file, settings } = useOpenShop();
  const { person } = useAtBench();
  const write = useWrite('jobs.deliver');
  const [isTried, setTried] = useState(false);
  const { decimalMark, warrantyDistanceUnit } = settings;
  const draft = useDraft(`delivery: ${file}, job ${job.jobId}`, {
    handover: {
      deliveredTo: job.customer.name,
      deliveredOn: today(),
      distance: '',
      distanceUnit: job.distance?.unit ?? 'miles',
      handedOverById: null as number | null,
    },
    terms: typedTerms(known.warranty?.terms ?? known.usualTerms, warrantyDistanceUnit),
    starts: 'that day' as 'that day' | 'later',
    reason: '',
  });
  const { handover, terms: typed, starts, reason } = draft.value;
  const { terms, refusals } = readTerms(typed, decimalMark);
  const inServiceOn = starts === 'that day' && handover.deliveredOn !== '' ? handover.deliveredOn : null;
  const about = refusalAbout('deliveredOn', write.error);
  // Asked only once it was refused for what is missing.
  const asked = refusalAbout('reason', write.error);
  const box = useRef<HTMLDivElement>(null);
  useHandAtRefusal(box, write.error);
  const deliver = () => {
    setTried(true);
    const meant = handoverOf(handover, decimalMark, person.personId);
    if (meant === null || terms === null || write.isPending) return;
    write.mutate(
      { jobId: job.jobId, ...meant, warranty: { terms, inServiceOn }, reason, by: person.personId },
      { onSuccess: draft.clear },
    );
  };
  return (
    <EnterThrough label="Hand it over" onFinish={deliver} className={styles.form}>
      <TakenBack earlier={known.earlierDeliveries} />
      <h2>Hand it over</h2>
      <HandoverEntry
        value={handover}
        onChange={(value) => draft.change({ ...draft.value, handover: value })}
        refusals={{
          ...(isTried && handoverRefusals(handover, decimalMark)),
          ...(about !== null && { deliveredOn: about }),
        }}
      />
      <h2>Warranty</h2>
      <WarrantyFields
        value={typed}
        onChange={(value) => draft.change({ ...draft.value, terms: value })}
        refusals={refusals}
      />
      <RadioGroup
        label="It begins"
        options={[
          { id: 'that day', words: 'the day it leaves' },
          { id: 'later', words: 'when it goes into service' },
        ]}
        value={starts}
        onChange={(value) => draft.change({ ...draft.value, starts: value })}
        hint={starts === 'later' ? 'The day is written down when they call.' : undefined}
      />
      <p className={styles.said} role="status">
        {terms && `Warranty: ${warrantyWords({ terms, inServiceOn }, { decimalMark, sayDay: sayBusinessDay })}.`}
      </p>
      {(asked !== null || reason !== '') && (
        <div ref={box} className={styles.why}>
          <TextField
            label="Why it leaves all the same"
            value={reason}
            onChange={(value) => draft.change({ ...draft.value, reason: value })}
            refusal={asked}
          />
        </div>
      )}
      <Button type="submit" kind="filled" keyHint="Enter" isPending={write.isPending}>
        Hand it over
      </Button>
      {job.missing.length > 0 && (
        <p className="small quiet">
          {job.missing.length === 1 ? 'One check is' : `${job.missing.length} checks are`} still open: once it has left
          nothing more is read on it.
        </p>
      )}
      {about === null && asked === null && <FailureSentence error={write.error} />}
    </EnterThrough>
  );
}
