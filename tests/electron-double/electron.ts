import type {
  App,
  BrowserWindowConstructorOptions,
  Dialog,
  IpcMain,
  MenuItemConstructorOptions,
  MessageBoxSyncOptions,
  NativeTheme,
  Protocol,
  Rectangle,
  Screen,
  Session,
  Shell,
} from 'electron';
import { EventEmitter } from 'node:events';
import type { Browser } from 'playwright-core';
import { DoubleWindow } from './window.ts';

type Listener = (...args: never[]) => void;
/** Of what the real thing offers, the part that the double does: a name or a type that Electron has not does not compile. */
type Of<Real> = Partial<Real>;

/** What a test sees and decides of the desktop. */
export interface Desktop {
  /** The module, as the program imports it. */
  readonly electron: object;
  readonly app: EventEmitter;
  readonly nativeTheme: EventEmitter & { dark: boolean };
  readonly windows: DoubleWindow[];
  readonly page: () => DoubleWindow;
  /** Whether this start is the first. */
  isFirst: boolean;
  displays: Rectangle[];
  /** Paths that the dialogs give, one after the other; null turns back. */
  readonly chosen: (string | null)[];
  /** The buttons that are pressed in boxes, by number. */
  readonly pressed: number[];
  readonly asked: MessageBoxSyncOptions[];
  readonly recent: string[];
  readonly openedPaths: { readonly path: string; readonly content: Uint8Array }[];
  /** What the system says when it should open a file; empty when it can. */
  openFault: string;
  readonly paths: Map<string, string>;
  menu: MenuItemConstructorOptions[];
  sandboxed: boolean;
  readonly schemes: Electron.CustomScheme[];
  readonly handlers: Map<string, (request: Request) => Response | Promise<Response>>;
  readonly invoked: Map<string, (event: never, ...args: unknown[]) => unknown>;
  readonly heard: EventEmitter;
  readonly session: {
    request: Parameters<Session['setPermissionRequestHandler']>[0];
    check: Parameters<Session['setPermissionCheckHandler']>[0];
    device: Parameters<Session['setDevicePermissionHandler']>[0];
    before: ((details: never, answer: (response: { cancel?: boolean }) => void) => void) | null;
  };
  /** Resolves with the code when the program has ended. */
  readonly ended: Promise<number>;
  readonly quit: () => void;
  readonly close: () => Promise<void>;
}

/**
 * A double of Electron's module: the part of it that the program calls, held to Electron's types. Anything else is an
 * error. A window is a page in Chromium with the real preload script; what the real thing does in C++ (isolation, the
 * sandbox) is not there: tests hold what the program asks for, and what its handlers answer.
 */
export function desktop(browser: Browser): Desktop {
  const appEvents = new EventEmitter();
  const themeEvents = Object.assign(new EventEmitter(), { dark: false });
  const heard = new EventEmitter();
  const on =
    (events: EventEmitter, known: readonly string[], what: string) =>
    (event: string, listener: Listener): never => {
      if (!known.includes(event)) throw new Error(`The double of Electron tells no ${what} event “${event}”`);
      events.on(event, listener as (...args: unknown[]) => void);
      return undefined as never;
    };
  let end: (code: number) => void = () => undefined;
  let quitting = false;

  /** As Electron quits: windows close, each may stay; then `will-quit`, which may be put off. */
  function quit(): void {
    quitting = true;
    for (const window of [...desk.windows]) if (!window.close()) return void (quitting = false);
    let prevented = false;
    appEvents.emit('will-quit', { preventDefault: () => (prevented = true) });
    if (!prevented) end(0);
  }

  const app = {
    on: on(appEvents, ['open-file', 'second-instance', 'web-contents-created', 'activate', 'window-all-closed', 'will-quit'], 'app'), // prettier-ignore
    whenReady: async () => undefined,
    quit,
    exit: (code = 0) => end(code),
    enableSandbox: () => {
      desk.sandboxed = true;
    },
    requestSingleInstanceLock: () => desk.isFirst,
    getPath: (name) => desk.paths.get(name) ?? `/no-place/${name}`,
    setPath: (name, path) => void desk.paths.set(name, path),
    addRecentDocument: (path) => void desk.recent.push(path),
    setAboutPanelOptions: () => undefined,
    setAppUserModelId: () => undefined,
  } satisfies Of<App>;

  const dialog = {
    showOpenDialog: async () => {
      const path = desk.chosen.shift() ?? null;
      return { canceled: path === null, filePaths: path === null ? [] : [path] };
    },
    showSaveDialog: async () => {
      const path = desk.chosen.shift() ?? null;
      return { canceled: path === null, filePath: path ?? '' };
    },
    showMessageBoxSync: (_window: unknown, options?: MessageBoxSyncOptions) => {
      desk.asked.push(options!);
      const button = desk.pressed.shift();
      if (button === undefined) throw new Error(`Nobody presses a button of “${options!.message}”`);
      return button;
    },
    showErrorBox: (title, content) => {
      throw new Error(`${title}: ${content}`);
    },
  } satisfies Of<Dialog>;

  const ipcMain = {
    handle: (channel, listener) => void desk.invoked.set(channel, listener as (event: never) => unknown),
    on: (channel, listener) => heard.on(channel, listener) as never,
  } satisfies Of<IpcMain>;

  const protocol = {
    registerSchemesAsPrivileged: (schemes) => void desk.schemes.push(...schemes),
    handle: (scheme, handler) => void desk.handlers.set(scheme, handler as (request: Request) => Promise<Response>),
  } satisfies Of<Protocol>;

  const screen = {
    getAllDisplays: () => desk.displays.map((workArea) => ({ workArea }) as Electron.Display),
  } satisfies Of<Screen>;

  const shell = {
    openPath: async (path) => {
      const { readFile } = await import('node:fs/promises');
      if (desk.openFault === '') desk.openedPaths.push({ path, content: await readFile(path) });
      return desk.openFault;
    },
    showItemInFolder: () => undefined,
  } satisfies Of<Shell>;

  const nativeTheme = {
    on: on(themeEvents, ['updated'], 'theme'),
    get shouldUseDarkColors() {
      return themeEvents.dark;
    },
  } satisfies Of<NativeTheme>;

  const defaultSession = {
    setPermissionRequestHandler: (handler) => void (desk.session.request = handler),
    setPermissionCheckHandler: (handler) => void (desk.session.check = handler),
    setDevicePermissionHandler: (handler) => void (desk.session.device = handler),
    webRequest: only('session.webRequest', {
      onBeforeRequest: (listener: unknown) => void (desk.session.before = listener as never),
    }) as never,
  } satisfies Of<Session>;

  class BrowserWindow extends DoubleWindow {
    constructor(options: BrowserWindowConstructorOptions) {
      super(options, browser, desk, {
        created: (contents) => appEvents.emit('web-contents-created', {}, contents),
        gone: (window) => {
          desk.windows.splice(desk.windows.indexOf(window), 1);
          if (desk.windows.length === 0 && !quitting) appEvents.emit('window-all-closed');
        },
      });
      desk.windows.push(this);
      return only('BrowserWindow', this.offered, this);
    }
  }

  const Menu = {
    buildFromTemplate: (template: MenuItemConstructorOptions[]) => template as never,
    setApplicationMenu: (menu: unknown) => void (desk.menu = menu as MenuItemConstructorOptions[]),
  } satisfies Of<typeof Electron.Menu>;

  const electron = {
    app: only('app', app),
    BrowserWindow,
    dialog: only('dialog', dialog),
    ipcMain: only('ipcMain', ipcMain),
    Menu: only('Menu', Menu),
    nativeTheme: only('nativeTheme', nativeTheme),
    protocol: only('protocol', protocol),
    screen: only('screen', screen),
    session: only('session', { defaultSession: only('session', defaultSession) }),
    shell: only('shell', shell),
  } satisfies { readonly [Name in keyof typeof Electron.CrossProcessExports]?: unknown };

  const desk: Desktop = {
    electron: only('electron', electron),
    app: appEvents,
    nativeTheme: themeEvents,
    windows: [],
    page: () => {
      const [window] = desk.windows;
      if (!window) throw new Error('There is no window');
      return window;
    },
    isFirst: true,
    displays: [{ x: 0, y: 0, width: 1920, height: 1040 }],
    chosen: [],
    pressed: [],
    asked: [],
    recent: [],
    openedPaths: [],
    openFault: '',
    paths: new Map(),
    menu: [],
    sandboxed: false,
    schemes: [],
    handlers: new Map(),
    invoked: new Map(),
    heard,
    session: { request: null, check: null, device: null, before: null },
    ended: new Promise((resolve) => {
      end = resolve;
    }),
    quit,
    close: async () => {
      for (const window of [...desk.windows]) await window.dispose();
    },
  };
  return desk;
}

/** Of an object only what the double offers: a call that it does not know is an error, not a silent nothing. */
export function only<T extends object>(what: string, offered: object, behind?: T): T {
  return new Proxy(offered, {
    get: (target, name) => {
      if (Reflect.has(target, name)) return Reflect.get(target, name) as unknown;
      // Asked by the language itself, not by the program.
      if (typeof name === 'symbol' || name === 'then' || name === '__esModule' || name === 'default') return undefined;
      throw new Error(`The double of Electron has no ${what}.${name}`);
    },
    getPrototypeOf: () => (behind ? Reflect.getPrototypeOf(behind) : Reflect.getPrototypeOf(offered)),
  }) as T;
}
