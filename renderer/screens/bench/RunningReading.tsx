// What the lines read so far come to, huge: the value, its ±, the verdict, and its range around the drum.

import { formatLength } from '../../../app/quantities/format-amount.ts';
import type { Evaluation } from '../../../app/readings/readings.contract.ts';
import { shownVerdict } from '../../../app/readings/verdict-words.ts';
import { ReadingWithUncertainty } from '../../components/ReadingWithUncertainty.tsx';
import { Verdict } from '../../components/Verdict.tsx';
import { useAtCheck } from './at-check.ts';
import styles from './RunningReading.module.css';

type RunningReadingProps = {
  evaluation: Evaluation;
  /** What the plates were expected to read. */
  expected: number | null;
  /** The figure and the verdict alone, its range beside them, or everything there is to know about it. */
  tells?: 'figure' | 'range' | 'all';
};

export function RunningReading({ evaluation, expected, tells = 'all' }: RunningReadingProps) {
  const { check, words, settings } = useAtCheck();
  const { mean, min, max, expanded, spots, verdict, variantName, remarks, feelerBias } = evaluation;
  if (mean === null || min === null || max === null) {
    return [verdict.reason, ...remarks].map((sentence) => (
      <p key={sentence} className="quiet">
        {sentence}
      </p>
    ));
  }
  const otherUnit = settings.lengthUnit === 'thou' ? 'mm' : 'thou';
  const other =
    check.quantity === 'length'
      ? ` · ${formatLength(mean, otherUnit, undefined, settings.decimalMark)} ${otherUnit}`
      : '';
  const isVariant = variantName !== null;
  const facts = [
    spots.length > 1 && aroundDrum(words.short(min), words.short(max)),
    expected !== null && `expected ${words.full(expected)}`,
  ].filter(Boolean);
  return (
    <div className={styles.running} role="status">
      <p className={styles.figure}>
        <ReadingWithUncertainty value={words.full(mean)} plusMinus={expanded === null ? null : words.full(expanded)} />
        <span className={styles.unit}>
          {words.unit}
          {other}
        </span>
      </p>
      <p>
        <Verdict
          verdict={isVariant ? 'in' : shownVerdict(verdict, check.quantity)}
          by={verdict.by === null ? null : words.full(verdict.by)}
          size="say"
          {...(isVariant && { words: variantName })}
        />
      </p>
      {/* All the sentences name the bias; where they are left out it is still not applied silently. */}
      {tells !== 'all' && feelerBias?.bias != null && (
        <p>
          {words.full(feelerBias.meanAsRead)} by feeler, less its bias of {words.full(feelerBias.bias)}
        </p>
      )}
      {tells !== 'figure' && facts.length > 0 && <p className="quiet">{facts.join(' · ')}</p>}
      {tells === 'all' && !isVariant && verdict.reason !== '' && <p>{verdict.reason}</p>}
      {tells === 'all' && remarks.map((remark) => <p key={remark}>{remark}</p>)}
    </div>
  );
}

function aroundDrum(least: string, most: string): string {
  return least === most ? `${least} all round` : `${least} to ${most} around the drum`;
}
