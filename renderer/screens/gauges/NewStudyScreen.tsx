// A repeat test about to begin: what is read, with what, by whom, how often.
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { fits } from '../../../app/gauges/gauge-kinds.ts';
import { pooledMethods } from '../../../app/readings/take-figures.ts';
import { Button } from '../../components/Button.tsx';
import { Checkbox } from '../../components/Checkbox.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { FormKeys } from '../../components/FormKeys.tsx';
import { FormSection } from '../../components/FormSection.tsx';
import { RadioGroup } from '../../components/RadioGroup.tsx';
import { Refusal } from '../../components/Refusal.tsx';
import { Select } from '../../components/Select.tsx';
import { TextArea } from '../../components/TextArea.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { GaugesTabs } from '../../frame/GaugesTabs.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { PageHead } from '../../frame/PageHead.tsx';
import { Refused, refusalAbout } from '../../rpc/failures.ts';
import { useRead } from '../../rpc/use-read.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { useDraft } from '../../text/use-draft.ts';
import styles from './Gauges.module.css';
import { methodNames } from './method-words.ts';

type StudyDraft = {
  readonly name: string;
  readonly method: (typeof pooledMethods)[number];
  readonly gaugeId: number | null;
  /** One a line. */
  readonly parts: string;
  readonly people: readonly number[];
  readonly trials: string;
  readonly tolerance: string;
};

const blank: StudyDraft = {
  name: '',
  method: 'air',
  gaugeId: null,
  parts: '1\n2\n3\n4\n5',
  people: [],
  trials: '3',
  tolerance: '',
};

const none = 0;
const fields = ['name', 'parts', 'people', 'tolerance', 'gaugeId'];

export function NewStudyScreen() {
  const { file, people, settings } = useOpenShop();
  const { person } = useAtBench();
  const navigate = useNavigate();
  const gauges = useRead('gauges.listGauges', {});
  const write = useWrite('gauges.startStudy');
  const [isTried, setTried] = useState(false);
  const kept = useDraft<StudyDraft>(`new repeat test in ${file}`, blank);
  const draft = kept.value;
  const change = (more: Partial<StudyDraft>) => kept.change({ ...draft, ...more });
  const parts = draft.parts.split('\n').flatMap((part) => (part.trim() === '' ? [] : [part.trim()]));
  const fitting = (gauges.data ?? []).filter((each) => !each.isRetired && fits(each.kind, draft.method, 'length'));
  const refusals = {
    name: draft.name.trim() === '' ? 'Say what is tested.' : null,
    parts: parts.length < 2 || parts.length > 20 ? 'Name two to twenty parts, one a line.' : null,
    people: draft.people.length < 2 ? 'Choose at least two people.' : null,
  };
  const about = (field: keyof typeof refusals) =>
    (isTried ? refusals[field] : null) ?? refusalAbout(field, write.error);
  const start = () => {
    setTried(true);
    if (Object.values(refusals).some((each) => each !== null) || write.isPending) return;
    write.mutate(
      { ...draft, parts, people: [...draft.people], trials: Number(draft.trials), by: person.personId },
      {
        onSuccess: ({ studyId }) => {
          kept.clear();
          void navigate({ to: '/gauges/studies/$studyId', params: { studyId: String(studyId) } });
        },
      },
    );
  };
  const total = parts.length * draft.people.length * Number(draft.trials);
  return (
    <>
      <GaugesTabs />
      <PageHead title="New repeat test" facts={total > 0 && `${total} readings`} />
      <EnterThrough label="New repeat test" onFinish={start}>
        <FormSection title="What is read" about="With one gauge, the way it is read at the bench.">
          <div className={styles.line}>
            <div className={styles.much}>
              <TextField
                label="Name of the test"
                value={draft.name}
                onChange={(name) => change({ name })}
                refusal={about('name')}
                autoFocus
              />
            </div>
            <RadioGroup
              label="Read by"
              options={pooledMethods.map((id) => ({ id, words: methodNames[id] }))}
              value={draft.method}
              onChange={(method) => change({ method, gaugeId: null })}
            />
            <div className={styles.some}>
              <Select
                label="With"
                options={[
                  { id: none, words: 'no gauge named' },
                  ...fitting.map((each) => ({ id: each.gaugeId, words: each.tag })),
                ]}
                value={draft.gaugeId ?? none}
                onChange={(id) => change({ gaugeId: id === none ? null : id })}
                refusal={refusalAbout('gaugeId', write.error)}
              />
            </div>
          </div>
        </FormSection>
        <FormSection
          title="Which parts"
          about="Ten that span what the shop sees say most; each needs a mark of its own."
        >
          <div className={styles.line}>
            <div className={styles.much}>
              <TextArea
                label="Parts, one a line"
                value={draft.parts}
                onChange={(text) => change({ parts: text })}
                refusal={about('parts')}
              />
            </div>
            <div className={styles.some}>
              <TextField
                label="Width of the band, if there is one"
                unit={settings.lengthUnit}
                value={draft.tolerance}
                onChange={(tolerance) => change({ tolerance })}
                refusal={refusalAbout('tolerance', write.error)}
              />
            </div>
          </div>
        </FormSection>
        <FormSection
          title="Whose hands"
          about="Everybody reads every part so many times, and sees nothing of what was read before."
        >
          <fieldset className={styles.people} aria-label="Whose hands">
            {people
              .filter((each) => !each.isRetired)
              .map(({ personId, name }) => (
                <Checkbox
                  key={personId}
                  isSelected={draft.people.includes(personId)}
                  onChange={(reads) =>
                    change({
                      people: reads ? [...draft.people, personId] : draft.people.filter((each) => each !== personId),
                    })
                  }
                >
                  {name}
                </Checkbox>
              ))}
          </fieldset>
          {about('people') && <Refusal>{about('people')}</Refusal>}
          <RadioGroup
            label="Times each"
            options={['2', '3', '4', '5'].map((id) => ({ id, words: id }))}
            value={draft.trials}
            onChange={(trials) => change({ trials })}
          />
        </FormSection>
        <FormKeys>
          <Button type="submit" kind="filled" isPending={write.isPending}>
            Draw the order and begin
          </Button>
          <Button
            onPress={() => {
              kept.clear();
              void navigate({ to: '/gauges/studies' });
            }}
          >
            Leave it
          </Button>
          {!(write.error instanceof Refused && write.error.field && fields.includes(write.error.field)) && (
            <FailureSentence error={write.error} />
          )}
        </FormKeys>
      </EnterThrough>
    </>
  );
}
