// The mock-ups of a pack beside each other: what each changed, what it was predicted to read, what it read, and that on
// the band of its check.
import { bandRow } from '../../app/charts/band-row.ts';
import { changeLines } from '../../app/packs/mock-up-changes.ts';
import type { MockUp, PackOfJob } from '../../app/packs/packs.contract.ts';
import { shownVerdict } from '../../app/readings/verdict-words.ts';
import type { Check } from '../../app/specs/spec-sheet.ts';
import { normalCoverageFactor } from '../../app/statistics/normal.ts';
import { FittedChart } from '../charts/FittedChart.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../components/Table.tsx';
import { Verdict } from '../components/Verdict.tsx';
import { useOpenShop } from '../frame/open-shop.ts';
import { amountWords, type ShopWords } from '../text/amount-words.ts';
import { drawnLimits } from '../text/check-words.ts';
import styles from './MockUps.module.css';

type MockUpsProps = {
  pack: PackOfJob;
  /** Of its clearance; null where its sheet asks for none. */
  check: Pick<Check, 'limits' | 'quantity'> | null;
  /** Small on a ticket, or read from the bench. */
  size: 'small' | 'bench';
};

export function MockUps({ pack, check, size }: MockUpsProps) {
  const { settings } = useOpenShop();
  const words = amountWords({ quantity: 'length', unit: settings.lengthUnit }, settings);
  const isWide = size === 'bench';
  return (
    <div className={styles[size]}>
      <Table label="Mock-ups" density={isWide ? 'normal' : 'dense'}>
        <thead>
          <tr>
            <ColumnHead>mock-up</ColumnHead>
            <ColumnHead isNumber>predicted</ColumnHead>
            <ColumnHead isNumber>read, {words.unit}</ColumnHead>
            {isWide && <ColumnHead>on its band</ColumnHead>}
          </tr>
        </thead>
        {pack.mockUps.map((mockUp, index) => {
          const changes = changeLines(pack.slots, pack.mockUps, index, (height_nm) => words.full(height_nm));
          return (
            <tbody key={mockUp.mockUpId}>
              <tr>
                <RowHead>
                  {mockUp.number === 0 ? 'as found' : mockUp.number}
                  {isWide && <Changes lines={changes} />}
                </RowHead>
                <Cell isNumber>
                  <Sure amount={predictedOf(mockUp)} words={words} otherwise="–" />
                </Cell>
                <Cell isNumber>
                  <Sure amount={readOf(mockUp)} words={words} otherwise="not yet" isStrong />
                  {isWide && check && <ReadVerdict mockUp={mockUp} check={check} words={words} />}
                </Cell>
                {isWide && <Cell>{check && <OnBand mockUp={mockUp} check={check} words={words} />}</Cell>}
              </tr>
              {!isWide && (
                <tr className={styles.second}>
                  <Cell columns={3}>
                    {check && <ReadVerdict mockUp={mockUp} check={check} words={words} />}
                    <Changes lines={changes} />
                    {check && <OnBand mockUp={mockUp} check={check} words={words} />}
                  </Cell>
                </tr>
              )}
            </tbody>
          );
        })}
      </Table>
    </div>
  );
}

function Changes({ lines }: { lines: readonly string[] }) {
  return lines.map((line) => (
    <span key={line} className={styles.change}>
      {line}
    </span>
  ));
}

type OfMockUp = { mockUp: MockUp; check: Pick<Check, 'limits' | 'quantity'>; words: ShopWords };

function ReadVerdict({ mockUp: { read }, check, words }: OfMockUp) {
  if (!read) return null;
  const { verdict } = read;
  return (
    <span className={styles.verdict}>
      <Verdict
        size="small"
        verdict={shownVerdict(verdict, check.quantity)}
        by={verdict.by === null ? null : words.full(verdict.by)}
      />
    </span>
  );
}

function OnBand({ mockUp, check, words }: OfMockUp) {
  const [now, predicted] = [readOf(mockUp), predictedOf(mockUp)];
  const facts = {
    ...drawnLimits(check.limits),
    now: now && { ...now, label: 'read' },
    predicted: predicted && { ...predicted, label: 'predicted' },
    asFound: null,
  };
  return (
    <div className={styles.band}>
      <FittedChart least={96} draw={(width) => bandRow(facts, words, { width, height: 36, medium: 'screen' })} />
    </div>
  );
}

type SureAmount = { readonly value: number; readonly expanded: number | null };

function Sure({
  amount,
  words,
  otherwise,
  isStrong = false,
}: {
  amount: SureAmount | null;
  words: ShopWords;
  otherwise: string;
  isStrong?: boolean;
}) {
  if (!amount) return otherwise;
  const value = words.full(amount.value);
  return (
    <>
      {isStrong ? <b>{value}</b> : value}
      {amount.expanded !== null && ` ± ${words.full(amount.expanded)}`}
    </>
  );
}

function predictedOf({ predicted }: MockUp): SureAmount | null {
  return (
    predicted && {
      value: predicted.mean_nm,
      expanded: normalCoverageFactor(0.95) * predicted.standardDeviation_nm,
    }
  );
}

function readOf({ read }: MockUp): SureAmount | null {
  return read && { value: read.mean_nm, expanded: read.expanded_nm };
}
