// Pictures of a sheet on paper: two in a row, each with what stands at its points.
import { type MarkedPoint, picturePoints } from '../charts/picture-points.ts';
import { type Block, contentWidth, type PaperSize } from './paper.ts';

export type PictureFacts = {
  readonly title: string;
  /** null where the file is gone or damaged: its points are still drawn, and that is said. */
  readonly jpegBase64: string | null;
  readonly width: number;
  readonly height: number;
  readonly points: readonly MarkedPoint[];
};

/** With what changes sides between them, in words. */
export type PicturesOnPaper = { readonly pictures: readonly PictureFacts[]; readonly sides: readonly string[] };

export const pictureGap = 12;
const tallest = 240;

/** Under a heading, with what changes sides between the pictures said first; nothing where there are none. */
export function pictureBlocks({ pictures, sides }: PicturesOnPaper, paper: PaperSize): readonly Block[] {
  if (pictures.length === 0) return [];
  const room = (contentWidth(paper) - pictureGap) / 2;
  return [
    { kind: 'heading', text: 'On the pictures' },
    ...sides.map((text): Block => ({ kind: 'paragraph', words: [{ text }] })),
    {
      kind: 'marked pictures',
      pictures: pictures.map(({ title, jpegBase64, width, height, points }) => {
        const scale = Math.min(room / width, tallest / height);
        const size = { width: scale * width, height: scale * height, medium: 'paper' } as const;
        const { chart } = picturePoints(points, size, alternative(title, points));
        const caption = jpegBase64 === null ? `${title}: the file of this picture is gone or damaged.` : title;
        return { jpegBase64, chart, caption };
      }),
    },
  ];
}

/** "Pump face: A 3.0 psi, in; B, not read". */
function alternative(title: string, points: readonly MarkedPoint[]): string {
  const said = points.map(({ label, figure, mark }) => {
    const stands = mark.kind === 'verdict' ? mark.verdict : mark.kind === 'tick' ? mark.state : '';
    return `${[label, figure].filter(Boolean).join(' ')}${stands === '' ? '' : `, ${stands}`}`;
  });
  return `${title}: ${said.join('; ')}`;
}
