// As found beside as built, and the parts as the teardown found them.
import type { AsFoundNow, Trace } from '../../../app/comebacks/trace.contract.ts';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { amountWords } from '../../text/amount-words.ts';
import styles from './Comebacks.module.css';
import trace from './Trace.module.css';
import { OpensLink } from './TraceFindings.tsx';

export function TraceAsFound({ traced }: { traced: Trace }) {
  const { asFound, foundParts, wear, returnJobId } = traced;
  return (
    <section className={styles.section} aria-label="As found beside as built">
      <h2>As found beside as built</h2>
      {asFound.length === 0 ? (
        <p className={trace.text}>
          Nothing is read as found yet. Read the same checks as at the build before anything comes apart.
        </p>
      ) : (
        <AsFoundTable rows={asFound} />
      )}
      {foundParts.length > 0 && (
        <>
          <h3 className={trace.under}>Found at teardown</h3>
          <Table label="Found at teardown">
            <thead>
              <tr>
                <ColumnHead>part</ColumnHead>
                <ColumnHead>found</ColumnHead>
                <ColumnHead>gone</ColumnHead>
              </tr>
            </thead>
            <tbody>
              {foundParts.map((part, index) => (
                // Two parts may be written down in the same words.
                // biome-ignore lint/suspicious/noArrayIndexKey: see above
                <tr key={index} className={styles.tall}>
                  <RowHead>
                    {part.words}
                    {part.note !== '' && <span className={styles.beneath}>{part.note}</span>}
                  </RowHead>
                  <Cell>{part.condition}</Cell>
                  <Cell>{part.gone}</Cell>
                </tr>
              ))}
            </tbody>
          </Table>
          {wear.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
          <OpensLink opens={{ kind: 'teardown', jobId: returnJobId }} about="return ticket">
            Teardown
          </OpensLink>
        </>
      )}
    </section>
  );
}

function AsFoundTable({ rows }: { rows: readonly AsFoundNow[] }) {
  return (
    <Table label="As found beside as built">
      <thead>
        <tr>
          <ColumnHead>check</ColumnHead>
          <ColumnHead isNumber>as built</ColumnHead>
          <ColumnHead isNumber>as found</ColumnHead>
          <ColumnHead isNumber>changed by</ColumnHead>
          <ColumnHead>what it says</ColumnHead>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <AsFoundRow key={row.name} row={row} />
        ))}
      </tbody>
    </Table>
  );
}

function AsFoundRow({ row }: { row: AsFoundNow }) {
  const words = amountWords(row, useOpenShop().settings);
  const sure = (amount: number | null, expanded: number | null) =>
    amount === null ? '–' : `${words.full(amount)}${expanded === null ? '' : ` ± ${words.full(expanded)}`}`;
  return (
    <tr className={styles.tall}>
      <RowHead>
        <OpensLink opens={row.opens} about="as found">
          {row.name}
        </OpensLink>
        <span className={styles.beneath}>{words.unit}</span>
      </RowHead>
      <Cell isNumber>{sure(row.built.amount, row.built.expanded)}</Cell>
      <Cell isNumber>{sure(row.found.amount, row.found.expanded)}</Cell>
      <Cell isNumber>{sure(row.difference, row.expanded)}</Cell>
      <Cell isStrong={row.says === 'more' || row.says === 'less'}>{row.sentence}</Cell>
    </tr>
  );
}
