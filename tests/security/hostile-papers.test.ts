// What somebody typed goes onto papers and into lists as text and as nothing else.
import { mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import Papa from 'papaparse';
import { expect, test } from 'vitest';
import { plainName } from '../../main/exports/export-folder.ts';
import { deskIn, temporaryFolder } from '../desk.ts';
import { readPdf } from '../papers/read-pdf.ts';
import { hostile, makeHostile } from './hostile-text.ts';

/** What a PDF could obey, no longer than a word or two: laying text out is what takes a paper its time. */
const hostileOnPaper = ')/S/JavaScript/JS(app.alert(1))>>';

async function hostileShop(text = hostile) {
  const folder = temporaryFolder();
  const first = await deskIn(folder);
  await first.call('shop.openDemoShop', {});
  await first.desk.close();
  expect(makeHostile(join(folder, 'demo.thoubook'), text)).toBeGreaterThan(50);
  return { ...(await deskIn(folder)), folder };
}

test('no paper carries a script, an action or a link that somebody typed, and each is read back', async () => {
  const { call } = await hostileShop(hostileOnPaper);
  const [comeback] = await call('comebacks.listComebacks', { only: 'all' });
  const papers = [
    await call('jobs.printBuildReport', { jobId: 1, copy: 'shop' }),
    await call('jobs.printBuildReport', { jobId: 1, copy: 'customer' }),
    await call('jobs.printBuildSheet', { jobId: 1 }),
    await call('jobs.printBenchSheet', { of: { jobId: 1 } }),
    await call('comebacks.printReport', { comebackId: comeback?.comebackId, copy: 'shop' }),
  ];
  const toBuy = await call('stock.printPurchaseList', {});
  const all = [...papers, ...('base64' in toBuy ? [{ fileName: toBuy.fileName, pdfBase64: toBuy.base64 }] : [toBuy])];
  for (const { fileName, pdfBase64 } of all) {
    const bytes = Buffer.from(pdfBase64, 'base64');
    // What is left without the compressed streams and the strings is what a reader obeys (ISO 32000-1, 7.3.4.2: within a
    // string a parenthesis is escaped; one that is not would end it here as it would there).
    const objects = bytes
      .toString('latin1')
      .replace(/stream\r?\n[\s\S]*?endstream/g, '')
      .replace(/\((?:\\[\s\S]|[^\\()])*\)/g, '()');
    expect(objects).not.toMatch(/\/S\s*\/(JavaScript|URI|Launch|SubmitForm|GoToR|ImportData)|\/(AA|OpenAction)\b/);
    const { text } = await readPdf(bytes);
    expect(text.replace(/\s+/g, '')).toContain('(app.alert(1))>>');
    expect(fileName).toMatch(/^[^/\\<>:"|?*\p{Cc}]+\.pdf$/u);
  }
}, 120_000);

test('no cell of any list that leaves the book begins as a formula, whatever was typed', async () => {
  const { call, folder } = await hostileShop();
  const into = join(folder, 'out');
  mkdirSync(into);
  const { folder: written } = await call('shop.exportEverything', { folder: into, withPhotos: false });
  const lists = readdirSync(written).filter((name) => name.endsWith('.csv'));
  expect(lists.length).toBeGreaterThan(30);
  let cells = 0;
  for (const name of lists) {
    const text = readFileSync(join(written, name), 'utf8').replace(/^\ufeff/, '');
    for (const cell of Papa.parse<string[]>(text, { newline: '\r\n' }).data.flat()) {
      cells += 1;
      // OWASP, “CSV Injection”: = + - @, a tab and a carriage return begin a formula. A number may have its sign.
      if (/^[=+\-@\t\r]/.test(cell)) expect(cell).toMatch(/^-?\d+([.,]\d+)?$/);
    }
  }
  expect(cells).toBeGreaterThan(5000);
}, 120_000);

test('no name that is typed becomes a place or a device: Microsoft’s reserved names, dots and separators', () => {
  // Microsoft, “Naming Files, Paths, and Namespaces”: reserved with any ending and in any case.
  for (const name of ['CON', 'nul', 'Com1', 'LPT9.txt', 'aux.', 'PRN ']) {
    expect(plainName(name)).not.toMatch(/^(con|prn|aux|nul|com\d|lpt\d)(\.|$)/i);
  }
  for (const name of ['..', '../x', '/etc/passwd', 'a\\b', 'C:x', '', '. .', '\u0000\n']) {
    expect(plainName(name)).toMatch(/^[^/\\:]+$/);
    expect(plainName(name)).not.toMatch(/^\.+$/);
  }
});
