/** All eigenpairs of a symmetric matrix A (n × n by rows): values from the largest down, vectors of unit length, vector k in
 *  row k. Jacobi's rotations, cyclic, until what is off the diagonal is rounding of what is on it. For n to a few hundred.
 *  Source: G. H. Golub & C. F. Van Loan, Matrix Computations, 3rd ed., alg. 8.4.3, from memory. */
export function denseEigenpairs(A: Float64Array, n: number): { values: Float64Array; vectors: Float64Array } {
  const a = A.slice();
  const V = new Float64Array(n * n);
  for (let i = 0; i < n; i++) V[i * n + i] = 1;
  const scale = Math.hypot(...a);
  for (let sweep = 0; sweep < mostSweeps; sweep++) {
    let off = 0;
    for (let i = 0; i < n; i++) for (let j = 0; j < i; j++) off = Math.max(off, Math.abs(a[i * n + j]!));
    if (off <= 1e-17 * scale) break;
    for (let p = 0; p < n; p++) for (let q = p + 1; q < n; q++) rotate(a, V, n, p, q);
  }
  const order = Array.from({ length: n }, (_, i) => i).sort((i, j) => a[j * n + j]! - a[i * n + i]! || i - j);
  const values = Float64Array.from(order, (i) => a[i * n + i]!);
  const vectors = new Float64Array(n * n);
  order.forEach((i, k) => vectors.set(V.subarray(i * n, (i + 1) * n), k * n));
  return { values, vectors };
}

/** Six sweeps are common; each one squares what is left. */
const mostSweeps = 30;

/** Turns rows and columns p and q so that a_pq goes; the rows of V turn with them. */
function rotate(a: Float64Array, V: Float64Array, n: number, p: number, q: number): void {
  const off = a[p * n + q]!;
  if (off === 0) return;
  const θ = (a[q * n + q]! - a[p * n + p]!) / (2 * off);
  const t = (θ < 0 ? -1 : 1) / (Math.abs(θ) + Math.sqrt(1 + θ * θ));
  const c = 1 / Math.sqrt(1 + t * t);
  const s = t * c;
  for (let k = 0; k < n; k++) {
    const [x, y] = [a[k * n + p]!, a[k * n + q]!];
    a[k * n + p] = c * x - s * y;
    a[k * n + q] = s * x + c * y;
  }
  for (const M of [a, V])
    for (let k = 0; k < n; k++) {
      const [x, y] = [M[p * n + k]!, M[q * n + k]!];
      M[p * n + k] = c * x - s * y;
      M[q * n + k] = s * x + c * y;
    }
  a[p * n + q] = a[q * n + p] = 0;
}
