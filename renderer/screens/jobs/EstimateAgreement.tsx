// Where the ticket stands with its customer, and the one act that is next: give the estimate, or write down the yes.
import type { EstimateOfJob } from '../../../app/jobs/estimate.contract.ts';
import { writeDay } from '../../../app/papers/dates.ts';
import { Disclosure } from '../../components/Disclosure.tsx';
import { EstimateApproveForm } from './EstimateApproveForm.tsx';
import { EstimateChangesTable } from './EstimateChangesTable.tsx';
import { EstimateGiveForm } from './EstimateGiveForm.tsx';
import styles from './EstimateScreen.module.css';
import { useEstimateWords } from './use-estimate-words.ts';

export function EstimateAgreement({ estimate }: { estimate: EstimateOfJob }) {
  const { approved, changesSinceApproval: changes, state } = estimate;
  const hasChanged = changes !== null && (changes.lines.length > 0 || changes.total_difference_cents !== 0);
  return (
    <section className={styles.part} aria-label="The customer’s word">
      <h2>{headings[state]}</h2>
      <Standing estimate={estimate} />
      {approved && (
        <p className="small">
          Estimate {approved.estimateNumber} approved by {approved.approvedBy}{' '}
          {approved.how === 'in person' ? 'in person' : `by ${approved.how}`} on {writeDay(approved.approvedOn)},
          written down by {approved.by}.{approved.note !== '' && ` ${approved.note}`}
        </p>
      )}
      {changes !== null && hasChanged && <EstimateChangesTable changes={changes} taxLabel={estimate.terms.taxLabel} />}
      {!estimate.isClosed && <NextAct estimate={estimate} />}
    </section>
  );
}

const headings: Record<EstimateOfJob['state'], string> = {
  'nothing to give': 'Nothing to give yet',
  'to give': 'To be given',
  'to approve': 'Waits for a yes',
  approved: 'Approved',
  over: 'Over what was approved',
};

function Standing({ estimate }: { estimate: EstimateOfJob }) {
  const { money } = useEstimateWords();
  const { state, totals, approved, estimates } = estimate;
  switch (state) {
    case 'nothing to give':
      return <p>An estimate needs a line.</p>;
    case 'to give':
      return (
        <p>
          The lines come to <b>{money(totals.total_cents)}</b>. The customer has not been told.
        </p>
      );
    case 'to approve':
      return (
        <p>
          Estimate {estimates[0]?.number}, <b>{money(totals.total_cents)}</b>, was given. No work before the yes.
        </p>
      );
    case 'approved':
      return (
        <p>
          The lines come to <b>{money(totals.total_cents)}</b>, approved up to <b>{money(approved?.upTo_cents ?? 0)}</b>
          .
        </p>
      );
    case 'over':
      return (
        <p role="status">
          The lines come to <b>{money(totals.total_cents)}</b>, over the approved {money(approved?.upTo_cents ?? 0)} by{' '}
          <b>{money(totals.total_cents - (approved?.upTo_cents ?? 0))}</b>. A new yes is needed.
        </p>
      );
  }
}

function NextAct({ estimate }: { estimate: EstimateOfJob }) {
  const { state, isGivenAsItStands, lines } = estimate;
  const newest = estimate.estimates[0];
  if (lines.length === 0) return null;
  const give = <EstimateGiveForm key={newest?.number ?? 0} estimate={estimate} />;
  if (!isGivenAsItStands || !newest) {
    return state === 'approved' ? <Disclosure words="Give a new estimate">{give}</Disclosure> : give;
  }
  const approve = (
    <EstimateApproveForm key={newest.estimateId} estimate={newest} customerName={estimate.customerName} />
  );
  return (
    <>
      {state === 'approved' ? <Disclosure words="Write down another yes">{approve}</Disclosure> : approve}
      <Disclosure words="Give it with other findings">{give}</Disclosure>
    </>
  );
}
