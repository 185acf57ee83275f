// What crosses between the page and the desk: calls of the contract one way, news the other.
import { BrowserWindow, ipcMain, type WebFrameMain } from 'electron';
import { contract } from '../../../app/contract/contract.ts';
import { dispatch } from '../../rpc/dispatch.ts';
import type { Desk } from '../../shop/desk.ts';
import { isOurs } from './serve-renderer.ts';

/** Answers the page's calls, and tells every window the desk's news. */
export function answerCalls(desk: Desk): { writesAreOver(): Promise<void> } {
  const writes = new Set<Promise<unknown>>();
  ipcMain.handle('call', (event, method: unknown, input: unknown) => {
    if (!isOurPage(event.senderFrame)) throw new Error('a call from a page that is not ours');
    const name = method as Parameters<typeof dispatch>[1];
    const answer = dispatch(desk, name, input);
    if (Object.hasOwn(contract, name) && contract[name].kind === 'write') {
      writes.add(answer);
      void answer.finally(() => writes.delete(answer));
    }
    return answer;
  });
  const tell = (what: 'changed' | 'gauge' | 'fleet', news?: unknown) => {
    for (const window of BrowserWindow.getAllWindows()) window.webContents.send(what, news);
  };
  desk.onChange(() => tell('changed'));
  desk.lines.onNews((news) => tell('gauge', news));
  desk.fleet.onProgress((news) => tell('fleet', news));
  return {
    async writesAreOver() {
      while (writes.size > 0) await Promise.allSettled(writes);
    },
  };
}

/** Our own page alone: not a frame inside it, and not a frame that is gone already. */
function isOurPage(frame: WebFrameMain | null): boolean {
  return frame !== null && frame.parent === null && isOurs(frame.url);
}
