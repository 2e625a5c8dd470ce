import type { Geometry, Panel, Rectangle, Tube } from '../../geometry/geometry.ts';
import { distinct, latticeLines, nearestLine, touch } from '../../solve/lattice-lines.ts';

/** A panel as a lattice: lines in m, and the cells that are there (row by row, x fastest; notches left out). */
export interface Lattice {
  readonly xs: Float64Array;
  readonly ys: Float64Array;
  readonly cells: Uint8Array;
}

/** A line closer than this to another, m, is not added for a wall's edge: the wall is as uncertain. */
const least = 0.003;

/** Bolts nearer than this in x or y, m, share a line: less than holes are set out to, and a sliver that thin has no stiffness
 *  left in the digits. Each stands on the nearest line (`boltSeat`). */
const setOut = 1e-4;

/**
 * Lines through every bolt, edge and notch, through the edges of the tubes' flats, midway between bolts (there a panel's
 * edge bends most), and between them so that no cell is wider than `size`. Holes are left out of the lattice: they are small beside the bays, and the
 * checks of bolts and net sections take them off by themselves.
 */
export function panelLattice(
  panel: Panel,
  { outline, cornerNotch }: { readonly outline: Rectangle; readonly cornerNotch: number },
  { mainTubes, crossTubes }: Pick<Geometry, 'mainTubes' | 'crossTubes'>,
  size: number,
): Lattice {
  const { x0, x1, y0, y1 } = outline;
  const notch = (low: number, high: number): number[] =>
    cornerNotch > 0 ? [low + cornerNotch, high - cornerNotch] : [];
  const xs = latticeLines(
    [x0, x1, ...notch(x0, x1), ...boltLines(panel.bolts.map((bolt) => bolt.x))],
    [...crossTubes.flatMap(flatEdges), ...betweenBolts(panel.bolts.map((bolt) => bolt.x))],
    { size, least },
  );
  const ys = latticeLines(
    [y0, y1, ...notch(y0, y1), ...boltLines(panel.bolts.map((bolt) => bolt.y))],
    [...mainTubes.flatMap(flatEdges), ...betweenBolts(panel.bolts.map((bolt) => bolt.y))],
    { size, least },
  );
  const [nx, ny] = [xs.length - 1, ys.length - 1];
  const cells = new Uint8Array(nx * ny).fill(1);
  if (cornerNotch > 0)
    for (let j = 0; j < ny; j++)
      for (let i = 0; i < nx; i++) {
        const [x, y] = [(xs[i]! + xs[i + 1]!) / 2, (ys[j]! + ys[j + 1]!) / 2];
        if (Math.min(x - x0, x1 - x) < cornerNotch && Math.min(y - y0, y1 - y) < cornerNotch) cells[j * nx + i] = 0;
      }
  return { xs, ys, cells };
}

const boltLines = (places: readonly number[]): number[] => distinct(places, setOut);

/** Where a bolt stands in the lattice: its lines, and its place, which is off its own only where it shares another's line. */
export function boltSeat({ xs, ys }: Lattice, { x, y }: { readonly x: number; readonly y: number }) {
  const [i, j] = [nearestLine(xs, x), nearestLine(ys, y)];
  const on = (line: number, own: number): number => (Math.abs(line - own) > touch ? line : own);
  return { i, j, at: [on(xs[i]!, x), on(ys[j]!, y)] as const };
}

/** Where a tube's flat begins and ends across it, m: what a panel bears on. */
export const flatEdges = ({ at, section }: Tube): number[] => {
  const half = section.width / 2 - section.outerRadius;
  return half > 0 ? [at - half, at + half] : [at];
};

/** Midway between neighbouring bolts, m. */
function betweenBolts(places: readonly number[]): number[] {
  const own = distinct(places, touch);
  return own.slice(1).map((place, i) => (own[i]! + place) / 2);
}
