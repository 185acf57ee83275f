// The open units, one press between them.
import { classNames } from './class-names.ts';
import styles from './UnitTabs.module.css';

type UnitTabsProps = {
  label: string;
  units: readonly { id: number; words: string }[];
  currentId: number | null;
  onChoose: (id: number) => void;
};

export function UnitTabs({ label, units, currentId, onChoose }: UnitTabsProps) {
  return (
    <ol aria-label={label} className={styles.units}>
      {units.map((unit) => (
        <li key={unit.id}>
          <button
            type="button"
            className={classNames(styles.unit)}
            aria-current={unit.id === currentId}
            onClick={() => onChoose(unit.id)}
          >
            {unit.words}
          </button>
        </li>
      ))}
    </ol>
  );
}
