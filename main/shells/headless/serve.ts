// What `npm start` runs where there is no desktop runtime: the host, and a browser's app window on it.
import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { keepBackups } from '../../backups/backup-keeper.ts';
import { systemClock } from '../../ports/clock.ts';
import { Desk } from '../../shop/desk.ts';
import { endWithWords } from '../last-words.ts';
import { shopFolder } from '../shop-folder.ts';
import { startHost } from './host.ts';

const desk = await Desk.at(shopFolder(), systemClock);
endWithWords(desk, console.log);
const renderer = join(import.meta.dirname, '../renderer');
// A browser keeps what was typed but not yet entered by the port, so the port stays the same from day to day.
const usualPort = Number(process.env.THOUBOOK_PORT ?? 48_237);
const host = await startHost(desk, renderer, usualPort).catch((thrown) => {
  if (thrown?.code !== 'EADDRINUSE') throw thrown;
  return startHost(desk, renderer);
});

desk.watchOthers(1000);
keepBackups(desk, 60_000);

for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, () => void stop());

const browser = hasScreen() ? findBrowser() : undefined;
if (browser) {
  console.log('Thoubook is open in its window. Close the window to stop.');
  const profile = join(desk.folder, 'window');
  // A browser refuses its own sandbox to root; nobody but a container works as root.
  const asRoot = process.getuid?.() === 0 ? ['--no-sandbox', '--test-type'] : [];
  const flags = [
    '--window-size=1280,800',
    '--no-first-run',
    '--no-default-browser-check',
    '--disable-background-networking',
    '--disable-sync',
  ];
  const window = spawn(browser, [`--app=${host.address}`, `--user-data-dir=${profile}`, ...flags, ...asRoot], {
    stdio: 'ignore',
  });
  window.on('exit', () => void stop());
  window.on('error', () => console.log(`Open this address once in a browser: ${host.address}`));
} else {
  console.log(`Thoubook is ready. Open this address once in Chromium or Chrome:\n${host.address}\nCtrl-C stops it.`);
}

async function stop(): Promise<void> {
  await host.close();
  await desk.close();
  process.exit(0);
}

function hasScreen(): boolean {
  const isHeadless = process.platform === 'linux' && !process.env.DISPLAY && !process.env.WAYLAND_DISPLAY;
  return !isHeadless && process.env.THOUBOOK_WINDOW !== 'none';
}

function findBrowser(): string | undefined {
  const { PATH = '', PROGRAMFILES = '', 'PROGRAMFILES(X86)': programs86 = '' } = process.env;
  const places: Partial<Record<NodeJS.Platform, string[]>> = {
    darwin: [
      '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
      '/Applications/Chromium.app/Contents/MacOS/Chromium',
    ],
    win32: [PROGRAMFILES, programs86].map((folder) => join(folder, 'Google/Chrome/Application/chrome.exe')),
  };
  const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];
  const onPath = PATH.split(delimiter).flatMap((folder) => names.map((name) => join(folder, name)));
  return (places[process.platform] ?? onPath).find((file) => existsSync(file));
}
