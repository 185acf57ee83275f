// The plate for the chosen slot, typed; the loose ones that fit beside it, to be picked; all slots below.
import { EntryLine } from '../../components/EntryLine.tsx';
import { useAtCheck } from './at-check.ts';
import { LooseToPick } from './LooseToPick.tsx';
import styles from './SlotEntry.module.css';
import { type SlotRow, SlotsTable } from './SlotsTable.tsx';
import type { SlotFilling } from './use-slot-filling.ts';

type SlotEntryProps = { filling: SlotFilling; rows: readonly SlotRow[]; onEnter: () => void };

export function SlotEntry({ filling, rows, onEnter }: SlotEntryProps) {
  const { settings } = useAtCheck();
  const { chosen } = filling;
  const made = chosen && chosen.catalogue_nm.length > 0 ? ' (it comes in set heights)' : '';
  return (
    <>
      {chosen && (
        <EntryLine
          key={chosen.slotId}
          label={`height, ${settings.lengthUnit}; a tag after a blank${made}`}
          value={filling.typed}
          onChange={filling.type}
          onCommit={onEnter}
          refusal={filling.refusal}
        />
      )}
      <div className={styles.so}>
        <SlotsTable rows={rows} currentId={chosen?.slotId ?? null} onChoose={filling.moveTo} />
        {chosen && <LooseToPick atHand={filling.fitting} onPick={filling.pick} />}
      </div>
    </>
  );
}
