import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { countedCycles } from '../fatigue/counted-cycles.ts';
import { hingedPlate } from '../solve/hinged-plate.ts';
import { heldPlate } from '../solve/held-plate.ts';

/** A value that a numeric method must give again. */
export interface MethodValue {
  readonly id: string;
  readonly source: string;
  readonly expected: number;
  readonly tolerance: number;
  readonly got: () => number;
}

/** D = q = a = 1, so that answers are coefficients. */
const unit = (ratio: number) => ({ a: 1, b: ratio, t: 1, E: 12 * (1 - 0.3 ** 2), nu: 0.3, q: 1 });
const plates = 'Timoshenko & Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., ';
const cycles = (power: number): number =>
  countedCycles(Float64Array.of(-2, 1, -3, 5, -1, 3, -4, 4, -2)).reduce((sum, { range, count }) => sum + count * range ** power, 0); // prettier-ignore

const hinged = (
  [
    [1, 0.0479, 0.00406],
    [1.2, 0.0627, 0.00565],
    [1.6, 0.0862, 0.0083],
    [2, 0.1017, 0.01013],
  ] as const
).flatMap(([ratio, moment, deflection]): MethodValue[] => [
  { id: `plate hinged on four edges, b/a ${ratio}: moment M / (q a²)`, source: `${plates}Table 8 (from memory)`, expected: moment, tolerance: 0.5e-4, got: () => hingedPlate(unit(ratio)).momentXCentre }, // prettier-ignore
  { id: `plate hinged on four edges, b/a ${ratio}: deflection w D / (q a⁴)`, source: `${plates}Table 8`, expected: deflection, tolerance: ratio === 1.6 ? 5e-5 : 5e-6, got: () => hingedPlate(unit(ratio)).deflectionCentre }, // prettier-ignore
]);

export const methodValues: readonly MethodValue[] = [
  ...hinged,
  { id: 'plate held on four edges, square: moment at the edge M / (q a²)', source: `${plates}Table 35 (from memory)`, expected: -0.0513, tolerance: 0.5e-4, got: () => heldPlate(unit(1)).momentEdgeX }, // prettier-ignore
  { id: 'plate held on four edges, square: deflection w D / (q a⁴)', source: `${plates}Table 35 (from memory)`, expected: 0.00126, tolerance: 0.6e-5, got: () => heldPlate(unit(1)).deflectionCentre }, // prettier-ignore
  { id: 'rainflow, Σ n r³ of the example series', source: 'ASTM E1049-85, 5.4.4 and Fig. 6 (from memory), summed by hand', expected: 1094, tolerance: 0, got: () => cycles(3) }, // prettier-ignore
  { id: 'rainflow, Σ n r⁵ of the example series', source: 'ASTM E1049-85, 5.4.4 and Fig. 6 (from memory), summed by hand', expected: 67838, tolerance: 0, got: () => cycles(5) }, // prettier-ignore
  { id: 'SHA-256 of “abc”, its first 32 bits', source: 'FIPS 180-4, example (from memory)', expected: 0xba7816bf, tolerance: 0, got: () => Number.parseInt(bytesToHex(sha256(utf8ToBytes('abc'))).slice(0, 8), 16) }, // prettier-ignore
];
