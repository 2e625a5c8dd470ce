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
