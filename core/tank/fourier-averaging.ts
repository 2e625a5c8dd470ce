/** Added mass in all (the body's own mass included, kg) and drag coefficient from one frequency's force and motion. */
export interface FourierAverages {
  readonly inertia: number;
  readonly dragCoefficient: number;
}

/**
 * From travel z = a sin θ and the force that drives it, parted over whole cycles in  F_c cos θ + F_s sin θ:
 *   m + A = −F_s / (a ω²),   C_d = 3π F_c / (4 ρ S (a ω)²)
 * F_c, F_s in N, a in m, omega in rad/s. Holds for one harmonic and quadratic drag.
 * Source: Keulegan & Carpenter, J. Res. NBS 60 (1958) 423; Sarpkaya & Isaacson, Mechanics of Wave Forces (1981) (from
 * memory, derived anew).
 */
export function fourierAveraging(
  F_c: number,
  F_s: number,
  a: number,
  omega: number,
  rho: number,
  S: number,
): FourierAverages {
  return { inertia: -F_s / (a * omega ** 2), dragCoefficient: (3 * Math.PI * F_c) / (4 * rho * S * (a * omega) ** 2) };
}

/**
 * What an error of phase d (rad, small) does to the drag coefficient of a test at one frequency:
 *   ΔC_d / C_d = (3π/8) (F_I / F_D) d,   F_I = (m + A) a ω²,  F_D = ½ ρ C_d S (a ω)²
 * Derived from `fourierAveraging`: a turned force puts F_I sin d into F_c.
 */
export const dragByPhase = (inertiaForce: number, dragForce: number, phase: number): number =>
  ((3 * Math.PI) / 8) * (inertiaForce / dragForce) * phase;
