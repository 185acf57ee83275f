// The warranty a unit left with: when it ends, since when it is in service, and what it was before it was changed.
import { useState } from 'react';
import type { DeliveryOfJob } from '../../../app/jobs/delivery.contract.ts';
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import { readTerms, typedTerms } from '../../../app/jobs/typed-terms.ts';
import { isNone, warrantyWords } from '../../../app/jobs/warranty.ts';
import { Button } from '../../components/Button.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { PopoverDialog } from '../../components/PopoverDialog.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { WarrantyFields } from '../../frame/WarrantyFields.tsx';
import { refusalAbout } from '../../rpc/failures.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { sayDayAndTime } from '../../text/say-date.ts';
import { useDraft } from '../../text/use-draft.ts';
import styles from './DeliveryScreen.module.css';
import forms from './DoorForms.module.css';
import { sayBusinessDay } from './days.ts';

export function WarrantyOfJob({ job, known }: { job: Job; known: DeliveryOfJob }) {
  const { decimalMark } = useOpenShop().settings;
  const { warranty, earlierWarranties } = known;
  if (!warranty) return null;
  const say = (each: typeof warranty) => warrantyWords(each, { decimalMark, sayDay: sayBusinessDay });
  const isOpen = warranty.inServiceOn === null && !isNone(warranty.terms);
  return (
    <section aria-label="Warranty">
      <h2>Warranty</h2>
      <p className={styles.big}>{say(warranty)}</p>
      <p>
        {isOpen
          ? 'Not in service yet: write the day down when they call.'
          : warranty.inServiceOn !== null && `In service since ${sayBusinessDay(warranty.inServiceOn)}.`}
      </p>
      <p className="small quiet">
        {warranty.by}, {sayDayAndTime(warranty.at)}
        {warranty.reason !== '' && `: ${warranty.reason}`}
      </p>
      <ul className={styles.earlier}>
        {earlierWarranties.map((each) => (
          <li key={each.at}>
            <s>{say(each)}</s> {each.by}, {sayDayAndTime(each.at)}
          </li>
        ))}
      </ul>
      <div className={styles.keys}>
        <PopoverDialog
          words={isOpen ? 'It went into service' : 'Change the warranty'}
          kind={isOpen ? 'filled' : 'plain'}
          title={isOpen ? 'It went into service' : 'Change the warranty'}
        >
          {(close) => <WarrantyForm job={job} known={known} isBeginning={isOpen} onDone={close} />}
        </PopoverDialog>
      </div>
    </section>
  );
}

type WarrantyFormProps = { job: Job; known: DeliveryOfJob; isBeginning: boolean; onDone: () => void };

function WarrantyForm({ job, known, isBeginning, onDone }: WarrantyFormProps) {
  const { file, settings } = useOpenShop();
  const { person } = useAtBench();
  const write = useWrite('jobs.changeWarranty');
  const { decimalMark, warrantyDistanceUnit } = settings;
  const standing = known.warranty;
  const [isTried, setTried] = useState(false);
  const draft = useDraft(`warranty: ${file}, job ${job.jobId}`, {
    terms: typedTerms(standing?.terms ?? known.usualTerms, warrantyDistanceUnit),
    inServiceOn: standing?.inServiceOn ?? '',
    reason: '',
  });
  const { terms: typed, inServiceOn: day, reason } = draft.value;
  const { terms, refusals } = readTerms(typed, decimalMark);
  const lacksDay = isBeginning && day === '';
  const aboutDay = refusalAbout('inServiceOn', write.error);
  const aboutReason = refusalAbout('reason', write.error);
  const keep = () => {
    setTried(true);
    if (terms === null || lacksDay || write.isPending) return;
    write.mutate(
      { jobId: job.jobId, terms, inServiceOn: day === '' ? null : day, reason, by: person.personId },
      {
        onSuccess: () => {
          draft.clear();
          onDone();
        },
      },
    );
  };
  return (
    <EnterThrough label="Warranty" onFinish={keep} className={forms.wide}>
      <TextField
        label="In service since"
        type="date"
        value={day}
        onChange={(inServiceOn) => draft.change({ ...draft.value, inServiceOn })}
        refusal={isTried && lacksDay ? 'Say since which day.' : aboutDay}
        autoFocus
      />
      {!isBeginning && (
        <>
          <WarrantyFields
            value={typed}
            onChange={(value) => draft.change({ ...draft.value, terms: value })}
            refusals={refusals}
          />
          <TextField
            label="Why it is changed"
            value={reason}
            onChange={(value) => draft.change({ ...draft.value, reason: value })}
            refusal={aboutReason}
            maxLength={200}
          />
        </>
      )}
      <p className={styles.said} role="status">
        {terms &&
          `Warranty: ${warrantyWords({ terms, inServiceOn: day === '' ? null : day }, { decimalMark, sayDay: sayBusinessDay })}.`}
      </p>
      <Button type="submit" kind="filled" keyHint="Enter" isPending={write.isPending}>
        Write it down
      </Button>
      {aboutDay === null && aboutReason === null && <FailureSentence error={write.error} />}
    </EnterThrough>
  );
}
