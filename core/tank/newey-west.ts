/**
 * Covariance of a sum of n correlated contributions ψ_i (each k numbers), with Bartlett's weights up to the lag L:
 *   V = Γ_0 + Σ_l (1 − l/(L+1)) (Γ_l + Γ_lᵀ),   Γ_l = Σ_i ψ_i ψ_{i−l}ᵀ
 * psi: k columns of n numbers. Gives k × k by rows, positive semidefinite.
 * Source: Newey & West, Econometrica 55 (1987) 703.
 */
export function neweyWest(psi: readonly Float64Array[], lag: number): Float64Array {
  const k = psi.length;
  const n = psi[0]!.length;
  const V = new Float64Array(k * k);
  for (let a = 0; a < k; a++)
    for (let b = 0; b < k; b++) {
      const [x, y] = [psi[a]!, psi[b]!];
      let sum = 0;
      for (let l = -Math.min(lag, n - 1); l <= Math.min(lag, n - 1); l++) {
        let gamma = 0;
        for (let i = Math.max(0, l); i < Math.min(n, n + l); i++) gamma += x[i]! * y[i - l]!;
        sum += (1 - Math.abs(l) / (lag + 1)) * gamma;
      }
      V[a * k + b] = sum;
    }
  return V;
}

/**
 * Critical value of a two-sided 95 % interval whose variance is Bartlett's with the part b = (L+1)/n of all lags: the
 * normal 1.96 at b = 0, more as the variance itself becomes uncertain.
 *   cv(b) = 1.9600 + 2.9694 b + 0.4160 b² − 0.5324 b³
 * Source: Kiefer & Vogelsang, Econometric Theory 21 (2005) 1130, Table 1 (from memory; held by simulation in the tests).
 */
export const criticalValue95 = (b: number): number => 1.96 + 2.9694 * b + 0.416 * b ** 2 - 0.5324 * b ** 3;
