import type { PlateDocument } from '../document/schema.ts';
import type { Geometry, Point, Rectangle } from './geometry.ts';

const middle = ({ x0, y0, x1, y1 }: Rectangle): Point => [(x0 + x1) / 2, (y0 + y1) / 2];

/** Where on the plan a place is, m: middle of a bay or panel, a quarter along a tube (its middle is often a crossing), a crossing, an eye. Null for what has no one place. */
export function placePoint(document: PlateDocument, geometry: Geometry, place: string): Point | null {
  const bay = geometry.bays.find(({ id }) => id === place);
  if (bay) return middle(bay.opening);
  const panel = geometry.panels.find(({ id }) => id === place);
  if (panel) return middle(panel.outline);
  const main = geometry.mainTubes.find(({ id }) => id === place);
  if (main) return [main.from + (main.to - main.from) / 4, main.at];
  const cross = geometry.crossTubes.find(({ id }) => id === place);
  if (cross) return [cross.at, cross.from + (cross.to - cross.from) / 4];
  const crossing = geometry.crossings.find(({ id }) => id === place);
  if (crossing) return [crossing.x, crossing.y];
  const { suspension, padEyes } = document.grid;
  const eye = [...suspension.attachments, ...(padEyes?.points ?? [])].find(({ id }) => id === place);
  return eye ? [eye.x.si, eye.y.si] : null;
}
