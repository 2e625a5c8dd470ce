import type { ReadyPlate, SolvedLoading } from '../solve-plate.ts';
import { cellForces, cellPlaces, meanAtNodes, nodeIndex } from './cell-forces.ts';
import { hotZones, isHot } from './hot-zones.ts';

/** How far a panel's stresses are off for its mesh, as parts of one: 0.02 is 2 %. */
export interface PanelError {
  readonly id: string;
  /** In energy: over all cells, and over those whose middle lies clear of the hot zones. */
  readonly all: number;
  readonly clear: number;
  /** Largest jump of a cell's stress from the mean at a clear node, over the panel's largest stress at clear nodes. */
  readonly jump: number;
}

export interface ErrorEstimate {
  /** Over all panels together, as in `PanelError`. Zero where there is no panel: tubes are exact between their nodes. */
  readonly all: number;
  readonly clear: number;
  readonly panels: readonly PanelError[];
}

/**
 * Error of the panels' stresses by how much they jump between cells. With σ the cells' own forces and σ* their means at the
 * nodes, bilinear between,
 *    ‖e‖² = Σ ∫ (σ* - σ)ᵀ C (σ* - σ) dA,   ‖σ‖² = Σ ∫ σᵀ C σ dA,   η = ‖e‖/√(‖σ‖² + ‖e‖²)
 * with C of membrane (1/Et) and bending (12/Et³). Cells with their middle in a hot zone count in `all` only: no mesh mends
 * them. Turned down: leaving out every cell that reaches into one, which on a coarse mesh hides the strip between bolts,
 * where a panel is clamped (it told 3 % where 12 % were meant).
 * What is read at nodes is σ*, which is closer than η says: take η to choose a mesh, not as a bound on a stress.
 * Source: O. C. Zienkiewicz & J. Z. Zhu, Int. J. Num. Meth. Eng. 24 (1987) 337, from memory.
 */
export function errorEstimate({ structure, model }: ReadyPlate, { answer: { u } }: SolvedLoading): ErrorEstimate {
  const whole = { all: noEnergy(), clear: noEnergy() };
  const panels = structure.panels.map((panel): PanelError => {
    const own = { all: noEnergy(), clear: noEnergy() };
    const cells = cellForces(structure, panel, u);
    const index = nodeIndex(panel);
    const mean = meanAtNodes(structure, panel, cells, index);
    const zones = hotZones({ model, structure }, panel);
    const hot = new Map([...index.keys()].map((n) => [n, isHot(zones, structure.coordinates[3 * n]!, structure.coordinates[3 * n + 1]!)])); // prettier-ignore
    let [jump, largest] = [0, 0];
    const stress = new Float64Array(24);
    const off = new Float64Array(24);
    for (let e = panel.shells[0]; e < panel.shells[1]; e++) {
      const { nodes, a, b, E, nu, thickness } = structure.shells[e]!;
      nodes.forEach((n, corner) => {
        const at = 6 * cellPlaces * (e - panel.shells[0]) + 6 * (corner + 1);
        const i = 6 * index.get(n)!;
        for (let k = 0; k < 6; k++) {
          stress[6 * corner + k] = cells[at + k]!;
          off[6 * corner + k] = mean[i + k]! - cells[at + k]!;
        }
        if (hot.get(n)) return;
        jump = Math.max(jump, surfaceStress(off.subarray(6 * corner, 6 * corner + 6), thickness));
        largest = Math.max(largest, surfaceStress(mean.subarray(i, i + 6), thickness));
      });
      const compliance = [1 / (E * thickness), 12 / (E * thickness ** 3)] as const;
      const energy = {
        stress: energyOf(stress, compliance, nu, a * b),
        error: energyOf(off, compliance, nu, a * b),
      };
      const [x, y] = [structure.coordinates[3 * nodes[0]]! + a / 2, structure.coordinates[3 * nodes[0] + 1]! + b / 2];
      const clear = !isHot(zones, x, y);
      for (const sums of [own, whole]) {
        add(sums.all, energy);
        if (clear) add(sums.clear, energy);
      }
    }
    return { id: panel.id, all: part(own.all), clear: part(own.clear), jump: largest > 0 ? jump / largest : 0 };
  });
  return { all: part(whole.all), clear: part(whole.clear), panels };
}

interface Energy {
  stress: number;
  error: number;
}
const noEnergy = (): Energy => ({ stress: 0, error: 0 });
const add = (into: Energy, { stress, error }: Energy): void => {
  into.stress += stress;
  into.error += error;
};
const part = ({ stress, error }: Energy): number => (error > 0 ? Math.sqrt(error / (stress + error)) : 0);

/** ∫ N_i N_j over a rectangle, times 36 over its area, by how far apart two corners are. */
const shares = [4, 2, 1, 2] as const;

/** ∫ σᵀ C σ dA of forces that are bilinear between the corners (6 a corner). */
function energyOf(σ: Float64Array, compliance: readonly [number, number], nu: number, area: number): number {
  let sum = 0;
  for (let i = 0; i < 4; i++)
    for (let j = 0; j < 4; j++)
      for (const part of [0, 1] as const) {
        const [p, q] = [6 * i + 3 * part, 6 * j + 3 * part];
        const [x, y, xy] = [σ[q]!, σ[q + 1]!, σ[q + 2]!];
        const strain = σ[p]! * (x - nu * y) + σ[p + 1]! * (y - nu * x) + 2 * (1 + nu) * σ[p + 2]! * xy;
        sum += (shares[(j - i + 4) % 4]! * area * compliance[part] * strain) / 36;
      }
  return sum;
}

/** Larger von Mises stress of the two faces, Pa. */
function surfaceStress(forces: Float64Array, t: number): number {
  const on = (side: 1 | -1): number => {
    const [x, y, xy] = [0, 1, 2].map((k) => forces[k]! / t + (side * 6 * forces[k + 3]!) / t ** 2) as [number, number, number]; // prettier-ignore
    return x * x - x * y + y * y + 3 * xy * xy;
  };
  return Math.sqrt(Math.max(on(1), on(-1)));
}
