// A gauge held against something known: what it should say and what it says, point by point.
import { useState } from 'react';
import { checkedAgainst, type Gauge, type GaugeCheck } from '../../../app/gauges/register.contract.ts';
import { Button } from '../../components/Button.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { Select } from '../../components/Select.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { Refused, refusalAbout } from '../../rpc/failures.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { today } from '../../text/say-date.ts';
import { useDraft } from '../../text/use-draft.ts';
import styles from './Gauges.module.css';
import { useGaugeWords } from './use-gauge-words.ts';

type GaugeCheckFormProps = {
  gauge: Gauge;
  /** The check that was misread, whose place this one takes. */
  misread: GaugeCheck | null;
  onDone: () => void;
  onLeave: () => void;
};

type CheckDraft = {
  readonly against: GaugeCheck['against'];
  readonly checkedOn: string;
  readonly points: ReadonlyArray<{ readonly nominal: string; readonly read: string }>;
  readonly note: string;
  readonly reason: string;
};

const blankPoint = { nominal: '', read: '' };

export function GaugeCheckForm({ gauge, misread, onDone, onLeave }: GaugeCheckFormProps) {
  const { person } = useAtBench();
  const { unit } = useGaugeWords(gauge.unit);
  const write = useWrite('gauges.recordCheck');
  const [isTried, setTried] = useState(false);
  const kept = useDraft<CheckDraft>(`check of gauge ${gauge.gaugeId}, instead of ${misread?.gaugeCheckId ?? 'none'}`, {
    against: misread?.against ?? (gauge.kind === 'feeler set' ? 'another gauge' : 'blocks'),
    checkedOn: misread?.checkedOn ?? today(),
    points: misread
      ? misread.points.map(({ nominalTyped, readTyped }) => ({ nominal: nominalTyped, read: readTyped }))
      : [blankPoint, blankPoint, blankPoint],
    note: misread?.note ?? '',
    reason: '',
  });
  const draft = kept.value;
  const change = (more: Partial<CheckDraft>) => kept.change({ ...draft, ...more });
  const changePoint = (index: number, more: Partial<CheckDraft['points'][number]>) =>
    change({ points: draft.points.map((point, at) => (at === index ? { ...point, ...more } : point)) });
  // A row nobody typed in is no point, so a refused point is looked for at its own row.
  const typedRows = [...draft.points.keys()].filter(
    (at) => draft.points[at]?.nominal.trim() !== '' || draft.points[at]?.read.trim() !== '',
  );
  const refusalAt = (row: number, which: 'nominal' | 'read') => {
    if (isTried && typedRows.includes(row) && draft.points[row]?.[which].trim() === '') return 'Type it too.';
    if (isTried && typedRows.length === 0 && row === 0) return 'Type at least one point.';
    return refusalAbout(`points.${typedRows.indexOf(row)}.${which}`, write.error);
  };
  const isWhole =
    typedRows.length > 0 &&
    typedRows.every((at) => draft.points[at]?.nominal.trim() !== '' && draft.points[at]?.read.trim() !== '') &&
    (misread === null || draft.reason.trim() !== '');
  const save = () => {
    setTried(true);
    if (!isWhole || write.isPending) return;
    write.mutate(
      {
        ...draft,
        gaugeId: gauge.gaugeId,
        points: typedRows.flatMap((at) => draft.points[at] ?? []),
        supersedesId: misread?.gaugeCheckId ?? null,
        by: person.personId,
      },
      {
        onSuccess: () => {
          kept.clear();
          onDone();
        },
      },
    );
  };
  const isLeaf = gauge.kind === 'feeler set';
  const names = isLeaf ? { nominal: 'The leaf is', read: 'Marked' } : { nominal: 'It should say', read: 'It says' };
  return (
    <EnterThrough label={misread ? 'Read the check again' : 'New check'} onFinish={save} className={styles.form}>
      <div className={styles.line}>
        <div className={styles.some}>
          <Select
            label="Held against"
            options={checkedAgainst.map((id) => ({ id, words: id }))}
            value={draft.against}
            onChange={(against) => change({ against })}
          />
        </div>
        <div className={styles.some}>
          <TextField
            label="On"
            type="date"
            value={draft.checkedOn}
            onChange={(checkedOn) => change({ checkedOn })}
            refusal={refusalAbout('checkedOn', write.error)}
          />
        </div>
        <div className={styles.much}>
          <TextField label="Note" value={draft.note} onChange={(note) => change({ note })} maxLength={200} />
        </div>
      </div>
      {draft.points.map((point, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a point is known by its place alone
        <div className={styles.line} key={index}>
          <div className={styles.some}>
            <TextField
              label={`${names.nominal}, point ${index + 1}`}
              unit={unit}
              inputMode="decimal"
              autoFocus={index === 0}
              value={point.nominal}
              onChange={(nominal) => changePoint(index, { nominal })}
              refusal={refusalAt(index, 'nominal')}
            />
          </div>
          <div className={styles.some}>
            <TextField
              label={`${names.read}, point ${index + 1}`}
              unit={unit}
              inputMode="decimal"
              value={point.read}
              onChange={(read) => changePoint(index, { read })}
              refusal={refusalAt(index, 'read')}
            />
          </div>
        </div>
      ))}
      {misread && (
        <div className={styles.much}>
          <TextField
            label="What was misread"
            value={draft.reason}
            onChange={(reason) => change({ reason })}
            refusal={
              isTried && draft.reason.trim() === '' ? 'Say what was misread.' : refusalAbout('reason', write.error)
            }
          />
        </div>
      )}
      <div className={styles.line}>
        <Button type="submit" kind="filled" isPending={write.isPending}>
          {misread ? 'Put this in its place' : 'Keep the check'}
        </Button>
        <Button onPress={() => change({ points: [...draft.points, blankPoint] })}>One more point</Button>
        <Button onPress={onLeave}>Leave it</Button>
        {!(write.error instanceof Refused && write.error.field) && <FailureSentence error={write.error} />}
      </div>
    </EnterThrough>
  );
}
