// When a unit came back, what stands on it, and what the customer says: written first or written anew.
import { distanceUnits } from '../../../app/jobs/distance.contract.ts';
import { RadioGroup } from '../../components/RadioGroup.tsx';
import { TextArea } from '../../components/TextArea.tsx';
import { TextField } from '../../components/TextField.tsx';
import styles from './Comebacks.module.css';
import type { ReturnDraft, ReturnRefusals } from './return-draft.ts';

type ReturnEntryProps = {
  value: ReturnDraft;
  onChange: (more: Partial<ReturnDraft>) => void;
  refusals: ReturnRefusals;
  autoFocus?: boolean;
};

export function ReturnEntry({ value, onChange, refusals, autoFocus = false }: ReturnEntryProps) {
  return (
    <>
      <div className={styles.full}>
        <TextArea
          label="What the customer says"
          value={value.customerSays}
          onChange={(customerSays) => onChange({ customerSays })}
          maxLength={4000}
          autoFocus={autoFocus}
        />
      </div>
      <div className={styles.row}>
        <TextField
          label="Came back on"
          type="date"
          value={value.cameBackOn}
          onChange={(cameBackOn) => onChange({ cameBackOn })}
          refusal={refusals.cameBackOn}
        />
        <TextField
          label={value.distanceUnit === 'passes' ? 'Passes on it' : 'Odometer'}
          value={value.distance}
          onChange={(distance) => onChange({ distance })}
          refusal={refusals.distance}
          hint="Empty where nobody knows."
          inputMode="numeric"
        />
        <RadioGroup
          label="counted in"
          options={distanceUnits.map((unit) => ({ id: unit, words: unit }))}
          value={value.distanceUnit}
          onChange={(distanceUnit) => onChange({ distanceUnit })}
        />
      </div>
    </>
  );
}
