// The desktop's main module as a hostile page, a second start or a hasty hand would treat it. The runtime's own
// interface is stood in for; the desk, its files and its workers are real.
import { EventEmitter } from 'node:events';
import { mkdirSync, readdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, onTestFinished, test, vi } from 'vitest';
import type { Reply } from '../../app/contract/reply.ts';
import { startDesktop } from '../../main/shells/electron/desktop.ts';
import { shopWithKx3, temporaryFolder } from '../desk.ts';
import * as runtime from './stub-runtime.ts';

vi.mock('electron', () => import('./stub-runtime.ts'));

const { app, BrowserWindow, callFrom, fetchPage, handled } = runtime;
const ours = 'app://thoubook/index.html';

/** A desktop with its window open; it is ended when the test is over, unless the test ended it. */
async function openDesktop(folder = join(temporaryFolder(), 'book')) {
  runtime.startAnew();
  const around = temporaryFolder();
  const renderer = join(around, 'renderer');
  mkdirSync(renderer);
  writeFileSync(join(renderer, 'index.html'), '<title>book</title>');
  writeFileSync(join(around, 'outside.html'), 'secret');
  symlinkSync(join(around, 'outside.html'), join(renderer, 'linked.html'));
  startDesktop(folder, renderer);
  await vi.waitFor(() => expect(BrowserWindow.windows[0]?.loaded).toBe(ours));
  onTestFinished(async () => {
    if (!app.endings.includes('quit')) await closed();
  });
  return { folder, window: BrowserWindow.windows[0] as InstanceType<typeof BrowserWindow> };
}

/** Closes the window and waits until the program ends; answers how. */
function closed(): Promise<unknown> {
  const ended = new Promise((end) => app.once('ended', end));
  for (const window of BrowserWindow.windows) window.close();
  return ended;
}

const call = async (method: string, input: unknown) => (await callFrom(ours, method, input)) as Reply<unknown>;

test('the page runs in a sandbox, apart from Node, and keeps its own things beside the book', async () => {
  const { folder, window } = await openDesktop();
  expect(window.options.webPreferences).toMatchObject({
    contextIsolation: true,
    sandbox: true,
    nodeIntegration: false,
    spellcheck: false,
  });
  for (const weakened of ['webSecurity', 'allowRunningInsecureContent', 'nodeIntegrationInWorker', 'webviewTag'])
    expect(window.options.webPreferences).not.toHaveProperty(weakened);
  expect(app.getPath('userData')).toBe(join(folder, 'desktop'));
});

test('only our own page may call: no other site, no frame inside it, nothing without an origin', async () => {
  await openDesktop();
  expect(await call('shop.getShop', {})).toMatchObject({ ok: true, value: { open: false } });
  const strangers = [
    'https://elsewhere.example/',
    'app://elsewhere/index.html',
    'app://thoubook.elsewhere/index.html',
    'app://thoubook@elsewhere/index.html',
    // To URL these have the same origin as our page: 'null'.
    'file:///tmp/page.html',
    'data:text/html,<script></script>',
    'about:blank',
    'blob:app://thoubook/0e1f',
    '',
  ];
  for (const stranger of strangers) await expect(callFrom(stranger, 'shop.getShop', {})).rejects.toThrow('not ours');
  await expect(callFrom(ours, 'shop.getShop', {}, { url: ours })).rejects.toThrow('not ours');
  const gone = handled.get('call') as unknown as (event: unknown, ...given: unknown[]) => unknown;
  expect(() => gone({ senderFrame: null }, 'shop.getShop', {})).toThrow('not ours');
  for (const nonsense of [undefined, 7, {}, '__proto__', 'constructor', 'shop.getShop\0'])
    expect(await call(nonsense as string, {})).toMatchObject({ error: { code: 'unknown-method' } });
});

test('a window goes nowhere else, opens no other, holds no guest, gets no permission and reaches no network', async () => {
  await openDesktop();
  const contents = Object.assign(new EventEmitter(), {
    opened: [] as unknown[],
    setWindowOpenHandler: (handler: (wish: unknown) => unknown) => {
      contents.opened.push(handler({ url: ours }), handler({ url: 'https://elsewhere.example/' }));
    },
  });
  app.emit('web-contents-created', {}, contents);
  expect(contents.opened).toEqual([{ action: 'deny' }, { action: 'deny' }]);
  const isStopped = (what: string, url?: string) => {
    const event = { preventDefault: vi.fn() };
    contents.emit(what, event, url);
    return event.preventDefault.mock.calls.length === 1;
  };
  expect(isStopped('will-attach-webview')).toBe(true);
  const elsewhere = ['https://elsewhere.example/', 'file:///etc/passwd', 'app://elsewhere/', 'app://thoubook.evil/'];
  for (const url of [...elsewhere, 'javascript:alert(1)', 'data:text/html,x', 'about:blank'])
    expect([url, isStopped('will-navigate', url)]).toEqual([url, true]);
  expect(isStopped('will-navigate', ours)).toBe(false);

  const ask = handled.get('permission request') as unknown as (...given: unknown[]) => void;
  const check = handled.get('permission check') as unknown as (...given: unknown[]) => boolean;
  for (const wish of ['media', 'geolocation', 'notifications', 'serial', 'usb', 'openExternal', 'fileSystem']) {
    expect(await new Promise((decide) => ask({}, wish, decide))).toBe(false);
    expect(check({}, wish)).toBe(false);
  }

  const schemes = runtime.requestsHeld.map((pattern) => pattern.split(':')[0]);
  expect(schemes).toEqual(['http', 'https', 'ws', 'wss', 'ftp', 'file']);
  const held = handled.get('request') as unknown as (details: unknown, answer: (given: unknown) => void) => void;
  expect(await new Promise((answer) => held({}, answer))).toEqual({ cancel: true });
});

test('no address of ours leads out of the renderer’s folder, in whatever writing', async () => {
  await openDesktop();
  const paths = [
    '../outside.html',
    '%2e%2e/outside.html',
    '..%2foutside.html',
    '%2e%2e%2foutside.html',
    '%252e%252e%252foutside.html',
    '..%5coutside.html',
    '..\\outside.html',
    '%c0%ae%c0%ae/outside.html',
    '....//outside.html',
    '/etc/passwd',
    '%2fetc%2fpasswd',
    'index.html%00.png',
    'index.html/../../outside.html',
    'linked.html',
    '%',
  ];
  for (const path of paths) expect([path, (await fetchPage(`app://thoubook/${path}`)).status]).toEqual([path, 404]);
  expect((await fetchPage('app://elsewhere/index.html')).status).toBe(404);
  for (const verb of ['POST', 'PUT', 'HEAD']) expect((await fetchPage(ours, verb)).status).toBe(404);
  const page = await fetchPage(ours);
  expect(await page.text()).toBe('<title>book</title>');
  for (const answer of [page, await fetchPage('app://thoubook/../outside.html')]) {
    const policy = answer.headers.get('content-security-policy') ?? '';
    expect(policy).toContain("default-src 'none'");
    expect(policy).not.toMatch(/unsafe|\*|https?:/);
    expect(answer.headers.get('x-content-type-options')).toBe('nosniff');
  }
});

test('a second start brings the window forward and opens no other', async () => {
  const { window } = await openDesktop();
  window.isLow = true;
  app.emit('second-instance');
  window.isLow = false;
  app.emit('second-instance');
  expect(window.acts).toEqual(['restore', 'focus', 'focus']);
  expect(BrowserWindow.windows).toEqual([window]);
  await closed();

  runtime.startAnew();
  app.isFirst = false;
  startDesktop(temporaryFolder());
  expect(app.endings).toEqual(['quit']);
  expect(BrowserWindow.windows).toEqual([]);
});

test('closing the window waits for the write under way, and a start meanwhile comes after it', async () => {
  const { folder } = await openDesktop();
  let isAnswered = false;
  const filled = call('shop.openDemoShop', {}).then((reply) => {
    isAnswered = true;
    return reply;
  });
  const end = closed();
  app.emit('second-instance');
  app.quit();
  expect(app.endings).toEqual(['relaunch']);
  expect(await end).toBe('quit');
  expect(isAnswered).toBe(true);
  expect(await filled).toMatchObject({ ok: true });
  expect(readdirSync(folder)).toEqual(['demo.thoubook', 'desktop', 'open.json', 'photos']);
});

test('closing the window waits for the backup of the day', async () => {
  const { desk } = await shopWithKx3();
  await desk.close();
  await openDesktop(desk.folder);
  expect(await closed()).toBe('quit');
  const made = readdirSync(join(desk.folder, 'backups')).filter((name) => name.startsWith('shop '));
  expect(made.map((name) => name.replace(/^shop .*?Z\./, ''))).toEqual(['thoubook', 'thoubook.json']);
});

test('a folder that cannot be written to is told of in words', () => {
  runtime.startAnew();
  const file = join(temporaryFolder(), 'not a folder');
  writeFileSync(file, '');
  startDesktop(file);
  expect(runtime.errorsShown[0]).toContain('Thoubook cannot start');
  expect(app.endings).toEqual(['exit 1']);
});
