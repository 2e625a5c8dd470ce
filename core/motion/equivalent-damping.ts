/**
 * Linear damping b that stands for a drag, N s/m: b = of(b), with `of` falling, since more damping never moves a body
 * faster through the water that it is damped by. Bracketed from zero upwards, then halved to `within` of itself.
 * Undefined where no bracket is found: the motion grows without bound.
 */
export function equivalentDamping(of: (b: number) => number, start: number, within: number): number | undefined {
  if (start === 0) return 0;
  let [low, high] = [0, start];
  for (let n = 0; of(high) > high; n++) {
    if (n === mostTurns) return undefined;
    [low, high] = [high, 4 * high];
  }
  for (let n = 0; n < mostTurns && high - low > within * high; n++) {
    const middle = (low + high) / 2;
    if (of(middle) > middle) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Each turn gains two bits of bracket or one of the answer: far more than a number has. */
const mostTurns = 200;
