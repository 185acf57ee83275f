// The only door between the page and main: call a method, hear that something changed. Nothing else crosses.
import { contextBridge, ipcRenderer } from 'electron';

contextBridge.exposeInMainWorld('thoubook', {
  call: (method: string, input: unknown) => ipcRenderer.invoke('call', method, input),
  subscribe: (listener: () => void) => {
    const hear = () => listener();
    ipcRenderer.on('changed', hear);
    return () => ipcRenderer.removeListener('changed', hear);
  },
});
