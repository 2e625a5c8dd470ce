import type { PlateDocument } from '../document/schema.ts';
import type { Geometry, Rectangle } from '../geometry/geometry.ts';
import { planInWater } from '../geometry/plan-in-water.ts';
import { boundedMemo } from '../solve/bounded-memo.ts';
import { edgeDrag } from '../water/edge-drag.ts';
import { gapDrag, rimPart } from '../water/gap-and-rim.ts';
import { plateGrown } from '../water/grown-plan.ts';
import { outlineOf, type Plan } from '../water/lattice/plan.ts';
import { plateLattice, plateProblem } from '../water/lattice/plate-lattice.ts';
import { solvePair } from '../water/lattice/solve-pair.ts';
import { wellPlaced } from '../water/lattice/well-placed.ts';
import { forceOfCycle, forceOfMotion, type MotionForce } from '../water/motion-force.ts';
import { heaveByAmplitude } from '../water/moving-plate.ts';
import { edgeWeights, overCells, panelShares } from '../water/panel-shares.ts';
import { waterDensityOf } from '../water/sea-water.ts';
import type { FieldShare, FlowOver } from './plan-shares.ts';

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
const remembered = boundedMemo<PlanFlow>(48);

/** Inertia and drag at one phase of the cycle, each over the largest force of the whole. */
export interface FlowPhase {
  readonly words: string;
  /** Index of the flow that spreads them. */
  readonly flow: number;
  readonly inertia: number;
  readonly edges: number;
}

/** The flow about a plate in its stated heave: clean, and grown over where growth is stated. */
export interface Flow {
  readonly over: readonly FlowOver[];
  /** Phases at which tubes and grid are solved. */
  readonly phases: readonly FlowPhase[];
  /** All of the force as inertia, or all as drag: every phase of every mix lies between. */
  readonly bounds: readonly FlowPhase[];
  /** The larger of what the flows give each part. */
  readonly sharesOf: (parts: Readonly<Record<string, Rectangle>>) => ReadonlyMap<string, WaterShare>;
}

/** The flow about one plan. */
interface PlanFlow {
  readonly over: FlowOver;
  readonly phases: readonly Omit<FlowPhase, 'flow'>[];
  readonly sharesOf: Flow['sharesOf'];
}

/** Of a document's plate. */
export function flowOf(geometry: Geometry, document: PlateDocument): Flow {
  const clean = planInWater(geometry);
  const grown = plateGrown(document, clean);
  const { motion } = document.hydrodynamics ?? {};
  const heave = motion ? { amplitude: motion.amplitude.si, period: motion.period.si } : null;
  const density = waterDensityOf(document);
  const flows = (grown === clean ? [clean] : [clean, grown]).map((plan) =>
    remembered(JSON.stringify([plan, density, heave]), () => flowAbout(plan, density, heave)),
  );
  const within = (of: (flow: PlanFlow) => PlanFlow['phases']): FlowPhase[] =>
    flows.flatMap((one, flow) => of(one).map((phase) => ({ ...phase, words: flow === 0 ? phase.words : `${phase.words}, grown over`, flow }))); // prettier-ignore
  return {
    over: flows.map(({ over }) => over),
    phases: within(({ phases }) => phases),
    bounds: within(() => largerOf),
    sharesOf: (parts) => flows.map(({ sharesOf }) => sharesOf(parts)).reduce(larger),
  };
}

const larger = (a: ReadonlyMap<string, WaterShare>, b: ReadonlyMap<string, WaterShare>) =>
  new Map(
    [...a].map(([id, one]) => {
      const other = b.get(id)!;
      return [id, { inertia: Math.max(one.inertia, other.inertia), drag: Math.max(one.drag, other.drag), peak: Math.max(one.peak, other.peak) }] as const; // prettier-ignore
    }),
  );

/**
 * Each field's part of the water's force in the stated heave: at every phase its part of inertia times inertia plus its part of
 * drag times drag, a quarter cycle later; of that the largest in the cycle, over the plate's largest, and the worst of the low,
 * best and high drag. Parts may sum to more than one: panels peak at different times, and drag's part is a bound.
 * Without a motion, or outside the tests behind the edges' drag, nothing says how drag stands to inertia: the larger part is
 * taken, which bounds every mix.
 */
export const waterShares = ({ sharesOf }: Flow, fields: readonly FieldShare[]): ReadonlyMap<string, WaterShare> =>
  sharesOf(Object.fromEntries(fields.map(({ bay, outline }) => [bay, outline])));

function flowAbout(
  plan: Plan,
  density: number,
  heave: { readonly amplitude: number; readonly period: number } | null,
): PlanFlow {
  const lattice = plateLattice(plan, wellPlaced(plan, cells));
  const { cover, grip, D } = plateProblem(plan, lattice.frame);
  const shares = (felt: Float64Array, parts: Readonly<Record<string, Rectangle>>) => panelShares(lattice.frame, felt, cover.open, parts); // prettier-ignore
  const overOf = (felt: Float64Array): FlowOver => {
    // A cell that is half water gives all it feels to the half that is solid.
    const solid = cover.open.map((open) => 1 - Math.min(1, open));
    const per = (weights: Float64Array) => overCells(lattice.frame, weights.map((value, k) => (solid[k]! > 1e-6 ? value / solid[k]! : 0))); // prettier-ignore
    return { inertia: per(felt), edges: per(edgeWeights(lattice.frame, cover.open)) };
  };
  if (!heave) {
    const [{ mu }] = solvePair(lattice.lattice, [{ D, v: grip }, { D, v: grip }]); // prettier-ignore
    const felt = grip.map((part, k) => part * mu[k]!);
    return {
      over: overOf(felt),
      phases: largerOf,
      sharesOf: (parts) => mapped(shares(felt, parts), ({ inertia, drag }) => Math.max(inertia, drag)),
    };
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
  return {
    over: overOf(felt),
    phases: isKnown ? phasesOf(forces) : largerOf,
    sharesOf: (parts) =>
      mapped(shares(felt, parts), ({ inertia, drag }) =>
        isKnown
          ? Math.max(
              ...forces.map((force) => forceOfCycle(inertia * force.inertia, drag * force.drag).peak / force.peak),
            )
          : Math.max(inertia, drag),
      ),
  };
}

/** All of the force as inertia, or all as drag: every mix lies between. */
const largerOf: PlanFlow['phases'] = [
  { words: 'by the flow, all inertia', inertia: 1, edges: 0 },
  { words: 'by the flow, all drag towards the edges', inertia: 0, edges: 1 },
];

/**
 * Phases between which a cycle's loads lie: the end of the stroke with the most inertia that low, best and high drag leave it, the
 * middle of the stroke with the most drag, and the peak of each drag. Loads follow I sin θ + D cos² θ.
 */
function phasesOf(forces: readonly MotionForce[]): PlanFlow['phases'] {
  return [
    { words: 'by the flow, end of the stroke', inertia: Math.max(...forces.map(({ inertia, peak }) => inertia / peak)), edges: 0 }, // prettier-ignore
    { words: 'by the flow, middle of the stroke', inertia: 0, edges: Math.max(...forces.map(({ drag, peak }) => drag / peak)) }, // prettier-ignore
    ...forces
      .filter(({ phase }) => phase > 0)
      .map(({ inertia, drag, peak, phase }) => ({
        words: `by the flow, peak ${Math.round((180 / Math.PI) * phase)}° from the end of the stroke`,
        inertia: (inertia / peak) * Math.cos(phase),
        edges: (drag / peak) * Math.sin(phase) ** 2,
      })),
  ];
}

const mapped = (
  shares: Readonly<Record<string, { readonly inertia: number; readonly drag: number }>>,
  peak: (share: { readonly inertia: number; readonly drag: number }) => number,
): ReadonlyMap<string, WaterShare> =>
  new Map(Object.entries(shares).map(([bay, { inertia, drag }]) => [bay, { inertia, drag, peak: peak({ inertia, drag }) }])); // prettier-ignore
