// How much of a unit is taken on at check-in: the whole rebuild, or a small job of its family.
import { RadioGroup } from '../../components/RadioGroup.tsx';
import { useRead } from '../../rpc/use-read.ts';

type SmallJobEntryProps = {
  familyId: number | null;
  value: number | null;
  onChange: (smallJobId: number | null) => void;
};

/** Nothing while the family has no small jobs. */
export function SmallJobEntry({ familyId, value, onChange }: SmallJobEntryProps) {
  const { data: smallJobs = [] } = useRead('specs.listSmallJobs', familyId === null ? null : { familyId });
  if (familyId === null || smallJobs.length === 0) return null;
  const chosen = smallJobs.find(({ smallJobId }) => smallJobId === value);
  const options = [
    { id: 'whole', words: 'the whole rebuild' },
    ...smallJobs.map(({ smallJobId, name }) => ({ id: String(smallJobId), words: name })),
  ];
  return (
    <RadioGroup
      label="How much of it"
      options={options}
      value={chosen ? String(chosen.smallJobId) : 'whole'}
      onChange={(id) => onChange(id === 'whole' ? null : Number(id))}
      hint={
        chosen && `Takes ${[...chosen.checkNames, ...chosen.listNames].join(', ')}. It can become the whole rebuild.`
      }
    />
  );
}
