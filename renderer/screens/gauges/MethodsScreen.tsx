// Method against method: by how much two ways of reading the same thing disagree, and every pair behind it.
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { agreementPlot } from '../../../app/charts/agreement-plot.ts';
import type { Output } from '../../../app/contract/contract.ts';
import { type MethodPair, pairedMethods } from '../../../app/gauges/agreement.contract.ts';
import { FittedChart } from '../../charts/FittedChart.tsx';
import { Button } from '../../components/Button.tsx';
import { Disclosure } from '../../components/Disclosure.tsx';
import { EmptyState } from '../../components/EmptyState.tsx';
import { Select } from '../../components/Select.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { GaugesTabs } from '../../frame/GaugesTabs.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { PageHead } from '../../frame/PageHead.tsx';
import { useLetterKey } from '../../frame/use-letter-key.ts';
import { useRead } from '../../rpc/use-read.ts';
import { amountWords, type ShopWords } from '../../text/amount-words.ts';
import { sayDay } from '../../text/say-date.ts';
import styles from './Gauges.module.css';
import { methodNames } from './method-words.ts';
import { PairForm } from './PairForm.tsx';

type Method = (typeof pairedMethods)[number];
type Compared = Output<'gauges.compareMethods'>;

export function MethodsScreen() {
  const [first, setFirst] = useState<Method>('feeler');
  const [second, setSecond] = useState<Method>('air');
  /** null: no form stands open; 'new', or the pair that was misread. */
  const [entering, enter] = useState<'new' | MethodPair | null>(null);
  const isSame = first === second;
  const compared = useRead('gauges.compareMethods', isSame ? null : { first, second });
  useLetterKey('p', () => enter('new'));
  const choices = pairedMethods.map((id) => ({ id, words: methodNames[id] }));
  return (
    <>
      <GaugesTabs />
      <PageHead title="Two methods" facts="the same thing in the same state, read two ways" />
      <div className={styles.keys}>
        <div className={styles.few}>
          <Select label="This" options={choices} value={first} onChange={setFirst} />
        </div>
        <div className={styles.few}>
          <Select
            label="against"
            options={choices}
            value={second}
            onChange={setSecond}
            refusal={isSame ? 'Choose another one.' : null}
          />
        </div>
        {!isSame && entering === null && (
          <div className={styles.beside}>
            <Button keyHint="P" onPress={() => enter('new')}>
              Enter a pair
            </Button>
          </div>
        )}
      </div>
      {!isSame && entering !== null && (
        <PairForm
          key={entering === 'new' ? 'new' : entering.methodPairId}
          first={first}
          second={second}
          misread={entering === 'new' ? null : entering}
          onDone={() => enter(null)}
        />
      )}
      {!isSame && (
        <Loaded read={compared}>
          {(found) => <ComparedMethods compared={found} first={first} second={second} onMisread={enter} />}
        </Loaded>
      )}
    </>
  );
}

function ComparedMethods({
  compared,
  first,
  second,
  onMisread,
}: {
  compared: Compared;
  first: Method;
  second: Method;
  onMisread: (pair: MethodPair) => void;
}) {
  const words = amountWords({ quantity: 'length', unit: 'thou' }, useOpenShop().settings);
  const { pairs, agreement, line, why } = compared;
  if (pairs.length === 0) {
    return (
      <EmptyState level={2} title={`Nothing was read by ${methodNames[first]} and by ${methodNames[second]} yet.`}>
        Read a pack both ways in one state at the bench, or press P and enter a pair.
      </EmptyState>
    );
  }
  return (
    <>
      <section className={styles.section} aria-label="What the pairs say">
        <p className={styles.said}>{agreement ? agreementSentence(agreement, first, second, words) : (why ?? '')}</p>
        <div className={styles.chart}>
          <FittedChart
            draw={(width) =>
              agreementPlot({ pairs, agreement }, words, {
                width: Math.min(width, 880),
                height: 320,
                between: `up: ${methodNames[first]} less ${methodNames[second]} · across: the mean of both, ${words.unit}`,
              })
            }
          />
        </div>
        {agreement && (
          <Disclosure words="Why">
            <div className={styles.why}>
              <p>{`Bias ${between(agreement.bias, agreement.biasInterval, words)}; lower limit ${between(agreement.limits[0], agreement.lowerLimitInterval, words)}; upper limit ${between(agreement.limits[1], agreement.upperLimitInterval, words)} (95 % intervals, ${agreement.n} pairs; limits of agreement after Bland and Altman).`}</p>
              {line && <p>{proportionSentence(line, first, second, words)}</p>}
            </div>
          </Disclosure>
        )}
      </section>
      <section className={styles.section} aria-label="Pairs">
        <h2>{pairs.length === 1 ? '1 pair' : `${pairs.length} pairs`}</h2>
        <PairsTable pairs={pairs} first={first} second={second} words={words} onMisread={onMisread} />
      </section>
    </>
  );
}

function PairsTable({
  pairs,
  first,
  second,
  words,
  onMisread,
}: {
  pairs: readonly MethodPair[];
  first: Method;
  second: Method;
  words: ShopWords;
  onMisread: (pair: MethodPair) => void;
}) {
  return (
    <Table label="Pairs" density="dense">
      <thead>
        <tr>
          <ColumnHead>what</ColumnHead>
          <ColumnHead isNumber>
            {methodNames[first]}, {words.unit}
          </ColumnHead>
          <ColumnHead isNumber>{methodNames[second]}</ColumnHead>
          <ColumnHead isNumber>{methodNames[first]} less</ColumnHead>
          <ColumnHead>from</ColumnHead>
          <ColumnHead isWide>when</ColumnHead>
        </tr>
      </thead>
      <tbody>
        {pairs.map((pair, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a pair of the book has no number of its own
          <tr key={index} className={pair.job ? undefined : styles.withKey}>
            <RowHead>{pair.what}</RowHead>
            <Cell isNumber>{words.full(pair.first)}</Cell>
            <Cell isNumber>{words.full(pair.second)}</Cell>
            <Cell isNumber isStrong>
              {words.full(pair.first - pair.second)}
            </Cell>
            <Cell>
              {pair.job ? (
                <Link to="/jobs/$jobId" params={{ jobId: String(pair.job.jobId) }}>
                  job {pair.job.number}
                </Link>
              ) : (
                <Button onPress={() => onMisread(pair)} aria-label={`Entered: ${pair.what} was misread`}>
                  Misread
                </Button>
              )}
            </Cell>
            <Cell isWide isQuiet>
              {sayDay(pair.at)}, {pair.by}
            </Cell>
          </tr>
        ))}
      </tbody>
    </Table>
  );
}

function agreementSentence(
  { bias, biasInterval, limits, n }: NonNullable<Compared['agreement']>,
  first: Method,
  second: Method,
  words: ShopWords,
): string {
  const other = methodNames[second];
  const name = methodNames[first].charAt(0).toUpperCase() + methodNames[first].slice(1);
  const isSeen = biasInterval[0] > 0 || biasInterval[1] < 0;
  const side = bias < 0 ? 'below' : 'above';
  const told = isSeen
    ? `${name} reads ${words.full(Math.abs(bias))} ${words.unit} ${side} ${other} on average`
    : `${name} and ${other} agree on average as far as ${n} pairs can tell`;
  return `${told}; 95 of 100 single pairs differ by ${words.full(limits[0])} to ${words.full(limits[1])} (${n} pairs).`;
}

function between(value: number, [low, high]: readonly [number, number], words: ShopWords): string {
  return `${words.full(value)} (${words.full(low)} to ${words.full(high)})`;
}

/** Deming's line: what a further 10 by the first shows by the second. */
function proportionSentence(
  { slope, intercept }: NonNullable<Compared['line']>,
  first: Method,
  second: Method,
  words: ShopWords,
): string {
  const [one, other] = [methodNames[first], methodNames[second]];
  return `For 10 more by ${one}, ${other} shows ${(10 * slope).toFixed(1)} more: ${other} = ${slope.toFixed(3)} · ${one} + ${words.full(intercept)} ${words.unit} (Deming’s line with errors of one size in both).`;
}
