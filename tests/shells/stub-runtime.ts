// The desktop runtime's interface, stood in for: it does what the runtime promises of the few things our main module
// uses, and holds what was asked of it for a test to look at. No window is drawn and nothing is rendered.
import { EventEmitter } from 'node:events';
import { type ClientRequest, request } from 'node:http';

type Handler = (...given: never[]) => unknown;

class StubApp extends EventEmitter {
  isPackaged = false;
  paths = new Map<string, string>();
  /** false: another instance has the book open. */
  isFirst = true;
  endings: string[] = [];
  setPath = (name: string, path: string) => void this.paths.set(name, path);
  getPath = (name: string) => this.paths.get(name) ?? '';
  getVersion = () => '0.1.0';
  getName = () => 'thoubook';
  getAppPath = () => process.cwd();
  requestSingleInstanceLock = () => this.isFirst;
  whenReady = async () => undefined;
  /** As the runtime does it: whoever hears `will-quit` may keep the program from ending. */
  quit = () => {
    let isKept = false;
    this.emit('will-quit', {
      preventDefault: () => {
        isKept = true;
      },
    });
    if (!isKept) this.#end('quit');
  };
  exit = (code: number) => this.#end(`exit ${code}`);
  relaunch = () => void this.endings.push('relaunch');

  #end(how: string) {
    this.endings.push(how);
    this.emit('ended', how);
  }
}

export class BrowserWindow {
  static windows: BrowserWindow[] = [];
  static getAllWindows = () => BrowserWindow.windows;
  readonly heard: unknown[][] = [];
  readonly webContents = { send: (...news: unknown[]) => void this.heard.push(news) };
  readonly options: { webPreferences: Record<string, unknown> };
  isLow = false;
  acts: string[] = [];
  loaded = '';
  constructor(options: { webPreferences: Record<string, unknown> }) {
    this.options = options;
    BrowserWindow.windows.push(this);
  }
  removeMenu = () => undefined;
  isMinimized = () => this.isLow;
  restore = () => void this.acts.push('restore');
  focus = () => void this.acts.push('focus');
  loadURL = async (url: string) => {
    this.loaded = url;
  };
  /** As a person does it. */
  close = () => {
    BrowserWindow.windows = BrowserWindow.windows.filter((each) => each !== this);
    if (BrowserWindow.windows.length === 0) app.emit('window-all-closed');
  };
}

export const app = new StubApp();
export const handled = new Map<string, Handler>();
export const schemes: unknown[] = [];
export const errorsShown: string[] = [];

export const ipcMain = { handle: (name: string, handler: Handler) => void handled.set(name, handler) };
export const protocol = {
  registerSchemesAsPrivileged: (given: unknown[]) => void schemes.push(...given),
  handle: (scheme: string, handler: Handler) => void handled.set(`protocol ${scheme}`, handler),
};
export const dialog = { showErrorBox: (title: string, words: string) => void errorsShown.push(`${title}: ${words}`) };
/** The network: whatever is asked for comes from one server on this machine, and a test reads here what was asked. */
export const net = {
  asked: [] as string[],
  port: 0,
  request: (wish: { protocol: string; hostname: string; path: string; headers?: Record<string, string> }) => {
    net.asked.push(`${wish.protocol}//${wish.hostname}${wish.path} ${JSON.stringify(wish.headers ?? {})}`);
    const { path, headers = {} } = wish;
    const asking: ClientRequest & { abort(): void } = request({ host: '127.0.0.1', port: net.port, path, headers });
    return asking;
  },
};
export const autoUpdater = new EventEmitter();

export const session = {
  fromPartition: () => ({}),
  defaultSession: {
    setPermissionRequestHandler: (handler: Handler) => void handled.set('permission request', handler),
    setPermissionCheckHandler: (handler: Handler) => void handled.set('permission check', handler),
    webRequest: {
      onBeforeRequest: (filter: { urls: string[] }, handler: Handler) => {
        handled.set('request', handler);
        requestsHeld.push(...filter.urls);
      },
    },
  },
};
export const requestsHeld: string[] = [];

/** Forgets everything, as a fresh process would have it. */
export function startAnew(): void {
  app.removeAllListeners();
  app.paths.clear();
  app.endings = [];
  app.isFirst = true;
  BrowserWindow.windows = [];
  handled.clear();
  for (const list of [schemes, errorsShown, requestsHeld]) list.length = 0;
}

/** A call as the page makes it through the preload, from a frame of this address. */
export async function callFrom(address: string, method: string, input: unknown, parent: unknown = null) {
  const call = handled.get('call') as unknown as (event: unknown, method: string, input: unknown) => unknown;
  return call({ senderFrame: { url: address, parent } }, method, input);
}

/** What the page gets for an address. */
export async function fetchPage(address: string, method = 'GET'): Promise<Response> {
  const serve = handled.get('protocol app') as unknown as (request: unknown) => Promise<Response>;
  // As the runtime hands it over: Request itself would put a path in order first, and may not be one of our scheme.
  return serve({ url: address, method });
}
