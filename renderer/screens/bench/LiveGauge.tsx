// A running gauge at the spot being read: what it shows now, huge; its trace; what was found, and what the hand does.
import { type ReactNode, type RefObject, useEffect } from 'react';
import { traceChart } from '../../../app/charts/trace.ts';
import type { GaugeLine } from '../../../app/indicators/indicators.contract.ts';
import type { Offer, Wanted } from '../../../app/indicators/plate-offer.ts';
import { FittedChart } from '../../charts/FittedChart.tsx';
import { Notice } from '../../components/Notice.tsx';
import { Refusal } from '../../components/Refusal.tsx';
import { useAtCheck } from './at-check.ts';
import styles from './LiveGauge.module.css';
import { type LiveNow, useLiveGauge } from './live-gauge.ts';

type LiveGaugeProps = {
  line: GaugeLine;
  wanted: Wanted;
  /** Another one begins the spot anew. */
  spotKey: string;
  /** What stands now, for the key that accepts: it is drawn here alone, many times a second. */
  now: RefObject<LiveNow | null>;
  /** What it said when Enter came too early; it is refused in the same words while they hold. */
  refusedAt: string | null;
  /** What is to be known about the gauge. */
  warning: ReactNode;
  /** Where a line can be typed all the same. */
  children: ReactNode;
};

const span_ms = 12_000;

export function LiveGauge({ line, wanted, spotKey, now, refusedAt, warning, children }: LiveGaugeProps) {
  const { settings, words } = useAtCheck();
  const live = useLiveGauge(line, settings, wanted, words, spotKey);
  const { samples, seen, state, sentence, trouble } = live;
  useEffect(() => {
    now.current = live;
    return () => {
      now.current = null;
    };
  });
  const latest = samples.at(-1);
  const levels = [
    { label: 'pressed', value: seen.pressed_nm },
    { label: 'air', value: seen.air_nm },
  ].flatMap(({ label, value }) => (value === null ? [] : [{ label, value }]));
  // More is kept than is drawn, and this runs many times a second.
  const before = samples.findLastIndex(({ at_ms }) => at_ms < (latest?.at_ms ?? 0) - span_ms);
  const shown = samples.slice(before + 1).map(({ at_ms, value_nm }) => ({ at_ms, value: value_nm }));
  const trace = { samples: shown, span_ms, levels };
  return (
    <section className={styles.live} aria-label={`Gauge ${line.name}`}>
      <div className={styles.now}>
        <p className={styles.name}>
          {line.name}, {words.unit}
          {line.source === 'practice' && <b> · practice, made up</b>}
        </p>
        <p className={styles.figure} data-still={seen.level_nm !== null}>
          {trouble === null && latest ? words.full(latest.value_nm) : '–'}
        </p>
      </div>
      <FittedChart draw={(width) => traceChart(trace, words, { width, height: 104, medium: 'screen' })} />
      <div className={styles.found}>
        <OfferFigures offer={state.offer} seen={seen} full={words.full} />
        {warning}
      </div>
      <div className={styles.foot}>
        <div className={styles.says} role="status">
          {trouble !== null && <Notice>{trouble}</Notice>}
          {trouble === null && (refusedAt === sentence ? <Refusal>Not yet. {sentence}</Refusal> : <p>{sentence}</p>)}
        </div>
        {children}
      </div>
    </section>
  );
}

type OfferFiguresProps = {
  offer: Offer | null;
  seen: LiveNow['seen'];
  full: (amount: number) => string;
};

/** "4.0 + 23.0 = 27.0": what is found stands already before the rest of it is. */
function OfferFigures({ offer, seen, full }: OfferFiguresProps) {
  if (offer?.kind === 'push and air') {
    return (
      <p className={styles.offer}>
        <Figure name="push" figure={full(offer.push_nm)} />
        <span className={styles.sign}>+</span>
        <Figure name="air" figure={full(offer.air_nm)} />
        <span className={styles.sign}>=</span>
        <Figure name="whole" figure={full(offer.push_nm + offer.air_nm)} />
      </p>
    );
  }
  if (offer?.kind === 'will not hold') {
    return (
      <p className={styles.offer}>
        <b>Will not hold air</b>
      </p>
    );
  }
  if (offer) {
    return (
      <p className={styles.offer}>
        <Figure name={offer.kind} figure={full(offer.kind === 'whole' ? offer.air_nm : offer.amount_nm)} />
      </p>
    );
  }
  const pushed = seen.rest_nm !== null && seen.pressed_nm !== null ? full(seen.rest_nm - seen.pressed_nm) : null;
  return <p className={styles.offer}>{pushed && <Figure name="push" figure={pushed} />}</p>;
}

function Figure({ name, figure }: { name: string; figure: string }) {
  return (
    <span className={styles.part}>
      <span className={styles.name}>{name}</span>
      <b>{figure}</b>
    </span>
  );
}
