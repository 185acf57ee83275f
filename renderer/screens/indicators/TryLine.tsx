// A line tried out: what it says now, in the gauge's own unit, and what could not be read.
import { useCallback, useState } from 'react';
import type { GaugeLine } from '../../../app/indicators/indicators.contract.ts';
import { type LineNews, standingSentence } from '../../../app/indicators/line-news.ts';
import { formatAmount } from '../../../app/quantities/format-amount.ts';
import { unitNamed } from '../../../app/quantities/units.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { useGaugeLine } from '../../rpc/use-gauge-line.ts';
import styles from './Lines.module.css';

export function TryLine({ line }: { line: GaugeLine }) {
  const { settings } = useOpenShop();
  const [news, setNews] = useState<LineNews | null>(null);
  const [latest, setLatest] = useState<number | null>(null);
  const hear = useCallback((told: LineNews) => {
    setNews(told);
    const last = told.samples.at(-1);
    if (last) setLatest(last[1]);
  }, []);
  const error = useGaugeLine(line.lineId, hear);
  const trouble = news ? standingSentence(news) : 'The gauge’s line is being opened.';
  const decimals = line.unit === 'mm' ? 4 : 5;
  return (
    <div className={styles.tried}>
      <FailureSentence error={error} />
      {trouble === null && latest !== null ? (
        <p className={styles.figure}>
          {formatAmount(latest, unitNamed(line.unit), { decimals, decimalMark: settings.decimalMark })}{' '}
          <span className={styles.unit}>{line.unit}</span>
        </p>
      ) : (
        <p role="status">{trouble}</p>
      )}
      {news && (
        <p className="small quiet">
          {news.readings} read, {news.garbled} that could not be read. Last came “{news.lastFrame}”.
        </p>
      )}
      {line.source === 'practice' && <p>Practice: made up.</p>}
    </div>
  );
}
