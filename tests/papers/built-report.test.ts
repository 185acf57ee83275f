// The report as the built main prints it: bundled code, fonts beside the bundle.
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { temporaryFolder } from '../desk.ts';
import { startServe } from '../serve-process.ts';
import { fontsOf, readPdf } from './read-pdf.ts';

const serve = join(import.meta.dirname, '../../dist/main/serve.js');

test('the built book prints a report with its own fonts and the figures that were read', async () => {
  expect(existsSync(serve), 'npm run build first').toBe(true);
  const host = await startServe(serve, temporaryFolder());
  onTestFinished(() => host.kill());
  const entered = await fetch(host.address, { redirect: 'manual' });
  const cookie = entered.headers.get('set-cookie')?.split(';')[0] ?? '';
  const call = async (method: string, input: unknown) => {
    const headers = { 'content-type': 'application/json', cookie };
    const response = await fetch(new URL(`/rpc/${method}`, host.address), {
      method: 'POST',
      headers,
      body: JSON.stringify(input),
    });
    return (await response.json()).value;
  };
  await call('shop.openDemoShop', {});
  const { pdfBase64 } = await call('jobs.printBuildReport', { jobId: 1, copy: 'customer', paper: 'A4' });
  const bytes = Buffer.from(pdfBase64, 'base64');
  const fonts = fontsOf(bytes);
  expect(fonts.names.length).toBeGreaterThan(0);
  expect(fonts.names.filter((name) => !/^FiraSans|^FiraMono/.test(name))).toEqual([]);
  expect(fonts.embedded).toBe(fonts.names.length);
  const { text, pages } = await readPdf(bytes);
  for (const figure of ['Forward', '32.0', '38.0', '72.0', 'loose by 2.0', 'tight by 2.0', '118,400 miles']) {
    expect(text).toContain(figure);
  }
  for (const page of pages) expect(page.text).toContain('demo shop');
});
