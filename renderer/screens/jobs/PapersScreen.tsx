// Every paper a ticket can be printed as, with a word on whom it is for.
import { LinkKey } from '../../frame/LinkKey.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { ExportJob } from './ExportJob.tsx';
import styles from './PapersScreen.module.css';
import { TicketPage } from './TicketPage.tsx';

export function PapersScreen({ jobId }: { jobId: number }) {
  return <TicketPage jobId={jobId}>{() => <Papers jobId={jobId} />}</TicketPage>;
}

function Papers({ jobId }: { jobId: number }) {
  const params = { jobId: String(jobId) };
  const { data: estimate } = useRead('jobs.getEstimate', { jobId });
  return (
    <>
      <ul className={styles.papers} aria-label="Papers">
        <li>
          <LinkKey to="/jobs/$jobId/report/$copy" params={{ ...params, copy: 'customer' }}>
            Build report, customer’s copy
          </LinkKey>
          <span>What was measured, against which limits, in the customer’s words.</span>
        </li>
        <li>
          <LinkKey to="/jobs/$jobId/report/$copy" params={{ ...params, copy: 'shop' }}>
            Build report, shop’s copy
          </LinkKey>
          <span>The same with every reading, mock-up and decision.</span>
        </li>
        <li>
          <LinkKey to="/jobs/$jobId/sheet/$kind" params={{ ...params, kind: 'build' }}>
            Build sheet
          </LinkKey>
          <span>Every act on the job in order, for the folder.</span>
        </li>
        <li>
          <LinkKey to="/jobs/$jobId/sheet/$kind" params={{ ...params, kind: 'bench' }}>
            Blank bench sheet
          </LinkKey>
          <span>To read by hand on the day the PC is dead.</span>
        </li>
        {estimate?.estimates.map(({ number }) => (
          <li key={number}>
            <LinkKey to="/jobs/$jobId/estimate/$number" params={{ ...params, number: String(number) }}>
              {`Estimate ${number}`}
            </LinkKey>
            <span>As it was given to the customer.</span>
          </li>
        ))}
        <li>
          <LinkKey to="/stock/labels" search={{ of: `job:${jobId}` }}>
            Case label
          </LinkKey>
          <span>The tag for the case, to scan.</span>
        </li>
      </ul>
      <ExportJob jobId={jobId} />
    </>
  );
}
