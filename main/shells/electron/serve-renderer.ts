// The renderer's files under an address of our own. Read with fs, which finds them inside the packed archive too: the
// runtime's own file: addresses are given no privileges.
import { readFile } from 'node:fs/promises';
import { protocol } from 'electron';
import { contentSecurityPolicy, rendererFile } from '../renderer-files.ts';

export const origin = 'app://thoubook';

/** Whether an address is one of our page. `URL.origin` is no help: it is 'null' for every scheme the web does not know. */
export function isOurs(address: string): boolean {
  return address.startsWith(`${origin}/`);
}

/** Before the runtime is ready: pages of ours have an origin, as pages of the web do. */
export function registerOrigin(): void {
  protocol.registerSchemesAsPrivileged([
    { scheme: 'app', privileges: { standard: true, secure: true, supportFetchAPI: true } },
  ]);
}

/** Hands out the files of one folder, under the one policy. */
export function serveRenderer(rendererFolder: string): void {
  protocol.handle('app', async (request) => {
    const headers = {
      'content-security-policy': contentSecurityPolicy,
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'no-referrer',
    };
    const isAsked = request.method === 'GET' && isOurs(request.url);
    const file = isAsked ? rendererFile(rendererFolder, new URL(request.url).pathname) : undefined;
    if (!file) return new Response('not found', { status: 404, headers: { ...headers, 'content-type': 'text/plain' } });
    return new Response(await readFile(file.path), { headers: { ...headers, 'content-type': file.contentType } });
  });
}
