import type { Model } from '../model.ts';
import { missing, type Check, type Step } from './check.ts';
import {
  eyeAt,
  eyeCautions,
  eyeForceInputs,
  eyeInputs,
  eyePlaces,
  eyePulled,
  materialOfEye,
  onTube,
} from './eye-inputs.ts';
import { directionalSteps, lineForceSteps, simplifiedResistance, throatStressSteps } from './fillet-steps.ts';
import { basisFactor, constant } from './inputs.ts';
import { cannotBeWelded, correlationOfParts, ultimateOfParts, type WeldedPart } from './weld-strength.ts';
import { solvedLegs } from './solved-inputs.ts';

const { F_z, F_l, F_q } = eyeForceInputs;
const { t_e, h_e } = eyeInputs;

/** The eye and the tube under it, thicknesses as ordered. */
function partsOf(model: Model, id: string): readonly WeldedPart[] {
  const { eye, tube } = eyeAt(model, id);
  return [
    { material: materialOfEye(model, id), thickness: eye.thickness.si },
    ...(tube ? [{ material: tube.material, thickness: tube.section.nominalWall }] : []),
  ];
}

/** How far the faces of an eye stand past the flat of its tube, m; 0 on the flat and on a foot plate. */
function pastFlat(model: Model, id: string): number {
  const { eye, tube } = eyeAt(model, id);
  if (!tube || eye.footPlate) return 0;
  const past = eye.thickness.si / 2 - (tube.section.width / 2 - tube.section.outerRadius);
  return past > 0 ? past : 0;
}

/** Where the fillets of an eye still are fillets, its faces past the flat of the tube. */
export const onFlatRange = [
  {
    holds: 's_e <= R / 2',
    otherwise:
      'the eye is so thick that its fillets lie on the corner of the tube at more than 120° (EN 1993-1-8, 4.3.2.1): take a thinner eye, a wider tube or a foot plate',
  },
  {
    holds: 'R - sqrt(R^2 - s_e^2) <= g_2',
    otherwise:
      'the eye stands on the corner of the tube with more than 1.6 mm of gap under its fillets: shape its foot to the tube, or take a thinner eye',
  },
] as const;

/** Two fillets along the foot of an eye. */
export const eyeWeld: Check = {
  id: 'eye-weld',
  title: 'Weld of an eye',
  limitState: 'strength',
  source: [
    { document: 'EN 1993-1-8', edition: '2005', clause: '4.5.3.2', safety: 'partial factors' },
    {
      document: 'AISC 360',
      edition: '2016',
      clause: 'J2.4; K5 (no rise for direction)',
      safety: 'allowable stress',
      memory: true,
    },
  ],
  places: eyePlaces,
  applies: eyePulled,
  rule: (model, id) => cannotBeWelded(partsOf(model, id)),
  inputs: {
    ...{ F_z, F_l, F_q, t_e, h_e },
    a_w: {
      unit: 'mm',
      meaning: 'throat at the end of life',
      from: 'document: eye, corrosion',
      read: (model, id) => {
        const left = eyeAt(model, id).eye.weldThroat.si - model.document.protection.lossPerFace.tubeOutside.si;
        return left > 0 ? left : missing('a throat: corrosion takes all of it within the life');
      },
    },
    l_0: {
      unit: 'mm',
      meaning: 'length of the foot along the tube',
      from: 'document: eye',
      read: (model, id) => eyeAt(model, id).eye.width.si,
    },
    s_e: {
      unit: 'mm',
      meaning: 'face of the eye past the flat of its tube, on the corner or off the crown; 0: on the flat',
      from: 'document: eye, geometry',
      read: pastFlat,
    },
    R: {
      unit: 'mm',
      meaning: 'outer radius of that corner, or of a round tube',
      from: 'catalogue: sections',
      read: (model, id) => onTube(model, id, ({ section }) => section.outerRadius),
    },
    g_2: constant(1.6, 'mm', 'gap up to which a fillet keeps its leg', 'AWS D1.1, from memory'),
    f_u: {
      unit: 'MPa',
      meaning: 'ultimate strength of the weaker part',
      from: 'catalogue: materials',
      read: (model, id) => onTube(model, id, () => ultimateOfParts(partsOf(model, id))),
    },
    beta_w: {
      unit: '1',
      meaning: 'correlation factor of fillet welds',
      from: 'catalogue: materials',
      only: 'partial factors',
      read: (model, id) => correlationOfParts(partsOf(model, id)),
    },
    gamma_M2: basisFactor('gamma_M2', 'partial factor on welds', 'partial factors'),
    Omega_J: basisFactor('Omega_J', 'safety factor on welds', 'allowable stress'),
  },
  steps: {
    'partial factors': [
      ...forces(),
      ...throatStressSteps({ along: true, root: false }),
      ...lineForceSteps({ along: true, root: false }),
      simplifiedResistance,
      ...directionalSteps,
    ],
    'allowable stress': [
      ...forces(),
      ...lineForceSteps({ along: true, root: false }),
      {
        symbol: 'f_Rd',
        expression: '0.6 * f_u * min(a_w, t_e / 2) / Omega_J',
        unit: 'N/mm',
        meaning: 'allowable force per length: throat, and half of the plate between the two fillets',
      },
      { symbol: 'u', expression: 'f_r / f_Rd', unit: '1', meaning: 'force over allowable force' },
      { symbol: 'u_Rd', expression: '1', unit: '1', meaning: 'limit' },
    ],
  },
  solved: { inputs: solvedLegs },
  demand: 'u',
  capacity: 'u_Rd',
  range: [{ holds: 'l_w > 0 * l_0', otherwise: 'the weld is shorter than its two ends' }, ...onFlatRange],
  second: {
    title: 'simplified method: the resultant whatever its direction, an upper bound; and its 1/√3, a lower one',
    source: [{ document: 'EN 1993-1-8', edition: '2005', clause: '4.5.3.3' }],
    steps: [
      { symbol: 'u_high', expression: 'f_r / f_Rd', unit: '1', meaning: 'simplified method' },
      {
        symbol: 'u_low',
        expression: 'f_r / (sqrt(3) * f_Rd)',
        unit: '1',
        meaning: 'all of the resultant square to the throat',
      },
    ],
    of: 'u',
    low: 'u_low',
    high: 'u_high',
  },
  cautions: [
    ...eyeCautions,
    'The filler is taken at least as strong as the parts. Return the fillets round the ends of the foot.',
  ],
};

function forces(): readonly Step[] {
  return [
    { symbol: 'l_w', expression: 'l_0 - 2 * a_w', unit: 'mm', meaning: 'effective length of a fillet, ends left out' },
    {
      symbol: 'f_z',
      expression: 'F_z / (2 * l_w) + 3 * F_l * h_e / l_w^2 + F_q * h_e / (t_e * l_w)',
      unit: 'N/mm',
      meaning: 'pull per length off the tube: pull, bending in the plane of the eye and across it',
    },
    { symbol: 'f_h', expression: 'F_q / (2 * l_w)', unit: 'N/mm', meaning: 'force per length across the weld' },
    { symbol: 'f_l', expression: 'F_l / (2 * l_w)', unit: 'N/mm', meaning: 'force per length along the weld' },
  ];
}
