// What is known of a gauge, new or changed: what it is, what it is good for, how often it is checked.
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { gaugeKinds, mayStandOffSquare, unitsOfKind } from '../../../app/gauges/gauge-kinds.ts';
import type { Gauge } from '../../../app/gauges/register.contract.ts';
import { Button } from '../../components/Button.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { FormKeys } from '../../components/FormKeys.tsx';
import { FormSection } from '../../components/FormSection.tsx';
import { Select } from '../../components/Select.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { GaugesTabs } from '../../frame/GaugesTabs.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { PageHead } from '../../frame/PageHead.tsx';
import { Refused, refusalAbout } from '../../rpc/failures.ts';
import { useRead } from '../../rpc/use-read.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { useDraft } from '../../text/use-draft.ts';
import styles from './Gauges.module.css';
import { blankGauge, draftOf, type GaugeDraft, gaugeOf, refusalsOf } from './gauge-draft.ts';
import { useGaugeWords } from './use-gauge-words.ts';

export function EditGaugeScreen({ gaugeId }: { gaugeId: number | null }) {
  const gauge = useRead('gauges.getGauge', gaugeId === null ? null : { gaugeId });
  return (
    <>
      <GaugesTabs />
      {gaugeId === null ? (
        <GaugeForm gauge={null} />
      ) : (
        <Loaded read={gauge}>{(known) => <GaugeForm gauge={known} />}</Loaded>
      )}
    </>
  );
}

function GaugeForm({ gauge }: { gauge: Gauge | null }) {
  const { file, settings } = useOpenShop();
  const { person } = useAtBench();
  const navigate = useNavigate();
  const words = useGaugeWords(gauge?.unit ?? 'thou');
  const write = useWrite('gauges.saveGauge');
  const [isTried, setTried] = useState(false);
  const kept = useDraft<GaugeDraft>(
    `gauge ${gauge?.gaugeId ?? 'new'} in ${file}`,
    gauge ? draftOf(gauge, words.bare) : { ...blankGauge, unit: settings.lengthUnit },
  );
  const draft = kept.value;
  const change = (more: Partial<GaugeDraft>) => kept.change({ ...draft, ...more });
  const refusals = isTried ? refusalsOf(draft) : {};
  const leave = (to: number | null) => {
    kept.clear();
    if (to === null) void navigate({ to: '/gauges' });
    else void navigate({ to: '/gauges/$gaugeId', params: { gaugeId: String(to) } });
  };
  const save = () => {
    setTried(true);
    if (Object.keys(refusalsOf(draft)).length > 0 || write.isPending) return;
    write.mutate(gaugeOf(draft, gauge?.gaugeId ?? null, person.personId), {
      onSuccess: (saved) => leave(saved.gaugeId),
    });
  };
  const entry = (
    field: Exclude<keyof GaugeDraft, 'kind' | 'unit'>,
    label: string,
    more: { autoFocus?: boolean; hint?: string; unit?: string } = {},
  ) => (
    <TextField
      label={label}
      maxLength={200}
      value={draft[field]}
      onChange={(typed) => change({ [field]: typed })}
      refusal={refusals[field] ?? refusalAbout(field, write.error)}
      {...more}
    />
  );
  const units = unitsOfKind(draft.kind);
  const { unit } = draft;
  return (
    <>
      <PageHead title={gauge ? gauge.tag : 'New gauge'} facts={gauge && `${gauge.kind}, edited`} />
      <EnterThrough label={gauge ? 'Edit the gauge' : 'New gauge'} onFinish={save}>
        <FormSection title="What it is" about="The tag is what stands on it, so that the hand picks the right one.">
          <div className={styles.line}>
            <div className={styles.some}>{entry('tag', 'Tag or name', { autoFocus: gauge === null })}</div>
            {gauge === null && (
              <div className={styles.some}>
                <Select
                  label="Kind"
                  options={gaugeKinds.map((kind) => ({ id: kind, words: kind }))}
                  value={draft.kind}
                  onChange={(kind) => {
                    const fitting = unitsOfKind(kind);
                    const isKept = fitting.includes(draft.unit);
                    change({ kind, unit: isKept ? draft.unit : (fitting[0] ?? draft.unit) });
                  }}
                  refusal={refusalAbout('kind', write.error)}
                />
              </div>
            )}
            <div className={styles.some}>{entry('serial', 'Serial number')}</div>
          </div>
        </FormSection>
        <FormSection
          title="What it is good for"
          about="The permitted error is what its certificate or its maker states. Where nothing is stated, leave it empty."
        >
          <div className={styles.line}>
            <div className={styles.few}>
              <Select
                label="Marked in"
                options={units.map((id) => ({ id, words: id }))}
                value={draft.unit}
                onChange={(markedIn) => change({ unit: markedIn })}
                refusal={refusalAbout('unit', write.error)}
              />
            </div>
            <div className={styles.few}>{entry('resolution', 'Reads to', { unit })}</div>
            <div className={styles.few}>{entry('permittedError', 'Permitted error ±', { unit })}</div>
            <div className={styles.much}>{entry('statedIn', 'Stated in')}</div>
          </div>
          {mayStandOffSquare(draft.kind) && (
            <div className={styles.line}>
              <div className={styles.much}>
                {entry('offSquareDegrees', 'Out of square by at most', {
                  unit: '°',
                  hint: 'Out of square it reads too much, never too little: 15° makes 27 of 26.',
                })}
              </div>
            </div>
          )}
        </FormSection>
        <FormSection title="How often it is checked" about="After so many calendar days it is overdue. Empty: never.">
          <div className={styles.line}>
            <div className={styles.some}>{entry('intervalDays', 'Every', { unit: 'days' })}</div>
          </div>
        </FormSection>
        <FormKeys>
          <Button type="submit" kind="filled" keyHint="Enter" isPending={write.isPending}>
            {gauge ? 'Save' : 'Write it down'}
          </Button>
          <Button onPress={() => leave(gauge?.gaugeId ?? null)}>{gauge ? 'Leave it as it was' : 'Leave it'}</Button>
          {!isAtField(write.error) && <FailureSentence error={write.error} />}
        </FormKeys>
      </EnterThrough>
    </>
  );
}

function isAtField(error: Error | null): boolean {
  return error instanceof Refused && error.field !== null && error.field in blankGauge;
}
