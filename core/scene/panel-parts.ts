import { isInside } from '../geometry/panel-of.ts';
import type { Cutout, Panel } from '../geometry/geometry.ts';
import type { PartDraft } from './part-draft.ts';
import { prism } from './prism.ts';
import { asHole, circle, polygon, type Ring } from './ring.ts';

/**
 * Panels with notches and holes. A hole that runs over the panel's edge or into another hole is not cut: the findings
 * name it, and the mass counts the second of two that overlap in full.
 */
export const panelParts = (panels: readonly Panel[]): PartDraft[] =>
  panels.map((panel) => ({
    kind: 'panel',
    place: panel.id,
    title: `Panel ${panel.id}, ${panel.designName}, ${panel.design.thickness.typed}`,
    bays: panel.bays,
    lift: liftOf(panel),
    build: (into) => {
      const holes = new Map(cleanHoles(panel).map((hole) => [hole, ringOf(hole)]));
      const quiet = new Set([...holes].filter(([{ purpose }]) => purpose === 'bolt').map(([, ring]) => ring));
      prism(
        into,
        { outer: polygon(panel.contour), holes: [...holes.values()] },
        { origin: [0, 0, 0], u: [1, 0, 0], v: [0, 1, 0] },
        [panel.bottom, panel.top],
        quiet,
      );
    },
  }));

/** A topside panel comes off upwards. */
export const liftOf = ({ pressedBy }: Pick<Panel, 'pressedBy'>): 1 | -1 => (pressedBy === 'down' ? 1 : -1);

const ringOf = ({ x, y, diameter }: Cutout): Ring => asHole(circle(x, y, diameter / 2));

/** Holes that can be cut: inside the contour, and clear of those before them. */
function cleanHoles({ cutouts, outline, design }: Panel): Cutout[] {
  const inside = cutouts.filter((hole) => isInside(hole, outline, design.cornerNotch?.si ?? 0));
  return inside.filter((hole, i) =>
    inside
      .slice(0, i)
      .every((other) => Math.hypot(hole.x - other.x, hole.y - other.y) > (hole.diameter + other.diameter) / 2),
  );
}
