// The desktop window. It starts the desk, serves the renderer over app://, and lets nothing else in or out.
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { app, BrowserWindow, ipcMain, net, protocol, session } from 'electron';
import { keepBackups } from '../../backups/backup-keeper.ts';
import { systemClock } from '../../ports/clock.ts';
import { dispatch } from '../../rpc/dispatch.ts';
import { Desk } from '../../shop/desk.ts';
import { contentSecurityPolicy, rendererFile } from '../renderer-files.ts';

const origin = 'app://thoubook';
const rendererFolder = join(import.meta.dirname, '../renderer');
const preload = join(import.meta.dirname, '../preload/preload.cjs');

protocol.registerSchemesAsPrivileged([
  { scheme: 'app', privileges: { standard: true, secure: true, supportFetchAPI: true } },
]);

if (app.requestSingleInstanceLock()) {
  app.on('second-instance', () => {
    const [window] = BrowserWindow.getAllWindows();
    window?.restore();
    window?.focus();
  });
  app.on('window-all-closed', () => app.quit());
  app.on('web-contents-created', (_event, contents) => {
    contents.on('will-navigate', (event, url) => {
      if (!url.startsWith(`${origin}/`)) event.preventDefault();
    });
    contents.on('will-attach-webview', (event) => event.preventDefault());
    contents.setWindowOpenHandler(() => ({ action: 'deny' }));
  });
  void app.whenReady().then(start);
} else {
  app.quit();
}

async function start(): Promise<void> {
  session.defaultSession.setPermissionRequestHandler((_contents, _permission, decide) => decide(false));
  session.defaultSession.setPermissionCheckHandler(() => false);
  protocol.handle('app', serve);
  const desk = await Desk.at(app.getPath('userData'), systemClock);
  ipcMain.handle('call', (event, method: unknown, input: unknown) => {
    if (!event.senderFrame || new URL(event.senderFrame.url).origin !== new URL(origin).origin) {
      throw new Error('a call from a page that is not ours');
    }
    return dispatch(desk, method as Parameters<typeof dispatch>[1], input);
  });
  const tell = (what: 'changed' | 'gauge' | 'fleet', news?: unknown) => {
    for (const window of BrowserWindow.getAllWindows()) window.webContents.send(what, news);
  };
  desk.onChange(() => tell('changed'));
  desk.lines.onNews((news) => tell('gauge', news));
  desk.fleet.onProgress((news) => tell('fleet', news));
  const stopWatching = desk.watchOthers(1000);
  const stopBackups = keepBackups(desk, 60_000);
  app.on('will-quit', () => {
    stopWatching();
    stopBackups();
    void desk.close();
  });
  const window = new BrowserWindow({
    width: 1280,
    height: 800,
    minWidth: 1000,
    minHeight: 700,
    title: 'Thoubook',
    // Plugins: the report is shown by the PDF viewer that comes with the runtime.
    webPreferences: { preload, contextIsolation: true, sandbox: true, nodeIntegration: false, plugins: true },
  });
  window.removeMenu();
  await window.loadURL(`${origin}/index.html`);
}

async function serve(request: Request): Promise<Response> {
  const file = rendererFile(rendererFolder, new URL(request.url).pathname);
  if (!file) return new Response('not found', { status: 404 });
  const response = await net.fetch(pathToFileURL(file.path).href);
  return new Response(response.body, {
    headers: {
      'content-type': file.contentType,
      'content-security-policy': contentSecurityPolicy,
      'x-content-type-options': 'nosniff',
    },
  });
}
