import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { sceneTexts } from '../../../renderer/scene/scene-texts.ts';
import { texts } from '../../../renderer/texts.ts';
import { openBrowser } from '../browser.ts';
import { serveStillplate, type Served } from '../support/served.ts';
import { openWorkbench } from '../support/workbench.ts';

let browser: Browser;
let served: Served;
beforeAll(async () => {
  browser = await openBrowser(['--disable-3d-apis']);
  served = await serveStillplate();
});
afterAll(async () => {
  await browser.close();
  await served.close();
});

it('works without WebGL, and says in place of the picture what is missing', async () => {
  const window = await openWorkbench(browser, served);
  const { page } = window;
  const id = await window.openSample('small');
  await page.getByText(sceneTexts.noPicture).waitFor();
  await page.getByText(sceneTexts.noPictureMend).waitFor();
  await window.open('panels');
  const mass = page.locator('.headline dl');
  const before = await mass.innerText();
  await window.kept(id, () => window.type(texts.fields.thickness[0], '9 mm'));
  await expect.poll(() => mass.innerText()).not.toBe(before);
  expect(await window.hash()).toBe((await served.stored(id)).hash);
  // The parts of the plate are there as text.
  const parts = page.locator('.scene-parts');
  await parts.getByRole('button', { name: /^Panels \d/ }).click();
  await expect.poll(() => parts.innerText()).toMatch(/A1/);
  await window.close();
});
