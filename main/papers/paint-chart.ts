// Paints a chart's list of shapes into a PDF: black on white, kinds told apart by their hatch.
import {
  type Chart,
  type Hatch,
  hatches,
  hatchScale,
  type PaintRole,
  type Rect,
  type Shape,
  textSizes,
} from '../../app/charts/shapes.ts';
import { textBox } from '../../app/charts/text-box.ts';
import type { Face, Sheet } from './sheet.ts';
import { colors, placeLine } from './write-text.ts';

const black = colors.ink;
const white = '#ffffff';
const paints: Record<PaintRole, string> = {
  ink: black,
  quiet: colors.quiet,
  line: colors.line,
  mark: colors.mark,
  act: black,
  in: black,
  out: black,
  close: black,
  steel: white,
  friction: white,
  metal: white,
  ground: white,
  face: white,
  well: white,
};

/** The chart with its upper left corner at `x`, `y`, one unit a point. */
export function paintChart(sheet: Sheet, chart: Chart, x: number, y: number): void {
  const { document } = sheet;
  document.save().translate(x, y);
  for (const shape of chart.shapes) paintShape(sheet, chart, shape);
  document.restore();
}

function paintShape(sheet: Sheet, chart: Chart, shape: Shape): void {
  if (shape.kind === 'text') {
    const face: Face = shape.typeface === 'mono' ? 'mono' : shape.weight;
    const run = { text: shape.text, face, color: paints[shape.role] };
    if (shape.halo !== undefined) {
      // White under the figures only: a stroke round the letters would be a second text to whoever copies it.
      const { left, right } = textBox(shape, chart.medium);
      const height = 0.72 * textSizes[chart.medium][shape.size];
      sheet.document.rect(left, shape.y - height, right - left, height).fill(white);
    }
    placeLine(sheet, [run], shape.x, shape.y, textSizes[chart.medium][shape.size], shape.anchor);
    return;
  }
  const { document } = sheet;
  document.save();
  if (shape.fill !== undefined) outline(document, shape).fill(paints[shape.fill], 'even-odd');
  if (shape.kind === 'rect' && shape.hatch !== undefined)
    paintHatch(document, shape, shape.hatch, hatchScale[chart.medium]);
  if (shape.stroke !== undefined) {
    document.lineWidth(shape.strokeWidth ?? 1);
    if (shape.dash !== undefined) document.dash(shape.dash as unknown as number, {});
    outline(document, shape).stroke(paints[shape.stroke]);
  }
  document.restore();
}

function outline(document: PDFKit.PDFDocument, shape: Exclude<Shape, { kind: 'text' }>): PDFKit.PDFDocument {
  switch (shape.kind) {
    case 'line':
      return document.moveTo(shape.x1, shape.y1).lineTo(shape.x2, shape.y2);
    case 'path':
      return document.path(shape.outline);
    case 'rect':
      return document.rect(shape.x, shape.y, shape.width, shape.height);
    case 'circle':
      return document.circle(shape.x, shape.y, shape.radius);
  }
}

/** Drawn as strokes clipped to the shape: a printer keeps them sharp, and no viewer shows the seams of a tile. */
function paintHatch(document: PDFKit.PDFDocument, shape: Rect, hatch: Hatch, scale: number): void {
  const { kind, angle, role } = hatches[hatch];
  const spacing = hatches[hatch].spacing * scale;
  document.save();
  outline(document, shape).clip();
  document.lineWidth(hatches[hatch].thickness * scale);
  if (kind === 'dots') dotRows(document, shape, spacing);
  else slantedLines(document, shape, spacing, angle > 0 ? 1 : -1);
  document.stroke(paints[role]).restore();
}

/** Lines on which x ± y is constant, a whole number of spacings apart from the chart's corner. */
function slantedLines(
  document: PDFKit.PDFDocument,
  { x, y, width, height }: Rect,
  spacing: number,
  lean: 1 | -1,
): void {
  const step = spacing * Math.SQRT2;
  const ends = [x + lean * y, x + lean * (y + height), x + width + lean * y, x + width + lean * (y + height)];
  const [least, most] = [Math.min(...ends), Math.max(...ends)];
  for (let at = Math.ceil(least / step) * step; at < most; at += step) {
    document.moveTo(at - lean * y, y).lineTo(at - lean * (y + height), y + height);
  }
}

/** Staggered rows of dots: a dashed line with round ends and dashes too short to see. */
function dotRows(document: PDFKit.PDFDocument, { x, y, width, height }: Rect, spacing: number): void {
  const dot = 0.01;
  document.lineCap('round').dash([dot, 2 * spacing - dot] as unknown as number, {});
  const first = Math.floor(y / spacing);
  for (let row = first; (row + 0.5) * spacing < y + height + spacing; row += 1) {
    const from = Math.floor(x / (2 * spacing)) * 2 * spacing + (row % 2 === 0 ? 0.5 : 1.5) * spacing;
    document.moveTo(from, (row + 0.5) * spacing).lineTo(x + width + spacing, (row + 0.5) * spacing);
  }
}
