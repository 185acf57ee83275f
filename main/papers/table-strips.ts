// A table as strips, one a row; its headings are painted again on every page it goes on to.
import { verdictShapes } from '../../app/charts/verdict-mark.ts';
import { type Cell, type Row, type Table, textLines } from '../../app/papers/paper.ts';
import { paintChart } from './paint-chart.ts';
import { addElement, drawArtifact, drawRule, type Element, type Sheet, strokeRule } from './sheet.ts';
import type { Strip } from './strip.ts';
import { cutAtMark, lineOf, type PlacedColumn, placeColumns, verdictGap, verdictMarkSize } from './table-columns.ts';
import { baselineIn, breakLines, type Line, lineWidth, placeLine, placeLines, toRuns } from './write-text.ts';

const rowPadding = 2.4;
const headingRowHeight = textLines.small.line + 4;
const groupRowHeight = textLines.body.line + 2 * rowPadding + 3;

/** Every part of the structure comes into being when it is first painted, so that it stands in reading order. */
type TableOnSheet = {
  readonly sheet: Sheet;
  readonly columns: readonly PlacedColumn[];
  readonly width: number;
  readonly element: () => Element;
};

/** The table's headings and rows, as wide as `width`. */
export function tableStrips(sheet: Sheet, table: Table, width: number): readonly Strip[] {
  let element: Element | undefined;
  const on: TableOnSheet = {
    sheet,
    columns: placeColumns(sheet, table, width),
    width,
    element: () => {
      element ??= addElement(sheet, sheet.root, 'Table');
      return element;
    },
  };
  const headings = {
    height: headingRowHeight,
    paint: (x: number, y: number) => drawArtifact(sheet, () => placeHeadings(on, x, y, (draw) => draw())),
  };
  return [headingStrip(on), ...table.rows.map((row) => ({ ...rowStrip(on, row), headings }))];
}

function headingStrip(on: TableOnSheet): Strip {
  const { sheet, element } = on;
  return {
    before: 8,
    height: headingRowHeight,
    keepsWithNext: true,
    paint: (x, y) => {
      const row = addElement(sheet, element(), 'TR');
      placeHeadings(on, x, y, (draw) => addElement(sheet, row, 'TH', { scope: 'Column' }).add(draw));
    },
  };
}

function placeHeadings(on: TableOnSheet, x: number, y: number, inElement: (draw: () => void) => void): void {
  const { sheet, columns, width } = on;
  const { size } = textLines.small;
  for (const column of columns) {
    const { heading } = column;
    const left = x + column.x;
    if (typeof heading !== 'string') {
      inElement(() => paintChart(sheet, heading, left, y));
      continue;
    }
    if (heading === '') continue;
    const line = toRuns([{ text: heading, quiet: true }]);
    const isStart = column.align === 'start';
    inElement(() =>
      placeLine(
        sheet,
        line,
        isStart ? left : left + column.room,
        y + baselineIn('small'),
        size,
        isStart ? 'start' : 'end',
      ),
    );
  }
  strokeRule(sheet, x, y + headingRowHeight, width, 'plain');
}

function rowStrip(on: TableOnSheet, row: Row): Strip {
  return row.kind === 'group' ? groupStrip(on, row.text) : cellsStrip(on, row);
}

function groupStrip({ sheet, width, element }: TableOnSheet, text: string): Strip {
  const lines = breakLines(sheet, toRuns([{ text, strong: true }]), textLines.body.size, width);
  const height = groupRowHeight + (lines.length - 1) * textLines.body.line;
  return {
    before: 0,
    height,
    keepsWithNext: true,
    paint: (x, y) => {
      const cell = addElement(sheet, addElement(sheet, element(), 'TR'), 'TH', { scope: 'Row' });
      cell.add(() => placeLines(sheet, lines, x, y + rowPadding + 3, 'body'));
      drawRule(sheet, x, y + height, width, 'plain');
    },
  };
}

function cellsStrip({ sheet, columns, width, element }: TableOnSheet, row: Row & { kind: 'row' }): Strip {
  const cells = row.cells.map((cell, index) => layCell(sheet, cell, columns[index]!));
  const note =
    row.note === undefined
      ? []
      : breakLines(sheet, toRuns([{ text: row.note, quiet: true }]), textLines.small.size, width);
  const upper = Math.max(...cells.map((cell) => cell.height)) + 2 * rowPadding;
  const noteHeight = note.length === 0 ? 0 : note.length * textLines.small.line;
  return {
    before: 0,
    height: upper + noteHeight,
    paint: (x, y) => {
      const rowElement = addElement(sheet, element(), 'TR');
      for (const [index, cell] of cells.entries()) {
        const [type, options] = index === 0 ? (['TH', { scope: 'Row' }] as const) : (['TD', {}] as const);
        cell.paint(x + columns[index]!.x, y + rowPadding, () => addElement(sheet, rowElement, type, options));
      }
      if (note.length > 0) {
        addElement(sheet, rowElement, 'TD').add(() => placeLines(sheet, note, x, y + upper - rowPadding - 1, 'small'));
      }
      drawRule(sheet, x, y + upper + noteHeight, width, 'fine');
    },
  };
}

type LaidCell = { readonly height: number; readonly paint: (x: number, y: number, element: () => Element) => void };

function layCell(sheet: Sheet, cell: Cell, column: PlacedColumn): LaidCell {
  if (cell.kind === 'chart') {
    const { chart } = cell;
    // The band says nothing that the row's figures do not: a screen reader passes over it.
    const lift = (textLines.body.line - chart.height) / 2;
    return {
      height: textLines.body.line,
      paint: (x, y) => drawArtifact(sheet, () => paintChart(sheet, chart, x, y + lift)),
    };
  }
  const line = lineOf(cell);
  if (column.align === 'decimal') return decimalCell(sheet, line, column);
  const indent = cell.kind === 'verdict' ? verdictMarkSize + verdictGap : 0;
  const lines = breakLines(sheet, line, textLines.body.size, column.room - indent);
  return {
    height: lines.length * textLines.body.line,
    paint: (x, y, element) => {
      if (cell.kind === 'verdict') {
        const top = y + (textLines.body.line - verdictMarkSize) / 2;
        drawArtifact(sheet, () => paintVerdict(sheet, cell.verdict, x, top, verdictMarkSize));
      }
      if (line.every((run) => run.text === '')) return;
      const at = column.align === 'end' ? x + column.room : x + indent;
      element().add(() => placeLines(sheet, lines, at, y, 'body', column.align === 'end' ? 'end' : 'start'));
    },
  };
}

function decimalCell(sheet: Sheet, line: Line, column: PlacedColumn): LaidCell {
  const { before } = cutAtMark(line);
  const { size } = textLines.body;
  return {
    height: textLines.body.line,
    paint: (x, y, element) => {
      if (line.every((run) => run.text === '')) return;
      const at = x + column.room - column.after - lineWidth(sheet, before, size);
      element().add(() => placeLine(sheet, line, at, y + baselineIn('body'), size));
    },
  };
}

/** The shape of a verdict on paper. */
export function paintVerdict(
  sheet: Sheet,
  verdict: Parameters<typeof verdictShapes>[0],
  x: number,
  y: number,
  size: number,
): void {
  paintChart(
    sheet,
    { medium: 'paper', width: size, height: size, title: '', shapes: verdictShapes(verdict, 0, 0, size) },
    x,
    y,
  );
}
