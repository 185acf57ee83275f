// Delivered builds that share one thing: ticked ones go on the list of whom to call, with a reason and what to check.
import { Link, useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { cameBackWords, usedSoFar, warrantyToday } from '../../../app/comebacks/call-words.ts';
import type { BuildThatShares, SharedThing } from '../../../app/comebacks/calls.contract.ts';
import type { Output } from '../../../app/contract/contract.ts';
import { Button } from '../../components/Button.tsx';
import { Checkbox } from '../../components/Checkbox.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { Notice } from '../../components/Notice.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { PageHead } from '../../frame/PageHead.tsx';
import { useWrite } from '../../rpc/use-write.ts';
import { sayBusinessDay } from '../../text/part-words.ts';
import { today } from '../../text/say-date.ts';
import { useDraft } from '../../text/use-draft.ts';
import styles from './Comebacks.module.css';
import { daysInService } from './comeback-words.ts';
import { sharedAddress } from './shared-address.ts';

type Sharing = Output<'comebacks.listSharing'>;

export function BuildsThatShare({ of, sharing }: { of: SharedThing; sharing: Sharing }) {
  const { title, builds, stillHere, caution } = sharing;
  const { file } = useOpenShop();
  const { person } = useAtBench();
  const navigate = useNavigate();
  const write = useWrite('comebacks.putOnList');
  const [isTried, setTried] = useState(false);
  const { kind, id } = sharedAddress(of);
  const draft = useDraft<{ jobIds: readonly number[]; whatToCheck: string; reason: string }>(
    `put on the list: ${file}, ${kind} ${id}`,
    { jobIds: builds.filter(isLikely).map(({ jobId }) => jobId), whatToCheck: '', reason: '' },
  );
  const { whatToCheck, reason } = draft.value;
  // What was put on the list meanwhile is chosen no more.
  const chosen = builds.filter((build) => !build.isOnList && draft.value.jobIds.includes(build.jobId));
  const change = (more: Partial<typeof draft.value>) => draft.change({ ...draft.value, ...more });
  const choose = (jobId: number, isOn: boolean) =>
    change({ jobIds: isOn ? [...draft.value.jobIds, jobId] : draft.value.jobIds.filter((each) => each !== jobId) });
  const lacksReason = reason.trim() === '';
  const put = () => {
    setTried(true);
    if (lacksReason || chosen.length === 0 || write.isPending) return;
    const jobIds = chosen.map(({ jobId }) => jobId);
    write.mutate(
      { jobIds, shares: kind, what: title, whatToCheck, reason, by: person.personId },
      {
        onSuccess: () => {
          draft.clear();
          void navigate({ to: '/comebacks/calls' });
        },
      },
    );
  };
  return (
    <>
      <PageHead title={title} acts={<LinkKey to="/comebacks/sharing">Something else</LinkKey>} />
      <section className={styles.section} aria-label="Builds that share it">
        {caution !== '' && <Notice>{caution}</Notice>}
        <p className={styles.sentence}>{countWords(builds.length, stillHere)}</p>
        {builds.length > 0 && <BuildsTable builds={builds} chosen={chosen} onChoose={choose} />}
      </section>
      {builds.some((build) => !build.isOnList) && (
        <EnterThrough label="Put them on the list" onFinish={put} className={styles.below}>
          <p>That they share it says nothing yet of why one failed: who is called is yours to decide.</p>
          <div className={styles.line}>
            <div className={styles.much}>
              <TextField
                label="Why they are called"
                value={reason}
                onChange={(typed) => change({ reason: typed })}
                refusal={isTried && lacksReason ? 'Say why.' : null}
                maxLength={200}
              />
            </div>
            <div className={styles.much}>
              <TextField
                label="What to check"
                value={whatToCheck}
                onChange={(typed) => change({ whatToCheck: typed })}
                maxLength={200}
              />
            </div>
          </div>
          <div className={styles.keys}>
            <Button type="submit" kind="filled" keyHint="Enter" isPending={write.isPending}>
              {chosen.length === 1 ? 'Put 1 build on the list' : `Put ${chosen.length} builds on the list`}
            </Button>
            {isTried && chosen.length === 0 && <p role="alert">Tick at least one build.</p>}
            <FailureSentence error={write.error} />
          </div>
        </EnterThrough>
      )}
    </>
  );
}

type BuildsTableProps = {
  builds: readonly BuildThatShares[];
  chosen: readonly BuildThatShares[];
  onChoose: (jobId: number, isOn: boolean) => void;
};

function BuildsTable({ builds, chosen, onChoose }: BuildsTableProps) {
  const { decimalMark } = useOpenShop().settings;
  const writing = { decimalMark, sayDay: sayBusinessDay };
  return (
    <Table label="Builds that share it">
      <thead>
        <tr>
          <ColumnHead>call</ColumnHead>
          <ColumnHead>unit</ColumnHead>
          <ColumnHead>customer</ColumnHead>
          <ColumnHead>what it has of it</ColumnHead>
          <ColumnHead>in service</ColumnHead>
          <ColumnHead>warranty</ColumnHead>
          <ColumnHead>came back</ColumnHead>
        </tr>
      </thead>
      <tbody>
        {builds.map((build) => (
          <tr key={build.jobId} className={styles.tall}>
            <Cell>
              {build.isOnList ? (
                'on the list'
              ) : (
                <Checkbox
                  isSelected={chosen.includes(build)}
                  onChange={(isOn) => onChoose(build.jobId, isOn)}
                  aria-label={`Call about job ${build.number}`}
                >
                  Call
                </Checkbox>
              )}
            </Cell>
            <RowHead>
              <Link className={styles.whole} to="/jobs/$jobId" params={{ jobId: String(build.jobId) }}>
                Job {build.number}
              </Link>
              <span className={styles.beneath}>{`${build.unit.familyName} ${build.unit.serial}`.trim()}</span>
            </RowHead>
            <Cell>
              {build.customer.name}
              <span className={styles.beneath}>{build.customer.phone || 'no phone number'}</span>
            </Cell>
            <Cell>
              {build.what.map((each) => (
                <span key={each} className={styles.item}>
                  {each}
                </span>
              ))}
            </Cell>
            <Cell>
              {daysInService(build.service)}
              <span className={styles.beneath}>{usedSoFar(build, writing)}</span>
            </Cell>
            <Cell>{warrantyToday(build, today(), writing)}</Cell>
            <Cell>{cameBackWords(build, sayBusinessDay) || <span className="quiet">no</span>}</Cell>
          </tr>
        ))}
      </tbody>
    </Table>
  );
}

/** Nobody has to call about a unit that is back already. */
function isLikely({ cameBack, seenSince, isOnList }: BuildThatShares): boolean {
  return cameBack.length === 0 && seenSince === null && !isOnList;
}

function countWords(builds: number, stillHere: number): string {
  const left =
    builds === 0
      ? 'No unit with it has left'
      : builds === 1
        ? 'One unit with it has left'
        : `${builds} units with it have left`;
  const here =
    stillHere === 0
      ? ''
      : stillHere === 1
        ? ', one ticket with it has no delivery'
        : `, ${stillHere} tickets with it have no delivery`;
  return `${left}${here}.`;
}
