// Pictures with what is drawn over them, two in a row, each with its caption under it.
import { pictureGap } from '../../app/papers/marked-pictures.ts';
import { type MarkedPicture, textLines } from '../../app/papers/paper.ts';
import { paintChart } from './paint-chart.ts';
import { addElement, type Sheet } from './sheet.ts';
import type { Strip } from './strip.ts';
import { breakLines, placeLines, toRuns } from './write-text.ts';

export function markedPictureStrips(sheet: Sheet, pictures: readonly MarkedPicture[], width: number): readonly Strip[] {
  const room = (width - pictureGap) / 2;
  const laid = pictures.map((picture) => ({
    ...picture,
    lines: breakLines(sheet, toRuns([{ text: picture.caption, quiet: true }]), textLines.small.size, room),
  }));
  const rows = Array.from({ length: Math.ceil(laid.length / 2) }, (_, row) => laid.slice(2 * row, 2 * row + 2));
  return rows.map((row) => ({
    before: 8,
    height: Math.max(...row.map(({ chart, lines }) => chart.height + 3 + lines.length * textLines.small.line)),
    paint: (x, y) => {
      for (const [index, { jpegBase64, chart, lines }] of row.entries()) {
        const left = x + index * (room + pictureGap);
        const figure = addElement(sheet, sheet.root, 'Figure', { alt: chart.title });
        figure.add(() => {
          const { width: across, height: down } = chart;
          if (jpegBase64 === null) sheet.document.rect(left, y, across, down).lineWidth(0.5).stroke('#000000');
          else sheet.document.image(Buffer.from(jpegBase64, 'base64'), left, y, { width: across, height: down });
          paintChart(sheet, chart, left, y);
        });
        addElement(sheet, sheet.root, 'P').add(() => placeLines(sheet, lines, left, y + chart.height + 3, 'small'));
      }
    },
  }));
}
