// Readings where they were taken, seen from the open end with the mark at the top: even, uneven or cocked at a glance.
import { scaleLinear } from 'd3-scale';
import { type AmountWords, bandStretch, type Limits, writeLimits } from './amounts.ts';
import {
  type Chart,
  circle,
  line,
  type Medium,
  path,
  round,
  type Shape,
  type TextStyle,
  text,
  textSizes,
} from './shapes.ts';
import { spread } from './spread.ts';
import { textWidth } from './text-box.ts';

export type SpotReading = { readonly degrees: number; readonly value: number };

/** The first harmonic of the readings: mean + amplitude · cos(θ − loosest at); level where it is loosest nowhere. */
export type Harmonic = { readonly mean: number; readonly amplitude: number; readonly loosestAtDegrees: number | null };

export type ClockFacts = {
  readonly limits: Limits;
  readonly target: number | null;
  readonly readings: readonly SpotReading[];
  /** Drawn only over four or more spots: three readings fit a circle whatever they are. */
  readonly harmonic: Harmonic | null;
};

/** Fewest spots that leave any evidence of tilt. */
const spotsForCircle = 4;

type Dial = {
  readonly x: number;
  readonly y: number;
  readonly outer: number;
  readonly unit: number;
  readonly radius: (value: number) => number;
};

/**
 * The clock plot in a square-ish chart of `width`: limits and target as rings, each reading a dot at its angle with its
 * figure outside, the fitted circle shifted by the tilt. A reading off the scale is an arrow at the rim, or at the hub.
 */
export function clock(
  facts: ClockFacts,
  words: AmountWords,
  { width, medium }: { readonly width: number; readonly medium: Medium },
): Chart {
  const unit = medium === 'paper' ? 0.61 : 1;
  const spots = groupBySpot(facts.readings);
  const label = labelSize(spots, words, medium);
  const outer = Math.max(24 * unit, Math.min(78 * unit, width / 2 - label.width - 14 * unit));
  const height = round(2 * (outer + label.height + 14 * unit));
  const values = facts.readings.map((each) => each.value);
  const stretch = bandStretch(facts.limits, facts.target, values, words.perUnit);
  const size = stretch.high - stretch.low;
  const scale = scaleLinear([stretch.low - size, stretch.high + 0.6 * size], [0, outer]);
  const dial: Dial = { x: width / 2, y: height / 2, outer, unit, radius: (value) => round(scale(value)) };
  const shapes = [
    ...rings(facts, dial),
    ...fittedCircle(facts, dial),
    path(triangle(dial.x, dial.y - outer - 2 * unit, 180, 5 * unit), { fill: 'ink' }),
    ...facts.readings.map((reading) => dot(reading, dial)),
    ...spotLabels(spots, dial, label, words),
    ...ringLabels(facts.limits, spots, dial, words, medium),
  ];
  return { medium, width, height, title: clockSentence(facts, words), shapes };
}

function rings(facts: ClockFacts, dial: Dial): readonly Shape[] {
  const { x, y, outer, unit } = dial;
  const { low, high } = facts.limits;
  const shapes: Shape[] = [];
  const [inner, rim] = [low === null ? 0 : dial.radius(low), high === null ? outer : dial.radius(high)];
  if (low !== null || high !== null) {
    shapes.push(path(loop(x, y, rim) + (inner > 0 ? loop(x, y, inner) : ''), { fill: 'well' }));
  }
  shapes.push(circle(x, y, outer, { stroke: 'mark', strokeWidth: unit }));
  for (let degrees = 0; degrees < 360; degrees += 10) {
    const [from, to] = [at(dial, degrees, outer), at(dial, degrees, outer + 4 * unit)];
    shapes.push(line(from.x, from.y, to.x, to.y, { stroke: 'mark', strokeWidth: unit }));
  }
  shapes.push(line(x - outer, y, x + outer, y, { stroke: 'line', strokeWidth: unit }));
  shapes.push(line(x, y - outer, x, y + outer, { stroke: 'line', strokeWidth: unit }));
  // The high limit is the heavier ring: outside it is loose.
  for (const [limit, weight] of [
    [low, 1.25],
    [high, 2],
  ] as const) {
    if (limit !== null) {
      shapes.push(circle(x, y, dial.radius(limit), { depicts: 'limit', stroke: 'ink', strokeWidth: weight * unit }));
    }
  }
  const target = facts.target === null ? 0 : dial.radius(facts.target);
  if (target > 0 && target < outer) {
    const dash = [4 * unit, 3 * unit];
    shapes.push(circle(x, y, target, { depicts: 'target', stroke: 'mark', strokeWidth: unit, dash }));
  }
  return shapes;
}

/** The circle of the mean, shifted toward the loosest side by the amplitude; left out where it would leave the scale. */
function fittedCircle({ harmonic, readings }: ClockFacts, dial: Dial): readonly Shape[] {
  if (harmonic === null || groupBySpot(readings).length < spotsForCircle) return [];
  const radius = dial.radius(harmonic.mean);
  const shift = dial.radius(harmonic.mean + harmonic.amplitude) - radius;
  if (radius <= 0 || radius + shift > dial.outer) return [];
  const centre = at(dial, harmonic.loosestAtDegrees ?? 0, shift);
  return [circle(centre.x, centre.y, radius, { depicts: 'fit', stroke: 'act', strokeWidth: 1.5 * dial.unit })];
}

function dot({ degrees, value }: SpotReading, dial: Dial): Shape {
  const paint = { depicts: 'reading', fill: 'ink', stroke: 'face', strokeWidth: 1.5 * dial.unit } as const;
  const radius = dial.radius(value);
  if (radius > dial.outer) {
    const tip = at(dial, degrees, dial.outer);
    return path(triangle(tip.x, tip.y, degrees, 7 * dial.unit), paint);
  }
  if (radius < 0) {
    const tip = at(dial, degrees, 10 * dial.unit);
    return path(triangle(tip.x, tip.y, degrees + 180, 7 * dial.unit), paint);
  }
  const place = at(dial, degrees, radius);
  return circle(place.x, place.y, 6 * dial.unit, paint);
}

type Spot = { readonly degrees: number; readonly values: readonly number[] };

/** Readings of one angle share a label; in order round the drum. */
function groupBySpot(readings: readonly SpotReading[]): readonly Spot[] {
  const byDegrees = new Map<number, number[]>();
  for (const { degrees, value } of readings) {
    const turned = ((degrees % 360) + 360) % 360;
    byDegrees.set(turned, [...(byDegrees.get(turned) ?? []), value]);
  }
  return [...byDegrees].map(([degrees, values]) => ({ degrees, values })).sort((a, b) => a.degrees - b.degrees);
}

function spotFigures({ values }: Spot, words: AmountWords): string {
  return values.map(words.short).join(', ');
}

function spotPlace({ degrees }: Spot): string {
  return degrees === 0 ? 'mark' : `${round(degrees)}°`;
}

function labelSize(spots: readonly Spot[], words: AmountWords, medium: Medium) {
  const { small, body } = textSizes[medium];
  const widths = spots.map((spot) =>
    Math.max(textWidth(spotFigures(spot, words), body), textWidth(spotPlace(spot), small)),
  );
  return { width: Math.max(0, ...widths), height: body + small * 1.15, small, body };
}

/**
 * Figure over angle, outside the rim. Labels of near spots are moved apart along the rim; where more spots were read
 * than labels fit round it, only the tightest and the loosest carry one.
 */
function spotLabels(
  spots: readonly Spot[],
  dial: Dial,
  label: ReturnType<typeof labelSize>,
  words: AmountWords,
): readonly Shape[] {
  const gap = 10 * dial.unit;
  const nearest = dial.outer + gap + Math.min(label.width, label.height) / 2;
  // Two boxes whose centres are a diagonal apart cannot touch, whichever way one lies from the other.
  const diagonal = Math.hypot(label.width, label.height);
  const apart = (2 * Math.asin(Math.min(1, diagonal / (2 * nearest))) * 180) / Math.PI;
  const shown = spots.length * apart <= 360 ? spots : extremes(spots);
  const angles = spreadAround(
    shown.map((spot) => spot.degrees),
    apart,
  );
  return shown.flatMap((spot, index) => {
    const radians = (angles[index]! * Math.PI) / 180;
    const [across, up] = [Math.sin(radians), Math.cos(radians)];
    // The box clears the rim by the gap: its reach toward the centre in this direction.
    const reach = (Math.abs(across) * label.width + Math.abs(up) * label.height) / 2;
    const centre = at(dial, angles[index]!, dial.outer + gap + reach);
    const top = centre.y - label.height / 2;
    const style: TextStyle = { anchor: 'middle' };
    return [
      text(centre.x, round(top + 0.76 * label.body), spotFigures(spot, words), {
        ...style,
        size: 'body',
        weight: 'semibold',
      }),
      text(centre.x, round(top + label.body + 0.9 * label.small), spotPlace(spot), { ...style, role: 'quiet' }),
    ];
  });
}

function extremes(spots: readonly Spot[]): readonly Spot[] {
  const tightest = spots.reduce((a, b) => (Math.min(...b.values) < Math.min(...a.values) ? b : a));
  const loosest = spots.reduce((a, b) => (Math.max(...b.values) > Math.max(...a.values) ? b : a));
  return tightest === loosest ? [tightest] : [tightest, loosest].sort((a, b) => a.degrees - b.degrees);
}

/** The widest gap between ascending angles round the circle: its middle, and the index of the angle that ends it. */
function widestGap(angles: readonly number[]): { readonly middle: number; readonly next: number } {
  const gaps = angles.map((angle, index) => (angles[index + 1] ?? angles[0]! + 360) - angle);
  const widest = gaps.indexOf(Math.max(...gaps));
  if (angles.length < 2) return { middle: 45, next: 0 };
  return { middle: angles[widest]! + gaps[widest]! / 2, next: (widest + 1) % angles.length };
}

/** Ascending angles moved apart round the circle, which is cut open at its widest gap. */
function spreadAround(angles: readonly number[], apart: number): readonly number[] {
  const first = widestGap(angles).next;
  const opened = [...angles.slice(first), ...angles.slice(0, first).map((angle) => angle + 360)];
  const middle = ((opened[0] ?? 0) + (opened[opened.length - 1] ?? 0)) / 2;
  const wanted = opened.map((angle) => ({ wanted: angle, before: apart / 2, after: apart / 2 }));
  const moved = spread(wanted, middle - 180, middle + 180);
  const kept = angles.length - first;
  return [...moved.slice(kept), ...moved.slice(0, kept)];
}

/** The limits' figures inside their rings, in the middle of the widest gap between spots. */
function ringLabels(
  limits: Limits,
  spots: readonly Spot[],
  dial: Dial,
  words: AmountWords,
  medium: Medium,
): readonly Shape[] {
  const size = textSizes[medium].small;
  const between = widestGap(spots.map((spot) => spot.degrees)).middle;
  return [limits.low, limits.high].flatMap((limit) => {
    const radius = limit === null ? 0 : dial.radius(limit) - 0.7 * size;
    if (limit === null || radius < 0.7 * size) return [];
    const place = at(dial, between, radius);
    return [
      text(place.x, round(place.y + 0.35 * size), words.short(limit), {
        anchor: 'middle',
        role: 'quiet',
        halo: 'well',
      }),
    ];
  });
}

function clockSentence({ readings, limits, harmonic }: ClockFacts, words: AmountWords): string {
  const spots = groupBySpot(readings);
  const places = spots.map(
    (spot) => `${spotFigures(spot, words)} at ${spot.degrees === 0 ? 'the mark' : spotPlace(spot)}`,
  );
  const tilt =
    harmonic === null || spots.length < spotsForCircle
      ? ''
      : ` Tilt ${words.full(harmonic.amplitude)}${harmonic.loosestAtDegrees === null ? '' : `, loosest at ${Math.round(harmonic.loosestAtDegrees)}°`}.`;
  const taken = places.length === 0 ? 'No spot read' : `Around the drum ${places.join(', ')}`;
  return `${taken}; ${writeLimits(limits, words)}.${tilt}`;
}

function at(dial: Dial, degrees: number, radius: number): { readonly x: number; readonly y: number } {
  const radians = (degrees * Math.PI) / 180;
  return { x: round(dial.x + radius * Math.sin(radians)), y: round(dial.y - radius * Math.cos(radians)) };
}

function loop(x: number, y: number, radius: number): string {
  const turn = `a${radius} ${radius} 0 1 1 `;
  return `M${round(x)} ${round(y - radius)}${turn}0 ${2 * radius}${turn}0 ${-2 * radius}Z`;
}

/** A triangle with its tip at a place, pointing outward along `degrees`. */
function triangle(x: number, y: number, degrees: number, size: number): string {
  const corner = (turn: number) => {
    const radians = ((degrees + turn) * Math.PI) / 180;
    return `${round(x + size * 1.2 * Math.sin(radians))} ${round(y - size * 1.2 * Math.cos(radians))}`;
  };
  return `M${round(x)} ${round(y)}L${corner(152)}L${corner(208)}Z`;
}
