import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { texts } from '../../../renderer/texts.ts';
import { openBrowser } from '../browser.ts';
import { withoutPicture } from '../support/program.ts';
import { serveStillplate } from '../support/served.ts';
import { openWorkbench } from '../support/workbench.ts';

let browser: Browser;
beforeAll(async () => void (browser = await openBrowser(withoutPicture)));
afterAll(() => browser.close());

/** Kill points of the whole chain, page to disk; the store's own tests have more. */
const points = Number(process.env.STILLPLATE_KILLS ?? (process.env.STILLPLATE_NIGHT ? 500 : 5));
/** Numbers in [0, 1) from a seed (Park and Miller's generator, from memory). */
function seeded(seed: number): () => number {
  let state = seed;
  return () => (state = (state * 48271) % 2147483647) / 2147483647;
}
/** The page says on its console that the program is gone: that is what the test does to it. */
const gone = /ERR_CONNECTION|ERR_EMPTY_RESPONSE|ERR_INCOMPLETE_CHUNKED|ERR_SOCKET|Failed to load resource/;

it(
  `finds every acknowledged edit after the program was killed, at ${points} seeded points`,
  async () => {
    const random = seeded(20261125);
    let served = await serveStillplate();
    const first = await openWorkbench(browser, served);
    const id = await first.openSample('small');
    await first.close();
    let total = 0;
    try {
      for (let point = 0; point < points; point++) {
        const window = await openWorkbench(browser, served, gone);
        const { page } = window;
        // What the program has acknowledged, as the page itself was told.
        let acknowledged = (await served.stored(id)).head;
        page.on('response', (response) => {
          if (!response.url().endsWith('/call/appendEdits')) return;
          void response.body().then(
            (body) => {
              const head = /"head":(\d+)/.exec(body.toString())?.[1];
              if (/"written":true/.test(body.toString())) acknowledged = Math.max(acknowledged, Number(head));
            },
            () => undefined,
          );
        });
        await page.locator('.recent button.name').first().click();
        await page.getByText(texts.headline.decides).waitFor();
        await window.open('loads');
        const before = acknowledged;
        let isOver = false;
        const typing = (async () => {
          for (let n = 0; !isOver; n++) {
            await window.field(texts.fields.depth[0]).fill(`${20 + ((point * 7 + n) % 40)} m`);
            await window.field(texts.fields.depth[0]).press('Enter');
            if (n % 5 === 4) await page.keyboard.press('Control+z');
          }
        })();
        await expect.poll(() => acknowledged, { interval: 5 }).toBeGreaterThan(before + Math.floor(random() * 4));
        await new Promise((resolve) => setTimeout(resolve, random() * 120));
        await served.kill();
        isOver = true;
        await typing;
        // What comes after is not claimed to be kept.
        await window.type(texts.fields.depth[0], '61 m');
        await page.locator('.keeping', { hasText: texts.headline.notKept }).waitFor();
        await page.getByText(texts.notices.notKept).waitFor();
        const { folder } = served;
        served = await serveStillplate(folder);
        const found = await served.stored(id);
        expect(found.head, `kill point ${point}`).toBeGreaterThanOrEqual(acknowledged);
        total += acknowledged - before;
        await window.close();
      }
      console.info(`${total} acknowledged edits over ${points} kill points, all found`);
      expect(total).toBeGreaterThanOrEqual(points);
      // What was found opens and goes on.
      const last = await openWorkbench(browser, served);
      await last.page.locator('.recent button.name').first().click();
      await last.page.getByText(texts.headline.decides).waitFor();
      await last.open('loads');
      await last.kept(id, () => last.type(texts.fields.depth[0], '62 m'));
      expect(await last.hash()).toBe((await served.stored(id)).hash);
      await last.close();
    } finally {
      await served.close();
    }
  },
  Math.max(300_000, points * 60_000),
);
