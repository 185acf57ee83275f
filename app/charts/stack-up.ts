// One pack as it stands, to scale, piston at the bottom: beside a reading and on paper.
import { type Chart, type Medium, rect, round, type Shape, text, textSizes } from './shapes.ts';
import { type PlacedStack, placeStack, type Stack, stackHeight_nm } from './stack.ts';
import { blockHeight, drawLabels, heightOfLabels, leader, type StackLabel, textBlock } from './stack-label.ts';
import { clearanceLines, pieceInSection } from './stack-section.ts';
import { textWidth, wrapText } from './text-box.ts';

export type StackUpOptions = {
  readonly name: string;
  readonly width: number;
  /** Asked for; the chart grows taller where the labels need more. */
  readonly height: number;
  readonly medium: Medium;
  /** Draws to the scale of a taller pack beside it. */
  readonly tallest_nm?: number;
  /** What the clearance is called: "clearance", "clearance, by calculation". */
  readonly clearanceLabel?: string;
  readonly write: (length_nm: number) => string;
};

type Columns = { readonly body: number; readonly edge: number; readonly figures: number; readonly names: number };

/** The pack with each piece's height and name beside it; a piece that enters is marked. */
export function stackUp(stack: Stack, options: StackUpOptions): Chart {
  const { medium, width, height, name, write } = options;
  const unit = medium === 'paper' ? 0.75 : 1;
  const [head, foot] = [name === '' ? 0 : 22 * unit, 1.6 * textSizes[medium].small];
  const fixedRing = 14 * unit;
  const floor = height - foot;
  const room = floor - head - fixedRing;
  const tallest_nm = Math.max(options.tallest_nm ?? 0, stackHeight_nm(stack), 1);
  const placed = placeStack(stack, { perNanometre: room / tallest_nm, floor, fixedRing });
  const columns = columnsOf(stack, options, unit);
  const labels = labelsOf(placed, columns, options, unit);
  const needed = Math.ceil(heightOfLabels(labels) + head + foot / 2);
  if (needed > height) return stackUp(stack, { ...options, height: needed });
  const piston = columns.body + 4 * unit;
  const shapes: Shape[] = [
    ...(name === '' ? [] : [text(4 * unit, 14 * unit, name, { weight: 'semibold' })]),
    rect(unit, floor, piston, foot - unit, { fill: 'metal', stroke: 'ink', strokeWidth: unit }),
    text(unit + piston / 2, floor + foot / 2 + 0.27 * textSizes[medium].small, 'piston', { anchor: 'middle' }),
    ...placed.plates.flatMap((each) => {
      const inset = (each.piece.kind === 'friction' ? 9 : 3) * unit;
      return pieceInSection(each, inset, columns.body + 6 * unit - inset, { medium, unit });
    }),
    ...ringInSection(placed, columns, unit),
    ...(placed.clearance === null
      ? []
      : clearanceLines(placed.clearance, columns.edge, columns.edge + 6 * unit, 'ink', unit)),
    ...drawLabels(labels, height - foot / 2),
  ];
  return { medium, width, height, title: stackSentence(stack, name, write), shapes };
}

function ringInSection({ ring }: PlacedStack, columns: Columns, unit: number): readonly Shape[] {
  const isNew = ring.piece?.change === 'enters';
  const paint =
    ring.piece === null
      ? ({ fill: 'ink' } as const)
      : ({ fill: 'metal', hatch: 'backing', stroke: 'ink', strokeWidth: (isNew ? 2 : 1) * unit } as const);
  const height = round(ring.bottom - ring.top);
  const across = 20 * unit;
  return [unit, columns.body + 5 * unit - across].map((x) =>
    rect(x, round(ring.top), across, height, { ...(ring.piece === null ? {} : { depicts: 'piece' }), ...paint }),
  );
}

function columnsOf(stack: Stack, { width, medium, write }: StackUpOptions, unit: number): Columns {
  const body = Math.min(82 * unit, 0.3 * width);
  const edge = body + 8 * unit;
  const { small } = textSizes[medium];
  const figures = [...stack.pieces.map((piece) => write(piece.height_nm)), write(stack.clearance_nm ?? 0)];
  const widest = Math.max(...figures.map((figure) => textWidth(figure, small)));
  const end = edge + 9 * unit + widest;
  return { body, edge, figures: end, names: end + 6 * unit };
}

/** From the top: the ring, the clearance, then the plates down to the piston. */
function labelsOf(placed: PlacedStack, columns: Columns, options: StackUpOptions, unit: number): readonly StackLabel[] {
  const { medium, width, write } = options;
  const label = (wanted: number, figure: string | null, words: string, isMarked: boolean): StackLabel => {
    const lines = wrapText(words, width - columns.names, textSizes[medium].small);
    const style = { weight: isMarked ? 'semibold' : 'regular' } as const;
    return {
      wanted,
      height: blockHeight(medium, 'small', Math.max(1, lines.length)),
      draw: (y) => [
        ...leader(columns.edge, wanted, columns.edge + 6 * unit, y, unit),
        ...(figure === null ? [] : textBlock(columns.figures, y, [figure], medium, { ...style, anchor: 'end' })),
        ...textBlock(columns.names, y, lines, medium, style),
      ],
    };
  };
  const { ring, clearance } = placed;
  const ringName = ring.piece === null ? 'snap ring' : nameOf(ring.piece);
  const ringFigure = ring.piece === null ? null : write(ring.piece.height_nm);
  const plates = [...placed.plates].reverse();
  return [
    label((ring.top + ring.bottom) / 2, ringFigure, ringName, ring.piece?.change === 'enters'),
    ...(clearance === null
      ? []
      : [
          label(
            (clearance.top + clearance.bottom) / 2,
            write(clearance.clearance_nm),
            options.clearanceLabel ?? 'clearance',
            true,
          ),
        ]),
    ...plates.map(({ piece, top, bottom }) =>
      label((top + bottom) / 2, write(piece.height_nm), nameOf(piece), piece.change === 'enters'),
    ),
  ];
}

function nameOf(piece: { readonly label: string; readonly tag?: string }): string {
  return piece.tag === undefined ? piece.label : `${piece.label} ${piece.tag}`;
}

function stackSentence(stack: Stack, name: string, write: (length_nm: number) => string): string {
  const pieces = stack.pieces.map((piece) => `${nameOf(piece)} ${write(piece.height_nm)}`).join(', ');
  const clearance = stack.clearance_nm === null ? '' : ` Clearance ${write(stack.clearance_nm)}.`;
  return `${name === '' ? 'Pack' : name} to scale, from the piston up: ${pieces}.${clearance}`;
}
