import { equipmentOf } from '../recovery/equipment.ts';
import { g } from '../water/sea-water.ts';
import { missing, type Check, type Input } from './check.ts';
import type { Bolt, BoltClass } from '../catalogue/rows.ts';
import { basisFactor, constant } from './inputs.ts';
import { canisterPlaces, ofCanister, ofFloat, withCanisters } from './recovery-inputs.ts';

const ofBolt = (
  unit: string,
  meaning: string,
  read: (bolt: Bolt, boltClass: BoltClass) => number,
  only?: Input['only'],
): Input => ({
  unit,
  meaning,
  from: 'catalogue: fasteners',
  read: ({ document, catalogue }, place) => {
    const canister = document.recovery?.releases.find(({ id }) => id === place)?.canister;
    return canister
      ? read(catalogue.bolt(canister.bolts.bolt), catalogue.boltClass(canister.bolts.class))
      : missing('the canister');
  },
  ...(only ? { only } : {}),
});

/** Bolts that hold a full canister on the plate: pulled, tipped and pushed at once. */
export const recoveryCanisterBolts: Check = {
  id: 'recovery-canister-bolts',
  title: 'Canister is bolted down',
  limitState: 'handling',
  source: [
    { document: 'EN 1993-1-8', edition: '2005', clause: 'Table 3.4', safety: 'partial factors' },
    {
      document: 'AISC 360',
      edition: '2016',
      clause: 'J3, 0.75 and 0.45 of the ultimate strength',
      safety: 'allowable stress',
    },
  ],
  places: canisterPlaces,
  applies: withCanisters,
  once: true,
  inputs: {
    m_c: {
      unit: 'kg',
      meaning: 'full canister in air, release and float with it',
      from: 'loads: recovery',
      read: ({ document }, place) => {
        const way = document.recovery?.ways.find(({ id }) => id === document.recovery?.chosen);
        if (!way) return missing('what recovery is planned');
        return equipmentOf(document, { ...way, releases: [place] }).reduce((sum, { mass }) => sum + mass, 0);
      },
    },
    a_c: ofCanister('1', 'largest acceleration, in g', ({ acceleration }) => acceleration),
    g: constant(g, 'm/s^2', 'gravity', 'ISO 80000-3'),
    F_f: ofFloat('N', 'pull of its float', 'loads: recovery', ({ waiting }) => waiting),
    H: ofCanister('mm', 'height of the canister, which its pull acts at', ({ height }) => height.si),
    D_b: ofCanister('mm', 'bolt circle', ({ bolts }) => bolts.circle.si),
    n: ofCanister('1', 'bolts', ({ bolts }) => bolts.count),
    A_s: ofBolt('mm^2', 'tensile stress area', (bolt) => bolt.tensileArea),
    A_b: ofBolt('mm^2', 'area of the shank', (bolt) => bolt.shankArea, 'allowable stress'),
    f_ub: ofBolt('MPa', 'ultimate strength of the bolt', (_, { ultimate }) => ultimate),
    gamma_F: constant(1.5, '1', 'factor on the forces of handling', 'common practice, no source'),
    gamma_M2: basisFactor('gamma_M2', 'partial factor on bolts', 'partial factors'),
    Omega_J: basisFactor('Omega_J', 'safety factor on bolts', 'allowable stress'),
    u_max: constant(1, '1', 'limit of the sum', 'rule'),
  },
  steps: {
    'partial factors': [
      { symbol: 'F_h', expression: 'gamma_F * m_c * a_c * g', unit: 'kN', meaning: 'push to the side' },
      { symbol: 'F_u', expression: 'gamma_F * (m_c * a_c * g + F_f)', unit: 'kN', meaning: 'pull upwards' },
      {
        symbol: 'F_t',
        expression: 'F_u / n + 4 * F_h * H / (n * D_b)',
        unit: 'kN',
        meaning: 'tension in the worst bolt of the circle',
      },
      { symbol: 'F_v', expression: 'F_h / n', unit: 'kN', meaning: 'shear of a bolt' },
      { symbol: 'F_t_Rd', expression: '0.9 * f_ub * A_s / gamma_M2', unit: 'kN', meaning: 'tension resistance' },
      {
        symbol: 'F_v_Rd',
        expression: '0.5 * f_ub * A_s / gamma_M2',
        unit: 'kN',
        meaning: 'shear resistance, threads in the plane, any class',
      },
      {
        symbol: 'u',
        expression: 'max(F_v / F_v_Rd + F_t / (1.4 * F_t_Rd), F_t / F_t_Rd)',
        unit: '1',
        meaning: 'shear and tension together',
      },
    ],
    'allowable stress': [
      { symbol: 'F_h', expression: 'm_c * a_c * g', unit: 'kN', meaning: 'push to the side' },
      { symbol: 'F_u', expression: 'm_c * a_c * g + F_f', unit: 'kN', meaning: 'pull upwards' },
      {
        symbol: 'F_t',
        expression: 'gamma_F / 1.5 * (F_u / n + 4 * F_h * H / (n * D_b))',
        unit: 'kN',
        meaning: 'tension in the worst bolt of the circle',
      },
      { symbol: 'F_v', expression: 'gamma_F / 1.5 * F_h / n', unit: 'kN', meaning: 'shear of a bolt' },
      { symbol: 'F_t_Rd', expression: '0.75 * f_ub * A_b / Omega_J', unit: 'kN', meaning: 'allowable tension' },
      { symbol: 'F_v_Rd', expression: '0.45 * f_ub * A_b / Omega_J', unit: 'kN', meaning: 'allowable shear' },
      {
        symbol: 'u',
        expression: 'max((F_v / F_v_Rd + F_t / F_t_Rd) / 1.3, F_t / F_t_Rd)',
        unit: '1',
        meaning: 'shear and tension together',
      },
    ],
  },
  demand: 'u',
  capacity: 'u_max',
  range: [{ holds: 'n >= 3', otherwise: 'fewer than three bolts hold no moment by their own tension' }],
  second: {
    title:
      'all bolts in shear alone; and the moment on two bolts across the circle, with all of the ultimate strength not counted above a third',
    source: [{ document: 'statics' }],
    steps: [
      {
        symbol: 'u_low',
        expression: 'F_h / (n * 0.65 * f_ub * A_s)',
        unit: '1',
        meaning: 'shear against the most that steel bears',
      },
      {
        symbol: 'u_high',
        expression: '(F_u + F_h * (1 + 4 * H / D_b)) / (0.2 * f_ub * A_s)',
        unit: '1',
        meaning: 'one bolt for all, at a fifth of its strength',
      },
    ],
    of: 'u',
    low: 'u_low',
    high: 'u_high',
  },
  cautions: [
    'The base that the bolts go through is not judged here; where it is a panel, the panel’s own checks do not know of the canister.',
    'A canister that tears off takes the way home with it: bolts secured, and looked at in each inspection.',
  ],
};
