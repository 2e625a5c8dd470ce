import { refusal, requirePositive } from '../../refusal.ts';
import { envelope, envelopeCholesky, solveLower, solveUpper } from '../envelope-cholesky.ts';
import type { Vector } from '../vector.ts';

/** Section of a beam in its own axes: y and z through the shear centre, principal. Ay: area that carries shear along y,
 *  Az along z, in m²; Infinity for a beam stiff in shear. Iy in m⁴ bends in the plane of x and z. */
export interface BeamSection {
  readonly A: number;
  readonly Iy: number;
  readonly Iz: number;
  readonly J: number;
  readonly Ay: number;
  readonly Az: number;
}

/** How a beam's end sits on its node. offset: from the node to the end, m, global axes, rigid. springs: stiffness of the
 *  joint between the rigid offset and the end, along and about the beam's own x y z (N/m ×3, N·m/rad ×3); Infinity is
 *  rigid, 0 is free. */
export interface BeamEnd {
  readonly offset?: Vector;
  readonly springs?: readonly [number, number, number, number, number, number];
}

export interface BeamInput {
  /** The two nodes, 6 coordinates in m. */
  readonly xyz: Float64Array;
  readonly section: BeamSection;
  readonly E: number;
  readonly G: number;
  /** Any vector in the plane of local x and z, on the side of z (a tube stands with its height along z). */
  readonly orientation: Vector;
  readonly start?: BeamEnd;
  readonly end?: BeamEnd;
}

/** A straight beam with shear flexibility, exact for loads at its ends.
 *  stiffness: 12 × 12 over the nodes' global freedoms. length in m between the ends. axes: rows x y z.
 *  ends: 12 × 12, the ends' displacements in local axes from the nodes' global freedoms, joints rigid.
 *  local: 12 × 12, of the beam alone in local axes. give: 12 × 12 in local axes, how far the joints' springs give way
 *  under forces on the ends, with the beam behind them; zero when both joints are rigid. */
export interface Beam {
  readonly input: BeamInput;
  readonly length: number;
  readonly axes: Float64Array;
  readonly stiffness: Float64Array;
  readonly ends: Float64Array;
  readonly local: Float64Array;
  readonly give: Float64Array;
}

/** Joints are condensed exactly: with S the sprung freedoms and k their stiffness,
 *    give = (K_SS + k)⁻¹,   K* = K - K give K,
 *  and offsets enter by K_global = Tᵀ K* T, so nothing is tied by a penalty.
 *  Source: J. S. Przemieniecki, Theory of Matrix Structural Analysis (1968), art. 5.6, from memory. */
export function beam(input: BeamInput): Beam {
  const { section, E, G, orientation } = input;
  const { A, Iy, Iz, J, Ay, Az } = section;
  requirePositive({ A, Iy, Iz, J, E, G });
  for (const [name, area] of Object.entries({ Ay, Az }))
    if (!(area > 0))
      throw refusal({
        what: `${name} must be positive, it is ${area}`,
        where: { field: name },
        mend: 'Give the shear area, or Infinity',
      });
  const offsets = [input.start?.offset ?? zero, input.end?.offset ?? zero];
  const reach = [0, 1, 2].map(
    (k) => input.xyz[3 + k]! + offsets[1]![k]! - input.xyz[k]! - offsets[0]![k]!,
  ) as unknown as Vector;
  const length = Math.hypot(...reach);
  if (!(length > 0))
    throw refusal({ what: 'A beam has no length between its ends', mend: 'Mend its nodes or its offsets' });
  const x = reach.map((c) => c / length) as unknown as Vector;
  const across = cross(orientation, x);
  const width = Math.hypot(...across);
  if (!(width > 1e-6 * Math.hypot(...orientation)))
    throw refusal({ what: 'A beam’s orientation runs along its axis', mend: 'Give a vector across the beam' });
  const y = across.map((c) => c / width) as unknown as Vector;
  const axes = Float64Array.of(...x, ...y, ...cross(x, y));
  const local = localStiffness(section, E, G, length);
  const give = jointGive(local, [...(input.start?.springs ?? rigid), ...(input.end?.springs ?? rigid)]);
  const ends = endsFromNodes(axes, offsets);
  const condensed = product(local, product(give, local)).map((value, k) => local[k]! - value);
  return { input, length, axes, stiffness: congruent(condensed, ends), ends, local, give };
}

/** Tᵀ K T for 12 × 12, exactly symmetric: its upper half is a copy. */
export function congruent(K: Float64Array, T: Float64Array): Float64Array {
  const KT = product(K, T);
  const out = new Float64Array(144);
  for (let i = 0; i < 12; i++)
    for (let j = 0; j <= i; j++) {
      let sum = 0;
      for (let k = 0; k < 12; k++) sum += T[12 * k + i]! * KT[12 * k + j]!;
      out[12 * i + j] = out[12 * j + i] = sum;
    }
  return out;
}

/** A B for 12 × 12. */
export function product(A: Float64Array, B: Float64Array): Float64Array {
  const out = new Float64Array(144);
  for (let i = 0; i < 12; i++)
    for (let k = 0; k < 12; k++) {
      const a = A[12 * i + k]!;
      if (a !== 0) for (let j = 0; j < 12; j++) out[12 * i + j]! += a * B[12 * k + j]!;
    }
  return out;
}

const zero: Vector = [0, 0, 0];
const rigid = [Infinity, Infinity, Infinity, Infinity, Infinity, Infinity] as const;
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** Freedoms u v w θx θy θz of start and end, local axes. In the plane of x and y the slope is θz, of x and z it is -θy. */
function localStiffness({ A, Iy, Iz, J, Ay, Az }: BeamSection, E: number, G: number, L: number): Float64Array {
  const K = new Float64Array(144);
  const pair = (i: number, k: number): void => {
    K[13 * i]! += k;
    K[13 * (i + 6)]! += k;
    K[12 * i + i + 6] = K[12 * (i + 6) + i] = -k;
  };
  pair(0, (E * A) / L);
  pair(3, (G * J) / L);
  for (const [w, slope, sign, I, shearArea] of [
    [1, 5, 1, Iz, Ay],
    [2, 4, -1, Iy, Az],
  ] as const) {
    const Φ = (12 * E * I) / (G * shearArea * L ** 2);
    const k = (E * I) / (L ** 3 * (1 + Φ));
    const [b, c, d] = [6 * k * L * sign, (4 + Φ) * k * L ** 2, (2 - Φ) * k * L ** 2];
    pair(w, 12 * k);
    const set = (i: number, j: number, value: number): void => {
      K[12 * i + j] = K[12 * j + i] = value;
    };
    set(w, slope, b);
    set(w, slope + 6, b);
    set(w + 6, slope, -b);
    set(w + 6, slope + 6, -b);
    set(slope, slope, c);
    set(slope + 6, slope + 6, c);
    set(slope, slope + 6, d);
  }
  return K;
}

function jointGive(K: Float64Array, springs: readonly number[]): Float64Array {
  const give = new Float64Array(144);
  springs.forEach((k, i) => {
    if (!(k >= 0))
      throw refusal({
        what: `A joint spring must not be negative, it is ${k}`,
        where: { freedom: i % 6 },
        mend: 'Give its stiffness, 0 if free, Infinity if rigid',
      });
  });
  const S = springs.flatMap((k, i) => (k === Infinity ? [] : [i]));
  const L = envelope(new Int32Array(S.length));
  S.forEach((freedom, i) => {
    for (let j = 0; j <= i; j++)
      L.entries[L.start[i]! + j] = K[12 * freedom + S[j]!]! + (i === j ? springs[freedom]! : 0);
  });
  const loose = envelopeCholesky(L, 1e-12);
  if (loose !== -1)
    throw refusal({
      what: `A beam is free at both ends ${motions[S[loose]! % 6]}`,
      mend: 'Give one of its joints a stiffness there',
    });
  S.forEach((freedom, j) => {
    const column = solveUpper(
      L,
      solveLower(
        L,
        Float64Array.from(S, (_, i) => (i === j ? 1 : 0)),
      ),
    );
    S.forEach((other, i) => (give[12 * other + freedom] = column[i]!));
  });
  return give;
}

const motions = [
  'to slide along its axis',
  'to move across, along y',
  'to move across, along z',
  'to turn about its axis',
  'to turn about y',
  'to turn about z',
];

function endsFromNodes(axes: Float64Array, offsets: readonly Vector[]): Float64Array {
  const T = new Float64Array(144);
  offsets.forEach(([ox, oy, oz], end) => {
    for (let r = 0; r < 3; r++) {
      const [a, b, c] = [axes[3 * r]!, axes[3 * r + 1]!, axes[3 * r + 2]!];
      const row = 12 * (6 * end + r) + 6 * end;
      T.set([a, b, c], row);
      // e · (θ × o) = θ · (o × e)
      T.set([oy * c - oz * b, oz * a - ox * c, ox * b - oy * a], row + 3);
      T.set([a, b, c], row + 36 + 3);
    }
  });
  return T;
}
