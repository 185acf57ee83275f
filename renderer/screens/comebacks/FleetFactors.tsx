// What goes together with coming back, the finds first, and all that was tried behind them.

import { count } from '../../../app/comebacks/curve-words.ts';
import type { FleetAnswer } from '../../../app/comebacks/fleet.contract.ts';
import { sayChance, sayTimes } from '../../../app/comebacks/fleet-words.ts';
import { Disclosure } from '../../components/Disclosure.tsx';
import { Notice } from '../../components/Notice.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import styles from './Fleet.module.css';
import { evidence } from './fleet-words.ts';

type Told = Extract<FleetAnswer['factors'], { isEnough: true }>;

export function FleetFactors({ factors }: { factors: Told }) {
  const { decimalMark } = useOpenShop().settings;
  const { tried, count: all, notTried, shadows } = factors;
  const found = tried.filter(({ isFound }) => isFound);
  return (
    <>
      <p className={styles.said}>
        {found.length === 0
          ? `Of ${count(all, 'thing')} tried, none stands out from chance.`
          : `Of ${count(all, 'thing')} tried, ${found.length} ${found.length === 1 ? 'stands' : 'stand'} out; one in twenty such finds may be chance. Going together is not causing.`}
      </p>
      {found.length > 0 && (
        <ol className={styles.found} aria-label="What stands out">
          {found.map((factor) => (
            <li key={`${factor.name} ${factor.level}`}>
              <p className={styles.finding}>{factor.says}</p>
              <p className={styles.beneath}>{evidence(factor, all, decimalMark)}</p>
              <p className={styles.settle}>To settle it: {factor.settle}</p>
            </li>
          ))}
        </ol>
      )}
      {shadows.map((shadow) => (
        <div key={shadow.says} className={styles.after}>
          <Notice>{shadow.says}</Notice>
          <p className={styles.beneath}>
            {shadow.each
              .map(
                ({ factor, within, ratio, interval }) =>
                  `${factor} inside the groups of ${within}: ${
                    interval === null
                      ? 'too few to tell'
                      : `${sayTimes(ratio, decimalMark)}, ${interval.map((each) => each.toFixed(1).replace('.', decimalMark)).join(' to ')}`
                  }`,
              )
              .join('. ')}
            .
          </p>
        </div>
      ))}
      <div className={styles.after}>
        <Disclosure words={tried.length === all ? `All ${all} tried` : `The likeliest ${tried.length} of ${all} tried`}>
          <Table label="All that was tried, the likeliest first" density="dense">
            <thead>
              <tr>
                <ColumnHead>what</ColumnHead>
                <ColumnHead isNumber>builds</ColumnHead>
                <ColumnHead isNumber>came back</ColumnHead>
                <ColumnHead isNumber>p</ColumnHead>
                <ColumnHead isNumber>p for all tried</ColumnHead>
              </tr>
            </thead>
            <tbody>
              {tried.map((factor) => (
                <tr key={`${factor.name} ${factor.level}`}>
                  <RowHead>{factor.says}</RowHead>
                  <Cell isNumber>{factor.builds}</Cell>
                  <Cell isNumber>{factor.events}</Cell>
                  <Cell isNumber>{sayChance(factor.p, decimalMark)}</Cell>
                  <Cell isNumber isStrong={factor.isFound}>
                    {sayChance(factor.adjusted, decimalMark)}
                  </Cell>
                </tr>
              ))}
            </tbody>
          </Table>
          {notTried.length > 0 && (
            <>
              <p className={styles.settle}>Not tried:</p>
              <ul className={styles.beneath}>
                {notTried.map(({ name, why }) => (
                  <li key={`${name} ${why}`}>
                    {name}: {why}
                  </li>
                ))}
              </ul>
            </>
          )}
        </Disclosure>
      </div>
    </>
  );
}
