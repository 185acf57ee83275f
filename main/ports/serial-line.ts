// The only place that touches a serial port.
import type { LineStanding } from '../../app/indicators/line-news.ts';

export type SerialSettings = {
  readonly path: string;
  readonly baudRate: number;
  readonly dataBits: 7 | 8;
  readonly parity: 'none' | 'even' | 'odd';
  readonly stopBits: 1 | 2;
};

export type OpenedLine = { send(bytes: readonly number[]): void; close(): Promise<void> };

/** Why a port did not open. */
export class CannotOpen extends Error {
  readonly standing: Extract<LineStanding, 'away' | 'taken' | 'forbidden'>;

  constructor(standing: CannotOpen['standing'], cause: Error) {
    super(cause.message, { cause });
    this.standing = standing;
  }
}

// Loaded when a line is first opened: a machine without the binary still starts the book.
const load = () => import('serialport');

/** Opens the port for this process alone; `hearEnd` is called once when it goes without having been closed. */
export async function openSerialLine(
  settings: SerialSettings,
  hear: (bytes: Uint8Array) => void,
  hearEnd: () => void,
): Promise<OpenedLine> {
  const { SerialPort } = await load();
  const port = new SerialPort({ ...settings, autoOpen: false, lock: true });
  await new Promise<void>((opened, failed) => {
    port.open((error) => (error ? failed(new CannotOpen(standingOf(error.message), error)) : opened()));
  });
  let isClosing = false;
  port.on('data', hear);
  port.on('close', () => {
    if (!isClosing) hearEnd();
  });
  // A failed write or read is followed by a close, which is what is told.
  port.on('error', () => undefined);
  return {
    send: (bytes) => void port.write(Buffer.from(bytes)),
    close: () => {
      isClosing = true;
      return new Promise((closed) => (port.isOpen ? port.close(() => closed()) : closed()));
    },
  };
}

/** The ports there are, each with what it says of itself; null where the machine has nothing that could tell (udev). */
export async function listSerialPorts(): Promise<{ readonly path: string; readonly says: string }[] | null> {
  const { SerialPort } = await load();
  try {
    return (await SerialPort.list()).map(({ path, manufacturer }) => ({ path, says: manufacturer ?? '' }));
  } catch (thrown) {
    if (thrown instanceof Error && 'code' in thrown && thrown.code === 'ENOENT') return null;
    throw thrown;
  }
}

// The binding says it in words only; Windows says "Access denied" of a port that is in use.
function standingOf(message: string): CannotOpen['standing'] {
  if (/lock|access denied|busy/i.test(message)) return 'taken';
  return /permission/i.test(message) ? 'forbidden' : 'away';
}
