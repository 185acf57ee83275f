// One group of what the shop has set: its name and what it is about on the left, its entries on the right.
import { type ReactNode, useId } from 'react';
import styles from './SettingsSection.module.css';

type SettingsSectionProps = { title: string; about: ReactNode; children: ReactNode };

export function SettingsSection({ title, about, children }: SettingsSectionProps) {
  const titleId = useId();
  return (
    <section className={styles.section} aria-labelledby={titleId}>
      <div>
        <h2 id={titleId} className={styles.title}>
          {title}
        </h2>
        <p className="small quiet">{about}</p>
      </div>
      <div className={styles.entries}>{children}</div>
    </section>
  );
}
