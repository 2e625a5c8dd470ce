import { planInWater } from '../geometry/plan-in-water.ts';
import type { Model } from '../model.ts';
import { oncePerModel } from '../once-per-model.ts';
import { outlineOf } from '../water/lattice/plan.ts';
import { coarseLattice } from './coarse-lattice.ts';
import { plateGrown } from '../water/grown-plan.ts';
import { heaveCurve, type CurvePoint } from './heave-curve.ts';
import { hydrodynamicsOf } from './hydrodynamics-of.ts';
import { testedWater } from './tested-water.ts';

/** The plate on one lattice, for all ways of moving. */
export const coarsePlate = oncePerModel(({ document, geometry }) => {
  const plan = plateGrown(document, planInWater(geometry));
  const { x0, x1, y0, y1 } = outlineOf(plan);
  return { plan, lattice: coarseLattice(document, plan), area: (x1 - x0) * (y1 - y0) };
});

/** Added mass and drag over amplitudes, the area that the drag refers to, m², and where both are from. */
export interface MovingCurve {
  readonly curve: readonly CurvePoint[];
  readonly area: number;
  readonly from: 'the test that the design uses' | 'theory';
}

/** Parts of half a wave's height at which added mass and drag are found. */
const parts = [0.02, 0.05, 0.1, 0.2, 0.4, 0.7, 1, 1.5, 2.2] as const;

/** By theory, for motions in waves of up to this height, m. */
function curveByTheory(model: Model, height: number): MovingCurve {
  const { plan, lattice, area } = coarsePlate(model);
  const solid = hydrodynamicsOf(model).report.quantities['addedMass.solid']!.value;
  const amplitudes = parts.map((part) => (part * height) / 2);
  const curve = heaveCurve(plan, lattice, model.mass.waterDensity, amplitudes, solid).map(({ point }) => point);
  return { curve, area, from: 'theory' };
}

/** What the design uses: of an accepted test the same at every motion, without one by theory. */
export function movingCurve(model: Model, height: number): MovingCurve {
  const tested = testedWater(model);
  if (!tested || 'missing' in tested) return curveByTheory(model, height);
  const { addedMass, dragCoefficient, area } = tested;
  const same = { addedMass: addedMass.value, drag: dragCoefficient.value };
  return {
    curve: [{ amplitude: 1e-6, ...same }, { amplitude: 1e3, ...same }], // prettier-ignore
    area,
    from: 'the test that the design uses',
  };
}
