// The register: every gauge of the shop and whether it can be relied on today.
import { Link, useNavigate } from '@tanstack/react-router';
import { useCallback } from 'react';
import type { Gauge } from '../../../app/gauges/register.contract.ts';
import { Disclosure } from '../../components/Disclosure.tsx';
import { EmptyState } from '../../components/EmptyState.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { GaugesTabs } from '../../frame/GaugesTabs.tsx';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { PageHead } from '../../frame/PageHead.tsx';
import { useLetterKey } from '../../frame/use-letter-key.ts';
import { useRead } from '../../rpc/use-read.ts';
import styles from './Gauges.module.css';
import { isDoubtful, standingWords } from './standing-words.ts';
import { useGaugeWords } from './use-gauge-words.ts';

export function GaugesScreen() {
  const gauges = useRead('gauges.listGauges', {});
  const navigate = useNavigate();
  useLetterKey(
    'n',
    useCallback(() => void navigate({ to: '/gauges/new' }), [navigate]),
  );
  return (
    <>
      <GaugesTabs />
      <PageHead
        title="Gauges"
        facts={gauges.data && gauges.data.length > 0 && factsOf(gauges.data)}
        acts={
          <LinkKey to="/gauges/new" kind="filled" keyHint="N">
            New gauge
          </LinkKey>
        }
      />
      <Loaded read={gauges}>{(all) => <Register gauges={all} />}</Loaded>
    </>
  );
}

function Register({ gauges }: { gauges: readonly Gauge[] }) {
  const inUse = gauges.filter((gauge) => !gauge.isRetired);
  const retired = gauges.filter((gauge) => gauge.isRetired);
  if (gauges.length === 0) {
    return (
      <EmptyState level={2} title="No gauge is written down yet.">
        Press N, or <Link to="/gauges/new">write down the first one</Link>. A reading can then name the gauge that read
        it, and its permitted error counts among what makes the reading sure.
      </EmptyState>
    );
  }
  return (
    <section className={styles.section} aria-label="Register">
      <GaugesTable label="Gauges in use" gauges={inUse} />
      {retired.length > 0 && (
        <Disclosure words={retired.length === 1 ? '1 retired' : `${retired.length} retired`}>
          <GaugesTable label="Retired gauges" gauges={retired} />
        </Disclosure>
      )}
    </section>
  );
}

function GaugesTable({ label, gauges }: { label: string; gauges: readonly Gauge[] }) {
  return (
    <Table label={label}>
      <thead>
        <tr>
          <ColumnHead>gauge</ColumnHead>
          <ColumnHead>kind</ColumnHead>
          <ColumnHead isNumber>reads to</ColumnHead>
          <ColumnHead isNumber>permitted error</ColumnHead>
          <ColumnHead isWide>serial</ColumnHead>
          <ColumnHead>check</ColumnHead>
        </tr>
      </thead>
      <tbody>
        {gauges.map((gauge) => (
          <GaugeRow key={gauge.gaugeId} gauge={gauge} />
        ))}
      </tbody>
    </Table>
  );
}

function GaugeRow({ gauge }: { gauge: Gauge }) {
  const words = useGaugeWords(gauge.unit);
  return (
    <tr>
      <RowHead>
        <Link to="/gauges/$gaugeId" params={{ gaugeId: String(gauge.gaugeId) }}>
          {gauge.tag}
        </Link>
      </RowHead>
      <Cell>{gauge.kind}</Cell>
      <Cell isNumber>
        {words.bare(gauge.resolution)} {words.unit}
      </Cell>
      <Cell isNumber>
        {gauge.permittedError === null ? 'not stated' : `± ${words.bare(gauge.permittedError)} ${words.unit}`}
      </Cell>
      <Cell isWide isQuiet>
        {gauge.serial}
      </Cell>
      <Cell isStrong={isDoubtful(gauge)}>{standingWords(gauge)}</Cell>
    </tr>
  );
}

function factsOf(gauges: readonly Gauge[]): string {
  const doubtful = gauges.filter(isDoubtful).length;
  const inUse = gauges.filter((gauge) => !gauge.isRetired).length;
  return doubtful === 0 ? `${inUse} in use` : `${inUse} in use, ${doubtful} to be checked`;
}
