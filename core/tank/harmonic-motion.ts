import { leastSquares } from './least-squares.ts';
import { weightedFit } from './weighted-fit.ts';

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
  let base = basis(t, omega, harmonics);
  let theta = weightedFit([...drifts, ...waves(base, omega, 0)], travel, one);
  // each turn finds all parameters together with the change of frequency, which squares what is wrong with it
  for (let turn = 0; turn < 30; turn++) {
    const all = weightedFit(columnsWithFrequency(), travel, one);
    const change = all.at(-1)!;
    omega += change;
    theta = all.slice(0, -1);
    base = basis(t, omega, harmonics);
    if (Math.abs(change) < 1e-9 * omega) break;
  }
  theta = leastSquares([...drifts, ...waves(base, omega, 0)], travel).theta;
  const fit = leastSquares(columnsWithFrequency(), travel);
  const order = (derivative: Derivative) => waves(base, omega, derivative);
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
      z: [...drifts, ...order(0), byFrequency(t, base, omega, theta, 0)],
      v: [...none, ...order(1), byFrequency(t, base, omega, theta, 1)],
      a: [...none, ...order(2), byFrequency(t, base, omega, theta, 2)],
    },
    inverse: fit.inverse,
  };

  /** Columns of the linear fit with one more: how the travel changes with the frequency. */
  function columnsWithFrequency(): Float64Array[] {
    return [...drifts, ...waves(base, omega, 0), byFrequency(t, base, omega, theta, 0)];
  }
}

type Derivative = 0 | 1 | 2 | 3;
const one = (): number => 1;

/** cos(hωt) and sin(hωt) for h = 1 … harmonics: of the first by themselves, of each other from the one before. */
function basis(t: Float64Array, omega: number, harmonics: number): readonly (readonly [Float64Array, Float64Array])[] {
  const n = t.length;
  const all = Array.from({ length: harmonics }, () => [new Float64Array(n), new Float64Array(n)] as const);
  const [c1, s1] = all[0]!;
  for (let i = 0; i < n; i++) {
    c1[i] = Math.cos(omega * t[i]!);
    s1[i] = Math.sin(omega * t[i]!);
  }
  for (let h = 1; h < harmonics; h++) {
    const [[c0, s0], [c, s]] = [all[h - 1]!, all[h]!];
    for (let i = 0; i < n; i++) {
      c[i] = c0[i]! * c1[i]! - s0[i]! * s1[i]!;
      s[i] = s0[i]! * c1[i]! + c0[i]! * s1[i]!;
    }
  }
  return all;
}

/** Which of cos (0) and sin (1) a derivative of either is, and its sign. */
const turned = (of: 0 | 1, derivative: number): readonly [0 | 1, 1 | -1] => {
  const quarter = (derivative - of + 4) % 4;
  return [(quarter % 2) as 0 | 1, quarter === 1 || quarter === 2 ? -1 : 1];
};

/** Derivatives of cos(hωt), sin(hωt), h = 1 … harmonics, in turn. */
function waves(base: ReturnType<typeof basis>, omega: number, derivative: Derivative): Float64Array[] {
  return base.flatMap((pair, h) => {
    const w = (h + 1) * omega;
    return ([0, 1] as const).map((of) => {
      const [which, sign] = turned(of, derivative);
      if (derivative === 0) return pair[which];
      const scale = sign * w ** derivative;
      const column = new Float64Array(pair[which].length);
      const own = pair[which];
      for (let i = 0; i < own.length; i++) column[i] = scale * own[i]!;
      return column;
    });
  });
}

/** d/dω of the fitted motion's derivative p: Σ θ h (p w^(p−1) f_p + w^p t f_(p+1)), w = hω, f_p the p-th derivative of cos or sin. */
function byFrequency(
  t: Float64Array,
  base: ReturnType<typeof basis>,
  omega: number,
  theta: Float64Array,
  derivative: 0 | 1 | 2,
): Float64Array {
  const total = new Float64Array(t.length);
  base.forEach((pair, k) => {
    const h = k + 1;
    const w = h * omega;
    for (const of of [0, 1] as const) {
      const own = h * theta[2 * k + of + 2]!;
      const [here, sign] = turned(of, derivative);
      const [next, nextSign] = turned(of, derivative + 1);
      const slope = derivative === 0 ? 0 : sign * own * derivative * w ** (derivative - 1);
      const scale = nextSign * own * w ** derivative;
      const [f, g] = [pair[here], pair[next]];
      for (let i = 0; i < total.length; i++) total[i]! += slope * f[i]! + scale * t[i]! * g[i]!;
    }
  });
  return total;
}
