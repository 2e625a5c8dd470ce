import type { PlateDocument } from '../../document/schema.ts';
import type { Geometry } from '../../geometry/geometry.ts';
import { planInWater } from '../../geometry/plan-in-water.ts';
import { plateGrown } from '../../water/grown-plan.ts';
import { coarseLattice } from '../../hydrodynamics/coarse-lattice.ts';
import { heaveAt } from '../../hydrodynamics/heave-curve.ts';
import { openGrid } from '../../hydrodynamics/open-grid.ts';
import { refusal } from '../../refusal.ts';
import { boundedMemo } from '../../solve/bounded-memo.ts';
import { edgeDrag } from '../../water/edge-drag.ts';
import { gapDrag } from '../../water/gap-and-rim.ts';
import { outlineOf, type Plan, type Rectangle } from '../../water/lattice/plan.ts';
import { plateLattice, plateProblem } from '../../water/lattice/plate-lattice.ts';
import { solvePair } from '../../water/lattice/solve-pair.ts';
import { wellPlaced } from '../../water/lattice/well-placed.ts';
import { waterDensityOf } from '../../water/sea-water.ts';

/** What panels gain in the water over the grid without any: kg, and m² of drag area in the stated motion (zero without one). */
export interface WaterGain {
  readonly addedMass: number;
  readonly drag: number;
}

export interface WaterAims {
  /** Said where the stated motion lies outside the tests behind the edges' drag. */
  readonly dragOutside: string | null;
  /** What the panels of a geometry gain. Refuses a plan whose losses do not settle. */
  readonly gainOf: (geometry: Pick<Geometry, 'mainTubes' | 'crossTubes' | 'panels'>) => WaterGain;
  /** No less than what any option gains that has the panels of a geometry and, in other bays, any of the rectangles or none. */
  readonly mostOf: (
    geometry: Pick<Geometry, 'mainTubes' | 'crossTubes' | 'panels'>,
    others: readonly Rectangle[],
  ) => WaterGain;
}

/** Cells along the longer side: options compare with each other only, so that one lattice serves all. */
const cells = 48;
/** Losses settle within a thousandth; a bound has to stay outside of that. */
const settled = 2e-3;
/** Mirrored plans differ in their last bits: gains are told in millionths of the solid plate, so that they are equal. */
const grain = 1e-6;

/**
 * What closing bays gains, for a search. Water sees the plan alone, so that options that differ in thickness, material or bolts
 * are solved once. All on the lattice of the open grid.
 *
 * Bounds. Without a motion: closing a gap never lowers added mass (the operator's inverse has no negative entry), so that the plan with
 * every other bay closed has most. In a motion the gaps are inertances with resistances, of which damping and added mass together lie
 * on arcs within a circle over the span from still water to all gaps shut: added mass is at most the solid plate's, damping over the
 * frequency at most half of the span. Closing one bay more may there lower added mass, so that nothing nearer holds.
 * Derived here; held by properties over the samples' plans.
 */
export function waterAims(document: PlateDocument, grid: Geometry): WaterAims {
  const { motion } = document.hydrodynamics ?? {};
  const density = waterDensityOf(document);
  const planOf = (geometry: Parameters<WaterAims['gainOf']>[0]): Plan => planInWater(geometry as Geometry);
  const grown = (plan: Plan): Plan => plateGrown(document, plan);

  const bare = planOf(openGrid({ geometry: grid }).geometry);
  const o = outlineOf(grown(bare));
  const [a, b] = [Math.min(o.x1 - o.x0, o.y1 - o.y0), Math.max(o.x1 - o.x0, o.y1 - o.y0)];
  const lattice = motion
    ? coarseLattice(document, grown(bare))
    : plateLattice(grown(bare), wellPlaced(grown(bare), cells));
  const still = (plan: Plan): number => {
    const { D, grip } = plateProblem(plan, lattice.frame);
    const problem = { D, v: grip };
    const [{ mu }] = solvePair(lattice.lattice, [problem, problem], { tolerance: 1e-8 });
    return density * lattice.frame.h ** 2 * grip.reduce((sum, part, k) => sum + part * mu[k]!, 0);
  };
  const solid = still({ rectangles: [o], holes: [], thickness: grown(bare).thickness });
  const amplitude = motion?.amplitude.si ?? null;
  const edge = amplitude === null ? null : edgeDrag((2 * Math.PI * amplitude) / a, b / a);

  const memo = boundedMemo<WaterGain>(20_000);
  const absolute = (plan: Plan): WaterGain =>
    memo(JSON.stringify([plan.rectangles, plan.holes]), () => {
      if (amplitude === null) return { addedMass: still(grown(plan)), drag: 0 };
      const at = heaveAt(grown(plan), lattice, density, amplitude, solid);
      if (!at) throw refusal({ what: 'The losses of its gaps do not settle', where: { path: 'hydrodynamics.motion' }, mend: 'State another amplitude.' }); // prettier-ignore
      return { addedMass: at.addedMass, drag: a * b * (at.drag ?? 0) };
    });
  const from = absolute(bare);
  const over = ({ addedMass, drag }: WaterGain): WaterGain => ({
    addedMass: grained(addedMass - from.addedMass, solid),
    drag: grained(drag - from.drag, a * b),
  });
  const shut: WaterGain | null =
    amplitude === null || !edge
      ? null
      : {
          addedMass: solid * (1 + settled),
          drag:
            a * b * (gapDrag((solid * (1 + settled) - still(grown(bare))) / 2, density, a * b, amplitude) + edge.best),
        };
  return {
    dragOutside: edge?.outside ?? null,
    gainOf: (geometry) => over(absolute(planOf(geometry))),
    mostOf: (geometry, others) => {
      const plan = planOf(geometry);
      if (others.length === 0) return over(absolute(plan));
      if (shut) return over(shut);
      const { addedMass, drag } = over(absolute({ ...plan, rectangles: [...plan.rectangles, ...others] }));
      return { addedMass: addedMass + 2 * grain * solid, drag };
    },
  };
}

const grained = (value: number, whole: number): number => Math.round(value / (grain * whole)) * grain * whole;
