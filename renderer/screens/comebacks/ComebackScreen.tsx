// One comeback: what it turned out to be, its causes, and the two tickets it lies between.
import { Link } from '@tanstack/react-router';
import type { Comeback } from '../../../app/comebacks/log.contract.ts';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { PageHead } from '../../frame/PageHead.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { sayBusinessDay } from '../../text/part-words.ts';
import { CardOfComeback } from './CardOfComeback.tsx';
import { CausesOfComeback } from './CausesOfComeback.tsx';
import styles from './Comebacks.module.css';
import { ComebacksTabs } from './ComebacksTabs.tsx';
import { daysInService, usedWords } from './comeback-words.ts';
import { TraceOfComeback } from './TraceOfComeback.tsx';

export function ComebackScreen({ comebackId }: { comebackId: number }) {
  const comeback = useRead('comebacks.getComeback', { comebackId });
  return (
    <>
      <ComebacksTabs />
      <Loaded read={comeback}>{(known) => <ComebackPage comeback={known} />}</Loaded>
    </>
  );
}

function ComebackPage({ comeback }: { comeback: Comeback }) {
  const { build, ticket } = comeback;
  const { unit, customer } = build;
  return (
    <>
      <PageHead
        title={`Came back as job ${ticket.number}`}
        facts={
          <>
            <span>{`${unit.familyName} ${unit.serial}`.trim()}</span>
            <span>{[unit.vehicle, unit.use].filter(Boolean).join(', ')}</span>
            <span>{[customer.name, customer.phone].filter(Boolean).join(', ')}</span>
          </>
        }
        acts={
          <>
            <LinkKey to="/jobs/$jobId" params={{ jobId: String(build.jobId) }}>
              {`As built, job ${build.number}`}
            </LinkKey>
            <LinkKey to="/jobs/$jobId" params={{ jobId: String(ticket.jobId) }}>
              {`At return, job ${ticket.number}`}
            </LinkKey>
            <LinkKey
              to="/comebacks/$comebackId/report/$copy"
              params={{ comebackId: String(comeback.comebackId), copy: 'shop' }}
            >
              Report
            </LinkKey>
            <LinkKey
              to="/comebacks/$comebackId/report/$copy"
              params={{ comebackId: String(comeback.comebackId), copy: 'customer' }}
            >
              For the customer
            </LinkKey>
          </>
        }
      />
      <ServiceSentence comeback={comeback} />
      <div className={styles.columns}>
        <CardOfComeback comeback={comeback} />
        <div>
          <CausesOfComeback comeback={comeback} />
          <RecordedAtReturn comeback={comeback} />
        </div>
      </div>
      <TraceOfComeback comebackId={comeback.comebackId} />
    </>
  );
}

function ServiceSentence({ comeback }: { comeback: Comeback }) {
  const { decimalMark } = useOpenShop().settings;
  const { build, service, card } = comeback;
  const since = service.isAssumed
    ? `since it was handed over on ${sayBusinessDay(build.deliveredOn)} (nobody said when it went into service)`
    : `since it went into service on ${sayBusinessDay(service.from)}`;
  return (
    <p className={styles.lead}>
      Back on <b>{sayBusinessDay(card.cameBackOn)}</b>, <b>{daysInService(service)}</b> {since},{' '}
      <b>{usedWords(service, decimalMark)}</b> since delivery.
    </p>
  );
}

function RecordedAtReturn({ comeback }: { comeback: Comeback }) {
  const { ticket, recorded } = comeback;
  const params = { jobId: String(ticket.jobId) };
  const ways = [
    { to: '/jobs/$jobId', words: countWords(recorded.asFoundChecks, 'check read as found', 'checks read as found') },
    {
      to: '/jobs/$jobId/teardown',
      words: countWords(recorded.findings, 'finding at teardown', 'findings at teardown'),
    },
    { to: '/jobs/$jobId/photos', words: countWords(recorded.photos, 'photo', 'photos') },
  ] as const;
  return (
    <section className={styles.section} aria-label="Recorded at return">
      <h2>Recorded at return</h2>
      <ul className={styles.ways}>
        {ways.map(({ to, words }) => (
          <li key={to}>
            <Link to={to} params={params}>
              {words}
            </Link>
          </li>
        ))}
      </ul>
      <p className="small quiet">Measure before taking apart: as found, the same checks as at the build.</p>
    </section>
  );
}

function countWords(count: number, one: string, many: string): string {
  if (count === 0) return `no ${one} yet`;
  return count === 1 ? `1 ${one}` : `${count} ${many}`;
}
