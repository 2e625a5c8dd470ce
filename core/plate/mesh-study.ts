import type { Model } from '../model.ts';
import { drained } from '../solve/drained.ts';
import { deflections } from './results/deflections.ts';
import { errorEstimate } from './results/error-estimate.ts';
import { fixingForces } from './results/fixing-forces.ts';
import { panelStress } from './results/panel-stress.ts';
import { readyPlate, solveLoading } from './solve-plate.ts';

/** What a mesh is judged by, SI: largest deflection, largest force of a bolt (N) or of a weld (N/m), zero where there is no
 *  such thing; and the error of the panels' stresses clear of bolts and corners (see `errorEstimate`), as a part of them.
 *  The largest stress is told beside it: its place may jump from mesh to mesh, so its change is no measure. */
export interface MeshValues {
  readonly size: number;
  /** √ of the mean area of a cell, m: bolts may ask for smaller cells than the size allows. */
  readonly cell: number;
  readonly unknowns: number;
  readonly deflection: number;
  readonly bolt: number;
  readonly weld: number;
  readonly stressError: number;
  readonly stress: number;
}

export const meshQuantities = ['deflection', 'bolt', 'weld'] as const;
export type MeshQuantity = (typeof meshQuantities)[number];

/** How one value settles as cells shrink. */
export interface Convergence {
  readonly quantity: MeshQuantity;
  /** From the last two changes; null with two meshes, or where they do not shrink one way. */
  readonly order: number | null;
  /** Value for cells of no size, from the last two meshes and the order (2 where none was observed). */
  readonly extrapolated: number;
  /** How far each mesh is from it, as a part of it. */
  readonly errors: readonly number[];
}

export interface MeshStudy {
  readonly target: number;
  readonly meshes: readonly MeshValues[];
  readonly convergence: readonly Convergence[];
  /** The coarsest mesh within the target in every value, or null if none is. */
  readonly chosen: number | null;
}

/** Largest error wanted, as a part of the value. */
export const meshTarget = 0.02;

/** Widest cell begun with: an eighth of the smallest opening, m. */
export const firstSize = ({ geometry }: Model): number =>
  Math.min(...geometry.bays.flatMap(({ opening: o }) => [o.x1 - o.x0, o.y1 - o.y0])) / 8;

/**
 * Solves the heavier direction of the service load, linear in contact, on two meshes, the second as narrow as the error
 * of the first asks for, and where neither is within the target on a third (`most` meshes in all). Deflection and
 * fixing forces are judged by extrapolation, the panels' stresses by how they jump between cells. Yields before each mesh.
 */
export function* meshStudy(
  model: Model,
  { target = meshTarget, most = 3 }: { readonly target?: number; readonly most?: number } = {},
): Generator<string, MeshStudy> {
  const meshes: MeshValues[] = [];
  for (let size = firstSize(model); ; size = nextSize(meshes, target)) {
    yield `mesh ${meshes.length + 1}`;
    meshes.push(valuesOf(model, size));
    if (meshes.length === 1) continue;
    const convergence = meshQuantities.flatMap((quantity) => convergenceOf(meshes, quantity));
    const within = meshes.findIndex(
      ({ stressError }, i) => stressError <= target && convergence.every(({ errors }) => errors[i]! <= target),
    );
    if (within >= 0 || meshes.length >= most)
      return { target, meshes, convergence, chosen: within >= 0 ? meshes[within]!.size : null };
  }
}

/** Cells as narrow as the stresses' error asks for, by its order (one, until two meshes tell it), with a tenth in hand; no
 *  less than half as wide as the last, no more than 0.85 of it. The size is the widest cell, a quarter above the mean. */
function nextSize(meshes: readonly MeshValues[], target: number): number {
  const last = meshes.at(-1)!;
  const before = meshes.at(-2);
  const seen = before ? Math.log(before.stressError / last.stressError) / Math.log(before.cell / last.cell) : 1;
  const order = Math.min(2, Math.max(0.5, seen));
  const wanted = 0.9 * (target / last.stressError) ** (1 / order);
  return 1.25 * last.cell * Math.min(0.85, Math.max(0.5, wanted));
}

function valuesOf(model: Model, size: number): MeshValues {
  const plate = readyPlate(model, { size });
  const service = model.loads.situations.filter((s) => s.loadCase === 'service' && s.supports !== null);
  const heavier = service.reduce((a, b) => (Math.abs(b.force) > Math.abs(a.force) ? b : a));
  const solved = drained(solveLoading(plate, heavier, { loading: 0, variant: 0, stage: 'linear' }));
  const fixings = fixingForces(plate, solved);
  const { shells, coordinates } = plate.structure;
  const covered = shells.reduce((sum, { a, b }) => sum + a * b, 0);
  return {
    size,
    cell: shells.length > 0 ? Math.sqrt(covered / shells.length) : size,
    unknowns: 2 * coordinates.length - 6,
    deflection: Math.abs(deflections(plate, solved).largest.rise),
    bolt: Math.max(0, ...fixings.bolts.map(({ pull, shear }) => Math.hypot(pull, shear))),
    weld: fixings.largest.weld?.resultant ?? 0,
    stressError: errorEstimate(plate, solved).clear,
    stress: Math.max(0, ...panelStress(plate, solved).map(({ largest }) => largest?.stress.vonMises ?? 0)),
  };
}

function convergenceOf(meshes: readonly MeshValues[], quantity: MeshQuantity): Convergence[] {
  const values = meshes.map((mesh) => mesh[quantity]);
  const [a, b] = values.slice(-2) as [number, number];
  if (a === 0 && b === 0) return [];
  const step = (i: number): number => meshes.at(i - 1)!.cell / meshes.at(i)!.cell;
  const before = values.at(-3);
  const ratio = before === undefined || b === a ? null : (a - before) / (b - a);
  const order = ratio !== null && ratio > 1 ? Math.log(ratio) / Math.log(step(-2)) : null;
  // a fast order seen once is not to be trusted further than two
  const gain = step(-1) ** Math.min(order ?? 2, 2) - 1;
  const extrapolated = b + (b - a) / gain;
  const errors = values.map((v) => Math.abs(v - extrapolated) / Math.abs(extrapolated));
  return [{ quantity, order, extrapolated, errors }];
}
