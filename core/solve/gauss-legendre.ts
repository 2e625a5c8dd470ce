const { PI: π, cos } = Math;

/** The n points and weights on [-1, 1] that integrate polynomials up to degree 2n - 1 exactly.
 *  Roots of P_n by Newton's method from cos(π (i - 1/4) / (n + 1/2)). Error: round-off.
 *  Source: Abramowitz & Stegun, Handbook of Mathematical Functions, 25.4.29 and 22.16.6. */
export function gaussLegendre(n: number): { readonly x: Float64Array; readonly weight: Float64Array } {
  const x = new Float64Array(n);
  const weight = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    let root = -cos((π * (i + 0.75)) / (n + 0.5));
    // The start is good to 1/n²; each step squares the error, so six are more than enough at any n.
    for (let step = 0; step < 6; step++) {
      let [before, now] = [1, root];
      for (let k = 2; k <= n; k++) [before, now] = [now, ((2 * k - 1) * root * now - (k - 1) * before) / k];
      const slope = (n * (root * now - before)) / (root ** 2 - 1);
      weight[i] = 2 / ((1 - root ** 2) * slope ** 2);
      root -= now / slope;
    }
    x[i] = root;
  }
  return { x, weight };
}
