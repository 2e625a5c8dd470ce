/** ‖A‖₁ of a symmetric operator from a few products with it: the largest over the vectors tried, so a lower bound, seldom
 *  less than a third of it. apply must not change what it is given.
 *  Source: Hager 1984, SIAM J. Sci. Stat. Comput. 5, 311; Higham 1988, ACM Trans. Math. Softw. 14, 381 (with his last,
 *  alternating vector against cancellation); both from memory. */
export function oneNorm(size: number, apply: (x: Float64Array) => Float64Array): number {
  if (size === 0) return 0;
  let x: Float64Array = new Float64Array(size).fill(1 / size);
  let norm = 0;
  let last = -1;
  for (let step = 0; step < 5; step++) {
    const y = apply(x);
    const sum = y.reduce((total, value) => total + Math.abs(value), 0);
    if (step > 0 && sum <= norm) break;
    norm = sum;
    const z = apply(y.map((value) => (value < 0 ? -1 : 1)));
    let most = 0;
    for (let i = 1; i < size; i++) if (Math.abs(z[i]!) > Math.abs(z[most]!)) most = i;
    let along = 0;
    for (let i = 0; i < size; i++) along += z[i]! * x[i]!;
    if (most === last || Math.abs(z[most]!) <= along) break;
    last = most;
    x = new Float64Array(size);
    x[most] = 1;
  }
  const alternating = Float64Array.from(
    { length: size },
    (_, i) => (i % 2 === 0 ? 1 : -1) * (1 + i / Math.max(size - 1, 1)),
  );
  const y = apply(alternating);
  return Math.max(norm, (2 * y.reduce((total, value) => total + Math.abs(value), 0)) / (3 * size));
}
