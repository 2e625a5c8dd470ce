// A page with nothing but the plate: what the tests of the scene, and its pictures, open.
import { createElement, useState } from 'react';
import { createRoot } from 'react-dom/client';
import { appraise } from '../../../core/appraise.ts';
import { readDocument } from '../../../core/document/read-document.ts';
import { fieldOf } from '../../../core/scene/field.ts';
import { partAt } from '../../../core/scene/part-at.ts';
import { readingsOf } from '../../../core/scene/readings-of.ts';
import { sceneOf } from '../../../core/scene/scene-of.ts';
import { projected } from '../../../renderer/scene/camera.ts';
import { firstSettings } from '../../../renderer/scene/SceneTools.tsx';
import { SceneStage, usePlateView } from '../../../renderer/scene/SceneStage.tsx';
import { showNamed, showPart, showSurface } from '../../../renderer/scene/show-views.ts';
import middle from '../../../samples/middle.stillplate.json';
import small from '../../../samples/small.stillplate.json';
import { manyBays } from '../support/many-bays.ts';
import './page.css';

const documents = { middle: () => middle, small: () => small, many: () => manyBays(middle) };
const [name = 'middle', option = ''] = location.hash.slice(1).split('/');
const raw = documents[name]();
const appraisal = appraise(raw, readDocument(raw), option === '' ? null : option);
const scene = sceneOf(appraisal.model);
const readings = readingsOf(appraisal, scene);

function Page() {
  const store = usePlateView();
  const [selection, onSelect] = useState(null);
  const [settings, onSettings] = useState({ ...firstSettings, reading: null });
  const [bent, onBent] = useState(null);
  Object.assign(window.plate, { store, selection, settings, onSelect, onSettings, onBent });
  return createElement(SceneStage, {
    scene,
    readings,
    bent,
    store,
    selection,
    onSelect,
    settings,
    onSettings,
    onReady: (root) => (window.plate.root = root),
  });
}

/** A level panel of 4 by 2 m at z = 0.2 in 40 by 20 cells; x is its value, it rises by `slope` times x; hot beyond x = 3. */
function ramp({ slope = 0, scale = null, arrows = false }) {
  const [m, n] = [40, 20];
  const node = (i, j) => j * (m + 1) + i;
  const places = [];
  const cells = [];
  for (let j = 0; j <= n; j++) for (let i = 0; i <= m; i++) places.push((4 * i) / m, (2 * j) / n, 0.2);
  for (let j = 0; j < n; j++)
    for (let i = 0; i < m; i++) cells.push(node(i, j), node(i + 1, j), node(i + 1, j + 1), node(i, j + 1));
  const x = places.filter((_, k) => k % 3 === 0);
  const panel = {
    id: 'A1',
    thickness: 0.01,
    lift: 1,
    places: Float32Array.from(places),
    moves: Float32Array.from(x.flatMap((at) => [0, 0, slope * at])),
    // a slope along x is a turn about −y
    turns: Float32Array.from(x.flatMap(() => [0, -slope, 0])),
    cells: Uint32Array.from(cells),
  };
  const shape = { panels: [panel], tubes: [], largest: 4 * slope };
  const hot = Uint8Array.from(x, (at) => (at > 3.05 ? 1 : 0));
  const fields = { panels: [{ vonMisesTop: Float32Array.from(x), hot }], tubes: [] };
  const marks = { kind: 'bolt pull', titles: ['bolt', 'bolt'], places: Float32Array.of(1, 1, 1, 3, 1, 1), moves: new Float32Array(6), off: Int8Array.of(1, 1), values: Float32Array.of(1, 2) }; // prettier-ignore
  return {
    shape,
    scale,
    isSwinging: false,
    field: fieldOf('vonMisesTop', [{ shape, fields }]),
    marks: arrows ? marks : null,
    title: 'Ramp',
    said: '',
    size: '',
    loadings: ['one'],
    loadCase: 'one',
  };
}

window.plate = {
  showRamp: (some) => {
    const bent = ramp(some);
    window.plate.fieldTop = bent.field.highest.value;
    window.plate.onBent(bent);
  },
  scene,
  readings,
  projected,
  partAt,
  showNamed: (view) => showNamed(window.plate.store, scene, view),
  showSurface: () => showSurface(window.plate.store, scene),
  showPart: (id) => showPart(window.plate.store, scene, id),
  set: (some) => window.plate.onSettings({ ...window.plate.settings, ...some }),
  /** As after opening. */
  reset() {
    window.plate.onSettings({ ...firstSettings, reading: null });
    window.plate.onSelect(null);
    window.plate.onBent(null);
    showNamed(window.plate.store, scene, 'oblique');
  },
  /** Draws now. Gives what three counted. */
  draw() {
    const { gl, scene: all, camera } = window.plate.root;
    gl.info.autoReset = true;
    gl.render(all, camera);
    return { calls: gl.info.render.calls, triangles: gl.info.render.triangles };
  },
  /** Colours of places, px from the picture's corner, as drawn by three alone: drawn once for all of them. */
  pixels(places) {
    const { gl } = window.plate.root;
    window.plate.draw();
    const context = gl.getContext();
    const ratio = gl.getPixelRatio();
    return places.map(([x, y]) => {
      const rgba = new Uint8Array(4);
      context.readPixels(
        Math.round(x * ratio),
        gl.domElement.height - 1 - Math.round(y * ratio),
        1,
        1,
        context.RGBA,
        context.UNSIGNED_BYTE,
        rgba,
      );
      return [...rgba];
    });
  },
  /** Where a point of the plate is on the picture. */
  at: (point) => projected(point, window.plate.store.view(), window.plate.store.size()),
};
window.violations = [];
document.addEventListener('securitypolicyviolation', (event) =>
  window.violations.push(`${event.violatedDirective} ${event.blockedURI}`),
);

createRoot(document.getElementById('root')).render(createElement(Page));
