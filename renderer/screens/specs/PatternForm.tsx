// A pack laid out in one go from a few counts, said back before it is done.
import { Button } from '../../components/Button.tsx';
import { Checkbox } from '../../components/Checkbox.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { RadioGroup } from '../../components/RadioGroup.tsx';
import styles from './PatternForm.module.css';
import { kindsOfPattern, patternWords } from './pack-pattern.ts';
import { TypedField } from './TypedField.tsx';
import type { TypedPattern } from './typed-sheet.ts';

type PatternFormProps = {
  packName: string;
  lengthUnit: string;
  pattern: TypedPattern;
  onChange: (pattern: TypedPattern) => void;
  onLayOut: (kinds: Parameters<typeof patternWords>[0]) => void;
  autoFocus?: boolean;
};

const firstOptions = [
  { id: 'steel', words: 'a steel' },
  { id: 'friction', words: 'a friction' },
] as const;

export function PatternForm({
  packName,
  lengthUnit,
  pattern,
  onChange,
  onLayOut,
  autoFocus = false,
}: PatternFormProps) {
  const kinds = kindsOfPattern(pattern);
  const problem = kinds.ok ? undefined : kinds.refusal.message;
  const text = (field: keyof TypedPattern) => ({
    value: String(pattern[field]),
    onChange: (typed: string) => onChange({ ...pattern, [field]: typed }),
  });
  const tick = (field: keyof TypedPattern) => ({
    isSelected: pattern[field] === true,
    onChange: (isSelected: boolean) => onChange({ ...pattern, [field]: isSelected }),
  });
  return (
    <EnterThrough
      label={`Lay out ${packName}`}
      className={styles.form}
      onFinish={() => {
        if (kinds.ok) onLayOut(kinds.value);
      }}
    >
      <div className={styles.counts}>
        <TypedField label="Steels" {...text('steels')} problem={problem} inputMode="numeric" autoFocus={autoFocus} />
        <TypedField label="Frictions" {...text('frictions')} problem={problem} inputMode="numeric" />
        <RadioGroup
          label="First at the piston"
          options={firstOptions}
          value={pattern.first}
          onChange={(first) => onChange({ ...pattern, first })}
        />
      </div>
      <div className={styles.ticks}>
        <Checkbox {...tick('hasApplyPlate')}>apply plate</Checkbox>
        <Checkbox {...tick('hasWavePlate')}>wave plate</Checkbox>
        <Checkbox {...tick('hasBackingPlate')}>backing plate</Checkbox>
        <Checkbox {...tick('hasSelectiveRing')}>selective snap ring</Checkbox>
      </div>
      <div className={styles.words}>
        <TypedField
          label="Outline of the steels"
          hint="Plates and packs of one outline go together."
          {...text('outline')}
        />
        <TypedField
          label="Height of a friction"
          hint="Empty when each is measured."
          unit={lengthUnit}
          {...text('frictionHeight')}
        />
        {pattern.hasSelectiveRing && (
          <TypedField
            label="Snap ring comes in"
            hint="All heights, such as 62 74 86 98."
            unit={lengthUnit}
            {...text('ringHeights')}
          />
        )}
      </div>
      <p className={styles.said}>
        <Button type="submit" kind="filled">
          Lay it out
        </Button>
        <output>
          <span className="quiet">from the piston: </span>
          {kinds.ok ? `${patternWords(kinds.value)}${pattern.hasSelectiveRing ? '' : ', fixed snap ring'}` : '–'}
        </output>
      </p>
    </EnterThrough>
  );
}
