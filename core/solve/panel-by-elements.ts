import { refusal } from '../refusal.ts';
import { shellForces, shellRecovery } from './elements/shell-recovery.ts';
import { shellStiffness, shellUnits } from './elements/shell-stiffness.ts';
import { latticeLines, nearestLine } from './lattice-lines.ts';
import { elementProduct } from './sparse/element-product.ts';
import { factorise, type FactoriseOptions } from './sparse/factorise.ts';
import type { StiffnessSystem } from './sparse/stiffness-system.ts';
import { requirePlate, type UniformPlate } from './uniform-plate.ts';

/** How the edges of a panel by itself are held. `resting`: they bear on a rigid frame and may lift off it.
 *  Points count from the corner, m. */
export type EdgeSupport =
  | { readonly kind: 'hinged' | 'held' | 'two-sides' }
  | { readonly kind: 'resting' }
  | {
      readonly kind: 'points';
      readonly points: readonly (readonly [number, number])[];
      readonly exclusionRadius: number;
    };

/** A panel by finite elements, SI; deflections positive along q, moments per unit width positive where the far face pulls. */
export interface PanelAnswer {
  readonly deflectionCentre: number;
  readonly deflectionLargest: number;
  readonly momentXCentre: number;
  readonly momentYCentre: number;
  /** Largest principal moment, as a magnitude, and largest von Mises stress of bending, Pa, with its place [x, y], m. */
  readonly momentLargest: number;
  readonly stressLargest: number;
  readonly largestAt: readonly [number, number];
  /** Rise of the first corner off its support, m, and the part of each half edge (along x, along y) that still bears: for
   *  `resting`; else 0 and 1. */
  readonly cornerRise: number;
  readonly bearing: readonly [number, number];
  /** Sum of the reactions over the load: 1 but for round-off. */
  readonly reactionRatio: number;
  /** Change of the largest deflection, and of the largest stress, on halving the cells, as a part of it, over 3: what is left
   *  by extrapolation. */
  readonly error: number;
  readonly unknowns: number;
  /** Sets of bearing points tried, and whether the last proved right (no pull, no overlap). */
  readonly steps: number;
  readonly settled: boolean;
}

/** Cells along the shorter side of the coarser of the two meshes. */
const cells = 12;

/**
 * Bends a rectangular panel under uniform pressure by discrete Kirchhoff elements on two meshes, the second twice as fine,
 * and gives the second with an estimate of its error. Thin plate, small deflection. `resting` is unilateral: bearing points
 * are found by releasing those that pull and holding those that overlap, from all held, until none is wrong.
 * Refuses a plate that thin plate theory cannot take, and supports that do not hold it.
 */
export function panelByElements(
  plate: UniformPlate,
  support: EdgeSupport,
  options: FactoriseOptions = {},
): PanelAnswer {
  requirePlate(plate);
  if (support.kind === 'points' && support.points.length < 3)
    throw refusal({
      what: `${support.points.length} points do not hold a plate`,
      mend: 'Give at least three, not in a line.',
    });
  const coarse = solveOn(plate, support, cells, options);
  const fine = solveOn(plate, support, 2 * cells, options);
  const change = (of: (answer: Solved) => number): number => Math.abs(of(fine) - of(coarse)) / Math.abs(of(fine)) / 3;
  return { ...fine, error: Math.max(change((s) => s.deflectionLargest), change((s) => s.stressLargest)) }; // prettier-ignore
}

type Solved = Omit<PanelAnswer, 'error'>;

function solveOn(plate: UniformPlate, support: EdgeSupport, across: number, options: FactoriseOptions): Solved {
  const { a, b, t, E, nu, q } = plate;
  const size = Math.min(a, b) / across;
  const points = support.kind === 'points' ? support.points : [];
  const even = (length: number): number[] => {
    const steps = 2 * Math.ceil(length / size / 2 - 1e-9);
    return Array.from({ length: steps + 1 }, (_, i) => (length * i) / steps);
  };
  const lines = (length: number, exact: readonly number[]): Float64Array =>
    latticeLines([0, length, ...exact], even(length), { size: 1.5 * size, least: size / 3 });
  const xs = lines(a, [a / 2, ...points.map(([x]) => x)]);
  const ys = lines(b, [b / 2, ...points.map(([, y]) => y)]);
  const [nx, ny] = [xs.length, ys.length];
  const nodeAt = (i: number, j: number): number => j * nx + i;
  const count = nx * ny;
  const coordinates = new Float64Array(3 * count);
  for (let n = 0; n < count; n++) coordinates.set([xs[n % nx]!, ys[Math.floor(n / nx)]!, 0], 3 * n);

  const units = new Map<string, { stiffness: Float64Array; recovery: ReturnType<typeof shellRecovery> }>();
  const shapes: { stiffness: Float64Array; recovery: ReturnType<typeof shellRecovery> }[] = [];
  const elements: { nodes: number[]; stiffness: Float64Array }[] = [];
  const f = new Float64Array(6 * count);
  for (let j = 0; j + 1 < ny; j++)
    for (let i = 0; i + 1 < nx; i++) {
      const [dx, dy] = [xs[i + 1]! - xs[i]!, ys[j + 1]! - ys[j]!];
      const key = `${dx.toPrecision(9)} ${dy.toPrecision(9)}`;
      let shape = units.get(key);
      if (!shape) {
        const xyz = Float64Array.of(0, 0, 0, dx, 0, 0, dx, dy, 0, 0, dy, 0);
        shape = { stiffness: shellStiffness(shellUnits(xyz, { E, nu }), t), recovery: shellRecovery(xyz, { E, nu }) };
        units.set(key, shape);
      }
      const nodes = [nodeAt(i, j), nodeAt(i + 1, j), nodeAt(i + 1, j + 1), nodeAt(i, j + 1)];
      elements.push({ nodes, stiffness: shape.stiffness });
      shapes.push(shape);
      for (const node of nodes) f[6 * node + 2]! += (q * dx * dy) / 4;
    }

  const held = new Uint8Array(6 * count);
  const edge: number[] = [];
  for (let n = 0; n < count; n++) {
    const [i, j] = [n % nx, Math.floor(n / nx)];
    held[6 * n] = held[6 * n + 1] = held[6 * n + 5] = 1; // bending alone
    const [onX, onY] = [i === 0 || i === nx - 1, j === 0 || j === ny - 1];
    if (support.kind === 'two-sides' ? onX : support.kind !== 'points' && (onX || onY)) edge.push(n); // prettier-ignore
    if (support.kind === 'held' && (onX || onY)) held[6 * n + 3] = held[6 * n + 4] = 1;
    // a hinged edge does not slope along itself
    if (support.kind === 'hinged' && onX) held[6 * n + 3] = 1;
    if (support.kind === 'hinged' && onY) held[6 * n + 4] = 1;
  }
  for (const [x, y] of points) edge.push(nodeAt(nearestLine(xs, x), nearestLine(ys, y)));

  const sign = q < 0 ? -1 : 1;
  let elimination: FactoriseOptions['elimination'];
  let bearing = new Set(edge);
  const tried = new Set<string>();
  for (let steps = 1; ; steps++) {
    const system: StiffnessSystem = { coordinates, elements, held: Uint8Array.from(held) };
    for (const n of bearing) system.held[6 * n + 2] = 1;
    const factored = factorise(system, { ...options, ...(elimination ? { elimination } : {}) });
    if (support.kind !== 'resting') elimination = factored.elimination;
    const u = factored.solve(f);
    const carried = elementProduct(system, u, new Float64Array(f.length));
    /** What the support does to the plate, against the pressure. */
    const reaction = (n: number): number => sign * (f[6 * n + 2]! - carried[6 * n + 2]!);
    const most = Math.max(...[...bearing].map((n) => Math.abs(reaction(n))));
    const depth = u.reduce((m, value, k) => (k % 6 === 2 ? Math.max(m, Math.abs(value)) : m), 0);
    const pulling = support.kind === 'resting' ? [...bearing].filter((n) => reaction(n) < -1e-9 * most) : [];
    const overlapping = support.kind === 'resting' ? edge.filter((n) => !bearing.has(n) && sign * u[6 * n + 2]! > 1e-9 * depth) : []; // prettier-ignore
    const settled = pulling.length + overlapping.length === 0;
    const next = new Set(bearing);
    for (const n of pulling) next.delete(n);
    for (const n of overlapping) next.add(n);
    const key = [...next].sort((m, n) => m - n).join(' ');
    if (settled || steps === mostSteps || tried.has(key)) return { ...read(), steps, settled };
    tried.add(key);
    bearing = next;

    function read(): Omit<Solved, 'steps' | 'settled'> {
      const moments = new Float64Array(3 * count);
      const shares = new Float64Array(count);
      elements.forEach(({ nodes }, e) => {
        const own = Float64Array.from(nodes.flatMap((n) => [...u.subarray(6 * n, 6 * n + 6)]));
        const forces = shellForces(shapes[e]!.recovery, t, own);
        nodes.forEach((n, corner) => {
          shares[n]! += 1;
          for (let k = 0; k < 3; k++) moments[3 * n + k]! += forces[6 * (corner + 1) + 3 + k]!;
        });
      });
      let [momentLargest, stressLargest, deflectionLargest] = [0, 0, 0];
      let largestAt: readonly [number, number] = [0, 0];
      for (let n = 0; n < count; n++) {
        const [x, y] = [coordinates[3 * n]!, coordinates[3 * n + 1]!];
        deflectionLargest = Math.max(deflectionLargest, Math.abs(u[6 * n + 2]!));
        if (support.kind === 'points' && points.some(([px, py]) => Math.hypot(x - px, y - py) < support.exclusionRadius)) continue; // prettier-ignore
        const [Mx, My, Mxy] = [0, 1, 2].map((k) => moments[3 * n + k]! / shares[n]!) as [number, number, number];
        momentLargest = Math.max(momentLargest, Math.abs((Mx + My) / 2) + Math.hypot((Mx - My) / 2, Mxy));
        const stress = (6 / t ** 2) * Math.sqrt(Mx * Mx - Mx * My + My * My + 3 * Mxy * Mxy);
        if (stress > stressLargest) [stressLargest, largestAt] = [stress, [x, y]];
      }
      const centre = nodeAt(nearestLine(xs, a / 2), nearestLine(ys, b / 2));
      const bearsAlong = (length: number, of: readonly number[], at: (n: number) => number): number =>
        length === 0 ? 1 : Math.max(0, ...of.filter((n) => bearing.has(n)).map((n) => Math.abs(at(n) - length / 2))) / (length / 2); // prettier-ignore
      const load = f.reduce((sum, value) => sum + value, 0);
      return {
        deflectionCentre: u[6 * centre + 2]!,
        deflectionLargest,
        momentXCentre: moments[3 * centre]! / shares[centre]!,
        momentYCentre: moments[3 * centre + 1]! / shares[centre]!,
        momentLargest,
        stressLargest,
        largestAt,
        cornerRise: support.kind === 'resting' ? -sign * u[2]! : 0,
        bearing:
          support.kind === 'resting'
            ? [
                bearsAlong(a, edge.filter((n) => n < nx), (n) => coordinates[3 * n]!),
                bearsAlong(b, edge.filter((n) => n % nx === 0), (n) => coordinates[3 * n + 1]!),
              ]
            : [1, 1], // prettier-ignore
        reactionRatio: (sign * [...bearing].reduce((sum, n) => sum + reaction(n), 0)) / load,
        unknowns: factored.elimination.size,
      };
    }
  }
}

const mostSteps = 30;
