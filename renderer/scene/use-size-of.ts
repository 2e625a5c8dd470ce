import { useLayoutEffect, type RefObject } from 'react';
import type { Scene } from '../../core/scene/scene.ts';
import { directions, fitted } from './camera.ts';
import { margin } from './show-views.ts';
import type { ViewStore } from './view-store.ts';

/** Tells the view how large the picture is. The first time the plate is fitted, later the scale keeps to the height. */
export function useSizeOf(element: RefObject<HTMLElement | null>, store: ViewStore, scene: Scene): void {
  useLayoutEffect(() => {
    const target = element.current;
    if (!target) return;
    const measure = (): void => {
      const size = { width: target.clientWidth, height: target.clientHeight };
      if (size.width === 0 || size.height === 0) return;
      const before = store.size();
      const isFirst = before.width <= 1;
      store.setSize(size);
      const view = store.view();
      store.show(
        isFirst
          ? fitted(directions.oblique, scene.box, size, margin)
          : {
              ...view,
              scale: (view.scale * Math.min(size.width, size.height)) / Math.min(before.width, before.height),
            },
      );
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(target);
    return () => observer.disconnect();
    // A new scene keeps the view: an edit must not turn the plate under the reader's eyes.
  }, [element, store]);
}
