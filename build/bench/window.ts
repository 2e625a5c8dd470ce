import { build } from 'esbuild';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, CDPSession, Page } from 'playwright-core';
import { appraise } from '../../core/appraise.ts';
import { applyEdit, type Edit } from '../../core/document/edit.ts';
import { readDocument, readDocumentText } from '../../core/document/read-document.ts';
import { valueOf } from '../../core/host/answer.ts';
import { stageOf, type SheetName } from '../../renderer/state/stages.ts';
import { texts } from '../../renderer/texts.ts';
import { openBrowserInFull } from '../../tests/browser/browser.ts';
import { setup } from '../../tests/browser/support/bundle-once.ts';
import { manyBays } from '../../tests/browser/support/many-bays.ts';
import { serveStillplate, type Served } from '../../tests/browser/support/served.ts';
import type { Json } from '../../tests/document/middle.ts';
import { median } from './interleaved.ts';
import { longestTask } from './longest-task.ts';
import type { Measure } from './measure.ts';
import { sample } from './sample.ts';
import { recordOf } from './tank.ts';

/** Two frames at 60 a second, ms. */
const twoFrames = 2000 / 60;

/**
 * Part `window`: the bundled window in a browser with software GL, served as `npm start` serves it. Times in the page
 * are the browser's own (performance.now, long-task entries).
 */
export async function bench(): Promise<readonly Measure[]> {
  await setup();
  const served = await serveStillplate();
  const browser = await openBrowserInFull(['--js-flags=--expose-gc', '--enable-precise-memory-info']);
  try {
    return [
      await editToNumbers(browser, served),
      await startPage(browser, served),
      ...(await pictureOfMany(browser, served)),
      await longestOf(browser, served),
    ];
  } finally {
    await browser.close();
    await served.close();
  }
}

const measure = (name: string, ratio: number, goal: number, milliseconds?: number): Measure => ({
  name,
  ratio,
  goal,
  met: ratio <= goal,
  ...(milliseconds === undefined ? {} : { milliseconds }),
});

async function opened(browser: Browser, served: Served, name: string, text: string): Promise<Page> {
  const { id } = valueOf(await served.host.createDocument({ name, text, file: null }));
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 }, reducedMotion: 'reduce' });
  page.setDefaultTimeout(180_000);
  await page.goto(served.address);
  await page.locator('.recent button.name', { hasText: name }).first().click();
  await page.locator('.headline dl').waitFor();
  if (!id) throw new Error('The store gave no document');
  return page;
}

async function openSheet(page: Page, sheet: SheetName): Promise<void> {
  await page.getByRole('button', { name: texts.stages[stageOf(sheet)], exact: true }).click();
  await page.getByRole('button', { name: texts.sheets[sheet], exact: true }).first().click();
}

/** From the key that hands an edit over to the frame after the headline's numbers have changed, less two frames, over `appraise` alone in Node. */
async function editToNumbers(browser: Browser, served: Served): Promise<Measure> {
  const text = await sample('middle');
  const page = await opened(browser, served, 'Edited plate', text);
  await openSheet(page, 'panels');
  const field = page.locator('.sheet').getByLabel('Thickness', { exact: true }).first();
  const raw = readDocumentText(text);
  const [design] = Object.keys(raw['designs'] as object);
  const option = typeof raw['chosen'] === 'string' ? raw['chosen'] : null;
  const core: number[] = [];
  const window: number[] = [];
  for (let n = -2; n < 9; n++) {
    const value = `${(8.1 + (n + 2) * 0.1).toFixed(1)} mm`;
    const edit: Edit = { kind: 'setField', option, path: ['designs', design!, 'thickness'], value };
    const start = performance.now();
    const changed = applyEdit(raw, edit);
    appraise(changed, readDocument(changed), option);
    const own = performance.now() - start;
    await field.fill(value);
    await page.evaluate(`window.shown = new Promise((done) => {
      const from = performance.now();
      let key = from;
      addEventListener('keydown', ({ timeStamp }) => (key = timeStamp), { capture: true, once: true });
      const look = new MutationObserver(() => {
        look.disconnect();
        requestAnimationFrame(() => setTimeout(() => done(performance.now() - key)));
      });
      look.observe(document.querySelector('.headline dl'), { subtree: true, childList: true, characterData: true });
    }); undefined`);
    await field.press('Enter');
    const shown = await page.evaluate<number>('window.shown');
    // The comparison of the other options ends before the next edit.
    await page.waitForTimeout(1500);
    if (n >= 0) {
      core.push(own);
      window.push(shown);
    }
  }
  await page.close();
  const took = median(window);
  return measure(
    `an edit in the window until its numbers are shown, less two frames, over core alone (${median(core).toFixed(1)} ms)`,
    Math.max(0, took - twoFrames) / median(core),
    1.5,
    took,
  );
}

/** The start page until its first button can be used, over a page that loads the same scripts and renders one heading. */
async function startPage(browser: Browser, served: Served): Promise<Measure> {
  const { outputFiles } = await build({
    stdin: {
      contents: `import { createElement } from 'react';
        import { createRoot } from 'react-dom/client';
        import { App } from './renderer/App.tsx';
        import { engineClient } from './renderer/engine/engine-client.ts';
        import { openHost } from './renderer/host/host.ts';
        import { createSession } from './renderer/state/session.ts';
        import './renderer/styles/base.css';
        globalThis.loaded = [App, createSession, openHost, engineClient(() => new Worker('engine-worker.js', { type: 'module' }))];
        createRoot(document.getElementById('window')).render(createElement('h1', null, 'Stillplate'));`,
      resolveDir: process.cwd(),
      loader: 'tsx',
    },
    outdir: 'build/bundled/bare',
    write: false,
    bundle: true,
    splitting: true,
    format: 'esm',
    platform: 'browser',
    target: ['chrome120'],
    jsx: 'automatic',
    minify: true,
    define: { 'process.env.NODE_ENV': '"production"' },
    external: ['./fonts/*'],
  });
  const bare = new Map(outputFiles.map(({ path, text }) => [path.split(/[\\/]bare[\\/]/)[1]!, text]));
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  const first = await context.newPage();
  await first.goto(served.address);
  const { origin } = new URL(served.address);
  const times = { window: [] as number[], bare: [] as number[] };
  for (let n = -1; n < 7; n++)
    for (const which of ['window', 'bare'] as const) {
      const page = await context.newPage();
      if (which === 'bare') {
        await page.route('**/*.js', async (route) => {
          const name = new URL(route.request().url()).pathname.slice(1);
          const body = name === 'main.js' ? bare.get('stdin.js') : bare.get(name);
          if (body === undefined) return route.continue();
          return route.fulfill({ contentType: 'text/javascript', body });
        });
      } else {
        // The same way through the test's hands, so that it costs both the same.
        await page.route('**/*.js', (route) => route.continue());
      }
      const wanted = which === 'window' ? '.acts button.primary' : 'h1';
      await page.addInitScript(`window.ready = new Promise((done) => {
        const look = () => document.querySelector('${wanted}')
          ? requestAnimationFrame(() => setTimeout(() => done(performance.now())))
          : setTimeout(look, 1);
        look();
      });`);
      await page.goto(origin);
      const took = await page.evaluate<number>('window.ready');
      if (n >= 0) times[which].push(took);
      await page.close();
    }
  await context.close();
  return measure(
    `start page until it can be used, over the same scripts and one heading (${median(times.bare).toFixed(0)} ms)`,
    median(times.window) / median(times.bare),
    1.5,
    median(times.window),
  );
}

const manyBaysText = async (): Promise<string> => JSON.stringify(manyBays(JSON.parse(await sample('middle')) as Json));

/** Draw calls of a frame, the heap over 300 frames of orbit, and the frame against bare three. */
async function pictureOfMany(browser: Browser, served: Served): Promise<readonly Measure[]> {
  const context = await browser.newContext({ viewport: { width: 1024, height: 700 }, reducedMotion: 'reduce' });
  const page = await context.newPage();
  page.setDefaultTimeout(180_000);
  await page.addInitScript(countDraws);
  valueOf(
    await served.host.createDocument({
      name: 'Many bays',
      text: await manyBaysText(),
      file: null,
    }),
  );
  await page.goto(served.address);
  await page.getByRole('button', { name: 'Many bays', exact: true }).click();
  const picture = page.locator('.scene-ground canvas').first();
  await picture.waitFor();
  await page.waitForTimeout(4000);
  const box = (await picture.boundingBox())!;
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  const cdp = await context.newCDPSession(page);
  await page.mouse.move(x, y);
  await page.mouse.down();
  const orbit = async (frames: number): Promise<number[]> => {
    const times: number[] = [];
    for (let n = 0; n < frames; n++) {
      const before = await page.evaluate<number>('window.draws.frames');
      // To and fro, never less than a pixel: a pointer that does not move draws no frame.
      await page.mouse.move(x + 3 * Math.abs((n % 40) - 20), y + 2 * Math.abs((n % 40) - 20));
      const took = await page.evaluate<number>(`window.draws.after(${before})`);
      times.push(took);
    }
    return times;
  };
  await orbit(40);
  const calls = await page.evaluate<number>('window.draws.calls');
  const triangles = await page.evaluate<number>('window.draws.triangles');
  const heapBefore = await heap(cdp);
  const frames = await orbit(300);
  const heapAfter = await heap(cdp);
  await page.mouse.up();
  await context.close();
  const bare = await bareThree(browser, served, triangles, box.width, box.height);
  return [
    measure('draw calls of a frame, 60 bays and over 2,000 bolts', calls, 60),
    measure('growth of the heap over 300 frames of orbit, MB', (heapAfter - heapBefore) / 1e6, 1),
    measure(
      `a frame's drawing, over as many triangles (${Math.round(triangles)}) in bare three (${bare.toFixed(1)} ms)`,
      median(frames) / bare,
      2,
      median(frames),
    ),
  ];
}

/** Bytes in use on the page's heap once what nobody holds is gone. */
async function heap(cdp: CDPSession): Promise<number> {
  for (let n = 0; n < 3; n++) await cdp.send('HeapProfiler.collectGarbage');
  const { usedSize } = (await cdp.send('Runtime.getHeapUsage')) as { usedSize: number };
  return usedSize;
}

/**
 * Counts what WebGL is asked to draw, frame by frame, and how long the frame takes from its first command until the
 * graphics side has done it (readPixels waits for that).
 */
const countDraws = `(() => {
  const draws = (window.draws = { calls: 0, triangles: 0, frames: 0, last: 0, waiting: [],
    after: (frame) => draws.frames > frame ? draws.last : new Promise((done, fail) => { draws.waiting.push(done); setTimeout(() => fail(new Error('no frame was drawn within ten seconds')), 10_000); }) });
  let calls = 0, triangles = 0, from = 0, context = null;
  const hear = (gl, mode, count, instances) => {
    if (calls === 0) {
      from = performance.now();
      context = gl;
      queueMicrotask(() => {
        gl.readPixels(0, 0, 1, 1, gl.RGBA, gl.UNSIGNED_BYTE, new Uint8Array(4));
        draws.last = performance.now() - from;
        draws.calls = calls; draws.triangles = triangles; draws.frames++;
        calls = 0; triangles = 0;
        for (const done of draws.waiting.splice(0)) done(draws.last);
      });
    }
    calls++;
    if (mode === gl.TRIANGLES) triangles += (count / 3) * instances;
  };
  const of = WebGL2RenderingContext.prototype;
  const wrap = (name, read) => { const own = of[name]; of[name] = function (...given) { hear(this, ...read(given)); return own.apply(this, given); }; };
  wrap('drawElements', ([mode, count]) => [mode, count, 1]);
  wrap('drawArrays', ([mode, , count]) => [mode, count, 1]);
  wrap('drawElementsInstanced', ([mode, count, , , instances]) => [mode, count, instances]);
  wrap('drawArraysInstanced', ([mode, , count, instances]) => [mode, count, instances]);
})();`;

/** Median drawing of a frame of the same plate's solids by three alone: one lit material, no outlines, no labels. */
async function bareThree(
  browser: Browser,
  served: Served,
  triangles: number,
  width: number,
  height: number,
): Promise<number> {
  const { outputFiles } = await build({
    stdin: {
      contents: `import { AmbientLight, Color, CylinderGeometry, DirectionalLight, InstancedMesh, Matrix4, Mesh, MeshStandardMaterial, OrthographicCamera, Scene, WebGLRenderer } from 'three';
        import { appraise } from './core/appraise.ts';
        import { readDocument } from './core/document/read-document.ts';
        import { sceneOf } from './core/scene/scene-of.ts';
        import { meshGeometry } from './renderer/scene/mesh-geometry.ts';
        const raw = await (await fetch('/many.json')).json();
        const plate = sceneOf(appraise(raw, readDocument(raw), null).model);
        const all = new Scene();
        const material = new MeshStandardMaterial({ color: new Color('#8aa') });
        for (const mesh of plate.meshes) if (mesh.material !== 'bay') all.add(new Mesh(meshGeometry(mesh), material));
        // as the window draws bolts of a few pixels
        const hexagon = new CylinderGeometry(0.01, 0.01, 0.04, 6);
        for (const bolts of plate.bolts) {
          const many = new InstancedMesh(hexagon, material, bolts.parts.length);
          for (let n = 0; n < bolts.parts.length; n++) many.setMatrixAt(n, new Matrix4().makeTranslation(...bolts.placements.slice(4 * n, 4 * n + 3)));
          all.add(many);
        }
        const sun = new DirectionalLight('#fff', 2); sun.position.set(1, 2, 3);
        all.add(sun, new AmbientLight('#fff', 1));
        const renderer = new WebGLRenderer({ antialias: true });
        renderer.setSize(${Math.round(width)}, ${Math.round(height)});
        document.body.append(renderer.domElement);
        const { low, high } = plate.box;
        const middle = low.map((v, i) => (v + high[i]) / 2);
        const half = Math.max(...low.map((v, i) => high[i] - v)) * 0.6;
        const camera = new OrthographicCamera(-half, half, half * ${height / width}, -half * ${height / width}, 0.1, 100);
        camera.up.set(0, 0, 1);
        let n = 0;
        window.frame = () => new Promise((done) => requestAnimationFrame(() => {
          const turn = 0.8 + 0.3 * Math.sin(n++ / 20);
          camera.position.set(middle[0] + 20 * Math.cos(turn), middle[1] + 20 * Math.sin(turn), middle[2] + 14);
          camera.lookAt(...middle);
          renderer.render(all, camera);
          queueMicrotask(() => done());
        }));
        window.isReady = true;`,
      resolveDir: process.cwd(),
      loader: 'ts',
    },
    write: false,
    bundle: true,
    format: 'esm',
    platform: 'browser',
    target: ['chrome120'],
    minify: true,
  });
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  const page = await context.newPage();
  page.setDefaultTimeout(180_000);
  await page.addInitScript(countDraws);
  const { origin } = new URL(served.address);
  const many = await manyBaysText();
  await page.route(`${origin}/**`, (route) => {
    const { pathname } = new URL(route.request().url());
    if (pathname === '/many.json') return route.fulfill({ contentType: 'application/json', body: many });
    if (pathname === '/bare.js') return route.fulfill({ contentType: 'text/javascript', body: outputFiles[0]!.text });
    return route.fulfill({
      contentType: 'text/html',
      body: '<!doctype html><title>bare</title><body><script type="module" src="/bare.js"></script>',
    });
  });
  await page.goto(`${origin}/bare`);
  while (!(await page.evaluate<boolean>('Boolean(window.isReady)'))) await page.waitForTimeout(100);
  const times: number[] = [];
  for (let n = 0; n < 60; n++) {
    await page.evaluate('window.frame()');
    times.push(await page.evaluate<number>('window.draws.last'));
  }
  const drawn = await page.evaluate<number>('window.draws.triangles');
  await context.close();
  // Both draw the same plate: the window's own extras (outlines of what is selected, sheets in open bays) are few.
  if (drawn < 0.4 * triangles || drawn > 1.6 * triangles)
    throw new Error(`Bare three draws ${drawn} triangles, the window ${triangles}: they are not the same plate`);
  return (median(times.slice(10)) * triangles) / drawn;
}

/** On the middle sample, with a record of a million rows on the disk. */
async function longestOf(browser: Browser, served: Served): Promise<Measure> {
  const folder = await mkdtemp(join(tmpdir(), 'stillplate-bench-'));
  const record = join(folder, 'a-day.csv');
  await writeFile(record, recordOf(1_000_000));
  const page = await opened(browser, served, 'Blocked plate', await sample('middle'));
  await page.waitForTimeout(3000);
  const longest = await longestTask(page, record);
  await page.close();
  await rm(folder, { recursive: true });
  return longest;
}
