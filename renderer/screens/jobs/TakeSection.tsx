// One take: what it amounts to, the readings as typed with what was misread struck through, how it was set up, and why.
import { Link } from '@tanstack/react-router';
import { band } from '../../../app/charts/band.ts';
import { clock } from '../../../app/charts/clock.ts';
import type { CheckOfJob } from '../../../app/jobs/jobs.contract.ts';
import type { Take } from '../../../app/readings/readings.contract.ts';
import { setupLines } from '../../../app/readings/setup-words.ts';
import { ChartView } from '../../charts/ChartView.tsx';
import { FittedChart } from '../../charts/FittedChart.tsx';
import { Disclosure } from '../../components/Disclosure.tsx';
import { ReadingWithUncertainty } from '../../components/ReadingWithUncertainty.tsx';
import { Verdict } from '../../components/Verdict.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { amountWords, type ShopWords } from '../../text/amount-words.ts';
import { drawnLimits } from '../../text/check-words.ts';
import { sayDayAndTime } from '../../text/say-date.ts';
import { Budget } from './Budget.tsx';
import { ReadingsTable } from './ReadingsTable.tsx';
import { phaseWords, saidVerdict } from './standing-words.ts';
import styles from './TakeSection.module.css';
import { TracesOfTake } from './TracesOfTake.tsx';

type TakeProps = { take: Take; check: CheckOfJob };

export function TakeSection({ take, check, isNewest }: TakeProps & { isNewest: boolean }) {
  const { settings } = useOpenShop();
  const words = amountWords(check, settings);
  const title = `${capitalised(phaseWords(take))}${take.mode === 'quick' ? ', quick' : ''}`;
  const who = [`${sayDayAndTime(take.startedAt)}, ${take.by}`, take.note].filter((each) => each !== '');
  return (
    <section className={styles.take} aria-label={`${title}, ${who[0]}`}>
      <header className={styles.head}>
        <h2>{title}</h2>
        <span className="small quiet">{who.join(': ')}</span>
      </header>
      <Outcome take={take} check={check} />
      {isNewest && <Drawings take={take} check={check} words={words} />}
      {take.readings.length === 0 ? (
        <p className="quiet">Nothing was typed in this take.</p>
      ) : (
        <ReadingsTable take={take} check={check} />
      )}
      <TracesOfTake take={take} words={words} />
      <Remarks take={take} />
      {take.gauge && (
        <p className="small quiet">
          Read with{' '}
          <Link to="/gauges/$gaugeId" params={{ gaugeId: String(take.gauge.gaugeId) }}>
            {take.gauge.tag}
          </Link>
          .
        </p>
      )}
      {take.setup && <p className="small quiet">Set up: {setupLines(take.setup).join('; ')}.</p>}
      {take.evaluation.budget.length > 0 && (
        <Disclosure words={`Why ± ${words.full(take.evaluation.expanded ?? 0)}`}>
          <Budget evaluation={take.evaluation} check={check} />
        </Disclosure>
      )}
    </section>
  );
}

function Outcome({ take, check }: TakeProps) {
  const { settings } = useOpenShop();
  const words = amountWords(check, settings);
  const { mean, min, max, expanded, spots } = take.evaluation;
  const verdict = saidVerdict(take.evaluation, check, settings);
  return (
    <p className={styles.outcome}>
      {mean !== null && (
        <ReadingWithUncertainty
          size="say"
          value={words.full(mean)}
          plusMinus={expanded === null ? null : words.full(expanded)}
          unit={words.unit}
        />
      )}
      {mean !== null && spots.length > 1 && min !== null && max !== null && (
        <span>
          {words.full(min)} to {words.full(max)}
        </span>
      )}
      <Verdict size="say" verdict={verdict.mark} words={verdict.words} />
    </p>
  );
}

function Drawings({ take, check, words }: TakeProps & { words: ShopWords }) {
  const { evaluation } = take;
  const { mean, expanded, spots, harmonic } = evaluation;
  if (mean === null || check.limits.kind === 'variants') return null;
  const drawn = drawnLimits(check.limits);
  const asFound = check.asFound && check.asFound.takeId !== take.takeId ? check.asFound.value : null;
  const facts = {
    ...drawn,
    guard: expanded,
    readings: spots.map((spot) => spot.value),
    now: { label: 'now', value: mean, expanded },
    predicted: null,
    asFound,
  };
  return (
    <div className={styles.drawings}>
      <FittedChart draw={(width) => band(facts, words, { width, medium: 'screen' })} least={320} />
      {spots.length > 1 && (
        <ChartView
          chart={clock(
            {
              ...drawn,
              readings: spots.map(({ degrees, value }) => ({ degrees, value })),
              harmonic: harmonic && { mean, ...harmonic },
            },
            words,
            { width: 264, medium: 'screen' },
          )}
        />
      )}
    </div>
  );
}

function Remarks({ take }: { take: Take }) {
  const { verdict, remarks, whatWouldDecide } = take.evaluation;
  const reason = verdict.word === 'in' ? '' : verdict.reason;
  const sentences = [reason, ...remarks, whatWouldDecide ?? ''].filter((each) => each !== '');
  if (sentences.length === 0) return null;
  return (
    <ul className={styles.remarks} aria-label="Remarks">
      {sentences.map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
    </ul>
  );
}

function capitalised(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
