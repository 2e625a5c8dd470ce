import type { Host } from '../../core/host/host.ts';
import { electronHost } from './electron-host.ts';
import { localHost } from './local-host.ts';

/** The host of this page: Electron's where its preload script ran, else the local server that served the page. */
export const openHost = (): Host => (window.stillplateHost ? electronHost(window.stillplateHost) : localHost());
