// The pack twice in one section: left of the centre line as it is, right of it as planned.
import {
  type Chart,
  line,
  type Medium,
  path,
  rect,
  round,
  type Shape,
  type TextStyle,
  text,
  textSizes,
} from './shapes.ts';
import {
  type PlacedPiece,
  type PlacedStack,
  placeStack,
  type Stack,
  type StackPiece,
  stackHeight_nm,
} from './stack.ts';
import { blockHeight, drawLabels, heightOfLabels, leader, type StackLabel, textBlock } from './stack-label.ts';
import { clearanceArrows, clearanceLines, clearanceReach, levelArrow, pieceInSection } from './stack-section.ts';
import { textWidth, wrapText } from './text-box.ts';

export type HalvesOptions = {
  readonly width: number;
  /** Asked for; the chart grows taller where the labels need more. */
  readonly height: number;
  readonly medium: Medium;
  readonly write: (length_nm: number) => string;
};

type Section = {
  readonly medium: Medium;
  readonly unit: number;
  readonly width: number;
  readonly centre: number;
  /** Outer faces of the drum's wall. */
  readonly left: number;
  readonly right: number;
  readonly write: (length_nm: number) => string;
};

const fixedRing = 31;

/**
 * Both halves on one scale over one piston. What leaves is dashed with its arrow out, what enters is solid with its
 * arrow in. Left labels are heights, right labels names; each half's clearance stands by its gap.
 */
export function stackUpHalves(now: Stack, planned: Stack, options: HalvesOptions): Chart {
  const { medium, width, height, write } = options;
  const unit = medium === 'paper' ? 0.61 : 1;
  const centre = width / 2;
  const section: Section = { medium, unit, width, centre, left: centre - 88 * unit, right: centre + 88 * unit, write };
  const floor = height - 40 * unit;
  const tallest_nm = Math.max(stackHeight_nm(now), stackHeight_nm(planned), 1);
  const perNanometre = (floor - (26 + fixedRing) * unit) / tallest_nm;
  const frame = { perNanometre, floor, fixedRing: fixedRing * unit };
  const [left, right] = [placeStack(now, frame), placeStack(planned, frame)];
  const [leftLabels, rightLabels] = [labelsOfNow(left, section), labelsOfPlan(right, section)];
  const needed = Math.ceil(Math.max(heightOfLabels(leftLabels), heightOfLabels(rightLabels)));
  if (needed > height) return stackUpHalves(now, planned, { ...options, height: needed });
  const shapes = [
    ...drum(left, right, floor, section),
    ...half(left, 'left', section),
    ...half(right, 'right', section),
    ...hub(left, right, floor, section),
    ...drawLabels(leftLabels, height),
    ...drawLabels(rightLabels, height),
  ];
  return { medium, width, height, title: halvesSentence(now, planned, write), shapes };
}

/** The drum's wall with the ring's groove in each half, and the piston lying down in it. */
function drum(
  now: PlacedStack,
  planned: PlacedStack,
  floor: number,
  { left, right, centre, unit }: Section,
): readonly Shape[] {
  const wall = 10 * unit;
  const groove = 5 * unit;
  const top = Math.min(now.ring.top, planned.ring.top) - 12 * unit;
  const [piston, base] = [floor + 24 * unit, floor + 36 * unit];
  const at = (...numbers: number[]) => numbers.map(round).join(' ');
  const outline = [
    `M${at(left, top)}H${round(left + wall)}V${round(now.ring.top)}H${round(left + wall - groove)}V${round(now.ring.bottom)}`,
    `H${round(left + wall)}V${round(piston)}H${round(right - wall)}V${round(planned.ring.bottom)}`,
    `H${round(right - wall + groove)}V${round(planned.ring.top)}H${round(right - wall)}V${round(top)}H${round(right)}V${round(base)}H${round(left)}Z`,
  ].join('');
  const metal = { fill: 'metal', stroke: 'quiet', strokeWidth: unit } as const;
  return [
    path(outline, metal),
    rect(left + 12 * unit, floor, right - left - 24 * unit, 24 * unit, metal),
    text(centre, floor + 16.5 * unit, 'piston, down', { anchor: 'middle', halo: 'metal' }),
  ];
}

/** Steels reach the drum, frictions the hub; the ring sits in its groove. */
function half(placed: PlacedStack, side: 'left' | 'right', section: Section): readonly Shape[] {
  const { left, right, unit } = section;
  const across = (from: number, to: number): readonly [number, number] =>
    side === 'left' ? [left + from * unit, left + to * unit] : [right - to * unit, right - from * unit];
  const { piece, top, bottom } = placed.ring;
  const [ringLeft, ringRight] = across(6, 50);
  const ring =
    piece === null
      ? [
          rect(ringLeft, round(top), ringRight - ringLeft, round(bottom - top), {
            fill: 'metal',
            stroke: 'quiet',
            strokeWidth: unit,
          }),
        ]
      : pieceInSection({ piece, top, bottom }, ringLeft, ringRight, section);
  return [
    ...ring,
    ...placed.plates.flatMap((each) => {
      const [from, to] = each.piece.kind === 'friction' ? across(20, 68) : across(12, 58);
      return pieceInSection(each, from, to, section);
    }),
  ];
}

/** The hub the frictions ride on, from over the last friction down into the piston's bore, and the centre line. */
function hub(now: PlacedStack, planned: PlacedStack, floor: number, { centre, unit }: Section): readonly Shape[] {
  const frictions = [...now.plates, ...planned.plates].filter(({ piece }) => piece.kind === 'friction');
  const lineOfCentre = (top: number) =>
    line(centre, round(top), centre, floor + 44 * unit, {
      stroke: 'mark',
      strokeWidth: unit,
      dash: [14, 4, 3, 4].map((each) => each * unit),
    });
  const wallTop = Math.min(now.ring.top, planned.ring.top) - 20 * unit;
  if (frictions.length === 0) return [lineOfCentre(wallTop)];
  const top = Math.min(...frictions.map((each) => each.top)) - 33 * unit;
  const [outer, inner, foot] = [20 * unit, 12 * unit, floor - 4 * unit];
  const outline = `M${round(centre - outer)} ${round(top)}H${round(centre + outer)}V${round(foot)}H${round(centre + inner)}V${round(top + 8 * unit)}H${round(centre - inner)}V${round(foot)}H${round(centre - outer)}Z`;
  return [path(outline, { fill: 'metal', stroke: 'quiet', strokeWidth: unit }), lineOfCentre(wallTop)];
}

/** Heights as they are now, against the drum; what leaves says so. */
function labelsOfNow(placed: PlacedStack, section: Section): readonly StackLabel[] {
  const { unit, left } = section;
  const row = ({ piece, top, bottom }: PlacedPiece): StackLabel => {
    const wanted = (top + bottom) / 2;
    const leaves = piece.change === 'leaves';
    const beside = besideDrum(piece, 'left', section);
    return {
      wanted,
      height: beside.height,
      draw: (y) => [
        ...(leaves
          ? [levelArrow(left + 10 * unit, left - 3 * unit, wanted, 'ink', unit)]
          : leader(left - 2 * unit, wanted, left - 6 * unit, y, unit)),
        ...beside.draw(y),
      ],
    };
  };
  return [...ringRow(placed, row), ...clearanceRow(placed, 'left', section), ...[...placed.plates].reverse().map(row)];
}

/** Names, against the drum; what enters says its height and mark instead. */
function labelsOfPlan(placed: PlacedStack, section: Section): readonly StackLabel[] {
  const { medium, unit, right, width } = section;
  const start = right + 8 * unit;
  const named = (wanted: number, name: string): StackLabel => {
    const lines = wrapText(name, width - start, textSizes[medium].small);
    return {
      wanted,
      height: blockHeight(medium, 'small', lines.length),
      draw: (y) => [
        ...leader(right + 2 * unit, wanted, right + 6 * unit, y, unit),
        ...textBlock(start, y, lines, medium, { role: 'quiet' }),
      ],
    };
  };
  const row = ({ piece, top, bottom }: PlacedPiece): StackLabel => {
    const wanted = (top + bottom) / 2;
    if (piece.change !== 'enters') return named(wanted, piece.label);
    const beside = besideDrum(piece, 'right', section);
    const arrow = levelArrow(right + 6 * unit, right - 8 * unit, wanted, 'act', unit);
    return { wanted, height: beside.height, draw: (y) => [arrow, ...beside.draw(y)] };
  };
  const ring = (placed.ring.top + placed.ring.bottom) / 2 - 12 * unit;
  return [
    ...(placed.ring.piece === null ? [named(ring, 'snap ring')] : ringRow(placed, row)),
    ...clearanceRow(placed, 'right', section),
    ...[...placed.plates].reverse().map(row),
  ];
}

/** A piece's height, mark and *out* or *in*, from the drum outward; what does not fit beside the height goes under it. */
function besideDrum(
  piece: StackPiece,
  side: 'left' | 'right',
  { medium, unit, left, right, width, write }: Section,
): Omit<StackLabel, 'wanted'> {
  const [start, away] = side === 'left' ? [left - 8 * unit, -1] : [right + 10 * unit, 1];
  const column = side === 'left' ? start : width - start;
  const anchor = side === 'left' ? 'end' : 'start';
  const isMarked = piece.change !== undefined;
  const role = piece.change === 'enters' ? 'act' : 'ink';
  const figure = write(piece.height_nm);
  const word = piece.change === 'leaves' ? 'out' : piece.change === 'enters' ? 'in' : '';
  const figureStyle: TextStyle = { size: 'body', anchor, role, weight: isMarked ? 'semibold' : 'regular' };
  const parts = [
    {
      words: piece.tag ?? '',
      style: { typeface: 'mono', anchor, role: isMarked ? role : 'quiet' } satisfies TextStyle,
    },
    { words: word, style: { anchor, role, weight: 'semibold' } satisfies TextStyle },
  ].filter((part) => part.words !== '');
  const { small, body } = textSizes[medium];
  const gap = 5 * unit;
  const reach = parts.reduce(
    (sum, { words, style }) => sum + gap + textWidth(words, small, style.typeface),
    textWidth(figure, body),
  );
  if (reach <= column) {
    return {
      height: blockHeight(medium, 'body'),
      draw: (y) => {
        let x = start + away * (textWidth(figure, body) + gap);
        const placed = parts.flatMap(({ words, style }) => {
          const at = x;
          x += away * (textWidth(words, small, style.typeface) + gap);
          return textBlock(at, y, [words], medium, style);
        });
        return [...textBlock(start, y, [figure], medium, figureStyle), ...placed];
      },
    };
  }
  const under = wrapText(`${word} ${piece.tag ?? ''}`, column, small);
  const [above, below] = [blockHeight(medium, 'body'), blockHeight(medium, 'small', under.length)];
  return {
    height: above + below,
    draw: (y) => [
      ...textBlock(start, y - below / 2, [figure], medium, figureStyle),
      ...textBlock(start, y + above / 2, under, medium, { anchor, role: isMarked ? role : 'quiet' }),
    ],
  };
}

function ringRow({ ring }: PlacedStack, row: (placed: PlacedPiece) => StackLabel): readonly StackLabel[] {
  return ring.piece === null ? [] : [row({ piece: ring.piece, top: ring.top, bottom: ring.bottom })];
}

/** The clearance between its two lines, as large as the column lets it be. */
function clearanceRow({ clearance }: PlacedStack, side: 'left' | 'right', section: Section): readonly StackLabel[] {
  if (clearance === null) return [];
  const { medium, unit, left, right, width, write } = section;
  const figure = write(clearance.clearance_nm);
  const [wall, away] = side === 'left' ? [left, -1] : [right, 1];
  const arrowsAt = wall + away * 16 * unit;
  const edge = wall + away * 30 * unit;
  const column = side === 'left' ? edge - 4 * unit : width - edge - 4 * unit;
  const size = textWidth(figure, textSizes[medium].say) <= column ? 'say' : 'body';
  const role = side === 'left' ? 'ink' : 'act';
  const wanted = (clearance.top + clearance.bottom) / 2;
  const drawn = clearance.bottom - clearance.top + 2 * clearanceReach(clearance, unit);
  return [
    {
      wanted,
      height: Math.max(blockHeight(medium, size), drawn),
      draw: (y) => [
        ...clearanceLines(clearance, wall - away * 8 * unit, edge, role, unit),
        ...clearanceArrows(clearance, arrowsAt, role, unit),
        ...textBlock(edge + away * 4 * unit, y, [figure], medium, {
          size,
          role,
          weight: 'semibold',
          anchor: side === 'left' ? 'end' : 'start',
        }),
      ],
    },
  ];
}

function halvesSentence(now: Stack, planned: Stack, write: (length_nm: number) => string): string {
  const changes = (stack: Stack, change: 'leaves' | 'enters') =>
    stack.pieces
      .filter((piece) => piece.change === change)
      .map((piece) => `${piece.label} ${write(piece.height_nm)}`)
      .join(', ');
  const gap = ({ clearance_nm }: Stack) =>
    clearance_nm === null ? 'a clearance not known yet' : `${write(clearance_nm)} of clearance`;
  const [out, into] = [changes(now, 'leaves'), changes(planned, 'enters')];
  return `Half sections to scale, piston at the bottom: now with ${gap(now)}, after the swap with ${gap(planned)}.${out === '' ? '' : ` Out: ${out}.`}${into === '' ? '' : ` In: ${into}.`}`;
}
