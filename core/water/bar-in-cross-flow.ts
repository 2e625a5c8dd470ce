import { requirePositive } from '../refusal.ts';

/**
 * Added mass of a bar square to its axis, kg/m: C_A ρ π a², a half its breadth across the motion, b half its depth along it.
 * Rectangles: C_A by a / b, between the rows linear in its logarithm; thinner than the last row (edgewise plates) the last row's,
 * which is then the least. Round bars: 1.
 * Source: DNV-RP-C205, appendix D, from memory; the square's exact value is 1.5132 (conformal map).
 */
export function barInCrossFlow(
  { across, along, round = false }: { readonly across: number; readonly along: number; readonly round?: boolean },
  density: number,
): number {
  requirePositive({ across, along, density });
  const rows = [[10, 1.14], [5, 1.21], [2, 1.36], [1, 1.51], [0.5, 1.7], [0.2, 1.98], [0.1, 2.23]] as const; // prettier-ignore
  const ratio = across / along;
  const between = (k: number): number => {
    const [[r0, c0], [r1, c1]] = [rows[k]!, rows[k + 1]!];
    return c0 + (Math.log(ratio / r0) / Math.log(r1 / r0)) * (c1 - c0);
  };
  const k = rows.findIndex(([r]) => r <= ratio) - 1;
  // towards a flat plate across the motion: 1
  const C = round ? 1 : k === -2 ? 2.23 : k === -1 ? 1 + 1.4 / ratio : between(k);
  return C * density * Math.PI * (across / 2) ** 2;
}
