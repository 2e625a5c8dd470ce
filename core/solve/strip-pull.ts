import { requirePositive } from '../refusal.ts';
import { gaussLegendre } from './gauss-legendre.ts';
import { plateRigidity } from './uniform-plate.ts';

const { abs, cosh, sinh, tanh } = Math;

/** A strip across a long plate: span a and thickness t in m, E and q in Pa. */
export interface Strip {
  readonly a: number;
  readonly t: number;
  readonly E: number;
  readonly nu: number;
  readonly q: number;
}

/** Per metre along the plate, in SI. Moments are positive where the far face is in tension. */
export interface StripAnswer {
  /** In-plane pull on the edges, N/m, and its stress pull / t. */
  readonly pull: number;
  readonly stressMembrane: number;
  readonly momentCentre: number;
  /** 0 for hinged edges. */
  readonly momentEdge: number;
  readonly momentLargest: number;
  readonly deflection: number;
  /** Membrane plus bending stress at the worst section, Pa. */
  readonly stressLargest: number;
  /** u² = pull a² / (4 D). */
  readonly u: number;
}

/** A long plate bent to a cylinder by uniform pressure between long edges that cannot move together (hinged or held):
 *    D w'''' - S w'' = q,   S (1 - ν²) a / (E t) = ½ ∫ w'² dx,   u² = S a² / (4 D)
 *  solved for u by bisection; w' = (q a³ / 8D) g(ξ, u) with ξ = 2x/a from the middle, and
 *    hinged: g = (ξ - sinh uξ / (u cosh u)) / u²,   held: g = (ξ - sinh uξ / sinh u) / u²
 *  Refuses a, t or E that is not positive. Error: 1e-10 in u; exact within the theory (slopes small against 1).
 *  The pull needs edges that truly cannot slide: bolts in clearance holes slip first.
 *  Source: T&WK, Theory of Plates and Shells, 2nd ed., arts. 2 and 3. */
export function stripPull(strip: Strip, edges: 'hinged' | 'held'): StripAnswer {
  const { a, t, E, nu, q } = strip;
  requirePositive({ a, t, E });
  const D = plateRigidity(strip);
  const form = edges === 'hinged' ? hingedForm : heldForm;
  // 4 u² D / a² · (1 - ν²) a / (E t) = ½ (a/2) (q a³ / 8D)² ∫ g² dξ, as u² / ∫ g² = load
  const load = (((a / 4) * ((q * a ** 3) / (8 * D)) ** 2) / ((4 * D) / a ** 2)) * ((E * t) / ((1 - nu ** 2) * a));
  const u = root(load, form.square);
  const pull = (4 * u ** 2 * D) / a ** 2;
  const momentCentre = q * a ** 2 * form.momentCentre(u);
  const momentEdge = q * a ** 2 * form.momentEdge(u);
  const momentLargest = Math.max(abs(momentCentre), abs(momentEdge));
  return {
    pull,
    stressMembrane: pull / t,
    momentCentre,
    momentEdge,
    momentLargest,
    deflection: ((q * a ** 4) / D) * form.deflection(u),
    stressLargest: pull / t + (6 * momentLargest) / t ** 2,
    u,
  };
}

/** u ≥ 0 with u² / square(u) = load. The left side grows with u, without bound. */
function root(load: number, square: (u: number) => number): number {
  if (load === 0) return 0;
  let [low, high] = [0, 1];
  while (high ** 2 / square(high) < load) [low, high] = [high, 2 * high];
  for (let step = 0; step < 200 && high - low > 1e-13 * high; step++) {
    const middle = (low + high) / 2;
    if (middle ** 2 / square(middle) < load) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** What follows from g: ∫ g² over [-1, 1], w / (q a⁴ / D) at the middle, and moments / (q a²). Closed forms where u ≥ 1;
 *  below that they are small differences of large numbers, and power series of g in u² stand in for them. */
interface StripForm {
  readonly square: (u: number) => number;
  readonly deflection: (u: number) => number;
  readonly momentCentre: (u: number) => number;
  readonly momentEdge: (u: number) => number;
}

const gauss = gaussLegendre(16);
/** ∫ (g / over)^power over the places of the rows. */
function integral(rows: readonly Float64Array[], u: number, over: number, power: 1 | 2): number {
  const p = powers(u);
  let sum = 0;
  for (let i = 0; i < rows.length; i++) {
    const g = series(p, rows[i]!) / over;
    sum += gauss.weight[i]! * (power === 2 ? g * g : g);
  }
  return sum;
}
const sech2 = (u: number): number => (u > 300 ? 0 : 1 / cosh(u) ** 2);
const sech = (u: number): number => (u > 300 ? 0 : 1 / cosh(u));
const csch = (u: number): number => (u > 300 ? 0 : 1 / sinh(u));

/** Terms of the series in u²: more than enough for u < 1. */
const terms = 12;

/** c_n of n = 1 … 12, from n and 1/(2n)!. */
function coefficients(c: (n: number, inverse: number) => number): Float64Array {
  let inverse = 1;
  return Float64Array.from({ length: terms }, (_, i) => {
    const n = i + 1;
    inverse /= (2 * n - 1) * (2 * n);
    return c(n, inverse);
  });
}

/** g at the places of Gauss on [-1, 1], or from the middle outward on [0, 1]: one row of coefficients for each place. */
const slopeRows = (
  c: (n: number, inverse: number, ξ: number) => number,
  place: (ξ: number) => number,
): readonly Float64Array[] => Array.from(gauss.x, (ξ) => coefficients((n, inverse) => c(n, inverse, place(ξ))));

/** u^(2n-2), n = 1 … 12. */
const powers = (u: number): Float64Array => Float64Array.from({ length: terms }, (_, i) => u ** (2 * i));

/** Σ u^(2n-2) c_n */
function series(powers: Float64Array, c: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < terms; i++) sum += powers[i]! * c[i]!;
  return sum;
}

const hingedSlope = (n: number, inverse: number, ξ: number): number => ξ * inverse * (1 - ξ ** (2 * n) / (2 * n + 1));
const heldSlope = (n: number, inverse: number, ξ: number): number => (ξ * inverse * (1 - ξ ** (2 * n))) / (2 * n + 1);
const across = (ξ: number): number => ξ;
const outward = (ξ: number): number => (1 + ξ) / 2;
const [hingedAcross, hingedOutward] = [slopeRows(hingedSlope, across), slopeRows(hingedSlope, outward)];
const [heldAcross, heldOutward] = [slopeRows(heldSlope, across), slopeRows(heldSlope, outward)];
const hingedCentre = coefficients((_, inverse) => inverse);
const heldCentre = coefficients((n, inverse) => inverse / (2 * n + 1));
const heldEdge = coefficients((n, inverse) => (2 * n * inverse) / (2 * n + 1));

const hingedForm: StripForm = {
  square: (u) =>
    u < 1
      ? integral(hingedAcross, u, cosh(u), 2)
      : (2 / 3 - (4 / u ** 2) * (1 - tanh(u) / u) + (tanh(u) / u - sech2(u)) / u ** 2) / u ** 4,
  deflection: (u) => (u < 1 ? integral(hingedOutward, u, cosh(u), 1) / 32 : (sech(u) - 1 + u ** 2 / 2) / (16 * u ** 4)),
  momentCentre: (u) => (u < 1 ? series(powers(u), hingedCentre) / (4 * cosh(u)) : (1 - sech(u)) / (4 * u ** 2)),
  momentEdge: () => 0,
};

const heldForm: StripForm = {
  square: (u) =>
    u < 1
      ? integral(heldAcross, u, sinhOver(u), 2)
      : (2 / 3 - 4 * (1 / (u * tanh(u)) - 1 / u ** 2) + 1 / (u * tanh(u)) - csch(u) ** 2) / u ** 4,
  deflection: (u) =>
    u < 1 ? integral(heldOutward, u, sinhOver(u), 1) / 32 : (1 / 2 - tanh(u / 2) / u) / (16 * u ** 2),
  momentCentre: (u) => (u < 1 ? series(powers(u), heldCentre) / (4 * sinhOver(u)) : (1 - u * csch(u)) / (4 * u ** 2)),
  momentEdge: (u) => (u < 1 ? -series(powers(u), heldEdge) / (4 * sinhOver(u)) : (1 - u / tanh(u)) / (4 * u ** 2)),
};

const sinhOver = (u: number): number => (u === 0 ? 1 : sinh(u) / u);
