// Check-in: whose unit it is, which one, what it does. What is typed is kept until the ticket is open.
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import type { Output } from '../../../app/contract/contract.ts';
import { distanceUnits } from '../../../app/jobs/distance.contract.ts';
import { CoveredEntry } from '../../comebacks/CoveredEntry.tsx';
import { Button } from '../../components/Button.tsx';
import { EmptyState } from '../../components/EmptyState.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { FormKeys } from '../../components/FormKeys.tsx';
import { FormSection } from '../../components/FormSection.tsx';
import { RadioGroup } from '../../components/RadioGroup.tsx';
import { TextArea } from '../../components/TextArea.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { PageHead } from '../../frame/PageHead.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { today } from '../../text/say-date.ts';
import { useDraft } from '../../text/use-draft.ts';
import styles from './CheckInScreen.module.css';
import { CustomerEntry } from './CustomerEntry.tsx';
import { blankCheckIn, type CheckInDraft, checkInOf, comebackOf, distanceOf, refusalsOf } from './check-in-draft.ts';
import { DiagnosisEntry } from './DiagnosisEntry.tsx';
import { SmallJobEntry } from './SmallJobEntry.tsx';
import { UnitEntry } from './UnitEntry.tsx';
import { usePastDay } from './use-past-day.ts';

export function CheckInScreen() {
  const families = useRead('specs.listFamilies', {});
  return (
    <>
      <PageHead title="Check a unit in" />
      <Loaded read={families}>
        {(known) =>
          known.length === 0 ? (
            <EmptyState
              level={2}
              title="There is no unit family yet."
              act={
                <LinkKey to="/specs" kind="filled">
                  Start a family in Specs
                </LinkKey>
              }
            >
              A family says which packs a unit has and what to measure on it; every unit is checked in under one.
            </EmptyState>
          ) : (
            <CheckInForm families={known} />
          )
        }
      </Loaded>
    </>
  );
}

function CheckInForm({ families }: { families: Output<'specs.listFamilies'> }) {
  const shop = useOpenShop();
  const { person } = useAtBench();
  const navigate = useNavigate();
  const write = useWrite('jobs.checkIn');
  const log = useWrite('comebacks.logComeback');
  const [isTried, setTried] = useState(false);
  const [timesBegun, setTimesBegun] = useState(0);
  const onlyFamily = families.length === 1 ? (families[0]?.familyId ?? null) : null;
  const draft = useDraft<CheckInDraft>(`check-in with diagnosis, extent and comeback: ${shop.file}`, {
    ...blankCheckIn,
    familyId: onlyFamily,
  });
  const isPending = write.isPending || log.isPending;
  const { comeback } = draft.value;
  const pastDay = usePastDay(draft.value.promisedOn);
  const { decimalMark } = shop.settings;
  const refusals = isTried ? refusalsOf(draft.value, decimalMark) : {};
  const change = (more: Partial<CheckInDraft>) => draft.change({ ...draft.value, ...more });

  const checkIn = () => {
    setTried(true);
    const input = checkInOf(draft.value, decimalMark, person.personId);
    if (input === null || isPending || !pastDay.isMeant()) return;
    const onSuccess = ({ jobId }: { jobId: number }) => {
      draft.clear();
      void navigate({ to: '/jobs/$jobId', params: { jobId: String(jobId) } });
    };
    const comeback = comebackOf(draft.value, decimalMark, person.personId, today());
    if (comeback === null) write.mutate(input, { onSuccess });
    else log.mutate(comeback, { onSuccess });
  };

  return (
    <EnterThrough key={timesBegun} label="Check a unit in" onFinish={checkIn}>
      <FormSection title="Customer" about="Somebody who was here before is offered as you type.">
        <CustomerEntry draft={draft.value} onChange={change} refusal={refusals.customer} />
      </FormSection>
      <FormSection title="Unit" about="A unit that was here before is found by serial, vehicle or family.">
        <UnitEntry draft={draft.value} onChange={change} families={families} refusal={refusals.family} />
        <SmallJobEntry
          familyId={draft.value.knownUnit?.familyId ?? draft.value.familyId}
          value={draft.value.smallJobId}
          onChange={(smallJobId) => change({ smallJobId })}
        />
      </FormSection>
      <FormSection
        title="Why it is here"
        about="In the customer’s words, and what you see before anything comes apart."
      >
        <div className={styles.whole}>
          <TextArea
            label="What it does, and when"
            value={draft.value.complaint}
            onChange={(complaint) => change({ complaint })}
            maxLength={4000}
          />
        </div>
        <div className={styles.row}>
          <TextField
            label={draft.value.distanceUnit === 'passes' ? 'Passes on it' : 'Odometer'}
            value={draft.value.distance}
            onChange={(distance) => change({ distance })}
            refusal={refusals.distance}
            inputMode="numeric"
          />
          <RadioGroup
            label="counted in"
            options={distanceUnits.map((unit) => ({ id: unit, words: unit }))}
            value={draft.value.distanceUnit}
            onChange={(distanceUnit) => change({ distanceUnit })}
          />
          <TextField
            label="Case tag"
            value={draft.value.caseTag}
            onChange={(caseTag) => change({ caseTag })}
            maxLength={200}
          />
        </div>
      </FormSection>
      {comeback && (
        <FormSection
          title="Came back"
          about={`Held against job ${comeback.build.number}. The rule is only shown; who decides is you, now or later.`}
        >
          <CoveredEntry
            left={comeback.build.left}
            now={{ day: today(), distance: distanceOf(draft.value, decimalMark) }}
            value={comeback}
            onChange={(decided) => change({ comeback: { ...comeback, ...decided } })}
          />
        </FormSection>
      )}
      <FormSection title="Seen at the door" about="With nothing apart yet. What nobody looked at stays so.">
        <DiagnosisEntry value={draft.value.diagnosis} onChange={(diagnosis) => change({ diagnosis })} />
      </FormSection>
      <FormSection
        title="Promised"
        about="The day it should be ready; another day can be promised later, with the reason."
      >
        <div className={styles.halves}>
          <TextField
            label="Ready on"
            type="date"
            value={draft.value.promisedOn}
            onChange={(promisedOn) => change({ promisedOn })}
            refusal={pastDay.question}
          />
        </div>
      </FormSection>
      <FormKeys>
        <Button type="submit" kind="filled" keyHint="Enter" isPending={isPending}>
          {comeback ? 'Check in as a comeback' : 'Check in'}
        </Button>
        <Button
          onPress={() => {
            draft.clear();
            setTried(false);
            // A form drawn anew takes the focus to its first entry.
            setTimesBegun(timesBegun + 1);
          }}
        >
          Begin again
        </Button>
        <FailureSentence error={write.error ?? log.error} />
      </FormKeys>
    </EnterThrough>
  );
}
