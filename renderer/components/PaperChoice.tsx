// The size of paper a shop prints on.
import { RadioGroup } from './RadioGroup.tsx';

type Size = 'letter' | 'A4';
type PaperChoiceProps = { value: Size; onChange: (size: Size) => void; isLabelHidden?: boolean };

export function PaperChoice(props: PaperChoiceProps) {
  return (
    <RadioGroup
      label="Paper"
      options={[
        { id: 'letter', words: 'Letter' },
        { id: 'A4', words: 'A4' },
      ]}
      {...props}
    />
  );
}
