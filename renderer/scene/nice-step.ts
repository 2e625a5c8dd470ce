/** The smallest of 1, 2 or 5 times a power of ten that is not below a length. Refuses nothing: the length is positive. */
export function niceStep(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  return power * ([1, 2, 5, 10].find((m) => m * power >= least * (1 - 1e-9)) ?? 10);
}
