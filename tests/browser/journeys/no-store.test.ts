import { cp, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { documentHash } from '../../../core/document/document-hash.ts';
import { readDocumentText } from '../../../core/document/read-document.ts';
import { texts } from '../../../renderer/texts.ts';
import { openBrowser } from '../browser.ts';
import { withoutPicture } from '../support/program.ts';
import { serveStillplate, type Served } from '../support/served.ts';
import { openWorkbench, textOf } from '../support/workbench.ts';

let browser: Browser;
let folder: string;
let served: Served;
beforeAll(async () => {
  // Two folders of the bundle by themselves: no package is installed beside them, SQLite neither.
  folder = await mkdtemp(join(tmpdir(), 'stillplate-alone-'));
  await Promise.all(
    ['desktop', 'page'].map((part) => cp(resolve('build/bundled', part), join(folder, part), { recursive: true })),
  );
  [browser, served] = await Promise.all([
    openBrowser(withoutPicture),
    serveStillplate(undefined, join(folder, 'desktop/serve.mjs')),
  ]);
});
afterAll(async () => {
  await browser.close();
  await served.close();
  await rm(folder, { recursive: true, force: true });
});

it('works where SQLite is not installed: says so and how to mend it, follows every edit, and saves a file', async () => {
  const window = await openWorkbench(browser, served);
  const { page } = window;
  await page.getByText('better-sqlite3').first().waitFor();
  await page.locator('.cards button').first().click();
  await page.getByText(texts.headline.decides).waitFor();
  const notice = page.locator('.notice.loud', { hasText: texts.notices.notKept });
  await notice.waitFor();
  expect(await notice.innerText()).toMatch(/npm/);
  const before = await page.locator('.headline dl').innerText();
  await window.open('panels');
  await window.type(texts.fields.thickness[0], '11 mm');
  await expect.poll(() => page.locator('.headline dl').innerText()).not.toBe(before);
  await page.keyboard.press('Control+z');
  await expect.poll(() => page.locator('.headline dl').innerText()).toBe(before);
  await page.keyboard.press('Control+y');
  await expect.poll(() => page.locator('.headline dl').innerText()).not.toBe(before);

  // A file holds what no store does.
  await page.keyboard.press('Control+s');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: texts.history.saveFile }).click();
  const text = await textOf((await download).createReadStream());
  expect(text).toContain('11 mm');
  expect(documentHash(readDocumentText(text))).toMatch(/^[0-9a-f]+$/);
  await window.close();
});
