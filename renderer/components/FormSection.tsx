// One part of a longer form: its name and what it is about on the left, its entries on the right.
import { type ReactNode, useId } from 'react';
import styles from './FormSection.module.css';

type FormSectionProps = { title: string; about: ReactNode; children: ReactNode };

export function FormSection({ title, about, children }: FormSectionProps) {
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
