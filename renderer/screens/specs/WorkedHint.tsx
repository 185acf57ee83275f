// A small spec sheet, worked, for who has never made one. Its family and its figures are invented.
import type { Pack, Slot } from '../../../app/specs/spec-sheet.ts';
import { ChartView } from '../../charts/ChartView.tsx';
import { drawPack } from './pack-drawing.ts';
import styles from './WorkedHint.module.css';

const thou_nm = 25_400;

const slot = (kind: Slot['kind'], thou: number): Slot => ({
  kind,
  nominal_nm: thou * thou_nm,
  isAdjuster: kind === 'steel',
  outline: kind === 'steel' ? 'front steel' : '',
  catalogue_nm: [],
  facing: '',
});
const front: Pick<Pack, 'name' | 'slots'> = {
  name: 'Front',
  slots: [slot('steel', 70), slot('friction', 80), slot('steel', 70), slot('friction', 80), slot('backing plate', 150)],
};

export function WorkedHint() {
  const { chart } = drawPack(front, 25 * thou_nm, (length_nm) => String(length_nm / thou_nm));
  return (
    <section className={styles.hint} aria-labelledby="worked">
      <h2 id="worked">For example</h2>
      <figure>
        <ChartView chart={chart} />
        <figcaption className="small quiet">Pack Front in thou, to scale, piston at the bottom.</figcaption>
      </figure>
      <dl>
        <dt>family</dt>
        <dd>the name painted on your shelf, such as T3</dd>
        <dt>pack</dt>
        <dd>Front: from the piston 2 × (steel, friction), backing plate</dd>
        <dt>check</dt>
        <dd>Front clearance, by air at 4 spots</dd>
        <dt>limits</dt>
        <dd>
          typed as the book says them: <span className="mono">25 20-30</span> is a target of 25, good enough from 20 to
          30
        </dd>
        <dt>then</dt>
        <dd>a job reads 32, loose by 2, and Thoubook finds the steel to swap</dd>
      </dl>
    </section>
  );
}
