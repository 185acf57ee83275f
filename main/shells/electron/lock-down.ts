// What a window might still do or ask for, turned down: it shows our page and nothing else.
// Which frames the page itself may hold is said by its content security policy.
import { app, session } from 'electron';
import { isOurs } from './serve-renderer.ts';

/** For every window there will be: it goes nowhere else, opens no other and holds no guest. */
export function denyWhatWindowsAskFor(): void {
  app.on('web-contents-created', (_event, contents) => {
    contents.on('will-navigate', (event, url) => {
      if (!isOurs(url)) event.preventDefault();
    });
    contents.on('will-attach-webview', (event) => event.preventDefault());
    contents.setWindowOpenHandler(() => ({ action: 'deny' }));
  });
}

/** No permission is ever given, and nothing a page names is fetched from a network or from the disk. */
export function keepOffTheNetwork(): void {
  session.defaultSession.setPermissionRequestHandler((_contents, _permission, decide) => decide(false));
  session.defaultSession.setPermissionCheckHandler(() => false);
  const elsewhere = { urls: ['http://*/*', 'https://*/*', 'ws://*/*', 'wss://*/*', 'ftp://*/*', 'file://*/*'] };
  session.defaultSession.webRequest.onBeforeRequest(elsewhere, (_details, answer) => answer({ cancel: true }));
}
