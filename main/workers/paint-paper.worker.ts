// Paints a paper off the event loop: shaping words takes most of a second.
import { parentPort, workerData } from 'node:worker_threads';
import type { Paper } from '../../app/papers/paper.ts';
import { findFonts } from '../papers/fonts.ts';
import { paintPaper } from '../papers/paint-paper.ts';

parentPort?.postMessage(await paintPaper(workerData as Paper, findFonts()));
