// Paints a paper or labels off the event loop: shaping words takes most of a second.
import { parentPort, workerData } from 'node:worker_threads';
import type { LabelSheet } from '../../app/papers/labels.ts';
import type { Paper } from '../../app/papers/paper.ts';
import { findFonts } from '../papers/fonts.ts';
import { paintLabels } from '../papers/paint-labels.ts';
import { paintPaper } from '../papers/paint-paper.ts';

const toPaint = workerData as Paper | LabelSheet;
const fonts = findFonts();
parentPort?.postMessage('labels' in toPaint ? await paintLabels(toPaint, fonts) : await paintPaper(toPaint, fonts));
