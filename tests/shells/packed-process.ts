// A process of its own that runs the packed main module with the runtime's interface stood in for, and does what the
// test asks of it: `node packed-process.ts APP`, messages over the channel it was forked with.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import * as runtime from './stub-runtime.ts';

export type Asked = { call: [method: string, input: unknown] } | { page: string } | { close: true };

const [, , packed = ''] = process.argv;
// What `import 'electron'` finds in the real runtime by itself.
const standIn = join(packed, 'node_modules/electron');
mkdirSync(standIn, { recursive: true });
writeFileSync(join(standIn, 'package.json'), '{"type":"module","exports":"./index.js"}');
const stub = pathToFileURL(join(import.meta.dirname, 'stub-runtime.ts')).href;
writeFileSync(join(standIn, 'index.js'), `export * from ${JSON.stringify(stub)};`);

async function answer(asked: Asked): Promise<unknown> {
  if ('call' in asked) return runtime.callFrom('app://thoubook/index.html', ...asked.call);
  if ('page' in asked) {
    const response = await runtime.fetchPage(asked.page);
    return { status: response.status, headers: Object.fromEntries(response.headers), text: await response.text() };
  }
  const ended = new Promise((end) => runtime.app.once('ended', end));
  for (const window of runtime.BrowserWindow.windows) window.close();
  return ended;
}

process.on('message', (asked: Asked) => {
  answer(asked).then(
    (value) => process.send?.({ value: value ?? null }),
    (thrown) => process.send?.({ thrown: String(thrown) }),
  );
});

await import(pathToFileURL(join(packed, 'dist/main/electron-main.js')).href);
while (runtime.BrowserWindow.windows[0]?.loaded !== 'app://thoubook/index.html') {
  if (runtime.errorsShown.length > 0) throw new Error(runtime.errorsShown.join('\n'));
  await new Promise((turn) => setTimeout(turn, 10));
}
process.send?.({ value: 'open' });
