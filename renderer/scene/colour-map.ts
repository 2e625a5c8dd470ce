/**
 * Colours of growing lightness, even steps to the eye, also for those who tell red from green badly. sRGB, 0 to 1.
 * Source: the map “viridis” of S. van der Walt and N. Smith (2015), public domain (CC0), every fifteenth of its 256 values.
 */
const viridis: readonly (readonly [number, number, number])[] = [
  [0.267004, 0.004874, 0.329415],
  [0.281924, 0.089666, 0.412415],
  [0.280255, 0.165693, 0.476498],
  [0.263663, 0.237631, 0.518762],
  [0.237441, 0.305202, 0.541921],
  [0.208623, 0.367752, 0.552675],
  [0.182256, 0.426184, 0.55712],
  [0.159194, 0.482237, 0.558073],
  [0.13777, 0.537492, 0.554906],
  [0.121148, 0.592739, 0.544641],
  [0.128087, 0.647749, 0.523491],
  [0.180653, 0.701402, 0.488189],
  [0.274149, 0.751988, 0.436601],
  [0.395174, 0.797475, 0.367757],
  [0.535621, 0.835785, 0.281908],
  [0.688944, 0.865448, 0.182725],
  [0.845561, 0.887322, 0.099702],
  [0.993248, 0.906157, 0.143936],
];

export type Colour = readonly [red: number, green: number, blue: number];

/**
 * Colour of a part of the range, 0 to 1, between the values of the table. On light paper the map is turned round, so
 * that a high value always stands out most from the ground.
 */
export function colourAt(part: number, onDark: boolean): Colour {
  const at = Math.min(1, Math.max(0, onDark ? part : 1 - part)) * (viridis.length - 1);
  const i = Math.min(viridis.length - 2, Math.floor(at));
  const [a, b] = [viridis[i]!, viridis[i + 1]!];
  const s = at - i;
  return [a[0] + s * (b[0] - a[0]), a[1] + s * (b[1] - a[1]), a[2] + s * (b[2] - a[2])];
}

/** As CSS writes it. */
export const cssColour = ([r, g, b]: Colour): string =>
  `rgb(${Math.round(255 * r)} ${Math.round(255 * g)} ${Math.round(255 * b)})`;
