// The plates of an outline as squares by height, what one swap can do with them, and what happened to them last.
import { plateHistogram } from '../../../app/charts/plate-histogram.ts';
import { plateMarks } from '../../../app/charts/plate-mark.ts';
import type { Output } from '../../../app/contract/contract.ts';
import type { Can, OutlineLine } from '../../../app/stock/plates.contract.ts';
import { FittedChart } from '../../charts/FittedChart.tsx';
import { PlateMark } from './PlateMark.tsx';
import { PlateMoves } from './PlateMoves.tsx';
import styles from './PlatesPicture.module.css';
import { narrowestClass } from './plate-words.ts';
import { ReachOfPlates } from './ReachOfPlates.tsx';
import { useLengthWords } from './use-length-words.ts';

type PlatesPictureProps = {
  line: OutlineLine;
  histogram: Output<'stock.listPlates'>['histogram'];
  cans: readonly Can[];
};

const squaresHeight = 208;

export function PlatesPicture({ line, histogram, cans }: PlatesPictureProps) {
  const words = useLengthWords();
  const counted = [
    ...histogram.map(({ height_nm, state, count }) => ({ height_nm, mark: state, count })),
    ...cans.map(({ height_nm, count }) => ({ height_nm, mark: 'free' as const, count })),
  ];
  const legend = plateMarks
    .map((mark) => ({
      mark,
      count: counted.filter((each) => each.mark === mark).reduce((sum, each) => sum + each.count, 0),
    }))
    .filter(({ count }) => count > 0);
  return (
    <div className={styles.picture}>
      <section aria-labelledby="at-hand">
        <h2 id="at-hand">What is at hand</h2>
        <ul className={styles.legend}>
          {legend.map(({ mark, count }) => (
            <li key={mark}>
              <PlateMark mark={mark} />
              {mark} {count.toLocaleString('en-US')}
            </li>
          ))}
        </ul>
        <FittedChart
          draw={(width) =>
            plateHistogram(counted, words, { width, height: squaresHeight, class_nm: narrowestClass(words.unit) })
          }
        />
      </section>
      {line.packs.length > 0 && <ReachOfPlates packs={line.packs} />}
      <PlateMoves outline={line.outline} />
    </div>
  );
}
