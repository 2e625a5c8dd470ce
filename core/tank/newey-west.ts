/**
 * Covariance of a sum of n correlated contributions ψ_i (each k numbers), with Bartlett's weights up to the lag L:
 *   V = Γ_0 + Σ_l (1 − l/(L+1)) (Γ_l + Γ_lᵀ),   Γ_l = Σ_i ψ_i ψ_{i−l}ᵀ
 * found as what it is equal to, the mean square of all sums of L+1 neighbours (those over either end too):
 *   V = Σ_s B_s B_sᵀ / (L+1),   B_s = ψ_{s−L} + … + ψ_s
 * so that its cost does not grow with the lag. psi: k columns of n numbers. Gives k × k by rows, positive semidefinite.
 * Source: Newey & West, Econometrica 55 (1987) 703.
 */
export function neweyWest(psi: readonly Float64Array[], lag: number): Float64Array {
  const k = psi.length;
  const n = psi[0]!.length;
  const V = new Float64Array(k * k);
  const running = psi.map(runningSums);
  const B = new Float64Array(k);
  for (let s = 0; s < n + lag; s++) {
    const [to, from] = [Math.min(n, s + 1), Math.max(0, s - lag)];
    for (let a = 0; a < k; a++) B[a] = running[a]![to]! - running[a]![from]!;
    for (let a = 0; a < k; a++) for (let b = a; b < k; b++) V[a * k + b]! += B[a]! * B[b]!;
  }
  return V.map((_, i) => V[Math.min(i % k, (i / k) | 0) * k + Math.max(i % k, (i / k) | 0)]! / (lag + 1));
}

/** Sums of the first 0, 1, … n of n numbers. */
function runningSums(values: Float64Array): Float64Array {
  const sums = new Float64Array(values.length + 1);
  for (let i = 0; i < values.length; i++) sums[i + 1] = sums[i]! + values[i]!;
  return sums;
}

/**
 * Critical value of a two-sided 95 % interval whose variance is Bartlett's with the part b = (L+1)/n of all lags: the
 * normal 1.96 at b = 0, more as the variance itself becomes uncertain.
 *   cv(b) = 1.9600 + 2.9694 b + 0.4160 b² − 0.5324 b³
 * Source: Kiefer & Vogelsang, Econometric Theory 21 (2005) 1130, Table 1 (from memory; held by simulation in the tests).
 */
export const criticalValue95 = (b: number): number => 1.96 + 2.9694 * b + 0.416 * b ** 2 - 0.5324 * b ** 3;
