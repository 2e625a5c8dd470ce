import { between, type Size, type View } from './camera.ts';

/** The view outside React: it changes with every move of the pointer, and only the picture and its labels follow. */
export interface ViewStore {
  readonly view: () => View;
  readonly size: () => Size;
  readonly setSize: (size: Size) => void;
  /** Shows a view at once. */
  readonly show: (view: View) => void;
  /** Goes in a quarter of a second to the view that fits the screen; until it is moved, it fits every size of the screen. */
  readonly fit: (fitting: (size: Size) => View) => void;
  readonly subscribe: (listener: () => void) => () => void;
}

const gentleMs = 250;

export function viewStore(first: View): ViewStore {
  let view = first;
  let size: Size = { width: 1, height: 1 };
  let run = 0;
  let fitting: ((size: Size) => View) | null = null;
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
      run++;
      set(fitting ? fitting(size) : view);
    },
    show: (next) => {
      run++;
      fitting = null;
      set(next);
    },
    fit: (make) => {
      const own = ++run;
      fitting = make;
      const next = make(size);
      if (matchMedia('(prefers-reduced-motion: reduce)').matches) return set(next);
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
