import { expect, test } from 'vitest';
import { buildReport } from '../../app/papers/build-report.ts';
import type { Paper } from '../../app/papers/paper.ts';
import { findFonts } from '../../main/papers/fonts.ts';
import { paintPaper } from '../../main/papers/paint-paper.ts';
import { paintInWorker } from '../../main/workers/paint-paper.ts';
import { kx3 } from './kx3-report.ts';

test('papers asked for together come each to who asked, and one that cannot be painted spoils no other', async () => {
  const paper = buildReport(kx3);
  const named = (title: string): Paper => ({ ...paper, title });
  const [first, broken, second] = await Promise.allSettled([
    paintInWorker(named('first')),
    paintInWorker({ ...paper, size: 'no such size' as Paper['size'] }),
    paintInWorker(named('second')),
  ]);
  expect(broken.status).toBe('rejected');
  expect(first).toMatchObject({ value: await paintPaper(named('first'), findFonts()) });
  expect(second).toMatchObject({ value: await paintPaper(named('second'), findFonts()) });
});
