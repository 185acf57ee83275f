// The same services without a desktop runtime: a host on this machine only, for a browser's app window.
import { randomBytes, timingSafeEqual } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Failure } from '../../../app/contract/reply.ts';
import { dispatch } from '../../rpc/dispatch.ts';
import type { Desk } from '../../shop/desk.ts';
import { contentSecurityPolicy, rendererFile } from '../renderer-files.ts';

export type Host = {
  /** Opens the book once; the browser then holds a cookie and the token is spent. */
  readonly address: string;
  close(): Promise<void>;
};

const largestCall_bytes = 4_000_000;

/** How long a request may take to come in; a browser on this machine needs milliseconds. */
const usualPatience = { headersTimeout: 10_000, requestTimeout: 30_000, connectionsCheckingInterval: 1000 };

/**
 * Serves `rendererFolder` and the contract on 127.0.0.1, to whoever comes with the one-time address; who drips a request is
 * hung up on.
 */
export async function startHost(desk: Desk, rendererFolder: string, port = 0, patience = usualPatience): Promise<Host> {
  const cookie = randomBytes(32).toString('hex');
  let token: string | undefined = randomBytes(32).toString('hex');
  const address = () => `127.0.0.1:${(server.address() as AddressInfo).port}`;

  // Cookies do not tell ports apart, so two books on one machine need two names.
  const cookieName = () => `thoubook-${(server.address() as AddressInfo).port}`;

  const server = createServer(patience, (request, response) => {
    answer(request, response).catch((thrown) => {
      // Who left in the middle of a request, or was hung up on, is no fault, and nobody hears an answer.
      if (request.destroyed && !request.complete) return;
      const id = desk.logFault('host', thrown);
      if (!response.headersSent) response.writeHead(500, { 'content-type': 'text/plain' });
      response.end(`fault ${id}`);
    });
  });

  async function answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
    response.setHeader('content-security-policy', contentSecurityPolicy);
    response.setHeader('x-content-type-options', 'nosniff');
    response.setHeader('referrer-policy', 'no-referrer');
    response.setHeader('cache-control', 'no-store');
    // A page elsewhere that resolves its own name to this machine carries its own Host.
    if (request.headers.host !== address()) return refuse(response, 403, 'wrong host');
    const url = URL.parse(request.url ?? '/', `http://${address()}`);
    if (url?.host !== address()) return refuse(response, 400, 'not an address of this book');
    const given = url.searchParams.get('token');
    if (given !== null && token !== undefined && isSame(given, token)) {
      token = undefined;
      response.writeHead(303, {
        location: '/',
        'set-cookie': `${cookieName()}=${cookie}; HttpOnly; SameSite=Strict; Path=/`,
      });
      response.end();
      return;
    }
    if (!isSame(cookieOf(request, cookieName()), cookie))
      return refuse(response, 403, 'open the address that was printed');
    if (url.pathname.startsWith('/rpc/')) return callOver(request, response, url.pathname.slice('/rpc/'.length));
    if (url.pathname === '/events') return events(request, response);
    const file = request.method === 'GET' ? rendererFile(rendererFolder, url.pathname) : undefined;
    if (!file) return refuse(response, 404, 'not found');
    response.writeHead(200, { 'content-type': file.contentType });
    createReadStream(file.path).pipe(response);
  }

  async function callOver(request: IncomingMessage, response: ServerResponse, method: string): Promise<void> {
    if (request.method !== 'POST' || request.headers['content-type'] !== 'application/json') {
      return refuse(response, 415, 'a call is a POST of JSON');
    }
    if (request.headers.origin !== undefined && request.headers.origin !== `http://${address()}`) {
      return refuse(response, 403, 'wrong origin');
    }
    // A browser says itself where a call comes from; only our own page, or no browser at all, may make one.
    if ((request.headers['sec-fetch-site'] ?? 'same-origin') !== 'same-origin') {
      return refuse(response, 403, 'a call from another site');
    }
    const body = await bodyOf(request);
    if (body === undefined) {
      response.setHeader('connection', 'close');
      return refuse(response, 413, 'too large');
    }
    let input: unknown;
    try {
      input = JSON.parse(body);
    } catch {
      const error: Failure = { kind: 'refusal', code: 'input', message: 'What was sent is not JSON.' };
      return json(response, { ok: false, error });
    }
    json(response, await dispatch(desk, method as Parameters<typeof dispatch>[1], input));
  }

  function events(request: IncomingMessage, response: ServerResponse): void {
    response.writeHead(200, { 'content-type': 'text/event-stream' });
    response.write(': listening\n\n');
    const stops = [
      desk.onChange(() => response.write('event: changed\ndata: \n\n')),
      desk.lines.onNews((news) => response.write(`event: gauge\ndata: ${JSON.stringify(news)}\n\n`)),
      desk.fleet.onProgress((news) => response.write(`event: fleet\ndata: ${JSON.stringify(news)}\n\n`)),
    ];
    request.on('close', () => stops.map((stop) => stop()));
  }

  await new Promise<void>((listening, failed) => {
    server.once('error', failed);
    server.listen(port, '127.0.0.1', listening);
  });
  return {
    address: `http://${address()}/?token=${token}`,
    close: async () => {
      server.closeAllConnections();
      await new Promise((closed) => server.close(closed));
    },
  };
}

/** What was sent, or undefined as soon as it is more than a call may be, whatever length it was said to have. */
async function bodyOf(request: IncomingMessage): Promise<string | undefined> {
  if (Number(request.headers['content-length'] ?? 0) > largestCall_bytes) return undefined;
  const parts: Buffer[] = [];
  let length_bytes = 0;
  // Leaving the loop must not end the connection before the refusal has gone out.
  for await (const part of request.iterator({ destroyOnReturn: false }) as AsyncIterable<Buffer>) {
    length_bytes += part.length;
    if (length_bytes > largestCall_bytes) return undefined;
    parts.push(part);
  }
  return Buffer.concat(parts).toString('utf8');
}

function refuse(response: ServerResponse, status: number, why: string): void {
  response.writeHead(status, { 'content-type': 'text/plain; charset=utf-8' });
  response.end(why);
}

function json(response: ServerResponse, body: unknown): void {
  response.writeHead(200, { 'content-type': 'application/json; charset=utf-8' });
  response.end(JSON.stringify(body));
}

function cookieOf(request: IncomingMessage, name: string): string {
  const cookies = (request.headers.cookie ?? '').split(/;\s*/);
  return cookies.find((each) => each.startsWith(`${name}=`))?.slice(name.length + 1) ?? '';
}

function isSame(given: string, wanted: string): boolean {
  return given.length === wanted.length && timingSafeEqual(Buffer.from(given), Buffer.from(wanted));
}
