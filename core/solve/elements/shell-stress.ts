/** Stress on one side of a plate, Pa: components in the panel's axes, von Mises, the principal stresses and the angle of
 *  the larger from x, rad. */
export interface ShellStress {
  readonly x: number;
  readonly y: number;
  readonly xy: number;
  readonly vonMises: number;
  readonly largest: number;
  readonly least: number;
  readonly angle: number;
}

/** Stress at the top (side of +z), the middle or the bottom of a plate from its forces per width at one place
 *  (Nx Ny Nxy in N/m, Mx My Mxy in N): σ = N/t ± 6 M/t², plane stress. */
export function shellStress(
  forces: ArrayLike<number>,
  thickness: number,
  side: 'top' | 'middle' | 'bottom',
): ShellStress {
  const lever = { top: 6, middle: 0, bottom: -6 }[side] / thickness ** 2;
  const [x, y, xy] = [0, 1, 2].map((k) => forces[k]! / thickness + lever * forces[k + 3]!) as [number, number, number];
  const [centre, radius] = [(x + y) / 2, Math.hypot((x - y) / 2, xy)];
  return {
    x,
    y,
    xy,
    vonMises: Math.sqrt(x * x - x * y + y * y + 3 * xy * xy),
    largest: centre + radius,
    least: centre - radius,
    angle: Math.atan2(2 * xy, x - y) / 2,
  };
}
