import type { Session, WebContents } from 'electron';
import { isOurs, pageAddress } from './page-address.ts';

/**
 * Refuses every permission a page can ask for, and devices, but one: our own page may write text to the clipboard
 * after a click ("copy this table"). Reading it stays refused: pasting needs no permission.
 */
export function refusePermissions(session: Session): void {
  const granted = (permission: string, from: string): boolean =>
    permission === 'clipboard-sanitized-write' && isOurs(from);
  session.setPermissionRequestHandler((_contents, permission, answer, { requestingUrl }) =>
    answer(granted(permission, requestingUrl)),
  );
  session.setPermissionCheckHandler((_contents, permission, origin) => granted(permission, origin));
  session.setDevicePermissionHandler(() => false);
}

/** Lets nothing out: whatever the content policy allowed, a request that is not for our own files is cancelled. */
export function refuseRemoteContent(session: Session): void {
  session.webRequest.onBeforeRequest(({ url }, answer) => answer({ cancel: !staysHere(url) }));
}

const staysHere = (url: string): boolean =>
  isOurs(url) || url.startsWith('data:') || (url.startsWith('blob:') && isOurs(url.slice('blob:'.length)));

/** Keeps a window on our page: no navigation in any frame, no new window, no embedded view. */
export function keepAtHome(contents: WebContents): void {
  const refuseOther = (details: { readonly url: string; readonly isMainFrame: boolean; preventDefault(): void }) => {
    if (!details.isMainFrame || withoutHash(details.url) !== pageAddress) details.preventDefault();
  };
  contents.on('will-navigate', refuseOther);
  contents.on('will-frame-navigate', refuseOther);
  contents.on('will-redirect', refuseOther);
  contents.on('will-attach-webview', (event) => event.preventDefault());
  contents.setWindowOpenHandler(() => ({ action: 'deny' }));
}

const withoutHash = (url: string): string => url.split('#', 1)[0]!;
