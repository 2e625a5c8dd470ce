import { between, type Size, type View } from './camera.ts';

/** The view outside React: it changes with every move of the pointer, and only the picture and its labels follow. */
export interface ViewStore {
  readonly view: () => View;
  readonly size: () => Size;
  readonly setSize: (size: Size) => void;
  /** Shows a view at once, or on the way there in a quarter of a second. */
  readonly show: (view: View, gently?: boolean) => void;
  readonly subscribe: (listener: () => void) => () => void;
}

const gentleMs = 250;

export function viewStore(first: View): ViewStore {
  let view = first;
  let size: Size = { width: 1, height: 1 };
  let run = 0;
  const listeners = new Set<() => void>();
  const set = (next: View): void => {
    view = next;
    for (const listener of listeners) listener();
  };
  return {
    view: () => view,
    size: () => size,
    setSize: (next) => {
      size = next;
      set(view);
    },
    show: (next, gently = false) => {
      const own = ++run;
      if (!gently || matchMedia('(prefers-reduced-motion: reduce)').matches) return set(next);
      const from = view;
      const start = performance.now();
      const step = (now: number): void => {
        if (own !== run) return;
        const part = Math.min(1, Math.max(0, (now - start) / gentleMs));
        set(part < 1 ? between(from, next, part) : next);
        if (part < 1) requestAnimationFrame(step);
      };
      requestAnimationFrame(step);
    },
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
