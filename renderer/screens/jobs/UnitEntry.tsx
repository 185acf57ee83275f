// Which unit it is: one that was here before, with its visits, or a new one by family, serial, vehicle and use.
import type { Output } from '../../../app/contract/contract.ts';
import { uses } from '../../../app/units/units.contract.ts';
import { Button } from '../../components/Button.tsx';
import { RadioGroup } from '../../components/RadioGroup.tsx';
import { Select } from '../../components/Select.tsx';
import { SuggestField } from '../../components/SuggestField.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { useRead } from '../../rpc/use-read.ts';
import { today } from '../../text/say-date.ts';
import styles from './CheckInScreen.module.css';
import { type CheckInDraft, distanceOf, type FoundUnit } from './check-in-draft.ts';
import { VisitsOfUnit } from './VisitsOfUnit.tsx';

type UnitEntryProps = {
  draft: CheckInDraft;
  onChange: (more: Partial<CheckInDraft>) => void;
  families: Output<'specs.listFamilies'>;
  refusal: string | undefined;
};

/** More families than this stand better in a list than side by side. */
const mostSideBySide = 5;

export function UnitEntry({ draft, onChange, families, refusal }: UnitEntryProps) {
  const { knownUnit } = draft;
  const { decimalMark } = useOpenShop().settings;
  const text = knownUnit ? '' : draft.serial.trim();
  const found = useRead('units.findUnits', text === '' ? null : { text }, { keepsLast: true });
  const known = text === '' ? [] : (found.data ?? []);
  const serial = (
    <SuggestField
      label="Serial"
      value={knownUnit ? nameOf(knownUnit) : draft.serial}
      onChange={(typed) => onChange({ serial: typed, knownUnit: null, comeback: null })}
      suggestions={known.map((each) => ({
        id: each.unitId,
        words: nameOf(each),
        note: `${vehicleOf(each)}, ${visitsOf(each)}`,
      }))}
      onTake={(id) => {
        const taken = known.find((each) => each.unitId === id);
        if (taken) onChange({ knownUnit: taken, serial: taken.serial, comeback: null });
      }}
      hint={knownUnit ? `${vehicleOf(knownUnit)}: ${visitsOf(knownUnit)}.` : undefined}
    />
  );
  const visits = (
    <VisitsOfUnit
      unitId={knownUnit?.unitId ?? null}
      serial={(knownUnit?.serial ?? draft.serial).trim()}
      title="Was here before"
      now={{ day: today(), distance: distanceOf(draft, decimalMark) }}
      actOn={(build) =>
        draft.comeback?.build.jobId === build.jobId ? (
          <Button onPress={() => onChange({ comeback: null })}>{`Not a comeback of job ${build.number}`}</Button>
        ) : (
          <Button onPress={() => onChange({ comeback: { build, covered: 'not decided yet', coveredNote: '' } })}>
            {`Log as a comeback of job ${build.number}`}
          </Button>
        )
      }
    />
  );
  if (knownUnit) {
    return (
      <div className={styles.halves}>
        {serial}
        {visits}
      </div>
    );
  }
  const options = families.map((each) => ({ id: String(each.familyId), words: each.name }));
  const family = {
    label: 'Family',
    options,
    value: draft.familyId === null ? null : String(draft.familyId),
    onChange: (id: string) => onChange({ familyId: Number(id) }),
    refusal,
  };
  return (
    <div className={styles.halves}>
      {serial}
      <TextField label="Vehicle" value={draft.vehicle} onChange={(vehicle) => onChange({ vehicle })} maxLength={200} />
      {families.length > mostSideBySide ? <Select {...family} /> : <RadioGroup {...family} />}
      <RadioGroup
        label="Use"
        options={uses.map((use) => ({ id: use, words: use }))}
        value={draft.use}
        onChange={(use) => onChange({ use })}
      />
      {visits}
    </div>
  );
}

function nameOf({ familyName, serial }: FoundUnit): string {
  return `${familyName} ${serial}`.trim();
}

function vehicleOf({ vehicle, use }: FoundUnit): string {
  return vehicle === '' ? use : `${vehicle}, ${use}`;
}

function visitsOf({ visits }: FoundUnit): string {
  return visits === 1 ? 'was here once' : `was here ${visits} times`;
}
