import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { MenuItemConstructorOptions } from 'electron';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import type { HostEvent } from '../../core/host/host-schema.ts';
import { openBrowser } from '../browser/browser.ts';
import type { DoubleWindow } from '../electron-double/window.ts';
import { startMain, until, type Started, type StartWith } from '../electron-double/start-main.ts';
import { edit, textOf } from '../host/store/opened.ts';

let browser: Browser;
let own: string;
const running: Started[] = [];
beforeAll(async () => {
  browser = await openBrowser();
  own = await mkdtemp(join(tmpdir(), 'stillplate-user-'));
});
afterEach(async () => {
  for (const each of running.splice(0)) await each.end();
});
afterAll(async () => {
  await browser.close();
  await rm(own, { recursive: true, force: true });
});

async function start(
  options: StartWith = {},
): Promise<Started & { readonly window: DoubleWindow; readonly page: Page }> {
  const started = await startMain(browser, options);
  running.push(started);
  const window = started.desk.page();
  return { ...started, window, page: await window.loaded() };
}

/** What the small page has heard. */
const heard = (page: Page): Promise<HostEvent[]> => page.evaluate('window.heard ?? []');
const hears = async (page: Page, kind: HostEvent['kind']): Promise<HostEvent> => {
  let found: HostEvent | undefined;
  await until(async () => (found = (await heard(page)).find((event) => event.kind === kind)) !== undefined);
  return found!;
};
const call = (page: Page, name: string, message: unknown): Promise<unknown> =>
  page.evaluate(`stillplateHost.call(${JSON.stringify(name)}, ${JSON.stringify(message)})`);

async function plateFile(name: string): Promise<string> {
  const path = join(own, name);
  await writeFile(path, textOf(name));
  return path;
}

const items = (menu: readonly MenuItemConstructorOptions[]): MenuItemConstructorOptions[] =>
  menu.flatMap((item) => [item, ...(Array.isArray(item.submenu) ? items(item.submenu) : [])]);

describe('main', () => {
  it('shows a window that is ours and answers the page', async () => {
    const { desk, window, page, folder } = await start();
    expect(desk.windows).toHaveLength(1);
    expect(window.shown).toBe(true);
    expect(await call(page, 'about', {})).toMatchObject({
      ok: true,
      value: { carrier: 'electron', dataFolder: folder, storeFault: null, hasDialogs: true },
    });
    // What Chromium keeps lies with the documents, so that the lock is one for a data folder.
    expect(desk.paths.get('userData')).toBe(join(folder, 'browser'));
  });

  it('hands a file over that was named at the start, as a handle, a name and its text', async () => {
    const path = await plateFile('named.stillplate');
    const { desk, page } = await start({ args: ['--switch', 'run.mjs', path] });
    const event = await hears(page, 'open-file');
    expect(event).toEqual({
      kind: 'open-file',
      file: { handle: expect.stringMatching(/^[\w-]+$/), name: 'named.stillplate', text: textOf('named.stillplate'), readOnly: false }, // prettier-ignore
    });
    expect(JSON.stringify(event)).not.toContain(own);
    expect(desk.recent).toEqual([path]);
  });

  it('hands a file over that the system names later, and one of a second start, whose folder counts', async () => {
    const { desk, page, window } = await start();
    let prevented = 0;
    desk.app.emit('open-file', { preventDefault: () => prevented++ }, await plateFile('dropped.stillplate'));
    await until(async () => (await heard(page)).some((e) => e.kind === 'open-file' && e.file.name === 'dropped.stillplate')); // prettier-ignore
    expect(prevented).toBe(1);
    await plateFile('second.stillplate.json');
    window.minimised = true;
    desk.app.emit('second-instance', {}, ['stillplate', '--x', 'second.stillplate.json'], own);
    await until(async () => (await heard(page)).some((e) => e.kind === 'open-file' && e.file.name === 'second.stillplate.json')); // prettier-ignore
    expect(window).toMatchObject({ minimised: false, focused: 2 });
    desk.app.emit('second-instance', {}, ['stillplate'], own);
    expect(window.focused).toBe(3);
  });

  it('says in words why a file that was handed over cannot be read, without its path', async () => {
    const { desk, page } = await start();
    desk.app.emit('open-file', { preventDefault: () => undefined }, join(own, 'not-there.stillplate'));
    const event = await hears(page, 'refused');
    expect(JSON.stringify(event)).toContain('not-there.stillplate');
    expect(JSON.stringify(event)).not.toContain(own);
    expect(desk.recent).toEqual([]);
  });

  it('ends at once when another start has the data folder', async () => {
    const started = await startMain(browser, { before: (desk) => void (desk.isFirst = false) });
    expect(await started.desk.ended).toBe(0);
    expect(started.desk.windows).toEqual([]);
    await rm(started.folder, { recursive: true, force: true });
  });

  it('marks what is not kept, whatever title the page gives itself', async () => {
    const { page, window } = await start();
    await call(page, 'showState', { title: 'North – Stillplate', file: null, unsaved: true });
    expect(window).toMatchObject({ title: '• North – Stillplate', edited: true });
    let prevented = false;
    window.events.emit('page-title-updated', { preventDefault: () => (prevented = true) }, 'North');
    expect(prevented).toBe(true);
    await call(page, 'showState', { title: 'North – Stillplate', file: null, unsaved: false });
    expect(window).toMatchObject({ title: 'North – Stillplate', edited: false });
  });

  it('asks before it closes a window whose page wants to stay, and stays unless told', async () => {
    const { desk, window } = await start();
    window.asksToStay = true;
    desk.pressed.push(0, 1);
    desk.quit();
    expect(desk.windows).toHaveLength(1);
    expect(desk.asked[0]!.message).toContain('not in the store yet');
    desk.quit();
    expect(await desk.ended).toBe(0);
    expect(desk.asked).toHaveLength(2);
  });

  it('opens where it stood, and in the middle of a display when that one is lost', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'stillplate-place-'));
    const two = [{ x: 0, y: 0, width: 1920, height: 1040 }, { x: 1920, y: 0, width: 1920, height: 1040 }]; // prettier-ignore
    const first = await startMain(browser, { folder, before: (desk) => void (desk.displays = two) });
    await first.desk.page().loaded();
    first.desk.page().bounds = { x: 2100, y: 60, width: 1300, height: 800 };
    await first.end();
    expect(JSON.parse(await readFile(join(folder, 'window.json'), 'utf8'))).toEqual({ x: 2100, y: 60, width: 1300, height: 800, maximised: false }); // prettier-ignore
    const second = await startMain(browser, { folder, before: (desk) => void (desk.displays = two) });
    expect(second.desk.page().options).toMatchObject({ x: 2100, y: 60, width: 1300, height: 800 });
    await second.desk.page().loaded();
    await second.end();
    const third = await startMain(browser, { folder });
    expect(third.desk.page().options).toMatchObject({ x: 240, y: 70, width: 1440, height: 900 });
    await third.desk.page().loaded();
    await third.end();
    await rm(folder, { recursive: true, force: true });
  });

  it('brings a page that crashed back with every acknowledged edit, and events wait for it', async () => {
    const { desk, page, window } = await start();
    const made = (await call(page, 'createDocument', { name: 'C', text: textOf('C'), file: null })) as { value: { id: string } }; // prettier-ignore
    const { id } = made.value;
    expect(await call(page, 'appendEdits', { id, writer: 'w', after: 0, name: 'C', entries: [edit(1)] })).toMatchObject({ ok: true }); // prettier-ignore
    window.crash();
    desk.app.emit('open-file', { preventDefault: () => undefined }, await plateFile('while-gone.stillplate'));
    await page.waitForLoadState();
    expect(window.reloads).toBe(1);
    await until(async () => (await heard(page).catch(() => [])).some((event) => event.kind === 'open-file'));
    expect(await call(page, 'openDocument', { id })).toMatchObject({ ok: true, value: { journal: [edit(1)] } });
  });

  it('asks after the third crash in a minute instead of loading for ever', async () => {
    const { desk, page, window } = await start();
    for (let crash = 1; crash <= 3; crash++) {
      window.crash('oom');
      await page.waitForLoadState();
    }
    expect(window.reloads).toBe(3);
    expect(desk.asked).toHaveLength(0);
    desk.pressed.push(1);
    window.crash('oom');
    expect(desk.asked[0]!.message).toContain('several times');
    expect(window.reloads).toBe(4);
    window.crash('clean-exit');
    expect(window.reloads).toBe(4);
    for (let crash = 1; crash <= 3; crash++) window.crash();
    desk.pressed.push(0);
    window.crash();
    expect(await desk.ended).toBe(0);
  });

  it('sends every command of the menu to the page, and gives no key to two items', async () => {
    const { desk, page } = await start();
    const all = items(desk.menu);
    const commands = all.filter((item) => item.click);
    for (const item of commands) item.click!(undefined as never, undefined, undefined as never);
    await until(async () => (await heard(page)).length >= commands.length);
    const sent = (await heard(page)).map((event) => (event.kind === 'menu' ? event.command : event.kind));
    expect(sent).toEqual(['new', 'open', 'import', 'save', 'revisions', 'save-as', 'note', 'print', 'close', 'undo', 'redo', 'find', 'handbook', 'shortcuts', 'about']); // prettier-ignore
    const keys = all.flatMap((item) => (item.accelerator ? [String(item.accelerator)] : []));
    expect(new Set(keys).size).toBe(keys.length);
    const roles = all.map((item) => item.role);
    for (const role of ['cut', 'copy', 'paste', 'selectAll', 'quit', 'help', 'zoomIn', 'togglefullscreen', 'minimize'])
      expect(roles).toContain(role);
    // Nobody loads a page anew or looks behind it from the menu of a finished program.
    for (const role of ['reload', 'forceReload', 'toggleDevTools', 'close', 'windowMenu']) expect(roles).not.toContain(role); // prettier-ignore
  });

  it('tells the page when the system turns dark, and opens on that paper', async () => {
    const { desk, page, window } = await start({ before: (each) => void (each.nativeTheme.dark = true) });
    expect(window.options.backgroundColor).toBe('#12181b');
    desk.nativeTheme.dark = false;
    desk.nativeTheme.emit('updated');
    expect(await hears(page, 'theme')).toEqual({ kind: 'theme', dark: false });
  });

  it('leaves no printed page behind, not at its end and not after a crash', async () => {
    const { desk, page, folder, end } = await start();
    const print = () => page.evaluate(`stillplateHost.call('print', { bytes: Uint8Array.of(37, 80, 68, 70) })`);
    expect(await print()).toEqual({ ok: true, value: null });
    expect(new TextDecoder().decode(desk.openedPaths[0]!.content)).toBe('%PDF');
    expect(await readdir(join(folder, 'printing'))).toHaveLength(1);
    desk.openFault = 'no application';
    expect(await print()).toMatchObject({ ok: false, refusal: { what: expect.stringContaining('no program that shows a PDF') } }); // prettier-ignore
    expect(await readdir(join(folder, 'printing'))).toHaveLength(1);
    desk.quit();
    await desk.ended;
    expect(await readdir(folder)).not.toContain('printing');
    running.pop();
    // The file of a program that died is taken away by the next one.
    await writeFile(join(folder, 'printing'), 'left');
    const next = await startMain(browser, { folder });
    await next.desk.page().loaded();
    expect(await readdir(folder)).not.toContain('printing');
    await next.end();
    await end();
    await rm(folder, { recursive: true, force: true });
  });

  it('ends only when the store is closed: its log is written back', async () => {
    const { desk, page, folder } = await start();
    await call(page, 'createDocument', { name: 'D', text: textOf('D'), file: null });
    expect(await readdir(folder)).toContain('store.sqlite-wal');
    desk.quit();
    expect(await Promise.race([desk.ended, Promise.resolve('still writing')])).toBe('still writing');
    await desk.ended;
    const names = await readdir(folder);
    expect(names).toContain('store.sqlite');
    expect(names).not.toContain('store.sqlite-wal');
  });
});

describe('the double', () => {
  it('refuses what it does not know, and values that would be lost on the way', async () => {
    const { desk, page } = await start();
    expect(() => (desk.electron as { app: { relaunch: unknown } }).app.relaunch).toThrow('no app.relaunch');
    expect(() => (desk.electron as { Tray: unknown }).Tray).toThrow('no electron.Tray');
    await expect(page.evaluate(`stillplateHost.call('about', { when: () => 1 })`)).rejects.toThrow('could not be cloned'); // prettier-ignore
  });
});
