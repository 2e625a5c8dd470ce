import { missing, type Check } from './check.ts';
import { braceAt, chordAt, crossingPlaces, withoutFormula } from './crossing-inputs.ts';
import { crossingWeldInputs, tubesAt } from './crossing-weld-inputs.ts';
import { basisFactor } from './inputs.ts';
import { sectionAtEnd } from './tube-inputs.ts';
import { cannotBeWelded } from './weld-strength.ts';

/** A crossing for whose walls no formula is held: stacked tubes, round on rectangular, tubes wider than the face. */
export const crossingWeld: Check = {
  id: 'crossing-weld',
  title: 'Walls and weld at a crossing without a joint formula',
  limitState: 'strength',
  source: [
    {
      document: 'EN 1993-1-8',
      edition: '2005',
      clause: '4.5.3.3; section 7 for what it covers',
      safety: 'partial factors',
    },
    {
      document: 'AISC 360',
      edition: '2016',
      clause: 'J2.4; K for what it covers',
      safety: 'allowable stress',
      memory: true,
    },
  ],
  places: crossingPlaces,
  applies: (model, id) => withoutFormula(model, id) !== undefined || 'a formula is held: see the walls of the tubes',
  once: true,
  rule: (model, id) => cannotBeWelded(tubesAt(model, id)),
  inputs: {
    F: {
      unit: 'kN',
      meaning: 'force through the crossing that its walls can carry',
      from: 'no published rule',
      read: (model, id) => missing(withoutFormula(model, id) ?? 'a joint formula'),
    },
    ...crossingWeldInputs,
    l_w: {
      unit: 'mm',
      meaning: 'length of weld: two runs over the width of the main tube, or all round the cross tube',
      from: 'geometry',
      read: (model, id) => {
        const brace = sectionAtEnd(model, braceAt(model, id).id);
        return model.geometry.arrangement === 'stacked'
          ? 2 * sectionAtEnd(model, chordAt(model, id).id).width
          : brace.outerPerimeter;
      },
    },
    gamma_M2: basisFactor('gamma_M2', 'partial factor on welds', 'partial factors'),
    Omega_J: basisFactor('Omega_J', 'safety factor on welds', 'allowable stress'),
  },
  steps: {
    'partial factors': [
      {
        symbol: 'F_Rd',
        expression: 'f_u / (sqrt(3) * beta_w * gamma_M2) * a_w * l_w',
        unit: 'kN',
        meaning: 'resistance of the weld alone',
      },
    ],
    'allowable stress': [
      {
        symbol: 'F_Rd',
        expression: '0.6 * f_u / Omega_J * a_w * l_w',
        unit: 'kN',
        meaning: 'allowable force of the weld alone',
      },
    ],
  },
  demand: 'F',
  capacity: 'F_Rd',
  second: {
    title: 'stress on the throat: the old allowable 0.30 of the tensile strength, and shear rupture without a factor',
    source: [
      { document: 'AWS D1.1', clause: 'allowable stress of fillet welds, 0.30 of the tensile strength', memory: true },
      { document: 'von Mises, rupture in pure shear', clause: 'f_u/√3', memory: true },
    ],
    steps: [
      { symbol: 'F_low', expression: '0.3 * f_u * a_w * l_w', unit: 'kN', meaning: 'old allowable force' },
      {
        symbol: 'F_high',
        expression: 'f_u / sqrt(3) * a_w * l_w',
        unit: 'kN',
        meaning: 'shear rupture of the throats',
      },
    ],
    of: 'F_Rd',
    low: 'F_low',
    high: 'F_high',
  },
  cautions: ['Test such a joint or analyse its walls as shells; the weld alone is not what decides.'],
};
