// The unit a shop reads lengths in.
import type { LengthUnit } from '../../../app/quantities/units.ts';
import { RadioGroup } from '../../components/RadioGroup.tsx';

type LengthUnitChoiceProps = { value: LengthUnit; onChange: (unit: LengthUnit) => void; hint: string };

export function LengthUnitChoice(props: LengthUnitChoiceProps) {
  return (
    <RadioGroup
      label="Lengths in"
      options={[
        { id: 'thou', words: 'thou (0.001 in)' },
        { id: 'mm', words: 'mm' },
      ]}
      {...props}
    />
  );
}
