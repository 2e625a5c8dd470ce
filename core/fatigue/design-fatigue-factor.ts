/** How a detail can be inspected and repaired, and what its loss would mean. */
export type Access = 'none' | 'under water' | 'above water';
export type Consequence = 'substantial' | 'limited';

/**
 * By how much the calculated life must exceed the life wanted. It is a factor on life: the S-N curve and the stress keep
 * a factor of 1, so that nothing is counted twice.
 * Source: NORSOK N-004, Table 8-1, from memory (no access, or in the splash zone; below it; above it).
 */
export const designFatigueFactors: Readonly<Record<Access, Readonly<Record<Consequence, number>>>> = {
  none: { substantial: 10, limited: 3 },
  'under water': { substantial: 3, limited: 2 },
  'above water': { substantial: 2, limited: 1 },
};

export const designFatigueFactorSource = 'NORSOK N-004, Table 8-1, from memory';
