// Paints a chart's list of shapes as SVG, in the colours of the theme.
import { type SVGProps, useId } from 'react';
import { type Chart, type Hatch, hatches, hatchScale, type Shape, type Text } from '../../app/charts/shapes.ts';
import styles from './ChartView.module.css';

/**
 * The chart at its own size, one unit a pixel, so that its text keeps the sizes it was laid out for. A chart without a
 * title says nothing of its own and is hidden from a screen reader: the words stand beside it.
 */
export function ChartView({ chart }: { readonly chart: Chart }) {
  const id = useId();
  const used = [
    ...new Set(chart.shapes.flatMap((shape) => ('hatch' in shape && shape.hatch !== undefined ? [shape.hatch] : []))),
  ];
  const isNamed = chart.title !== '';
  return (
    <svg
      className={`${styles.chart} ${styles[chart.medium]}`}
      width={chart.width}
      height={chart.height}
      viewBox={`0 0 ${chart.width} ${chart.height}`}
      role={isNamed ? 'img' : undefined}
      aria-label={isNamed ? chart.title : undefined}
      aria-hidden={isNamed ? undefined : true}
    >
      {used.length > 0 && (
        <defs>
          {used.map((hatch) => (
            <HatchPattern key={hatch} hatch={hatch} id={patternId(id, hatch)} scale={hatchScale[chart.medium]} />
          ))}
        </defs>
      )}
      {chart.shapes.map((shape, index) => (
        // A chart is redrawn whole: a shape has no identity but its place in the list.
        // biome-ignore lint/suspicious/noArrayIndexKey: see above
        <ShapeView key={index} shape={shape} patterns={id} />
      ))}
    </svg>
  );
}

function patternId(id: string, hatch: Hatch): string {
  return `${id}-${hatch}`;
}

/** Defined inside its own chart, so that the hatch takes the theme's colour where the chart stands. */
function HatchPattern({ hatch, id, scale }: { readonly hatch: Hatch; readonly id: string; readonly scale: number }) {
  const { kind, angle, role } = hatches[hatch];
  const spacing = hatches[hatch].spacing * scale;
  const thickness = hatches[hatch].thickness * scale;
  const size = kind === 'lines' ? spacing : 2 * spacing;
  return (
    <pattern id={id} width={size} height={size} patternUnits="userSpaceOnUse" patternTransform={`rotate(${angle})`}>
      {kind === 'lines' ? (
        <path d={`M${size / 2} 0V${size}`} strokeWidth={thickness} className={styles[`stroke-${role}`]} />
      ) : (
        [1, 3].map((quarter) => (
          <circle
            key={quarter}
            cx={(quarter * size) / 4}
            cy={(quarter * size) / 4}
            r={thickness / 2}
            className={styles[`fill-${role}`]}
          />
        ))
      )}
    </pattern>
  );
}

function ShapeView({ shape, patterns }: { readonly shape: Shape; readonly patterns: string }) {
  if (shape.kind === 'text') return <TextView line={shape} />;
  return (
    <>
      <Outline
        shape={shape}
        className={`${styles[shape.fill === undefined ? 'hollow' : `fill-${shape.fill}`]} ${styles[shape.stroke === undefined ? 'bare' : `stroke-${shape.stroke}`]}`}
        strokeWidth={shape.strokeWidth}
        strokeDasharray={shape.dash?.join(' ')}
        data-depicts={shape.depicts}
      />
      {'hatch' in shape && shape.hatch !== undefined && (
        <Outline shape={shape} fill={`url(#${patternId(patterns, shape.hatch)})`} />
      )}
    </>
  );
}

type OutlineProps = SVGProps<SVGElement> & {
  readonly shape: Exclude<Shape, Text>;
  readonly 'data-depicts'?: string | undefined;
};

function Outline({ shape, ref: _, ...paint }: OutlineProps) {
  switch (shape.kind) {
    case 'line':
      return <line x1={shape.x1} y1={shape.y1} x2={shape.x2} y2={shape.y2} {...paint} />;
    case 'path':
      return <path d={shape.outline} fillRule="evenodd" {...paint} />;
    case 'rect':
      return <rect x={shape.x} y={shape.y} width={shape.width} height={shape.height} {...paint} />;
    case 'circle':
      return <circle cx={shape.x} cy={shape.y} r={shape.radius} {...paint} />;
  }
}

function TextView({ line }: { readonly line: Text }) {
  const classes = [
    line.size,
    line.weight,
    line.typeface,
    line.anchor,
    `fill-${line.role}`,
    line.halo && `halo-${line.halo}`,
  ];
  return (
    <text
      x={line.x}
      y={line.y}
      className={classes
        .map((each) => each && styles[each])
        .filter(Boolean)
        .join(' ')}
    >
      {line.text}
    </text>
  );
}
