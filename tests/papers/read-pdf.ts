// Reads a PDF back with a library that shares no code with the one that wrote it.
import { getDocument, VerbosityLevel } from 'pdfjs-dist/legacy/build/pdf.mjs';

export type Placed = {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
};
export type ReadPage = {
  readonly width: number;
  readonly height: number;
  readonly text: string;
  readonly placed: readonly Placed[];
  readonly structure: readonly Tagged[];
};
export type Tagged = { readonly role: string; readonly alt: string | null };
export type ReadPdf = {
  readonly pages: readonly ReadPage[];
  readonly text: string;
  readonly info: Record<string, unknown>;
  readonly isMarked: boolean;
};

type Node = { role?: string; alt?: string; children?: readonly Node[] };

export async function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
  const task = getDocument({ data: new Uint8Array(bytes), verbosity: VerbosityLevel.ERRORS });
  const document = await task.promise;
  const pages: ReadPage[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const [x, y, right, top] = page.view as [number, number, number, number];
    const content = await page.getTextContent();
    const placed = content.items.flatMap((item): readonly Placed[] => {
      if (!('str' in item) || item.str.trim() === '') return [];
      const [, , , size, left, baseline] = item.transform as [number, number, number, number, number, number];
      return [
        { text: item.str, left, right: left + item.width, bottom: baseline - 0.2 * size, top: baseline + 0.7 * size },
      ];
    });
    pages.push({
      width: right - x,
      height: top - y,
      text: placed.map((each) => each.text).join(' '),
      placed,
      structure: flatten((await page.getStructTree()) as Node | null),
    });
  }
  const { info } = await document.getMetadata();
  const marks = (await document.getMarkInfo()) as unknown as ReadonlyMap<string, boolean> | null;
  await task.destroy();
  return {
    pages,
    text: pages.map((page) => page.text).join('\n'),
    info: info as Record<string, unknown>,
    isMarked: marks?.get('Marked') === true,
  };
}

function flatten(node: Node | null): readonly Tagged[] {
  if (node === null) return [];
  const own = node.role === undefined ? [] : [{ role: node.role, alt: node.alt ?? null }];
  return [...own, ...(node.children ?? []).flatMap(flatten)];
}

/** The names of the fonts in the file, and how many of them carry their outlines. */
export function fontsOf(bytes: Buffer): { readonly names: readonly string[]; readonly embedded: number } {
  const raw = bytes.toString('latin1');
  const names = new Set([...raw.matchAll(/\/BaseFont \/(?:[A-Z]{6}\+)?(\S+)/g)].map((match) => match[1]!));
  return { names: [...names].sort(), embedded: [...raw.matchAll(/\/FontFile2 /g)].length };
}
