/** Values on meshes each of half the last one's spacing, against a target: prints a line with the observed order of the
 *  last three, log₂ of the ratio of the steps, and the value extrapolated with it; gives them back, NaN where the steps go
 *  to and fro or do not shrink, which is said. */
export function refinement(title: string, meshes: readonly number[], values: readonly number[], target: number) {
  const [a, b, c] = values.slice(-3) as [number, number, number];
  const ratio = (a - b) / (b - c);
  const order = ratio > 0 ? Math.log2(ratio) : NaN;
  const limit = ratio > 1 ? c + (c - b) / (ratio - 1) : NaN;
  const errors = values.map((value) => value / target - 1);
  const seen = Number.isNaN(order) ? 'no order seen: steps to and fro' : `order ${order.toFixed(2)}`;
  const extrapolated = Number.isNaN(limit) ? 'no limit' : `limit ${(limit / target).toFixed(4)}`;
  console.info(
    `${title}: ${meshes.map((n, k) => `${n} ${(values[k]! / target).toFixed(4)}`).join(', ')} of ${target}; ${seen}, ${extrapolated}`,
  );
  return { order, limit, errors };
}
