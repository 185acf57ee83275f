// The placement rules of a pack: chosen and typed, and said as the sentence they will be.
import { ruleSentence } from '../../../app/packs/placement.ts';
import type { PieceKind } from '../../../app/specs/spec-sheet.ts';
import { Button } from '../../components/Button.tsx';
import { Select } from '../../components/Select.tsx';
import styles from './RuleRows.module.css';
import { readRule } from './read-typed-sheet.ts';
import { replaced, without } from './sheet-edits.ts';
import { kindOptions, ruleOptions } from './sheet-words.ts';
import { TypedField } from './TypedField.tsx';
import type { TypedRule } from './typed-sheet.ts';

type RuleRowsProps = { rules: readonly TypedRule[]; onChange: (rules: readonly TypedRule[]) => void };

export function RuleRows({ rules, onChange }: RuleRowsProps) {
  return (
    <ol aria-label="Placement rules">
      {rules.map((rule, index) => (
        <RuleRow
          key={rule.key}
          rule={rule}
          number={index + 1}
          onChange={(changed) => onChange(replaced(rules, changed))}
          onRemove={() => onChange(without(rules, rule.key))}
        />
      ))}
    </ol>
  );
}

type RuleRowProps = {
  rule: TypedRule;
  number: number;
  onChange: (rule: TypedRule) => void;
  onRemove: () => void;
};

function RuleRow({ rule, number, onChange, onRemove }: RuleRowProps) {
  const { value, problems } = readRule(rule);
  return (
    <li className={styles.row}>
      <Select
        label={`Rule ${number}`}
        isLabelHidden
        options={ruleOptions}
        value={rule.kind}
        onChange={(kind) => onChange({ ...rule, kind })}
      />
      <Select
        label={`Kind of rule ${number}`}
        isLabelHidden
        options={kindOptions}
        value={rule.pieceKind}
        onChange={(pieceKind: PieceKind) => onChange({ ...rule, pieceKind })}
      />
      {rule.kind === 'all-equal' ? (
        <span />
      ) : (
        <TypedField
          label={`Places of rule ${number}`}
          isLabelHidden
          placeholder="2 3"
          value={rule.places}
          onChange={(places) => onChange({ ...rule, places })}
          problem={problems.places}
        />
      )}
      <output className={styles.said}>{value && ruleSentence(value)}</output>
      <Button aria-label={`Take rule ${number} out`} onPress={onRemove}>
        out
      </Button>
    </li>
  );
}
