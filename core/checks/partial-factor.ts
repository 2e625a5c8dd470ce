import type { Material } from '../catalogue/rows.ts';
import type { Model } from '../model.ts';
import type { Input } from './check.ts';
import { basisFactor } from './inputs.ts';

/** What EN 1993-1-4, 5.1, recommends for stainless steel and EN 1999-1-1, 6.1.3, for aluminium: γ_M0, γ_M1; both from memory. */
const leastOfFamily: Partial<Record<Material['family'], number>> = { 'stainless steel': 1.1, aluminium: 1.1 };

/**
 * Partial factor on yielding or stability of a part: that of the basis, which is one of carbon steel, and for a part of
 * stainless steel or aluminium no less than 1.1. A basis whose factor is larger keeps it.
 */
export const partialFactor = (
  name: 'gamma_M0' | 'gamma_M1',
  meaning: string,
  materials: (model: Model, place: string) => readonly Pick<Material, 'family'>[],
): Input => {
  const ofBasis = basisFactor(name, meaning, 'partial factors');
  return {
    ...ofBasis,
    from: 'document: basis; stainless steel and aluminium no less than 1.1 (EN 1993-1-4, 5.1, and EN 1999-1-1, Table 6.1, both from memory)',
    read: (model, place, situation) => {
      const value = ofBasis.read(model, place, situation);
      return typeof value === 'number' ? atLeast(value, materials(model, place)) : value;
    },
  };
};

const atLeast = (value: number, materials: readonly Pick<Material, 'family'>[]): number =>
  materials.reduce((most, { family }) => Math.max(most, leastOfFamily[family] ?? most), value);
