// The cores of a ticket: kept, gone back, or still owed either way; settled where they stand.
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import { PopoverDialog } from '../../components/PopoverDialog.tsx';
import { CoresOpenForm } from '../../cores/CoresOpenForm.tsx';
import { CoresTable } from '../../cores/CoresTable.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useRead } from '../../rpc/use-read.ts';
import styles from './Teardown.module.css';

export function CoresOfJob({ job }: { job: Job }) {
  const cores = useRead('stock.listCores', { includeSettled: true, jobId: job.jobId });
  return (
    <section aria-labelledby="cores-of-job">
      <header className={styles.head}>
        <h2 id="cores-of-job">Cores</h2>
        {!job.isClosed && (
          <PopoverDialog words="Write a core down…" title="A core is owed">
            {(close) => <CoresOpenForm of={job} onDone={close} />}
          </PopoverDialog>
        )}
      </header>
      <Loaded read={cores}>
        {(known) =>
          known.length > 0 ? <CoresTable cores={known} /> : <p className="quiet">No core is owed either way.</p>
        }
      </Loaded>
    </section>
  );
}
