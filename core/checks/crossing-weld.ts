import { missing, type Check } from './check.ts';
import { crossingPlaces, crossingSizeInputs } from './crossing-inputs.ts';
import { crossingWeldInputs, tubesAt } from './crossing-weld-inputs.ts';
import { basisFactor } from './inputs.ts';
import { cannotBeWelded } from './weld-strength.ts';

const { h_0 } = crossingSizeInputs;

/** Weld of a cross tube laid on a main tube: two runs along its flanks, across the main tube. */
export const crossingWeld: Check = {
  id: 'crossing-weld',
  title: 'Weld and walls at a stacked crossing',
  limitState: 'strength',
  source: [
    { document: 'EN 1993-1-8', edition: '2005', clause: '4.5.3.3; section 7 has no joint of this kind', safety: 'partial factors' },
    { document: 'AISC 360', edition: '2016', clause: 'J2.4; K has no joint of this kind', safety: 'allowable stress', memory: true },
  ],
  places: crossingPlaces,
  applies: (model) => model.geometry.arrangement === 'stacked' || 'the cross tubes are let in flush: see the wall and the weld at a flush crossing',
  once: true,
  rule: (model, id) => cannotBeWelded(tubesAt(model, id)),
  inputs: {
    F: {
      unit: 'kN',
      meaning: 'force through the crossing that its walls can carry',
      from: 'no published rule',
      read: () => missing('a joint formula: a through tube welded along its flanks has no published joint formula'),
    },
    ...crossingWeldInputs,
    l_w: { ...h_0, meaning: 'length of a run: width of the main tube' },
    gamma_M2: basisFactor('gamma_M2', 'partial factor on welds', 'partial factors'),
    Omega_J: basisFactor('Omega_J', 'safety factor on welds', 'allowable stress'),
  },
  steps: {
    'partial factors': [{ symbol: 'F_Rd', expression: 'f_u / (sqrt(3) * beta_w * gamma_M2) * a_w * 2 * l_w', unit: 'kN', meaning: 'resistance of the two runs alone' }],
    'allowable stress': [{ symbol: 'F_Rd', expression: '0.6 * f_u / Omega_J * a_w * 2 * l_w', unit: 'kN', meaning: 'allowable force of the two runs alone' }],
  },
  demand: 'F',
  capacity: 'F_Rd',
  second: {
    title: 'the throats torn at the ultimate strength, no factor',
    source: [{ document: 'derived by hand' }],
    steps: [{ symbol: 'F_high', expression: 'f_u * a_w * 2 * l_w', unit: 'kN', meaning: 'bound' }],
    of: 'F_Rd',
    high: 'F_high',
  },
  cautions: ['Test such a joint or analyse its walls as shells; the weld alone is not what decides.'],
};
