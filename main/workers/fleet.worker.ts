// Answers questions about the fleet off the event loop, one after another, over its own connection to the shop file.
import { parentPort, workerData } from 'node:worker_threads';
import { FleetAnswers } from '../comebacks/fleet.service.ts';
import { openBeside } from '../database/open-shop.ts';
import type { FromFleetWorker, ToFleetWorker } from './fleet-messages.ts';

const { file, wanted } = workerData as { file: string; wanted: Int32Array };
let now = '';
const answers = new FleetAnswers(openBeside(file, () => now));

const tell = (message: FromFleetWorker) => parentPort?.postMessage(message);

async function answer({ question, selection, at }: ToFleetWorker): Promise<void> {
  now = at;
  // Read at every step, so that an end reaches a question while it runs.
  const isWanted = () => Atomics.load(wanted, 0) === question;
  try {
    const told = isWanted()
      ? await answers.answer(selection, (done, of) => {
          if (of > 0) tell({ question, progress: { done, of, isOver: false } });
          return isWanted();
        })
      : null;
    tell({ question, answer: told });
  } catch (thrown) {
    tell({ question, failure: failureOf(thrown) });
  }
}

function failureOf(thrown: unknown) {
  const error = thrown instanceof Error ? thrown : new Error(String(thrown));
  return { message: error.message, stack: error.stack ?? '', code: 'code' in error ? String(error.code) : '' };
}

let last: Promise<void> = Promise.resolve();
parentPort?.on('message', (message: ToFleetWorker) => {
  last = last.then(() => answer(message));
});
