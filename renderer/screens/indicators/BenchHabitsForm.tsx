// What this bench does hands-free: the gauge it reads, the pedal, the sounds, the way round the drum.
import { useEffect, useState } from 'react';
import { standingWarning } from '../../../app/gauges/gauge-standing.ts';
import type { GaugeLine } from '../../../app/indicators/indicators.contract.ts';
import { Button } from '../../components/Button.tsx';
import { Checkbox } from '../../components/Checkbox.tsx';
import { Notice } from '../../components/Notice.tsx';
import { RadioGroup } from '../../components/RadioGroup.tsx';
import { useBenchHabits } from '../../frame/bench-habits.ts';
import { useRead } from '../../rpc/use-read.ts';
import styles from './Lines.module.css';

const none = 'none';

export function BenchHabitsForm({ lines }: { lines: readonly GaugeLine[] }) {
  const { habits, keep } = useBenchHabits();
  const chosen = lines.find((line) => line.lineId === habits.lineId);
  return (
    <>
      <RadioGroup
        label="Gauge read here"
        options={[
          { id: none, words: 'none, lines are typed' },
          ...lines.map((line) => ({ id: String(line.lineId), words: line.name })),
        ]}
        value={chosen ? String(chosen.lineId) : none}
        onChange={(id) => keep({ lineId: id === none ? null : Number(id) })}
      />
      {chosen?.gaugeId != null && <LineGauge gaugeId={chosen.gaugeId} />}
      <Pedal pedal={habits.pedal} keep={(pedal) => keep({ pedal })} />
      <RadioGroup
        label="Spots round the drum"
        options={[
          { id: 'around', words: 'one after another' },
          { id: 'across', words: 'each across from the last' },
        ]}
        value={habits.order}
        onChange={(order) => keep({ order })}
      />
      <Checkbox isSelected={habits.hasSounds} onChange={(hasSounds) => keep({ hasSounds })}>
        Sounds: one high when a line is accepted, two when it is asked for again, one low when it is out of the band
      </Checkbox>
    </>
  );
}

/** Which gauge of the register comes with the line, and a word of warning about a doubtful one. */
function LineGauge({ gaugeId }: { gaugeId: number }) {
  const gauges = useRead('gauges.listGauges', {});
  const gauge = gauges.data?.find((each) => each.gaugeId === gaugeId);
  if (!gauge) return null;
  const warning = standingWarning(gauge.tag, gauge.standing);
  return warning === null ? <p>It is {gauge.tag} of the register.</p> : <Notice>{warning}</Notice>;
}

/** These keys keep their own meaning; letters and figures are the bench's. */
const notPedals = ['Tab', 'Shift', 'Control', 'Alt', 'Meta', 'Escape', 'Backspace', 'Delete', 'Dead', 'Unidentified'];

function Pedal({ pedal, keep }: { pedal: string | null; keep: (pedal: string | null) => void }) {
  const [isAsking, setAsking] = useState(false);
  const [said, say] = useState('');
  useEffect(() => {
    if (!isAsking) return;
    const press = (event: KeyboardEvent) => {
      if (event.repeat) return;
      event.preventDefault();
      event.stopPropagation();
      setAsking(false);
      if (event.key === 'Enter') say('That is Enter already: nothing to bind.');
      else if (event.key === 'Escape') say('');
      else if (event.key.length === 1 || notPedals.includes(event.key)) {
        say(`${event.key === ' ' ? 'Space' : event.key} has its own meaning here: set the pedal to another key.`);
      } else {
        say('');
        keep(event.key);
      }
    };
    // Before anything on the page acts on it.
    document.addEventListener('keydown', press, true);
    return () => document.removeEventListener('keydown', press, true);
  }, [isAsking, keep]);
  return (
    <div>
      <div className={styles.acts}>
        <p>
          {pedal === null
            ? 'No pedal: Enter accepts.'
            : `The pedal is ${pedal}: it does what Enter does, and never air.`}
        </p>
        <Button onPress={() => setAsking(true)}>
          {isAsking ? 'Press the pedal now' : 'Bind a pedal by pressing it'}
        </Button>
        {pedal !== null && <Button onPress={() => keep(null)}>No pedal</Button>}
      </div>
      <p role="status" className="small">
        {isAsking ? 'Press the pedal. Escape leaves it as it is.' : said}
      </p>
    </div>
  );
}
