import { useLayoutEffect, useRef, type RefObject } from 'react';
import type { Scene } from '../../core/scene/scene.ts';
import { showNamed } from './show-views.ts';
import type { ViewStore } from './view-store.ts';

/** Tells the view how large the picture is. The first time the plate is fitted to it; a new scene keeps the view. */
export function useSizeOf(element: RefObject<HTMLElement | null>, store: ViewStore, scene: Scene): void {
  const first = useRef(scene);
  useLayoutEffect(() => {
    const target = element.current;
    if (!target) return;
    const measure = (): void => {
      const size = { width: target.clientWidth, height: target.clientHeight };
      if (size.width === 0 || size.height === 0) return;
      const isFirst = store.size().width <= 1;
      if (isFirst) showNamed(store, first.current, 'oblique');
      store.setSize(size);
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(target);
    return () => observer.disconnect();
  }, [element, store]);
}
