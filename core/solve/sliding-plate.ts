import { beamBasis, type BeamBasis } from './beam-basis.ts';
import { boundedMemo } from './bounded-memo.ts';
import { envelope, envelopeCholesky, solveLower, solveUpper, type Envelope } from './envelope-cholesky.ts';
import { gaussLegendre } from './gauss-legendre.ts';
import { hingedPlate } from './hinged-plate.ts';
import { sideRatio } from './side-ratio.ts';
import { plateRigidity, requirePlate, type UniformPlate } from './uniform-plate.ts';

const { PI: π, abs, ceil, cbrt, cos, max, min, sin, sqrt } = Math;

/** Longest side ratio of the published curves. */
export const longestSlidingRatio = 5;
/** Small deflection, over ŵ, at which the curves end: ten thicknesses at ν = 0.3. */
export const curvesEnd = 33;

/** A plate hinged on four edges that may slide in its plane, beyond small deflections. */
export interface SlidingAnswer {
  /** At the centre, along q, m. */
  readonly deflection: number;
  /** That over the deflection by the theory of small deflections. */
  readonly ratio: number;
}

/** A plate hinged on four edges that carry no force in its plane, under uniform pressure, beyond w = t/2: it stretches in
 *  the middle and is compressed along its edges. Of all ways to hold hinged edges in the plane this one deflects most.
 *    ∇⁴W = P + [Φ, W],   ∇⁴Φ = -½ [W, W],   [f, g] = f_xx g_yy + f_yy g_xx - 2 f_xy g_xy
 *  von Kármán's equations with the shorter side s, ŵ = t / √(12 (1 - ν²)) and D as units: W = w/ŵ, P = q s⁴/(D ŵ), so
 *  that ν enters by ŵ alone. On the edges W = W_nn = 0 and Φ = Φ_n = 0. Galerkin's method: sines for W; polynomials
 *  clamped at both ends for Φ, whose energy is then too small, which is the side of more deflection.
 *  Sides up to 1 : 5, as the published curves; longer plates bend to a cylinder and get small deflections (at 1 : 5 the
 *  compressed edges add up to 2 % to those). Beyond `curvesEnd` the last stiffness holds on: the plate only grows stiffer.
 *  Error: 0.1 %. Refuses sizes that are not positive.
 *  Source: T&WK, Theory of Plates and Shells, 2nd ed., art. 102, the equations; compared with the curve fit of ASTM E1300,
 *  app. X1 (edges free to slip) and with S. Levy, NACA Report 737 (1942), whose edges stay straight (tests). */
export function slidingPlate(plate: UniformPlate): SlidingAnswer {
  requirePlate(plate);
  const { a, b, t, E, q } = plate;
  const ratio = sideRatio(max(a, b), min(a, b));
  const small = hingedPlate(plate).deflectionCentre;
  if (ratio > longestSlidingRatio || q === 0) return { deflection: small, ratio: 1 };
  const unit = sqrt(plateRigidity(plate) / (E * t));
  const stretched = softening(ratio, min(abs(small) / unit, curvesEnd));
  return { deflection: small * stretched, ratio: stretched };
}

/** W at the centre over its small deflection, from that small deflection. */
function softening(ratio: number, small: number): number {
  const form = equations(ratio);
  const P = small / form.smallPerLoad;
  return atCentre(form, slidingShape(ratio, P).W) / small;
}

/** The equations of one side ratio, in the basis sin(mπx) sin(nπy/ratio), m and n odd, and ψ_k clamped. */
interface Equations {
  readonly m: readonly number[];
  readonly n: readonly number[];
  /** Bending: diagonal. */
  readonly K: Float64Array;
  /** ∫ of the sines. */
  readonly load: Float64Array;
  /** Cholesky factor of ∫ ∇²ψ_k ∇²ψ_l. */
  readonly H: Envelope;
  /** ∫ ψ_k [φ_i, φ_j]: at (k × sines + i) × sines + j. */
  readonly L: Float64Array;
  /** Small deflection at the centre under P = 1. */
  readonly smallPerLoad: number;
  readonly clamped: readonly [BeamBasis, BeamBasis];
}

const memo = boundedMemo<Equations>(64);

function equations(ratio: number): Equations {
  return memo(`${ratio}`, () => {
    const [across, along] = [line(3, 10), line(3 + 2 * ceil(ratio), 10 + 2 * ceil(ratio))];
    const m = across.odd.flatMap((p) => along.odd.map(() => p));
    const n = across.odd.flatMap(() => along.odd);
    const K = Float64Array.from(m, (p, i) => (ratio / 4) * π ** 4 * (p ** 2 + (n[i]! / ratio) ** 2) ** 2);
    const load = Float64Array.from(m, (p, i) => (4 * ratio) / (π ** 2 * p * n[i]!));
    const form = { m, n, K, load, ...stressForms(ratio, across, along), smallPerLoad: 1 };
    return {
      ...form,
      smallPerLoad: atCentre(
        form,
        load.map((b, i) => b / K[i]!),
      ),
    };
  });
}

/** Odd sines and clamped polynomials on the unit interval: ∫ ψ sin sin and ∫ ψ cos cos at (k × sines + i) × sines + j. */
interface Line {
  readonly odd: readonly number[];
  readonly clamped: BeamBasis;
  readonly sines: Float64Array;
  readonly cosines: Float64Array;
}

const lines = boundedMemo<Line>(8);

function line(count: number, degree: number): Line {
  return lines(`${count} ${degree}`, () => {
    const odd = Array.from({ length: count }, (_, i) => 2 * i + 1);
    const clamped = beamBasis(['held', 'held'], degree, true);
    const [sines, cosines] = [0, 1].map(() => new Float64Array(clamped.size * count ** 2)) as [
      Float64Array,
      Float64Array,
    ];
    const gauss = gaussLegendre(degree + 4 * count);
    for (let i = 0; i < gauss.x.length; i++) {
      const [x, ψ] = [(1 + gauss.x[i]!) / 2, clamped.at(gauss.x[i]!, 0)];
      let at = 0;
      for (const f of ψ)
        for (const p of odd)
          for (const r of odd) {
            sines[at]! += (gauss.weight[i]! / 2) * f * sin(p * π * x) * sin(r * π * x);
            cosines[at++]! += (gauss.weight[i]! / 2) * f * cos(p * π * x) * cos(r * π * x);
          }
    }
    return { odd, clamped, sines, cosines };
  });
}

function stressForms(ratio: number, across: Line, along: Line): Pick<Equations, 'H' | 'L' | 'clamped'> {
  const [X, Y] = [across.clamped, along.clamped];
  const [count, wide] = [X.size * Y.size, along.odd.length];
  const sines = across.odd.length * wide;
  const H = envelope(new Int32Array(count));
  const L = new Float64Array(count * sines ** 2);
  for (let k = 0; k < count; k++) {
    const [kx, ky] = [Math.floor(k / Y.size), k % Y.size];
    for (let l = 0; l <= k; l++) {
      const [x, y] = [kx * X.size + Math.floor(l / Y.size), ky * Y.size + (l % Y.size)];
      // From [-1, 1] to the unit interval: values / 2, slopes × 2, curvatures × 8.
      H.entries[H.start[k]! + l] =
        4 * ratio * X.curvatures[x]! * Y.values[y]! +
        (8 / ratio) * X.slopes[x]! * Y.slopes[y]! +
        (4 / ratio ** 3) * X.values[x]! * Y.curvatures[y]!;
    }
    for (let i = 0; i < sines; i++)
      for (let j = 0; j < sines; j++) {
        const [im, in_, jm, jn] = [Math.floor(i / wide), i % wide, Math.floor(j / wide), j % wide];
        const [x, y] = [(kx * across.odd.length + im) * across.odd.length + jm, (ky * wide + in_) * wide + jn];
        const [m, n, M, N] = [across.odd[im]!, along.odd[in_]!, across.odd[jm]!, along.odd[jn]!];
        L[(k * sines + i) * sines + j] =
          (π ** 4 / ratio) *
          (((m * N) ** 2 + (n * M) ** 2) * across.sines[x]! * along.sines[y]! -
            2 * m * n * M * N * across.cosines[x]! * along.cosines[y]!);
      }
  }
  if (envelopeCholesky(H) !== -1) throw new Error('clamped polynomials are independent');
  return { H, L, clamped: [X, Y] };
}

/** W = Σ W_i sin(m_i πx) sin(n_i πy/ratio) and Φ = Σ Φ_k ψ_k, the products of the two clamped bases, the second running
 *  faster, 0 ≤ x ≤ 1 and 0 ≤ y ≤ ratio. */
export interface SlidingShape extends Pick<Equations, 'm' | 'n' | 'clamped'> {
  readonly W: Float64Array;
  readonly Φ: Float64Array;
}

/** The shape under P, by Newton's method from above: the small deflection, or that of a membrane. */
export function slidingShape(ratio: number, P: number): SlidingShape {
  const { m, n, clamped, K, load, H, L } = equations(ratio);
  const [sines, count] = [K.length, H.size];
  const start = min(1, cbrt(1e3 / P) ** 2);
  const W = load.map((b, i) => (start * P * b) / K[i]!);
  const Φ = new Float64Array(count);
  const G = new Float64Array(count * sines); // L_k W, by rows k
  const Z = new Float64Array(sines * count); // (H^-½ G)ᵀ, by rows i
  for (let round = 0; round < 50; round++) {
    for (let k = 0; k < count; k++) {
      let twice = 0;
      for (let i = 0; i < sines; i++) {
        let sum = 0;
        for (let j = 0, row = (k * sines + i) * sines; j < sines; j++) sum += L[row + j]! * W[j]!;
        Z[i * count + k] = G[k * sines + i] = sum;
        twice += sum * W[i]!;
      }
      Φ[k] = -twice / 2;
    }
    solveUpper(H, solveLower(H, Φ));
    for (let i = 0; i < sines; i++) solveLower(H, Z.subarray(i * count, (i + 1) * count));
    const J = envelope(new Int32Array(sines));
    const change = new Float64Array(sines);
    for (let i = 0; i < sines; i++) {
      change[i] = P * load[i]! - K[i]! * W[i]!;
      for (let k = 0; k < count; k++) change[i]! += G[k * sines + i]! * Φ[k]!;
      for (let j = 0; j <= i; j++) {
        let value = i === j ? K[i]! : 0;
        for (let k = 0; k < count; k++)
          value += Z[i * count + k]! * Z[j * count + k]! - Φ[k]! * L[(k * sines + i) * sines + j]!;
        J.entries[J.start[i]! + j] = value;
      }
    }
    if (envelopeCholesky(J) !== -1) throw new Error(`a plate of ${ratio} under ${P} would wrinkle`);
    solveUpper(J, solveLower(J, change));
    for (let i = 0; i < sines; i++) W[i]! += change[i]!;
    if (abs(change[0]!) < 1e-10 * abs(W[0]!)) return { m, n, clamped, W, Φ };
  }
  throw new Error(`a plate of ${ratio} under ${P} finds no balance`);
}

/** Σ W sin(mπ/2) sin(nπ/2) */
const atCentre = ({ m, n }: Pick<Equations, 'm' | 'n'>, W: Float64Array): number =>
  W.reduce((sum, value, i) => sum + ((m[i]! + n[i]!) % 4 === 2 ? value : -value), 0);
