// The pack to scale beside the work, as tall as the room it is given: as it is, or as it is and after the swap.
import { type ReactNode, useLayoutEffect, useRef, useState } from 'react';
import type { Chart } from '../../../app/charts/shapes.ts';
import type { Stack } from '../../../app/charts/stack.ts';
import { stackUp } from '../../../app/charts/stack-up.ts';
import { stackUpHalves } from '../../../app/charts/stack-up-halves.ts';
import { formatLength } from '../../../app/quantities/format-amount.ts';
import { ChartView } from '../../charts/ChartView.tsx';
import { useAtCheck } from './at-check.ts';
import styles from './PackDrawing.module.css';
import { heightsOf } from './pack-stack.ts';

type PackDrawingProps = {
  now: Stack;
  planned?: Stack;
  /** Over the drawing, where there is one half only. */
  children?: ReactNode;
};

export function PackDrawing({ now, planned, children }: PackDrawingProps) {
  const { pack, settings } = useAtCheck();
  const write = (length_nm: number) => formatLength(length_nm, settings.lengthUnit, undefined, settings.decimalMark);
  const draw = (width: number, height: number) =>
    planned
      ? stackUpHalves(now, planned, { width, height, medium: 'screen', write })
      : stackUp(now, { name: '', width, height, medium: 'screen', write });
  return (
    <>
      {planned ? (
        <p className={styles.heads}>
          <b>now</b>
          <b className={styles.act}>after the swap</b>
        </p>
      ) : (
        children
      )}
      <FilledChart key={`${pack?.packId} ${planned ? 2 : 1}`} draw={draw} />
      <p className={styles.sums}>
        <SumLine stack={now} write={write} />
        {planned && (
          <span className={styles.act}>
            <SumLine stack={planned} write={write} />
          </span>
        )}
      </p>
      <p className={styles.small}>
        {now.clearance_nm === null ? '' : 'gap to the ring less what sits in it · '}heights to scale
      </p>
    </>
  );
}

function SumLine({ stack, write }: { stack: Stack; write: (length_nm: number) => string }) {
  const sum = heightsOf(stack);
  if (stack.clearance_nm === null) return <span>in the pack {write(sum)}</span>;
  return (
    <span>
      {write(sum + stack.clearance_nm)} − {write(sum)} = <b>{write(stack.clearance_nm)}</b>
    </span>
  );
}

/** A chart drawn to the room left in a column, never the reason why the room grows. */
function FilledChart({ draw }: { draw: (width: number, height: number) => Chart }) {
  const room = useRef<HTMLDivElement>(null);
  const [size, setSize] = useState<{ width: number; height: number } | null>(null);
  useLayoutEffect(() => {
    const element = room.current;
    if (!element) return;
    const measure = () => {
      const { width, height } = element.getBoundingClientRect();
      setSize({ width: Math.floor(width), height: Math.floor(height) });
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  const chart = size && draw(size.width, size.height);
  return (
    <div ref={room} className={styles.room}>
      {chart && (
        <div className={styles.chart}>
          <ChartView chart={chart} />
        </div>
      )}
    </div>
  );
}
