// Makes backups, rehearses them, and saves what is left of a damaged file, off the event loop.
import { parentPort, workerData } from 'node:worker_threads';
import { bringBack } from '../backups/bring-back.ts';
import { makeBackup, makeWholeBackup } from '../backups/make-backup.ts';
import { salvage } from '../backups/salvage.ts';
import { storageErrorOf } from '../database/errors.ts';

const acts = { makeBackup, makeWholeBackup, bringBack, salvage };

export type BackupTask = {
  [A in keyof typeof acts]: { readonly act: A; readonly given: Parameters<(typeof acts)[A]> };
}[keyof typeof acts];

export type BackupTaskDone<T extends BackupTask> = Awaited<ReturnType<(typeof acts)[T['act']]>>;

const { act, given } = workerData as BackupTask;
try {
  const run = acts[act] as (...given: unknown[]) => Promise<unknown>;
  parentPort?.postMessage({ ok: true, value: await run(...given) });
} catch (thrown) {
  const known = storageErrorOf(thrown);
  if (!known) throw thrown;
  parentPort?.postMessage({ ok: false, code: known.code, message: known.message });
}
