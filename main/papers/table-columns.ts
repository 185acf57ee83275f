// How wide each column of a table is, and where its decimal marks line up.
import { verdictRole } from '../../app/charts/verdict-mark.ts';
import { type Cell, type Column, type Table, textLines } from '../../app/papers/paper.ts';
import type { Sheet } from './sheet.ts';
import { type Line, lineWidth, toRuns } from './write-text.ts';

const gap = 8;
/** Words get at least this much room to wrap in. */
const leastRest = 96;
export const verdictMarkSize = 8.5;
export const verdictGap = 5;

/** A column in its place; `after` is the room its decimals take behind the mark. */
export type PlacedColumn = Column & { readonly x: number; readonly room: number; readonly after: number };

/** A figure cut before its decimal mark; a whole one has nothing after. */
export function cutAtMark(line: Line): { readonly before: Line; readonly after: Line } {
  const run = line[0];
  const at = run?.text.search(/[.,]\d/) ?? -1;
  if (run === undefined || at < 0) return { before: line, after: [] };
  return { before: [{ ...run, text: run.text.slice(0, at) }], after: [{ ...run, text: run.text.slice(at) }] };
}

export function placeColumns(sheet: Sheet, { columns, rows }: Table, width: number): readonly PlacedColumn[] {
  const cellsOf = (index: number) => rows.flatMap((row) => (row.kind === 'row' ? [row.cells[index]!] : []));
  const natural = columns.map((column, index) => naturalWidth(sheet, column, cellsOf(index)));
  const gaps = gap * (columns.length - 1);
  const rests = columns.filter((column) => column.width === 'rest').length;
  const fixed = natural.reduce((sum, each, index) => sum + (columns[index]!.width === 'rest' ? 0 : each.whole), gaps);
  const overflow = Math.max(0, fixed + rests * leastRest - width);
  const rest = rests === 0 ? 0 : Math.max(leastRest, (width - fixed) / rests);
  // A column of words gives up what the table is too wide by; its words wrap.
  const widest = natural.reduce((best, each, index) => {
    const mayShrink = columns[index]!.width === 'content' && columns[index]!.align === 'start';
    return mayShrink && (best < 0 || each.whole > natural[best]!.whole) ? index : best;
  }, -1);
  let x = 0;
  return columns.map((column, index) => {
    const own = column.width === 'rest' ? rest : natural[index]!.whole;
    const room = index === widest ? Math.max(Math.min(own, 40), own - overflow) : own;
    const placed = { ...column, x, room, after: natural[index]!.after };
    x += room + gap;
    return placed;
  });
}

function naturalWidth(sheet: Sheet, column: Column, cells: readonly Cell[]): { whole: number; after: number } {
  const heading =
    typeof column.heading === 'string'
      ? lineWidth(sheet, toRuns([{ text: column.heading }]), textLines.small.size)
      : column.heading.width;
  const size = textLines.body.size;
  let [before, after] = [0, 0];
  for (const cell of cells) {
    if (cell.kind === 'chart') before = Math.max(before, cell.chart.width);
    else {
      const line = lineOf(cell);
      const cut = column.align === 'decimal' ? cutAtMark(line) : { before: line, after: [] };
      const markRoom = cell.kind === 'verdict' ? verdictMarkSize + verdictGap : 0;
      before = Math.max(before, markRoom + lineWidth(sheet, cut.before, size));
      after = Math.max(after, lineWidth(sheet, cut.after, size));
    }
  }
  return { whole: typeof column.width === 'number' ? column.width : Math.max(heading, before + after), after };
}

/** The words of a cell in one line. */
export function lineOf(cell: Exclude<Cell, { kind: 'chart' }>): Line {
  return toRuns(
    cell.kind === 'verdict' ? [{ text: cell.text, strong: verdictRole(cell.verdict) !== 'quiet' }] : cell.words,
  );
}
