import type { Browser } from 'playwright-core';
import { afterAll, beforeAll } from 'vitest';
import { openBrowser } from '../browser.ts';
import { serveStillplate, type Served } from './served.ts';
import { openWorkbench, type Workbench } from './workbench.ts';

/** Stillplate and a browser, for the tests of one file. */
export interface Program {
  readonly browser: Browser;
  readonly served: Served;
  /** A window of its own, as `openWorkbench` gives it. */
  readonly open: (excused?: RegExp) => Promise<Workbench>;
}

/**
 * Flags of a browser that draws no plate: drawing it in software takes most of a journey's time, so journeys whose
 * subject is elsewhere go without, as a window does on a machine without WebGL.
 */
export const withoutPicture = ['--disable-3d-apis'];

/** Starts both before the first test of the file that calls this, and ends them after its last. */
export function program(flags: readonly string[] = []): Program {
  let browser: Browser;
  let served: Served;
  beforeAll(async () => {
    [browser, served] = await Promise.all([openBrowser(flags), serveStillplate()]);
  });
  afterAll(async () => {
    await browser.close();
    await served.close();
  });
  return {
    get browser() {
      return browser;
    },
    get served() {
      return served;
    },
    open: (excused) => openWorkbench(browser, served, excused),
  };
}
