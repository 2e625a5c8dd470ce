import type { BrowserWindow, BrowserWindowConstructorOptions, Rectangle, WebContents } from 'electron';
import { EventEmitter } from 'node:events';
import { readFile } from 'node:fs/promises';
import type { Browser, BrowserContext, Frame, Page, Route } from 'playwright-core';
import { only, type Desktop } from './electron.ts';
import { rendererShim } from './renderer-shim.ts';

/** Chromium knows no scheme of ours: the page lies under this origin, and the program hears of the real address. */
const standIn = 'https://window.stillplate.test';
const real = 'stillplate://window';
const realAddress = (url: string): string => (url.startsWith(standIn) ? real + url.slice(standIn.length) : url);

interface Hears {
  readonly created: (contents: object) => void;
  readonly gone: (window: DoubleWindow) => void;
}

let lastId = 0;

/** A window of the double: a page in Chromium, and what a test sees of it. */
export class DoubleWindow {
  readonly events = new EventEmitter();
  readonly contentsEvents = new EventEmitter();
  readonly contentsId = ++lastId;
  title: string;
  edited = false;
  shown = false;
  focused = 0;
  minimised = false;
  maximised = false;
  destroyed = false;
  bounds: Rectangle;
  reloads = 0;
  /** Whether the page asks to stay when it is closed. */
  asksToStay = false;
  /** What each answer of the scheme's handler had for headers, by address. */
  readonly served: { readonly url: string; readonly headers: Headers }[] = [];
  /** Requests that went past our own scheme and were let through. */
  readonly letOut: string[] = [];
  openHandler: Parameters<WebContents['setWindowOpenHandler']>[0] | null = null;
  /** What the program sees. */
  readonly offered: object;
  readonly contents: object;
  private context: BrowserContext | null = null;
  private readonly ready: Promise<Page>;
  private isReady: (page: Page) => void = () => undefined;

  constructor(
    readonly options: BrowserWindowConstructorOptions,
    private readonly browser: Browser,
    private readonly desk: Desktop,
    private readonly hears: Hears,
  ) {
    const { x = 0, y = 0, width = 800, height = 600, title = '' } = options;
    this.bounds = { x, y, width, height };
    this.title = title;
    this.ready = new Promise((resolve) => {
      this.isReady = resolve;
    });
    const add =
      (events: EventEmitter, known: readonly string[], kind: 'on' | 'once') =>
      (event: string, listener: (...args: never[]) => void): never => {
        if (!known.includes(event)) throw new Error(`The double of Electron tells no event “${event}” of a window`);
        events[kind](event, listener as (...args: unknown[]) => void);
        return undefined as never;
      };
    const ofContents = ['will-navigate', 'will-frame-navigate', 'will-redirect', 'will-attach-webview', 'will-prevent-unload', 'render-process-gone', 'did-start-navigation', 'destroyed']; // prettier-ignore
    this.contents = only('webContents', {
      id: this.contentsId,
      on: add(this.contentsEvents, ofContents, 'on'),
      once: add(this.contentsEvents, ofContents, 'once'),
      send: (channel: string, ...args: unknown[]) => void this.send(channel, args),
      reload: () => void this.reload(),
      isDestroyed: () => this.destroyed,
      setWindowOpenHandler: (handler) => void (this.openHandler = handler),
    } satisfies Partial<WebContents>);
    const ofWindow = ['ready-to-show', 'close', 'closed', 'page-title-updated'];
    this.offered = {
      webContents: this.contents as WebContents,
      on: add(this.events, ofWindow, 'on'),
      once: add(this.events, ofWindow, 'once'),
      loadURL: (url) => this.load(url),
      show: () => void (this.shown = true),
      focus: () => void this.focused++,
      restore: () => void (this.minimised = false),
      maximize: () => void (this.maximised = true),
      isMaximized: () => this.maximised,
      isMinimized: () => this.minimised,
      getNormalBounds: () => this.bounds,
      setTitle: (title) => void (this.title = title),
      setDocumentEdited: (edited) => void (this.edited = edited),
      isDestroyed: () => this.destroyed,
      destroy: () => this.gone(),
    } satisfies Partial<BrowserWindow>;
    hears.created(this.contents);
  }

  /** The page, once it is loaded. */
  readonly loaded = (): Promise<Page> => this.ready;

  /** As the user closes it; says whether it closed. */
  close(): boolean {
    if (this.destroyed) return true;
    if (this.asksToStay) {
      let leave = false;
      this.contentsEvents.emit('will-prevent-unload', { preventDefault: () => (leave = true) });
      if (!leave) return false;
    }
    this.events.emit('close', { preventDefault: () => undefined });
    this.gone();
    return true;
  }

  /** As the page loads itself anew. */
  async loadAnew(): Promise<void> {
    this.startsNavigation();
    await (await this.ready).reload();
  }

  /** As the page's process dies. The program decides what comes next. */
  crash(reason: Electron.RenderProcessGoneDetails['reason'] = 'crashed'): void {
    this.contentsEvents.emit('render-process-gone', {}, { reason, exitCode: 1 });
  }

  /** Calls the program's handler as a frame would, past page and preload. */
  async invoke(
    channel: string,
    frame: object | null,
    args: readonly unknown[],
    id = this.contentsId,
  ): Promise<unknown> {
    const handler = this.desk.invoked.get(channel);
    if (!handler) throw new Error(`No handler registered for “${channel}”`);
    const sender = id === this.contentsId ? this.contents : { id };
    return handler({ sender, senderFrame: frame } as never, ...args);
  }

  /** What a page or a frame that wants to go somewhere is told. True when it may. */
  mayNavigate(
    kind: 'will-navigate' | 'will-frame-navigate' | 'will-redirect',
    url: string,
    isMainFrame = true,
  ): boolean {
    let allowed = true;
    const details = { url, isMainFrame, preventDefault: () => (allowed = false) };
    this.contentsEvents.emit(kind, details, url);
    return allowed;
  }

  async dispose(): Promise<void> {
    this.destroyed = true;
    await this.context?.close();
  }

  private gone(): void {
    if (this.destroyed) return;
    this.destroyed = true;
    this.contentsEvents.emit('destroyed');
    this.events.emit('closed');
    this.hears.gone(this);
    void this.context?.close();
  }

  private async load(url: string): Promise<void> {
    if (!url.startsWith(`${real}/`)) throw new Error(`The double of Electron loads no ${url}`);
    const context = await this.browser.newContext({
      viewport: { width: this.bounds.width, height: this.bounds.height },
    });
    this.context = context;
    await context.route('**/*', (route) => this.serve(route));
    await context.exposeBinding('__toMain', ({ frame }, kind: 'invoke' | 'send', channel: string, args: string) =>
      this.hear(frame, kind, channel, args),
    );
    const preload = this.options.webPreferences?.preload;
    if (preload) await context.addInitScript({ content: rendererShim(await readFile(preload, 'utf8')) });
    const page = await context.newPage();
    this.startsNavigation();
    await page.goto(standIn + url.slice(real.length));
    this.events.emit('ready-to-show');
    this.isReady(page);
  }

  private async reload(): Promise<void> {
    this.reloads++;
    const page = await this.ready;
    this.startsNavigation();
    await page.reload().catch(gone);
  }

  private startsNavigation(): void {
    this.contentsEvents.emit('did-start-navigation', { isMainFrame: true, isSameDocument: false });
  }

  /** A request of the page: to the handler of our scheme, or past it if the session lets it. */
  private async serve(route: Route): Promise<void> {
    const request = route.request();
    const url = realAddress(request.url());
    let cancelled = false;
    this.desk.session.before?.({ url } as never, ({ cancel }) => (cancelled = cancel === true));
    const handler = this.desk.handlers.get(new URL(url).protocol.slice(0, -1));
    if (cancelled) return route.abort('blockedbyclient').catch(gone);
    if (!handler) {
      this.letOut.push(url);
      return route.fulfill({ status: 200, body: '' }).catch(gone);
    }
    const response = await handler(new Request(url, { method: request.method() }));
    this.served.push({ url, headers: response.headers });
    const body = Buffer.from(await response.arrayBuffer());
    await route.fulfill({ status: response.status, headers: Object.fromEntries(response.headers), body }).catch(gone);
  }

  private async hear(frame: Frame, kind: 'invoke' | 'send', channel: string, args: string): Promise<string> {
    const senderFrame = {
      url: realAddress(frame.url()),
      parent: frame.parentFrame() === null ? null : {},
    };
    const values = unpacked(args) as unknown[];
    if (kind === 'invoke') return packed(await this.invoke(channel, senderFrame, values));
    this.desk.heard.emit(channel, { sender: this.contents, senderFrame }, ...values);
    return packed(null);
  }

  private async send(channel: string, args: readonly unknown[]): Promise<void> {
    const page = await this.ready;
    await page.evaluate(`window.__fromMain(${JSON.stringify(channel)}, ${JSON.stringify(packed(args))})`).catch(gone);
  }
}

/** A page that was closed or loaded anew in the meantime hears nothing more: no fault of the test's. */
const gone = (error: unknown): void => {
  if (!/closed|navigation|destroyed|ERR_ABORTED|detached/i.test(String(error))) throw error;
};

/** Values as they cross: JSON and bytes; anything else is refused, as a structured clone of the real thing may lose it. */
export function packed(value: unknown): string {
  return JSON.stringify(value, function (this: Record<string, unknown>, key, walked: unknown) {
    const own = this[key];
    if (own instanceof Uint8Array) return { $bytes: Buffer.from(own).toString('base64') };
    if (typeof own === 'function' || typeof own === 'symbol' || typeof own === 'bigint' || own instanceof Date)
      throw new Error(`An object could not be cloned: ${typeof own} at “${key}”`);
    if (own !== null && typeof own === 'object' && '$bytes' in own) return { $plain: Object.entries(own) };
    return own === undefined && Array.isArray(this) ? { $undefined: true } : walked;
  });
}

export function unpacked(text: string): unknown {
  return JSON.parse(text, (_key, value: unknown) => {
    if (typeof value !== 'object' || value === null) return value;
    if ('$bytes' in value) return new Uint8Array(Buffer.from(value.$bytes as string, 'base64'));
    if ('$undefined' in value) return undefined;
    return '$plain' in value ? Object.fromEntries(value.$plain as [string, unknown][]) : value;
  });
}
