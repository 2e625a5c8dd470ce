import { bolted, boltForceInputs } from './bolt-inputs.ts';
import { boltSecondOpinion } from './bolt-second-opinion.ts';
import { boltShearBounds, boltShearBoundsInputs, boltShearInputs, boltShearResistance } from './bolt-shear.ts';
import type { Check, Input, SecondOpinion, Step } from './check.ts';
import { fieldAt, fieldPlaces, panelAt } from './field-inputs.ts';
import { basisFactor, constant } from './inputs.ts';
import { liftDynamicFactor } from '../loads/lift-dynamic-factor.ts';

const { a_b, b_b, n_x, n_y } = boltForceInputs;

/** Weight of the field of panel that hangs on edge. */
export const hungWeight: Step = {
  symbol: 'W',
  expression: 'gamma_L * k_dyn * rho * A_f * t_0 * g',
  unit: 'kN',
  meaning: 'weight of the field of panel in air, factored',
};

const forces: readonly Step[] = [
  hungWeight,
  {
    symbol: 'F_v',
    kernel: 'bolts.rowLost.inPlane',
    arguments: ['a_b', 'b_b', 'n_x', 'n_y', 'W'],
    unit: 'kN',
    meaning: 'largest shear of the bolts that are left, elastic group about its centroid, worst row and direction',
  },
];

/** What the weight of a panel that hangs on edge follows from. */
export const hungInputs = {
  A_f: {
    unit: 'm^2',
    meaning: 'area of the field',
    from: 'geometry',
    read: (model, bay) => fieldAt(model, bay).area,
  },
  t_0: {
    unit: 'mm',
    meaning: 'thickness as built',
    from: 'document: designs',
    read: (model, bay) => panelAt(model, bay).thickness,
  },
  rho: {
    unit: 'kg/m^3',
    meaning: 'density of the panel',
    from: 'catalogue: materials',
    read: (model, bay) => panelAt(model, bay).material.density,
  },
  g: constant(9.80665, 'm/s^2', 'gravity', 'standard value'),
  k_dyn: {
    unit: '1',
    meaning: 'dynamic factor of a lift in air: stated, or of 0027/ND Rev 11, 5.5.1 for the panel alone',
    from: 'document: loads',
    read: (model, bay) => {
      const panel = panelAt(model, bay);
      return (
        model.document.loads.liftInAir?.dynamicFactor?.value ??
        liftDynamicFactor(panel.area * panel.thickness * panel.material.density)
      );
    },
  },
  gamma_L: basisFactor('gamma_F_lift', 'load factor on lifted weight'),
} as const satisfies Readonly<Record<string, Input>>;

/** Bounds of F_v by equilibrium. */
const forceBounds: SecondOpinion = {
  title: 'Shear: mean of the bolts below; above, the weight and its whole moment on one bolt',
  source: [{ document: 'equilibrium of the panel, derived by hand' }],
  steps: [
    { symbol: 'F_mean', expression: 'W / (2 * n_x + 2 * n_y - 4)', unit: 'kN', meaning: 'as if no bolt were lost' },
    {
      symbol: 'F_one',
      expression: 'W + W * max(a_b, b_b) / min(a_b, b_b)',
      unit: 'kN',
      meaning: 'all of it on one bolt, its moment on a pair a field apart',
    },
  ],
  of: 'F_v',
  low: 'F_mean',
  high: 'F_one',
};

/** A panel hung on edge while handled, one row of bolts lost or not yet in. */
export const boltGroupInPlane: Check = {
  id: 'bolt-group-in-plane',
  title: 'Panel hung on edge with a row of bolts lost',
  limitState: 'handling',
  source: [
    { document: 'Shigley, Mechanical Engineering Design', clause: 'shear joints with eccentric loading', memory: true },
    { document: '0027/ND Guidelines for Marine Lifting', edition: 'Rev 11', clause: '5.5.1' },
    { document: 'EN 1993-1-8', edition: '2005', clause: 'Table 3.4, 3.12(3)', safety: 'partial factors' },
    { document: 'AISC 360', edition: '2016', clause: 'J3.6, read in the edition of 2010', safety: 'allowable stress' },
  ],
  places: fieldPlaces,
  applies: bolted,
  once: true,
  inputs: {
    ...{ a_b, b_b, n_x, n_y },
    ...hungInputs,
    ...boltShearInputs,
    ...boltShearBoundsInputs,
    gamma_M2: basisFactor('gamma_M2', 'partial factor on bolts', 'partial factors'),
    Omega_J: basisFactor('Omega_J', 'safety factor on bolts', 'allowable stress'),
  },
  steps: {
    'partial factors': [...forces, ...boltShearResistance['partial factors']],
    'allowable stress': [...forces, ...boltShearResistance['allowable stress']],
  },
  demand: 'F_v',
  capacity: 'F_v_Rd',
  second: boltSecondOpinion(forceBounds, boltShearBounds),
  cautions: ['Nobody stands under a panel that hangs. Lift by the pad eyes, not by the bolts.'],
};
