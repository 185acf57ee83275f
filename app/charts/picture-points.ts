// The points of a picture as they stand on it: a ring where the part is, and beside it a tag with label, figure and mark.
import {
  type Chart,
  circle,
  line,
  type Medium,
  type PaintRole,
  path,
  rect,
  round,
  type Shape,
  text,
  textSizes,
} from './shapes.ts';
import { type Box, boxesOverlap, textWidth } from './text-box.ts';
import { type Verdict, verdictShapes } from './verdict-mark.ts';

/** Where a line of a list stands. Boxes, so that none looks like a verdict. */
export const tickStates = ['open', 'good', 'off', 'does not apply'] as const;
export type TickState = (typeof tickStates)[number];

export type PictureMark =
  | { readonly kind: 'verdict'; readonly verdict: Verdict }
  | { readonly kind: 'tick'; readonly state: TickState }
  /** An empty place to write a figure in. */
  | { readonly kind: 'blank' }
  | { readonly kind: 'none' };

export type MarkedPoint = {
  readonly label: string;
  /** Thousandths of the width from the left and of the height from the top. */
  readonly x_permille: number;
  readonly y_permille: number;
  /** Already written out, with its unit; empty where there is none. */
  readonly figure: string;
  readonly mark: PictureMark;
};

export type PictureSize = { readonly width: number; readonly height: number; readonly medium: Medium };

/** Where each tag lies, in the order of the points, for who presses it. */
export type MarkedPicture = { readonly chart: Chart; readonly tags: readonly Box[] };

/**
 * What is drawn over a picture of this size. A tag lies as near its point as there is room: inside the picture, over no
 * other tag and over no other point; where the points are too many for that, over what it must.
 */
export function picturePoints(
  points: readonly MarkedPoint[],
  { width, height, medium }: PictureSize,
  title: string,
): MarkedPicture {
  const scale = textSizes[medium].small / 14;
  const places = points.map(({ x_permille, y_permille }) => ({
    x: round((x_permille / 1000) * width),
    y: round((y_permille / 1000) * height),
  }));
  const rings = places.map(({ x, y }) => around(x, y, ringRadius * scale));
  const tags: Box[] = [];
  for (const [index, point] of points.entries()) {
    const size = tagSize(point, medium);
    const taken = [...tags, ...rings.filter((_, other) => other !== index)];
    tags.push(placeTag(places[index]!, size, scale, { left: 0, top: 0, right: width, bottom: height }, taken));
  }
  const shapes = points.flatMap((point, index) => [
    ...leader(places[index]!, tags[index]!, scale),
    ...ring(places[index]!, scale),
    ...tag(point, tags[index]!, medium),
  ]);
  return { chart: { medium, width, height, title, shapes }, tags };
}

const ringRadius = 6;
const paddingAcross = 5;
const gap = 5;
/** An empty place is as wide as "100.0" written by hand. */
const blankWidth = 44;

function tagSize(point: MarkedPoint, medium: Medium): { width: number; height: number } {
  const size = textSizes[medium].small;
  const scale = size / 14;
  const parts = [
    textWidth(point.label, size),
    ...(point.figure === '' ? [] : [textWidth(point.figure, size)]),
    ...(point.mark.kind === 'none' ? [] : [markWidth(point.mark, size)]),
  ];
  const inside = parts.reduce((sum, each) => sum + each, 0) + gap * scale * (parts.length - 1);
  return { width: round(inside + 2 * paddingAcross * scale), height: round(1.5 * size) };
}

function markWidth(mark: PictureMark, size: number): number {
  return mark.kind === 'blank' ? (blankWidth * size) / 14 : 0.8 * size;
}

/** Beside, under or over the point, and farther off ring by ring until there is room. */
function placeTag(
  point: { x: number; y: number },
  size: { width: number; height: number },
  scale: number,
  picture: Box,
  taken: readonly Box[],
): Box {
  let first: Box | undefined;
  for (let step = 0; step < 12; step += 1) {
    const off = (ringRadius + 4) * scale + step * 0.75 * size.height;
    const [beside, under] = [off + size.width / 2, off + size.height / 2];
    for (const [across, down] of [
      [beside, 0],
      [-beside, 0],
      [0, under],
      [0, -under],
      [beside, under],
      [-beside, under],
      [beside, -under],
      [-beside, -under],
    ] as const) {
      const box = boxAt(point.x + across, point.y + down, size);
      if (!isInside(box, picture)) continue;
      first ??= box;
      if (!taken.some((each) => boxesOverlap(each, box))) return box;
    }
  }
  return first ?? boxAt(point.x, point.y, size);
}

function boxAt(x: number, y: number, { width, height }: { width: number; height: number }): Box {
  const [left, top] = [round(x - width / 2), round(y - height / 2)];
  return { left, top, right: round(left + width), bottom: round(top + height) };
}

function around(x: number, y: number, radius: number): Box {
  return { left: x - radius, right: x + radius, top: y - radius, bottom: y + radius };
}

function isInside(box: Box, picture: Box): boolean {
  return (
    box.left >= picture.left && box.right <= picture.right && box.top >= picture.top && box.bottom <= picture.bottom
  );
}

/** From the point to the nearest place of its tag; under the ring, so that it begins at its rim. */
function leader(point: { x: number; y: number }, box: Box, scale: number): readonly Shape[] {
  const x = Math.min(Math.max(point.x, box.left), box.right);
  const y = Math.min(Math.max(point.y, box.top), box.bottom);
  return [
    line(point.x, point.y, x, y, { stroke: 'face', strokeWidth: 4 * scale }),
    line(point.x, point.y, x, y, { stroke: 'ink', strokeWidth: 1.5 * scale }),
  ];
}

/** Dark within light, so that it is seen on any photo. */
function ring({ x, y }: { x: number; y: number }, scale: number): readonly Shape[] {
  return [
    circle(x, y, (ringRadius + 2) * scale, { fill: 'face' }),
    circle(x, y, ringRadius * scale, { fill: 'face', stroke: 'ink', strokeWidth: 2 * scale }),
  ];
}

function tag({ label, figure, mark }: MarkedPoint, box: Box, medium: Medium): readonly Shape[] {
  const size = textSizes[medium].small;
  const scale = size / 14;
  const baseline = round((box.top + box.bottom) / 2 + 0.35 * size);
  let x = box.left + paddingAcross * scale;
  const shapes: Shape[] = [
    rect(box.left, box.top, box.right - box.left, box.bottom - box.top, {
      fill: 'face',
      stroke: 'ink',
      strokeWidth: scale,
    }),
    text(x, baseline, label, { weight: 'semibold' }),
  ];
  x += textWidth(label, size) + gap * scale;
  if (figure !== '') {
    shapes.push(text(round(x), baseline, figure));
    x += textWidth(figure, size) + gap * scale;
  }
  return [...shapes, ...markShapes(mark, round(x), (box.top + box.bottom) / 2, size)];
}

function markShapes(mark: PictureMark, x: number, middle: number, size: number): readonly Shape[] {
  const side = round(0.8 * size);
  const top = round(middle - side / 2);
  switch (mark.kind) {
    case 'verdict':
      return verdictShapes(mark.verdict, x, top, side);
    case 'tick':
      return tickShapes(mark.state, x, top, side);
    case 'blank':
      return [rect(x, round(middle - 0.55 * size), round(markWidth(mark, size)), round(1.1 * size), boxPaint(size))];
    case 'none':
      return [];
  }
}

const tickRoles: Record<TickState, PaintRole> = { open: 'mark', good: 'in', off: 'out', 'does not apply': 'quiet' };

const boxPaint = (size: number) => ({ stroke: 'mark', strokeWidth: round(size / 14) }) as const;

/** A box: empty while open, ticked when good, with an exclamation mark when off, with a bar where it does not apply. */
function tickShapes(state: TickState, x: number, y: number, side: number): readonly Shape[] {
  const role = tickRoles[state];
  const at = (across: number, down: number) => `${round(x + across * side)} ${round(y + down * side)}`;
  const stroke = { stroke: role, strokeWidth: round(side / 7) };
  const box = rect(x, y, side, side, { stroke: role, strokeWidth: round(side / 10) });
  switch (state) {
    case 'open':
      return [box];
    case 'good':
      return [box, path(`M${at(0.2, 0.55)}L${at(0.42, 0.77)}L${at(0.82, 0.25)}`, stroke)];
    case 'off':
      return [box, path(`M${at(0.5, 0.18)}L${at(0.5, 0.6)}M${at(0.5, 0.72)}L${at(0.5, 0.86)}`, stroke)];
    case 'does not apply':
      return [box, path(`M${at(0.22, 0.5)}L${at(0.78, 0.5)}`, stroke)];
  }
}
