// Whose copy of a report is shown: the shop's, which says everything, or the customer's.
import { RadioGroup } from './RadioGroup.tsx';

type Copy = 'shop' | 'customer';

export function CopyChoice({ copy, onChange }: { copy: Copy; onChange: (copy: Copy) => void }) {
  return (
    <RadioGroup
      label="Copy"
      isLabelHidden
      options={[
        { id: 'shop', words: 'Shop’s copy' },
        { id: 'customer', words: 'Customer’s copy' },
      ]}
      value={copy}
      onChange={onChange}
    />
  );
}
