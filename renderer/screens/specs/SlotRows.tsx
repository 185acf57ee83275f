// The slots of a pack, one line each from the piston down the page, to be changed, moved and taken out one by one.
import { memo, useMemo } from 'react';
import { slotName } from '../../../app/packs/slot-name.ts';
import button from '../../components/Button.module.css';
import { Button } from '../../components/Button.tsx';
import { Checkbox } from '../../components/Checkbox.tsx';
import { classNames } from '../../components/class-names.ts';
import { Menu } from '../../components/Menu.tsx';
import { goByKey } from './go-by-key.ts';
import { MoveKeys } from './MoveKeys.tsx';
import { readSlot } from './read-typed-sheet.ts';
import styles from './SlotRows.module.css';
import { moved, replaced, slotLike, without } from './sheet-edits.ts';
import { kindOptions } from './sheet-words.ts';
import { TypedField } from './TypedField.tsx';
import type { Figures } from './typed-figures.ts';
import type { TypedPack, TypedSheet, TypedSlot } from './typed-sheet.ts';
import { useSteady } from './use-steady.ts';

type SlotRowsProps = {
  sheet: TypedSheet;
  pack: TypedPack;
  onChange: (slots: readonly TypedSlot[]) => void;
  onRemove: (slots: readonly TypedSlot[], name: string) => void;
};

/** What a hand does to one slot. */
type SlotAct =
  | { readonly kind: 'change'; readonly slot: TypedSlot }
  | { readonly kind: 'become'; readonly key: number; readonly pieceKind: TypedSlot['kind'] }
  | { readonly kind: 'move'; readonly key: number; readonly by: -1 | 1 }
  | { readonly kind: 'remove'; readonly key: number; readonly name: string };

export function SlotRows({ sheet, pack, onChange, onRemove }: SlotRowsProps) {
  const { slots } = pack;
  const { lengthUnit, decimalMark } = sheet;
  const figures = useMemo(() => ({ lengthUnit, decimalMark }), [lengthUnit, decimalMark]);
  const act = useSteady((did: SlotAct) => {
    switch (did.kind) {
      case 'change':
        return onChange(replaced(slots, did.slot));
      case 'become':
        return onChange(replaced(slots, slotLike(pack, did.key, did.pieceKind)));
      case 'move':
        return onChange(moved(slots, did.key, did.by));
      case 'remove':
        return onRemove(without(slots, did.key), did.name);
    }
  });
  return (
    <div>
      <div className={`${styles.row} ${styles.heads}`} aria-hidden="true">
        <span />
        <span>slot</span>
        <span>height, {lengthUnit}</span>
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
            figures={figures}
            slot={slot}
            name={slotName(slots, index)}
            place={index + 1}
            onAct={act}
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
  figures: Figures;
  slot: TypedSlot;
  name: string;
  place: number;
  onAct: (act: SlotAct) => void;
};

/** Drawn again only when its own slot changes: a pack is many fields, and each key typed would draw them all. */
const SlotRow = memo(function SlotRow({ figures, slot, name, place, onAct }: SlotRowProps) {
  const { key } = slot;
  const { problems } = readSlot(slot, figures);
  const text = (of: 'height' | 'outline' | 'catalogue' | 'facing') => ({
    isLabelHidden: true,
    value: slot[of],
    onChange: (typed: string) => onAct({ kind: 'change', slot: { ...slot, [of]: typed } }),
  });
  const onMove = (by: -1 | 1) => onAct({ kind: 'move', key, by });
  const isMatched = slot.isAdjuster || slot.outline !== '' || slot.catalogue !== '';
  return (
    <li className={styles.row} onKeyDown={(event) => goByKey(event, onMove, nextHeight)}>
      <span className={styles.place}>{place}</span>
      <Menu
        label={`Slot ${place} is a ${slot.kind}`}
        words={slot.kind}
        keyClass={classNames(button.key, button.plain, button.desk)}
        items={kindOptions}
        onChoose={(pieceKind) => onAct({ kind: 'become', key, pieceKind })}
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
        onChange={(isAdjuster) => onAct({ kind: 'change', slot: { ...slot, isAdjuster } })}
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
        <Button aria-label={`Take ${name} out`} onPress={() => onAct({ kind: 'remove', key, name })}>
          out
        </Button>
      </span>
    </li>
  );
});

/** The height of the next slot. */
const nextHeight = (row: HTMLLIElement) =>
  row.nextElementSibling?.querySelector<HTMLInputElement>('input[name="height"]');
