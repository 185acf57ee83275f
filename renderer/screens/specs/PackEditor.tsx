// One pack while it is being edited: named, laid out from counts, then slot by slot, with its rules and its note.
import { Button } from '../../components/Button.tsx';
import { Disclosure } from '../../components/Disclosure.tsx';
import { Refusal } from '../../components/Refusal.tsx';
import { TextArea } from '../../components/TextArea.tsx';
import { ClutchFields } from './ClutchFields.tsx';
import { MoveKeys } from './MoveKeys.tsx';
import styles from './PackEditor.module.css';
import { PatternForm } from './PatternForm.tsx';
import { RuleRows } from './RuleRows.tsx';
import { readPack } from './read-typed-sheet.ts';
import { SlotRows } from './SlotRows.tsx';
import { addClearanceCheck, addRule, addSlot, changePack, layOutPack, moved, removePack } from './sheet-edits.ts';
import { TypedField } from './TypedField.tsx';
import type { TypedPack, TypedSheet } from './typed-sheet.ts';

type PackEditorProps = {
  sheet: TypedSheet;
  pack: TypedPack;
  isAskedFor: boolean;
  onChange: (sheet: TypedSheet) => void;
  /** A change that takes something away, and what was taken, so that it can be undone. */
  onTakeAway: (sheet: TypedSheet, what: string) => void;
  onOpenCheck: (key: number) => void;
  onLaidOut: () => void;
  onDone: () => void;
};

/** The key that usually follows once a pack is laid out. */
export const clearanceKeyId = 'add-clearance-check';

export function PackEditor({
  sheet,
  pack,
  isAskedFor,
  onChange,
  onTakeAway,
  onOpenCheck,
  onLaidOut,
  onDone,
}: PackEditorProps) {
  const { problems } = readPack(pack, sheet);
  const change = (changed: Partial<TypedPack>) => onChange(changePack(sheet, { ...pack, ...changed }));
  const isBlank = pack.slots.length === 0;
  const isChecked = sheet.checks.some((check) => check.packKey === pack.key);
  const patternForm = (
    <PatternForm
      packName={pack.name}
      lengthUnit={sheet.lengthUnit}
      pattern={pack.pattern}
      onChange={(pattern) => change({ pattern })}
      onLayOut={(kinds) => {
        const laidOut = layOutPack(sheet, pack, kinds);
        if (isBlank) onChange(laidOut);
        else onTakeAway(laidOut, `Laid out again: ${pack.name}`);
        onLaidOut();
      }}
      autoFocus={isBlank}
    />
  );
  const addClearance = () => {
    const added = addClearanceCheck(sheet, pack);
    onChange(added);
    onOpenCheck(added.lastKey);
  };
  return (
    <div className={styles.editor}>
      <div className={styles.name}>
        <TypedField
          label="Pack"
          value={pack.name}
          onChange={(name) => change({ name })}
          problem={problems.name}
          isAskedFor={isAskedFor}
          autoFocus={!isBlank}
        />
        <span className={styles.keys}>
          <MoveKeys name={pack.name} onMove={(by) => onChange({ ...sheet, packs: moved(sheet.packs, pack.key, by) })} />
          <Button onPress={() => onTakeAway(removePack(sheet, pack.key), `Off the sheet: ${pack.name}`)}>
            Take the pack off
          </Button>
          <Button onPress={onDone} keyHint="Esc">
            Close
          </Button>
        </span>
      </div>
      {isBlank ? (
        patternForm
      ) : (
        <>
          <SlotRows
            sheet={sheet}
            pack={pack}
            onChange={(slots) => change({ slots })}
            onRemove={(slots, name) =>
              onTakeAway(changePack(sheet, { ...pack, slots }), `Out of ${pack.name}: ${name}`)
            }
          />
          <RuleRows rules={pack.rules} onChange={(rules) => change({ rules })} />
          <div className={styles.keys}>
            <Button id={clearanceKeyId} kind={isChecked ? 'plain' : 'filled'} onPress={addClearance}>
              Add its clearance check
            </Button>
            <Button onPress={() => onChange(addSlot(sheet, pack))}>Add a slot</Button>
            <Button onPress={() => onChange(addRule(sheet, pack))}>Add a placement rule</Button>
          </div>
          <ClutchFields clutch={pack.clutch} figures={sheet} onChange={(clutch) => change({ clutch })} />
          <Disclosure words="Lay it out again from counts">{patternForm}</Disclosure>
        </>
      )}
      <TextArea label="Note" rows={2} value={pack.note} onChange={(note) => change({ note })} maxLength={4000} />
      {problems.whole !== undefined && <Refusal>{problems.whole}</Refusal>}
      {isAskedFor && problems.slots !== undefined && <Refusal>{problems.slots}</Refusal>}
    </div>
  );
}
