import type { FactoredFronts } from './factor-fronts.ts';

/** x ← L⁻¹ x */
export function solveLower({ elimination, kernels, fronts, rows, x, t }: FactoredFronts): void {
  const { count, first } = elimination;
  for (let s = 0; s < count; s++) kernels.lower(fronts[s]!, x, first[s]!, rows[s]!, t);
}

/** x ← L⁻ᵀ x */
export function solveUpper({ elimination, kernels, fronts, rows, x, t }: FactoredFronts): void {
  const { count, first } = elimination;
  for (let s = count - 1; s >= 0; s--) kernels.upper(fronts[s]!, x, first[s]!, rows[s]!, t);
}
