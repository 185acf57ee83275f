// Paints papers and labels off the event loop, one after another: a long paper takes a good part of a second.
import { parentPort } from 'node:worker_threads';
import { findFonts } from '../papers/fonts.ts';
import { paintLabels } from '../papers/paint-labels.ts';
import { paintPaper } from '../papers/paint-paper.ts';
import type { Painted, ToPaint } from './paint-paper.ts';

const fonts = findFonts();
const tell = (done: Painted) => parentPort?.postMessage(done);

parentPort?.on('message', async ({ order, paper }: ToPaint) => {
  try {
    const bytes = 'labels' in paper ? await paintLabels(paper, fonts) : await paintPaper(paper, fonts);
    tell({ order, bytes });
  } catch (thrown) {
    tell({ order, failure: thrown instanceof Error ? thrown : new Error(String(thrown)) });
  }
});
