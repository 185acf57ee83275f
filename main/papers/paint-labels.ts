// Paints labels as a PDF, one a page of exactly the label's size: the code as black squares, the words beside it.
import { encode } from 'uqr';
import { type LabelLayout, type LabelSheet, quietModules } from '../../app/papers/labels.ts';
import type { Fonts } from './fonts.ts';
import { addElement, closeSheet, openSheet, type Sheet } from './sheet.ts';
import { colors, placeLine } from './write-text.ts';

/** The labels as the bytes of a tagged PDF with its fonts embedded. */
export async function paintLabels(labels: LabelSheet, fonts: Fonts): Promise<Buffer> {
  const about = { ...labels, language: 'en', subject: labels.title };
  const sheet = openSheet(about, labels, fonts);
  for (const [index, label] of labels.labels.entries()) {
    if (index > 0) sheet.document.addPage();
    paintLabel(sheet, label);
  }
  return closeSheet(sheet);
}

function paintLabel(sheet: Sheet, { code, lines }: LabelLayout): void {
  addElement(sheet, sheet.root, 'Figure', { alt: `Code ${code.text}` }).add(() => paintCode(sheet, code));
  for (const { text, x, baseline, size, isBig } of lines) {
    const run = { text, face: isBig ? 'semibold' : 'regular', color: colors.ink } as const;
    addElement(sheet, sheet.root, 'P').add(() => placeLine(sheet, [run], x, baseline, size));
  }
}

/** One path with all black squares, so that no viewer shows a seam between them; the quiet zone stays blank. */
function paintCode({ document }: Sheet, { text, x, y, side }: LabelLayout['code']): void {
  const { data, size } = encode(text, { ecc: 'M', border: 0 });
  const module = side / (size + 2 * quietModules);
  for (const [row, squares] of data.entries()) {
    for (let from = 0; from < size; from += 1) {
      if (squares[from] !== true) continue;
      let until = from;
      while (squares[until] === true) until += 1;
      document.rect(
        x + (quietModules + from) * module,
        y + (quietModules + row) * module,
        (until - from) * module,
        module,
      );
      from = until;
    }
  }
  document.fill(colors.ink);
}
