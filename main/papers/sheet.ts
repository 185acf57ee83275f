// The open PDF that a paper is painted on: its fonts, the page and how far down it is filled, and its structure.
import PDFDocument from 'pdfkit';
import { margins, type Paper } from '../../app/papers/paper.ts';
import type { Fonts } from './fonts.ts';
import { openFont } from './shaped-font.ts';

export type Face = keyof Fonts;
const faces: readonly Face[] = ['regular', 'semibold', 'mono'];
export type Element = PDFKit.PDFStructureElement;

export type Sheet = {
  readonly document: PDFKit.PDFDocument;
  readonly left: number;
  readonly width: number;
  readonly bottom: number;
  /** The structure's root: what a screen reader walks, in reading order. */
  readonly root: Element;
  /** Widths already measured, in em; shaping a word costs about a millisecond. */
  readonly widths: Map<string, number>;
  /** Where the next strip goes on the current page. */
  y: number;
};

/** What a file says of itself. */
export type About = Pick<Paper, 'language' | 'title' | 'author' | 'subject' | 'madeAt'>;
/** In points. */
export type PageSize = { readonly width: number; readonly height: number };

/**
 * A new tagged PDF with its first page open. The first font is given to the constructor: without one it loads Helvetica.
 * pdfkit takes an opened font wherever its type declarations know only names.
 */
export function openSheet(about: About, { width, height }: PageSize, fonts: Fonts): Sheet {
  const document = new PDFDocument({
    size: [width, height],
    margin: 0,
    font: openFont(fonts.regular) as unknown as string,
    bufferPages: true,
    pdfVersion: '1.7',
    tagged: true,
    lang: about.language,
    displayTitle: true,
    info: {
      Title: about.title,
      Author: about.author,
      Subject: about.subject,
      Creator: 'Thoubook',
      Producer: 'Thoubook',
      CreationDate: new Date(about.madeAt),
    },
  });
  for (const face of faces) document.registerFont(face, openFont(fonts[face]) as unknown as string);
  const root = document.struct('Document');
  document.addStructure(root);
  const bottom = height - margins.bottom - margins.foot;
  return {
    document,
    left: margins.side,
    width: width - 2 * margins.side,
    bottom,
    root,
    widths: new Map(),
    y: margins.top,
  };
}

/** The next page, open below its running head. */
export function nextPage(sheet: Sheet, headHeight: number): void {
  sheet.document.addPage();
  sheet.y = margins.top + headHeight;
}

/** Everything as bytes. */
export function closeSheet({ document, root }: Sheet): Promise<Buffer> {
  return new Promise((resolve, reject) => {
    const chunks: Buffer[] = [];
    document.on('data', (chunk: Buffer) => chunks.push(chunk));
    document.on('end', () => resolve(Buffer.concat(chunks)));
    document.on('error', reject);
    root.end();
    document.end();
  });
}

/** What pdfkit takes beyond its type declarations: the direction a table heading speaks for. */
type ElementOptions = PDFKit.Mixins.StructureElementOptions & { readonly scope?: 'Row' | 'Column' };

/** A new element of the structure, in reading order after those its parent already has. */
export function addElement(sheet: Sheet, parent: Element, type: string, options: ElementOptions = {}): Element {
  const element = sheet.document.struct(type, options);
  parent.add(element);
  return element;
}

/** Draws what a screen reader passes over: rules, shapes that repeat a word, page lines. */
export function drawArtifact({ document }: Sheet, draw: () => void): void {
  document.markContent('Artifact', { type: 'Layout' });
  draw();
  document.endMarkedContent();
}

/** A level rule, on its own an artifact. */
export function drawRule(sheet: Sheet, x: number, y: number, width: number, weight: RuleWeight): void {
  drawArtifact(sheet, () => strokeRule(sheet, x, y, width, weight));
}

const ruleWeights = { heavy: [1.5, '#000000'], plain: [0.75, '#000000'], fine: [0.5, '#999999'] } as const;
export type RuleWeight = keyof typeof ruleWeights;

/** The same inside something that already is an artifact. */
export function strokeRule({ document }: Sheet, x: number, y: number, width: number, weight: RuleWeight): void {
  const [thickness, color] = ruleWeights[weight];
  document
    .lineWidth(thickness)
    .moveTo(x, y)
    .lineTo(x + width, y)
    .stroke(color);
}
