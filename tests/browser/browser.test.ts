import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Browser } from 'playwright-core';
import { openBrowser } from './browser.ts';

let browser: Browser;
beforeAll(async () => void (browser = await openBrowser()));
afterAll(() => browser.close());

it('draws with WebGL 2: a cleared canvas reads back the colour it was cleared with', async () => {
  const page = await browser.newPage();
  const pixel = await page.evaluate<number[] | null>(`(() => {
    const gl = document.createElement('canvas').getContext('webgl2');
    if (!gl) return null;
    gl.clearColor(1, 0.5, 0, 1);
    gl.clear(gl.COLOR_BUFFER_BIT);
    const rgba = new Uint8Array(4);
    gl.readPixels(0, 0, 1, 1, gl.RGBA, gl.UNSIGNED_BYTE, rgba);
    return [...rgba];
  })()`);
  expect(pixel).toEqual([255, 128, 0, 255]);
});
