// A part of the clutch's page, and a figure in it with what it was worked out from.
import { Link } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import type { ClutchOfJob } from '../../../app/clutch/clutch.contract.ts';
import styles from './ClutchScreen.module.css';

type Waits = { readonly missing: readonly string[]; readonly problem: string | null };

/** A part of the page; where its figures are not stated it says which, and the way there. */
export function Section({
  title,
  of,
  waits,
  children,
}: {
  title: string;
  of: ClutchOfJob;
  waits: Waits;
  children: ReactNode;
}) {
  const id = `clutch-${title.replaceAll(' ', '-').toLowerCase()}`;
  return (
    <section className={styles.section} aria-labelledby={id}>
      <h2 id={id}>
        {title} <span className={styles.mark}>estimate</span>
      </h2>
      {waits.missing.length > 0 && (
        <p>
          Waits for: {waits.missing.map((each) => each.charAt(0).toLowerCase() + each.slice(1)).join('; ')}. State what
          is known{' '}
          <Link to="/specs/$familyId/edit" params={{ familyId: String(of.familyId) }}>
            in Specs
          </Link>
          , in the pack’s editor; it counts for units checked in after that.
        </p>
      )}
      {waits.problem !== null && <p>{waits.problem}</p>}
      {children}
    </section>
  );
}

/** A figure with what it was worked out from. */
export function Figure({ name, value, children }: { name: string; value: string; children: ReactNode }) {
  return (
    <div className={styles.figure}>
      <dt>{name}</dt>
      <dd className={styles.value}>{value}</dd>
      <dd className={styles.from}>{children}</dd>
    </div>
  );
}
