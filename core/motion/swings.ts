/** Largest rise or fall from one side of zero to the other, and the mean time between rises through it, s. */
export function swings(z: Float64Array, dt: number): { readonly largest: number; readonly meanPeriod: number | null } {
  let [largest, before, extreme, side] = [0, 0, 0, 0];
  let [firstRise, lastRise, rises] = [0, 0, 0];
  z.forEach((value, i) => {
    const now = value >= 0 ? 1 : -1;
    if (now === side) {
      if (Math.abs(value) > Math.abs(extreme)) extreme = value;
      return;
    }
    if (side !== 0 && before !== 0) largest = Math.max(largest, Math.abs(extreme - before));
    if (side < 0) {
      if (rises === 0) firstRise = i;
      lastRise = i;
      rises++;
    }
    before = side === 0 ? 0 : extreme;
    [extreme, side] = [value, now];
  });
  return { largest, meanPeriod: rises > 1 ? ((lastRise - firstRise) * dt) / (rises - 1) : null };
}
