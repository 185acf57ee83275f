// What a job comes to: its lines by kind, what the customer was told and said yes to, what is still to pay.
import { Link } from '@tanstack/react-router';
import { useCallback, useState } from 'react';
import type { EstimateOfJob } from '../../../app/jobs/estimate.contract.ts';
import { Button } from '../../components/Button.tsx';
import { EmptyState } from '../../components/EmptyState.tsx';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { PageHead } from '../../frame/PageHead.tsx';
import { useLetterKey } from '../../frame/use-letter-key.ts';
import { useRead } from '../../rpc/use-read.ts';
import { useDraft } from '../../text/use-draft.ts';
import { EstimateAgreement } from './EstimateAgreement.tsx';
import { EstimateDeposits } from './EstimateDeposits.tsx';
import { EstimateHistory } from './EstimateHistory.tsx';
import { EstimateLineForm } from './EstimateLineForm.tsx';
import { EstimateLines } from './EstimateLines.tsx';
import { EstimateOffers } from './EstimateOffers.tsx';
import styles from './EstimateScreen.module.css';
import { EstimateTerms } from './EstimateTerms.tsx';
import { blankLine, lineOfOffer } from './estimate-draft.ts';
import { FindingsToCharge } from './FindingsToCharge.tsx';
import { TicketPages } from './TicketPages.tsx';

export function EstimateScreen({ jobId }: { jobId: number }) {
  const read = useRead('jobs.getEstimate', Number.isInteger(jobId) && jobId > 0 ? { jobId } : null);
  if (read.data === undefined && (read.error || !read.isEnabled)) {
    return (
      <EmptyState
        title={read.error?.message ?? 'There is no such job.'}
        act={
          <LinkKey to="/jobs" kind="filled">
            To the jobs
          </LinkKey>
        }
      />
    );
  }
  return <Loaded read={read}>{(estimate) => <Desk estimate={estimate} />}</Loaded>;
}

function Desk({ estimate }: { estimate: EstimateOfJob }) {
  const { file } = useOpenShop();
  const { jobId, isClosed } = estimate;
  const [showsCost, setShowsCost] = useState(false);
  useLetterKey(
    'c',
    useCallback(() => setShowsCost((shown) => !shown), []),
  );
  const draft = useDraft(`estimate line: ${file}, job ${jobId}`, blankLine(estimate.terms));
  const newest = estimate.estimates[0];
  return (
    <>
      <PageHead
        title="Estimate"
        facts={
          <>
            <Link to="/jobs/$jobId" params={{ jobId: String(jobId) }}>
              Job {estimate.jobNumber}
            </Link>
            <span>{estimate.customerName}</span>
          </>
        }
        acts={
          <>
            <Button keyHint="C" aria-pressed={showsCost} onPress={() => setShowsCost(!showsCost)}>
              {showsCost ? 'Hide cost' : 'Show cost'}
            </Button>
            <EstimateTerms terms={estimate.terms} />
            {newest && (
              <LinkKey
                to="/jobs/$jobId/estimate/$number"
                params={{ jobId: String(jobId), number: String(newest.number) }}
              >
                {`Estimate ${newest.number} on paper`}
              </LinkKey>
            )}
          </>
        }
      />
      <TicketPages jobId={jobId} />
      <div className={styles.body}>
        <div className={styles.lines}>
          <EstimateLines estimate={estimate} showsCost={showsCost} />
          {!isClosed && (
            <>
              <EstimateOffers estimate={estimate} onTypePrice={(offer) => draft.change(lineOfOffer(offer))} />
              <FindingsToCharge jobId={jobId} />
              <section className={styles.add} aria-label="Add a line">
                <h2>Add a line</h2>
                <EstimateLineForm jobId={jobId} terms={estimate.terms} draft={draft} showsCost={showsCost} />
              </section>
            </>
          )}
          <EstimateHistory estimate={estimate} />
        </div>
        <aside className={styles.side}>
          <EstimateAgreement estimate={estimate} />
          <EstimateDeposits estimate={estimate} />
        </aside>
      </div>
    </>
  );
}
