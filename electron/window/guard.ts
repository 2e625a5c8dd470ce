import type { Session, WebContents } from 'electron';
import { isOurs } from './page-address.ts';

/** Refuses every permission a page can ask for, and devices. */
export function refusePermissions(session: Session): void {
  session.setPermissionRequestHandler((_contents, permission, answer) =>
    answer(permission === 'clipboard-sanitized-write'),
  );
  session.setPermissionCheckHandler((_contents, permission) => permission === 'clipboard-sanitized-write');
  session.setDevicePermissionHandler(() => false);
}

/** Keeps a window on our page: no navigation, no new window, no embedded view. */
export function keepAtHome(contents: WebContents): void {
  contents.on('will-navigate', (event, address) => {
    if (!isOurs(address)) event.preventDefault();
  });
  contents.on('will-redirect', (event, address) => {
    if (!isOurs(address)) event.preventDefault();
  });
  contents.on('will-attach-webview', (event) => event.preventDefault());
  contents.setWindowOpenHandler(() => ({ action: 'deny' }));
}
