// One check over the builds of a family: what is usual, and which build falls outside it.
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { individuals } from '../../../app/charts/individuals.ts';
import type { Output } from '../../../app/contract/contract.ts';
import { FittedChart } from '../../charts/FittedChart.tsx';
import { Disclosure } from '../../components/Disclosure.tsx';
import { EmptyState } from '../../components/EmptyState.tsx';
import { Select } from '../../components/Select.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { GaugesTabs } from '../../frame/GaugesTabs.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { PageHead } from '../../frame/PageHead.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { amountWords, type ShopWords } from '../../text/amount-words.ts';
import { sayDay } from '../../text/say-date.ts';
import styles from './Gauges.module.css';

type Charted = Output<'gauges.chartCheck'>;

export function BuildsScreen() {
  const families = useRead('specs.listFamilies', {});
  const [chosen, choose] = useState<number | null>(null);
  return (
    <>
      <GaugesTabs />
      <PageHead title="Over the builds" facts="one check, as it was read last on each build" />
      <Loaded read={families}>
        {(all) => {
          const familyId = chosen ?? all[0]?.familyId;
          if (familyId === undefined) {
            return (
              <EmptyState level={2} title="No family has a spec sheet yet.">
                Write one down under <Link to="/specs">Specs</Link> first.
              </EmptyState>
            );
          }
          const options = all.map((family) => ({ id: family.familyId, words: family.name }));
          return <ChecksOfFamily key={familyId} familyId={familyId} families={options} onFamily={choose} />;
        }}
      </Loaded>
    </>
  );
}

function ChecksOfFamily({
  familyId,
  families,
  onFamily,
}: {
  familyId: number;
  families: ReadonlyArray<{ id: number; words: string }>;
  onFamily: (familyId: number) => void;
}) {
  const sheet = useRead('specs.getRevision', { familyId });
  const [named, name] = useState<string | null>(null);
  const checkName = named ?? sheet.data?.checks[0]?.name ?? null;
  const charted = useRead('gauges.chartCheck', checkName === null ? null : { familyId, checkName }, {
    keepsLast: true,
  });
  return (
    <>
      <div className={styles.keys}>
        <div className={styles.some}>
          <Select label="Family" options={families} value={familyId} onChange={onFamily} />
        </div>
        <div className={styles.much}>
          <Select
            label="Check"
            options={(sheet.data?.checks ?? []).map((check) => ({ id: check.name, words: check.name }))}
            value={checkName}
            onChange={name}
          />
        </div>
      </div>
      {checkName !== null && <Loaded read={charted}>{(found) => <ChartedCheck charted={found} />}</Loaded>}
    </>
  );
}

function ChartedCheck({ charted }: { charted: Charted }) {
  const words = amountWords(charted, useOpenShop().settings);
  const { points, chart, why } = charted;
  if (points.length === 0) {
    return (
      <EmptyState level={2} title="No build has it as final yet.">
        Every build whose check was read as final stands here, with a way to its ticket.
      </EmptyState>
    );
  }
  return (
    <section className={styles.section} aria-label="Over the builds">
      <p className={styles.said}>{sentenceOf(charted, words)}</p>
      <div className={styles.chart}>
        <FittedChart
          draw={(width) =>
            individuals(
              {
                points: points.map((point) => ({
                  name: String(point.jobNumber),
                  value: point.mean,
                  isOutside: point.isOutside,
                })),
                limits: chart,
              },
              words,
              { width: Math.min(width, 1040), height: 280 },
            )
          }
        />
      </div>
      {chart && (
        <Disclosure words="Why">
          <p className={styles.why}>
            Limits lie three deviations from the mean, and a deviation is the mean change from one build to the next
            over 1.128. They say what is usual here; what is right stands on the spec sheet.
          </p>
        </Disclosure>
      )}
      {chart === null && <p className={styles.sentence}>{why}</p>}
      <Table label="Builds" density="dense">
        <thead>
          <tr>
            <ColumnHead>job</ColumnHead>
            <ColumnHead isNumber>read, {words.unit}</ColumnHead>
            <ColumnHead>beside the others</ColumnHead>
            <ColumnHead>when</ColumnHead>
            <ColumnHead>by</ColumnHead>
          </tr>
        </thead>
        <tbody>
          {points.toReversed().map((point) => (
            <tr key={point.jobId}>
              <RowHead>
                <Link to="/jobs/$jobId" params={{ jobId: String(point.jobId) }}>
                  {point.jobNumber}
                </Link>
              </RowHead>
              <Cell isNumber>{words.full(point.mean)}</Cell>
              <Cell isStrong={point.isOutside}>{point.isOutside ? 'outside' : chart ? 'as usual' : ''}</Cell>
              <Cell>{sayDay(point.at)}</Cell>
              <Cell isQuiet>{point.by}</Cell>
            </tr>
          ))}
        </tbody>
      </Table>
    </section>
  );
}

function sentenceOf({ points, chart }: Charted, words: ShopWords): string {
  if (!chart) return points.length === 1 ? '1 build so far.' : `${points.length} builds so far.`;
  const usual = `Usually ${words.full(chart.lower)} to ${words.full(chart.upper)} ${words.unit}`;
  const outside = points.filter(({ isOutside }) => isOutside).map(({ jobNumber }) => jobNumber);
  if (outside.length === 0) return `${usual}: none of ${points.length} builds falls outside.`;
  return `${usual}: ${outside.length === 1 ? 'job' : 'jobs'} ${outside.join(', ')} ${outside.length === 1 ? 'falls' : 'fall'} outside.`;
}
