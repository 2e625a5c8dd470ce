import { refusal } from '../refusal.ts';
import { add, divide, magnitude, meanProduct, minus, rate, times } from './complex.ts';
import { equivalentDamping } from './equivalent-damping.ts';
import type { Complex, HarmonicForcing, HeaveSystem } from './heave-system.ts';

/** Steady answer to a harmonic forcing. Complex amplitudes of displacement, m. */
export interface HarmonicResponse {
  readonly float: Complex;
  readonly plate: Complex;
  /** Amplitude of the line's varying pull, N. */
  readonly pull: number;
  /** The pull at rest does not cover it: a line would go slack. */
  readonly slack: boolean;
  /** Mean powers, W: what comes in by forces and by the moving water, and where it goes. They balance. */
  readonly power: { readonly in: number; readonly float: number; readonly link: number; readonly plate: number };
  /** Linear damping that stands for the drag, N s/m. */
  readonly equivalent: number;
}

/**
 * Harmonic answer with quadratic drag replaced by the linear damping of the same work a cycle,
 *   b_e = (8 / 3π) D V,  V amplitude of the plate's speed through the water.
 * Found by halving a bracket (`equivalentDamping`).
 * Refuses a motion without bound (no damping at a natural period).
 * Source: equivalent linearisation, Kryloff & Bogoliuboff (1943) (from memory, derived anew).
 */
export function harmonicResponse(system: HeaveSystem, omega: number, forcing: HarmonicForcing): HarmonicResponse {
  const factor = (8 / (3 * Math.PI)) * system.plate.drag;
  const equivalent = equivalentDamping((b) => factor * linearAnswer(system, omega, forcing, b).through, factor, 1e-15);
  if (equivalent === undefined) throw unbounded(omega);
  const { float, plate, link, water } = linearAnswer(system, omega, forcing, equivalent);
  if (![...float, ...plate].every(Number.isFinite)) throw unbounded(omega);
  const { plate: own, float: floatBody, link: joint } = system;
  const [v1, v2] = [rate(float, omega), rate(plate, omega)];
  const relative = minus(v1, v2);
  return {
    float,
    plate,
    pull: magnitude(link),
    slack: !joint.pushes && magnitude(link) > own.weight,
    power: {
      in: meanProduct(forcing.float, v1) + meanProduct(add(forcing.plate, water), v2),
      float: floatBody ? floatBody.damping * meanProduct(v1, v1) : 0,
      link: joint.damping * meanProduct(relative, relative),
      plate: (own.damping + equivalent) * meanProduct(v2, v2),
    },
    equivalent,
  };
}

/** What of the plate's own impedance, the link and the forces there is at one frequency; drag as the damping b. */
export function linearAnswer(
  { float: floatBody, plate: own, link }: HeaveSystem,
  omega: number,
  { float: F1, plate: F2, water: w }: HarmonicForcing,
  b: number,
): { float: Complex; plate: Complex; link: Complex; water: Complex; through: number } {
  const damping = own.damping + b;
  const K: Complex = [link.stiffness, omega * link.damping];
  // what the moving water pushes with: drag on its speed, and its acceleration on what the plate carries
  const water = add(times([damping, 0], w), times([0, omega * own.carried], w));
  const P2 = add(F2, water);
  const Z2 = add([-(omega ** 2) * own.mass, omega * damping], K);
  let [float, plate]: [Complex, Complex] = [[0, 0], divide(P2, Z2)];
  if (floatBody) {
    const Z1 = add([floatBody.stiffness - omega ** 2 * floatBody.mass, omega * floatBody.damping], K);
    const determinant = minus(times(Z1, Z2), times(K, K));
    float = divide(add(times(F1, Z2), times(K, P2)), determinant);
    plate = divide(add(times(P2, Z1), times(K, F1)), determinant);
  }
  return {
    float,
    plate,
    link: times(K, minus(float, plate)),
    water,
    through: magnitude(minus(rate(plate, omega), w)),
  };
}

const unbounded = (omega: number) =>
  refusal({
    what: `At a period of ${((2 * Math.PI) / omega).toFixed(2)} s nothing damps the motion: it grows without bound`,
    where: { field: 'motion' },
    mend: 'Give the float or the power take-off its damping, or the plate its drag.',
  });
