// The open units, one key between them, and where each check of the chosen one stands.
import { useNavigate } from '@tanstack/react-router';
import type { CheckOfJob, Job } from '../../../app/jobs/jobs.contract.ts';
import { EmptyState } from '../../components/EmptyState.tsx';
import type { BenchKey } from '../../components/KeyBar.tsx';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { BenchPage } from './BenchPage.tsx';
import styles from './BenchScreen.module.css';
import { byNumber, useLastUnit, useOpenUnits, useRememberPlace } from './bench-place.ts';
import { CheckLine } from './CheckLine.tsx';
import { keysWhen } from './keys-when.ts';
import { PackLine } from './PackLine.tsx';
import { useHandKeys } from './use-hand-keys.ts';

/** `unit` from the address; without one the unit the bench was last at. */
export function BenchScreen({ unit }: { unit: number | null }) {
  const units = useOpenUnits();
  const last = useLastUnit();
  return (
    <Loaded read={units}>
      {(jobs) => {
        const open = byNumber(jobs);
        const chosen = [unit, last].flatMap((jobId) => open.filter((job) => job.jobId === jobId))[0] ?? open[0];
        return chosen ? <UnitAtBench key={chosen.jobId} jobId={chosen.jobId} /> : <NothingOpen />;
      }}
    </Loaded>
  );
}

function NothingOpen() {
  const checkIn = (
    <LinkKey to="/jobs/new" kind="filled">
      Check a unit in
    </LinkKey>
  );
  return (
    <EmptyState title="No unit is open." act={checkIn}>
      The bench shows the units that are checked in and not closed yet.
    </EmptyState>
  );
}

function UnitAtBench({ jobId }: { jobId: number }) {
  const job = useRead('jobs.getJob', { jobId });
  useRememberPlace(jobId, null);
  return <Loaded read={job}>{(found) => <ChecksOfUnit job={found} />}</Loaded>;
}

function ChecksOfUnit({ job }: { job: Job }) {
  const navigate = useNavigate();
  const read = ({ checkId }: CheckOfJob) =>
    void navigate({ to: '/bench/$jobId/$checkId', params: { jobId: String(job.jobId), checkId: String(checkId) } });
  const packs = job.checks.filter((check) => check.packId !== null);
  const others = job.checks.filter((check) => check.packId === null);
  useHandKeys(packs.map((check, index) => ({ key: String(index + 1), onPress: () => read(check) })));
  const next = job.checks.find((check) => check.checkId === job.missing[0]?.checkId);
  const swaps = () => void navigate({ to: '/bench/$jobId/swaps', params: { jobId: String(job.jobId) } });
  const keys: BenchKey[] = [
    ...keysWhen(next !== undefined, {
      key: 'Enter',
      words: `Read ${next?.name}`,
      isFilled: true,
      onPress: () => next && read(next),
    }),
    ...keysWhen(
      job.packs.some(({ mockUpNumber }) => mockUpNumber !== null),
      { key: 'S', words: 'What to swap, all packs', onPress: swaps },
    ),
  ];
  return (
    <BenchPage
      job={job}
      title="Bench"
      facts={<span className="quiet">{job.unit.vehicle}</span>}
      prompt={
        <>
          <h1 className="say">{openSentence(job)}</h1>
          {next && (
            <p>
              First: {next.name}, {job.missing[0]?.what}.
            </p>
          )}
        </>
      }
      keys={keys}
    >
      {packs.length > 0 && (
        <ul className={styles.packs} aria-label="Packs">
          {packs.map((check, index) => (
            <PackLine key={check.checkId} job={job} check={check} figure={String(index + 1)} />
          ))}
        </ul>
      )}
      <div className={styles.groups}>
        {[...Map.groupBy(others, (check) => check.group)].map(([group, checks]) => (
          <section key={group}>
            <h2 className={styles.group}>{group}</h2>
            <ul>
              {checks.map((check) => (
                <CheckLine key={check.checkId} job={job} check={check} />
              ))}
            </ul>
          </section>
        ))}
        {packs.length > 0 && (
          <section>
            <h2 className={styles.group}>Clutches: force, torque, fill; estimates</h2>
            <ul className={styles.clutches}>
              {job.packs.map(({ packId, name }) => (
                <li key={packId}>
                  <LinkKey
                    to="/jobs/$jobId/clutch/$packId"
                    params={{ jobId: String(job.jobId), packId: String(packId) }}
                  >
                    {name}
                  </LinkKey>
                </li>
              ))}
            </ul>
          </section>
        )}
      </div>
    </BenchPage>
  );
}

function openSentence({ checks, missing }: Job): string {
  if (checks.length === 0) return 'The spec sheet asks for nothing yet.';
  if (missing.length === 0) return 'Every check is settled.';
  return `${missing.length} of ${checks.length} checks ${missing.length === 1 ? 'is' : 'are'} open.`;
}
