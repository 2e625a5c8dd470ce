import type { Cutout, Panel, Point } from '../geometry/geometry.ts';

/** A plate as it is cut: seen from above, m, from its datum corner (the low corner of the outline, x and y towards the plate). */
export interface FlatPattern {
  readonly width: number;
  readonly height: number;
  /** Counter-clockwise. */
  readonly contour: readonly Point[];
  /** From left to right, then upwards. */
  readonly holes: readonly Cutout[];
  readonly thickness: number;
  readonly material: string;
  /** Net area, m², and mass as ordered, kg. */
  readonly area: number;
  readonly mass: number;
}

export function flatPattern({ outline, contour, cutouts, thickness, material, area }: Panel): FlatPattern {
  const [x0, y0] = [outline.x0, outline.y0];
  return {
    width: outline.x1 - x0,
    height: outline.y1 - y0,
    contour: contour.map(([x, y]) => [x - x0, y - y0]),
    holes: cutouts
      .map((hole) => ({ ...hole, x: hole.x - x0, y: hole.y - y0 }))
      .sort((a, b) => (Math.abs(a.x - b.x) > same ? a.x - b.x : a.y - b.y)),
    thickness,
    material: material.id,
    area,
    mass: area * thickness * material.density,
  };
}

/** Lengths closer than this are one on any steel: a micrometre, m. */
const same = 1e-6;

/** A plate part: panels with the same pattern, thickness and material are one, cut as often as it occurs. */
export interface PlatePart {
  /** "P1", "P2", … in the order of the panels. */
  readonly number: string;
  readonly pattern: FlatPattern;
  readonly panels: readonly string[];
}

/** Plate parts of all panels. Two are one where every measure agrees to a micrometre. */
export function plateParts(panels: readonly Panel[]): readonly PlatePart[] {
  const parts = new Map<string, { pattern: FlatPattern; panels: string[] }>();
  for (const panel of panels) {
    const pattern = flatPattern(panel);
    const key = keyOf(pattern);
    const known = parts.get(key);
    if (known) known.panels.push(panel.id);
    else parts.set(key, { pattern, panels: [panel.id] });
  }
  return [...parts.values()].map((part, i) => ({ number: `P${i + 1}`, ...part }));
}

const micrometres = (metres: number): number => Math.round(metres / same);

const keyOf = ({ contour, holes, thickness, material }: FlatPattern): string =>
  JSON.stringify([
    material,
    micrometres(thickness),
    contour.map(([x, y]) => [micrometres(x), micrometres(y)]),
    holes.map(({ x, y, diameter, purpose, slot }) => [micrometres(x), micrometres(y), micrometres(diameter), purpose, slot ? [micrometres(slot.length), slot.along] : null]), // prettier-ignore
  ]);
