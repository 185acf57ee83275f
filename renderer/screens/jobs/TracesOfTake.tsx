// The traces that were kept with a take's readings, where they came off a gauge's line.
import { keptTraceChart } from '../../../app/charts/trace.ts';
import type { KeptTrace } from '../../../app/indicators/indicators.contract.ts';
import type { Take } from '../../../app/readings/readings.contract.ts';
import { ChartView } from '../../charts/ChartView.tsx';
import { useRead } from '../../rpc/use-read.ts';
import type { ShopWords } from '../../text/amount-words.ts';
import styles from './TracesOfTake.module.css';

export function TracesOfTake({ take, words }: { take: Take; words: ShopWords }) {
  const { data: traces = [] } = useRead('indicators.listTraces', { takeId: take.takeId });
  if (traces.length === 0) return null;
  return (
    <ul className={styles.traces} aria-label="Traces of the gauge">
      {traces.map((trace) => (
        <li key={trace.readingId}>
          <p className="small quiet">
            {captionOf(trace, take)}
            {trace.isPractice && <b> Practice, made up.</b>}
          </p>
          <ChartView chart={keptTraceChart(trace, words, { width: 320, height: 96, medium: 'screen' })} />
        </li>
      ))}
    </ul>
  );
}

/** "Spot 2, Bench gauge." and, where it was thinned, of how many readings; a misread one says so. */
function captionOf(trace: KeptTrace, { readings }: Take): string {
  const reading = readings.find(({ readingId }) => readingId === trace.readingId);
  const misread = reading?.supersededById == null ? '' : ', misread';
  const thinned =
    trace.heard > trace.samples.length
      ? ` ${trace.samples.length} of ${trace.heard} readings drawn, every extreme.`
      : '';
  return `Spot ${reading?.spot ?? 1}${misread}, ${trace.lineName}.${thinned}`;
}
