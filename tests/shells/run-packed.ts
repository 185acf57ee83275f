// The packed main module in a process of its own, asked as its page would ask it.
import { fork } from 'node:child_process';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import type { Reply } from '../../app/contract/reply.ts';
import type { Caller } from '../../main/shop/demo/kx3-job.ts';
import type { Asked } from './packed-process.ts';

export type PackedProgram = {
  readonly ask: (asked: Asked) => Promise<unknown>;
  /** Answers the value, or throws the sentence of the refusal. */
  readonly call: Caller;
};

/** Starts what lies unpacked in `app` on the book in `folder`; resolves when its window is open. */
export async function runPacked(
  app: string,
  folder: string,
  installed?: { readonly resources: string; readonly port: number; readonly environment: Record<string, string> },
): Promise<PackedProgram> {
  const more = installed ? [installed.resources, String(installed.port)] : [];
  const main = fork(join(import.meta.dirname, 'packed-process.ts'), [app, ...more], {
    env: { ...process.env, ...installed?.environment, THOUBOOK_FOLDER: folder },
  });
  onTestFinished(() => void main.kill('SIGKILL'));
  const heard = () =>
    new Promise<unknown>((answered, failed) => {
      const ended = () => failed(new Error('the packed program ended'));
      main.once('exit', ended);
      main.once('message', (told: { value?: unknown; thrown?: string }) => {
        main.off('exit', ended);
        if (told.thrown === undefined) answered(told.value);
        else failed(new Error(told.thrown));
      });
    });
  const ask = (asked: Asked) => {
    main.send(asked);
    return heard();
  };
  await heard();
  return {
    ask,
    call: async (method, input) => {
      const reply = (await ask({ call: [method, input] })) as Reply<never>;
      if (!reply.ok) throw new Error(`${method}: ${reply.error.message}`);
      return reply.value;
    },
  };
}
