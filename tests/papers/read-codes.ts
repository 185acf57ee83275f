// Renders the pages of a PDF and reads the code on each with a general-purpose decoder.

import type { Canvas } from '@napi-rs/canvas';
import jsQR from 'jsqr';
import { getDocument, VerbosityLevel } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** What the code on each page says, as rendered at `dotsPerInch`; null where none is found. */
export async function readCodes(bytes: Uint8Array, dotsPerInch = 300): Promise<readonly (string | null)[]> {
  const task = getDocument({ data: new Uint8Array(bytes), verbosity: VerbosityLevel.ERRORS });
  const document = await task.promise;
  const codes: (string | null)[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const viewport = page.getViewport({ scale: dotsPerInch / 72 });
    const [width, height] = [Math.round(viewport.width), Math.round(viewport.height)];
    const factory = document.canvasFactory as { create(width: number, height: number): { canvas: Canvas } };
    const { canvas } = factory.create(width, height);
    await page.render({ canvas: canvas as unknown as HTMLCanvasElement, viewport, background: '#ffffff' }).promise;
    const { data } = canvas.getContext('2d').getImageData(0, 0, width, height);
    codes.push(jsQR(new Uint8ClampedArray(data), width, height)?.data ?? null);
  }
  await task.destroy();
  return codes;
}
