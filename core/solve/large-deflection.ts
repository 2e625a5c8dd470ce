import { refusal } from '../refusal.ts';
import { monotoneCubic } from './monotone-cubic.ts';
import { requirePlate, type UniformPlate } from './uniform-plate.ts';

/** A square plate beyond small deflections, in SI. Stresses at the centre and, for held edges, at the middle of an
 *  edge (0 for hinged edges, where the table does not give them); membrane plus bending is the face in tension. */
export interface LargeDeflectionAnswer {
  /** q a⁴ / (E t⁴), the only parameter. */
  readonly load: number;
  readonly deflectionCentre: number;
  readonly membraneCentre: number;
  readonly bendingCentre: number;
  readonly membraneEdge: number;
  readonly bendingEdge: number;
  readonly stressLargest: number;
}

/** Q, w0/t, then stresses over E t²/a²: membrane and bending at the centre, and at the middle of an edge. */
const rows = {
  held: [
    [10, 0.1368, 0.0623, 1.357, 0.0444, 3.062],
    [17.8, 0.2388, 0.1895, 2.353, 0.1356, 5.386],
    [38.3, 0.4731, 0.7404, 4.539, 0.5402, 11.04],
    [63.4, 0.696, 1.592, 6.425, 1.195, 17.06],
    [95, 0.9086, 2.694, 8.009, 2.089, 23.63],
    [184, 1.3091, 5.527, 10.44, 4.586, 38.84],
    [245, 1.5021, 7.247, 11.41, 6.209, 47.7],
    [402, 1.867, 11.14, 13.0, 10.08, 67.52],
  ],
  hinged: [
    [5, 0.2089, 0.133, 1.344],
    [12.1, 0.4258, 0.554, 2.687],
    [29.4, 0.7296, 1.636, 4.408],
    [56.9, 0.9997, 3.093, 5.765],
    [99.4, 1.2603, 4.954, 6.951],
    [247, 1.7698, 9.917, 9.098],
    [358, 2.0167, 12.96, 10.12],
    [497, 2.2585, 16.34, 11.13],
  ],
} as const;

/** Small deflections, where the table has too few digits: w0/t over Q, bending stress at the centre and at the edge over
 *  Q: 12 (1 - ν²) and 6 times the coefficients of small deflections. */
const linear = {
  held: { w: 0.0012653 * 10.92, centre: 6 * 0.022905, edge: 6 * 0.051334 },
  hinged: { w: 0.00406235 * 10.92, centre: 6 * 0.0478864, edge: 0 },
};

/** What is even along the curve, and so is interpolated: stiffness Q / w, membrane stress / w², bending stress / w. */
const curves = { held: curvesOf('held'), hinged: curvesOf('hinged') };

function curvesOf(edges: 'held' | 'hinged'): readonly ((at: number) => number)[] {
  const table: readonly (readonly number[])[] = rows[edges];
  const at = [place(0), ...table.map(([Q]) => place(Q!))];
  const through = (of: (row: readonly number[]) => number, start?: number): ((at: number) => number) => {
    const values = table.map(of);
    return monotoneCubic(at, [start ?? values[0]!, ...values]);
  };
  const { w, centre, edge } = linear[edges];
  const over = (column: number, power: 1 | 2, start?: number): ((at: number) => number) =>
    through((row) => (row[column] === undefined ? 0 : row[column] / row[1]! ** power), start);
  return [
    through(([Q, deflection]) => Q! / deflection!, 1 / w),
    over(2, 2),
    over(3, 1, centre / w),
    over(4, 2),
    over(5, 1, edge / w),
  ];
}

/** Even spacing for the rows, which stand closer at small loads. */
function place(Q: number): number {
  return Math.log(1 + Q / 10);
}

/** A square plate with edges that cannot move in the plane, hinged or held, under uniform pressure, beyond w = t/2:
 *  published curves of von Kármán's plate, interpolated. Cannot be judged outside them: sides equal to 1 %, Q up to 497
 *  (hinged) or 402 (held), ν from 0.25 to 0.35 (the table has 0.3; at the ends of that range w is off by up to 3 %,
 *  bending stress by up to 4 %). Error inside: 0.5 % on w, 1 % on stresses at ν = 0.3.
 *  Real edges slide: count on this only where they are welded all round, or bolts bear.
 *  Source: S. Levy, NACA Reports 737 and 740 (1942), the problem; Roark's Formulas for Stress and Strain, 7th ed.,
 *  ch. 11, agrees (from memory); values derived anew by Ritz's method for von Kármán's equations, ν = 0.3. */
export function largeDeflection(plate: UniformPlate, edges: 'held' | 'hinged'): LargeDeflectionAnswer {
  requirePlate(plate);
  const { a, b, t, E, nu, q } = plate;
  const load = (Math.abs(q) * Math.min(a, b) ** 4) / (E * t ** 4);
  const most = rows[edges].at(-1)![0];
  const cannot = (what: string, field: string, mend: string): never => {
    throw refusal({ what: `cannot be judged: ${what}`, where: { field }, mend });
  };
  if (Math.abs(a / b - 1) > 0.01)
    cannot(
      `the table of large deflections is for squares, this plate is ${a} m × ${b} m`,
      'b',
      'Bound it: the strip across the shorter side pulls harder',
    );
  if (nu < 0.25 || nu > 0.35)
    cannot(`the table of large deflections is for ν near 0.3, not ${nu}`, 'nu', 'Judge it by small deflections');
  if (load > most)
    cannot(
      `q a⁴ / (E t⁴) is ${load.toPrecision(4)}, the table of large deflections ends at ${most}`,
      't',
      'Take a thicker plate or a smaller panel',
    );
  const [stiffness, ...ratios] = curves[edges];
  const w = load / stiffness!(place(load));
  const [mc, bc, me, be] = ratios.map((ratio) => ratio(place(load))) as [number, number, number, number];
  const unit = (E * t ** 2) / Math.min(a, b) ** 2;
  const answer = {
    load,
    deflectionCentre: Math.sign(q) * w * t,
    membraneCentre: mc * w ** 2 * unit,
    bendingCentre: bc * w * unit,
    membraneEdge: me * w ** 2 * unit,
    bendingEdge: be * w * unit,
  };
  const stressLargest = Math.max(
    answer.membraneCentre + answer.bendingCentre,
    answer.membraneEdge + answer.bendingEdge,
  );
  return { ...answer, stressLargest };
}

/** Largest q a⁴ / (E t⁴) that the table of large deflections covers. */
export const largestLoad = (edges: 'held' | 'hinged'): number => rows[edges].at(-1)![0];
