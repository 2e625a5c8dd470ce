import { expect, it } from 'vitest';
import type { HostEvent } from '../../../core/host/host-schema.ts';
import { program, withoutPicture } from '../support/program.ts';

const started = program(withoutPicture);

/** Runs in the page, before its own scripts: a desktop side that is as quick as one can be. */
function quickDesktop(event: HostEvent): void {
  const hearers = new Set<(event: HostEvent) => void>();
  Object.defineProperty(globalThis, 'stillplateHost', {
    value: {
      call: () => Promise.resolve({ ok: false, refusal: { what: 'No store in this test', mend: 'None is needed.' } }),
      listen: (hear: (event: HostEvent) => void) => {
        // What main held back comes once, after the task in which the page began to listen.
        if (hearers.size === 0) void Promise.resolve().then(() => hearers.forEach((each) => each(event)));
        hearers.add(hear);
        return () => hearers.delete(hear);
      },
    },
  });
}

it('hears what the desktop held back for the page, however soon it comes', async () => {
  const page = await started.browser.newPage();
  const event: HostEvent = { kind: 'refused', what: 'The file that started this window is no plate', mend: 'Choose another.' }; // prettier-ignore
  await page.addInitScript(quickDesktop, event);
  await page.goto(started.served.address);
  await page.getByText(event.what).waitFor({ timeout: 60_000 });
  expect(await page.getByText(event.mend).count()).toBe(1);
  await page.close();
});
