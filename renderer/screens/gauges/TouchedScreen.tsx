// What a gauge read while it may have been off: by how much each reading could be wrong, and whether that would matter.
import { Link } from '@tanstack/react-router';
import type { Output } from '../../../app/contract/contract.ts';
import type { TouchedTake } from '../../../app/gauges/touched.contract.ts';
import { EmptyState } from '../../components/EmptyState.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { GaugesTabs } from '../../frame/GaugesTabs.tsx';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { PageHead } from '../../frame/PageHead.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { sayBusinessDay } from '../../text/part-words.ts';
import { sayDay } from '../../text/say-date.ts';
import styles from './Gauges.module.css';
import { type GaugeWords, useGaugeWords } from './use-gauge-words.ts';

type Touched = Output<'gauges.listTouched'>;

export function TouchedScreen({ gaugeCheckId }: { gaugeCheckId: number }) {
  const touched = useRead('gauges.listTouched', { gaugeCheckId });
  return (
    <>
      <GaugesTabs />
      <Loaded read={touched}>{(known) => <TouchedPage touched={known} />}</Loaded>
    </>
  );
}

function TouchedPage({ touched }: { touched: Touched }) {
  const words = useGaugeWords(touched.unit);
  const since = touched.sinceOn === null ? 'ever' : `since it was good on ${sayBusinessDay(touched.sinceOn)}`;
  const until = touched.untilOn === null ? '' : `, until it was good again on ${sayBusinessDay(touched.untilOn)}`;
  const mayChange = touched.takes.filter(({ couldSay }) => couldSay.length > 0).length;
  return (
    <>
      <PageHead
        title={`Read with ${touched.tag}`}
        facts={`found out ${sayBusinessDay(touched.foundOn)}`}
        acts={
          <LinkKey to="/gauges/$gaugeId" params={{ gaugeId: String(touched.gaugeId) }}>
            See the gauge
          </LinkKey>
        }
      />
      <section className={styles.section} aria-label="Readings it touched">
        <p className={styles.sentence}>
          {`It was found to say ${offWords(touched.error, words)}. What it read ${since}${until} could be off by as much.`}
          {touched.takes.length > 0 &&
            (mayChange === 0 ? ' No verdict would change.' : ` The verdict could change on ${mayChange} of them.`)}
        </p>
        {touched.takes.length === 0 ? (
          <EmptyState level={2} title="It read nothing in that time.">
            Only readings that name their gauge can be listed; it is chosen on the setup card.
          </EmptyState>
        ) : (
          <TakesTable touched={touched} words={words} />
        )}
      </section>
    </>
  );
}

function TakesTable({ touched, words }: { touched: Touched; words: GaugeWords }) {
  return (
    <Table label="Readings it touched">
      <thead>
        <tr>
          <ColumnHead>job</ColumnHead>
          <ColumnHead>customer, unit</ColumnHead>
          <ColumnHead>what was read</ColumnHead>
          <ColumnHead isNumber>read, {words.unit}</ColumnHead>
          <ColumnHead isNumber>could be</ColumnHead>
          <ColumnHead>said</ColumnHead>
          <ColumnHead>could say</ColumnHead>
          <ColumnHead isWide>when</ColumnHead>
        </tr>
      </thead>
      <tbody>
        {touched.takes.map((take) => (
          <TakeRow key={take.takeId} take={take} words={words} />
        ))}
      </tbody>
    </Table>
  );
}

function TakeRow({ take, words }: { take: TouchedTake; words: GaugeWords }) {
  const params = { jobId: String(take.jobId), checkId: String(take.checkId) };
  const { couldBe, couldSay } = take;
  return (
    <tr>
      <RowHead>
        <Link to="/jobs/$jobId" params={params}>
          {take.jobNumber}
        </Link>
      </RowHead>
      <Cell>
        {take.customer}, {take.unit}
      </Cell>
      <Cell>
        <Link to="/jobs/$jobId/checks/$checkId" params={params}>
          {take.checkName}
        </Link>
      </Cell>
      <Cell isNumber>{take.mean === null ? '–' : words.bare(take.mean)}</Cell>
      <Cell isNumber>{couldBe ? `${words.bare(couldBe.low)} to ${words.bare(couldBe.high)}` : '–'}</Cell>
      <Cell>{take.word}</Cell>
      <Cell isStrong={couldSay.length > 0}>{couldSay.length > 0 ? couldSay.join(' or ') : 'the same'}</Cell>
      <Cell isWide isQuiet>
        {sayDay(take.at)}, {take.by}
      </Cell>
    </tr>
  );
}

/** "up to 3 thou too much", "up to 0.2 psi too little", or both. */
function offWords({ low, high }: Touched['error'], words: GaugeWords): string {
  const parts = [
    high > 0 && `up to ${words.bare(high)} ${words.unit} too much`,
    low < 0 && `up to ${words.bare(-low)} ${words.unit} too little`,
  ];
  return parts.filter((part) => part !== false).join(' and ');
}
