// What the clearance changes: oil to fill the clutch, the time that takes, and the drag of the open pack.

import { unitWords } from '../../../app/charts/amounts.ts';
import { overClearance } from '../../../app/charts/over-clearance.ts';
import type { ClutchOfJob, Filling } from '../../../app/clutch/clutch.contract.ts';
import type { ClutchWords } from '../../../app/clutch/clutch-words.ts';
import { FittedChart } from '../../charts/FittedChart.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { amountWords } from '../../text/amount-words.ts';
import styles from './ClutchScreen.module.css';
import { Figure, Section } from './ClutchSection.tsx';
import { useFigures } from './use-figures.ts';

const chartHeight = 240;

export function FillOfClutch({ clutch, words }: { clutch: ClutchOfJob; words: ClutchWords }) {
  const { settings } = useOpenShop();
  const figure = useFigures(clutch);
  const length = amountWords({ quantity: 'length', unit: settings.lengthUnit }, settings);
  const { clearance } = clutch;
  const { filling } = clutch.estimate;
  const draw = (name: string, value: (row: Filling) => number, write: (value: number) => string) => (width: number) => {
    const point = (row: Filling) => ({ clearance_nm: row.clearance_m * 1e9, value: value(row) });
    const { today, rows } = filling.known!;
    const limits = { low: clearance?.low_nm ?? null, high: clearance?.high_nm ?? null };
    return overClearance({ name, points: rows.map(point), today: point(today), limits, write }, length, {
      width,
      height: chartHeight,
    });
  };
  // Counted in the unit it is written in, so that the marks of the axis are round.
  const perUnit_m3 = unitWords(settings.lengthUnit === 'thou' ? 'in³' : 'cm³').perUnit * 1e-9;
  const time = filling.known?.today.fillTime_s ?? null;
  return (
    <Section title="Fill and drag" of={clutch} waits={filling}>
      {filling.known && clearance && (
        <>
          <dl className={styles.figures}>
            <Figure name="fills with" value={words.volume(filling.known.today.fillVolume_m3)}>
              the piston’s face × {words.clearance(clearance.today_nm)}, {clearance.from}
              {clutch.hasWavePlate && '; flattening the wave plate takes more'}
            </Figure>
            <Figure name="in" value={time === null ? '–' : words.time(time)}>
              {time === null ? 'state in Specs what flow fills it' : `at ${figure('flow_uL_min')}`}
            </Figure>
          </dl>
          <div className={styles.charts}>
            <FittedChart
              draw={draw(
                'Fill volume',
                (row) => row.fillVolume_m3 / perUnit_m3,
                (value) => words.volume(value * perUnit_m3),
              )}
            />
            <FittedChart
              draw={draw(
                'Open drag, today 1',
                (row) => row.dragRelativeToToday,
                (value) => words.number(value, 2),
              )}
            />
          </div>
          <p className="small quiet">
            Drag as a full film with equal spaces would have it, one over the clearance: a ceiling. What it holds does
            not change with the clearance in any way worth drawing.
          </p>
        </>
      )}
    </Section>
  );
}
