// What was found, part by part: its condition, what is done about it and who decided, its photos.

import { conditionWords, partWords } from '../../../app/jobs/finding-words.ts';
import { type Finding, findingDecisions } from '../../../app/jobs/findings.contract.ts';
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import { Select } from '../../components/Select.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { sayDayAndTime } from '../../text/say-date.ts';
import { FindingCorrection } from './FindingCorrection.tsx';
import { FindingOnEstimate } from './FindingOnEstimate.tsx';
import { FindingPhotos } from './FindingPhotos.tsx';
import styles from './Teardown.module.css';

export function FindingsTable({ job, findings }: { job: Job; findings: readonly Finding[] }) {
  if (findings.length === 0) {
    return (
      <p className="quiet">
        {job.isClosed
          ? 'Nothing was written down at teardown.'
          : 'Nothing found yet. Type a part, its condition, Enter; the next one follows.'}
      </p>
    );
  }
  const open = findings.filter(({ decision }) => decision.decision === 'not decided yet').length;
  return (
    <>
      {open > 0 && <p>{open === 1 ? 'One is not decided yet.' : `${open} are not decided yet.`}</p>}
      <Table label="Findings">
        <thead>
          <tr>
            <ColumnHead>part</ColumnHead>
            <ColumnHead>condition</ColumnHead>
            <ColumnHead>decision</ColumnHead>
            <ColumnHead>photos</ColumnHead>
            <ColumnHead />
          </tr>
        </thead>
        <tbody>
          {findings.map((finding) => (
            <FindingRow key={finding.findingId} job={job} finding={finding} />
          ))}
        </tbody>
      </Table>
    </>
  );
}

function FindingRow({ job, finding }: { job: Job; finding: Finding }) {
  const { settings } = useOpenShop();
  const { earlier, note, reason, by, at, checkId } = finding;
  const check = job.checks.find((each) => each.checkId === checkId);
  return (
    <tr className={styles.finding}>
      <RowHead>
        {partWords(finding)}
        {note !== '' && <span className={styles.beneath}>{note}</span>}
        {check && <span className={styles.beneath}>measured by {check.name}</span>}
      </RowHead>
      <Cell>
        {conditionWords(finding, settings)}
        {earlier.map((card) => (
          <span key={card.at} className={styles.beneath}>
            <s>
              {card.part === finding.part ? '' : `${partWords(card)}: `}
              {conditionWords(card, settings)}
            </s>{' '}
            {card.by}
          </span>
        ))}
        <span className={styles.beneath}>
          {reason !== '' && `${reason}, `}
          {by}, {sayDayAndTime(at)}
        </span>
      </Cell>
      <Cell>
        <Decision job={job} finding={finding} />
      </Cell>
      <Cell>
        <FindingPhotos job={job} finding={finding} />
      </Cell>
      <Cell isNumber>
        {!job.isClosed && (
          <span className={styles.keys}>
            {finding.decision.decision === 'replace' && <Replacing job={job} finding={finding} />}
            <FindingCorrection job={job} finding={finding} />
          </span>
        )}
      </Cell>
    </tr>
  );
}

function Decision({ job, finding }: { job: Job; finding: Finding }) {
  const { person } = useAtBench();
  const write = useWrite('jobs.decideFinding');
  const { findingId, decision, earlierDecisions } = finding;
  const decidedBefore = earlierDecisions.filter((each) => each.decision !== 'not decided yet');
  return (
    <>
      {job.isClosed ? (
        decision.decision
      ) : (
        <Select
          label={`Decision on ${partWords(finding)}`}
          isLabelHidden
          options={findingDecisions.map((id) => ({ id, words: id }))}
          value={decision.decision}
          onChange={(next) =>
            next !== decision.decision && write.mutate({ findingId, decision: next, note: '', by: person.personId })
          }
        />
      )}
      <span className={styles.beneath}>
        {decidedBefore.map((each) => (
          <span key={each.at}>
            <s>{each.decision}</s> {each.by},{' '}
          </span>
        ))}
        {earlierDecisions.length > 0 && `${decision.by}, ${sayDayAndTime(decision.at)}`}
      </span>
      <FailureSentence error={write.error} />
    </>
  );
}

/** A part to be replaced wants a line on the estimate and a part from the shelf. */
function Replacing({ job, finding }: { job: Job; finding: Finding }) {
  return (
    <>
      <FindingOnEstimate jobId={job.jobId} finding={finding} />
      <LinkKey
        to="/jobs/$jobId/parts"
        params={{ jobId: String(job.jobId) }}
        search={{ find: finding.slotName === null ? finding.part : finding.slotName.replace(/ \d+$/, '') }}
        aria-label={`Pull ${partWords(finding)}`}
      >
        Pull…
      </LinkKey>
    </>
  );
}
