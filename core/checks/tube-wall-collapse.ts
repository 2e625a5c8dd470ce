import type { Check } from './check.ts';
import { basisFactor } from './inputs.ts';
import { depthInputs, poisson, sealed } from './sealed-wall-steps.ts';
import { tubeInputs, tubePlaces } from './tube-inputs.ts';

const { round, H, B, t, E, f_y } = tubeInputs;

const collapseSteps = [
  { symbol: 'p', expression: 'gamma_F * rho * g * z', unit: 'kPa', meaning: 'pressure of the water, load factor included' },
  { symbol: 'b_w', expression: 'max(B, H) - 2 * t', unit: 'mm', meaning: 'clear width of the larger wall' },
  {
    symbol: 'p_y',
    expression: 'round > 0 ? 2 * f_y * t / H : 4 * f_y * t^2 / b_w^2',
    unit: 'kPa',
    meaning: 'round: yield around; flat: hinges at both corners and in the middle of the larger wall, p b²/16 = f t²/4',
  },
  {
    symbol: 'p_e',
    expression: 'round > 0 ? 2 * E / (1 - nu^2) * (t / (H - t))^3 : p_y * 1e6',
    unit: 'kPa',
    meaning: 'round: elastic buckling of a long perfect tube; flat walls do not buckle around',
  },
  { symbol: 'p_c', expression: '1 / (1 / p_y + 1 / p_e)', unit: 'kPa', meaning: 'both together (Rankine and Merchant)' },
] as const; // prettier-ignore

/** A sealed tube must not be crushed by the water. */
export const tubeWallCollapse: Check = {
  id: 'tube-wall-collapse',
  title: 'Crushing of a sealed tube by the water',
  limitState: 'stability',
  source: [
    { document: 'plastic hinges of a wall, Rankine and Merchant’s sum; handbooks', memory: true },
    { document: 'Timoshenko and Gere, Theory of Elastic Stability', edition: '2nd', clause: 'long tube under outside pressure', memory: true },
  ], // prettier-ignore
  places: tubePlaces,
  applies: sealed,
  once: true,
  inputs: {
    ...depthInputs,
    ...{ round, H, B, t, E, f_y },
    ...poisson,
    gamma_M1: basisFactor('gamma_M1', 'partial factor on stability', 'partial factors'),
    Omega_c: basisFactor('Omega_c', 'safety factor on compression', 'allowable stress'),
  },
  steps: {
    'partial factors': [
      ...collapseSteps,
      { symbol: 'p_Rd', expression: 'p_c / gamma_M1', unit: 'kPa', meaning: 'pressure that it resists' },
    ],
    'allowable stress': [
      ...collapseSteps,
      { symbol: 'p_Rd', expression: 'p_c / Omega_c', unit: 'kPa', meaning: 'allowable pressure' },
    ],
  },
  demand: 'p',
  capacity: 'p_Rd',
  second: {
    title: 'a flat wall yields first at half the pressure that crushes it, hinged walls stand less; no tube stands more than its yield',
    source: [{ document: 'beam tables; equilibrium', memory: true }],
    steps: [
      {
        symbol: 'p_low',
        expression: 'round > 0 ? 0.5 * min(2 * f_y * t / H, 2 * E * (t / (H - t))^3) : f_y * t^2 / max(B - 2 * t, H - 2 * t)^2',
        unit: 'kPa',
        meaning: 'half of the lesser; first yield of a hinged wall, less its thrust',
      },
      {
        symbol: 'p_high',
        expression: 'round > 0 ? 2 * f_y * t / (H - 2 * t) : 8 * f_y * t^2 / max(B - 2 * t, H - 2 * t)^2',
        unit: 'kPa',
        meaning: 'yield around the bore; twice the hinges of one wall',
      },
    ],
    of: 'p_c',
    low: 'p_low',
    high: 'p_high',
  },
  cautions: [
    'Ovality, dents and the thrust in flat walls lower it: a tube near this pressure is flooded, or proved by a test.',
    'Caps and welds of a sealed tube are not judged here.',
  ],
}; // prettier-ignore
