import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { stageOf } from '../../../renderer/state/stages.ts';
import { texts } from '../../../renderer/texts.ts';
import { startMain, type Started } from '../../electron-double/start-main.ts';
import { openBrowser } from '../browser.ts';
import { withoutPicture } from '../support/program.ts';

let browser: Browser;
let folder: string;
let program: Started;
beforeAll(async () => {
  [browser, folder] = await Promise.all([openBrowser(withoutPicture), mkdtemp(join(tmpdir(), 'stillplate-desk-'))]);
});
afterAll(async () => {
  expect(program.desk.windows.flatMap(({ letOut }) => letOut)).toEqual([]);
  await program.end();
  await browser.close();
  await rm(folder, { recursive: true, force: true });
});

const depthIn = (text: string): unknown => (JSON.parse(text) as { water: { depth: string } }).water.depth;

const patience = { timeout: 300_000 };

async function setDepth(page: Page, depth: string): Promise<void> {
  const field = page.locator('.sheet').getByLabel(texts.fields.depth[0], { exact: true });
  await field.fill(depth);
  await field.press('Enter');
}

/** The real main process, preload script and page; of Electron itself the double. */
it('works on a file on the desktop: writes it, writes over no change of another program, and is back after a crash', async () => {
  const file = join(folder, 'skerry.stillplate.json');
  const sample = JSON.parse(await readFile(resolve('samples/small.stillplate.json'), 'utf8')) as object;
  await writeFile(file, JSON.stringify({ ...sample, chosen: null }));
  program = await startMain(browser, { page: resolve('build/bundled/page'), args: [file] });
  const window = program.desk.page();
  const page = await window.loaded();
  await page.getByText(texts.headline.decides).waitFor(patience);
  await page.getByRole('button', { name: texts.stages[stageOf('loads')], exact: true }).click();

  // Every edit goes into the store at once and into the file soon after; the mark on the window says which.
  await setDepth(page, '23 m');
  await expect.poll(async () => depthIn(await readFile(file, 'utf8')), patience).toBe('23 m');
  await expect.poll(() => window.edited, patience).toBe(false);

  // Another program writes the file: the next edit is kept, and the file is left alone until the person has chosen.
  const theirs = (await readFile(file, 'utf8')).replace('"23 m"', '"21 m"');
  await writeFile(file, theirs);
  await setDepth(page, '24 m');
  const asks = page.getByRole('alertdialog');
  await asks.waitFor(patience);
  expect(await asks.textContent()).toContain('skerry.stillplate.json');
  expect(await readFile(file, 'utf8')).toBe(theirs);
  await asks.getByRole('button', { name: texts.notices.keepBothFiles }).click();
  await expect.poll(async () => depthIn(await readFile(file, 'utf8')), patience).toBe('24 m');
  await asks.waitFor({ state: 'hidden' });

  // The page's process dies: the window comes back by itself, on its sheet, at the last edit.
  window.crash();
  await expect.poll(() => window.reloads, patience).toBe(1);
  await expect
    .poll(() => page.locator('.sheet').getByLabel(texts.fields.depth[0], { exact: true }).inputValue(), patience)
    .toBe('24 m');

  // What the other program wrote stands beside it as a document of its own.
  await page.getByRole('button', { name: texts.headline.home }).click();
  const other = page.locator('.recent button.name', { hasText: '(from the file)' });
  await other.click();
  await page.getByText(texts.headline.decides).waitFor(patience);
  await page.getByRole('button', { name: texts.stages[stageOf('loads')], exact: true }).click();
  await expect
    .poll(() => page.locator('.sheet').getByLabel(texts.fields.depth[0], { exact: true }).inputValue(), patience)
    .toBe('21 m');
});
