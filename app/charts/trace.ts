// What a gauge said over time: the signed line, rest across it, and the levels that were found, each with its figure.
// The same shapes run on the bench ten times a second, stand beside the kept reading, and are printed.
import { scaleLinear } from 'd3-scale';
import type { AmountWords } from './amounts.ts';
import { type Chart, line, type Medium, path, round, type Shape, text } from './shapes.ts';
import { spread } from './spread.ts';

export type TraceFacts = {
  /** Oldest first. */
  readonly samples: readonly { readonly at_ms: number; readonly value: number }[];
  /** How long a stretch is drawn, up to the last sample; what is older is left out. */
  readonly span_ms: number;
  readonly levels: readonly { readonly label: string; readonly value: number }[];
};

/** At least this much is shown down and up, in units of the axis, so that a gauge at rest is not all noise. */
const leastDown = 6;
const leastUp = 12;

export function traceChart(
  { samples, span_ms, levels }: TraceFacts,
  words: AmountWords,
  { width, height, medium }: { readonly width: number; readonly height: number; readonly medium: Medium },
): Chart {
  const unit = medium === 'paper' ? 0.75 : 1;
  const until = samples.at(-1)?.at_ms ?? 0;
  const shown = samples.filter((sample) => sample.at_ms >= until - span_ms);
  const values = [...shown.map(({ value }) => value), ...levels.map(({ value }) => value)];
  const least = words.perUnit > 500_000 ? words.perUnit / 40 : words.perUnit;
  const labelRoom = 92 * unit;
  const right = width - labelRoom;
  const x = scaleLinear([until - span_ms, until], [0, right]);
  const y = scaleLinear(
    [Math.min(-leastDown * least, ...values), Math.max(leastUp * least, ...values)],
    [height - 6 * unit, 6 * unit],
  );
  const at = (amount: number) => round(y(amount));
  const shapes: Shape[] = [line(0, at(0), right, at(0), { stroke: 'mark', strokeWidth: unit })];
  for (const { value } of levels) {
    shapes.push(line(0, at(value), right, at(value), { stroke: 'act', strokeWidth: unit, dash: [4 * unit, 4 * unit] }));
  }
  if (shown.length > 0) {
    const outline = shown.map((sample) => `${round(x(sample.at_ms))} ${at(sample.value)}`).join('L');
    shapes.push(path(`M${outline}`, { depicts: 'reading', stroke: 'ink', strokeWidth: 2 * unit }));
  }
  const half = 8 * unit;
  const ordered = levels.toSorted((left, rightLevel) => rightLevel.value - left.value);
  const places = spread(
    ordered.map(({ value }) => ({ wanted: at(value), before: half, after: half })),
    0,
    height,
  );
  ordered.forEach(({ label, value }, index) => {
    shapes.push(text(right + 6 * unit, (places[index] ?? 0) + 4.5 * unit, `${label} ${words.full(value)}`));
  });
  return { medium, width, height, title: traceSentence(levels, words), shapes };
}

/** The trace as it is kept with a reading, drawn whole. */
export type KeptTraceFacts = {
  readonly samples: readonly (readonly [at_ms: number, value: number])[];
  readonly pressed_nm: number | null;
  readonly air_nm: number | null;
};

/** The kept trace from its beginning to where it was accepted. */
export function keptTraceChart(
  { samples, pressed_nm, air_nm }: KeptTraceFacts,
  words: AmountWords,
  size: { readonly width: number; readonly height: number; readonly medium: Medium },
): Chart {
  const levels = [
    { label: 'pressed', value: pressed_nm },
    { label: 'air', value: air_nm },
  ].flatMap(({ label, value }) => (value === null ? [] : [{ label, value }]));
  const drawn = samples.map(([at_ms, value]) => ({ at_ms, value }));
  const span_ms = Math.max(1, (drawn.at(-1)?.at_ms ?? 0) - (drawn[0]?.at_ms ?? 0));
  return traceChart({ samples: drawn, span_ms, levels }, words, size);
}

function traceSentence(levels: TraceFacts['levels'], words: AmountWords): string {
  if (levels.length === 0) return 'The gauge’s trace; no level found yet.';
  return `The gauge’s trace: ${levels.map(({ label, value }) => `${label} ${words.full(value)}`).join(', ')}.`;
}
