// The earlier visits of a unit, newest first, each a way to its ticket.
import { Link } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import type { Visit } from '../../../app/jobs/door.contract.ts';
import { type Return, warrantyStanding } from '../../../app/jobs/warranty.ts';
import { useOpenShop } from '../../frame/open-shop.ts';
import { useRead } from '../../rpc/use-read.ts';
import { sayDay } from '../../text/say-date.ts';
import { sayBusinessDay } from './days.ts';
import styles from './VisitsOfUnit.module.css';

type VisitsOfUnitProps = {
  unitId: number | null;
  serial: string;
  /** The ticket they stand on, which is no earlier visit. */
  besidesJobId?: number;
  title: string;
  /** When and with what on it the unit is here: what a warranty is looked at by. */
  now: Return;
  /** What can be done about a visit it left from with a delivery. */
  actOn?: (visit: VisitThatLeft) => ReactNode;
};

export type VisitThatLeft = Visit & { readonly left: NonNullable<Visit['left']> };

export function VisitsOfUnit({ unitId, serial, besidesJobId, title, now, actOn }: VisitsOfUnitProps) {
  const isKnown = unitId !== null || serial.trim() !== '';
  const read = useRead('jobs.listVisits', isKnown ? { unitId, serial } : null);
  const visits = (isKnown ? (read.data ?? []) : []).filter((visit) => visit.jobId !== besidesJobId);
  if (visits.length === 0) return null;
  return (
    <section className={styles.visits} aria-label={title}>
      <h3>{title}</h3>
      <ul>
        {visits.map((visit) => (
          <VisitLine
            key={visit.jobId}
            visit={visit}
            now={now}
            act={actOn && visit.left && actOn({ ...visit, left: visit.left })}
          />
        ))}
      </ul>
    </section>
  );
}

function VisitLine({ visit, now, act }: { visit: Visit; now: Return; act: ReactNode }) {
  const { decimalMark } = useOpenShop().settings;
  const { left } = visit;
  return (
    <li>
      <Link to="/jobs/$jobId" params={{ jobId: String(visit.jobId) }}>
        Job {visit.number}
      </Link>{' '}
      <span className="quiet">
        {sayDay(visit.openedAt)}, {visit.customerName}, {visit.isClosed ? 'closed' : `in ${visit.stageName}`}
      </span>
      {left && (
        <span className={styles.warranty}>
          handed over {sayBusinessDay(left.deliveredOn)},{' '}
          <b>{warrantyStanding(left, now, { decimalMark, sayDay: sayBusinessDay }).words}</b>
        </span>
      )}
      {visit.complaint !== '' && <span className={styles.complaint}>{visit.complaint}</span>}
      {act && <div className={styles.act}>{act}</div>}
    </li>
  );
}
