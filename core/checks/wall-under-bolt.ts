import type { SecondOpinion, Step } from './check.ts';

/** Resistance F_w_Rd of a flat wall to the pull of one bolt. `f`, `t`, `factor`: symbols of its yield strength, thickness and factor. */
export const wallUnderBolt = (f: string, t: string, factor: string, resistance = 'resistance'): Step => ({
  symbol: 'F_w_Rd',
  expression: `pi * ${f} * ${t}^2 / ${factor}`,
  unit: 'kN',
  meaning: `${resistance} of one wall: 4 pi times its plastic moment`,
});

/** Bounds of F_w_Rd: a field of moments that carries it below, another mechanism above; `gamma_R` is the factor of either basis. */
export const wallUnderBoltBounds = (f: string, t: string): Omit<SecondOpinion, 'title'> => ({
  source: [
    { document: 'Hopkins & Prager, The load carrying capacities of circular plates', edition: '1953', memory: true },
    { document: 'EN 1993-1-8', edition: '2005', clause: 'Table 7.11, brace width to zero', memory: true },
  ],
  steps: [
    { symbol: 'm_pl', expression: `${f} * ${t}^2 / 4`, unit: 'N', meaning: 'plastic moment of the wall per width' },
    { symbol: 'R_low', expression: '2 * pi * m_pl / gamma_R', unit: 'kN', meaning: 'smaller resistance' },
    { symbol: 'R_high', expression: '16 * m_pl / gamma_R', unit: 'kN', meaning: 'larger resistance' },
  ],
  of: 'F_w_Rd',
  low: 'R_low',
  high: 'R_high',
});
