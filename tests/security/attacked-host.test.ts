// The loopback host as somebody else on the machine, or a page elsewhere, would attack it.
import { existsSync, mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { connect } from 'node:net';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { startHost } from '../../main/shells/headless/host.ts';
import { shopWithKx3, temporaryFolder } from '../desk.ts';

async function hostUnderAttack(patience?: Parameters<typeof startHost>[3]) {
  const { desk, call } = await shopWithKx3();
  const around = temporaryFolder();
  const renderer = join(around, 'renderer');
  mkdirSync(renderer);
  writeFileSync(join(renderer, 'index.html'), '<title>book</title>');
  writeFileSync(join(around, 'outside.html'), 'secret');
  symlinkSync(join(around, 'outside.html'), join(renderer, 'linked.html'));
  const host = await startHost(desk, renderer, 0, patience);
  onTestFinished(() => host.close());
  const { port, search } = new URL(host.address);
  /** What the host answers to these very bytes, until it hangs up. */
  const say = (...parts: string[]) =>
    new Promise<string>((answered) => {
      let heard = '';
      const socket = connect(Number(port), '127.0.0.1', () => {
        for (const part of parts) socket.write(part);
      });
      socket.setEncoding('utf8').on('data', (part) => {
        heard += part;
      });
      // Cut off while still sending is an answer too.
      socket.on('error', () => undefined).on('close', () => answered(heard));
    });
  const headers = [`host: 127.0.0.1:${port}`, 'connection: close'];
  const entered = await say(`GET /${search} HTTP/1.1\r\n${headers.join('\r\n')}\r\n\r\n`);
  const cookie = `cookie: ${/set-cookie: ([^;]+)/i.exec(entered)?.[1]}`;
  const send = (line: string, more: readonly string[] = [], body = '') =>
    say(`${line} HTTP/1.1\r\n${[...headers, cookie, ...more].join('\r\n')}\r\n\r\n${body}`);
  const post = (type: string, body: string, more: readonly string[] = []) =>
    send('POST /rpc/shop.addPerson', [`content-type: ${type}`, `content-length: ${body.length}`, ...more], body);
  return { send, post, call, port, desk, say, headers: [...headers, cookie] };
}

const statusOf = (answer: string) => Number(answer.split(' ')[1]);
const person = '{"name":"Ben Tolland","initials":"BT"}';

test('what another site can make a browser send is turned away, in words, and nothing is written', async () => {
  const { post, send, call, port } = await hostUnderAttack();
  for (const type of ['text/plain', 'application/x-www-form-urlencoded', 'multipart/form-data; boundary=x'])
    expect(await post(type, person)).toContain('a call is a POST of JSON');
  const json = 'application/json';
  for (const site of ['cross-site', 'same-site', 'none'])
    expect(await post(json, person, [`sec-fetch-site: ${site}`])).toContain('a call from another site');
  for (const origin of ['null', 'http://evil.example', `http://localhost:${port}`])
    expect(await post(json, person, [`origin: ${origin}`])).toContain('wrong origin');
  for (const verb of ['GET', 'PUT', 'OPTIONS', 'DELETE'])
    expect(statusOf(await send(`${verb} /rpc/shop.addPerson`))).toBe(415);
  expect(await post(json, '[['.repeat(100_000))).toContain('What was sent is not JSON.');
  expect(await post(json, `${'['.repeat(3000)}${']'.repeat(3000)}`)).toContain('"kind":"refusal"');
  expect(await call('shop.getShop', {})).toHaveProperty('people.length', 1);
  expect(await post(json, person, ['sec-fetch-site: same-origin'])).toContain('"ok":true');
});

test('a body that grows too large is cut off while it is read, whatever length it was said to have', async () => {
  const { post, send, call } = await hostUnderAttack();
  const declared = await send('POST /rpc/shop.addPerson', [
    'content-type: application/json',
    'content-length: 9000000',
  ]);
  expect(statusOf(declared)).toBe(413);
  // The last chunk never comes: only a host that counts while it reads can answer.
  const chunk = `${(1_000_000).toString(16)}\r\n${' '.repeat(1_000_000)}\r\n`;
  const chunked = await send(
    'POST /rpc/shop.addPerson',
    ['content-type: application/json', 'transfer-encoding: chunked'],
    chunk.repeat(5),
  );
  expect(chunked === '' || statusOf(chunked) === 413).toBe(true);
  expect(statusOf(await send('GET /', [`x-long: ${'x'.repeat(100_000)}`]))).toBe(431);
  expect(await call('shop.getShop', {})).toHaveProperty('people.length', 1);
  expect(await post('application/json', person)).toContain('"ok":true');
});

test('no path leads out of the renderer’s folder, not even over a link in it', async () => {
  const { send } = await hostUnderAttack();
  const paths = [
    '/../outside.html',
    '/..%2foutside.html',
    '/%252e%252e%252foutside.html',
    '/..%5coutside.html',
    '/index.html%00.png',
    '/linked.html',
  ];
  for (const path of paths) expect([path, statusOf(await send(`GET ${path}`))]).toEqual([path, 404]);
  expect(statusOf(await send('GET http://evil.example/'))).toBe(400);
  expect(statusOf(await send('GET //['))).toBe(400);
  const page = await send('GET /');
  expect(page).toContain('<title>book</title>');
  expect(page).toMatch(/x-content-type-options: nosniff/i);
  expect(page).toMatch(/cache-control: no-store/i);
  const policy = /content-security-policy: (.*)/i.exec(page)?.[1];
  expect(policy).toContain("frame-ancestors 'none'");
  expect(policy).not.toContain('unsafe');
});

test('who drips a request is hung up on, keeps nobody waiting meanwhile, and is no fault of ours', async () => {
  const patience = { headersTimeout: 300, requestTimeout: 600, connectionsCheckingInterval: 50 };
  const { send, post, say, headers, desk, call } = await hostUnderAttack(patience);
  // Each answers only once the host hangs up: the one never ends its headers, the other never sends its body.
  const begun = `POST /rpc/shop.addPerson HTTP/1.1\r\n${headers.join('\r\n')}\r\n`;
  const dripping = [
    say(begun),
    say(`${begun}content-type: application/json\r\ncontent-length: ${person.length}\r\n\r\n`, '{"name"'),
  ];
  expect(await send('GET /')).toContain('<title>book</title>');
  expect(await post('application/json', person)).toContain('"ok":true');
  for (const answer of await Promise.all(dripping)) expect(answer === '' || statusOf(answer) === 408).toBe(true);
  expect(await call('shop.getShop', {})).toHaveProperty('people.length', 2);
  expect(existsSync(desk.faultLog())).toBe(false);
});
