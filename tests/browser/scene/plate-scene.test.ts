import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it, onTestFinished } from 'vitest';
import type { Browser, Page } from 'playwright-core';
import { colourAt } from '../../../renderer/scene/colour-map.ts';
import { openBrowser } from '../browser.ts';
import { drawn, openPlate } from './open-plate.ts';

let browser: Browser;
let page: Page;
beforeAll(async () => void (browser = await openBrowser()));
afterAll(() => browser.close());
afterEach(async () => {
  // The window's content policy holds in every test.
  expect(await page.evaluate('window.violations')).toEqual([]);
});

type Rgb = readonly [number, number, number];
const hex = (colour: string): Rgb => [1, 3, 5].map((i) => parseInt(colour.slice(i, i + 2), 16)) as unknown as Rgb;
const panelColour = hex('#e4dfd2');
const tubeColour = hex('#b4bfc4');
const paper = hex('#fbfaf7');

const run = <T>(script: string): Promise<T> =>
  page.evaluate<T>(`(() => { const p = window.plate; return ${script}; })()`);
const act = async (script: string): Promise<void> => {
  await run(script);
  await drawn(page);
};
/** Where a point of the plate is, px from the picture's corner. */
const at = (point: readonly number[]): Promise<[number, number]> => run(`p.at(${JSON.stringify(point)})`);
/** Colours of points of one picture: software GL takes a good part of a second to draw it. */
const pixelsAt = async (points: readonly (readonly number[])[]): Promise<readonly Rgb[]> => {
  const seen = await run<number[][]>(`p.pixels(${JSON.stringify(points)}.map((point) => p.at(point)))`);
  // Nothing drawn is clear, and the page's paper shows.
  return seen.map(([r = 0, g = 0, b = 0, a = 0]) => (a === 0 ? paper : [r, g, b]));
};
const pixelAt = async (point: readonly number[]): Promise<Rgb> => (await pixelsAt([point]))[0]!;
/** Within one step of eight bits: the card rounds. */
const expectColour = (seen: Rgb, meant: Rgb, what = ''): void => {
  for (const i of [0, 1, 2] as const)
    expect(Math.abs(seen[i] - meant[i]), `${what} is ${seen}, meant ${meant}`).toBeLessThanOrEqual(1);
};
const click = async (point: readonly number[]): Promise<void> => {
  const box = (await page.locator('.plate-scene').boundingBox())!;
  const [x, y] = await at(point);
  await page.mouse.click(box.x + x, box.y + y);
  await drawn(page);
};

/** Bolts in what three draws under that name. */
const boltsDrawn = (name: string): Promise<number> =>
  run(`p.root.scene.children.filter((o) => o.name === '${name}' && o.visible).reduce((n, o) => n + o.count, 0)`);

// The middle sample: main tubes 1.42 m apart, 150 mm square; cross tubes 0.83 m apart, 100 mm wide; panels below, 6 mm.
const middleOf = { A1: [0.415, 0.71, -0.15], A2: [1.245, 0.71, -0.15], B6: [4.565, 2.13, -0.15] } as const;

describe('the middle sample', () => {
  beforeAll(async () => void (page = await openPlate(browser)));
  afterAll(() => page.close());
  beforeEach(() => act('p.reset()'));

  it('is drawn: in plan a panel has its colour, a tube its own, beside the plate is paper', async () => {
    await act("p.showNamed('plan')");
    // The tube between two bolts, off the crossing.
    const seen = await pixelsAt([
      [0.35, 0.5, -0.15],
      [0.415, 1.42, 0],
      [-0.4, 1.42, 0],
    ]);
    expectColour(seen[0]!, panelColour, 'panel');
    expectColour(seen[1]!, tubeColour, 'tube');
    expectColour(seen[2]!, paper, 'paper');
  });

  it('has every part in three’s graph: triangles of all solids, bolts as instances', async () => {
    await act('p.set({ apart: 0.2 })');
    const { triangles } = await run<{ triangles: number }>('p.draw()');
    const expected = await run<number>(
      'p.scene.meshes.reduce((n, m) => n + m.indices.length / 3, 0) + p.scene.bolts.reduce((n, b) => n + b.parts.length * b.indices.length / 3, 0) + p.scene.holes.length / 5 * 12 + p.scene.ropes.filter(({ width }) => width > 0).length * 64',
    );
    expect(triangles).toBe(expected);
    expect(await boltsDrawn('bolts')).toBe(
      await run<number>("p.scene.parts.filter((part) => part.kind === 'bolt').length"),
    );
    expect(await boltsDrawn('bolts')).toBe(648);
    expect(await boltsDrawn('plain bolts')).toBe(0);
  });

  it('draws a bolt of a few pixels as a hexagon, a large one whole', async () => {
    await act("p.showNamed('plan')");
    expect([await boltsDrawn('bolts'), await boltsDrawn('plain bolts')]).toEqual([0, 648]);
    const [x = 0, y = 0, z = 0] = await run<number[]>('Array.from(p.scene.bolts[0].placements.subarray(0, 3))');
    await act(`p.store.show({ ...p.store.view(), target: [${x}, ${y}, ${z}], scale: 800 })`);
    expect([await boltsDrawn('bolts'), await boltsDrawn('plain bolts')]).toEqual([648, 0]);
  });

  it('lays a field on the panels in the colours of its legend, hot places grey, and moves them by the scale', async () => {
    await act("p.showNamed('plan')");
    await act('p.showRamp({})');
    // the map spans nought to the largest value that is no hot one
    const top = await run<number>('p.fieldTop');
    expect(top).toBeCloseTo(3, 1);
    const measured = [0.5, 1.25, 2.25, 2.75];
    const colours = await pixelsAt([...measured, 3.5].map((x) => [x, 0.7, 1]));
    for (const [k, x] of measured.entries()) {
      const meant = colourAt(x / top, false).map((part) => 255 * part) as unknown as Rgb;
      const seen = colours[k]!;
      // a step of the map of 256 colours
      for (const i of [0, 1, 2] as const) expect(Math.abs(seen[i] - meant[i]), `${x}: ${seen}`).toBeLessThanOrEqual(4);
    }
    // no measure there: grey, dots or what is between them, and no colour of the map
    const [r, g, b] = colours[4]!;
    expect(Math.max(r, g, b) - Math.min(r, g, b)).toBeLessThan(16);
    expect(await page.locator('.scene-legend', { hasText: 'Von Mises stress, top face' }).innerText()).toMatch(
      /no measure/,
    );

    // Seen from the side: at scale 10 its end stands 10 · 0.01 · 4 = 0.4 m higher, its beginning where it was.
    await act("p.showRamp({ slope: 0.01, scale: 10 }), p.showNamed('side')");
    /** Within 3 cm: a panel seen on edge is hardly a pixel. */
    const isDrawn = async (z: number, x: number): Promise<boolean> => {
      const near = Array.from({ length: 13 }, (_, i) => [x, 0, z - 0.03 + 0.005 * i]);
      return (await pixelsAt(near)).some(
        ([red, green, blue]) => Math.abs(red - paper[0]) + Math.abs(green - paper[1]) + Math.abs(blue - paper[2]) > 30,
      );
    };
    const rise = (x: number): number => 0.2 + 10 * 0.01 * x;
    expect(await isDrawn(rise(3.5), 3.5)).toBe(true);
    expect(await isDrawn(0.2, 3.5)).toBe(false);
    // what stood there is faint lines only: no solid of the plate, no bolt
    const names = await run<string[]>('p.root.scene.children.map((o) => o.name)');
    expect(names).toEqual(expect.arrayContaining(['bent plate', 'bent edges', 'where it was']));
    expect(names.filter((name) => name === 'panel' || name === 'bolts')).toEqual([]);
  });

  it('draws forces as arrows, the longest for the largest, off the face or onto it', async () => {
    await act('p.showRamp({ arrows: true })');
    await act("p.showNamed('side')");
    const spans = await run<number[][]>(
      "p.root.scene.children.filter((o) => o.name === 'force marks')[0].count === 2 && [...p.root.scene.children.filter((o) => o.name === 'force marks')[0].instanceMatrix.array].filter((_, i) => i % 16 === 10)",
    );
    // shafts: their lengths along z; heads take the same of both
    expect(spans).toHaveLength(2);
    expect(Number(spans[1])).toBeGreaterThan(Number(spans[0]));
    expect(await page.locator('.scene-legend', { hasText: 'Pull of the bolts' }).innerText()).toMatch(/longest arrow/);
  });

  it('selects the panel, tube or bolt that is clicked, and nothing beside the plate', async () => {
    await act("p.showNamed('plan')");
    for (const [point, id] of [
      [middleOf.A1, 'panel:A1'],
      [middleOf.B6, 'panel:B6'],
      [[0.415, 1.42, 0], 'tube:B'],
      [[-0.4, -0.3, 0], null],
    ] as const) {
      await click(point);
      expect(await run('p.selection')).toBe(id);
    }
    const bolt = await run<{ id: string; centre: number[] }>("p.scene.parts.find((part) => part.kind === 'bolt')");
    await click(bolt.centre);
    expect(await run('p.selection')).toBe(bolt.id);
    const outlines = await run<number>("p.root.scene.children.filter((o) => o.name === 'outline').length");
    expect(outlines).toBeGreaterThan(0);
    expect(await page.locator('.scene-said').textContent()).toContain(bolt.id.slice('bolt:'.length));
    await page.keyboard.press('Escape');
    expect(await run('p.selection')).toBe(null);
  });

  it('names what the pointer rests on, with an outline', async () => {
    await act("p.showNamed('plan')");
    const box = (await page.locator('.plate-scene').boundingBox())!;
    const [x, y] = await at(middleOf.A2);
    await page.mouse.move(box.x + x, box.y + y);
    await page.locator('.scene-name', { hasText: 'Panel A2' }).waitFor();
    await drawn(page);
    expect(await run("p.root.scene.children.filter((o) => o.name === 'outline').length")).toBe(2);
  });

  it('cuts: beyond the section a panel is gone, before it it stays, and the cut wall is dark', async () => {
    await act("p.showNamed('plan')");
    await act("p.set({ cut: { axis: 'x', at: 2.1, away: 'above' } })");
    const [before, beyond] = await pixelsAt([
      [0.35, 0.5, -0.15],
      [4.5, 2.0, -0.15],
    ]);
    expectColour(before!, panelColour, 'panel before the section');
    expectColour(beyond!, paper, 'place beyond the section');
    await act("p.showNamed('end')");
    await act("p.set({ cut: { axis: 'x', at: 2.1, away: 'above' } })");
    // Wall of tube A, 8 mm: its middle at 4 mm below the top, looked at along the tube.
    const [r, g, b] = await pixelAt([2.1, 0.01, -0.004]);
    expect(Math.max(r, g, b)).toBeLessThan(110);
    await act('p.set({ cut: null })');
    expect(Math.max(...(await pixelAt([2.1, 0.01, -0.004])))).toBeGreaterThan(110);
  });

  it('pulls panels off their tubes: seen from the side they lie lower by as much', async () => {
    await act("p.showNamed('side')");
    const below = [0.5, -0.03, -0.153 - 0.3];
    expectColour(await pixelAt(below), paper, 'below the plate');
    await act('p.set({ apart: 0.3 })');
    // The panel's edge is a pixel or two high there, drawn as a face or as the line along it.
    expect(await pixelAt(below)).not.toEqual(paper);
  });

  it('lays a reading over the plate in the very colour of its legend, and names unit, case and extremes', async () => {
    await act("p.set({ reading: 'panel-stress' })");
    await act("p.showNamed('plan')");
    const values = new Map(
      await run<[string, number][]>("[...p.readings.find((r) => r.id === 'panel-stress').values]"),
    );
    const most = Math.max(...values.values());
    const seen = await pixelsAt(Object.values(middleOf).map(([x, y]) => [x - 0.1, y - 0.2, -0.15]));
    for (const [k, bay] of Object.keys(middleOf).entries()) {
      const colour = colourAt(values.get(`panel:${bay}`)! / most, false).map((c) => Math.round(255 * c));
      expectColour(seen[k]!, colour as unknown as Rgb, bay);
    }
    const legend = page.locator('.scene-legend');
    expect(await legend.textContent()).toContain('MPa');
    expect(await legend.textContent()).toContain('load factors included');
    const [highest] = [...values].find(([, value]) => value === most)!;
    const place = legend.locator('button').first();
    await place.click();
    expect(await run('p.selection')).toBe(highest);
    expect(await place.textContent()).toContain(highest.slice('panel:'.length));
  });

  it('measures between two corners that it catches: the length of a main tube', async () => {
    await act("p.showNamed('plan')");
    await act('p.set({ measuring: true })');
    const ends = await run<[number, number]>(
      "(() => { const { box } = p.scene.parts.find((q) => q.id === 'tube:A'); return [box.low[0], box.high[0]]; })()",
    );
    // A few pixels off the corners of the top's flat, which ends at the corner radius, 12 mm from the side.
    await click([ends[0] + 0.02, 0.063 - 0.01, 0]);
    expect(await page.locator('.scene-notice').textContent()).toContain('second');
    await click([ends[1] - 0.02, 0.063 - 0.01, 0]);
    expect(await page.locator('.scene-measure text').textContent()).toBe('5290 mm (x 5290 mm, y 0 mm, z 0 mm)');
  });

  it('shows dimensions in plan only, as text, and the depth as a rule when seen level', async () => {
    expect(await page.locator('.scene-dimensions').count()).toBe(0);
    await act("p.showNamed('plan')");
    expect(await page.locator('.scene-dimensions text').allTextContents()).toEqual(
      expect.arrayContaining(['5290 mm', '2990 mm', '6 × 830.0 mm', '2 × 1420 mm']),
    );
    expect(await page.locator('.scene-depth').count()).toBe(0);
    await act('p.showSurface()');
    expect(await page.locator('.scene-depth text').allTextContents()).toContain('Water surface');
  });

  it('shows a load as one arrow a panel, with its force and the rule of signs', async () => {
    await act("p.set({ load: 'service-up' })");
    expect(await run("p.root.scene.children.filter((o) => o.name === 'load arrows').map((o) => o.count)")).toEqual([
      12, 12,
    ]);
    const said = await page.locator('.scene-legend.load').textContent();
    // 46 kN in the document, factor 1.35.
    expect(said).toContain('+62.1 kN');
    expect(said).toContain('Positive up; arrows show the force of the water on the plate.');
  });

  it('turns, moves and zooms by mouse, wheel and keys, and goes to named views by keys and buttons', async () => {
    const view = () => run<{ azimuth: number; elevation: number; scale: number; target: number[] }>('p.store.view()');
    const first = await view();
    const box = (await page.locator('.plate-scene').boundingBox())!;
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    const drag = async (dx: number, dy: number) => {
      await page.mouse.move(x, y);
      await page.mouse.down();
      await page.mouse.move(x + dx, y + dy, { steps: 3 });
      await page.mouse.up();
    };
    await drag(60, 0);
    const turned = await view();
    expect(turned.azimuth).toBeLessThan(first.azimuth - 0.2);
    expect(await run('p.selection')).toBe(null);
    await page.keyboard.down('Shift');
    await drag(60, 0);
    await page.keyboard.up('Shift');
    const moved = await view();
    expect([moved.azimuth, moved.scale]).toEqual([turned.azimuth, turned.scale]);
    expect(moved.target).not.toEqual(turned.target);
    await page.mouse.wheel(0, -200);
    await expect.poll(async () => (await view()).scale).toBeGreaterThan(moved.scale * 1.2);
    await page.locator('.plate-scene').focus();
    await page.keyboard.press('p');
    expect((await view()).elevation).toBeCloseTo(Math.PI / 2, 9);
    await page.keyboard.press('ArrowLeft');
    expect((await view()).azimuth).not.toBeCloseTo(-Math.PI / 2, 3);
    await page.getByRole('button', { name: 'Side', exact: true }).click();
    expect((await view()).elevation).toBe(0);
  });

  it('waits for no compiler after the first picture: section, arrows, outlines, slings and the bent plate bring no program', async () => {
    const programs = () => run<number[]>('p.root.gl.info.programs.map(({ id }) => id)');
    const atFirst = await programs();
    const bringsNone = async (script: string): Promise<void> => {
      await act(script);
      await run('p.draw()');
      expect(await programs(), script).toEqual(atFirst);
    };
    await bringsNone("p.onSelect('panel:A1')");
    await bringsNone("p.set({ load: 'service-up', slings: true, apart: 0.2, reading: 'utilisation' })");
    await bringsNone("p.set({ load: null, cut: { axis: 'x', at: 2.1, away: 'above' } })");
    await bringsNone('p.set({ cut: null }), p.showRamp({ arrows: true })');
    await bringsNone('p.showRamp({ slope: 0.01, scale: 10 })');
    // nor are any made anew after all that drew with them is gone
    await bringsNone('p.reset()');
    expect(atFirst.length).toBeGreaterThan(8);
  });

  it('lists the same parts as text, to be chosen by keyboard', async () => {
    await page.getByRole('button', { name: /^Panels/ }).press('Enter');
    const items = page.locator('.scene-parts li button');
    expect(await items.count()).toBe(12);
    await items.nth(2).press('Enter');
    expect(await run('p.selection')).toBe('panel:A3');
    expect(await items.nth(2).getAttribute('aria-pressed')).toBe('true');
  });

  it('has no fault that axe finds, light or dark, with legend, arrows and list open', async () => {
    await page.getByRole('button', { name: /^Tubes/ }).click();
    const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
    await page.evaluate(axe);
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      await act("p.set({ reading: 'utilisation', load: 'service-up' })");
      const faults = await page.evaluate<{ id: string; nodes: { html: string }[] }[]>(
        "axe.run('.scene-stage', { runOnly: ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa'] }).then((r) => r.violations)",
      );
      expect(faults.map(({ id, nodes }) => `${id}: ${nodes[0]!.html}`)).toEqual([]);
    }
  });

  it('is drawn again when the graphics card took the picture back', async () => {
    // Light and bare, as at first: no reading, no arrow and no outline over the place that is looked at.
    await page.emulateMedia({ colorScheme: 'light' });
    await act('p.set({ reading: null, load: null })');
    await act('p.onSelect(null)');
    await act("p.showNamed('plan')");
    expectColour(await pixelAt([0.35, 0.5, -0.15]), panelColour, 'panel before the loss');
    await page.evaluate(
      "window.loss = plate.root.gl.getContext().getExtension('WEBGL_lose_context'); loss.loseContext()",
    );
    await page.locator('.scene-notice').waitFor();
    await page.evaluate('loss.restoreContext()');
    await page.locator('.scene-notice').waitFor({ state: 'detached' });
    // Software GL takes its time to bring everything back: what counts is that it comes.
    await expect
      .poll(
        async () => {
          await drawn(page);
          const rgb = await pixelAt([0.35, 0.5, -0.15]);
          return Math.max(...rgb.map((c, i) => Math.abs(c - panelColour[i]!)));
        },
        { timeout: 180_000, interval: 500 },
      )
      .toBeLessThanOrEqual(1);
  });
});

it('hatches and outlines a panel that fails', async () => {
  // 4 mm welded on top: its deflection fails.
  page = await openPlate(browser, 'middle/top-4-welded');
  await act("p.set({ reading: 'panel-deflection' })");
  await act("p.showNamed('plan')");
  const fail = hex('#9c2b12');
  const row = await pixelsAt(Array.from({ length: 24 }, (_, i) => [0.3 + 0.004 * i, 0.5, 0.004]));
  const striped = row.filter((rgb) => rgb.every((c, i) => Math.abs(c - fail[i]!) <= 2)).length;
  expect(striped).toBeGreaterThan(4);
  expect(striped).toBeLessThan(20);
  expect(await run("p.root.scene.children.some((o) => o.name === 'outline')")).toBe(true);
  expect(await page.locator('.scene-legend .swatch.fails').count()).toBe(1);
});

it('shows open bays as sheets that can be picked', async () => {
  page = await openPlate(browser, 'middle/ends-open');
  await act("p.showNamed('plan')");
  await click(middleOf.A1);
  expect(await run('p.selection')).toBe('bay:A1');
});

/** Half a million triangles take a second a frame on software GL: CI turns the plate a little, the night all the way. */
const frames = process.env.STILLPLATE_NIGHT ? { warmUp: 60, counted: 300 } : { warmUp: 8, counted: 24 };

it(`draws 60 bays with over 2,000 bolts in at most 60 calls, and ${frames.counted} frames of orbit grow the heap by under 1 MB`, async () => {
  page = await openPlate(browser, 'many', { width: 800, height: 600 });
  const bolts = await run<number>("p.scene.parts.filter((part) => part.kind === 'bolt').length");
  expect(bolts).toBeGreaterThanOrEqual(2000);
  await act("p.set({ reading: 'utilisation', load: p.scene.loads[0].id, slings: true })");
  await act("p.onSelect('panel:C5')");
  const { calls } = await run<{ calls: number; triangles: number }>('p.draw()');
  expect(calls).toBeLessThanOrEqual(60);
  const orbit = (frames: number) =>
    page.evaluate(`new Promise((done) => {
      let left = ${frames};
      const step = () => {
        const view = plate.store.view();
        plate.store.show({ ...view, azimuth: view.azimuth + 0.02 });
        if (--left > 0) requestAnimationFrame(step); else done();
      };
      step();
    })`);
  const session = await page.context().newCDPSession(page);
  const used = async (): Promise<number> => {
    await session.send('HeapProfiler.collectGarbage');
    return (await session.send('Runtime.getHeapUsage')).usedSize;
  };
  await orbit(frames.warmUp);
  const before = await used();
  await orbit(frames.counted);
  const growth = (await used()) - before;
  console.log(
    `${bolts} bolts: ${calls} calls; heap grew by ${(growth / 1024).toFixed(0)} KiB over ${frames.counted} frames`,
  );
  expect(growth).toBeLessThan(1024 ** 2);
}, 900_000);

it('says so where there is no WebGL, and how to mend it; the list of parts still works', async () => {
  const plain = await openBrowser(['--disable-3d-apis']);
  // After the look at the content policy, which every test ends with.
  onTestFinished(() => plain.close());
  page = await openPlate(plain, 'middle', { draws: false });
  await page.locator('.scene-unavailable').waitFor();
  expect(await page.locator('.scene-unavailable').textContent()).toMatch(/WebGL.*hardware acceleration/);
  await page.getByRole('button', { name: /^Panels/ }).click();
  await page.locator('.scene-parts li button').first().click();
  expect(await run('p.selection')).toBe('panel:A1');
});

it('says so where the card cannot make what draws the plate, though nothing waits for its answer', async () => {
  const refusing = `WebGL2RenderingContext.prototype.getProgramParameter = new Proxy(WebGL2RenderingContext.prototype.getProgramParameter, {
    apply: (ask, context, [program, what]) => what !== context.LINK_STATUS && Reflect.apply(ask, context, [program, what]),
  });`;
  page = await openPlate(browser, 'small', { before: refusing });
  await page
    .getByRole('alert')
    .filter({ hasText: /cannot draw a part of the picture/ })
    .waitFor();
  await page.close();
  page = await openPlate(browser, 'small');
  await page.waitForTimeout(2500);
  expect(await page.getByRole('alert').count()).toBe(0);
});
