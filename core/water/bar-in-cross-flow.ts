import { requirePositive } from '../refusal.ts';
import { monotoneCubic } from '../solve/monotone-cubic.ts';

/** A bar by its size across and along the motion, m. */
export interface BarInFlow {
  readonly across: number;
  readonly along: number;
  readonly round?: boolean;
}

/**
 * Added mass of a long bar square to its axis, kg/m: C ρ π (across / 2)², C by along / across from 0 to 10; deeper bars (plates
 * that move edgewise) have the last row's, which is then the least. Round bars: 1.
 * Source: DNV-RP-C205, app. D (two-dimensional bodies), from memory; 1.513 for the square by conformal mapping.
 */
export function barInCrossFlow({ across, along, round = false }: BarInFlow, density: number): number {
  requirePositive({ across, along, density });
  const C = round ? 1 : coefficient(Math.min(deepest, along / across));
  return C * density * Math.PI * (across / 2) ** 2;
}

const deepest = 10;
const coefficient = monotoneCubic([0, 0.1, 0.2, 0.5, 1, 2, 5, deepest], [1, 1.14, 1.21, 1.36, 1.51, 1.7, 1.98, 2.23]);
