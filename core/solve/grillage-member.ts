/** A straight prismatic beam of a grillage with exact actions. Local freedoms at each end: w (up), τ (turn about its own
 *  axis, from start to end) and ψ (slope of the section along the axis), so u = [w1, τ1, ψ1, w2, τ2, ψ2]. */
export interface BeamStiffness {
  readonly length: number;
  readonly EI: number;
  readonly GJ: number;
  /** Shear stiffness G A_s in N; Infinity for a beam stiff in shear. */
  readonly GA: number;
}

/** Line load along a beam: force up in N/m at start and end, straight between; torque about the axis in N·m/m, uniform. */
export interface LineLoad {
  readonly start: number;
  readonly end: number;
  readonly torque: number;
}

/** Largest actions along one beam, exact between the nodes too. Moment M = E I dψ/ds, positive when it hollows the beam
 *  upward (tension below); shear V = dM/ds; torque T = G J dτ/ds. `…At` in m from the start. SI. */
export interface BeamActions {
  readonly start: { readonly shear: number; readonly moment: number; readonly torque: number };
  readonly end: { readonly shear: number; readonly moment: number; readonly torque: number };
  readonly momentMost: number;
  readonly momentMostAt: number;
  readonly momentLeast: number;
  readonly momentLeastAt: number;
  /** Magnitudes. */
  readonly momentLargest: number;
  readonly shearLargest: number;
  readonly torqueLargest: number;
}

/** Share of shear in bending, Φ = 12 E I / (G A_s L²). */
const shearShare = ({ length, EI, GA }: BeamStiffness): number => (12 * EI) / (GA * length ** 2);

/** Stiffness matrix 6 × 6 by rows, exact for a beam with shear flexibility. Source: J. S. Przemieniecki, Theory of Matrix
 *  Structural Analysis (1968), art. 5.6, from memory. */
export function beamStiffness(beam: BeamStiffness): Float64Array {
  const { length: L, EI, GJ } = beam;
  const Φ = shearShare(beam);
  const k = EI / (L ** 3 * (1 + Φ));
  const [a, b, c, d, g] = [12 * k, 6 * k * L, (4 + Φ) * k * L ** 2, (2 - Φ) * k * L ** 2, GJ / L];
  // prettier-ignore
  return Float64Array.of(
     a,  0,  b, -a,  0,  b,
     0,  g,  0,  0, -g,  0,
     b,  0,  c, -b,  0,  d,
    -a,  0, -b,  a,  0, -b,
     0, -g,  0,  0,  g,  0,
     b,  0,  d, -b,  0,  c,
  );
}

/** Forces on the end nodes that do the same work as the line load: ∫ N p ds with the beam's own exact shape functions,
 *  shear flexibility included, so nodes move exactly as under the line load itself. */
export function equivalentEndForces(beam: BeamStiffness, { start, end, torque }: LineLoad): Float64Array {
  const { length: L } = beam;
  const Φ = shearShare(beam);
  const rise = end - start;
  return Float64Array.of(
    L * (start / 2 + (rise * (3 / 20 + Φ / 6)) / (1 + Φ)),
    (L * torque) / 2,
    L ** 2 * (start / 12 + (rise * (1 / 30 + Φ / 24)) / (1 + Φ)),
    L * (start / 2 + (rise * (7 / 20 + Φ / 3)) / (1 + Φ)),
    (L * torque) / 2,
    -(L ** 2) * (start / 12 + (rise * (1 / 20 + Φ / 24)) / (1 + Φ)),
  );
}

/** Actions along a beam from the forces on its start [w, τ, ψ] and its line load: the rest is statics,
 *    V(s) = F + p s + (p' - p) s²/2L,   M(s) = -C + ∫ V ds,   T(s) = -T1 - m s */
export function beamActions(length: number, ends: Float64Array, load: LineLoad): BeamActions {
  const [F, T, C] = [ends[0]!, ends[1]!, ends[2]!];
  const { start: p, end, torque } = load;
  const half = (end - p) / (2 * length);
  const shear = (s: number): number => F + s * (p + s * half);
  const moment = (s: number): number => -C + s * (F + s * (p / 2 + (s * half) / 3));
  const turning = [0, length, ...rootsOf(F, p, half).filter((s) => s > 0 && s < length)];
  const peaks = [0, length, ...(half === 0 ? [] : [-p / (2 * half)].filter((s) => s > 0 && s < length))];
  const [most, least] = [Math.max, Math.min].map((pick) => {
    const value = pick(...turning.map(moment));
    return { value, at: turning.find((s) => moment(s) === value)! };
  }) as [{ value: number; at: number }, { value: number; at: number }];
  return {
    start: { shear: F, moment: -C, torque: -T },
    end: { shear: shear(length), moment: moment(length), torque: -T - torque * length },
    momentMost: most.value,
    momentMostAt: most.at,
    momentLeast: least.value,
    momentLeastAt: least.at,
    momentLargest: Math.max(Math.abs(most.value), Math.abs(least.value)),
    shearLargest: Math.max(...peaks.map((s) => Math.abs(shear(s)))),
    torqueLargest: Math.max(Math.abs(T), Math.abs(T + torque * length)),
  };
}

/** Real roots of c + b s + a s². */
function rootsOf(c: number, b: number, a: number): number[] {
  if (a === 0) return b === 0 ? [] : [-c / b];
  const root = b * b - 4 * a * c;
  if (root < 0) return [];
  const q = -(b + (b < 0 ? -1 : 1) * Math.sqrt(root)) / 2;
  return q === 0 ? [0] : [q / a, c / q];
}
