import type { Geometry, Tube } from '../geometry/geometry.ts';
import { printedUnit, quantityText, type UnitSystem } from '../quantity/format-quantity.ts';
import { refusal } from '../refusal.ts';
import type { Place } from './plate-loads.ts';

/** The tube (or crossing) on which a point in plan stands, m. Refuses a point beside the tubes and names the nearest. */
export function placeOnTube(
  point: { readonly what: string; readonly id: string; readonly x: number; readonly y: number; readonly path: string },
  geometry: Geometry,
  units: UnitSystem,
): Place {
  const { x, y } = point;
  const tubes = [...geometry.mainTubes, ...geometry.crossTubes];
  const away = tubes.map((tube) => distance(tube, x, y));
  // a cross tube let in ends at the main tube's face: a joint counts as far as both are wide
  const half = (id: string): number => tubes.find((tube) => tube.id === id)!.section.width / 2 + touch;
  const crossing = geometry.crossings.find(
    (c) => Math.abs(x - c.x) <= half(c.cross) && Math.abs(y - c.y) <= half(c.main),
  );
  const nearest = away.indexOf(Math.min(...away));
  const tube = tubes[nearest]!;
  if (away[nearest]! > touch) {
    const length = (metres: number): string => quantityText(metres, printedUnit('mm', units));
    throw refusal({
      what: `${point.what} ${point.id} at x ${length(x)}, y ${length(y)} stands on no tube; the nearest is ${tube.set} tube ${tube.id}, ${length(away[nearest]!)} away`,
      where: { path: point.path, attachment: point.id },
      mend: `Move it onto a tube: the centre line of ${tube.id} is at ${tube.set === 'main' ? 'y' : 'x'} ${length(tube.at)}.`,
    });
  }
  return { tube: nearest, at: tube.set === 'main' ? x : y, crossing: crossing?.id ?? null, x, y };
}

/** A point typed on a tube's edge stands on it in spite of rounding, m. */
const touch = 1e-9;

/** From a point to a tube's footprint in plan, zero within it. */
function distance({ set, at, from, to, section }: Tube, x: number, y: number): number {
  const [along, across] = set === 'main' ? [x, y] : [y, x];
  return Math.hypot(Math.max(from - along, along - to, 0), Math.max(Math.abs(across - at) - section.width / 2, 0));
}
