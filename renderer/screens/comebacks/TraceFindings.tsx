// What stands out, one subject a line: its sentence, its mark among the other builds, and the way to the readings.
import { Link } from '@tanstack/react-router';
import { placeStrip } from '../../../app/charts/place-strip.ts';
import { bySubject, readOutFirst, type Subject } from '../../../app/comebacks/by-subject.ts';
import { isUnusual } from '../../../app/comebacks/how-unusual.ts';
import type { Opens, TraceFinding } from '../../../app/comebacks/trace.contract.ts';
import { chanceWords } from '../../../app/packs/chance-words.ts';
import { FittedChart } from '../../charts/FittedChart.tsx';
import { Disclosure } from '../../components/Disclosure.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { amountWords } from '../../text/amount-words.ts';
import styles from './Trace.module.css';

export function TraceFindings({ findings }: { findings: readonly TraceFinding[] }) {
  const { first, rest } = readOutFirst(bySubject(findings));
  return (
    <>
      <Subjects subjects={first} />
      {rest.length > 0 && (
        <Disclosure words={`${rest.length} more that do not stand out`}>
          <Subjects subjects={rest} />
        </Disclosure>
      )}
    </>
  );
}

function Subjects({ subjects }: { subjects: readonly Subject[] }) {
  return (
    <ol className={styles.subjects}>
      {subjects.map((subject) => (
        <SubjectLine key={subject.name} subject={subject} />
      ))}
    </ol>
  );
}

function SubjectLine({ subject: { lead, others, least } }: { subject: Subject }) {
  const { place } = lead;
  const isOdd = [lead, ...others].some(isUnusual);
  return (
    <li>
      <div>
        <p className={isOdd ? `${styles.lead} ${styles.unusual}` : styles.lead}>{lead.sentence}</p>
        {others.map((each) => (
          <p key={each.sentence} className={styles.beneath}>
            {each.sentence}
          </p>
        ))}
        <div className={styles.more}>
          {lead.opens && (
            <OpensLink opens={lead.opens} about={lead.subject}>
              {wayWords(lead.opens)}
            </OpensLink>
          )}
          {least !== null && <span className="small quiet">by chance as unusual in {chanceWords(least)}</span>}
        </div>
      </div>
      {place && place.others.length > 0 && (
        <div>
          <Mark place={place} />
          <Disclosure words={`The other builds, ${lead.subject}`}>
            <PlaceTable subject={lead.subject} place={place} />
          </Disclosure>
        </div>
      )}
    </li>
  );
}

type Place = NonNullable<TraceFinding['place']>;

function Mark({ place }: { place: Place }) {
  const words = amountWords(place, useOpenShop().settings);
  return (
    <FittedChart
      draw={(width) =>
        placeStrip({ amount: place.amount, others: place.others, limits: place }, words, {
          width,
          height: 48,
          medium: 'screen',
        })
      }
    />
  );
}

/** The same as the mark, in figures. */
function PlaceTable({ subject, place }: { subject: string; place: Place }) {
  const words = amountWords(place, useOpenShop().settings);
  const sorted = place.others.toSorted((a, b) => a - b);
  const at = (share: number) => sorted[Math.round(share * (sorted.length - 1))] ?? 0;
  const rows = [
    ['this build', place.amount],
    ['lowest of the others', at(0)],
    ['a quarter lie up to', at(0.25)],
    ['the middle one', at(0.5)],
    ['three quarters lie up to', at(0.75)],
    ['highest of the others', at(1)],
    ['low limit', place.low],
    ['high limit', place.high],
  ] as const;
  return (
    <Table label={`${subject} of this build and of ${sorted.length} others`} density="dense">
      <thead>
        <tr>
          <ColumnHead>of {sorted.length} others</ColumnHead>
          <ColumnHead isNumber>{words.unit}</ColumnHead>
        </tr>
      </thead>
      <tbody>
        {rows.map(([name, amount]) =>
          amount === null ? null : (
            <tr key={name}>
              <RowHead>{name}</RowHead>
              <Cell isNumber>{words.full(amount)}</Cell>
            </tr>
          ),
        )}
      </tbody>
    </Table>
  );
}

function wayWords({ kind }: Opens): string {
  switch (kind) {
    case 'check':
      return 'Readings';
    case 'lists':
      return 'Lists';
    case 'packs':
      return 'Packs';
    case 'batch':
      return 'Units with it';
    case 'teardown':
      return 'Teardown';
  }
}

/** To what of a ticket a sentence rests on; said with what it is about, because many of them stand on one page. */
export function OpensLink({ opens, about, children }: { opens: Opens; about: string; children: string }) {
  const label = `${children}, ${about}`;
  if (opens.kind === 'batch') {
    return (
      <Link to="/stock/trace/$kind/$id" params={{ kind: 'batch', id: String(opens.batchId) }} aria-label={label}>
        {children}
      </Link>
    );
  }
  const jobId = String(opens.jobId);
  if (opens.kind === 'check') {
    return (
      <Link to="/jobs/$jobId/checks/$checkId" params={{ jobId, checkId: String(opens.checkId) }} aria-label={label}>
        {children}
      </Link>
    );
  }
  const to = ({ lists: '/jobs/$jobId/build', packs: '/jobs/$jobId', teardown: '/jobs/$jobId/teardown' } as const)[
    opens.kind
  ];
  return (
    <Link to={to} params={{ jobId }} aria-label={label}>
      {children}
    </Link>
  );
}
