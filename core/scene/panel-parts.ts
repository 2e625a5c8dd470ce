import { holesApart } from '../geometry/holes-apart.ts';
import { isInside } from '../geometry/panel-of.ts';
import { slotReach } from '../geometry/slot.ts';
import { isFilled, type Cutout, type Panel } from '../geometry/geometry.ts';
import type { PartDraft } from './part-draft.ts';
import { prism } from './prism.ts';
import { arc, asHole, chordsInQuarter, circle, polygon, type Ring } from './ring.ts';

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
      const quiet = new Set([...holes].filter(([hole]) => isFilled(hole)).map(([, ring]) => ring));
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

const ringOf = (hole: Cutout): Ring => asHole(hole.slot ? stadium(hole) : circle(hole.x, hole.y, hole.diameter / 2));

/** A slot: two half circles, the straights between them. */
function stadium(hole: Cutout): Ring {
  const { x, y, diameter } = hole;
  const [a, b] = [slotReach(hole, 'x'), slotReach(hole, 'y')];
  const from = a > 0 ? -Math.PI / 2 : 0;
  const end = (sign: 1 | -1, start: number) =>
    arc(x + sign * a, y + sign * b, diameter / 2, start, start + Math.PI, 2 * chordsInQuarter(diameter / 2));
  return [...end(1, from), ...end(-1, from + Math.PI)];
}

/** Holes that can be cut: inside the contour, and clear of those before them. */
function cleanHoles({ cutouts, outline, design }: Panel): Cutout[] {
  const inside = cutouts.filter((hole) => isInside(hole, outline, design.cornerNotch?.si ?? 0));
  return inside.filter((hole, i) => inside.slice(0, i).every((other) => holesApart(hole, other) > 0));
}
