// How long builds last: the curve and its table, the line of wear, groups beside each other, and each quarter's rate.

import { sharesInOrder } from '../../../app/charts/shares-in-order.ts';
import { survivalCurve } from '../../../app/charts/survival-curve.ts';
import { chartWords, clockWords, count, curveSentence, sayShare, sayTime } from '../../../app/comebacks/curve-words.ts';
import type { CurveTold, FleetAnswer } from '../../../app/comebacks/fleet.contract.ts';
import { sayChance } from '../../../app/comebacks/fleet-words.ts';
import type { Clock } from '../../../app/comebacks/follow-builds.ts';
import type { DecimalMark } from '../../../app/quantities/format-amount.ts';
import { FittedChart } from '../../charts/FittedChart.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import shared from './Comebacks.module.css';
import styles from './Fleet.module.css';

type Wear = FleetAnswer['wear'];
type Compared = Extract<NonNullable<FleetAnswer['compared']>, { isEnough: true }>;

export function SurvivalOfFleet({ curve, wear, clock }: { curve: CurveTold; wear: Wear; clock: Clock }) {
  const { decimalMark } = useOpenShop().settings;
  const words = chartWords(decimalMark);
  return (
    <>
      <p className={styles.said}>{wear.isEnough ? wearSentence(wear, clock, decimalMark) : wear.why}</p>
      <div className={styles.pair}>
        <FittedChart
          draw={(width) =>
            survivalCurve(
              {
                curves: [{ name: '', steps: curve.steps, until: curve.until }],
                wear: wear.isEnough ? wear : null,
                ticks: curve.atTimes,
                clock: clockWords[clock],
                title: curveSentence(curve, clock, decimalMark),
              },
              words,
              { width: Math.min(width, 760), height: 360 },
            )
          }
        />
        <Table label="Not come back, at round times" density="dense">
          <thead>
            <tr>
              <ColumnHead isNumber>{clock}</ColumnHead>
              <ColumnHead isNumber>still followed</ColumnHead>
              <ColumnHead isNumber>came back</ColumnHead>
              <ColumnHead isNumber>did not</ColumnHead>
              <ColumnHead isNumber>limits</ColumnHead>
            </tr>
          </thead>
          <tbody>
            {curve.atTimes.map(({ time, atRisk, cameBack, survival, lower, upper }) => (
              <tr key={time}>
                <RowHead isNumber>{sayTime(time, decimalMark)}</RowHead>
                <Cell isNumber>{atRisk}</Cell>
                <Cell isNumber>{cameBack}</Cell>
                <Cell isNumber>{sayShare(survival, decimalMark)}</Cell>
                <Cell isNumber isQuiet>
                  {lower === null || upper === null
                    ? '–'
                    : `${sayShare(lower, decimalMark)} to ${sayShare(upper, decimalMark)}`}
                </Cell>
              </tr>
            ))}
          </tbody>
        </Table>
      </div>
    </>
  );
}

export function ComparedGroups({ compared, clock }: { compared: Compared; clock: Clock }) {
  const { decimalMark } = useOpenShop().settings;
  const { curves, p, leftOut } = compared;
  const isApart = p < 0.05;
  const sentence = `${isApart ? 'They come back at different rates' : 'They differ no more than chance would make them'} (log-rank p ${sayChance(p, decimalMark)})${leftOut === 0 ? '' : `; ${count(leftOut, 'build')} left out: of no group here or of a small one`}.`;
  return (
    <>
      <p className={styles.said}>{sentence}</p>
      <div className={styles.pair}>
        <FittedChart
          draw={(width) =>
            survivalCurve(
              {
                curves: curves.map(({ level, curve }) => ({ name: level, steps: curve.steps, until: curve.until })),
                wear: null,
                ticks: (curves[0]?.curve.atTimes ?? []).map(({ time }) => ({ time, atRisk: null })),
                clock: clockWords[clock],
                title: `Not come back, ${curves.length} groups. ${sentence}`,
              },
              chartWords(decimalMark),
              { width: Math.min(width, 760), height: 320 },
            )
          }
        />
        <Table label="Groups" density="dense">
          <thead>
            <tr>
              <ColumnHead>group</ColumnHead>
              <ColumnHead isNumber>builds</ColumnHead>
              <ColumnHead isNumber>came back</ColumnHead>
              <ColumnHead isNumber>if all were alike</ColumnHead>
            </tr>
          </thead>
          <tbody>
            {curves.map(({ level, curve, expected }) => (
              <tr key={level}>
                <RowHead>{level}</RowHead>
                <Cell isNumber>{curve.builds}</Cell>
                <Cell isNumber>{curve.events}</Cell>
                <Cell isNumber>{expected.toFixed(1).replace('.', decimalMark)}</Cell>
              </tr>
            ))}
          </tbody>
        </Table>
      </div>
    </>
  );
}

export function RateByQuarter({ quarters }: { quarters: FleetAnswer['quarters'] }) {
  const { decimalMark } = useOpenShop().settings;
  const events = quarters.reduce((sum, { cameBack }) => sum + cameBack, 0);
  const builds = quarters.reduce((sum, quarter) => sum + quarter.builds, 0);
  return (
    <div className={styles.pair}>
      <FittedChart
        draw={(width) =>
          sharesInOrder(
            {
              shares: quarters.map(({ quarter, share, lower, upper, stillFollowed }) => ({
                name: quarter,
                share,
                lower,
                upper,
                isOpen: stillFollowed > 0,
              })),
              title: `Came back by quarter of delivery: ${events} of ${builds} over ${count(quarters.length, 'quarter')}. Hollow: some of the quarter can still come back.`,
            },
            chartWords(decimalMark).sayShare,
            { width: Math.min(width, 760), height: 260 },
          )
        }
      />
      <Table label="Came back by quarter of delivery" density="dense">
        <thead>
          <tr>
            <ColumnHead>quarter</ColumnHead>
            <ColumnHead isNumber>came back</ColumnHead>
            <ColumnHead isNumber>share</ColumnHead>
            <ColumnHead isNumber>limits</ColumnHead>
            <ColumnHead isNumber>still can</ColumnHead>
          </tr>
        </thead>
        <tbody>
          {quarters.toReversed().map((each) => (
            <tr key={each.quarter}>
              <RowHead>
                <span className={shared.whole}>{each.quarter}</span>
              </RowHead>
              <Cell isNumber>
                {each.cameBack} of {each.builds}
              </Cell>
              <Cell isNumber>{sayShare(each.share, decimalMark)}</Cell>
              <Cell isNumber isQuiet>
                {sayShare(each.lower, decimalMark)} to {sayShare(each.upper, decimalMark)}
              </Cell>
              <Cell isNumber>{each.stillFollowed}</Cell>
            </tr>
          ))}
        </tbody>
      </Table>
    </div>
  );
}

function wearSentence(wear: Extract<Wear, { isEnough: true }>, clock: Clock, decimalMark: DecimalMark): string {
  const [lower, upper] = wear.shapeInterval;
  const number = (value: number | null) => (value === null ? 'no limit' : value.toFixed(2).replace('.', decimalMark));
  const shape = `shape ${number(wear.shape)}, ${number(lower)} to ${number(upper)}`;
  const tenth = `the line has one in ten back by ${sayTime(wear.b10, decimalMark)} ${clock}`;
  if (lower !== null && lower > 1)
    return `They wear: the longer in service, the likelier to come back (${shape}); ${tenth}.`;
  if (upper !== null && upper < 1)
    return `They come back early or hardly at all: look at how they are built and fitted (${shape}); ${tenth}.`;
  return `Neither early failures nor wear stand out (${shape}); ${tenth}.`;
}
