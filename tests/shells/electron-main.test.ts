// The desktop's main module with the runtime's own interface stood in for: what it allows, and what it turns away.
import { EventEmitter } from 'node:events';
import { expect, onTestFinished, test, vi } from 'vitest';
import type { Reply } from '../../app/contract/reply.ts';
import { temporaryFolder } from '../desk.ts';

type Handler = (...given: unknown[]) => unknown;

const electron = vi.hoisted(() => ({
  handled: new Map<string, (...given: unknown[]) => unknown>(),
  windows: [] as Array<{ options: { webPreferences: Record<string, unknown> }; loaded: string }>,
  events: undefined as EventEmitter | undefined,
  userData: '',
  permission: undefined as Handler | undefined,
  check: undefined as Handler | undefined,
  schemes: [] as unknown[],
}));

vi.mock('electron', async () => {
  const { EventEmitter: Emitter } = await import('node:events');
  const events = new Emitter();
  electron.events = events;
  class BrowserWindow {
    readonly webContents = { send: () => undefined };
    readonly options: { webPreferences: Record<string, unknown> };
    loaded = '';
    static getAllWindows = () => [];
    constructor(options: { webPreferences: Record<string, unknown> }) {
      this.options = options;
      electron.windows.push(this);
    }
    removeMenu() {}
    async loadURL(url: string) {
      this.loaded = url;
    }
  }
  return {
    app: Object.assign(events, {
      requestSingleInstanceLock: () => true,
      whenReady: async () => undefined,
      getPath: () => electron.userData,
      quit: () => undefined,
    }),
    BrowserWindow,
    ipcMain: { handle: (name: string, handler: Handler) => electron.handled.set(name, handler) },
    net: { fetch: async (url: string) => new Response(url) },
    protocol: {
      registerSchemesAsPrivileged: (schemes: unknown[]) => electron.schemes.push(...schemes),
      handle: (scheme: string, handler: Handler) => electron.handled.set(`protocol ${scheme}`, handler),
    },
    session: {
      defaultSession: {
        setPermissionCheckHandler: (handler: Handler) => {
          electron.check = handler;
        },
        setPermissionRequestHandler: (handler: Handler) => {
          electron.permission = handler;
        },
      },
    },
  };
});

async function startMain(): Promise<void> {
  if (electron.windows.length > 0) return;
  electron.userData = temporaryFolder();
  await import('../../main/shells/electron/electron-main.ts');
  await vi.waitFor(() => expect(electron.windows[0]?.loaded).toBe('app://thoubook/index.html'));
}

const from = (url: string) => ({ senderFrame: { url } });

test('the window is sandboxed, and only our page may call; every other wish is turned down', async () => {
  await startMain();
  expect(electron.windows[0]?.options.webPreferences).toMatchObject({
    contextIsolation: true,
    sandbox: true,
    nodeIntegration: false,
  });
  const call = electron.handled.get('call') as Handler;
  const reply = (await call(from('app://thoubook/index.html'), 'shop.getShop', {})) as Reply<{ open: boolean }>;
  expect(reply).toMatchObject({ ok: true, value: { open: false } });
  expect(() => call(from('https://elsewhere.example/'), 'shop.getShop', {})).toThrow('not ours');
  expect(() => call({ senderFrame: null }, 'shop.getShop', {})).toThrow('not ours');

  const decided = new Promise((decide) => electron.permission?.({}, 'media', decide));
  expect(await decided).toBe(false);
  expect(electron.check?.({}, 'media')).toBe(false);

  const contents = Object.assign(new EventEmitter(), {
    opened: undefined as unknown,
    setWindowOpenHandler: (handler: Handler) => {
      contents.opened = handler();
    },
  });
  electron.events?.emit('web-contents-created', {}, contents);
  expect(contents.opened).toEqual({ action: 'deny' });
  const attached = { preventDefault: vi.fn() };
  contents.emit('will-attach-webview', attached);
  expect(attached.preventDefault).toHaveBeenCalledOnce();
  const navigation = { preventDefault: vi.fn() };
  contents.emit('will-navigate', navigation, 'https://elsewhere.example/');
  expect(navigation.preventDefault).toHaveBeenCalledOnce();
  contents.emit('will-navigate', navigation, 'app://thoubook/index.html');
  expect(navigation.preventDefault).toHaveBeenCalledOnce();

  const serve = electron.handled.get('protocol app') as (request: Request) => Promise<Response>;
  expect((await serve(new Request('app://thoubook/../../etc/passwd'))).status).toBe(404);
  onTestFinished(() => {
    electron.events?.emit('will-quit');
  });
});
