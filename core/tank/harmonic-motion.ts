import { summedFit } from './summed-fit.ts';

/** A travel as drift and harmonics, with what the readings leave over. Arrays of n numbers, SI. */
export interface HarmonicMotion {
  /** rad/s. */
  readonly omega: number;
  /** Amplitude of the first harmonic, m, and its parts with cos ωt and sin ωt. */
  readonly amplitude: number;
  readonly first: readonly [number, number];
  /** cos ωt and sin ωt at the readings, t from the middle of the run. */
  readonly cosine: Float64Array;
  readonly sine: Float64Array;
  readonly z: Float64Array;
  readonly v: Float64Array;
  readonly a: Float64Array;
  /** Third derivative, m/s³. */
  readonly jerk: Float64Array;
  /** Measured less fitted travel, m. */
  readonly residual: Float64Array;
  /** Slope of the drift, m/s: the sensor's, not the plate's; it is no part of v. */
  readonly drift: number;
  /** How many parameters the fit has: mean, drift, two a harmonic, the frequency. */
  readonly parameters: number;
  /** What each parameter changes in travel at reading i, into `parameters` numbers. */
  readonly travelBy: (i: number, z: Float64Array) => void;
  /** The same in travel, v and a. */
  readonly motionBy: (i: number, z: Float64Array, v: Float64Array, a: Float64Array) => void;
  /** (HᵀH)⁻¹ of the travel's sensitivities, by rows. */
  readonly inverse: Float64Array;
}

/** A turn that moves no harmonic's phase by more than this anywhere in the run, rad, is the last: what is wrong is its square. */
const settled = 1e-4;

/**
 * Fits  z(t) = c_0 + c_1 t + Σ_h a_h cos(h ω t) + b_h sin(h ω t),  h = 1 … harmonics,  to readings of travel, with the
 * frequency as one of the unknowns (Gauss-Newton from `period`), so that velocity and acceleration are derivatives of a
 * fitted function and carry no noise of differencing. `time` need not be even; t counts from the run's middle, which makes
 * the columns nearly orthogonal.
 * Source: IEEE Std 1057, four-parameter sine fit (from memory), with harmonics and drift.
 */
export function harmonicMotion(
  time: Float64Array,
  travel: Float64Array,
  period: number,
  harmonics: number,
): HarmonicMotion {
  const n = time.length;
  const middle = (time[0]! + time[n - 1]!) / 2;
  const t = time.map((value) => value - middle);
  const half = Math.max(-t[0]!, t[n - 1]!);
  const [cosine, sine] = [new Float64Array(n), new Float64Array(n)];
  const k = 2 * harmonics + 2;
  let omega = (2 * Math.PI) / period;
  const turn = (): void => {
    for (let i = 0; i < n; i++) {
      cosine[i] = Math.cos(omega * t[i]!);
      sine[i] = Math.sin(omega * t[i]!);
    }
  };
  /** Columns of the linear fit at reading i, and Σ θ ∂/∂ω of them where θ is given. */
  const columns = (i: number, x: Float64Array, theta: Float64Array | null): void => {
    const [c1, s1, own] = [cosine[i]!, sine[i]!, t[i]!];
    x[0] = 1;
    x[1] = own;
    let [c, s, byFrequency] = [c1, s1, 0];
    for (let h = 1; h <= harmonics; h++) {
      x[2 * h] = c;
      x[2 * h + 1] = s;
      if (theta) byFrequency += h * own * (theta[2 * h + 1]! * c - theta[2 * h]! * s);
      [c, s] = [c * c1 - s * s1, s * c1 + c * s1];
    }
    if (theta) x[k] = byFrequency;
  };

  turn();
  let theta = summedFit(n, k, (i, x) => (columns(i, x, null), travel[i]!)).theta;
  let inverse = new Float64Array(0);
  // each turn finds all parameters together with the change of frequency
  for (let turns = 0; turns < 30; turns++) {
    const before = theta;
    const fit = summedFit(n, k + 1, (i, x) => (columns(i, x, before), travel[i]!));
    const change = fit.theta[k]!;
    theta = fit.theta.slice(0, k);
    inverse = Float64Array.from(fit.inverse);
    omega += change;
    turn();
    if (Math.abs(change) * half * harmonics < settled) break;
  }

  const [z, v, a, jerk, residual] = Array.from({ length: 5 }, () => new Float64Array(n)) as [Float64Array, Float64Array, Float64Array, Float64Array, Float64Array]; // prettier-ignore
  for (let i = 0; i < n; i++) {
    const [c1, s1] = [cosine[i]!, sine[i]!];
    let [c, s] = [c1, s1];
    for (let h = 1; h <= harmonics; h++) {
      const w = h * omega;
      const [p, q] = [theta[2 * h]!, theta[2 * h + 1]!];
      const [here, ahead] = [p * c + q * s, q * c - p * s];
      z[i]! += here;
      v[i]! += w * ahead;
      a[i]! -= w * w * here;
      jerk[i]! -= w * w * w * ahead;
      [c, s] = [c * c1 - s * s1, s * c1 + c * s1];
    }
    residual[i] = travel[i]! - theta[0]! - theta[1]! * t[i]! - z[i]!;
  }
  return {
    omega,
    amplitude: Math.hypot(theta[2]!, theta[3]!),
    first: [theta[2]!, theta[3]!],
    ...{ cosine, sine, z, v, a, jerk, residual, inverse },
    drift: theta[1]!,
    parameters: k + 1,
    travelBy: (i, dz) => columns(i, dz, theta),
    motionBy: (i, dz, dv, da) => {
      columns(i, dz, theta);
      const own = t[i]!;
      dv.fill(0);
      da.fill(0);
      for (let h = 1; h <= harmonics; h++) {
        const w = h * omega;
        const [c, s, p, q] = [dz[2 * h]!, dz[2 * h + 1]!, theta[2 * h]!, theta[2 * h + 1]!];
        const [here, ahead] = [p * c + q * s, q * c - p * s];
        dv[2 * h] = -w * s;
        dv[2 * h + 1] = w * c;
        da[2 * h] = -w * w * c;
        da[2 * h + 1] = -w * w * s;
        // d/dω of w·ahead(wt) and of −w²·here(wt)
        dv[k]! += h * (ahead - w * own * here);
        da[k]! -= h * w * (2 * here + w * own * ahead);
      }
    },
  };
}
