// Paints any paper as a PDF: strips down the pages, then the page line at the foot of each.
import { margins, type Paper, paperSizes, textLines } from '../../app/papers/paper.ts';
import { blockStrips } from './block-strips.ts';
import type { Fonts } from './fonts.ts';
import { closeSheet, openSheet, type Sheet, strokeRule } from './sheet.ts';
import { flow } from './strip.ts';
import { baselineIn, breakLines, type Line, lineWidth, placeLine, placeLines, toRuns } from './write-text.ts';

/** The paper as the bytes of a tagged PDF with its fonts embedded. */
export async function paintPaper(paper: Paper, fonts: Fonts): Promise<Buffer> {
  const sheet = openSheet(paper, paperSizes[paper.size], fonts);
  const head = layHead(sheet, paper);
  flow(
    sheet,
    head.height,
    paper.blocks.flatMap((block) => blockStrips(sheet, block, sheet.width)),
  );
  const pages = sheet.document.bufferedPageRange().count;
  for (let page = 0; page < pages; page += 1) {
    sheet.document.switchToPage(page);
    sheet.document.markContent('Artifact', { type: 'Pagination' });
    if (page > 0) paintHead(sheet, head);
    paintFoot(sheet, paper, page + 1, pages);
    sheet.document.endMarkedContent();
  }
  return closeSheet(sheet);
}

function paintHead(sheet: Sheet, head: RunningHead): void {
  const { left, width } = sheet;
  const { size, line } = textLines.small;
  const baseline = margins.top + baselineIn('small');
  placeLine(sheet, head.left, left, baseline, size);
  placeLines(sheet, head.right, left + width, margins.top, 'small', 'end');
  strokeRule(sheet, left, margins.top + head.right.length * line + 4, width, 'fine');
}

type RunningHead = { readonly left: Line; readonly right: readonly Line[]; readonly height: number };

/** The head of every page but the first; what stands right wraps where the left leaves it too little room. */
function layHead(sheet: Sheet, { head }: Paper): RunningHead {
  const { size, line } = textLines.small;
  const left = toRuns([{ text: head.left, quiet: true }]);
  const room = sheet.width - lineWidth(sheet, left, size) - 16;
  const right = breakLines(sheet, toRuns([{ text: head.right, quiet: true }]), size, room);
  return { left, right, height: right.length * line + 14 };
}

function paintFoot(sheet: Sheet, { foot, size }: Paper, page: number, pages: number): void {
  const { left, width } = sheet;
  const top = paperSizes[size].height - margins.bottom - textLines.small.line;
  strokeRule(sheet, left, top - 4, width, 'fine');
  smallLine(sheet, foot.left, left, top, 'start');
  smallLine(sheet, foot.middle, left + width / 2, top, 'middle');
  smallLine(sheet, `page ${page} of ${pages}`, left + width, top, 'end');
}

function smallLine(sheet: Sheet, text: string, x: number, top: number, align: 'start' | 'middle' | 'end'): void {
  if (text === '') return;
  placeLine(sheet, toRuns([{ text, quiet: true }]), x, top + baselineIn('small'), textLines.small.size, align);
}
