import type { FittedRun } from './fitted-run.ts';
import type { DragReference, Unknown } from './force-columns.ts';

/**
 * What each reading adds to each unknown's error, to first order: through its force e (where that is used), and through
 * its travel η, which moves the fitted motion and so the columns:
 *   ψ_i = (XᵀX)⁻¹ [ x_i e_i − XᵀD (HᵀH)⁻¹ h_i η_i ],   D_ij = ∂(Xθ)_i / ∂c_j,  H_ij = ∂z_i / ∂c_j
 * X, residual: over the readings whose force is used, run after run. Gives k columns over all readings whose travel is
 * good, run after run. The sum of ψ over readings is the error; its covariance is the result's.
 */
export function influences(
  unknowns: readonly Unknown[],
  runs: readonly FittedRun[],
  X: readonly Float64Array[],
  {
    theta,
    residual,
    inverse,
  }: { readonly theta: Float64Array; readonly residual: Float64Array; readonly inverse: Float64Array },
  { density: rho, area: S }: DragReference,
): Float64Array[] {
  const k = unknowns.length;
  const psi = unknowns.map(() => new Float64Array(runs.reduce((sum, { motion }) => sum + motion.z.length, 0)));
  const linear = unknowns.indexOf('linear damping');
  const damping = linear >= 0 ? theta[linear]! : 0;
  let [used, good] = [0, 0];
  for (const { motion, at } of runs) {
    const { v, residual: eta, inverse: HH, parameters: c } = motion;
    const [dz, dv, da] = [new Float64Array(c), new Float64Array(c), new Float64Array(c)];
    const G = new Float64Array(k * c);
    for (let p = 0; p < at.length; p++) {
      motion.motionBy(at[p]!, dz, dv, da);
      const byV = rho * S * theta[1]! * Math.abs(v[at[p]!]!) + damping;
      for (let j = 2; j < c; j++) {
        const change = theta[0]! * da[j]! + byV * dv[j]!;
        for (let r = 0; r < k; r++) G[r * c + j]! += X[r]![used + p]! * change;
      }
    }
    // (XᵀX)⁻¹ G (HᵀH)⁻¹, k × c
    const byTravel = product(inverse, product(G, HH, k, c, c), k, k, c);
    for (let i = 0; i < eta.length; i++) {
      motion.travelBy(i, dz);
      for (let r = 0; r < k; r++) {
        let own = 0;
        for (let j = 0; j < c; j++) own -= byTravel[r * c + j]! * dz[j]!;
        psi[r]![good + i] = own * eta[i]!;
      }
    }
    for (let p = 0; p < at.length; p++)
      for (let r = 0; r < k; r++) {
        let own = 0;
        for (let q = 0; q < k; q++) own += inverse[r * k + q]! * X[q]![used + p]!;
        psi[r]![good + at[p]!]! += own * residual[used + p]!;
      }
    used += at.length;
    good += eta.length;
  }
  return psi;
}

/** A (m × n) times B (n × p), by rows. */
function product(A: Float64Array, B: Float64Array, m: number, n: number, p: number): Float64Array {
  const C = new Float64Array(m * p);
  for (let i = 0; i < m; i++)
    for (let j = 0; j < p; j++) for (let q = 0; q < n; q++) C[i * p + j]! += A[i * n + q]! * B[q * p + j]!;
  return C;
}
