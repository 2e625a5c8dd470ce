import { stripKernel, type Kernel } from '../../../core/water/lattice/doublet-kernel.ts';
import { lattice } from '../../../core/water/lattice/lattice.ts';
import type { Plan } from '../../../core/water/lattice/plan.ts';
import { plateProblem } from '../../../core/water/lattice/plate-lattice.ts';
import { solvePair } from '../../../core/water/lattice/solve-pair.ts';

/** Bars without end, each from … to across the flow. */
export const bars = (along: readonly (readonly [number, number])[], thickness = 0): Plan => ({
  rectangles: along.map(([x0, x1]) => ({ x0, x1, y0: -Infinity, y1: Infinity })),
  holes: [],
  thickness,
});

/** N bars of width w : g gaps over a breadth of one. */
export function equalBars(count: number, w: number, g: number): [number, number][] {
  const unit = 1 / (count * w + (count - 1) * g);
  return Array.from({ length: count }, (_, k) => [k * (w + g) * unit, (k * (w + g) + w) * unit]);
}

/** Added mass per length and density of bars over 0 … 1, by n cells, in two dimensions. */
export function barsAlone(plan: Plan, n: number): { mass: number; mu: Float64Array } {
  const h = 1 / (n + 0.5);
  const margin = Math.ceil((6 * plan.thickness) / h);
  return onOneRow(plan, n + 2 * margin, h, h / 4 - margin * h, stripKernel(h));
}

/** The same for an infinite row with a pitch of one. */
export function barsInRow(plan: Plan, n: number): number {
  const h = 1 / n;
  const alone = stripKernel(h);
  // 2000 periods each way, and the rest of Σ 1/i² in its integral
  const table = Array.from({ length: n }, (_, i) => {
    let sum = -2 / (2 * Math.PI * h * n * n * 2000.5);
    for (let m = -2000; m <= 2000; m++) sum += alone(i + m * n, 0);
    return sum;
  });
  return onOneRow(plan, n, h, 0, (i) => table[((i % n) + n) % n]!).mass;
}

function onOneRow(plan: Plan, nx: number, h: number, x: number, kernel: Kernel): { mass: number; mu: Float64Array } {
  const { D, grip } = plateProblem(plan, { nx, ny: 1, h, x, y: -h / 2 });
  const problem = { D, v: grip };
  const [{ mu }] = solvePair(lattice(nx, 1, h, kernel), [problem, problem], { tolerance: 1e-11 });
  return { mass: h * mu.reduce((sum, value, k) => sum + value * grip[k]!, 0), mu };
}
