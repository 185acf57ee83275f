// One line's settings, typed.
import type { GaugeLine, LineSettings } from '../../../app/indicators/indicators.contract.ts';
import { practiceKinds } from '../../../app/indicators/simulated-plate.ts';
import { Button } from '../../components/Button.tsx';
import { Checkbox } from '../../components/Checkbox.tsx';
import { RadioGroup } from '../../components/RadioGroup.tsx';
import { Refusal } from '../../components/Refusal.tsx';
import { Select } from '../../components/Select.tsx';
import { TextField } from '../../components/TextField.tsx';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { refusalAbout } from '../../rpc/failures.ts';
import { useRead } from '../../rpc/use-read.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { useDraft } from '../../text/use-draft.ts';
import styles from './Lines.module.css';
import { draftOf, type LineDraft, settingsOf } from './line-draft.ts';

type LineFormProps = { line: GaugeLine | null; source: LineSettings['source']; onDone: () => void };

export function LineForm({ line, source, onDone }: LineFormProps) {
  const { settings: shop } = useOpenShop();
  const draft = useDraft(`gauge line ${line?.lineId ?? `new ${source}`}`, draftOf(line, source, shop.decimalMark));
  const add = useWrite('indicators.addLine');
  const change = useWrite('indicators.changeLine');
  const typed = draft.value;
  const read = settingsOf(typed, source, shop.decimalMark);
  const failure = add.error ?? change.error;
  const leave = () => {
    draft.clear();
    onDone();
  };
  const keep = () => {
    if (read.settings === null) return;
    if (line) change.mutate({ lineId: line.lineId, settings: read.settings }, { onSuccess: leave });
    else add.mutate(read.settings, { onSuccess: leave });
  };
  // A change is refused about a field of its settings, a new line about the field itself.
  const about = (field: string) => refusalAbout(field, failure) ?? refusalAbout(`settings.${field}`, failure);
  const entry = (field: Exclude<keyof LineDraft, 'isReversed' | 'gaugeId'>, sent: string = field) => ({
    value: typed[field],
    onChange: (text: string) => draft.change({ ...typed, [field]: text }),
    refusal: about(sent),
  });
  return (
    <form
      className={styles.form}
      onSubmit={(event) => {
        event.preventDefault();
        keep();
      }}
    >
      <TextField label="Name" {...entry('name')} autoFocus />
      {source === 'serial' ? (
        <>
          <PortEntry value={typed.path} onChange={entry('path').onChange} refusal={about('path')} />
          <TextField label="Speed, baud" {...entry('baudRate')} />
          <RadioGroup label="Data bits" options={asOptions(['7', '8'])} {...entry('dataBits')} value={typed.dataBits} />
          <RadioGroup
            label="Parity"
            options={asOptions(['none', 'even', 'odd'])}
            {...entry('parity')}
            value={typed.parity}
          />
          <RadioGroup label="Stop bits" options={asOptions(['1', '2'])} {...entry('stopBits')} value={typed.stopBits} />
          <TextField
            label="What it is asked with"
            hint="Empty where it speaks by itself. \r, \n and \x05 stand for what cannot be typed."
            {...entry('request')}
          />
        </>
      ) : (
        <RadioGroup label="It" options={asOptions(practiceKinds)} {...entry('practice')} value={typed.practice} />
      )}
      {source === 'serial' && (
        <TextField
          label="What a reading looks like"
          hint="{number} is the reading, {unit} mm or in; {digits}, {letters} and {any} are passed over, the rest stands as it is: 01A{number}"
          {...entry('pattern')}
        />
      )}
      <RadioGroup label="Numbers are in" options={asOptions(['mm', 'in'])} {...entry('unit')} value={typed.unit} />
      <TextField
        label="One count"
        unit={typed.unit}
        {...entry('step', 'step_nm')}
        refusal={read.refusal ?? about('step_nm')}
      />
      <TextField label="Still: within so many counts" {...entry('stillWithin', 'stillWithin_steps')} />
      <TextField label="Still: for so long" unit="ms" {...entry('stillFor', 'stillFor_ms')} />
      <TextField
        label={source === 'serial' ? 'Asked every' : 'Speaks every'}
        unit="ms"
        {...entry('every', 'every_ms')}
      />
      {source === 'serial' && (
        <Checkbox isSelected={typed.isReversed} onChange={(isReversed) => draft.change({ ...typed, isReversed })}>
          It counts down when the plate goes up
        </Checkbox>
      )}
      <GaugeEntry
        value={typed.gaugeId}
        onChange={(gaugeId) => draft.change({ ...typed, gaugeId })}
        refusal={about('gaugeId')}
      />
      <FailureSentence error={failure} />
      <div className={styles.acts}>
        <Button type="submit" kind="filled">
          Keep the line
        </Button>
        <Button onPress={leave}>Leave it</Button>
      </div>
    </form>
  );
}

function asOptions<K extends string>(names: readonly K[]) {
  return names.map((name) => ({ id: name, words: name }));
}

type PortEntryProps = { value: string; onChange: (path: string) => void; refusal: string | null };

/** Typed, or taken from the ports there are. */
function PortEntry({ value, onChange, refusal }: PortEntryProps) {
  const ports = useRead('indicators.listPorts', {});
  return (
    <div>
      <TextField label="Port" value={value} onChange={onChange} refusal={refusal} />
      {ports.error && <Refusal>{ports.error.message}</Refusal>}
      <div className={styles.acts}>
        {ports.data?.slice(0, 8).map(({ path, says }) => (
          <Button key={path} onPress={() => onChange(path)}>
            {says === '' ? path : `${path}, ${says}`}
          </Button>
        ))}
        {ports.data?.length === 0 && <p className="small quiet">No serial port is plugged in now.</p>}
      </div>
    </div>
  );
}

const noGauge = 0;

type GaugeEntryProps = { value: number | null; onChange: (gaugeId: number | null) => void; refusal: string | null };

/** Nothing where the register holds no gauge of lengths in use. */
function GaugeEntry({ value, onChange, refusal }: GaugeEntryProps) {
  const gauges = useRead('gauges.listGauges', {});
  const fitting = (gauges.data ?? []).filter((each) => !each.isRetired && each.quantity === 'length');
  if (fitting.length === 0) return null;
  return (
    <Select
      label="Gauge of the register"
      hint="What is read over this line names it, and its permitted error counts."
      options={[
        { id: noGauge, words: 'none named' },
        ...fitting.map((each) => ({ id: each.gaugeId, words: each.tag })),
      ]}
      value={value ?? noGauge}
      onChange={(id) => onChange(id === noGauge ? null : id)}
      refusal={refusal}
    />
  );
}
