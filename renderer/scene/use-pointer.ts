import { useEffect, type RefObject } from 'react';
import { orbited, panned, zoomed } from './camera.ts';
import type { ViewStore } from './view-store.ts';

export interface PointerActions {
  /** The pointer rests at a place, px from the corner; null when it has left. */
  readonly onPoint: (x: number, y: number) => void;
  readonly onLeave: () => void;
  /** Pressed and let go in one place. */
  readonly onPress: (x: number, y: number) => void;
}

/** How far a press may slip before it is a drag, px. */
const slip = 4;

/**
 * Mouse, touchpad and fingers: drag turns; drag with the right or middle button or Shift moves; wheel, or two fingers up
 * and down, zooms at the pointer; two fingers sideways moves; pinch zooms, on a touchpad and on a screen.
 */
export function usePointer(element: RefObject<HTMLElement | null>, store: ViewStore, actions: PointerActions): void {
  useEffect(() => {
    const target = element.current;
    if (!target) return;
    const down = new Map<number, { x: number; y: number }>();
    let travelled = 0;
    let moves = false;
    const at = (event: MouseEvent): { x: number; y: number } => {
      const { left, top } = target.getBoundingClientRect();
      return { x: event.clientX - left, y: event.clientY - top };
    };
    const press = (event: PointerEvent): void => {
      if (event.target instanceof Element && event.target.closest('button, a, input, select')) return;
      target.setPointerCapture(event.pointerId);
      if (down.size === 0) travelled = 0;
      down.set(event.pointerId, at(event));
      moves = event.button !== 0 || event.shiftKey;
      target.focus({ preventScroll: true });
      event.preventDefault();
    };
    const move = (event: PointerEvent): void => {
      const now = at(event);
      const before = down.get(event.pointerId);
      if (!before) return actions.onPoint(now.x, now.y);
      const [dx, dy] = [now.x - before.x, now.y - before.y];
      travelled += Math.hypot(dx, dy);
      if (travelled <= slip) return;
      const others = [...down].filter(([id]) => id !== event.pointerId);
      down.set(event.pointerId, now);
      const [other] = others;
      if (other) {
        const [, fixed] = other;
        const factor =
          Math.hypot(now.x - fixed.x, now.y - fixed.y) / Math.hypot(before.x - fixed.x, before.y - fixed.y);
        const middle = { x: (now.x + fixed.x) / 2, y: (now.y + fixed.y) / 2 };
        store.show(panned(zoomed(store.view(), factor, middle.x, middle.y, store.size()), dx / 2, dy / 2));
      } else store.show(moves ? panned(store.view(), dx, dy) : orbited(store.view(), dx, dy));
    };
    const release = (event: PointerEvent): void => {
      const was = down.delete(event.pointerId);
      if (was && event.type === 'pointerup' && travelled <= slip && event.button === 0) {
        const { x, y } = at(event);
        actions.onPress(x, y);
      }
    };
    const wheel = (event: WheelEvent): void => {
      event.preventDefault();
      const { x, y } = at(event);
      const unit = event.deltaMode === 1 ? 16 : event.deltaMode === 2 ? store.size().height : 1;
      const sideways = Math.abs(event.deltaX) > Math.abs(event.deltaY) || event.shiftKey;
      if (sideways && !event.ctrlKey)
        return store.show(
          panned(store.view(), -unit * (event.deltaX || event.deltaY), event.shiftKey ? 0 : -unit * event.deltaY),
        );
      // A pinch comes as a wheel with Ctrl, in smaller steps.
      const step = unit * event.deltaY * (event.ctrlKey ? 0.01 : 0.0015);
      store.show(zoomed(store.view(), Math.exp(-Math.max(-0.5, Math.min(0.5, step))), x, y, store.size()));
    };
    const noMenu = (event: Event): void => event.preventDefault();
    target.addEventListener('pointerdown', press);
    target.addEventListener('pointermove', move);
    target.addEventListener('pointerup', release);
    target.addEventListener('pointercancel', release);
    target.addEventListener('pointerleave', actions.onLeave);
    target.addEventListener('wheel', wheel, { passive: false });
    target.addEventListener('contextmenu', noMenu);
    return () => {
      target.removeEventListener('pointerdown', press);
      target.removeEventListener('pointermove', move);
      target.removeEventListener('pointerup', release);
      target.removeEventListener('pointercancel', release);
      target.removeEventListener('pointerleave', actions.onLeave);
      target.removeEventListener('wheel', wheel);
      target.removeEventListener('contextmenu', noMenu);
    };
  }, [element, store, actions]);
}
