// The entries of warranty terms: on a job that leaves, and as what the shop usually gives.
import type { TermsRefusals, TypedTerms } from '../../app/jobs/typed-terms.ts';
import { RadioGroup } from '../components/RadioGroup.tsx';
import { TextField } from '../components/TextField.tsx';
import styles from './WarrantyFields.module.css';

type WarrantyFieldsProps = {
  value: TypedTerms;
  onChange: (value: TypedTerms) => void;
  refusals: TermsRefusals;
};

export function WarrantyFields({ value, onChange, refusals }: WarrantyFieldsProps) {
  return (
    <div className={styles.fields}>
      <TextField
        label="Months"
        value={value.months}
        onChange={(months) => onChange({ ...value, months })}
        refusal={refusals.months}
        inputMode="numeric"
      />
      <TextField
        label="Distance"
        value={value.distance}
        onChange={(distance) => onChange({ ...value, distance })}
        refusal={refusals.distance}
        inputMode="numeric"
      />
      <RadioGroup
        label="counted in"
        options={[
          { id: 'miles', words: 'miles' },
          { id: 'km', words: 'km' },
        ]}
        value={value.distanceUnit}
        onChange={(distanceUnit) => onChange({ ...value, distanceUnit })}
      />
      <TextField
        label="Passes"
        value={value.passes}
        onChange={(passes) => onChange({ ...value, passes })}
        refusal={refusals.passes}
        inputMode="numeric"
      />
    </div>
  );
}
