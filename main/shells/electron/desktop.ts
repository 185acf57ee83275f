// The desktop window, from the start to the end: one desk, one window on it, and nothing cut off when it closes.
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { app, BrowserWindow, dialog } from 'electron';
import { keepBackups, keeperOf } from '../../backups/backup-keeper.ts';
import { storageErrorOf } from '../../database/errors.ts';
import { systemClock } from '../../ports/clock.ts';
import { Desk } from '../../shop/desk.ts';
import { keepLooking, offerUpdates } from '../../updates/updates.service.ts';
import { endWithWords } from '../last-words.ts';
import { answerCalls } from './answer-calls.ts';
import { finishBeforeTheEnd } from './finish-before-the-end.ts';
import { denyWhatWindowsAskFor, keepOffTheNetwork } from './lock-down.ts';
import { origin, registerOrigin, serveRenderer } from './serve-renderer.ts';
import { findUpdateSource } from './update-source.ts';

const built = (path: string) => join(import.meta.dirname, '..', path);
/** A backup of the largest book takes a few seconds; a network folder that hangs must not keep the program for ever. */
const patience_ms = 60_000;

/** Opens the book that lies in `folder` in a window of its own, or brings the window forward that has it open already. */
export function startDesktop(folder: string, rendererFolder = built('renderer')): void {
  try {
    // What the window keeps for itself, out of the way of the book and under the same folder.
    const profile = join(folder, 'desktop');
    mkdirSync(profile, { recursive: true });
    app.setPath('userData', profile);
  } catch (thrown) {
    cannotStart(folder, thrown);
    return;
  }
  if (!app.requestSingleInstanceLock()) {
    app.quit();
    return;
  }
  let isEnding = false;
  app.on('second-instance', () => {
    const [window] = BrowserWindow.getAllWindows();
    // The last backup may still be going on behind a window that is closed.
    if (!window) return isEnding ? app.relaunch() : undefined;
    if (window.isMinimized()) window.restore();
    window.focus();
  });
  app.on('window-all-closed', () => {
    isEnding = true;
    app.quit();
  });
  registerOrigin();
  denyWhatWindowsAskFor();
  app
    .whenReady()
    .then(() => open(folder, rendererFolder))
    .catch((thrown) => cannotStart(folder, thrown));
}

async function open(folder: string, rendererFolder: string): Promise<void> {
  keepOffTheNetwork();
  serveRenderer(rendererFolder);
  const desk = await Desk.at(folder, systemClock);
  endWithWords(desk, (words) => dialog.showErrorBox('Thoubook', words));
  const calls = answerCalls(desk);
  const source = await findUpdateSource();
  const updates = source && offerUpdates(desk, source);
  const stops = [desk.watchOthers(1000), keepBackups(desk, 60_000)];
  if (updates) stops.push(keepLooking(updates, 3_600_000));
  finishBeforeTheEnd(async () => {
    for (const stop of stops) stop();
    await calls.writesAreOver();
    await keeperOf(desk).isOver();
    const takesPlace = await updates?.mayPutInPlace();
    await desk.close();
    if (takesPlace) updates?.putInPlace();
  }, patience_ms);
  const window = new BrowserWindow({
    width: 1280,
    height: 800,
    minWidth: 1000,
    minHeight: 700,
    title: 'Thoubook',
    webPreferences: {
      preload: built('preload/preload.cjs'),
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      // The report is shown by the PDF viewer that comes with the runtime.
      plugins: true,
      // Its dictionaries would be fetched from the network.
      spellcheck: false,
    },
  });
  window.removeMenu();
  await window.loadURL(`${origin}/index.html`);
}

function cannotStart(folder: string, thrown: unknown): void {
  const why = storageErrorOf(thrown)?.message ?? String(thrown);
  dialog.showErrorBox('Thoubook cannot start', `${why}\n\nIts files lie in ${folder}. Nothing there was changed.`);
  app.exit(1);
}
