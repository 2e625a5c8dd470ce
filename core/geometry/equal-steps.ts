/** Neighbouring distances between positions in rising order, equal ones (to 1 µm) taken together: 0, 65, 130, 160 gives 2 × 65 and 1 × 30. */
export function equalSteps(positions: readonly number[]): { from: number; to: number; count: number }[] {
  const runs: { from: number; to: number; count: number }[] = [];
  positions.slice(1).forEach((to, i) => {
    const from = positions[i]!;
    const last = runs.at(-1);
    if (last && Math.abs((last.to - last.from) / last.count - (to - from)) < 1e-6) {
      last.to = to;
      last.count++;
    } else runs.push({ from, to, count: 1 });
  });
  return runs;
}
