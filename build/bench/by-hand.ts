import { kernels as k } from '../../core/checks/kernels.ts';

const { PI: π, sqrt, cbrt, cos, min, max, abs, atan2 } = Math;

/** Inputs of a check by symbol, SI. */
export type Given = Readonly<Record<string, number>>;

/** What a check decides by: demand, capacity, the bounds of its second opinion on `of`, and whether its range holds. */
export interface ByHand {
  readonly demand: number;
  readonly capacity: number;
  readonly of: number;
  readonly low?: number;
  readonly high?: number;
  readonly inRange?: boolean;
}

/**
 * The rules under partial factors, written by hand as plain functions: the yardstick of the benchmark, used nowhere
 * else. The benchmark compares every number with the engine's before it takes a time.
 */
export const byHand: Readonly<Record<string, (v: Given) => ByHand>> = {
  'panel-bending-four-sides': (v) => {
    const { a, b, t, E, nu, p, h, f_y, EI_edge } = v as Named;
    const hinged = k['plate.hinged.stress']!(a, b, t, E, nu, p);
    const held = k['plate.held.stress']!(a, b, t, E, nu, p);
    const g = k['plate.onEdgeBeams.g']!(a, b, t, E, nu, p, EI_edge);
    const ratio = k['plate.onEdgeBeams.momentRatio']!(a, b, t, E, nu, p, EI_edge);
    const demand = (h > 0 ? held : hinged) + max(ratio - 1, 0) * hinged;
    const py = k['yieldLine.hinged']!(a, b, t, f_y);
    const low = (p / ((2 / sqrt(3)) * (1 + h) * py)) * f_y;
    const high = ((0.75 * p * min(a, b) ** 2) / t ** 2) * max(ratio, 1);
    return { demand, capacity: f_y / v.gamma_M0!, of: demand, low, high, inRange: g >= 0.5 };
  },
  'panel-bending-two-sides': (v) => {
    const { L, B, t, E, nu, p, h, f_y } = v as Named;
    const hinged = k['plate.twoSided.hinged.stress']!(L, B, t, E, nu, p);
    const held = k['plate.twoSided.held.stress']!(L, B, t, E, nu, p);
    const demand = h > 0 ? held : hinged;
    const strip = (0.75 * p * L ** 2) / t ** 2;
    return {
      demand,
      capacity: f_y / v.gamma_M0!,
      of: demand,
      low: (strip * sqrt(3)) / 2 / (1 + h),
      high: strip / (1 - nu),
    };
  },
  'panel-bending-bolts': (v) => {
    const { t, E, nu, p, n_x, n_y, a_b, b_b, i_x, i_y, d_w, f_y, lost } = v as Named;
    const disc = d_w / 2 + t;
    const rows = k['plate.bolted.stress']!(a_b + 2 * i_x, b_b + 2 * i_y, t, E, nu, p, n_x, n_y, i_x, i_y, disc);
    const gone = k['bolts.rowLost.stress']!(a_b, b_b, t, E, nu, lost * p, n_x, n_y, i_x, i_y, disc);
    const demand = max(rows, gone);
    const py = k['yieldLine.held']!(a_b, b_b, t, f_y);
    const low = (p / ((2 / sqrt(3)) * py)) * f_y;
    const high = (p * (1.5 * (lost > 0 ? 3 : 0.75) * max(a_b, b_b) ** 2 + 3 * max(i_x, i_y) ** 2)) / t ** 2;
    return { demand, capacity: f_y / v.gamma_M0!, of: demand, low, high };
  },
  'panel-deflection-four-sides': (v) => {
    const { a, b, t, E, nu, h, k_w, EI_edge } = v as Named;
    const p = v.p_ser!;
    const hinged = k['plate.hinged.deflection']!(a, b, t, E, nu, p);
    const held = k['plate.held.deflection']!(a, b, t, E, nu, p);
    const g = k['plate.onEdgeBeams.g']!(a, b, t, E, nu, p, EI_edge);
    const ratio = k['plate.onEdgeBeams.deflectionRatio']!(a, b, t, E, nu, p, EI_edge);
    const slides = k['plate.sliding.deflection']!(a, b, t, E, nu, p);
    const demand = (h > 0 ? held : slides) + max(ratio - 1, 0) * hinged;
    const s = min(a, b);
    const D = rigidity(v);
    const sheet = (cbrt((p ** 2 * E * t) / (s / 2)) * 2) / (0.802 * s);
    const low = p / (D / ((h > 0 ? 0.00126 : 0.00406) * s ** 4) + sheet);
    const first = 16 / (π ** 6 * (1 + (s / max(a, b)) ** 2) ** 2);
    const high = ((1.02 * min(5 / 384, first) * p * s ** 4) / D) * max(ratio, 1);
    return { demand, capacity: s / k_w, of: demand, low, high, inRange: g >= 0.5 };
  },
  'panel-deflection-two-sides': (v) => {
    const { L, B, t, E, nu, h, k_w } = v as Named;
    const p = v.p_ser!;
    const hinged = k['plate.twoSided.hinged.deflection']!(L, B, t, E, nu, p);
    const held = k['plate.twoSided.held.deflection']!(L, B, t, E, nu, p);
    const demand = h > 0 ? held : hinged;
    const strip = (p * L ** 4) / (384 * rigidity(v));
    return { demand, capacity: L / k_w, of: demand, low: strip, high: (5 * strip) / (1 - nu) };
  },
  'panel-deflection-bolts': (v) => {
    const { t, E, nu, n_x, n_y, a_b, b_b, i_x, i_y, d_w, k_w } = v as Named;
    const p = v.p_ser!;
    const a = a_b + 2 * i_x;
    const b = b_b + 2 * i_y;
    const demand = k['plate.bolted.deflection']!(a, b, t, E, nu, p, n_x, n_y, i_x, i_y, d_w / 2 + t);
    const short = min(a_b, b_b);
    const D = rigidity(v);
    const [sx, sy] = [a_b / (n_x - 1), b_b / (n_y - 1)];
    const [ar, br] = [max(a_b - i_x, a_b / 100), max(b_b - i_y, b_b / 100)];
    const lines = (p / D) * max(0.00406 * min(ar, br) ** 4, ((5 / 384) * (ar * br) ** 4) / (ar ** 2 + br ** 2) ** 2);
    const gap = (p / (384 * D)) * max(n_x < 3 ? 5 * ar ** 4 : sx ** 4, n_y < 3 ? 5 * br ** 4 : sy ** 4);
    const low = 0.98 * max(lines, gap);
    const first = ((16 / π ** 6) * (a_b * b_b) ** 4) / (a_b ** 2 + b_b ** 2) ** 2;
    const both = (p / D) * min((5 / 384) * short ** 4, first);
    const beam = p / (E * t ** 3);
    const [rowX, rowY] = [0.1875 * beam * max(sx, b) * sx ** 3, 0.1875 * beam * max(sy, a) * sy ** 3];
    const over = 14.4 * beam * (i_x ** 3 * (i_x / 8 + a_b / 4) + i_y ** 3 * (i_y / 8 + b_b / 4));
    const oneWay = (span: number): number => ((5 / 384) * p * span ** 4) / (D * (1 - nu));
    const high = 1.02 * min(both + rowX + rowY, oneWay(a_b) + rowY, oneWay(b_b) + rowX) + over;
    return { demand, capacity: short / k_w, of: demand, low, high };
  },
  'panel-shear': (v) => {
    const { a, b, t, E, nu, p, four, L, f_y } = v as Named;
    const hinged = k['plate.hinged.reaction']!(a, b, t, E, nu, p);
    const held = k['plate.held.reaction']!(a, b, t, E, nu, p);
    const demand = (four > 0 ? max(hinged, held) : (p * L) / 2) / t;
    const low = (four > 0 ? (p * a * b) / (2 * (a + b)) : (p * L) / 2) / t;
    return {
      demand,
      capacity: f_y / (sqrt(3) * v.gamma_M0!),
      of: demand,
      low,
      high: (0.6 * p * (four > 0 ? min(a, b) : L)) / t,
    };
  },
  'panel-buckling': (v) => {
    const { a, b, t, E, nu, gamma_M1 } = v as Named;
    const cr = min(
      k['plate.buckling.compression.hinged']!(a, b, t, E, nu),
      k['plate.buckling.compression.hinged']!(b, a, t, E, nu),
    );
    return {
      demand: v.sigma_c!,
      capacity: cr / gamma_M1,
      of: cr,
      low: ((π ** 2 * E) / (3 * (1 - nu ** 2))) * (t / max(a, b)) ** 2,
    };
  },

  'bolt-shear': (v) => judged(inPlane(v), boltShear(v), shearAtPitchDiameter(v)),
  'bolt-tension': (v) => {
    const whole = v.f_ub! / v.gamma_M2!;
    const low = (v.countersunk! > 0 ? 0.8 : 1) * 0.7 * whole * v.A_s!;
    return judged(pulledOff(v), boltTension(v), { low, high: whole * pitchArea(v) });
  },
  'bolt-combined': (v) => {
    const F_v = inPlane(v).demand;
    const F_t = pulledOff(v).demand;
    const [shear, tension] = [F_v / boltShear(v), F_t / boltTension(v)];
    const demand = shear + tension / 1.4;
    const ellipse = sqrt(shear ** 2 + tension ** 2);
    const whole = v.f_ub! / v.gamma_M2!;
    const most = sqrt((F_v / 0.5) ** 2 + (F_t / 0.56) ** 2) / (whole * v.A_s!);
    const least = sqrt((F_v / 0.62) ** 2 + F_t ** 2) / (whole * v.A_b!);
    return { demand, capacity: v.u_Rd!, of: demand, low: max(ellipse, least) / 1.4, high: 1.25 * min(ellipse, most) };
  },
  'bolt-slip': (v) => {
    const { f_ub, A_s } = v as Named;
    const F_t = pulledOff(v).demand;
    const friction = v.mu! / v.gamma_M3!;
    const capacity = v.k_s! * friction * (0.7 * f_ub * A_s - 0.8 * F_t);
    const clamp = 0.56 * f_ub * A_s - 1.5 * F_t;
    const low = clamp > 0 ? 0.63 * friction * clamp : capacity;
    return judged(inPlane(v), capacity, { low, high: friction * (0.8 * f_ub * A_s - 0.5 * F_t) });
  },
  'bolt-bearing-panel': (v) => {
    const { e_1, e_2, d_0, p_1, p_2, f_ub, f_u, f_yp, d, t, k_h } = v as Named;
    const f = v.stainless! > 0 ? min(f_u, 0.5 * f_yp + 0.6 * f_u) : f_u;
    const alpha = min(e_1 / (3 * d_0), p_1 / (3 * d_0) - 0.25, f_ub / f, 1);
    const k1 = min((2.8 * e_2) / d_0 - 1.7, (1.4 * p_2) / d_0 - 1.7, 2.5);
    const capacity = (min(k_h * k1 * alpha, 1.5) * f * d * t) / v.gamma_M2!;
    return judged(inPlane(v), capacity, bearing(v, e_1, t, f_yp, f_u));
  },
  'bolt-bearing-tube': (v) => {
    const { e_w, d_0, p_1, p_2, f_ub, f_uw, f_yw, d, t_w, k_h } = v as Named;
    const f = v.stainless_w! > 0 ? min(f_uw, 0.5 * f_yw + 0.6 * f_uw) : f_uw;
    const alpha = min(e_w / (3 * d_0), p_1 / (3 * d_0) - 0.25, f_ub / f, 1);
    const k1 = min((1.4 * p_2) / d_0 - 1.7, 2.5);
    const capacity = (min(k_h * k1 * alpha, 1.5) * f * d * t_w) / v.gamma_M2!;
    return judged(inPlane(v), capacity, bearing(v, e_w, t_w, f_yw, f_uw));
  },
  'bolt-tear-out': (v) => {
    const { f_yp, f_u, e_1, d_0, t, gamma_M0 } = v as Named;
    const yields = (f_yp * (e_1 - d_0 / 2) * t) / gamma_M0;
    return judged(inPlane(v), (2 / sqrt(3)) * yields, {
      low: yields,
      high: ((2 / sqrt(3)) * f_u * e_1 * t) / gamma_M0,
    });
  },
  'bolt-pull-through': (v) => {
    const round = (diameter: number, strength: number): number => (π * diameter * v.t! * strength) / v.gamma_M2!;
    return judged(pulledOff(v), 0.6 * round(v.d_m!, v.f_u!), {
      low: round(v.s_h!, v.f_yp!) / sqrt(3),
      high: round(v.e_h!, v.f_u!) / sqrt(3),
    });
  },
  'bolt-wall-pull': (v) => {
    const wall = (v.f_yw! * v.t_w! ** 2) / v.gamma_M0!;
    return judged(pulledOff(v), π * wall, { low: (π / 2) * wall, high: 4 * wall });
  },
  'bolt-anchorage': (v) => {
    const pull = pulledOff(v);
    return { ...pull, capacity: v.F_a_Rd!, of: pull.demand };
  },
  'bolt-edge-distance': (v) => ({
    demand: 1.2 * v.d_0!,
    capacity: v.e_1!,
    of: 1.2 * v.d_0!,
    low: v.d_0! / 2,
    high: 2 * v.d_0!,
  }),
  'bolt-edge-distance-largest': (v) => {
    const thin = min(v.t!, v.t_w!);
    const capacity = 4 * thin + v.c_e!;
    return { demand: v.e_far!, capacity, of: capacity, low: min(4 * thin, v.c_low!), high: 12 * thin + v.c_high! };
  },
  'bolt-pitch': (v) => ({ demand: 2.2 * v.d_0!, capacity: v.p_1!, of: 2.2 * v.d_0!, low: v.d_c!, high: 3 * v.d_0! }),
  'bolt-pitch-largest': (v) => {
    const thin = min(v.t!, v.t_w!);
    const capacity = min(14 * thin, v.p_lim!);
    return { demand: v.p_far!, capacity, of: capacity, low: min(9 * thin, v.p_buckle!), high: v.p_most! };
  },
  'bolt-hydrogen': (v) => ({ demand: v.H_max!, capacity: v.H_lim!, of: v.H_max!, low: v.f_ub! / v.c_H! }),
  'bolt-group-in-plane': (v) => {
    const { gamma_L, k_dyn, rho, A_f, t_0, g, a_b, b_b, n_x, n_y } = v as Named;
    const W = gamma_L * k_dyn * rho * A_f * t_0 * g;
    const demand = k['bolts.rowLost.inPlane']!(a_b, b_b, n_x, n_y, W);
    const low = W / (2 * n_x + 2 * n_y - 4);
    const high = W + (W * max(a_b, b_b)) / min(a_b, b_b);
    return judged({ demand, low, high }, boltShear(v), shearAtPitchDiameter(v));
  },

  'weld-directional': (v) => {
    const { f_z, f_h, m_r, f_r } = weldForces(v);
    const { a_w, beta_w, gamma_M2, f_u } = v as Named;
    const normal = (f_z + f_h) / (sqrt(2) * a_w) + (6 * m_r) / a_w ** 2;
    const all = sqrt(normal ** 2 + (3 * (f_z - f_h) ** 2) / (2 * a_w ** 2));
    const demand = max((all * beta_w * gamma_M2) / f_u, (normal * gamma_M2) / (0.9 * f_u));
    const throat = weldStrength(v);
    return { demand, capacity: 1, of: demand, low: f_r / (sqrt(3) * throat), high: (f_r + (6 * m_r) / a_w) / throat };
  },
  'weld-throat': (v) => {
    const { f_z, f_h, m_r, f_r } = weldForces(v);
    const { a_w } = v as Named;
    const demand = f_r + (6 * m_r) / a_w;
    const normal = (f_z + f_h) / (sqrt(2) * a_w) + (6 * m_r) / a_w ** 2;
    const all = sqrt(normal ** 2 + (3 * (f_z - f_h) ** 2) / (2 * a_w ** 2));
    return {
      demand,
      capacity: weldStrength(v),
      of: demand,
      low: (all * a_w) / sqrt(3),
      high: (2 * all * a_w) / sqrt(3),
    };
  },
  'weld-size': (v) => ({ demand: v.a_3!, capacity: v.a_0!, of: v.a_3!, low: v.a_2!, high: v.a_6! }),
  'weld-edge': (v) => ({ demand: sqrt(2) * v.a_0!, capacity: v.t_p!, of: v.t_p!, low: v.t_p! / 2, high: v.t_p! }),
  'weld-length': (v) => {
    const demand = max(v.l_30!, 6 * v.a_0!);
    return { demand, capacity: v.l_0! - 2 * v.a_0!, of: demand, low: 4 * sqrt(2) * v.a_0!, high: v.l_38! + 6 * v.a_0! };
  },
  'weld-intermittent': (v) => {
    const capacity = min(12 * v.t_1!, 0.25 * v.b_p!, v.g_200!);
    return { demand: v.g_w!, capacity, of: capacity, high: 16 * v.t_1! };
  },

  'tube-bending': (v) => {
    const { V, M, A_v, f_y, gamma_M0 } = v as Named;
    const [flange, web, ε] = slenderness(v);
    const [r2, r3] =
      v.round! > 0
        ? classRound(v, ε)
        : [max(flange / (38 * ε), web / (83 * ε)), max(flange / (42 * ε), web / (124 * ε))];
    const V_pl = (A_v * f_y) / (sqrt(3) * gamma_M0);
    const ρ = V > 0.5 * V_pl ? ((2 * V) / V_pl - 1) ** 2 : 0;
    const capacity = (1 - ρ) * modulusLessHoles(v, r2) * drilledStrength(v);
    return { demand: M, capacity, of: M, high: v.M_statics!, inRange: r3 <= 1 && holesFit(v) };
  },
  'tube-shear': (v) => {
    const { V, H, t, A_v, f_y, f_235 } = v as Named;
    const τ = f_y / (sqrt(3) * v.gamma_M0!);
    const slender = v.round! > 0 ? 0 : (H - 3 * t) / t / (72 * sqrt(f_235 / f_y));
    return {
      demand: V,
      capacity: A_v * τ,
      of: A_v * τ,
      low: 1.5 * (H - 4 * t) * t * τ,
      high: 2 * H * t * τ,
      inRange: slender <= 1,
    };
  },
  'tube-torsion': (v) => {
    const { N, A, M, W_el, V, A_v, T, W_t, f_y, E, H, B, t, n_h, d_h } = v as Named;
    const round = v.round! > 0;
    const f = drilledStrength(v);
    const wall = drilledWall(v);
    const left = 1 - (n_h * d_h) / wall;
    const normal = (N / (A - 2 * n_h * d_h * t) + M / (W_el - n_h * d_h * t * (H - t))) / f;
    const web = (sqrt(3) * V) / A_v / f;
    const flow = (sqrt(3) * T) / f;
    const shear = web + flow / (W_t * left);
    const demand = sqrt(normal ** 2 + shear ** 2);
    const middle = flow / (2 * t * (round ? (π / 4) * (H - t) ** 2 : (H - t) * (B - t)));
    const most = web + flow / (2 * t * (round ? π / 4 : 0.95) * (H - 2 * t) * (B - 2 * t) * left);
    return {
      demand,
      capacity: 1,
      of: demand,
      low: max(normal, min(middle, middle ** 2)),
      high: normal + most * max(1, most),
      inRange: (round || (H - 3 * t) / t <= 2.45 * sqrt(E / f_y)) && holesFit(v),
    };
  },
  'tube-axial-bending': (v) => {
    const { E, I_min, L_cr, A, f_y, alpha, N, M, C_m, n_h, d_h, t, gamma_M1 } = v as Named;
    const [flange, web, ε] = slenderness(v);
    const [r2, r3] = v.round! > 0 ? classRound(v, ε) : [max(flange, web) / (38 * ε), max(flange, web) / (42 * ε)];
    const N_cr = (π ** 2 * E * I_min) / L_cr ** 2;
    const λ = sqrt((A * f_y) / N_cr);
    const Φ = 0.5 * (1 + alpha * (λ - 0.2) + λ ** 2);
    const χ = λ <= 0.2 ? 1 : 1 / (Φ + sqrt(Φ ** 2 - λ ** 2));
    const W = modulusLessHoles(v, r2);
    const axial = (N * gamma_M1) / (A * f_y);
    const bending = (C_m * M * gamma_M1) / (W * f_y);
    const n = axial / χ;
    const of = n + (1 + min(max(λ - 0.2, 0), 0.8) * n) * bending;
    const net = (N / (A - 2 * n_h * d_h * t) + M / W) / drilledStrength(v);
    const euler = axial * max(1, λ ** 2);
    const rankine = axial * (1 + λ ** 2 / 0.8);
    const p = (1.6 * N) / N_cr;
    return {
      demand: max(of, net),
      capacity: 1,
      of,
      low: (euler < 0.2 ? euler / 2 : euler) + (8 / 9) * bending,
      high: p < 0.9 ? rankine + bending / cos((π / 2) * sqrt(p)) : 1 + rankine + bending * (10 + rankine),
      inRange: r3 <= 1 && holesFit(v),
    };
  },
  'tube-wall-line': (v) => {
    const { B, t, l_1, q, n_l, f_y } = v as Named;
    const width = B - 2 * t;
    const s = min(max(l_1, t) - t, width / 2);
    const demand = (6 * (n_l > 1 ? q * s : (q * s * (width - s)) / width)) / t ** 2;
    return {
      demand,
      capacity: f_y / v.gamma_M0!,
      of: demand,
      low: (6 * q * s * (width - s) ** 2) / (width * t) ** 2,
      high: (6 * n_l * q * width) / (4 * t ** 2),
    };
  },
  'tube-wall-pressure': (v) => {
    const { gamma_F, rho, g, z, B, H, t, E, nu, f_y } = v as Named;
    const p = gamma_F * rho * g * z;
    const b = B - 2 * t;
    const h = H - 2 * t;
    const round = v.round! > 0;
    const corner = (p * (b ** 2 - b * h + h ** 2)) / 12;
    const middle = (p * max(b, h) ** 2) / 8 - corner;
    const membrane = (p * max(B, H)) / (2 * t);
    const demand = (round ? 0 : (6 * max(corner, middle)) / t ** 2) + membrane;
    const strip = (6 * p * max(b, h) ** 2) / t ** 2;
    const critical = ((2 * E) / (1 - nu ** 2)) * (t / (H - t)) ** 3;
    return {
      demand,
      capacity: f_y / v.gamma_M0!,
      of: demand,
      low: round ? membrane / 2 : strip / 16,
      high: round ? 2 * membrane : strip / 8 + membrane,
      inRange: !round || 3 * p <= critical,
    };
  },
  'tube-deflection': (v) => {
    const demand = v.w_F! / v.gamma_F!;
    return {
      demand,
      capacity: v.L! / v.n_L!,
      of: demand,
      high: ((v.M! * v.L! ** 2) / (2 * v.E! * v.I!) + v.w_o!) / v.gamma_F!,
    };
  },

  'crossing-joint': (v) => {
    const { b_1, b_0, h_1, h_0, t_0, N_0, A_0, M_0, W_0, f_y0, gamma_M5, N_1, M_1 } = v as Named;
    const β = b_1 / b_0;
    const kn = min(1, 1.3 - (0.4 * (N_0 / A_0 + M_0 / W_0)) / f_y0 / β);
    const f = (kn * f_y0 * t_0 ** 2) / gamma_M5;
    const N = (f / (1 - β)) * ((2 * h_1) / b_0 + 4 * sqrt(1 - β));
    const M = f * ((h_1 * (1 + β)) / (2 * (1 - β)) + sqrt((2 * b_0 * b_1 * (1 + β)) / (1 - β)));
    return {
      demand: N_1 / N + M_1 / M,
      capacity: 1,
      of: N,
      low: π * f,
      inRange: β >= 0.25 && b_0 / t_0 <= 35 && h_0 / t_0 <= 35 && h_0 / b_0 >= 0.5 && h_0 / b_0 <= 2 && kn > 0,
    };
  },
  'crossing-throat': (v) => {
    const { N_1, M_1, V_1, b_1, h_1 } = v as Named;
    const girth = 2 * (b_1 + h_1);
    const along = V_1 / (2 * b_1);
    const demand = sqrt((N_1 / girth + M_1 / (b_1 ** 2 / 3 + b_1 * h_1)) ** 2 + along ** 2);
    return {
      demand,
      capacity: weldStrength(v),
      of: demand,
      low: max(N_1 / girth + M_1 / (b_1 * (b_1 / 2 + h_1)), V_1 / girth),
      high: sqrt((N_1 / girth + M_1 / (b_1 * h_1)) ** 2 + along ** 2),
    };
  },
  'crossing-weld': (v) => {
    const capacity = weldStrength(v) * v.l_w!;
    const torn = v.f_u! * v.a_w! * v.l_w!;
    return { demand: v.F!, capacity, of: capacity, low: 0.3 * torn, high: torn / sqrt(3) };
  },

  'eye-net-tension': (v) => {
    const { t_e, f_y, f_u, c_e, d_0 } = v as Named;
    const capacity = (2 * t_e * f_y * (c_e - d_0 / 3)) / v.gamma_M0!;
    const high = 2 * t_e * f_u * min(c_e, 4 * t_e, ((0.6 * f_u) / f_y) * sqrt(c_e * d_0));
    return { demand: v.F!, capacity, of: capacity, high };
  },
  'eye-tear-out': (v) => {
    const { t_e, f_y, a_e, d_0, d, f_u, gamma_M0 } = v as Named;
    const capacity = min(
      (2 * t_e * f_y * (a_e - (2 * d_0) / 3)) / gamma_M0,
      (2 * t_e * a_e * f_y) / (sqrt(3) * gamma_M0),
    );
    const plane = a_e + (d / 2) * (1 - cos((((55 * π) / 180) * d) / d_0));
    return { demand: v.F!, capacity, of: capacity, high: (1.4 * f_u * t_e * plane) / 1.2 };
  },
  'eye-bearing': (v) => {
    const area = v.t_e! * v.d!;
    const capacity = (1.5 * area * v.f_y!) / v.gamma_M0!;
    return {
      demand: v.F!,
      capacity,
      of: capacity,
      low: 0.75 * area * v.f_y!,
      high: 1.5 * area * v.f_u!,
      inRange: v.d! >= 0.9 * v.d_0!,
    };
  },
  'eye-foot': (v) => {
    const { F_z, F_l, F_q, t_e, l_e, h_e } = v as Named;
    const σ = F_z / (t_e * l_e) + (6 * F_l * h_e) / (t_e * l_e ** 2) + (6 * F_q * h_e) / (l_e * t_e ** 2);
    const mean = (F_l + F_q) / (t_e * l_e);
    const demand = sqrt(σ ** 2 + 3 * (1.5 * mean) ** 2);
    const plastic = F_z / (t_e * l_e) + (4 * F_l * h_e) / (t_e * l_e ** 2) + (4 * F_q * h_e) / (l_e * t_e ** 2);
    return {
      demand,
      capacity: v.f_y! / v.gamma_M0!,
      of: demand,
      low: max(plastic, sqrt(3) * mean),
      high: sqrt(σ ** 2 + 4 * (1.5 * mean) ** 2),
    };
  },
  'eye-weld': (v) => {
    const { l_0, a_w, F_z, F_l, F_q, h_e, t_e, f_u, beta_w, gamma_M2 } = v as Named;
    const l = l_0 - 2 * a_w;
    const z = F_z / (2 * l) + (3 * F_l * h_e) / l ** 2 + (F_q * h_e) / (t_e * l);
    const h = F_q / (2 * l);
    const s = F_l / (2 * l);
    const normal = (z + h) / (sqrt(2) * a_w);
    const all = sqrt(normal ** 2 + 3 * ((z - h) ** 2 / (2 * a_w ** 2) + (s / a_w) ** 2));
    const demand = max((all * beta_w * gamma_M2) / f_u, (normal * gamma_M2) / (0.9 * f_u));
    const high = sqrt(z ** 2 + h ** 2 + s ** 2) / weldStrength(v);
    return { demand, capacity: 1, of: demand, low: high / sqrt(3), high, inRange: l > 0 };
  },
  'eye-tube-wall': (v) => {
    const { F_z, F_l, F_q, h_e, l_e, t_e, b_0, t_0, M_0, W_0, f_y0, gamma_M5 } = v as Named;
    const f = (min(1, 1.3 * (1 - M_0 / (W_0 * f_y0))) * f_y0 * t_0 ** 2) / gamma_M5;
    const capacity = f * ((2 * l_e) / b_0 + 4 * sqrt(1 - t_e / b_0));
    return {
      demand: F_z + (2 * F_l * h_e) / l_e + (2 * F_q * h_e) / t_e,
      capacity,
      of: capacity,
      low: (π / 2) * f,
      inRange: t_e <= 0.85 * b_0 && b_0 / t_0 <= 35,
    };
  },
  'suspension-slack': (v) => ({
    demand: v.F! / v.gamma_F!,
    capacity: (1 - v.i_W!) * v.k_slack! * v.W!,
    of: v.W!,
    low: v.W_sealed! - v.W_off!,
    high: v.W_flooded!,
  }),
  'hanging-stability': (v) => ({
    demand: max(v.phi_air!, v.phi_water!),
    capacity: v.phi_lim!,
    of: v.phi_air!,
    high: atan2(v.e!, v.h_G!),
  }),
};

/** Each symbol is there: the benchmark hands over the inputs that the check declares. */
type Named = Readonly<Record<KnownSymbols, number>>;
type KnownSymbols =
  | (
      | 'a'
      | 'b'
      | 't'
      | 'E'
      | 'nu'
      | 'p'
      | 'h'
      | 'f_y'
      | 'EI_edge'
      | 'L'
      | 'B'
      | 'n_x'
      | 'n_y'
      | 'a_b'
      | 'b_b'
      | 'i_x'
      | 'i_y'
      | 'd_w'
      | 'k_w'
      | 'four'
      | 'gamma_M1'
    )
  | (
      | 'e_1'
      | 'c_e'
      | 'e_2'
      | 'd_0'
      | 'p_1'
      | 'p_2'
      | 'f_ub'
      | 'A_s'
      | 'f_u'
      | 'f_yp'
      | 'd'
      | 'k_h'
      | 'e_w'
      | 'f_uw'
      | 'f_yw'
      | 't_w'
      | 'gamma_L'
      | 'k_dyn'
      | 'rho'
      | 'A_f'
      | 't_0'
      | 'g'
    )
  | (
      | 'a_w'
      | 'beta_w'
      | 'gamma_M2'
      | 'V'
      | 'M'
      | 'A_v'
      | 'gamma_M0'
      | 'W_pl'
      | 'W_el'
      | 'H'
      | 'f_235'
      | 'N'
      | 'A'
      | 'T'
      | 'W_t'
      | 'I_min'
      | 'L_cr'
      | 'alpha'
      | 'C_m'
      | 'l_1'
      | 'q'
      | 'n_l'
    )
  | (
      | 'gamma_F'
      | 'z'
      | 'b_1'
      | 'b_0'
      | 'h_1'
      | 'h_0'
      | 'N_0'
      | 'A_0'
      | 'M_0'
      | 'W_0'
      | 'f_y0'
      | 'gamma_M5'
      | 'N_1'
      | 'M_1'
      | 'V_1'
      | 't_e'
      | 'a_e'
      | 'F_z'
      | 'F_l'
      | 'F_q'
      | 'l_e'
      | 'h_e'
      | 'l_0'
    )
  | ('n_h' | 'd_h' | 'h_x' | 'h_y' | 'l_x' | 'l_y' | 'lost' | 'pulled' | 'l_f' | 'k_r');

const rigidity = (v: Given): number => (v.E! * v.t! ** 3) / (12 * (1 - v.nu! ** 2));
const boltShear = (v: Given): number => (v.alpha_v! * v.f_ub! * (v.threads! > 0 ? v.A_s! : v.A_b!)) / v.gamma_M2!;
const boltTension = (v: Given): number => (v.k_2! * v.f_ub! * v.A_s!) / v.gamma_M2!;
const weldStrength = (v: Given): number => (v.f_u! * v.a_w!) / (sqrt(3) * v.beta_w! * v.gamma_M2!);
const classRound = (v: Given, ε: number): [number, number] => [
  v.H! / v.t! / (70 * ε ** 2),
  v.H! / v.t! / (90 * ε ** 2),
];
const slenderness = (v: Given): [number, number, number] => [
  (v.B! - 3 * v.t!) / v.t!,
  (v.H! - 3 * v.t!) / v.t!,
  sqrt(v.f_235! / v.f_y!),
];

/** Section modulus of the class less that of bolt holes in a wall. */
const modulusLessHoles = ({ W_pl, W_el, n_h, d_h, t, H }: Given, r2: number): number =>
  (r2 <= 1 ? W_pl! : W_el!) - n_h! * d_h! * t! * (H! - t!);
const drilledWall = ({ round, B, t }: Given): number => (round! > 0 ? π / 4 : 1) * (B! - 2 * t!);
const holesFit = (v: Given): boolean => v.n_h! * v.d_h! < drilledWall(v);
const drilledStrength = ({ n_h, f_y, f_u, gamma_M0, gamma_M2 }: Given): number =>
  n_h! > 0 ? min(f_y! / gamma_M0!, (0.9 * f_u!) / gamma_M2!) : f_y! / gamma_M0!;

/** Span between the rows that hold the panel. */
const span = ({ h_x, h_y, a, b }: Named): number => (h_x > 0 ? (h_y > 0 ? min(a, b) : a) : b);

interface Bounded {
  readonly low: number;
  readonly high: number;
}

/** Verdict on a force by a resistance, each with its bounds: the second opinion is on the utilisation. */
function judged(force: Bounded & { readonly demand: number }, capacity: number, resistance: Bounded): ByHand {
  const { demand } = force;
  if (!(capacity > 0)) return { demand, capacity, of: 0, low: 0, high: 0 };
  const low = max(force.low / capacity, demand / resistance.high);
  const high = min(force.high / capacity, demand / resistance.low);
  return { demand, capacity, of: demand / capacity, low, high };
}

const pitchArea = ({ A_b, A_s }: Given): number => ((sqrt(A_b!) + 2 * sqrt(A_s!)) / 3) ** 2;
const shearAtPitchDiameter = (v: Given): Bounded => ({
  low: (0.5 * v.f_ub! * v.A_s!) / v.gamma_M2!,
  high: (0.62 * v.f_ub! * (v.threads! > 0 ? pitchArea(v) : v.A_b!)) / v.gamma_M2!,
});

/** Bounds of bearing: hole's centre to the edge before it, thickness, yield and ultimate strength. */
function bearing({ d, d_0, p_1, gamma_M2 }: Given, edge: number, t: number, f_y: number, f_u: number): Bounded {
  const own = min(edge - d_0! / 2, (p_1! - d_0!) / 2);
  return {
    low: (0.8 * f_y * d! * t * min(1, own / d_0!)) / gamma_M2!,
    high: (min((2 / sqrt(3)) * min(edge, p_1! - d_0! / 2), 3 * d!) * t * f_u) / gamma_M2!,
  };
}

/** Shear of a bolt from the pull in the plane of the panel. */
function inPlane(v: Given): Bounded & { readonly demand: number } {
  const { n_x, n_y, a_b, b_b, t, E, nu, p, h_x, h_y } = v as Named;
  const L = span(v);
  const pitch = max((h_y * a_b) / (n_x - 1), (h_x * b_b) / (n_y - 1));
  const demand = k['inPlanePull.hinged']!(L, L, t, E, nu, p) * pitch;
  const bent = ((17 / 280) * p ** 2 * L ** 6 * (1 - nu ** 2)) / (E * t ** 5);
  const most = min(bent, cbrt((E * t * (p * L) ** 2) / 18));
  const euler = (π ** 2 * rigidity(v)) / L ** 2;
  return { demand, low: (bent / (1 + most / euler) ** 2) * pitch, high: most * pitch };
}

/** Tension of the worst bolt. */
function pulledOff(v: Given): Bounded & { readonly demand: number } {
  const { a, b, t, E, nu, p, n_x, n_y, a_b, b_b, i_x, i_y, d_w, h_x, h_y, l_x, l_y, lost, pulled } = v as Named;
  const sx = a_b / (n_x - 1);
  const sy = b_b / (n_y - 1);
  const off = pulled * p;
  const gone = lost * off;
  const ap = a_b + 2 * i_x;
  const bp = b_b + 2 * i_y;
  const bolt = k['plate.bolted.boltPush']!(ap, bp, t, E, nu, off, n_x, n_y, i_x, i_y, d_w / 2 + t);
  const group = k['bolts.rowLost.group']!(a_b, b_b, n_x, n_y, i_x, i_y, gone);
  const rest = k['bolts.rowLost.plate']!(a_b, b_b, t, E, nu, gone, n_x, n_y, i_x, i_y);
  const held = k['plate.held.momentEdge']!(a, b, t, E, nu, p);
  const three = k['bolts.rowLost.edgeMoment']!(a, b, t, E, nu, gone);
  const edge = h_x * h_y > 0 ? max(held, three) : (p * (h_x > 0 ? a : b) ** 2) / 12;
  const demand = max(bolt, group, rest) + edge * max((h_x * sy) / l_x, (h_y * sx) / l_y);
  const all = off * ap * bp;
  const strip = off * (max(sx, sy) + 2 * max(i_x, i_y)) * min(ap, bp);
  const moment = (lost > 0 ? 0.5 : 0.125) * p * span(v) ** 2;
  const high = (lost > 0 ? all : strip) + (moment * max(sx, sy)) / min(l_x, l_y);
  return { demand, low: all / (2 * n_x + 2 * n_y - 4), high };
}

/** Forces on a weld along the panel's edge, for a unit length. */
function weldForces(v: Given): { f_z: number; f_h: number; m_r: number; f_r: number } {
  const { a, b, t, E, nu, p, h, h_x, h_y, l_f, k_r, pulled, a_w } = v as Named;
  const hinged = k['plate.hinged.reaction']!(a, b, t, E, nu, p);
  const held = k['plate.held.reaction']!(a, b, t, E, nu, p);
  const moment = k['plate.held.momentEdge']!(a, b, t, E, nu, p);
  const corner = k['plate.hinged.cornerForce']!(a, b, t, E, nu, p);
  const L = span(v);
  const four = h_x * h_y > 0;
  const edge = four ? moment : (p * L ** 2) / 12;
  const reaction = four ? max(hinged, held) : (p * L) / 2;
  const f_z = k_r * (pulled > 0 ? reaction : max(edge / l_f, four ? abs(corner) / (2 * l_f) : 0));
  const f_h = k_r * k['inPlanePull.hinged']!(L, L, t, E, nu, p);
  const m_r = (f_z * a_w) / (2 * sqrt(2)) + k_r * pulled * h * edge;
  return { f_z, f_h, m_r, f_r: sqrt(f_z ** 2 + f_h ** 2) };
}
