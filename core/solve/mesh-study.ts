import type { Model } from '../model.ts';
import { deflections } from './results/deflections.ts';
import { fixingForces } from './results/fixing-forces.ts';
import { panelStress } from './results/panel-stress.ts';
import { readyPlate, solveLoading } from './solve-plate.ts';

/** What a mesh is judged by, SI: largest deflection, largest panel stress clear of bolts and corners, largest force of a bolt
 *  (N) or of a weld (N/m). Zero where there is no such thing. */
export interface MeshValues {
  readonly size: number;
  readonly unknowns: number;
  readonly deflection: number;
  readonly stress: number;
  readonly bolt: number;
  readonly weld: number;
}

export const meshQuantities = ['deflection', 'stress', 'bolt', 'weld'] as const;
export type MeshQuantity = (typeof meshQuantities)[number];

/** How one value settles as cells are halved. */
export interface Convergence {
  readonly quantity: MeshQuantity;
  /** log2 of the ratio of the last two changes; null with two meshes, or where they do not shrink one way. */
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
 * Solves the heavier direction of the service load on meshes each half as wide as the one before, linear in contact, and
 * tells how deflection, panel stress and fixing forces settle. Stops at the first mesh that is within the target (with two
 * meshes at least), or at `most`. Stress is read clear of bolts and re-entrant corners, where no mesh settles.
 */
export function* meshStudy(
  model: Model,
  {
    target = meshTarget,
    most = 3,
    least = 2,
  }: { readonly target?: number; readonly most?: number; readonly least?: number } = {},
): Generator<string, MeshStudy> {
  const meshes: MeshValues[] = [];
  for (let k = 0; ; k++) {
    const size = firstSize(model) / 2 ** k;
    yield `mesh ${k + 1}`;
    meshes.push(yield* valuesOf(model, size));
    if (meshes.length < least) continue;
    const convergence = meshQuantities.flatMap((quantity) => convergenceOf(meshes, quantity));
    const within = meshes.findIndex((_, i) => convergence.every(({ errors }) => errors[i]! <= target));
    if (within >= 0 || meshes.length >= most)
      return { target, meshes, convergence, chosen: within >= 0 ? meshes[within]!.size : null };
  }
}

function* valuesOf(model: Model, size: number): Generator<string, MeshValues> {
  const plate = readyPlate(model, { size });
  const service = model.loads.situations.filter((s) => s.loadCase === 'service' && s.supports !== null);
  const heavier = service.reduce((a, b) => (Math.abs(b.force) > Math.abs(a.force) ? b : a));
  const solving = solveLoading(plate, heavier, { loading: 0, variant: 0, stage: 'linear' });
  let step = solving.next();
  for (; !step.done; step = solving.next()) yield 'contact';
  const solved = step.value;
  const fixings = fixingForces(plate, solved);
  return {
    size,
    unknowns: 2 * plate.structure.coordinates.length - 6,
    deflection: Math.abs(deflections(plate, solved).largest.rise),
    stress: Math.max(0, ...panelStress(plate, solved).map(({ largest }) => largest?.stress.vonMises ?? 0)),
    bolt: Math.max(0, ...fixings.bolts.map(({ pull, shear }) => Math.hypot(pull, shear))),
    weld: fixings.largest.weld?.resultant ?? 0,
  };
}

function convergenceOf(meshes: readonly MeshValues[], quantity: MeshQuantity): Convergence[] {
  const values = meshes.map((mesh) => mesh[quantity]);
  const [a, b] = values.slice(-2) as [number, number];
  if (a === 0 && b === 0) return [];
  const before = values.at(-3);
  const ratio = before === undefined || b === a ? null : (a - before) / (b - a);
  const order = ratio !== null && ratio > 1 ? Math.log2(ratio) : null;
  // a fast order seen once is not to be trusted further than two
  const gain = 2 ** Math.min(order ?? 2, 2) - 1;
  const extrapolated = b + (b - a) / gain;
  return [
    { quantity, order, extrapolated, errors: values.map((v) => Math.abs(v - extrapolated) / Math.abs(extrapolated)) },
  ];
}
