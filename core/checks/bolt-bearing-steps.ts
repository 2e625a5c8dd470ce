import type { Step } from './check.ts';

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
