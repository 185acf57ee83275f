// Every block of a paper as strips.
import { assertNever } from '../../app/base/assert.ts';
import type { Chart } from '../../app/charts/shapes.ts';
import { type Block, type Closing, type Picture, textLines, type Words } from '../../app/papers/paper.ts';
import { markedPictureStrips } from './marked-picture-strips.ts';
import { paintChart } from './paint-chart.ts';
import { addElement, drawArtifact, drawRule, type Element, type Sheet } from './sheet.ts';
import { type Flowing, type Strip, stackStrips } from './strip.ts';
import { paintVerdict, tableStrips } from './table-strips.ts';
import {
  baselineIn,
  breakLines,
  type Line,
  lineWidth,
  placeLine,
  placeLines,
  type SizeName,
  toRuns,
} from './write-text.ts';

/** The block as strips of `width`, from top to bottom. */
export function blockStrips(sheet: Sheet, block: Block, width: number): readonly Flowing[] {
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
    case 'charts':
      return [chartsStrip(sheet, block.charts)];
    case 'pictures':
      return pictureStrips(sheet, block.pictures, width);
    case 'marked pictures':
      return markedPictureStrips(sheet, block.pictures, width);
    case 'together':
      return [togetherStrip(sheet, block, width)];
    case 'closing':
      return [(room) => closingStrips(sheet, block, width, room)];
    default:
      return assertNever(block);
  }
}

type BlockOf<Kind extends Block['kind']> = Extract<Block, { kind: Kind }>;

function mastheadStrip(sheet: Sheet, { title, by, right }: BlockOf<'masthead'>, width: number): Strip {
  const rightLines = right.map((words) => toRuns(words));
  const rightWidth = Math.max(...rightLines.map((line) => lineWidth(sheet, line, textLines.body.size)));
  const titleLines = breakLines(
    sheet,
    toRuns([{ text: title, strong: true }]),
    textLines.read.size,
    width - rightWidth - 24,
  );
  const byLines = breakLines(sheet, toRuns(by), textLines.body.size, width - rightWidth - 24);
  const height = titleLines.length * textLines.read.line + byLines.length * textLines.body.line + 6;
  return {
    before: 0,
    height,
    paint: (x, y) => {
      addText(sheet, 'H1', titleLines, x, y, 'read');
      addText(sheet, 'P', byLines, x, y + titleLines.length * textLines.read.line, 'body');
      const top = y + height - 6 - rightLines.length * textLines.body.line;
      addText(sheet, 'P', rightLines, x + width, top, 'body', 'end');
      drawRule(sheet, x, y + height, width, 'heavy');
    },
  };
}

/** Side by side as wide as they need; where they need more than there is, the long ones share what is left and wrap. */
function factsStrip(sheet: Sheet, { facts }: BlockOf<'facts'>, width: number): Strip {
  const natural = facts.map(({ name, value }) =>
    Math.max(
      lineWidth(sheet, toRuns([{ text: name }]), textLines.small.size),
      lineWidth(sheet, toRuns([{ text: value }]), textLines.body.size),
    ),
  );
  const gaps = facts.length - 1;
  const widths = shareWidth(natural, width - 16 * gaps);
  const gap = (width - widths.reduce((sum, each) => sum + each, 0)) / Math.max(1, gaps);
  const laid = facts.map(({ name, value }, index) => ({
    name: toRuns([{ text: name, quiet: true }]),
    lines: breakLines(sheet, toRuns([{ text: value }]), textLines.body.size, widths[index]! + 0.01),
  }));
  const lineCount = Math.max(...laid.map((each) => each.lines.length));
  const height = 6 + textLines.small.line + lineCount * textLines.body.line + 6;
  return {
    before: 0,
    height,
    paint: (x, y) => {
      let at = x;
      for (const [index, { name, lines }] of laid.entries()) {
        const element = addElement(sheet, sheet.root, 'P');
        element.add(() => placeLine(sheet, name, at, y + 6 + baselineIn('small'), textLines.small.size));
        element.add(() => placeLines(sheet, lines, at, y + 6 + textLines.small.line, 'body'));
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
  const lines = breakLines(sheet, toRuns([{ text: sentence, strong: true }]), textLines.say.size, width - indent);
  const lastWidth = indent + lineWidth(sheet, lines[lines.length - 1]!, textLines.say.size) + 9;
  const asideLine = toRuns([{ text: aside, quiet: true }]);
  const isBeside = lineWidth(sheet, asideLine, textLines.small.size) <= width - lastWidth;
  const under = isBeside || aside === '' ? [] : breakLines(sheet, asideLine, textLines.small.size, width - indent);
  const textHeight = lines.length * textLines.say.line;
  return {
    before: 9,
    height: textHeight + under.length * textLines.small.line,
    paint: (x, y) => {
      drawArtifact(sheet, () => paintVerdict(sheet, verdict, x, y + (textLines.say.line - mark) / 2, mark));
      addText(sheet, 'P', lines, x + indent, y, 'say');
      if (aside === '') return;
      const baseline = y + textHeight - textLines.say.line + baselineIn('say');
      if (isBeside) {
        addElement(sheet, sheet.root, 'P').add(() =>
          placeLine(sheet, asideLine, x + lastWidth, baseline, textLines.small.size),
        );
      } else addText(sheet, 'P', under, x + indent, y + textHeight, 'small');
    },
  };
}

function headingStrip(sheet: Sheet, { text }: BlockOf<'heading'>, width: number): Strip {
  const lines = breakLines(sheet, toRuns([{ text, strong: true }]), textLines.say.size, width);
  return {
    before: 16,
    height: lines.length * textLines.say.line + 4,
    keepsWithNext: true,
    paint: (x, y) => addText(sheet, 'H2', lines, x, y, 'say'),
  };
}

/** One strip a line, so that a long paragraph may go on over the page; a short one stays whole. */
function textStrips(sheet: Sheet, words: readonly Words[], width: number, name: 'small' | 'body'): readonly Strip[] {
  const lines = breakLines(sheet, toRuns(words), textLines[name].size, width);
  let element: Element | undefined;
  return lines.map((line, index) => ({
    before: index === 0 ? 5 : 0,
    height: textLines[name].line,
    keepsWithNext: index < lines.length - 1 && (lines.length <= 4 || index === 0 || index === lines.length - 2),
    paint: (x, y) => {
      element ??= addElement(sheet, sheet.root, 'P');
      element.add(() => placeLine(sheet, line, x, y + baselineIn(name), textLines[name].size));
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
        drawArtifact(sheet, () => sheet.document.circle(x + dot, y + textLines.body.line / 2, dot / 2).fill('#000000'));
      }
      strip.paint(x + indent, y);
    },
  }));
}

function chartStrip(sheet: Sheet, chart: Chart): Strip {
  return { before: 6, height: chart.height, paint: (x, y) => addFigure(sheet, chart, x, y) };
}

function chartsStrip(sheet: Sheet, charts: readonly Chart[]): Strip {
  return {
    before: 10,
    height: Math.max(0, ...charts.map((chart) => chart.height)),
    paint: (x, y) => {
      let at = x;
      for (const chart of charts) {
        addFigure(sheet, chart, at, y);
        at += chart.width;
      }
    },
  };
}

const pictureGap = 12;
const tallestPicture = 200;

/** Two in a row, as large as half the width and 200 points of height allow. */
function pictureStrips(sheet: Sheet, pictures: readonly Picture[], width: number): readonly Strip[] {
  const room = (width - pictureGap) / 2;
  const laid = pictures.map((picture) => {
    const scale = Math.min(room / picture.width, tallestPicture / picture.height);
    const caption = breakLines(sheet, toRuns([{ text: picture.caption, quiet: true }]), textLines.small.size, room);
    return { picture, width: scale * picture.width, height: scale * picture.height, caption };
  });
  const rows = Array.from({ length: Math.ceil(laid.length / 2) }, (_, row) => laid.slice(2 * row, 2 * row + 2));
  return rows.map((row) => ({
    before: 8,
    height: Math.max(...row.map((each) => each.height + 3 + each.caption.length * textLines.small.line)),
    paint: (x, y) => {
      for (const [index, each] of row.entries()) {
        const left = x + index * (room + pictureGap);
        const alt = each.picture.caption || 'Photo without a caption';
        const figure = addElement(sheet, sheet.root, 'Figure', { alt });
        figure.add(() => {
          const bytes = Buffer.from(each.picture.jpegBase64, 'base64');
          sheet.document.image(bytes, left, y, { width: each.width, height: each.height });
        });
        addText(sheet, 'P', each.caption, left, y + each.height + 3, 'small');
      }
    },
  }));
}

/** The tallest version that leaves room for the signatures; where none does, the signatures and then the charts overleaf. */
function closingStrips(sheet: Sheet, block: Closing, width: number, room: number): readonly Strip[] {
  const signatures = signaturesStrip(sheet, block.signatures, width);
  const needed = (strip: Strip) => strip.before + strip.height;
  const tallest = block.versions[0] ?? [];
  if (tallest.length === 0) {
    return [...block.notes.flatMap((words) => textStrips(sheet, words, width, 'small')), signatures];
  }
  for (const charts of block.versions) {
    const { figures, notesAfter } = withNotes(sheet, charts, block.notes, width);
    if (needed(figures) + needed(signatures) <= room) return [figures, signatures, ...notesAfter];
  }
  const { figures, notesAfter } = withNotes(sheet, tallest, block.notes, width);
  const overleaf = { ...figures, startsPage: true };
  // Nobody signs an empty page: where not even the signatures fit, they follow the charts.
  if (needed(signatures) > room) return [overleaf, { ...signatures, atFoot: false }, ...notesAfter];
  return [signatures, overleaf, ...notesAfter];
}

/** The charts with as many notes beside them as their height holds; the others follow across the page. */
function withNotes(sheet: Sheet, charts: readonly Chart[], notes: Closing['notes'], width: number) {
  const gap = 12;
  const drawn = chartsStrip(sheet, charts);
  const chartsWidth = charts.reduce((sum, chart) => sum + chart.width, 0);
  const laid = notes.map((words) => textStrips(sheet, words, width - chartsWidth - gap, 'small'));
  let fitting = 0;
  while (fitting < laid.length && stackStrips(laid.slice(0, fitting + 1).flat()).height <= drawn.height) fitting += 1;
  const column = stackStrips(laid.slice(0, fitting).flat());
  const figures: Strip = {
    ...drawn,
    paint: (x, y) => {
      drawn.paint(x, y);
      column.paint(x + chartsWidth + gap, y);
    },
  };
  return { figures, notesAfter: notes.slice(fitting).flatMap((words) => textStrips(sheet, words, width, 'small')) };
}

function togetherStrip(sheet: Sheet, { left, blocks }: BlockOf<'together'>, width: number): Strip {
  const indent = left?.width ?? 0;
  const strips = blocks.flatMap((block) => blockStrips(sheet, block, width - indent));
  const column = stackStrips(strips.filter((strip) => typeof strip !== 'function'));
  return {
    before: 6,
    height: Math.max(left?.chart.height ?? 0, column.height),
    keepsWithNext: true,
    paint: (x, y) => {
      if (left !== null) addFigure(sheet, left.chart, x, y);
      column.paint(x + indent, y);
    },
  };
}

function signaturesStrip(sheet: Sheet, lines: readonly string[], width: number): Strip {
  const gap = 30;
  const each = (width - gap * (lines.length - 1)) / lines.length;
  const laid = lines.map((line) =>
    breakLines(sheet, toRuns([{ text: line, quiet: true }]), textLines.small.size, each),
  );
  const room = 26;
  return {
    before: 8,
    height: room + 3 + Math.max(...laid.map((one) => one.length)) * textLines.small.line,
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
