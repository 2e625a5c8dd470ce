import { ipcMain, type WebContents, type WebFrameMain } from 'electron';
import { refused } from '../../core/host/answer.ts';
import type { HostEvent } from '../../core/host/host-schema.ts';
import type { Host, HostCall } from '../../core/host/host.ts';
import { serve, type Receive } from '../host/serve.ts';
import { channel } from './channel.ts';
import { isOurs } from './page-address.ts';

/** The one place that hears messages of pages. A window is joined to its host, and each message to its window. */
export interface PageMessages {
  /** Serves a window from now on; events before the page listens wait for it. Gives what tells it an event. */
  readonly join: (contents: WebContents, host: Host) => (event: HostEvent) => void;
}

type Hear = Parameters<Receive>[1];

export function hearPages(): PageMessages {
  const windows = new Map<
    number,
    { readonly calls: ReadonlyMap<string, Hear>; listening: boolean; waiting: HostEvent[]; contents: WebContents }
  >();

  ipcMain.handle(channel.call, (event, name: unknown, message: unknown) => {
    const window = windows.get(event.sender.id);
    const isOurWindow = window !== undefined && isOurPage(event.senderFrame);
    const hear = typeof name === 'string' ? window?.calls.get(name) : undefined;
    if (!hear)
      return refused({
        what: window ? `There is no call “${String(name).slice(0, 60)}”` : 'This window is not known',
        mend: 'Load the window anew: page and program may be of different versions.',
      });
    return hear(message, { isOurWindow, url: event.senderFrame?.url ?? '' });
  });
  ipcMain.on(channel.listening, ({ sender, senderFrame }) => {
    const window = windows.get(sender.id);
    if (!window || !isOurPage(senderFrame)) return;
    window.listening = true;
    for (const event of window.waiting.splice(0)) sender.send(channel.event, event);
  });

  return {
    join: (contents, host) => {
      const calls = new Map<HostCall, Hear>();
      serve(host, (name, hear) => calls.set(name, hear));
      const window = { calls, listening: false, waiting: [] as HostEvent[], contents };
      windows.set(contents.id, window);
      const tell = (event: HostEvent): void => {
        if (contents.isDestroyed()) return;
        if (window.listening) contents.send(channel.event, event);
        else window.waiting.push(event);
      };
      const stop = host.listen(tell);
      // A page that is loaded anew listens anew.
      contents.on('did-start-navigation', (details) => {
        if (details.isMainFrame && !details.isSameDocument) window.listening = false;
      });
      contents.on('render-process-gone', () => {
        window.listening = false;
      });
      const id = contents.id;
      contents.once('destroyed', () => {
        stop();
        windows.delete(id);
      });
      return tell;
    },
  };
}

/** A frame inside the page, a page that is not ours, or one that is already gone, is no sender. */
const isOurPage = (frame: WebFrameMain | null): boolean => frame !== null && frame.parent === null && isOurs(frame.url);
