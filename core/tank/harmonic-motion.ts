import { leastSquares } from './least-squares.ts';

/** A travel as drift and harmonics, with what the readings leave over. Arrays of n numbers, SI. */
export interface HarmonicMotion {
  /** rad/s, and its standard error if what is left over were white. */
  readonly omega: number;
  /** Amplitude of the first harmonic, m. */
  readonly amplitude: number;
  readonly z: Float64Array;
  readonly v: Float64Array;
  readonly a: Float64Array;
  /** Third derivative, m/s³. */
  readonly jerk: Float64Array;
  /** Measured less fitted travel, m. */
  readonly residual: Float64Array;
  /** Slope of the drift, m/s: the sensor's, not the plate's; it is no part of v. */
  readonly drift: number;
  /** What each parameter changes (columns of n): in travel, in v and in a. The last is the frequency. */
  readonly sensitivity: {
    readonly z: readonly Float64Array[];
    readonly v: readonly Float64Array[];
    readonly a: readonly Float64Array[];
  };
  /** (HᵀH)⁻¹ of the travel's sensitivities, by rows. */
  readonly inverse: Float64Array;
}

/**
 * Fits  z(t) = c_0 + c_1 t + Σ_h a_h cos(h ω t) + b_h sin(h ω t),  h = 1 … harmonics,  to readings of travel, with the
 * frequency as one of the unknowns (Gauss-Newton from `period`), so that velocity and acceleration are derivatives of a
 * fitted function and carry no noise of differencing. `time` need not be even.
 * Source: IEEE Std 1057, four-parameter sine fit (from memory), with harmonics and drift.
 */
export function harmonicMotion(
  time: Float64Array,
  travel: Float64Array,
  period: number,
  harmonics: number,
): HarmonicMotion {
  const n = time.length;
  const t0 = time[0]!;
  const t = time.map((value) => value - t0);
  const drifts = [new Float64Array(n).fill(1), t];
  let omega = (2 * Math.PI) / period;
  let theta = leastSquares([...drifts, ...waves(t, omega, harmonics, 0)], travel).theta;
  // each turn finds all parameters together with the change of frequency, which squares what is wrong with it
  let fit = withFrequency();
  for (let turn = 0; turn < 30; turn++) {
    const change = fit.theta.at(-1)!;
    omega += change;
    theta = fit.theta.slice(0, -1);
    fit = withFrequency();
    if (Math.abs(change) < 1e-9 * omega) break;
  }
  theta = leastSquares([...drifts, ...waves(t, omega, harmonics, 0)], travel).theta;
  const order = (derivative: 0 | 1 | 2 | 3) => waves(t, omega, harmonics, derivative);
  const sum = (columns: readonly Float64Array[]): Float64Array => {
    const total = new Float64Array(n);
    columns.forEach((column, j) => {
      for (let i = 0; i < n; i++) total[i]! += theta[j + 2]! * column[i]!;
    });
    return total;
  };
  const none = drifts.map(() => new Float64Array(n));
  return {
    omega,
    amplitude: Math.hypot(theta[2]!, theta[3]!),
    z: sum(order(0)),
    v: sum(order(1)),
    a: sum(order(2)),
    jerk: sum(order(3)),
    residual: fit.residual,
    drift: theta[1]!,
    sensitivity: {
      z: [...drifts, ...order(0), byFrequency(t, omega, theta, harmonics, 0)],
      v: [...none, ...order(1), byFrequency(t, omega, theta, harmonics, 1)],
      a: [...none, ...order(2), byFrequency(t, omega, theta, harmonics, 2)],
    },
    inverse: fit.inverse,
  };

  /** The linear fit with one more column: how the travel changes with the frequency. */
  function withFrequency() {
    return leastSquares(
      [...drifts, ...waves(t, omega, harmonics, 0), byFrequency(t, omega, theta, harmonics, 0)],
      travel,
    );
  }
}

/** Derivatives of cos(hωt), sin(hωt), h = 1 … harmonics, in turn. */
function waves(t: Float64Array, omega: number, harmonics: number, derivative: 0 | 1 | 2 | 3): Float64Array[] {
  const quarter = (derivative * Math.PI) / 2;
  return Array.from({ length: 2 * harmonics }, (_, j) => {
    const w = (1 + (j >> 1)) * omega;
    const shift = quarter - (j % 2 === 0 ? 0 : Math.PI / 2);
    return t.map((time) => w ** derivative * Math.cos(w * time + shift));
  });
}

/** d/dω of the fitted motion's derivative: Σ θ (d/dω)(w^p cos(w t + shift)). */
function byFrequency(
  t: Float64Array,
  omega: number,
  theta: Float64Array,
  harmonics: number,
  derivative: 0 | 1 | 2,
): Float64Array {
  const quarter = (derivative * Math.PI) / 2;
  const total = new Float64Array(t.length);
  for (let j = 0; j < 2 * harmonics; j++) {
    const h = 1 + (j >> 1);
    const w = h * omega;
    const shift = quarter - (j % 2 === 0 ? 0 : Math.PI / 2);
    const [scale, slope] = [
      h * theta[j + 2]! * w ** derivative,
      derivative === 0 ? 0 : h * theta[j + 2]! * derivative * w ** (derivative - 1),
    ];
    for (let i = 0; i < t.length; i++)
      total[i]! += slope * Math.cos(w * t[i]! + shift) - scale * t[i]! * Math.sin(w * t[i]! + shift);
  }
  return total;
}
