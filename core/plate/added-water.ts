import { nearImages } from '../water/gap-and-rim.ts';
import { addedMass } from '../water/added-mass.ts';
import { outlineOf } from '../water/lattice/plan.ts';
import { plateLattice } from '../water/lattice/plate-lattice.ts';
import { wellPlaced } from '../water/lattice/well-placed.ts';
import { plateGrown } from '../water/grown-plan.ts';
import { testedWater } from '../hydrodynamics/tested-water.ts';
import { planInWater } from '../geometry/plan-in-water.ts';
import type { Model } from '../model.ts';
import { significant } from '../quantity/format-quantity.ts';
import type { Source } from '../source.ts';
import type { Structure } from '../solve/structure/structure.ts';
import { addedMassByArea } from './added-mass-by-area.ts';
import { cellMotion, waterUnderMotion } from './water-under-motion.ts';

/** Water that moves with the plate across its plane. */
export interface AddedWater {
  /** Adds the force of its inertia for an acceleration u of the structure's freedoms to f. Linear, symmetric. */
  readonly inertia: (u: Float64Array, f: Float64Array) => void;
  /** Of a heave of the whole, kg. */
  readonly total: number;
  /** `flow`: solved about the plan for each motion. Else the rule by area, see `AreaRule`. */
  readonly method: 'flow' | 'open plate' | 'each part alone';
  /** The accepted tank test that says how much there is, by its title; else null. */
  readonly test: string | null;
  /** Where it is from and why, one sentence. */
  readonly said: string;
  readonly sources: readonly Source[];
  readonly cautions: readonly string[];
}

/** Cells along the longer side: the operator is solved some dozens of times. The whole is brought to the finer lattices' heave. */
const cells = 64;
/** Residual of its equations beyond which the lattice is not believed. */
const mostResidual = 1e-6;

/** The water of a plate's natural modes: potential flow about the plan with its own gaps; by the rule of open areas only where
 *  the flow's lattice cannot be judged (`mostError`: its estimated error in heave, as a part). How much there is follows an
 *  accepted tank test where the design uses one. */
export function addedWater(
  model: Model,
  structure: Structure,
  { mostError = 0.1 }: { readonly mostError?: number } = {},
): AddedWater {
  const tested = testedWater(model);
  const test = tested && !('missing' in tested) ? tested : null;
  const own = byFlow(model, structure, mostError);
  const found = 'why' in own ? byArea(model, structure, own.why) : own;
  if (!test) return found;
  const times = test.addedMass.value / found.total;
  const { title, record } = test.test;
  return {
    ...found,
    inertia: (u, f) => {
      const water = new Float64Array(f.length);
      found.inertia(u, water);
      for (let i = 0; i < f.length; i++) f[i]! += times * water[i]!;
    },
    total: test.addedMass.value,
    test: title,
    said: `Added mass in heave ${kg(test.addedMass.value)}, as the tank test “${title}” found it; ${significant(found.total, 4)} kg without it. ${found.said}`,
    sources: [{ document: `Tank test “${title}”, record ${record.hash.slice(0, 16)}…` }, ...found.sources],
    cautions: [
      ...found.cautions,
      'The test moved the plate as a whole and further than a mode does: at small motions the water adds less.',
    ],
  };
}

function byFlow(model: Model, structure: Structure, mostError: number): AddedWater | { readonly why: string } {
  const { document, loads, mass } = model;
  const { water, hydrodynamics } = document;
  const plan = plateGrown(document, planInWater(model.geometry));
  const { x0, x1, y0, y1 } = outlineOf(plan);
  const breadth = Math.min(x1 - x0, y1 - y0);
  const depth = water.depth.si;
  const aboveBed = hydrodynamics?.bed ? hydrodynamics.bed.si - depth : null;
  const images = nearImages(Math.max(x1 - x0, y1 - y0), depth, aboveBed);
  const potential = addedMass(plan, mass.waterDensity, { n: 100, images });
  const { heave, solid, residual } = potential;
  if (residual > mostResidual) return { why: 'the equations of the flow were not solved to their tolerance' };
  if (heave.error > mostError)
    return { why: `the lattice of the flow is off by an estimated ${significant(100 * heave.error, 2)} % in heave` };
  const lattice = plateLattice(plan, wellPlaced(plan, cells), images);
  const motion = cellMotion(structure, loads.plate.shares.tubes.map(({ section }) => section.width), lattice, plan); // prettier-ignore
  const solved = waterUnderMotion(lattice, plan, mass.waterDensity, motion);
  const heaved = Float64Array.from({ length: 2 * structure.coordinates.length }, (_, i) => (i % 6 === 2 ? 1 : 0));
  const force = new Float64Array(heaved.length);
  solved(heaved, force);
  const here = force.reduce((sum, value, i) => sum + value * heaved[i]!, 0);
  const times = heave.value / here;
  return {
    inertia: (u, f) => solved(u, f, times),
    total: heave.value,
    method: 'flow',
    test: null,
    said: `Water: potential flow about this plan with its own gaps, solved for each mode’s own motion (${lattice.frame.nx} × ${lattice.frame.ny} cells). In heave it adds ${kg(heave.value)} (± ${significant(100 * heave.error, 2)} %), of ${kg(solid.value)} for the solid outline.`,
    sources: [{ document: 'doublet lattice, derived here; see the water’s own results' }],
    cautions: [
      `Water is that of a motion without size: in a larger one the gaps hold it up, and frequencies fall towards those with the solid outline’s water, ${significant(solid.value / heave.value, 3)} times as much in heave. It resists only across the plate and damps nothing here.`,
      ...(depth < breadth
        ? ['The plate hangs less than its breadth below the surface: the surface is taken as giving way at once, as for motions much faster than the waves that they would make.'] // prettier-ignore
        : []),
    ],
  };
}

function byArea(model: Model, structure: Structure, why: string): AddedWater {
  const { points, total, method, sources, cautions } = addedMassByArea(model, structure);
  return {
    inertia: (u, f) => {
      for (const { node, offset: [rx, ry], mass } of points) {
        const i = 6 * node;
        const Fz = mass * (u[i + 2]! + u[i + 3]! * ry - u[i + 4]! * rx);
        f[i + 2]! += Fz;
        f[i + 3]! += ry * Fz;
        f[i + 4]! -= rx * Fz;
      } // prettier-ignore
    },
    ...{ total, method, sources },
    test: null,
    said: `Water: ${kg(total)} by the rule for open areas, laid on panels and tubes by their plan area, since ${why}.`,
    cautions: [
      ...cautions,
      'A mode that bends moves less water than a heave: its true frequency lies higher, between this one and that in air.',
    ],
  };
}

const kg = (value: number): string => `${significant(value, 4)} kg`;
