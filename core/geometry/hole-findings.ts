import type { Finding } from '../finding.ts';
import { isFilled, type Cutout, type Panel, type Rectangle } from './geometry.ts';
import type { Inspected } from './findings-of.ts';
import { holesApart } from './holes-apart.ts';
import { tubeRectangle } from './plan-areas.ts';
import { slotReach } from './slot.ts';

/** Holes that miss their panel, come too near to its edge or each other, or are stopped by a tube.
 *  Least distance of a hole's centre from an edge: 1.2 d0, as for bolts. Source: EN 1993-1-8:2005, Table 3.3. */
export function holeFindings({ geometry: { panels, mainTubes, crossTubes }, text }: Inspected): Finding[] {
  const tubes = [...mainTubes, ...crossTubes];
  return panels.flatMap((panel) => {
    const { id: place, cutouts, design } = panel;
    const findings: Finding[] = [];
    const notch = design.cornerNotch?.si ?? 0;
    const holes = cutouts.filter((c) => !isFilled(c));
    for (const hole of holes) {
      const name = nameOf(hole);
      const toEdge = distanceToEdge(hole, panel.outline, notch);
      if (toEdge < hole.diameter / 2)
        findings.push({
          id: 'hole-outside-panel',
          place,
          text: `${name} of panel ${place} does not lie inside the panel: its centre is ${toEdge < 0 ? `${text(-toEdge)} outside` : `${text(toEdge)} from`} the edge.`,
          mend: 'Move the hole; its x and y count from the panel’s centre.',
        });
      else if (toEdge < 1.2 * hole.diameter - 1e-9)
        findings.push({
          id: 'hole-too-close-to-edge',
          place,
          text: `${name} of panel ${place} has its centre ${text(toEdge)} from the edge, 1.2 d0 is ${text(1.2 * hole.diameter)}.`,
          mend: 'Move the hole inwards, or make it smaller.',
        });
      if (hole.purpose !== 'vent' && hole.purpose !== 'drain') continue;
      const face = panel.pressedBy === 'down' ? panel.bottom : panel.top;
      const stop = tubes.find(
        (tube) =>
          Math.abs((panel.pressedBy === 'down' ? tube.top : tube.bottom) - face) < 1e-6 &&
          toRectangle(hole, tubeRectangle(tube)) < hole.diameter / 2 - 1e-9,
      );
      if (stop)
        findings.push({
          id: 'hole-over-tube',
          place,
          text: `${name} of panel ${place} lies over tube ${stop.id}, which stops it.`,
          mend: 'Move the hole over the opening between the tubes.',
        });
    }
    const overlapping = pairsOf(cutouts);
    for (const [a, b] of overlapping.slice(0, 1))
      findings.push({
        id: 'holes-overlap',
        place,
        text: `${nameOf(a)} and ${nameOf(b).toLowerCase()} of panel ${place} run into each other${overlapping.length > 1 ? ` (and ${overlapping.length - 1} more pairs)` : ''}: centres ${text(Math.hypot(a.x - b.x, a.y - b.y))} apart. Its area counts the common part twice.`,
        mend: 'Move one of the holes.',
      });
    return findings;

    function nameOf({ purpose, diameter, x, y }: Cutout): string {
      const { x0, y0, x1, y1 } = panel.outline;
      const word = {
        bolt: 'Bolt',
        plug: 'Plug weld',
        vent: 'Vent',
        drain: 'Drain',
        lifting: 'Lifting',
        other: 'Plain',
      }[purpose];
      return `${word} hole ${text(diameter)} at ${text(x - (x0 + x1) / 2)}, ${text(y - (y0 + y1) / 2)}`;
    }
  });
}

/** Distance of a hole's centre from the contour, m; negative outside. */
function distanceToEdge({ x, y }: Cutout, { x0, y0, x1, y1 }: Rectangle, notch: number): number {
  const [dx, dy] = [Math.min(x - x0, x1 - x), Math.min(y - y0, y1 - y)];
  const straight = Math.min(dx, dy);
  if (notch === 0) return straight;
  const corner =
    dx > notch || dy > notch ? Math.hypot(Math.max(dx - notch, 0), Math.max(dy - notch, 0)) : Math.max(dx, dy) - notch;
  return Math.min(straight, corner);
}

function toRectangle({ x, y }: Cutout, { x0, y0, x1, y1 }: Rectangle): number {
  return Math.hypot(Math.max(x0 - x, x - x1, 0), Math.max(y0 - y, y - y1, 0));
}

function pairsOf(cutouts: Panel['cutouts']): [Cutout, Cutout][] {
  const byX = [...cutouts].sort((a, b) => a.x - b.x);
  const reach = Math.max(0, ...cutouts.map((c) => c.diameter + 2 * slotReach(c, 'x')));
  const pairs: [Cutout, Cutout][] = [];
  byX.forEach((a, i) => {
    for (let j = i + 1; j < byX.length && byX[j]!.x - a.x < reach; j++) {
      const b = byX[j]!;
      if (holesApart(a, b) < -1e-9) pairs.push([a, b]);
    }
  });
  return pairs;
}
