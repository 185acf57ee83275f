// What is seen of a unit with nothing apart yet: codes, fluid, pan, and what happened to the vehicle.
import type { Diagnosis } from '../../../app/jobs/door.contract.ts';
import { fluidColours, fluidLevels, fluidSmells } from '../../../app/jobs/door.contract.ts';
import { RadioGroup } from '../../components/RadioGroup.tsx';
import { TextField } from '../../components/TextField.tsx';
import styles from './DiagnosisEntry.module.css';

type DiagnosisEntryProps = { value: Diagnosis; onChange: (value: Diagnosis) => void };

export function DiagnosisEntry({ value, onChange }: DiagnosisEntryProps) {
  const change = (more: Partial<Diagnosis>) => onChange({ ...value, ...more });
  const optionsOf = <K extends string>(all: readonly K[]) => all.map((each) => ({ id: each, words: each }));
  return (
    <div className={styles.entries}>
      <TextField label="Codes" value={value.codes} onChange={(codes) => change({ codes })} maxLength={200} />
      <TextField label="In the pan" value={value.pan} onChange={(pan) => change({ pan })} maxLength={200} />
      <div className={styles.whole}>
        <RadioGroup
          label="Fluid level"
          options={optionsOf(fluidLevels)}
          value={value.fluidLevel}
          onChange={(fluidLevel) => change({ fluidLevel })}
        />
      </div>
      <div className={styles.whole}>
        <RadioGroup
          label="Fluid colour"
          options={optionsOf(fluidColours)}
          value={value.fluidColour}
          onChange={(fluidColour) => change({ fluidColour })}
        />
      </div>
      <div className={styles.whole}>
        <RadioGroup
          label="Smell"
          options={optionsOf(fluidSmells)}
          value={value.fluidSmell}
          onChange={(fluidSmell) => change({ fluidSmell })}
        />
      </div>
      <TextField
        label="Who installed it"
        value={value.installedBy}
        onChange={(installedBy) => change({ installedBy })}
        maxLength={200}
      />
      <TextField
        label="What changed in the vehicle"
        value={value.vehicleChanges}
        onChange={(vehicleChanges) => change({ vehicleChanges })}
        maxLength={200}
      />
    </div>
  );
}
