// A gauge's line made of two real pseudo-terminals: what is written to one end arrives at the other as from a wire.
import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { closeSync, constants, existsSync, openSync, readSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pass } from 'node:timers/promises';

export const hasSocat = spawnSync('socat', ['-V']).status === 0;

export type Pty = {
  /** The end the book opens. */
  readonly path: string;
  /** Writes as a gauge would; waits where the line is full. */
  say(bytes: string | Uint8Array): Promise<void>;
  /** What was written to the gauge since the last look. */
  heard(): string;
  unplug(): Promise<void>;
  plugIn(): Promise<void>;
};

/** A pair in `folder`, plugged in. Whoever takes it must unplug it at the end. */
export async function ptyIn(folder: string): Promise<Pty> {
  const path = join(folder, 'gauge');
  const far = join(folder, 'far');
  let socat: ChildProcess | undefined;
  let end = -1;
  const plugIn = async () => {
    socat = spawn('socat', [`pty,raw,echo=0,link=${path}`, `pty,raw,echo=0,link=${far}`], { stdio: 'ignore' });
    while (!existsSync(path) || !existsSync(far)) await pass(10);
    end = openSync(far, constants.O_RDWR | constants.O_NONBLOCK | constants.O_NOCTTY);
  };
  const unplug = async () => {
    if (!socat || socat.exitCode !== null || socat.signalCode !== null) return;
    closeSync(end);
    const ended = new Promise((exited) => socat?.once('exit', exited));
    socat.kill();
    await ended;
  };
  await plugIn();
  return {
    path,
    plugIn,
    unplug,
    async say(bytes) {
      const all = Buffer.from(bytes as string, 'latin1');
      for (let written = 0; written < all.length; ) {
        try {
          written += writeSync(end, all, written);
        } catch (thrown) {
          if ((thrown as NodeJS.ErrnoException).code !== 'EAGAIN') throw thrown;
          await pass(1);
        }
      }
    },
    heard() {
      const bytes = Buffer.alloc(1024);
      try {
        return bytes.toString('latin1', 0, readSync(end, bytes));
      } catch (thrown) {
        if ((thrown as NodeJS.ErrnoException).code !== 'EAGAIN') throw thrown;
        return '';
      }
    },
  };
}
