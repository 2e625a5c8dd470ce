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

/** The page says on its console that the program is gone: that is what the test does to it. */
const gone = /ERR_CONNECTION|ERR_EMPTY_RESPONSE|ERR_INCOMPLETE_CHUNKED|ERR_SOCKET|Failed to load resource/;

// Many seeded points of the program alone: tests/browser/killed-writes.test.ts.
it('says that edits are not kept once the program was killed, and finds every acknowledged one again', async () => {
  let served = await serveStillplate();
  const window = await openWorkbench(browser, served, gone);
  const { page } = window;
  try {
    const id = await window.openSample('small');
    // What the program has acknowledged, as the page itself was told.
    let acknowledged = 0;
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
    await window.open('loads');
    let isOver = false;
    const typing = (async () => {
      for (let n = 0; !isOver; n++) {
        await window.field(texts.fields.depth[0]).fill(`${20 + n} m`);
        await window.field(texts.fields.depth[0]).press('Enter');
        if (n % 5 === 4) await page.keyboard.press('Control+z');
      }
    })();
    await expect.poll(() => acknowledged, { interval: 5 }).toBeGreaterThan(3);
    await served.kill();
    isOver = true;
    await typing;
    // What comes after is not claimed to be kept.
    await window.type(texts.fields.depth[0], '61 m');
    await page.locator('.keeping', { hasText: texts.headline.notKept }).waitFor();
    await page.getByText(texts.notices.notKept).waitFor();
    const { folder } = served;
    served = await serveStillplate(folder);
    expect((await served.stored(id)).head).toBeGreaterThanOrEqual(acknowledged);
    // What was found opens and goes on.
    const next = await openWorkbench(browser, served);
    await next.page.locator('.recent button.name').first().click();
    await next.page.getByText(texts.headline.decides).waitFor();
    await next.open('loads');
    await next.kept(id, () => next.type(texts.fields.depth[0], '62 m'));
    expect(await next.hash()).toBe((await served.stored(id)).hash);
    await next.close();
    await window.close();
  } finally {
    await served.close();
  }
});
