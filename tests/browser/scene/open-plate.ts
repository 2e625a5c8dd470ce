import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import type { Browser, Page } from 'playwright-core';

const root = fileURLToPath(new URL('../../../', import.meta.url));
const origin = 'http://plate.test';
const policy =
  "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; worker-src 'self'; object-src 'none'; style-src 'self'; img-src 'self' data: blob:";

let bundle: Promise<{ readonly script: string; readonly style: string }> | undefined;

async function bundled(): Promise<{ script: string; style: string }> {
  const { outputFiles } = await build({
    absWorkingDir: root,
    entryPoints: ['tests/browser/scene/page.mjs'],
    outdir: 'out',
    bundle: true,
    write: false,
    format: 'esm',
    target: 'es2022',
    jsx: 'automatic',
    define: { 'process.env.NODE_ENV': '"production"' },
    logLevel: 'warning',
  });
  const file = (ending: string): string => outputFiles.find(({ path }) => path.endsWith(ending))!.text;
  return { script: file('.js'), style: file('.css') };
}

/** Opens the page with one plate, `middle`, `small` or `many`, and an option after a slash; waits until it is drawn. */
export async function openPlate(
  browser: Browser,
  plate = 'middle',
  settings: {
    readonly width?: number;
    readonly height?: number;
    readonly dark?: boolean;
    readonly draws?: boolean;
    /** Runs in the page before its own scripts. */
    readonly before?: string;
  } = {},
): Promise<Page> {
  const { width = 1440, height = 900, dark = false, draws = true, before } = settings;
  const { script, style } = await (bundle ??= bundled());
  const page = await browser.newPage({
    viewport: { width, height },
    colorScheme: dark ? 'dark' : 'light',
    reducedMotion: 'reduce',
  });
  page.setDefaultTimeout(240_000);
  if (before !== undefined) await page.addInitScript(before);
  await page.route(`${origin}/**`, (route) => {
    const { pathname } = new URL(route.request().url());
    if (pathname === '/page.js') return route.fulfill({ contentType: 'text/javascript', body: script });
    if (pathname === '/page.css') return route.fulfill({ contentType: 'text/css', body: style });
    return route.fulfill({
      contentType: 'text/html',
      headers: { 'content-security-policy': policy },
      body: '<!doctype html><html lang="en"><title>Plate</title><link rel="stylesheet" href="/page.css"><div id="root"></div><script type="module" src="/page.js"></script></html>',
    });
  });
  let broken: Error | null = null;
  page.on('pageerror', (error) => {
    console.error('page:', error.message);
    broken ??= error;
  });
  await page.goto(`${origin}/#${plate}`);
  if (draws) {
    // Not waitForFunction: it polls with eval, which the content policy stops.
    while (!(await page.evaluate<boolean>('Boolean(window.plate?.root?.scene.children.length)'))) {
      if (broken) throw new Error(`The plate “${plate}” is not drawn`, { cause: broken });
      await page.waitForTimeout(50);
    }
    await drawn(page);
  }
  return page;
}

/** Waits for two frames. */
export const drawn = (page: Page): Promise<unknown> =>
  page.evaluate('new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)))');
