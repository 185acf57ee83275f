// What happens when something fails that nobody answers for: it is written down and said, and the program ends. Going on
// with half of it broken could write half of something.
import type { Desk } from '../shop/desk.ts';

/** `say` may wait until somebody has read it. */
export function endWithWords(desk: Desk, say: (words: string) => void): void {
  const end = (thrown: unknown) => {
    const id = desk.logFault('process', thrown);
    say(
      `Thoubook has to stop (fault ${id}). Everything it acknowledged is in the shop file, and what was typed and not entered waits in the window. Start it again.`,
    );
    process.exit(1);
  };
  process.on('uncaughtException', end);
  process.on('unhandledRejection', end);
}
