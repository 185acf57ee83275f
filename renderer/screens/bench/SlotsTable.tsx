// The slots of a pack as they lie on the bench, snap ring above and piston below, with what is in each.
import { slotName } from '../../../app/packs/slot-name.ts';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { usePack } from './at-check.ts';
import styles from './SlotsTable.module.css';

export type SlotRow = {
  readonly slotId: number;
  /** Written out, or empty. */
  readonly height: string;
  readonly tag: string;
  /** "nominal", "out 76.5". */
  readonly note: string;
};

type SlotsTableProps = {
  rows: readonly SlotRow[];
  /** The slot whose plate is typed now. */
  currentId: number | null;
  onChoose: (slotId: number) => void;
};

export function SlotsTable({ rows, currentId, onChoose }: SlotsTableProps) {
  const { slots } = usePack();
  const shown = slots.map((slot, index) => ({ slot, name: slotName(slots, index) })).reverse();
  return (
    <Table label="Slots, snap ring above, piston below" density="reading">
      <thead>
        <tr>
          <ColumnHead>slot</ColumnHead>
          <ColumnHead isNumber>height</ColumnHead>
          <ColumnHead>tag</ColumnHead>
          <ColumnHead />
        </tr>
      </thead>
      <tbody>
        {shown.map(({ slot, name }) => {
          const row = rows.find((each) => each.slotId === slot.slotId);
          const isCurrent = slot.slotId === currentId;
          return (
            <tr key={slot.slotId} className={isCurrent ? styles.now : undefined} aria-current={isCurrent || undefined}>
              <RowHead>
                <button type="button" className={styles.slot} onClick={() => onChoose(slot.slotId)}>
                  {name}
                </button>
              </RowHead>
              <Cell isNumber isStrong>
                {row?.height}
              </Cell>
              <Cell>
                <span className="mono">{row?.tag}</span>
              </Cell>
              <Cell isQuiet>{row?.note}</Cell>
            </tr>
          );
        })}
      </tbody>
    </Table>
  );
}
