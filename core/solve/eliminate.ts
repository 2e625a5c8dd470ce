/** Gauss elimination with the largest pivot of each column; M is n × (n + 1) and is used up. Small dense systems only. */
export function eliminate(M: readonly Float64Array[]): Float64Array {
  const n = M.length;
  const row = [...M];
  for (let k = 0; k < n; k++) {
    let best = k;
    for (let i = k + 1; i < n; i++) if (Math.abs(row[i]![k]!) > Math.abs(row[best]![k]!)) best = i;
    [row[k], row[best]] = [row[best]!, row[k]!];
    for (let i = k + 1; i < n; i++) {
      const factor = row[i]![k]! / row[k]![k]!;
      if (factor !== 0) for (let j = k; j <= n; j++) row[i]![j]! -= factor * row[k]![j]!;
    }
  }
  const x = new Float64Array(n);
  for (let i = n - 1; i >= 0; i--) {
    let rest = row[i]![n]!;
    for (let j = i + 1; j < n; j++) rest -= row[i]![j]! * x[j]!;
    x[i] = rest / row[i]![i]!;
  }
  return x;
}
