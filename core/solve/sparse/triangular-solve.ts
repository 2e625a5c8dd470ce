import type { FactoredFronts } from './factor-fronts.ts';

/** x ← L⁻¹ x, for the first `count` fronts. */
export function solveLower({ elimination, kernels, fronts, rows, x, t }: FactoredFronts, count = fronts.length): void {
  for (let s = 0; s < count; s++) kernels.lower(fronts[s]!, x, elimination.first[s]!, rows[s]!, t);
}

/** x ← L⁻ᵀ x, for the first `count` fronts. */
export function solveUpper({ elimination, kernels, fronts, rows, x, t }: FactoredFronts, count = fronts.length): void {
  for (let s = count - 1; s >= 0; s--) kernels.upper(fronts[s]!, x, elimination.first[s]!, rows[s]!, t);
}
