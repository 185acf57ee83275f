// A step of reading a check: the bench round it, with the way to the other checks and units.
import { useNavigate } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import type { BenchKey } from '../../components/KeyBar.tsx';
import { useAtCheck } from './at-check.ts';
import { BenchPage } from './BenchPage.tsx';
import styles from './CheckPage.module.css';
import { askedFor } from './check-facts.ts';

type CheckPageProps = {
  /** What the hand reads now; null while nothing is read. */
  phase: string | null;
  /** How it stands: "40 psi, base on the drum, soaked". */
  stands?: string;
  prompt: ReactNode;
  aside?: ReactNode;
  keys: readonly BenchKey[];
  children?: ReactNode;
};

export function CheckPage({ phase, stands, keys, ...rest }: CheckPageProps) {
  const { job, check, words } = useAtCheck();
  const navigate = useNavigate();
  const toChecks = () => void navigate({ to: '/bench', search: { unit: job.jobId } });
  return (
    <BenchPage
      {...rest}
      job={job}
      title={`${check.name}, job ${job.number}`}
      facts={
        <>
          <span className={styles.check}>
            {check.name}
            {phase && `, ${phase}`}
          </span>
          <span className={styles.asked}>{askedFor(check.limits, words)}</span>
          {stands && <span className={styles.stands}>{stands}</span>}
        </>
      }
      keys={[...keys, { key: 'C', words: 'All checks', isRare: 'always', onPress: toChecks }]}
    />
  );
}
