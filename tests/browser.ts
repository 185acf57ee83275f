// The real Chromium the screen tests drive: the one of the system, never a download.
import { existsSync } from 'node:fs';

export const browserArguments = [
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  // A browser refuses its own sandbox to root, which is who runs tests in a container.
  ...(process.getuid?.() === 0 ? ['--no-sandbox', '--test-type'] : []),
];

export function findBrowser(): string {
  const places = [
    process.env.CHROMIUM ?? '',
    '/usr/bin/chromium',
    '/usr/bin/chromium-browser',
    '/usr/bin/google-chrome',
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    'C:/Program Files/Google/Chrome/Application/chrome.exe',
  ];
  const found = places.find((place) => place !== '' && existsSync(place));
  if (!found) throw new Error('No Chromium or Chrome found: install one, or name it in CHROMIUM.');
  return found;
}
