import { eliminate } from '../../solve/eliminate.ts';
import { feltAt, spanOf } from '../../solve/rigid-motion.ts';
import { pointMotion } from '../../solve/structure/point-force.ts';
import type { PanelMesh, Structure } from '../../solve/structure/structure.ts';
import type { Vector } from '../../solve/vector.ts';
import type { ReadyPlate, SolvedLoading } from '../solve-plate.ts';
import { activeSupports } from './active-supports.ts';
import { levelled } from './levelled.ts';
import { panelPoints, riseOf, tubePoints, type PlatePoint } from './plate-point.ts';

/** Rise (up positive), m, at a point. */
export interface RiseAt {
  readonly point: PlatePoint;
  readonly rise: number;
}

export interface Deflections {
  /** What rises are told from (see `levelled`): the supports, the plate's mean plane, or the supports and for the turning
   *  that they leave free the mean plane. */
  readonly from: 'supports' | 'supports and mean plane' | 'mean plane';
  /** Largest by size, with its sign: of all, of each tube, of each panel. */
  readonly largest: RiseAt;
  readonly tubes: readonly RiseAt[];
  readonly panels: readonly PanelDeflection[];
}

export interface PanelDeflection {
  readonly id: string;
  readonly largest: RiseAt;
  /** Largest rise from the motion of the tubes that carry it: what the panel itself bends. Null where nothing carries it. */
  readonly dip: RiseAt | null;
  /** Thickness over the dip's size tells whether small deflection holds: beyond half of it, it does not. */
  readonly dipOverThickness: number;
}

export function deflections(plate: ReadyPlate, solved: SolvedLoading): Deflections {
  const { structure } = plate;
  const u = levelled(plate, solved);
  const tubes = structure.tubes.map((_, i) => largestOf(tubePoints(structure, i), (p) => riseOf(p, u)));
  const panels = structure.panels.map((panel, i): PanelDeflection => {
    const points = panelPoints(structure, i);
    const carried = tubeMotion(structure, panel, u);
    const dip = carried && largestOf(points, (p) => riseOf(p, u) - carried(p.x, p.y));
    const { thickness } = structure.shells[panel.shells[0]]!;
    return {
      id: panel.id,
      largest: largestOf(points, (p) => riseOf(p, u)),
      dip,
      dipOverThickness: dip ? Math.abs(dip.rise) / thickness : 0,
    };
  });
  const all = [...tubes, ...panels.map(({ largest }) => largest)];
  return { from: toldFrom(plate, solved), largest: all.reduce(greater), tubes, panels };
}

const greater = (a: RiseAt, b: RiseAt): RiseAt => (Math.abs(b.rise) > Math.abs(a.rise) ? b : a);

const largestOf = (points: readonly PlatePoint[], rise: (point: PlatePoint) => number): RiseAt =>
  points.map((point) => ({ point, rise: rise(point) })).reduce(greater);

function toldFrom(plate: ReadyPlate, solved: SolvedLoading): Deflections['from'] {
  const { parts, active } = activeSupports(plate, solved);
  const { coordinates } = plate.structure;
  const felt = active.map((i) => {
    const { node, offset } = parts[i]!;
    return feltAt({ x: 0, y: 0, length: 1 }, 0, coordinates[3 * node]! + offset[0], coordinates[3 * node + 1]! + offset[1]);
  }); // prettier-ignore
  const rank = spanOf(felt).length;
  return rank === 3 ? 'supports' : rank === 0 ? 'mean plane' : 'supports and mean plane';
}

/** Rise of the tubes' walls at all places where they carry or hold a panel, as the bilinear surface that fits best,
 *    w = c0 + c1 x + c2 y + c3 x y
 *  by least squares; null where the panel has fewer than four such places. */
function tubeMotion(
  { ties, contacts, coordinates }: Structure,
  panel: PanelMesh,
  u: Float64Array,
): ((x: number, y: number) => number) | null {
  const wall = (node: number, offset: Vector): readonly [number, number, number] => [
    coordinates[3 * node]! + offset[0],
    coordinates[3 * node + 1]! + offset[1],
    pointMotion(u, node, offset)[2],
  ];
  const points = [
    ...ties.slice(...panel.ties).map(({ nodes, offsets }) => wall(nodes[1], offsets[1])),
    ...contacts.slice(...panel.contacts).map(({ nodes, offset }) => wall(nodes[1], offset)),
  ];
  if (points.length < 4) return null;
  const [x0, x1, y0, y1] = [panel.xs[0]!, panel.xs.at(-1)!, panel.ys[0]!, panel.ys.at(-1)!];
  const terms = (x: number, y: number): readonly number[] => {
    const [ξ, η] = [(2 * x - x0 - x1) / (x1 - x0), (2 * y - y0 - y1) / (y1 - y0)];
    return [1, ξ, η, ξ * η];
  };
  const rows = [0, 1, 2, 3].map(() => new Float64Array(5));
  for (const [x, y, w] of points) {
    const t = terms(x, y);
    for (let i = 0; i < 4; i++) {
      for (let j = 0; j < 4; j++) rows[i]![j]! += t[i]! * t[j]!;
      rows[i]![4]! += t[i]! * w;
    }
  }
  const c = eliminate(rows);
  if (!c.every(Number.isFinite)) return null; // all places on one line: no surface
  return (x, y) => terms(x, y).reduce((sum, term, i) => sum + c[i]! * term, 0);
}
