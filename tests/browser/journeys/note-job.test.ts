import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { valueOf } from '../../../core/host/answer.ts';
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

it('goes on with a note while the page is loaded anew, finds its end, and cancels one', async () => {
  const window = await openWorkbench(browser, served);
  const { page, sheet } = window;
  await window.openSample('inch');
  await window.open('note');
  await sheet.getByRole('button', { name: texts.note.make, exact: true }).click();
  await sheet.getByRole('progressbar', { name: texts.note.progress }).waitFor();
  await expect.poll(async () => valueOf(await served.host.listJobs({})).length).toBe(1);
  const [job] = valueOf(await served.host.listJobs({}));
  const { state } = valueOf(await served.host.jobState({ job: job! }));
  expect(state).toBe('running');
  await page.reload();
  await page.locator('.recent button.name').first().click();
  await page.getByText(texts.headline.decides).waitFor();
  await window.open('note');
  // The page shows no pages that it does not have, and the job ends whole in the program.
  const running = sheet.getByRole('progressbar', { name: texts.note.progress });
  await expect
    .poll(async () => valueOf(await served.host.jobState({ job: job! })).state, { timeout: 120_000 })
    .toBe('done');
  const { bytes } = valueOf(await served.host.jobResult({ job: job! }));
  expect(Buffer.from(bytes.subarray(0, 5)).toString()).toBe('%PDF-');
  const pages = sheet.locator('.pdf-pages canvas');
  await expect.poll(async () => (await running.count()) === 0).toBe(true);
  if ((await pages.count()) === 0)
    expect(await sheet.getByRole('button', { name: texts.note.make, exact: true }).isEnabled()).toBe(true);

  // Cancelled: no pages, nothing running, and it can be made after all.
  const make = sheet.getByRole('button', { name: new RegExp(`^(${texts.note.make}|${texts.note.again})$`) });
  await make.click();
  await sheet.getByRole('button', { name: texts.note.cancel, exact: true }).click();
  await running.waitFor({ state: 'hidden' });
  // Nothing goes on behind the page: what was handed over is cancelled, or nothing was handed over.
  const left = valueOf(await served.host.listJobs({})).filter((each) => each !== job);
  const ends = async () =>
    Promise.all(left.map(async (each) => valueOf(await served.host.jobState({ job: each })).state));
  await expect.poll(ends).toEqual(left.map(() => 'cancelled'));
  expect(await make.isEnabled()).toBe(true);
  await make.click();
  await pages.first().waitFor({ timeout: 120_000 });
  await window.close();
});
