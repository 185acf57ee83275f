// The program ends only when what is under way is over: a write that was asked for, a backup that is being made.
import { setTimeout as wait } from 'node:timers/promises';
import { app } from 'electron';

/** Lets `finish` run once when the program is about to end, and ends it when that is over or took `patience_ms`. */
export function finishBeforeTheEnd(finish: () => Promise<void>, patience_ms: number): void {
  let standing: 'open' | 'finishing' | 'over' = 'open';
  app.on('will-quit', (event) => {
    if (standing === 'over') return;
    event.preventDefault();
    if (standing === 'finishing') return;
    standing = 'finishing';
    void Promise.race([finish().catch(console.error), wait(patience_ms, undefined, { ref: false })]).then(() => {
      standing = 'over';
      app.quit();
    });
  });
}
