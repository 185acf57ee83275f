// A chart drawn to the width it is given, so that nothing in it is scaled and text keeps its size.
import { useLayoutEffect, useRef, useState } from 'react';
import type { Chart } from '../../app/charts/shapes.ts';
import styles from './ChartView.module.css';
import { ChartView } from './ChartView.tsx';

/** Draws again whenever the room changes; `draw` gets whole pixels, never fewer than `least`. */
export function FittedChart({
  draw,
  least = 160,
}: {
  readonly draw: (width: number) => Chart;
  readonly least?: number;
}) {
  const room = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState<number | null>(null);
  useLayoutEffect(() => {
    const element = room.current;
    if (element === null) return;
    const measure = () => setWidth(Math.max(least, Math.floor(element.getBoundingClientRect().width)));
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, [least]);
  return (
    <div ref={room} className={styles.room}>
      {width !== null && <ChartView chart={draw(width)} />}
    </div>
  );
}
