import type { SecondOpinion, Step } from './check.ts';

/** Source of the European and the American rule of bearing. */
export const bearingSource = [
  {
    document: 'EN 1993-1-8',
    edition: '2005',
    clause: 'Table 3.4; 3.6.1(10) for one row of bolts in a single lap',
    safety: 'partial factors',
  },
  {
    document: 'EN 1993-1-4',
    edition: '2006',
    clause: '6.2: stainless steel bears with 0.5 f_y + 0.6 f_u',
    safety: 'partial factors',
    memory: true,
  },
  { document: 'AISC 360', edition: '2016', clause: 'J3.10', safety: 'allowable stress', memory: true },
] as const;

/** Strength that a steel bears with. Symbols: the yield and ultimate strength, and 1 for stainless steel. */
export const bearingStrength = (yieldStrength: string, ultimate: string, stainless: string): Step => ({
  symbol: 'f_b',
  expression: `${stainless} > 0 ? min(${ultimate}, 0.5 * ${yieldStrength} + 0.6 * ${ultimate}) : ${ultimate}`,
  unit: 'MPa',
  meaning: 'strength in bearing, reduced for stainless steel, which yields early',
});

/**
 * Bounds of F_b_Rd. Symbols: hole's centre to the nearest edge in the way, thickness, yield and ultimate strength; a factor on
 * the lower bound where a slot leaves less. Both
 * hold where the least distances of EN 1993-1-8, Table 3.3, are kept, and down to 0.9 d_0 from the edge.
 */
export const bearingBounds = (
  edge: string,
  t: string,
  yieldStrength: string,
  ultimate: string,
  ofHole = '',
): SecondOpinion => ({
  title:
    'Resistance: below, 0.8 of the yield strength on the bolt’s projected area, less where less steel than a hole’s diameter is before it; above, two planes that shear at 1/√3 of the ultimate strength, or the hole piled up at three times that strength',
  source: [
    { document: 'R. von Mises’ flow rule; planes of shear derived by hand' },
    {
      document: 'Kulak, Fisher & Struik, Guide to Design Criteria for Bolted and Riveted Joints',
      edition: '2nd',
      clause: 'bearing: three times the tensile strength',
      memory: true,
    },
  ],
  steps: [
    {
      symbol: 'l_own',
      expression: `min(${edge} - d_0 / 2, (p_1 - d_0) / 2)`,
      unit: 'mm',
      meaning: 'steel before the hole that no other hole draws on',
    },
    {
      symbol: 'R_low',
      expression: `${ofHole}0.8 * ${yieldStrength} * d * ${t} * min(1, l_own / d_0) / gamma_R`,
      unit: 'kN',
      meaning: 'smaller resistance',
    },
    {
      symbol: 'R_high',
      expression: `min(2 / sqrt(3) * min(${edge}, p_1 - d_0 / 2), 3 * d) * ${t} * ${ultimate} / gamma_R`,
      unit: 'kN',
      meaning: 'larger resistance',
    },
  ],
  of: 'F_b_Rd',
  low: 'R_low',
  high: 'R_high',
});
