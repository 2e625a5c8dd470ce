import { planInWater } from '../geometry/plan-in-water.ts';
import type { Finding } from '../finding.ts';
import type { Model } from '../model.ts';
import { printedUnit, quantityText, significant } from '../quantity/format-quantity.ts';
import { Refusal } from '../refusal.ts';
import { boundedMemo } from '../solve/bounded-memo.ts';
import { thinPlateCoefficient } from '../water/added-mass-rules.ts';
import { edgeDrag } from '../water/edge-drag.ts';
import { outlineOf } from '../water/lattice/plan.ts';
import { wayTitles } from './sea-quantities.ts';
import { testedWater } from './tested-water.ts';
import { statedForces, type WaterForce } from './water-forces.ts';

const remembered = boundedMemo<ReturnType<typeof known>>(24);

/**
 * Where the water, in the motion that the document states or records, presses the plate with more than the service force that
 * the loads take: of inertia and drag what that force is said to include, each way. A mean is not compared: it is judged nowhere.
 */
export function forceFindings(model: Model): Finding[] {
  const { includes, level } = model.document.loads.service;
  const [inertia, drag] = [includes.includes('inertia'), includes.includes('drag')];
  const { amplitude: taken } = model.loads.swing;
  if (level === 'mean' || (!inertia && !drag) || farBelow(model, taken)) return [];
  const text = (si: number, unit: string): string => quantityText(si, printedUnit(unit, model.document.units), 3);
  const forces = known(model);
  if ('missing' in forces)
    return [{ id: 'water-not-compared', place, text: `The service force is not held against the water’s: ${forces.missing}.`, mend: 'Look at the sheet Hydrodynamics.' }]; // prettier-ignore
  const by = testedWater(model) ? 'the test that is used' : 'theory';
  return forces.flatMap(({ way, amplitude, period, best, low, high, outside }): Finding[] => {
    const both = inertia && drag;
    const found = both ? best.peak : inertia ? best.inertia : best.drag;
    if ((both ? high : found) <= taken) return [];
    const what = both ? `${text(found, 'kN')} (${text(low, 'kN')} to ${text(high, 'kN')})` : `${text(found, 'kN')} of ${inertia ? 'inertia' : 'drag'} alone`; // prettier-ignore
    const beside =
      found > taken ? `${significant(taken / found, 2)} of it` : 'above the best value, below the high end';
    return [
      {
        id: 'water-above-service',
        place,
        text: `In the ${wayTitles[way]}, ${text(amplitude, 'm')} of amplitude and ${text(period, 's')}, the water presses the plate by ${by} with ${what}; the loads take ${text(taken, 'kN')} each way: ${beside}.${outside ? ` The drag in it is a guess: ${outside}.` : ''}`,
        mend: 'Raise the service force, mend the motion, or use a tank test of this plate; else say in the force’s source why the water presses with less.',
      },
    ];
  });
}

const place = 'loads.service.force';

/** Of plates that the water sees alike, once. */
function known(model: Model): readonly WaterForce[] | { readonly missing: string } {
  const { water, hydrodynamics, tests, testUsed } = model.document;
  const seen = [planInWater(model.geometry), model.mass.growth, model.mass.entrainedWater, model.mass.displaced, water, { ...hydrodynamics, system: null }, testUsed && tests]; // prettier-ignore
  return remembered(JSON.stringify(seen), () => {
    try {
      return statedForces(model);
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      return { missing: error.what };
    }
  });
}

/** Added mass and gap damping together, over the thin solid plate's added mass: edges of any height keep it below 1.71 times
 *  (DNV-RP-N103, from memory), and gaps dissipate half of it at most (Molin 2001), 3π/8 of that at the middle of the stroke. */
const mostOfSolid = 1.71 * (1 + (0.5 * (3 * Math.PI)) / 8);

/** True where a solid plate of the same outline would press with less than what is taken, by far too: the lattice need not be solved for that. */
function farBelow(model: Model, taken: number): boolean {
  const { motion, recorded, bed } = model.document.hydrodynamics ?? {};
  if (!motion && !recorded) return true;
  if (recorded || !motion || model.document.testUsed) return false;
  const { x0, x1, y0, y1 } = outlineOf(planInWater(model.geometry));
  const grown = 2 * (model.mass.growth?.thickness ?? 0);
  const [a, b] = [Math.min(x1 - x0, y1 - y0) + grown, Math.max(x1 - x0, y1 - y0) + grown];
  if (bed && bed.si - model.document.water.depth.si < b) return false;
  const { waterDensity: rho } = model.mass;
  const [A, omega] = [motion.amplitude.si, (2 * Math.PI) / motion.period.si];
  const mass = mostOfSolid * thinPlateCoefficient(b / a) * rho * (Math.PI / 4) * a ** 2 * b;
  const edges = 0.5 * rho * edgeDrag((2 * Math.PI * A) / a, b / a).high * a * b * (omega * A) ** 2;
  return mass * omega ** 2 * A + edges < taken;
}
