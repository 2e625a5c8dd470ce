import type { PlateDocument } from '../document/schema.ts';
import type { Geometry, Rectangle } from '../geometry/geometry.ts';
import { planInWater } from '../geometry/plan-in-water.ts';
import { boundedMemo } from '../solve/bounded-memo.ts';
import { edgeDrag } from '../water/edge-drag.ts';
import { gapDrag, rimPart } from '../water/gap-and-rim.ts';
import { outlineOf, type Plan } from '../water/lattice/plan.ts';
import { plateLattice, plateProblem } from '../water/lattice/plate-lattice.ts';
import { solvePair } from '../water/lattice/solve-pair.ts';
import { wellPlaced } from '../water/lattice/well-placed.ts';
import { forceOfMotion } from '../water/motion-force.ts';
import { heaveByAmplitude } from '../water/moving-plate.ts';
import { panelShares } from '../water/panel-shares.ts';
import { waterDensityOf } from '../water/sea-water.ts';
import type { FieldShare } from './plan-shares.ts';

/** What the flow gives a field, each a part of the whole plate's. */
export interface WaterShare {
  readonly inertia: number;
  /** The larger of solid area and edge-weighted area. */
  readonly drag: number;
  /** Largest force of the field in a cycle over the largest of the plate. */
  readonly peak: number;
}

/** Cells along the longer side: shares are ratios, and an edit must not wait for more. */
const cells = 40;
const remembered = boundedMemo<ReadonlyMap<string, WaterShare>>(24);

/**
 * Each field's part of the water's force in the stated heave: at every phase its part of inertia times inertia plus its part of
 * drag times drag, a quarter cycle later; of that the largest in the cycle, over the plate's largest, and the worst of the low,
 * best and high drag. Parts may sum to more than one: panels peak at different times, and drag's part is a bound.
 * Without a motion, or outside the tests behind the edges' drag, nothing says how drag stands to inertia: the larger part is
 * taken, which bounds every mix.
 */
export function waterShares(
  geometry: Geometry,
  fields: readonly FieldShare[],
  document: PlateDocument,
): ReadonlyMap<string, WaterShare> {
  const plan = planInWater(geometry);
  const parts = Object.fromEntries(fields.map(({ bay, outline }) => [bay, outline]));
  const { motion } = document.hydrodynamics ?? {};
  const heave = motion ? { amplitude: motion.amplitude.si, period: motion.period.si } : null;
  const density = waterDensityOf(document);
  return remembered(JSON.stringify([plan, parts, density, heave]), () => sharesOf(plan, parts, density, heave));
}

function sharesOf(
  plan: Plan,
  parts: Readonly<Record<string, Rectangle>>,
  density: number,
  heave: { readonly amplitude: number; readonly period: number } | null,
): ReadonlyMap<string, WaterShare> {
  const lattice = plateLattice(plan, wellPlaced(plan, cells));
  const { cover, grip, D } = plateProblem(plan, lattice.frame);
  if (!heave) {
    const [{ mu }] = solvePair(lattice.lattice, [{ D, v: grip }, { D, v: grip }]); // prettier-ignore
    const felt = grip.map((part, k) => part * mu[k]!);
    return mapped(panelShares(lattice.frame, felt, cover.open, parts), ({ inertia, drag }) => Math.max(inertia, drag));
  }
  const { amplitude, period } = heave;
  const { x0, x1, y0, y1 } = outlineOf(plan);
  const [a, b] = [Math.min(x1 - x0, y1 - y0), Math.max(x1 - x0, y1 - y0)];
  const moved = heaveByAmplitude(plan, lattice, density, [amplitude / 10, amplitude])[1]!;
  const outline = { rectangles: [outlineOf(plan)], holes: [], thickness: plan.thickness };
  const solid = heaveByAmplitude(outline, lattice, density, [amplitude])[0]!.still;
  const edge = edgeDrag((2 * Math.PI * amplitude) / a, b / a);
  const gaps = gapDrag(moved.damping, density, a * b, amplitude);
  const isKnown = edge.outside === null && moved.settled;
  const rim = rimPart(moved.addedMass, moved.damping, solid);
  const forces = [gaps + edge.low * rim ** 2, gaps + edge.best * rim, gaps + edge.high].map((Cd) => forceOfMotion(moved.addedMass, Cd * a * b, density, amplitude, period)); // prettier-ignore
  const felt = grip.map((part, k) => part * moved.jump.re[k]!);
  return mapped(panelShares(lattice.frame, felt, cover.open, parts), ({ inertia, drag }) =>
    isKnown
      ? Math.max(...forces.map((force) => peakOf(inertia * force.inertia, drag * force.drag) / force.peak))
      : Math.max(inertia, drag),
  );
}

/** Largest of I sin θ + D cos² θ over the quarter in which both press the same way (see `forceOfMotion`). */
const peakOf = (I: number, D: number): number => (I >= 2 * D ? I : D + I ** 2 / (4 * D));

const mapped = (
  shares: Readonly<Record<string, { readonly inertia: number; readonly drag: number }>>,
  peak: (share: { readonly inertia: number; readonly drag: number }) => number,
): ReadonlyMap<string, WaterShare> =>
  new Map(Object.entries(shares).map(([bay, { inertia, drag }]) => [bay, { inertia, drag, peak: peak({ inertia, drag }) }])); // prettier-ignore
