/** How unlike two rows are: sum of the magnitudes of the logarithms of the ratios; what one of the two has not does not count. */
export const unlikeness = (
  pairs: readonly (readonly [number | null | undefined, number | null | undefined])[],
): number => pairs.reduce((sum, [x, y]) => (x && y ? sum + Math.abs(Math.log(x / y)) : sum), 0);
