// The pages of one ticket: the same row of ways on each of them.
import { Link, useLocation } from '@tanstack/react-router';
import { classNames } from '../../components/class-names.ts';
import { useRead } from '../../rpc/use-read.ts';
import styles from './TicketPages.module.css';

const pages = [
  { to: '/jobs/$jobId', name: 'Checks' },
  { to: '/jobs/$jobId/door', name: 'Door' },
  { to: '/jobs/$jobId/teardown', name: 'Teardown' },
  { to: '/jobs/$jobId/build', name: 'Build' },
  { to: '/jobs/$jobId/final', name: 'Final' },
  { to: '/jobs/$jobId/delivery', name: 'Delivery' },
  { to: '/jobs/$jobId/estimate', name: 'Estimate' },
  { to: '/jobs/$jobId/parts', name: 'Parts' },
  { to: '/jobs/$jobId/photos', name: 'Photos' },
  { to: '/jobs/$jobId/papers', name: 'Papers' },
  { to: '/jobs/$jobId/history', name: 'History' },
] as const;

export function TicketPages({ jobId }: { jobId: number }) {
  const { pathname } = useLocation();
  const comebackId = useRead('comebacks.listOfJob', { jobId }).data?.heldAgainst?.comebackId;
  const params = { jobId: String(jobId) };
  return (
    <nav className={styles.pages} aria-label={`Pages of the ticket`}>
      {pages.map(({ to, name }) => {
        const isHere = pathname === to.replace('$jobId', params.jobId);
        return (
          <Link
            key={to}
            to={to}
            params={params}
            className={classNames(styles.page, isHere && styles.here)}
            aria-current={isHere ? 'page' : undefined}
          >
            {name}
          </Link>
        );
      })}
      {comebackId !== undefined && (
        <Link
          to="/comebacks/$comebackId"
          params={{ comebackId: String(comebackId) }}
          className={classNames(styles.page)}
        >
          Comeback
        </Link>
      )}
    </nav>
  );
}
