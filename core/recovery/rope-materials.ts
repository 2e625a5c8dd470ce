import type { RopeFields } from '../document/recovery-field.ts';

/** What follows from a rope's material where its maker says nothing. */
export interface RopeMaterial {
  /** kg/m³, of the fibre or wire itself. */
  readonly density: number;
  /** Strength left when wet. */
  readonly wet: number;
  /** Part longer when it breaks. */
  readonly stretchAtBreak: number;
  readonly source: string;
}

/**
 * Densities: polypropylene 910, HMPE 970, polyester 1380, polyamide 1140, steel 7850 kg/m³, from memory. Wet polyamide keeps
 * about 0.85 of its strength (common practice, 10 to 20 % lost), the others all of it. Stretch at break: from memory, a maker's
 * curve goes first.
 */
export const ropeMaterial: Readonly<Record<RopeFields['material'], RopeMaterial>> = {
  polypropylene: { density: 910, wet: 1, stretchAtBreak: 0.22, source: 'from memory' },
  HMPE: { density: 970, wet: 1, stretchAtBreak: 0.035, source: 'from memory' },
  polyester: { density: 1380, wet: 1, stretchAtBreak: 0.15, source: 'from memory' },
  polyamide: { density: 1140, wet: 0.85, stretchAtBreak: 0.35, source: 'from memory; wet strength common practice' },
  'steel wire': { density: 7850, wet: 1, stretchAtBreak: 0.02, source: 'from memory' },
};
