// A process of its own that runs the packed main module with the runtime's interface stood in for, and does what the
// test asks of it, over the channel it was forked with: `node packed-process.ts APP [RESOURCES PORT]`. With a folder of
// resources it is an installed program, and the network is the server at that port.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import * as runtime from './stub-runtime.ts';

export type Asked = { call: [method: string, input: unknown] } | { page: string } | { asked: true } | { close: true };

const [, , packed = '', resources, port] = process.argv;
if (resources !== undefined) {
  Object.assign(process, { resourcesPath: resources });
  runtime.app.isPackaged = true;
  runtime.net.port = Number(port);
}
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
  if ('asked' in asked) return runtime.net.asked;
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
