import type { Model } from '../model.ts';
import { boundedMemo } from '../solve/bounded-memo.ts';
import type { Plan } from '../water/lattice/plan.ts';
import { plateProblem, type PlateLattice } from '../water/lattice/plate-lattice.ts';
import { waterDensityOf } from '../water/sea-water.ts';
import { waterReport, type WaterReport } from '../water/water-report.ts';
import { growthOf, type Growth } from '../water/marine-growth.ts';
import { coarseLattice } from './coarse-lattice.ts';
import { plateGrown } from '../water/grown-plan.ts';
import { heaveAt, heaveCurve, type CurvePoint } from './heave-curve.ts';
import { openGrid } from './open-grid.ts';
import { bayOpenings } from '../geometry/bay-openings.ts';
import { planInWater } from '../geometry/plan-in-water.ts';
import { seaAtPlate, type SeaAtPlate } from './sea-at-plate.ts';
import { waterHere } from './water-here.ts';

/** What the water does to the plate of a model, as its document describes the water. SI. */
export interface HydrodynamicsReport {
  readonly report: WaterReport;
  readonly growth: Growth | null;
  readonly sea: SeaAtPlate | null;
  /** Rising in amplitude, on one lattice; empty without a motion. */
  readonly curve: readonly CurvePoint[];
  /** The grid without panels at the same motion, on the curve's lattice, and the plate as it is there. */
  readonly open: { readonly bare: CurvePoint; readonly closed: CurvePoint } | null;
  /** Jump of potential that presses on the plate with the acceleration (none where there is only water), m, each cell of the curve's lattice at the stated amplitude. */
  readonly pressure: { readonly frame: PlateLattice['frame']; readonly jump: Float64Array } | null;
}

/** Parts of the stated amplitude that the curve shows. */
export const curveParts = [0.1, 0.2, 0.4, 0.7, 1, 1.5, 2] as const;

const remembered = boundedMemo<HydrodynamicsReport>(24);

/** Options that differ in thickness or bolts alone have one plan, and the water sees no more than that: it is solved once. */
export const hydrodynamicsOf = (model: Model): HydrodynamicsReport => {
  const { water, hydrodynamics } = model.document;
  const seen = [
    planInWater(model.geometry),
    planInWater(openGrid(model).geometry),
    water,
    { ...hydrodynamics, system: null },
    model.mass.growth,
  ];
  return remembered(JSON.stringify([...seen, bayOpenings(model.geometry)]), () => reckoned(model));
};

function reckoned(model: Model): HydrodynamicsReport {
  const { water, hydrodynamics = {} } = model.document;
  const { motion, bed } = hydrodynamics;
  const density = waterDensityOf(model.document);
  const growth = growthOf(model.document);
  const grown = (plan: Plan): Plan => plateGrown(model.document, plan);
  const plan = grown(planInWater(model.geometry));
  const aboveBed = bed ? bed.si - water.depth.si : null;
  const own = waterHere(model);
  const byLattice = waterReport(plan, {
    density,
    amplitude: motion?.amplitude.si ?? 0,
    period: motion?.period.si ?? null,
    depth: water.depth.si,
    aboveBed,
    cells: 100,
    parts: bayOpenings(model.geometry),
  });
  const report: WaterReport = {
    ...byLattice,
    quantities: { ...own.quantities, ...byLattice.quantities },
  };
  const sea = seaAtPlate(model.document);
  if (!motion) return { report, growth, sea, curve: [], open: null, pressure: null };

  const lattice = coarseLattice(model.document, plan);
  const solid = report.quantities['addedMass.solid']!.value;
  const stroke = motion.amplitude.si;
  const curve = heaveCurve(plan, lattice, density, curveParts.map((part) => part * stroke), solid); // prettier-ignore
  const stated = curve.find(({ point }) => point.amplitude === stroke);
  const bare = grown(planInWater(openGrid(model).geometry));
  const bareAt = heaveAt(bare, lattice, density, stroke, solid);
  return {
    report,
    growth,
    sea,
    curve: curve.map(({ point }) => point),
    open: stated && bareAt ? { bare: bareAt, closed: stated.point } : null,
    pressure: stated
      ? {
          frame: lattice.frame,
          jump: plateProblem(plan, lattice.frame).grip.map((part, k) => part * stated.heave.jump.re[k]!),
        }
      : null,
  };
}
