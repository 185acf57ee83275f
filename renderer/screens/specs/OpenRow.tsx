// The row of a sheet that is open for editing: Escape closes it, with everything typed kept.
import { type ReactNode, useEffect, useRef } from 'react';
import styles from './EditorRows.module.css';

type OpenRowProps = { label: string; onClose: () => void; children: ReactNode };

export function OpenRow({ label, onClose, children }: OpenRowProps) {
  const row = useRef<HTMLFieldSetElement>(null);
  useEffect(() => {
    row.current?.scrollIntoView({ block: 'nearest' });
  }, []);
  return (
    <fieldset
      ref={row}
      aria-label={label}
      className={styles.open}
      data-open
      onKeyDown={(event) => {
        if (event.key === 'Escape' && !event.defaultPrevented) onClose();
      }}
    >
      {children}
    </fieldset>
  );
}
