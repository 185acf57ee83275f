// What comebacks cost: quarter after quarter beside what was delivered, then by family and told for each cause.
import { useState } from 'react';
import { costByQuarter } from '../../../app/charts/cost-by-quarter.ts';
import { sumByCause, sumByQuarter, sumCells } from '../../../app/comebacks/cost.ts';
import type { Output } from '../../../app/contract/contract.ts';
import { FittedChart } from '../../charts/FittedChart.tsx';
import { EmptyState } from '../../components/EmptyState.tsx';
import { Select } from '../../components/Select.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { PageHead } from '../../frame/PageHead.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { useMoneyWords } from '../../text/use-money-words.ts';
import styles from './Comebacks.module.css';
import { ComebacksTabs } from './ComebacksTabs.tsx';

type Cost = Output<'comebacks.getCost'>;
type Sums = ReturnType<typeof sumCells>;

export function CostScreen() {
  const cost = useRead('comebacks.getCost', {});
  return (
    <>
      <ComebacksTabs />
      <PageHead title="Cost" />
      <Loaded read={cost}>
        {(known) =>
          known.cells.length === 0 ? (
            <EmptyState level={2} title="Nothing was delivered yet.">
              Here stands what comebacks cost the shop beside the jobs it delivered, once a unit was handed over.
            </EmptyState>
          ) : (
            <CostPage cost={known} />
          )
        }
      </Loaded>
    </>
  );
}

const all = 'all';

function CostPage({ cost }: { cost: Cost }) {
  const [family, setFamily] = useState(all);
  const [quarter, setQuarter] = useState(all);
  const money = useMoneyWords();
  const familyId = family === all ? null : Number(family);
  const asked = { familyId, quarter: quarter === all ? null : quarter };
  const quarters = sumByQuarter(cost.cells, familyId);
  const bars = quarters.map(({ cost_cents, ...rest }) => ({ ...rest, cost: cost_cents }));
  const families = cost.families.filter((each) => familyId === null || each.familyId === familyId);
  return (
    <>
      <section className={styles.section} aria-label="By quarter">
        <div className={styles.line}>
          <div className={styles.some}>
            <Select
              label="Family"
              options={[
                { id: all, words: 'all families' },
                ...cost.families.map((each) => ({ id: String(each.familyId), words: each.name })),
              ]}
              value={family}
              onChange={setFamily}
            />
          </div>
          <div className={styles.some}>
            <Select
              label="Quarter, for families and causes"
              options={[
                { id: all, words: 'all quarters' },
                ...quarters.map((each) => ({ id: each.quarter, words: each.quarter })).toReversed(),
              ]}
              value={quarter}
              onChange={setQuarter}
            />
          </div>
        </div>
        <p className={styles.after}>{saysOf(sumCells(cost.cells, { familyId, quarter: null }))}</p>
        {bars.length > 0 && (
          <FittedChart least={320} draw={(width) => costByQuarter(bars, money, { width, height: 256 })} />
        )}
        <div className={styles.narrow}>
          <SumsTable
            label="Cost by quarter"
            first="quarter"
            rows={quarters.map((sums) => ({ name: sums.quarter, sums })).toReversed()}
          />
        </div>
      </section>
      <div className={styles.columns}>
        <section className={styles.section} aria-label="By family">
          <h2>By family</h2>
          <SumsTable
            label="Cost by family"
            first="family"
            rows={families.map(({ familyId: id, name }) => ({
              name,
              sums: sumCells(cost.cells, { ...asked, familyId: id }),
            }))}
          />
        </section>
        <section className={styles.section} aria-label="By cause">
          <h2>By cause</h2>
          <CausesTable rows={sumByCause(cost.causes, asked)} />
          <p className={styles.after}>
            A comeback with several causes is told in whole under each of them, so these do not add up.
          </p>
        </section>
      </div>
    </>
  );
}

function saysOf({ unpriced, undecided }: Sums): string {
  const missing = [
    unpriced > 0 && `${unpriced === 1 ? 'one has' : `${unpriced} have`} no cost written down yet`,
    undecided > 0 && `of ${undecided === 1 ? 'one' : undecided} it is not decided who pays`,
  ].filter((each) => each !== false);
  const rule = 'Counted in the quarter a unit came back: what those in warranty or out of goodwill cost the shop.';
  return missing.length === 0 ? rule : `${rule} Not in it: ${missing.join(', and ')}.`;
}

type SumsTableProps = {
  label: string;
  first: string;
  rows: ReadonlyArray<{ readonly name: string; readonly sums: Sums }>;
};

function SumsTable({ label, first, rows }: SumsTableProps) {
  const money = useMoneyWords();
  return (
    <Table label={label}>
      <thead>
        <tr>
          <ColumnHead>{first}</ColumnHead>
          <ColumnHead isNumber>delivered</ColumnHead>
          <ColumnHead isNumber>came back</ColumnHead>
          <ColumnHead isNumber>ours</ColumnHead>
          <ColumnHead isNumber>cost</ColumnHead>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ name, sums }) => (
          <tr key={name}>
            <RowHead>{name}</RowHead>
            <Cell isNumber>{sums.delivered}</Cell>
            <Cell isNumber>{sums.cameBack}</Cell>
            <Cell isNumber>{sums.ours}</Cell>
            <Cell isNumber isStrong>
              {money(sums.cost_cents)}
            </Cell>
          </tr>
        ))}
      </tbody>
    </Table>
  );
}

function CausesTable({ rows }: { rows: ReturnType<typeof sumByCause> }) {
  const money = useMoneyWords();
  if (rows.length === 0) return <p className="quiet">Nothing came back in that time.</p>;
  return (
    <Table label="Cost by cause">
      <thead>
        <tr>
          <ColumnHead>cause</ColumnHead>
          <ColumnHead isNumber>came back</ColumnHead>
          <ColumnHead isNumber>cost</ColumnHead>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ cause, cameBack, cost_cents }) => (
          <tr key={cause}>
            <RowHead isQuiet={cause === null}>{cause ?? 'none said'}</RowHead>
            <Cell isNumber>{cameBack}</Cell>
            <Cell isNumber isStrong>
              {money(cost_cents)}
            </Cell>
          </tr>
        ))}
      </tbody>
    </Table>
  );
}
