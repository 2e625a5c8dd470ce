import type { Scene, Vector } from '../../core/scene/scene.ts';
import { directions, fitted, type ViewName } from './camera.ts';
import type { ViewStore } from './view-store.ts';

/** px around the plate when it is fitted: room for dimension lines and names. */
export const margin = 78;

/** A named view of the whole plate; `withSurface` takes the water's surface in. */
export function showNamed(store: ViewStore, scene: Scene, name: ViewName, withSurface = false): void {
  const { low, high } = scene.box;
  const box = withSurface
    ? { low, high: [high[0], high[1], Math.max(high[2], scene.water.surface)] as Vector }
    : scene.box;
  store.show(fitted(directions[name], box, store.size(), margin), true);
}

/** The plate fitted in the direction from which it is seen. */
export const showFitted = (store: ViewStore, scene: Scene): void =>
  store.show(fitted(store.view(), scene.box, store.size(), margin), true);

/** Turns to a part: brings it to the middle, enlarged where it would be small. */
export function showPart(store: ViewStore, scene: Scene, id: string): void {
  const part = scene.parts.find((other) => other.id === id);
  if (!part) return;
  const view = store.view();
  const close = fitted(view, part.box, store.size(), Math.min(store.size().width, store.size().height) / 3);
  store.show({ ...close, scale: Math.max(view.scale, Math.min(close.scale, 3 * view.scale)) }, true);
}
