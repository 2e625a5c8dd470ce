import { contextBridge, ipcRenderer } from 'electron';
import { channel } from './window/channel.ts';

// All that the page gets of the desktop: calls by name with one message, and events. Nothing of Electron goes through.
contextBridge.exposeInMainWorld('stillplateHost', {
  call: (name: unknown, message: unknown): Promise<unknown> => ipcRenderer.invoke(channel.call, String(name), message),
  listen: (hear: (event: unknown) => void): (() => void) => {
    const listener = (_: unknown, event: unknown) => hear(event);
    ipcRenderer.on(channel.event, listener);
    // The main process holds events back until the page listens.
    ipcRenderer.send(channel.listening);
    return () => ipcRenderer.off(channel.event, listener);
  },
});
