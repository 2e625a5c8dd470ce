import { readFile } from 'node:fs/promises';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { contentPolicy } from '../../electron/window/content-policy.ts';
import { openBrowser } from '../browser/browser.ts';
import { startMain, type Started, type Undo } from '../electron-double/start-main.ts';
import type { DoubleWindow } from '../electron-double/window.ts';

interface Subject extends Started {
  readonly window: DoubleWindow;
  readonly page: Page;
}

/** One item of the list: what holds, and how its guard is undone so that the same assertion fails. */
interface Item {
  readonly holds: (subject: Subject) => Promise<void>;
  readonly undo: readonly Undo[];
}

const ours = { url: 'stillplate://window/index.html', parent: null };
const preferences = ({ window }: Subject) => window.options.webPreferences!;
const inWindow = (find: string, put: string): readonly Undo[] => [
  { file: 'electron/window/open-window.ts', find, put },
];
const inGuard = (find: string | RegExp, put: string): readonly Undo[] => [
  { file: 'electron/window/guard.ts', find, put },
];

/** Every permission that Electron's types know, of requests and of checks. */
const permissions = [
  'clipboard-read', 'clipboard-sanitized-write', 'display-capture', 'fullscreen', 'geolocation', 'idle-detection', 'media',
  'mediaKeySystem', 'midi', 'midiSysex', 'notifications', 'pointerLock', 'keyboardLock', 'openExternal', 'speaker-selection',
  'storage-access', 'top-level-storage-access', 'window-management', 'unknown', 'fileSystem', 'hid', 'serial', 'usb',
  'deprecated-sync-clipboard-read',
] as const; // prettier-ignore

function grantedTo({ desk }: Subject, from: string): string[] {
  const { request, check, device } = desk.session;
  expect(device!({ deviceType: 'usb', origin: from, device: {} as never })).toBe(false);
  return permissions.filter((permission) => {
    let granted = check!(null, permission as never, from, {} as never);
    request!({} as never, permission as never, (answer) => (granted ||= answer), { requestingUrl: from } as never);
    return granted;
  });
}

/** What the program answers to a call from a frame. */
const about = ({ window }: Subject, frame: object | null, id?: number): Promise<unknown> =>
  window.invoke('stillplate-call', frame, ['about', {}], id);

const cancelled = ({ desk }: Subject, url: string): boolean => {
  let cancel: boolean | undefined;
  desk.session.before!({ url } as never, (answer) => (cancel = answer.cancel));
  return cancel === true;
};

const asked = ({ desk }: Subject, url: string, method = 'GET'): Promise<Response> =>
  Promise.resolve(desk.handlers.get('stillplate')!({ url, method } as Request));

/** Electron's own list, "Checklist: Security recommendations" of its documentation, item by item (read November 2026). */
const checklist: Readonly<Record<string, Item>> = {
  '1. Only load secure content': {
    holds: async (subject) => {
      for (const url of [
        'http://example.com/a.js',
        'https://example.com/',
        'ws://example.com',
        'ftp://example.com/',
        'file:///etc/hosts',
        'blob:https://example.com/1',
      ])
        // prettier-ignore
        expect(cancelled(subject, url), url).toBe(true);
      for (const url of ['stillplate://window/main.js', 'data:image/png;base64,AA', 'blob:stillplate://window/1'])
        expect(cancelled(subject, url), url).toBe(false);
      expect(subject.window.letOut).toEqual([]);
    },
    undo: inGuard('cancel: !staysHere(url)', 'cancel: false && !staysHere(url)'),
  },
  '2. Do not enable Node.js integration': {
    holds: async (subject) =>
      void expect(preferences(subject)).toMatchObject({
        nodeIntegration: false,
        nodeIntegrationInWorker: false,
        nodeIntegrationInSubFrames: false,
      }),
    undo: inWindow('nodeIntegrationInWorker: false', 'nodeIntegrationInWorker: true'),
  },
  '3. Enable context isolation': {
    holds: async (subject) => void expect(preferences(subject).contextIsolation).toBe(true),
    undo: inWindow('contextIsolation: true', 'contextIsolation: false'),
  },
  '4. Enable process sandboxing': {
    holds: async (subject) => {
      expect(preferences(subject).sandbox).toBe(true);
      expect(subject.desk.sandboxed).toBe(true);
    },
    undo: [{ file: 'electron/main.ts', find: 'app.enableSandbox();', put: '' }],
  },
  '5. Handle session permission requests': {
    holds: async (subject) => {
      expect(grantedTo(subject, 'stillplate://window/index.html')).toEqual(['clipboard-sanitized-write']);
      expect(grantedTo(subject, 'https://example.com/')).toEqual([]);
    },
    undo: inGuard("permission === 'clipboard-sanitized-write' &&", ''),
  },
  '6. Do not disable webSecurity': {
    holds: async (subject) => void expect(preferences(subject).webSecurity).toBe(true),
    undo: inWindow('webSecurity: true', 'webSecurity: false'),
  },
  '7. Define a Content-Security-Policy': {
    holds: async (subject) => {
      for (const part of [
        "default-src 'none'",
        "script-src 'self' 'wasm-unsafe-eval'",
        "worker-src 'self'",
        "object-src 'none'",
        "style-src 'self'",
        "base-uri 'none'",
        "form-action 'none'",
        "frame-ancestors 'none'",
      ])
        // prettier-ignore
        expect(contentPolicy.split('; ')).toContain(part);
      // On every answer: the page, its scripts, and what is not there.
      const answers = [await asked(subject, 'stillplate://window/index.html'), await asked(subject, 'stillplate://window/main.js'), await asked(subject, 'stillplate://window/none.js')]; // prettier-ignore
      expect(answers.map(({ status }) => status)).toEqual([200, 200, 404]);
      const all = [...answers, ...subject.window.served];
      expect(all.length).toBeGreaterThanOrEqual(5);
      for (const { headers } of all) {
        expect(headers.get('Content-Security-Policy')).toBe(contentPolicy);
        expect(headers.get('X-Content-Type-Options')).toBe('nosniff');
      }
      // Chromium holds the page to it.
      await expect(subject.page.evaluate(`new Promise((stop, ran) => { const s = document.createElement('script'); s.textContent = 'window.ran = 1'; document.head.append(s); setTimeout(() => (window.ran ? ran(new Error('ran')) : stop('held')), 50); })`)).resolves.toBe('held'); // prettier-ignore
    },
    undo: [{ file: 'electron/window/serve-page.ts', find: '...pageHeaders, ', put: '' }],
  },
  '8. Do not enable allowRunningInsecureContent': {
    holds: async (subject) => void expect(preferences(subject).allowRunningInsecureContent).toBe(false),
    undo: inWindow('allowRunningInsecureContent: false', 'allowRunningInsecureContent: true'),
  },
  '9. Do not enable experimental features': {
    holds: async (subject) => void expect(preferences(subject).experimentalFeatures).toBe(false),
    undo: inWindow('experimentalFeatures: false', 'experimentalFeatures: true'),
  },
  '10. Do not use enableBlinkFeatures': {
    holds: async (subject) => {
      expect(preferences(subject)).not.toHaveProperty('enableBlinkFeatures');
      expect(preferences(subject)).not.toHaveProperty('additionalArguments');
    },
    undo: inWindow('webviewTag: false,', "webviewTag: false, enableBlinkFeatures: 'PreciseMemoryInfo',"),
  },
  '11. webview: do not use allowpopups': {
    holds: async (subject) => {
      expect(preferences(subject).webviewTag).toBe(false);
      expect(await subject.page.evaluate('document.querySelectorAll("webview").length')).toBe(0);
    },
    undo: inWindow('webviewTag: false', 'webviewTag: true'),
  },
  '12. webview: verify options and params': {
    holds: async ({ window }) => {
      let prevented = false;
      window.contentsEvents.emit('will-attach-webview', { preventDefault: () => (prevented = true) }, {}, {});
      expect(prevented).toBe(true);
    },
    undo: inGuard("contents.on('will-attach-webview', (event) => event.preventDefault());", ''),
  },
  '13. Disable or limit navigation': {
    holds: async ({ window }) => {
      for (const kind of ['will-navigate', 'will-frame-navigate', 'will-redirect'] as const) {
        for (const url of [
          'https://example.com/',
          'file:///etc/hosts',
          'javascript:alert(1)',
          'stillplate://other/index.html',
          'stillplate://window/samples/a.json',
          'data:text/html,x',
        ])
          // prettier-ignore
          expect(window.mayNavigate(kind, url), `${kind} ${url}`).toBe(false);
        expect(window.mayNavigate(kind, 'stillplate://window/index.html', false), kind).toBe(false);
        expect(window.mayNavigate(kind, 'stillplate://window/index.html#panels'), kind).toBe(true);
      }
    },
    undo: inGuard("contents.on('will-redirect', refuseOther);", ''),
  },
  '14. Disable or limit creation of new windows': {
    holds: async ({ window }) =>
      void expect(window.openHandler!({ url: 'stillplate://window/index.html' } as never)).toEqual({ action: 'deny' }),
    undo: inGuard("action: 'deny'", "action: 'allow'"),
  },
  '15. Do not use shell.openExternal with untrusted content': {
    // The double has no openExternal: a call of it would be an error. Only our own printed pages are opened.
    holds: async ({ page, desk, folder }) => {
      await page.evaluate(`stillplateHost.call('print', { bytes: Uint8Array.of(1) })`);
      expect(desk.openedPaths).toHaveLength(1);
      expect(desk.openedPaths[0]!.path.startsWith(folder)).toBe(true);
      expect(await page.evaluate(`stillplateHost.call('print', { bytes: 'https://example.com/' })`)).toMatchObject({ ok: false }); // prettier-ignore
    },
    undo: [{ file: 'electron/window/printing.ts', find: 'shell.openPath(file)', put: 'shell.openExternal(file)' }],
  },
  '16. Use a current version of Electron': {
    // What is current is for whoever makes a release to see; here the pinned version is the one whose types are held.
    holds: async () => {
      const wanted = (JSON.parse(await readFile(new URL('../../package.json', import.meta.url), 'utf8')) as { devDependencies: Record<string, string> }).devDependencies['electron']!; // prettier-ignore
      expect(Number(/\d+/.exec(wanted)![0])).toBeGreaterThanOrEqual(43);
    },
    undo: [],
  },
  '17. Validate the sender of all IPC messages': {
    holds: async (subject) => {
      expect(await about(subject, ours)).toMatchObject({ ok: true });
      for (const frame of [
        { url: 'https://example.com/', parent: null },
        { url: 'stillplate://other/index.html', parent: null },
        { url: 'about:blank', parent: null },
        { ...ours, parent: ours },
        null,
      ])
        expect(await about(subject, frame), JSON.stringify(frame)).toMatchObject({ ok: false });
      expect(await about(subject, ours, 999)).toMatchObject({ ok: false });
    },
    undo: [{ file: 'electron/window/ipc.ts', find: 'frame.parent === null &&', put: '' }],
  },
  '18. Avoid the file:// protocol and prefer custom protocols': {
    holds: async (subject) => {
      const [scheme] = subject.desk.schemes;
      expect(subject.desk.schemes).toHaveLength(1);
      expect(scheme!.privileges).toEqual({ standard: true, secure: true, supportFetchAPI: true, corsEnabled: false });
      const base = 'stillplate://window';
      expect((await asked(subject, `${base}/index.html`)).status).toBe(200);
      for (const url of [
        `${base}/../outside.json`,
        `${base}/..%2foutside.json`,
        `${base}/%2e%2e/outside.json`,
        `${base}/%2e%2e%2foutside.json`,
        `${base}/samples/..%2f..%2foutside.json`,
        `${base}/..%5coutside.json`,
        `${base}//outside.json`,
        `${base}/link.json`,
        'stillplate://other/index.html',
        'stillplate://window.example/index.html',
        'https://window/index.html',
        `${base}/index.html%00.js`,
        `${base}/secret.txt`,
        `${base}/samples`,
        `${base}/`,
        `${base}/%E0%A4%A`,
        'no address',
      ]) {
        // prettier-ignore
        const answer = await asked(subject, url);
        expect(answer.status, url).toBe(404);
        expect(await answer.text()).not.toContain('outside');
      }
      expect((await asked(subject, `${base}/index.html`, 'POST')).status).toBe(404);
    },
    undo: [{ file: 'electron/window/page-file.ts', find: 'inside && !file.startsWith(root + sep)', put: '!file' }],
  },
  '19. Check which fuses you can change': {
    holds: async () => {
      const packaging = JSON.parse(await readFile(new URL('../../build/packaging/electron-builder.json', import.meta.url), 'utf8')) as Record<string, unknown>; // prettier-ignore
      expect(packaging['electronFuses']).toEqual({
        runAsNode: false,
        enableCookieEncryption: true,
        enableNodeOptionsEnvironmentVariable: false,
        enableNodeCliInspectArguments: false,
        enableEmbeddedAsarIntegrityValidation: true,
        onlyLoadAppFromAsar: true,
        grantFileProtocolExtraPrivileges: false,
      });
    },
    undo: [],
  },
  '20. Do not expose Electron APIs to untrusted web content': {
    holds: async ({ page }) => {
      expect(await page.evaluate('window.__exposed')).toEqual(['stillplateHost']);
      expect(await page.evaluate('Object.keys(stillplateHost)')).toEqual(['call', 'listen']);
      expect(await page.evaluate('[typeof require, typeof process, typeof ipcRenderer]')).toEqual(['undefined', 'undefined', 'undefined']); // prettier-ignore
      expect(await page.evaluate('Object.isFrozen(stillplateHost)')).toBe(true);
      // What the page hears is the event alone, never Electron's, whose sender is ipcRenderer itself.
      expect(await page.evaluate('new Promise((hear) => { stillplateHost.listen((...all) => hear(all.length)); __fromMain("stillplate-event", "[{}]"); })')).toBe(1); // prettier-ignore
    },
    undo: [
      { file: 'electron/preload.ts', find: "contextBridge.exposeInMainWorld('stillplateHost', {", put: "contextBridge.exposeInMainWorld('stillplateHost', { ipcRenderer," }, // prettier-ignore
    ],
  },
};

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

async function subjectWith(undo: readonly Undo[]): Promise<Subject> {
  const started = await startMain(browser, { undo });
  const window = started.desk.page();
  return { ...started, window, page: await window.loaded() };
}

describe('Electron’s published list of recommendations for security', () => {
  let subject: Subject;
  beforeAll(async () => {
    subject = await subjectWith([]);
  });
  afterAll(() => subject.end());

  for (const [name, { holds, undo }] of Object.entries(checklist)) {
    it(name, () => holds(subject));
    if (undo.length > 0)
      it(`${name}: fails when it is undone`, async () => {
        const weak = await subjectWith(undo);
        try {
          await expect(holds(weak)).rejects.toThrow();
        } finally {
          await weak.end();
        }
      });
  }

  it('has each of the twenty items', () => {
    expect(Object.keys(checklist).map((name) => Number.parseInt(name, 10))).toEqual(Array.from({ length: 20 }, (_, i) => i + 1)); // prettier-ignore
  });
});
