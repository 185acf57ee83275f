// A long read goes on in promises that never let go of the event loop: each answer of SQLite is there at once. This lets
// the other windows in between its questions.
import { setImmediate as nextTurn } from 'node:timers/promises';
import type { KyselyPlugin } from 'kysely';

/** Longer than most reads take; well under what a hand notices. */
const longestHold_ms = 10;

/** Gives the event loop a turn after a question whenever it has been held this long. One for each connection. */
export function breathing(): KyselyPlugin {
  let since = performance.now();
  return {
    transformQuery: ({ node }) => node,
    transformResult: async ({ result }) => {
      if (performance.now() - since > longestHold_ms) {
        await nextTurn();
        since = performance.now();
      }
      return result;
    },
  };
}
