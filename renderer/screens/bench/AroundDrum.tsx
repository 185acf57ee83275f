// Where on the drum it is tight and where loose, and whether that is uneven or cocked.
import { clock } from '../../../app/charts/clock.ts';
import type { Take } from '../../../app/readings/readings.contract.ts';
import { FittedChart } from '../../charts/FittedChart.tsx';
import { drawnLimits } from '../../text/check-words.ts';
import styles from './AroundDrum.module.css';
import { useAtCheck } from './at-check.ts';
import { degreesOf, valuesRead } from './reading-plan.ts';

/** `isShort` leaves the sentences out, while the drum is still being turned. */
export function AroundDrum({ take, isShort = false }: { take: Take; isShort?: boolean }) {
  const { check, words } = useAtCheck();
  const { mean, min, max, harmonic, spots, unevenLimit_nm } = take.evaluation;
  const facts = {
    ...drawnLimits(check.limits),
    readings: valuesRead(take).map(({ spot, value }) => ({ degrees: degreesOf(spot, check.spots), value })),
    harmonic:
      mean === null || harmonic === null
        ? null
        : { mean, amplitude: harmonic.amplitude, loosestAtDegrees: harmonic.loosestAtDegrees },
  };
  return (
    <section className={styles.around}>
      <h2>Around the drum</h2>
      <FittedChart draw={(width) => clock(facts, words, { width: Math.min(width, 264), medium: 'screen' })} />
      {!isShort && min !== null && max !== null && spots.length > 1 && (
        <p>
          Uneven by <b>{words.short(max - min)}</b>, limit {words.short(unevenLimit_nm)}.
        </p>
      )}
      {!isShort && harmonic && spots.length >= 4 && (
        <>
          <p>
            Tilt <b>{words.full(harmonic.amplitude)}</b>
            {harmonic.loosestAtDegrees !== null && `, loosest at ${Math.round(harmonic.loosestAtDegrees)}°`}.
          </p>
          <p className="quiet">
            {harmonic.isCocked
              ? 'Cocked: turn the plates and see whether it stays put.'
              : 'Too small to call it cocked.'}
          </p>
        </>
      )}
    </section>
  );
}
