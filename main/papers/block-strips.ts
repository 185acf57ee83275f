// Every block of a paper as strips.
import { assertNever } from '../../app/base/assert.ts';
import type { Chart } from '../../app/charts/shapes.ts';
import type { Block, Words } from '../../app/papers/paper.ts';
import { paintChart } from './paint-chart.ts';
import { addElement, drawArtifact, drawRule, type Element, type Sheet } from './sheet.ts';
import { type Strip, stackStrips } from './strip.ts';
import { paintVerdict, tableStrips } from './table-strips.ts';
import {
  baselineIn,
  breakLines,
  type Line,
  lineWidth,
  placeLine,
  placeLines,
  type SizeName,
  sizes,
  toRuns,
} from './write-text.ts';

/** The block as strips of `width`, from top to bottom. */
export function blockStrips(sheet: Sheet, block: Block, width: number): readonly Strip[] {
  switch (block.kind) {
    case 'masthead':
      return [mastheadStrip(sheet, block, width)];
    case 'facts':
      return [factsStrip(sheet, block, width)];
    case 'verdict':
      return [verdictStrip(sheet, block, width)];
    case 'heading':
      return [headingStrip(sheet, block, width)];
    case 'paragraph':
      return textStrips(sheet, block.words, width, block.small === true ? 'small' : 'body');
    case 'list':
      return block.items.flatMap((item) => itemStrips(sheet, item, width));
    case 'table':
      return tableStrips(sheet, block, width);
    case 'chart':
      return [chartStrip(sheet, block.chart)];
    case 'figures':
      return [figuresStrip(sheet, block, width)];
    case 'beside':
      return [besideStrip(sheet, block, width)];
    case 'signatures':
      return [signaturesStrip(sheet, block, width)];
    default:
      return assertNever(block);
  }
}

type BlockOf<Kind extends Block['kind']> = Extract<Block, { kind: Kind }>;

function mastheadStrip(sheet: Sheet, { title, by, right }: BlockOf<'masthead'>, width: number): Strip {
  const rightLines = right.map((words) => toRuns(words));
  const rightWidth = Math.max(...rightLines.map((line) => lineWidth(sheet, line, sizes.body.size)));
  const titleLines = breakLines(
    sheet,
    toRuns([{ text: title, strong: true }]),
    sizes.read.size,
    width - rightWidth - 24,
  );
  const byLines = breakLines(sheet, toRuns(by), sizes.body.size, width - rightWidth - 24);
  const height = titleLines.length * sizes.read.line + byLines.length * sizes.body.line + 6;
  return {
    before: 0,
    height,
    paint: (x, y) => {
      addText(sheet, 'H1', titleLines, x, y, 'read');
      addText(sheet, 'P', byLines, x, y + titleLines.length * sizes.read.line, 'body');
      const top = y + height - 6 - rightLines.length * sizes.body.line;
      addText(sheet, 'P', rightLines, x + width, top, 'body', 'end');
      drawRule(sheet, x, y + height, width, 'heavy');
    },
  };
}

/** Side by side as wide as they need; where they need more than there is, the long ones share what is left and wrap. */
function factsStrip(sheet: Sheet, { facts }: BlockOf<'facts'>, width: number): Strip {
  const natural = facts.map(({ name, value }) =>
    Math.max(
      lineWidth(sheet, toRuns([{ text: name }]), sizes.small.size),
      lineWidth(sheet, toRuns([{ text: value }]), sizes.body.size),
    ),
  );
  const gaps = facts.length - 1;
  const widths = shareWidth(natural, width - 16 * gaps);
  const gap = (width - widths.reduce((sum, each) => sum + each, 0)) / Math.max(1, gaps);
  const laid = facts.map(({ name, value }, index) => ({
    name: toRuns([{ text: name, quiet: true }]),
    lines: breakLines(sheet, toRuns([{ text: value }]), sizes.body.size, widths[index]! + 0.01),
  }));
  const lineCount = Math.max(...laid.map((each) => each.lines.length));
  const height = 6 + sizes.small.line + lineCount * sizes.body.line + 6;
  return {
    before: 0,
    height,
    paint: (x, y) => {
      let at = x;
      for (const [index, { name, lines }] of laid.entries()) {
        const element = addElement(sheet, sheet.root, 'P');
        element.add(() => placeLine(sheet, name, at, y + 6 + baselineIn('small'), sizes.small.size));
        element.add(() => placeLines(sheet, lines, at, y + 6 + sizes.small.line, 'body'));
        at += widths[index]! + gap;
      }
      drawRule(sheet, x, y + height, width, 'fine');
    },
  };
}

/** Each its natural width as long as all fit; else those over the fair share get an equal part of what the others leave. */
function shareWidth(natural: readonly number[], width: number): readonly number[] {
  const rising = [...natural].sort((a, b) => a - b);
  let left = width;
  for (const [index, each] of rising.entries()) {
    const fair = left / (rising.length - index);
    if (each > fair) return natural.map((own) => Math.min(own, fair));
    left -= each;
  }
  return natural;
}

function verdictStrip(sheet: Sheet, { verdict, sentence, aside }: BlockOf<'verdict'>, width: number): Strip {
  const mark = 16;
  const indent = mark + 9;
  const lines = breakLines(sheet, toRuns([{ text: sentence, strong: true }]), sizes.say.size, width - indent);
  const lastWidth = indent + lineWidth(sheet, lines[lines.length - 1]!, sizes.say.size) + 9;
  const asideLine = toRuns([{ text: aside, quiet: true }]);
  const isBeside = lineWidth(sheet, asideLine, sizes.small.size) <= width - lastWidth;
  const under = isBeside || aside === '' ? [] : breakLines(sheet, asideLine, sizes.small.size, width - indent);
  const textHeight = lines.length * sizes.say.line;
  return {
    before: 9,
    height: textHeight + under.length * sizes.small.line,
    paint: (x, y) => {
      drawArtifact(sheet, () => paintVerdict(sheet, verdict, x, y + (sizes.say.line - mark) / 2, mark));
      addText(sheet, 'P', lines, x + indent, y, 'say');
      if (aside === '') return;
      const baseline = y + textHeight - sizes.say.line + baselineIn('say');
      if (isBeside) {
        addElement(sheet, sheet.root, 'P').add(() =>
          placeLine(sheet, asideLine, x + lastWidth, baseline, sizes.small.size),
        );
      } else addText(sheet, 'P', under, x + indent, y + textHeight, 'small');
    },
  };
}

function headingStrip(sheet: Sheet, { text, startsPage }: BlockOf<'heading'>, width: number): Strip {
  const lines = breakLines(sheet, toRuns([{ text, strong: true }]), sizes.say.size, width);
  return {
    before: 16,
    height: lines.length * sizes.say.line + 4,
    keepsWithNext: true,
    ...(startsPage === true ? { startsPage } : {}),
    paint: (x, y) => addText(sheet, 'H2', lines, x, y, 'say'),
  };
}

/** One strip a line, so that a long paragraph may go on over the page. */
function textStrips(sheet: Sheet, words: readonly Words[], width: number, name: 'small' | 'body'): readonly Strip[] {
  const lines = breakLines(sheet, toRuns(words), sizes[name].size, width);
  let element: Element | undefined;
  return lines.map((line, index) => ({
    before: index === 0 ? 5 : 0,
    height: sizes[name].line,
    paint: (x, y) => {
      element ??= addElement(sheet, sheet.root, 'P');
      element.add(() => placeLine(sheet, line, x, y + baselineIn(name), sizes[name].size));
    },
  }));
}

function itemStrips(sheet: Sheet, item: string, width: number): readonly Strip[] {
  const indent = 10;
  const dot = 2.5;
  return textStrips(sheet, [{ text: item }], width - indent, 'body').map((strip, index) => ({
    ...strip,
    before: index === 0 ? 3 : 0,
    paint: (x, y) => {
      if (index === 0) {
        drawArtifact(sheet, () => sheet.document.circle(x + dot, y + sizes.body.line / 2, dot / 2).fill('#000000'));
      }
      strip.paint(x + indent, y);
    },
  }));
}

function chartStrip(sheet: Sheet, chart: Chart): Strip {
  return { before: 6, height: chart.height, paint: (x, y) => addFigure(sheet, chart, x, y) };
}

/** Charts share what the notes leave; both begin at the same height. */
function figuresStrip(sheet: Sheet, { charts, notes }: BlockOf<'figures'>, width: number): Strip {
  const gap = 14;
  const chartsWidth = charts.reduce((sum, chart) => sum + chart.width, 0);
  const notesWidth = width - chartsWidth - gap;
  const strips = notes.flatMap((words) => textStrips(sheet, words, notesWidth, 'small'));
  const column = stackStrips(strips);
  return {
    before: 10,
    height: Math.max(column.height, ...charts.map((chart) => chart.height)),
    paint: (x, y) => {
      let at = x;
      for (const chart of charts) {
        addFigure(sheet, chart, at, y);
        at += chart.width;
      }
      column.paint(at + gap, y);
    },
  };
}

function besideStrip(sheet: Sheet, { chart, width: left, blocks }: BlockOf<'beside'>, width: number): Strip {
  const column = stackStrips(blocks.flatMap((block) => blockStrips(sheet, block, width - left)));
  return {
    before: 6,
    height: Math.max(chart.height, column.height),
    paint: (x, y) => {
      addFigure(sheet, chart, x, y);
      column.paint(x + left, y);
    },
  };
}

function signaturesStrip(sheet: Sheet, { lines }: BlockOf<'signatures'>, width: number): Strip {
  const gap = 30;
  const each = (width - gap * (lines.length - 1)) / lines.length;
  const laid = lines.map((line) => breakLines(sheet, toRuns([{ text: line, quiet: true }]), sizes.small.size, each));
  const room = 26;
  return {
    before: 8,
    height: room + 3 + Math.max(...laid.map((one) => one.length)) * sizes.small.line,
    atFoot: true,
    paint: (x, y) => {
      for (const [index, one] of laid.entries()) {
        const at = x + index * (each + gap);
        drawRule(sheet, at, y + room, each, 'plain');
        addText(sheet, 'P', one, at, y + room + 3, 'small');
      }
    },
  };
}

function addFigure(sheet: Sheet, chart: Chart, x: number, y: number): void {
  const element = addElement(sheet, sheet.root, 'Figure', { alt: chart.title });
  element.add(() => paintChart(sheet, chart, x, y));
}

function addText(
  sheet: Sheet,
  type: 'H1' | 'H2' | 'P',
  lines: readonly Line[],
  x: number,
  y: number,
  name: SizeName,
  align: 'start' | 'end' = 'start',
): void {
  addElement(sheet, sheet.root, type).add(() => placeLines(sheet, lines, x, y, name, align));
}
