// Which outline one looks at: a tab each, and a list where there are too many for tabs.
import { Link, useNavigate } from '@tanstack/react-router';
import type { OutlineLine } from '../../../app/stock/plates.contract.ts';
import { classNames } from '../../components/class-names.ts';
import { Select } from '../../components/Select.tsx';
import styles from './PlatesOutlines.module.css';

const mostTabs = 4;

export function PlatesOutlines({ outlines, chosen }: { outlines: readonly OutlineLine[]; chosen: string }) {
  const navigate = useNavigate();
  if (outlines.length > mostTabs) {
    return (
      <div className={styles.choice}>
        <Select
          label="Outline"
          isLabelHidden
          options={outlines.map(({ outline }) => ({ id: outline, words: outline }))}
          value={chosen}
          onChange={(outline) => void navigate({ to: '/stock/plates/$outline', params: { outline } })}
        />
      </div>
    );
  }
  return (
    <nav className={styles.outlines} aria-label="Outlines">
      {outlines.map(({ outline }) => (
        <Link
          key={outline}
          to="/stock/plates/$outline"
          params={{ outline }}
          className={classNames(styles.outline, outline === chosen && styles.here)}
          aria-current={outline === chosen ? 'true' : undefined}
        >
          {outline}
        </Link>
      ))}
    </nav>
  );
}
