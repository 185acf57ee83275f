// What stands open beside the plates: one plate or one can, with the hand on its first key.
import { type ReactNode, useEffect, useRef } from 'react';
import { Button } from '../../components/Button.tsx';
import styles from './PlatePanel.module.css';

type PlateSidePanelProps = { title: string; says: ReactNode; onClose: () => void; children: ReactNode };

/** Escape closes it. The first key among `data-acts` takes the focus at once. */
export function PlateSidePanel({ title, says, onClose, children }: PlateSidePanelProps) {
  const panel = useRef<HTMLElement>(null);
  useEffect(() => panel.current?.querySelector<HTMLElement>('[data-acts] button, [data-acts] a')?.focus(), []);
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (event.key === 'Escape' && !event.defaultPrevented) onClose();
    };
    document.addEventListener('keydown', press);
    return () => document.removeEventListener('keydown', press);
  }, [onClose]);
  return (
    <section ref={panel} className={styles.panel} aria-label={title}>
      <header className={styles.head}>
        <h2 className="say">{title}</h2>
        <p>{says}</p>
        <Button keyHint="Esc" onPress={onClose}>
          Close
        </Button>
      </header>
      {children}
    </section>
  );
}
