// One check while it is being edited: its name and limits first, and Enter is done with it.
import { parseLimits } from '../../../app/specs/limits-text.ts';
import type { Check } from '../../../app/specs/spec-sheet.ts';
import { Button } from '../../components/Button.tsx';
import { Refusal } from '../../components/Refusal.tsx';
import { Select } from '../../components/Select.tsx';
import styles from './CheckEditor.module.css';
import { MoveKeys } from './MoveKeys.tsx';
import { readCheck } from './read-typed-sheet.ts';
import { changeCheck, moved, readBy, without } from './sheet-edits.ts';
import {
  countUnit,
  holdsForMeaning,
  holdsForOptions,
  methodOptions,
  sayLimitsTwice,
  unitOptions,
  waveOptions,
} from './sheet-words.ts';
import { TypedField } from './TypedField.tsx';
import { limitsField } from './typed-figures.ts';
import type { TypedCheck, TypedSheet } from './typed-sheet.ts';

type CheckEditorProps = {
  sheet: TypedSheet;
  check: TypedCheck;
  isAskedFor: boolean;
  onChange: (sheet: TypedSheet) => void;
  onTakeAway: (sheet: TypedSheet, what: string) => void;
  /** Enter on a check that can be read. */
  onDone: () => void;
  /** Enter on one that cannot. */
  onRefused: () => void;
  onClose: () => void;
};

const noPack = 0;

export function CheckEditor(props: CheckEditorProps) {
  const { sheet, check, isAskedFor, onChange, onTakeAway, onDone, onRefused, onClose } = props;
  const { value, problems } = readCheck(check, sheet);
  const field = limitsField(check, sheet);
  const limits = parseLimits(check.limits, field);
  const change = (changed: Partial<TypedCheck>) => onChange(changeCheck(sheet, { ...check, ...changed }));
  const text = (name: 'name' | 'group' | 'limits' | 'spots' | 'shims' | 'sourceNote') => ({
    value: check[name],
    onChange: (typed: string) => change({ [name]: typed }),
    isAskedFor,
    ...(name !== 'sourceNote' && { problem: problems[name] }),
  });
  const packOptions = [
    { id: noPack, words: 'no pack' },
    ...sheet.packs.map(({ key, name }) => ({ id: key, words: name })),
  ];
  const finish = () => (value === null ? onRefused() : onDone());
  return (
    <form
      className={styles.form}
      aria-label={check.name || 'Check'}
      noValidate
      onSubmit={(event) => event.preventDefault()}
      onKeyDown={(event) => {
        if (event.key !== 'Enter' || event.repeat || !(event.target instanceof HTMLInputElement)) return;
        event.preventDefault();
        finish();
      }}
    >
      <span className={styles.five}>
        <TypedField label="Check" {...text('name')} autoFocus={check.limits !== ''} />
      </span>
      <span className={styles.five}>
        <TypedField
          label="Limits"
          hint={
            limits.ok
              ? sayLimitsTwice(limits.value, field)
              : '20-30, or 25 20-30, or min 5, or max 10, or 90+-3, 118+-3'
          }
          {...text('limits')}
          autoFocus={check.limits === ''}
        />
      </span>
      <span className={styles.two}>
        <Select
          label="Unit"
          options={unitOptions}
          value={check.unit || countUnit}
          onChange={(unit) => change({ unit: (unit === countUnit ? '' : unit) as Check['unit'] })}
        />
      </span>
      <span className={styles.five}>
        <TypedField label="Heading" {...text('group')} />
      </span>
      <span className={styles.five}>
        <TypedField label="Source" placeholder="book, page" {...text('sourceNote')} />
      </span>
      <span className={styles.two}>
        <TypedField label="Spots" {...text('spots')} inputMode="numeric" />
      </span>
      <span className={styles.three}>
        <Select
          label="Read"
          options={methodOptions}
          value={check.method}
          onChange={(method) => onChange(changeCheck(sheet, readBy(check, method, sheet)))}
        />
      </span>
      <span className={styles.three}>
        <Select
          label="Pack"
          options={packOptions}
          value={check.packKey ?? noPack}
          onChange={(key) => change({ packKey: key === noPack ? null : key })}
        />
      </span>
      <span className={styles.three}>
        <Select
          label="Wave plate"
          options={waveOptions}
          value={check.waveState}
          onChange={(waveState) => change({ waveState })}
        />
      </span>
      <span className={styles.three}>
        <Select
          label="Holds for the"
          hint={holdsForMeaning[check.holdsFor]}
          options={holdsForOptions}
          value={check.holdsFor}
          onChange={(holdsFor) => change({ holdsFor })}
        />
      </span>
      <span className={styles.four}>
        <TypedField label="Washers or shims" placeholder="none" {...text('shims')} />
      </span>
      <span className={styles.keys}>
        <Button kind="filled" keyHint="Enter" onPress={finish}>
          Next check
        </Button>
        <Button onPress={onClose} keyHint="Esc">
          Close
        </Button>
        <MoveKeys
          name={check.name}
          onMove={(by) => onChange({ ...sheet, checks: moved(sheet.checks, check.key, by) })}
        />
        <Button
          aria-label={`Take off ${check.name}`}
          onPress={() =>
            onTakeAway({ ...sheet, checks: without(sheet.checks, check.key) }, `Off the sheet: ${check.name}`)
          }
        >
          Take off
        </Button>
      </span>
      {problems.whole !== undefined && (
        <span className={styles.all}>
          <Refusal>{problems.whole}</Refusal>
        </span>
      )}
    </form>
  );
}
