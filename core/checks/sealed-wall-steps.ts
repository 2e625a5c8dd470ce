import type { Model } from '../model.ts';
import { g } from '../water/sea-water.ts';
import type { Input } from './check.ts';
import { basisFactor, constant } from './inputs.ts';
import { tubeAt } from './tube-inputs.ts';

/** True for a sealed tube. */
export const sealed = (model: Model, id: string): true | string =>
  !tubeAt(model, id).flooded || 'the tube is flooded: the pressure is the same inside and outside';

/** What the pressure at the plate is made of. */
export const depthInputs = {
  z: {
    unit: 'm',
    meaning: 'depth of the water at the plate',
    from: 'document: water',
    read: (model) => model.document.water.depth.si,
  },
  rho: {
    unit: 'kg/m^3',
    meaning: 'density of the water',
    from: 'document: water',
    read: (model) => model.mass.waterDensity,
  },
  g: constant(g, 'm/s^2', 'acceleration of gravity', 'ISO 80000-3'),
  gamma_F: basisFactor('gamma_F_permanent', 'load factor on the pressure of still water'),
} satisfies Record<string, Input>;

export const poisson = {
  nu: {
    unit: '1',
    meaning: "Poisson's ratio",
    from: 'catalogue: materials',
    read: (model, id) => tubeAt(model, id).material.poisson,
  },
} satisfies Record<string, Input>;

/** Wall of a sealed tube as a closed frame, or a ring, under the water's pressure. */
export const sealedWallSteps = [
  {
    symbol: 'p',
    expression: 'gamma_F * rho * g * z',
    unit: 'kPa',
    meaning: 'pressure of the water, load factor included',
  },
  { symbol: 'b_w', expression: 'B - 2 * t', unit: 'mm', meaning: 'clear width' },
  { symbol: 'h_w', expression: 'H - 2 * t', unit: 'mm', meaning: 'clear height' },
  {
    symbol: 'm_c',
    expression: 'p * (b_w^2 - b_w * h_w + h_w^2) / 12',
    unit: 'N',
    meaning: 'moment at the corners per length',
  },
  {
    symbol: 'm_m',
    expression: 'p * max(b_w, h_w)^2 / 8 - m_c',
    unit: 'N',
    meaning: 'moment in the middle of the larger wall per length',
  },
  {
    symbol: 'sigma_b',
    expression: 'round > 0 ? 0 * p : 6 * max(m_c, m_m) / t^2',
    unit: 'MPa',
    meaning: 'bending stress of the wall',
  },
  {
    symbol: 'sigma_n',
    expression: 'p * max(B, H) / (2 * t)',
    unit: 'MPa',
    meaning: 'stress along the wall (hoop stress)',
  },
  { symbol: 'sigma', expression: 'sigma_b + sigma_n', unit: 'MPa', meaning: 'largest stress of the wall' },
  {
    symbol: 'p_cr',
    expression: '2 * E / (1 - nu^2) * (t / (H - t))^3',
    unit: 'kPa',
    meaning: 'elastic buckling pressure of a long round tube',
  },
] as const;
