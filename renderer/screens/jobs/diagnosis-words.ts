// What was seen at the door, as facts under their names; what was not looked at is left out.
import type { Diagnosis } from '../../../app/jobs/door.contract.ts';

export function diagnosisFacts(diagnosis: Diagnosis): ReadonlyArray<{ name: string; words: string }> {
  const looked = (words: string) => (words === 'not looked at' ? '' : words);
  const fluid = [
    looked(diagnosis.fluidLevel),
    looked(diagnosis.fluidColour),
    diagnosis.fluidSmell === 'none' ? 'no smell' : smellWords(looked(diagnosis.fluidSmell)),
  ];
  return [
    { name: 'Codes', words: diagnosis.codes },
    { name: 'Fluid', words: fluid.filter((each) => each !== '').join(', ') },
    { name: 'Pan', words: diagnosis.pan },
    { name: 'Installed by', words: diagnosis.installedBy },
    { name: 'Changed in the vehicle', words: diagnosis.vehicleChanges },
  ].filter(({ words }) => words !== '');
}

function smellWords(smell: string): string {
  return smell === '' ? '' : `smells ${smell}`;
}
