// Asks a worker for a backup: copying, checking and hashing a big file would keep every window waiting.
import { Worker } from 'node:worker_threads';
import { StorageError } from '../database/errors.ts';
import type { BackupTask, BackupTaskDone } from './backups.worker.ts';
import { resourceLimits } from './resource-limits.ts';

const worker = new URL(
  import.meta.url.endsWith('.ts') ? './backups.worker.ts' : './backups.worker.js',
  import.meta.url,
);

/** Carries a task out beside the event loop; what fails there with words is thrown here with the same words. */
export function inBackupWorker<T extends BackupTask>(task: T): Promise<BackupTaskDone<T>> {
  return new Promise((done, failed) => {
    const working = new Worker(worker, { workerData: task, resourceLimits });
    working.once(
      'message',
      (reply: { ok: true; value: BackupTaskDone<T> } | { ok: false; code: string; message: string }) =>
        reply.ok ? done(reply.value) : failed(new StorageError(reply.code, reply.message)),
    );
    working.once('error', failed);
    working.once('exit', () => failed(new Error('the backup stopped before it was done')));
  });
}
