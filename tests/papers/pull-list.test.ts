// The pull list of the example unit as painted: every word of it on the paper.
import { expect, test } from 'vitest';
import { measureAsFound } from '../../main/shop/demo/kx3-as-found.ts';
import { openJob } from '../../main/shop/demo/kx3-job.ts';
import { layOutLooseSteels } from '../../main/shop/demo/kx3-swaps.ts';
import { shopWithKx3 } from '../desk.ts';
import { readPdf } from './read-pdf.ts';

test.each(['letter', 'A4'] as const)('what to pull and where it goes, on %s', async (paper) => {
  const { call, familyId, by } = await shopWithKx3();
  await layOutLooseSteels(call, by);
  const job = await openJob(call, familyId, by);
  await measureAsFound(job);
  const input = { jobId: job.jobId, objective: 'sum', way: 'inOrder', paper };
  const { pdfBase64 } = await call('packs.printPullList', input);
  const text = (await readPdf(Buffer.from(pdfBase64, 'base64'))).text.replace(/\s+/g, ' ');
  // By the hand arithmetic of the example: 83.0 for 76.5 in Forward, 84.0 for 91.0 in Direct.
  for (const words of [
    'Loose plates',
    'A47',
    '83.0',
    'B21',
    '84.0',
    'What comes out',
    '76.5',
    '91.0',
    'released slowly',
  ])
    expect(text).toContain(words);
});
