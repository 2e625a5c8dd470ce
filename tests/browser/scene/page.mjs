// A page with nothing but the plate: what the tests of the scene, and its pictures, open.
import { createElement, useState } from 'react';
import { createRoot } from 'react-dom/client';
import { appraise } from '../../../core/appraise.ts';
import { readDocument } from '../../../core/document/read-document.ts';
import { partAt } from '../../../core/scene/part-at.ts';
import { readingsOf } from '../../../core/scene/readings-of.ts';
import { sceneOf } from '../../../core/scene/scene-of.ts';
import { projected } from '../../../renderer/scene/camera.ts';
import { firstSettings } from '../../../renderer/scene/SceneTools.tsx';
import { SceneStage, usePlateView } from '../../../renderer/scene/SceneStage.tsx';
import { showNamed, showPart, showSurface } from '../../../renderer/scene/show-views.ts';
import middle from '../../../samples/middle.stillplate.json';
import small from '../../../samples/small.stillplate.json';
import './page.css';

/** 6 by 10 bays, each with a bolted panel; over 2,000 bolts. */
function manyBays() {
  const raw = structuredClone(middle);
  raw.grid.mainTubes = { ...raw.grid.mainTubes, count: 7, spacing: '1 m' };
  raw.grid.crossTubes = { ...raw.grid.crossTubes, count: 11 };
  raw.designs['under-6'].fixing.pitch = '110 mm';
  const bays = ['A', 'B', 'C', 'D', 'E', 'F'].flatMap((row) => Array.from({ length: 10 }, (_, i) => `${row}${i + 1}`));
  raw.panels = Object.fromEntries(bays.map((bay) => [bay, 'under-6']));
  raw.options = [];
  return raw;
}

const documents = { middle: () => middle, small: () => small, many: manyBays };
const [name = 'middle', option = ''] = location.hash.slice(1).split('/');
const raw = documents[name]();
const appraisal = appraise(raw, readDocument(raw), option === '' ? null : option);
const scene = sceneOf(appraisal.model);
const readings = readingsOf(appraisal, scene);

function Page() {
  const store = usePlateView();
  const [selection, onSelect] = useState(null);
  const [settings, onSettings] = useState({ ...firstSettings, reading: null });
  Object.assign(window.plate, { store, selection, settings, onSelect, onSettings });
  return createElement(SceneStage, {
    scene,
    readings,
    store,
    selection,
    onSelect,
    settings,
    onSettings,
    onReady: (root) => (window.plate.root = root),
  });
}

window.plate = {
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
    showNamed(window.plate.store, scene, 'oblique');
  },
  /** Draws now. Gives what three counted. */
  draw() {
    const { gl, scene: all, camera } = window.plate.root;
    gl.info.autoReset = true;
    gl.render(all, camera);
    return { calls: gl.info.render.calls, triangles: gl.info.render.triangles };
  },
  /** Colour of a place, px from the picture's corner, as drawn by three alone. */
  pixel(x, y) {
    const { gl } = window.plate.root;
    window.plate.draw();
    const context = gl.getContext();
    const ratio = gl.getPixelRatio();
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
  },
  /** Where a point of the plate is on the picture. */
  at: (point) => projected(point, window.plate.store.view(), window.plate.store.size()),
};
window.violations = [];
document.addEventListener('securitypolicyviolation', (event) =>
  window.violations.push(`${event.violatedDirective} ${event.blockedURI}`),
);

createRoot(document.getElementById('root')).render(createElement(Page));
