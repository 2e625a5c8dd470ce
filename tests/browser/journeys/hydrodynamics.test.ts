import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { texts } from '../../../renderer/texts.ts';
import { openBrowser } from '../browser.ts';
import { serveStillplate, type Served } from '../support/served.ts';
import { openWorkbench } from '../support/workbench.ts';

let browser: Browser;
let served: Served;
beforeAll(async () => {
  browser = await openBrowser();
  served = await serveStillplate();
});
afterAll(async () => {
  await browser.close();
  await served.close();
});

it('shows added mass and drag with their figures, and says what a motion taken out leaves unjudged', async () => {
  const bench = await openWorkbench(browser, served);
  await bench.openSample('small');
  await bench.open('hydrodynamics');
  await bench.sheet.getByText('Added mass in heave, one way beside the other').waitFor();
  await expect.poll(() => bench.sheet.locator('figure').count()).toBeGreaterThanOrEqual(3);
  await bench.sheet.getByRole('button', { name: texts.hydrodynamics.takeOut(texts.hydrodynamics.motion) }).click();
  await bench.sheet.getByText(/motion: not stated/).waitFor();
  expect(await bench.sheet.textContent()).not.toContain('NaN');
  await bench.close();
});

it('adds the regular wave and the scatter table to what comes out as they are stated, and goes to them by a press', async () => {
  const t = texts.hydrodynamics;
  const bench = await openWorkbench(browser, served);
  const { page, sheet } = bench;
  const id = await bench.openSample('small');
  await bench.open('hydrodynamics');
  await sheet.getByText('Added mass in heave, one way beside the other').waitFor();
  const state = (part: string) => bench.kept(id, () => sheet.getByRole('button', { name: t.state(part) }).click());
  await state(t.wave);
  await bench.kept(id, () => bench.type(t.waveHeight[0], '1.7 m'));
  await sheet.getByText(/Regular wave: .*1\.7 m/).waitFor();
  await state(t.scatter);
  await sheet.getByText(/Scatter table \(/).waitFor();

  const coefficients = sheet.getByRole('heading', { name: texts.sheets.hydrodynamics, exact: true });
  const top = async () => (await coefficients.boundingBox())!.y;
  await page.locator('.sheet-side').evaluate((side) => side.scrollTo(0, 0));
  expect(await top()).toBeGreaterThan(900);
  await sheet.getByRole('button', { name: t.jumps.water }).click();
  await expect.poll(top).toBeLessThan(700);
  await bench.close();
});
