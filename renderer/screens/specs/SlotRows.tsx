// The slots of a pack, one line each from the piston down the page, to be changed, moved and taken out one by one.
import type { KeyboardEvent } from 'react';
import { slotName } from '../../../app/packs/slot-name.ts';
import { Button } from '../../components/Button.tsx';
import { Checkbox } from '../../components/Checkbox.tsx';
import { Select } from '../../components/Select.tsx';
import { MoveKeys } from './RowKeys.tsx';
import { readSlot } from './read-typed-sheet.ts';
import styles from './SlotRows.module.css';
import { moved, replaced, slotLike, without } from './sheet-edits.ts';
import { kindOptions } from './sheet-words.ts';
import { TypedField } from './TypedField.tsx';
import type { TypedPack, TypedSheet, TypedSlot } from './typed-sheet.ts';

type SlotRowsProps = {
  sheet: TypedSheet;
  pack: TypedPack;
  onChange: (slots: readonly TypedSlot[]) => void;
  onRemove: (slots: readonly TypedSlot[], name: string) => void;
};

export function SlotRows({ sheet, pack, onChange, onRemove }: SlotRowsProps) {
  const { slots } = pack;
  return (
    <div>
      <div className={`${styles.row} ${styles.heads}`} aria-hidden="true">
        <span />
        <span>slot</span>
        <span>height, {sheet.lengthUnit}</span>
        <span>may be</span>
        <span>outline</span>
        <span>comes in</span>
        <span>lies</span>
      </div>
      <p className={styles.end}>piston</p>
      <ol aria-label={`Slots of ${pack.name}, from the piston`}>
        {slots.map((slot, index) => (
          <SlotRow
            key={slot.key}
            sheet={sheet}
            slot={slot}
            name={slotName(slots, index)}
            place={index + 1}
            onChange={(changed) => onChange(replaced(slots, changed))}
            onKind={(kind) => onChange(replaced(slots, slotLike(pack, slot.key, kind)))}
            onMove={(by) => onChange(moved(slots, slot.key, by))}
            onRemove={() => onRemove(without(slots, slot.key), slotName(slots, index))}
          />
        ))}
      </ol>
      <p className={styles.end}>
        {slots.some(({ kind }) => kind === 'snap ring') ? 'groove of the snap ring' : 'snap ring, fixed'}
      </p>
    </div>
  );
}

type SlotRowProps = {
  sheet: TypedSheet;
  slot: TypedSlot;
  name: string;
  place: number;
  onChange: (slot: TypedSlot) => void;
  onKind: (kind: TypedSlot['kind']) => void;
  onMove: (by: -1 | 1) => void;
  onRemove: () => void;
};

function SlotRow({ sheet, slot, name, place, onChange, onKind, onMove, onRemove }: SlotRowProps) {
  const { problems } = readSlot(slot, sheet);
  const text = (field: 'height' | 'outline' | 'catalogue' | 'facing') => ({
    isLabelHidden: true,
    value: slot[field],
    onChange: (typed: string) => onChange({ ...slot, [field]: typed }),
  });
  const isMatched = slot.isAdjuster || slot.outline !== '' || slot.catalogue !== '';
  return (
    <li className={styles.row} onKeyDown={(event) => goOnByKey(event, onMove)}>
      <span className={styles.place}>{place}</span>
      <Select
        label={`Kind of slot ${place}`}
        isLabelHidden
        options={kindOptions}
        value={slot.kind}
        onChange={(kind) => onKind(kind)}
      />
      <TypedField
        label={`Height of ${name}`}
        {...text('height')}
        placeholder="measured"
        problem={problems.height}
        name="height"
      />
      <Checkbox
        aria-label={`May swap ${name}`}
        isSelected={slot.isAdjuster}
        onChange={(isAdjuster) => onChange({ ...slot, isAdjuster })}
      >
        swap
      </Checkbox>
      {isMatched ? <TypedField label={`Outline of ${name}`} {...text('outline')} /> : <span />}
      {isMatched ? (
        <TypedField
          label={`Heights ${name} comes in`}
          {...text('catalogue')}
          placeholder="any"
          problem={problems.catalogue}
        />
      ) : (
        <span />
      )}
      <TypedField label={`How ${name} lies`} {...text('facing')} />
      <span className={styles.keys}>
        <MoveKeys name={name} earlier="toward the piston" later="toward the ring" onMove={onMove} />
        <Button aria-label={`Take ${name} out`} onPress={onRemove}>
          out
        </Button>
      </span>
    </li>
  );
}

/** In an entry, Alt with an arrow moves the slot, and Enter goes on to the next slot's height. */
function goOnByKey(event: KeyboardEvent<HTMLLIElement>, onMove: (by: -1 | 1) => void): void {
  if (!(event.target instanceof HTMLInputElement)) return;
  if (event.altKey && (event.key === 'ArrowUp' || event.key === 'ArrowDown')) {
    event.preventDefault();
    onMove(event.key === 'ArrowUp' ? -1 : 1);
  }
  if (event.key === 'Enter') {
    event.preventDefault();
    event.currentTarget.nextElementSibling?.querySelector<HTMLInputElement>('input[name="height"]')?.focus();
  }
}
