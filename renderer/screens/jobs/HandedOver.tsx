// The delivery that stands: to whom, when, what was on it; corrected or taken back only with a reason.
import { useState } from 'react';
import type { Delivery, DeliveryOfJob } from '../../../app/jobs/delivery.contract.ts';
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import { distanceWords } from '../../../app/jobs/warranty.ts';
import { Button } from '../../components/Button.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { PopoverDialog } from '../../components/PopoverDialog.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { refusalAbout } from '../../rpc/failures.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { sayDayAndTime } from '../../text/say-date.ts';
import { useDraft } from '../../text/use-draft.ts';
import styles from './DeliveryScreen.module.css';
import forms from './DoorForms.module.css';
import { sayBusinessDay } from './days.ts';
import { HandoverEntry } from './HandoverEntry.tsx';
import { handoverOf, handoverRefusals } from './handover-draft.ts';
import { ReasonForm } from './ReasonForm.tsx';
import { TakenBack } from './TakenBack.tsx';

type HandedOverProps = { job: Job; delivery: Delivery; earlier: DeliveryOfJob['earlierDeliveries'] };

export function HandedOver({ job, delivery, earlier }: HandedOverProps) {
  const { decimalMark } = useOpenShop().settings;
  const { deliveredTo, deliveredOn, distance, handedOverBy, reason, by, at } = delivery;
  return (
    <section aria-label="Handed over">
      <h2>Handed over</h2>
      <p className={styles.big}>
        {sayBusinessDay(deliveredOn)}, to {deliveredTo}
      </p>
      <p>
        {distance === null ? 'What was on it is not known.' : `With ${distanceWords(distance, decimalMark)} on it.`}
      </p>
      <p className="small quiet">
        by {handedOverBy}, written down by {by}, {sayDayAndTime(at)}
        {reason !== '' && `: ${reason}`}
      </p>
      <TakenBack earlier={earlier} />
      <div className={styles.keys}>
        <PopoverDialog words="Correct" title="Correct the delivery">
          {(close) => <CorrectForm job={job} delivery={delivery} onDone={close} />}
        </PopoverDialog>
        <PopoverDialog words="Take it back" title="Take the delivery back">
          {(close) => (
            <ReasonForm
              job={job}
              method="jobs.takeBackDelivery"
              draft="take delivery back"
              label="Take the delivery back"
              lead="For a unit that did not leave, or came straight back. One that ran is checked in again instead."
              refusal="Say why it is here again."
              keyWords="Take it back"
              onDone={close}
            />
          )}
        </PopoverDialog>
      </div>
    </section>
  );
}

function CorrectForm({ job, delivery, onDone }: { job: Job; delivery: Delivery; onDone: () => void }) {
  const { file, people, settings } = useOpenShop();
  const { person } = useAtBench();
  const write = useWrite('jobs.correctDelivery');
  const [isTried, setTried] = useState(false);
  const { decimalMark } = settings;
  const draft = useDraft(`correct delivery: ${file}, job ${job.jobId}`, {
    handover: {
      deliveredTo: delivery.deliveredTo,
      deliveredOn: delivery.deliveredOn,
      distance: delivery.distance === null ? '' : String(delivery.distance.amount),
      distanceUnit: delivery.distance?.unit ?? job.distance?.unit ?? 'miles',
      handedOverById: people.find(({ initials }) => initials === delivery.handedOverBy)?.personId ?? null,
    },
    reason: '',
  });
  const { handover, reason } = draft.value;
  const lacksReason = reason.trim() === '';
  const about = refusalAbout('deliveredOn', write.error);
  const keep = () => {
    setTried(true);
    const meant = handoverOf(handover, decimalMark, person.personId);
    if (meant === null || lacksReason || write.isPending) return;
    write.mutate(
      { jobId: job.jobId, ...meant, reason, by: person.personId },
      {
        onSuccess: () => {
          draft.clear();
          onDone();
        },
      },
    );
  };
  return (
    <EnterThrough label="Correct the delivery" onFinish={keep} className={forms.wide}>
      <HandoverEntry
        autoFocus
        value={handover}
        onChange={(value) => draft.change({ ...draft.value, handover: value })}
        refusals={{
          ...(isTried && handoverRefusals(handover, decimalMark)),
          ...(about !== null && { deliveredOn: about }),
        }}
      />
      <TextField
        label="Why it is corrected"
        value={reason}
        onChange={(typed) => draft.change({ ...draft.value, reason: typed })}
        refusal={isTried && lacksReason ? 'Say why; the earlier words stay on the ticket.' : null}
        maxLength={200}
      />
      <Button type="submit" kind="filled" keyHint="Enter" isPending={write.isPending}>
        Write it anew
      </Button>
      {about === null && <FailureSentence error={write.error} />}
    </EnterThrough>
  );
}
