import type { Page } from 'playwright-core';
import type { Answer } from '../../core/host/answer.ts';
import type { HostEvent } from '../../core/host/host-schema.ts';
import { hostOver } from '../../core/host/host-over.ts';
import type { Host } from '../../core/host/host.ts';
import { openBrowser } from '../browser/browser.ts';
import { startMain } from '../electron-double/start-main.ts';
import { packed, unpacked } from '../electron-double/window.ts';
import { contract } from '../host/contract.ts';

/** The host as a page has it: through the real preload script and the real main process. */
const hostIn = (page: Page, events: Set<(event: HostEvent) => void>): Host =>
  hostOver({
    call: async (name, message) =>
      unpacked(
        await page.evaluate(
          `stillplateHost.call(...__values.unpacked(${JSON.stringify(packed([name, message]))})).then(__values.packed)`,
        ),
      ) as Answer<unknown>,
    listen: (hear) => {
      events.add(hear);
      return () => void events.delete(hear);
    },
  });

const listen = (page: Page): Promise<unknown> =>
  page.evaluate('void stillplateHost.listen((event) => __told(__values.packed(event)))');

contract('electron', async () => {
  const browser = await openBrowser();
  const { desk, folder, end } = await startMain(browser);
  const page = await desk.page().loaded();
  const events = new Set<(event: HostEvent) => void>();
  await page.exposeFunction('__told', (text: string) => {
    for (const hear of events) hear(unpacked(text) as HostEvent);
  });
  await listen(page);
  return {
    host: hostIn(page, events),
    reload: async () => {
      await desk.page().loadAnew();
      await listen(page);
      return hostIn(page, events);
    },
    close: async () => {
      await end();
      await browser.close();
    },
    folder,
    answerDialog: (path) => {
      desk.chosen.length = 0;
      desk.chosen.push(path);
    },
    raw: (host, name, message) => (host[name] as (message: unknown) => Promise<Answer<unknown>>)(message),
  };
});
