// The only door between the page and main: call a method, hear that something changed, what a gauge says or how far
// a question about the fleet is. Nothing else crosses.
import { contextBridge, ipcRenderer } from 'electron';

contextBridge.exposeInMainWorld('thoubook', {
  call: (method: string, input: unknown) => ipcRenderer.invoke('call', method, input),
  subscribe: (what: 'changed' | 'gauge' | 'fleet', listener: (news: unknown) => void) => {
    if (!['changed', 'gauge', 'fleet'].includes(what)) throw new Error('nothing of that name is told');
    const hear = (_event: unknown, news: unknown) => listener(news);
    ipcRenderer.on(what, hear);
    return () => ipcRenderer.removeListener(what, hear);
  },
});
