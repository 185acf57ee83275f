// How a unit left: to whom, when, what was on it, the warranty it has, and the papers that go with it.
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { DeliverForm } from './DeliverForm.tsx';
import styles from './DeliveryScreen.module.css';
import { HandedOver } from './HandedOver.tsx';
import { TicketPage } from './TicketPage.tsx';
import { WarrantyOfJob } from './WarrantyOfJob.tsx';

export function DeliveryScreen({ jobId }: { jobId: number }) {
  return <TicketPage jobId={jobId}>{(job) => <Delivery job={job} />}</TicketPage>;
}

function Delivery({ job }: { job: Job }) {
  const read = useRead('jobs.getDelivery', { jobId: job.jobId });
  return (
    <Loaded read={read}>
      {(known) =>
        known.delivery ? (
          <div className={styles.columns}>
            <HandedOver job={job} delivery={known.delivery} earlier={known.earlierDeliveries} />
            <WarrantyOfJob job={job} known={known} />
            <Papers jobId={job.jobId} />
          </div>
        ) : (
          <DeliverForm job={job} known={known} />
        )
      }
    </Loaded>
  );
}

function Papers({ jobId }: { jobId: number }) {
  const params = { jobId: String(jobId) };
  return (
    <section aria-label="Papers to go with it">
      <h2>Papers to go with it</h2>
      <div className={styles.papers}>
        <LinkKey to="/jobs/$jobId/report/$copy" params={{ ...params, copy: 'customer' }} kind="filled">
          Print the customer’s copy
        </LinkKey>
        <LinkKey to="/jobs/$jobId/report/$copy" params={{ ...params, copy: 'shop' }}>
          Print the shop’s copy
        </LinkKey>
        <LinkKey to="/jobs/$jobId/sheet/$kind" params={{ ...params, kind: 'build' }}>
          Build sheet for the folder
        </LinkKey>
      </div>
      <p className="small quiet">
        The customer’s copy carries the day, the warranty and every number with its limits, without the shop’s notes.
      </p>
    </section>
  );
}
