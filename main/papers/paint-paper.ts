// Paints any paper as a PDF: strips down the pages, then the page line at the foot of each.
import { margins, type Paper, paperSizes } from '../../app/papers/paper.ts';
import { blockStrips } from './block-strips.ts';
import type { Fonts } from './fonts.ts';
import { closeSheet, openSheet, type Sheet, strokeRule } from './sheet.ts';
import { flow } from './strip.ts';
import { baselineIn, placeLine, sizes, toRuns } from './write-text.ts';

/** The paper as the bytes of a tagged PDF with its fonts embedded. */
export async function paintPaper(paper: Paper, fonts: Fonts): Promise<Buffer> {
  const sheet = openSheet(paper, fonts);
  flow(
    sheet,
    paper.blocks.flatMap((block) => blockStrips(sheet, block, sheet.width)),
  );
  const pages = sheet.document.bufferedPageRange().count;
  for (let page = 0; page < pages; page += 1) {
    sheet.document.switchToPage(page);
    sheet.document.markContent('Artifact', { type: 'Pagination' });
    if (page > 0) paintHead(sheet, paper);
    paintFoot(sheet, paper, page + 1, pages);
    sheet.document.endMarkedContent();
  }
  return closeSheet(sheet);
}

function paintHead(sheet: Sheet, { head }: Paper): void {
  const { left, width } = sheet;
  smallLine(sheet, head.left, left, margins.top, 'start');
  smallLine(sheet, head.right, left + width, margins.top, 'end');
  strokeRule(sheet, left, margins.top + sizes.small.line + 4, width, 'fine');
}

function paintFoot(sheet: Sheet, { foot, size }: Paper, page: number, pages: number): void {
  const { left, width } = sheet;
  const top = paperSizes[size].height - margins.bottom - sizes.small.line;
  strokeRule(sheet, left, top - 4, width, 'fine');
  smallLine(sheet, foot.left, left, top, 'start');
  smallLine(sheet, foot.middle, left + width / 2, top, 'middle');
  smallLine(sheet, `page ${page} of ${pages}`, left + width, top, 'end');
}

function smallLine(sheet: Sheet, text: string, x: number, top: number, align: 'start' | 'middle' | 'end'): void {
  if (text === '') return;
  placeLine(sheet, toRuns([{ text, quiet: true }]), x, top + baselineIn('small'), sizes.small.size, align);
}
