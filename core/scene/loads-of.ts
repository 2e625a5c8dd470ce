import type { Model } from '../model.ts';
import { liftOf } from './panel-parts.ts';
import type { SceneArrow, SceneLoad } from './scene.ts';

/** Every situation as arrows, one for each panel field: pressure by area over the middle of the bay. */
export function loadsOf({ loads, fields, bays, panels }: Model): SceneLoad[] {
  return loads.situations.map(({ id, title, direction, path, force, loadFactor, pressures, missing }) => ({
    id,
    title,
    direction,
    path,
    force,
    loadFactor,
    missing: missing ?? null,
    arrows: [...pressures].flatMap(([bay, pressure]): SceneArrow[] => {
      const [field, place] = [fields.get(bay), bays.get(bay)];
      const panel = field && panels.get(field.panel);
      if (!field || !place || !panel) return [];
      const { x0, y0, x1, y1 } = place.opening;
      const at = [(x0 + x1) / 2, (y0 + y1) / 2, panel.top] as const;
      return [{ bay, at, lift: liftOf(panel), force: pressure * loads.shares.get(bay)!.solid }];
    }),
  }));
}
