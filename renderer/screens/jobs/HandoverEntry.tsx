// To whom, when, what was on it and by whom: the entries of a delivery, written first or written anew.
import { distanceUnits } from '../../../app/jobs/distance.contract.ts';
import { RadioGroup } from '../../components/RadioGroup.tsx';
import { Select } from '../../components/Select.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { useOpenShop } from '../../frame/open-shop.ts';
import styles from './DeliveryScreen.module.css';
import type { HandoverDraft, HandoverRefusals } from './handover-draft.ts';

type HandoverEntryProps = {
  value: HandoverDraft;
  onChange: (value: HandoverDraft) => void;
  refusals: HandoverRefusals;
  autoFocus?: boolean;
};

export function HandoverEntry({ value, onChange, refusals, autoFocus = false }: HandoverEntryProps) {
  const { people } = useOpenShop();
  const { person } = useAtBench();
  const atWork = people.filter((each) => !each.isRetired);
  return (
    <>
      <div className={styles.row}>
        <TextField
          label="Handed to"
          value={value.deliveredTo}
          onChange={(deliveredTo) => onChange({ ...value, deliveredTo })}
          refusal={refusals.deliveredTo}
          maxLength={200}
          autoFocus={autoFocus}
        />
        <TextField
          label="On"
          type="date"
          value={value.deliveredOn}
          onChange={(deliveredOn) => onChange({ ...value, deliveredOn })}
          refusal={refusals.deliveredOn}
        />
        <Select
          label="Handed over by"
          options={atWork.map(({ personId, name, initials }) => ({ id: personId, words: `${initials}, ${name}` }))}
          value={value.handedOverById ?? person.personId}
          onChange={(handedOverById) => onChange({ ...value, handedOverById })}
        />
      </div>
      <div className={styles.row}>
        <TextField
          label={value.distanceUnit === 'passes' ? 'Passes on it' : 'Odometer'}
          value={value.distance}
          onChange={(distance) => onChange({ ...value, distance })}
          refusal={refusals.distance}
          hint="Empty where nobody knows."
          inputMode="numeric"
        />
        <RadioGroup
          label="counted in"
          options={distanceUnits.map((unit) => ({ id: unit, words: unit }))}
          value={value.distanceUnit}
          onChange={(distanceUnit) => onChange({ ...value, distanceUnit })}
        />
      </div>
    </>
  );
}
