import { around } from '../../core/scene/growing-mesh.ts';
import type { Box, Scene, Vector } from '../../core/scene/scene.ts';
import { directions, fitted, isPlan, type Size, type ViewName } from './camera.ts';
import type { ViewStore } from './view-store.ts';

/** px around the plate when it is fitted: room for dimension lines in plan and for names; less where the picture is small,
 *  since the plate is what is looked at. */
export const marginFor = ({ width, height }: Size, isPlan: boolean): number =>
  Math.max(isPlan ? 70 : 44, Math.min(92, 0.17 * Math.min(width, height)));

/** Box around the plate with its panels pulled apart, m. */
function shownBox({ parts, box }: Scene, apart: number): Box {
  if (apart === 0) return box;
  return around(
    parts.map(({ box: { low, high }, lift }) => ({
      low: [low[0], low[1], low[2] + lift * apart],
      high: [high[0], high[1], high[2] + lift * apart],
    })),
  );
}

/** A named view of the whole plate. */
export const showNamed = (store: ViewStore, scene: Scene, name: ViewName, apart = 0): void =>
  store.fit((size) => fitted(directions[name], shownBox(scene, apart), size, marginFor(size, name === 'plan')));

/** From the side, with the surface of the water. */
export function showSurface(store: ViewStore, { box: { low, high }, water }: Scene): void {
  const box = { low, high: [high[0], high[1], Math.max(high[2], water.surface)] as Vector };
  store.fit((size) => fitted(directions.side, box, size, marginFor(size, false)));
}

/** The plate fitted in the direction from which it is seen. */
export function showFitted(store: ViewStore, scene: Scene, apart = 0): void {
  const { azimuth, elevation } = store.view();
  const plan = isPlan(store.view());
  store.fit((size) => fitted({ azimuth, elevation }, shownBox(scene, apart), size, marginFor(size, plan)));
}

/** Turns to a part: brings it to the middle, enlarged where it would be small. */
export function showPart(store: ViewStore, scene: Scene, id: string): void {
  const part = scene.parts.find((other) => other.id === id);
  if (!part) return;
  const { azimuth, elevation, scale } = store.view();
  store.fit((size) => {
    const close = fitted({ azimuth, elevation }, part.box, size, Math.min(size.width, size.height) / 3);
    return { ...close, scale: Math.max(scale, Math.min(close.scale, 3 * scale)) };
  });
}
