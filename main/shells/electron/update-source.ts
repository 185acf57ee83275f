// Who looks for a newer version of the packed program, and puts it in place.
import { app } from 'electron';
import type { AppUpdater } from 'electron-updater';
import type { UpdateSource } from '../../updates/updates.service.ts';

const longestNotes = 4000;

/** undefined where the program did not come as an installer or AppImage of ours: from source it is not updated. */
export async function findUpdateSource(): Promise<UpdateSource | undefined> {
  if (!app.isPackaged) return undefined;
  const { default: library } = await import('electron-updater');
  const updater = library.autoUpdater;
  // It says what it does at length; what matters is in what it answers.
  updater.logger = null;
  return updater.isUpdaterActive() ? updateSourceOf(updater) : undefined;
}

function updateSourceOf(updater: AppUpdater): UpdateSource {
  // Nothing comes in and nothing is put in place by itself.
  updater.autoDownload = false;
  updater.autoInstallOnAppQuit = false;
  updater.allowDowngrade = false;
  updater.disableWebInstaller = true;
  // Whole files only: each is checked against the one hash that the list names.
  updater.disableDifferentialDownload = true;
  // It would send a number that tells this machine from others.
  updater.requestHeaders = { 'x-user-staging-id': 'none' };
  updater.isUserWithinRollout = () => true;
  // Every failure also comes as an answer; unheard, it would end the program.
  updater.on('error', () => undefined);
  return {
    version: updater.currentVersion.version,
    async look(feed) {
      updater.setFeedURL({ provider: 'generic', url: feed });
      const found = await updater.checkForUpdates();
      if (!found?.isUpdateAvailable) return null;
      const { version, releaseNotes } = found.updateInfo;
      return { version, notes: typeof releaseNotes === 'string' ? releaseNotes.slice(0, longestNotes) : '' };
    },
    async fetch(onPart) {
      const hear = ({ percent }: { percent: number }) => onPart(percent / 100);
      updater.on('download-progress', hear);
      try {
        await updater.downloadUpdate();
      } finally {
        updater.off('download-progress', hear);
      }
    },
    putInPlace: () => updater.quitAndInstall(true, false),
  };
}
