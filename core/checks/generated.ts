// Made by `npm run generate` from the expressions in core/checks; do not edit.
import { finite } from '../derive/finite.ts';

type Run = (v: Readonly<Record<string, number>>, k: Readonly<Record<string, (...values: number[]) => number>>) => number[];

export function panelBendingFourSides_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "f_y" | "h" | "EI_edge" | "gamma_M0", number>>, k: Readonly<Record<"plate.hinged.stress" | "plate.held.stress" | "plate.onEdgeBeams.g" | "plate.onEdgeBeams.momentRatio" | "yieldLine.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _f_y = v.f_y;
  const _h = v.h;
  const _EI_edge = v.EI_edge;
  const _gamma_M0 = v.gamma_M0;
  const _sigma_hinged = finite(k["plate.hinged.stress"](_a, _b, _t, _E, _nu, _p), "sigma_hinged");
  const _sigma_held = finite(k["plate.held.stress"](_a, _b, _t, _E, _nu, _p), "sigma_held");
  const _g = finite(k["plate.onEdgeBeams.g"](_a, _b, _t, _E, _nu, _p, _EI_edge), "g");
  const _r_M = finite(k["plate.onEdgeBeams.momentRatio"](_a, _b, _t, _E, _nu, _p, _EI_edge), "r_M");
  const _sigma_Ed = finite((_h > 0 ? _sigma_held : _sigma_hinged) + Math.max(finite(_r_M - 1, "r_M - 1"), 0) * _sigma_hinged, "sigma_Ed");
  const _sigma_Rd = finite(_f_y / _gamma_M0, "sigma_Rd");
  const _p_y = finite(k["yieldLine.hinged"](_a, _b, _t, _f_y), "p_y");
  const _sigma_low = finite(_p / finite(2 / finite(Math.sqrt(3), "sqrt(3)") * (1 + _h) * _p_y, "2 / sqrt(3) * (1 + h) * p_y") * _f_y, "sigma_low");
  const _sigma_high = finite(0.75 * _p * Math.pow(finite(Math.min(_a, _b), "min(a, b)"), 2) / finite(Math.pow(_t, 2), "t ^ 2") * Math.max(_r_M, 1), "sigma_high");
  const _range0 = finite(_g >= 0.5 ? 1 : 0, "range0");
  return [_sigma_hinged, _sigma_held, _g, _r_M, _sigma_Ed, _sigma_Rd, _p_y, _sigma_low, _sigma_high, _range0];
}

export function panelBendingFourSides_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "f_y" | "h" | "EI_edge" | "Omega_b", number>>, k: Readonly<Record<"plate.hinged.stress" | "plate.held.stress" | "plate.onEdgeBeams.g" | "plate.onEdgeBeams.momentRatio" | "yieldLine.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _f_y = v.f_y;
  const _h = v.h;
  const _EI_edge = v.EI_edge;
  const _Omega_b = v.Omega_b;
  const _sigma_hinged = finite(k["plate.hinged.stress"](_a, _b, _t, _E, _nu, _p), "sigma_hinged");
  const _sigma_held = finite(k["plate.held.stress"](_a, _b, _t, _E, _nu, _p), "sigma_held");
  const _g = finite(k["plate.onEdgeBeams.g"](_a, _b, _t, _E, _nu, _p, _EI_edge), "g");
  const _r_M = finite(k["plate.onEdgeBeams.momentRatio"](_a, _b, _t, _E, _nu, _p, _EI_edge), "r_M");
  const _sigma_Ed = finite((_h > 0 ? _sigma_held : _sigma_hinged) + Math.max(finite(_r_M - 1, "r_M - 1"), 0) * _sigma_hinged, "sigma_Ed");
  const _sigma_Rd = finite(_f_y / _Omega_b, "sigma_Rd");
  const _p_y = finite(k["yieldLine.hinged"](_a, _b, _t, _f_y), "p_y");
  const _sigma_low = finite(_p / finite(2 / finite(Math.sqrt(3), "sqrt(3)") * (1 + _h) * _p_y, "2 / sqrt(3) * (1 + h) * p_y") * _f_y, "sigma_low");
  const _sigma_high = finite(0.75 * _p * Math.pow(finite(Math.min(_a, _b), "min(a, b)"), 2) / finite(Math.pow(_t, 2), "t ^ 2") * Math.max(_r_M, 1), "sigma_high");
  const _range0 = finite(_g >= 0.5 ? 1 : 0, "range0");
  return [_sigma_hinged, _sigma_held, _g, _r_M, _sigma_Ed, _sigma_Rd, _p_y, _sigma_low, _sigma_high, _range0];
}

export function panelBendingTwoSides_partialFactors(v: Readonly<Record<"p" | "t" | "E" | "nu" | "f_y" | "L" | "B" | "h" | "gamma_M0", number>>, k: Readonly<Record<"plate.twoSided.hinged.stress" | "plate.twoSided.held.stress", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _f_y = v.f_y;
  const _L = v.L;
  const _B = v.B;
  const _h = v.h;
  const _gamma_M0 = v.gamma_M0;
  const _sigma_hinged = finite(k["plate.twoSided.hinged.stress"](_L, _B, _t, _E, _nu, _p), "sigma_hinged");
  const _sigma_held = finite(k["plate.twoSided.held.stress"](_L, _B, _t, _E, _nu, _p), "sigma_held");
  const _sigma_Ed = finite(_h > 0 ? _sigma_held : _sigma_hinged, "sigma_Ed");
  const _sigma_Rd = finite(_f_y / _gamma_M0, "sigma_Rd");
  const _sigma_low = finite(0.75 * Math.sqrt(3) / 2 * _p * Math.pow(_L, 2) / finite(Math.pow(_t, 2), "t ^ 2") / finite(1 + _h, "1 + h"), "sigma_low");
  const _sigma_high = finite(0.75 * _p * Math.pow(_L, 2) / finite(Math.pow(_t, 2), "t ^ 2") / finite(1 - _nu, "1 - nu"), "sigma_high");
  return [_sigma_hinged, _sigma_held, _sigma_Ed, _sigma_Rd, _sigma_low, _sigma_high];
}

export function panelBendingTwoSides_allowableStress(v: Readonly<Record<"p" | "t" | "E" | "nu" | "f_y" | "L" | "B" | "h" | "Omega_b", number>>, k: Readonly<Record<"plate.twoSided.hinged.stress" | "plate.twoSided.held.stress", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _f_y = v.f_y;
  const _L = v.L;
  const _B = v.B;
  const _h = v.h;
  const _Omega_b = v.Omega_b;
  const _sigma_hinged = finite(k["plate.twoSided.hinged.stress"](_L, _B, _t, _E, _nu, _p), "sigma_hinged");
  const _sigma_held = finite(k["plate.twoSided.held.stress"](_L, _B, _t, _E, _nu, _p), "sigma_held");
  const _sigma_Ed = finite(_h > 0 ? _sigma_held : _sigma_hinged, "sigma_Ed");
  const _sigma_Rd = finite(_f_y / _Omega_b, "sigma_Rd");
  const _sigma_low = finite(0.75 * Math.sqrt(3) / 2 * _p * Math.pow(_L, 2) / finite(Math.pow(_t, 2), "t ^ 2") / finite(1 + _h, "1 + h"), "sigma_low");
  const _sigma_high = finite(0.75 * _p * Math.pow(_L, 2) / finite(Math.pow(_t, 2), "t ^ 2") / finite(1 - _nu, "1 - nu"), "sigma_high");
  return [_sigma_hinged, _sigma_held, _sigma_Ed, _sigma_Rd, _sigma_low, _sigma_high];
}

export function panelBendingBolts_partialFactors(v: Readonly<Record<"p" | "t" | "E" | "nu" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "d_w" | "lost" | "f_y" | "gamma_M0", number>>, k: Readonly<Record<"plate.bolted.stress" | "bolts.rowLost.stress" | "yieldLine.held", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _d_w = v.d_w;
  const _lost = v.lost;
  const _f_y = v.f_y;
  const _gamma_M0 = v.gamma_M0;
  const _a_p = finite(_a_b + 2 * _i_x, "a_p");
  const _b_p = finite(_b_b + 2 * _i_y, "b_p");
  const _r_b = finite(_d_w / 2 + _t, "r_b");
  const _sigma_rows = finite(k["plate.bolted.stress"](_a_p, _b_p, _t, _E, _nu, _p, _n_x, _n_y, _i_x, _i_y, _r_b), "sigma_rows");
  const _p_lost = finite(_lost * _p, "p_lost");
  const _sigma_lost = finite(k["bolts.rowLost.stress"](_a_b, _b_b, _t, _E, _nu, _p_lost, _n_x, _n_y, _i_x, _i_y, _r_b), "sigma_lost");
  const _sigma_Ed = finite(Math.max(_sigma_rows, _sigma_lost), "sigma_Ed");
  const _sigma_Rd = finite(_f_y / _gamma_M0, "sigma_Rd");
  const _p_y = finite(k["yieldLine.held"](_a_b, _b_b, _t, _f_y), "p_y");
  const _sigma_low = finite(_p / finite(2 / finite(Math.sqrt(3), "sqrt(3)") * _p_y, "2 / sqrt(3) * p_y") * _f_y, "sigma_low");
  const _sigma_high = finite(1.5 * (_lost > 0 ? 3 : 0.75) * _p * Math.pow(finite(Math.max(_a_b, _b_b), "max(a_b, b_b)"), 2) / finite(Math.pow(_t, 2), "t ^ 2") + 3 * _p * Math.pow(finite(Math.max(_i_x, _i_y), "max(i_x, i_y)"), 2) / finite(Math.pow(_t, 2), "t ^ 2"), "sigma_high");
  return [_a_p, _b_p, _r_b, _sigma_rows, _p_lost, _sigma_lost, _sigma_Ed, _sigma_Rd, _p_y, _sigma_low, _sigma_high];
}

export function panelBendingBolts_allowableStress(v: Readonly<Record<"p" | "t" | "E" | "nu" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "d_w" | "lost" | "f_y" | "Omega_b", number>>, k: Readonly<Record<"plate.bolted.stress" | "bolts.rowLost.stress" | "yieldLine.held", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _d_w = v.d_w;
  const _lost = v.lost;
  const _f_y = v.f_y;
  const _Omega_b = v.Omega_b;
  const _a_p = finite(_a_b + 2 * _i_x, "a_p");
  const _b_p = finite(_b_b + 2 * _i_y, "b_p");
  const _r_b = finite(_d_w / 2 + _t, "r_b");
  const _sigma_rows = finite(k["plate.bolted.stress"](_a_p, _b_p, _t, _E, _nu, _p, _n_x, _n_y, _i_x, _i_y, _r_b), "sigma_rows");
  const _p_lost = finite(_lost * _p, "p_lost");
  const _sigma_lost = finite(k["bolts.rowLost.stress"](_a_b, _b_b, _t, _E, _nu, _p_lost, _n_x, _n_y, _i_x, _i_y, _r_b), "sigma_lost");
  const _sigma_Ed = finite(Math.max(_sigma_rows, _sigma_lost), "sigma_Ed");
  const _sigma_Rd = finite(_f_y / _Omega_b, "sigma_Rd");
  const _p_y = finite(k["yieldLine.held"](_a_b, _b_b, _t, _f_y), "p_y");
  const _sigma_low = finite(_p / finite(2 / finite(Math.sqrt(3), "sqrt(3)") * _p_y, "2 / sqrt(3) * p_y") * _f_y, "sigma_low");
  const _sigma_high = finite(1.5 * (_lost > 0 ? 3 : 0.75) * _p * Math.pow(finite(Math.max(_a_b, _b_b), "max(a_b, b_b)"), 2) / finite(Math.pow(_t, 2), "t ^ 2") + 3 * _p * Math.pow(finite(Math.max(_i_x, _i_y), "max(i_x, i_y)"), 2) / finite(Math.pow(_t, 2), "t ^ 2"), "sigma_high");
  return [_a_p, _b_p, _r_b, _sigma_rows, _p_lost, _sigma_lost, _sigma_Ed, _sigma_Rd, _p_y, _sigma_low, _sigma_high];
}

export function panelBendingBoltsByPlaces_partialFactors(v: Readonly<Record<"p" | "t" | "a_b" | "b_b" | "i_x" | "i_y" | "lost" | "f_y" | "gamma_M0" | "S_1" | "S_r", number>>, k: Readonly<Record<"yieldLine.held", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _t = v.t;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _lost = v.lost;
  const _f_y = v.f_y;
  const _gamma_M0 = v.gamma_M0;
  const _S_1 = v.S_1;
  const _S_r = v.S_r;
  const _sigma_rows = finite(_S_1 * _p / finite(Math.pow(_t, 2), "t ^ 2"), "sigma_rows");
  const _p_lost = finite(_lost * _p, "p_lost");
  const _sigma_lost = finite(_S_r * _p_lost / finite(Math.pow(_t, 2), "t ^ 2"), "sigma_lost");
  const _sigma_Ed = finite(Math.max(_sigma_rows, _sigma_lost), "sigma_Ed");
  const _sigma_Rd = finite(_f_y / _gamma_M0, "sigma_Rd");
  const _p_y = finite(k["yieldLine.held"](_a_b, _b_b, _t, _f_y), "p_y");
  const _sigma_low = finite(_p / finite(2 / finite(Math.sqrt(3), "sqrt(3)") * _p_y, "2 / sqrt(3) * p_y") * _f_y, "sigma_low");
  const _sigma_high = finite(1.5 * (_lost > 0 ? 3 : 0.75) * _p * Math.pow(finite(Math.max(_a_b, _b_b), "max(a_b, b_b)"), 2) / finite(Math.pow(_t, 2), "t ^ 2") + 3 * _p * Math.pow(finite(Math.max(_i_x, _i_y), "max(i_x, i_y)"), 2) / finite(Math.pow(_t, 2), "t ^ 2"), "sigma_high");
  return [_sigma_rows, _p_lost, _sigma_lost, _sigma_Ed, _sigma_Rd, _p_y, _sigma_low, _sigma_high];
}

export function panelBendingBoltsByPlaces_allowableStress(v: Readonly<Record<"p" | "t" | "a_b" | "b_b" | "i_x" | "i_y" | "lost" | "f_y" | "Omega_b" | "S_1" | "S_r", number>>, k: Readonly<Record<"yieldLine.held", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _t = v.t;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _lost = v.lost;
  const _f_y = v.f_y;
  const _Omega_b = v.Omega_b;
  const _S_1 = v.S_1;
  const _S_r = v.S_r;
  const _sigma_rows = finite(_S_1 * _p / finite(Math.pow(_t, 2), "t ^ 2"), "sigma_rows");
  const _p_lost = finite(_lost * _p, "p_lost");
  const _sigma_lost = finite(_S_r * _p_lost / finite(Math.pow(_t, 2), "t ^ 2"), "sigma_lost");
  const _sigma_Ed = finite(Math.max(_sigma_rows, _sigma_lost), "sigma_Ed");
  const _sigma_Rd = finite(_f_y / _Omega_b, "sigma_Rd");
  const _p_y = finite(k["yieldLine.held"](_a_b, _b_b, _t, _f_y), "p_y");
  const _sigma_low = finite(_p / finite(2 / finite(Math.sqrt(3), "sqrt(3)") * _p_y, "2 / sqrt(3) * p_y") * _f_y, "sigma_low");
  const _sigma_high = finite(1.5 * (_lost > 0 ? 3 : 0.75) * _p * Math.pow(finite(Math.max(_a_b, _b_b), "max(a_b, b_b)"), 2) / finite(Math.pow(_t, 2), "t ^ 2") + 3 * _p * Math.pow(finite(Math.max(_i_x, _i_y), "max(i_x, i_y)"), 2) / finite(Math.pow(_t, 2), "t ^ 2"), "sigma_high");
  return [_sigma_rows, _p_lost, _sigma_lost, _sigma_Ed, _sigma_Rd, _p_y, _sigma_low, _sigma_high];
}

export function panelStress_partialFactors(v: Readonly<Record<"sigma_n" | "alpha_n" | "t_n" | "p" | "a" | "b" | "t" | "f_y" | "gamma_M0", number>>, k: Readonly<Record<"yieldLine.hinged", (...values: number[]) => number>>): number[] {
  const _sigma_n = v.sigma_n;
  const _alpha_n = v.alpha_n;
  const _t_n = v.t_n;
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _f_y = v.f_y;
  const _gamma_M0 = v.gamma_M0;
  const _alpha_e = finite(_alpha_n * Math.pow(finite(_t / _t_n, "t / t_n"), 3), "alpha_e");
  const _k_2 = finite(_alpha_e >= 10 ? 1 : Math.abs(_alpha_e / finite(_alpha_e - 1, "alpha_e - 1")), "k_2");
  const _sigma_Ed = finite(_k_2 * _sigma_n * Math.pow(finite(_t_n / _t, "t_n / t"), 2), "sigma_Ed");
  const _sigma_Rd = finite(_f_y / _gamma_M0, "sigma_Rd");
  const _p_y = finite(k["yieldLine.hinged"](_a, _b, _t, _f_y), "p_y");
  const _sigma_low = finite(_p / finite(4 / finite(Math.sqrt(3), "sqrt(3)") * _p_y, "4 / sqrt(3) * p_y") * _f_y, "sigma_low");
  const _range0 = finite(_alpha_e > 1 ? 1 : 0, "range0");
  return [_alpha_e, _k_2, _sigma_Ed, _sigma_Rd, _p_y, _sigma_low, _range0];
}

export function panelStress_allowableStress(v: Readonly<Record<"sigma_n" | "alpha_n" | "t_n" | "p" | "a" | "b" | "t" | "f_y" | "Omega_b", number>>, k: Readonly<Record<"yieldLine.hinged", (...values: number[]) => number>>): number[] {
  const _sigma_n = v.sigma_n;
  const _alpha_n = v.alpha_n;
  const _t_n = v.t_n;
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _f_y = v.f_y;
  const _Omega_b = v.Omega_b;
  const _alpha_e = finite(_alpha_n * Math.pow(finite(_t / _t_n, "t / t_n"), 3), "alpha_e");
  const _k_2 = finite(_alpha_e >= 10 ? 1 : Math.abs(_alpha_e / finite(_alpha_e - 1, "alpha_e - 1")), "k_2");
  const _sigma_Ed = finite(_k_2 * _sigma_n * Math.pow(finite(_t_n / _t, "t_n / t"), 2), "sigma_Ed");
  const _sigma_Rd = finite(_f_y / _Omega_b, "sigma_Rd");
  const _p_y = finite(k["yieldLine.hinged"](_a, _b, _t, _f_y), "p_y");
  const _sigma_low = finite(_p / finite(4 / finite(Math.sqrt(3), "sqrt(3)") * _p_y, "4 / sqrt(3) * p_y") * _f_y, "sigma_low");
  const _range0 = finite(_alpha_e > 1 ? 1 : 0, "range0");
  return [_alpha_e, _k_2, _sigma_Ed, _sigma_Rd, _p_y, _sigma_low, _range0];
}

export function panelShear_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "f_y" | "four" | "L" | "gamma_M0", number>>, k: Readonly<Record<"plate.hinged.reaction" | "plate.held.reaction", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _f_y = v.f_y;
  const _four = v.four;
  const _L = v.L;
  const _gamma_M0 = v.gamma_M0;
  const _V_hinged = finite(k["plate.hinged.reaction"](_a, _b, _t, _E, _nu, _p), "V_hinged");
  const _V_held = finite(k["plate.held.reaction"](_a, _b, _t, _E, _nu, _p), "V_held");
  const _V_Ed = finite(_four > 0 ? Math.max(_V_hinged, _V_held) : _p * _L / 2, "V_Ed");
  const _tau_Ed = finite(_V_Ed / _t, "tau_Ed");
  const _tau_Rd = finite(_f_y / finite(Math.sqrt(3) * _gamma_M0, "sqrt(3) * gamma_M0"), "tau_Rd");
  const _tau_low = finite((_four > 0 ? _p * _a * _b / finite(2 * (_a + _b), "2 * (a + b)") : _p * _L / 2) / _t, "tau_low");
  const _tau_high = finite(0.6 * _p * (_four > 0 ? Math.min(_a, _b) : _L) / _t, "tau_high");
  return [_V_hinged, _V_held, _V_Ed, _tau_Ed, _tau_Rd, _tau_low, _tau_high];
}

export function panelShear_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "f_y" | "four" | "L" | "Omega_v", number>>, k: Readonly<Record<"plate.hinged.reaction" | "plate.held.reaction", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _f_y = v.f_y;
  const _four = v.four;
  const _L = v.L;
  const _Omega_v = v.Omega_v;
  const _V_hinged = finite(k["plate.hinged.reaction"](_a, _b, _t, _E, _nu, _p), "V_hinged");
  const _V_held = finite(k["plate.held.reaction"](_a, _b, _t, _E, _nu, _p), "V_held");
  const _V_Ed = finite(_four > 0 ? Math.max(_V_hinged, _V_held) : _p * _L / 2, "V_Ed");
  const _tau_Ed = finite(_V_Ed / _t, "tau_Ed");
  const _tau_Rd = finite(0.6 * _f_y / _Omega_v, "tau_Rd");
  const _tau_low = finite((_four > 0 ? _p * _a * _b / finite(2 * (_a + _b), "2 * (a + b)") : _p * _L / 2) / _t, "tau_low");
  const _tau_high = finite(0.6 * _p * (_four > 0 ? Math.min(_a, _b) : _L) / _t, "tau_high");
  return [_V_hinged, _V_held, _V_Ed, _tau_Ed, _tau_Rd, _tau_low, _tau_high];
}

export function panelDeflectionFourSides_partialFactors(v: Readonly<Record<"p_ser" | "a" | "b" | "t" | "E" | "nu" | "h" | "EI_edge" | "k_w", number>>, k: Readonly<Record<"plate.hinged.deflection" | "plate.sliding.deflection" | "plate.held.deflection" | "plate.onEdgeBeams.g" | "plate.onEdgeBeams.deflectionRatio", (...values: number[]) => number>>): number[] {
  const _p_ser = v.p_ser;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h = v.h;
  const _EI_edge = v.EI_edge;
  const _k_w = v.k_w;
  const _w_hinged = finite(k["plate.hinged.deflection"](_a, _b, _t, _E, _nu, _p_ser), "w_hinged");
  const _w_slides = finite(k["plate.sliding.deflection"](_a, _b, _t, _E, _nu, _p_ser), "w_slides");
  const _w_held = finite(k["plate.held.deflection"](_a, _b, _t, _E, _nu, _p_ser), "w_held");
  const _g = finite(k["plate.onEdgeBeams.g"](_a, _b, _t, _E, _nu, _p_ser, _EI_edge), "g");
  const _r_w = finite(k["plate.onEdgeBeams.deflectionRatio"](_a, _b, _t, _E, _nu, _p_ser, _EI_edge), "r_w");
  const _w_Ed = finite((_h > 0 ? _w_held : _w_slides) + Math.max(finite(_r_w - 1, "r_w - 1"), 0) * _w_hinged, "w_Ed");
  const _w_lim = finite(Math.min(_a, _b) / _k_w, "w_lim");
  const _D = finite(_E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)), "12 * (1 - nu ^ 2)"), "D");
  const _s_w = finite(Math.min(_a, _b), "s_w");
  const _k_plate = finite(_D / finite((_h > 0 ? 0.00126 : 0.00406) * Math.pow(_s_w, 4), "(h > 0 ? 0.00126 : 0.00406) * s_w ^ 4"), "k_plate");
  const _k_sheet = finite(Math.cbrt(Math.pow(_p_ser, 2) * _E * _t / finite(_s_w / 2, "s_w / 2")) / finite(0.802 * _s_w / 2, "0.802 * s_w / 2"), "k_sheet");
  const _w_low = finite(_p_ser / finite(_k_plate + _k_sheet, "k_plate + k_sheet"), "w_low");
  const _w_high = finite(1.02 * Math.min(finite(5 / 384, "5 / 384"), finite(16 / finite(Math.pow(Math.PI, 6) * Math.pow(finite(1 + Math.pow(finite(_s_w / finite(Math.max(_a, _b), "max(a, b)"), "s_w / max(a, b)"), 2), "1 + (s_w / max(a, b)) ^ 2"), 2), "pi ^ 6 * (1 + (s_w / max(a, b)) ^ 2) ^ 2"), "16 / (pi ^ 6 * (1 + (s_w / max(a, b)) ^ 2) ^ 2)")) * _p_ser * Math.pow(_s_w, 4) / _D * Math.max(_r_w, 1), "w_high");
  const _range0 = finite(_g >= 0.5 ? 1 : 0, "range0");
  return [_w_hinged, _w_slides, _w_held, _g, _r_w, _w_Ed, _w_lim, _D, _s_w, _k_plate, _k_sheet, _w_low, _w_high, _range0];
}

export function panelDeflectionFourSides_allowableStress(v: Readonly<Record<"p_ser" | "a" | "b" | "t" | "E" | "nu" | "h" | "EI_edge" | "k_w", number>>, k: Readonly<Record<"plate.hinged.deflection" | "plate.sliding.deflection" | "plate.held.deflection" | "plate.onEdgeBeams.g" | "plate.onEdgeBeams.deflectionRatio", (...values: number[]) => number>>): number[] {
  const _p_ser = v.p_ser;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h = v.h;
  const _EI_edge = v.EI_edge;
  const _k_w = v.k_w;
  const _w_hinged = finite(k["plate.hinged.deflection"](_a, _b, _t, _E, _nu, _p_ser), "w_hinged");
  const _w_slides = finite(k["plate.sliding.deflection"](_a, _b, _t, _E, _nu, _p_ser), "w_slides");
  const _w_held = finite(k["plate.held.deflection"](_a, _b, _t, _E, _nu, _p_ser), "w_held");
  const _g = finite(k["plate.onEdgeBeams.g"](_a, _b, _t, _E, _nu, _p_ser, _EI_edge), "g");
  const _r_w = finite(k["plate.onEdgeBeams.deflectionRatio"](_a, _b, _t, _E, _nu, _p_ser, _EI_edge), "r_w");
  const _w_Ed = finite((_h > 0 ? _w_held : _w_slides) + Math.max(finite(_r_w - 1, "r_w - 1"), 0) * _w_hinged, "w_Ed");
  const _w_lim = finite(Math.min(_a, _b) / _k_w, "w_lim");
  const _D = finite(_E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)), "12 * (1 - nu ^ 2)"), "D");
  const _s_w = finite(Math.min(_a, _b), "s_w");
  const _k_plate = finite(_D / finite((_h > 0 ? 0.00126 : 0.00406) * Math.pow(_s_w, 4), "(h > 0 ? 0.00126 : 0.00406) * s_w ^ 4"), "k_plate");
  const _k_sheet = finite(Math.cbrt(Math.pow(_p_ser, 2) * _E * _t / finite(_s_w / 2, "s_w / 2")) / finite(0.802 * _s_w / 2, "0.802 * s_w / 2"), "k_sheet");
  const _w_low = finite(_p_ser / finite(_k_plate + _k_sheet, "k_plate + k_sheet"), "w_low");
  const _w_high = finite(1.02 * Math.min(finite(5 / 384, "5 / 384"), finite(16 / finite(Math.pow(Math.PI, 6) * Math.pow(finite(1 + Math.pow(finite(_s_w / finite(Math.max(_a, _b), "max(a, b)"), "s_w / max(a, b)"), 2), "1 + (s_w / max(a, b)) ^ 2"), 2), "pi ^ 6 * (1 + (s_w / max(a, b)) ^ 2) ^ 2"), "16 / (pi ^ 6 * (1 + (s_w / max(a, b)) ^ 2) ^ 2)")) * _p_ser * Math.pow(_s_w, 4) / _D * Math.max(_r_w, 1), "w_high");
  const _range0 = finite(_g >= 0.5 ? 1 : 0, "range0");
  return [_w_hinged, _w_slides, _w_held, _g, _r_w, _w_Ed, _w_lim, _D, _s_w, _k_plate, _k_sheet, _w_low, _w_high, _range0];
}

export function panelDeflectionFourSidesBySolution_partialFactors(v: Readonly<Record<"p_ser" | "a" | "b" | "t" | "E" | "nu" | "EI_edge" | "k_w" | "w_1" | "t_n" | "s_o" | "p_F", number>>, k: Readonly<Record<"plate.onEdgeBeams.g", (...values: number[]) => number>>): number[] {
  const _p_ser = v.p_ser;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _EI_edge = v.EI_edge;
  const _k_w = v.k_w;
  const _w_1 = v.w_1;
  const _t_n = v.t_n;
  const _s_o = v.s_o;
  const _p_F = v.p_F;
  const _g = finite(k["plate.onEdgeBeams.g"](_a, _b, _t, _E, _nu, _p_ser, _EI_edge), "g");
  const _w_Ed = finite(_w_1 * _p_ser / _p_F * Math.pow(finite(_t_n / _t, "t_n / t"), 3), "w_Ed");
  const _w_lim = finite(Math.min(_a, _b) / _k_w, "w_lim");
  const _D = finite(_E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)), "12 * (1 - nu ^ 2)"), "D");
  const _w_low = finite(0.98 * 0.00126 * _p_ser * Math.pow(_s_o, 4) / _D, "w_low");
  const _range0 = finite(_g >= 0.5 ? 1 : 0, "range0");
  return [_g, _w_Ed, _w_lim, _D, _w_low, _range0];
}

export function panelDeflectionFourSidesBySolution_allowableStress(v: Readonly<Record<"p_ser" | "a" | "b" | "t" | "E" | "nu" | "EI_edge" | "k_w" | "w_1" | "t_n" | "s_o" | "p_F", number>>, k: Readonly<Record<"plate.onEdgeBeams.g", (...values: number[]) => number>>): number[] {
  const _p_ser = v.p_ser;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _EI_edge = v.EI_edge;
  const _k_w = v.k_w;
  const _w_1 = v.w_1;
  const _t_n = v.t_n;
  const _s_o = v.s_o;
  const _p_F = v.p_F;
  const _g = finite(k["plate.onEdgeBeams.g"](_a, _b, _t, _E, _nu, _p_ser, _EI_edge), "g");
  const _w_Ed = finite(_w_1 * _p_ser / _p_F * Math.pow(finite(_t_n / _t, "t_n / t"), 3), "w_Ed");
  const _w_lim = finite(Math.min(_a, _b) / _k_w, "w_lim");
  const _D = finite(_E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)), "12 * (1 - nu ^ 2)"), "D");
  const _w_low = finite(0.98 * 0.00126 * _p_ser * Math.pow(_s_o, 4) / _D, "w_low");
  const _range0 = finite(_g >= 0.5 ? 1 : 0, "range0");
  return [_g, _w_Ed, _w_lim, _D, _w_low, _range0];
}

export function panelDeflectionTwoSides_partialFactors(v: Readonly<Record<"p_ser" | "t" | "E" | "nu" | "L" | "B" | "h" | "k_w", number>>, k: Readonly<Record<"plate.twoSided.hinged.deflection" | "plate.twoSided.held.deflection", (...values: number[]) => number>>): number[] {
  const _p_ser = v.p_ser;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _L = v.L;
  const _B = v.B;
  const _h = v.h;
  const _k_w = v.k_w;
  const _w_hinged = finite(k["plate.twoSided.hinged.deflection"](_L, _B, _t, _E, _nu, _p_ser), "w_hinged");
  const _w_held = finite(k["plate.twoSided.held.deflection"](_L, _B, _t, _E, _nu, _p_ser), "w_held");
  const _w_Ed = finite(_h > 0 ? _w_held : _w_hinged, "w_Ed");
  const _w_lim = finite(_L / _k_w, "w_lim");
  const _D = finite(_E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)), "12 * (1 - nu ^ 2)"), "D");
  const _w_low = finite(_p_ser * Math.pow(_L, 4) / finite(384 * _D, "384 * D"), "w_low");
  const _w_high = finite(5 / 384 * _p_ser * Math.pow(_L, 4) / finite(_D * (1 - _nu), "D * (1 - nu)"), "w_high");
  return [_w_hinged, _w_held, _w_Ed, _w_lim, _D, _w_low, _w_high];
}

export function panelDeflectionTwoSides_allowableStress(v: Readonly<Record<"p_ser" | "t" | "E" | "nu" | "L" | "B" | "h" | "k_w", number>>, k: Readonly<Record<"plate.twoSided.hinged.deflection" | "plate.twoSided.held.deflection", (...values: number[]) => number>>): number[] {
  const _p_ser = v.p_ser;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _L = v.L;
  const _B = v.B;
  const _h = v.h;
  const _k_w = v.k_w;
  const _w_hinged = finite(k["plate.twoSided.hinged.deflection"](_L, _B, _t, _E, _nu, _p_ser), "w_hinged");
  const _w_held = finite(k["plate.twoSided.held.deflection"](_L, _B, _t, _E, _nu, _p_ser), "w_held");
  const _w_Ed = finite(_h > 0 ? _w_held : _w_hinged, "w_Ed");
  const _w_lim = finite(_L / _k_w, "w_lim");
  const _D = finite(_E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)), "12 * (1 - nu ^ 2)"), "D");
  const _w_low = finite(_p_ser * Math.pow(_L, 4) / finite(384 * _D, "384 * D"), "w_low");
  const _w_high = finite(5 / 384 * _p_ser * Math.pow(_L, 4) / finite(_D * (1 - _nu), "D * (1 - nu)"), "w_high");
  return [_w_hinged, _w_held, _w_Ed, _w_lim, _D, _w_low, _w_high];
}

export function panelDeflectionTwoSidesBySolution_partialFactors(v: Readonly<Record<"p_ser" | "t" | "E" | "nu" | "L" | "k_w" | "w_1" | "t_n" | "s_o" | "p_F", number>>): number[] {
  const _p_ser = v.p_ser;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _L = v.L;
  const _k_w = v.k_w;
  const _w_1 = v.w_1;
  const _t_n = v.t_n;
  const _s_o = v.s_o;
  const _p_F = v.p_F;
  const _w_Ed = finite(_w_1 * _p_ser / _p_F * Math.pow(finite(_t_n / _t, "t_n / t"), 3), "w_Ed");
  const _w_lim = finite(_L / _k_w, "w_lim");
  const _D = finite(_E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)), "12 * (1 - nu ^ 2)"), "D");
  const _w_low = finite(0.98 * 0.00126 * _p_ser * Math.pow(_s_o, 4) / _D, "w_low");
  return [_w_Ed, _w_lim, _D, _w_low];
}

export function panelDeflectionTwoSidesBySolution_allowableStress(v: Readonly<Record<"p_ser" | "t" | "E" | "nu" | "L" | "k_w" | "w_1" | "t_n" | "s_o" | "p_F", number>>): number[] {
  const _p_ser = v.p_ser;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _L = v.L;
  const _k_w = v.k_w;
  const _w_1 = v.w_1;
  const _t_n = v.t_n;
  const _s_o = v.s_o;
  const _p_F = v.p_F;
  const _w_Ed = finite(_w_1 * _p_ser / _p_F * Math.pow(finite(_t_n / _t, "t_n / t"), 3), "w_Ed");
  const _w_lim = finite(_L / _k_w, "w_lim");
  const _D = finite(_E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)), "12 * (1 - nu ^ 2)"), "D");
  const _w_low = finite(0.98 * 0.00126 * _p_ser * Math.pow(_s_o, 4) / _D, "w_low");
  return [_w_Ed, _w_lim, _D, _w_low];
}

export function panelDeflectionBolts_partialFactors(v: Readonly<Record<"p_ser" | "t" | "E" | "nu" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "d_w" | "k_w", number>>, k: Readonly<Record<"plate.bolted.deflection", (...values: number[]) => number>>): number[] {
  const _p_ser = v.p_ser;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _d_w = v.d_w;
  const _k_w = v.k_w;
  const _a_p = finite(_a_b + 2 * _i_x, "a_p");
  const _b_p = finite(_b_b + 2 * _i_y, "b_p");
  const _r_b = finite(_d_w / 2 + _t, "r_b");
  const _w_Ed = finite(k["plate.bolted.deflection"](_a_p, _b_p, _t, _E, _nu, _p_ser, _n_x, _n_y, _i_x, _i_y, _r_b), "w_Ed");
  const _w_lim = finite(Math.min(_a_b, _b_b) / _k_w, "w_lim");
  const _D = finite(_E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)), "12 * (1 - nu ^ 2)"), "D");
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _a_r = finite(Math.max(finite(_a_b - _i_x, "a_b - i_x"), finite(_a_b / 100, "a_b / 100")), "a_r");
  const _b_r = finite(Math.max(finite(_b_b - _i_y, "b_b - i_y"), finite(_b_b / 100, "b_b / 100")), "b_r");
  const _w_lines = finite(_p_ser / _D * Math.max(finite(0.00406 * Math.pow(finite(Math.min(_a_r, _b_r), "min(a_r, b_r)"), 4), "0.00406 * min(a_r, b_r) ^ 4"), finite(5 / 384 * Math.pow(finite(_a_r * _b_r, "a_r * b_r"), 4) / finite(Math.pow(finite(Math.pow(_a_r, 2) + Math.pow(_b_r, 2), "a_r ^ 2 + b_r ^ 2"), 2), "(a_r ^ 2 + b_r ^ 2) ^ 2"), "5 / 384 * (a_r * b_r) ^ 4 / (a_r ^ 2 + b_r ^ 2) ^ 2")), "w_lines");
  const _w_gap = finite(_p_ser / finite(384 * _D, "384 * D") * Math.max(finite(_n_x < 3 ? 5 * Math.pow(_a_r, 4) : Math.pow(_s_x, 4), "n_x < 3 ? 5 * a_r ^ 4 : s_x ^ 4"), finite(_n_y < 3 ? 5 * Math.pow(_b_r, 4) : Math.pow(_s_y, 4), "n_y < 3 ? 5 * b_r ^ 4 : s_y ^ 4")), "w_gap");
  const _w_low = finite(0.98 * Math.max(_w_lines, _w_gap), "w_low");
  const _w_both = finite(_p_ser / _D * Math.min(finite(5 / 384 * Math.pow(finite(Math.min(_a_b, _b_b), "min(a_b, b_b)"), 4), "5 / 384 * min(a_b, b_b) ^ 4"), finite(16 / finite(Math.pow(Math.PI, 6), "pi ^ 6") * Math.pow(finite(_a_b * _b_b, "a_b * b_b"), 4) / finite(Math.pow(finite(Math.pow(_a_b, 2) + Math.pow(_b_b, 2), "a_b ^ 2 + b_b ^ 2"), 2), "(a_b ^ 2 + b_b ^ 2) ^ 2"), "16 / pi ^ 6 * (a_b * b_b) ^ 4 / (a_b ^ 2 + b_b ^ 2) ^ 2")), "w_both");
  const _w_row_x = finite(1.2 * 5 / 32 * _p_ser / finite(_E * Math.pow(_t, 3), "E * t ^ 3") * Math.max(_s_x, _b_p) * Math.pow(_s_x, 3), "w_row_x");
  const _w_row_y = finite(1.2 * 5 / 32 * _p_ser / finite(_E * Math.pow(_t, 3), "E * t ^ 3") * Math.max(_s_y, _a_p) * Math.pow(_s_y, 3), "w_row_y");
  const _w_over = finite(1.2 * 12 * _p_ser / finite(_E * Math.pow(_t, 3), "E * t ^ 3") * (Math.pow(_i_x, 3) * (_i_x / 8 + _a_b / 4) + Math.pow(_i_y, 3) * (_i_y / 8 + _b_b / 4)), "w_over");
  const _w_high = finite(1.02 * Math.min(finite(_w_both + _w_row_x + _w_row_y, "w_both + w_row_x + w_row_y"), finite(5 / 384 * _p_ser * Math.pow(_a_b, 4) / finite(_D * (1 - _nu), "D * (1 - nu)") + _w_row_y, "5 / 384 * p_ser * a_b ^ 4 / (D * (1 - nu)) + w_row_y"), finite(5 / 384 * _p_ser * Math.pow(_b_b, 4) / finite(_D * (1 - _nu), "D * (1 - nu)") + _w_row_x, "5 / 384 * p_ser * b_b ^ 4 / (D * (1 - nu)) + w_row_x")) + _w_over, "w_high");
  return [_a_p, _b_p, _r_b, _w_Ed, _w_lim, _D, _s_x, _s_y, _a_r, _b_r, _w_lines, _w_gap, _w_low, _w_both, _w_row_x, _w_row_y, _w_over, _w_high];
}

export function panelDeflectionBolts_allowableStress(v: Readonly<Record<"p_ser" | "t" | "E" | "nu" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "d_w" | "k_w", number>>, k: Readonly<Record<"plate.bolted.deflection", (...values: number[]) => number>>): number[] {
  const _p_ser = v.p_ser;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _d_w = v.d_w;
  const _k_w = v.k_w;
  const _a_p = finite(_a_b + 2 * _i_x, "a_p");
  const _b_p = finite(_b_b + 2 * _i_y, "b_p");
  const _r_b = finite(_d_w / 2 + _t, "r_b");
  const _w_Ed = finite(k["plate.bolted.deflection"](_a_p, _b_p, _t, _E, _nu, _p_ser, _n_x, _n_y, _i_x, _i_y, _r_b), "w_Ed");
  const _w_lim = finite(Math.min(_a_b, _b_b) / _k_w, "w_lim");
  const _D = finite(_E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)), "12 * (1 - nu ^ 2)"), "D");
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _a_r = finite(Math.max(finite(_a_b - _i_x, "a_b - i_x"), finite(_a_b / 100, "a_b / 100")), "a_r");
  const _b_r = finite(Math.max(finite(_b_b - _i_y, "b_b - i_y"), finite(_b_b / 100, "b_b / 100")), "b_r");
  const _w_lines = finite(_p_ser / _D * Math.max(finite(0.00406 * Math.pow(finite(Math.min(_a_r, _b_r), "min(a_r, b_r)"), 4), "0.00406 * min(a_r, b_r) ^ 4"), finite(5 / 384 * Math.pow(finite(_a_r * _b_r, "a_r * b_r"), 4) / finite(Math.pow(finite(Math.pow(_a_r, 2) + Math.pow(_b_r, 2), "a_r ^ 2 + b_r ^ 2"), 2), "(a_r ^ 2 + b_r ^ 2) ^ 2"), "5 / 384 * (a_r * b_r) ^ 4 / (a_r ^ 2 + b_r ^ 2) ^ 2")), "w_lines");
  const _w_gap = finite(_p_ser / finite(384 * _D, "384 * D") * Math.max(finite(_n_x < 3 ? 5 * Math.pow(_a_r, 4) : Math.pow(_s_x, 4), "n_x < 3 ? 5 * a_r ^ 4 : s_x ^ 4"), finite(_n_y < 3 ? 5 * Math.pow(_b_r, 4) : Math.pow(_s_y, 4), "n_y < 3 ? 5 * b_r ^ 4 : s_y ^ 4")), "w_gap");
  const _w_low = finite(0.98 * Math.max(_w_lines, _w_gap), "w_low");
  const _w_both = finite(_p_ser / _D * Math.min(finite(5 / 384 * Math.pow(finite(Math.min(_a_b, _b_b), "min(a_b, b_b)"), 4), "5 / 384 * min(a_b, b_b) ^ 4"), finite(16 / finite(Math.pow(Math.PI, 6), "pi ^ 6") * Math.pow(finite(_a_b * _b_b, "a_b * b_b"), 4) / finite(Math.pow(finite(Math.pow(_a_b, 2) + Math.pow(_b_b, 2), "a_b ^ 2 + b_b ^ 2"), 2), "(a_b ^ 2 + b_b ^ 2) ^ 2"), "16 / pi ^ 6 * (a_b * b_b) ^ 4 / (a_b ^ 2 + b_b ^ 2) ^ 2")), "w_both");
  const _w_row_x = finite(1.2 * 5 / 32 * _p_ser / finite(_E * Math.pow(_t, 3), "E * t ^ 3") * Math.max(_s_x, _b_p) * Math.pow(_s_x, 3), "w_row_x");
  const _w_row_y = finite(1.2 * 5 / 32 * _p_ser / finite(_E * Math.pow(_t, 3), "E * t ^ 3") * Math.max(_s_y, _a_p) * Math.pow(_s_y, 3), "w_row_y");
  const _w_over = finite(1.2 * 12 * _p_ser / finite(_E * Math.pow(_t, 3), "E * t ^ 3") * (Math.pow(_i_x, 3) * (_i_x / 8 + _a_b / 4) + Math.pow(_i_y, 3) * (_i_y / 8 + _b_b / 4)), "w_over");
  const _w_high = finite(1.02 * Math.min(finite(_w_both + _w_row_x + _w_row_y, "w_both + w_row_x + w_row_y"), finite(5 / 384 * _p_ser * Math.pow(_a_b, 4) / finite(_D * (1 - _nu), "D * (1 - nu)") + _w_row_y, "5 / 384 * p_ser * a_b ^ 4 / (D * (1 - nu)) + w_row_y"), finite(5 / 384 * _p_ser * Math.pow(_b_b, 4) / finite(_D * (1 - _nu), "D * (1 - nu)") + _w_row_x, "5 / 384 * p_ser * b_b ^ 4 / (D * (1 - nu)) + w_row_x")) + _w_over, "w_high");
  return [_a_p, _b_p, _r_b, _w_Ed, _w_lim, _D, _s_x, _s_y, _a_r, _b_r, _w_lines, _w_gap, _w_low, _w_both, _w_row_x, _w_row_y, _w_over, _w_high];
}

export function panelDeflectionBoltsBySolution_partialFactors(v: Readonly<Record<"p_ser" | "t" | "E" | "nu" | "a_b" | "b_b" | "k_w" | "w_1" | "t_n" | "s_o" | "p_F", number>>): number[] {
  const _p_ser = v.p_ser;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _k_w = v.k_w;
  const _w_1 = v.w_1;
  const _t_n = v.t_n;
  const _s_o = v.s_o;
  const _p_F = v.p_F;
  const _w_Ed = finite(_w_1 * _p_ser / _p_F * Math.pow(finite(_t_n / _t, "t_n / t"), 3), "w_Ed");
  const _w_lim = finite(Math.min(_a_b, _b_b) / _k_w, "w_lim");
  const _D = finite(_E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)), "12 * (1 - nu ^ 2)"), "D");
  const _w_low = finite(0.98 * 0.00126 * _p_ser * Math.pow(_s_o, 4) / _D, "w_low");
  return [_w_Ed, _w_lim, _D, _w_low];
}

export function panelDeflectionBoltsBySolution_allowableStress(v: Readonly<Record<"p_ser" | "t" | "E" | "nu" | "a_b" | "b_b" | "k_w" | "w_1" | "t_n" | "s_o" | "p_F", number>>): number[] {
  const _p_ser = v.p_ser;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _k_w = v.k_w;
  const _w_1 = v.w_1;
  const _t_n = v.t_n;
  const _s_o = v.s_o;
  const _p_F = v.p_F;
  const _w_Ed = finite(_w_1 * _p_ser / _p_F * Math.pow(finite(_t_n / _t, "t_n / t"), 3), "w_Ed");
  const _w_lim = finite(Math.min(_a_b, _b_b) / _k_w, "w_lim");
  const _D = finite(_E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)), "12 * (1 - nu ^ 2)"), "D");
  const _w_low = finite(0.98 * 0.00126 * _p_ser * Math.pow(_s_o, 4) / _D, "w_low");
  return [_w_Ed, _w_lim, _D, _w_low];
}

export function panelDeflectionBoltsByPlaces_partialFactors(v: Readonly<Record<"p_ser" | "t" | "E" | "nu" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "k_w" | "s_x" | "s_y" | "a_p" | "b_p" | "W_1", number>>): number[] {
  const _p_ser = v.p_ser;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _k_w = v.k_w;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _a_p = v.a_p;
  const _b_p = v.b_p;
  const _W_1 = v.W_1;
  const _w_Ed = finite(12 * (1 - Math.pow(_nu, 2)) * _W_1 * _p_ser / finite(_E * Math.pow(_t, 3), "E * t ^ 3"), "w_Ed");
  const _w_lim = finite(Math.min(_a_b, _b_b) / _k_w, "w_lim");
  const _D = finite(_E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)), "12 * (1 - nu ^ 2)"), "D");
  const _a_r = finite(Math.max(finite(_a_b - _i_x, "a_b - i_x"), finite(_a_b / 100, "a_b / 100")), "a_r");
  const _b_r = finite(Math.max(finite(_b_b - _i_y, "b_b - i_y"), finite(_b_b / 100, "b_b / 100")), "b_r");
  const _w_lines = finite(_p_ser / _D * Math.max(finite(0.00406 * Math.pow(finite(Math.min(_a_r, _b_r), "min(a_r, b_r)"), 4), "0.00406 * min(a_r, b_r) ^ 4"), finite(5 / 384 * Math.pow(finite(_a_r * _b_r, "a_r * b_r"), 4) / finite(Math.pow(finite(Math.pow(_a_r, 2) + Math.pow(_b_r, 2), "a_r ^ 2 + b_r ^ 2"), 2), "(a_r ^ 2 + b_r ^ 2) ^ 2"), "5 / 384 * (a_r * b_r) ^ 4 / (a_r ^ 2 + b_r ^ 2) ^ 2")), "w_lines");
  const _w_gap = finite(_p_ser / finite(384 * _D, "384 * D") * Math.max(finite(_n_x < 3 ? 5 * Math.pow(_a_r, 4) : Math.pow(_s_x, 4), "n_x < 3 ? 5 * a_r ^ 4 : s_x ^ 4"), finite(_n_y < 3 ? 5 * Math.pow(_b_r, 4) : Math.pow(_s_y, 4), "n_y < 3 ? 5 * b_r ^ 4 : s_y ^ 4")), "w_gap");
  const _w_low = finite(0.98 * Math.max(_w_lines, _w_gap), "w_low");
  const _w_both = finite(_p_ser / _D * Math.min(finite(5 / 384 * Math.pow(finite(Math.min(_a_b, _b_b), "min(a_b, b_b)"), 4), "5 / 384 * min(a_b, b_b) ^ 4"), finite(16 / finite(Math.pow(Math.PI, 6), "pi ^ 6") * Math.pow(finite(_a_b * _b_b, "a_b * b_b"), 4) / finite(Math.pow(finite(Math.pow(_a_b, 2) + Math.pow(_b_b, 2), "a_b ^ 2 + b_b ^ 2"), 2), "(a_b ^ 2 + b_b ^ 2) ^ 2"), "16 / pi ^ 6 * (a_b * b_b) ^ 4 / (a_b ^ 2 + b_b ^ 2) ^ 2")), "w_both");
  const _w_row_x = finite(1.2 * 5 / 32 * _p_ser / finite(_E * Math.pow(_t, 3), "E * t ^ 3") * Math.max(_s_x, _b_p) * Math.pow(_s_x, 3), "w_row_x");
  const _w_row_y = finite(1.2 * 5 / 32 * _p_ser / finite(_E * Math.pow(_t, 3), "E * t ^ 3") * Math.max(_s_y, _a_p) * Math.pow(_s_y, 3), "w_row_y");
  const _w_over = finite(1.2 * 12 * _p_ser / finite(_E * Math.pow(_t, 3), "E * t ^ 3") * (Math.pow(_i_x, 3) * (_i_x / 8 + _a_b / 4) + Math.pow(_i_y, 3) * (_i_y / 8 + _b_b / 4)), "w_over");
  const _w_high = finite(1.02 * Math.min(finite(_w_both + _w_row_x + _w_row_y, "w_both + w_row_x + w_row_y"), finite(5 / 384 * _p_ser * Math.pow(_a_b, 4) / finite(_D * (1 - _nu), "D * (1 - nu)") + _w_row_y, "5 / 384 * p_ser * a_b ^ 4 / (D * (1 - nu)) + w_row_y"), finite(5 / 384 * _p_ser * Math.pow(_b_b, 4) / finite(_D * (1 - _nu), "D * (1 - nu)") + _w_row_x, "5 / 384 * p_ser * b_b ^ 4 / (D * (1 - nu)) + w_row_x")) + _w_over, "w_high");
  return [_w_Ed, _w_lim, _D, _a_r, _b_r, _w_lines, _w_gap, _w_low, _w_both, _w_row_x, _w_row_y, _w_over, _w_high];
}

export function panelDeflectionBoltsByPlaces_allowableStress(v: Readonly<Record<"p_ser" | "t" | "E" | "nu" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "k_w" | "s_x" | "s_y" | "a_p" | "b_p" | "W_1", number>>): number[] {
  const _p_ser = v.p_ser;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _k_w = v.k_w;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _a_p = v.a_p;
  const _b_p = v.b_p;
  const _W_1 = v.W_1;
  const _w_Ed = finite(12 * (1 - Math.pow(_nu, 2)) * _W_1 * _p_ser / finite(_E * Math.pow(_t, 3), "E * t ^ 3"), "w_Ed");
  const _w_lim = finite(Math.min(_a_b, _b_b) / _k_w, "w_lim");
  const _D = finite(_E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)), "12 * (1 - nu ^ 2)"), "D");
  const _a_r = finite(Math.max(finite(_a_b - _i_x, "a_b - i_x"), finite(_a_b / 100, "a_b / 100")), "a_r");
  const _b_r = finite(Math.max(finite(_b_b - _i_y, "b_b - i_y"), finite(_b_b / 100, "b_b / 100")), "b_r");
  const _w_lines = finite(_p_ser / _D * Math.max(finite(0.00406 * Math.pow(finite(Math.min(_a_r, _b_r), "min(a_r, b_r)"), 4), "0.00406 * min(a_r, b_r) ^ 4"), finite(5 / 384 * Math.pow(finite(_a_r * _b_r, "a_r * b_r"), 4) / finite(Math.pow(finite(Math.pow(_a_r, 2) + Math.pow(_b_r, 2), "a_r ^ 2 + b_r ^ 2"), 2), "(a_r ^ 2 + b_r ^ 2) ^ 2"), "5 / 384 * (a_r * b_r) ^ 4 / (a_r ^ 2 + b_r ^ 2) ^ 2")), "w_lines");
  const _w_gap = finite(_p_ser / finite(384 * _D, "384 * D") * Math.max(finite(_n_x < 3 ? 5 * Math.pow(_a_r, 4) : Math.pow(_s_x, 4), "n_x < 3 ? 5 * a_r ^ 4 : s_x ^ 4"), finite(_n_y < 3 ? 5 * Math.pow(_b_r, 4) : Math.pow(_s_y, 4), "n_y < 3 ? 5 * b_r ^ 4 : s_y ^ 4")), "w_gap");
  const _w_low = finite(0.98 * Math.max(_w_lines, _w_gap), "w_low");
  const _w_both = finite(_p_ser / _D * Math.min(finite(5 / 384 * Math.pow(finite(Math.min(_a_b, _b_b), "min(a_b, b_b)"), 4), "5 / 384 * min(a_b, b_b) ^ 4"), finite(16 / finite(Math.pow(Math.PI, 6), "pi ^ 6") * Math.pow(finite(_a_b * _b_b, "a_b * b_b"), 4) / finite(Math.pow(finite(Math.pow(_a_b, 2) + Math.pow(_b_b, 2), "a_b ^ 2 + b_b ^ 2"), 2), "(a_b ^ 2 + b_b ^ 2) ^ 2"), "16 / pi ^ 6 * (a_b * b_b) ^ 4 / (a_b ^ 2 + b_b ^ 2) ^ 2")), "w_both");
  const _w_row_x = finite(1.2 * 5 / 32 * _p_ser / finite(_E * Math.pow(_t, 3), "E * t ^ 3") * Math.max(_s_x, _b_p) * Math.pow(_s_x, 3), "w_row_x");
  const _w_row_y = finite(1.2 * 5 / 32 * _p_ser / finite(_E * Math.pow(_t, 3), "E * t ^ 3") * Math.max(_s_y, _a_p) * Math.pow(_s_y, 3), "w_row_y");
  const _w_over = finite(1.2 * 12 * _p_ser / finite(_E * Math.pow(_t, 3), "E * t ^ 3") * (Math.pow(_i_x, 3) * (_i_x / 8 + _a_b / 4) + Math.pow(_i_y, 3) * (_i_y / 8 + _b_b / 4)), "w_over");
  const _w_high = finite(1.02 * Math.min(finite(_w_both + _w_row_x + _w_row_y, "w_both + w_row_x + w_row_y"), finite(5 / 384 * _p_ser * Math.pow(_a_b, 4) / finite(_D * (1 - _nu), "D * (1 - nu)") + _w_row_y, "5 / 384 * p_ser * a_b ^ 4 / (D * (1 - nu)) + w_row_y"), finite(5 / 384 * _p_ser * Math.pow(_b_b, 4) / finite(_D * (1 - _nu), "D * (1 - nu)") + _w_row_x, "5 / 384 * p_ser * b_b ^ 4 / (D * (1 - nu)) + w_row_x")) + _w_over, "w_high");
  return [_w_Ed, _w_lim, _D, _a_r, _b_r, _w_lines, _w_gap, _w_low, _w_both, _w_row_x, _w_row_y, _w_over, _w_high];
}

export function boltTension_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "d_w" | "l_x" | "l_y" | "A_s" | "A_b" | "f_ub" | "k_2" | "countersunk" | "gamma_R" | "gamma_M2", number>>, k: Readonly<Record<"plate.bolted.boltPush" | "bolts.rowLost.group" | "bolts.rowLost.plate" | "plate.held.momentEdge" | "bolts.rowLost.edgeMoment", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _d_w = v.d_w;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _A_s = v.A_s;
  const _A_b = v.A_b;
  const _f_ub = v.f_ub;
  const _k_2 = v.k_2;
  const _countersunk = v.countersunk;
  const _gamma_R = v.gamma_R;
  const _gamma_M2 = v.gamma_M2;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _r_b = finite(_d_w / 2 + _t, "r_b");
  const _a_p = finite(_a_b + 2 * _i_x, "a_p");
  const _b_p = finite(_b_b + 2 * _i_y, "b_p");
  const _R_bolt = finite(k["plate.bolted.boltPush"](_a_p, _b_p, _t, _E, _nu, _p_off, _n_x, _n_y, _i_x, _i_y, _r_b), "R_bolt");
  const _R_group = finite(k["bolts.rowLost.group"](_a_b, _b_b, _n_x, _n_y, _i_x, _i_y, _p_lost), "R_group");
  const _R_rest = finite(k["bolts.rowLost.plate"](_a_b, _b_b, _t, _E, _nu, _p_lost, _n_x, _n_y, _i_x, _i_y), "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _F_t_Rd = finite(_k_2 * _f_ub * _A_s / _gamma_M2, "F_t_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / finite(2 * _n_x + 2 * _n_y - 4, "2 * n_x + 2 * n_y - 4"), "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _R_low = finite((_countersunk > 0 ? 0.8 : 1) * 0.7 * _f_ub * _A_s / _gamma_R, "R_low");
  const _A_2 = finite(Math.pow(finite((Math.sqrt(_A_b) + 2 * Math.sqrt(_A_s)) / 3, "(sqrt(A_b) + 2 * sqrt(A_s)) / 3"), 2), "A_2");
  const _R_high = finite(_f_ub * _A_2 / _gamma_R, "R_high");
  const _u = finite(_F_t_Rd > finite(0 * _F_t_Rd, "0 * F_t_Rd") ? _F_t / _F_t_Rd : 0, "u");
  const _u_low = finite(_F_t_Rd > finite(0 * _F_t_Rd, "0 * F_t_Rd") ? Math.max(finite(_F_low / _F_t_Rd, "F_low / F_t_Rd"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_F_t_Rd > finite(0 * _F_t_Rd, "0 * F_t_Rd") ? Math.min(finite(_F_high / _F_t_Rd, "F_high / F_t_Rd"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _p_off, _p_lost, _r_b, _a_p, _b_p, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _F_t_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _R_low, _A_2, _R_high, _u, _u_low, _u_high];
}

export function boltTension_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "d_w" | "l_x" | "l_y" | "A_s" | "A_b" | "f_ub" | "F_nt" | "countersunk" | "gamma_R" | "Omega_J", number>>, k: Readonly<Record<"plate.bolted.boltPush" | "bolts.rowLost.group" | "bolts.rowLost.plate" | "plate.held.momentEdge" | "bolts.rowLost.edgeMoment", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _d_w = v.d_w;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _A_s = v.A_s;
  const _A_b = v.A_b;
  const _f_ub = v.f_ub;
  const _F_nt = v.F_nt;
  const _countersunk = v.countersunk;
  const _gamma_R = v.gamma_R;
  const _Omega_J = v.Omega_J;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _r_b = finite(_d_w / 2 + _t, "r_b");
  const _a_p = finite(_a_b + 2 * _i_x, "a_p");
  const _b_p = finite(_b_b + 2 * _i_y, "b_p");
  const _R_bolt = finite(k["plate.bolted.boltPush"](_a_p, _b_p, _t, _E, _nu, _p_off, _n_x, _n_y, _i_x, _i_y, _r_b), "R_bolt");
  const _R_group = finite(k["bolts.rowLost.group"](_a_b, _b_b, _n_x, _n_y, _i_x, _i_y, _p_lost), "R_group");
  const _R_rest = finite(k["bolts.rowLost.plate"](_a_b, _b_b, _t, _E, _nu, _p_lost, _n_x, _n_y, _i_x, _i_y), "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _F_t_Rd = finite(_F_nt * _A_b / _Omega_J, "F_t_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / finite(2 * _n_x + 2 * _n_y - 4, "2 * n_x + 2 * n_y - 4"), "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _R_low = finite((_countersunk > 0 ? 0.8 : 1) * 0.7 * _f_ub * _A_s / _gamma_R, "R_low");
  const _A_2 = finite(Math.pow(finite((Math.sqrt(_A_b) + 2 * Math.sqrt(_A_s)) / 3, "(sqrt(A_b) + 2 * sqrt(A_s)) / 3"), 2), "A_2");
  const _R_high = finite(_f_ub * _A_2 / _gamma_R, "R_high");
  const _u = finite(_F_t_Rd > finite(0 * _F_t_Rd, "0 * F_t_Rd") ? _F_t / _F_t_Rd : 0, "u");
  const _u_low = finite(_F_t_Rd > finite(0 * _F_t_Rd, "0 * F_t_Rd") ? Math.max(finite(_F_low / _F_t_Rd, "F_low / F_t_Rd"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_F_t_Rd > finite(0 * _F_t_Rd, "0 * F_t_Rd") ? Math.min(finite(_F_high / _F_t_Rd, "F_high / F_t_Rd"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _p_off, _p_lost, _r_b, _a_p, _b_p, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _F_t_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _R_low, _A_2, _R_high, _u, _u_low, _u_high];
}

export function boltTensionBySolution_partialFactors(v: Readonly<Record<"A_s" | "A_b" | "f_ub" | "k_2" | "countersunk" | "gamma_R" | "gamma_M2", number>>): number[] {
  const _A_s = v.A_s;
  const _A_b = v.A_b;
  const _f_ub = v.f_ub;
  const _k_2 = v.k_2;
  const _countersunk = v.countersunk;
  const _gamma_R = v.gamma_R;
  const _gamma_M2 = v.gamma_M2;
  const _F_t_Rd = finite(_k_2 * _f_ub * _A_s / _gamma_M2, "F_t_Rd");
  const _R_low = finite((_countersunk > 0 ? 0.8 : 1) * 0.7 * _f_ub * _A_s / _gamma_R, "R_low");
  const _A_2 = finite(Math.pow(finite((Math.sqrt(_A_b) + 2 * Math.sqrt(_A_s)) / 3, "(sqrt(A_b) + 2 * sqrt(A_s)) / 3"), 2), "A_2");
  const _R_high = finite(_f_ub * _A_2 / _gamma_R, "R_high");
  return [_F_t_Rd, _R_low, _A_2, _R_high];
}

export function boltTensionBySolution_allowableStress(v: Readonly<Record<"A_s" | "A_b" | "f_ub" | "F_nt" | "countersunk" | "gamma_R" | "Omega_J", number>>): number[] {
  const _A_s = v.A_s;
  const _A_b = v.A_b;
  const _f_ub = v.f_ub;
  const _F_nt = v.F_nt;
  const _countersunk = v.countersunk;
  const _gamma_R = v.gamma_R;
  const _Omega_J = v.Omega_J;
  const _F_t_Rd = finite(_F_nt * _A_b / _Omega_J, "F_t_Rd");
  const _R_low = finite((_countersunk > 0 ? 0.8 : 1) * 0.7 * _f_ub * _A_s / _gamma_R, "R_low");
  const _A_2 = finite(Math.pow(finite((Math.sqrt(_A_b) + 2 * Math.sqrt(_A_s)) / 3, "(sqrt(A_b) + 2 * sqrt(A_s)) / 3"), 2), "A_2");
  const _R_high = finite(_f_ub * _A_2 / _gamma_R, "R_high");
  return [_F_t_Rd, _R_low, _A_2, _R_high];
}

export function boltTensionByPlaces_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "i_x" | "i_y" | "l_x" | "l_y" | "A_s" | "A_b" | "f_ub" | "k_2" | "countersunk" | "gamma_R" | "gamma_M2" | "s_x" | "s_y" | "n_b" | "a_p" | "b_p" | "A_1" | "A_g" | "A_r", number>>, k: Readonly<Record<"plate.held.momentEdge" | "bolts.rowLost.edgeMoment", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _A_s = v.A_s;
  const _A_b = v.A_b;
  const _f_ub = v.f_ub;
  const _k_2 = v.k_2;
  const _countersunk = v.countersunk;
  const _gamma_R = v.gamma_R;
  const _gamma_M2 = v.gamma_M2;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _n_b = v.n_b;
  const _a_p = v.a_p;
  const _b_p = v.b_p;
  const _A_1 = v.A_1;
  const _A_g = v.A_g;
  const _A_r = v.A_r;
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _R_bolt = finite(_A_1 * _p_off, "R_bolt");
  const _R_group = finite(_A_g * _p_lost, "R_group");
  const _R_rest = finite(_A_r * _p_lost, "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _F_t_Rd = finite(_k_2 * _f_ub * _A_s / _gamma_M2, "F_t_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / _n_b, "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _R_low = finite((_countersunk > 0 ? 0.8 : 1) * 0.7 * _f_ub * _A_s / _gamma_R, "R_low");
  const _A_2 = finite(Math.pow(finite((Math.sqrt(_A_b) + 2 * Math.sqrt(_A_s)) / 3, "(sqrt(A_b) + 2 * sqrt(A_s)) / 3"), 2), "A_2");
  const _R_high = finite(_f_ub * _A_2 / _gamma_R, "R_high");
  const _u = finite(_F_t_Rd > finite(0 * _F_t_Rd, "0 * F_t_Rd") ? _F_t / _F_t_Rd : 0, "u");
  const _u_low = finite(_F_t_Rd > finite(0 * _F_t_Rd, "0 * F_t_Rd") ? Math.max(finite(_F_low / _F_t_Rd, "F_low / F_t_Rd"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_F_t_Rd > finite(0 * _F_t_Rd, "0 * F_t_Rd") ? Math.min(finite(_F_high / _F_t_Rd, "F_high / F_t_Rd"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  return [_p_off, _p_lost, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _F_t_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _R_low, _A_2, _R_high, _u, _u_low, _u_high];
}

export function boltTensionByPlaces_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "i_x" | "i_y" | "l_x" | "l_y" | "A_s" | "A_b" | "f_ub" | "F_nt" | "countersunk" | "gamma_R" | "Omega_J" | "s_x" | "s_y" | "n_b" | "a_p" | "b_p" | "A_1" | "A_g" | "A_r", number>>, k: Readonly<Record<"plate.held.momentEdge" | "bolts.rowLost.edgeMoment", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _A_s = v.A_s;
  const _A_b = v.A_b;
  const _f_ub = v.f_ub;
  const _F_nt = v.F_nt;
  const _countersunk = v.countersunk;
  const _gamma_R = v.gamma_R;
  const _Omega_J = v.Omega_J;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _n_b = v.n_b;
  const _a_p = v.a_p;
  const _b_p = v.b_p;
  const _A_1 = v.A_1;
  const _A_g = v.A_g;
  const _A_r = v.A_r;
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _R_bolt = finite(_A_1 * _p_off, "R_bolt");
  const _R_group = finite(_A_g * _p_lost, "R_group");
  const _R_rest = finite(_A_r * _p_lost, "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _F_t_Rd = finite(_F_nt * _A_b / _Omega_J, "F_t_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / _n_b, "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _R_low = finite((_countersunk > 0 ? 0.8 : 1) * 0.7 * _f_ub * _A_s / _gamma_R, "R_low");
  const _A_2 = finite(Math.pow(finite((Math.sqrt(_A_b) + 2 * Math.sqrt(_A_s)) / 3, "(sqrt(A_b) + 2 * sqrt(A_s)) / 3"), 2), "A_2");
  const _R_high = finite(_f_ub * _A_2 / _gamma_R, "R_high");
  const _u = finite(_F_t_Rd > finite(0 * _F_t_Rd, "0 * F_t_Rd") ? _F_t / _F_t_Rd : 0, "u");
  const _u_low = finite(_F_t_Rd > finite(0 * _F_t_Rd, "0 * F_t_Rd") ? Math.max(finite(_F_low / _F_t_Rd, "F_low / F_t_Rd"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_F_t_Rd > finite(0 * _F_t_Rd, "0 * F_t_Rd") ? Math.min(finite(_F_high / _F_t_Rd, "F_high / F_t_Rd"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  return [_p_off, _p_lost, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _F_t_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _R_low, _A_2, _R_high, _u, _u_low, _u_high];
}

export function boltShear_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "A_s" | "A_b" | "threads" | "f_ub" | "alpha_v" | "gamma_R" | "gamma_M2", number>>, k: Readonly<Record<"inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _A_s = v.A_s;
  const _A_b = v.A_b;
  const _threads = v.threads;
  const _f_ub = v.f_ub;
  const _alpha_v = v.alpha_v;
  const _gamma_R = v.gamma_R;
  const _gamma_M2 = v.gamma_M2;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _A_v = finite(_threads > 0 ? _A_s : _A_b, "A_v");
  const _F_v_Rd = finite(_alpha_v * _f_ub * _A_v / _gamma_M2, "F_v_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _R_low = finite(0.5 * _f_ub * _A_s / _gamma_R, "R_low");
  const _A_2 = finite(_threads > 0 ? Math.pow(finite((Math.sqrt(_A_b) + 2 * Math.sqrt(_A_s)) / 3, "(sqrt(A_b) + 2 * sqrt(A_s)) / 3"), 2) : _A_b, "A_2");
  const _R_high = finite(0.62 * _f_ub * _A_2 / _gamma_R, "R_high");
  const _u = finite(_F_v_Rd > finite(0 * _F_v_Rd, "0 * F_v_Rd") ? _F_v / _F_v_Rd : 0, "u");
  const _u_low = finite(_F_v_Rd > finite(0 * _F_v_Rd, "0 * F_v_Rd") ? Math.max(finite(_F_least / _F_v_Rd, "F_least / F_v_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_v_Rd > finite(0 * _F_v_Rd, "0 * F_v_Rd") ? Math.min(finite(_F_most / _F_v_Rd, "F_most / F_v_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _L_n, _N_pull, _F_v, _A_v, _F_v_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _R_low, _A_2, _R_high, _u, _u_low, _u_high];
}

export function boltShear_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "A_s" | "A_b" | "threads" | "f_ub" | "F_nv" | "gamma_R" | "Omega_J", number>>, k: Readonly<Record<"inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _A_s = v.A_s;
  const _A_b = v.A_b;
  const _threads = v.threads;
  const _f_ub = v.f_ub;
  const _F_nv = v.F_nv;
  const _gamma_R = v.gamma_R;
  const _Omega_J = v.Omega_J;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _F_v_Rd = finite(_F_nv * _A_b / _Omega_J, "F_v_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _R_low = finite(0.5 * _f_ub * _A_s / _gamma_R, "R_low");
  const _A_2 = finite(_threads > 0 ? Math.pow(finite((Math.sqrt(_A_b) + 2 * Math.sqrt(_A_s)) / 3, "(sqrt(A_b) + 2 * sqrt(A_s)) / 3"), 2) : _A_b, "A_2");
  const _R_high = finite(0.62 * _f_ub * _A_2 / _gamma_R, "R_high");
  const _u = finite(_F_v_Rd > finite(0 * _F_v_Rd, "0 * F_v_Rd") ? _F_v / _F_v_Rd : 0, "u");
  const _u_low = finite(_F_v_Rd > finite(0 * _F_v_Rd, "0 * F_v_Rd") ? Math.max(finite(_F_least / _F_v_Rd, "F_least / F_v_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_v_Rd > finite(0 * _F_v_Rd, "0 * F_v_Rd") ? Math.min(finite(_F_most / _F_v_Rd, "F_most / F_v_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _L_n, _N_pull, _F_v, _F_v_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _R_low, _A_2, _R_high, _u, _u_low, _u_high];
}

export function boltShearBySolution_partialFactors(v: Readonly<Record<"A_s" | "A_b" | "threads" | "f_ub" | "alpha_v" | "gamma_R" | "gamma_M2", number>>): number[] {
  const _A_s = v.A_s;
  const _A_b = v.A_b;
  const _threads = v.threads;
  const _f_ub = v.f_ub;
  const _alpha_v = v.alpha_v;
  const _gamma_R = v.gamma_R;
  const _gamma_M2 = v.gamma_M2;
  const _A_v = finite(_threads > 0 ? _A_s : _A_b, "A_v");
  const _F_v_Rd = finite(_alpha_v * _f_ub * _A_v / _gamma_M2, "F_v_Rd");
  const _R_low = finite(0.5 * _f_ub * _A_s / _gamma_R, "R_low");
  const _A_2 = finite(_threads > 0 ? Math.pow(finite((Math.sqrt(_A_b) + 2 * Math.sqrt(_A_s)) / 3, "(sqrt(A_b) + 2 * sqrt(A_s)) / 3"), 2) : _A_b, "A_2");
  const _R_high = finite(0.62 * _f_ub * _A_2 / _gamma_R, "R_high");
  return [_A_v, _F_v_Rd, _R_low, _A_2, _R_high];
}

export function boltShearBySolution_allowableStress(v: Readonly<Record<"A_s" | "A_b" | "threads" | "f_ub" | "F_nv" | "gamma_R" | "Omega_J", number>>): number[] {
  const _A_s = v.A_s;
  const _A_b = v.A_b;
  const _threads = v.threads;
  const _f_ub = v.f_ub;
  const _F_nv = v.F_nv;
  const _gamma_R = v.gamma_R;
  const _Omega_J = v.Omega_J;
  const _F_v_Rd = finite(_F_nv * _A_b / _Omega_J, "F_v_Rd");
  const _R_low = finite(0.5 * _f_ub * _A_s / _gamma_R, "R_low");
  const _A_2 = finite(_threads > 0 ? Math.pow(finite((Math.sqrt(_A_b) + 2 * Math.sqrt(_A_s)) / 3, "(sqrt(A_b) + 2 * sqrt(A_s)) / 3"), 2) : _A_b, "A_2");
  const _R_high = finite(0.62 * _f_ub * _A_2 / _gamma_R, "R_high");
  return [_F_v_Rd, _R_low, _A_2, _R_high];
}

export function boltShearByPlaces_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "A_s" | "A_b" | "threads" | "f_ub" | "alpha_v" | "gamma_R" | "gamma_M2" | "s_x" | "s_y", number>>, k: Readonly<Record<"inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _A_s = v.A_s;
  const _A_b = v.A_b;
  const _threads = v.threads;
  const _f_ub = v.f_ub;
  const _alpha_v = v.alpha_v;
  const _gamma_R = v.gamma_R;
  const _gamma_M2 = v.gamma_M2;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _A_v = finite(_threads > 0 ? _A_s : _A_b, "A_v");
  const _F_v_Rd = finite(_alpha_v * _f_ub * _A_v / _gamma_M2, "F_v_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _R_low = finite(0.5 * _f_ub * _A_s / _gamma_R, "R_low");
  const _A_2 = finite(_threads > 0 ? Math.pow(finite((Math.sqrt(_A_b) + 2 * Math.sqrt(_A_s)) / 3, "(sqrt(A_b) + 2 * sqrt(A_s)) / 3"), 2) : _A_b, "A_2");
  const _R_high = finite(0.62 * _f_ub * _A_2 / _gamma_R, "R_high");
  const _u = finite(_F_v_Rd > finite(0 * _F_v_Rd, "0 * F_v_Rd") ? _F_v / _F_v_Rd : 0, "u");
  const _u_low = finite(_F_v_Rd > finite(0 * _F_v_Rd, "0 * F_v_Rd") ? Math.max(finite(_F_least / _F_v_Rd, "F_least / F_v_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_v_Rd > finite(0 * _F_v_Rd, "0 * F_v_Rd") ? Math.min(finite(_F_most / _F_v_Rd, "F_most / F_v_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_L_n, _N_pull, _F_v, _A_v, _F_v_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _R_low, _A_2, _R_high, _u, _u_low, _u_high];
}

export function boltShearByPlaces_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "A_s" | "A_b" | "threads" | "f_ub" | "F_nv" | "gamma_R" | "Omega_J" | "s_x" | "s_y", number>>, k: Readonly<Record<"inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _A_s = v.A_s;
  const _A_b = v.A_b;
  const _threads = v.threads;
  const _f_ub = v.f_ub;
  const _F_nv = v.F_nv;
  const _gamma_R = v.gamma_R;
  const _Omega_J = v.Omega_J;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _F_v_Rd = finite(_F_nv * _A_b / _Omega_J, "F_v_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _R_low = finite(0.5 * _f_ub * _A_s / _gamma_R, "R_low");
  const _A_2 = finite(_threads > 0 ? Math.pow(finite((Math.sqrt(_A_b) + 2 * Math.sqrt(_A_s)) / 3, "(sqrt(A_b) + 2 * sqrt(A_s)) / 3"), 2) : _A_b, "A_2");
  const _R_high = finite(0.62 * _f_ub * _A_2 / _gamma_R, "R_high");
  const _u = finite(_F_v_Rd > finite(0 * _F_v_Rd, "0 * F_v_Rd") ? _F_v / _F_v_Rd : 0, "u");
  const _u_low = finite(_F_v_Rd > finite(0 * _F_v_Rd, "0 * F_v_Rd") ? Math.max(finite(_F_least / _F_v_Rd, "F_least / F_v_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_v_Rd > finite(0 * _F_v_Rd, "0 * F_v_Rd") ? Math.min(finite(_F_most / _F_v_Rd, "F_most / F_v_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_L_n, _N_pull, _F_v, _F_v_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _R_low, _A_2, _R_high, _u, _u_low, _u_high];
}

export function boltCombined_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "d_w" | "l_x" | "l_y" | "A_s" | "A_b" | "f_ub" | "k_2" | "threads" | "alpha_v" | "gamma_M2" | "gamma_R", number>>, k: Readonly<Record<"plate.bolted.boltPush" | "bolts.rowLost.group" | "bolts.rowLost.plate" | "plate.held.momentEdge" | "bolts.rowLost.edgeMoment" | "inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _d_w = v.d_w;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _A_s = v.A_s;
  const _A_b = v.A_b;
  const _f_ub = v.f_ub;
  const _k_2 = v.k_2;
  const _threads = v.threads;
  const _alpha_v = v.alpha_v;
  const _gamma_M2 = v.gamma_M2;
  const _gamma_R = v.gamma_R;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _r_b = finite(_d_w / 2 + _t, "r_b");
  const _a_p = finite(_a_b + 2 * _i_x, "a_p");
  const _b_p = finite(_b_b + 2 * _i_y, "b_p");
  const _R_bolt = finite(k["plate.bolted.boltPush"](_a_p, _b_p, _t, _E, _nu, _p_off, _n_x, _n_y, _i_x, _i_y, _r_b), "R_bolt");
  const _R_group = finite(k["bolts.rowLost.group"](_a_b, _b_b, _n_x, _n_y, _i_x, _i_y, _p_lost), "R_group");
  const _R_rest = finite(k["bolts.rowLost.plate"](_a_b, _b_b, _t, _E, _nu, _p_lost, _n_x, _n_y, _i_x, _i_y), "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _A_v = finite(_threads > 0 ? _A_s : _A_b, "A_v");
  const _F_v_Rd = finite(_alpha_v * _f_ub * _A_v / _gamma_M2, "F_v_Rd");
  const _F_t_Rd = finite(_k_2 * _f_ub * _A_s / _gamma_M2, "F_t_Rd");
  const _u = finite(_F_v / _F_v_Rd + _F_t / finite(1.4 * _F_t_Rd, "1.4 * F_t_Rd"), "u");
  const _u_e = finite(Math.sqrt(Math.pow(finite(_F_v / _F_v_Rd, "F_v / F_v_Rd"), 2) + Math.pow(finite(_F_t / _F_t_Rd, "F_t / F_t_Rd"), 2)), "u_e");
  const _u_most = finite(Math.sqrt(Math.pow(finite(_F_v / 0.5, "F_v / 0.5"), 2) + Math.pow(finite(_F_t / 0.56, "F_t / 0.56"), 2)) * _gamma_R / finite(_f_ub * _A_s, "f_ub * A_s"), "u_most");
  const _u_least = finite(Math.sqrt(Math.pow(finite(_F_v / 0.62, "F_v / 0.62"), 2) + Math.pow(_F_t, 2)) * _gamma_R / finite(_f_ub * _A_b, "f_ub * A_b"), "u_least");
  const _u_low = finite(Math.max(_u_e, _u_least) / 1.4, "u_low");
  const _u_high = finite(1.25 * Math.min(_u_e, _u_most), "u_high");
  return [_s_x, _s_y, _p_off, _p_lost, _r_b, _a_p, _b_p, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _L_n, _N_pull, _F_v, _A_v, _F_v_Rd, _F_t_Rd, _u, _u_e, _u_most, _u_least, _u_low, _u_high];
}

export function boltCombined_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "d_w" | "l_x" | "l_y" | "A_s" | "A_b" | "f_ub" | "F_nt" | "F_nv" | "Omega_J" | "gamma_R", number>>, k: Readonly<Record<"plate.bolted.boltPush" | "bolts.rowLost.group" | "bolts.rowLost.plate" | "plate.held.momentEdge" | "bolts.rowLost.edgeMoment" | "inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _d_w = v.d_w;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _A_s = v.A_s;
  const _A_b = v.A_b;
  const _f_ub = v.f_ub;
  const _F_nt = v.F_nt;
  const _F_nv = v.F_nv;
  const _Omega_J = v.Omega_J;
  const _gamma_R = v.gamma_R;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _r_b = finite(_d_w / 2 + _t, "r_b");
  const _a_p = finite(_a_b + 2 * _i_x, "a_p");
  const _b_p = finite(_b_b + 2 * _i_y, "b_p");
  const _R_bolt = finite(k["plate.bolted.boltPush"](_a_p, _b_p, _t, _E, _nu, _p_off, _n_x, _n_y, _i_x, _i_y, _r_b), "R_bolt");
  const _R_group = finite(k["bolts.rowLost.group"](_a_b, _b_b, _n_x, _n_y, _i_x, _i_y, _p_lost), "R_group");
  const _R_rest = finite(k["bolts.rowLost.plate"](_a_b, _b_b, _t, _E, _nu, _p_lost, _n_x, _n_y, _i_x, _i_y), "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _F_v_Rd = finite(_F_nv * _A_b / _Omega_J, "F_v_Rd");
  const _F_t_Rd = finite(_F_nt * _A_b / _Omega_J, "F_t_Rd");
  const _u = finite((_F_v / _F_v_Rd + _F_t / _F_t_Rd) / 1.3, "u");
  const _u_e = finite(Math.sqrt(Math.pow(finite(_F_v / _F_v_Rd, "F_v / F_v_Rd"), 2) + Math.pow(finite(_F_t / _F_t_Rd, "F_t / F_t_Rd"), 2)), "u_e");
  const _u_most = finite(Math.sqrt(Math.pow(finite(_F_v / 0.5, "F_v / 0.5"), 2) + Math.pow(finite(_F_t / 0.56, "F_t / 0.56"), 2)) * _gamma_R / finite(_f_ub * _A_s, "f_ub * A_s"), "u_most");
  const _u_least = finite(Math.sqrt(Math.pow(finite(_F_v / 0.62, "F_v / 0.62"), 2) + Math.pow(_F_t, 2)) * _gamma_R / finite(_f_ub * _A_b, "f_ub * A_b"), "u_least");
  const _u_low = finite(Math.max(_u_e, _u_least) / 1.4, "u_low");
  const _u_high = finite(1.25 * Math.min(_u_e, _u_most), "u_high");
  return [_s_x, _s_y, _p_off, _p_lost, _r_b, _a_p, _b_p, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _L_n, _N_pull, _F_v, _F_v_Rd, _F_t_Rd, _u, _u_e, _u_most, _u_least, _u_low, _u_high];
}

export function boltCombinedBySolution_partialFactors(v: Readonly<Record<"A_s" | "A_b" | "f_ub" | "k_2" | "threads" | "alpha_v" | "gamma_M2" | "gamma_R" | "F_t" | "F_v", number>>): number[] {
  const _A_s = v.A_s;
  const _A_b = v.A_b;
  const _f_ub = v.f_ub;
  const _k_2 = v.k_2;
  const _threads = v.threads;
  const _alpha_v = v.alpha_v;
  const _gamma_M2 = v.gamma_M2;
  const _gamma_R = v.gamma_R;
  const _F_t = v.F_t;
  const _F_v = v.F_v;
  const _A_v = finite(_threads > 0 ? _A_s : _A_b, "A_v");
  const _F_v_Rd = finite(_alpha_v * _f_ub * _A_v / _gamma_M2, "F_v_Rd");
  const _F_t_Rd = finite(_k_2 * _f_ub * _A_s / _gamma_M2, "F_t_Rd");
  const _u = finite(_F_v / _F_v_Rd + _F_t / finite(1.4 * _F_t_Rd, "1.4 * F_t_Rd"), "u");
  const _u_e = finite(Math.sqrt(Math.pow(finite(_F_v / _F_v_Rd, "F_v / F_v_Rd"), 2) + Math.pow(finite(_F_t / _F_t_Rd, "F_t / F_t_Rd"), 2)), "u_e");
  const _u_most = finite(Math.sqrt(Math.pow(finite(_F_v / 0.5, "F_v / 0.5"), 2) + Math.pow(finite(_F_t / 0.56, "F_t / 0.56"), 2)) * _gamma_R / finite(_f_ub * _A_s, "f_ub * A_s"), "u_most");
  const _u_least = finite(Math.sqrt(Math.pow(finite(_F_v / 0.62, "F_v / 0.62"), 2) + Math.pow(_F_t, 2)) * _gamma_R / finite(_f_ub * _A_b, "f_ub * A_b"), "u_least");
  const _u_low = finite(Math.max(_u_e, _u_least) / 1.4, "u_low");
  const _u_high = finite(1.25 * Math.min(_u_e, _u_most), "u_high");
  return [_A_v, _F_v_Rd, _F_t_Rd, _u, _u_e, _u_most, _u_least, _u_low, _u_high];
}

export function boltCombinedBySolution_allowableStress(v: Readonly<Record<"A_s" | "A_b" | "f_ub" | "F_nt" | "F_nv" | "Omega_J" | "gamma_R" | "F_t" | "F_v", number>>): number[] {
  const _A_s = v.A_s;
  const _A_b = v.A_b;
  const _f_ub = v.f_ub;
  const _F_nt = v.F_nt;
  const _F_nv = v.F_nv;
  const _Omega_J = v.Omega_J;
  const _gamma_R = v.gamma_R;
  const _F_t = v.F_t;
  const _F_v = v.F_v;
  const _F_v_Rd = finite(_F_nv * _A_b / _Omega_J, "F_v_Rd");
  const _F_t_Rd = finite(_F_nt * _A_b / _Omega_J, "F_t_Rd");
  const _u = finite((_F_v / _F_v_Rd + _F_t / _F_t_Rd) / 1.3, "u");
  const _u_e = finite(Math.sqrt(Math.pow(finite(_F_v / _F_v_Rd, "F_v / F_v_Rd"), 2) + Math.pow(finite(_F_t / _F_t_Rd, "F_t / F_t_Rd"), 2)), "u_e");
  const _u_most = finite(Math.sqrt(Math.pow(finite(_F_v / 0.5, "F_v / 0.5"), 2) + Math.pow(finite(_F_t / 0.56, "F_t / 0.56"), 2)) * _gamma_R / finite(_f_ub * _A_s, "f_ub * A_s"), "u_most");
  const _u_least = finite(Math.sqrt(Math.pow(finite(_F_v / 0.62, "F_v / 0.62"), 2) + Math.pow(_F_t, 2)) * _gamma_R / finite(_f_ub * _A_b, "f_ub * A_b"), "u_least");
  const _u_low = finite(Math.max(_u_e, _u_least) / 1.4, "u_low");
  const _u_high = finite(1.25 * Math.min(_u_e, _u_most), "u_high");
  return [_F_v_Rd, _F_t_Rd, _u, _u_e, _u_most, _u_least, _u_low, _u_high];
}

export function boltCombinedByPlaces_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "l_x" | "l_y" | "A_s" | "A_b" | "f_ub" | "k_2" | "threads" | "alpha_v" | "gamma_M2" | "gamma_R" | "s_x" | "s_y" | "A_1" | "A_g" | "A_r", number>>, k: Readonly<Record<"plate.held.momentEdge" | "bolts.rowLost.edgeMoment" | "inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _A_s = v.A_s;
  const _A_b = v.A_b;
  const _f_ub = v.f_ub;
  const _k_2 = v.k_2;
  const _threads = v.threads;
  const _alpha_v = v.alpha_v;
  const _gamma_M2 = v.gamma_M2;
  const _gamma_R = v.gamma_R;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _A_1 = v.A_1;
  const _A_g = v.A_g;
  const _A_r = v.A_r;
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _R_bolt = finite(_A_1 * _p_off, "R_bolt");
  const _R_group = finite(_A_g * _p_lost, "R_group");
  const _R_rest = finite(_A_r * _p_lost, "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _A_v = finite(_threads > 0 ? _A_s : _A_b, "A_v");
  const _F_v_Rd = finite(_alpha_v * _f_ub * _A_v / _gamma_M2, "F_v_Rd");
  const _F_t_Rd = finite(_k_2 * _f_ub * _A_s / _gamma_M2, "F_t_Rd");
  const _u = finite(_F_v / _F_v_Rd + _F_t / finite(1.4 * _F_t_Rd, "1.4 * F_t_Rd"), "u");
  const _u_e = finite(Math.sqrt(Math.pow(finite(_F_v / _F_v_Rd, "F_v / F_v_Rd"), 2) + Math.pow(finite(_F_t / _F_t_Rd, "F_t / F_t_Rd"), 2)), "u_e");
  const _u_most = finite(Math.sqrt(Math.pow(finite(_F_v / 0.5, "F_v / 0.5"), 2) + Math.pow(finite(_F_t / 0.56, "F_t / 0.56"), 2)) * _gamma_R / finite(_f_ub * _A_s, "f_ub * A_s"), "u_most");
  const _u_least = finite(Math.sqrt(Math.pow(finite(_F_v / 0.62, "F_v / 0.62"), 2) + Math.pow(_F_t, 2)) * _gamma_R / finite(_f_ub * _A_b, "f_ub * A_b"), "u_least");
  const _u_low = finite(Math.max(_u_e, _u_least) / 1.4, "u_low");
  const _u_high = finite(1.25 * Math.min(_u_e, _u_most), "u_high");
  return [_p_off, _p_lost, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _L_n, _N_pull, _F_v, _A_v, _F_v_Rd, _F_t_Rd, _u, _u_e, _u_most, _u_least, _u_low, _u_high];
}

export function boltCombinedByPlaces_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "l_x" | "l_y" | "A_s" | "A_b" | "f_ub" | "F_nt" | "F_nv" | "Omega_J" | "gamma_R" | "s_x" | "s_y" | "A_1" | "A_g" | "A_r", number>>, k: Readonly<Record<"plate.held.momentEdge" | "bolts.rowLost.edgeMoment" | "inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _A_s = v.A_s;
  const _A_b = v.A_b;
  const _f_ub = v.f_ub;
  const _F_nt = v.F_nt;
  const _F_nv = v.F_nv;
  const _Omega_J = v.Omega_J;
  const _gamma_R = v.gamma_R;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _A_1 = v.A_1;
  const _A_g = v.A_g;
  const _A_r = v.A_r;
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _R_bolt = finite(_A_1 * _p_off, "R_bolt");
  const _R_group = finite(_A_g * _p_lost, "R_group");
  const _R_rest = finite(_A_r * _p_lost, "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _F_v_Rd = finite(_F_nv * _A_b / _Omega_J, "F_v_Rd");
  const _F_t_Rd = finite(_F_nt * _A_b / _Omega_J, "F_t_Rd");
  const _u = finite((_F_v / _F_v_Rd + _F_t / _F_t_Rd) / 1.3, "u");
  const _u_e = finite(Math.sqrt(Math.pow(finite(_F_v / _F_v_Rd, "F_v / F_v_Rd"), 2) + Math.pow(finite(_F_t / _F_t_Rd, "F_t / F_t_Rd"), 2)), "u_e");
  const _u_most = finite(Math.sqrt(Math.pow(finite(_F_v / 0.5, "F_v / 0.5"), 2) + Math.pow(finite(_F_t / 0.56, "F_t / 0.56"), 2)) * _gamma_R / finite(_f_ub * _A_s, "f_ub * A_s"), "u_most");
  const _u_least = finite(Math.sqrt(Math.pow(finite(_F_v / 0.62, "F_v / 0.62"), 2) + Math.pow(_F_t, 2)) * _gamma_R / finite(_f_ub * _A_b, "f_ub * A_b"), "u_least");
  const _u_low = finite(Math.max(_u_e, _u_least) / 1.4, "u_low");
  const _u_high = finite(1.25 * Math.min(_u_e, _u_most), "u_high");
  return [_p_off, _p_lost, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _L_n, _N_pull, _F_v, _F_v_Rd, _F_t_Rd, _u, _u_e, _u_most, _u_least, _u_low, _u_high];
}

export function boltBearingPanel_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "d" | "d_0" | "e_1" | "e_2" | "p_1" | "f_yp" | "f_u" | "stainless" | "p_2" | "f_ub" | "k_h" | "gamma_M2" | "gamma_R", number>>, k: Readonly<Record<"inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _d = v.d;
  const _d_0 = v.d_0;
  const _e_1 = v.e_1;
  const _e_2 = v.e_2;
  const _p_1 = v.p_1;
  const _f_yp = v.f_yp;
  const _f_u = v.f_u;
  const _stainless = v.stainless;
  const _p_2 = v.p_2;
  const _f_ub = v.f_ub;
  const _k_h = v.k_h;
  const _gamma_M2 = v.gamma_M2;
  const _gamma_R = v.gamma_R;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _f_b = finite(_stainless > 0 ? Math.min(_f_u, finite(0.5 * _f_yp + 0.6 * _f_u, "0.5 * f_yp + 0.6 * f_u")) : _f_u, "f_b");
  const _alpha_b = finite(Math.min(finite(_e_1 / finite(3 * _d_0, "3 * d_0"), "e_1 / (3 * d_0)"), finite(_p_1 / finite(3 * _d_0, "3 * d_0") - 1 / 4, "p_1 / (3 * d_0) - 1 / 4"), finite(_f_ub / _f_b, "f_ub / f_b"), 1), "alpha_b");
  const _k_1 = finite(Math.min(finite(2.8 * _e_2 / _d_0 - 1.7, "2.8 * e_2 / d_0 - 1.7"), finite(1.4 * _p_2 / _d_0 - 1.7, "1.4 * p_2 / d_0 - 1.7"), 2.5), "k_1");
  const _F_b_Rd = finite(Math.min(finite(_k_h * _k_1 * _alpha_b, "k_h * k_1 * alpha_b"), 1.5) * _f_b * _d * _t / _gamma_M2, "F_b_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _l_own = finite(Math.min(finite(_e_1 - _d_0 / 2, "e_1 - d_0 / 2"), finite((_p_1 - _d_0) / 2, "(p_1 - d_0) / 2")), "l_own");
  const _R_low = finite(_k_h * 0.8 * _f_yp * _d * _t * Math.min(1, finite(_l_own / _d_0, "l_own / d_0")) / _gamma_R, "R_low");
  const _R_high = finite(Math.min(finite(2 / finite(Math.sqrt(3), "sqrt(3)") * Math.min(_e_1, finite(_p_1 - _d_0 / 2, "p_1 - d_0 / 2")), "2 / sqrt(3) * min(e_1, p_1 - d_0 / 2)"), finite(3 * _d, "3 * d")) * _t * _f_u / _gamma_R, "R_high");
  const _u = finite(_F_b_Rd > finite(0 * _F_b_Rd, "0 * F_b_Rd") ? _F_v / _F_b_Rd : 0, "u");
  const _u_low = finite(_F_b_Rd > finite(0 * _F_b_Rd, "0 * F_b_Rd") ? Math.max(finite(_F_least / _F_b_Rd, "F_least / F_b_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_b_Rd > finite(0 * _F_b_Rd, "0 * F_b_Rd") ? Math.min(finite(_F_most / _F_b_Rd, "F_most / F_b_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _L_n, _N_pull, _F_v, _f_b, _alpha_b, _k_1, _F_b_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _l_own, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltBearingPanel_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "d" | "d_0" | "e_1" | "e_2" | "p_1" | "f_yp" | "f_u" | "stainless" | "k_h" | "Omega_J" | "gamma_R", number>>, k: Readonly<Record<"inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _d = v.d;
  const _d_0 = v.d_0;
  const _e_1 = v.e_1;
  const _e_2 = v.e_2;
  const _p_1 = v.p_1;
  const _f_yp = v.f_yp;
  const _f_u = v.f_u;
  const _stainless = v.stainless;
  const _k_h = v.k_h;
  const _Omega_J = v.Omega_J;
  const _gamma_R = v.gamma_R;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _f_b = finite(_stainless > 0 ? Math.min(_f_u, finite(0.5 * _f_yp + 0.6 * _f_u, "0.5 * f_yp + 0.6 * f_u")) : _f_u, "f_b");
  const _l_c = finite(Math.min(finite(Math.min(_e_1, _e_2) - _d_0 / 2, "min(e_1, e_2) - d_0 / 2"), finite(_p_1 - _d_0, "p_1 - d_0")), "l_c");
  const _F_b_Rd = finite(_k_h * Math.min(finite(1.2 * _l_c, "1.2 * l_c"), finite(2.4 * _d, "2.4 * d")) * _t * _f_b / _Omega_J, "F_b_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _l_own = finite(Math.min(finite(_e_1 - _d_0 / 2, "e_1 - d_0 / 2"), finite((_p_1 - _d_0) / 2, "(p_1 - d_0) / 2")), "l_own");
  const _R_low = finite(_k_h * 0.8 * _f_yp * _d * _t * Math.min(1, finite(_l_own / _d_0, "l_own / d_0")) / _gamma_R, "R_low");
  const _R_high = finite(Math.min(finite(2 / finite(Math.sqrt(3), "sqrt(3)") * Math.min(_e_1, finite(_p_1 - _d_0 / 2, "p_1 - d_0 / 2")), "2 / sqrt(3) * min(e_1, p_1 - d_0 / 2)"), finite(3 * _d, "3 * d")) * _t * _f_u / _gamma_R, "R_high");
  const _u = finite(_F_b_Rd > finite(0 * _F_b_Rd, "0 * F_b_Rd") ? _F_v / _F_b_Rd : 0, "u");
  const _u_low = finite(_F_b_Rd > finite(0 * _F_b_Rd, "0 * F_b_Rd") ? Math.max(finite(_F_least / _F_b_Rd, "F_least / F_b_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_b_Rd > finite(0 * _F_b_Rd, "0 * F_b_Rd") ? Math.min(finite(_F_most / _F_b_Rd, "F_most / F_b_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _L_n, _N_pull, _F_v, _f_b, _l_c, _F_b_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _l_own, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltBearingPanelBySolution_partialFactors(v: Readonly<Record<"t" | "d" | "d_0" | "e_1" | "e_2" | "p_1" | "f_yp" | "f_u" | "stainless" | "p_2" | "f_ub" | "k_h" | "gamma_M2" | "gamma_R", number>>): number[] {
  const _t = v.t;
  const _d = v.d;
  const _d_0 = v.d_0;
  const _e_1 = v.e_1;
  const _e_2 = v.e_2;
  const _p_1 = v.p_1;
  const _f_yp = v.f_yp;
  const _f_u = v.f_u;
  const _stainless = v.stainless;
  const _p_2 = v.p_2;
  const _f_ub = v.f_ub;
  const _k_h = v.k_h;
  const _gamma_M2 = v.gamma_M2;
  const _gamma_R = v.gamma_R;
  const _f_b = finite(_stainless > 0 ? Math.min(_f_u, finite(0.5 * _f_yp + 0.6 * _f_u, "0.5 * f_yp + 0.6 * f_u")) : _f_u, "f_b");
  const _alpha_b = finite(Math.min(finite(_e_1 / finite(3 * _d_0, "3 * d_0"), "e_1 / (3 * d_0)"), finite(_p_1 / finite(3 * _d_0, "3 * d_0") - 1 / 4, "p_1 / (3 * d_0) - 1 / 4"), finite(_f_ub / _f_b, "f_ub / f_b"), 1), "alpha_b");
  const _k_1 = finite(Math.min(finite(2.8 * _e_2 / _d_0 - 1.7, "2.8 * e_2 / d_0 - 1.7"), finite(1.4 * _p_2 / _d_0 - 1.7, "1.4 * p_2 / d_0 - 1.7"), 2.5), "k_1");
  const _F_b_Rd = finite(Math.min(finite(_k_h * _k_1 * _alpha_b, "k_h * k_1 * alpha_b"), 1.5) * _f_b * _d * _t / _gamma_M2, "F_b_Rd");
  const _l_own = finite(Math.min(finite(_e_1 - _d_0 / 2, "e_1 - d_0 / 2"), finite((_p_1 - _d_0) / 2, "(p_1 - d_0) / 2")), "l_own");
  const _R_low = finite(_k_h * 0.8 * _f_yp * _d * _t * Math.min(1, finite(_l_own / _d_0, "l_own / d_0")) / _gamma_R, "R_low");
  const _R_high = finite(Math.min(finite(2 / finite(Math.sqrt(3), "sqrt(3)") * Math.min(_e_1, finite(_p_1 - _d_0 / 2, "p_1 - d_0 / 2")), "2 / sqrt(3) * min(e_1, p_1 - d_0 / 2)"), finite(3 * _d, "3 * d")) * _t * _f_u / _gamma_R, "R_high");
  return [_f_b, _alpha_b, _k_1, _F_b_Rd, _l_own, _R_low, _R_high];
}

export function boltBearingPanelBySolution_allowableStress(v: Readonly<Record<"t" | "d" | "d_0" | "e_1" | "e_2" | "p_1" | "f_yp" | "f_u" | "stainless" | "k_h" | "Omega_J" | "gamma_R", number>>): number[] {
  const _t = v.t;
  const _d = v.d;
  const _d_0 = v.d_0;
  const _e_1 = v.e_1;
  const _e_2 = v.e_2;
  const _p_1 = v.p_1;
  const _f_yp = v.f_yp;
  const _f_u = v.f_u;
  const _stainless = v.stainless;
  const _k_h = v.k_h;
  const _Omega_J = v.Omega_J;
  const _gamma_R = v.gamma_R;
  const _f_b = finite(_stainless > 0 ? Math.min(_f_u, finite(0.5 * _f_yp + 0.6 * _f_u, "0.5 * f_yp + 0.6 * f_u")) : _f_u, "f_b");
  const _l_c = finite(Math.min(finite(Math.min(_e_1, _e_2) - _d_0 / 2, "min(e_1, e_2) - d_0 / 2"), finite(_p_1 - _d_0, "p_1 - d_0")), "l_c");
  const _F_b_Rd = finite(_k_h * Math.min(finite(1.2 * _l_c, "1.2 * l_c"), finite(2.4 * _d, "2.4 * d")) * _t * _f_b / _Omega_J, "F_b_Rd");
  const _l_own = finite(Math.min(finite(_e_1 - _d_0 / 2, "e_1 - d_0 / 2"), finite((_p_1 - _d_0) / 2, "(p_1 - d_0) / 2")), "l_own");
  const _R_low = finite(_k_h * 0.8 * _f_yp * _d * _t * Math.min(1, finite(_l_own / _d_0, "l_own / d_0")) / _gamma_R, "R_low");
  const _R_high = finite(Math.min(finite(2 / finite(Math.sqrt(3), "sqrt(3)") * Math.min(_e_1, finite(_p_1 - _d_0 / 2, "p_1 - d_0 / 2")), "2 / sqrt(3) * min(e_1, p_1 - d_0 / 2)"), finite(3 * _d, "3 * d")) * _t * _f_u / _gamma_R, "R_high");
  return [_f_b, _l_c, _F_b_Rd, _l_own, _R_low, _R_high];
}

export function boltBearingPanelByPlaces_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "d" | "d_0" | "e_1" | "e_2" | "p_1" | "f_yp" | "f_u" | "stainless" | "p_2" | "f_ub" | "k_h" | "gamma_M2" | "gamma_R" | "s_x" | "s_y", number>>, k: Readonly<Record<"inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _d = v.d;
  const _d_0 = v.d_0;
  const _e_1 = v.e_1;
  const _e_2 = v.e_2;
  const _p_1 = v.p_1;
  const _f_yp = v.f_yp;
  const _f_u = v.f_u;
  const _stainless = v.stainless;
  const _p_2 = v.p_2;
  const _f_ub = v.f_ub;
  const _k_h = v.k_h;
  const _gamma_M2 = v.gamma_M2;
  const _gamma_R = v.gamma_R;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _f_b = finite(_stainless > 0 ? Math.min(_f_u, finite(0.5 * _f_yp + 0.6 * _f_u, "0.5 * f_yp + 0.6 * f_u")) : _f_u, "f_b");
  const _alpha_b = finite(Math.min(finite(_e_1 / finite(3 * _d_0, "3 * d_0"), "e_1 / (3 * d_0)"), finite(_p_1 / finite(3 * _d_0, "3 * d_0") - 1 / 4, "p_1 / (3 * d_0) - 1 / 4"), finite(_f_ub / _f_b, "f_ub / f_b"), 1), "alpha_b");
  const _k_1 = finite(Math.min(finite(2.8 * _e_2 / _d_0 - 1.7, "2.8 * e_2 / d_0 - 1.7"), finite(1.4 * _p_2 / _d_0 - 1.7, "1.4 * p_2 / d_0 - 1.7"), 2.5), "k_1");
  const _F_b_Rd = finite(Math.min(finite(_k_h * _k_1 * _alpha_b, "k_h * k_1 * alpha_b"), 1.5) * _f_b * _d * _t / _gamma_M2, "F_b_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _l_own = finite(Math.min(finite(_e_1 - _d_0 / 2, "e_1 - d_0 / 2"), finite((_p_1 - _d_0) / 2, "(p_1 - d_0) / 2")), "l_own");
  const _R_low = finite(_k_h * 0.8 * _f_yp * _d * _t * Math.min(1, finite(_l_own / _d_0, "l_own / d_0")) / _gamma_R, "R_low");
  const _R_high = finite(Math.min(finite(2 / finite(Math.sqrt(3), "sqrt(3)") * Math.min(_e_1, finite(_p_1 - _d_0 / 2, "p_1 - d_0 / 2")), "2 / sqrt(3) * min(e_1, p_1 - d_0 / 2)"), finite(3 * _d, "3 * d")) * _t * _f_u / _gamma_R, "R_high");
  const _u = finite(_F_b_Rd > finite(0 * _F_b_Rd, "0 * F_b_Rd") ? _F_v / _F_b_Rd : 0, "u");
  const _u_low = finite(_F_b_Rd > finite(0 * _F_b_Rd, "0 * F_b_Rd") ? Math.max(finite(_F_least / _F_b_Rd, "F_least / F_b_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_b_Rd > finite(0 * _F_b_Rd, "0 * F_b_Rd") ? Math.min(finite(_F_most / _F_b_Rd, "F_most / F_b_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_L_n, _N_pull, _F_v, _f_b, _alpha_b, _k_1, _F_b_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _l_own, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltBearingPanelByPlaces_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "d" | "d_0" | "e_1" | "e_2" | "p_1" | "f_yp" | "f_u" | "stainless" | "k_h" | "Omega_J" | "gamma_R" | "s_x" | "s_y", number>>, k: Readonly<Record<"inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _d = v.d;
  const _d_0 = v.d_0;
  const _e_1 = v.e_1;
  const _e_2 = v.e_2;
  const _p_1 = v.p_1;
  const _f_yp = v.f_yp;
  const _f_u = v.f_u;
  const _stainless = v.stainless;
  const _k_h = v.k_h;
  const _Omega_J = v.Omega_J;
  const _gamma_R = v.gamma_R;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _f_b = finite(_stainless > 0 ? Math.min(_f_u, finite(0.5 * _f_yp + 0.6 * _f_u, "0.5 * f_yp + 0.6 * f_u")) : _f_u, "f_b");
  const _l_c = finite(Math.min(finite(Math.min(_e_1, _e_2) - _d_0 / 2, "min(e_1, e_2) - d_0 / 2"), finite(_p_1 - _d_0, "p_1 - d_0")), "l_c");
  const _F_b_Rd = finite(_k_h * Math.min(finite(1.2 * _l_c, "1.2 * l_c"), finite(2.4 * _d, "2.4 * d")) * _t * _f_b / _Omega_J, "F_b_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _l_own = finite(Math.min(finite(_e_1 - _d_0 / 2, "e_1 - d_0 / 2"), finite((_p_1 - _d_0) / 2, "(p_1 - d_0) / 2")), "l_own");
  const _R_low = finite(_k_h * 0.8 * _f_yp * _d * _t * Math.min(1, finite(_l_own / _d_0, "l_own / d_0")) / _gamma_R, "R_low");
  const _R_high = finite(Math.min(finite(2 / finite(Math.sqrt(3), "sqrt(3)") * Math.min(_e_1, finite(_p_1 - _d_0 / 2, "p_1 - d_0 / 2")), "2 / sqrt(3) * min(e_1, p_1 - d_0 / 2)"), finite(3 * _d, "3 * d")) * _t * _f_u / _gamma_R, "R_high");
  const _u = finite(_F_b_Rd > finite(0 * _F_b_Rd, "0 * F_b_Rd") ? _F_v / _F_b_Rd : 0, "u");
  const _u_low = finite(_F_b_Rd > finite(0 * _F_b_Rd, "0 * F_b_Rd") ? Math.max(finite(_F_least / _F_b_Rd, "F_least / F_b_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_b_Rd > finite(0 * _F_b_Rd, "0 * F_b_Rd") ? Math.min(finite(_F_most / _F_b_Rd, "F_most / F_b_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_L_n, _N_pull, _F_v, _f_b, _l_c, _F_b_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _l_own, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltBearingTube_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "d" | "d_0" | "e_w" | "p_1" | "t_w" | "f_yw" | "f_uw" | "stainless_w" | "p_2" | "f_ub" | "k_h" | "gamma_M2" | "gamma_R", number>>, k: Readonly<Record<"inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _d = v.d;
  const _d_0 = v.d_0;
  const _e_w = v.e_w;
  const _p_1 = v.p_1;
  const _t_w = v.t_w;
  const _f_yw = v.f_yw;
  const _f_uw = v.f_uw;
  const _stainless_w = v.stainless_w;
  const _p_2 = v.p_2;
  const _f_ub = v.f_ub;
  const _k_h = v.k_h;
  const _gamma_M2 = v.gamma_M2;
  const _gamma_R = v.gamma_R;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _f_b = finite(_stainless_w > 0 ? Math.min(_f_uw, finite(0.5 * _f_yw + 0.6 * _f_uw, "0.5 * f_yw + 0.6 * f_uw")) : _f_uw, "f_b");
  const _alpha_b = finite(Math.min(finite(_e_w / finite(3 * _d_0, "3 * d_0"), "e_w / (3 * d_0)"), finite(_p_1 / finite(3 * _d_0, "3 * d_0") - 1 / 4, "p_1 / (3 * d_0) - 1 / 4"), finite(_f_ub / _f_b, "f_ub / f_b"), 1), "alpha_b");
  const _k_1 = finite(Math.min(finite(1.4 * _p_2 / _d_0 - 1.7, "1.4 * p_2 / d_0 - 1.7"), 2.5), "k_1");
  const _F_b_Rd = finite(Math.min(finite(_k_h * _k_1 * _alpha_b, "k_h * k_1 * alpha_b"), 1.5) * _f_b * _d * _t_w / _gamma_M2, "F_b_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _l_own = finite(Math.min(finite(_e_w - _d_0 / 2, "e_w - d_0 / 2"), finite((_p_1 - _d_0) / 2, "(p_1 - d_0) / 2")), "l_own");
  const _R_low = finite(0.8 * _f_yw * _d * _t_w * Math.min(1, finite(_l_own / _d_0, "l_own / d_0")) / _gamma_R, "R_low");
  const _R_high = finite(Math.min(finite(2 / finite(Math.sqrt(3), "sqrt(3)") * Math.min(_e_w, finite(_p_1 - _d_0 / 2, "p_1 - d_0 / 2")), "2 / sqrt(3) * min(e_w, p_1 - d_0 / 2)"), finite(3 * _d, "3 * d")) * _t_w * _f_uw / _gamma_R, "R_high");
  const _u = finite(_F_b_Rd > finite(0 * _F_b_Rd, "0 * F_b_Rd") ? _F_v / _F_b_Rd : 0, "u");
  const _u_low = finite(_F_b_Rd > finite(0 * _F_b_Rd, "0 * F_b_Rd") ? Math.max(finite(_F_least / _F_b_Rd, "F_least / F_b_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_b_Rd > finite(0 * _F_b_Rd, "0 * F_b_Rd") ? Math.min(finite(_F_most / _F_b_Rd, "F_most / F_b_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _L_n, _N_pull, _F_v, _f_b, _alpha_b, _k_1, _F_b_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _l_own, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltBearingTube_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "d" | "d_0" | "e_w" | "p_1" | "t_w" | "f_yw" | "f_uw" | "stainless_w" | "Omega_J" | "gamma_R", number>>, k: Readonly<Record<"inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _d = v.d;
  const _d_0 = v.d_0;
  const _e_w = v.e_w;
  const _p_1 = v.p_1;
  const _t_w = v.t_w;
  const _f_yw = v.f_yw;
  const _f_uw = v.f_uw;
  const _stainless_w = v.stainless_w;
  const _Omega_J = v.Omega_J;
  const _gamma_R = v.gamma_R;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _f_b = finite(_stainless_w > 0 ? Math.min(_f_uw, finite(0.5 * _f_yw + 0.6 * _f_uw, "0.5 * f_yw + 0.6 * f_uw")) : _f_uw, "f_b");
  const _l_c = finite(Math.min(finite(_e_w - _d_0 / 2, "e_w - d_0 / 2"), finite(_p_1 - _d_0, "p_1 - d_0")), "l_c");
  const _F_b_Rd = finite(Math.min(finite(1.2 * _l_c, "1.2 * l_c"), finite(2.4 * _d, "2.4 * d")) * _t_w * _f_b / _Omega_J, "F_b_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _l_own = finite(Math.min(finite(_e_w - _d_0 / 2, "e_w - d_0 / 2"), finite((_p_1 - _d_0) / 2, "(p_1 - d_0) / 2")), "l_own");
  const _R_low = finite(0.8 * _f_yw * _d * _t_w * Math.min(1, finite(_l_own / _d_0, "l_own / d_0")) / _gamma_R, "R_low");
  const _R_high = finite(Math.min(finite(2 / finite(Math.sqrt(3), "sqrt(3)") * Math.min(_e_w, finite(_p_1 - _d_0 / 2, "p_1 - d_0 / 2")), "2 / sqrt(3) * min(e_w, p_1 - d_0 / 2)"), finite(3 * _d, "3 * d")) * _t_w * _f_uw / _gamma_R, "R_high");
  const _u = finite(_F_b_Rd > finite(0 * _F_b_Rd, "0 * F_b_Rd") ? _F_v / _F_b_Rd : 0, "u");
  const _u_low = finite(_F_b_Rd > finite(0 * _F_b_Rd, "0 * F_b_Rd") ? Math.max(finite(_F_least / _F_b_Rd, "F_least / F_b_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_b_Rd > finite(0 * _F_b_Rd, "0 * F_b_Rd") ? Math.min(finite(_F_most / _F_b_Rd, "F_most / F_b_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _L_n, _N_pull, _F_v, _f_b, _l_c, _F_b_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _l_own, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltBearingTubeBySolution_partialFactors(v: Readonly<Record<"d" | "d_0" | "e_w" | "p_1" | "t_w" | "f_yw" | "f_uw" | "stainless_w" | "p_2" | "f_ub" | "k_h" | "gamma_M2" | "gamma_R", number>>): number[] {
  const _d = v.d;
  const _d_0 = v.d_0;
  const _e_w = v.e_w;
  const _p_1 = v.p_1;
  const _t_w = v.t_w;
  const _f_yw = v.f_yw;
  const _f_uw = v.f_uw;
  const _stainless_w = v.stainless_w;
  const _p_2 = v.p_2;
  const _f_ub = v.f_ub;
  const _k_h = v.k_h;
  const _gamma_M2 = v.gamma_M2;
  const _gamma_R = v.gamma_R;
  const _f_b = finite(_stainless_w > 0 ? Math.min(_f_uw, finite(0.5 * _f_yw + 0.6 * _f_uw, "0.5 * f_yw + 0.6 * f_uw")) : _f_uw, "f_b");
  const _alpha_b = finite(Math.min(finite(_e_w / finite(3 * _d_0, "3 * d_0"), "e_w / (3 * d_0)"), finite(_p_1 / finite(3 * _d_0, "3 * d_0") - 1 / 4, "p_1 / (3 * d_0) - 1 / 4"), finite(_f_ub / _f_b, "f_ub / f_b"), 1), "alpha_b");
  const _k_1 = finite(Math.min(finite(1.4 * _p_2 / _d_0 - 1.7, "1.4 * p_2 / d_0 - 1.7"), 2.5), "k_1");
  const _F_b_Rd = finite(Math.min(finite(_k_h * _k_1 * _alpha_b, "k_h * k_1 * alpha_b"), 1.5) * _f_b * _d * _t_w / _gamma_M2, "F_b_Rd");
  const _l_own = finite(Math.min(finite(_e_w - _d_0 / 2, "e_w - d_0 / 2"), finite((_p_1 - _d_0) / 2, "(p_1 - d_0) / 2")), "l_own");
  const _R_low = finite(0.8 * _f_yw * _d * _t_w * Math.min(1, finite(_l_own / _d_0, "l_own / d_0")) / _gamma_R, "R_low");
  const _R_high = finite(Math.min(finite(2 / finite(Math.sqrt(3), "sqrt(3)") * Math.min(_e_w, finite(_p_1 - _d_0 / 2, "p_1 - d_0 / 2")), "2 / sqrt(3) * min(e_w, p_1 - d_0 / 2)"), finite(3 * _d, "3 * d")) * _t_w * _f_uw / _gamma_R, "R_high");
  return [_f_b, _alpha_b, _k_1, _F_b_Rd, _l_own, _R_low, _R_high];
}

export function boltBearingTubeBySolution_allowableStress(v: Readonly<Record<"d" | "d_0" | "e_w" | "p_1" | "t_w" | "f_yw" | "f_uw" | "stainless_w" | "Omega_J" | "gamma_R", number>>): number[] {
  const _d = v.d;
  const _d_0 = v.d_0;
  const _e_w = v.e_w;
  const _p_1 = v.p_1;
  const _t_w = v.t_w;
  const _f_yw = v.f_yw;
  const _f_uw = v.f_uw;
  const _stainless_w = v.stainless_w;
  const _Omega_J = v.Omega_J;
  const _gamma_R = v.gamma_R;
  const _f_b = finite(_stainless_w > 0 ? Math.min(_f_uw, finite(0.5 * _f_yw + 0.6 * _f_uw, "0.5 * f_yw + 0.6 * f_uw")) : _f_uw, "f_b");
  const _l_c = finite(Math.min(finite(_e_w - _d_0 / 2, "e_w - d_0 / 2"), finite(_p_1 - _d_0, "p_1 - d_0")), "l_c");
  const _F_b_Rd = finite(Math.min(finite(1.2 * _l_c, "1.2 * l_c"), finite(2.4 * _d, "2.4 * d")) * _t_w * _f_b / _Omega_J, "F_b_Rd");
  const _l_own = finite(Math.min(finite(_e_w - _d_0 / 2, "e_w - d_0 / 2"), finite((_p_1 - _d_0) / 2, "(p_1 - d_0) / 2")), "l_own");
  const _R_low = finite(0.8 * _f_yw * _d * _t_w * Math.min(1, finite(_l_own / _d_0, "l_own / d_0")) / _gamma_R, "R_low");
  const _R_high = finite(Math.min(finite(2 / finite(Math.sqrt(3), "sqrt(3)") * Math.min(_e_w, finite(_p_1 - _d_0 / 2, "p_1 - d_0 / 2")), "2 / sqrt(3) * min(e_w, p_1 - d_0 / 2)"), finite(3 * _d, "3 * d")) * _t_w * _f_uw / _gamma_R, "R_high");
  return [_f_b, _l_c, _F_b_Rd, _l_own, _R_low, _R_high];
}

export function boltBearingTubeByPlaces_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "d" | "d_0" | "e_w" | "p_1" | "t_w" | "f_yw" | "f_uw" | "stainless_w" | "p_2" | "f_ub" | "k_h" | "gamma_M2" | "gamma_R" | "s_x" | "s_y", number>>, k: Readonly<Record<"inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _d = v.d;
  const _d_0 = v.d_0;
  const _e_w = v.e_w;
  const _p_1 = v.p_1;
  const _t_w = v.t_w;
  const _f_yw = v.f_yw;
  const _f_uw = v.f_uw;
  const _stainless_w = v.stainless_w;
  const _p_2 = v.p_2;
  const _f_ub = v.f_ub;
  const _k_h = v.k_h;
  const _gamma_M2 = v.gamma_M2;
  const _gamma_R = v.gamma_R;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _f_b = finite(_stainless_w > 0 ? Math.min(_f_uw, finite(0.5 * _f_yw + 0.6 * _f_uw, "0.5 * f_yw + 0.6 * f_uw")) : _f_uw, "f_b");
  const _alpha_b = finite(Math.min(finite(_e_w / finite(3 * _d_0, "3 * d_0"), "e_w / (3 * d_0)"), finite(_p_1 / finite(3 * _d_0, "3 * d_0") - 1 / 4, "p_1 / (3 * d_0) - 1 / 4"), finite(_f_ub / _f_b, "f_ub / f_b"), 1), "alpha_b");
  const _k_1 = finite(Math.min(finite(1.4 * _p_2 / _d_0 - 1.7, "1.4 * p_2 / d_0 - 1.7"), 2.5), "k_1");
  const _F_b_Rd = finite(Math.min(finite(_k_h * _k_1 * _alpha_b, "k_h * k_1 * alpha_b"), 1.5) * _f_b * _d * _t_w / _gamma_M2, "F_b_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _l_own = finite(Math.min(finite(_e_w - _d_0 / 2, "e_w - d_0 / 2"), finite((_p_1 - _d_0) / 2, "(p_1 - d_0) / 2")), "l_own");
  const _R_low = finite(0.8 * _f_yw * _d * _t_w * Math.min(1, finite(_l_own / _d_0, "l_own / d_0")) / _gamma_R, "R_low");
  const _R_high = finite(Math.min(finite(2 / finite(Math.sqrt(3), "sqrt(3)") * Math.min(_e_w, finite(_p_1 - _d_0 / 2, "p_1 - d_0 / 2")), "2 / sqrt(3) * min(e_w, p_1 - d_0 / 2)"), finite(3 * _d, "3 * d")) * _t_w * _f_uw / _gamma_R, "R_high");
  const _u = finite(_F_b_Rd > finite(0 * _F_b_Rd, "0 * F_b_Rd") ? _F_v / _F_b_Rd : 0, "u");
  const _u_low = finite(_F_b_Rd > finite(0 * _F_b_Rd, "0 * F_b_Rd") ? Math.max(finite(_F_least / _F_b_Rd, "F_least / F_b_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_b_Rd > finite(0 * _F_b_Rd, "0 * F_b_Rd") ? Math.min(finite(_F_most / _F_b_Rd, "F_most / F_b_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_L_n, _N_pull, _F_v, _f_b, _alpha_b, _k_1, _F_b_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _l_own, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltBearingTubeByPlaces_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "d" | "d_0" | "e_w" | "p_1" | "t_w" | "f_yw" | "f_uw" | "stainless_w" | "Omega_J" | "gamma_R" | "s_x" | "s_y", number>>, k: Readonly<Record<"inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _d = v.d;
  const _d_0 = v.d_0;
  const _e_w = v.e_w;
  const _p_1 = v.p_1;
  const _t_w = v.t_w;
  const _f_yw = v.f_yw;
  const _f_uw = v.f_uw;
  const _stainless_w = v.stainless_w;
  const _Omega_J = v.Omega_J;
  const _gamma_R = v.gamma_R;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _f_b = finite(_stainless_w > 0 ? Math.min(_f_uw, finite(0.5 * _f_yw + 0.6 * _f_uw, "0.5 * f_yw + 0.6 * f_uw")) : _f_uw, "f_b");
  const _l_c = finite(Math.min(finite(_e_w - _d_0 / 2, "e_w - d_0 / 2"), finite(_p_1 - _d_0, "p_1 - d_0")), "l_c");
  const _F_b_Rd = finite(Math.min(finite(1.2 * _l_c, "1.2 * l_c"), finite(2.4 * _d, "2.4 * d")) * _t_w * _f_b / _Omega_J, "F_b_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _l_own = finite(Math.min(finite(_e_w - _d_0 / 2, "e_w - d_0 / 2"), finite((_p_1 - _d_0) / 2, "(p_1 - d_0) / 2")), "l_own");
  const _R_low = finite(0.8 * _f_yw * _d * _t_w * Math.min(1, finite(_l_own / _d_0, "l_own / d_0")) / _gamma_R, "R_low");
  const _R_high = finite(Math.min(finite(2 / finite(Math.sqrt(3), "sqrt(3)") * Math.min(_e_w, finite(_p_1 - _d_0 / 2, "p_1 - d_0 / 2")), "2 / sqrt(3) * min(e_w, p_1 - d_0 / 2)"), finite(3 * _d, "3 * d")) * _t_w * _f_uw / _gamma_R, "R_high");
  const _u = finite(_F_b_Rd > finite(0 * _F_b_Rd, "0 * F_b_Rd") ? _F_v / _F_b_Rd : 0, "u");
  const _u_low = finite(_F_b_Rd > finite(0 * _F_b_Rd, "0 * F_b_Rd") ? Math.max(finite(_F_least / _F_b_Rd, "F_least / F_b_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_b_Rd > finite(0 * _F_b_Rd, "0 * F_b_Rd") ? Math.min(finite(_F_most / _F_b_Rd, "F_most / F_b_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_L_n, _N_pull, _F_v, _f_b, _l_c, _F_b_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _l_own, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltTearOut_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "d_0" | "e_1" | "f_yp" | "f_u" | "gamma_M0" | "gamma_R", number>>, k: Readonly<Record<"inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _d_0 = v.d_0;
  const _e_1 = v.e_1;
  const _f_yp = v.f_yp;
  const _f_u = v.f_u;
  const _gamma_M0 = v.gamma_M0;
  const _gamma_R = v.gamma_R;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _A_nv = finite(2 * (_e_1 - _d_0 / 2) * _t, "A_nv");
  const _V_eff_Rd = finite(_f_yp * _A_nv / finite(Math.sqrt(3) * _gamma_M0, "sqrt(3) * gamma_M0"), "V_eff_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _R_low = finite(_f_yp * (_e_1 - _d_0 / 2) * _t / _gamma_R, "R_low");
  const _R_high = finite(2 / finite(Math.sqrt(3), "sqrt(3)") * _f_u * _e_1 * _t / _gamma_R, "R_high");
  const _u = finite(_V_eff_Rd > finite(0 * _V_eff_Rd, "0 * V_eff_Rd") ? _F_v / _V_eff_Rd : 0, "u");
  const _u_low = finite(_V_eff_Rd > finite(0 * _V_eff_Rd, "0 * V_eff_Rd") ? Math.max(finite(_F_least / _V_eff_Rd, "F_least / V_eff_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_V_eff_Rd > finite(0 * _V_eff_Rd, "0 * V_eff_Rd") ? Math.min(finite(_F_most / _V_eff_Rd, "F_most / V_eff_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _L_n, _N_pull, _F_v, _A_nv, _V_eff_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltTearOut_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "d_0" | "e_1" | "f_yp" | "f_u" | "Omega_J" | "gamma_R", number>>, k: Readonly<Record<"inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _d_0 = v.d_0;
  const _e_1 = v.e_1;
  const _f_yp = v.f_yp;
  const _f_u = v.f_u;
  const _Omega_J = v.Omega_J;
  const _gamma_R = v.gamma_R;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _A_nv = finite(2 * (_e_1 - _d_0 / 2) * _t, "A_nv");
  const _A_gv = finite(2 * _e_1 * _t, "A_gv");
  const _V_eff_Rd = finite(Math.min(finite(0.6 * _f_u * _A_nv, "0.6 * f_u * A_nv"), finite(0.6 * _f_yp * _A_gv, "0.6 * f_yp * A_gv")) / _Omega_J, "V_eff_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _R_low = finite(_f_yp * (_e_1 - _d_0 / 2) * _t / _gamma_R, "R_low");
  const _R_high = finite(2 / finite(Math.sqrt(3), "sqrt(3)") * _f_u * _e_1 * _t / _gamma_R, "R_high");
  const _u = finite(_V_eff_Rd > finite(0 * _V_eff_Rd, "0 * V_eff_Rd") ? _F_v / _V_eff_Rd : 0, "u");
  const _u_low = finite(_V_eff_Rd > finite(0 * _V_eff_Rd, "0 * V_eff_Rd") ? Math.max(finite(_F_least / _V_eff_Rd, "F_least / V_eff_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_V_eff_Rd > finite(0 * _V_eff_Rd, "0 * V_eff_Rd") ? Math.min(finite(_F_most / _V_eff_Rd, "F_most / V_eff_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _L_n, _N_pull, _F_v, _A_nv, _A_gv, _V_eff_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltTearOutBySolution_partialFactors(v: Readonly<Record<"t" | "d_0" | "e_1" | "f_yp" | "f_u" | "gamma_M0" | "gamma_R", number>>): number[] {
  const _t = v.t;
  const _d_0 = v.d_0;
  const _e_1 = v.e_1;
  const _f_yp = v.f_yp;
  const _f_u = v.f_u;
  const _gamma_M0 = v.gamma_M0;
  const _gamma_R = v.gamma_R;
  const _A_nv = finite(2 * (_e_1 - _d_0 / 2) * _t, "A_nv");
  const _V_eff_Rd = finite(_f_yp * _A_nv / finite(Math.sqrt(3) * _gamma_M0, "sqrt(3) * gamma_M0"), "V_eff_Rd");
  const _R_low = finite(_f_yp * (_e_1 - _d_0 / 2) * _t / _gamma_R, "R_low");
  const _R_high = finite(2 / finite(Math.sqrt(3), "sqrt(3)") * _f_u * _e_1 * _t / _gamma_R, "R_high");
  return [_A_nv, _V_eff_Rd, _R_low, _R_high];
}

export function boltTearOutBySolution_allowableStress(v: Readonly<Record<"t" | "d_0" | "e_1" | "f_yp" | "f_u" | "Omega_J" | "gamma_R", number>>): number[] {
  const _t = v.t;
  const _d_0 = v.d_0;
  const _e_1 = v.e_1;
  const _f_yp = v.f_yp;
  const _f_u = v.f_u;
  const _Omega_J = v.Omega_J;
  const _gamma_R = v.gamma_R;
  const _A_nv = finite(2 * (_e_1 - _d_0 / 2) * _t, "A_nv");
  const _A_gv = finite(2 * _e_1 * _t, "A_gv");
  const _V_eff_Rd = finite(Math.min(finite(0.6 * _f_u * _A_nv, "0.6 * f_u * A_nv"), finite(0.6 * _f_yp * _A_gv, "0.6 * f_yp * A_gv")) / _Omega_J, "V_eff_Rd");
  const _R_low = finite(_f_yp * (_e_1 - _d_0 / 2) * _t / _gamma_R, "R_low");
  const _R_high = finite(2 / finite(Math.sqrt(3), "sqrt(3)") * _f_u * _e_1 * _t / _gamma_R, "R_high");
  return [_A_nv, _A_gv, _V_eff_Rd, _R_low, _R_high];
}

export function boltTearOutByPlaces_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "d_0" | "e_1" | "f_yp" | "f_u" | "gamma_M0" | "gamma_R" | "s_x" | "s_y", number>>, k: Readonly<Record<"inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _d_0 = v.d_0;
  const _e_1 = v.e_1;
  const _f_yp = v.f_yp;
  const _f_u = v.f_u;
  const _gamma_M0 = v.gamma_M0;
  const _gamma_R = v.gamma_R;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _A_nv = finite(2 * (_e_1 - _d_0 / 2) * _t, "A_nv");
  const _V_eff_Rd = finite(_f_yp * _A_nv / finite(Math.sqrt(3) * _gamma_M0, "sqrt(3) * gamma_M0"), "V_eff_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _R_low = finite(_f_yp * (_e_1 - _d_0 / 2) * _t / _gamma_R, "R_low");
  const _R_high = finite(2 / finite(Math.sqrt(3), "sqrt(3)") * _f_u * _e_1 * _t / _gamma_R, "R_high");
  const _u = finite(_V_eff_Rd > finite(0 * _V_eff_Rd, "0 * V_eff_Rd") ? _F_v / _V_eff_Rd : 0, "u");
  const _u_low = finite(_V_eff_Rd > finite(0 * _V_eff_Rd, "0 * V_eff_Rd") ? Math.max(finite(_F_least / _V_eff_Rd, "F_least / V_eff_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_V_eff_Rd > finite(0 * _V_eff_Rd, "0 * V_eff_Rd") ? Math.min(finite(_F_most / _V_eff_Rd, "F_most / V_eff_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_L_n, _N_pull, _F_v, _A_nv, _V_eff_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltTearOutByPlaces_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "d_0" | "e_1" | "f_yp" | "f_u" | "Omega_J" | "gamma_R" | "s_x" | "s_y", number>>, k: Readonly<Record<"inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _d_0 = v.d_0;
  const _e_1 = v.e_1;
  const _f_yp = v.f_yp;
  const _f_u = v.f_u;
  const _Omega_J = v.Omega_J;
  const _gamma_R = v.gamma_R;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _A_nv = finite(2 * (_e_1 - _d_0 / 2) * _t, "A_nv");
  const _A_gv = finite(2 * _e_1 * _t, "A_gv");
  const _V_eff_Rd = finite(Math.min(finite(0.6 * _f_u * _A_nv, "0.6 * f_u * A_nv"), finite(0.6 * _f_yp * _A_gv, "0.6 * f_yp * A_gv")) / _Omega_J, "V_eff_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _R_low = finite(_f_yp * (_e_1 - _d_0 / 2) * _t / _gamma_R, "R_low");
  const _R_high = finite(2 / finite(Math.sqrt(3), "sqrt(3)") * _f_u * _e_1 * _t / _gamma_R, "R_high");
  const _u = finite(_V_eff_Rd > finite(0 * _V_eff_Rd, "0 * V_eff_Rd") ? _F_v / _V_eff_Rd : 0, "u");
  const _u_low = finite(_V_eff_Rd > finite(0 * _V_eff_Rd, "0 * V_eff_Rd") ? Math.max(finite(_F_least / _V_eff_Rd, "F_least / V_eff_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_V_eff_Rd > finite(0 * _V_eff_Rd, "0 * V_eff_Rd") ? Math.min(finite(_F_most / _V_eff_Rd, "F_most / V_eff_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_L_n, _N_pull, _F_v, _A_nv, _A_gv, _V_eff_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltBlockTear_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "d_0" | "e_1" | "f_yp" | "f_u" | "gamma_M0" | "gamma_M2" | "gamma_R", number>>, k: Readonly<Record<"inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _d_0 = v.d_0;
  const _e_1 = v.e_1;
  const _f_yp = v.f_yp;
  const _f_u = v.f_u;
  const _gamma_M0 = v.gamma_M0;
  const _gamma_M2 = v.gamma_M2;
  const _gamma_R = v.gamma_R;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _A_ntx = finite((_n_x - 1) * (_s_x - _d_0) * _t / _n_x, "A_ntx");
  const _A_nvx = finite(2 * (_e_1 - _d_0 / 2) * _t / _n_x, "A_nvx");
  const _A_nty = finite((_n_y - 1) * (_s_y - _d_0) * _t / _n_y, "A_nty");
  const _A_nvy = finite(2 * (_e_1 - _d_0 / 2) * _t / _n_y, "A_nvy");
  const _B_x = finite(_f_u * _A_ntx / _gamma_M2 + _f_yp * _A_nvx / finite(Math.sqrt(3) * _gamma_M0, "sqrt(3) * gamma_M0"), "B_x");
  const _B_y = finite(_f_u * _A_nty / _gamma_M2 + _f_yp * _A_nvy / finite(Math.sqrt(3) * _gamma_M0, "sqrt(3) * gamma_M0"), "B_y");
  const _B_net = finite(0.9 / _gamma_M2 * _f_u * (Math.min(_s_x, _s_y) - _d_0) * _t, "B_net");
  const _B_Rd = finite(Math.min(_B_x, _B_y, _B_net), "B_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _R_low = finite(0.5 * _f_yp * (Math.min(_s_x, _s_y) - _d_0) * _t / finite(2 * _gamma_R, "2 * gamma_R"), "R_low");
  const _R_high = finite(_f_u * _t * (Math.min(_s_x, _s_y) + 2 * _e_1), "R_high");
  const _u = finite(_B_Rd > finite(0 * _B_Rd, "0 * B_Rd") ? _F_v / _B_Rd : 0, "u");
  const _u_low = finite(_B_Rd > finite(0 * _B_Rd, "0 * B_Rd") ? Math.max(finite(_F_least / _B_Rd, "F_least / B_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_B_Rd > finite(0 * _B_Rd, "0 * B_Rd") ? Math.min(finite(_F_most / _B_Rd, "F_most / B_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _L_n, _N_pull, _F_v, _A_ntx, _A_nvx, _A_nty, _A_nvy, _B_x, _B_y, _B_net, _B_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltBlockTear_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "d_0" | "e_1" | "f_yp" | "f_u" | "Omega_J" | "gamma_R", number>>, k: Readonly<Record<"inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _d_0 = v.d_0;
  const _e_1 = v.e_1;
  const _f_yp = v.f_yp;
  const _f_u = v.f_u;
  const _Omega_J = v.Omega_J;
  const _gamma_R = v.gamma_R;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _A_ntx = finite((_n_x - 1) * (_s_x - _d_0) * _t / _n_x, "A_ntx");
  const _A_nvx = finite(2 * (_e_1 - _d_0 / 2) * _t / _n_x, "A_nvx");
  const _A_nty = finite((_n_y - 1) * (_s_y - _d_0) * _t / _n_y, "A_nty");
  const _A_nvy = finite(2 * (_e_1 - _d_0 / 2) * _t / _n_y, "A_nvy");
  const _B_x = finite((_f_u * _A_ntx + Math.min(finite(0.6 * _f_u * _A_nvx, "0.6 * f_u * A_nvx"), finite(0.6 * _f_yp * 2 * _e_1 * _t / _n_x, "0.6 * f_yp * 2 * e_1 * t / n_x"))) / _Omega_J, "B_x");
  const _B_y = finite((_f_u * _A_nty + Math.min(finite(0.6 * _f_u * _A_nvy, "0.6 * f_u * A_nvy"), finite(0.6 * _f_yp * 2 * _e_1 * _t / _n_y, "0.6 * f_yp * 2 * e_1 * t / n_y"))) / _Omega_J, "B_y");
  const _B_net = finite(1 / _Omega_J * _f_u * (Math.min(_s_x, _s_y) - _d_0) * _t, "B_net");
  const _B_Rd = finite(Math.min(_B_x, _B_y, _B_net), "B_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _R_low = finite(0.5 * _f_yp * (Math.min(_s_x, _s_y) - _d_0) * _t / finite(2 * _gamma_R, "2 * gamma_R"), "R_low");
  const _R_high = finite(_f_u * _t * (Math.min(_s_x, _s_y) + 2 * _e_1), "R_high");
  const _u = finite(_B_Rd > finite(0 * _B_Rd, "0 * B_Rd") ? _F_v / _B_Rd : 0, "u");
  const _u_low = finite(_B_Rd > finite(0 * _B_Rd, "0 * B_Rd") ? Math.max(finite(_F_least / _B_Rd, "F_least / B_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_B_Rd > finite(0 * _B_Rd, "0 * B_Rd") ? Math.min(finite(_F_most / _B_Rd, "F_most / B_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _L_n, _N_pull, _F_v, _A_ntx, _A_nvx, _A_nty, _A_nvy, _B_x, _B_y, _B_net, _B_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltBlockTearBySolution_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "d_0" | "e_1" | "f_yp" | "f_u" | "gamma_M0" | "gamma_M2" | "gamma_R" | "F_v", number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _d_0 = v.d_0;
  const _e_1 = v.e_1;
  const _f_yp = v.f_yp;
  const _f_u = v.f_u;
  const _gamma_M0 = v.gamma_M0;
  const _gamma_M2 = v.gamma_M2;
  const _gamma_R = v.gamma_R;
  const _F_v = v.F_v;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _A_ntx = finite((_n_x - 1) * (_s_x - _d_0) * _t / _n_x, "A_ntx");
  const _A_nvx = finite(2 * (_e_1 - _d_0 / 2) * _t / _n_x, "A_nvx");
  const _A_nty = finite((_n_y - 1) * (_s_y - _d_0) * _t / _n_y, "A_nty");
  const _A_nvy = finite(2 * (_e_1 - _d_0 / 2) * _t / _n_y, "A_nvy");
  const _B_x = finite(_f_u * _A_ntx / _gamma_M2 + _f_yp * _A_nvx / finite(Math.sqrt(3) * _gamma_M0, "sqrt(3) * gamma_M0"), "B_x");
  const _B_y = finite(_f_u * _A_nty / _gamma_M2 + _f_yp * _A_nvy / finite(Math.sqrt(3) * _gamma_M0, "sqrt(3) * gamma_M0"), "B_y");
  const _B_net = finite(0.9 / _gamma_M2 * _f_u * (Math.min(_s_x, _s_y) - _d_0) * _t, "B_net");
  const _B_Rd = finite(Math.min(_B_x, _B_y, _B_net), "B_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _R_low = finite(0.5 * _f_yp * (Math.min(_s_x, _s_y) - _d_0) * _t / finite(2 * _gamma_R, "2 * gamma_R"), "R_low");
  const _R_high = finite(_f_u * _t * (Math.min(_s_x, _s_y) + 2 * _e_1), "R_high");
  const _u = finite(_B_Rd > finite(0 * _B_Rd, "0 * B_Rd") ? _F_v / _B_Rd : 0, "u");
  const _u_low = finite(_B_Rd > finite(0 * _B_Rd, "0 * B_Rd") ? Math.max(finite(_F_least / _B_Rd, "F_least / B_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_B_Rd > finite(0 * _B_Rd, "0 * B_Rd") ? Math.min(finite(_F_most / _B_Rd, "F_most / B_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _L_n, _A_ntx, _A_nvx, _A_nty, _A_nvy, _B_x, _B_y, _B_net, _B_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltBlockTearBySolution_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "d_0" | "e_1" | "f_yp" | "f_u" | "Omega_J" | "gamma_R" | "F_v", number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _d_0 = v.d_0;
  const _e_1 = v.e_1;
  const _f_yp = v.f_yp;
  const _f_u = v.f_u;
  const _Omega_J = v.Omega_J;
  const _gamma_R = v.gamma_R;
  const _F_v = v.F_v;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _A_ntx = finite((_n_x - 1) * (_s_x - _d_0) * _t / _n_x, "A_ntx");
  const _A_nvx = finite(2 * (_e_1 - _d_0 / 2) * _t / _n_x, "A_nvx");
  const _A_nty = finite((_n_y - 1) * (_s_y - _d_0) * _t / _n_y, "A_nty");
  const _A_nvy = finite(2 * (_e_1 - _d_0 / 2) * _t / _n_y, "A_nvy");
  const _B_x = finite((_f_u * _A_ntx + Math.min(finite(0.6 * _f_u * _A_nvx, "0.6 * f_u * A_nvx"), finite(0.6 * _f_yp * 2 * _e_1 * _t / _n_x, "0.6 * f_yp * 2 * e_1 * t / n_x"))) / _Omega_J, "B_x");
  const _B_y = finite((_f_u * _A_nty + Math.min(finite(0.6 * _f_u * _A_nvy, "0.6 * f_u * A_nvy"), finite(0.6 * _f_yp * 2 * _e_1 * _t / _n_y, "0.6 * f_yp * 2 * e_1 * t / n_y"))) / _Omega_J, "B_y");
  const _B_net = finite(1 / _Omega_J * _f_u * (Math.min(_s_x, _s_y) - _d_0) * _t, "B_net");
  const _B_Rd = finite(Math.min(_B_x, _B_y, _B_net), "B_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _R_low = finite(0.5 * _f_yp * (Math.min(_s_x, _s_y) - _d_0) * _t / finite(2 * _gamma_R, "2 * gamma_R"), "R_low");
  const _R_high = finite(_f_u * _t * (Math.min(_s_x, _s_y) + 2 * _e_1), "R_high");
  const _u = finite(_B_Rd > finite(0 * _B_Rd, "0 * B_Rd") ? _F_v / _B_Rd : 0, "u");
  const _u_low = finite(_B_Rd > finite(0 * _B_Rd, "0 * B_Rd") ? Math.max(finite(_F_least / _B_Rd, "F_least / B_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_B_Rd > finite(0 * _B_Rd, "0 * B_Rd") ? Math.min(finite(_F_most / _B_Rd, "F_most / B_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _L_n, _A_ntx, _A_nvx, _A_nty, _A_nvy, _B_x, _B_y, _B_net, _B_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltBlockTearByPlaces_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "n_x" | "n_y" | "d_0" | "e_1" | "f_yp" | "f_u" | "gamma_M0" | "gamma_M2" | "gamma_R" | "s_x" | "s_y" | "s_nx" | "s_ny" | "n_mx" | "n_my", number>>, k: Readonly<Record<"inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _d_0 = v.d_0;
  const _e_1 = v.e_1;
  const _f_yp = v.f_yp;
  const _f_u = v.f_u;
  const _gamma_M0 = v.gamma_M0;
  const _gamma_M2 = v.gamma_M2;
  const _gamma_R = v.gamma_R;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _s_nx = v.s_nx;
  const _s_ny = v.s_ny;
  const _n_mx = v.n_mx;
  const _n_my = v.n_my;
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _A_ntx = finite((_n_x - 1) * (_s_nx - _d_0) * _t / _n_x, "A_ntx");
  const _A_nvx = finite(2 * (_e_1 - _d_0 / 2) * _t / _n_mx, "A_nvx");
  const _A_nty = finite((_n_y - 1) * (_s_ny - _d_0) * _t / _n_y, "A_nty");
  const _A_nvy = finite(2 * (_e_1 - _d_0 / 2) * _t / _n_my, "A_nvy");
  const _B_x = finite(_f_u * _A_ntx / _gamma_M2 + _f_yp * _A_nvx / finite(Math.sqrt(3) * _gamma_M0, "sqrt(3) * gamma_M0"), "B_x");
  const _B_y = finite(_f_u * _A_nty / _gamma_M2 + _f_yp * _A_nvy / finite(Math.sqrt(3) * _gamma_M0, "sqrt(3) * gamma_M0"), "B_y");
  const _B_net = finite(0.9 / _gamma_M2 * _f_u * (Math.min(_s_nx, _s_ny) - _d_0) * _t, "B_net");
  const _B_Rd = finite(Math.min(_B_x, _B_y, _B_net), "B_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _R_low = finite(0.5 * _f_yp * (Math.min(_s_nx, _s_ny) - _d_0) * _t / finite(2 * _gamma_R, "2 * gamma_R"), "R_low");
  const _R_high = finite(_f_u * _t * (Math.min(_s_nx, _s_ny) + 2 * _e_1), "R_high");
  const _u = finite(_B_Rd > finite(0 * _B_Rd, "0 * B_Rd") ? _F_v / _B_Rd : 0, "u");
  const _u_low = finite(_B_Rd > finite(0 * _B_Rd, "0 * B_Rd") ? Math.max(finite(_F_least / _B_Rd, "F_least / B_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_B_Rd > finite(0 * _B_Rd, "0 * B_Rd") ? Math.min(finite(_F_most / _B_Rd, "F_most / B_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_L_n, _N_pull, _F_v, _A_ntx, _A_nvx, _A_nty, _A_nvy, _B_x, _B_y, _B_net, _B_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltBlockTearByPlaces_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "n_x" | "n_y" | "d_0" | "e_1" | "f_yp" | "f_u" | "Omega_J" | "gamma_R" | "s_x" | "s_y" | "s_nx" | "s_ny" | "n_mx" | "n_my", number>>, k: Readonly<Record<"inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _d_0 = v.d_0;
  const _e_1 = v.e_1;
  const _f_yp = v.f_yp;
  const _f_u = v.f_u;
  const _Omega_J = v.Omega_J;
  const _gamma_R = v.gamma_R;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _s_nx = v.s_nx;
  const _s_ny = v.s_ny;
  const _n_mx = v.n_mx;
  const _n_my = v.n_my;
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _A_ntx = finite((_n_x - 1) * (_s_nx - _d_0) * _t / _n_x, "A_ntx");
  const _A_nvx = finite(2 * (_e_1 - _d_0 / 2) * _t / _n_mx, "A_nvx");
  const _A_nty = finite((_n_y - 1) * (_s_ny - _d_0) * _t / _n_y, "A_nty");
  const _A_nvy = finite(2 * (_e_1 - _d_0 / 2) * _t / _n_my, "A_nvy");
  const _B_x = finite((_f_u * _A_ntx + Math.min(finite(0.6 * _f_u * _A_nvx, "0.6 * f_u * A_nvx"), finite(0.6 * _f_yp * 2 * _e_1 * _t / _n_mx, "0.6 * f_yp * 2 * e_1 * t / n_mx"))) / _Omega_J, "B_x");
  const _B_y = finite((_f_u * _A_nty + Math.min(finite(0.6 * _f_u * _A_nvy, "0.6 * f_u * A_nvy"), finite(0.6 * _f_yp * 2 * _e_1 * _t / _n_my, "0.6 * f_yp * 2 * e_1 * t / n_my"))) / _Omega_J, "B_y");
  const _B_net = finite(1 / _Omega_J * _f_u * (Math.min(_s_nx, _s_ny) - _d_0) * _t, "B_net");
  const _B_Rd = finite(Math.min(_B_x, _B_y, _B_net), "B_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _R_low = finite(0.5 * _f_yp * (Math.min(_s_nx, _s_ny) - _d_0) * _t / finite(2 * _gamma_R, "2 * gamma_R"), "R_low");
  const _R_high = finite(_f_u * _t * (Math.min(_s_nx, _s_ny) + 2 * _e_1), "R_high");
  const _u = finite(_B_Rd > finite(0 * _B_Rd, "0 * B_Rd") ? _F_v / _B_Rd : 0, "u");
  const _u_low = finite(_B_Rd > finite(0 * _B_Rd, "0 * B_Rd") ? Math.max(finite(_F_least / _B_Rd, "F_least / B_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_B_Rd > finite(0 * _B_Rd, "0 * B_Rd") ? Math.min(finite(_F_most / _B_Rd, "F_most / B_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_L_n, _N_pull, _F_v, _A_ntx, _A_nvx, _A_nty, _A_nvy, _B_x, _B_y, _B_net, _B_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltBlockTearBySolutionByPlaces_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "n_x" | "n_y" | "d_0" | "e_1" | "f_yp" | "f_u" | "gamma_M0" | "gamma_M2" | "gamma_R" | "F_v" | "s_x" | "s_y" | "s_nx" | "s_ny" | "n_mx" | "n_my", number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _d_0 = v.d_0;
  const _e_1 = v.e_1;
  const _f_yp = v.f_yp;
  const _f_u = v.f_u;
  const _gamma_M0 = v.gamma_M0;
  const _gamma_M2 = v.gamma_M2;
  const _gamma_R = v.gamma_R;
  const _F_v = v.F_v;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _s_nx = v.s_nx;
  const _s_ny = v.s_ny;
  const _n_mx = v.n_mx;
  const _n_my = v.n_my;
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _A_ntx = finite((_n_x - 1) * (_s_nx - _d_0) * _t / _n_x, "A_ntx");
  const _A_nvx = finite(2 * (_e_1 - _d_0 / 2) * _t / _n_mx, "A_nvx");
  const _A_nty = finite((_n_y - 1) * (_s_ny - _d_0) * _t / _n_y, "A_nty");
  const _A_nvy = finite(2 * (_e_1 - _d_0 / 2) * _t / _n_my, "A_nvy");
  const _B_x = finite(_f_u * _A_ntx / _gamma_M2 + _f_yp * _A_nvx / finite(Math.sqrt(3) * _gamma_M0, "sqrt(3) * gamma_M0"), "B_x");
  const _B_y = finite(_f_u * _A_nty / _gamma_M2 + _f_yp * _A_nvy / finite(Math.sqrt(3) * _gamma_M0, "sqrt(3) * gamma_M0"), "B_y");
  const _B_net = finite(0.9 / _gamma_M2 * _f_u * (Math.min(_s_nx, _s_ny) - _d_0) * _t, "B_net");
  const _B_Rd = finite(Math.min(_B_x, _B_y, _B_net), "B_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _R_low = finite(0.5 * _f_yp * (Math.min(_s_nx, _s_ny) - _d_0) * _t / finite(2 * _gamma_R, "2 * gamma_R"), "R_low");
  const _R_high = finite(_f_u * _t * (Math.min(_s_nx, _s_ny) + 2 * _e_1), "R_high");
  const _u = finite(_B_Rd > finite(0 * _B_Rd, "0 * B_Rd") ? _F_v / _B_Rd : 0, "u");
  const _u_low = finite(_B_Rd > finite(0 * _B_Rd, "0 * B_Rd") ? Math.max(finite(_F_least / _B_Rd, "F_least / B_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_B_Rd > finite(0 * _B_Rd, "0 * B_Rd") ? Math.min(finite(_F_most / _B_Rd, "F_most / B_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_L_n, _A_ntx, _A_nvx, _A_nty, _A_nvy, _B_x, _B_y, _B_net, _B_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltBlockTearBySolutionByPlaces_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "n_x" | "n_y" | "d_0" | "e_1" | "f_yp" | "f_u" | "Omega_J" | "gamma_R" | "F_v" | "s_x" | "s_y" | "s_nx" | "s_ny" | "n_mx" | "n_my", number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _d_0 = v.d_0;
  const _e_1 = v.e_1;
  const _f_yp = v.f_yp;
  const _f_u = v.f_u;
  const _Omega_J = v.Omega_J;
  const _gamma_R = v.gamma_R;
  const _F_v = v.F_v;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _s_nx = v.s_nx;
  const _s_ny = v.s_ny;
  const _n_mx = v.n_mx;
  const _n_my = v.n_my;
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _A_ntx = finite((_n_x - 1) * (_s_nx - _d_0) * _t / _n_x, "A_ntx");
  const _A_nvx = finite(2 * (_e_1 - _d_0 / 2) * _t / _n_mx, "A_nvx");
  const _A_nty = finite((_n_y - 1) * (_s_ny - _d_0) * _t / _n_y, "A_nty");
  const _A_nvy = finite(2 * (_e_1 - _d_0 / 2) * _t / _n_my, "A_nvy");
  const _B_x = finite((_f_u * _A_ntx + Math.min(finite(0.6 * _f_u * _A_nvx, "0.6 * f_u * A_nvx"), finite(0.6 * _f_yp * 2 * _e_1 * _t / _n_mx, "0.6 * f_yp * 2 * e_1 * t / n_mx"))) / _Omega_J, "B_x");
  const _B_y = finite((_f_u * _A_nty + Math.min(finite(0.6 * _f_u * _A_nvy, "0.6 * f_u * A_nvy"), finite(0.6 * _f_yp * 2 * _e_1 * _t / _n_my, "0.6 * f_yp * 2 * e_1 * t / n_my"))) / _Omega_J, "B_y");
  const _B_net = finite(1 / _Omega_J * _f_u * (Math.min(_s_nx, _s_ny) - _d_0) * _t, "B_net");
  const _B_Rd = finite(Math.min(_B_x, _B_y, _B_net), "B_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _R_low = finite(0.5 * _f_yp * (Math.min(_s_nx, _s_ny) - _d_0) * _t / finite(2 * _gamma_R, "2 * gamma_R"), "R_low");
  const _R_high = finite(_f_u * _t * (Math.min(_s_nx, _s_ny) + 2 * _e_1), "R_high");
  const _u = finite(_B_Rd > finite(0 * _B_Rd, "0 * B_Rd") ? _F_v / _B_Rd : 0, "u");
  const _u_low = finite(_B_Rd > finite(0 * _B_Rd, "0 * B_Rd") ? Math.max(finite(_F_least / _B_Rd, "F_least / B_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_B_Rd > finite(0 * _B_Rd, "0 * B_Rd") ? Math.min(finite(_F_most / _B_Rd, "F_most / B_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_L_n, _A_ntx, _A_nvx, _A_nty, _A_nvy, _B_x, _B_y, _B_net, _B_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltPullThrough_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "d_w" | "l_x" | "l_y" | "d_m" | "f_u" | "f_yp" | "s_h" | "e_h" | "gamma_M2" | "gamma_R", number>>, k: Readonly<Record<"plate.bolted.boltPush" | "bolts.rowLost.group" | "bolts.rowLost.plate" | "plate.held.momentEdge" | "bolts.rowLost.edgeMoment", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _d_w = v.d_w;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _d_m = v.d_m;
  const _f_u = v.f_u;
  const _f_yp = v.f_yp;
  const _s_h = v.s_h;
  const _e_h = v.e_h;
  const _gamma_M2 = v.gamma_M2;
  const _gamma_R = v.gamma_R;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _r_b = finite(_d_w / 2 + _t, "r_b");
  const _a_p = finite(_a_b + 2 * _i_x, "a_p");
  const _b_p = finite(_b_b + 2 * _i_y, "b_p");
  const _R_bolt = finite(k["plate.bolted.boltPush"](_a_p, _b_p, _t, _E, _nu, _p_off, _n_x, _n_y, _i_x, _i_y, _r_b), "R_bolt");
  const _R_group = finite(k["bolts.rowLost.group"](_a_b, _b_b, _n_x, _n_y, _i_x, _i_y, _p_lost), "R_group");
  const _R_rest = finite(k["bolts.rowLost.plate"](_a_b, _b_b, _t, _E, _nu, _p_lost, _n_x, _n_y, _i_x, _i_y), "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _B_p_Rd = finite(0.6 * Math.PI * _d_m * _t * _f_u / _gamma_M2, "B_p_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / finite(2 * _n_x + 2 * _n_y - 4, "2 * n_x + 2 * n_y - 4"), "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _R_low = finite(Math.PI * _s_h * _t * _f_yp / finite(Math.sqrt(3) * _gamma_R, "sqrt(3) * gamma_R"), "R_low");
  const _R_high = finite(Math.PI * _e_h * _t * _f_u / finite(Math.sqrt(3) * _gamma_R, "sqrt(3) * gamma_R"), "R_high");
  const _u = finite(_B_p_Rd > finite(0 * _B_p_Rd, "0 * B_p_Rd") ? _F_t / _B_p_Rd : 0, "u");
  const _u_low = finite(_B_p_Rd > finite(0 * _B_p_Rd, "0 * B_p_Rd") ? Math.max(finite(_F_low / _B_p_Rd, "F_low / B_p_Rd"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_B_p_Rd > finite(0 * _B_p_Rd, "0 * B_p_Rd") ? Math.min(finite(_F_high / _B_p_Rd, "F_high / B_p_Rd"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _p_off, _p_lost, _r_b, _a_p, _b_p, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _B_p_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltPullThrough_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "d_w" | "l_x" | "l_y" | "d_m" | "f_u" | "f_yp" | "s_h" | "e_h" | "Omega_J" | "gamma_R", number>>, k: Readonly<Record<"plate.bolted.boltPush" | "bolts.rowLost.group" | "bolts.rowLost.plate" | "plate.held.momentEdge" | "bolts.rowLost.edgeMoment", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _d_w = v.d_w;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _d_m = v.d_m;
  const _f_u = v.f_u;
  const _f_yp = v.f_yp;
  const _s_h = v.s_h;
  const _e_h = v.e_h;
  const _Omega_J = v.Omega_J;
  const _gamma_R = v.gamma_R;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _r_b = finite(_d_w / 2 + _t, "r_b");
  const _a_p = finite(_a_b + 2 * _i_x, "a_p");
  const _b_p = finite(_b_b + 2 * _i_y, "b_p");
  const _R_bolt = finite(k["plate.bolted.boltPush"](_a_p, _b_p, _t, _E, _nu, _p_off, _n_x, _n_y, _i_x, _i_y, _r_b), "R_bolt");
  const _R_group = finite(k["bolts.rowLost.group"](_a_b, _b_b, _n_x, _n_y, _i_x, _i_y, _p_lost), "R_group");
  const _R_rest = finite(k["bolts.rowLost.plate"](_a_b, _b_b, _t, _E, _nu, _p_lost, _n_x, _n_y, _i_x, _i_y), "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _B_p_Rd = finite(0.6 * Math.PI * _d_m * _t * _f_u / _Omega_J, "B_p_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / finite(2 * _n_x + 2 * _n_y - 4, "2 * n_x + 2 * n_y - 4"), "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _R_low = finite(Math.PI * _s_h * _t * _f_yp / finite(Math.sqrt(3) * _gamma_R, "sqrt(3) * gamma_R"), "R_low");
  const _R_high = finite(Math.PI * _e_h * _t * _f_u / finite(Math.sqrt(3) * _gamma_R, "sqrt(3) * gamma_R"), "R_high");
  const _u = finite(_B_p_Rd > finite(0 * _B_p_Rd, "0 * B_p_Rd") ? _F_t / _B_p_Rd : 0, "u");
  const _u_low = finite(_B_p_Rd > finite(0 * _B_p_Rd, "0 * B_p_Rd") ? Math.max(finite(_F_low / _B_p_Rd, "F_low / B_p_Rd"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_B_p_Rd > finite(0 * _B_p_Rd, "0 * B_p_Rd") ? Math.min(finite(_F_high / _B_p_Rd, "F_high / B_p_Rd"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _p_off, _p_lost, _r_b, _a_p, _b_p, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _B_p_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltPullThroughBySolution_partialFactors(v: Readonly<Record<"t" | "d_m" | "f_u" | "f_yp" | "s_h" | "e_h" | "gamma_M2" | "gamma_R", number>>): number[] {
  const _t = v.t;
  const _d_m = v.d_m;
  const _f_u = v.f_u;
  const _f_yp = v.f_yp;
  const _s_h = v.s_h;
  const _e_h = v.e_h;
  const _gamma_M2 = v.gamma_M2;
  const _gamma_R = v.gamma_R;
  const _B_p_Rd = finite(0.6 * Math.PI * _d_m * _t * _f_u / _gamma_M2, "B_p_Rd");
  const _R_low = finite(Math.PI * _s_h * _t * _f_yp / finite(Math.sqrt(3) * _gamma_R, "sqrt(3) * gamma_R"), "R_low");
  const _R_high = finite(Math.PI * _e_h * _t * _f_u / finite(Math.sqrt(3) * _gamma_R, "sqrt(3) * gamma_R"), "R_high");
  return [_B_p_Rd, _R_low, _R_high];
}

export function boltPullThroughBySolution_allowableStress(v: Readonly<Record<"t" | "d_m" | "f_u" | "f_yp" | "s_h" | "e_h" | "Omega_J" | "gamma_R", number>>): number[] {
  const _t = v.t;
  const _d_m = v.d_m;
  const _f_u = v.f_u;
  const _f_yp = v.f_yp;
  const _s_h = v.s_h;
  const _e_h = v.e_h;
  const _Omega_J = v.Omega_J;
  const _gamma_R = v.gamma_R;
  const _B_p_Rd = finite(0.6 * Math.PI * _d_m * _t * _f_u / _Omega_J, "B_p_Rd");
  const _R_low = finite(Math.PI * _s_h * _t * _f_yp / finite(Math.sqrt(3) * _gamma_R, "sqrt(3) * gamma_R"), "R_low");
  const _R_high = finite(Math.PI * _e_h * _t * _f_u / finite(Math.sqrt(3) * _gamma_R, "sqrt(3) * gamma_R"), "R_high");
  return [_B_p_Rd, _R_low, _R_high];
}

export function boltPullThroughByPlaces_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "i_x" | "i_y" | "l_x" | "l_y" | "d_m" | "f_u" | "f_yp" | "s_h" | "e_h" | "gamma_M2" | "gamma_R" | "s_x" | "s_y" | "n_b" | "a_p" | "b_p" | "A_1" | "A_g" | "A_r", number>>, k: Readonly<Record<"plate.held.momentEdge" | "bolts.rowLost.edgeMoment", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _d_m = v.d_m;
  const _f_u = v.f_u;
  const _f_yp = v.f_yp;
  const _s_h = v.s_h;
  const _e_h = v.e_h;
  const _gamma_M2 = v.gamma_M2;
  const _gamma_R = v.gamma_R;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _n_b = v.n_b;
  const _a_p = v.a_p;
  const _b_p = v.b_p;
  const _A_1 = v.A_1;
  const _A_g = v.A_g;
  const _A_r = v.A_r;
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _R_bolt = finite(_A_1 * _p_off, "R_bolt");
  const _R_group = finite(_A_g * _p_lost, "R_group");
  const _R_rest = finite(_A_r * _p_lost, "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _B_p_Rd = finite(0.6 * Math.PI * _d_m * _t * _f_u / _gamma_M2, "B_p_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / _n_b, "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _R_low = finite(Math.PI * _s_h * _t * _f_yp / finite(Math.sqrt(3) * _gamma_R, "sqrt(3) * gamma_R"), "R_low");
  const _R_high = finite(Math.PI * _e_h * _t * _f_u / finite(Math.sqrt(3) * _gamma_R, "sqrt(3) * gamma_R"), "R_high");
  const _u = finite(_B_p_Rd > finite(0 * _B_p_Rd, "0 * B_p_Rd") ? _F_t / _B_p_Rd : 0, "u");
  const _u_low = finite(_B_p_Rd > finite(0 * _B_p_Rd, "0 * B_p_Rd") ? Math.max(finite(_F_low / _B_p_Rd, "F_low / B_p_Rd"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_B_p_Rd > finite(0 * _B_p_Rd, "0 * B_p_Rd") ? Math.min(finite(_F_high / _B_p_Rd, "F_high / B_p_Rd"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  return [_p_off, _p_lost, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _B_p_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltPullThroughByPlaces_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "i_x" | "i_y" | "l_x" | "l_y" | "d_m" | "f_u" | "f_yp" | "s_h" | "e_h" | "Omega_J" | "gamma_R" | "s_x" | "s_y" | "n_b" | "a_p" | "b_p" | "A_1" | "A_g" | "A_r", number>>, k: Readonly<Record<"plate.held.momentEdge" | "bolts.rowLost.edgeMoment", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _d_m = v.d_m;
  const _f_u = v.f_u;
  const _f_yp = v.f_yp;
  const _s_h = v.s_h;
  const _e_h = v.e_h;
  const _Omega_J = v.Omega_J;
  const _gamma_R = v.gamma_R;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _n_b = v.n_b;
  const _a_p = v.a_p;
  const _b_p = v.b_p;
  const _A_1 = v.A_1;
  const _A_g = v.A_g;
  const _A_r = v.A_r;
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _R_bolt = finite(_A_1 * _p_off, "R_bolt");
  const _R_group = finite(_A_g * _p_lost, "R_group");
  const _R_rest = finite(_A_r * _p_lost, "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _B_p_Rd = finite(0.6 * Math.PI * _d_m * _t * _f_u / _Omega_J, "B_p_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / _n_b, "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _R_low = finite(Math.PI * _s_h * _t * _f_yp / finite(Math.sqrt(3) * _gamma_R, "sqrt(3) * gamma_R"), "R_low");
  const _R_high = finite(Math.PI * _e_h * _t * _f_u / finite(Math.sqrt(3) * _gamma_R, "sqrt(3) * gamma_R"), "R_high");
  const _u = finite(_B_p_Rd > finite(0 * _B_p_Rd, "0 * B_p_Rd") ? _F_t / _B_p_Rd : 0, "u");
  const _u_low = finite(_B_p_Rd > finite(0 * _B_p_Rd, "0 * B_p_Rd") ? Math.max(finite(_F_low / _B_p_Rd, "F_low / B_p_Rd"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_B_p_Rd > finite(0 * _B_p_Rd, "0 * B_p_Rd") ? Math.min(finite(_F_high / _B_p_Rd, "F_high / B_p_Rd"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  return [_p_off, _p_lost, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _B_p_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltWallPull_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "d_w" | "l_x" | "l_y" | "t_w" | "f_yw" | "gamma_M0" | "gamma_R", number>>, k: Readonly<Record<"plate.bolted.boltPush" | "bolts.rowLost.group" | "bolts.rowLost.plate" | "plate.held.momentEdge" | "bolts.rowLost.edgeMoment", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _d_w = v.d_w;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _t_w = v.t_w;
  const _f_yw = v.f_yw;
  const _gamma_M0 = v.gamma_M0;
  const _gamma_R = v.gamma_R;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _r_b = finite(_d_w / 2 + _t, "r_b");
  const _a_p = finite(_a_b + 2 * _i_x, "a_p");
  const _b_p = finite(_b_b + 2 * _i_y, "b_p");
  const _R_bolt = finite(k["plate.bolted.boltPush"](_a_p, _b_p, _t, _E, _nu, _p_off, _n_x, _n_y, _i_x, _i_y, _r_b), "R_bolt");
  const _R_group = finite(k["bolts.rowLost.group"](_a_b, _b_b, _n_x, _n_y, _i_x, _i_y, _p_lost), "R_group");
  const _R_rest = finite(k["bolts.rowLost.plate"](_a_b, _b_b, _t, _E, _nu, _p_lost, _n_x, _n_y, _i_x, _i_y), "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _F_w_Rd = finite(Math.PI * _f_yw * Math.pow(_t_w, 2) / _gamma_M0, "F_w_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / finite(2 * _n_x + 2 * _n_y - 4, "2 * n_x + 2 * n_y - 4"), "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _m_pl = finite(_f_yw * Math.pow(_t_w, 2) / 4, "m_pl");
  const _R_low = finite(2 * Math.PI * _m_pl / _gamma_R, "R_low");
  const _R_high = finite(16 * _m_pl / _gamma_R, "R_high");
  const _u = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? _F_t / _F_w_Rd : 0, "u");
  const _u_low = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? Math.max(finite(_F_low / _F_w_Rd, "F_low / F_w_Rd"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? Math.min(finite(_F_high / _F_w_Rd, "F_high / F_w_Rd"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _p_off, _p_lost, _r_b, _a_p, _b_p, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _F_w_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _m_pl, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltWallPull_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "d_w" | "l_x" | "l_y" | "t_w" | "f_yw" | "Omega_b" | "gamma_R", number>>, k: Readonly<Record<"plate.bolted.boltPush" | "bolts.rowLost.group" | "bolts.rowLost.plate" | "plate.held.momentEdge" | "bolts.rowLost.edgeMoment", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _d_w = v.d_w;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _t_w = v.t_w;
  const _f_yw = v.f_yw;
  const _Omega_b = v.Omega_b;
  const _gamma_R = v.gamma_R;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _r_b = finite(_d_w / 2 + _t, "r_b");
  const _a_p = finite(_a_b + 2 * _i_x, "a_p");
  const _b_p = finite(_b_b + 2 * _i_y, "b_p");
  const _R_bolt = finite(k["plate.bolted.boltPush"](_a_p, _b_p, _t, _E, _nu, _p_off, _n_x, _n_y, _i_x, _i_y, _r_b), "R_bolt");
  const _R_group = finite(k["bolts.rowLost.group"](_a_b, _b_b, _n_x, _n_y, _i_x, _i_y, _p_lost), "R_group");
  const _R_rest = finite(k["bolts.rowLost.plate"](_a_b, _b_b, _t, _E, _nu, _p_lost, _n_x, _n_y, _i_x, _i_y), "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _F_w_Rd = finite(Math.PI * _f_yw * Math.pow(_t_w, 2) / _Omega_b, "F_w_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / finite(2 * _n_x + 2 * _n_y - 4, "2 * n_x + 2 * n_y - 4"), "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _m_pl = finite(_f_yw * Math.pow(_t_w, 2) / 4, "m_pl");
  const _R_low = finite(2 * Math.PI * _m_pl / _gamma_R, "R_low");
  const _R_high = finite(16 * _m_pl / _gamma_R, "R_high");
  const _u = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? _F_t / _F_w_Rd : 0, "u");
  const _u_low = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? Math.max(finite(_F_low / _F_w_Rd, "F_low / F_w_Rd"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? Math.min(finite(_F_high / _F_w_Rd, "F_high / F_w_Rd"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _p_off, _p_lost, _r_b, _a_p, _b_p, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _F_w_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _m_pl, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltWallPullBySolution_partialFactors(v: Readonly<Record<"t_w" | "f_yw" | "gamma_M0" | "gamma_R", number>>): number[] {
  const _t_w = v.t_w;
  const _f_yw = v.f_yw;
  const _gamma_M0 = v.gamma_M0;
  const _gamma_R = v.gamma_R;
  const _F_w_Rd = finite(Math.PI * _f_yw * Math.pow(_t_w, 2) / _gamma_M0, "F_w_Rd");
  const _m_pl = finite(_f_yw * Math.pow(_t_w, 2) / 4, "m_pl");
  const _R_low = finite(2 * Math.PI * _m_pl / _gamma_R, "R_low");
  const _R_high = finite(16 * _m_pl / _gamma_R, "R_high");
  return [_F_w_Rd, _m_pl, _R_low, _R_high];
}

export function boltWallPullBySolution_allowableStress(v: Readonly<Record<"t_w" | "f_yw" | "Omega_b" | "gamma_R", number>>): number[] {
  const _t_w = v.t_w;
  const _f_yw = v.f_yw;
  const _Omega_b = v.Omega_b;
  const _gamma_R = v.gamma_R;
  const _F_w_Rd = finite(Math.PI * _f_yw * Math.pow(_t_w, 2) / _Omega_b, "F_w_Rd");
  const _m_pl = finite(_f_yw * Math.pow(_t_w, 2) / 4, "m_pl");
  const _R_low = finite(2 * Math.PI * _m_pl / _gamma_R, "R_low");
  const _R_high = finite(16 * _m_pl / _gamma_R, "R_high");
  return [_F_w_Rd, _m_pl, _R_low, _R_high];
}

export function boltWallPullByPlaces_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "i_x" | "i_y" | "l_x" | "l_y" | "t_w" | "f_yw" | "gamma_M0" | "gamma_R" | "s_x" | "s_y" | "n_b" | "a_p" | "b_p" | "A_1" | "A_g" | "A_r", number>>, k: Readonly<Record<"plate.held.momentEdge" | "bolts.rowLost.edgeMoment", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _t_w = v.t_w;
  const _f_yw = v.f_yw;
  const _gamma_M0 = v.gamma_M0;
  const _gamma_R = v.gamma_R;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _n_b = v.n_b;
  const _a_p = v.a_p;
  const _b_p = v.b_p;
  const _A_1 = v.A_1;
  const _A_g = v.A_g;
  const _A_r = v.A_r;
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _R_bolt = finite(_A_1 * _p_off, "R_bolt");
  const _R_group = finite(_A_g * _p_lost, "R_group");
  const _R_rest = finite(_A_r * _p_lost, "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _F_w_Rd = finite(Math.PI * _f_yw * Math.pow(_t_w, 2) / _gamma_M0, "F_w_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / _n_b, "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _m_pl = finite(_f_yw * Math.pow(_t_w, 2) / 4, "m_pl");
  const _R_low = finite(2 * Math.PI * _m_pl / _gamma_R, "R_low");
  const _R_high = finite(16 * _m_pl / _gamma_R, "R_high");
  const _u = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? _F_t / _F_w_Rd : 0, "u");
  const _u_low = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? Math.max(finite(_F_low / _F_w_Rd, "F_low / F_w_Rd"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? Math.min(finite(_F_high / _F_w_Rd, "F_high / F_w_Rd"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  return [_p_off, _p_lost, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _F_w_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _m_pl, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltWallPullByPlaces_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "i_x" | "i_y" | "l_x" | "l_y" | "t_w" | "f_yw" | "Omega_b" | "gamma_R" | "s_x" | "s_y" | "n_b" | "a_p" | "b_p" | "A_1" | "A_g" | "A_r", number>>, k: Readonly<Record<"plate.held.momentEdge" | "bolts.rowLost.edgeMoment", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _t_w = v.t_w;
  const _f_yw = v.f_yw;
  const _Omega_b = v.Omega_b;
  const _gamma_R = v.gamma_R;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _n_b = v.n_b;
  const _a_p = v.a_p;
  const _b_p = v.b_p;
  const _A_1 = v.A_1;
  const _A_g = v.A_g;
  const _A_r = v.A_r;
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _R_bolt = finite(_A_1 * _p_off, "R_bolt");
  const _R_group = finite(_A_g * _p_lost, "R_group");
  const _R_rest = finite(_A_r * _p_lost, "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _F_w_Rd = finite(Math.PI * _f_yw * Math.pow(_t_w, 2) / _Omega_b, "F_w_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / _n_b, "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _m_pl = finite(_f_yw * Math.pow(_t_w, 2) / 4, "m_pl");
  const _R_low = finite(2 * Math.PI * _m_pl / _gamma_R, "R_low");
  const _R_high = finite(16 * _m_pl / _gamma_R, "R_high");
  const _u = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? _F_t / _F_w_Rd : 0, "u");
  const _u_low = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? Math.max(finite(_F_low / _F_w_Rd, "F_low / F_w_Rd"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? Math.min(finite(_F_high / _F_w_Rd, "F_high / F_w_Rd"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  return [_p_off, _p_lost, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _F_w_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _m_pl, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltAnchorage_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "d_w" | "l_x" | "l_y" | "F_tk" | "F_vk" | "A_s" | "f_ub" | "gamma_M2", number>>, k: Readonly<Record<"plate.bolted.boltPush" | "bolts.rowLost.group" | "bolts.rowLost.plate" | "plate.held.momentEdge" | "bolts.rowLost.edgeMoment" | "inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _d_w = v.d_w;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _F_tk = v.F_tk;
  const _F_vk = v.F_vk;
  const _A_s = v.A_s;
  const _f_ub = v.f_ub;
  const _gamma_M2 = v.gamma_M2;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _r_b = finite(_d_w / 2 + _t, "r_b");
  const _a_p = finite(_a_b + 2 * _i_x, "a_p");
  const _b_p = finite(_b_b + 2 * _i_y, "b_p");
  const _R_bolt = finite(k["plate.bolted.boltPush"](_a_p, _b_p, _t, _E, _nu, _p_off, _n_x, _n_y, _i_x, _i_y, _r_b), "R_bolt");
  const _R_group = finite(k["bolts.rowLost.group"](_a_b, _b_b, _n_x, _n_y, _i_x, _i_y, _p_lost), "R_group");
  const _R_rest = finite(k["bolts.rowLost.plate"](_a_b, _b_b, _t, _E, _nu, _p_lost, _n_x, _n_y, _i_x, _i_y), "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _F_t_Rd = finite(_F_tk / _gamma_M2, "F_t_Rd");
  const _F_v_Rd = finite(_F_vk / _gamma_M2, "F_v_Rd");
  const _u = finite(_F_t / _F_t_Rd + _F_v / _F_v_Rd, "u");
  const _u_Rd = finite(1, "u_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / finite(2 * _n_x + 2 * _n_y - 4, "2 * n_x + 2 * n_y - 4"), "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _range0 = finite(_F_tk <= finite(_f_ub * _A_s, "f_ub * A_s") ? 1 : 0, "range0");
  return [_s_x, _s_y, _p_off, _p_lost, _r_b, _a_p, _b_p, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _L_n, _N_pull, _F_v, _F_t_Rd, _F_v_Rd, _u, _u_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _range0];
}

export function boltAnchorage_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "d_w" | "l_x" | "l_y" | "F_tk" | "F_vk" | "A_s" | "f_ub" | "Omega_J", number>>, k: Readonly<Record<"plate.bolted.boltPush" | "bolts.rowLost.group" | "bolts.rowLost.plate" | "plate.held.momentEdge" | "bolts.rowLost.edgeMoment" | "inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _d_w = v.d_w;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _F_tk = v.F_tk;
  const _F_vk = v.F_vk;
  const _A_s = v.A_s;
  const _f_ub = v.f_ub;
  const _Omega_J = v.Omega_J;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _r_b = finite(_d_w / 2 + _t, "r_b");
  const _a_p = finite(_a_b + 2 * _i_x, "a_p");
  const _b_p = finite(_b_b + 2 * _i_y, "b_p");
  const _R_bolt = finite(k["plate.bolted.boltPush"](_a_p, _b_p, _t, _E, _nu, _p_off, _n_x, _n_y, _i_x, _i_y, _r_b), "R_bolt");
  const _R_group = finite(k["bolts.rowLost.group"](_a_b, _b_b, _n_x, _n_y, _i_x, _i_y, _p_lost), "R_group");
  const _R_rest = finite(k["bolts.rowLost.plate"](_a_b, _b_b, _t, _E, _nu, _p_lost, _n_x, _n_y, _i_x, _i_y), "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _F_t_Rd = finite(_F_tk / _Omega_J, "F_t_Rd");
  const _F_v_Rd = finite(_F_vk / _Omega_J, "F_v_Rd");
  const _u = finite(_F_t / _F_t_Rd + _F_v / _F_v_Rd, "u");
  const _u_Rd = finite(1, "u_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / finite(2 * _n_x + 2 * _n_y - 4, "2 * n_x + 2 * n_y - 4"), "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _range0 = finite(_F_tk <= finite(_f_ub * _A_s, "f_ub * A_s") ? 1 : 0, "range0");
  return [_s_x, _s_y, _p_off, _p_lost, _r_b, _a_p, _b_p, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _L_n, _N_pull, _F_v, _F_t_Rd, _F_v_Rd, _u, _u_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _range0];
}

export function boltAnchorageBySolution_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "pulled" | "lost" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "l_x" | "l_y" | "F_tk" | "F_vk" | "A_s" | "f_ub" | "gamma_M2" | "F_t" | "F_v", number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _F_tk = v.F_tk;
  const _F_vk = v.F_vk;
  const _A_s = v.A_s;
  const _f_ub = v.f_ub;
  const _gamma_M2 = v.gamma_M2;
  const _F_t = v.F_t;
  const _F_v = v.F_v;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _p_off = finite(_pulled * _p, "p_off");
  const _a_p = finite(_a_b + 2 * _i_x, "a_p");
  const _b_p = finite(_b_b + 2 * _i_y, "b_p");
  const _F_t_Rd = finite(_F_tk / _gamma_M2, "F_t_Rd");
  const _F_v_Rd = finite(_F_vk / _gamma_M2, "F_v_Rd");
  const _u = finite(_F_t / _F_t_Rd + _F_v / _F_v_Rd, "u");
  const _u_Rd = finite(1, "u_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / finite(2 * _n_x + 2 * _n_y - 4, "2 * n_x + 2 * n_y - 4"), "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _range0 = finite(_F_tk <= finite(_f_ub * _A_s, "f_ub * A_s") ? 1 : 0, "range0");
  return [_s_x, _s_y, _p_off, _a_p, _b_p, _F_t_Rd, _F_v_Rd, _u, _u_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _range0];
}

export function boltAnchorageBySolution_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "pulled" | "lost" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "l_x" | "l_y" | "F_tk" | "F_vk" | "A_s" | "f_ub" | "Omega_J" | "F_t" | "F_v", number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _F_tk = v.F_tk;
  const _F_vk = v.F_vk;
  const _A_s = v.A_s;
  const _f_ub = v.f_ub;
  const _Omega_J = v.Omega_J;
  const _F_t = v.F_t;
  const _F_v = v.F_v;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _p_off = finite(_pulled * _p, "p_off");
  const _a_p = finite(_a_b + 2 * _i_x, "a_p");
  const _b_p = finite(_b_b + 2 * _i_y, "b_p");
  const _F_t_Rd = finite(_F_tk / _Omega_J, "F_t_Rd");
  const _F_v_Rd = finite(_F_vk / _Omega_J, "F_v_Rd");
  const _u = finite(_F_t / _F_t_Rd + _F_v / _F_v_Rd, "u");
  const _u_Rd = finite(1, "u_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / finite(2 * _n_x + 2 * _n_y - 4, "2 * n_x + 2 * n_y - 4"), "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _range0 = finite(_F_tk <= finite(_f_ub * _A_s, "f_ub * A_s") ? 1 : 0, "range0");
  return [_s_x, _s_y, _p_off, _a_p, _b_p, _F_t_Rd, _F_v_Rd, _u, _u_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _range0];
}

export function boltAnchorageByPlaces_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "i_x" | "i_y" | "l_x" | "l_y" | "F_tk" | "F_vk" | "A_s" | "f_ub" | "gamma_M2" | "s_x" | "s_y" | "n_b" | "a_p" | "b_p" | "A_1" | "A_g" | "A_r", number>>, k: Readonly<Record<"plate.held.momentEdge" | "bolts.rowLost.edgeMoment" | "inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _F_tk = v.F_tk;
  const _F_vk = v.F_vk;
  const _A_s = v.A_s;
  const _f_ub = v.f_ub;
  const _gamma_M2 = v.gamma_M2;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _n_b = v.n_b;
  const _a_p = v.a_p;
  const _b_p = v.b_p;
  const _A_1 = v.A_1;
  const _A_g = v.A_g;
  const _A_r = v.A_r;
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _R_bolt = finite(_A_1 * _p_off, "R_bolt");
  const _R_group = finite(_A_g * _p_lost, "R_group");
  const _R_rest = finite(_A_r * _p_lost, "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _F_t_Rd = finite(_F_tk / _gamma_M2, "F_t_Rd");
  const _F_v_Rd = finite(_F_vk / _gamma_M2, "F_v_Rd");
  const _u = finite(_F_t / _F_t_Rd + _F_v / _F_v_Rd, "u");
  const _u_Rd = finite(1, "u_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / _n_b, "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _range0 = finite(_F_tk <= finite(_f_ub * _A_s, "f_ub * A_s") ? 1 : 0, "range0");
  return [_p_off, _p_lost, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _L_n, _N_pull, _F_v, _F_t_Rd, _F_v_Rd, _u, _u_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _range0];
}

export function boltAnchorageByPlaces_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "i_x" | "i_y" | "l_x" | "l_y" | "F_tk" | "F_vk" | "A_s" | "f_ub" | "Omega_J" | "s_x" | "s_y" | "n_b" | "a_p" | "b_p" | "A_1" | "A_g" | "A_r", number>>, k: Readonly<Record<"plate.held.momentEdge" | "bolts.rowLost.edgeMoment" | "inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _F_tk = v.F_tk;
  const _F_vk = v.F_vk;
  const _A_s = v.A_s;
  const _f_ub = v.f_ub;
  const _Omega_J = v.Omega_J;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _n_b = v.n_b;
  const _a_p = v.a_p;
  const _b_p = v.b_p;
  const _A_1 = v.A_1;
  const _A_g = v.A_g;
  const _A_r = v.A_r;
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _R_bolt = finite(_A_1 * _p_off, "R_bolt");
  const _R_group = finite(_A_g * _p_lost, "R_group");
  const _R_rest = finite(_A_r * _p_lost, "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _F_t_Rd = finite(_F_tk / _Omega_J, "F_t_Rd");
  const _F_v_Rd = finite(_F_vk / _Omega_J, "F_v_Rd");
  const _u = finite(_F_t / _F_t_Rd + _F_v / _F_v_Rd, "u");
  const _u_Rd = finite(1, "u_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / _n_b, "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _range0 = finite(_F_tk <= finite(_f_ub * _A_s, "f_ub * A_s") ? 1 : 0, "range0");
  return [_p_off, _p_lost, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _L_n, _N_pull, _F_v, _F_t_Rd, _F_v_Rd, _u, _u_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _range0];
}

export function boltAnchorageBySolutionByPlaces_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "pulled" | "lost" | "h_x" | "h_y" | "i_x" | "i_y" | "l_x" | "l_y" | "F_tk" | "F_vk" | "A_s" | "f_ub" | "gamma_M2" | "F_t" | "F_v" | "s_x" | "s_y" | "n_b" | "a_p" | "b_p", number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _F_tk = v.F_tk;
  const _F_vk = v.F_vk;
  const _A_s = v.A_s;
  const _f_ub = v.f_ub;
  const _gamma_M2 = v.gamma_M2;
  const _F_t = v.F_t;
  const _F_v = v.F_v;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _n_b = v.n_b;
  const _a_p = v.a_p;
  const _b_p = v.b_p;
  const _p_off = finite(_pulled * _p, "p_off");
  const _F_t_Rd = finite(_F_tk / _gamma_M2, "F_t_Rd");
  const _F_v_Rd = finite(_F_vk / _gamma_M2, "F_v_Rd");
  const _u = finite(_F_t / _F_t_Rd + _F_v / _F_v_Rd, "u");
  const _u_Rd = finite(1, "u_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / _n_b, "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _range0 = finite(_F_tk <= finite(_f_ub * _A_s, "f_ub * A_s") ? 1 : 0, "range0");
  return [_p_off, _F_t_Rd, _F_v_Rd, _u, _u_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _range0];
}

export function boltAnchorageBySolutionByPlaces_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "pulled" | "lost" | "h_x" | "h_y" | "i_x" | "i_y" | "l_x" | "l_y" | "F_tk" | "F_vk" | "A_s" | "f_ub" | "Omega_J" | "F_t" | "F_v" | "s_x" | "s_y" | "n_b" | "a_p" | "b_p", number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _F_tk = v.F_tk;
  const _F_vk = v.F_vk;
  const _A_s = v.A_s;
  const _f_ub = v.f_ub;
  const _Omega_J = v.Omega_J;
  const _F_t = v.F_t;
  const _F_v = v.F_v;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _n_b = v.n_b;
  const _a_p = v.a_p;
  const _b_p = v.b_p;
  const _p_off = finite(_pulled * _p, "p_off");
  const _F_t_Rd = finite(_F_tk / _Omega_J, "F_t_Rd");
  const _F_v_Rd = finite(_F_vk / _Omega_J, "F_v_Rd");
  const _u = finite(_F_t / _F_t_Rd + _F_v / _F_v_Rd, "u");
  const _u_Rd = finite(1, "u_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / _n_b, "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _range0 = finite(_F_tk <= finite(_f_ub * _A_s, "f_ub * A_s") ? 1 : 0, "range0");
  return [_p_off, _F_t_Rd, _F_v_Rd, _u, _u_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _range0];
}

export function boltStud_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "d_w" | "l_x" | "l_y" | "d" | "A_s" | "t_w" | "f_yw" | "f_uw" | "f_us" | "gamma_M2" | "gamma_R", number>>, k: Readonly<Record<"plate.bolted.boltPush" | "bolts.rowLost.group" | "bolts.rowLost.plate" | "plate.held.momentEdge" | "bolts.rowLost.edgeMoment", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _d_w = v.d_w;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _d = v.d;
  const _A_s = v.A_s;
  const _t_w = v.t_w;
  const _f_yw = v.f_yw;
  const _f_uw = v.f_uw;
  const _f_us = v.f_us;
  const _gamma_M2 = v.gamma_M2;
  const _gamma_R = v.gamma_R;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _r_b = finite(_d_w / 2 + _t, "r_b");
  const _a_p = finite(_a_b + 2 * _i_x, "a_p");
  const _b_p = finite(_b_b + 2 * _i_y, "b_p");
  const _R_bolt = finite(k["plate.bolted.boltPush"](_a_p, _b_p, _t, _E, _nu, _p_off, _n_x, _n_y, _i_x, _i_y, _r_b), "R_bolt");
  const _R_group = finite(k["bolts.rowLost.group"](_a_b, _b_b, _n_x, _n_y, _i_x, _i_y, _p_lost), "R_group");
  const _R_rest = finite(k["bolts.rowLost.plate"](_a_b, _b_b, _t, _E, _nu, _p_lost, _n_x, _n_y, _i_x, _i_y), "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _F_st = finite(0.9 * _f_us * _A_s / _gamma_M2, "F_st");
  const _F_pw = finite(0.6 * Math.PI * _d * _t_w * _f_uw / _gamma_M2, "F_pw");
  const _F_s_Rd = finite(Math.min(_F_st, _F_pw), "F_s_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / finite(2 * _n_x + 2 * _n_y - 4, "2 * n_x + 2 * n_y - 4"), "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _R_low = finite(Math.min(finite(2 / 3 * _f_us * _A_s, "2 / 3 * f_us * A_s"), finite(Math.PI * _d * _t_w * _f_yw / 2, "pi * d * t_w * f_yw / 2")) / _gamma_R, "R_low");
  const _R_high = finite(Math.min(finite(_f_us * _A_s, "f_us * A_s"), finite(Math.PI / finite(Math.sqrt(3), "sqrt(3)") * 1.05 * _d * _t_w * _f_uw, "pi / sqrt(3) * 1.05 * d * t_w * f_uw")) / _gamma_R, "R_high");
  const _u = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? _F_t / _F_s_Rd : 0, "u");
  const _u_low = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.max(finite(_F_low / _F_s_Rd, "F_low / F_s_Rd"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.min(finite(_F_high / _F_s_Rd, "F_high / F_s_Rd"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  const _range0 = finite(_d <= finite(2.5 * _t_w, "2.5 * t_w") ? 1 : 0, "range0");
  return [_s_x, _s_y, _p_off, _p_lost, _r_b, _a_p, _b_p, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _F_st, _F_pw, _F_s_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _R_low, _R_high, _u, _u_low, _u_high, _range0];
}

export function boltStud_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "d_w" | "l_x" | "l_y" | "d" | "A_s" | "t_w" | "f_yw" | "f_uw" | "f_us" | "Omega_J" | "gamma_R", number>>, k: Readonly<Record<"plate.bolted.boltPush" | "bolts.rowLost.group" | "bolts.rowLost.plate" | "plate.held.momentEdge" | "bolts.rowLost.edgeMoment", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _d_w = v.d_w;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _d = v.d;
  const _A_s = v.A_s;
  const _t_w = v.t_w;
  const _f_yw = v.f_yw;
  const _f_uw = v.f_uw;
  const _f_us = v.f_us;
  const _Omega_J = v.Omega_J;
  const _gamma_R = v.gamma_R;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _r_b = finite(_d_w / 2 + _t, "r_b");
  const _a_p = finite(_a_b + 2 * _i_x, "a_p");
  const _b_p = finite(_b_b + 2 * _i_y, "b_p");
  const _R_bolt = finite(k["plate.bolted.boltPush"](_a_p, _b_p, _t, _E, _nu, _p_off, _n_x, _n_y, _i_x, _i_y, _r_b), "R_bolt");
  const _R_group = finite(k["bolts.rowLost.group"](_a_b, _b_b, _n_x, _n_y, _i_x, _i_y, _p_lost), "R_group");
  const _R_rest = finite(k["bolts.rowLost.plate"](_a_b, _b_b, _t, _E, _nu, _p_lost, _n_x, _n_y, _i_x, _i_y), "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _F_st = finite(0.75 * _f_us * _A_s / _Omega_J, "F_st");
  const _F_pw = finite(0.6 * Math.PI * _d * _t_w * _f_uw / _Omega_J, "F_pw");
  const _F_s_Rd = finite(Math.min(_F_st, _F_pw), "F_s_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / finite(2 * _n_x + 2 * _n_y - 4, "2 * n_x + 2 * n_y - 4"), "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _R_low = finite(Math.min(finite(2 / 3 * _f_us * _A_s, "2 / 3 * f_us * A_s"), finite(Math.PI * _d * _t_w * _f_yw / 2, "pi * d * t_w * f_yw / 2")) / _gamma_R, "R_low");
  const _R_high = finite(Math.min(finite(_f_us * _A_s, "f_us * A_s"), finite(Math.PI / finite(Math.sqrt(3), "sqrt(3)") * 1.05 * _d * _t_w * _f_uw, "pi / sqrt(3) * 1.05 * d * t_w * f_uw")) / _gamma_R, "R_high");
  const _u = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? _F_t / _F_s_Rd : 0, "u");
  const _u_low = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.max(finite(_F_low / _F_s_Rd, "F_low / F_s_Rd"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.min(finite(_F_high / _F_s_Rd, "F_high / F_s_Rd"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  const _range0 = finite(_d <= finite(2.5 * _t_w, "2.5 * t_w") ? 1 : 0, "range0");
  return [_s_x, _s_y, _p_off, _p_lost, _r_b, _a_p, _b_p, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _F_st, _F_pw, _F_s_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _R_low, _R_high, _u, _u_low, _u_high, _range0];
}

export function boltStudBySolution_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "pulled" | "lost" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "l_x" | "l_y" | "d" | "A_s" | "t_w" | "f_yw" | "f_uw" | "f_us" | "gamma_M2" | "gamma_R" | "F_t", number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _d = v.d;
  const _A_s = v.A_s;
  const _t_w = v.t_w;
  const _f_yw = v.f_yw;
  const _f_uw = v.f_uw;
  const _f_us = v.f_us;
  const _gamma_M2 = v.gamma_M2;
  const _gamma_R = v.gamma_R;
  const _F_t = v.F_t;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _p_off = finite(_pulled * _p, "p_off");
  const _a_p = finite(_a_b + 2 * _i_x, "a_p");
  const _b_p = finite(_b_b + 2 * _i_y, "b_p");
  const _F_st = finite(0.9 * _f_us * _A_s / _gamma_M2, "F_st");
  const _F_pw = finite(0.6 * Math.PI * _d * _t_w * _f_uw / _gamma_M2, "F_pw");
  const _F_s_Rd = finite(Math.min(_F_st, _F_pw), "F_s_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / finite(2 * _n_x + 2 * _n_y - 4, "2 * n_x + 2 * n_y - 4"), "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _R_low = finite(Math.min(finite(2 / 3 * _f_us * _A_s, "2 / 3 * f_us * A_s"), finite(Math.PI * _d * _t_w * _f_yw / 2, "pi * d * t_w * f_yw / 2")) / _gamma_R, "R_low");
  const _R_high = finite(Math.min(finite(_f_us * _A_s, "f_us * A_s"), finite(Math.PI / finite(Math.sqrt(3), "sqrt(3)") * 1.05 * _d * _t_w * _f_uw, "pi / sqrt(3) * 1.05 * d * t_w * f_uw")) / _gamma_R, "R_high");
  const _u = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? _F_t / _F_s_Rd : 0, "u");
  const _u_low = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.max(finite(_F_low / _F_s_Rd, "F_low / F_s_Rd"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.min(finite(_F_high / _F_s_Rd, "F_high / F_s_Rd"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  const _range0 = finite(_d <= finite(2.5 * _t_w, "2.5 * t_w") ? 1 : 0, "range0");
  return [_s_x, _s_y, _p_off, _a_p, _b_p, _F_st, _F_pw, _F_s_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _R_low, _R_high, _u, _u_low, _u_high, _range0];
}

export function boltStudBySolution_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "pulled" | "lost" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "l_x" | "l_y" | "d" | "A_s" | "t_w" | "f_yw" | "f_uw" | "f_us" | "Omega_J" | "gamma_R" | "F_t", number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _d = v.d;
  const _A_s = v.A_s;
  const _t_w = v.t_w;
  const _f_yw = v.f_yw;
  const _f_uw = v.f_uw;
  const _f_us = v.f_us;
  const _Omega_J = v.Omega_J;
  const _gamma_R = v.gamma_R;
  const _F_t = v.F_t;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _p_off = finite(_pulled * _p, "p_off");
  const _a_p = finite(_a_b + 2 * _i_x, "a_p");
  const _b_p = finite(_b_b + 2 * _i_y, "b_p");
  const _F_st = finite(0.75 * _f_us * _A_s / _Omega_J, "F_st");
  const _F_pw = finite(0.6 * Math.PI * _d * _t_w * _f_uw / _Omega_J, "F_pw");
  const _F_s_Rd = finite(Math.min(_F_st, _F_pw), "F_s_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / finite(2 * _n_x + 2 * _n_y - 4, "2 * n_x + 2 * n_y - 4"), "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _R_low = finite(Math.min(finite(2 / 3 * _f_us * _A_s, "2 / 3 * f_us * A_s"), finite(Math.PI * _d * _t_w * _f_yw / 2, "pi * d * t_w * f_yw / 2")) / _gamma_R, "R_low");
  const _R_high = finite(Math.min(finite(_f_us * _A_s, "f_us * A_s"), finite(Math.PI / finite(Math.sqrt(3), "sqrt(3)") * 1.05 * _d * _t_w * _f_uw, "pi / sqrt(3) * 1.05 * d * t_w * f_uw")) / _gamma_R, "R_high");
  const _u = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? _F_t / _F_s_Rd : 0, "u");
  const _u_low = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.max(finite(_F_low / _F_s_Rd, "F_low / F_s_Rd"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.min(finite(_F_high / _F_s_Rd, "F_high / F_s_Rd"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  const _range0 = finite(_d <= finite(2.5 * _t_w, "2.5 * t_w") ? 1 : 0, "range0");
  return [_s_x, _s_y, _p_off, _a_p, _b_p, _F_st, _F_pw, _F_s_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _R_low, _R_high, _u, _u_low, _u_high, _range0];
}

export function boltStudByPlaces_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "i_x" | "i_y" | "l_x" | "l_y" | "d" | "A_s" | "t_w" | "f_yw" | "f_uw" | "f_us" | "gamma_M2" | "gamma_R" | "s_x" | "s_y" | "n_b" | "a_p" | "b_p" | "A_1" | "A_g" | "A_r", number>>, k: Readonly<Record<"plate.held.momentEdge" | "bolts.rowLost.edgeMoment", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _d = v.d;
  const _A_s = v.A_s;
  const _t_w = v.t_w;
  const _f_yw = v.f_yw;
  const _f_uw = v.f_uw;
  const _f_us = v.f_us;
  const _gamma_M2 = v.gamma_M2;
  const _gamma_R = v.gamma_R;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _n_b = v.n_b;
  const _a_p = v.a_p;
  const _b_p = v.b_p;
  const _A_1 = v.A_1;
  const _A_g = v.A_g;
  const _A_r = v.A_r;
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _R_bolt = finite(_A_1 * _p_off, "R_bolt");
  const _R_group = finite(_A_g * _p_lost, "R_group");
  const _R_rest = finite(_A_r * _p_lost, "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _F_st = finite(0.9 * _f_us * _A_s / _gamma_M2, "F_st");
  const _F_pw = finite(0.6 * Math.PI * _d * _t_w * _f_uw / _gamma_M2, "F_pw");
  const _F_s_Rd = finite(Math.min(_F_st, _F_pw), "F_s_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / _n_b, "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _R_low = finite(Math.min(finite(2 / 3 * _f_us * _A_s, "2 / 3 * f_us * A_s"), finite(Math.PI * _d * _t_w * _f_yw / 2, "pi * d * t_w * f_yw / 2")) / _gamma_R, "R_low");
  const _R_high = finite(Math.min(finite(_f_us * _A_s, "f_us * A_s"), finite(Math.PI / finite(Math.sqrt(3), "sqrt(3)") * 1.05 * _d * _t_w * _f_uw, "pi / sqrt(3) * 1.05 * d * t_w * f_uw")) / _gamma_R, "R_high");
  const _u = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? _F_t / _F_s_Rd : 0, "u");
  const _u_low = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.max(finite(_F_low / _F_s_Rd, "F_low / F_s_Rd"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.min(finite(_F_high / _F_s_Rd, "F_high / F_s_Rd"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  const _range0 = finite(_d <= finite(2.5 * _t_w, "2.5 * t_w") ? 1 : 0, "range0");
  return [_p_off, _p_lost, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _F_st, _F_pw, _F_s_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _R_low, _R_high, _u, _u_low, _u_high, _range0];
}

export function boltStudByPlaces_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "i_x" | "i_y" | "l_x" | "l_y" | "d" | "A_s" | "t_w" | "f_yw" | "f_uw" | "f_us" | "Omega_J" | "gamma_R" | "s_x" | "s_y" | "n_b" | "a_p" | "b_p" | "A_1" | "A_g" | "A_r", number>>, k: Readonly<Record<"plate.held.momentEdge" | "bolts.rowLost.edgeMoment", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _d = v.d;
  const _A_s = v.A_s;
  const _t_w = v.t_w;
  const _f_yw = v.f_yw;
  const _f_uw = v.f_uw;
  const _f_us = v.f_us;
  const _Omega_J = v.Omega_J;
  const _gamma_R = v.gamma_R;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _n_b = v.n_b;
  const _a_p = v.a_p;
  const _b_p = v.b_p;
  const _A_1 = v.A_1;
  const _A_g = v.A_g;
  const _A_r = v.A_r;
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _R_bolt = finite(_A_1 * _p_off, "R_bolt");
  const _R_group = finite(_A_g * _p_lost, "R_group");
  const _R_rest = finite(_A_r * _p_lost, "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _F_st = finite(0.75 * _f_us * _A_s / _Omega_J, "F_st");
  const _F_pw = finite(0.6 * Math.PI * _d * _t_w * _f_uw / _Omega_J, "F_pw");
  const _F_s_Rd = finite(Math.min(_F_st, _F_pw), "F_s_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / _n_b, "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _R_low = finite(Math.min(finite(2 / 3 * _f_us * _A_s, "2 / 3 * f_us * A_s"), finite(Math.PI * _d * _t_w * _f_yw / 2, "pi * d * t_w * f_yw / 2")) / _gamma_R, "R_low");
  const _R_high = finite(Math.min(finite(_f_us * _A_s, "f_us * A_s"), finite(Math.PI / finite(Math.sqrt(3), "sqrt(3)") * 1.05 * _d * _t_w * _f_uw, "pi / sqrt(3) * 1.05 * d * t_w * f_uw")) / _gamma_R, "R_high");
  const _u = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? _F_t / _F_s_Rd : 0, "u");
  const _u_low = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.max(finite(_F_low / _F_s_Rd, "F_low / F_s_Rd"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.min(finite(_F_high / _F_s_Rd, "F_high / F_s_Rd"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  const _range0 = finite(_d <= finite(2.5 * _t_w, "2.5 * t_w") ? 1 : 0, "range0");
  return [_p_off, _p_lost, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _F_st, _F_pw, _F_s_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _R_low, _R_high, _u, _u_low, _u_high, _range0];
}

export function boltStudBySolutionByPlaces_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "pulled" | "lost" | "h_x" | "h_y" | "i_x" | "i_y" | "l_x" | "l_y" | "d" | "A_s" | "t_w" | "f_yw" | "f_uw" | "f_us" | "gamma_M2" | "gamma_R" | "F_t" | "s_x" | "s_y" | "n_b" | "a_p" | "b_p", number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _d = v.d;
  const _A_s = v.A_s;
  const _t_w = v.t_w;
  const _f_yw = v.f_yw;
  const _f_uw = v.f_uw;
  const _f_us = v.f_us;
  const _gamma_M2 = v.gamma_M2;
  const _gamma_R = v.gamma_R;
  const _F_t = v.F_t;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _n_b = v.n_b;
  const _a_p = v.a_p;
  const _b_p = v.b_p;
  const _p_off = finite(_pulled * _p, "p_off");
  const _F_st = finite(0.9 * _f_us * _A_s / _gamma_M2, "F_st");
  const _F_pw = finite(0.6 * Math.PI * _d * _t_w * _f_uw / _gamma_M2, "F_pw");
  const _F_s_Rd = finite(Math.min(_F_st, _F_pw), "F_s_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / _n_b, "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _R_low = finite(Math.min(finite(2 / 3 * _f_us * _A_s, "2 / 3 * f_us * A_s"), finite(Math.PI * _d * _t_w * _f_yw / 2, "pi * d * t_w * f_yw / 2")) / _gamma_R, "R_low");
  const _R_high = finite(Math.min(finite(_f_us * _A_s, "f_us * A_s"), finite(Math.PI / finite(Math.sqrt(3), "sqrt(3)") * 1.05 * _d * _t_w * _f_uw, "pi / sqrt(3) * 1.05 * d * t_w * f_uw")) / _gamma_R, "R_high");
  const _u = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? _F_t / _F_s_Rd : 0, "u");
  const _u_low = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.max(finite(_F_low / _F_s_Rd, "F_low / F_s_Rd"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.min(finite(_F_high / _F_s_Rd, "F_high / F_s_Rd"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  const _range0 = finite(_d <= finite(2.5 * _t_w, "2.5 * t_w") ? 1 : 0, "range0");
  return [_p_off, _F_st, _F_pw, _F_s_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _R_low, _R_high, _u, _u_low, _u_high, _range0];
}

export function boltStudBySolutionByPlaces_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "pulled" | "lost" | "h_x" | "h_y" | "i_x" | "i_y" | "l_x" | "l_y" | "d" | "A_s" | "t_w" | "f_yw" | "f_uw" | "f_us" | "Omega_J" | "gamma_R" | "F_t" | "s_x" | "s_y" | "n_b" | "a_p" | "b_p", number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _d = v.d;
  const _A_s = v.A_s;
  const _t_w = v.t_w;
  const _f_yw = v.f_yw;
  const _f_uw = v.f_uw;
  const _f_us = v.f_us;
  const _Omega_J = v.Omega_J;
  const _gamma_R = v.gamma_R;
  const _F_t = v.F_t;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _n_b = v.n_b;
  const _a_p = v.a_p;
  const _b_p = v.b_p;
  const _p_off = finite(_pulled * _p, "p_off");
  const _F_st = finite(0.75 * _f_us * _A_s / _Omega_J, "F_st");
  const _F_pw = finite(0.6 * Math.PI * _d * _t_w * _f_uw / _Omega_J, "F_pw");
  const _F_s_Rd = finite(Math.min(_F_st, _F_pw), "F_s_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / _n_b, "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _R_low = finite(Math.min(finite(2 / 3 * _f_us * _A_s, "2 / 3 * f_us * A_s"), finite(Math.PI * _d * _t_w * _f_yw / 2, "pi * d * t_w * f_yw / 2")) / _gamma_R, "R_low");
  const _R_high = finite(Math.min(finite(_f_us * _A_s, "f_us * A_s"), finite(Math.PI / finite(Math.sqrt(3), "sqrt(3)") * 1.05 * _d * _t_w * _f_uw, "pi / sqrt(3) * 1.05 * d * t_w * f_uw")) / _gamma_R, "R_high");
  const _u = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? _F_t / _F_s_Rd : 0, "u");
  const _u_low = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.max(finite(_F_low / _F_s_Rd, "F_low / F_s_Rd"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.min(finite(_F_high / _F_s_Rd, "F_high / F_s_Rd"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  const _range0 = finite(_d <= finite(2.5 * _t_w, "2.5 * t_w") ? 1 : 0, "range0");
  return [_p_off, _F_st, _F_pw, _F_s_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _R_low, _R_high, _u, _u_low, _u_high, _range0];
}

export function boltThreadEngagement_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "d_w" | "l_x" | "l_y" | "d" | "f_ub" | "L_e" | "f_ud" | "P" | "gamma_M2" | "gamma_R", number>>, k: Readonly<Record<"plate.bolted.boltPush" | "bolts.rowLost.group" | "bolts.rowLost.plate" | "plate.held.momentEdge" | "bolts.rowLost.edgeMoment", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _d_w = v.d_w;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _d = v.d;
  const _f_ub = v.f_ub;
  const _L_e = v.L_e;
  const _f_ud = v.f_ud;
  const _P = v.P;
  const _gamma_M2 = v.gamma_M2;
  const _gamma_R = v.gamma_R;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _r_b = finite(_d_w / 2 + _t, "r_b");
  const _a_p = finite(_a_b + 2 * _i_x, "a_p");
  const _b_p = finite(_b_b + 2 * _i_y, "b_p");
  const _R_bolt = finite(k["plate.bolted.boltPush"](_a_p, _b_p, _t, _E, _nu, _p_off, _n_x, _n_y, _i_x, _i_y, _r_b), "R_bolt");
  const _R_group = finite(k["bolts.rowLost.group"](_a_b, _b_b, _n_x, _n_y, _i_x, _i_y, _p_lost), "R_group");
  const _R_rest = finite(k["bolts.rowLost.plate"](_a_b, _b_b, _t, _E, _nu, _p_lost, _n_x, _n_y, _i_x, _i_y), "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _d_2 = finite(_d - 3 * Math.sqrt(3) / 8 * _P, "d_2");
  const _D_1 = finite(_d - 5 * Math.sqrt(3) / 8 * _P, "D_1");
  const _A_sb = finite(Math.PI * _D_1 * _L_e * (1 / 2 + (_d_2 - _D_1) / finite(Math.sqrt(3) * _P, "sqrt(3) * P")), "A_sb");
  const _A_sp = finite(Math.PI * _d * _L_e * (1 / 2 + (_d - _d_2) / finite(Math.sqrt(3) * _P, "sqrt(3) * P")), "A_sp");
  const _F_th_Rd = finite(0.6 * Math.min(finite(_f_ub * _A_sb, "f_ub * A_sb"), finite(_f_ud * _A_sp, "f_ud * A_sp")) / _gamma_M2, "F_th_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / finite(2 * _n_x + 2 * _n_y - 4, "2 * n_x + 2 * n_y - 4"), "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _R_low = finite(Math.PI * (_d - 1.1 * _P) * _L_e * Math.min(_f_ub, _f_ud) / finite(4 * _gamma_R, "4 * gamma_R"), "R_low");
  const _R_high = finite(Math.PI * _d * _L_e * Math.min(_f_ub, _f_ud) / finite(Math.sqrt(3) * _gamma_R, "sqrt(3) * gamma_R"), "R_high");
  const _u = finite(_F_th_Rd > finite(0 * _F_th_Rd, "0 * F_th_Rd") ? _F_t / _F_th_Rd : 0, "u");
  const _u_low = finite(_F_th_Rd > finite(0 * _F_th_Rd, "0 * F_th_Rd") ? Math.max(finite(_F_low / _F_th_Rd, "F_low / F_th_Rd"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_F_th_Rd > finite(0 * _F_th_Rd, "0 * F_th_Rd") ? Math.min(finite(_F_high / _F_th_Rd, "F_high / F_th_Rd"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _p_off, _p_lost, _r_b, _a_p, _b_p, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _d_2, _D_1, _A_sb, _A_sp, _F_th_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltThreadEngagement_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "d_w" | "l_x" | "l_y" | "d" | "f_ub" | "L_e" | "f_ud" | "P" | "Omega_J" | "gamma_R", number>>, k: Readonly<Record<"plate.bolted.boltPush" | "bolts.rowLost.group" | "bolts.rowLost.plate" | "plate.held.momentEdge" | "bolts.rowLost.edgeMoment", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _d_w = v.d_w;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _d = v.d;
  const _f_ub = v.f_ub;
  const _L_e = v.L_e;
  const _f_ud = v.f_ud;
  const _P = v.P;
  const _Omega_J = v.Omega_J;
  const _gamma_R = v.gamma_R;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _r_b = finite(_d_w / 2 + _t, "r_b");
  const _a_p = finite(_a_b + 2 * _i_x, "a_p");
  const _b_p = finite(_b_b + 2 * _i_y, "b_p");
  const _R_bolt = finite(k["plate.bolted.boltPush"](_a_p, _b_p, _t, _E, _nu, _p_off, _n_x, _n_y, _i_x, _i_y, _r_b), "R_bolt");
  const _R_group = finite(k["bolts.rowLost.group"](_a_b, _b_b, _n_x, _n_y, _i_x, _i_y, _p_lost), "R_group");
  const _R_rest = finite(k["bolts.rowLost.plate"](_a_b, _b_b, _t, _E, _nu, _p_lost, _n_x, _n_y, _i_x, _i_y), "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _d_2 = finite(_d - 3 * Math.sqrt(3) / 8 * _P, "d_2");
  const _D_1 = finite(_d - 5 * Math.sqrt(3) / 8 * _P, "D_1");
  const _A_sb = finite(Math.PI * _D_1 * _L_e * (1 / 2 + (_d_2 - _D_1) / finite(Math.sqrt(3) * _P, "sqrt(3) * P")), "A_sb");
  const _A_sp = finite(Math.PI * _d * _L_e * (1 / 2 + (_d - _d_2) / finite(Math.sqrt(3) * _P, "sqrt(3) * P")), "A_sp");
  const _F_th_Rd = finite(0.6 * Math.min(finite(_f_ub * _A_sb, "f_ub * A_sb"), finite(_f_ud * _A_sp, "f_ud * A_sp")) / _Omega_J, "F_th_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / finite(2 * _n_x + 2 * _n_y - 4, "2 * n_x + 2 * n_y - 4"), "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _R_low = finite(Math.PI * (_d - 1.1 * _P) * _L_e * Math.min(_f_ub, _f_ud) / finite(4 * _gamma_R, "4 * gamma_R"), "R_low");
  const _R_high = finite(Math.PI * _d * _L_e * Math.min(_f_ub, _f_ud) / finite(Math.sqrt(3) * _gamma_R, "sqrt(3) * gamma_R"), "R_high");
  const _u = finite(_F_th_Rd > finite(0 * _F_th_Rd, "0 * F_th_Rd") ? _F_t / _F_th_Rd : 0, "u");
  const _u_low = finite(_F_th_Rd > finite(0 * _F_th_Rd, "0 * F_th_Rd") ? Math.max(finite(_F_low / _F_th_Rd, "F_low / F_th_Rd"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_F_th_Rd > finite(0 * _F_th_Rd, "0 * F_th_Rd") ? Math.min(finite(_F_high / _F_th_Rd, "F_high / F_th_Rd"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _p_off, _p_lost, _r_b, _a_p, _b_p, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _d_2, _D_1, _A_sb, _A_sp, _F_th_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltThreadEngagementBySolution_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "pulled" | "lost" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "l_x" | "l_y" | "d" | "f_ub" | "L_e" | "f_ud" | "P" | "gamma_M2" | "gamma_R" | "F_t", number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _d = v.d;
  const _f_ub = v.f_ub;
  const _L_e = v.L_e;
  const _f_ud = v.f_ud;
  const _P = v.P;
  const _gamma_M2 = v.gamma_M2;
  const _gamma_R = v.gamma_R;
  const _F_t = v.F_t;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _p_off = finite(_pulled * _p, "p_off");
  const _a_p = finite(_a_b + 2 * _i_x, "a_p");
  const _b_p = finite(_b_b + 2 * _i_y, "b_p");
  const _d_2 = finite(_d - 3 * Math.sqrt(3) / 8 * _P, "d_2");
  const _D_1 = finite(_d - 5 * Math.sqrt(3) / 8 * _P, "D_1");
  const _A_sb = finite(Math.PI * _D_1 * _L_e * (1 / 2 + (_d_2 - _D_1) / finite(Math.sqrt(3) * _P, "sqrt(3) * P")), "A_sb");
  const _A_sp = finite(Math.PI * _d * _L_e * (1 / 2 + (_d - _d_2) / finite(Math.sqrt(3) * _P, "sqrt(3) * P")), "A_sp");
  const _F_th_Rd = finite(0.6 * Math.min(finite(_f_ub * _A_sb, "f_ub * A_sb"), finite(_f_ud * _A_sp, "f_ud * A_sp")) / _gamma_M2, "F_th_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / finite(2 * _n_x + 2 * _n_y - 4, "2 * n_x + 2 * n_y - 4"), "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _R_low = finite(Math.PI * (_d - 1.1 * _P) * _L_e * Math.min(_f_ub, _f_ud) / finite(4 * _gamma_R, "4 * gamma_R"), "R_low");
  const _R_high = finite(Math.PI * _d * _L_e * Math.min(_f_ub, _f_ud) / finite(Math.sqrt(3) * _gamma_R, "sqrt(3) * gamma_R"), "R_high");
  const _u = finite(_F_th_Rd > finite(0 * _F_th_Rd, "0 * F_th_Rd") ? _F_t / _F_th_Rd : 0, "u");
  const _u_low = finite(_F_th_Rd > finite(0 * _F_th_Rd, "0 * F_th_Rd") ? Math.max(finite(_F_low / _F_th_Rd, "F_low / F_th_Rd"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_F_th_Rd > finite(0 * _F_th_Rd, "0 * F_th_Rd") ? Math.min(finite(_F_high / _F_th_Rd, "F_high / F_th_Rd"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _p_off, _a_p, _b_p, _d_2, _D_1, _A_sb, _A_sp, _F_th_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltThreadEngagementBySolution_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "pulled" | "lost" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "l_x" | "l_y" | "d" | "f_ub" | "L_e" | "f_ud" | "P" | "Omega_J" | "gamma_R" | "F_t", number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _d = v.d;
  const _f_ub = v.f_ub;
  const _L_e = v.L_e;
  const _f_ud = v.f_ud;
  const _P = v.P;
  const _Omega_J = v.Omega_J;
  const _gamma_R = v.gamma_R;
  const _F_t = v.F_t;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _p_off = finite(_pulled * _p, "p_off");
  const _a_p = finite(_a_b + 2 * _i_x, "a_p");
  const _b_p = finite(_b_b + 2 * _i_y, "b_p");
  const _d_2 = finite(_d - 3 * Math.sqrt(3) / 8 * _P, "d_2");
  const _D_1 = finite(_d - 5 * Math.sqrt(3) / 8 * _P, "D_1");
  const _A_sb = finite(Math.PI * _D_1 * _L_e * (1 / 2 + (_d_2 - _D_1) / finite(Math.sqrt(3) * _P, "sqrt(3) * P")), "A_sb");
  const _A_sp = finite(Math.PI * _d * _L_e * (1 / 2 + (_d - _d_2) / finite(Math.sqrt(3) * _P, "sqrt(3) * P")), "A_sp");
  const _F_th_Rd = finite(0.6 * Math.min(finite(_f_ub * _A_sb, "f_ub * A_sb"), finite(_f_ud * _A_sp, "f_ud * A_sp")) / _Omega_J, "F_th_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / finite(2 * _n_x + 2 * _n_y - 4, "2 * n_x + 2 * n_y - 4"), "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _R_low = finite(Math.PI * (_d - 1.1 * _P) * _L_e * Math.min(_f_ub, _f_ud) / finite(4 * _gamma_R, "4 * gamma_R"), "R_low");
  const _R_high = finite(Math.PI * _d * _L_e * Math.min(_f_ub, _f_ud) / finite(Math.sqrt(3) * _gamma_R, "sqrt(3) * gamma_R"), "R_high");
  const _u = finite(_F_th_Rd > finite(0 * _F_th_Rd, "0 * F_th_Rd") ? _F_t / _F_th_Rd : 0, "u");
  const _u_low = finite(_F_th_Rd > finite(0 * _F_th_Rd, "0 * F_th_Rd") ? Math.max(finite(_F_low / _F_th_Rd, "F_low / F_th_Rd"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_F_th_Rd > finite(0 * _F_th_Rd, "0 * F_th_Rd") ? Math.min(finite(_F_high / _F_th_Rd, "F_high / F_th_Rd"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _p_off, _a_p, _b_p, _d_2, _D_1, _A_sb, _A_sp, _F_th_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltThreadEngagementByPlaces_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "i_x" | "i_y" | "l_x" | "l_y" | "d" | "f_ub" | "L_e" | "f_ud" | "P" | "gamma_M2" | "gamma_R" | "s_x" | "s_y" | "n_b" | "a_p" | "b_p" | "A_1" | "A_g" | "A_r", number>>, k: Readonly<Record<"plate.held.momentEdge" | "bolts.rowLost.edgeMoment", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _d = v.d;
  const _f_ub = v.f_ub;
  const _L_e = v.L_e;
  const _f_ud = v.f_ud;
  const _P = v.P;
  const _gamma_M2 = v.gamma_M2;
  const _gamma_R = v.gamma_R;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _n_b = v.n_b;
  const _a_p = v.a_p;
  const _b_p = v.b_p;
  const _A_1 = v.A_1;
  const _A_g = v.A_g;
  const _A_r = v.A_r;
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _R_bolt = finite(_A_1 * _p_off, "R_bolt");
  const _R_group = finite(_A_g * _p_lost, "R_group");
  const _R_rest = finite(_A_r * _p_lost, "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _d_2 = finite(_d - 3 * Math.sqrt(3) / 8 * _P, "d_2");
  const _D_1 = finite(_d - 5 * Math.sqrt(3) / 8 * _P, "D_1");
  const _A_sb = finite(Math.PI * _D_1 * _L_e * (1 / 2 + (_d_2 - _D_1) / finite(Math.sqrt(3) * _P, "sqrt(3) * P")), "A_sb");
  const _A_sp = finite(Math.PI * _d * _L_e * (1 / 2 + (_d - _d_2) / finite(Math.sqrt(3) * _P, "sqrt(3) * P")), "A_sp");
  const _F_th_Rd = finite(0.6 * Math.min(finite(_f_ub * _A_sb, "f_ub * A_sb"), finite(_f_ud * _A_sp, "f_ud * A_sp")) / _gamma_M2, "F_th_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / _n_b, "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _R_low = finite(Math.PI * (_d - 1.1 * _P) * _L_e * Math.min(_f_ub, _f_ud) / finite(4 * _gamma_R, "4 * gamma_R"), "R_low");
  const _R_high = finite(Math.PI * _d * _L_e * Math.min(_f_ub, _f_ud) / finite(Math.sqrt(3) * _gamma_R, "sqrt(3) * gamma_R"), "R_high");
  const _u = finite(_F_th_Rd > finite(0 * _F_th_Rd, "0 * F_th_Rd") ? _F_t / _F_th_Rd : 0, "u");
  const _u_low = finite(_F_th_Rd > finite(0 * _F_th_Rd, "0 * F_th_Rd") ? Math.max(finite(_F_low / _F_th_Rd, "F_low / F_th_Rd"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_F_th_Rd > finite(0 * _F_th_Rd, "0 * F_th_Rd") ? Math.min(finite(_F_high / _F_th_Rd, "F_high / F_th_Rd"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  return [_p_off, _p_lost, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _d_2, _D_1, _A_sb, _A_sp, _F_th_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltThreadEngagementByPlaces_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "i_x" | "i_y" | "l_x" | "l_y" | "d" | "f_ub" | "L_e" | "f_ud" | "P" | "Omega_J" | "gamma_R" | "s_x" | "s_y" | "n_b" | "a_p" | "b_p" | "A_1" | "A_g" | "A_r", number>>, k: Readonly<Record<"plate.held.momentEdge" | "bolts.rowLost.edgeMoment", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _d = v.d;
  const _f_ub = v.f_ub;
  const _L_e = v.L_e;
  const _f_ud = v.f_ud;
  const _P = v.P;
  const _Omega_J = v.Omega_J;
  const _gamma_R = v.gamma_R;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _n_b = v.n_b;
  const _a_p = v.a_p;
  const _b_p = v.b_p;
  const _A_1 = v.A_1;
  const _A_g = v.A_g;
  const _A_r = v.A_r;
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _R_bolt = finite(_A_1 * _p_off, "R_bolt");
  const _R_group = finite(_A_g * _p_lost, "R_group");
  const _R_rest = finite(_A_r * _p_lost, "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _d_2 = finite(_d - 3 * Math.sqrt(3) / 8 * _P, "d_2");
  const _D_1 = finite(_d - 5 * Math.sqrt(3) / 8 * _P, "D_1");
  const _A_sb = finite(Math.PI * _D_1 * _L_e * (1 / 2 + (_d_2 - _D_1) / finite(Math.sqrt(3) * _P, "sqrt(3) * P")), "A_sb");
  const _A_sp = finite(Math.PI * _d * _L_e * (1 / 2 + (_d - _d_2) / finite(Math.sqrt(3) * _P, "sqrt(3) * P")), "A_sp");
  const _F_th_Rd = finite(0.6 * Math.min(finite(_f_ub * _A_sb, "f_ub * A_sb"), finite(_f_ud * _A_sp, "f_ud * A_sp")) / _Omega_J, "F_th_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / _n_b, "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _R_low = finite(Math.PI * (_d - 1.1 * _P) * _L_e * Math.min(_f_ub, _f_ud) / finite(4 * _gamma_R, "4 * gamma_R"), "R_low");
  const _R_high = finite(Math.PI * _d * _L_e * Math.min(_f_ub, _f_ud) / finite(Math.sqrt(3) * _gamma_R, "sqrt(3) * gamma_R"), "R_high");
  const _u = finite(_F_th_Rd > finite(0 * _F_th_Rd, "0 * F_th_Rd") ? _F_t / _F_th_Rd : 0, "u");
  const _u_low = finite(_F_th_Rd > finite(0 * _F_th_Rd, "0 * F_th_Rd") ? Math.max(finite(_F_low / _F_th_Rd, "F_low / F_th_Rd"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_F_th_Rd > finite(0 * _F_th_Rd, "0 * F_th_Rd") ? Math.min(finite(_F_high / _F_th_Rd, "F_high / F_th_Rd"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  return [_p_off, _p_lost, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _d_2, _D_1, _A_sb, _A_sp, _F_th_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltThreadEngagementBySolutionByPlaces_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "pulled" | "lost" | "h_x" | "h_y" | "i_x" | "i_y" | "l_x" | "l_y" | "d" | "f_ub" | "L_e" | "f_ud" | "P" | "gamma_M2" | "gamma_R" | "F_t" | "s_x" | "s_y" | "n_b" | "a_p" | "b_p", number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _d = v.d;
  const _f_ub = v.f_ub;
  const _L_e = v.L_e;
  const _f_ud = v.f_ud;
  const _P = v.P;
  const _gamma_M2 = v.gamma_M2;
  const _gamma_R = v.gamma_R;
  const _F_t = v.F_t;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _n_b = v.n_b;
  const _a_p = v.a_p;
  const _b_p = v.b_p;
  const _p_off = finite(_pulled * _p, "p_off");
  const _d_2 = finite(_d - 3 * Math.sqrt(3) / 8 * _P, "d_2");
  const _D_1 = finite(_d - 5 * Math.sqrt(3) / 8 * _P, "D_1");
  const _A_sb = finite(Math.PI * _D_1 * _L_e * (1 / 2 + (_d_2 - _D_1) / finite(Math.sqrt(3) * _P, "sqrt(3) * P")), "A_sb");
  const _A_sp = finite(Math.PI * _d * _L_e * (1 / 2 + (_d - _d_2) / finite(Math.sqrt(3) * _P, "sqrt(3) * P")), "A_sp");
  const _F_th_Rd = finite(0.6 * Math.min(finite(_f_ub * _A_sb, "f_ub * A_sb"), finite(_f_ud * _A_sp, "f_ud * A_sp")) / _gamma_M2, "F_th_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / _n_b, "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _R_low = finite(Math.PI * (_d - 1.1 * _P) * _L_e * Math.min(_f_ub, _f_ud) / finite(4 * _gamma_R, "4 * gamma_R"), "R_low");
  const _R_high = finite(Math.PI * _d * _L_e * Math.min(_f_ub, _f_ud) / finite(Math.sqrt(3) * _gamma_R, "sqrt(3) * gamma_R"), "R_high");
  const _u = finite(_F_th_Rd > finite(0 * _F_th_Rd, "0 * F_th_Rd") ? _F_t / _F_th_Rd : 0, "u");
  const _u_low = finite(_F_th_Rd > finite(0 * _F_th_Rd, "0 * F_th_Rd") ? Math.max(finite(_F_low / _F_th_Rd, "F_low / F_th_Rd"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_F_th_Rd > finite(0 * _F_th_Rd, "0 * F_th_Rd") ? Math.min(finite(_F_high / _F_th_Rd, "F_high / F_th_Rd"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  return [_p_off, _d_2, _D_1, _A_sb, _A_sp, _F_th_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltThreadEngagementBySolutionByPlaces_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "pulled" | "lost" | "h_x" | "h_y" | "i_x" | "i_y" | "l_x" | "l_y" | "d" | "f_ub" | "L_e" | "f_ud" | "P" | "Omega_J" | "gamma_R" | "F_t" | "s_x" | "s_y" | "n_b" | "a_p" | "b_p", number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _d = v.d;
  const _f_ub = v.f_ub;
  const _L_e = v.L_e;
  const _f_ud = v.f_ud;
  const _P = v.P;
  const _Omega_J = v.Omega_J;
  const _gamma_R = v.gamma_R;
  const _F_t = v.F_t;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _n_b = v.n_b;
  const _a_p = v.a_p;
  const _b_p = v.b_p;
  const _p_off = finite(_pulled * _p, "p_off");
  const _d_2 = finite(_d - 3 * Math.sqrt(3) / 8 * _P, "d_2");
  const _D_1 = finite(_d - 5 * Math.sqrt(3) / 8 * _P, "D_1");
  const _A_sb = finite(Math.PI * _D_1 * _L_e * (1 / 2 + (_d_2 - _D_1) / finite(Math.sqrt(3) * _P, "sqrt(3) * P")), "A_sb");
  const _A_sp = finite(Math.PI * _d * _L_e * (1 / 2 + (_d - _d_2) / finite(Math.sqrt(3) * _P, "sqrt(3) * P")), "A_sp");
  const _F_th_Rd = finite(0.6 * Math.min(finite(_f_ub * _A_sb, "f_ub * A_sb"), finite(_f_ud * _A_sp, "f_ud * A_sp")) / _Omega_J, "F_th_Rd");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / _n_b, "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _R_low = finite(Math.PI * (_d - 1.1 * _P) * _L_e * Math.min(_f_ub, _f_ud) / finite(4 * _gamma_R, "4 * gamma_R"), "R_low");
  const _R_high = finite(Math.PI * _d * _L_e * Math.min(_f_ub, _f_ud) / finite(Math.sqrt(3) * _gamma_R, "sqrt(3) * gamma_R"), "R_high");
  const _u = finite(_F_th_Rd > finite(0 * _F_th_Rd, "0 * F_th_Rd") ? _F_t / _F_th_Rd : 0, "u");
  const _u_low = finite(_F_th_Rd > finite(0 * _F_th_Rd, "0 * F_th_Rd") ? Math.max(finite(_F_low / _F_th_Rd, "F_low / F_th_Rd"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_F_th_Rd > finite(0 * _F_th_Rd, "0 * F_th_Rd") ? Math.min(finite(_F_high / _F_th_Rd, "F_high / F_th_Rd"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  return [_p_off, _d_2, _D_1, _A_sb, _A_sp, _F_th_Rd, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltPadWeld_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "b_d" | "a_d" | "f_uj" | "beta_w" | "gamma_M2" | "gamma_R", number>>, k: Readonly<Record<"inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _b_d = v.b_d;
  const _a_d = v.a_d;
  const _f_uj = v.f_uj;
  const _beta_w = v.beta_w;
  const _gamma_M2 = v.gamma_M2;
  const _gamma_R = v.gamma_R;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _F_w_Rd = finite(2 * _a_d * _b_d * _f_uj / finite(Math.sqrt(3) * _beta_w * _gamma_M2, "sqrt(3) * beta_w * gamma_M2"), "F_w_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _R_low = finite(_a_d * _b_d * _f_uj / _gamma_R, "R_low");
  const _R_high = finite(4 * _a_d * _b_d * _f_uj / finite(Math.sqrt(3) * _gamma_R, "sqrt(3) * gamma_R"), "R_high");
  const _u = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? _F_v / _F_w_Rd : 0, "u");
  const _u_low = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? Math.max(finite(_F_least / _F_w_Rd, "F_least / F_w_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? Math.min(finite(_F_most / _F_w_Rd, "F_most / F_w_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _L_n, _N_pull, _F_v, _F_w_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltPadWeld_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "b_d" | "a_d" | "f_uj" | "Omega_J" | "gamma_R", number>>, k: Readonly<Record<"inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _b_d = v.b_d;
  const _a_d = v.a_d;
  const _f_uj = v.f_uj;
  const _Omega_J = v.Omega_J;
  const _gamma_R = v.gamma_R;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _F_w_Rd = finite(0.6 * _f_uj * 2 * _a_d * _b_d / _Omega_J, "F_w_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _R_low = finite(_a_d * _b_d * _f_uj / _gamma_R, "R_low");
  const _R_high = finite(4 * _a_d * _b_d * _f_uj / finite(Math.sqrt(3) * _gamma_R, "sqrt(3) * gamma_R"), "R_high");
  const _u = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? _F_v / _F_w_Rd : 0, "u");
  const _u_low = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? Math.max(finite(_F_least / _F_w_Rd, "F_least / F_w_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? Math.min(finite(_F_most / _F_w_Rd, "F_most / F_w_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _L_n, _N_pull, _F_v, _F_w_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltPadWeldBySolution_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "b_d" | "a_d" | "f_uj" | "beta_w" | "gamma_M2" | "gamma_R" | "F_v", number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _b_d = v.b_d;
  const _a_d = v.a_d;
  const _f_uj = v.f_uj;
  const _beta_w = v.beta_w;
  const _gamma_M2 = v.gamma_M2;
  const _gamma_R = v.gamma_R;
  const _F_v = v.F_v;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _F_w_Rd = finite(2 * _a_d * _b_d * _f_uj / finite(Math.sqrt(3) * _beta_w * _gamma_M2, "sqrt(3) * beta_w * gamma_M2"), "F_w_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _R_low = finite(_a_d * _b_d * _f_uj / _gamma_R, "R_low");
  const _R_high = finite(4 * _a_d * _b_d * _f_uj / finite(Math.sqrt(3) * _gamma_R, "sqrt(3) * gamma_R"), "R_high");
  const _u = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? _F_v / _F_w_Rd : 0, "u");
  const _u_low = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? Math.max(finite(_F_least / _F_w_Rd, "F_least / F_w_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? Math.min(finite(_F_most / _F_w_Rd, "F_most / F_w_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _L_n, _F_w_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltPadWeldBySolution_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "b_d" | "a_d" | "f_uj" | "Omega_J" | "gamma_R" | "F_v", number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _b_d = v.b_d;
  const _a_d = v.a_d;
  const _f_uj = v.f_uj;
  const _Omega_J = v.Omega_J;
  const _gamma_R = v.gamma_R;
  const _F_v = v.F_v;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _F_w_Rd = finite(0.6 * _f_uj * 2 * _a_d * _b_d / _Omega_J, "F_w_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _R_low = finite(_a_d * _b_d * _f_uj / _gamma_R, "R_low");
  const _R_high = finite(4 * _a_d * _b_d * _f_uj / finite(Math.sqrt(3) * _gamma_R, "sqrt(3) * gamma_R"), "R_high");
  const _u = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? _F_v / _F_w_Rd : 0, "u");
  const _u_low = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? Math.max(finite(_F_least / _F_w_Rd, "F_least / F_w_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? Math.min(finite(_F_most / _F_w_Rd, "F_most / F_w_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _L_n, _F_w_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltPadWeldByPlaces_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "b_d" | "a_d" | "f_uj" | "beta_w" | "gamma_M2" | "gamma_R" | "s_x" | "s_y", number>>, k: Readonly<Record<"inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _b_d = v.b_d;
  const _a_d = v.a_d;
  const _f_uj = v.f_uj;
  const _beta_w = v.beta_w;
  const _gamma_M2 = v.gamma_M2;
  const _gamma_R = v.gamma_R;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _F_w_Rd = finite(2 * _a_d * _b_d * _f_uj / finite(Math.sqrt(3) * _beta_w * _gamma_M2, "sqrt(3) * beta_w * gamma_M2"), "F_w_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _R_low = finite(_a_d * _b_d * _f_uj / _gamma_R, "R_low");
  const _R_high = finite(4 * _a_d * _b_d * _f_uj / finite(Math.sqrt(3) * _gamma_R, "sqrt(3) * gamma_R"), "R_high");
  const _u = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? _F_v / _F_w_Rd : 0, "u");
  const _u_low = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? Math.max(finite(_F_least / _F_w_Rd, "F_least / F_w_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? Math.min(finite(_F_most / _F_w_Rd, "F_most / F_w_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_L_n, _N_pull, _F_v, _F_w_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltPadWeldByPlaces_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "b_d" | "a_d" | "f_uj" | "Omega_J" | "gamma_R" | "s_x" | "s_y", number>>, k: Readonly<Record<"inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _b_d = v.b_d;
  const _a_d = v.a_d;
  const _f_uj = v.f_uj;
  const _Omega_J = v.Omega_J;
  const _gamma_R = v.gamma_R;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _F_w_Rd = finite(0.6 * _f_uj * 2 * _a_d * _b_d / _Omega_J, "F_w_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _R_low = finite(_a_d * _b_d * _f_uj / _gamma_R, "R_low");
  const _R_high = finite(4 * _a_d * _b_d * _f_uj / finite(Math.sqrt(3) * _gamma_R, "sqrt(3) * gamma_R"), "R_high");
  const _u = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? _F_v / _F_w_Rd : 0, "u");
  const _u_low = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? Math.max(finite(_F_least / _F_w_Rd, "F_least / F_w_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? Math.min(finite(_F_most / _F_w_Rd, "F_most / F_w_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_L_n, _N_pull, _F_v, _F_w_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltPadWeldBySolutionByPlaces_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "b_d" | "a_d" | "f_uj" | "beta_w" | "gamma_M2" | "gamma_R" | "F_v" | "s_x" | "s_y", number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _b_d = v.b_d;
  const _a_d = v.a_d;
  const _f_uj = v.f_uj;
  const _beta_w = v.beta_w;
  const _gamma_M2 = v.gamma_M2;
  const _gamma_R = v.gamma_R;
  const _F_v = v.F_v;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _F_w_Rd = finite(2 * _a_d * _b_d * _f_uj / finite(Math.sqrt(3) * _beta_w * _gamma_M2, "sqrt(3) * beta_w * gamma_M2"), "F_w_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _R_low = finite(_a_d * _b_d * _f_uj / _gamma_R, "R_low");
  const _R_high = finite(4 * _a_d * _b_d * _f_uj / finite(Math.sqrt(3) * _gamma_R, "sqrt(3) * gamma_R"), "R_high");
  const _u = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? _F_v / _F_w_Rd : 0, "u");
  const _u_low = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? Math.max(finite(_F_least / _F_w_Rd, "F_least / F_w_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? Math.min(finite(_F_most / _F_w_Rd, "F_most / F_w_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_L_n, _F_w_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltPadWeldBySolutionByPlaces_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "b_d" | "a_d" | "f_uj" | "Omega_J" | "gamma_R" | "F_v" | "s_x" | "s_y", number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _b_d = v.b_d;
  const _a_d = v.a_d;
  const _f_uj = v.f_uj;
  const _Omega_J = v.Omega_J;
  const _gamma_R = v.gamma_R;
  const _F_v = v.F_v;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _F_w_Rd = finite(0.6 * _f_uj * 2 * _a_d * _b_d / _Omega_J, "F_w_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _R_low = finite(_a_d * _b_d * _f_uj / _gamma_R, "R_low");
  const _R_high = finite(4 * _a_d * _b_d * _f_uj / finite(Math.sqrt(3) * _gamma_R, "sqrt(3) * gamma_R"), "R_high");
  const _u = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? _F_v / _F_w_Rd : 0, "u");
  const _u_low = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? Math.max(finite(_F_least / _F_w_Rd, "F_least / F_w_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_w_Rd > finite(0 * _F_w_Rd, "0 * F_w_Rd") ? Math.min(finite(_F_most / _F_w_Rd, "F_most / F_w_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_L_n, _F_w_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltClampSlip_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "d_w" | "l_x" | "l_y" | "T_t" | "k_low" | "k_high" | "c_c" | "d" | "mu_c" | "gamma_M3" | "gamma_R", number>>, k: Readonly<Record<"plate.bolted.boltPush" | "bolts.rowLost.group" | "bolts.rowLost.plate" | "plate.held.momentEdge" | "bolts.rowLost.edgeMoment" | "inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _d_w = v.d_w;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _T_t = v.T_t;
  const _k_low = v.k_low;
  const _k_high = v.k_high;
  const _c_c = v.c_c;
  const _d = v.d;
  const _mu_c = v.mu_c;
  const _gamma_M3 = v.gamma_M3;
  const _gamma_R = v.gamma_R;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _r_b = finite(_d_w / 2 + _t, "r_b");
  const _a_p = finite(_a_b + 2 * _i_x, "a_p");
  const _b_p = finite(_b_b + 2 * _i_y, "b_p");
  const _R_bolt = finite(k["plate.bolted.boltPush"](_a_p, _b_p, _t, _E, _nu, _p_off, _n_x, _n_y, _i_x, _i_y, _r_b), "R_bolt");
  const _R_group = finite(k["bolts.rowLost.group"](_a_b, _b_b, _n_x, _n_y, _i_x, _i_y, _p_lost), "R_group");
  const _R_rest = finite(k["bolts.rowLost.plate"](_a_b, _b_b, _t, _E, _nu, _p_lost, _n_x, _n_y, _i_x, _i_y), "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _F_lo = finite((1 - _c_c) * _T_t / finite(_k_high * _d, "k_high * d"), "F_lo");
  const _F_s_Rd = finite(_mu_c * (_F_lo - _F_t) / _gamma_M3, "F_s_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _R_low = finite(finite(0.8 * _F_lo, "0.8 * F_lo") > _F_t ? _mu_c * (0.8 * _F_lo - _F_t) / _gamma_R : _F_s_Rd, "R_low");
  const _R_high = finite(_mu_c * _T_t / finite(_k_low * _d * _gamma_R, "k_low * d * gamma_R"), "R_high");
  const _u = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? _F_v / _F_s_Rd : 0, "u");
  const _u_low = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.max(finite(_F_least / _F_s_Rd, "F_least / F_s_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.min(finite(_F_most / _F_s_Rd, "F_most / F_s_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _p_off, _p_lost, _r_b, _a_p, _b_p, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _L_n, _N_pull, _F_v, _F_lo, _F_s_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltClampSlip_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "d_w" | "l_x" | "l_y" | "T_t" | "k_low" | "k_high" | "c_c" | "d" | "mu_c" | "Omega_slip" | "gamma_R", number>>, k: Readonly<Record<"plate.bolted.boltPush" | "bolts.rowLost.group" | "bolts.rowLost.plate" | "plate.held.momentEdge" | "bolts.rowLost.edgeMoment" | "inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _d_w = v.d_w;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _T_t = v.T_t;
  const _k_low = v.k_low;
  const _k_high = v.k_high;
  const _c_c = v.c_c;
  const _d = v.d;
  const _mu_c = v.mu_c;
  const _Omega_slip = v.Omega_slip;
  const _gamma_R = v.gamma_R;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _r_b = finite(_d_w / 2 + _t, "r_b");
  const _a_p = finite(_a_b + 2 * _i_x, "a_p");
  const _b_p = finite(_b_b + 2 * _i_y, "b_p");
  const _R_bolt = finite(k["plate.bolted.boltPush"](_a_p, _b_p, _t, _E, _nu, _p_off, _n_x, _n_y, _i_x, _i_y, _r_b), "R_bolt");
  const _R_group = finite(k["bolts.rowLost.group"](_a_b, _b_b, _n_x, _n_y, _i_x, _i_y, _p_lost), "R_group");
  const _R_rest = finite(k["bolts.rowLost.plate"](_a_b, _b_b, _t, _E, _nu, _p_lost, _n_x, _n_y, _i_x, _i_y), "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _F_lo = finite((1 - _c_c) * _T_t / finite(_k_high * _d, "k_high * d"), "F_lo");
  const _F_s_Rd = finite(_mu_c * (_F_lo - _F_t) / _Omega_slip, "F_s_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _R_low = finite(finite(0.8 * _F_lo, "0.8 * F_lo") > _F_t ? _mu_c * (0.8 * _F_lo - _F_t) / _gamma_R : _F_s_Rd, "R_low");
  const _R_high = finite(_mu_c * _T_t / finite(_k_low * _d * _gamma_R, "k_low * d * gamma_R"), "R_high");
  const _u = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? _F_v / _F_s_Rd : 0, "u");
  const _u_low = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.max(finite(_F_least / _F_s_Rd, "F_least / F_s_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.min(finite(_F_most / _F_s_Rd, "F_most / F_s_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _p_off, _p_lost, _r_b, _a_p, _b_p, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _L_n, _N_pull, _F_v, _F_lo, _F_s_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltClampSlipBySolution_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "T_t" | "k_low" | "k_high" | "c_c" | "d" | "mu_c" | "gamma_M3" | "gamma_R" | "F_t" | "F_v", number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _T_t = v.T_t;
  const _k_low = v.k_low;
  const _k_high = v.k_high;
  const _c_c = v.c_c;
  const _d = v.d;
  const _mu_c = v.mu_c;
  const _gamma_M3 = v.gamma_M3;
  const _gamma_R = v.gamma_R;
  const _F_t = v.F_t;
  const _F_v = v.F_v;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _F_lo = finite((1 - _c_c) * _T_t / finite(_k_high * _d, "k_high * d"), "F_lo");
  const _F_s_Rd = finite(_mu_c * (_F_lo - _F_t) / _gamma_M3, "F_s_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _R_low = finite(finite(0.8 * _F_lo, "0.8 * F_lo") > _F_t ? _mu_c * (0.8 * _F_lo - _F_t) / _gamma_R : _F_s_Rd, "R_low");
  const _R_high = finite(_mu_c * _T_t / finite(_k_low * _d * _gamma_R, "k_low * d * gamma_R"), "R_high");
  const _u = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? _F_v / _F_s_Rd : 0, "u");
  const _u_low = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.max(finite(_F_least / _F_s_Rd, "F_least / F_s_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.min(finite(_F_most / _F_s_Rd, "F_most / F_s_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _L_n, _F_lo, _F_s_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltClampSlipBySolution_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "T_t" | "k_low" | "k_high" | "c_c" | "d" | "mu_c" | "Omega_slip" | "gamma_R" | "F_t" | "F_v", number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _T_t = v.T_t;
  const _k_low = v.k_low;
  const _k_high = v.k_high;
  const _c_c = v.c_c;
  const _d = v.d;
  const _mu_c = v.mu_c;
  const _Omega_slip = v.Omega_slip;
  const _gamma_R = v.gamma_R;
  const _F_t = v.F_t;
  const _F_v = v.F_v;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _F_lo = finite((1 - _c_c) * _T_t / finite(_k_high * _d, "k_high * d"), "F_lo");
  const _F_s_Rd = finite(_mu_c * (_F_lo - _F_t) / _Omega_slip, "F_s_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _R_low = finite(finite(0.8 * _F_lo, "0.8 * F_lo") > _F_t ? _mu_c * (0.8 * _F_lo - _F_t) / _gamma_R : _F_s_Rd, "R_low");
  const _R_high = finite(_mu_c * _T_t / finite(_k_low * _d * _gamma_R, "k_low * d * gamma_R"), "R_high");
  const _u = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? _F_v / _F_s_Rd : 0, "u");
  const _u_low = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.max(finite(_F_least / _F_s_Rd, "F_least / F_s_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.min(finite(_F_most / _F_s_Rd, "F_most / F_s_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _L_n, _F_lo, _F_s_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltClampSlipByPlaces_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "l_x" | "l_y" | "T_t" | "k_low" | "k_high" | "c_c" | "d" | "mu_c" | "gamma_M3" | "gamma_R" | "s_x" | "s_y" | "A_1" | "A_g" | "A_r", number>>, k: Readonly<Record<"plate.held.momentEdge" | "bolts.rowLost.edgeMoment" | "inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _T_t = v.T_t;
  const _k_low = v.k_low;
  const _k_high = v.k_high;
  const _c_c = v.c_c;
  const _d = v.d;
  const _mu_c = v.mu_c;
  const _gamma_M3 = v.gamma_M3;
  const _gamma_R = v.gamma_R;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _A_1 = v.A_1;
  const _A_g = v.A_g;
  const _A_r = v.A_r;
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _R_bolt = finite(_A_1 * _p_off, "R_bolt");
  const _R_group = finite(_A_g * _p_lost, "R_group");
  const _R_rest = finite(_A_r * _p_lost, "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _F_lo = finite((1 - _c_c) * _T_t / finite(_k_high * _d, "k_high * d"), "F_lo");
  const _F_s_Rd = finite(_mu_c * (_F_lo - _F_t) / _gamma_M3, "F_s_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _R_low = finite(finite(0.8 * _F_lo, "0.8 * F_lo") > _F_t ? _mu_c * (0.8 * _F_lo - _F_t) / _gamma_R : _F_s_Rd, "R_low");
  const _R_high = finite(_mu_c * _T_t / finite(_k_low * _d * _gamma_R, "k_low * d * gamma_R"), "R_high");
  const _u = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? _F_v / _F_s_Rd : 0, "u");
  const _u_low = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.max(finite(_F_least / _F_s_Rd, "F_least / F_s_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.min(finite(_F_most / _F_s_Rd, "F_most / F_s_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_p_off, _p_lost, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _L_n, _N_pull, _F_v, _F_lo, _F_s_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltClampSlipByPlaces_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "l_x" | "l_y" | "T_t" | "k_low" | "k_high" | "c_c" | "d" | "mu_c" | "Omega_slip" | "gamma_R" | "s_x" | "s_y" | "A_1" | "A_g" | "A_r", number>>, k: Readonly<Record<"plate.held.momentEdge" | "bolts.rowLost.edgeMoment" | "inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _T_t = v.T_t;
  const _k_low = v.k_low;
  const _k_high = v.k_high;
  const _c_c = v.c_c;
  const _d = v.d;
  const _mu_c = v.mu_c;
  const _Omega_slip = v.Omega_slip;
  const _gamma_R = v.gamma_R;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _A_1 = v.A_1;
  const _A_g = v.A_g;
  const _A_r = v.A_r;
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _R_bolt = finite(_A_1 * _p_off, "R_bolt");
  const _R_group = finite(_A_g * _p_lost, "R_group");
  const _R_rest = finite(_A_r * _p_lost, "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _F_lo = finite((1 - _c_c) * _T_t / finite(_k_high * _d, "k_high * d"), "F_lo");
  const _F_s_Rd = finite(_mu_c * (_F_lo - _F_t) / _Omega_slip, "F_s_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _R_low = finite(finite(0.8 * _F_lo, "0.8 * F_lo") > _F_t ? _mu_c * (0.8 * _F_lo - _F_t) / _gamma_R : _F_s_Rd, "R_low");
  const _R_high = finite(_mu_c * _T_t / finite(_k_low * _d * _gamma_R, "k_low * d * gamma_R"), "R_high");
  const _u = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? _F_v / _F_s_Rd : 0, "u");
  const _u_low = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.max(finite(_F_least / _F_s_Rd, "F_least / F_s_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.min(finite(_F_most / _F_s_Rd, "F_most / F_s_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_p_off, _p_lost, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _L_n, _N_pull, _F_v, _F_lo, _F_s_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltClampSlipBySolutionByPlaces_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "T_t" | "k_low" | "k_high" | "c_c" | "d" | "mu_c" | "gamma_M3" | "gamma_R" | "F_t" | "F_v" | "s_x" | "s_y", number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _T_t = v.T_t;
  const _k_low = v.k_low;
  const _k_high = v.k_high;
  const _c_c = v.c_c;
  const _d = v.d;
  const _mu_c = v.mu_c;
  const _gamma_M3 = v.gamma_M3;
  const _gamma_R = v.gamma_R;
  const _F_t = v.F_t;
  const _F_v = v.F_v;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _F_lo = finite((1 - _c_c) * _T_t / finite(_k_high * _d, "k_high * d"), "F_lo");
  const _F_s_Rd = finite(_mu_c * (_F_lo - _F_t) / _gamma_M3, "F_s_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _R_low = finite(finite(0.8 * _F_lo, "0.8 * F_lo") > _F_t ? _mu_c * (0.8 * _F_lo - _F_t) / _gamma_R : _F_s_Rd, "R_low");
  const _R_high = finite(_mu_c * _T_t / finite(_k_low * _d * _gamma_R, "k_low * d * gamma_R"), "R_high");
  const _u = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? _F_v / _F_s_Rd : 0, "u");
  const _u_low = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.max(finite(_F_least / _F_s_Rd, "F_least / F_s_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.min(finite(_F_most / _F_s_Rd, "F_most / F_s_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_L_n, _F_lo, _F_s_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltClampSlipBySolutionByPlaces_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "T_t" | "k_low" | "k_high" | "c_c" | "d" | "mu_c" | "Omega_slip" | "gamma_R" | "F_t" | "F_v" | "s_x" | "s_y", number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _T_t = v.T_t;
  const _k_low = v.k_low;
  const _k_high = v.k_high;
  const _c_c = v.c_c;
  const _d = v.d;
  const _mu_c = v.mu_c;
  const _Omega_slip = v.Omega_slip;
  const _gamma_R = v.gamma_R;
  const _F_t = v.F_t;
  const _F_v = v.F_v;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _F_lo = finite((1 - _c_c) * _T_t / finite(_k_high * _d, "k_high * d"), "F_lo");
  const _F_s_Rd = finite(_mu_c * (_F_lo - _F_t) / _Omega_slip, "F_s_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _R_low = finite(finite(0.8 * _F_lo, "0.8 * F_lo") > _F_t ? _mu_c * (0.8 * _F_lo - _F_t) / _gamma_R : _F_s_Rd, "R_low");
  const _R_high = finite(_mu_c * _T_t / finite(_k_low * _d * _gamma_R, "k_low * d * gamma_R"), "R_high");
  const _u = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? _F_v / _F_s_Rd : 0, "u");
  const _u_low = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.max(finite(_F_least / _F_s_Rd, "F_least / F_s_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.min(finite(_F_most / _F_s_Rd, "F_most / F_s_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_L_n, _F_lo, _F_s_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltSlip_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "d_w" | "l_x" | "l_y" | "A_s" | "f_ub" | "mu" | "k_s" | "gamma_M3" | "gamma_R", number>>, k: Readonly<Record<"plate.bolted.boltPush" | "bolts.rowLost.group" | "bolts.rowLost.plate" | "plate.held.momentEdge" | "bolts.rowLost.edgeMoment" | "inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _d_w = v.d_w;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _A_s = v.A_s;
  const _f_ub = v.f_ub;
  const _mu = v.mu;
  const _k_s = v.k_s;
  const _gamma_M3 = v.gamma_M3;
  const _gamma_R = v.gamma_R;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _r_b = finite(_d_w / 2 + _t, "r_b");
  const _a_p = finite(_a_b + 2 * _i_x, "a_p");
  const _b_p = finite(_b_b + 2 * _i_y, "b_p");
  const _R_bolt = finite(k["plate.bolted.boltPush"](_a_p, _b_p, _t, _E, _nu, _p_off, _n_x, _n_y, _i_x, _i_y, _r_b), "R_bolt");
  const _R_group = finite(k["bolts.rowLost.group"](_a_b, _b_b, _n_x, _n_y, _i_x, _i_y, _p_lost), "R_group");
  const _R_rest = finite(k["bolts.rowLost.plate"](_a_b, _b_b, _t, _E, _nu, _p_lost, _n_x, _n_y, _i_x, _i_y), "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _F_pC = finite(0.7 * _f_ub * _A_s, "F_pC");
  const _F_s_Rd = finite(_k_s * _mu * (_F_pC - 0.8 * _F_t) / _gamma_M3, "F_s_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _C_low = finite(0.8 * 0.7 * _f_ub * _A_s - 1.5 * _F_t, "C_low");
  const _R_low = finite(_C_low > finite(0 * _C_low, "0 * C_low") ? 0.63 * _mu * _C_low / _gamma_R : _F_s_Rd, "R_low");
  const _R_high = finite(_mu * (0.8 * _f_ub * _A_s - 0.5 * _F_t) / _gamma_R, "R_high");
  const _u = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? _F_v / _F_s_Rd : 0, "u");
  const _u_low = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.max(finite(_F_least / _F_s_Rd, "F_least / F_s_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.min(finite(_F_most / _F_s_Rd, "F_most / F_s_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _p_off, _p_lost, _r_b, _a_p, _b_p, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _L_n, _N_pull, _F_v, _F_pC, _F_s_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _C_low, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltSlip_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "d_w" | "l_x" | "l_y" | "A_s" | "f_ub" | "mu" | "k_s" | "Omega_slip" | "gamma_R", number>>, k: Readonly<Record<"plate.bolted.boltPush" | "bolts.rowLost.group" | "bolts.rowLost.plate" | "plate.held.momentEdge" | "bolts.rowLost.edgeMoment" | "inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _d_w = v.d_w;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _A_s = v.A_s;
  const _f_ub = v.f_ub;
  const _mu = v.mu;
  const _k_s = v.k_s;
  const _Omega_slip = v.Omega_slip;
  const _gamma_R = v.gamma_R;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _r_b = finite(_d_w / 2 + _t, "r_b");
  const _a_p = finite(_a_b + 2 * _i_x, "a_p");
  const _b_p = finite(_b_b + 2 * _i_y, "b_p");
  const _R_bolt = finite(k["plate.bolted.boltPush"](_a_p, _b_p, _t, _E, _nu, _p_off, _n_x, _n_y, _i_x, _i_y, _r_b), "R_bolt");
  const _R_group = finite(k["bolts.rowLost.group"](_a_b, _b_b, _n_x, _n_y, _i_x, _i_y, _p_lost), "R_group");
  const _R_rest = finite(k["bolts.rowLost.plate"](_a_b, _b_b, _t, _E, _nu, _p_lost, _n_x, _n_y, _i_x, _i_y), "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _F_pC = finite(0.7 * _f_ub * _A_s, "F_pC");
  const _F_s_Rd = finite(_k_s * _mu * (1.13 * _F_pC - 1.5 * _F_t) / _Omega_slip, "F_s_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _C_low = finite(0.8 * 0.7 * _f_ub * _A_s - 1.5 * _F_t, "C_low");
  const _R_low = finite(_C_low > finite(0 * _C_low, "0 * C_low") ? 0.63 * _mu * _C_low / _gamma_R : _F_s_Rd, "R_low");
  const _R_high = finite(_mu * (0.8 * _f_ub * _A_s - 0.5 * _F_t) / _gamma_R, "R_high");
  const _u = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? _F_v / _F_s_Rd : 0, "u");
  const _u_low = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.max(finite(_F_least / _F_s_Rd, "F_least / F_s_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.min(finite(_F_most / _F_s_Rd, "F_most / F_s_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _p_off, _p_lost, _r_b, _a_p, _b_p, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _L_n, _N_pull, _F_v, _F_pC, _F_s_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _C_low, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltSlipBySolution_partialFactors(v: Readonly<Record<"A_s" | "f_ub" | "mu" | "k_s" | "gamma_M3" | "gamma_R" | "F_t", number>>): number[] {
  const _A_s = v.A_s;
  const _f_ub = v.f_ub;
  const _mu = v.mu;
  const _k_s = v.k_s;
  const _gamma_M3 = v.gamma_M3;
  const _gamma_R = v.gamma_R;
  const _F_t = v.F_t;
  const _F_pC = finite(0.7 * _f_ub * _A_s, "F_pC");
  const _F_s_Rd = finite(_k_s * _mu * (_F_pC - 0.8 * _F_t) / _gamma_M3, "F_s_Rd");
  const _C_low = finite(0.8 * 0.7 * _f_ub * _A_s - 1.5 * _F_t, "C_low");
  const _R_low = finite(_C_low > finite(0 * _C_low, "0 * C_low") ? 0.63 * _mu * _C_low / _gamma_R : _F_s_Rd, "R_low");
  const _R_high = finite(_mu * (0.8 * _f_ub * _A_s - 0.5 * _F_t) / _gamma_R, "R_high");
  return [_F_pC, _F_s_Rd, _C_low, _R_low, _R_high];
}

export function boltSlipBySolution_allowableStress(v: Readonly<Record<"A_s" | "f_ub" | "mu" | "k_s" | "Omega_slip" | "gamma_R" | "F_t", number>>): number[] {
  const _A_s = v.A_s;
  const _f_ub = v.f_ub;
  const _mu = v.mu;
  const _k_s = v.k_s;
  const _Omega_slip = v.Omega_slip;
  const _gamma_R = v.gamma_R;
  const _F_t = v.F_t;
  const _F_pC = finite(0.7 * _f_ub * _A_s, "F_pC");
  const _F_s_Rd = finite(_k_s * _mu * (1.13 * _F_pC - 1.5 * _F_t) / _Omega_slip, "F_s_Rd");
  const _C_low = finite(0.8 * 0.7 * _f_ub * _A_s - 1.5 * _F_t, "C_low");
  const _R_low = finite(_C_low > finite(0 * _C_low, "0 * C_low") ? 0.63 * _mu * _C_low / _gamma_R : _F_s_Rd, "R_low");
  const _R_high = finite(_mu * (0.8 * _f_ub * _A_s - 0.5 * _F_t) / _gamma_R, "R_high");
  return [_F_pC, _F_s_Rd, _C_low, _R_low, _R_high];
}

export function boltSlipByPlaces_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "l_x" | "l_y" | "A_s" | "f_ub" | "mu" | "k_s" | "gamma_M3" | "gamma_R" | "s_x" | "s_y" | "A_1" | "A_g" | "A_r", number>>, k: Readonly<Record<"plate.held.momentEdge" | "bolts.rowLost.edgeMoment" | "inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _A_s = v.A_s;
  const _f_ub = v.f_ub;
  const _mu = v.mu;
  const _k_s = v.k_s;
  const _gamma_M3 = v.gamma_M3;
  const _gamma_R = v.gamma_R;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _A_1 = v.A_1;
  const _A_g = v.A_g;
  const _A_r = v.A_r;
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _R_bolt = finite(_A_1 * _p_off, "R_bolt");
  const _R_group = finite(_A_g * _p_lost, "R_group");
  const _R_rest = finite(_A_r * _p_lost, "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _F_pC = finite(0.7 * _f_ub * _A_s, "F_pC");
  const _F_s_Rd = finite(_k_s * _mu * (_F_pC - 0.8 * _F_t) / _gamma_M3, "F_s_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _C_low = finite(0.8 * 0.7 * _f_ub * _A_s - 1.5 * _F_t, "C_low");
  const _R_low = finite(_C_low > finite(0 * _C_low, "0 * C_low") ? 0.63 * _mu * _C_low / _gamma_R : _F_s_Rd, "R_low");
  const _R_high = finite(_mu * (0.8 * _f_ub * _A_s - 0.5 * _F_t) / _gamma_R, "R_high");
  const _u = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? _F_v / _F_s_Rd : 0, "u");
  const _u_low = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.max(finite(_F_least / _F_s_Rd, "F_least / F_s_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.min(finite(_F_most / _F_s_Rd, "F_most / F_s_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_p_off, _p_lost, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _L_n, _N_pull, _F_v, _F_pC, _F_s_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _C_low, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltSlipByPlaces_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "l_x" | "l_y" | "A_s" | "f_ub" | "mu" | "k_s" | "Omega_slip" | "gamma_R" | "s_x" | "s_y" | "A_1" | "A_g" | "A_r", number>>, k: Readonly<Record<"plate.held.momentEdge" | "bolts.rowLost.edgeMoment" | "inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _A_s = v.A_s;
  const _f_ub = v.f_ub;
  const _mu = v.mu;
  const _k_s = v.k_s;
  const _Omega_slip = v.Omega_slip;
  const _gamma_R = v.gamma_R;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _A_1 = v.A_1;
  const _A_g = v.A_g;
  const _A_r = v.A_r;
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _R_bolt = finite(_A_1 * _p_off, "R_bolt");
  const _R_group = finite(_A_g * _p_lost, "R_group");
  const _R_rest = finite(_A_r * _p_lost, "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_v");
  const _F_pC = finite(0.7 * _f_ub * _A_s, "F_pC");
  const _F_s_Rd = finite(_k_s * _mu * (1.13 * _F_pC - 1.5 * _F_t) / _Omega_slip, "F_s_Rd");
  const _N_bent = finite(17 / 280 * Math.pow(_p, 2) * Math.pow(_L_n, 6) * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 5), "E * t ^ 5"), "N_bent");
  const _N_cable = finite(Math.cbrt(_E * _t * Math.pow(finite(_p * _L_n, "p * L_n"), 2) / 18), "N_cable");
  const _N_high = finite(Math.min(_N_bent, _N_cable), "N_high");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 3) / finite(12 * (1 - Math.pow(_nu, 2)) * Math.pow(_L_n, 2), "12 * (1 - nu ^ 2) * L_n ^ 2"), "N_E");
  const _N_low = finite(_N_bent / finite(Math.pow(finite(1 + _N_high / _N_E, "1 + N_high / N_E"), 2), "(1 + N_high / N_E) ^ 2"), "N_low");
  const _F_most = finite(_N_high * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_most");
  const _F_least = finite(_N_low * Math.max(finite(_h_y * _s_x, "h_y * s_x"), finite(_h_x * _s_y, "h_x * s_y")), "F_least");
  const _C_low = finite(0.8 * 0.7 * _f_ub * _A_s - 1.5 * _F_t, "C_low");
  const _R_low = finite(_C_low > finite(0 * _C_low, "0 * C_low") ? 0.63 * _mu * _C_low / _gamma_R : _F_s_Rd, "R_low");
  const _R_high = finite(_mu * (0.8 * _f_ub * _A_s - 0.5 * _F_t) / _gamma_R, "R_high");
  const _u = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? _F_v / _F_s_Rd : 0, "u");
  const _u_low = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.max(finite(_F_least / _F_s_Rd, "F_least / F_s_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_s_Rd > finite(0 * _F_s_Rd, "0 * F_s_Rd") ? Math.min(finite(_F_most / _F_s_Rd, "F_most / F_s_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_p_off, _p_lost, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _L_n, _N_pull, _F_v, _F_pC, _F_s_Rd, _N_bent, _N_cable, _N_high, _N_E, _N_low, _F_most, _F_least, _C_low, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltSeparation_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "d_w" | "l_x" | "l_y" | "d" | "A_s" | "t_w" | "k_low" | "k_high" | "c_c" | "T_t" | "E_w" | "E_b" | "f_Z" | "g_b" | "gamma_M3" | "gamma_R", number>>, k: Readonly<Record<"plate.bolted.boltPush" | "bolts.rowLost.group" | "bolts.rowLost.plate" | "plate.held.momentEdge" | "bolts.rowLost.edgeMoment" | "bolts.clampedStiffness", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _d_w = v.d_w;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _d = v.d;
  const _A_s = v.A_s;
  const _t_w = v.t_w;
  const _k_low = v.k_low;
  const _k_high = v.k_high;
  const _c_c = v.c_c;
  const _T_t = v.T_t;
  const _E_w = v.E_w;
  const _E_b = v.E_b;
  const _f_Z = v.f_Z;
  const _g_b = v.g_b;
  const _gamma_M3 = v.gamma_M3;
  const _gamma_R = v.gamma_R;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _r_b = finite(_d_w / 2 + _t, "r_b");
  const _a_p = finite(_a_b + 2 * _i_x, "a_p");
  const _b_p = finite(_b_b + 2 * _i_y, "b_p");
  const _R_bolt = finite(k["plate.bolted.boltPush"](_a_p, _b_p, _t, _E, _nu, _p_off, _n_x, _n_y, _i_x, _i_y, _r_b), "R_bolt");
  const _R_group = finite(k["bolts.rowLost.group"](_a_b, _b_b, _n_x, _n_y, _i_x, _i_y, _p_lost), "R_group");
  const _R_rest = finite(k["bolts.rowLost.plate"](_a_b, _b_b, _t, _E, _nu, _p_lost, _n_x, _n_y, _i_x, _i_y), "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _F_lo = finite((1 - _c_c) * _T_t / finite(_k_high * _d, "k_high * d"), "F_lo");
  const _k_m = finite(k["bolts.clampedStiffness"](_t, _E, _t_w, _E_w, _d_w, _d), "k_m");
  const _k_b = finite(_E_b * _A_s / _g_b, "k_b");
  const _C = finite(_k_b / finite(_k_b + _k_m, "k_b + k_m"), "C");
  const _F_Z = finite(_f_Z * _C * _k_m, "F_Z");
  const _F_o = finite((_F_lo - _F_Z) / finite((1 - _C) * _gamma_M3, "(1 - C) * gamma_M3"), "F_o");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / finite(2 * _n_x + 2 * _n_y - 4, "2 * n_x + 2 * n_y - 4"), "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _R_low = finite(0.5 * _F_lo / _gamma_R, "R_low");
  const _R_high = finite(2 * _T_t / finite(_k_low * _d * _gamma_R, "k_low * d * gamma_R"), "R_high");
  const _u = finite(_F_o > finite(0 * _F_o, "0 * F_o") ? _F_t / _F_o : 0, "u");
  const _u_low = finite(_F_o > finite(0 * _F_o, "0 * F_o") ? Math.max(finite(_F_low / _F_o, "F_low / F_o"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_F_o > finite(0 * _F_o, "0 * F_o") ? Math.min(finite(_F_high / _F_o, "F_high / F_o"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _p_off, _p_lost, _r_b, _a_p, _b_p, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _F_lo, _k_m, _k_b, _C, _F_Z, _F_o, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltSeparation_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "d_w" | "l_x" | "l_y" | "d" | "A_s" | "t_w" | "k_low" | "k_high" | "c_c" | "T_t" | "E_w" | "E_b" | "f_Z" | "g_b" | "Omega_slip" | "gamma_R", number>>, k: Readonly<Record<"plate.bolted.boltPush" | "bolts.rowLost.group" | "bolts.rowLost.plate" | "plate.held.momentEdge" | "bolts.rowLost.edgeMoment" | "bolts.clampedStiffness", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _d_w = v.d_w;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _d = v.d;
  const _A_s = v.A_s;
  const _t_w = v.t_w;
  const _k_low = v.k_low;
  const _k_high = v.k_high;
  const _c_c = v.c_c;
  const _T_t = v.T_t;
  const _E_w = v.E_w;
  const _E_b = v.E_b;
  const _f_Z = v.f_Z;
  const _g_b = v.g_b;
  const _Omega_slip = v.Omega_slip;
  const _gamma_R = v.gamma_R;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _r_b = finite(_d_w / 2 + _t, "r_b");
  const _a_p = finite(_a_b + 2 * _i_x, "a_p");
  const _b_p = finite(_b_b + 2 * _i_y, "b_p");
  const _R_bolt = finite(k["plate.bolted.boltPush"](_a_p, _b_p, _t, _E, _nu, _p_off, _n_x, _n_y, _i_x, _i_y, _r_b), "R_bolt");
  const _R_group = finite(k["bolts.rowLost.group"](_a_b, _b_b, _n_x, _n_y, _i_x, _i_y, _p_lost), "R_group");
  const _R_rest = finite(k["bolts.rowLost.plate"](_a_b, _b_b, _t, _E, _nu, _p_lost, _n_x, _n_y, _i_x, _i_y), "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _F_lo = finite((1 - _c_c) * _T_t / finite(_k_high * _d, "k_high * d"), "F_lo");
  const _k_m = finite(k["bolts.clampedStiffness"](_t, _E, _t_w, _E_w, _d_w, _d), "k_m");
  const _k_b = finite(_E_b * _A_s / _g_b, "k_b");
  const _C = finite(_k_b / finite(_k_b + _k_m, "k_b + k_m"), "C");
  const _F_Z = finite(_f_Z * _C * _k_m, "F_Z");
  const _F_o = finite((_F_lo - _F_Z) / finite((1 - _C) * _Omega_slip, "(1 - C) * Omega_slip"), "F_o");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / finite(2 * _n_x + 2 * _n_y - 4, "2 * n_x + 2 * n_y - 4"), "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _R_low = finite(0.5 * _F_lo / _gamma_R, "R_low");
  const _R_high = finite(2 * _T_t / finite(_k_low * _d * _gamma_R, "k_low * d * gamma_R"), "R_high");
  const _u = finite(_F_o > finite(0 * _F_o, "0 * F_o") ? _F_t / _F_o : 0, "u");
  const _u_low = finite(_F_o > finite(0 * _F_o, "0 * F_o") ? Math.max(finite(_F_low / _F_o, "F_low / F_o"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_F_o > finite(0 * _F_o, "0 * F_o") ? Math.min(finite(_F_high / _F_o, "F_high / F_o"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _p_off, _p_lost, _r_b, _a_p, _b_p, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _F_lo, _k_m, _k_b, _C, _F_Z, _F_o, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltSeparationBySolution_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "pulled" | "lost" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "d_w" | "l_x" | "l_y" | "d" | "A_s" | "t_w" | "k_low" | "k_high" | "c_c" | "T_t" | "E_w" | "E_b" | "f_Z" | "g_b" | "gamma_M3" | "gamma_R" | "F_t", number>>, k: Readonly<Record<"bolts.clampedStiffness", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _d_w = v.d_w;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _d = v.d;
  const _A_s = v.A_s;
  const _t_w = v.t_w;
  const _k_low = v.k_low;
  const _k_high = v.k_high;
  const _c_c = v.c_c;
  const _T_t = v.T_t;
  const _E_w = v.E_w;
  const _E_b = v.E_b;
  const _f_Z = v.f_Z;
  const _g_b = v.g_b;
  const _gamma_M3 = v.gamma_M3;
  const _gamma_R = v.gamma_R;
  const _F_t = v.F_t;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _p_off = finite(_pulled * _p, "p_off");
  const _a_p = finite(_a_b + 2 * _i_x, "a_p");
  const _b_p = finite(_b_b + 2 * _i_y, "b_p");
  const _F_lo = finite((1 - _c_c) * _T_t / finite(_k_high * _d, "k_high * d"), "F_lo");
  const _k_m = finite(k["bolts.clampedStiffness"](_t, _E, _t_w, _E_w, _d_w, _d), "k_m");
  const _k_b = finite(_E_b * _A_s / _g_b, "k_b");
  const _C = finite(_k_b / finite(_k_b + _k_m, "k_b + k_m"), "C");
  const _F_Z = finite(_f_Z * _C * _k_m, "F_Z");
  const _F_o = finite((_F_lo - _F_Z) / finite((1 - _C) * _gamma_M3, "(1 - C) * gamma_M3"), "F_o");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / finite(2 * _n_x + 2 * _n_y - 4, "2 * n_x + 2 * n_y - 4"), "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _R_low = finite(0.5 * _F_lo / _gamma_R, "R_low");
  const _R_high = finite(2 * _T_t / finite(_k_low * _d * _gamma_R, "k_low * d * gamma_R"), "R_high");
  const _u = finite(_F_o > finite(0 * _F_o, "0 * F_o") ? _F_t / _F_o : 0, "u");
  const _u_low = finite(_F_o > finite(0 * _F_o, "0 * F_o") ? Math.max(finite(_F_low / _F_o, "F_low / F_o"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_F_o > finite(0 * _F_o, "0 * F_o") ? Math.min(finite(_F_high / _F_o, "F_high / F_o"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _p_off, _a_p, _b_p, _F_lo, _k_m, _k_b, _C, _F_Z, _F_o, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltSeparationBySolution_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "pulled" | "lost" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "d_w" | "l_x" | "l_y" | "d" | "A_s" | "t_w" | "k_low" | "k_high" | "c_c" | "T_t" | "E_w" | "E_b" | "f_Z" | "g_b" | "Omega_slip" | "gamma_R" | "F_t", number>>, k: Readonly<Record<"bolts.clampedStiffness", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _d_w = v.d_w;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _d = v.d;
  const _A_s = v.A_s;
  const _t_w = v.t_w;
  const _k_low = v.k_low;
  const _k_high = v.k_high;
  const _c_c = v.c_c;
  const _T_t = v.T_t;
  const _E_w = v.E_w;
  const _E_b = v.E_b;
  const _f_Z = v.f_Z;
  const _g_b = v.g_b;
  const _Omega_slip = v.Omega_slip;
  const _gamma_R = v.gamma_R;
  const _F_t = v.F_t;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _p_off = finite(_pulled * _p, "p_off");
  const _a_p = finite(_a_b + 2 * _i_x, "a_p");
  const _b_p = finite(_b_b + 2 * _i_y, "b_p");
  const _F_lo = finite((1 - _c_c) * _T_t / finite(_k_high * _d, "k_high * d"), "F_lo");
  const _k_m = finite(k["bolts.clampedStiffness"](_t, _E, _t_w, _E_w, _d_w, _d), "k_m");
  const _k_b = finite(_E_b * _A_s / _g_b, "k_b");
  const _C = finite(_k_b / finite(_k_b + _k_m, "k_b + k_m"), "C");
  const _F_Z = finite(_f_Z * _C * _k_m, "F_Z");
  const _F_o = finite((_F_lo - _F_Z) / finite((1 - _C) * _Omega_slip, "(1 - C) * Omega_slip"), "F_o");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / finite(2 * _n_x + 2 * _n_y - 4, "2 * n_x + 2 * n_y - 4"), "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _R_low = finite(0.5 * _F_lo / _gamma_R, "R_low");
  const _R_high = finite(2 * _T_t / finite(_k_low * _d * _gamma_R, "k_low * d * gamma_R"), "R_high");
  const _u = finite(_F_o > finite(0 * _F_o, "0 * F_o") ? _F_t / _F_o : 0, "u");
  const _u_low = finite(_F_o > finite(0 * _F_o, "0 * F_o") ? Math.max(finite(_F_low / _F_o, "F_low / F_o"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_F_o > finite(0 * _F_o, "0 * F_o") ? Math.min(finite(_F_high / _F_o, "F_high / F_o"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  return [_s_x, _s_y, _p_off, _a_p, _b_p, _F_lo, _k_m, _k_b, _C, _F_Z, _F_o, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltSeparationByPlaces_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "i_x" | "i_y" | "d_w" | "l_x" | "l_y" | "d" | "t_w" | "k_low" | "k_high" | "c_c" | "T_t" | "E_w" | "f_Z" | "gamma_M3" | "gamma_R" | "s_x" | "s_y" | "n_b" | "a_p" | "b_p" | "A_1" | "A_g" | "A_r" | "C", number>>, k: Readonly<Record<"plate.held.momentEdge" | "bolts.rowLost.edgeMoment" | "bolts.clampedStiffness", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _d_w = v.d_w;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _d = v.d;
  const _t_w = v.t_w;
  const _k_low = v.k_low;
  const _k_high = v.k_high;
  const _c_c = v.c_c;
  const _T_t = v.T_t;
  const _E_w = v.E_w;
  const _f_Z = v.f_Z;
  const _gamma_M3 = v.gamma_M3;
  const _gamma_R = v.gamma_R;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _n_b = v.n_b;
  const _a_p = v.a_p;
  const _b_p = v.b_p;
  const _A_1 = v.A_1;
  const _A_g = v.A_g;
  const _A_r = v.A_r;
  const _C = v.C;
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _R_bolt = finite(_A_1 * _p_off, "R_bolt");
  const _R_group = finite(_A_g * _p_lost, "R_group");
  const _R_rest = finite(_A_r * _p_lost, "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _F_lo = finite((1 - _c_c) * _T_t / finite(_k_high * _d, "k_high * d"), "F_lo");
  const _k_m = finite(k["bolts.clampedStiffness"](_t, _E, _t_w, _E_w, _d_w, _d), "k_m");
  const _F_Z = finite(_f_Z * _C * _k_m, "F_Z");
  const _F_o = finite((_F_lo - _F_Z) / finite((1 - _C) * _gamma_M3, "(1 - C) * gamma_M3"), "F_o");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / _n_b, "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _R_low = finite(0.5 * _F_lo / _gamma_R, "R_low");
  const _R_high = finite(2 * _T_t / finite(_k_low * _d * _gamma_R, "k_low * d * gamma_R"), "R_high");
  const _u = finite(_F_o > finite(0 * _F_o, "0 * F_o") ? _F_t / _F_o : 0, "u");
  const _u_low = finite(_F_o > finite(0 * _F_o, "0 * F_o") ? Math.max(finite(_F_low / _F_o, "F_low / F_o"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_F_o > finite(0 * _F_o, "0 * F_o") ? Math.min(finite(_F_high / _F_o, "F_high / F_o"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  return [_p_off, _p_lost, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _F_lo, _k_m, _F_Z, _F_o, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltSeparationByPlaces_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "i_x" | "i_y" | "d_w" | "l_x" | "l_y" | "d" | "t_w" | "k_low" | "k_high" | "c_c" | "T_t" | "E_w" | "f_Z" | "Omega_slip" | "gamma_R" | "s_x" | "s_y" | "n_b" | "a_p" | "b_p" | "A_1" | "A_g" | "A_r" | "C", number>>, k: Readonly<Record<"plate.held.momentEdge" | "bolts.rowLost.edgeMoment" | "bolts.clampedStiffness", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _d_w = v.d_w;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _d = v.d;
  const _t_w = v.t_w;
  const _k_low = v.k_low;
  const _k_high = v.k_high;
  const _c_c = v.c_c;
  const _T_t = v.T_t;
  const _E_w = v.E_w;
  const _f_Z = v.f_Z;
  const _Omega_slip = v.Omega_slip;
  const _gamma_R = v.gamma_R;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _n_b = v.n_b;
  const _a_p = v.a_p;
  const _b_p = v.b_p;
  const _A_1 = v.A_1;
  const _A_g = v.A_g;
  const _A_r = v.A_r;
  const _C = v.C;
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _R_bolt = finite(_A_1 * _p_off, "R_bolt");
  const _R_group = finite(_A_g * _p_lost, "R_group");
  const _R_rest = finite(_A_r * _p_lost, "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _F_lo = finite((1 - _c_c) * _T_t / finite(_k_high * _d, "k_high * d"), "F_lo");
  const _k_m = finite(k["bolts.clampedStiffness"](_t, _E, _t_w, _E_w, _d_w, _d), "k_m");
  const _F_Z = finite(_f_Z * _C * _k_m, "F_Z");
  const _F_o = finite((_F_lo - _F_Z) / finite((1 - _C) * _Omega_slip, "(1 - C) * Omega_slip"), "F_o");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / _n_b, "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _R_low = finite(0.5 * _F_lo / _gamma_R, "R_low");
  const _R_high = finite(2 * _T_t / finite(_k_low * _d * _gamma_R, "k_low * d * gamma_R"), "R_high");
  const _u = finite(_F_o > finite(0 * _F_o, "0 * F_o") ? _F_t / _F_o : 0, "u");
  const _u_low = finite(_F_o > finite(0 * _F_o, "0 * F_o") ? Math.max(finite(_F_low / _F_o, "F_low / F_o"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_F_o > finite(0 * _F_o, "0 * F_o") ? Math.min(finite(_F_high / _F_o, "F_high / F_o"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  return [_p_off, _p_lost, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _F_lo, _k_m, _F_Z, _F_o, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltSeparationBySolutionByPlaces_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "pulled" | "lost" | "h_x" | "h_y" | "i_x" | "i_y" | "d_w" | "l_x" | "l_y" | "d" | "t_w" | "k_low" | "k_high" | "c_c" | "T_t" | "E_w" | "f_Z" | "gamma_M3" | "gamma_R" | "F_t" | "s_x" | "s_y" | "n_b" | "a_p" | "b_p" | "C", number>>, k: Readonly<Record<"bolts.clampedStiffness", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _d_w = v.d_w;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _d = v.d;
  const _t_w = v.t_w;
  const _k_low = v.k_low;
  const _k_high = v.k_high;
  const _c_c = v.c_c;
  const _T_t = v.T_t;
  const _E_w = v.E_w;
  const _f_Z = v.f_Z;
  const _gamma_M3 = v.gamma_M3;
  const _gamma_R = v.gamma_R;
  const _F_t = v.F_t;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _n_b = v.n_b;
  const _a_p = v.a_p;
  const _b_p = v.b_p;
  const _C = v.C;
  const _p_off = finite(_pulled * _p, "p_off");
  const _F_lo = finite((1 - _c_c) * _T_t / finite(_k_high * _d, "k_high * d"), "F_lo");
  const _k_m = finite(k["bolts.clampedStiffness"](_t, _E, _t_w, _E_w, _d_w, _d), "k_m");
  const _F_Z = finite(_f_Z * _C * _k_m, "F_Z");
  const _F_o = finite((_F_lo - _F_Z) / finite((1 - _C) * _gamma_M3, "(1 - C) * gamma_M3"), "F_o");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / _n_b, "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _R_low = finite(0.5 * _F_lo / _gamma_R, "R_low");
  const _R_high = finite(2 * _T_t / finite(_k_low * _d * _gamma_R, "k_low * d * gamma_R"), "R_high");
  const _u = finite(_F_o > finite(0 * _F_o, "0 * F_o") ? _F_t / _F_o : 0, "u");
  const _u_low = finite(_F_o > finite(0 * _F_o, "0 * F_o") ? Math.max(finite(_F_low / _F_o, "F_low / F_o"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_F_o > finite(0 * _F_o, "0 * F_o") ? Math.min(finite(_F_high / _F_o, "F_high / F_o"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  return [_p_off, _F_lo, _k_m, _F_Z, _F_o, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltSeparationBySolutionByPlaces_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "pulled" | "lost" | "h_x" | "h_y" | "i_x" | "i_y" | "d_w" | "l_x" | "l_y" | "d" | "t_w" | "k_low" | "k_high" | "c_c" | "T_t" | "E_w" | "f_Z" | "Omega_slip" | "gamma_R" | "F_t" | "s_x" | "s_y" | "n_b" | "a_p" | "b_p" | "C", number>>, k: Readonly<Record<"bolts.clampedStiffness", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _d_w = v.d_w;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _d = v.d;
  const _t_w = v.t_w;
  const _k_low = v.k_low;
  const _k_high = v.k_high;
  const _c_c = v.c_c;
  const _T_t = v.T_t;
  const _E_w = v.E_w;
  const _f_Z = v.f_Z;
  const _Omega_slip = v.Omega_slip;
  const _gamma_R = v.gamma_R;
  const _F_t = v.F_t;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _n_b = v.n_b;
  const _a_p = v.a_p;
  const _b_p = v.b_p;
  const _C = v.C;
  const _p_off = finite(_pulled * _p, "p_off");
  const _F_lo = finite((1 - _c_c) * _T_t / finite(_k_high * _d, "k_high * d"), "F_lo");
  const _k_m = finite(k["bolts.clampedStiffness"](_t, _E, _t_w, _E_w, _d_w, _d), "k_m");
  const _F_Z = finite(_f_Z * _C * _k_m, "F_Z");
  const _F_o = finite((_F_lo - _F_Z) / finite((1 - _C) * _Omega_slip, "(1 - C) * Omega_slip"), "F_o");
  const _F_all = finite(_p_off * _a_p * _b_p, "F_all");
  const _F_low = finite(_F_all / _n_b, "F_low");
  const _F_strip = finite(_p_off * (Math.max(_s_x, _s_y) + 2 * Math.max(_i_x, _i_y)) * Math.min(_a_p, _b_p), "F_strip");
  const _L_m = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.min(_a, _b) : _h_x > 0 ? _a : _b, "L_m");
  const _M_high = finite((_lost > 0 ? 1 / 2 : 1 / 8) * _p * Math.pow(_L_m, 2), "M_high");
  const _F_high = finite((_lost > 0 ? _F_all : _F_strip) + _M_high * Math.max(_s_x, _s_y) / finite(Math.min(_l_x, _l_y), "min(l_x, l_y)"), "F_high");
  const _R_low = finite(0.5 * _F_lo / _gamma_R, "R_low");
  const _R_high = finite(2 * _T_t / finite(_k_low * _d * _gamma_R, "k_low * d * gamma_R"), "R_high");
  const _u = finite(_F_o > finite(0 * _F_o, "0 * F_o") ? _F_t / _F_o : 0, "u");
  const _u_low = finite(_F_o > finite(0 * _F_o, "0 * F_o") ? Math.max(finite(_F_low / _F_o, "F_low / F_o"), finite(_F_t / _R_high, "F_t / R_high")) : 0, "u_low");
  const _u_high = finite(_F_o > finite(0 * _F_o, "0 * F_o") ? Math.min(finite(_F_high / _F_o, "F_high / F_o"), finite(_F_t / _R_low, "F_t / R_low")) : 0, "u_high");
  return [_p_off, _F_lo, _k_m, _F_Z, _F_o, _F_all, _F_low, _F_strip, _L_m, _M_high, _F_high, _R_low, _R_high, _u, _u_low, _u_high];
}

export function boltSleeve_partialFactors(v: Readonly<Record<"d" | "f_yw" | "T_t" | "k_low" | "D_c" | "d_c" | "E_w" | "l_c" | "gamma_M1" | "gamma_R", number>>): number[] {
  const _d = v.d;
  const _f_yw = v.f_yw;
  const _T_t = v.T_t;
  const _k_low = v.k_low;
  const _D_c = v.D_c;
  const _d_c = v.d_c;
  const _E_w = v.E_w;
  const _l_c = v.l_c;
  const _gamma_M1 = v.gamma_M1;
  const _gamma_R = v.gamma_R;
  const _F_hi = finite(_T_t / finite(_k_low * _d, "k_low * d"), "F_hi");
  const _A_c = finite(Math.PI / 4 * (Math.pow(_D_c, 2) - Math.pow(_d_c, 2)), "A_c");
  const _i_c = finite(Math.sqrt(Math.pow(_D_c, 2) + Math.pow(_d_c, 2)) / 4, "i_c");
  const _lambda = finite(_l_c / finite(Math.PI * _i_c, "pi * i_c") * Math.sqrt(_f_yw / _E_w), "lambda");
  const _Phi = finite(0.5 * (1 + 0.49 * (_lambda - 0.2) + Math.pow(_lambda, 2)), "Phi");
  const _chi = finite(_lambda <= 0.2 ? 1 : 1 / finite(_Phi + Math.sqrt(Math.pow(_Phi, 2) - Math.pow(_lambda, 2)), "Phi + sqrt(Phi ^ 2 - lambda ^ 2)"), "chi");
  const _F_c_Rd = finite(_chi * _A_c * _f_yw / _gamma_M1, "F_c_Rd");
  const _N_y = finite(_A_c * _f_yw, "N_y");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E_w * _A_c * Math.pow(_i_c, 2) / finite(Math.pow(_l_c, 2), "l_c ^ 2"), "N_E");
  const _R_low = finite(0.9 * _N_y * _N_E / finite((_N_y + _N_E) * _gamma_R, "(N_y + N_E) * gamma_R"), "R_low");
  const _R_high = finite(Math.min(_N_y, _N_E) / _gamma_R, "R_high");
  return [_F_hi, _A_c, _i_c, _lambda, _Phi, _chi, _F_c_Rd, _N_y, _N_E, _R_low, _R_high];
}

export function boltSleeve_allowableStress(v: Readonly<Record<"d" | "f_yw" | "T_t" | "k_low" | "D_c" | "d_c" | "E_w" | "l_c" | "Omega_c" | "gamma_R", number>>): number[] {
  const _d = v.d;
  const _f_yw = v.f_yw;
  const _T_t = v.T_t;
  const _k_low = v.k_low;
  const _D_c = v.D_c;
  const _d_c = v.d_c;
  const _E_w = v.E_w;
  const _l_c = v.l_c;
  const _Omega_c = v.Omega_c;
  const _gamma_R = v.gamma_R;
  const _F_hi = finite(_T_t / finite(_k_low * _d, "k_low * d"), "F_hi");
  const _A_c = finite(Math.PI / 4 * (Math.pow(_D_c, 2) - Math.pow(_d_c, 2)), "A_c");
  const _i_c = finite(Math.sqrt(Math.pow(_D_c, 2) + Math.pow(_d_c, 2)) / 4, "i_c");
  const _lambda = finite(_l_c / finite(Math.PI * _i_c, "pi * i_c") * Math.sqrt(_f_yw / _E_w), "lambda");
  const _chi = finite(_lambda <= 1.5 ? Math.pow(0.658, finite(Math.pow(_lambda, 2), "lambda ^ 2")) : 0.877 / finite(Math.pow(_lambda, 2), "lambda ^ 2"), "chi");
  const _F_c_Rd = finite(_chi * _A_c * _f_yw / _Omega_c, "F_c_Rd");
  const _N_y = finite(_A_c * _f_yw, "N_y");
  const _N_E = finite(Math.pow(Math.PI, 2) * _E_w * _A_c * Math.pow(_i_c, 2) / finite(Math.pow(_l_c, 2), "l_c ^ 2"), "N_E");
  const _R_low = finite(0.9 * _N_y * _N_E / finite((_N_y + _N_E) * _gamma_R, "(N_y + N_E) * gamma_R"), "R_low");
  const _R_high = finite(Math.min(_N_y, _N_E) / _gamma_R, "R_high");
  return [_F_hi, _A_c, _i_c, _lambda, _chi, _F_c_Rd, _N_y, _N_E, _R_low, _R_high];
}

export function boltWasherPressure_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "d_w" | "l_x" | "l_y" | "d" | "d_0" | "T_t" | "k_low", number>>, k: Readonly<Record<"plate.bolted.boltPush" | "bolts.rowLost.group" | "bolts.rowLost.plate" | "plate.held.momentEdge" | "bolts.rowLost.edgeMoment", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _d_w = v.d_w;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _d = v.d;
  const _d_0 = v.d_0;
  const _T_t = v.T_t;
  const _k_low = v.k_low;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _r_b = finite(_d_w / 2 + _t, "r_b");
  const _a_p = finite(_a_b + 2 * _i_x, "a_p");
  const _b_p = finite(_b_b + 2 * _i_y, "b_p");
  const _R_bolt = finite(k["plate.bolted.boltPush"](_a_p, _b_p, _t, _E, _nu, _p_off, _n_x, _n_y, _i_x, _i_y, _r_b), "R_bolt");
  const _R_group = finite(k["bolts.rowLost.group"](_a_b, _b_b, _n_x, _n_y, _i_x, _i_y, _p_lost), "R_group");
  const _R_rest = finite(k["bolts.rowLost.plate"](_a_b, _b_b, _t, _E, _nu, _p_lost, _n_x, _n_y, _i_x, _i_y), "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _F_hi = finite(_T_t / finite(_k_low * _d, "k_low * d"), "F_hi");
  const _A_n = finite(Math.PI / 4 * (Math.pow(_d_w, 2) - Math.pow(_d_0, 2)), "A_n");
  const _p_w = finite((_F_hi + _F_t) / _A_n, "p_w");
  const _p_low = finite(_F_hi / finite(Math.PI / 4 * Math.pow(_d_w, 2), "pi / 4 * d_w ^ 2"), "p_low");
  const _p_high = finite((_F_hi + _F_t) / finite(Math.PI / 8 * (Math.pow(_d_w, 2) - Math.pow(_d_0, 2)), "pi / 8 * (d_w ^ 2 - d_0 ^ 2)"), "p_high");
  const _range0 = finite(_d_w > _d_0 ? 1 : 0, "range0");
  return [_s_x, _s_y, _p_off, _p_lost, _r_b, _a_p, _b_p, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _F_hi, _A_n, _p_w, _p_low, _p_high, _range0];
}

export function boltWasherPressure_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "a_b" | "b_b" | "n_x" | "n_y" | "i_x" | "i_y" | "d_w" | "l_x" | "l_y" | "d" | "d_0" | "T_t" | "k_low", number>>, k: Readonly<Record<"plate.bolted.boltPush" | "bolts.rowLost.group" | "bolts.rowLost.plate" | "plate.held.momentEdge" | "bolts.rowLost.edgeMoment", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _i_x = v.i_x;
  const _i_y = v.i_y;
  const _d_w = v.d_w;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _d = v.d;
  const _d_0 = v.d_0;
  const _T_t = v.T_t;
  const _k_low = v.k_low;
  const _s_x = finite(_a_b / finite(_n_x - 1, "n_x - 1"), "s_x");
  const _s_y = finite(_b_b / finite(_n_y - 1, "n_y - 1"), "s_y");
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _r_b = finite(_d_w / 2 + _t, "r_b");
  const _a_p = finite(_a_b + 2 * _i_x, "a_p");
  const _b_p = finite(_b_b + 2 * _i_y, "b_p");
  const _R_bolt = finite(k["plate.bolted.boltPush"](_a_p, _b_p, _t, _E, _nu, _p_off, _n_x, _n_y, _i_x, _i_y, _r_b), "R_bolt");
  const _R_group = finite(k["bolts.rowLost.group"](_a_b, _b_b, _n_x, _n_y, _i_x, _i_y, _p_lost), "R_group");
  const _R_rest = finite(k["bolts.rowLost.plate"](_a_b, _b_b, _t, _E, _nu, _p_lost, _n_x, _n_y, _i_x, _i_y), "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _F_hi = finite(_T_t / finite(_k_low * _d, "k_low * d"), "F_hi");
  const _A_n = finite(Math.PI / 4 * (Math.pow(_d_w, 2) - Math.pow(_d_0, 2)), "A_n");
  const _p_w = finite((_F_hi + _F_t) / _A_n, "p_w");
  const _p_low = finite(_F_hi / finite(Math.PI / 4 * Math.pow(_d_w, 2), "pi / 4 * d_w ^ 2"), "p_low");
  const _p_high = finite((_F_hi + _F_t) / finite(Math.PI / 8 * (Math.pow(_d_w, 2) - Math.pow(_d_0, 2)), "pi / 8 * (d_w ^ 2 - d_0 ^ 2)"), "p_high");
  const _range0 = finite(_d_w > _d_0 ? 1 : 0, "range0");
  return [_s_x, _s_y, _p_off, _p_lost, _r_b, _a_p, _b_p, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _F_hi, _A_n, _p_w, _p_low, _p_high, _range0];
}

export function boltWasherPressureBySolution_partialFactors(v: Readonly<Record<"d_w" | "d" | "d_0" | "T_t" | "k_low" | "F_t", number>>): number[] {
  const _d_w = v.d_w;
  const _d = v.d;
  const _d_0 = v.d_0;
  const _T_t = v.T_t;
  const _k_low = v.k_low;
  const _F_t = v.F_t;
  const _F_hi = finite(_T_t / finite(_k_low * _d, "k_low * d"), "F_hi");
  const _A_n = finite(Math.PI / 4 * (Math.pow(_d_w, 2) - Math.pow(_d_0, 2)), "A_n");
  const _p_w = finite((_F_hi + _F_t) / _A_n, "p_w");
  const _p_low = finite(_F_hi / finite(Math.PI / 4 * Math.pow(_d_w, 2), "pi / 4 * d_w ^ 2"), "p_low");
  const _p_high = finite((_F_hi + _F_t) / finite(Math.PI / 8 * (Math.pow(_d_w, 2) - Math.pow(_d_0, 2)), "pi / 8 * (d_w ^ 2 - d_0 ^ 2)"), "p_high");
  const _range0 = finite(_d_w > _d_0 ? 1 : 0, "range0");
  return [_F_hi, _A_n, _p_w, _p_low, _p_high, _range0];
}

export function boltWasherPressureBySolution_allowableStress(v: Readonly<Record<"d_w" | "d" | "d_0" | "T_t" | "k_low" | "F_t", number>>): number[] {
  const _d_w = v.d_w;
  const _d = v.d;
  const _d_0 = v.d_0;
  const _T_t = v.T_t;
  const _k_low = v.k_low;
  const _F_t = v.F_t;
  const _F_hi = finite(_T_t / finite(_k_low * _d, "k_low * d"), "F_hi");
  const _A_n = finite(Math.PI / 4 * (Math.pow(_d_w, 2) - Math.pow(_d_0, 2)), "A_n");
  const _p_w = finite((_F_hi + _F_t) / _A_n, "p_w");
  const _p_low = finite(_F_hi / finite(Math.PI / 4 * Math.pow(_d_w, 2), "pi / 4 * d_w ^ 2"), "p_low");
  const _p_high = finite((_F_hi + _F_t) / finite(Math.PI / 8 * (Math.pow(_d_w, 2) - Math.pow(_d_0, 2)), "pi / 8 * (d_w ^ 2 - d_0 ^ 2)"), "p_high");
  const _range0 = finite(_d_w > _d_0 ? 1 : 0, "range0");
  return [_F_hi, _A_n, _p_w, _p_low, _p_high, _range0];
}

export function boltWasherPressureByPlaces_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "d_w" | "l_x" | "l_y" | "d" | "d_0" | "T_t" | "k_low" | "s_x" | "s_y" | "A_1" | "A_g" | "A_r", number>>, k: Readonly<Record<"plate.held.momentEdge" | "bolts.rowLost.edgeMoment", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _d_w = v.d_w;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _d = v.d;
  const _d_0 = v.d_0;
  const _T_t = v.T_t;
  const _k_low = v.k_low;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _A_1 = v.A_1;
  const _A_g = v.A_g;
  const _A_r = v.A_r;
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _R_bolt = finite(_A_1 * _p_off, "R_bolt");
  const _R_group = finite(_A_g * _p_lost, "R_group");
  const _R_rest = finite(_A_r * _p_lost, "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _F_hi = finite(_T_t / finite(_k_low * _d, "k_low * d"), "F_hi");
  const _A_n = finite(Math.PI / 4 * (Math.pow(_d_w, 2) - Math.pow(_d_0, 2)), "A_n");
  const _p_w = finite((_F_hi + _F_t) / _A_n, "p_w");
  const _p_low = finite(_F_hi / finite(Math.PI / 4 * Math.pow(_d_w, 2), "pi / 4 * d_w ^ 2"), "p_low");
  const _p_high = finite((_F_hi + _F_t) / finite(Math.PI / 8 * (Math.pow(_d_w, 2) - Math.pow(_d_0, 2)), "pi / 8 * (d_w ^ 2 - d_0 ^ 2)"), "p_high");
  const _range0 = finite(_d_w > _d_0 ? 1 : 0, "range0");
  return [_p_off, _p_lost, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _F_hi, _A_n, _p_w, _p_low, _p_high, _range0];
}

export function boltWasherPressureByPlaces_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "lost" | "h_x" | "h_y" | "d_w" | "l_x" | "l_y" | "d" | "d_0" | "T_t" | "k_low" | "s_x" | "s_y" | "A_1" | "A_g" | "A_r", number>>, k: Readonly<Record<"plate.held.momentEdge" | "bolts.rowLost.edgeMoment", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _lost = v.lost;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _d_w = v.d_w;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _d = v.d;
  const _d_0 = v.d_0;
  const _T_t = v.T_t;
  const _k_low = v.k_low;
  const _s_x = v.s_x;
  const _s_y = v.s_y;
  const _A_1 = v.A_1;
  const _A_g = v.A_g;
  const _A_r = v.A_r;
  const _p_off = finite(_pulled * _p, "p_off");
  const _p_lost = finite(_lost * _p_off, "p_lost");
  const _R_bolt = finite(_A_1 * _p_off, "R_bolt");
  const _R_group = finite(_A_g * _p_lost, "R_group");
  const _R_rest = finite(_A_r * _p_lost, "R_rest");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _M_lost = finite(k["bolts.rowLost.edgeMoment"](_a, _b, _t, _E, _nu, _p_lost), "M_lost");
  const _M_edge = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_M_held, _M_lost) : _p * Math.pow(finite(_h_x > 0 ? _a : _b, "h_x > 0 ? a : b"), 2) / 12, "M_edge");
  const _Q = finite(_M_edge * Math.max(finite(_h_x * _s_y / _l_x, "h_x * s_y / l_x"), finite(_h_y * _s_x / _l_y, "h_y * s_x / l_y")), "Q");
  const _F_t = finite(Math.max(_R_bolt, _R_group, _R_rest) + _Q, "F_t");
  const _F_hi = finite(_T_t / finite(_k_low * _d, "k_low * d"), "F_hi");
  const _A_n = finite(Math.PI / 4 * (Math.pow(_d_w, 2) - Math.pow(_d_0, 2)), "A_n");
  const _p_w = finite((_F_hi + _F_t) / _A_n, "p_w");
  const _p_low = finite(_F_hi / finite(Math.PI / 4 * Math.pow(_d_w, 2), "pi / 4 * d_w ^ 2"), "p_low");
  const _p_high = finite((_F_hi + _F_t) / finite(Math.PI / 8 * (Math.pow(_d_w, 2) - Math.pow(_d_0, 2)), "pi / 8 * (d_w ^ 2 - d_0 ^ 2)"), "p_high");
  const _range0 = finite(_d_w > _d_0 ? 1 : 0, "range0");
  return [_p_off, _p_lost, _R_bolt, _R_group, _R_rest, _M_held, _M_lost, _M_edge, _Q, _F_t, _F_hi, _A_n, _p_w, _p_low, _p_high, _range0];
}

export function boltEdgeDistance_partialFactors(v: Readonly<Record<"d_0" | "k_e", number>>): number[] {
  const _d_0 = v.d_0;
  const _k_e = v.k_e;
  const _e_req = finite(_k_e * _d_0, "e_req");
  const _e_low = finite(_d_0 / 2, "e_low");
  const _e_high = finite(2 * _d_0, "e_high");
  return [_e_req, _e_low, _e_high];
}

export function boltEdgeDistance_allowableStress(v: Readonly<Record<"d_0" | "e_min" | "C_2", number>>): number[] {
  const _d_0 = v.d_0;
  const _e_min = v.e_min;
  const _C_2 = v.C_2;
  const _e_req = finite(_e_min + _C_2, "e_req");
  const _e_low = finite(_d_0 / 2, "e_low");
  const _e_high = finite(2 * _d_0, "e_high");
  return [_e_req, _e_low, _e_high];
}

export function boltEdgeDistanceLargest_partialFactors(v: Readonly<Record<"t" | "t_w" | "c_e" | "c_low" | "c_high", number>>): number[] {
  const _t = v.t;
  const _t_w = v.t_w;
  const _c_e = v.c_e;
  const _c_low = v.c_low;
  const _c_high = v.c_high;
  const _e_max = finite(4 * Math.min(_t, _t_w) + _c_e, "e_max");
  const _e_low = finite(Math.min(finite(4 * Math.min(_t, _t_w), "4 * min(t, t_w)"), _c_low), "e_low");
  const _e_high = finite(12 * Math.min(_t, _t_w) + _c_high, "e_high");
  return [_e_max, _e_low, _e_high];
}

export function boltEdgeDistanceLargest_allowableStress(v: Readonly<Record<"t" | "t_w" | "e_lim" | "c_low" | "c_high", number>>): number[] {
  const _t = v.t;
  const _t_w = v.t_w;
  const _e_lim = v.e_lim;
  const _c_low = v.c_low;
  const _c_high = v.c_high;
  const _e_max = finite(Math.min(finite(12 * Math.min(_t, _t_w), "12 * min(t, t_w)"), _e_lim), "e_max");
  const _e_low = finite(Math.min(finite(4 * Math.min(_t, _t_w), "4 * min(t, t_w)"), _c_low), "e_low");
  const _e_high = finite(12 * Math.min(_t, _t_w) + _c_high, "e_high");
  return [_e_max, _e_low, _e_high];
}

export function boltPitch_partialFactors(v: Readonly<Record<"d_0" | "d_c", number>>): number[] {
  const _d_0 = v.d_0;
  const _d_c = v.d_c;
  const _p_req = finite(2.2 * _d_0, "p_req");
  const _p_low = finite(_d_c, "p_low");
  const _p_high = finite(3 * _d_0, "p_high");
  return [_p_req, _p_low, _p_high];
}

export function boltPitch_allowableStress(v: Readonly<Record<"d" | "d_0" | "d_c", number>>): number[] {
  const _d = v.d;
  const _d_0 = v.d_0;
  const _d_c = v.d_c;
  const _p_req = finite(8 / 3 * _d, "p_req");
  const _p_low = finite(_d_c, "p_low");
  const _p_high = finite(3 * _d_0, "p_high");
  return [_p_req, _p_low, _p_high];
}

export function boltPitchLargest_partialFactors(v: Readonly<Record<"t" | "t_w" | "p_lim" | "p_buckle" | "p_most", number>>): number[] {
  const _t = v.t;
  const _t_w = v.t_w;
  const _p_lim = v.p_lim;
  const _p_buckle = v.p_buckle;
  const _p_most = v.p_most;
  const _p_max = finite(Math.min(finite(14 * Math.min(_t, _t_w), "14 * min(t, t_w)"), _p_lim), "p_max");
  const _p_low = finite(Math.min(finite(9 * Math.min(_t, _t_w), "9 * min(t, t_w)"), _p_buckle), "p_low");
  const _p_high = finite(_p_most, "p_high");
  return [_p_max, _p_low, _p_high];
}

export function boltPitchLargest_allowableStress(v: Readonly<Record<"t" | "t_w" | "p_us" | "p_buckle" | "p_most", number>>): number[] {
  const _t = v.t;
  const _t_w = v.t_w;
  const _p_us = v.p_us;
  const _p_buckle = v.p_buckle;
  const _p_most = v.p_most;
  const _p_max = finite(Math.min(finite(14 * Math.min(_t, _t_w), "14 * min(t, t_w)"), _p_us), "p_max");
  const _p_low = finite(Math.min(finite(9 * Math.min(_t, _t_w), "9 * min(t, t_w)"), _p_buckle), "p_low");
  const _p_high = finite(_p_most, "p_high");
  return [_p_max, _p_low, _p_high];
}

export function boltAccess_partialFactors(v: Readonly<Record<"s_h" | "c_5" | "c_1" | "e_h", number>>): number[] {
  const _s_h = v.s_h;
  const _c_5 = v.c_5;
  const _c_1 = v.c_1;
  const _e_h = v.e_h;
  const _D_s = finite(1.3 * _s_h + _c_5, "D_s");
  const _r_s = finite(_D_s / 2 + _c_1, "r_s");
  const _r_low = finite(_e_h / 2, "r_low");
  const _r_high = finite(_s_h + _c_1, "r_high");
  return [_D_s, _r_s, _r_low, _r_high];
}

export function boltAccess_allowableStress(v: Readonly<Record<"s_h" | "c_5" | "c_1" | "e_h", number>>): number[] {
  const _s_h = v.s_h;
  const _c_5 = v.c_5;
  const _c_1 = v.c_1;
  const _e_h = v.e_h;
  const _D_s = finite(1.3 * _s_h + _c_5, "D_s");
  const _r_s = finite(_D_s / 2 + _c_1, "r_s");
  const _r_low = finite(_e_h / 2, "r_low");
  const _r_high = finite(_s_h + _c_1, "r_high");
  return [_D_s, _r_s, _r_low, _r_high];
}

export function boltHydrogen_partialFactors(v: Readonly<Record<"H_max" | "f_ub" | "c_H", number>>): number[] {
  const _H_max = v.H_max;
  const _f_ub = v.f_ub;
  const _c_H = v.c_H;
  const _H_Ed = finite(_H_max, "H_Ed");
  const _H_least = finite(_f_ub / _c_H, "H_least");
  return [_H_Ed, _H_least];
}

export function boltHydrogen_allowableStress(v: Readonly<Record<"H_max" | "f_ub" | "c_H", number>>): number[] {
  const _H_max = v.H_max;
  const _f_ub = v.f_ub;
  const _c_H = v.c_H;
  const _H_Ed = finite(_H_max, "H_Ed");
  const _H_least = finite(_f_ub / _c_H, "H_least");
  return [_H_Ed, _H_least];
}

export function boltGroupInPlane_partialFactors(v: Readonly<Record<"a_b" | "b_b" | "n_x" | "n_y" | "A_f" | "t_0" | "rho" | "g" | "k_dyn" | "gamma_L" | "A_s" | "A_b" | "threads" | "f_ub" | "alpha_v" | "gamma_R" | "gamma_M2", number>>, k: Readonly<Record<"bolts.rowLost.inPlane", (...values: number[]) => number>>): number[] {
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _A_f = v.A_f;
  const _t_0 = v.t_0;
  const _rho = v.rho;
  const _g = v.g;
  const _k_dyn = v.k_dyn;
  const _gamma_L = v.gamma_L;
  const _A_s = v.A_s;
  const _A_b = v.A_b;
  const _threads = v.threads;
  const _f_ub = v.f_ub;
  const _alpha_v = v.alpha_v;
  const _gamma_R = v.gamma_R;
  const _gamma_M2 = v.gamma_M2;
  const _W = finite(_gamma_L * _k_dyn * _rho * _A_f * _t_0 * _g, "W");
  const _F_v = finite(k["bolts.rowLost.inPlane"](_a_b, _b_b, _n_x, _n_y, _W), "F_v");
  const _A_v = finite(_threads > 0 ? _A_s : _A_b, "A_v");
  const _F_v_Rd = finite(_alpha_v * _f_ub * _A_v / _gamma_M2, "F_v_Rd");
  const _F_mean = finite(_W / finite(2 * _n_x + 2 * _n_y - 4, "2 * n_x + 2 * n_y - 4"), "F_mean");
  const _F_one = finite(_W + _W * Math.max(_a_b, _b_b) / finite(Math.min(_a_b, _b_b), "min(a_b, b_b)"), "F_one");
  const _R_low = finite(0.5 * _f_ub * _A_s / _gamma_R, "R_low");
  const _A_2 = finite(_threads > 0 ? Math.pow(finite((Math.sqrt(_A_b) + 2 * Math.sqrt(_A_s)) / 3, "(sqrt(A_b) + 2 * sqrt(A_s)) / 3"), 2) : _A_b, "A_2");
  const _R_high = finite(0.62 * _f_ub * _A_2 / _gamma_R, "R_high");
  const _u = finite(_F_v_Rd > finite(0 * _F_v_Rd, "0 * F_v_Rd") ? _F_v / _F_v_Rd : 0, "u");
  const _u_low = finite(_F_v_Rd > finite(0 * _F_v_Rd, "0 * F_v_Rd") ? Math.max(finite(_F_mean / _F_v_Rd, "F_mean / F_v_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_v_Rd > finite(0 * _F_v_Rd, "0 * F_v_Rd") ? Math.min(finite(_F_one / _F_v_Rd, "F_one / F_v_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_W, _F_v, _A_v, _F_v_Rd, _F_mean, _F_one, _R_low, _A_2, _R_high, _u, _u_low, _u_high];
}

export function boltGroupInPlane_allowableStress(v: Readonly<Record<"a_b" | "b_b" | "n_x" | "n_y" | "A_f" | "t_0" | "rho" | "g" | "k_dyn" | "gamma_L" | "A_s" | "A_b" | "threads" | "f_ub" | "F_nv" | "gamma_R" | "Omega_J", number>>, k: Readonly<Record<"bolts.rowLost.inPlane", (...values: number[]) => number>>): number[] {
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _A_f = v.A_f;
  const _t_0 = v.t_0;
  const _rho = v.rho;
  const _g = v.g;
  const _k_dyn = v.k_dyn;
  const _gamma_L = v.gamma_L;
  const _A_s = v.A_s;
  const _A_b = v.A_b;
  const _threads = v.threads;
  const _f_ub = v.f_ub;
  const _F_nv = v.F_nv;
  const _gamma_R = v.gamma_R;
  const _Omega_J = v.Omega_J;
  const _W = finite(_gamma_L * _k_dyn * _rho * _A_f * _t_0 * _g, "W");
  const _F_v = finite(k["bolts.rowLost.inPlane"](_a_b, _b_b, _n_x, _n_y, _W), "F_v");
  const _F_v_Rd = finite(_F_nv * _A_b / _Omega_J, "F_v_Rd");
  const _F_mean = finite(_W / finite(2 * _n_x + 2 * _n_y - 4, "2 * n_x + 2 * n_y - 4"), "F_mean");
  const _F_one = finite(_W + _W * Math.max(_a_b, _b_b) / finite(Math.min(_a_b, _b_b), "min(a_b, b_b)"), "F_one");
  const _R_low = finite(0.5 * _f_ub * _A_s / _gamma_R, "R_low");
  const _A_2 = finite(_threads > 0 ? Math.pow(finite((Math.sqrt(_A_b) + 2 * Math.sqrt(_A_s)) / 3, "(sqrt(A_b) + 2 * sqrt(A_s)) / 3"), 2) : _A_b, "A_2");
  const _R_high = finite(0.62 * _f_ub * _A_2 / _gamma_R, "R_high");
  const _u = finite(_F_v_Rd > finite(0 * _F_v_Rd, "0 * F_v_Rd") ? _F_v / _F_v_Rd : 0, "u");
  const _u_low = finite(_F_v_Rd > finite(0 * _F_v_Rd, "0 * F_v_Rd") ? Math.max(finite(_F_mean / _F_v_Rd, "F_mean / F_v_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_v_Rd > finite(0 * _F_v_Rd, "0 * F_v_Rd") ? Math.min(finite(_F_one / _F_v_Rd, "F_one / F_v_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_W, _F_v, _F_v_Rd, _F_mean, _F_one, _R_low, _A_2, _R_high, _u, _u_low, _u_high];
}

export function boltGroupInPlaneByPlaces_partialFactors(v: Readonly<Record<"a_b" | "b_b" | "A_f" | "t_0" | "rho" | "g" | "k_dyn" | "gamma_L" | "A_s" | "A_b" | "threads" | "f_ub" | "alpha_v" | "gamma_R" | "gamma_M2" | "n_b" | "n_l" | "I_p" | "e_W" | "y_W" | "x_W", number>>): number[] {
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _A_f = v.A_f;
  const _t_0 = v.t_0;
  const _rho = v.rho;
  const _g = v.g;
  const _k_dyn = v.k_dyn;
  const _gamma_L = v.gamma_L;
  const _A_s = v.A_s;
  const _A_b = v.A_b;
  const _threads = v.threads;
  const _f_ub = v.f_ub;
  const _alpha_v = v.alpha_v;
  const _gamma_R = v.gamma_R;
  const _gamma_M2 = v.gamma_M2;
  const _n_b = v.n_b;
  const _n_l = v.n_l;
  const _I_p = v.I_p;
  const _e_W = v.e_W;
  const _y_W = v.y_W;
  const _x_W = v.x_W;
  const _W = finite(_gamma_L * _k_dyn * _rho * _A_f * _t_0 * _g, "W");
  const _F_v = finite(_W * Math.sqrt(Math.pow(finite(1 / _n_l + _e_W * _y_W / _I_p, "1 / n_l + e_W * y_W / I_p"), 2) + Math.pow(finite(_e_W * _x_W / _I_p, "e_W * x_W / I_p"), 2)), "F_v");
  const _A_v = finite(_threads > 0 ? _A_s : _A_b, "A_v");
  const _F_v_Rd = finite(_alpha_v * _f_ub * _A_v / _gamma_M2, "F_v_Rd");
  const _F_mean = finite(_W / _n_b, "F_mean");
  const _F_one = finite(_W + _W * Math.max(_a_b, _b_b) / finite(Math.min(_a_b, _b_b), "min(a_b, b_b)"), "F_one");
  const _R_low = finite(0.5 * _f_ub * _A_s / _gamma_R, "R_low");
  const _A_2 = finite(_threads > 0 ? Math.pow(finite((Math.sqrt(_A_b) + 2 * Math.sqrt(_A_s)) / 3, "(sqrt(A_b) + 2 * sqrt(A_s)) / 3"), 2) : _A_b, "A_2");
  const _R_high = finite(0.62 * _f_ub * _A_2 / _gamma_R, "R_high");
  const _u = finite(_F_v_Rd > finite(0 * _F_v_Rd, "0 * F_v_Rd") ? _F_v / _F_v_Rd : 0, "u");
  const _u_low = finite(_F_v_Rd > finite(0 * _F_v_Rd, "0 * F_v_Rd") ? Math.max(finite(_F_mean / _F_v_Rd, "F_mean / F_v_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_v_Rd > finite(0 * _F_v_Rd, "0 * F_v_Rd") ? Math.min(finite(_F_one / _F_v_Rd, "F_one / F_v_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_W, _F_v, _A_v, _F_v_Rd, _F_mean, _F_one, _R_low, _A_2, _R_high, _u, _u_low, _u_high];
}

export function boltGroupInPlaneByPlaces_allowableStress(v: Readonly<Record<"a_b" | "b_b" | "A_f" | "t_0" | "rho" | "g" | "k_dyn" | "gamma_L" | "A_s" | "A_b" | "threads" | "f_ub" | "F_nv" | "gamma_R" | "Omega_J" | "n_b" | "n_l" | "I_p" | "e_W" | "y_W" | "x_W", number>>): number[] {
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _A_f = v.A_f;
  const _t_0 = v.t_0;
  const _rho = v.rho;
  const _g = v.g;
  const _k_dyn = v.k_dyn;
  const _gamma_L = v.gamma_L;
  const _A_s = v.A_s;
  const _A_b = v.A_b;
  const _threads = v.threads;
  const _f_ub = v.f_ub;
  const _F_nv = v.F_nv;
  const _gamma_R = v.gamma_R;
  const _Omega_J = v.Omega_J;
  const _n_b = v.n_b;
  const _n_l = v.n_l;
  const _I_p = v.I_p;
  const _e_W = v.e_W;
  const _y_W = v.y_W;
  const _x_W = v.x_W;
  const _W = finite(_gamma_L * _k_dyn * _rho * _A_f * _t_0 * _g, "W");
  const _F_v = finite(_W * Math.sqrt(Math.pow(finite(1 / _n_l + _e_W * _y_W / _I_p, "1 / n_l + e_W * y_W / I_p"), 2) + Math.pow(finite(_e_W * _x_W / _I_p, "e_W * x_W / I_p"), 2)), "F_v");
  const _F_v_Rd = finite(_F_nv * _A_b / _Omega_J, "F_v_Rd");
  const _F_mean = finite(_W / _n_b, "F_mean");
  const _F_one = finite(_W + _W * Math.max(_a_b, _b_b) / finite(Math.min(_a_b, _b_b), "min(a_b, b_b)"), "F_one");
  const _R_low = finite(0.5 * _f_ub * _A_s / _gamma_R, "R_low");
  const _A_2 = finite(_threads > 0 ? Math.pow(finite((Math.sqrt(_A_b) + 2 * Math.sqrt(_A_s)) / 3, "(sqrt(A_b) + 2 * sqrt(A_s)) / 3"), 2) : _A_b, "A_2");
  const _R_high = finite(0.62 * _f_ub * _A_2 / _gamma_R, "R_high");
  const _u = finite(_F_v_Rd > finite(0 * _F_v_Rd, "0 * F_v_Rd") ? _F_v / _F_v_Rd : 0, "u");
  const _u_low = finite(_F_v_Rd > finite(0 * _F_v_Rd, "0 * F_v_Rd") ? Math.max(finite(_F_mean / _F_v_Rd, "F_mean / F_v_Rd"), finite(_F_v / _R_high, "F_v / R_high")) : 0, "u_low");
  const _u_high = finite(_F_v_Rd > finite(0 * _F_v_Rd, "0 * F_v_Rd") ? Math.min(finite(_F_one / _F_v_Rd, "F_one / F_v_Rd"), finite(_F_v / _R_low, "F_v / R_low")) : 0, "u_high");
  return [_W, _F_v, _F_v_Rd, _F_mean, _F_one, _R_low, _A_2, _R_high, _u, _u_low, _u_high];
}

export function boltGroupUltimate_partialFactors(v: Readonly<Record<"a_b" | "b_b" | "n_x" | "n_y" | "A_f" | "t_0" | "rho" | "g" | "k_dyn" | "gamma_L" | "A_s" | "A_b" | "threads" | "f_ub" | "alpha_v" | "gamma_M2", number>>, k: Readonly<Record<"bolts.rowLost.coefficient" | "bolts.rowLost.inPlane", (...values: number[]) => number>>): number[] {
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _A_f = v.A_f;
  const _t_0 = v.t_0;
  const _rho = v.rho;
  const _g = v.g;
  const _k_dyn = v.k_dyn;
  const _gamma_L = v.gamma_L;
  const _A_s = v.A_s;
  const _A_b = v.A_b;
  const _threads = v.threads;
  const _f_ub = v.f_ub;
  const _alpha_v = v.alpha_v;
  const _gamma_M2 = v.gamma_M2;
  const _W = finite(_gamma_L * _k_dyn * _rho * _A_f * _t_0 * _g, "W");
  const _A_v = finite(_threads > 0 ? _A_s : _A_b, "A_v");
  const _F_v_Rd = finite(_alpha_v * _f_ub * _A_v / _gamma_M2, "F_v_Rd");
  const _C = finite(k["bolts.rowLost.coefficient"](_a_b, _b_b, _n_x, _n_y), "C");
  const _P_Rd = finite(_C * _F_v_Rd, "P_Rd");
  const _F_1 = finite(k["bolts.rowLost.inPlane"](_a_b, _b_b, _n_x, _n_y, _W), "F_1");
  const _P_low = finite(0.95 * _F_v_Rd * _W / _F_1, "P_low");
  const _P_high = finite((2 * _n_x + 2 * _n_y - 4 - Math.min(_n_x, _n_y)) * _F_v_Rd, "P_high");
  return [_W, _A_v, _F_v_Rd, _C, _P_Rd, _F_1, _P_low, _P_high];
}

export function boltGroupUltimate_allowableStress(v: Readonly<Record<"a_b" | "b_b" | "n_x" | "n_y" | "A_f" | "t_0" | "rho" | "g" | "k_dyn" | "gamma_L" | "A_b" | "F_nv" | "Omega_J", number>>, k: Readonly<Record<"bolts.rowLost.coefficient" | "bolts.rowLost.inPlane", (...values: number[]) => number>>): number[] {
  const _a_b = v.a_b;
  const _b_b = v.b_b;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _A_f = v.A_f;
  const _t_0 = v.t_0;
  const _rho = v.rho;
  const _g = v.g;
  const _k_dyn = v.k_dyn;
  const _gamma_L = v.gamma_L;
  const _A_b = v.A_b;
  const _F_nv = v.F_nv;
  const _Omega_J = v.Omega_J;
  const _W = finite(_gamma_L * _k_dyn * _rho * _A_f * _t_0 * _g, "W");
  const _F_v_Rd = finite(_F_nv * _A_b / _Omega_J, "F_v_Rd");
  const _C = finite(k["bolts.rowLost.coefficient"](_a_b, _b_b, _n_x, _n_y), "C");
  const _P_Rd = finite(_C * _F_v_Rd, "P_Rd");
  const _F_1 = finite(k["bolts.rowLost.inPlane"](_a_b, _b_b, _n_x, _n_y, _W), "F_1");
  const _P_low = finite(0.95 * _F_v_Rd * _W / _F_1, "P_low");
  const _P_high = finite((2 * _n_x + 2 * _n_y - 4 - Math.min(_n_x, _n_y)) * _F_v_Rd, "P_high");
  return [_W, _F_v_Rd, _C, _P_Rd, _F_1, _P_low, _P_high];
}

export function boltGroupUltimateByPlaces_partialFactors(v: Readonly<Record<"A_f" | "t_0" | "rho" | "g" | "k_dyn" | "gamma_L" | "A_s" | "A_b" | "threads" | "f_ub" | "alpha_v" | "gamma_M2" | "n_m" | "n_l" | "I_p" | "e_W" | "y_W" | "x_W" | "C", number>>): number[] {
  const _A_f = v.A_f;
  const _t_0 = v.t_0;
  const _rho = v.rho;
  const _g = v.g;
  const _k_dyn = v.k_dyn;
  const _gamma_L = v.gamma_L;
  const _A_s = v.A_s;
  const _A_b = v.A_b;
  const _threads = v.threads;
  const _f_ub = v.f_ub;
  const _alpha_v = v.alpha_v;
  const _gamma_M2 = v.gamma_M2;
  const _n_m = v.n_m;
  const _n_l = v.n_l;
  const _I_p = v.I_p;
  const _e_W = v.e_W;
  const _y_W = v.y_W;
  const _x_W = v.x_W;
  const _C = v.C;
  const _W = finite(_gamma_L * _k_dyn * _rho * _A_f * _t_0 * _g, "W");
  const _A_v = finite(_threads > 0 ? _A_s : _A_b, "A_v");
  const _F_v_Rd = finite(_alpha_v * _f_ub * _A_v / _gamma_M2, "F_v_Rd");
  const _P_Rd = finite(_C * _F_v_Rd, "P_Rd");
  const _F_1 = finite(_W * Math.sqrt(Math.pow(finite(1 / _n_l + _e_W * _y_W / _I_p, "1 / n_l + e_W * y_W / I_p"), 2) + Math.pow(finite(_e_W * _x_W / _I_p, "e_W * x_W / I_p"), 2)), "F_1");
  const _P_low = finite(0.95 * _F_v_Rd * _W / _F_1, "P_low");
  const _P_high = finite(_n_m * _F_v_Rd, "P_high");
  return [_W, _A_v, _F_v_Rd, _P_Rd, _F_1, _P_low, _P_high];
}

export function boltGroupUltimateByPlaces_allowableStress(v: Readonly<Record<"A_f" | "t_0" | "rho" | "g" | "k_dyn" | "gamma_L" | "A_b" | "F_nv" | "Omega_J" | "n_m" | "n_l" | "I_p" | "e_W" | "y_W" | "x_W" | "C", number>>): number[] {
  const _A_f = v.A_f;
  const _t_0 = v.t_0;
  const _rho = v.rho;
  const _g = v.g;
  const _k_dyn = v.k_dyn;
  const _gamma_L = v.gamma_L;
  const _A_b = v.A_b;
  const _F_nv = v.F_nv;
  const _Omega_J = v.Omega_J;
  const _n_m = v.n_m;
  const _n_l = v.n_l;
  const _I_p = v.I_p;
  const _e_W = v.e_W;
  const _y_W = v.y_W;
  const _x_W = v.x_W;
  const _C = v.C;
  const _W = finite(_gamma_L * _k_dyn * _rho * _A_f * _t_0 * _g, "W");
  const _F_v_Rd = finite(_F_nv * _A_b / _Omega_J, "F_v_Rd");
  const _P_Rd = finite(_C * _F_v_Rd, "P_Rd");
  const _F_1 = finite(_W * Math.sqrt(Math.pow(finite(1 / _n_l + _e_W * _y_W / _I_p, "1 / n_l + e_W * y_W / I_p"), 2) + Math.pow(finite(_e_W * _x_W / _I_p, "e_W * x_W / I_p"), 2)), "F_1");
  const _P_low = finite(0.95 * _F_v_Rd * _W / _F_1, "P_low");
  const _P_high = finite(_n_m * _F_v_Rd, "P_high");
  return [_W, _F_v_Rd, _P_Rd, _F_1, _P_low, _P_high];
}

export function weldDirectional_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "h" | "h_x" | "h_y" | "l_f" | "k_r" | "a_w" | "f_u" | "beta_w" | "gamma_M2", number>>, k: Readonly<Record<"plate.hinged.reaction" | "plate.held.reaction" | "plate.held.momentEdge" | "plate.hinged.cornerForce" | "inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _h = v.h;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _l_f = v.l_f;
  const _k_r = v.k_r;
  const _a_w = v.a_w;
  const _f_u = v.f_u;
  const _beta_w = v.beta_w;
  const _gamma_M2 = v.gamma_M2;
  const _V_hinged = finite(k["plate.hinged.reaction"](_a, _b, _t, _E, _nu, _p), "V_hinged");
  const _V_held = finite(k["plate.held.reaction"](_a, _b, _t, _E, _nu, _p), "V_held");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _R_c = finite(k["plate.hinged.cornerForce"](_a, _b, _t, _E, _nu, _p), "R_c");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _V_e = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_V_hinged, _V_held) : _p * _L_n / 2, "V_e");
  const _M_e = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? _M_held : _p * Math.pow(_L_n, 2) / 12, "M_e");
  const _f_c = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.abs(_R_c) / finite(2 * _l_f, "2 * l_f") : 0 * _V_e, "f_c");
  const _f_z = finite(_k_r * (_pulled > 0 ? _V_e : Math.max(finite(_M_e / _l_f, "M_e / l_f"), _f_c)), "f_z");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _f_h = finite(_k_r * _N_pull, "f_h");
  const _e_r = finite(_a_w / finite(2 * Math.sqrt(2), "2 * sqrt(2)"), "e_r");
  const _m_r = finite(_f_z * _e_r + _k_r * _pulled * _h * _M_e, "m_r");
  const _sigma_s = finite((_f_z + _f_h) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w") + 6 * _m_r / finite(Math.pow(_a_w, 2), "a_w ^ 2"), "sigma_s");
  const _tau_s = finite(Math.abs(_f_z - _f_h) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w"), "tau_s");
  const _sigma_v = finite(Math.sqrt(Math.pow(_sigma_s, 2) + 3 * Math.pow(_tau_s, 2)), "sigma_v");
  const _f_r = finite(Math.sqrt(Math.pow(_f_z, 2) + Math.pow(_f_h, 2)), "f_r");
  const _f_w = finite(_f_r + 6 * _m_r / _a_w, "f_w");
  const _f_Rd = finite(_f_u / finite(Math.sqrt(3) * _beta_w * _gamma_M2, "sqrt(3) * beta_w * gamma_M2") * _a_w, "f_Rd");
  const _sigma_v_Rd = finite(_f_u / finite(_beta_w * _gamma_M2, "beta_w * gamma_M2"), "sigma_v_Rd");
  const _sigma_s_Rd = finite(0.9 * _f_u / _gamma_M2, "sigma_s_Rd");
  const _u = finite(Math.max(finite(_sigma_v / _sigma_v_Rd, "sigma_v / sigma_v_Rd"), finite(_sigma_s / _sigma_s_Rd, "sigma_s / sigma_s_Rd")), "u");
  const _u_Rd = finite(1, "u_Rd");
  const _u_high = finite(_f_w / _f_Rd, "u_high");
  const _u_low = finite(_f_r / finite(Math.sqrt(3) * _f_Rd, "sqrt(3) * f_Rd"), "u_low");
  return [_V_hinged, _V_held, _M_held, _R_c, _L_n, _V_e, _M_e, _f_c, _f_z, _N_pull, _f_h, _e_r, _m_r, _sigma_s, _tau_s, _sigma_v, _f_r, _f_w, _f_Rd, _sigma_v_Rd, _sigma_s_Rd, _u, _u_Rd, _u_high, _u_low];
}

export function weldDirectional_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "h" | "h_x" | "h_y" | "l_f" | "k_r" | "a_w" | "f_u" | "F_EXX" | "f_yb" | "t_b" | "theta" | "Omega_J" | "Omega_v", number>>, k: Readonly<Record<"plate.hinged.reaction" | "plate.held.reaction" | "plate.held.momentEdge" | "plate.hinged.cornerForce" | "inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _h = v.h;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _l_f = v.l_f;
  const _k_r = v.k_r;
  const _a_w = v.a_w;
  const _f_u = v.f_u;
  const _F_EXX = v.F_EXX;
  const _f_yb = v.f_yb;
  const _t_b = v.t_b;
  const _theta = v.theta;
  const _Omega_J = v.Omega_J;
  const _Omega_v = v.Omega_v;
  const _V_hinged = finite(k["plate.hinged.reaction"](_a, _b, _t, _E, _nu, _p), "V_hinged");
  const _V_held = finite(k["plate.held.reaction"](_a, _b, _t, _E, _nu, _p), "V_held");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _R_c = finite(k["plate.hinged.cornerForce"](_a, _b, _t, _E, _nu, _p), "R_c");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _V_e = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_V_hinged, _V_held) : _p * _L_n / 2, "V_e");
  const _M_e = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? _M_held : _p * Math.pow(_L_n, 2) / 12, "M_e");
  const _f_c = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.abs(_R_c) / finite(2 * _l_f, "2 * l_f") : 0 * _V_e, "f_c");
  const _f_z = finite(_k_r * (_pulled > 0 ? _V_e : Math.max(finite(_M_e / _l_f, "M_e / l_f"), _f_c)), "f_z");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _f_h = finite(_k_r * _N_pull, "f_h");
  const _e_r = finite(_a_w / finite(2 * Math.sqrt(2), "2 * sqrt(2)"), "e_r");
  const _m_r = finite(_f_z * _e_r + _k_r * _pulled * _h * _M_e, "m_r");
  const _f_r = finite(Math.sqrt(Math.pow(_f_z, 2) + Math.pow(_f_h, 2)), "f_r");
  const _f_w = finite(_f_r + 6 * _m_r / _a_w, "f_w");
  const _F_nw = finite(0.6 * _F_EXX * (1 + 0.5 * Math.pow(finite(Math.sin(_theta), "sin(theta)"), 1.5)), "F_nw");
  const _f_Rd = finite(Math.min(finite(_F_nw * _a_w / _Omega_J, "F_nw * a_w / Omega_J"), finite(0.6 * _f_u * _t_b / _Omega_J, "0.6 * f_u * t_b / Omega_J"), finite(0.6 * _f_yb * _t_b / _Omega_v, "0.6 * f_yb * t_b / Omega_v")), "f_Rd");
  const _u = finite(_f_w / _f_Rd, "u");
  const _u_Rd = finite(1, "u_Rd");
  const _u_high = finite(_f_w / _f_Rd, "u_high");
  const _u_low = finite(_f_r / finite(Math.sqrt(3) * _f_Rd, "sqrt(3) * f_Rd"), "u_low");
  return [_V_hinged, _V_held, _M_held, _R_c, _L_n, _V_e, _M_e, _f_c, _f_z, _N_pull, _f_h, _e_r, _m_r, _f_r, _f_w, _F_nw, _f_Rd, _u, _u_Rd, _u_high, _u_low];
}

export function weldDirectionalBySolution_partialFactors(v: Readonly<Record<"k_r" | "a_w" | "f_u" | "beta_w" | "gamma_M2" | "f_1z" | "f_1h" | "f_1l" | "m_1", number>>): number[] {
  const _k_r = v.k_r;
  const _a_w = v.a_w;
  const _f_u = v.f_u;
  const _beta_w = v.beta_w;
  const _gamma_M2 = v.gamma_M2;
  const _f_1z = v.f_1z;
  const _f_1h = v.f_1h;
  const _f_1l = v.f_1l;
  const _m_1 = v.m_1;
  const _f_z = finite(_k_r * _f_1z, "f_z");
  const _f_h = finite(_k_r * _f_1h, "f_h");
  const _e_r = finite(_a_w / finite(2 * Math.sqrt(2), "2 * sqrt(2)"), "e_r");
  const _m_r = finite(Math.abs(_f_z) * _e_r + _k_r * _m_1, "m_r");
  const _sigma_s = finite(Math.abs(_f_z + _f_h) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w") + 6 * _m_r / finite(Math.pow(_a_w, 2), "a_w ^ 2"), "sigma_s");
  const _tau_s = finite(Math.abs(_f_z - _f_h) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w"), "tau_s");
  const _sigma_v = finite(Math.sqrt(Math.pow(_sigma_s, 2) + 3 * (Math.pow(_tau_s, 2) + Math.pow(finite(_k_r * _f_1l / _a_w, "k_r * f_1l / a_w"), 2))), "sigma_v");
  const _f_r = finite(Math.sqrt(Math.pow(_f_z, 2) + Math.pow(_f_h, 2) + Math.pow(finite(_k_r * _f_1l, "k_r * f_1l"), 2)), "f_r");
  const _f_w = finite(_f_r + 6 * _m_r / _a_w, "f_w");
  const _f_Rd = finite(_f_u / finite(Math.sqrt(3) * _beta_w * _gamma_M2, "sqrt(3) * beta_w * gamma_M2") * _a_w, "f_Rd");
  const _sigma_v_Rd = finite(_f_u / finite(_beta_w * _gamma_M2, "beta_w * gamma_M2"), "sigma_v_Rd");
  const _sigma_s_Rd = finite(0.9 * _f_u / _gamma_M2, "sigma_s_Rd");
  const _u = finite(Math.max(finite(_sigma_v / _sigma_v_Rd, "sigma_v / sigma_v_Rd"), finite(_sigma_s / _sigma_s_Rd, "sigma_s / sigma_s_Rd")), "u");
  const _u_Rd = finite(1, "u_Rd");
  const _u_high = finite(_f_w / _f_Rd, "u_high");
  const _u_low = finite(_f_r / finite(Math.sqrt(3) * _f_Rd, "sqrt(3) * f_Rd"), "u_low");
  return [_f_z, _f_h, _e_r, _m_r, _sigma_s, _tau_s, _sigma_v, _f_r, _f_w, _f_Rd, _sigma_v_Rd, _sigma_s_Rd, _u, _u_Rd, _u_high, _u_low];
}

export function weldDirectionalBySolution_allowableStress(v: Readonly<Record<"k_r" | "a_w" | "f_u" | "F_EXX" | "f_yb" | "t_b" | "theta" | "Omega_J" | "Omega_v" | "f_1z" | "f_1h" | "f_1l" | "m_1", number>>): number[] {
  const _k_r = v.k_r;
  const _a_w = v.a_w;
  const _f_u = v.f_u;
  const _F_EXX = v.F_EXX;
  const _f_yb = v.f_yb;
  const _t_b = v.t_b;
  const _theta = v.theta;
  const _Omega_J = v.Omega_J;
  const _Omega_v = v.Omega_v;
  const _f_1z = v.f_1z;
  const _f_1h = v.f_1h;
  const _f_1l = v.f_1l;
  const _m_1 = v.m_1;
  const _f_z = finite(_k_r * _f_1z, "f_z");
  const _f_h = finite(_k_r * _f_1h, "f_h");
  const _e_r = finite(_a_w / finite(2 * Math.sqrt(2), "2 * sqrt(2)"), "e_r");
  const _m_r = finite(Math.abs(_f_z) * _e_r + _k_r * _m_1, "m_r");
  const _f_r = finite(Math.sqrt(Math.pow(_f_z, 2) + Math.pow(_f_h, 2) + Math.pow(finite(_k_r * _f_1l, "k_r * f_1l"), 2)), "f_r");
  const _f_w = finite(_f_r + 6 * _m_r / _a_w, "f_w");
  const _F_nw = finite(0.6 * _F_EXX * (1 + 0.5 * Math.pow(finite(Math.sin(_theta), "sin(theta)"), 1.5)), "F_nw");
  const _f_Rd = finite(Math.min(finite(_F_nw * _a_w / _Omega_J, "F_nw * a_w / Omega_J"), finite(0.6 * _f_u * _t_b / _Omega_J, "0.6 * f_u * t_b / Omega_J"), finite(0.6 * _f_yb * _t_b / _Omega_v, "0.6 * f_yb * t_b / Omega_v")), "f_Rd");
  const _u = finite(_f_w / _f_Rd, "u");
  const _u_Rd = finite(1, "u_Rd");
  const _u_high = finite(_f_w / _f_Rd, "u_high");
  const _u_low = finite(_f_r / finite(Math.sqrt(3) * _f_Rd, "sqrt(3) * f_Rd"), "u_low");
  return [_f_z, _f_h, _e_r, _m_r, _f_r, _f_w, _F_nw, _f_Rd, _u, _u_Rd, _u_high, _u_low];
}

export function weldThroat_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "h" | "h_x" | "h_y" | "l_f" | "k_r" | "a_w" | "f_u" | "beta_w" | "gamma_M2", number>>, k: Readonly<Record<"plate.hinged.reaction" | "plate.held.reaction" | "plate.held.momentEdge" | "plate.hinged.cornerForce" | "inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _h = v.h;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _l_f = v.l_f;
  const _k_r = v.k_r;
  const _a_w = v.a_w;
  const _f_u = v.f_u;
  const _beta_w = v.beta_w;
  const _gamma_M2 = v.gamma_M2;
  const _V_hinged = finite(k["plate.hinged.reaction"](_a, _b, _t, _E, _nu, _p), "V_hinged");
  const _V_held = finite(k["plate.held.reaction"](_a, _b, _t, _E, _nu, _p), "V_held");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _R_c = finite(k["plate.hinged.cornerForce"](_a, _b, _t, _E, _nu, _p), "R_c");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _V_e = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_V_hinged, _V_held) : _p * _L_n / 2, "V_e");
  const _M_e = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? _M_held : _p * Math.pow(_L_n, 2) / 12, "M_e");
  const _f_c = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.abs(_R_c) / finite(2 * _l_f, "2 * l_f") : 0 * _V_e, "f_c");
  const _f_z = finite(_k_r * (_pulled > 0 ? _V_e : Math.max(finite(_M_e / _l_f, "M_e / l_f"), _f_c)), "f_z");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _f_h = finite(_k_r * _N_pull, "f_h");
  const _e_r = finite(_a_w / finite(2 * Math.sqrt(2), "2 * sqrt(2)"), "e_r");
  const _m_r = finite(_f_z * _e_r + _k_r * _pulled * _h * _M_e, "m_r");
  const _f_r = finite(Math.sqrt(Math.pow(_f_z, 2) + Math.pow(_f_h, 2)), "f_r");
  const _f_w = finite(_f_r + 6 * _m_r / _a_w, "f_w");
  const _f_Rd = finite(_f_u / finite(Math.sqrt(3) * _beta_w * _gamma_M2, "sqrt(3) * beta_w * gamma_M2") * _a_w, "f_Rd");
  const _sigma_s = finite((_f_z + _f_h) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w") + 6 * _m_r / finite(Math.pow(_a_w, 2), "a_w ^ 2"), "sigma_s");
  const _tau_s = finite(Math.abs(_f_z - _f_h) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w"), "tau_s");
  const _sigma_v = finite(Math.sqrt(Math.pow(_sigma_s, 2) + 3 * Math.pow(_tau_s, 2)), "sigma_v");
  const _f_low = finite(_sigma_v * _a_w / finite(Math.sqrt(3), "sqrt(3)"), "f_low");
  const _f_high = finite(2 * _sigma_v * _a_w / finite(Math.sqrt(3), "sqrt(3)"), "f_high");
  return [_V_hinged, _V_held, _M_held, _R_c, _L_n, _V_e, _M_e, _f_c, _f_z, _N_pull, _f_h, _e_r, _m_r, _f_r, _f_w, _f_Rd, _sigma_s, _tau_s, _sigma_v, _f_low, _f_high];
}

export function weldThroat_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "h" | "h_x" | "h_y" | "l_f" | "k_r" | "a_w" | "f_u" | "F_EXX" | "f_yb" | "t_b" | "Omega_J" | "Omega_v", number>>, k: Readonly<Record<"plate.hinged.reaction" | "plate.held.reaction" | "plate.held.momentEdge" | "plate.hinged.cornerForce" | "inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _h = v.h;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _l_f = v.l_f;
  const _k_r = v.k_r;
  const _a_w = v.a_w;
  const _f_u = v.f_u;
  const _F_EXX = v.F_EXX;
  const _f_yb = v.f_yb;
  const _t_b = v.t_b;
  const _Omega_J = v.Omega_J;
  const _Omega_v = v.Omega_v;
  const _V_hinged = finite(k["plate.hinged.reaction"](_a, _b, _t, _E, _nu, _p), "V_hinged");
  const _V_held = finite(k["plate.held.reaction"](_a, _b, _t, _E, _nu, _p), "V_held");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _R_c = finite(k["plate.hinged.cornerForce"](_a, _b, _t, _E, _nu, _p), "R_c");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _V_e = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_V_hinged, _V_held) : _p * _L_n / 2, "V_e");
  const _M_e = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? _M_held : _p * Math.pow(_L_n, 2) / 12, "M_e");
  const _f_c = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.abs(_R_c) / finite(2 * _l_f, "2 * l_f") : 0 * _V_e, "f_c");
  const _f_z = finite(_k_r * (_pulled > 0 ? _V_e : Math.max(finite(_M_e / _l_f, "M_e / l_f"), _f_c)), "f_z");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _f_h = finite(_k_r * _N_pull, "f_h");
  const _e_r = finite(_a_w / finite(2 * Math.sqrt(2), "2 * sqrt(2)"), "e_r");
  const _m_r = finite(_f_z * _e_r + _k_r * _pulled * _h * _M_e, "m_r");
  const _f_r = finite(Math.sqrt(Math.pow(_f_z, 2) + Math.pow(_f_h, 2)), "f_r");
  const _f_w = finite(_f_r + 6 * _m_r / _a_w, "f_w");
  const _f_Rd = finite(Math.min(finite(0.6 * _F_EXX * _a_w / _Omega_J, "0.6 * F_EXX * a_w / Omega_J"), finite(0.6 * _f_u * _t_b / _Omega_J, "0.6 * f_u * t_b / Omega_J"), finite(0.6 * _f_yb * _t_b / _Omega_v, "0.6 * f_yb * t_b / Omega_v")), "f_Rd");
  const _sigma_s = finite((_f_z + _f_h) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w") + 6 * _m_r / finite(Math.pow(_a_w, 2), "a_w ^ 2"), "sigma_s");
  const _tau_s = finite(Math.abs(_f_z - _f_h) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w"), "tau_s");
  const _sigma_v = finite(Math.sqrt(Math.pow(_sigma_s, 2) + 3 * Math.pow(_tau_s, 2)), "sigma_v");
  const _f_low = finite(_sigma_v * _a_w / finite(Math.sqrt(3), "sqrt(3)"), "f_low");
  const _f_high = finite(2 * _sigma_v * _a_w / finite(Math.sqrt(3), "sqrt(3)"), "f_high");
  return [_V_hinged, _V_held, _M_held, _R_c, _L_n, _V_e, _M_e, _f_c, _f_z, _N_pull, _f_h, _e_r, _m_r, _f_r, _f_w, _f_Rd, _sigma_s, _tau_s, _sigma_v, _f_low, _f_high];
}

export function weldThroatBySolution_partialFactors(v: Readonly<Record<"k_r" | "a_w" | "f_u" | "beta_w" | "gamma_M2" | "f_1z" | "f_1h" | "f_1l" | "m_1", number>>): number[] {
  const _k_r = v.k_r;
  const _a_w = v.a_w;
  const _f_u = v.f_u;
  const _beta_w = v.beta_w;
  const _gamma_M2 = v.gamma_M2;
  const _f_1z = v.f_1z;
  const _f_1h = v.f_1h;
  const _f_1l = v.f_1l;
  const _m_1 = v.m_1;
  const _f_z = finite(_k_r * _f_1z, "f_z");
  const _f_h = finite(_k_r * _f_1h, "f_h");
  const _e_r = finite(_a_w / finite(2 * Math.sqrt(2), "2 * sqrt(2)"), "e_r");
  const _m_r = finite(Math.abs(_f_z) * _e_r + _k_r * _m_1, "m_r");
  const _f_r = finite(Math.sqrt(Math.pow(_f_z, 2) + Math.pow(_f_h, 2) + Math.pow(finite(_k_r * _f_1l, "k_r * f_1l"), 2)), "f_r");
  const _f_w = finite(_f_r + 6 * _m_r / _a_w, "f_w");
  const _f_Rd = finite(_f_u / finite(Math.sqrt(3) * _beta_w * _gamma_M2, "sqrt(3) * beta_w * gamma_M2") * _a_w, "f_Rd");
  const _sigma_s = finite(Math.abs(_f_z + _f_h) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w") + 6 * _m_r / finite(Math.pow(_a_w, 2), "a_w ^ 2"), "sigma_s");
  const _tau_s = finite(Math.abs(_f_z - _f_h) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w"), "tau_s");
  const _sigma_v = finite(Math.sqrt(Math.pow(_sigma_s, 2) + 3 * (Math.pow(_tau_s, 2) + Math.pow(finite(_k_r * _f_1l / _a_w, "k_r * f_1l / a_w"), 2))), "sigma_v");
  const _f_low = finite(_sigma_v * _a_w / finite(Math.sqrt(3), "sqrt(3)"), "f_low");
  const _f_high = finite(2 * _sigma_v * _a_w / finite(Math.sqrt(3), "sqrt(3)"), "f_high");
  return [_f_z, _f_h, _e_r, _m_r, _f_r, _f_w, _f_Rd, _sigma_s, _tau_s, _sigma_v, _f_low, _f_high];
}

export function weldThroatBySolution_allowableStress(v: Readonly<Record<"k_r" | "a_w" | "f_u" | "F_EXX" | "f_yb" | "t_b" | "Omega_J" | "Omega_v" | "f_1z" | "f_1h" | "f_1l" | "m_1", number>>): number[] {
  const _k_r = v.k_r;
  const _a_w = v.a_w;
  const _f_u = v.f_u;
  const _F_EXX = v.F_EXX;
  const _f_yb = v.f_yb;
  const _t_b = v.t_b;
  const _Omega_J = v.Omega_J;
  const _Omega_v = v.Omega_v;
  const _f_1z = v.f_1z;
  const _f_1h = v.f_1h;
  const _f_1l = v.f_1l;
  const _m_1 = v.m_1;
  const _f_z = finite(_k_r * _f_1z, "f_z");
  const _f_h = finite(_k_r * _f_1h, "f_h");
  const _e_r = finite(_a_w / finite(2 * Math.sqrt(2), "2 * sqrt(2)"), "e_r");
  const _m_r = finite(Math.abs(_f_z) * _e_r + _k_r * _m_1, "m_r");
  const _f_r = finite(Math.sqrt(Math.pow(_f_z, 2) + Math.pow(_f_h, 2) + Math.pow(finite(_k_r * _f_1l, "k_r * f_1l"), 2)), "f_r");
  const _f_w = finite(_f_r + 6 * _m_r / _a_w, "f_w");
  const _f_Rd = finite(Math.min(finite(0.6 * _F_EXX * _a_w / _Omega_J, "0.6 * F_EXX * a_w / Omega_J"), finite(0.6 * _f_u * _t_b / _Omega_J, "0.6 * f_u * t_b / Omega_J"), finite(0.6 * _f_yb * _t_b / _Omega_v, "0.6 * f_yb * t_b / Omega_v")), "f_Rd");
  const _sigma_s = finite(Math.abs(_f_z + _f_h) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w") + 6 * _m_r / finite(Math.pow(_a_w, 2), "a_w ^ 2"), "sigma_s");
  const _tau_s = finite(Math.abs(_f_z - _f_h) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w"), "tau_s");
  const _sigma_v = finite(Math.sqrt(Math.pow(_sigma_s, 2) + 3 * (Math.pow(_tau_s, 2) + Math.pow(finite(_k_r * _f_1l / _a_w, "k_r * f_1l / a_w"), 2))), "sigma_v");
  const _f_low = finite(_sigma_v * _a_w / finite(Math.sqrt(3), "sqrt(3)"), "f_low");
  const _f_high = finite(2 * _sigma_v * _a_w / finite(Math.sqrt(3), "sqrt(3)"), "f_high");
  return [_f_z, _f_h, _e_r, _m_r, _f_r, _f_w, _f_Rd, _sigma_s, _tau_s, _sigma_v, _f_low, _f_high];
}

export function weldSize_partialFactors(v: Readonly<Record<"t_p" | "t_w" | "a_3" | "a_2" | "a_6", number>>): number[] {
  const _t_p = v.t_p;
  const _t_w = v.t_w;
  const _a_3 = v.a_3;
  const _a_2 = v.a_2;
  const _a_6 = v.a_6;
  const _t_1 = finite(Math.min(_t_p, _t_w), "t_1");
  const _a_min = finite(_a_3, "a_min");
  const _a_high = finite(_a_6, "a_high");
  const _a_low = finite(_a_2, "a_low");
  return [_t_1, _a_min, _a_high, _a_low];
}

export function weldSize_allowableStress(v: Readonly<Record<"t_p" | "t_w" | "a_2" | "a_6" | "t_6" | "t_13" | "t_19" | "z_3" | "z_5" | "z_6" | "z_8", number>>): number[] {
  const _t_p = v.t_p;
  const _t_w = v.t_w;
  const _a_2 = v.a_2;
  const _a_6 = v.a_6;
  const _t_6 = v.t_6;
  const _t_13 = v.t_13;
  const _t_19 = v.t_19;
  const _z_3 = v.z_3;
  const _z_5 = v.z_5;
  const _z_6 = v.z_6;
  const _z_8 = v.z_8;
  const _t_1 = finite(Math.min(_t_p, _t_w), "t_1");
  const _z_min = finite(_t_1 <= _t_6 ? _z_3 : _t_1 <= _t_13 ? _z_5 : _t_1 <= _t_19 ? _z_6 : _z_8, "z_min");
  const _a_min = finite(_z_min / finite(Math.sqrt(2), "sqrt(2)"), "a_min");
  const _a_high = finite(_a_6, "a_high");
  const _a_low = finite(_a_2, "a_low");
  return [_t_1, _z_min, _a_min, _a_high, _a_low];
}

export function weldEdge_partialFactors(v: Readonly<Record<"a_0" | "t_p" | "t_8", number>>): number[] {
  const _a_0 = v.a_0;
  const _t_p = v.t_p;
  const _t_8 = v.t_8;
  const _z = finite(Math.sqrt(2) * _a_0, "z");
  const _z_max = finite(_t_p, "z_max");
  const _z_high = finite(_t_p, "z_high");
  const _z_low = finite(_t_p - _t_8, "z_low");
  return [_z, _z_max, _z_high, _z_low];
}

export function weldEdge_allowableStress(v: Readonly<Record<"a_0" | "t_p" | "t_6" | "t_8" | "t_2", number>>): number[] {
  const _a_0 = v.a_0;
  const _t_p = v.t_p;
  const _t_6 = v.t_6;
  const _t_8 = v.t_8;
  const _t_2 = v.t_2;
  const _z = finite(Math.sqrt(2) * _a_0, "z");
  const _z_max = finite(_t_p < _t_6 ? _t_p : _t_p - _t_2, "z_max");
  const _z_high = finite(_t_p, "z_high");
  const _z_low = finite(_t_p - _t_8, "z_low");
  return [_z, _z_max, _z_high, _z_low];
}

export function weldCorner_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "k_r" | "a_0" | "R" | "s" | "k_f" | "a_t" | "g_5" | "c_w" | "f_u" | "beta_w" | "gamma_M2", number>>, k: Readonly<Record<"plate.hinged.reaction" | "plate.held.reaction" | "plate.held.momentEdge" | "plate.hinged.cornerForce" | "inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _k_r = v.k_r;
  const _a_0 = v.a_0;
  const _R = v.R;
  const _s = v.s;
  const _k_f = v.k_f;
  const _a_t = v.a_t;
  const _g_5 = v.g_5;
  const _c_w = v.c_w;
  const _f_u = v.f_u;
  const _beta_w = v.beta_w;
  const _gamma_M2 = v.gamma_M2;
  const _g_e = finite(_R - Math.sqrt(Math.pow(_R, 2) - Math.pow(_s, 2)), "g_e");
  const _a_g = finite(_a_0 - _g_e / finite(Math.sqrt(2), "sqrt(2)"), "a_g");
  const _a_f = finite(_k_f * _R, "a_f");
  const _a_e = finite(_a_t > finite(0 * _a_0, "0 * a_0") ? _a_t : Math.min(_a_g, _a_f), "a_e");
  const _a_w = finite(_a_e - _c_w, "a_w");
  const _V_hinged = finite(k["plate.hinged.reaction"](_a, _b, _t, _E, _nu, _p), "V_hinged");
  const _V_held = finite(k["plate.held.reaction"](_a, _b, _t, _E, _nu, _p), "V_held");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _R_c = finite(k["plate.hinged.cornerForce"](_a, _b, _t, _E, _nu, _p), "R_c");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _V_e = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_V_hinged, _V_held) : _p * _L_n / 2, "V_e");
  const _M_e = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? _M_held : _p * Math.pow(_L_n, 2) / 12, "M_e");
  const _f_c = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.abs(_R_c) / finite(2 * _t, "2 * t") : 0 * _V_e, "f_c");
  const _f_z = finite(_k_r * Math.max(_V_e, _f_c), "f_z");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _f_h = finite(_k_r * _N_pull, "f_h");
  const _e_r = finite(_a_w / finite(2 * Math.sqrt(2), "2 * sqrt(2)"), "e_r");
  const _m_r = finite(_f_z * _e_r + _k_r * _M_e, "m_r");
  const _f_r = finite(Math.sqrt(Math.pow(_f_z, 2) + Math.pow(_f_h, 2)), "f_r");
  const _f_w = finite(_f_r + 6 * _m_r / _a_w, "f_w");
  const _f_Rd = finite(_f_u / finite(Math.sqrt(3) * _beta_w * _gamma_M2, "sqrt(3) * beta_w * gamma_M2") * _a_w, "f_Rd");
  const _f_low = finite(Math.max(_f_r, finite(6 * _m_r / _a_w, "6 * m_r / a_w")) / finite(Math.sqrt(3), "sqrt(3)"), "f_low");
  const _f_high = finite(Math.sqrt(3) * (Math.abs(_f_z) + Math.abs(_f_h) + Math.abs(6 * _m_r / _a_w)), "f_high");
  const _range0 = finite(_a_t > finite(0 * _a_0, "0 * a_0") || _g_e <= _g_5 ? 1 : 0, "range0");
  const _range1 = finite(_a_t > finite(0 * _a_0, "0 * a_0") || _s <= finite(_R / 2, "R / 2") ? 1 : 0, "range1");
  const _range2 = finite(_a_w > finite(0 * _a_0, "0 * a_0") ? 1 : 0, "range2");
  return [_g_e, _a_g, _a_f, _a_e, _a_w, _V_hinged, _V_held, _M_held, _R_c, _L_n, _V_e, _M_e, _f_c, _f_z, _N_pull, _f_h, _e_r, _m_r, _f_r, _f_w, _f_Rd, _f_low, _f_high, _range0, _range1, _range2];
}

export function weldCorner_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "k_r" | "a_0" | "R" | "s" | "k_f" | "a_t" | "g_5" | "c_w" | "f_u" | "F_EXX" | "f_yb" | "t_b" | "Omega_J" | "Omega_v", number>>, k: Readonly<Record<"plate.hinged.reaction" | "plate.held.reaction" | "plate.held.momentEdge" | "plate.hinged.cornerForce" | "inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _k_r = v.k_r;
  const _a_0 = v.a_0;
  const _R = v.R;
  const _s = v.s;
  const _k_f = v.k_f;
  const _a_t = v.a_t;
  const _g_5 = v.g_5;
  const _c_w = v.c_w;
  const _f_u = v.f_u;
  const _F_EXX = v.F_EXX;
  const _f_yb = v.f_yb;
  const _t_b = v.t_b;
  const _Omega_J = v.Omega_J;
  const _Omega_v = v.Omega_v;
  const _g_e = finite(_R - Math.sqrt(Math.pow(_R, 2) - Math.pow(_s, 2)), "g_e");
  const _a_g = finite(_a_0 - _g_e / finite(Math.sqrt(2), "sqrt(2)"), "a_g");
  const _a_f = finite(_k_f * _R, "a_f");
  const _a_e = finite(_a_t > finite(0 * _a_0, "0 * a_0") ? _a_t : Math.min(_a_g, _a_f), "a_e");
  const _a_w = finite(_a_e - _c_w, "a_w");
  const _V_hinged = finite(k["plate.hinged.reaction"](_a, _b, _t, _E, _nu, _p), "V_hinged");
  const _V_held = finite(k["plate.held.reaction"](_a, _b, _t, _E, _nu, _p), "V_held");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _R_c = finite(k["plate.hinged.cornerForce"](_a, _b, _t, _E, _nu, _p), "R_c");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _V_e = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_V_hinged, _V_held) : _p * _L_n / 2, "V_e");
  const _M_e = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? _M_held : _p * Math.pow(_L_n, 2) / 12, "M_e");
  const _f_c = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.abs(_R_c) / finite(2 * _t, "2 * t") : 0 * _V_e, "f_c");
  const _f_z = finite(_k_r * Math.max(_V_e, _f_c), "f_z");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _f_h = finite(_k_r * _N_pull, "f_h");
  const _e_r = finite(_a_w / finite(2 * Math.sqrt(2), "2 * sqrt(2)"), "e_r");
  const _m_r = finite(_f_z * _e_r + _k_r * _M_e, "m_r");
  const _f_r = finite(Math.sqrt(Math.pow(_f_z, 2) + Math.pow(_f_h, 2)), "f_r");
  const _f_w = finite(_f_r + 6 * _m_r / _a_w, "f_w");
  const _f_Rd = finite(Math.min(finite(0.6 * _F_EXX * _a_w / _Omega_J, "0.6 * F_EXX * a_w / Omega_J"), finite(0.6 * _f_u * _t_b / _Omega_J, "0.6 * f_u * t_b / Omega_J"), finite(0.6 * _f_yb * _t_b / _Omega_v, "0.6 * f_yb * t_b / Omega_v")), "f_Rd");
  const _f_low = finite(Math.max(_f_r, finite(6 * _m_r / _a_w, "6 * m_r / a_w")) / finite(Math.sqrt(3), "sqrt(3)"), "f_low");
  const _f_high = finite(Math.sqrt(3) * (Math.abs(_f_z) + Math.abs(_f_h) + Math.abs(6 * _m_r / _a_w)), "f_high");
  const _range0 = finite(_a_t > finite(0 * _a_0, "0 * a_0") || _g_e <= _g_5 ? 1 : 0, "range0");
  const _range1 = finite(_a_t > finite(0 * _a_0, "0 * a_0") || _s <= finite(_R / 2, "R / 2") ? 1 : 0, "range1");
  const _range2 = finite(_a_w > finite(0 * _a_0, "0 * a_0") ? 1 : 0, "range2");
  return [_g_e, _a_g, _a_f, _a_e, _a_w, _V_hinged, _V_held, _M_held, _R_c, _L_n, _V_e, _M_e, _f_c, _f_z, _N_pull, _f_h, _e_r, _m_r, _f_r, _f_w, _f_Rd, _f_low, _f_high, _range0, _range1, _range2];
}

export function weldCornerBySolution_partialFactors(v: Readonly<Record<"k_r" | "a_0" | "R" | "s" | "k_f" | "a_t" | "g_5" | "c_w" | "f_u" | "beta_w" | "gamma_M2" | "f_1z" | "f_1h" | "f_1l" | "m_1", number>>): number[] {
  const _k_r = v.k_r;
  const _a_0 = v.a_0;
  const _R = v.R;
  const _s = v.s;
  const _k_f = v.k_f;
  const _a_t = v.a_t;
  const _g_5 = v.g_5;
  const _c_w = v.c_w;
  const _f_u = v.f_u;
  const _beta_w = v.beta_w;
  const _gamma_M2 = v.gamma_M2;
  const _f_1z = v.f_1z;
  const _f_1h = v.f_1h;
  const _f_1l = v.f_1l;
  const _m_1 = v.m_1;
  const _g_e = finite(_R - Math.sqrt(Math.pow(_R, 2) - Math.pow(_s, 2)), "g_e");
  const _a_g = finite(_a_0 - _g_e / finite(Math.sqrt(2), "sqrt(2)"), "a_g");
  const _a_f = finite(_k_f * _R, "a_f");
  const _a_e = finite(_a_t > finite(0 * _a_0, "0 * a_0") ? _a_t : Math.min(_a_g, _a_f), "a_e");
  const _a_w = finite(_a_e - _c_w, "a_w");
  const _f_z = finite(_k_r * _f_1z, "f_z");
  const _f_h = finite(_k_r * _f_1h, "f_h");
  const _e_r = finite(_a_w / finite(2 * Math.sqrt(2), "2 * sqrt(2)"), "e_r");
  const _m_r = finite(Math.abs(_f_z) * _e_r + _k_r * _m_1, "m_r");
  const _f_r = finite(Math.sqrt(Math.pow(_f_z, 2) + Math.pow(_f_h, 2) + Math.pow(finite(_k_r * _f_1l, "k_r * f_1l"), 2)), "f_r");
  const _f_w = finite(_f_r + 6 * _m_r / _a_w, "f_w");
  const _f_Rd = finite(_f_u / finite(Math.sqrt(3) * _beta_w * _gamma_M2, "sqrt(3) * beta_w * gamma_M2") * _a_w, "f_Rd");
  const _f_low = finite(Math.max(_f_r, finite(6 * _m_r / _a_w, "6 * m_r / a_w")) / finite(Math.sqrt(3), "sqrt(3)"), "f_low");
  const _f_high = finite(Math.sqrt(3) * (Math.abs(_f_z) + Math.abs(_f_h) + Math.abs(6 * _m_r / _a_w)), "f_high");
  const _range0 = finite(_a_t > finite(0 * _a_0, "0 * a_0") || _g_e <= _g_5 ? 1 : 0, "range0");
  const _range1 = finite(_a_t > finite(0 * _a_0, "0 * a_0") || _s <= finite(_R / 2, "R / 2") ? 1 : 0, "range1");
  const _range2 = finite(_a_w > finite(0 * _a_0, "0 * a_0") ? 1 : 0, "range2");
  return [_g_e, _a_g, _a_f, _a_e, _a_w, _f_z, _f_h, _e_r, _m_r, _f_r, _f_w, _f_Rd, _f_low, _f_high, _range0, _range1, _range2];
}

export function weldCornerBySolution_allowableStress(v: Readonly<Record<"k_r" | "a_0" | "R" | "s" | "k_f" | "a_t" | "g_5" | "c_w" | "f_u" | "F_EXX" | "f_yb" | "t_b" | "Omega_J" | "Omega_v" | "f_1z" | "f_1h" | "f_1l" | "m_1", number>>): number[] {
  const _k_r = v.k_r;
  const _a_0 = v.a_0;
  const _R = v.R;
  const _s = v.s;
  const _k_f = v.k_f;
  const _a_t = v.a_t;
  const _g_5 = v.g_5;
  const _c_w = v.c_w;
  const _f_u = v.f_u;
  const _F_EXX = v.F_EXX;
  const _f_yb = v.f_yb;
  const _t_b = v.t_b;
  const _Omega_J = v.Omega_J;
  const _Omega_v = v.Omega_v;
  const _f_1z = v.f_1z;
  const _f_1h = v.f_1h;
  const _f_1l = v.f_1l;
  const _m_1 = v.m_1;
  const _g_e = finite(_R - Math.sqrt(Math.pow(_R, 2) - Math.pow(_s, 2)), "g_e");
  const _a_g = finite(_a_0 - _g_e / finite(Math.sqrt(2), "sqrt(2)"), "a_g");
  const _a_f = finite(_k_f * _R, "a_f");
  const _a_e = finite(_a_t > finite(0 * _a_0, "0 * a_0") ? _a_t : Math.min(_a_g, _a_f), "a_e");
  const _a_w = finite(_a_e - _c_w, "a_w");
  const _f_z = finite(_k_r * _f_1z, "f_z");
  const _f_h = finite(_k_r * _f_1h, "f_h");
  const _e_r = finite(_a_w / finite(2 * Math.sqrt(2), "2 * sqrt(2)"), "e_r");
  const _m_r = finite(Math.abs(_f_z) * _e_r + _k_r * _m_1, "m_r");
  const _f_r = finite(Math.sqrt(Math.pow(_f_z, 2) + Math.pow(_f_h, 2) + Math.pow(finite(_k_r * _f_1l, "k_r * f_1l"), 2)), "f_r");
  const _f_w = finite(_f_r + 6 * _m_r / _a_w, "f_w");
  const _f_Rd = finite(Math.min(finite(0.6 * _F_EXX * _a_w / _Omega_J, "0.6 * F_EXX * a_w / Omega_J"), finite(0.6 * _f_u * _t_b / _Omega_J, "0.6 * f_u * t_b / Omega_J"), finite(0.6 * _f_yb * _t_b / _Omega_v, "0.6 * f_yb * t_b / Omega_v")), "f_Rd");
  const _f_low = finite(Math.max(_f_r, finite(6 * _m_r / _a_w, "6 * m_r / a_w")) / finite(Math.sqrt(3), "sqrt(3)"), "f_low");
  const _f_high = finite(Math.sqrt(3) * (Math.abs(_f_z) + Math.abs(_f_h) + Math.abs(6 * _m_r / _a_w)), "f_high");
  const _range0 = finite(_a_t > finite(0 * _a_0, "0 * a_0") || _g_e <= _g_5 ? 1 : 0, "range0");
  const _range1 = finite(_a_t > finite(0 * _a_0, "0 * a_0") || _s <= finite(_R / 2, "R / 2") ? 1 : 0, "range1");
  const _range2 = finite(_a_w > finite(0 * _a_0, "0 * a_0") ? 1 : 0, "range2");
  return [_g_e, _a_g, _a_f, _a_e, _a_w, _f_z, _f_h, _e_r, _m_r, _f_r, _f_w, _f_Rd, _f_low, _f_high, _range0, _range1, _range2];
}

export function weldFlare_partialFactors(v: Readonly<Record<"a_0" | "R" | "s" | "k_f" | "a_t" | "g_5", number>>): number[] {
  const _a_0 = v.a_0;
  const _R = v.R;
  const _s = v.s;
  const _k_f = v.k_f;
  const _a_t = v.a_t;
  const _g_5 = v.g_5;
  const _g_e = finite(_R - Math.sqrt(Math.pow(_R, 2) - Math.pow(_s, 2)), "g_e");
  const _a_g = finite(_a_0 - _g_e / finite(Math.sqrt(2), "sqrt(2)"), "a_g");
  const _a_f = finite(_k_f * _R, "a_f");
  const _a_e = finite(_a_t > finite(0 * _a_0, "0 * a_0") ? _a_t : Math.min(_a_g, _a_f), "a_e");
  const _a_low = finite(Math.min(finite(_a_0 - _g_e, "a_0 - g_e"), _a_f), "a_low");
  const _a_high = finite(Math.max(_a_0, _a_t), "a_high");
  const _range0 = finite(_a_t > finite(0 * _a_0, "0 * a_0") || _g_e <= _g_5 ? 1 : 0, "range0");
  return [_g_e, _a_g, _a_f, _a_e, _a_low, _a_high, _range0];
}

export function weldFlare_allowableStress(v: Readonly<Record<"a_0" | "R" | "s" | "k_f" | "a_t" | "g_5", number>>): number[] {
  const _a_0 = v.a_0;
  const _R = v.R;
  const _s = v.s;
  const _k_f = v.k_f;
  const _a_t = v.a_t;
  const _g_5 = v.g_5;
  const _g_e = finite(_R - Math.sqrt(Math.pow(_R, 2) - Math.pow(_s, 2)), "g_e");
  const _a_g = finite(_a_0 - _g_e / finite(Math.sqrt(2), "sqrt(2)"), "a_g");
  const _a_f = finite(_k_f * _R, "a_f");
  const _a_e = finite(_a_t > finite(0 * _a_0, "0 * a_0") ? _a_t : Math.min(_a_g, _a_f), "a_e");
  const _a_low = finite(Math.min(finite(_a_0 - _g_e, "a_0 - g_e"), _a_f), "a_low");
  const _a_high = finite(Math.max(_a_0, _a_t), "a_high");
  const _range0 = finite(_a_t > finite(0 * _a_0, "0 * a_0") || _g_e <= _g_5 ? 1 : 0, "range0");
  return [_g_e, _a_g, _a_f, _a_e, _a_low, _a_high, _range0];
}

export function weldLength_partialFactors(v: Readonly<Record<"l_0" | "a_0" | "l_30" | "k_l" | "l_38", number>>): number[] {
  const _l_0 = v.l_0;
  const _a_0 = v.a_0;
  const _l_30 = v.l_30;
  const _k_l = v.k_l;
  const _l_38 = v.l_38;
  const _l_eff = finite(_l_0 - 2 * _a_0, "l_eff");
  const _l_min = finite(Math.max(_l_30, finite(_k_l * _a_0, "k_l * a_0")), "l_min");
  const _l_low = finite(4 * Math.sqrt(2) * _a_0, "l_low");
  const _l_high = finite(_l_38 + 8 * _a_0, "l_high");
  return [_l_eff, _l_min, _l_low, _l_high];
}

export function weldLength_allowableStress(v: Readonly<Record<"l_0" | "a_0" | "l_38", number>>): number[] {
  const _l_0 = v.l_0;
  const _a_0 = v.a_0;
  const _l_38 = v.l_38;
  const _l_eff = finite(_l_0, "l_eff");
  const _l_min = finite(Math.max(_l_38, finite(4 * Math.sqrt(2) * _a_0, "4 * sqrt(2) * a_0")), "l_min");
  const _l_low = finite(4 * Math.sqrt(2) * _a_0, "l_low");
  const _l_high = finite(_l_38 + 8 * _a_0, "l_high");
  return [_l_eff, _l_min, _l_low, _l_high];
}

export function weldIntermittent_partialFactors(v: Readonly<Record<"t_1" | "b_p" | "g_200", number>>): number[] {
  const _t_1 = v.t_1;
  const _b_p = v.b_p;
  const _g_200 = v.g_200;
  const _g_max = finite(Math.min(finite(12 * _t_1, "12 * t_1"), finite(0.25 * _b_p, "0.25 * b_p"), _g_200), "g_max");
  const _g_high = finite(16 * _t_1, "g_high");
  return [_g_max, _g_high];
}

export function weldIntermittent_allowableStress(v: Readonly<Record<"t_1" | "b_p" | "g_200", number>>): number[] {
  const _t_1 = v.t_1;
  const _b_p = v.b_p;
  const _g_200 = v.g_200;
  const _g_max = finite(Math.min(finite(12 * _t_1, "12 * t_1"), finite(0.25 * _b_p, "0.25 * b_p"), _g_200), "g_max");
  const _g_high = finite(16 * _t_1, "g_high");
  return [_g_max, _g_high];
}

export function weldEndReturn_partialFactors(v: Readonly<Record<"a_0" | "r_e" | "l_r", number>>): number[] {
  const _a_0 = v.a_0;
  const _r_e = v.r_e;
  const _l_r = v.l_r;
  const _r_min = finite(2 * Math.sqrt(2) * _a_0, "r_min");
  const _r_low = finite(Math.sqrt(2) * _a_0, "r_low");
  const _r_high = finite(4 * Math.sqrt(2) * _a_0, "r_high");
  const _range0 = finite(_r_e <= _l_r ? 1 : 0, "range0");
  return [_r_min, _r_low, _r_high, _range0];
}

export function weldEndReturn_allowableStress(v: Readonly<Record<"a_0" | "r_e" | "l_r", number>>): number[] {
  const _a_0 = v.a_0;
  const _r_e = v.r_e;
  const _l_r = v.l_r;
  const _r_min = finite(2 * Math.sqrt(2) * _a_0, "r_min");
  const _r_low = finite(Math.sqrt(2) * _a_0, "r_low");
  const _r_high = finite(4 * Math.sqrt(2) * _a_0, "r_high");
  const _range0 = finite(_r_e <= _l_r ? 1 : 0, "range0");
  return [_r_min, _r_low, _r_high, _range0];
}

export function weldAluminium_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "h" | "h_x" | "h_y" | "l_f" | "k_r" | "a_w" | "f_w_k" | "f_u_haz" | "gamma_Mw", number>>, k: Readonly<Record<"plate.hinged.reaction" | "plate.held.reaction" | "plate.held.momentEdge" | "plate.hinged.cornerForce" | "inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _h = v.h;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _l_f = v.l_f;
  const _k_r = v.k_r;
  const _a_w = v.a_w;
  const _f_w_k = v.f_w_k;
  const _f_u_haz = v.f_u_haz;
  const _gamma_Mw = v.gamma_Mw;
  const _V_hinged = finite(k["plate.hinged.reaction"](_a, _b, _t, _E, _nu, _p), "V_hinged");
  const _V_held = finite(k["plate.held.reaction"](_a, _b, _t, _E, _nu, _p), "V_held");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _R_c = finite(k["plate.hinged.cornerForce"](_a, _b, _t, _E, _nu, _p), "R_c");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _V_e = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_V_hinged, _V_held) : _p * _L_n / 2, "V_e");
  const _M_e = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? _M_held : _p * Math.pow(_L_n, 2) / 12, "M_e");
  const _f_c = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.abs(_R_c) / finite(2 * _l_f, "2 * l_f") : 0 * _V_e, "f_c");
  const _f_z = finite(_k_r * (_pulled > 0 ? _V_e : Math.max(finite(_M_e / _l_f, "M_e / l_f"), _f_c)), "f_z");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _f_h = finite(_k_r * _N_pull, "f_h");
  const _e_r = finite(_a_w / finite(2 * Math.sqrt(2), "2 * sqrt(2)"), "e_r");
  const _m_r = finite(_f_z * _e_r + _k_r * _pulled * _h * _M_e, "m_r");
  const _sigma_s = finite((_f_z + _f_h) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w") + 6 * _m_r / finite(Math.pow(_a_w, 2), "a_w ^ 2"), "sigma_s");
  const _tau_s = finite(Math.abs(_f_z - _f_h) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w"), "tau_s");
  const _sigma_v = finite(Math.sqrt(Math.pow(_sigma_s, 2) + 3 * Math.pow(_tau_s, 2)), "sigma_v");
  const _f_r = finite(Math.sqrt(Math.pow(_f_z, 2) + Math.pow(_f_h, 2)), "f_r");
  const _f_w = finite(_f_r + 6 * _m_r / _a_w, "f_w");
  const _u_w = finite(_sigma_v / finite(_f_w_k / _gamma_Mw, "f_w_k / gamma_Mw"), "u_w");
  const _s_haz = finite(Math.sqrt(Math.pow(finite(Math.max(_f_z, _f_h), "max(f_z, f_h)"), 2) + 3 * Math.pow(finite(Math.min(_f_z, _f_h), "min(f_z, f_h)"), 2)) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w"), "s_haz");
  const _s_haz_v = finite(Math.sqrt(Math.pow(finite(Math.min(_f_z, _f_h), "min(f_z, f_h)"), 2) + 3 * Math.pow(finite(Math.max(_f_z, _f_h), "max(f_z, f_h)"), 2)) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w"), "s_haz_v");
  const _s_toe = finite(Math.sqrt(Math.pow(_f_h, 2) + 3 * Math.pow(_f_z, 2)) / _t, "s_toe");
  const _u_haz = finite(Math.max(_s_haz, _s_haz_v, _s_toe) / finite(_f_u_haz / _gamma_Mw, "f_u_haz / gamma_Mw"), "u_haz");
  const _q_f = finite(_f_w_k / _gamma_Mw, "q_f");
  const _q_w = finite(Math.min(_f_w_k, _f_u_haz) / _gamma_Mw, "q_w");
  const _u = finite(Math.max(_u_w, _u_haz), "u");
  const _u_Rd = finite(1, "u_Rd");
  const _u_high = finite(Math.sqrt(3) * _f_w / _q_w * Math.max(finite(1 / _a_w, "1 / a_w"), finite(1 / _t, "1 / t")), "u_high");
  const _u_low = finite(_f_r / finite(_a_w * _q_f, "a_w * q_f"), "u_low");
  return [_V_hinged, _V_held, _M_held, _R_c, _L_n, _V_e, _M_e, _f_c, _f_z, _N_pull, _f_h, _e_r, _m_r, _sigma_s, _tau_s, _sigma_v, _f_r, _f_w, _u_w, _s_haz, _s_haz_v, _s_toe, _u_haz, _q_f, _q_w, _u, _u_Rd, _u_high, _u_low];
}

export function weldAluminium_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "pulled" | "h" | "h_x" | "h_y" | "l_f" | "k_r" | "a_w" | "f_u_haz" | "F_suf" | "Omega_w", number>>, k: Readonly<Record<"plate.hinged.reaction" | "plate.held.reaction" | "plate.held.momentEdge" | "plate.hinged.cornerForce" | "inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _pulled = v.pulled;
  const _h = v.h;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _l_f = v.l_f;
  const _k_r = v.k_r;
  const _a_w = v.a_w;
  const _f_u_haz = v.f_u_haz;
  const _F_suf = v.F_suf;
  const _Omega_w = v.Omega_w;
  const _V_hinged = finite(k["plate.hinged.reaction"](_a, _b, _t, _E, _nu, _p), "V_hinged");
  const _V_held = finite(k["plate.held.reaction"](_a, _b, _t, _E, _nu, _p), "V_held");
  const _M_held = finite(k["plate.held.momentEdge"](_a, _b, _t, _E, _nu, _p), "M_held");
  const _R_c = finite(k["plate.hinged.cornerForce"](_a, _b, _t, _E, _nu, _p), "R_c");
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _V_e = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.max(_V_hinged, _V_held) : _p * _L_n / 2, "V_e");
  const _M_e = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? _M_held : _p * Math.pow(_L_n, 2) / 12, "M_e");
  const _f_c = finite(finite(_h_x * _h_y, "h_x * h_y") > 0 ? Math.abs(_R_c) / finite(2 * _l_f, "2 * l_f") : 0 * _V_e, "f_c");
  const _f_z = finite(_k_r * (_pulled > 0 ? _V_e : Math.max(finite(_M_e / _l_f, "M_e / l_f"), _f_c)), "f_z");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _f_h = finite(_k_r * _N_pull, "f_h");
  const _e_r = finite(_a_w / finite(2 * Math.sqrt(2), "2 * sqrt(2)"), "e_r");
  const _m_r = finite(_f_z * _e_r + _k_r * _pulled * _h * _M_e, "m_r");
  const _f_r = finite(Math.sqrt(Math.pow(_f_z, 2) + Math.pow(_f_h, 2)), "f_r");
  const _f_w = finite(_f_r + 6 * _m_r / _a_w, "f_w");
  const _f_fill = finite(_F_suf * _a_w / _Omega_w, "f_fill");
  const _F_suw = finite(0.6 * _f_u_haz, "F_suw");
  const _f_base = finite(_F_suw * Math.min(finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w"), _t) / _Omega_w, "f_base");
  const _q_f = finite(Math.sqrt(3) * _F_suf / _Omega_w, "q_f");
  const _q_w = finite(Math.sqrt(3) * Math.min(_F_suf, _F_suw) / _Omega_w, "q_w");
  const _u = finite(_f_w / finite(Math.min(_f_fill, _f_base), "min(f_fill, f_base)"), "u");
  const _u_Rd = finite(1, "u_Rd");
  const _u_high = finite(Math.sqrt(3) * _f_w / _q_w * Math.max(finite(1 / _a_w, "1 / a_w"), finite(1 / _t, "1 / t")), "u_high");
  const _u_low = finite(_f_r / finite(_a_w * _q_f, "a_w * q_f"), "u_low");
  return [_V_hinged, _V_held, _M_held, _R_c, _L_n, _V_e, _M_e, _f_c, _f_z, _N_pull, _f_h, _e_r, _m_r, _f_r, _f_w, _f_fill, _F_suw, _f_base, _q_f, _q_w, _u, _u_Rd, _u_high, _u_low];
}

export function weldAluminiumBySolution_partialFactors(v: Readonly<Record<"t" | "k_r" | "a_w" | "f_w_k" | "f_u_haz" | "gamma_Mw" | "f_1z" | "f_1h" | "f_1l" | "m_1", number>>): number[] {
  const _t = v.t;
  const _k_r = v.k_r;
  const _a_w = v.a_w;
  const _f_w_k = v.f_w_k;
  const _f_u_haz = v.f_u_haz;
  const _gamma_Mw = v.gamma_Mw;
  const _f_1z = v.f_1z;
  const _f_1h = v.f_1h;
  const _f_1l = v.f_1l;
  const _m_1 = v.m_1;
  const _f_z = finite(_k_r * _f_1z, "f_z");
  const _f_h = finite(_k_r * _f_1h, "f_h");
  const _e_r = finite(_a_w / finite(2 * Math.sqrt(2), "2 * sqrt(2)"), "e_r");
  const _m_r = finite(Math.abs(_f_z) * _e_r + _k_r * _m_1, "m_r");
  const _sigma_s = finite(Math.abs(_f_z + _f_h) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w") + 6 * _m_r / finite(Math.pow(_a_w, 2), "a_w ^ 2"), "sigma_s");
  const _tau_s = finite(Math.abs(_f_z - _f_h) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w"), "tau_s");
  const _sigma_v = finite(Math.sqrt(Math.pow(_sigma_s, 2) + 3 * (Math.pow(_tau_s, 2) + Math.pow(finite(_k_r * _f_1l / _a_w, "k_r * f_1l / a_w"), 2))), "sigma_v");
  const _f_r = finite(Math.sqrt(Math.pow(_f_z, 2) + Math.pow(_f_h, 2) + Math.pow(finite(_k_r * _f_1l, "k_r * f_1l"), 2)), "f_r");
  const _f_w = finite(_f_r + 6 * _m_r / _a_w, "f_w");
  const _u_w = finite(_sigma_v / finite(_f_w_k / _gamma_Mw, "f_w_k / gamma_Mw"), "u_w");
  const _s_haz = finite(Math.sqrt(Math.pow(finite(Math.max(_f_z, _f_h), "max(f_z, f_h)"), 2) + 3 * Math.pow(finite(Math.min(_f_z, _f_h), "min(f_z, f_h)"), 2)) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w"), "s_haz");
  const _s_haz_v = finite(Math.sqrt(Math.pow(finite(Math.min(_f_z, _f_h), "min(f_z, f_h)"), 2) + 3 * Math.pow(finite(Math.max(_f_z, _f_h), "max(f_z, f_h)"), 2)) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w"), "s_haz_v");
  const _s_toe = finite(Math.sqrt(Math.pow(_f_h, 2) + 3 * Math.pow(_f_z, 2)) / _t, "s_toe");
  const _u_haz = finite(Math.max(_s_haz, _s_haz_v, _s_toe) / finite(_f_u_haz / _gamma_Mw, "f_u_haz / gamma_Mw"), "u_haz");
  const _q_f = finite(_f_w_k / _gamma_Mw, "q_f");
  const _q_w = finite(Math.min(_f_w_k, _f_u_haz) / _gamma_Mw, "q_w");
  const _u = finite(Math.max(_u_w, _u_haz), "u");
  const _u_Rd = finite(1, "u_Rd");
  const _u_high = finite(Math.sqrt(3) * _f_w / _q_w * Math.max(finite(1 / _a_w, "1 / a_w"), finite(1 / _t, "1 / t")), "u_high");
  const _u_low = finite(_f_r / finite(_a_w * _q_f, "a_w * q_f"), "u_low");
  return [_f_z, _f_h, _e_r, _m_r, _sigma_s, _tau_s, _sigma_v, _f_r, _f_w, _u_w, _s_haz, _s_haz_v, _s_toe, _u_haz, _q_f, _q_w, _u, _u_Rd, _u_high, _u_low];
}

export function weldAluminiumBySolution_allowableStress(v: Readonly<Record<"t" | "k_r" | "a_w" | "f_u_haz" | "F_suf" | "Omega_w" | "f_1z" | "f_1h" | "f_1l" | "m_1", number>>): number[] {
  const _t = v.t;
  const _k_r = v.k_r;
  const _a_w = v.a_w;
  const _f_u_haz = v.f_u_haz;
  const _F_suf = v.F_suf;
  const _Omega_w = v.Omega_w;
  const _f_1z = v.f_1z;
  const _f_1h = v.f_1h;
  const _f_1l = v.f_1l;
  const _m_1 = v.m_1;
  const _f_z = finite(_k_r * _f_1z, "f_z");
  const _f_h = finite(_k_r * _f_1h, "f_h");
  const _e_r = finite(_a_w / finite(2 * Math.sqrt(2), "2 * sqrt(2)"), "e_r");
  const _m_r = finite(Math.abs(_f_z) * _e_r + _k_r * _m_1, "m_r");
  const _f_r = finite(Math.sqrt(Math.pow(_f_z, 2) + Math.pow(_f_h, 2) + Math.pow(finite(_k_r * _f_1l, "k_r * f_1l"), 2)), "f_r");
  const _f_w = finite(_f_r + 6 * _m_r / _a_w, "f_w");
  const _f_fill = finite(_F_suf * _a_w / _Omega_w, "f_fill");
  const _F_suw = finite(0.6 * _f_u_haz, "F_suw");
  const _f_base = finite(_F_suw * Math.min(finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w"), _t) / _Omega_w, "f_base");
  const _q_f = finite(Math.sqrt(3) * _F_suf / _Omega_w, "q_f");
  const _q_w = finite(Math.sqrt(3) * Math.min(_F_suf, _F_suw) / _Omega_w, "q_w");
  const _u = finite(_f_w / finite(Math.min(_f_fill, _f_base), "min(f_fill, f_base)"), "u");
  const _u_Rd = finite(1, "u_Rd");
  const _u_high = finite(Math.sqrt(3) * _f_w / _q_w * Math.max(finite(1 / _a_w, "1 / a_w"), finite(1 / _t, "1 / t")), "u_high");
  const _u_low = finite(_f_r / finite(_a_w * _q_f, "a_w * q_f"), "u_low");
  return [_f_z, _f_h, _e_r, _m_r, _f_r, _f_w, _f_fill, _F_suw, _f_base, _q_f, _q_w, _u, _u_Rd, _u_high, _u_low];
}

export function weldGroupInPlane_partialFactors(v: Readonly<Record<"a_p" | "b_p" | "l_x" | "l_y" | "n_x" | "n_y" | "r_x" | "r_y" | "A_f" | "t_0" | "rho" | "g" | "k_dyn" | "gamma_L" | "a_w" | "f_u" | "beta_w" | "gamma_M2", number>>, k: Readonly<Record<"welds.sideLost.inPlane", (...values: number[]) => number>>): number[] {
  const _a_p = v.a_p;
  const _b_p = v.b_p;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _r_x = v.r_x;
  const _r_y = v.r_y;
  const _A_f = v.A_f;
  const _t_0 = v.t_0;
  const _rho = v.rho;
  const _g = v.g;
  const _k_dyn = v.k_dyn;
  const _gamma_L = v.gamma_L;
  const _a_w = v.a_w;
  const _f_u = v.f_u;
  const _beta_w = v.beta_w;
  const _gamma_M2 = v.gamma_M2;
  const _W = finite(_gamma_L * _k_dyn * _rho * _A_f * _t_0 * _g, "W");
  const _f_v = finite(k["welds.sideLost.inPlane"](_a_p, _b_p, _l_x, _l_y, _n_x, _n_y, _r_x, _r_y, _W), "f_v");
  const _f_Rd = finite(_f_u / finite(Math.sqrt(3) * _beta_w * _gamma_M2, "sqrt(3) * beta_w * gamma_M2") * _a_w, "f_Rd");
  const _f_low = finite(_W / finite(2 * _n_x * _r_x + 2 * _n_y * _r_y, "2 * n_x * r_x + 2 * n_y * r_y"), "f_low");
  const _f_one_x = finite(_n_x > 0 ? _W / finite(_n_x * _r_x, "n_x * r_x") * (1 + 3 * _b_p / _l_x) : 0 * _f_low, "f_one_x");
  const _f_one_y = finite(_n_y > 0 ? _W / finite(_n_y * _r_y, "n_y * r_y") * (1 + 3 * _a_p / _l_y) : 0 * _f_low, "f_one_y");
  const _f_high = finite(Math.max(_f_one_x, _f_one_y), "f_high");
  return [_W, _f_v, _f_Rd, _f_low, _f_one_x, _f_one_y, _f_high];
}

export function weldGroupInPlane_allowableStress(v: Readonly<Record<"a_p" | "b_p" | "l_x" | "l_y" | "n_x" | "n_y" | "r_x" | "r_y" | "A_f" | "t_0" | "rho" | "g" | "k_dyn" | "gamma_L" | "a_w" | "f_u" | "F_EXX" | "f_yb" | "t_b" | "Omega_J" | "Omega_v", number>>, k: Readonly<Record<"welds.sideLost.inPlane", (...values: number[]) => number>>): number[] {
  const _a_p = v.a_p;
  const _b_p = v.b_p;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _r_x = v.r_x;
  const _r_y = v.r_y;
  const _A_f = v.A_f;
  const _t_0 = v.t_0;
  const _rho = v.rho;
  const _g = v.g;
  const _k_dyn = v.k_dyn;
  const _gamma_L = v.gamma_L;
  const _a_w = v.a_w;
  const _f_u = v.f_u;
  const _F_EXX = v.F_EXX;
  const _f_yb = v.f_yb;
  const _t_b = v.t_b;
  const _Omega_J = v.Omega_J;
  const _Omega_v = v.Omega_v;
  const _W = finite(_gamma_L * _k_dyn * _rho * _A_f * _t_0 * _g, "W");
  const _f_v = finite(k["welds.sideLost.inPlane"](_a_p, _b_p, _l_x, _l_y, _n_x, _n_y, _r_x, _r_y, _W), "f_v");
  const _f_Rd = finite(Math.min(finite(0.6 * _F_EXX * _a_w / _Omega_J, "0.6 * F_EXX * a_w / Omega_J"), finite(0.6 * _f_u * _t_b / _Omega_J, "0.6 * f_u * t_b / Omega_J"), finite(0.6 * _f_yb * _t_b / _Omega_v, "0.6 * f_yb * t_b / Omega_v")), "f_Rd");
  const _f_low = finite(_W / finite(2 * _n_x * _r_x + 2 * _n_y * _r_y, "2 * n_x * r_x + 2 * n_y * r_y"), "f_low");
  const _f_one_x = finite(_n_x > 0 ? _W / finite(_n_x * _r_x, "n_x * r_x") * (1 + 3 * _b_p / _l_x) : 0 * _f_low, "f_one_x");
  const _f_one_y = finite(_n_y > 0 ? _W / finite(_n_y * _r_y, "n_y * r_y") * (1 + 3 * _a_p / _l_y) : 0 * _f_low, "f_one_y");
  const _f_high = finite(Math.max(_f_one_x, _f_one_y), "f_high");
  return [_W, _f_v, _f_Rd, _f_low, _f_one_x, _f_one_y, _f_high];
}

export function weldGroupUltimate_partialFactors(v: Readonly<Record<"a_p" | "b_p" | "l_x" | "l_y" | "n_x" | "n_y" | "r_x" | "r_y" | "A_f" | "t_0" | "rho" | "g" | "k_dyn" | "gamma_L" | "a_w" | "f_u" | "beta_w" | "k_theta" | "gamma_M2", number>>, k: Readonly<Record<"welds.sideLost.length" | "welds.sideLost.inPlane", (...values: number[]) => number>>): number[] {
  const _a_p = v.a_p;
  const _b_p = v.b_p;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _r_x = v.r_x;
  const _r_y = v.r_y;
  const _A_f = v.A_f;
  const _t_0 = v.t_0;
  const _rho = v.rho;
  const _g = v.g;
  const _k_dyn = v.k_dyn;
  const _gamma_L = v.gamma_L;
  const _a_w = v.a_w;
  const _f_u = v.f_u;
  const _beta_w = v.beta_w;
  const _k_theta = v.k_theta;
  const _gamma_M2 = v.gamma_M2;
  const _W = finite(_gamma_L * _k_dyn * _rho * _A_f * _t_0 * _g, "W");
  const _f_Rd = finite(_f_u / finite(Math.sqrt(3) * _beta_w * _gamma_M2, "sqrt(3) * beta_w * gamma_M2") * _a_w, "f_Rd");
  const _l_C = finite(k["welds.sideLost.length"](_a_p, _b_p, _l_x, _l_y, _n_x, _n_y, _r_x, _r_y, _k_theta), "l_C");
  const _P_Rd = finite(_l_C * _f_Rd, "P_Rd");
  const _f_1 = finite(k["welds.sideLost.inPlane"](_a_p, _b_p, _l_x, _l_y, _n_x, _n_y, _r_x, _r_y, _W), "f_1");
  const _P_low = finite(0.95 * _f_Rd * _W / _f_1, "P_low");
  const _P_high = finite((2 * _n_x * _r_x + 2 * _n_y * _r_y) * _f_Rd, "P_high");
  return [_W, _f_Rd, _l_C, _P_Rd, _f_1, _P_low, _P_high];
}

export function weldGroupUltimate_allowableStress(v: Readonly<Record<"a_p" | "b_p" | "l_x" | "l_y" | "n_x" | "n_y" | "r_x" | "r_y" | "A_f" | "t_0" | "rho" | "g" | "k_dyn" | "gamma_L" | "a_w" | "f_u" | "F_EXX" | "f_yb" | "t_b" | "k_theta" | "Omega_J" | "Omega_v", number>>, k: Readonly<Record<"welds.sideLost.length" | "welds.sideLost.inPlane", (...values: number[]) => number>>): number[] {
  const _a_p = v.a_p;
  const _b_p = v.b_p;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _r_x = v.r_x;
  const _r_y = v.r_y;
  const _A_f = v.A_f;
  const _t_0 = v.t_0;
  const _rho = v.rho;
  const _g = v.g;
  const _k_dyn = v.k_dyn;
  const _gamma_L = v.gamma_L;
  const _a_w = v.a_w;
  const _f_u = v.f_u;
  const _F_EXX = v.F_EXX;
  const _f_yb = v.f_yb;
  const _t_b = v.t_b;
  const _k_theta = v.k_theta;
  const _Omega_J = v.Omega_J;
  const _Omega_v = v.Omega_v;
  const _W = finite(_gamma_L * _k_dyn * _rho * _A_f * _t_0 * _g, "W");
  const _f_Rd = finite(Math.min(finite(0.6 * _F_EXX * _a_w / _Omega_J, "0.6 * F_EXX * a_w / Omega_J"), finite(0.6 * _f_u * _t_b / _Omega_J, "0.6 * f_u * t_b / Omega_J"), finite(0.6 * _f_yb * _t_b / _Omega_v, "0.6 * f_yb * t_b / Omega_v")), "f_Rd");
  const _l_C = finite(k["welds.sideLost.length"](_a_p, _b_p, _l_x, _l_y, _n_x, _n_y, _r_x, _r_y, _k_theta), "l_C");
  const _P_Rd = finite(_l_C * _f_Rd, "P_Rd");
  const _f_1 = finite(k["welds.sideLost.inPlane"](_a_p, _b_p, _l_x, _l_y, _n_x, _n_y, _r_x, _r_y, _W), "f_1");
  const _P_low = finite(0.95 * _f_Rd * _W / _f_1, "P_low");
  const _P_high = finite((2 * _n_x * _r_x + 2 * _n_y * _r_y) * _f_Rd, "P_high");
  return [_W, _f_Rd, _l_C, _P_Rd, _f_1, _P_low, _P_high];
}

export function weldGroupAcross_partialFactors(v: Readonly<Record<"a_p" | "b_p" | "l_x" | "l_y" | "n_x" | "n_y" | "r_x" | "r_y" | "A_f" | "t_0" | "rho" | "g" | "k_dyn" | "gamma_L" | "a_w" | "f_u" | "beta_w" | "f_h" | "gamma_M2", number>>, k: Readonly<Record<"welds.sideLost.across", (...values: number[]) => number>>): number[] {
  const _a_p = v.a_p;
  const _b_p = v.b_p;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _r_x = v.r_x;
  const _r_y = v.r_y;
  const _A_f = v.A_f;
  const _t_0 = v.t_0;
  const _rho = v.rho;
  const _g = v.g;
  const _k_dyn = v.k_dyn;
  const _gamma_L = v.gamma_L;
  const _a_w = v.a_w;
  const _f_u = v.f_u;
  const _beta_w = v.beta_w;
  const _f_h = v.f_h;
  const _gamma_M2 = v.gamma_M2;
  const _W = finite(_gamma_L * _k_dyn * _rho * _A_f * _t_0 * _g, "W");
  const _f_z = finite(k["welds.sideLost.across"](_a_p, _b_p, _l_x, _l_y, _n_x, _n_y, _r_x, _r_y, _W), "f_z");
  const _e_r = finite(_a_w / finite(2 * Math.sqrt(2), "2 * sqrt(2)"), "e_r");
  const _m_r = finite(_f_z * _e_r, "m_r");
  const _f_r = finite(Math.sqrt(Math.pow(_f_z, 2) + Math.pow(_f_h, 2)), "f_r");
  const _f_w = finite(_f_r + 6 * _m_r / _a_w, "f_w");
  const _f_Rd = finite(_f_u / finite(Math.sqrt(3) * _beta_w * _gamma_M2, "sqrt(3) * beta_w * gamma_M2") * _a_w, "f_Rd");
  const _f_all = finite(_W / finite(2 * _n_x * _r_x + 2 * _n_y * _r_y, "2 * n_x * r_x + 2 * n_y * r_y"), "f_all");
  const _f_pair = finite(_W / finite(2 * Math.min(finite(_n_x * _r_x, "n_x * r_x"), finite(_n_y * _r_y, "n_y * r_y")), "2 * min(n_x * r_x, n_y * r_y)"), "f_pair");
  const _f_low = finite((1 + 3 / finite(Math.sqrt(2), "sqrt(2)")) * _f_all, "f_low");
  const _f_high = finite(2 * (1 + 3 / finite(Math.sqrt(2), "sqrt(2)")) * _f_pair, "f_high");
  return [_W, _f_z, _e_r, _m_r, _f_r, _f_w, _f_Rd, _f_all, _f_pair, _f_low, _f_high];
}

export function weldGroupAcross_allowableStress(v: Readonly<Record<"a_p" | "b_p" | "l_x" | "l_y" | "n_x" | "n_y" | "r_x" | "r_y" | "A_f" | "t_0" | "rho" | "g" | "k_dyn" | "gamma_L" | "a_w" | "f_u" | "F_EXX" | "f_yb" | "t_b" | "f_h" | "Omega_J" | "Omega_v", number>>, k: Readonly<Record<"welds.sideLost.across", (...values: number[]) => number>>): number[] {
  const _a_p = v.a_p;
  const _b_p = v.b_p;
  const _l_x = v.l_x;
  const _l_y = v.l_y;
  const _n_x = v.n_x;
  const _n_y = v.n_y;
  const _r_x = v.r_x;
  const _r_y = v.r_y;
  const _A_f = v.A_f;
  const _t_0 = v.t_0;
  const _rho = v.rho;
  const _g = v.g;
  const _k_dyn = v.k_dyn;
  const _gamma_L = v.gamma_L;
  const _a_w = v.a_w;
  const _f_u = v.f_u;
  const _F_EXX = v.F_EXX;
  const _f_yb = v.f_yb;
  const _t_b = v.t_b;
  const _f_h = v.f_h;
  const _Omega_J = v.Omega_J;
  const _Omega_v = v.Omega_v;
  const _W = finite(_gamma_L * _k_dyn * _rho * _A_f * _t_0 * _g, "W");
  const _f_z = finite(k["welds.sideLost.across"](_a_p, _b_p, _l_x, _l_y, _n_x, _n_y, _r_x, _r_y, _W), "f_z");
  const _e_r = finite(_a_w / finite(2 * Math.sqrt(2), "2 * sqrt(2)"), "e_r");
  const _m_r = finite(_f_z * _e_r, "m_r");
  const _f_r = finite(Math.sqrt(Math.pow(_f_z, 2) + Math.pow(_f_h, 2)), "f_r");
  const _f_w = finite(_f_r + 6 * _m_r / _a_w, "f_w");
  const _f_Rd = finite(Math.min(finite(0.6 * _F_EXX * _a_w / _Omega_J, "0.6 * F_EXX * a_w / Omega_J"), finite(0.6 * _f_u * _t_b / _Omega_J, "0.6 * f_u * t_b / Omega_J"), finite(0.6 * _f_yb * _t_b / _Omega_v, "0.6 * f_yb * t_b / Omega_v")), "f_Rd");
  const _f_all = finite(_W / finite(2 * _n_x * _r_x + 2 * _n_y * _r_y, "2 * n_x * r_x + 2 * n_y * r_y"), "f_all");
  const _f_pair = finite(_W / finite(2 * Math.min(finite(_n_x * _r_x, "n_x * r_x"), finite(_n_y * _r_y, "n_y * r_y")), "2 * min(n_x * r_x, n_y * r_y)"), "f_pair");
  const _f_low = finite((1 + 3 / finite(Math.sqrt(2), "sqrt(2)")) * _f_all, "f_low");
  const _f_high = finite(2 * (1 + 3 / finite(Math.sqrt(2), "sqrt(2)")) * _f_pair, "f_high");
  return [_W, _f_z, _e_r, _m_r, _f_r, _f_w, _f_Rd, _f_all, _f_pair, _f_low, _f_high];
}

export function weldPlug_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "f_u" | "beta_w" | "d_p" | "p_far" | "gamma_M2", number>>, k: Readonly<Record<"inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _f_u = v.f_u;
  const _beta_w = v.beta_w;
  const _d_p = v.d_p;
  const _p_far = v.p_far;
  const _gamma_M2 = v.gamma_M2;
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * _p_far, "F_v");
  const _A_w = finite(Math.PI / 4 * Math.pow(_d_p, 2), "A_w");
  const _F_w_Rd = finite(_f_u / finite(Math.sqrt(3) * _beta_w * _gamma_M2, "sqrt(3) * beta_w * gamma_M2") * _A_w, "F_w_Rd");
  const _F_low = finite(0.29 * _f_u * _A_w, "F_low");
  const _F_high = finite(_f_u / finite(Math.sqrt(3), "sqrt(3)") * _A_w, "F_high");
  return [_L_n, _N_pull, _F_v, _A_w, _F_w_Rd, _F_low, _F_high];
}

export function weldPlug_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "h_x" | "h_y" | "f_u" | "F_EXX" | "d_p" | "p_far" | "Omega_J", number>>, k: Readonly<Record<"inPlanePull.hinged", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _h_x = v.h_x;
  const _h_y = v.h_y;
  const _f_u = v.f_u;
  const _F_EXX = v.F_EXX;
  const _d_p = v.d_p;
  const _p_far = v.p_far;
  const _Omega_J = v.Omega_J;
  const _L_n = finite(_h_x > 0 ? (_h_y > 0 ? Math.min(_a, _b) : _a) : _b, "L_n");
  const _N_pull = finite(k["inPlanePull.hinged"](_L_n, _L_n, _t, _E, _nu, _p), "N_pull");
  const _F_v = finite(_N_pull * _p_far, "F_v");
  const _A_w = finite(Math.PI / 4 * Math.pow(_d_p, 2), "A_w");
  const _F_w_Rd = finite(0.6 * _F_EXX * _A_w / _Omega_J, "F_w_Rd");
  const _F_low = finite(0.29 * _f_u * _A_w, "F_low");
  const _F_high = finite(_f_u / finite(Math.sqrt(3), "sqrt(3)") * _A_w, "F_high");
  return [_L_n, _N_pull, _F_v, _A_w, _F_w_Rd, _F_low, _F_high];
}

export function weldPlugSize_partialFactors(v: Readonly<Record<"d_p" | "t_0" | "c_8" | "c_3", number>>): number[] {
  const _d_p = v.d_p;
  const _t_0 = v.t_0;
  const _c_8 = v.c_8;
  const _c_3 = v.c_3;
  const _d_min = finite(_t_0 + _c_8, "d_min");
  const _d_max = finite(Math.max(finite(_d_min + _c_3, "d_min + c_3"), finite(2.25 * _t_0, "2.25 * t_0")), "d_max");
  const _d_low = finite(_t_0, "d_low");
  const _d_high = finite(_t_0 + 13 / 8 * _c_8, "d_high");
  const _range0 = finite(_d_p <= _d_max ? 1 : 0, "range0");
  return [_d_min, _d_max, _d_low, _d_high, _range0];
}

export function weldPlugSize_allowableStress(v: Readonly<Record<"d_p" | "t_0" | "c_8" | "c_3", number>>): number[] {
  const _d_p = v.d_p;
  const _t_0 = v.t_0;
  const _c_8 = v.c_8;
  const _c_3 = v.c_3;
  const _d_min = finite(_t_0 + _c_8, "d_min");
  const _d_max = finite(Math.max(finite(_d_min + _c_3, "d_min + c_3"), finite(2.25 * _t_0, "2.25 * t_0")), "d_max");
  const _d_low = finite(_t_0, "d_low");
  const _d_high = finite(_t_0 + 13 / 8 * _c_8, "d_high");
  const _range0 = finite(_d_p <= _d_max ? 1 : 0, "range0");
  return [_d_min, _d_max, _d_low, _d_high, _range0];
}

export function weldPlugPitch_partialFactors(v: Readonly<Record<"d_p" | "t_0" | "p_far" | "p_200", number>>): number[] {
  const _d_p = v.d_p;
  const _t_0 = v.t_0;
  const _p_far = v.p_far;
  const _p_200 = v.p_200;
  const _p_min = finite(4 * _d_p, "p_min");
  const _p_max = finite(Math.min(finite(14 * _t_0, "14 * t_0"), _p_200), "p_max");
  const _p_low = finite(2 * _d_p, "p_low");
  const _p_high = finite(6 * _d_p, "p_high");
  const _range0 = finite(_p_far <= _p_max ? 1 : 0, "range0");
  return [_p_min, _p_max, _p_low, _p_high, _range0];
}

export function weldPlugPitch_allowableStress(v: Readonly<Record<"d_p" | "t_0" | "p_far" | "p_200", number>>): number[] {
  const _d_p = v.d_p;
  const _t_0 = v.t_0;
  const _p_far = v.p_far;
  const _p_200 = v.p_200;
  const _p_min = finite(4 * _d_p, "p_min");
  const _p_max = finite(Math.min(finite(14 * _t_0, "14 * t_0"), _p_200), "p_max");
  const _p_low = finite(2 * _d_p, "p_low");
  const _p_high = finite(6 * _d_p, "p_high");
  const _range0 = finite(_p_far <= _p_max ? 1 : 0, "range0");
  return [_p_min, _p_max, _p_low, _p_high, _range0];
}

export function tubeBending_partialFactors(v: Readonly<Record<"M_statics" | "round" | "H" | "B" | "t" | "W_el" | "W_pl" | "n_h" | "d_h" | "f_y" | "f_u" | "V" | "A_v" | "f_235" | "gamma_M0" | "gamma_M2", number>>): number[] {
  const _M_statics = v.M_statics;
  const _round = v.round;
  const _H = v.H;
  const _B = v.B;
  const _t = v.t;
  const _W_el = v.W_el;
  const _W_pl = v.W_pl;
  const _n_h = v.n_h;
  const _d_h = v.d_h;
  const _f_y = v.f_y;
  const _f_u = v.f_u;
  const _V = v.V;
  const _A_v = v.A_v;
  const _f_235 = v.f_235;
  const _gamma_M0 = v.gamma_M0;
  const _gamma_M2 = v.gamma_M2;
  const _b_f = finite(_round > 0 ? Math.PI / 4 * (_B - 2 * _t) : _B - 2 * _t, "b_f");
  const _W_el_n = finite(_W_el - _n_h * _d_h * _t * (_H - _t), "W_el_n");
  const _W_pl_n = finite(_W_pl - _n_h * _d_h * _t * (_H - _t), "W_pl_n");
  const _lambda_f = finite((_B - 3 * _t) / _t, "lambda_f");
  const _lambda_w = finite((_H - 3 * _t) / _t, "lambda_w");
  const _epsilon = finite(Math.sqrt(_f_235 / _f_y), "epsilon");
  const _r_2 = finite(_round > 0 ? _H / _t / finite(70 * Math.pow(_epsilon, 2), "70 * epsilon ^ 2") : Math.max(finite(_lambda_f / finite(38 * _epsilon, "38 * epsilon"), "lambda_f / (38 * epsilon)"), finite(_lambda_w / finite(83 * _epsilon, "83 * epsilon"), "lambda_w / (83 * epsilon)")), "r_2");
  const _r_3 = finite(_round > 0 ? _H / _t / finite(90 * Math.pow(_epsilon, 2), "90 * epsilon ^ 2") : Math.max(finite(_lambda_f / finite(42 * _epsilon, "42 * epsilon"), "lambda_f / (42 * epsilon)"), finite(_lambda_w / finite(124 * _epsilon, "124 * epsilon"), "lambda_w / (124 * epsilon)")), "r_3");
  const _W = finite(_r_2 <= 1 ? _W_pl_n : _W_el_n, "W");
  const _V_pl = finite(_A_v * _f_y / finite(Math.sqrt(3) * _gamma_M0, "sqrt(3) * gamma_M0"), "V_pl");
  const _rho = finite(_V > finite(0.5 * _V_pl, "0.5 * V_pl") ? Math.pow(finite(2 * _V / _V_pl - 1, "2 * V / V_pl - 1"), 2) : 0, "rho");
  const _f_d = finite(_n_h > 0 ? Math.min(finite(_f_y / _gamma_M0, "f_y / gamma_M0"), finite(0.9 * _f_u / _gamma_M2, "0.9 * f_u / gamma_M2")) : _f_y / _gamma_M0, "f_d");
  const _M_Rd = finite((1 - _rho) * _W * _f_d, "M_Rd");
  const _M_high = finite(_M_statics, "M_high");
  const _range0 = finite(_r_3 <= 1 ? 1 : 0, "range0");
  const _range1 = finite(finite(_n_h * _d_h, "n_h * d_h") < _b_f ? 1 : 0, "range1");
  return [_b_f, _W_el_n, _W_pl_n, _lambda_f, _lambda_w, _epsilon, _r_2, _r_3, _W, _V_pl, _rho, _f_d, _M_Rd, _M_high, _range0, _range1];
}

export function tubeBending_allowableStress(v: Readonly<Record<"M_statics" | "round" | "H" | "B" | "t" | "W_el" | "W_pl" | "n_h" | "d_h" | "f_y" | "f_u" | "E" | "Omega_b", number>>): number[] {
  const _M_statics = v.M_statics;
  const _round = v.round;
  const _H = v.H;
  const _B = v.B;
  const _t = v.t;
  const _W_el = v.W_el;
  const _W_pl = v.W_pl;
  const _n_h = v.n_h;
  const _d_h = v.d_h;
  const _f_y = v.f_y;
  const _f_u = v.f_u;
  const _E = v.E;
  const _Omega_b = v.Omega_b;
  const _b_f = finite(_round > 0 ? Math.PI / 4 * (_B - 2 * _t) : _B - 2 * _t, "b_f");
  const _W_el_n = finite(_W_el - _n_h * _d_h * _t * (_H - _t), "W_el_n");
  const _W_pl_n = finite(_W_pl - _n_h * _d_h * _t * (_H - _t), "W_pl_n");
  const _lambda_f = finite((_B - 3 * _t) / _t, "lambda_f");
  const _lambda_w = finite((_H - 3 * _t) / _t, "lambda_w");
  const _beta_y = finite(Math.sqrt(_f_y / _E), "beta_y");
  const _M_p = finite(_W_pl_n * _f_y, "M_p");
  const _M_f = finite(finite(_lambda_f * _beta_y, "lambda_f * beta_y") <= 1.12 ? _M_p : Math.min(_M_p, finite(_M_p - (_M_p - _f_y * _W_el_n) * (3.57 * _lambda_f * _beta_y - 4), "M_p - (M_p - f_y * W_el_n) * (3.57 * lambda_f * beta_y - 4)")), "M_f");
  const _M_w = finite(finite(_lambda_w * _beta_y, "lambda_w * beta_y") <= 2.42 ? _M_p : Math.min(_M_p, finite(_M_p - (_M_p - _f_y * _W_el_n) * (0.305 * _lambda_w * _beta_y - 0.738), "M_p - (M_p - f_y * W_el_n) * (0.305 * lambda_w * beta_y - 0.738)")), "M_w");
  const _M_o = finite(finite(_H / _t, "H / t") <= finite(0.07 * _E / _f_y, "0.07 * E / f_y") ? _M_p : Math.min(_M_p, finite((0.021 * _E / finite(_H / _t, "H / t") + _f_y) * _W_el_n, "(0.021 * E / (H / t) + f_y) * W_el_n")), "M_o");
  const _M_n = finite(_round > 0 ? _M_o : Math.min(_M_f, _M_w), "M_n");
  const _r_3 = finite(_round > 0 ? _H / _t / finite(0.31 * _E / _f_y, "0.31 * E / f_y") : Math.max(finite(_lambda_f * _beta_y / 1.4, "lambda_f * beta_y / 1.4"), finite(_lambda_w * _beta_y / 5.7, "lambda_w * beta_y / 5.7")), "r_3");
  const _Y_t = finite(_f_y <= finite(0.8 * _f_u, "0.8 * f_u") ? 1 : 1.1, "Y_t");
  const _part_n = finite((_B - _n_h * _d_h) / _B, "part_n");
  const _M_r = finite(_n_h === 0 ? _M_n : finite(_f_u * _part_n, "f_u * part_n") >= finite(_Y_t * _f_y, "Y_t * f_y") ? _M_n : Math.min(_M_n, finite(_f_u * _part_n * _W_el, "f_u * part_n * W_el")), "M_r");
  const _M_Rd = finite(_M_r / _Omega_b, "M_Rd");
  const _M_high = finite(_M_statics, "M_high");
  const _range0 = finite(_r_3 <= 1 ? 1 : 0, "range0");
  const _range1 = finite(finite(_n_h * _d_h, "n_h * d_h") < _b_f ? 1 : 0, "range1");
  return [_b_f, _W_el_n, _W_pl_n, _lambda_f, _lambda_w, _beta_y, _M_p, _M_f, _M_w, _M_o, _M_n, _r_3, _Y_t, _part_n, _M_r, _M_Rd, _M_high, _range0, _range1];
}

export function tubeBendingBySolution_partialFactors(v: Readonly<Record<"M_statics" | "round" | "H" | "B" | "t" | "W_el" | "W_pl" | "n_h" | "d_h" | "f_y" | "f_u" | "V" | "A_v" | "f_235" | "gamma_M0" | "gamma_M2", number>>): number[] {
  const _M_statics = v.M_statics;
  const _round = v.round;
  const _H = v.H;
  const _B = v.B;
  const _t = v.t;
  const _W_el = v.W_el;
  const _W_pl = v.W_pl;
  const _n_h = v.n_h;
  const _d_h = v.d_h;
  const _f_y = v.f_y;
  const _f_u = v.f_u;
  const _V = v.V;
  const _A_v = v.A_v;
  const _f_235 = v.f_235;
  const _gamma_M0 = v.gamma_M0;
  const _gamma_M2 = v.gamma_M2;
  const _b_f = finite(_round > 0 ? Math.PI / 4 * (_B - 2 * _t) : _B - 2 * _t, "b_f");
  const _W_el_n = finite(_W_el - _n_h * _d_h * _t * (_H - _t), "W_el_n");
  const _W_pl_n = finite(_W_pl - _n_h * _d_h * _t * (_H - _t), "W_pl_n");
  const _lambda_f = finite((_B - 3 * _t) / _t, "lambda_f");
  const _lambda_w = finite((_H - 3 * _t) / _t, "lambda_w");
  const _epsilon = finite(Math.sqrt(_f_235 / _f_y), "epsilon");
  const _r_2 = finite(_round > 0 ? _H / _t / finite(70 * Math.pow(_epsilon, 2), "70 * epsilon ^ 2") : Math.max(finite(_lambda_f / finite(38 * _epsilon, "38 * epsilon"), "lambda_f / (38 * epsilon)"), finite(_lambda_w / finite(83 * _epsilon, "83 * epsilon"), "lambda_w / (83 * epsilon)")), "r_2");
  const _r_3 = finite(_round > 0 ? _H / _t / finite(90 * Math.pow(_epsilon, 2), "90 * epsilon ^ 2") : Math.max(finite(_lambda_f / finite(42 * _epsilon, "42 * epsilon"), "lambda_f / (42 * epsilon)"), finite(_lambda_w / finite(124 * _epsilon, "124 * epsilon"), "lambda_w / (124 * epsilon)")), "r_3");
  const _W = finite(_r_2 <= 1 ? _W_pl_n : _W_el_n, "W");
  const _V_pl = finite(_A_v * _f_y / finite(Math.sqrt(3) * _gamma_M0, "sqrt(3) * gamma_M0"), "V_pl");
  const _rho = finite(_V > finite(0.5 * _V_pl, "0.5 * V_pl") ? Math.pow(finite(2 * _V / _V_pl - 1, "2 * V / V_pl - 1"), 2) : 0, "rho");
  const _f_d = finite(_n_h > 0 ? Math.min(finite(_f_y / _gamma_M0, "f_y / gamma_M0"), finite(0.9 * _f_u / _gamma_M2, "0.9 * f_u / gamma_M2")) : _f_y / _gamma_M0, "f_d");
  const _M_Rd = finite((1 - _rho) * _W * _f_d, "M_Rd");
  const _M_high = finite(_M_statics, "M_high");
  const _range0 = finite(_r_3 <= 1 ? 1 : 0, "range0");
  const _range1 = finite(finite(_n_h * _d_h, "n_h * d_h") < _b_f ? 1 : 0, "range1");
  return [_b_f, _W_el_n, _W_pl_n, _lambda_f, _lambda_w, _epsilon, _r_2, _r_3, _W, _V_pl, _rho, _f_d, _M_Rd, _M_high, _range0, _range1];
}

export function tubeBendingBySolution_allowableStress(v: Readonly<Record<"M_statics" | "round" | "H" | "B" | "t" | "W_el" | "W_pl" | "n_h" | "d_h" | "f_y" | "f_u" | "E" | "Omega_b", number>>): number[] {
  const _M_statics = v.M_statics;
  const _round = v.round;
  const _H = v.H;
  const _B = v.B;
  const _t = v.t;
  const _W_el = v.W_el;
  const _W_pl = v.W_pl;
  const _n_h = v.n_h;
  const _d_h = v.d_h;
  const _f_y = v.f_y;
  const _f_u = v.f_u;
  const _E = v.E;
  const _Omega_b = v.Omega_b;
  const _b_f = finite(_round > 0 ? Math.PI / 4 * (_B - 2 * _t) : _B - 2 * _t, "b_f");
  const _W_el_n = finite(_W_el - _n_h * _d_h * _t * (_H - _t), "W_el_n");
  const _W_pl_n = finite(_W_pl - _n_h * _d_h * _t * (_H - _t), "W_pl_n");
  const _lambda_f = finite((_B - 3 * _t) / _t, "lambda_f");
  const _lambda_w = finite((_H - 3 * _t) / _t, "lambda_w");
  const _beta_y = finite(Math.sqrt(_f_y / _E), "beta_y");
  const _M_p = finite(_W_pl_n * _f_y, "M_p");
  const _M_f = finite(finite(_lambda_f * _beta_y, "lambda_f * beta_y") <= 1.12 ? _M_p : Math.min(_M_p, finite(_M_p - (_M_p - _f_y * _W_el_n) * (3.57 * _lambda_f * _beta_y - 4), "M_p - (M_p - f_y * W_el_n) * (3.57 * lambda_f * beta_y - 4)")), "M_f");
  const _M_w = finite(finite(_lambda_w * _beta_y, "lambda_w * beta_y") <= 2.42 ? _M_p : Math.min(_M_p, finite(_M_p - (_M_p - _f_y * _W_el_n) * (0.305 * _lambda_w * _beta_y - 0.738), "M_p - (M_p - f_y * W_el_n) * (0.305 * lambda_w * beta_y - 0.738)")), "M_w");
  const _M_o = finite(finite(_H / _t, "H / t") <= finite(0.07 * _E / _f_y, "0.07 * E / f_y") ? _M_p : Math.min(_M_p, finite((0.021 * _E / finite(_H / _t, "H / t") + _f_y) * _W_el_n, "(0.021 * E / (H / t) + f_y) * W_el_n")), "M_o");
  const _M_n = finite(_round > 0 ? _M_o : Math.min(_M_f, _M_w), "M_n");
  const _r_3 = finite(_round > 0 ? _H / _t / finite(0.31 * _E / _f_y, "0.31 * E / f_y") : Math.max(finite(_lambda_f * _beta_y / 1.4, "lambda_f * beta_y / 1.4"), finite(_lambda_w * _beta_y / 5.7, "lambda_w * beta_y / 5.7")), "r_3");
  const _Y_t = finite(_f_y <= finite(0.8 * _f_u, "0.8 * f_u") ? 1 : 1.1, "Y_t");
  const _part_n = finite((_B - _n_h * _d_h) / _B, "part_n");
  const _M_r = finite(_n_h === 0 ? _M_n : finite(_f_u * _part_n, "f_u * part_n") >= finite(_Y_t * _f_y, "Y_t * f_y") ? _M_n : Math.min(_M_n, finite(_f_u * _part_n * _W_el, "f_u * part_n * W_el")), "M_r");
  const _M_Rd = finite(_M_r / _Omega_b, "M_Rd");
  const _M_high = finite(_M_statics, "M_high");
  const _range0 = finite(_r_3 <= 1 ? 1 : 0, "range0");
  const _range1 = finite(finite(_n_h * _d_h, "n_h * d_h") < _b_f ? 1 : 0, "range1");
  return [_b_f, _W_el_n, _W_pl_n, _lambda_f, _lambda_w, _beta_y, _M_p, _M_f, _M_w, _M_o, _M_n, _r_3, _Y_t, _part_n, _M_r, _M_Rd, _M_high, _range0, _range1];
}

export function tubeShear_partialFactors(v: Readonly<Record<"round" | "H" | "t" | "f_y" | "A_v" | "f_235" | "gamma_M0", number>>): number[] {
  const _round = v.round;
  const _H = v.H;
  const _t = v.t;
  const _f_y = v.f_y;
  const _A_v = v.A_v;
  const _f_235 = v.f_235;
  const _gamma_M0 = v.gamma_M0;
  const _r_w = finite(_round > 0 ? 0 : (_H - 3 * _t) / _t / finite(72 * Math.sqrt(_f_235 / _f_y), "72 * sqrt(f_235 / f_y)"), "r_w");
  const _tau_Rd = finite(_f_y / finite(Math.sqrt(3) * _gamma_M0, "sqrt(3) * gamma_M0"), "tau_Rd");
  const _V_Rd = finite(_A_v * _tau_Rd, "V_Rd");
  const _V_high = finite(2 * _H * _t * _tau_Rd, "V_high");
  const _V_low = finite(1.5 * (_H - 4 * _t) * _t * _tau_Rd, "V_low");
  const _range0 = finite(_r_w <= 1 ? 1 : 0, "range0");
  return [_r_w, _tau_Rd, _V_Rd, _V_high, _V_low, _range0];
}

export function tubeShear_allowableStress(v: Readonly<Record<"round" | "H" | "t" | "f_y" | "A" | "E" | "Omega_v", number>>): number[] {
  const _round = v.round;
  const _H = v.H;
  const _t = v.t;
  const _f_y = v.f_y;
  const _A = v.A;
  const _E = v.E;
  const _Omega_v = v.Omega_v;
  const _r_w = finite(_round > 0 ? 0 : (_H - 3 * _t) / _t / finite(1.1 * Math.sqrt(5 * _E / _f_y), "1.1 * sqrt(5 * E / f_y)"), "r_w");
  const _F_cr = finite(_round > 0 ? Math.min(finite(0.6 * _f_y, "0.6 * f_y"), finite(0.78 * _E / finite(Math.pow(finite(_H / _t, "H / t"), 1.5), "(H / t) ^ 1.5"), "0.78 * E / (H / t) ^ 1.5")) : 0.6 * _f_y, "F_cr");
  const _tau_Rd = finite(_F_cr / _Omega_v, "tau_Rd");
  const _V_Rd = finite(_round > 0 ? _A / 2 * _tau_Rd : 2 * (_H - 3 * _t) * _t * _tau_Rd, "V_Rd");
  const _V_high = finite(2 * _H * _t * _tau_Rd, "V_high");
  const _V_low = finite(1.5 * (_H - 4 * _t) * _t * _tau_Rd, "V_low");
  const _range0 = finite(_r_w <= 1 ? 1 : 0, "range0");
  return [_r_w, _F_cr, _tau_Rd, _V_Rd, _V_high, _V_low, _range0];
}

export function tubeShearBySolution_partialFactors(v: Readonly<Record<"round" | "H" | "t" | "f_y" | "A_v" | "f_235" | "gamma_M0", number>>): number[] {
  const _round = v.round;
  const _H = v.H;
  const _t = v.t;
  const _f_y = v.f_y;
  const _A_v = v.A_v;
  const _f_235 = v.f_235;
  const _gamma_M0 = v.gamma_M0;
  const _r_w = finite(_round > 0 ? 0 : (_H - 3 * _t) / _t / finite(72 * Math.sqrt(_f_235 / _f_y), "72 * sqrt(f_235 / f_y)"), "r_w");
  const _tau_Rd = finite(_f_y / finite(Math.sqrt(3) * _gamma_M0, "sqrt(3) * gamma_M0"), "tau_Rd");
  const _V_Rd = finite(_A_v * _tau_Rd, "V_Rd");
  const _V_high = finite(2 * _H * _t * _tau_Rd, "V_high");
  const _V_low = finite(1.5 * (_H - 4 * _t) * _t * _tau_Rd, "V_low");
  const _range0 = finite(_r_w <= 1 ? 1 : 0, "range0");
  return [_r_w, _tau_Rd, _V_Rd, _V_high, _V_low, _range0];
}

export function tubeShearBySolution_allowableStress(v: Readonly<Record<"round" | "H" | "t" | "f_y" | "A" | "E" | "Omega_v", number>>): number[] {
  const _round = v.round;
  const _H = v.H;
  const _t = v.t;
  const _f_y = v.f_y;
  const _A = v.A;
  const _E = v.E;
  const _Omega_v = v.Omega_v;
  const _r_w = finite(_round > 0 ? 0 : (_H - 3 * _t) / _t / finite(1.1 * Math.sqrt(5 * _E / _f_y), "1.1 * sqrt(5 * E / f_y)"), "r_w");
  const _F_cr = finite(_round > 0 ? Math.min(finite(0.6 * _f_y, "0.6 * f_y"), finite(0.78 * _E / finite(Math.pow(finite(_H / _t, "H / t"), 1.5), "(H / t) ^ 1.5"), "0.78 * E / (H / t) ^ 1.5")) : 0.6 * _f_y, "F_cr");
  const _tau_Rd = finite(_F_cr / _Omega_v, "tau_Rd");
  const _V_Rd = finite(_round > 0 ? _A / 2 * _tau_Rd : 2 * (_H - 3 * _t) * _t * _tau_Rd, "V_Rd");
  const _V_high = finite(2 * _H * _t * _tau_Rd, "V_high");
  const _V_low = finite(1.5 * (_H - 4 * _t) * _t * _tau_Rd, "V_low");
  const _range0 = finite(_r_w <= 1 ? 1 : 0, "range0");
  return [_r_w, _F_cr, _tau_Rd, _V_Rd, _V_high, _V_low, _range0];
}

export function tubeTorsion_partialFactors(v: Readonly<Record<"M" | "V" | "T" | "N" | "round" | "H" | "B" | "t" | "A" | "W_el" | "W_t" | "n_h" | "d_h" | "E" | "f_y" | "f_u" | "A_v" | "gamma_M0" | "gamma_M2", number>>): number[] {
  const _M = v.M;
  const _V = v.V;
  const _T = v.T;
  const _N = v.N;
  const _round = v.round;
  const _H = v.H;
  const _B = v.B;
  const _t = v.t;
  const _A = v.A;
  const _W_el = v.W_el;
  const _W_t = v.W_t;
  const _n_h = v.n_h;
  const _d_h = v.d_h;
  const _E = v.E;
  const _f_y = v.f_y;
  const _f_u = v.f_u;
  const _A_v = v.A_v;
  const _gamma_M0 = v.gamma_M0;
  const _gamma_M2 = v.gamma_M2;
  const _b_f = finite(_round > 0 ? Math.PI / 4 * (_B - 2 * _t) : _B - 2 * _t, "b_f");
  const _W_el_n = finite(_W_el - _n_h * _d_h * _t * (_H - _t), "W_el_n");
  const _A_n = finite(_A - 2 * _n_h * _d_h * _t, "A_n");
  const _part_t = finite((_b_f - _n_h * _d_h) / _b_f, "part_t");
  const _sigma = finite(_N / _A_n + _M / _W_el_n, "sigma");
  const _tau_T = finite(_T / finite(_W_t * _part_t, "W_t * part_t"), "tau_T");
  const _f_d = finite(_n_h > 0 ? Math.min(finite(_f_y / _gamma_M0, "f_y / gamma_M0"), finite(0.9 * _f_u / _gamma_M2, "0.9 * f_u / gamma_M2")) : _f_y / _gamma_M0, "f_d");
  const _tau_Rd = finite(_f_d / finite(Math.sqrt(3), "sqrt(3)"), "tau_Rd");
  const _r_s = finite(_sigma / _f_d, "r_s");
  const _r_V = finite(_V / _A_v / _tau_Rd, "r_V");
  const _r_T = finite(_tau_T / _tau_Rd, "r_T");
  const _r_t = finite(_r_V + _r_T, "r_t");
  const _u = finite(Math.sqrt(Math.pow(_r_s, 2) + Math.pow(_r_t, 2)), "u");
  const _u_Rd = finite(1, "u_Rd");
  const _t_low = finite(_T / finite(2 * (_round > 0 ? Math.PI / 4 * Math.pow(finite(_H - _t, "H - t"), 2) : (_H - _t) * (_B - _t)) * _t * _tau_Rd, "2 * (round > 0 ? pi / 4 * (H - t) ^ 2 : (H - t) * (B - t)) * t * tau_Rd"), "t_low");
  const _t_high = finite(_T / finite(2 * (_round > 0 ? Math.PI / 4 : 0.95) * (_H - 2 * _t) * (_B - 2 * _t) * _t * _part_t * _tau_Rd, "2 * (round > 0 ? pi / 4 : 0.95) * (H - 2 * t) * (B - 2 * t) * t * part_t * tau_Rd"), "t_high");
  const _u_low = finite(Math.max(_r_s, finite(Math.min(_t_low, finite(Math.pow(_t_low, 2), "t_low ^ 2")), "min(t_low, t_low ^ 2)")), "u_low");
  const _u_high = finite(_r_s + (_r_V + _t_high) * Math.max(1, finite(_r_V + _t_high, "r_V + t_high")), "u_high");
  const _range0 = finite(_round > 0 || finite((_H - 3 * _t) / _t, "(H - 3 * t) / t") <= finite(2.45 * Math.sqrt(_E / _f_y), "2.45 * sqrt(E / f_y)") ? 1 : 0, "range0");
  const _range1 = finite(finite(_n_h * _d_h, "n_h * d_h") < _b_f ? 1 : 0, "range1");
  return [_b_f, _W_el_n, _A_n, _part_t, _sigma, _tau_T, _f_d, _tau_Rd, _r_s, _r_V, _r_T, _r_t, _u, _u_Rd, _t_low, _t_high, _u_low, _u_high, _range0, _range1];
}

export function tubeTorsion_allowableStress(v: Readonly<Record<"M" | "V" | "T" | "N" | "round" | "H" | "B" | "t" | "A" | "W_el" | "W_t" | "n_h" | "d_h" | "E" | "f_y" | "f_u" | "Omega_b" | "Omega_v" | "Omega_J", number>>): number[] {
  const _M = v.M;
  const _V = v.V;
  const _T = v.T;
  const _N = v.N;
  const _round = v.round;
  const _H = v.H;
  const _B = v.B;
  const _t = v.t;
  const _A = v.A;
  const _W_el = v.W_el;
  const _W_t = v.W_t;
  const _n_h = v.n_h;
  const _d_h = v.d_h;
  const _E = v.E;
  const _f_y = v.f_y;
  const _f_u = v.f_u;
  const _Omega_b = v.Omega_b;
  const _Omega_v = v.Omega_v;
  const _Omega_J = v.Omega_J;
  const _b_f = finite(_round > 0 ? Math.PI / 4 * (_B - 2 * _t) : _B - 2 * _t, "b_f");
  const _W_el_n = finite(_W_el - _n_h * _d_h * _t * (_H - _t), "W_el_n");
  const _A_n = finite(_A - 2 * _n_h * _d_h * _t, "A_n");
  const _part_t = finite((_b_f - _n_h * _d_h) / _b_f, "part_t");
  const _sigma = finite(_N / _A_n + _M / _W_el_n, "sigma");
  const _tau_T = finite(_T / finite(_W_t * _part_t, "W_t * part_t"), "tau_T");
  const _F_cr = finite(_round > 0 ? Math.min(finite(0.6 * _f_y, "0.6 * f_y"), finite(0.6 * _E / finite(Math.pow(finite(_H / _t, "H / t"), 1.5), "(H / t) ^ 1.5"), "0.6 * E / (H / t) ^ 1.5")) : 0.6 * _f_y, "F_cr");
  const _sigma_Rd = finite(_n_h > 0 ? Math.min(finite(_f_y / _Omega_b, "f_y / Omega_b"), finite(_f_u / _Omega_J, "f_u / Omega_J")) : _f_y / _Omega_b, "sigma_Rd");
  const _tau_Rd = finite(_n_h > 0 ? Math.min(finite(_F_cr / _Omega_v, "F_cr / Omega_v"), finite(0.6 * _f_u / _Omega_J, "0.6 * f_u / Omega_J")) : _F_cr / _Omega_v, "tau_Rd");
  const _r_s = finite(_sigma / _sigma_Rd, "r_s");
  const _r_V = finite(_V / finite(_round > 0 ? _A / 2 : 2 * (_H - 3 * _t) * _t, "round > 0 ? A / 2 : 2 * (H - 3 * t) * t") * _Omega_v / finite(0.6 * _f_y, "0.6 * f_y"), "r_V");
  const _r_T = finite(_tau_T / _tau_Rd, "r_T");
  const _r_t = finite(_r_V + _r_T, "r_t");
  const _u = finite(_r_T > 0.2 ? _r_s + Math.pow(_r_t, 2) : Math.max(_r_s, _r_V, _r_T), "u");
  const _u_Rd = finite(1, "u_Rd");
  const _t_low = finite(_T / finite(2 * (_round > 0 ? Math.PI / 4 * Math.pow(finite(_H - _t, "H - t"), 2) : (_H - _t) * (_B - _t)) * _t * _tau_Rd, "2 * (round > 0 ? pi / 4 * (H - t) ^ 2 : (H - t) * (B - t)) * t * tau_Rd"), "t_low");
  const _t_high = finite(_T / finite(2 * (_round > 0 ? Math.PI / 4 : 0.95) * (_H - 2 * _t) * (_B - 2 * _t) * _t * _part_t * _tau_Rd, "2 * (round > 0 ? pi / 4 : 0.95) * (H - 2 * t) * (B - 2 * t) * t * part_t * tau_Rd"), "t_high");
  const _u_low = finite(Math.max(_r_s, finite(Math.min(_t_low, finite(Math.pow(_t_low, 2), "t_low ^ 2")), "min(t_low, t_low ^ 2)")), "u_low");
  const _u_high = finite(_r_s + (_r_V + _t_high) * Math.max(1, finite(_r_V + _t_high, "r_V + t_high")), "u_high");
  const _range0 = finite(_round > 0 || finite((_H - 3 * _t) / _t, "(H - 3 * t) / t") <= finite(2.45 * Math.sqrt(_E / _f_y), "2.45 * sqrt(E / f_y)") ? 1 : 0, "range0");
  const _range1 = finite(finite(_n_h * _d_h, "n_h * d_h") < _b_f ? 1 : 0, "range1");
  return [_b_f, _W_el_n, _A_n, _part_t, _sigma, _tau_T, _F_cr, _sigma_Rd, _tau_Rd, _r_s, _r_V, _r_T, _r_t, _u, _u_Rd, _t_low, _t_high, _u_low, _u_high, _range0, _range1];
}

export function tubeTorsionBySolution_partialFactors(v: Readonly<Record<"M" | "V" | "T" | "N" | "round" | "H" | "B" | "t" | "A" | "W_el" | "W_t" | "n_h" | "d_h" | "E" | "f_y" | "f_u" | "A_v" | "gamma_M0" | "gamma_M2", number>>): number[] {
  const _M = v.M;
  const _V = v.V;
  const _T = v.T;
  const _N = v.N;
  const _round = v.round;
  const _H = v.H;
  const _B = v.B;
  const _t = v.t;
  const _A = v.A;
  const _W_el = v.W_el;
  const _W_t = v.W_t;
  const _n_h = v.n_h;
  const _d_h = v.d_h;
  const _E = v.E;
  const _f_y = v.f_y;
  const _f_u = v.f_u;
  const _A_v = v.A_v;
  const _gamma_M0 = v.gamma_M0;
  const _gamma_M2 = v.gamma_M2;
  const _b_f = finite(_round > 0 ? Math.PI / 4 * (_B - 2 * _t) : _B - 2 * _t, "b_f");
  const _W_el_n = finite(_W_el - _n_h * _d_h * _t * (_H - _t), "W_el_n");
  const _A_n = finite(_A - 2 * _n_h * _d_h * _t, "A_n");
  const _part_t = finite((_b_f - _n_h * _d_h) / _b_f, "part_t");
  const _sigma = finite(_N / _A_n + _M / _W_el_n, "sigma");
  const _tau_T = finite(_T / finite(_W_t * _part_t, "W_t * part_t"), "tau_T");
  const _f_d = finite(_n_h > 0 ? Math.min(finite(_f_y / _gamma_M0, "f_y / gamma_M0"), finite(0.9 * _f_u / _gamma_M2, "0.9 * f_u / gamma_M2")) : _f_y / _gamma_M0, "f_d");
  const _tau_Rd = finite(_f_d / finite(Math.sqrt(3), "sqrt(3)"), "tau_Rd");
  const _r_s = finite(_sigma / _f_d, "r_s");
  const _r_V = finite(_V / _A_v / _tau_Rd, "r_V");
  const _r_T = finite(_tau_T / _tau_Rd, "r_T");
  const _r_t = finite(_r_V + _r_T, "r_t");
  const _u = finite(Math.sqrt(Math.pow(_r_s, 2) + Math.pow(_r_t, 2)), "u");
  const _u_Rd = finite(1, "u_Rd");
  const _t_low = finite(_T / finite(2 * (_round > 0 ? Math.PI / 4 * Math.pow(finite(_H - _t, "H - t"), 2) : (_H - _t) * (_B - _t)) * _t * _tau_Rd, "2 * (round > 0 ? pi / 4 * (H - t) ^ 2 : (H - t) * (B - t)) * t * tau_Rd"), "t_low");
  const _t_high = finite(_T / finite(2 * (_round > 0 ? Math.PI / 4 : 0.95) * (_H - 2 * _t) * (_B - 2 * _t) * _t * _part_t * _tau_Rd, "2 * (round > 0 ? pi / 4 : 0.95) * (H - 2 * t) * (B - 2 * t) * t * part_t * tau_Rd"), "t_high");
  const _u_low = finite(Math.max(_r_s, finite(Math.min(_t_low, finite(Math.pow(_t_low, 2), "t_low ^ 2")), "min(t_low, t_low ^ 2)")), "u_low");
  const _u_high = finite(_r_s + (_r_V + _t_high) * Math.max(1, finite(_r_V + _t_high, "r_V + t_high")), "u_high");
  const _range0 = finite(_round > 0 || finite((_H - 3 * _t) / _t, "(H - 3 * t) / t") <= finite(2.45 * Math.sqrt(_E / _f_y), "2.45 * sqrt(E / f_y)") ? 1 : 0, "range0");
  const _range1 = finite(finite(_n_h * _d_h, "n_h * d_h") < _b_f ? 1 : 0, "range1");
  return [_b_f, _W_el_n, _A_n, _part_t, _sigma, _tau_T, _f_d, _tau_Rd, _r_s, _r_V, _r_T, _r_t, _u, _u_Rd, _t_low, _t_high, _u_low, _u_high, _range0, _range1];
}

export function tubeTorsionBySolution_allowableStress(v: Readonly<Record<"M" | "V" | "T" | "N" | "round" | "H" | "B" | "t" | "A" | "W_el" | "W_t" | "n_h" | "d_h" | "E" | "f_y" | "f_u" | "Omega_b" | "Omega_v" | "Omega_J", number>>): number[] {
  const _M = v.M;
  const _V = v.V;
  const _T = v.T;
  const _N = v.N;
  const _round = v.round;
  const _H = v.H;
  const _B = v.B;
  const _t = v.t;
  const _A = v.A;
  const _W_el = v.W_el;
  const _W_t = v.W_t;
  const _n_h = v.n_h;
  const _d_h = v.d_h;
  const _E = v.E;
  const _f_y = v.f_y;
  const _f_u = v.f_u;
  const _Omega_b = v.Omega_b;
  const _Omega_v = v.Omega_v;
  const _Omega_J = v.Omega_J;
  const _b_f = finite(_round > 0 ? Math.PI / 4 * (_B - 2 * _t) : _B - 2 * _t, "b_f");
  const _W_el_n = finite(_W_el - _n_h * _d_h * _t * (_H - _t), "W_el_n");
  const _A_n = finite(_A - 2 * _n_h * _d_h * _t, "A_n");
  const _part_t = finite((_b_f - _n_h * _d_h) / _b_f, "part_t");
  const _sigma = finite(_N / _A_n + _M / _W_el_n, "sigma");
  const _tau_T = finite(_T / finite(_W_t * _part_t, "W_t * part_t"), "tau_T");
  const _F_cr = finite(_round > 0 ? Math.min(finite(0.6 * _f_y, "0.6 * f_y"), finite(0.6 * _E / finite(Math.pow(finite(_H / _t, "H / t"), 1.5), "(H / t) ^ 1.5"), "0.6 * E / (H / t) ^ 1.5")) : 0.6 * _f_y, "F_cr");
  const _sigma_Rd = finite(_n_h > 0 ? Math.min(finite(_f_y / _Omega_b, "f_y / Omega_b"), finite(_f_u / _Omega_J, "f_u / Omega_J")) : _f_y / _Omega_b, "sigma_Rd");
  const _tau_Rd = finite(_n_h > 0 ? Math.min(finite(_F_cr / _Omega_v, "F_cr / Omega_v"), finite(0.6 * _f_u / _Omega_J, "0.6 * f_u / Omega_J")) : _F_cr / _Omega_v, "tau_Rd");
  const _r_s = finite(_sigma / _sigma_Rd, "r_s");
  const _r_V = finite(_V / finite(_round > 0 ? _A / 2 : 2 * (_H - 3 * _t) * _t, "round > 0 ? A / 2 : 2 * (H - 3 * t) * t") * _Omega_v / finite(0.6 * _f_y, "0.6 * f_y"), "r_V");
  const _r_T = finite(_tau_T / _tau_Rd, "r_T");
  const _r_t = finite(_r_V + _r_T, "r_t");
  const _u = finite(_r_T > 0.2 ? _r_s + Math.pow(_r_t, 2) : Math.max(_r_s, _r_V, _r_T), "u");
  const _u_Rd = finite(1, "u_Rd");
  const _t_low = finite(_T / finite(2 * (_round > 0 ? Math.PI / 4 * Math.pow(finite(_H - _t, "H - t"), 2) : (_H - _t) * (_B - _t)) * _t * _tau_Rd, "2 * (round > 0 ? pi / 4 * (H - t) ^ 2 : (H - t) * (B - t)) * t * tau_Rd"), "t_low");
  const _t_high = finite(_T / finite(2 * (_round > 0 ? Math.PI / 4 : 0.95) * (_H - 2 * _t) * (_B - 2 * _t) * _t * _part_t * _tau_Rd, "2 * (round > 0 ? pi / 4 : 0.95) * (H - 2 * t) * (B - 2 * t) * t * part_t * tau_Rd"), "t_high");
  const _u_low = finite(Math.max(_r_s, finite(Math.min(_t_low, finite(Math.pow(_t_low, 2), "t_low ^ 2")), "min(t_low, t_low ^ 2)")), "u_low");
  const _u_high = finite(_r_s + (_r_V + _t_high) * Math.max(1, finite(_r_V + _t_high, "r_V + t_high")), "u_high");
  const _range0 = finite(_round > 0 || finite((_H - 3 * _t) / _t, "(H - 3 * t) / t") <= finite(2.45 * Math.sqrt(_E / _f_y), "2.45 * sqrt(E / f_y)") ? 1 : 0, "range0");
  const _range1 = finite(finite(_n_h * _d_h, "n_h * d_h") < _b_f ? 1 : 0, "range1");
  return [_b_f, _W_el_n, _A_n, _part_t, _sigma, _tau_T, _F_cr, _sigma_Rd, _tau_Rd, _r_s, _r_V, _r_T, _r_t, _u, _u_Rd, _t_low, _t_high, _u_low, _u_high, _range0, _range1];
}

export function tubeAxialBending_partialFactors(v: Readonly<Record<"M" | "N" | "round" | "H" | "B" | "t" | "A" | "I_min" | "W_el" | "W_pl" | "n_h" | "d_h" | "E" | "f_y" | "f_u" | "f_235" | "L_cr" | "alpha" | "C_m" | "gamma_M1" | "gamma_M0" | "gamma_M2", number>>): number[] {
  const _M = v.M;
  const _N = v.N;
  const _round = v.round;
  const _H = v.H;
  const _B = v.B;
  const _t = v.t;
  const _A = v.A;
  const _I_min = v.I_min;
  const _W_el = v.W_el;
  const _W_pl = v.W_pl;
  const _n_h = v.n_h;
  const _d_h = v.d_h;
  const _E = v.E;
  const _f_y = v.f_y;
  const _f_u = v.f_u;
  const _f_235 = v.f_235;
  const _L_cr = v.L_cr;
  const _alpha = v.alpha;
  const _C_m = v.C_m;
  const _gamma_M1 = v.gamma_M1;
  const _gamma_M0 = v.gamma_M0;
  const _gamma_M2 = v.gamma_M2;
  const _N_cr = finite(Math.pow(Math.PI, 2) * _E * _I_min / finite(Math.pow(_L_cr, 2), "L_cr ^ 2"), "N_cr");
  const _b_f = finite(_round > 0 ? Math.PI / 4 * (_B - 2 * _t) : _B - 2 * _t, "b_f");
  const _W_el_n = finite(_W_el - _n_h * _d_h * _t * (_H - _t), "W_el_n");
  const _W_pl_n = finite(_W_pl - _n_h * _d_h * _t * (_H - _t), "W_pl_n");
  const _lambda_f = finite((_B - 3 * _t) / _t, "lambda_f");
  const _lambda_w = finite((_H - 3 * _t) / _t, "lambda_w");
  const _epsilon = finite(Math.sqrt(_f_235 / _f_y), "epsilon");
  const _r_2 = finite(_round > 0 ? _H / _t / finite(70 * Math.pow(_epsilon, 2), "70 * epsilon ^ 2") : Math.max(_lambda_f, _lambda_w) / finite(38 * _epsilon, "38 * epsilon"), "r_2");
  const _r_3 = finite(_round > 0 ? _H / _t / finite(90 * Math.pow(_epsilon, 2), "90 * epsilon ^ 2") : Math.max(_lambda_f, _lambda_w) / finite(42 * _epsilon, "42 * epsilon"), "r_3");
  const _W = finite(_r_2 <= 1 ? _W_pl_n : _W_el_n, "W");
  const _lambda_bar = finite(Math.sqrt(_A * _f_y / _N_cr), "lambda_bar");
  const _Phi = finite(0.5 * (1 + _alpha * (_lambda_bar - 0.2) + Math.pow(_lambda_bar, 2)), "Phi");
  const _chi = finite(_lambda_bar <= 0.2 ? 1 : 1 / finite(_Phi + Math.sqrt(Math.pow(_Phi, 2) - Math.pow(_lambda_bar, 2)), "Phi + sqrt(Phi ^ 2 - lambda_bar ^ 2)"), "chi");
  const _r_N = finite(_N * _gamma_M1 / finite(_A * _f_y, "A * f_y"), "r_N");
  const _r_M = finite(_M * _gamma_M1 / finite(_W * _f_y, "W * f_y"), "r_M");
  const _n = finite(_r_N / _chi, "n");
  const _k_yy = finite(_C_m * (1 + Math.min(finite(Math.max(finite(_lambda_bar - 0.2, "lambda_bar - 0.2"), 0), "max(lambda_bar - 0.2, 0)"), 0.8) * _n), "k_yy");
  const _u_b = finite(_n + _k_yy * _r_M, "u_b");
  const _A_n = finite(_A - 2 * _n_h * _d_h * _t, "A_n");
  const _f_d = finite(_n_h > 0 ? Math.min(finite(_f_y / _gamma_M0, "f_y / gamma_M0"), finite(0.9 * _f_u / _gamma_M2, "0.9 * f_u / gamma_M2")) : _f_y / _gamma_M0, "f_d");
  const _u_n = finite(_N / finite(_A_n * _f_d, "A_n * f_d") + _M / finite(_W * _f_d, "W * f_d"), "u_n");
  const _u = finite(Math.max(_u_b, _u_n), "u");
  const _u_Rd = finite(1, "u_Rd");
  const _n_E = finite(_r_N * Math.max(1, finite(_A * _f_y / _N_cr, "A * f_y / N_cr")), "n_E");
  const _n_R = finite(_r_N * (1 + _A * _f_y / finite(0.8 * _N_cr, "0.8 * N_cr")), "n_R");
  const _p = finite(1.6 * _N / _N_cr, "p");
  const _u_low = finite((_n_E < 0.2 ? _n_E / 2 : _n_E) + 8 / 9 * _C_m * _r_M, "u_low");
  const _u_high = finite(_p < 0.9 ? _n_R + _C_m * _r_M / finite(Math.cos(Math.PI / 2 * Math.sqrt(_p)), "cos(pi / 2 * sqrt(p))") : 1 + _n_R + _C_m * _r_M * (10 + _n_R), "u_high");
  const _range0 = finite(_r_3 <= 1 ? 1 : 0, "range0");
  const _range1 = finite(finite(_n_h * _d_h, "n_h * d_h") < _b_f ? 1 : 0, "range1");
  return [_N_cr, _b_f, _W_el_n, _W_pl_n, _lambda_f, _lambda_w, _epsilon, _r_2, _r_3, _W, _lambda_bar, _Phi, _chi, _r_N, _r_M, _n, _k_yy, _u_b, _A_n, _f_d, _u_n, _u, _u_Rd, _n_E, _n_R, _p, _u_low, _u_high, _range0, _range1];
}

export function tubeAxialBending_allowableStress(v: Readonly<Record<"M" | "N" | "round" | "H" | "B" | "t" | "A" | "I_min" | "W_el" | "W_pl" | "n_h" | "d_h" | "E" | "f_y" | "f_u" | "L_cr" | "C_m" | "Omega_b" | "Omega_J", number>>): number[] {
  const _M = v.M;
  const _N = v.N;
  const _round = v.round;
  const _H = v.H;
  const _B = v.B;
  const _t = v.t;
  const _A = v.A;
  const _I_min = v.I_min;
  const _W_el = v.W_el;
  const _W_pl = v.W_pl;
  const _n_h = v.n_h;
  const _d_h = v.d_h;
  const _E = v.E;
  const _f_y = v.f_y;
  const _f_u = v.f_u;
  const _L_cr = v.L_cr;
  const _C_m = v.C_m;
  const _Omega_b = v.Omega_b;
  const _Omega_J = v.Omega_J;
  const _N_cr = finite(Math.pow(Math.PI, 2) * _E * _I_min / finite(Math.pow(_L_cr, 2), "L_cr ^ 2"), "N_cr");
  const _b_f = finite(_round > 0 ? Math.PI / 4 * (_B - 2 * _t) : _B - 2 * _t, "b_f");
  const _W_el_n = finite(_W_el - _n_h * _d_h * _t * (_H - _t), "W_el_n");
  const _W_pl_n = finite(_W_pl - _n_h * _d_h * _t * (_H - _t), "W_pl_n");
  const _lambda_f = finite((_B - 3 * _t) / _t, "lambda_f");
  const _lambda_w = finite((_H - 3 * _t) / _t, "lambda_w");
  const _beta_y = finite(Math.sqrt(_f_y / _E), "beta_y");
  const _M_p = finite(_W_pl_n * _f_y, "M_p");
  const _M_f = finite(finite(_lambda_f * _beta_y, "lambda_f * beta_y") <= 1.12 ? _M_p : Math.min(_M_p, finite(_M_p - (_M_p - _f_y * _W_el_n) * (3.57 * _lambda_f * _beta_y - 4), "M_p - (M_p - f_y * W_el_n) * (3.57 * lambda_f * beta_y - 4)")), "M_f");
  const _M_w = finite(finite(_lambda_w * _beta_y, "lambda_w * beta_y") <= 2.42 ? _M_p : Math.min(_M_p, finite(_M_p - (_M_p - _f_y * _W_el_n) * (0.305 * _lambda_w * _beta_y - 0.738), "M_p - (M_p - f_y * W_el_n) * (0.305 * lambda_w * beta_y - 0.738)")), "M_w");
  const _M_o = finite(finite(_H / _t, "H / t") <= finite(0.07 * _E / _f_y, "0.07 * E / f_y") ? _M_p : Math.min(_M_p, finite((0.021 * _E / finite(_H / _t, "H / t") + _f_y) * _W_el_n, "(0.021 * E / (H / t) + f_y) * W_el_n")), "M_o");
  const _M_n = finite(_round > 0 ? _M_o : Math.min(_M_f, _M_w), "M_n");
  const _r_3 = finite(_round > 0 ? _H / _t / finite(0.31 * _E / _f_y, "0.31 * E / f_y") : Math.max(finite(_lambda_f * _beta_y / 1.4, "lambda_f * beta_y / 1.4"), finite(_lambda_w * _beta_y / 5.7, "lambda_w * beta_y / 5.7")), "r_3");
  const _F_e = finite(_N_cr / _A, "F_e");
  const _F_cr = finite(finite(_f_y / _F_e, "f_y / F_e") <= 2.25 ? Math.pow(0.658, finite(_f_y / _F_e, "f_y / F_e")) * _f_y : 0.877 * _F_e, "F_cr");
  const _r_N = finite(_N * _Omega_b / finite(_A * _f_y, "A * f_y"), "r_N");
  const _r_M = finite(_M * _Omega_b / _M_n, "r_M");
  const _r_c = finite(_N * _Omega_b / finite(_A * _F_cr, "A * F_cr"), "r_c");
  const _r_e = finite(1.6 * _N / _N_cr, "r_e");
  const _B_m = finite(_r_e < 0.9 ? _C_m / finite(1 - _r_e, "1 - r_e") : 10 * _C_m, "B_m");
  const _u_b = finite((_r_e < 0.9 ? 0 : 1) + (_r_c >= 0.2 ? _r_c + 8 / 9 * _r_M * _B_m : _r_c / 2 + _r_M * _B_m), "u_b");
  const _Y_t = finite(_f_y <= finite(0.8 * _f_u, "0.8 * f_u") ? 1 : 1.1, "Y_t");
  const _part_n = finite((_B - _n_h * _d_h) / _B, "part_n");
  const _M_r = finite(_n_h === 0 ? _M_n : finite(_f_u * _part_n, "f_u * part_n") >= finite(_Y_t * _f_y, "Y_t * f_y") ? _M_n : Math.min(_M_n, finite(_f_u * _part_n * _W_el, "f_u * part_n * W_el")), "M_r");
  const _A_n = finite(_A - 2 * _n_h * _d_h * _t, "A_n");
  const _u_n = finite(_n_h > 0 ? _N * _Omega_J / finite(_A_n * _f_u, "A_n * f_u") + _M * _Omega_b / _M_r : 0, "u_n");
  const _u = finite(Math.max(_u_b, _u_n), "u");
  const _u_Rd = finite(1, "u_Rd");
  const _n_E = finite(_r_N * Math.max(1, finite(_A * _f_y / _N_cr, "A * f_y / N_cr")), "n_E");
  const _n_R = finite(_r_N * (1 + _A * _f_y / finite(0.8 * _N_cr, "0.8 * N_cr")), "n_R");
  const _p = finite(1.6 * _N / _N_cr, "p");
  const _u_low = finite((_n_E < 0.2 ? _n_E / 2 : _n_E) + 8 / 9 * _C_m * _r_M, "u_low");
  const _u_high = finite(_p < 0.9 ? _n_R + _C_m * _r_M / finite(Math.cos(Math.PI / 2 * Math.sqrt(_p)), "cos(pi / 2 * sqrt(p))") : 1 + _n_R + _C_m * _r_M * (10 + _n_R), "u_high");
  const _range0 = finite(_r_3 <= 1 ? 1 : 0, "range0");
  const _range1 = finite(finite(_n_h * _d_h, "n_h * d_h") < _b_f ? 1 : 0, "range1");
  return [_N_cr, _b_f, _W_el_n, _W_pl_n, _lambda_f, _lambda_w, _beta_y, _M_p, _M_f, _M_w, _M_o, _M_n, _r_3, _F_e, _F_cr, _r_N, _r_M, _r_c, _r_e, _B_m, _u_b, _Y_t, _part_n, _M_r, _A_n, _u_n, _u, _u_Rd, _n_E, _n_R, _p, _u_low, _u_high, _range0, _range1];
}

export function tubeAxialBendingBySolution_partialFactors(v: Readonly<Record<"M" | "N" | "round" | "H" | "B" | "t" | "A" | "I_min" | "W_el" | "W_pl" | "n_h" | "d_h" | "E" | "f_y" | "f_u" | "f_235" | "L_cr" | "alpha" | "C_m" | "gamma_M1" | "gamma_M0" | "gamma_M2", number>>): number[] {
  const _M = v.M;
  const _N = v.N;
  const _round = v.round;
  const _H = v.H;
  const _B = v.B;
  const _t = v.t;
  const _A = v.A;
  const _I_min = v.I_min;
  const _W_el = v.W_el;
  const _W_pl = v.W_pl;
  const _n_h = v.n_h;
  const _d_h = v.d_h;
  const _E = v.E;
  const _f_y = v.f_y;
  const _f_u = v.f_u;
  const _f_235 = v.f_235;
  const _L_cr = v.L_cr;
  const _alpha = v.alpha;
  const _C_m = v.C_m;
  const _gamma_M1 = v.gamma_M1;
  const _gamma_M0 = v.gamma_M0;
  const _gamma_M2 = v.gamma_M2;
  const _N_cr = finite(Math.pow(Math.PI, 2) * _E * _I_min / finite(Math.pow(_L_cr, 2), "L_cr ^ 2"), "N_cr");
  const _b_f = finite(_round > 0 ? Math.PI / 4 * (_B - 2 * _t) : _B - 2 * _t, "b_f");
  const _W_el_n = finite(_W_el - _n_h * _d_h * _t * (_H - _t), "W_el_n");
  const _W_pl_n = finite(_W_pl - _n_h * _d_h * _t * (_H - _t), "W_pl_n");
  const _lambda_f = finite((_B - 3 * _t) / _t, "lambda_f");
  const _lambda_w = finite((_H - 3 * _t) / _t, "lambda_w");
  const _epsilon = finite(Math.sqrt(_f_235 / _f_y), "epsilon");
  const _r_2 = finite(_round > 0 ? _H / _t / finite(70 * Math.pow(_epsilon, 2), "70 * epsilon ^ 2") : Math.max(_lambda_f, _lambda_w) / finite(38 * _epsilon, "38 * epsilon"), "r_2");
  const _r_3 = finite(_round > 0 ? _H / _t / finite(90 * Math.pow(_epsilon, 2), "90 * epsilon ^ 2") : Math.max(_lambda_f, _lambda_w) / finite(42 * _epsilon, "42 * epsilon"), "r_3");
  const _W = finite(_r_2 <= 1 ? _W_pl_n : _W_el_n, "W");
  const _lambda_bar = finite(Math.sqrt(_A * _f_y / _N_cr), "lambda_bar");
  const _Phi = finite(0.5 * (1 + _alpha * (_lambda_bar - 0.2) + Math.pow(_lambda_bar, 2)), "Phi");
  const _chi = finite(_lambda_bar <= 0.2 ? 1 : 1 / finite(_Phi + Math.sqrt(Math.pow(_Phi, 2) - Math.pow(_lambda_bar, 2)), "Phi + sqrt(Phi ^ 2 - lambda_bar ^ 2)"), "chi");
  const _r_N = finite(_N * _gamma_M1 / finite(_A * _f_y, "A * f_y"), "r_N");
  const _r_M = finite(_M * _gamma_M1 / finite(_W * _f_y, "W * f_y"), "r_M");
  const _n = finite(_r_N / _chi, "n");
  const _k_yy = finite(_C_m * (1 + Math.min(finite(Math.max(finite(_lambda_bar - 0.2, "lambda_bar - 0.2"), 0), "max(lambda_bar - 0.2, 0)"), 0.8) * _n), "k_yy");
  const _u_b = finite(_n + _k_yy * _r_M, "u_b");
  const _A_n = finite(_A - 2 * _n_h * _d_h * _t, "A_n");
  const _f_d = finite(_n_h > 0 ? Math.min(finite(_f_y / _gamma_M0, "f_y / gamma_M0"), finite(0.9 * _f_u / _gamma_M2, "0.9 * f_u / gamma_M2")) : _f_y / _gamma_M0, "f_d");
  const _u_n = finite(_N / finite(_A_n * _f_d, "A_n * f_d") + _M / finite(_W * _f_d, "W * f_d"), "u_n");
  const _u = finite(Math.max(_u_b, _u_n), "u");
  const _u_Rd = finite(1, "u_Rd");
  const _n_E = finite(_r_N * Math.max(1, finite(_A * _f_y / _N_cr, "A * f_y / N_cr")), "n_E");
  const _n_R = finite(_r_N * (1 + _A * _f_y / finite(0.8 * _N_cr, "0.8 * N_cr")), "n_R");
  const _p = finite(1.6 * _N / _N_cr, "p");
  const _u_low = finite((_n_E < 0.2 ? _n_E / 2 : _n_E) + 8 / 9 * _C_m * _r_M, "u_low");
  const _u_high = finite(_p < 0.9 ? _n_R + _C_m * _r_M / finite(Math.cos(Math.PI / 2 * Math.sqrt(_p)), "cos(pi / 2 * sqrt(p))") : 1 + _n_R + _C_m * _r_M * (10 + _n_R), "u_high");
  const _range0 = finite(_r_3 <= 1 ? 1 : 0, "range0");
  const _range1 = finite(finite(_n_h * _d_h, "n_h * d_h") < _b_f ? 1 : 0, "range1");
  return [_N_cr, _b_f, _W_el_n, _W_pl_n, _lambda_f, _lambda_w, _epsilon, _r_2, _r_3, _W, _lambda_bar, _Phi, _chi, _r_N, _r_M, _n, _k_yy, _u_b, _A_n, _f_d, _u_n, _u, _u_Rd, _n_E, _n_R, _p, _u_low, _u_high, _range0, _range1];
}

export function tubeAxialBendingBySolution_allowableStress(v: Readonly<Record<"M" | "N" | "round" | "H" | "B" | "t" | "A" | "I_min" | "W_el" | "W_pl" | "n_h" | "d_h" | "E" | "f_y" | "f_u" | "L_cr" | "C_m" | "Omega_b" | "Omega_J", number>>): number[] {
  const _M = v.M;
  const _N = v.N;
  const _round = v.round;
  const _H = v.H;
  const _B = v.B;
  const _t = v.t;
  const _A = v.A;
  const _I_min = v.I_min;
  const _W_el = v.W_el;
  const _W_pl = v.W_pl;
  const _n_h = v.n_h;
  const _d_h = v.d_h;
  const _E = v.E;
  const _f_y = v.f_y;
  const _f_u = v.f_u;
  const _L_cr = v.L_cr;
  const _C_m = v.C_m;
  const _Omega_b = v.Omega_b;
  const _Omega_J = v.Omega_J;
  const _N_cr = finite(Math.pow(Math.PI, 2) * _E * _I_min / finite(Math.pow(_L_cr, 2), "L_cr ^ 2"), "N_cr");
  const _b_f = finite(_round > 0 ? Math.PI / 4 * (_B - 2 * _t) : _B - 2 * _t, "b_f");
  const _W_el_n = finite(_W_el - _n_h * _d_h * _t * (_H - _t), "W_el_n");
  const _W_pl_n = finite(_W_pl - _n_h * _d_h * _t * (_H - _t), "W_pl_n");
  const _lambda_f = finite((_B - 3 * _t) / _t, "lambda_f");
  const _lambda_w = finite((_H - 3 * _t) / _t, "lambda_w");
  const _beta_y = finite(Math.sqrt(_f_y / _E), "beta_y");
  const _M_p = finite(_W_pl_n * _f_y, "M_p");
  const _M_f = finite(finite(_lambda_f * _beta_y, "lambda_f * beta_y") <= 1.12 ? _M_p : Math.min(_M_p, finite(_M_p - (_M_p - _f_y * _W_el_n) * (3.57 * _lambda_f * _beta_y - 4), "M_p - (M_p - f_y * W_el_n) * (3.57 * lambda_f * beta_y - 4)")), "M_f");
  const _M_w = finite(finite(_lambda_w * _beta_y, "lambda_w * beta_y") <= 2.42 ? _M_p : Math.min(_M_p, finite(_M_p - (_M_p - _f_y * _W_el_n) * (0.305 * _lambda_w * _beta_y - 0.738), "M_p - (M_p - f_y * W_el_n) * (0.305 * lambda_w * beta_y - 0.738)")), "M_w");
  const _M_o = finite(finite(_H / _t, "H / t") <= finite(0.07 * _E / _f_y, "0.07 * E / f_y") ? _M_p : Math.min(_M_p, finite((0.021 * _E / finite(_H / _t, "H / t") + _f_y) * _W_el_n, "(0.021 * E / (H / t) + f_y) * W_el_n")), "M_o");
  const _M_n = finite(_round > 0 ? _M_o : Math.min(_M_f, _M_w), "M_n");
  const _r_3 = finite(_round > 0 ? _H / _t / finite(0.31 * _E / _f_y, "0.31 * E / f_y") : Math.max(finite(_lambda_f * _beta_y / 1.4, "lambda_f * beta_y / 1.4"), finite(_lambda_w * _beta_y / 5.7, "lambda_w * beta_y / 5.7")), "r_3");
  const _F_e = finite(_N_cr / _A, "F_e");
  const _F_cr = finite(finite(_f_y / _F_e, "f_y / F_e") <= 2.25 ? Math.pow(0.658, finite(_f_y / _F_e, "f_y / F_e")) * _f_y : 0.877 * _F_e, "F_cr");
  const _r_N = finite(_N * _Omega_b / finite(_A * _f_y, "A * f_y"), "r_N");
  const _r_M = finite(_M * _Omega_b / _M_n, "r_M");
  const _r_c = finite(_N * _Omega_b / finite(_A * _F_cr, "A * F_cr"), "r_c");
  const _r_e = finite(1.6 * _N / _N_cr, "r_e");
  const _B_m = finite(_r_e < 0.9 ? _C_m / finite(1 - _r_e, "1 - r_e") : 10 * _C_m, "B_m");
  const _u_b = finite((_r_e < 0.9 ? 0 : 1) + (_r_c >= 0.2 ? _r_c + 8 / 9 * _r_M * _B_m : _r_c / 2 + _r_M * _B_m), "u_b");
  const _Y_t = finite(_f_y <= finite(0.8 * _f_u, "0.8 * f_u") ? 1 : 1.1, "Y_t");
  const _part_n = finite((_B - _n_h * _d_h) / _B, "part_n");
  const _M_r = finite(_n_h === 0 ? _M_n : finite(_f_u * _part_n, "f_u * part_n") >= finite(_Y_t * _f_y, "Y_t * f_y") ? _M_n : Math.min(_M_n, finite(_f_u * _part_n * _W_el, "f_u * part_n * W_el")), "M_r");
  const _A_n = finite(_A - 2 * _n_h * _d_h * _t, "A_n");
  const _u_n = finite(_n_h > 0 ? _N * _Omega_J / finite(_A_n * _f_u, "A_n * f_u") + _M * _Omega_b / _M_r : 0, "u_n");
  const _u = finite(Math.max(_u_b, _u_n), "u");
  const _u_Rd = finite(1, "u_Rd");
  const _n_E = finite(_r_N * Math.max(1, finite(_A * _f_y / _N_cr, "A * f_y / N_cr")), "n_E");
  const _n_R = finite(_r_N * (1 + _A * _f_y / finite(0.8 * _N_cr, "0.8 * N_cr")), "n_R");
  const _p = finite(1.6 * _N / _N_cr, "p");
  const _u_low = finite((_n_E < 0.2 ? _n_E / 2 : _n_E) + 8 / 9 * _C_m * _r_M, "u_low");
  const _u_high = finite(_p < 0.9 ? _n_R + _C_m * _r_M / finite(Math.cos(Math.PI / 2 * Math.sqrt(_p)), "cos(pi / 2 * sqrt(p))") : 1 + _n_R + _C_m * _r_M * (10 + _n_R), "u_high");
  const _range0 = finite(_r_3 <= 1 ? 1 : 0, "range0");
  const _range1 = finite(finite(_n_h * _d_h, "n_h * d_h") < _b_f ? 1 : 0, "range1");
  return [_N_cr, _b_f, _W_el_n, _W_pl_n, _lambda_f, _lambda_w, _beta_y, _M_p, _M_f, _M_w, _M_o, _M_n, _r_3, _F_e, _F_cr, _r_N, _r_M, _r_c, _r_e, _B_m, _u_b, _Y_t, _part_n, _M_r, _A_n, _u_n, _u, _u_Rd, _n_E, _n_R, _p, _u_low, _u_high, _range0, _range1];
}

export function tubeWallLine_partialFactors(v: Readonly<Record<"q" | "B" | "t" | "f_y" | "l_1" | "n_l" | "gamma_M0", number>>): number[] {
  const _q = v.q;
  const _B = v.B;
  const _t = v.t;
  const _f_y = v.f_y;
  const _l_1 = v.l_1;
  const _n_l = v.n_l;
  const _gamma_M0 = v.gamma_M0;
  const _b_w = finite(_B - 2 * _t, "b_w");
  const _s = finite(Math.min(finite(Math.max(_l_1, _t) - _t, "max(l_1, t) - t"), finite(_b_w / 2, "b_w / 2")), "s");
  const _m_w = finite(_n_l === 2 ? _q * _s : _q * _s * (_b_w - _s) / _b_w, "m_w");
  const _sigma = finite(6 * _m_w / finite(Math.pow(_t, 2), "t ^ 2"), "sigma");
  const _sigma_Rd = finite(_f_y / _gamma_M0, "sigma_Rd");
  const _sigma_low = finite(6 * _q * _s * Math.pow(finite(_b_w - _s, "b_w - s"), 2) / finite(Math.pow(_b_w, 2) * Math.pow(_t, 2), "b_w ^ 2 * t ^ 2"), "sigma_low");
  const _sigma_high = finite(6 * _n_l * _q * _b_w / finite(4 * Math.pow(_t, 2), "4 * t ^ 2"), "sigma_high");
  return [_b_w, _s, _m_w, _sigma, _sigma_Rd, _sigma_low, _sigma_high];
}

export function tubeWallLine_allowableStress(v: Readonly<Record<"q" | "B" | "t" | "f_y" | "l_1" | "n_l" | "Omega_b", number>>): number[] {
  const _q = v.q;
  const _B = v.B;
  const _t = v.t;
  const _f_y = v.f_y;
  const _l_1 = v.l_1;
  const _n_l = v.n_l;
  const _Omega_b = v.Omega_b;
  const _b_w = finite(_B - 2 * _t, "b_w");
  const _s = finite(Math.min(finite(Math.max(_l_1, _t) - _t, "max(l_1, t) - t"), finite(_b_w / 2, "b_w / 2")), "s");
  const _m_w = finite(_n_l === 2 ? _q * _s : _q * _s * (_b_w - _s) / _b_w, "m_w");
  const _sigma = finite(6 * _m_w / finite(Math.pow(_t, 2), "t ^ 2"), "sigma");
  const _sigma_Rd = finite(_f_y / _Omega_b, "sigma_Rd");
  const _sigma_low = finite(6 * _q * _s * Math.pow(finite(_b_w - _s, "b_w - s"), 2) / finite(Math.pow(_b_w, 2) * Math.pow(_t, 2), "b_w ^ 2 * t ^ 2"), "sigma_low");
  const _sigma_high = finite(6 * _n_l * _q * _b_w / finite(4 * Math.pow(_t, 2), "4 * t ^ 2"), "sigma_high");
  return [_b_w, _s, _m_w, _sigma, _sigma_Rd, _sigma_low, _sigma_high];
}

export function tubeWallPressure_partialFactors(v: Readonly<Record<"z" | "rho" | "g" | "gamma_F" | "round" | "H" | "B" | "t" | "E" | "f_y" | "nu" | "gamma_M0", number>>): number[] {
  const _z = v.z;
  const _rho = v.rho;
  const _g = v.g;
  const _gamma_F = v.gamma_F;
  const _round = v.round;
  const _H = v.H;
  const _B = v.B;
  const _t = v.t;
  const _E = v.E;
  const _f_y = v.f_y;
  const _nu = v.nu;
  const _gamma_M0 = v.gamma_M0;
  const _p = finite(_gamma_F * _rho * _g * _z, "p");
  const _b_w = finite(_B - 2 * _t, "b_w");
  const _h_w = finite(_H - 2 * _t, "h_w");
  const _m_c = finite(_p * (Math.pow(_b_w, 2) - _b_w * _h_w + Math.pow(_h_w, 2)) / 12, "m_c");
  const _m_m = finite(_p * Math.pow(finite(Math.max(_b_w, _h_w), "max(b_w, h_w)"), 2) / 8 - _m_c, "m_m");
  const _sigma_b = finite(_round > 0 ? 0 * _p : 6 * Math.max(_m_c, _m_m) / finite(Math.pow(_t, 2), "t ^ 2"), "sigma_b");
  const _sigma_n = finite(_p * Math.max(_B, _H) / finite(2 * _t, "2 * t"), "sigma_n");
  const _sigma = finite(_sigma_b + _sigma_n, "sigma");
  const _p_cr = finite(2 * _E / finite(1 - Math.pow(_nu, 2), "1 - nu ^ 2") * Math.pow(finite(_t / finite(_H - _t, "H - t"), "t / (H - t)"), 3), "p_cr");
  const _w_m = finite(_round > 0 ? _p * Math.pow(_H, 2) / finite(4 * _t * _E, "4 * t * E") : (5 * _p * Math.pow(finite(Math.max(_b_w, _h_w), "max(b_w, h_w)"), 4) / 384 - _m_c * Math.pow(finite(Math.max(_b_w, _h_w), "max(b_w, h_w)"), 2) / 8) * 12 * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 3), "E * t ^ 3"), "w_m");
  const _sigma_Rd = finite(_f_y / _gamma_M0, "sigma_Rd");
  const _sigma_high = finite(_round > 0 ? 2 * _sigma_n : 6 * _p * Math.pow(finite(Math.max(_b_w, _h_w), "max(b_w, h_w)"), 2) / finite(8 * Math.pow(_t, 2), "8 * t ^ 2") + _sigma_n, "sigma_high");
  const _sigma_low = finite(_round > 0 ? _sigma_n / 2 : 6 * _p * Math.pow(finite(Math.max(_b_w, _h_w), "max(b_w, h_w)"), 2) / finite(16 * Math.pow(_t, 2), "16 * t ^ 2"), "sigma_low");
  const _range0 = finite(_round === 0 || finite(3 * _p, "3 * p") <= _p_cr ? 1 : 0, "range0");
  return [_p, _b_w, _h_w, _m_c, _m_m, _sigma_b, _sigma_n, _sigma, _p_cr, _w_m, _sigma_Rd, _sigma_high, _sigma_low, _range0];
}

export function tubeWallPressure_allowableStress(v: Readonly<Record<"z" | "rho" | "g" | "gamma_F" | "round" | "H" | "B" | "t" | "E" | "f_y" | "nu" | "Omega_b", number>>): number[] {
  const _z = v.z;
  const _rho = v.rho;
  const _g = v.g;
  const _gamma_F = v.gamma_F;
  const _round = v.round;
  const _H = v.H;
  const _B = v.B;
  const _t = v.t;
  const _E = v.E;
  const _f_y = v.f_y;
  const _nu = v.nu;
  const _Omega_b = v.Omega_b;
  const _p = finite(_gamma_F * _rho * _g * _z, "p");
  const _b_w = finite(_B - 2 * _t, "b_w");
  const _h_w = finite(_H - 2 * _t, "h_w");
  const _m_c = finite(_p * (Math.pow(_b_w, 2) - _b_w * _h_w + Math.pow(_h_w, 2)) / 12, "m_c");
  const _m_m = finite(_p * Math.pow(finite(Math.max(_b_w, _h_w), "max(b_w, h_w)"), 2) / 8 - _m_c, "m_m");
  const _sigma_b = finite(_round > 0 ? 0 * _p : 6 * Math.max(_m_c, _m_m) / finite(Math.pow(_t, 2), "t ^ 2"), "sigma_b");
  const _sigma_n = finite(_p * Math.max(_B, _H) / finite(2 * _t, "2 * t"), "sigma_n");
  const _sigma = finite(_sigma_b + _sigma_n, "sigma");
  const _p_cr = finite(2 * _E / finite(1 - Math.pow(_nu, 2), "1 - nu ^ 2") * Math.pow(finite(_t / finite(_H - _t, "H - t"), "t / (H - t)"), 3), "p_cr");
  const _w_m = finite(_round > 0 ? _p * Math.pow(_H, 2) / finite(4 * _t * _E, "4 * t * E") : (5 * _p * Math.pow(finite(Math.max(_b_w, _h_w), "max(b_w, h_w)"), 4) / 384 - _m_c * Math.pow(finite(Math.max(_b_w, _h_w), "max(b_w, h_w)"), 2) / 8) * 12 * (1 - Math.pow(_nu, 2)) / finite(_E * Math.pow(_t, 3), "E * t ^ 3"), "w_m");
  const _sigma_Rd = finite(_f_y / _Omega_b, "sigma_Rd");
  const _sigma_high = finite(_round > 0 ? 2 * _sigma_n : 6 * _p * Math.pow(finite(Math.max(_b_w, _h_w), "max(b_w, h_w)"), 2) / finite(8 * Math.pow(_t, 2), "8 * t ^ 2") + _sigma_n, "sigma_high");
  const _sigma_low = finite(_round > 0 ? _sigma_n / 2 : 6 * _p * Math.pow(finite(Math.max(_b_w, _h_w), "max(b_w, h_w)"), 2) / finite(16 * Math.pow(_t, 2), "16 * t ^ 2"), "sigma_low");
  const _range0 = finite(_round === 0 || finite(3 * _p, "3 * p") <= _p_cr ? 1 : 0, "range0");
  return [_p, _b_w, _h_w, _m_c, _m_m, _sigma_b, _sigma_n, _sigma, _p_cr, _w_m, _sigma_Rd, _sigma_high, _sigma_low, _range0];
}

export function tubeWallBent_partialFactors(v: Readonly<Record<"z" | "rho" | "g" | "gamma_F" | "M" | "round" | "H" | "B" | "t" | "W_el" | "E" | "f_y" | "nu" | "gamma_M0", number>>): number[] {
  const _z = v.z;
  const _rho = v.rho;
  const _g = v.g;
  const _gamma_F = v.gamma_F;
  const _M = v.M;
  const _round = v.round;
  const _H = v.H;
  const _B = v.B;
  const _t = v.t;
  const _W_el = v.W_el;
  const _E = v.E;
  const _f_y = v.f_y;
  const _nu = v.nu;
  const _gamma_M0 = v.gamma_M0;
  const _p = finite(_gamma_F * _rho * _g * _z, "p");
  const _b_w = finite(_B - 2 * _t, "b_w");
  const _h_w = finite(_H - 2 * _t, "h_w");
  const _m_c = finite(_p * (Math.pow(_b_w, 2) - _b_w * _h_w + Math.pow(_h_w, 2)) / 12, "m_c");
  const _m_m = finite(_p * Math.pow(finite(Math.max(_b_w, _h_w), "max(b_w, h_w)"), 2) / 8 - _m_c, "m_m");
  const _sigma_b = finite(_round > 0 ? 0 * _p : 6 * Math.max(_m_c, _m_m) / finite(Math.pow(_t, 2), "t ^ 2"), "sigma_b");
  const _sigma_n = finite(_p * Math.max(_B, _H) / finite(2 * _t, "2 * t"), "sigma_n");
  const _sigma = finite(_sigma_b + _sigma_n, "sigma");
  const _p_cr = finite(2 * _E / finite(1 - Math.pow(_nu, 2), "1 - nu ^ 2") * Math.pow(finite(_t / finite(_H - _t, "H - t"), "t / (H - t)"), 3), "p_cr");
  const _sigma_x = finite(_M / _W_el, "sigma_x");
  const _sigma_v = finite(Math.sqrt(Math.pow(_sigma_x, 2) + _sigma_x * _sigma + Math.pow(_sigma, 2)), "sigma_v");
  const _sigma_Rd = finite(_f_y / _gamma_M0, "sigma_Rd");
  const _sigma_low = finite(_M / _W_el, "sigma_low");
  const _sigma_high = finite(_M / _W_el + _gamma_F * _rho * _g * _z * (_round > 0 ? _H / _t : 0.75 * Math.pow(finite(Math.max(finite(_B - 2 * _t, "B - 2 * t"), finite(_H - 2 * _t, "H - 2 * t")), "max(B - 2 * t, H - 2 * t)"), 2) / finite(Math.pow(_t, 2), "t ^ 2") + Math.max(_B, _H) / finite(2 * _t, "2 * t")), "sigma_high");
  return [_p, _b_w, _h_w, _m_c, _m_m, _sigma_b, _sigma_n, _sigma, _p_cr, _sigma_x, _sigma_v, _sigma_Rd, _sigma_low, _sigma_high];
}

export function tubeWallBent_allowableStress(v: Readonly<Record<"z" | "rho" | "g" | "gamma_F" | "M" | "round" | "H" | "B" | "t" | "W_el" | "E" | "f_y" | "nu" | "Omega_b", number>>): number[] {
  const _z = v.z;
  const _rho = v.rho;
  const _g = v.g;
  const _gamma_F = v.gamma_F;
  const _M = v.M;
  const _round = v.round;
  const _H = v.H;
  const _B = v.B;
  const _t = v.t;
  const _W_el = v.W_el;
  const _E = v.E;
  const _f_y = v.f_y;
  const _nu = v.nu;
  const _Omega_b = v.Omega_b;
  const _p = finite(_gamma_F * _rho * _g * _z, "p");
  const _b_w = finite(_B - 2 * _t, "b_w");
  const _h_w = finite(_H - 2 * _t, "h_w");
  const _m_c = finite(_p * (Math.pow(_b_w, 2) - _b_w * _h_w + Math.pow(_h_w, 2)) / 12, "m_c");
  const _m_m = finite(_p * Math.pow(finite(Math.max(_b_w, _h_w), "max(b_w, h_w)"), 2) / 8 - _m_c, "m_m");
  const _sigma_b = finite(_round > 0 ? 0 * _p : 6 * Math.max(_m_c, _m_m) / finite(Math.pow(_t, 2), "t ^ 2"), "sigma_b");
  const _sigma_n = finite(_p * Math.max(_B, _H) / finite(2 * _t, "2 * t"), "sigma_n");
  const _sigma = finite(_sigma_b + _sigma_n, "sigma");
  const _p_cr = finite(2 * _E / finite(1 - Math.pow(_nu, 2), "1 - nu ^ 2") * Math.pow(finite(_t / finite(_H - _t, "H - t"), "t / (H - t)"), 3), "p_cr");
  const _sigma_x = finite(_M / _W_el, "sigma_x");
  const _sigma_v = finite(Math.sqrt(Math.pow(_sigma_x, 2) + _sigma_x * _sigma + Math.pow(_sigma, 2)), "sigma_v");
  const _sigma_Rd = finite(_f_y / _Omega_b, "sigma_Rd");
  const _sigma_low = finite(_M / _W_el, "sigma_low");
  const _sigma_high = finite(_M / _W_el + _gamma_F * _rho * _g * _z * (_round > 0 ? _H / _t : 0.75 * Math.pow(finite(Math.max(finite(_B - 2 * _t, "B - 2 * t"), finite(_H - 2 * _t, "H - 2 * t")), "max(B - 2 * t, H - 2 * t)"), 2) / finite(Math.pow(_t, 2), "t ^ 2") + Math.max(_B, _H) / finite(2 * _t, "2 * t")), "sigma_high");
  return [_p, _b_w, _h_w, _m_c, _m_m, _sigma_b, _sigma_n, _sigma, _p_cr, _sigma_x, _sigma_v, _sigma_Rd, _sigma_low, _sigma_high];
}

export function tubeWallBentBySolution_partialFactors(v: Readonly<Record<"z" | "rho" | "g" | "gamma_F" | "M" | "round" | "H" | "B" | "t" | "W_el" | "f_y" | "gamma_M0", number>>): number[] {
  const _z = v.z;
  const _rho = v.rho;
  const _g = v.g;
  const _gamma_F = v.gamma_F;
  const _M = v.M;
  const _round = v.round;
  const _H = v.H;
  const _B = v.B;
  const _t = v.t;
  const _W_el = v.W_el;
  const _f_y = v.f_y;
  const _gamma_M0 = v.gamma_M0;
  const _p = finite(_gamma_F * _rho * _g * _z, "p");
  const _b_w = finite(_B - 2 * _t, "b_w");
  const _h_w = finite(_H - 2 * _t, "h_w");
  const _m_c = finite(_p * (Math.pow(_b_w, 2) - _b_w * _h_w + Math.pow(_h_w, 2)) / 12, "m_c");
  const _m_m = finite(_p * Math.pow(finite(Math.max(_b_w, _h_w), "max(b_w, h_w)"), 2) / 8 - _m_c, "m_m");
  const _sigma_b = finite(_round > 0 ? 0 * _p : 6 * Math.max(_m_c, _m_m) / finite(Math.pow(_t, 2), "t ^ 2"), "sigma_b");
  const _sigma_n = finite(_p * Math.max(_B, _H) / finite(2 * _t, "2 * t"), "sigma_n");
  const _sigma = finite(_sigma_b + _sigma_n, "sigma");
  const _sigma_x = finite(_M / _W_el, "sigma_x");
  const _sigma_v = finite(Math.sqrt(Math.pow(_sigma_x, 2) + _sigma_x * _sigma + Math.pow(_sigma, 2)), "sigma_v");
  const _sigma_Rd = finite(_f_y / _gamma_M0, "sigma_Rd");
  const _sigma_low = finite(_M / _W_el, "sigma_low");
  const _sigma_high = finite(_M / _W_el + _gamma_F * _rho * _g * _z * (_round > 0 ? _H / _t : 0.75 * Math.pow(finite(Math.max(finite(_B - 2 * _t, "B - 2 * t"), finite(_H - 2 * _t, "H - 2 * t")), "max(B - 2 * t, H - 2 * t)"), 2) / finite(Math.pow(_t, 2), "t ^ 2") + Math.max(_B, _H) / finite(2 * _t, "2 * t")), "sigma_high");
  return [_p, _b_w, _h_w, _m_c, _m_m, _sigma_b, _sigma_n, _sigma, _sigma_x, _sigma_v, _sigma_Rd, _sigma_low, _sigma_high];
}

export function tubeWallBentBySolution_allowableStress(v: Readonly<Record<"z" | "rho" | "g" | "gamma_F" | "M" | "round" | "H" | "B" | "t" | "W_el" | "f_y" | "Omega_b", number>>): number[] {
  const _z = v.z;
  const _rho = v.rho;
  const _g = v.g;
  const _gamma_F = v.gamma_F;
  const _M = v.M;
  const _round = v.round;
  const _H = v.H;
  const _B = v.B;
  const _t = v.t;
  const _W_el = v.W_el;
  const _f_y = v.f_y;
  const _Omega_b = v.Omega_b;
  const _p = finite(_gamma_F * _rho * _g * _z, "p");
  const _b_w = finite(_B - 2 * _t, "b_w");
  const _h_w = finite(_H - 2 * _t, "h_w");
  const _m_c = finite(_p * (Math.pow(_b_w, 2) - _b_w * _h_w + Math.pow(_h_w, 2)) / 12, "m_c");
  const _m_m = finite(_p * Math.pow(finite(Math.max(_b_w, _h_w), "max(b_w, h_w)"), 2) / 8 - _m_c, "m_m");
  const _sigma_b = finite(_round > 0 ? 0 * _p : 6 * Math.max(_m_c, _m_m) / finite(Math.pow(_t, 2), "t ^ 2"), "sigma_b");
  const _sigma_n = finite(_p * Math.max(_B, _H) / finite(2 * _t, "2 * t"), "sigma_n");
  const _sigma = finite(_sigma_b + _sigma_n, "sigma");
  const _sigma_x = finite(_M / _W_el, "sigma_x");
  const _sigma_v = finite(Math.sqrt(Math.pow(_sigma_x, 2) + _sigma_x * _sigma + Math.pow(_sigma, 2)), "sigma_v");
  const _sigma_Rd = finite(_f_y / _Omega_b, "sigma_Rd");
  const _sigma_low = finite(_M / _W_el, "sigma_low");
  const _sigma_high = finite(_M / _W_el + _gamma_F * _rho * _g * _z * (_round > 0 ? _H / _t : 0.75 * Math.pow(finite(Math.max(finite(_B - 2 * _t, "B - 2 * t"), finite(_H - 2 * _t, "H - 2 * t")), "max(B - 2 * t, H - 2 * t)"), 2) / finite(Math.pow(_t, 2), "t ^ 2") + Math.max(_B, _H) / finite(2 * _t, "2 * t")), "sigma_high");
  return [_p, _b_w, _h_w, _m_c, _m_m, _sigma_b, _sigma_n, _sigma, _sigma_x, _sigma_v, _sigma_Rd, _sigma_low, _sigma_high];
}

export function tubeWallCollapse_partialFactors(v: Readonly<Record<"z" | "rho" | "g" | "gamma_F" | "round" | "H" | "B" | "t" | "E" | "f_y" | "nu" | "gamma_M1", number>>): number[] {
  const _z = v.z;
  const _rho = v.rho;
  const _g = v.g;
  const _gamma_F = v.gamma_F;
  const _round = v.round;
  const _H = v.H;
  const _B = v.B;
  const _t = v.t;
  const _E = v.E;
  const _f_y = v.f_y;
  const _nu = v.nu;
  const _gamma_M1 = v.gamma_M1;
  const _p = finite(_gamma_F * _rho * _g * _z, "p");
  const _b_w = finite(Math.max(_B, _H) - 2 * _t, "b_w");
  const _p_y = finite(_round > 0 ? 2 * _f_y * _t / _H : 4 * _f_y * Math.pow(_t, 2) / finite(Math.pow(_b_w, 2), "b_w ^ 2"), "p_y");
  const _p_e = finite(_round > 0 ? 2 * _E / finite(1 - Math.pow(_nu, 2), "1 - nu ^ 2") * Math.pow(finite(_t / finite(_H - _t, "H - t"), "t / (H - t)"), 3) : _p_y * 1000000, "p_e");
  const _p_c = finite(1 / finite(1 / _p_y + 1 / _p_e, "1 / p_y + 1 / p_e"), "p_c");
  const _p_Rd = finite(_p_c / _gamma_M1, "p_Rd");
  const _p_low = finite(_round > 0 ? 0.5 * Math.min(finite(2 * _f_y * _t / _H, "2 * f_y * t / H"), finite(2 * _E * Math.pow(finite(_t / finite(_H - _t, "H - t"), "t / (H - t)"), 3), "2 * E * (t / (H - t)) ^ 3")) : _f_y * Math.pow(_t, 2) / finite(Math.pow(finite(Math.max(finite(_B - 2 * _t, "B - 2 * t"), finite(_H - 2 * _t, "H - 2 * t")), "max(B - 2 * t, H - 2 * t)"), 2), "max(B - 2 * t, H - 2 * t) ^ 2"), "p_low");
  const _p_high = finite(_round > 0 ? 2 * _f_y * _t / finite(_H - 2 * _t, "H - 2 * t") : 8 * _f_y * Math.pow(_t, 2) / finite(Math.pow(finite(Math.max(finite(_B - 2 * _t, "B - 2 * t"), finite(_H - 2 * _t, "H - 2 * t")), "max(B - 2 * t, H - 2 * t)"), 2), "max(B - 2 * t, H - 2 * t) ^ 2"), "p_high");
  return [_p, _b_w, _p_y, _p_e, _p_c, _p_Rd, _p_low, _p_high];
}

export function tubeWallCollapse_allowableStress(v: Readonly<Record<"z" | "rho" | "g" | "gamma_F" | "round" | "H" | "B" | "t" | "E" | "f_y" | "nu" | "Omega_c", number>>): number[] {
  const _z = v.z;
  const _rho = v.rho;
  const _g = v.g;
  const _gamma_F = v.gamma_F;
  const _round = v.round;
  const _H = v.H;
  const _B = v.B;
  const _t = v.t;
  const _E = v.E;
  const _f_y = v.f_y;
  const _nu = v.nu;
  const _Omega_c = v.Omega_c;
  const _p = finite(_gamma_F * _rho * _g * _z, "p");
  const _b_w = finite(Math.max(_B, _H) - 2 * _t, "b_w");
  const _p_y = finite(_round > 0 ? 2 * _f_y * _t / _H : 4 * _f_y * Math.pow(_t, 2) / finite(Math.pow(_b_w, 2), "b_w ^ 2"), "p_y");
  const _p_e = finite(_round > 0 ? 2 * _E / finite(1 - Math.pow(_nu, 2), "1 - nu ^ 2") * Math.pow(finite(_t / finite(_H - _t, "H - t"), "t / (H - t)"), 3) : _p_y * 1000000, "p_e");
  const _p_c = finite(1 / finite(1 / _p_y + 1 / _p_e, "1 / p_y + 1 / p_e"), "p_c");
  const _p_Rd = finite(_p_c / _Omega_c, "p_Rd");
  const _p_low = finite(_round > 0 ? 0.5 * Math.min(finite(2 * _f_y * _t / _H, "2 * f_y * t / H"), finite(2 * _E * Math.pow(finite(_t / finite(_H - _t, "H - t"), "t / (H - t)"), 3), "2 * E * (t / (H - t)) ^ 3")) : _f_y * Math.pow(_t, 2) / finite(Math.pow(finite(Math.max(finite(_B - 2 * _t, "B - 2 * t"), finite(_H - 2 * _t, "H - 2 * t")), "max(B - 2 * t, H - 2 * t)"), 2), "max(B - 2 * t, H - 2 * t) ^ 2"), "p_low");
  const _p_high = finite(_round > 0 ? 2 * _f_y * _t / finite(_H - 2 * _t, "H - 2 * t") : 8 * _f_y * Math.pow(_t, 2) / finite(Math.pow(finite(Math.max(finite(_B - 2 * _t, "B - 2 * t"), finite(_H - 2 * _t, "H - 2 * t")), "max(B - 2 * t, H - 2 * t)"), 2), "max(B - 2 * t, H - 2 * t) ^ 2"), "p_high");
  return [_p, _b_w, _p_y, _p_e, _p_c, _p_Rd, _p_low, _p_high];
}

export function tubeDeflection_partialFactors(v: Readonly<Record<"w_F" | "w_o" | "gamma_F" | "L" | "n_L" | "M" | "I" | "E", number>>): number[] {
  const _w_F = v.w_F;
  const _w_o = v.w_o;
  const _gamma_F = v.gamma_F;
  const _L = v.L;
  const _n_L = v.n_L;
  const _M = v.M;
  const _I = v.I;
  const _E = v.E;
  const _w = finite(_w_F / _gamma_F, "w");
  const _w_lim = finite(_L / _n_L, "w_lim");
  const _w_high = finite((_M * Math.pow(_L, 2) / finite(2 * _E * _I, "2 * E * I") + _w_o) / _gamma_F, "w_high");
  return [_w, _w_lim, _w_high];
}

export function tubeDeflection_allowableStress(v: Readonly<Record<"w_F" | "w_o" | "gamma_F" | "L" | "n_L" | "M" | "I" | "E", number>>): number[] {
  const _w_F = v.w_F;
  const _w_o = v.w_o;
  const _gamma_F = v.gamma_F;
  const _L = v.L;
  const _n_L = v.n_L;
  const _M = v.M;
  const _I = v.I;
  const _E = v.E;
  const _w = finite(_w_F / _gamma_F, "w");
  const _w_lim = finite(_L / _n_L, "w_lim");
  const _w_high = finite((_M * Math.pow(_L, 2) / finite(2 * _E * _I, "2 * E * I") + _w_o) / _gamma_F, "w_high");
  return [_w, _w_lim, _w_high];
}

export function tubeDeflectionBySolution_partialFactors(v: Readonly<Record<"w_F" | "w_o" | "gamma_F" | "L" | "n_L" | "M" | "I" | "E", number>>): number[] {
  const _w_F = v.w_F;
  const _w_o = v.w_o;
  const _gamma_F = v.gamma_F;
  const _L = v.L;
  const _n_L = v.n_L;
  const _M = v.M;
  const _I = v.I;
  const _E = v.E;
  const _w = finite(_w_F / _gamma_F, "w");
  const _w_lim = finite(_L / _n_L, "w_lim");
  const _w_high = finite((_M * Math.pow(_L, 2) / finite(2 * _E * _I, "2 * E * I") + _w_o) / _gamma_F, "w_high");
  return [_w, _w_lim, _w_high];
}

export function tubeDeflectionBySolution_allowableStress(v: Readonly<Record<"w_F" | "w_o" | "gamma_F" | "L" | "n_L" | "M" | "I" | "E", number>>): number[] {
  const _w_F = v.w_F;
  const _w_o = v.w_o;
  const _gamma_F = v.gamma_F;
  const _L = v.L;
  const _n_L = v.n_L;
  const _M = v.M;
  const _I = v.I;
  const _E = v.E;
  const _w = finite(_w_F / _gamma_F, "w");
  const _w_lim = finite(_L / _n_L, "w_lim");
  const _w_high = finite((_M * Math.pow(_L, 2) / finite(2 * _E * _I, "2 * E * I") + _w_o) / _gamma_F, "w_high");
  return [_w, _w_lim, _w_high];
}

export function crossingJoint_partialFactors(v: Readonly<Record<"M_1" | "N_1" | "b_0" | "h_0" | "t_0" | "b_1" | "h_1" | "f_y0" | "M_0" | "N_0" | "W_0" | "A_0" | "gamma_M5", number>>): number[] {
  const _M_1 = v.M_1;
  const _N_1 = v.N_1;
  const _b_0 = v.b_0;
  const _h_0 = v.h_0;
  const _t_0 = v.t_0;
  const _b_1 = v.b_1;
  const _h_1 = v.h_1;
  const _f_y0 = v.f_y0;
  const _M_0 = v.M_0;
  const _N_0 = v.N_0;
  const _W_0 = v.W_0;
  const _A_0 = v.A_0;
  const _gamma_M5 = v.gamma_M5;
  const _beta = finite(_b_1 / _b_0, "beta");
  const _n = finite((_N_0 / _A_0 + _M_0 / _W_0) / _f_y0, "n");
  const _k_n = finite(Math.min(1, finite(1.3 - 0.4 * _n / _beta, "1.3 - 0.4 * n / beta")), "k_n");
  const _f_d = finite(_k_n * _f_y0 / _gamma_M5, "f_d");
  const _eta = finite(_h_1 / _b_0, "eta");
  const _N_Rd = finite(_f_d * Math.pow(_t_0, 2) / finite(1 - _beta, "1 - beta") * (2 * _eta + 4 * Math.sqrt(1 - _beta)), "N_Rd");
  const _M_Rd = finite(_f_d * Math.pow(_t_0, 2) * (_h_1 * (1 + _beta) / finite(2 * (1 - _beta), "2 * (1 - beta)") + Math.sqrt(2 * _b_0 * _b_1 * (1 + _beta) / finite(1 - _beta, "1 - beta"))), "M_Rd");
  const _u = finite(_N_1 / _N_Rd + _M_1 / _M_Rd, "u");
  const _u_Rd = finite(1, "u_Rd");
  const _N_fan = finite(Math.PI * _f_d * Math.pow(_t_0, 2), "N_fan");
  const _range0 = finite(_beta >= 0.25 ? 1 : 0, "range0");
  const _range1 = finite(finite(_b_0 / _t_0, "b_0 / t_0") <= 35 && finite(_h_0 / _t_0, "h_0 / t_0") <= 35 ? 1 : 0, "range1");
  const _range2 = finite(0.5 <= finite(_h_0 / _b_0, "h_0 / b_0") && finite(_h_0 / _b_0, "h_0 / b_0") <= 2 ? 1 : 0, "range2");
  const _range3 = finite(_k_n > 0 ? 1 : 0, "range3");
  return [_beta, _n, _k_n, _f_d, _eta, _N_Rd, _M_Rd, _u, _u_Rd, _N_fan, _range0, _range1, _range2, _range3];
}

export function crossingJoint_allowableStress(v: Readonly<Record<"M_1" | "N_1" | "b_0" | "h_0" | "t_0" | "b_1" | "h_1" | "f_y0" | "M_0" | "N_0" | "W_0" | "A_0" | "Omega_b", number>>): number[] {
  const _M_1 = v.M_1;
  const _N_1 = v.N_1;
  const _b_0 = v.b_0;
  const _h_0 = v.h_0;
  const _t_0 = v.t_0;
  const _b_1 = v.b_1;
  const _h_1 = v.h_1;
  const _f_y0 = v.f_y0;
  const _M_0 = v.M_0;
  const _N_0 = v.N_0;
  const _W_0 = v.W_0;
  const _A_0 = v.A_0;
  const _Omega_b = v.Omega_b;
  const _beta = finite(_b_1 / _b_0, "beta");
  const _n = finite((_N_0 / _A_0 + _M_0 / _W_0) / finite(0.6 * _f_y0, "0.6 * f_y0"), "n");
  const _k_n = finite(Math.min(1, finite(1.3 - 0.4 * _n / _beta, "1.3 - 0.4 * n / beta")), "k_n");
  const _f_d = finite(_k_n * _f_y0 / _Omega_b, "f_d");
  const _eta = finite(_h_1 / _b_0, "eta");
  const _N_Rd = finite(_f_d * Math.pow(_t_0, 2) / finite(1 - _beta, "1 - beta") * (2 * _eta + 4 * Math.sqrt(1 - _beta)), "N_Rd");
  const _M_Rd = finite(_f_d * Math.pow(_t_0, 2) * (_h_1 * (1 + _beta) / finite(2 * (1 - _beta), "2 * (1 - beta)") + Math.sqrt(2 * _b_0 * _b_1 * (1 + _beta) / finite(1 - _beta, "1 - beta"))), "M_Rd");
  const _u = finite(_N_1 / _N_Rd + _M_1 / _M_Rd, "u");
  const _u_Rd = finite(1, "u_Rd");
  const _N_fan = finite(Math.PI * _f_d * Math.pow(_t_0, 2), "N_fan");
  const _range0 = finite(_beta >= 0.25 ? 1 : 0, "range0");
  const _range1 = finite(finite(_b_0 / _t_0, "b_0 / t_0") <= 35 && finite(_h_0 / _t_0, "h_0 / t_0") <= 35 ? 1 : 0, "range1");
  const _range2 = finite(0.5 <= finite(_h_0 / _b_0, "h_0 / b_0") && finite(_h_0 / _b_0, "h_0 / b_0") <= 2 ? 1 : 0, "range2");
  const _range3 = finite(_k_n > 0 ? 1 : 0, "range3");
  return [_beta, _n, _k_n, _f_d, _eta, _N_Rd, _M_Rd, _u, _u_Rd, _N_fan, _range0, _range1, _range2, _range3];
}

export function crossingJointBySolution_partialFactors(v: Readonly<Record<"M_1" | "N_1" | "b_0" | "h_0" | "t_0" | "b_1" | "h_1" | "f_y0" | "M_0" | "N_0" | "W_0" | "A_0" | "gamma_M5", number>>): number[] {
  const _M_1 = v.M_1;
  const _N_1 = v.N_1;
  const _b_0 = v.b_0;
  const _h_0 = v.h_0;
  const _t_0 = v.t_0;
  const _b_1 = v.b_1;
  const _h_1 = v.h_1;
  const _f_y0 = v.f_y0;
  const _M_0 = v.M_0;
  const _N_0 = v.N_0;
  const _W_0 = v.W_0;
  const _A_0 = v.A_0;
  const _gamma_M5 = v.gamma_M5;
  const _beta = finite(_b_1 / _b_0, "beta");
  const _n = finite((_N_0 / _A_0 + _M_0 / _W_0) / _f_y0, "n");
  const _k_n = finite(Math.min(1, finite(1.3 - 0.4 * _n / _beta, "1.3 - 0.4 * n / beta")), "k_n");
  const _f_d = finite(_k_n * _f_y0 / _gamma_M5, "f_d");
  const _eta = finite(_h_1 / _b_0, "eta");
  const _N_Rd = finite(_f_d * Math.pow(_t_0, 2) / finite(1 - _beta, "1 - beta") * (2 * _eta + 4 * Math.sqrt(1 - _beta)), "N_Rd");
  const _M_Rd = finite(_f_d * Math.pow(_t_0, 2) * (_h_1 * (1 + _beta) / finite(2 * (1 - _beta), "2 * (1 - beta)") + Math.sqrt(2 * _b_0 * _b_1 * (1 + _beta) / finite(1 - _beta, "1 - beta"))), "M_Rd");
  const _u = finite(_N_1 / _N_Rd + _M_1 / _M_Rd, "u");
  const _u_Rd = finite(1, "u_Rd");
  const _N_fan = finite(Math.PI * _f_d * Math.pow(_t_0, 2), "N_fan");
  const _range0 = finite(_beta >= 0.25 ? 1 : 0, "range0");
  const _range1 = finite(finite(_b_0 / _t_0, "b_0 / t_0") <= 35 && finite(_h_0 / _t_0, "h_0 / t_0") <= 35 ? 1 : 0, "range1");
  const _range2 = finite(0.5 <= finite(_h_0 / _b_0, "h_0 / b_0") && finite(_h_0 / _b_0, "h_0 / b_0") <= 2 ? 1 : 0, "range2");
  const _range3 = finite(_k_n > 0 ? 1 : 0, "range3");
  return [_beta, _n, _k_n, _f_d, _eta, _N_Rd, _M_Rd, _u, _u_Rd, _N_fan, _range0, _range1, _range2, _range3];
}

export function crossingJointBySolution_allowableStress(v: Readonly<Record<"M_1" | "N_1" | "b_0" | "h_0" | "t_0" | "b_1" | "h_1" | "f_y0" | "M_0" | "N_0" | "W_0" | "A_0" | "Omega_b", number>>): number[] {
  const _M_1 = v.M_1;
  const _N_1 = v.N_1;
  const _b_0 = v.b_0;
  const _h_0 = v.h_0;
  const _t_0 = v.t_0;
  const _b_1 = v.b_1;
  const _h_1 = v.h_1;
  const _f_y0 = v.f_y0;
  const _M_0 = v.M_0;
  const _N_0 = v.N_0;
  const _W_0 = v.W_0;
  const _A_0 = v.A_0;
  const _Omega_b = v.Omega_b;
  const _beta = finite(_b_1 / _b_0, "beta");
  const _n = finite((_N_0 / _A_0 + _M_0 / _W_0) / finite(0.6 * _f_y0, "0.6 * f_y0"), "n");
  const _k_n = finite(Math.min(1, finite(1.3 - 0.4 * _n / _beta, "1.3 - 0.4 * n / beta")), "k_n");
  const _f_d = finite(_k_n * _f_y0 / _Omega_b, "f_d");
  const _eta = finite(_h_1 / _b_0, "eta");
  const _N_Rd = finite(_f_d * Math.pow(_t_0, 2) / finite(1 - _beta, "1 - beta") * (2 * _eta + 4 * Math.sqrt(1 - _beta)), "N_Rd");
  const _M_Rd = finite(_f_d * Math.pow(_t_0, 2) * (_h_1 * (1 + _beta) / finite(2 * (1 - _beta), "2 * (1 - beta)") + Math.sqrt(2 * _b_0 * _b_1 * (1 + _beta) / finite(1 - _beta, "1 - beta"))), "M_Rd");
  const _u = finite(_N_1 / _N_Rd + _M_1 / _M_Rd, "u");
  const _u_Rd = finite(1, "u_Rd");
  const _N_fan = finite(Math.PI * _f_d * Math.pow(_t_0, 2), "N_fan");
  const _range0 = finite(_beta >= 0.25 ? 1 : 0, "range0");
  const _range1 = finite(finite(_b_0 / _t_0, "b_0 / t_0") <= 35 && finite(_h_0 / _t_0, "h_0 / t_0") <= 35 ? 1 : 0, "range1");
  const _range2 = finite(0.5 <= finite(_h_0 / _b_0, "h_0 / b_0") && finite(_h_0 / _b_0, "h_0 / b_0") <= 2 ? 1 : 0, "range2");
  const _range3 = finite(_k_n > 0 ? 1 : 0, "range3");
  return [_beta, _n, _k_n, _f_d, _eta, _N_Rd, _M_Rd, _u, _u_Rd, _N_fan, _range0, _range1, _range2, _range3];
}

export function crossingSideWall_partialFactors(v: Readonly<Record<"M_1" | "N_1" | "b_0" | "h_0" | "t_0" | "b_1" | "h_1" | "f_y0" | "M_0" | "N_0" | "W_0" | "A_0" | "E" | "alpha" | "gamma_M5", number>>): number[] {
  const _M_1 = v.M_1;
  const _N_1 = v.N_1;
  const _b_0 = v.b_0;
  const _h_0 = v.h_0;
  const _t_0 = v.t_0;
  const _b_1 = v.b_1;
  const _h_1 = v.h_1;
  const _f_y0 = v.f_y0;
  const _M_0 = v.M_0;
  const _N_0 = v.N_0;
  const _W_0 = v.W_0;
  const _A_0 = v.A_0;
  const _E = v.E;
  const _alpha = v.alpha;
  const _gamma_M5 = v.gamma_M5;
  const _beta = finite(_b_1 / _b_0, "beta");
  const _n = finite((_N_0 / _A_0 + _M_0 / _W_0) / _f_y0, "n");
  const _k_n = finite(Math.min(1, finite(1.3 - 0.4 * _n / _beta, "1.3 - 0.4 * n / beta")), "k_n");
  const _f_d = finite(_k_n * _f_y0 / _gamma_M5, "f_d");
  const _eta = finite(_h_1 / _b_0, "eta");
  const _N_face = finite(_f_d * Math.pow(_t_0, 2) / 0.15 * (2 * _eta + 4 * Math.sqrt(0.15)), "N_face");
  const _M_face = finite(_f_d * Math.pow(_t_0, 2) * (_h_1 * 1.85 / 0.3 + Math.sqrt(2 * _b_0 * 0.85 * _b_0 * 1.85 / 0.15)), "M_face");
  const _lambda = finite(3.46 * (_h_0 / _t_0 - 2) / finite(Math.PI * Math.sqrt(_E / _f_y0), "pi * sqrt(E / f_y0)"), "lambda");
  const _Phi = finite(0.5 * (1 + _alpha * (_lambda - 0.2) + Math.pow(_lambda, 2)), "Phi");
  const _chi = finite(_lambda <= 0.2 ? 1 : 1 / finite(_Phi + Math.sqrt(Math.pow(_Phi, 2) - Math.pow(_lambda, 2)), "Phi + sqrt(Phi ^ 2 - lambda ^ 2)"), "chi");
  const _N_wall = finite(0.8 * _chi * _f_y0 * _t_0 * (2 * _h_1 + 10 * _t_0) / _gamma_M5, "N_wall");
  const _M_wall = finite(0.8 * _f_y0 * _t_0 * (_b_0 - _t_0) * (_h_1 + 5 * _t_0) / _gamma_M5, "M_wall");
  const _M_dist = finite(2 * _f_y0 * _t_0 * (_h_1 * _t_0 + Math.sqrt(_b_0 * _h_0 * _t_0 * (_b_0 + _h_0))) / _gamma_M5, "M_dist");
  const _x = finite((_beta - 0.85) / 0.15, "x");
  const _N_Rd = finite(_N_face + _x * (_N_wall - _N_face), "N_Rd");
  const _M_Rd = finite(Math.min(finite(_M_face + _x * (_M_wall - _M_face), "M_face + x * (M_wall - M_face)"), _M_dist), "M_Rd");
  const _u = finite(_N_1 / _N_Rd + _M_1 / _M_Rd, "u");
  const _u_Rd = finite(1, "u_Rd");
  const _N_fan = finite(Math.PI * _f_d * Math.pow(_t_0, 2), "N_fan");
  const _N_high = finite(Math.max(_N_face, finite(2 * _f_y0 * _t_0 * (_h_1 + 5 * _h_0), "2 * f_y0 * t_0 * (h_1 + 5 * h_0)")), "N_high");
  const _range0 = finite(finite(_b_0 / _t_0, "b_0 / t_0") <= 35 && finite(_h_0 / _t_0, "h_0 / t_0") <= 35 ? 1 : 0, "range0");
  const _range1 = finite(0.5 <= finite(_h_0 / _b_0, "h_0 / b_0") && finite(_h_0 / _b_0, "h_0 / b_0") <= 2 ? 1 : 0, "range1");
  const _range2 = finite(_k_n > 0 ? 1 : 0, "range2");
  return [_beta, _n, _k_n, _f_d, _eta, _N_face, _M_face, _lambda, _Phi, _chi, _N_wall, _M_wall, _M_dist, _x, _N_Rd, _M_Rd, _u, _u_Rd, _N_fan, _N_high, _range0, _range1, _range2];
}

export function crossingSideWall_allowableStress(v: Readonly<Record<"M_1" | "N_1" | "b_0" | "h_0" | "t_0" | "b_1" | "h_1" | "f_y0" | "M_0" | "N_0" | "W_0" | "A_0" | "E" | "Omega_b" | "Omega_J", number>>): number[] {
  const _M_1 = v.M_1;
  const _N_1 = v.N_1;
  const _b_0 = v.b_0;
  const _h_0 = v.h_0;
  const _t_0 = v.t_0;
  const _b_1 = v.b_1;
  const _h_1 = v.h_1;
  const _f_y0 = v.f_y0;
  const _M_0 = v.M_0;
  const _N_0 = v.N_0;
  const _W_0 = v.W_0;
  const _A_0 = v.A_0;
  const _E = v.E;
  const _Omega_b = v.Omega_b;
  const _Omega_J = v.Omega_J;
  const _beta = finite(_b_1 / _b_0, "beta");
  const _n = finite((_N_0 / _A_0 + _M_0 / _W_0) / finite(0.6 * _f_y0, "0.6 * f_y0"), "n");
  const _k_n = finite(Math.min(1, finite(1.3 - 0.4 * _n / _beta, "1.3 - 0.4 * n / beta")), "k_n");
  const _f_d = finite(_k_n * _f_y0 / _Omega_b, "f_d");
  const _eta = finite(_h_1 / _b_0, "eta");
  const _N_face = finite(_f_d * Math.pow(_t_0, 2) / 0.15 * (2 * _eta + 4 * Math.sqrt(0.15)), "N_face");
  const _M_face = finite(_f_d * Math.pow(_t_0, 2) * (_h_1 * 1.85 / 0.3 + Math.sqrt(2 * _b_0 * 0.85 * _b_0 * 1.85 / 0.15)), "M_face");
  const _N_yield = finite(2 * _f_y0 * _t_0 * (5 * _t_0 + _h_1) / _Omega_b, "N_yield");
  const _N_crip = finite(Math.min(finite(1.6 * Math.pow(_t_0, 2) * (1 + 3 * _h_1 / finite(_h_0 - 3 * _t_0, "h_0 - 3 * t_0")), "1.6 * t_0 ^ 2 * (1 + 3 * h_1 / (h_0 - 3 * t_0))"), finite(48 * Math.pow(_t_0, 3) / finite(_h_0 - 3 * _t_0, "h_0 - 3 * t_0"), "48 * t_0 ^ 3 / (h_0 - 3 * t_0)")) * Math.sqrt(_E * _f_y0) * _k_n / _Omega_J, "N_crip");
  const _N_wall = finite(Math.min(_N_yield, _N_crip), "N_wall");
  const _M_wall = finite(0.8 * _f_y0 * _t_0 * (_b_0 - _t_0) * (_h_1 + 5 * _t_0) / _Omega_b, "M_wall");
  const _M_dist = finite(2 * _f_y0 * _t_0 * (_h_1 * _t_0 + Math.sqrt(_b_0 * _h_0 * _t_0 * (_b_0 + _h_0))) / _Omega_b, "M_dist");
  const _x = finite((_beta - 0.85) / 0.15, "x");
  const _N_Rd = finite(_N_face + _x * (_N_wall - _N_face), "N_Rd");
  const _M_Rd = finite(Math.min(finite(_M_face + _x * (_M_wall - _M_face), "M_face + x * (M_wall - M_face)"), _M_dist), "M_Rd");
  const _u = finite(_N_1 / _N_Rd + _M_1 / _M_Rd, "u");
  const _u_Rd = finite(1, "u_Rd");
  const _N_fan = finite(Math.PI * _f_d * Math.pow(_t_0, 2), "N_fan");
  const _N_high = finite(Math.max(_N_face, finite(2 * _f_y0 * _t_0 * (_h_1 + 5 * _h_0), "2 * f_y0 * t_0 * (h_1 + 5 * h_0)")), "N_high");
  const _range0 = finite(finite(_b_0 / _t_0, "b_0 / t_0") <= 35 && finite(_h_0 / _t_0, "h_0 / t_0") <= 35 ? 1 : 0, "range0");
  const _range1 = finite(0.5 <= finite(_h_0 / _b_0, "h_0 / b_0") && finite(_h_0 / _b_0, "h_0 / b_0") <= 2 ? 1 : 0, "range1");
  const _range2 = finite(_k_n > 0 ? 1 : 0, "range2");
  return [_beta, _n, _k_n, _f_d, _eta, _N_face, _M_face, _N_yield, _N_crip, _N_wall, _M_wall, _M_dist, _x, _N_Rd, _M_Rd, _u, _u_Rd, _N_fan, _N_high, _range0, _range1, _range2];
}

export function crossingSideWallBySolution_partialFactors(v: Readonly<Record<"M_1" | "N_1" | "b_0" | "h_0" | "t_0" | "b_1" | "h_1" | "f_y0" | "M_0" | "N_0" | "W_0" | "A_0" | "E" | "alpha" | "gamma_M5", number>>): number[] {
  const _M_1 = v.M_1;
  const _N_1 = v.N_1;
  const _b_0 = v.b_0;
  const _h_0 = v.h_0;
  const _t_0 = v.t_0;
  const _b_1 = v.b_1;
  const _h_1 = v.h_1;
  const _f_y0 = v.f_y0;
  const _M_0 = v.M_0;
  const _N_0 = v.N_0;
  const _W_0 = v.W_0;
  const _A_0 = v.A_0;
  const _E = v.E;
  const _alpha = v.alpha;
  const _gamma_M5 = v.gamma_M5;
  const _beta = finite(_b_1 / _b_0, "beta");
  const _n = finite((_N_0 / _A_0 + _M_0 / _W_0) / _f_y0, "n");
  const _k_n = finite(Math.min(1, finite(1.3 - 0.4 * _n / _beta, "1.3 - 0.4 * n / beta")), "k_n");
  const _f_d = finite(_k_n * _f_y0 / _gamma_M5, "f_d");
  const _eta = finite(_h_1 / _b_0, "eta");
  const _N_face = finite(_f_d * Math.pow(_t_0, 2) / 0.15 * (2 * _eta + 4 * Math.sqrt(0.15)), "N_face");
  const _M_face = finite(_f_d * Math.pow(_t_0, 2) * (_h_1 * 1.85 / 0.3 + Math.sqrt(2 * _b_0 * 0.85 * _b_0 * 1.85 / 0.15)), "M_face");
  const _lambda = finite(3.46 * (_h_0 / _t_0 - 2) / finite(Math.PI * Math.sqrt(_E / _f_y0), "pi * sqrt(E / f_y0)"), "lambda");
  const _Phi = finite(0.5 * (1 + _alpha * (_lambda - 0.2) + Math.pow(_lambda, 2)), "Phi");
  const _chi = finite(_lambda <= 0.2 ? 1 : 1 / finite(_Phi + Math.sqrt(Math.pow(_Phi, 2) - Math.pow(_lambda, 2)), "Phi + sqrt(Phi ^ 2 - lambda ^ 2)"), "chi");
  const _N_wall = finite(0.8 * _chi * _f_y0 * _t_0 * (2 * _h_1 + 10 * _t_0) / _gamma_M5, "N_wall");
  const _M_wall = finite(0.8 * _f_y0 * _t_0 * (_b_0 - _t_0) * (_h_1 + 5 * _t_0) / _gamma_M5, "M_wall");
  const _M_dist = finite(2 * _f_y0 * _t_0 * (_h_1 * _t_0 + Math.sqrt(_b_0 * _h_0 * _t_0 * (_b_0 + _h_0))) / _gamma_M5, "M_dist");
  const _x = finite((_beta - 0.85) / 0.15, "x");
  const _N_Rd = finite(_N_face + _x * (_N_wall - _N_face), "N_Rd");
  const _M_Rd = finite(Math.min(finite(_M_face + _x * (_M_wall - _M_face), "M_face + x * (M_wall - M_face)"), _M_dist), "M_Rd");
  const _u = finite(_N_1 / _N_Rd + _M_1 / _M_Rd, "u");
  const _u_Rd = finite(1, "u_Rd");
  const _N_fan = finite(Math.PI * _f_d * Math.pow(_t_0, 2), "N_fan");
  const _N_high = finite(Math.max(_N_face, finite(2 * _f_y0 * _t_0 * (_h_1 + 5 * _h_0), "2 * f_y0 * t_0 * (h_1 + 5 * h_0)")), "N_high");
  const _range0 = finite(finite(_b_0 / _t_0, "b_0 / t_0") <= 35 && finite(_h_0 / _t_0, "h_0 / t_0") <= 35 ? 1 : 0, "range0");
  const _range1 = finite(0.5 <= finite(_h_0 / _b_0, "h_0 / b_0") && finite(_h_0 / _b_0, "h_0 / b_0") <= 2 ? 1 : 0, "range1");
  const _range2 = finite(_k_n > 0 ? 1 : 0, "range2");
  return [_beta, _n, _k_n, _f_d, _eta, _N_face, _M_face, _lambda, _Phi, _chi, _N_wall, _M_wall, _M_dist, _x, _N_Rd, _M_Rd, _u, _u_Rd, _N_fan, _N_high, _range0, _range1, _range2];
}

export function crossingSideWallBySolution_allowableStress(v: Readonly<Record<"M_1" | "N_1" | "b_0" | "h_0" | "t_0" | "b_1" | "h_1" | "f_y0" | "M_0" | "N_0" | "W_0" | "A_0" | "E" | "Omega_b" | "Omega_J", number>>): number[] {
  const _M_1 = v.M_1;
  const _N_1 = v.N_1;
  const _b_0 = v.b_0;
  const _h_0 = v.h_0;
  const _t_0 = v.t_0;
  const _b_1 = v.b_1;
  const _h_1 = v.h_1;
  const _f_y0 = v.f_y0;
  const _M_0 = v.M_0;
  const _N_0 = v.N_0;
  const _W_0 = v.W_0;
  const _A_0 = v.A_0;
  const _E = v.E;
  const _Omega_b = v.Omega_b;
  const _Omega_J = v.Omega_J;
  const _beta = finite(_b_1 / _b_0, "beta");
  const _n = finite((_N_0 / _A_0 + _M_0 / _W_0) / finite(0.6 * _f_y0, "0.6 * f_y0"), "n");
  const _k_n = finite(Math.min(1, finite(1.3 - 0.4 * _n / _beta, "1.3 - 0.4 * n / beta")), "k_n");
  const _f_d = finite(_k_n * _f_y0 / _Omega_b, "f_d");
  const _eta = finite(_h_1 / _b_0, "eta");
  const _N_face = finite(_f_d * Math.pow(_t_0, 2) / 0.15 * (2 * _eta + 4 * Math.sqrt(0.15)), "N_face");
  const _M_face = finite(_f_d * Math.pow(_t_0, 2) * (_h_1 * 1.85 / 0.3 + Math.sqrt(2 * _b_0 * 0.85 * _b_0 * 1.85 / 0.15)), "M_face");
  const _N_yield = finite(2 * _f_y0 * _t_0 * (5 * _t_0 + _h_1) / _Omega_b, "N_yield");
  const _N_crip = finite(Math.min(finite(1.6 * Math.pow(_t_0, 2) * (1 + 3 * _h_1 / finite(_h_0 - 3 * _t_0, "h_0 - 3 * t_0")), "1.6 * t_0 ^ 2 * (1 + 3 * h_1 / (h_0 - 3 * t_0))"), finite(48 * Math.pow(_t_0, 3) / finite(_h_0 - 3 * _t_0, "h_0 - 3 * t_0"), "48 * t_0 ^ 3 / (h_0 - 3 * t_0)")) * Math.sqrt(_E * _f_y0) * _k_n / _Omega_J, "N_crip");
  const _N_wall = finite(Math.min(_N_yield, _N_crip), "N_wall");
  const _M_wall = finite(0.8 * _f_y0 * _t_0 * (_b_0 - _t_0) * (_h_1 + 5 * _t_0) / _Omega_b, "M_wall");
  const _M_dist = finite(2 * _f_y0 * _t_0 * (_h_1 * _t_0 + Math.sqrt(_b_0 * _h_0 * _t_0 * (_b_0 + _h_0))) / _Omega_b, "M_dist");
  const _x = finite((_beta - 0.85) / 0.15, "x");
  const _N_Rd = finite(_N_face + _x * (_N_wall - _N_face), "N_Rd");
  const _M_Rd = finite(Math.min(finite(_M_face + _x * (_M_wall - _M_face), "M_face + x * (M_wall - M_face)"), _M_dist), "M_Rd");
  const _u = finite(_N_1 / _N_Rd + _M_1 / _M_Rd, "u");
  const _u_Rd = finite(1, "u_Rd");
  const _N_fan = finite(Math.PI * _f_d * Math.pow(_t_0, 2), "N_fan");
  const _N_high = finite(Math.max(_N_face, finite(2 * _f_y0 * _t_0 * (_h_1 + 5 * _h_0), "2 * f_y0 * t_0 * (h_1 + 5 * h_0)")), "N_high");
  const _range0 = finite(finite(_b_0 / _t_0, "b_0 / t_0") <= 35 && finite(_h_0 / _t_0, "h_0 / t_0") <= 35 ? 1 : 0, "range0");
  const _range1 = finite(0.5 <= finite(_h_0 / _b_0, "h_0 / b_0") && finite(_h_0 / _b_0, "h_0 / b_0") <= 2 ? 1 : 0, "range1");
  const _range2 = finite(_k_n > 0 ? 1 : 0, "range2");
  return [_beta, _n, _k_n, _f_d, _eta, _N_face, _M_face, _N_yield, _N_crip, _N_wall, _M_wall, _M_dist, _x, _N_Rd, _M_Rd, _u, _u_Rd, _N_fan, _N_high, _range0, _range1, _range2];
}

export function crossingEffectiveWidth_partialFactors(v: Readonly<Record<"M_1" | "N_1" | "b_0" | "t_0" | "b_1" | "h_1" | "t_1" | "f_y1" | "W_1" | "f_y0" | "slim" | "gamma_M5", number>>): number[] {
  const _M_1 = v.M_1;
  const _N_1 = v.N_1;
  const _b_0 = v.b_0;
  const _t_0 = v.t_0;
  const _b_1 = v.b_1;
  const _h_1 = v.h_1;
  const _t_1 = v.t_1;
  const _f_y1 = v.f_y1;
  const _W_1 = v.W_1;
  const _f_y0 = v.f_y0;
  const _slim = v.slim;
  const _gamma_M5 = v.gamma_M5;
  const _beta = finite(_b_1 / _b_0, "beta");
  const _b_eff = finite(Math.min(_b_1, finite(10 * _t_0 / _b_0 * _f_y0 * _t_0 / finite(_f_y1 * _t_1, "f_y1 * t_1") * _b_1, "10 * t_0 / b_0 * f_y0 * t_0 / (f_y1 * t_1) * b_1")), "b_eff");
  const _b_ep = finite(Math.min(_b_1, finite(10 * _t_0 / _b_0 * _b_1, "10 * t_0 / b_0 * b_1")), "b_ep");
  const _N_b = finite(_f_y1 * _t_1 * (2 * _h_1 - 4 * _t_1 + 2 * _b_eff) / _gamma_M5, "N_b");
  const _N_p = finite(_beta <= finite(1 - 2 * _t_0 / _b_0, "1 - 2 * t_0 / b_0") ? _f_y0 * _t_0 / finite(Math.sqrt(3), "sqrt(3)") * (2 * _h_1 + 2 * _b_ep) / _gamma_M5 : _N_b, "N_p");
  const _N_Rd = finite(Math.min(_N_b, _N_p), "N_Rd");
  const _M_Rd = finite(_f_y1 * (_W_1 - 0.5 * Math.pow(finite(1 - _b_eff / _b_1, "1 - b_eff / b_1"), 2) * Math.pow(_b_1, 2) * _t_1) / _gamma_M5, "M_Rd");
  const _u = finite(_N_1 / _N_Rd + _M_1 / _M_Rd, "u");
  const _u_Rd = finite(1, "u_Rd");
  const _N_low = finite(Math.min(finite(_f_y1 * _t_1 * (_h_1 - 2 * _t_1), "f_y1 * t_1 * (h_1 - 2 * t_1)"), finite(_f_y0 * _t_0 * _h_1 / 2, "f_y0 * t_0 * h_1 / 2")), "N_low");
  const _N_high = finite(_f_y1 * _t_1 * 2 * (_h_1 + _b_1), "N_high");
  const _range0 = finite(finite(_b_1 / _t_1, "b_1 / t_1") <= _slim && finite(_h_1 / _t_1, "h_1 / t_1") <= _slim && finite(_b_0 / _t_0, "b_0 / t_0") <= _slim ? 1 : 0, "range0");
  return [_beta, _b_eff, _b_ep, _N_b, _N_p, _N_Rd, _M_Rd, _u, _u_Rd, _N_low, _N_high, _range0];
}

export function crossingEffectiveWidth_allowableStress(v: Readonly<Record<"M_1" | "N_1" | "b_0" | "t_0" | "b_1" | "h_1" | "t_1" | "f_y1" | "W_1" | "f_y0" | "slim" | "Omega_b", number>>): number[] {
  const _M_1 = v.M_1;
  const _N_1 = v.N_1;
  const _b_0 = v.b_0;
  const _t_0 = v.t_0;
  const _b_1 = v.b_1;
  const _h_1 = v.h_1;
  const _t_1 = v.t_1;
  const _f_y1 = v.f_y1;
  const _W_1 = v.W_1;
  const _f_y0 = v.f_y0;
  const _slim = v.slim;
  const _Omega_b = v.Omega_b;
  const _beta = finite(_b_1 / _b_0, "beta");
  const _b_eff = finite(Math.min(_b_1, finite(10 * _t_0 / _b_0 * _f_y0 * _t_0 / finite(_f_y1 * _t_1, "f_y1 * t_1") * _b_1, "10 * t_0 / b_0 * f_y0 * t_0 / (f_y1 * t_1) * b_1")), "b_eff");
  const _b_ep = finite(Math.min(_b_1, finite(10 * _t_0 / _b_0 * _b_1, "10 * t_0 / b_0 * b_1")), "b_ep");
  const _N_b = finite(_f_y1 * _t_1 * (2 * _h_1 - 4 * _t_1 + 2 * _b_eff) / _Omega_b, "N_b");
  const _N_p = finite(_beta <= finite(1 - 2 * _t_0 / _b_0, "1 - 2 * t_0 / b_0") ? _f_y0 * _t_0 / finite(Math.sqrt(3), "sqrt(3)") * (2 * _h_1 + 2 * _b_ep) / _Omega_b : _N_b, "N_p");
  const _N_Rd = finite(Math.min(_N_b, _N_p), "N_Rd");
  const _M_Rd = finite(_f_y1 * (_W_1 - 0.5 * Math.pow(finite(1 - _b_eff / _b_1, "1 - b_eff / b_1"), 2) * Math.pow(_b_1, 2) * _t_1) / _Omega_b, "M_Rd");
  const _u = finite(_N_1 / _N_Rd + _M_1 / _M_Rd, "u");
  const _u_Rd = finite(1, "u_Rd");
  const _N_low = finite(Math.min(finite(_f_y1 * _t_1 * (_h_1 - 2 * _t_1), "f_y1 * t_1 * (h_1 - 2 * t_1)"), finite(_f_y0 * _t_0 * _h_1 / 2, "f_y0 * t_0 * h_1 / 2")), "N_low");
  const _N_high = finite(_f_y1 * _t_1 * 2 * (_h_1 + _b_1), "N_high");
  const _range0 = finite(finite(_b_1 / _t_1, "b_1 / t_1") <= _slim && finite(_h_1 / _t_1, "h_1 / t_1") <= _slim && finite(_b_0 / _t_0, "b_0 / t_0") <= _slim ? 1 : 0, "range0");
  return [_beta, _b_eff, _b_ep, _N_b, _N_p, _N_Rd, _M_Rd, _u, _u_Rd, _N_low, _N_high, _range0];
}

export function crossingEffectiveWidthBySolution_partialFactors(v: Readonly<Record<"M_1" | "N_1" | "b_0" | "t_0" | "b_1" | "h_1" | "t_1" | "f_y1" | "W_1" | "f_y0" | "slim" | "gamma_M5", number>>): number[] {
  const _M_1 = v.M_1;
  const _N_1 = v.N_1;
  const _b_0 = v.b_0;
  const _t_0 = v.t_0;
  const _b_1 = v.b_1;
  const _h_1 = v.h_1;
  const _t_1 = v.t_1;
  const _f_y1 = v.f_y1;
  const _W_1 = v.W_1;
  const _f_y0 = v.f_y0;
  const _slim = v.slim;
  const _gamma_M5 = v.gamma_M5;
  const _beta = finite(_b_1 / _b_0, "beta");
  const _b_eff = finite(Math.min(_b_1, finite(10 * _t_0 / _b_0 * _f_y0 * _t_0 / finite(_f_y1 * _t_1, "f_y1 * t_1") * _b_1, "10 * t_0 / b_0 * f_y0 * t_0 / (f_y1 * t_1) * b_1")), "b_eff");
  const _b_ep = finite(Math.min(_b_1, finite(10 * _t_0 / _b_0 * _b_1, "10 * t_0 / b_0 * b_1")), "b_ep");
  const _N_b = finite(_f_y1 * _t_1 * (2 * _h_1 - 4 * _t_1 + 2 * _b_eff) / _gamma_M5, "N_b");
  const _N_p = finite(_beta <= finite(1 - 2 * _t_0 / _b_0, "1 - 2 * t_0 / b_0") ? _f_y0 * _t_0 / finite(Math.sqrt(3), "sqrt(3)") * (2 * _h_1 + 2 * _b_ep) / _gamma_M5 : _N_b, "N_p");
  const _N_Rd = finite(Math.min(_N_b, _N_p), "N_Rd");
  const _M_Rd = finite(_f_y1 * (_W_1 - 0.5 * Math.pow(finite(1 - _b_eff / _b_1, "1 - b_eff / b_1"), 2) * Math.pow(_b_1, 2) * _t_1) / _gamma_M5, "M_Rd");
  const _u = finite(_N_1 / _N_Rd + _M_1 / _M_Rd, "u");
  const _u_Rd = finite(1, "u_Rd");
  const _N_low = finite(Math.min(finite(_f_y1 * _t_1 * (_h_1 - 2 * _t_1), "f_y1 * t_1 * (h_1 - 2 * t_1)"), finite(_f_y0 * _t_0 * _h_1 / 2, "f_y0 * t_0 * h_1 / 2")), "N_low");
  const _N_high = finite(_f_y1 * _t_1 * 2 * (_h_1 + _b_1), "N_high");
  const _range0 = finite(finite(_b_1 / _t_1, "b_1 / t_1") <= _slim && finite(_h_1 / _t_1, "h_1 / t_1") <= _slim && finite(_b_0 / _t_0, "b_0 / t_0") <= _slim ? 1 : 0, "range0");
  return [_beta, _b_eff, _b_ep, _N_b, _N_p, _N_Rd, _M_Rd, _u, _u_Rd, _N_low, _N_high, _range0];
}

export function crossingEffectiveWidthBySolution_allowableStress(v: Readonly<Record<"M_1" | "N_1" | "b_0" | "t_0" | "b_1" | "h_1" | "t_1" | "f_y1" | "W_1" | "f_y0" | "slim" | "Omega_b", number>>): number[] {
  const _M_1 = v.M_1;
  const _N_1 = v.N_1;
  const _b_0 = v.b_0;
  const _t_0 = v.t_0;
  const _b_1 = v.b_1;
  const _h_1 = v.h_1;
  const _t_1 = v.t_1;
  const _f_y1 = v.f_y1;
  const _W_1 = v.W_1;
  const _f_y0 = v.f_y0;
  const _slim = v.slim;
  const _Omega_b = v.Omega_b;
  const _beta = finite(_b_1 / _b_0, "beta");
  const _b_eff = finite(Math.min(_b_1, finite(10 * _t_0 / _b_0 * _f_y0 * _t_0 / finite(_f_y1 * _t_1, "f_y1 * t_1") * _b_1, "10 * t_0 / b_0 * f_y0 * t_0 / (f_y1 * t_1) * b_1")), "b_eff");
  const _b_ep = finite(Math.min(_b_1, finite(10 * _t_0 / _b_0 * _b_1, "10 * t_0 / b_0 * b_1")), "b_ep");
  const _N_b = finite(_f_y1 * _t_1 * (2 * _h_1 - 4 * _t_1 + 2 * _b_eff) / _Omega_b, "N_b");
  const _N_p = finite(_beta <= finite(1 - 2 * _t_0 / _b_0, "1 - 2 * t_0 / b_0") ? _f_y0 * _t_0 / finite(Math.sqrt(3), "sqrt(3)") * (2 * _h_1 + 2 * _b_ep) / _Omega_b : _N_b, "N_p");
  const _N_Rd = finite(Math.min(_N_b, _N_p), "N_Rd");
  const _M_Rd = finite(_f_y1 * (_W_1 - 0.5 * Math.pow(finite(1 - _b_eff / _b_1, "1 - b_eff / b_1"), 2) * Math.pow(_b_1, 2) * _t_1) / _Omega_b, "M_Rd");
  const _u = finite(_N_1 / _N_Rd + _M_1 / _M_Rd, "u");
  const _u_Rd = finite(1, "u_Rd");
  const _N_low = finite(Math.min(finite(_f_y1 * _t_1 * (_h_1 - 2 * _t_1), "f_y1 * t_1 * (h_1 - 2 * t_1)"), finite(_f_y0 * _t_0 * _h_1 / 2, "f_y0 * t_0 * h_1 / 2")), "N_low");
  const _N_high = finite(_f_y1 * _t_1 * 2 * (_h_1 + _b_1), "N_high");
  const _range0 = finite(finite(_b_1 / _t_1, "b_1 / t_1") <= _slim && finite(_h_1 / _t_1, "h_1 / t_1") <= _slim && finite(_b_0 / _t_0, "b_0 / t_0") <= _slim ? 1 : 0, "range0");
  return [_beta, _b_eff, _b_ep, _N_b, _N_p, _N_Rd, _M_Rd, _u, _u_Rd, _N_low, _N_high, _range0];
}

export function crossingRound_partialFactors(v: Readonly<Record<"M_1" | "N_1" | "f_y0" | "M_0" | "N_0" | "W_0" | "A_0" | "d_0" | "t_0" | "d_1" | "t_1" | "gamma_M5", number>>): number[] {
  const _M_1 = v.M_1;
  const _N_1 = v.N_1;
  const _f_y0 = v.f_y0;
  const _M_0 = v.M_0;
  const _N_0 = v.N_0;
  const _W_0 = v.W_0;
  const _A_0 = v.A_0;
  const _d_0 = v.d_0;
  const _t_0 = v.t_0;
  const _d_1 = v.d_1;
  const _t_1 = v.t_1;
  const _gamma_M5 = v.gamma_M5;
  const _beta = finite(_d_1 / _d_0, "beta");
  const _gamma = finite(_d_0 / finite(2 * _t_0, "2 * t_0"), "gamma");
  const _n_p = finite((_N_0 / _A_0 + _M_0 / _W_0) / _f_y0, "n_p");
  const _k_p = finite(Math.min(1, finite(1 - 0.3 * _n_p * (1 + _n_p), "1 - 0.3 * n_p * (1 + n_p)")), "k_p");
  const _f_d = finite(_k_p * _f_y0 / _gamma_M5, "f_d");
  const _N_T = finite(Math.pow(_gamma, 0.2) * _f_d * Math.pow(_t_0, 2) * (2.8 + 14.2 * Math.pow(_beta, 2)), "N_T");
  const _N_X = finite(5.2 * _f_d * Math.pow(_t_0, 2) / finite(1 - 0.81 * _beta, "1 - 0.81 * beta"), "N_X");
  const _N_P = finite(_d_1 <= finite(_d_0 - 2 * _t_0, "d_0 - 2 * t_0") ? 1 / finite(Math.sqrt(3), "sqrt(3)") * _f_y0 * _t_0 * Math.PI * _d_1 / _gamma_M5 : Math.min(_N_T, _N_X), "N_P");
  const _N_Rd = finite(Math.min(_N_T, _N_X, _N_P), "N_Rd");
  const _M_Y = finite(2.7 * _f_d * Math.pow(_t_0, 2) * _d_1 / finite(1 - 0.81 * _beta, "1 - 0.81 * beta"), "M_Y");
  const _M_Rd = finite(_d_1 <= finite(_d_0 - 2 * _t_0, "d_0 - 2 * t_0") ? Math.min(_M_Y, finite(1 / finite(Math.sqrt(3), "sqrt(3)") * _f_y0 * _t_0 * Math.pow(_d_1, 2) / _gamma_M5, "1 / sqrt(3) * f_y0 * t_0 * d_1 ^ 2 / gamma_M5")) : _M_Y, "M_Rd");
  const _u = finite(_N_1 / _N_Rd + _M_1 / _M_Rd, "u");
  const _u_Rd = finite(1, "u_Rd");
  const _N_fan = finite(Math.PI * _f_d * Math.pow(_t_0, 2), "N_fan");
  const _N_torn = finite(Math.PI * _d_1 * _t_0 * _f_y0, "N_torn");
  const _range0 = finite(_beta >= 0.2 ? 1 : 0, "range0");
  const _range1 = finite(10 <= finite(_d_0 / _t_0, "d_0 / t_0") && finite(_d_0 / _t_0, "d_0 / t_0") <= 40 ? 1 : 0, "range1");
  const _range2 = finite(10 <= finite(_d_1 / _t_1, "d_1 / t_1") && finite(_d_1 / _t_1, "d_1 / t_1") <= 50 ? 1 : 0, "range2");
  const _range3 = finite(_k_p > 0 ? 1 : 0, "range3");
  return [_beta, _gamma, _n_p, _k_p, _f_d, _N_T, _N_X, _N_P, _N_Rd, _M_Y, _M_Rd, _u, _u_Rd, _N_fan, _N_torn, _range0, _range1, _range2, _range3];
}

export function crossingRound_allowableStress(v: Readonly<Record<"M_1" | "N_1" | "f_y0" | "M_0" | "N_0" | "W_0" | "A_0" | "d_0" | "t_0" | "d_1" | "t_1" | "Omega_b", number>>): number[] {
  const _M_1 = v.M_1;
  const _N_1 = v.N_1;
  const _f_y0 = v.f_y0;
  const _M_0 = v.M_0;
  const _N_0 = v.N_0;
  const _W_0 = v.W_0;
  const _A_0 = v.A_0;
  const _d_0 = v.d_0;
  const _t_0 = v.t_0;
  const _d_1 = v.d_1;
  const _t_1 = v.t_1;
  const _Omega_b = v.Omega_b;
  const _beta = finite(_d_1 / _d_0, "beta");
  const _gamma = finite(_d_0 / finite(2 * _t_0, "2 * t_0"), "gamma");
  const _n_p = finite((_N_0 / _A_0 + _M_0 / _W_0) / finite(0.6 * _f_y0, "0.6 * f_y0"), "n_p");
  const _k_p = finite(Math.min(1, finite(1 - 0.3 * _n_p * (1 + _n_p), "1 - 0.3 * n_p * (1 + n_p)")), "k_p");
  const _f_d = finite(_k_p * _f_y0 / _Omega_b, "f_d");
  const _N_T = finite(Math.pow(_gamma, 0.2) * _f_d * Math.pow(_t_0, 2) * (3.1 + 15.6 * Math.pow(_beta, 2)), "N_T");
  const _N_X = finite(5.7 * _f_d * Math.pow(_t_0, 2) / finite(1 - 0.81 * _beta, "1 - 0.81 * beta"), "N_X");
  const _N_P = finite(_d_1 <= finite(_d_0 - 2 * _t_0, "d_0 - 2 * t_0") ? 0.6 * _f_y0 * _t_0 * Math.PI * _d_1 / _Omega_b : Math.min(_N_T, _N_X), "N_P");
  const _N_Rd = finite(Math.min(_N_T, _N_X, _N_P), "N_Rd");
  const _M_Y = finite(3 * _f_d * Math.pow(_t_0, 2) * _d_1 / finite(1 - 0.81 * _beta, "1 - 0.81 * beta"), "M_Y");
  const _M_Rd = finite(_d_1 <= finite(_d_0 - 2 * _t_0, "d_0 - 2 * t_0") ? Math.min(_M_Y, finite(0.6 * _f_y0 * _t_0 * Math.pow(_d_1, 2) / _Omega_b, "0.6 * f_y0 * t_0 * d_1 ^ 2 / Omega_b")) : _M_Y, "M_Rd");
  const _u = finite(_N_1 / _N_Rd + _M_1 / _M_Rd, "u");
  const _u_Rd = finite(1, "u_Rd");
  const _N_fan = finite(Math.PI * _f_d * Math.pow(_t_0, 2), "N_fan");
  const _N_torn = finite(Math.PI * _d_1 * _t_0 * _f_y0, "N_torn");
  const _range0 = finite(_beta >= 0.2 ? 1 : 0, "range0");
  const _range1 = finite(10 <= finite(_d_0 / _t_0, "d_0 / t_0") && finite(_d_0 / _t_0, "d_0 / t_0") <= 40 ? 1 : 0, "range1");
  const _range2 = finite(10 <= finite(_d_1 / _t_1, "d_1 / t_1") && finite(_d_1 / _t_1, "d_1 / t_1") <= 50 ? 1 : 0, "range2");
  const _range3 = finite(_k_p > 0 ? 1 : 0, "range3");
  return [_beta, _gamma, _n_p, _k_p, _f_d, _N_T, _N_X, _N_P, _N_Rd, _M_Y, _M_Rd, _u, _u_Rd, _N_fan, _N_torn, _range0, _range1, _range2, _range3];
}

export function crossingRoundBySolution_partialFactors(v: Readonly<Record<"M_1" | "N_1" | "f_y0" | "M_0" | "N_0" | "W_0" | "A_0" | "d_0" | "t_0" | "d_1" | "t_1" | "gamma_M5", number>>): number[] {
  const _M_1 = v.M_1;
  const _N_1 = v.N_1;
  const _f_y0 = v.f_y0;
  const _M_0 = v.M_0;
  const _N_0 = v.N_0;
  const _W_0 = v.W_0;
  const _A_0 = v.A_0;
  const _d_0 = v.d_0;
  const _t_0 = v.t_0;
  const _d_1 = v.d_1;
  const _t_1 = v.t_1;
  const _gamma_M5 = v.gamma_M5;
  const _beta = finite(_d_1 / _d_0, "beta");
  const _gamma = finite(_d_0 / finite(2 * _t_0, "2 * t_0"), "gamma");
  const _n_p = finite((_N_0 / _A_0 + _M_0 / _W_0) / _f_y0, "n_p");
  const _k_p = finite(Math.min(1, finite(1 - 0.3 * _n_p * (1 + _n_p), "1 - 0.3 * n_p * (1 + n_p)")), "k_p");
  const _f_d = finite(_k_p * _f_y0 / _gamma_M5, "f_d");
  const _N_T = finite(Math.pow(_gamma, 0.2) * _f_d * Math.pow(_t_0, 2) * (2.8 + 14.2 * Math.pow(_beta, 2)), "N_T");
  const _N_X = finite(5.2 * _f_d * Math.pow(_t_0, 2) / finite(1 - 0.81 * _beta, "1 - 0.81 * beta"), "N_X");
  const _N_P = finite(_d_1 <= finite(_d_0 - 2 * _t_0, "d_0 - 2 * t_0") ? 1 / finite(Math.sqrt(3), "sqrt(3)") * _f_y0 * _t_0 * Math.PI * _d_1 / _gamma_M5 : Math.min(_N_T, _N_X), "N_P");
  const _N_Rd = finite(Math.min(_N_T, _N_X, _N_P), "N_Rd");
  const _M_Y = finite(2.7 * _f_d * Math.pow(_t_0, 2) * _d_1 / finite(1 - 0.81 * _beta, "1 - 0.81 * beta"), "M_Y");
  const _M_Rd = finite(_d_1 <= finite(_d_0 - 2 * _t_0, "d_0 - 2 * t_0") ? Math.min(_M_Y, finite(1 / finite(Math.sqrt(3), "sqrt(3)") * _f_y0 * _t_0 * Math.pow(_d_1, 2) / _gamma_M5, "1 / sqrt(3) * f_y0 * t_0 * d_1 ^ 2 / gamma_M5")) : _M_Y, "M_Rd");
  const _u = finite(_N_1 / _N_Rd + _M_1 / _M_Rd, "u");
  const _u_Rd = finite(1, "u_Rd");
  const _N_fan = finite(Math.PI * _f_d * Math.pow(_t_0, 2), "N_fan");
  const _N_torn = finite(Math.PI * _d_1 * _t_0 * _f_y0, "N_torn");
  const _range0 = finite(_beta >= 0.2 ? 1 : 0, "range0");
  const _range1 = finite(10 <= finite(_d_0 / _t_0, "d_0 / t_0") && finite(_d_0 / _t_0, "d_0 / t_0") <= 40 ? 1 : 0, "range1");
  const _range2 = finite(10 <= finite(_d_1 / _t_1, "d_1 / t_1") && finite(_d_1 / _t_1, "d_1 / t_1") <= 50 ? 1 : 0, "range2");
  const _range3 = finite(_k_p > 0 ? 1 : 0, "range3");
  return [_beta, _gamma, _n_p, _k_p, _f_d, _N_T, _N_X, _N_P, _N_Rd, _M_Y, _M_Rd, _u, _u_Rd, _N_fan, _N_torn, _range0, _range1, _range2, _range3];
}

export function crossingRoundBySolution_allowableStress(v: Readonly<Record<"M_1" | "N_1" | "f_y0" | "M_0" | "N_0" | "W_0" | "A_0" | "d_0" | "t_0" | "d_1" | "t_1" | "Omega_b", number>>): number[] {
  const _M_1 = v.M_1;
  const _N_1 = v.N_1;
  const _f_y0 = v.f_y0;
  const _M_0 = v.M_0;
  const _N_0 = v.N_0;
  const _W_0 = v.W_0;
  const _A_0 = v.A_0;
  const _d_0 = v.d_0;
  const _t_0 = v.t_0;
  const _d_1 = v.d_1;
  const _t_1 = v.t_1;
  const _Omega_b = v.Omega_b;
  const _beta = finite(_d_1 / _d_0, "beta");
  const _gamma = finite(_d_0 / finite(2 * _t_0, "2 * t_0"), "gamma");
  const _n_p = finite((_N_0 / _A_0 + _M_0 / _W_0) / finite(0.6 * _f_y0, "0.6 * f_y0"), "n_p");
  const _k_p = finite(Math.min(1, finite(1 - 0.3 * _n_p * (1 + _n_p), "1 - 0.3 * n_p * (1 + n_p)")), "k_p");
  const _f_d = finite(_k_p * _f_y0 / _Omega_b, "f_d");
  const _N_T = finite(Math.pow(_gamma, 0.2) * _f_d * Math.pow(_t_0, 2) * (3.1 + 15.6 * Math.pow(_beta, 2)), "N_T");
  const _N_X = finite(5.7 * _f_d * Math.pow(_t_0, 2) / finite(1 - 0.81 * _beta, "1 - 0.81 * beta"), "N_X");
  const _N_P = finite(_d_1 <= finite(_d_0 - 2 * _t_0, "d_0 - 2 * t_0") ? 0.6 * _f_y0 * _t_0 * Math.PI * _d_1 / _Omega_b : Math.min(_N_T, _N_X), "N_P");
  const _N_Rd = finite(Math.min(_N_T, _N_X, _N_P), "N_Rd");
  const _M_Y = finite(3 * _f_d * Math.pow(_t_0, 2) * _d_1 / finite(1 - 0.81 * _beta, "1 - 0.81 * beta"), "M_Y");
  const _M_Rd = finite(_d_1 <= finite(_d_0 - 2 * _t_0, "d_0 - 2 * t_0") ? Math.min(_M_Y, finite(0.6 * _f_y0 * _t_0 * Math.pow(_d_1, 2) / _Omega_b, "0.6 * f_y0 * t_0 * d_1 ^ 2 / Omega_b")) : _M_Y, "M_Rd");
  const _u = finite(_N_1 / _N_Rd + _M_1 / _M_Rd, "u");
  const _u_Rd = finite(1, "u_Rd");
  const _N_fan = finite(Math.PI * _f_d * Math.pow(_t_0, 2), "N_fan");
  const _N_torn = finite(Math.PI * _d_1 * _t_0 * _f_y0, "N_torn");
  const _range0 = finite(_beta >= 0.2 ? 1 : 0, "range0");
  const _range1 = finite(10 <= finite(_d_0 / _t_0, "d_0 / t_0") && finite(_d_0 / _t_0, "d_0 / t_0") <= 40 ? 1 : 0, "range1");
  const _range2 = finite(10 <= finite(_d_1 / _t_1, "d_1 / t_1") && finite(_d_1 / _t_1, "d_1 / t_1") <= 50 ? 1 : 0, "range2");
  const _range3 = finite(_k_p > 0 ? 1 : 0, "range3");
  return [_beta, _gamma, _n_p, _k_p, _f_d, _N_T, _N_X, _N_P, _N_Rd, _M_Y, _M_Rd, _u, _u_Rd, _N_fan, _N_torn, _range0, _range1, _range2, _range3];
}

export function crossingThroat_partialFactors(v: Readonly<Record<"M_1" | "V_1" | "N_1" | "a_w" | "f_u" | "beta_w" | "b_1" | "h_1" | "gamma_M2", number>>): number[] {
  const _M_1 = v.M_1;
  const _V_1 = v.V_1;
  const _N_1 = v.N_1;
  const _a_w = v.a_w;
  const _f_u = v.f_u;
  const _beta_w = v.beta_w;
  const _b_1 = v.b_1;
  const _h_1 = v.h_1;
  const _gamma_M2 = v.gamma_M2;
  const _f_n = finite(_N_1 / finite(2 * (_b_1 + _h_1), "2 * (b_1 + h_1)") + _M_1 / finite(Math.pow(_b_1, 2) / 3 + _b_1 * _h_1, "b_1 ^ 2 / 3 + b_1 * h_1"), "f_n");
  const _f_v = finite(_V_1 / finite(2 * _b_1, "2 * b_1"), "f_v");
  const _f_w = finite(Math.sqrt(Math.pow(_f_n, 2) + Math.pow(_f_v, 2)), "f_w");
  const _f_Rd = finite(_f_u / finite(Math.sqrt(3) * _beta_w * _gamma_M2, "sqrt(3) * beta_w * gamma_M2") * _a_w, "f_Rd");
  const _f_low = finite(Math.max(finite(_N_1 / finite(2 * (_b_1 + _h_1), "2 * (b_1 + h_1)") + _M_1 / finite(_b_1 * (_b_1 / 2 + _h_1), "b_1 * (b_1 / 2 + h_1)"), "N_1 / (2 * (b_1 + h_1)) + M_1 / (b_1 * (b_1 / 2 + h_1))"), finite(_V_1 / finite(2 * (_b_1 + _h_1), "2 * (b_1 + h_1)"), "V_1 / (2 * (b_1 + h_1))")), "f_low");
  const _f_high = finite(Math.sqrt(Math.pow(finite(_N_1 / finite(2 * (_b_1 + _h_1), "2 * (b_1 + h_1)") + _M_1 / finite(_b_1 * _h_1, "b_1 * h_1"), "N_1 / (2 * (b_1 + h_1)) + M_1 / (b_1 * h_1)"), 2) + Math.pow(finite(_V_1 / finite(2 * _b_1, "2 * b_1"), "V_1 / (2 * b_1)"), 2)), "f_high");
  return [_f_n, _f_v, _f_w, _f_Rd, _f_low, _f_high];
}

export function crossingThroat_allowableStress(v: Readonly<Record<"M_1" | "V_1" | "N_1" | "a_w" | "f_u" | "b_1" | "h_1" | "t_1" | "Omega_J", number>>): number[] {
  const _M_1 = v.M_1;
  const _V_1 = v.V_1;
  const _N_1 = v.N_1;
  const _a_w = v.a_w;
  const _f_u = v.f_u;
  const _b_1 = v.b_1;
  const _h_1 = v.h_1;
  const _t_1 = v.t_1;
  const _Omega_J = v.Omega_J;
  const _f_n = finite(_N_1 / finite(2 * (_b_1 + _h_1), "2 * (b_1 + h_1)") + _M_1 / finite(Math.pow(_b_1, 2) / 3 + _b_1 * _h_1, "b_1 ^ 2 / 3 + b_1 * h_1"), "f_n");
  const _f_v = finite(_V_1 / finite(2 * _b_1, "2 * b_1"), "f_v");
  const _f_w = finite(Math.sqrt(Math.pow(_f_n, 2) + Math.pow(_f_v, 2)), "f_w");
  const _f_Rd = finite(Math.min(finite(0.6 * _f_u * _a_w, "0.6 * f_u * a_w"), finite(0.6 * _f_u * _t_1, "0.6 * f_u * t_1")) / _Omega_J, "f_Rd");
  const _f_low = finite(Math.max(finite(_N_1 / finite(2 * (_b_1 + _h_1), "2 * (b_1 + h_1)") + _M_1 / finite(_b_1 * (_b_1 / 2 + _h_1), "b_1 * (b_1 / 2 + h_1)"), "N_1 / (2 * (b_1 + h_1)) + M_1 / (b_1 * (b_1 / 2 + h_1))"), finite(_V_1 / finite(2 * (_b_1 + _h_1), "2 * (b_1 + h_1)"), "V_1 / (2 * (b_1 + h_1))")), "f_low");
  const _f_high = finite(Math.sqrt(Math.pow(finite(_N_1 / finite(2 * (_b_1 + _h_1), "2 * (b_1 + h_1)") + _M_1 / finite(_b_1 * _h_1, "b_1 * h_1"), "N_1 / (2 * (b_1 + h_1)) + M_1 / (b_1 * h_1)"), 2) + Math.pow(finite(_V_1 / finite(2 * _b_1, "2 * b_1"), "V_1 / (2 * b_1)"), 2)), "f_high");
  return [_f_n, _f_v, _f_w, _f_Rd, _f_low, _f_high];
}

export function crossingThroatBySolution_partialFactors(v: Readonly<Record<"M_1" | "V_1" | "N_1" | "a_w" | "f_u" | "beta_w" | "b_1" | "h_1" | "gamma_M2", number>>): number[] {
  const _M_1 = v.M_1;
  const _V_1 = v.V_1;
  const _N_1 = v.N_1;
  const _a_w = v.a_w;
  const _f_u = v.f_u;
  const _beta_w = v.beta_w;
  const _b_1 = v.b_1;
  const _h_1 = v.h_1;
  const _gamma_M2 = v.gamma_M2;
  const _f_n = finite(_N_1 / finite(2 * (_b_1 + _h_1), "2 * (b_1 + h_1)") + _M_1 / finite(Math.pow(_b_1, 2) / 3 + _b_1 * _h_1, "b_1 ^ 2 / 3 + b_1 * h_1"), "f_n");
  const _f_v = finite(_V_1 / finite(2 * _b_1, "2 * b_1"), "f_v");
  const _f_w = finite(Math.sqrt(Math.pow(_f_n, 2) + Math.pow(_f_v, 2)), "f_w");
  const _f_Rd = finite(_f_u / finite(Math.sqrt(3) * _beta_w * _gamma_M2, "sqrt(3) * beta_w * gamma_M2") * _a_w, "f_Rd");
  const _f_low = finite(Math.max(finite(_N_1 / finite(2 * (_b_1 + _h_1), "2 * (b_1 + h_1)") + _M_1 / finite(_b_1 * (_b_1 / 2 + _h_1), "b_1 * (b_1 / 2 + h_1)"), "N_1 / (2 * (b_1 + h_1)) + M_1 / (b_1 * (b_1 / 2 + h_1))"), finite(_V_1 / finite(2 * (_b_1 + _h_1), "2 * (b_1 + h_1)"), "V_1 / (2 * (b_1 + h_1))")), "f_low");
  const _f_high = finite(Math.sqrt(Math.pow(finite(_N_1 / finite(2 * (_b_1 + _h_1), "2 * (b_1 + h_1)") + _M_1 / finite(_b_1 * _h_1, "b_1 * h_1"), "N_1 / (2 * (b_1 + h_1)) + M_1 / (b_1 * h_1)"), 2) + Math.pow(finite(_V_1 / finite(2 * _b_1, "2 * b_1"), "V_1 / (2 * b_1)"), 2)), "f_high");
  return [_f_n, _f_v, _f_w, _f_Rd, _f_low, _f_high];
}

export function crossingThroatBySolution_allowableStress(v: Readonly<Record<"M_1" | "V_1" | "N_1" | "a_w" | "f_u" | "b_1" | "h_1" | "t_1" | "Omega_J", number>>): number[] {
  const _M_1 = v.M_1;
  const _V_1 = v.V_1;
  const _N_1 = v.N_1;
  const _a_w = v.a_w;
  const _f_u = v.f_u;
  const _b_1 = v.b_1;
  const _h_1 = v.h_1;
  const _t_1 = v.t_1;
  const _Omega_J = v.Omega_J;
  const _f_n = finite(_N_1 / finite(2 * (_b_1 + _h_1), "2 * (b_1 + h_1)") + _M_1 / finite(Math.pow(_b_1, 2) / 3 + _b_1 * _h_1, "b_1 ^ 2 / 3 + b_1 * h_1"), "f_n");
  const _f_v = finite(_V_1 / finite(2 * _b_1, "2 * b_1"), "f_v");
  const _f_w = finite(Math.sqrt(Math.pow(_f_n, 2) + Math.pow(_f_v, 2)), "f_w");
  const _f_Rd = finite(Math.min(finite(0.6 * _f_u * _a_w, "0.6 * f_u * a_w"), finite(0.6 * _f_u * _t_1, "0.6 * f_u * t_1")) / _Omega_J, "f_Rd");
  const _f_low = finite(Math.max(finite(_N_1 / finite(2 * (_b_1 + _h_1), "2 * (b_1 + h_1)") + _M_1 / finite(_b_1 * (_b_1 / 2 + _h_1), "b_1 * (b_1 / 2 + h_1)"), "N_1 / (2 * (b_1 + h_1)) + M_1 / (b_1 * (b_1 / 2 + h_1))"), finite(_V_1 / finite(2 * (_b_1 + _h_1), "2 * (b_1 + h_1)"), "V_1 / (2 * (b_1 + h_1))")), "f_low");
  const _f_high = finite(Math.sqrt(Math.pow(finite(_N_1 / finite(2 * (_b_1 + _h_1), "2 * (b_1 + h_1)") + _M_1 / finite(_b_1 * _h_1, "b_1 * h_1"), "N_1 / (2 * (b_1 + h_1)) + M_1 / (b_1 * h_1)"), 2) + Math.pow(finite(_V_1 / finite(2 * _b_1, "2 * b_1"), "V_1 / (2 * b_1)"), 2)), "f_high");
  return [_f_n, _f_v, _f_w, _f_Rd, _f_low, _f_high];
}

export function crossingWeld_partialFactors(v: Readonly<Record<"a_w" | "f_u" | "beta_w" | "l_w" | "gamma_M2", number>>): number[] {
  const _a_w = v.a_w;
  const _f_u = v.f_u;
  const _beta_w = v.beta_w;
  const _l_w = v.l_w;
  const _gamma_M2 = v.gamma_M2;
  const _F_Rd = finite(_f_u / finite(Math.sqrt(3) * _beta_w * _gamma_M2, "sqrt(3) * beta_w * gamma_M2") * _a_w * _l_w, "F_Rd");
  const _F_low = finite(0.3 * _f_u * _a_w * _l_w, "F_low");
  const _F_high = finite(_f_u / finite(Math.sqrt(3), "sqrt(3)") * _a_w * _l_w, "F_high");
  return [_F_Rd, _F_low, _F_high];
}

export function crossingWeld_allowableStress(v: Readonly<Record<"a_w" | "f_u" | "l_w" | "Omega_J", number>>): number[] {
  const _a_w = v.a_w;
  const _f_u = v.f_u;
  const _l_w = v.l_w;
  const _Omega_J = v.Omega_J;
  const _F_Rd = finite(0.6 * _f_u / _Omega_J * _a_w * _l_w, "F_Rd");
  const _F_low = finite(0.3 * _f_u * _a_w * _l_w, "F_low");
  const _F_high = finite(_f_u / finite(Math.sqrt(3), "sqrt(3)") * _a_w * _l_w, "F_high");
  return [_F_Rd, _F_low, _F_high];
}

export function crossingFlare_partialFactors(v: Readonly<Record<"a_0" | "R" | "k_f", number>>): number[] {
  const _a_0 = v.a_0;
  const _R = v.R;
  const _k_f = v.k_f;
  const _a_flare = finite(_k_f * _R, "a_flare");
  const _a_low = finite(_R / 4, "a_low");
  const _a_high = finite(_R, "a_high");
  const _range0 = finite(_a_0 <= _a_flare ? 1 : 0, "range0");
  return [_a_flare, _a_low, _a_high, _range0];
}

export function crossingFlare_allowableStress(v: Readonly<Record<"a_0" | "R" | "k_f", number>>): number[] {
  const _a_0 = v.a_0;
  const _R = v.R;
  const _k_f = v.k_f;
  const _a_flare = finite(_k_f * _R, "a_flare");
  const _a_low = finite(_R / 4, "a_low");
  const _a_high = finite(_R, "a_high");
  const _range0 = finite(_a_0 <= _a_flare ? 1 : 0, "range0");
  return [_a_flare, _a_low, _a_high, _range0];
}

export function eyeNetTension_partialFactors(v: Readonly<Record<"t_e" | "d_0" | "c_e" | "f_y" | "f_u" | "gamma_M0", number>>): number[] {
  const _t_e = v.t_e;
  const _d_0 = v.d_0;
  const _c_e = v.c_e;
  const _f_y = v.f_y;
  const _f_u = v.f_u;
  const _gamma_M0 = v.gamma_M0;
  const _F_Rd = finite(2 * _t_e * _f_y * (_c_e - _d_0 / 3) / _gamma_M0, "F_Rd");
  const _b_B = finite(Math.min(_c_e, finite(4 * _t_e, "4 * t_e"), finite(0.6 * _f_u / _f_y * Math.sqrt(_c_e * _d_0), "0.6 * f_u / f_y * sqrt(c_e * d_0)")), "b_B");
  const _F_high = finite(2 * _t_e * _b_B * _f_u, "F_high");
  return [_F_Rd, _b_B, _F_high];
}

export function eyeNetTension_allowableStress(v: Readonly<Record<"t_e" | "d_0" | "c_e" | "f_y" | "f_u" | "b_16" | "Omega_J" | "Omega_b", number>>): number[] {
  const _t_e = v.t_e;
  const _d_0 = v.d_0;
  const _c_e = v.c_e;
  const _f_y = v.f_y;
  const _f_u = v.f_u;
  const _b_16 = v.b_16;
  const _Omega_J = v.Omega_J;
  const _Omega_b = v.Omega_b;
  const _b_eff = finite(Math.min(finite(2 * _t_e + _b_16, "2 * t_e + b_16"), _c_e), "b_eff");
  const _F_Rd = finite(Math.min(finite(2 * _t_e * _b_eff * _f_u / _Omega_J, "2 * t_e * b_eff * f_u / Omega_J"), finite((2 * _c_e + _d_0) * _t_e * _f_y / _Omega_b, "(2 * c_e + d_0) * t_e * f_y / Omega_b")), "F_Rd");
  const _b_B = finite(Math.min(_c_e, finite(4 * _t_e, "4 * t_e"), finite(0.6 * _f_u / _f_y * Math.sqrt(_c_e * _d_0), "0.6 * f_u / f_y * sqrt(c_e * d_0)")), "b_B");
  const _F_high = finite(2 * _t_e * _b_B * _f_u, "F_high");
  return [_b_eff, _F_Rd, _b_B, _F_high];
}

export function eyeNetTensionBySolution_partialFactors(v: Readonly<Record<"t_e" | "d_0" | "c_e" | "f_y" | "f_u" | "gamma_M0", number>>): number[] {
  const _t_e = v.t_e;
  const _d_0 = v.d_0;
  const _c_e = v.c_e;
  const _f_y = v.f_y;
  const _f_u = v.f_u;
  const _gamma_M0 = v.gamma_M0;
  const _F_Rd = finite(2 * _t_e * _f_y * (_c_e - _d_0 / 3) / _gamma_M0, "F_Rd");
  const _b_B = finite(Math.min(_c_e, finite(4 * _t_e, "4 * t_e"), finite(0.6 * _f_u / _f_y * Math.sqrt(_c_e * _d_0), "0.6 * f_u / f_y * sqrt(c_e * d_0)")), "b_B");
  const _F_high = finite(2 * _t_e * _b_B * _f_u, "F_high");
  return [_F_Rd, _b_B, _F_high];
}

export function eyeNetTensionBySolution_allowableStress(v: Readonly<Record<"t_e" | "d_0" | "c_e" | "f_y" | "f_u" | "b_16" | "Omega_J" | "Omega_b", number>>): number[] {
  const _t_e = v.t_e;
  const _d_0 = v.d_0;
  const _c_e = v.c_e;
  const _f_y = v.f_y;
  const _f_u = v.f_u;
  const _b_16 = v.b_16;
  const _Omega_J = v.Omega_J;
  const _Omega_b = v.Omega_b;
  const _b_eff = finite(Math.min(finite(2 * _t_e + _b_16, "2 * t_e + b_16"), _c_e), "b_eff");
  const _F_Rd = finite(Math.min(finite(2 * _t_e * _b_eff * _f_u / _Omega_J, "2 * t_e * b_eff * f_u / Omega_J"), finite((2 * _c_e + _d_0) * _t_e * _f_y / _Omega_b, "(2 * c_e + d_0) * t_e * f_y / Omega_b")), "F_Rd");
  const _b_B = finite(Math.min(_c_e, finite(4 * _t_e, "4 * t_e"), finite(0.6 * _f_u / _f_y * Math.sqrt(_c_e * _d_0), "0.6 * f_u / f_y * sqrt(c_e * d_0)")), "b_B");
  const _F_high = finite(2 * _t_e * _b_B * _f_u, "F_high");
  return [_b_eff, _F_Rd, _b_B, _F_high];
}

export function eyeTearOut_partialFactors(v: Readonly<Record<"t_e" | "d_0" | "d" | "a_e" | "f_u" | "f_y" | "gamma_M0", number>>): number[] {
  const _t_e = v.t_e;
  const _d_0 = v.d_0;
  const _d = v.d;
  const _a_e = v.a_e;
  const _f_u = v.f_u;
  const _f_y = v.f_y;
  const _gamma_M0 = v.gamma_M0;
  const _F_g = finite(2 * _t_e * _f_y * (_a_e - 2 * _d_0 / 3) / _gamma_M0, "F_g");
  const _F_s = finite(2 * _t_e * _a_e * _f_y / finite(Math.sqrt(3) * _gamma_M0, "sqrt(3) * gamma_M0"), "F_s");
  const _F_Rd = finite(Math.min(_F_g, _F_s), "F_Rd");
  const _phi = finite(55 * Math.PI / 180 * _d / _d_0, "phi");
  const _l_s = finite(_a_e + _d / 2 * (1 - Math.cos(_phi)), "l_s");
  const _F_high = finite(0.7 * _f_u * 2 * _t_e * _l_s / 1.2, "F_high");
  return [_F_g, _F_s, _F_Rd, _phi, _l_s, _F_high];
}

export function eyeTearOut_allowableStress(v: Readonly<Record<"t_e" | "d_0" | "d" | "a_e" | "f_u" | "Omega_J", number>>): number[] {
  const _t_e = v.t_e;
  const _d_0 = v.d_0;
  const _d = v.d;
  const _a_e = v.a_e;
  const _f_u = v.f_u;
  const _Omega_J = v.Omega_J;
  const _F_Rd = finite(0.6 * _f_u * 2 * _t_e * (_a_e + _d / 2) / _Omega_J, "F_Rd");
  const _phi = finite(55 * Math.PI / 180 * _d / _d_0, "phi");
  const _l_s = finite(_a_e + _d / 2 * (1 - Math.cos(_phi)), "l_s");
  const _F_high = finite(0.7 * _f_u * 2 * _t_e * _l_s / 1.2, "F_high");
  return [_F_Rd, _phi, _l_s, _F_high];
}

export function eyeTearOutBySolution_partialFactors(v: Readonly<Record<"t_e" | "d_0" | "d" | "a_e" | "f_u" | "f_y" | "gamma_M0", number>>): number[] {
  const _t_e = v.t_e;
  const _d_0 = v.d_0;
  const _d = v.d;
  const _a_e = v.a_e;
  const _f_u = v.f_u;
  const _f_y = v.f_y;
  const _gamma_M0 = v.gamma_M0;
  const _F_g = finite(2 * _t_e * _f_y * (_a_e - 2 * _d_0 / 3) / _gamma_M0, "F_g");
  const _F_s = finite(2 * _t_e * _a_e * _f_y / finite(Math.sqrt(3) * _gamma_M0, "sqrt(3) * gamma_M0"), "F_s");
  const _F_Rd = finite(Math.min(_F_g, _F_s), "F_Rd");
  const _phi = finite(55 * Math.PI / 180 * _d / _d_0, "phi");
  const _l_s = finite(_a_e + _d / 2 * (1 - Math.cos(_phi)), "l_s");
  const _F_high = finite(0.7 * _f_u * 2 * _t_e * _l_s / 1.2, "F_high");
  return [_F_g, _F_s, _F_Rd, _phi, _l_s, _F_high];
}

export function eyeTearOutBySolution_allowableStress(v: Readonly<Record<"t_e" | "d_0" | "d" | "a_e" | "f_u" | "Omega_J", number>>): number[] {
  const _t_e = v.t_e;
  const _d_0 = v.d_0;
  const _d = v.d;
  const _a_e = v.a_e;
  const _f_u = v.f_u;
  const _Omega_J = v.Omega_J;
  const _F_Rd = finite(0.6 * _f_u * 2 * _t_e * (_a_e + _d / 2) / _Omega_J, "F_Rd");
  const _phi = finite(55 * Math.PI / 180 * _d / _d_0, "phi");
  const _l_s = finite(_a_e + _d / 2 * (1 - Math.cos(_phi)), "l_s");
  const _F_high = finite(0.7 * _f_u * 2 * _t_e * _l_s / 1.2, "F_high");
  return [_F_Rd, _phi, _l_s, _F_high];
}

export function eyeBearing_partialFactors(v: Readonly<Record<"t_e" | "d_0" | "d" | "f_y" | "f_u" | "gamma_M0", number>>): number[] {
  const _t_e = v.t_e;
  const _d_0 = v.d_0;
  const _d = v.d;
  const _f_y = v.f_y;
  const _f_u = v.f_u;
  const _gamma_M0 = v.gamma_M0;
  const _F_Rd = finite(1.5 * _t_e * _d * _f_y / _gamma_M0, "F_Rd");
  const _F_low = finite(0.75 * _t_e * _d * _f_y, "F_low");
  const _F_high = finite(1.5 * _t_e * _d * _f_u, "F_high");
  const _range0 = finite(_d >= finite(0.9 * _d_0, "0.9 * d_0") ? 1 : 0, "range0");
  return [_F_Rd, _F_low, _F_high, _range0];
}

export function eyeBearing_allowableStress(v: Readonly<Record<"t_e" | "d_0" | "d" | "f_y" | "f_u" | "Omega_J", number>>): number[] {
  const _t_e = v.t_e;
  const _d_0 = v.d_0;
  const _d = v.d;
  const _f_y = v.f_y;
  const _f_u = v.f_u;
  const _Omega_J = v.Omega_J;
  const _F_Rd = finite(1.8 * _f_y * _t_e * _d / _Omega_J, "F_Rd");
  const _F_low = finite(0.75 * _t_e * _d * _f_y, "F_low");
  const _F_high = finite(1.5 * _t_e * _d * _f_u, "F_high");
  const _range0 = finite(_d >= finite(0.9 * _d_0, "0.9 * d_0") ? 1 : 0, "range0");
  return [_F_Rd, _F_low, _F_high, _range0];
}

export function eyeBearingBySolution_partialFactors(v: Readonly<Record<"t_e" | "d_0" | "d" | "f_y" | "f_u" | "gamma_M0", number>>): number[] {
  const _t_e = v.t_e;
  const _d_0 = v.d_0;
  const _d = v.d;
  const _f_y = v.f_y;
  const _f_u = v.f_u;
  const _gamma_M0 = v.gamma_M0;
  const _F_Rd = finite(1.5 * _t_e * _d * _f_y / _gamma_M0, "F_Rd");
  const _F_low = finite(0.75 * _t_e * _d * _f_y, "F_low");
  const _F_high = finite(1.5 * _t_e * _d * _f_u, "F_high");
  const _range0 = finite(_d >= finite(0.9 * _d_0, "0.9 * d_0") ? 1 : 0, "range0");
  return [_F_Rd, _F_low, _F_high, _range0];
}

export function eyeBearingBySolution_allowableStress(v: Readonly<Record<"t_e" | "d_0" | "d" | "f_y" | "f_u" | "Omega_J", number>>): number[] {
  const _t_e = v.t_e;
  const _d_0 = v.d_0;
  const _d = v.d;
  const _f_y = v.f_y;
  const _f_u = v.f_u;
  const _Omega_J = v.Omega_J;
  const _F_Rd = finite(1.8 * _f_y * _t_e * _d / _Omega_J, "F_Rd");
  const _F_low = finite(0.75 * _t_e * _d * _f_y, "F_low");
  const _F_high = finite(1.5 * _t_e * _d * _f_u, "F_high");
  const _range0 = finite(_d >= finite(0.9 * _d_0, "0.9 * d_0") ? 1 : 0, "range0");
  return [_F_Rd, _F_low, _F_high, _range0];
}

export function eyeFoot_partialFactors(v: Readonly<Record<"F_z" | "F_l" | "F_q" | "t_e" | "h_e" | "l_e" | "f_y" | "gamma_M0", number>>): number[] {
  const _F_z = v.F_z;
  const _F_l = v.F_l;
  const _F_q = v.F_q;
  const _t_e = v.t_e;
  const _h_e = v.h_e;
  const _l_e = v.l_e;
  const _f_y = v.f_y;
  const _gamma_M0 = v.gamma_M0;
  const _sigma = finite(_F_z / finite(_t_e * _l_e, "t_e * l_e") + 6 * _F_l * _h_e / finite(_t_e * Math.pow(_l_e, 2), "t_e * l_e ^ 2") + 6 * _F_q * _h_e / finite(_l_e * Math.pow(_t_e, 2), "l_e * t_e ^ 2"), "sigma");
  const _tau = finite(1.5 * (_F_l + _F_q) / finite(_t_e * _l_e, "t_e * l_e"), "tau");
  const _sigma_v = finite(Math.sqrt(Math.pow(_sigma, 2) + 3 * Math.pow(_tau, 2)), "sigma_v");
  const _sigma_Rd = finite(_f_y / _gamma_M0, "sigma_Rd");
  const _sigma_p = finite((_F_z + 4 * _h_e * (_F_l / _l_e + _F_q / _t_e)) / finite(_t_e * _l_e, "t_e * l_e"), "sigma_p");
  const _sigma_low = finite(Math.max(_sigma_p, finite(Math.sqrt(3) * (_F_l + _F_q) / finite(_t_e * _l_e, "t_e * l_e"), "sqrt(3) * (F_l + F_q) / (t_e * l_e)")), "sigma_low");
  const _sigma_high = finite(Math.sqrt(Math.pow(_sigma, 2) + 4 * Math.pow(_tau, 2)), "sigma_high");
  return [_sigma, _tau, _sigma_v, _sigma_Rd, _sigma_p, _sigma_low, _sigma_high];
}

export function eyeFoot_allowableStress(v: Readonly<Record<"F_z" | "F_l" | "F_q" | "t_e" | "h_e" | "l_e" | "f_y" | "Omega_b", number>>): number[] {
  const _F_z = v.F_z;
  const _F_l = v.F_l;
  const _F_q = v.F_q;
  const _t_e = v.t_e;
  const _h_e = v.h_e;
  const _l_e = v.l_e;
  const _f_y = v.f_y;
  const _Omega_b = v.Omega_b;
  const _sigma = finite(_F_z / finite(_t_e * _l_e, "t_e * l_e") + 6 * _F_l * _h_e / finite(_t_e * Math.pow(_l_e, 2), "t_e * l_e ^ 2") + 6 * _F_q * _h_e / finite(_l_e * Math.pow(_t_e, 2), "l_e * t_e ^ 2"), "sigma");
  const _tau = finite(1.5 * (_F_l + _F_q) / finite(_t_e * _l_e, "t_e * l_e"), "tau");
  const _sigma_v = finite(Math.sqrt(Math.pow(_sigma, 2) + 3 * Math.pow(_tau, 2)), "sigma_v");
  const _sigma_Rd = finite(_f_y / _Omega_b, "sigma_Rd");
  const _sigma_p = finite((_F_z + 4 * _h_e * (_F_l / _l_e + _F_q / _t_e)) / finite(_t_e * _l_e, "t_e * l_e"), "sigma_p");
  const _sigma_low = finite(Math.max(_sigma_p, finite(Math.sqrt(3) * (_F_l + _F_q) / finite(_t_e * _l_e, "t_e * l_e"), "sqrt(3) * (F_l + F_q) / (t_e * l_e)")), "sigma_low");
  const _sigma_high = finite(Math.sqrt(Math.pow(_sigma, 2) + 4 * Math.pow(_tau, 2)), "sigma_high");
  return [_sigma, _tau, _sigma_v, _sigma_Rd, _sigma_p, _sigma_low, _sigma_high];
}

export function eyeFootBySolution_partialFactors(v: Readonly<Record<"F_z" | "F_l" | "F_q" | "t_e" | "h_e" | "l_e" | "f_y" | "gamma_M0", number>>): number[] {
  const _F_z = v.F_z;
  const _F_l = v.F_l;
  const _F_q = v.F_q;
  const _t_e = v.t_e;
  const _h_e = v.h_e;
  const _l_e = v.l_e;
  const _f_y = v.f_y;
  const _gamma_M0 = v.gamma_M0;
  const _sigma = finite(_F_z / finite(_t_e * _l_e, "t_e * l_e") + 6 * _F_l * _h_e / finite(_t_e * Math.pow(_l_e, 2), "t_e * l_e ^ 2") + 6 * _F_q * _h_e / finite(_l_e * Math.pow(_t_e, 2), "l_e * t_e ^ 2"), "sigma");
  const _tau = finite(1.5 * (_F_l + _F_q) / finite(_t_e * _l_e, "t_e * l_e"), "tau");
  const _sigma_v = finite(Math.sqrt(Math.pow(_sigma, 2) + 3 * Math.pow(_tau, 2)), "sigma_v");
  const _sigma_Rd = finite(_f_y / _gamma_M0, "sigma_Rd");
  const _sigma_p = finite((_F_z + 4 * _h_e * (_F_l / _l_e + _F_q / _t_e)) / finite(_t_e * _l_e, "t_e * l_e"), "sigma_p");
  const _sigma_low = finite(Math.max(_sigma_p, finite(Math.sqrt(3) * (_F_l + _F_q) / finite(_t_e * _l_e, "t_e * l_e"), "sqrt(3) * (F_l + F_q) / (t_e * l_e)")), "sigma_low");
  const _sigma_high = finite(Math.sqrt(Math.pow(_sigma, 2) + 4 * Math.pow(_tau, 2)), "sigma_high");
  return [_sigma, _tau, _sigma_v, _sigma_Rd, _sigma_p, _sigma_low, _sigma_high];
}

export function eyeFootBySolution_allowableStress(v: Readonly<Record<"F_z" | "F_l" | "F_q" | "t_e" | "h_e" | "l_e" | "f_y" | "Omega_b", number>>): number[] {
  const _F_z = v.F_z;
  const _F_l = v.F_l;
  const _F_q = v.F_q;
  const _t_e = v.t_e;
  const _h_e = v.h_e;
  const _l_e = v.l_e;
  const _f_y = v.f_y;
  const _Omega_b = v.Omega_b;
  const _sigma = finite(_F_z / finite(_t_e * _l_e, "t_e * l_e") + 6 * _F_l * _h_e / finite(_t_e * Math.pow(_l_e, 2), "t_e * l_e ^ 2") + 6 * _F_q * _h_e / finite(_l_e * Math.pow(_t_e, 2), "l_e * t_e ^ 2"), "sigma");
  const _tau = finite(1.5 * (_F_l + _F_q) / finite(_t_e * _l_e, "t_e * l_e"), "tau");
  const _sigma_v = finite(Math.sqrt(Math.pow(_sigma, 2) + 3 * Math.pow(_tau, 2)), "sigma_v");
  const _sigma_Rd = finite(_f_y / _Omega_b, "sigma_Rd");
  const _sigma_p = finite((_F_z + 4 * _h_e * (_F_l / _l_e + _F_q / _t_e)) / finite(_t_e * _l_e, "t_e * l_e"), "sigma_p");
  const _sigma_low = finite(Math.max(_sigma_p, finite(Math.sqrt(3) * (_F_l + _F_q) / finite(_t_e * _l_e, "t_e * l_e"), "sqrt(3) * (F_l + F_q) / (t_e * l_e)")), "sigma_low");
  const _sigma_high = finite(Math.sqrt(Math.pow(_sigma, 2) + 4 * Math.pow(_tau, 2)), "sigma_high");
  return [_sigma, _tau, _sigma_v, _sigma_Rd, _sigma_p, _sigma_low, _sigma_high];
}

export function eyeWeld_partialFactors(v: Readonly<Record<"F_z" | "F_l" | "F_q" | "t_e" | "h_e" | "a_w" | "l_0" | "s_e" | "R" | "g_2" | "f_u" | "beta_w" | "gamma_M2", number>>): number[] {
  const _F_z = v.F_z;
  const _F_l = v.F_l;
  const _F_q = v.F_q;
  const _t_e = v.t_e;
  const _h_e = v.h_e;
  const _a_w = v.a_w;
  const _l_0 = v.l_0;
  const _s_e = v.s_e;
  const _R = v.R;
  const _g_2 = v.g_2;
  const _f_u = v.f_u;
  const _beta_w = v.beta_w;
  const _gamma_M2 = v.gamma_M2;
  const _l_w = finite(_l_0 - 2 * _a_w, "l_w");
  const _f_z = finite(_F_z / finite(2 * _l_w, "2 * l_w") + 3 * _F_l * _h_e / finite(Math.pow(_l_w, 2), "l_w ^ 2") + _F_q * _h_e / finite(_t_e * _l_w, "t_e * l_w"), "f_z");
  const _f_h = finite(_F_q / finite(2 * _l_w, "2 * l_w"), "f_h");
  const _f_l = finite(_F_l / finite(2 * _l_w, "2 * l_w"), "f_l");
  const _sigma_s = finite((_f_z + _f_h) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w"), "sigma_s");
  const _tau_s = finite(Math.abs(_f_z - _f_h) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w"), "tau_s");
  const _tau_l = finite(_f_l / _a_w, "tau_l");
  const _sigma_v = finite(Math.sqrt(Math.pow(_sigma_s, 2) + 3 * (Math.pow(_tau_s, 2) + Math.pow(_tau_l, 2))), "sigma_v");
  const _f_r = finite(Math.sqrt(Math.pow(_f_z, 2) + Math.pow(_f_h, 2) + Math.pow(_f_l, 2)), "f_r");
  const _f_Rd = finite(_f_u / finite(Math.sqrt(3) * _beta_w * _gamma_M2, "sqrt(3) * beta_w * gamma_M2") * _a_w, "f_Rd");
  const _sigma_v_Rd = finite(_f_u / finite(_beta_w * _gamma_M2, "beta_w * gamma_M2"), "sigma_v_Rd");
  const _sigma_s_Rd = finite(0.9 * _f_u / _gamma_M2, "sigma_s_Rd");
  const _u = finite(Math.max(finite(_sigma_v / _sigma_v_Rd, "sigma_v / sigma_v_Rd"), finite(_sigma_s / _sigma_s_Rd, "sigma_s / sigma_s_Rd")), "u");
  const _u_Rd = finite(1, "u_Rd");
  const _u_high = finite(_f_r / _f_Rd, "u_high");
  const _u_low = finite(_f_r / finite(Math.sqrt(3) * _f_Rd, "sqrt(3) * f_Rd"), "u_low");
  const _range0 = finite(_l_w > finite(0 * _l_0, "0 * l_0") ? 1 : 0, "range0");
  const _range1 = finite(_s_e <= finite(_R / 2, "R / 2") ? 1 : 0, "range1");
  const _range2 = finite(finite(_R - Math.sqrt(Math.pow(_R, 2) - Math.pow(_s_e, 2)), "R - sqrt(R ^ 2 - s_e ^ 2)") <= _g_2 ? 1 : 0, "range2");
  return [_l_w, _f_z, _f_h, _f_l, _sigma_s, _tau_s, _tau_l, _sigma_v, _f_r, _f_Rd, _sigma_v_Rd, _sigma_s_Rd, _u, _u_Rd, _u_high, _u_low, _range0, _range1, _range2];
}

export function eyeWeld_allowableStress(v: Readonly<Record<"F_z" | "F_l" | "F_q" | "t_e" | "h_e" | "a_w" | "l_0" | "s_e" | "R" | "g_2" | "f_u" | "Omega_J", number>>): number[] {
  const _F_z = v.F_z;
  const _F_l = v.F_l;
  const _F_q = v.F_q;
  const _t_e = v.t_e;
  const _h_e = v.h_e;
  const _a_w = v.a_w;
  const _l_0 = v.l_0;
  const _s_e = v.s_e;
  const _R = v.R;
  const _g_2 = v.g_2;
  const _f_u = v.f_u;
  const _Omega_J = v.Omega_J;
  const _l_w = finite(_l_0 - 2 * _a_w, "l_w");
  const _f_z = finite(_F_z / finite(2 * _l_w, "2 * l_w") + 3 * _F_l * _h_e / finite(Math.pow(_l_w, 2), "l_w ^ 2") + _F_q * _h_e / finite(_t_e * _l_w, "t_e * l_w"), "f_z");
  const _f_h = finite(_F_q / finite(2 * _l_w, "2 * l_w"), "f_h");
  const _f_l = finite(_F_l / finite(2 * _l_w, "2 * l_w"), "f_l");
  const _f_r = finite(Math.sqrt(Math.pow(_f_z, 2) + Math.pow(_f_h, 2) + Math.pow(_f_l, 2)), "f_r");
  const _f_Rd = finite(0.6 * _f_u * Math.min(_a_w, finite(_t_e / 2, "t_e / 2")) / _Omega_J, "f_Rd");
  const _u = finite(_f_r / _f_Rd, "u");
  const _u_Rd = finite(1, "u_Rd");
  const _u_high = finite(_f_r / _f_Rd, "u_high");
  const _u_low = finite(_f_r / finite(Math.sqrt(3) * _f_Rd, "sqrt(3) * f_Rd"), "u_low");
  const _range0 = finite(_l_w > finite(0 * _l_0, "0 * l_0") ? 1 : 0, "range0");
  const _range1 = finite(_s_e <= finite(_R / 2, "R / 2") ? 1 : 0, "range1");
  const _range2 = finite(finite(_R - Math.sqrt(Math.pow(_R, 2) - Math.pow(_s_e, 2)), "R - sqrt(R ^ 2 - s_e ^ 2)") <= _g_2 ? 1 : 0, "range2");
  return [_l_w, _f_z, _f_h, _f_l, _f_r, _f_Rd, _u, _u_Rd, _u_high, _u_low, _range0, _range1, _range2];
}

export function eyeWeldBySolution_partialFactors(v: Readonly<Record<"F_z" | "F_l" | "F_q" | "t_e" | "h_e" | "a_w" | "l_0" | "s_e" | "R" | "g_2" | "f_u" | "beta_w" | "gamma_M2", number>>): number[] {
  const _F_z = v.F_z;
  const _F_l = v.F_l;
  const _F_q = v.F_q;
  const _t_e = v.t_e;
  const _h_e = v.h_e;
  const _a_w = v.a_w;
  const _l_0 = v.l_0;
  const _s_e = v.s_e;
  const _R = v.R;
  const _g_2 = v.g_2;
  const _f_u = v.f_u;
  const _beta_w = v.beta_w;
  const _gamma_M2 = v.gamma_M2;
  const _l_w = finite(_l_0 - 2 * _a_w, "l_w");
  const _f_z = finite(_F_z / finite(2 * _l_w, "2 * l_w") + 3 * _F_l * _h_e / finite(Math.pow(_l_w, 2), "l_w ^ 2") + _F_q * _h_e / finite(_t_e * _l_w, "t_e * l_w"), "f_z");
  const _f_h = finite(_F_q / finite(2 * _l_w, "2 * l_w"), "f_h");
  const _f_l = finite(_F_l / finite(2 * _l_w, "2 * l_w"), "f_l");
  const _sigma_s = finite((_f_z + _f_h) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w"), "sigma_s");
  const _tau_s = finite(Math.abs(_f_z - _f_h) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w"), "tau_s");
  const _tau_l = finite(_f_l / _a_w, "tau_l");
  const _sigma_v = finite(Math.sqrt(Math.pow(_sigma_s, 2) + 3 * (Math.pow(_tau_s, 2) + Math.pow(_tau_l, 2))), "sigma_v");
  const _f_r = finite(Math.sqrt(Math.pow(_f_z, 2) + Math.pow(_f_h, 2) + Math.pow(_f_l, 2)), "f_r");
  const _f_Rd = finite(_f_u / finite(Math.sqrt(3) * _beta_w * _gamma_M2, "sqrt(3) * beta_w * gamma_M2") * _a_w, "f_Rd");
  const _sigma_v_Rd = finite(_f_u / finite(_beta_w * _gamma_M2, "beta_w * gamma_M2"), "sigma_v_Rd");
  const _sigma_s_Rd = finite(0.9 * _f_u / _gamma_M2, "sigma_s_Rd");
  const _u = finite(Math.max(finite(_sigma_v / _sigma_v_Rd, "sigma_v / sigma_v_Rd"), finite(_sigma_s / _sigma_s_Rd, "sigma_s / sigma_s_Rd")), "u");
  const _u_Rd = finite(1, "u_Rd");
  const _u_high = finite(_f_r / _f_Rd, "u_high");
  const _u_low = finite(_f_r / finite(Math.sqrt(3) * _f_Rd, "sqrt(3) * f_Rd"), "u_low");
  const _range0 = finite(_l_w > finite(0 * _l_0, "0 * l_0") ? 1 : 0, "range0");
  const _range1 = finite(_s_e <= finite(_R / 2, "R / 2") ? 1 : 0, "range1");
  const _range2 = finite(finite(_R - Math.sqrt(Math.pow(_R, 2) - Math.pow(_s_e, 2)), "R - sqrt(R ^ 2 - s_e ^ 2)") <= _g_2 ? 1 : 0, "range2");
  return [_l_w, _f_z, _f_h, _f_l, _sigma_s, _tau_s, _tau_l, _sigma_v, _f_r, _f_Rd, _sigma_v_Rd, _sigma_s_Rd, _u, _u_Rd, _u_high, _u_low, _range0, _range1, _range2];
}

export function eyeWeldBySolution_allowableStress(v: Readonly<Record<"F_z" | "F_l" | "F_q" | "t_e" | "h_e" | "a_w" | "l_0" | "s_e" | "R" | "g_2" | "f_u" | "Omega_J", number>>): number[] {
  const _F_z = v.F_z;
  const _F_l = v.F_l;
  const _F_q = v.F_q;
  const _t_e = v.t_e;
  const _h_e = v.h_e;
  const _a_w = v.a_w;
  const _l_0 = v.l_0;
  const _s_e = v.s_e;
  const _R = v.R;
  const _g_2 = v.g_2;
  const _f_u = v.f_u;
  const _Omega_J = v.Omega_J;
  const _l_w = finite(_l_0 - 2 * _a_w, "l_w");
  const _f_z = finite(_F_z / finite(2 * _l_w, "2 * l_w") + 3 * _F_l * _h_e / finite(Math.pow(_l_w, 2), "l_w ^ 2") + _F_q * _h_e / finite(_t_e * _l_w, "t_e * l_w"), "f_z");
  const _f_h = finite(_F_q / finite(2 * _l_w, "2 * l_w"), "f_h");
  const _f_l = finite(_F_l / finite(2 * _l_w, "2 * l_w"), "f_l");
  const _f_r = finite(Math.sqrt(Math.pow(_f_z, 2) + Math.pow(_f_h, 2) + Math.pow(_f_l, 2)), "f_r");
  const _f_Rd = finite(0.6 * _f_u * Math.min(_a_w, finite(_t_e / 2, "t_e / 2")) / _Omega_J, "f_Rd");
  const _u = finite(_f_r / _f_Rd, "u");
  const _u_Rd = finite(1, "u_Rd");
  const _u_high = finite(_f_r / _f_Rd, "u_high");
  const _u_low = finite(_f_r / finite(Math.sqrt(3) * _f_Rd, "sqrt(3) * f_Rd"), "u_low");
  const _range0 = finite(_l_w > finite(0 * _l_0, "0 * l_0") ? 1 : 0, "range0");
  const _range1 = finite(_s_e <= finite(_R / 2, "R / 2") ? 1 : 0, "range1");
  const _range2 = finite(finite(_R - Math.sqrt(Math.pow(_R, 2) - Math.pow(_s_e, 2)), "R - sqrt(R ^ 2 - s_e ^ 2)") <= _g_2 ? 1 : 0, "range2");
  return [_l_w, _f_z, _f_h, _f_l, _f_r, _f_Rd, _u, _u_Rd, _u_high, _u_low, _range0, _range1, _range2];
}

export function eyeWeldUltimate_partialFactors(v: Readonly<Record<"F_z" | "F_l" | "F_q" | "t_e" | "h_e" | "a_w" | "l_0" | "s_e" | "R" | "g_2" | "f_u" | "beta_w" | "gamma_M2" | "k_theta", number>>, k: Readonly<Record<"welds.foot.length", (...values: number[]) => number>>): number[] {
  const _F_z = v.F_z;
  const _F_l = v.F_l;
  const _F_q = v.F_q;
  const _t_e = v.t_e;
  const _h_e = v.h_e;
  const _a_w = v.a_w;
  const _l_0 = v.l_0;
  const _s_e = v.s_e;
  const _R = v.R;
  const _g_2 = v.g_2;
  const _f_u = v.f_u;
  const _beta_w = v.beta_w;
  const _gamma_M2 = v.gamma_M2;
  const _k_theta = v.k_theta;
  const _l_w = finite(_l_0 - 2 * _a_w, "l_w");
  const _l_C = finite(k["welds.foot.length"](_l_w, _h_e, _F_z, _F_l, _k_theta), "l_C");
  const _F_p = finite(Math.sqrt(Math.pow(_F_z, 2) + Math.pow(_F_l, 2)), "F_p");
  const _f_Rd = finite(_f_u / finite(Math.sqrt(3) * _beta_w * _gamma_M2, "sqrt(3) * beta_w * gamma_M2") * _a_w, "f_Rd");
  const _f_q = finite(Math.sqrt(Math.pow(finite(_F_q * _h_e / finite(_t_e * _l_w, "t_e * l_w"), "F_q * h_e / (t_e * l_w)"), 2) + Math.pow(finite(_F_q / finite(2 * _l_w, "2 * l_w"), "F_q / (2 * l_w)"), 2)), "f_q");
  const _u = finite(_F_p / finite(2 * _l_C * _f_Rd, "2 * l_C * f_Rd") + _f_q / _f_Rd, "u");
  const _u_Rd = finite(1, "u_Rd");
  const _f_e = finite(Math.sqrt(Math.pow(finite(_F_z / finite(2 * _l_w, "2 * l_w") + 3 * _F_l * _h_e / finite(Math.pow(_l_w, 2), "l_w ^ 2"), "F_z / (2 * l_w) + 3 * F_l * h_e / l_w ^ 2"), 2) + Math.pow(finite(_F_l / finite(2 * _l_w, "2 * l_w"), "F_l / (2 * l_w)"), 2)), "f_e");
  const _u_high = finite(1.05 * _f_e / _f_Rd + _f_q / _f_Rd, "u_high");
  const _u_low = finite(_F_p / finite(2 * _l_w * _f_Rd, "2 * l_w * f_Rd"), "u_low");
  const _range0 = finite(_l_w > finite(0 * _l_0, "0 * l_0") ? 1 : 0, "range0");
  const _range1 = finite(_s_e <= finite(_R / 2, "R / 2") ? 1 : 0, "range1");
  const _range2 = finite(finite(_R - Math.sqrt(Math.pow(_R, 2) - Math.pow(_s_e, 2)), "R - sqrt(R ^ 2 - s_e ^ 2)") <= _g_2 ? 1 : 0, "range2");
  return [_l_w, _l_C, _F_p, _f_Rd, _f_q, _u, _u_Rd, _f_e, _u_high, _u_low, _range0, _range1, _range2];
}

export function eyeWeldUltimate_allowableStress(v: Readonly<Record<"F_z" | "F_l" | "F_q" | "t_e" | "h_e" | "a_w" | "l_0" | "s_e" | "R" | "g_2" | "f_u" | "Omega_J" | "k_theta", number>>, k: Readonly<Record<"welds.foot.length", (...values: number[]) => number>>): number[] {
  const _F_z = v.F_z;
  const _F_l = v.F_l;
  const _F_q = v.F_q;
  const _t_e = v.t_e;
  const _h_e = v.h_e;
  const _a_w = v.a_w;
  const _l_0 = v.l_0;
  const _s_e = v.s_e;
  const _R = v.R;
  const _g_2 = v.g_2;
  const _f_u = v.f_u;
  const _Omega_J = v.Omega_J;
  const _k_theta = v.k_theta;
  const _l_w = finite(_l_0 - 2 * _a_w, "l_w");
  const _l_C = finite(k["welds.foot.length"](_l_w, _h_e, _F_z, _F_l, _k_theta), "l_C");
  const _F_p = finite(Math.sqrt(Math.pow(_F_z, 2) + Math.pow(_F_l, 2)), "F_p");
  const _f_Rd = finite(0.6 * _f_u * Math.min(_a_w, finite(_t_e / 2, "t_e / 2")) / _Omega_J, "f_Rd");
  const _f_q = finite(Math.sqrt(Math.pow(finite(_F_q * _h_e / finite(_t_e * _l_w, "t_e * l_w"), "F_q * h_e / (t_e * l_w)"), 2) + Math.pow(finite(_F_q / finite(2 * _l_w, "2 * l_w"), "F_q / (2 * l_w)"), 2)), "f_q");
  const _u = finite(_F_p / finite(2 * _l_C * _f_Rd, "2 * l_C * f_Rd") + _f_q / _f_Rd, "u");
  const _u_Rd = finite(1, "u_Rd");
  const _f_e = finite(Math.sqrt(Math.pow(finite(_F_z / finite(2 * _l_w, "2 * l_w") + 3 * _F_l * _h_e / finite(Math.pow(_l_w, 2), "l_w ^ 2"), "F_z / (2 * l_w) + 3 * F_l * h_e / l_w ^ 2"), 2) + Math.pow(finite(_F_l / finite(2 * _l_w, "2 * l_w"), "F_l / (2 * l_w)"), 2)), "f_e");
  const _u_high = finite(1.05 * _f_e / _f_Rd + _f_q / _f_Rd, "u_high");
  const _u_low = finite(_F_p / finite(2 * _l_w * _f_Rd, "2 * l_w * f_Rd"), "u_low");
  const _range0 = finite(_l_w > finite(0 * _l_0, "0 * l_0") ? 1 : 0, "range0");
  const _range1 = finite(_s_e <= finite(_R / 2, "R / 2") ? 1 : 0, "range1");
  const _range2 = finite(finite(_R - Math.sqrt(Math.pow(_R, 2) - Math.pow(_s_e, 2)), "R - sqrt(R ^ 2 - s_e ^ 2)") <= _g_2 ? 1 : 0, "range2");
  return [_l_w, _l_C, _F_p, _f_Rd, _f_q, _u, _u_Rd, _f_e, _u_high, _u_low, _range0, _range1, _range2];
}

export function eyeWeldUltimateBySolution_partialFactors(v: Readonly<Record<"F_z" | "F_l" | "F_q" | "t_e" | "h_e" | "a_w" | "l_0" | "s_e" | "R" | "g_2" | "f_u" | "beta_w" | "gamma_M2" | "k_theta", number>>, k: Readonly<Record<"welds.foot.length", (...values: number[]) => number>>): number[] {
  const _F_z = v.F_z;
  const _F_l = v.F_l;
  const _F_q = v.F_q;
  const _t_e = v.t_e;
  const _h_e = v.h_e;
  const _a_w = v.a_w;
  const _l_0 = v.l_0;
  const _s_e = v.s_e;
  const _R = v.R;
  const _g_2 = v.g_2;
  const _f_u = v.f_u;
  const _beta_w = v.beta_w;
  const _gamma_M2 = v.gamma_M2;
  const _k_theta = v.k_theta;
  const _l_w = finite(_l_0 - 2 * _a_w, "l_w");
  const _l_C = finite(k["welds.foot.length"](_l_w, _h_e, _F_z, _F_l, _k_theta), "l_C");
  const _F_p = finite(Math.sqrt(Math.pow(_F_z, 2) + Math.pow(_F_l, 2)), "F_p");
  const _f_Rd = finite(_f_u / finite(Math.sqrt(3) * _beta_w * _gamma_M2, "sqrt(3) * beta_w * gamma_M2") * _a_w, "f_Rd");
  const _f_q = finite(Math.sqrt(Math.pow(finite(_F_q * _h_e / finite(_t_e * _l_w, "t_e * l_w"), "F_q * h_e / (t_e * l_w)"), 2) + Math.pow(finite(_F_q / finite(2 * _l_w, "2 * l_w"), "F_q / (2 * l_w)"), 2)), "f_q");
  const _u = finite(_F_p / finite(2 * _l_C * _f_Rd, "2 * l_C * f_Rd") + _f_q / _f_Rd, "u");
  const _u_Rd = finite(1, "u_Rd");
  const _f_e = finite(Math.sqrt(Math.pow(finite(_F_z / finite(2 * _l_w, "2 * l_w") + 3 * _F_l * _h_e / finite(Math.pow(_l_w, 2), "l_w ^ 2"), "F_z / (2 * l_w) + 3 * F_l * h_e / l_w ^ 2"), 2) + Math.pow(finite(_F_l / finite(2 * _l_w, "2 * l_w"), "F_l / (2 * l_w)"), 2)), "f_e");
  const _u_high = finite(1.05 * _f_e / _f_Rd + _f_q / _f_Rd, "u_high");
  const _u_low = finite(_F_p / finite(2 * _l_w * _f_Rd, "2 * l_w * f_Rd"), "u_low");
  const _range0 = finite(_l_w > finite(0 * _l_0, "0 * l_0") ? 1 : 0, "range0");
  const _range1 = finite(_s_e <= finite(_R / 2, "R / 2") ? 1 : 0, "range1");
  const _range2 = finite(finite(_R - Math.sqrt(Math.pow(_R, 2) - Math.pow(_s_e, 2)), "R - sqrt(R ^ 2 - s_e ^ 2)") <= _g_2 ? 1 : 0, "range2");
  return [_l_w, _l_C, _F_p, _f_Rd, _f_q, _u, _u_Rd, _f_e, _u_high, _u_low, _range0, _range1, _range2];
}

export function eyeWeldUltimateBySolution_allowableStress(v: Readonly<Record<"F_z" | "F_l" | "F_q" | "t_e" | "h_e" | "a_w" | "l_0" | "s_e" | "R" | "g_2" | "f_u" | "Omega_J" | "k_theta", number>>, k: Readonly<Record<"welds.foot.length", (...values: number[]) => number>>): number[] {
  const _F_z = v.F_z;
  const _F_l = v.F_l;
  const _F_q = v.F_q;
  const _t_e = v.t_e;
  const _h_e = v.h_e;
  const _a_w = v.a_w;
  const _l_0 = v.l_0;
  const _s_e = v.s_e;
  const _R = v.R;
  const _g_2 = v.g_2;
  const _f_u = v.f_u;
  const _Omega_J = v.Omega_J;
  const _k_theta = v.k_theta;
  const _l_w = finite(_l_0 - 2 * _a_w, "l_w");
  const _l_C = finite(k["welds.foot.length"](_l_w, _h_e, _F_z, _F_l, _k_theta), "l_C");
  const _F_p = finite(Math.sqrt(Math.pow(_F_z, 2) + Math.pow(_F_l, 2)), "F_p");
  const _f_Rd = finite(0.6 * _f_u * Math.min(_a_w, finite(_t_e / 2, "t_e / 2")) / _Omega_J, "f_Rd");
  const _f_q = finite(Math.sqrt(Math.pow(finite(_F_q * _h_e / finite(_t_e * _l_w, "t_e * l_w"), "F_q * h_e / (t_e * l_w)"), 2) + Math.pow(finite(_F_q / finite(2 * _l_w, "2 * l_w"), "F_q / (2 * l_w)"), 2)), "f_q");
  const _u = finite(_F_p / finite(2 * _l_C * _f_Rd, "2 * l_C * f_Rd") + _f_q / _f_Rd, "u");
  const _u_Rd = finite(1, "u_Rd");
  const _f_e = finite(Math.sqrt(Math.pow(finite(_F_z / finite(2 * _l_w, "2 * l_w") + 3 * _F_l * _h_e / finite(Math.pow(_l_w, 2), "l_w ^ 2"), "F_z / (2 * l_w) + 3 * F_l * h_e / l_w ^ 2"), 2) + Math.pow(finite(_F_l / finite(2 * _l_w, "2 * l_w"), "F_l / (2 * l_w)"), 2)), "f_e");
  const _u_high = finite(1.05 * _f_e / _f_Rd + _f_q / _f_Rd, "u_high");
  const _u_low = finite(_F_p / finite(2 * _l_w * _f_Rd, "2 * l_w * f_Rd"), "u_low");
  const _range0 = finite(_l_w > finite(0 * _l_0, "0 * l_0") ? 1 : 0, "range0");
  const _range1 = finite(_s_e <= finite(_R / 2, "R / 2") ? 1 : 0, "range1");
  const _range2 = finite(finite(_R - Math.sqrt(Math.pow(_R, 2) - Math.pow(_s_e, 2)), "R - sqrt(R ^ 2 - s_e ^ 2)") <= _g_2 ? 1 : 0, "range2");
  return [_l_w, _l_C, _F_p, _f_Rd, _f_q, _u, _u_Rd, _f_e, _u_high, _u_low, _range0, _range1, _range2];
}

export function eyeCheekWeld_partialFactors(v: Readonly<Record<"F" | "t_e" | "t_c" | "D_c" | "a_w" | "f_u" | "beta_w" | "gamma_M2", number>>): number[] {
  const _F = v.F;
  const _t_e = v.t_e;
  const _t_c = v.t_c;
  const _D_c = v.D_c;
  const _a_w = v.a_w;
  const _f_u = v.f_u;
  const _beta_w = v.beta_w;
  const _gamma_M2 = v.gamma_M2;
  const _F_c = finite(_F * _t_c / finite(_t_e + 2 * _t_c, "t_e + 2 * t_c"), "F_c");
  const _l_c = finite(Math.PI * _D_c / 2, "l_c");
  const _f_c = finite(_F_c / _l_c, "f_c");
  const _f_Rd = finite(_f_u / finite(Math.sqrt(3) * _beta_w * _gamma_M2, "sqrt(3) * beta_w * gamma_M2") * _a_w, "f_Rd");
  const _f_low = finite(_F_c / finite(Math.PI * _D_c, "pi * D_c"), "f_low");
  const _f_high = finite(_F_c / _D_c, "f_high");
  return [_F_c, _l_c, _f_c, _f_Rd, _f_low, _f_high];
}

export function eyeCheekWeld_allowableStress(v: Readonly<Record<"F" | "t_e" | "t_c" | "D_c" | "a_w" | "f_u" | "Omega_J", number>>): number[] {
  const _F = v.F;
  const _t_e = v.t_e;
  const _t_c = v.t_c;
  const _D_c = v.D_c;
  const _a_w = v.a_w;
  const _f_u = v.f_u;
  const _Omega_J = v.Omega_J;
  const _F_c = finite(_F * _t_c / finite(_t_e + 2 * _t_c, "t_e + 2 * t_c"), "F_c");
  const _l_c = finite(Math.PI * _D_c / 2, "l_c");
  const _f_c = finite(_F_c / _l_c, "f_c");
  const _f_Rd = finite(0.6 * _f_u * _a_w / _Omega_J, "f_Rd");
  const _f_low = finite(_F_c / finite(Math.PI * _D_c, "pi * D_c"), "f_low");
  const _f_high = finite(_F_c / _D_c, "f_high");
  return [_F_c, _l_c, _f_c, _f_Rd, _f_low, _f_high];
}

export function eyeCheekWeldBySolution_partialFactors(v: Readonly<Record<"F" | "t_e" | "t_c" | "D_c" | "a_w" | "f_u" | "beta_w" | "gamma_M2", number>>): number[] {
  const _F = v.F;
  const _t_e = v.t_e;
  const _t_c = v.t_c;
  const _D_c = v.D_c;
  const _a_w = v.a_w;
  const _f_u = v.f_u;
  const _beta_w = v.beta_w;
  const _gamma_M2 = v.gamma_M2;
  const _F_c = finite(_F * _t_c / finite(_t_e + 2 * _t_c, "t_e + 2 * t_c"), "F_c");
  const _l_c = finite(Math.PI * _D_c / 2, "l_c");
  const _f_c = finite(_F_c / _l_c, "f_c");
  const _f_Rd = finite(_f_u / finite(Math.sqrt(3) * _beta_w * _gamma_M2, "sqrt(3) * beta_w * gamma_M2") * _a_w, "f_Rd");
  const _f_low = finite(_F_c / finite(Math.PI * _D_c, "pi * D_c"), "f_low");
  const _f_high = finite(_F_c / _D_c, "f_high");
  return [_F_c, _l_c, _f_c, _f_Rd, _f_low, _f_high];
}

export function eyeCheekWeldBySolution_allowableStress(v: Readonly<Record<"F" | "t_e" | "t_c" | "D_c" | "a_w" | "f_u" | "Omega_J", number>>): number[] {
  const _F = v.F;
  const _t_e = v.t_e;
  const _t_c = v.t_c;
  const _D_c = v.D_c;
  const _a_w = v.a_w;
  const _f_u = v.f_u;
  const _Omega_J = v.Omega_J;
  const _F_c = finite(_F * _t_c / finite(_t_e + 2 * _t_c, "t_e + 2 * t_c"), "F_c");
  const _l_c = finite(Math.PI * _D_c / 2, "l_c");
  const _f_c = finite(_F_c / _l_c, "f_c");
  const _f_Rd = finite(0.6 * _f_u * _a_w / _Omega_J, "f_Rd");
  const _f_low = finite(_F_c / finite(Math.PI * _D_c, "pi * D_c"), "f_low");
  const _f_high = finite(_F_c / _D_c, "f_high");
  return [_F_c, _l_c, _f_c, _f_Rd, _f_low, _f_high];
}

export function eyeFootPlate_partialFactors(v: Readonly<Record<"F_z" | "F_l" | "F_q" | "t_e" | "h_e" | "a_w" | "t_f" | "f_yf" | "w_f" | "e" | "e_1" | "p_f" | "n_p" | "A_s" | "f_ub" | "gamma_M0" | "gamma_M2" | "gamma_R", number>>): number[] {
  const _F_z = v.F_z;
  const _F_l = v.F_l;
  const _F_q = v.F_q;
  const _t_e = v.t_e;
  const _h_e = v.h_e;
  const _a_w = v.a_w;
  const _t_f = v.t_f;
  const _f_yf = v.f_yf;
  const _w_f = v.w_f;
  const _e = v.e;
  const _e_1 = v.e_1;
  const _p_f = v.p_f;
  const _n_p = v.n_p;
  const _A_s = v.A_s;
  const _f_ub = v.f_ub;
  const _gamma_M0 = v.gamma_M0;
  const _gamma_M2 = v.gamma_M2;
  const _gamma_R = v.gamma_R;
  const _N = finite(_F_z + 6 * _F_l * _h_e / finite(_p_f * (_n_p + 1), "p_f * (n_p + 1)") + 2 * _F_q * _h_e / _w_f, "N");
  const _m = finite(_w_f / 2 - _t_e / 2 - 0.8 * Math.sqrt(2) * _a_w, "m");
  const _n = finite(Math.min(_e, finite(1.25 * _m, "1.25 * m")), "n");
  const _l_cp_1 = finite(2 * Math.min(finite(2 * Math.PI * _m, "2 * pi * m"), finite(Math.PI * _m + 2 * _e_1, "pi * m + 2 * e_1")) + (_n_p - 2) * 2 * Math.PI * _m, "l_cp_1");
  const _l_cp_g = finite(2 * Math.min(finite(Math.PI * _m + _p_f, "pi * m + p_f"), finite(2 * _e_1 + _p_f, "2 * e_1 + p_f")) + (_n_p - 2) * 2 * _p_f, "l_cp_g");
  const _l_nc_1 = finite(2 * Math.min(finite(4 * _m + 1.25 * _e, "4 * m + 1.25 * e"), finite(2 * _m + 0.625 * _e + _e_1, "2 * m + 0.625 * e + e_1")) + (_n_p - 2) * (4 * _m + 1.25 * _e), "l_nc_1");
  const _l_nc_g = finite(2 * Math.min(finite(2 * _m + 0.625 * _e + 0.5 * _p_f, "2 * m + 0.625 * e + 0.5 * p_f"), finite(_e_1 + 0.5 * _p_f, "e_1 + 0.5 * p_f")) + (_n_p - 2) * _p_f, "l_nc_g");
  const _l_2 = finite(Math.min(_l_nc_1, _l_nc_g), "l_2");
  const _l_1 = finite(Math.min(_l_cp_1, _l_cp_g, _l_2), "l_1");
  const _F_t_Rd = finite(0.9 * _f_ub * _A_s / _gamma_M2, "F_t_Rd");
  const _M_1 = finite(_l_1 * Math.pow(_t_f, 2) * _f_yf / finite(4 * _gamma_M0, "4 * gamma_M0"), "M_1");
  const _M_2 = finite(_l_2 * Math.pow(_t_f, 2) * _f_yf / finite(4 * _gamma_M0, "4 * gamma_M0"), "M_2");
  const _F_1 = finite(4 * _M_1 / _m, "F_1");
  const _F_3 = finite(2 * _n_p * _F_t_Rd, "F_3");
  const _F_2 = finite((2 * _M_2 + _n * _F_3) / finite(_m + _n, "m + n"), "F_2");
  const _F_T_Rd = finite(Math.min(_F_1, _F_2, _F_3), "F_T_Rd");
  const _l_f = finite(2 * _e_1 + (_n_p - 1) * _p_f, "l_f");
  const _F_strip = finite(_l_f * Math.pow(_t_f, 2) * _f_yf / finite(_gamma_R * _m, "gamma_R * m"), "F_strip");
  const _F_high = finite(Math.min(_F_strip, _F_3), "F_high");
  const _F_low = finite(Math.min(finite(_l_2 / _l_f, "l_2 / l_f"), finite(_l_1 / _l_f, "l_1 / l_f")) * Math.min(finite(_F_strip / 2, "F_strip / 2"), finite(_F_3 / 2, "F_3 / 2")), "F_low");
  const _range0 = finite(_m > finite(0 * _w_f, "0 * w_f") ? 1 : 0, "range0");
  return [_N, _m, _n, _l_cp_1, _l_cp_g, _l_nc_1, _l_nc_g, _l_2, _l_1, _F_t_Rd, _M_1, _M_2, _F_1, _F_3, _F_2, _F_T_Rd, _l_f, _F_strip, _F_high, _F_low, _range0];
}

export function eyeFootPlate_allowableStress(v: Readonly<Record<"F_z" | "F_l" | "F_q" | "t_e" | "h_e" | "a_w" | "t_f" | "f_yf" | "w_f" | "e" | "e_1" | "p_f" | "n_p" | "A_b" | "F_nt" | "Omega_b" | "Omega_J" | "gamma_R", number>>): number[] {
  const _F_z = v.F_z;
  const _F_l = v.F_l;
  const _F_q = v.F_q;
  const _t_e = v.t_e;
  const _h_e = v.h_e;
  const _a_w = v.a_w;
  const _t_f = v.t_f;
  const _f_yf = v.f_yf;
  const _w_f = v.w_f;
  const _e = v.e;
  const _e_1 = v.e_1;
  const _p_f = v.p_f;
  const _n_p = v.n_p;
  const _A_b = v.A_b;
  const _F_nt = v.F_nt;
  const _Omega_b = v.Omega_b;
  const _Omega_J = v.Omega_J;
  const _gamma_R = v.gamma_R;
  const _N = finite(_F_z + 6 * _F_l * _h_e / finite(_p_f * (_n_p + 1), "p_f * (n_p + 1)") + 2 * _F_q * _h_e / _w_f, "N");
  const _m = finite(_w_f / 2 - _t_e / 2 - 0.8 * Math.sqrt(2) * _a_w, "m");
  const _n = finite(Math.min(_e, finite(1.25 * _m, "1.25 * m")), "n");
  const _l_cp_1 = finite(2 * Math.min(finite(2 * Math.PI * _m, "2 * pi * m"), finite(Math.PI * _m + 2 * _e_1, "pi * m + 2 * e_1")) + (_n_p - 2) * 2 * Math.PI * _m, "l_cp_1");
  const _l_cp_g = finite(2 * Math.min(finite(Math.PI * _m + _p_f, "pi * m + p_f"), finite(2 * _e_1 + _p_f, "2 * e_1 + p_f")) + (_n_p - 2) * 2 * _p_f, "l_cp_g");
  const _l_nc_1 = finite(2 * Math.min(finite(4 * _m + 1.25 * _e, "4 * m + 1.25 * e"), finite(2 * _m + 0.625 * _e + _e_1, "2 * m + 0.625 * e + e_1")) + (_n_p - 2) * (4 * _m + 1.25 * _e), "l_nc_1");
  const _l_nc_g = finite(2 * Math.min(finite(2 * _m + 0.625 * _e + 0.5 * _p_f, "2 * m + 0.625 * e + 0.5 * p_f"), finite(_e_1 + 0.5 * _p_f, "e_1 + 0.5 * p_f")) + (_n_p - 2) * _p_f, "l_nc_g");
  const _l_2 = finite(Math.min(_l_nc_1, _l_nc_g), "l_2");
  const _l_1 = finite(Math.min(_l_cp_1, _l_cp_g, _l_2), "l_1");
  const _F_t_Rd = finite(_F_nt * _A_b / _Omega_J, "F_t_Rd");
  const _M_1 = finite(_l_1 * Math.pow(_t_f, 2) * _f_yf / finite(4 * _Omega_b, "4 * Omega_b"), "M_1");
  const _M_2 = finite(_l_2 * Math.pow(_t_f, 2) * _f_yf / finite(4 * _Omega_b, "4 * Omega_b"), "M_2");
  const _F_1 = finite(4 * _M_1 / _m, "F_1");
  const _F_3 = finite(2 * _n_p * _F_t_Rd, "F_3");
  const _F_2 = finite((2 * _M_2 + _n * _F_3) / finite(_m + _n, "m + n"), "F_2");
  const _F_T_Rd = finite(Math.min(_F_1, _F_2, _F_3), "F_T_Rd");
  const _l_f = finite(2 * _e_1 + (_n_p - 1) * _p_f, "l_f");
  const _F_strip = finite(_l_f * Math.pow(_t_f, 2) * _f_yf / finite(_gamma_R * _m, "gamma_R * m"), "F_strip");
  const _F_high = finite(Math.min(_F_strip, _F_3), "F_high");
  const _F_low = finite(Math.min(finite(_l_2 / _l_f, "l_2 / l_f"), finite(_l_1 / _l_f, "l_1 / l_f")) * Math.min(finite(_F_strip / 2, "F_strip / 2"), finite(_F_3 / 2, "F_3 / 2")), "F_low");
  const _range0 = finite(_m > finite(0 * _w_f, "0 * w_f") ? 1 : 0, "range0");
  return [_N, _m, _n, _l_cp_1, _l_cp_g, _l_nc_1, _l_nc_g, _l_2, _l_1, _F_t_Rd, _M_1, _M_2, _F_1, _F_3, _F_2, _F_T_Rd, _l_f, _F_strip, _F_high, _F_low, _range0];
}

export function eyeFootPlateBySolution_partialFactors(v: Readonly<Record<"F_z" | "F_l" | "F_q" | "t_e" | "h_e" | "a_w" | "t_f" | "f_yf" | "w_f" | "e" | "e_1" | "p_f" | "n_p" | "A_s" | "f_ub" | "gamma_M0" | "gamma_M2" | "gamma_R", number>>): number[] {
  const _F_z = v.F_z;
  const _F_l = v.F_l;
  const _F_q = v.F_q;
  const _t_e = v.t_e;
  const _h_e = v.h_e;
  const _a_w = v.a_w;
  const _t_f = v.t_f;
  const _f_yf = v.f_yf;
  const _w_f = v.w_f;
  const _e = v.e;
  const _e_1 = v.e_1;
  const _p_f = v.p_f;
  const _n_p = v.n_p;
  const _A_s = v.A_s;
  const _f_ub = v.f_ub;
  const _gamma_M0 = v.gamma_M0;
  const _gamma_M2 = v.gamma_M2;
  const _gamma_R = v.gamma_R;
  const _N = finite(_F_z + 6 * _F_l * _h_e / finite(_p_f * (_n_p + 1), "p_f * (n_p + 1)") + 2 * _F_q * _h_e / _w_f, "N");
  const _m = finite(_w_f / 2 - _t_e / 2 - 0.8 * Math.sqrt(2) * _a_w, "m");
  const _n = finite(Math.min(_e, finite(1.25 * _m, "1.25 * m")), "n");
  const _l_cp_1 = finite(2 * Math.min(finite(2 * Math.PI * _m, "2 * pi * m"), finite(Math.PI * _m + 2 * _e_1, "pi * m + 2 * e_1")) + (_n_p - 2) * 2 * Math.PI * _m, "l_cp_1");
  const _l_cp_g = finite(2 * Math.min(finite(Math.PI * _m + _p_f, "pi * m + p_f"), finite(2 * _e_1 + _p_f, "2 * e_1 + p_f")) + (_n_p - 2) * 2 * _p_f, "l_cp_g");
  const _l_nc_1 = finite(2 * Math.min(finite(4 * _m + 1.25 * _e, "4 * m + 1.25 * e"), finite(2 * _m + 0.625 * _e + _e_1, "2 * m + 0.625 * e + e_1")) + (_n_p - 2) * (4 * _m + 1.25 * _e), "l_nc_1");
  const _l_nc_g = finite(2 * Math.min(finite(2 * _m + 0.625 * _e + 0.5 * _p_f, "2 * m + 0.625 * e + 0.5 * p_f"), finite(_e_1 + 0.5 * _p_f, "e_1 + 0.5 * p_f")) + (_n_p - 2) * _p_f, "l_nc_g");
  const _l_2 = finite(Math.min(_l_nc_1, _l_nc_g), "l_2");
  const _l_1 = finite(Math.min(_l_cp_1, _l_cp_g, _l_2), "l_1");
  const _F_t_Rd = finite(0.9 * _f_ub * _A_s / _gamma_M2, "F_t_Rd");
  const _M_1 = finite(_l_1 * Math.pow(_t_f, 2) * _f_yf / finite(4 * _gamma_M0, "4 * gamma_M0"), "M_1");
  const _M_2 = finite(_l_2 * Math.pow(_t_f, 2) * _f_yf / finite(4 * _gamma_M0, "4 * gamma_M0"), "M_2");
  const _F_1 = finite(4 * _M_1 / _m, "F_1");
  const _F_3 = finite(2 * _n_p * _F_t_Rd, "F_3");
  const _F_2 = finite((2 * _M_2 + _n * _F_3) / finite(_m + _n, "m + n"), "F_2");
  const _F_T_Rd = finite(Math.min(_F_1, _F_2, _F_3), "F_T_Rd");
  const _l_f = finite(2 * _e_1 + (_n_p - 1) * _p_f, "l_f");
  const _F_strip = finite(_l_f * Math.pow(_t_f, 2) * _f_yf / finite(_gamma_R * _m, "gamma_R * m"), "F_strip");
  const _F_high = finite(Math.min(_F_strip, _F_3), "F_high");
  const _F_low = finite(Math.min(finite(_l_2 / _l_f, "l_2 / l_f"), finite(_l_1 / _l_f, "l_1 / l_f")) * Math.min(finite(_F_strip / 2, "F_strip / 2"), finite(_F_3 / 2, "F_3 / 2")), "F_low");
  const _range0 = finite(_m > finite(0 * _w_f, "0 * w_f") ? 1 : 0, "range0");
  return [_N, _m, _n, _l_cp_1, _l_cp_g, _l_nc_1, _l_nc_g, _l_2, _l_1, _F_t_Rd, _M_1, _M_2, _F_1, _F_3, _F_2, _F_T_Rd, _l_f, _F_strip, _F_high, _F_low, _range0];
}

export function eyeFootPlateBySolution_allowableStress(v: Readonly<Record<"F_z" | "F_l" | "F_q" | "t_e" | "h_e" | "a_w" | "t_f" | "f_yf" | "w_f" | "e" | "e_1" | "p_f" | "n_p" | "A_b" | "F_nt" | "Omega_b" | "Omega_J" | "gamma_R", number>>): number[] {
  const _F_z = v.F_z;
  const _F_l = v.F_l;
  const _F_q = v.F_q;
  const _t_e = v.t_e;
  const _h_e = v.h_e;
  const _a_w = v.a_w;
  const _t_f = v.t_f;
  const _f_yf = v.f_yf;
  const _w_f = v.w_f;
  const _e = v.e;
  const _e_1 = v.e_1;
  const _p_f = v.p_f;
  const _n_p = v.n_p;
  const _A_b = v.A_b;
  const _F_nt = v.F_nt;
  const _Omega_b = v.Omega_b;
  const _Omega_J = v.Omega_J;
  const _gamma_R = v.gamma_R;
  const _N = finite(_F_z + 6 * _F_l * _h_e / finite(_p_f * (_n_p + 1), "p_f * (n_p + 1)") + 2 * _F_q * _h_e / _w_f, "N");
  const _m = finite(_w_f / 2 - _t_e / 2 - 0.8 * Math.sqrt(2) * _a_w, "m");
  const _n = finite(Math.min(_e, finite(1.25 * _m, "1.25 * m")), "n");
  const _l_cp_1 = finite(2 * Math.min(finite(2 * Math.PI * _m, "2 * pi * m"), finite(Math.PI * _m + 2 * _e_1, "pi * m + 2 * e_1")) + (_n_p - 2) * 2 * Math.PI * _m, "l_cp_1");
  const _l_cp_g = finite(2 * Math.min(finite(Math.PI * _m + _p_f, "pi * m + p_f"), finite(2 * _e_1 + _p_f, "2 * e_1 + p_f")) + (_n_p - 2) * 2 * _p_f, "l_cp_g");
  const _l_nc_1 = finite(2 * Math.min(finite(4 * _m + 1.25 * _e, "4 * m + 1.25 * e"), finite(2 * _m + 0.625 * _e + _e_1, "2 * m + 0.625 * e + e_1")) + (_n_p - 2) * (4 * _m + 1.25 * _e), "l_nc_1");
  const _l_nc_g = finite(2 * Math.min(finite(2 * _m + 0.625 * _e + 0.5 * _p_f, "2 * m + 0.625 * e + 0.5 * p_f"), finite(_e_1 + 0.5 * _p_f, "e_1 + 0.5 * p_f")) + (_n_p - 2) * _p_f, "l_nc_g");
  const _l_2 = finite(Math.min(_l_nc_1, _l_nc_g), "l_2");
  const _l_1 = finite(Math.min(_l_cp_1, _l_cp_g, _l_2), "l_1");
  const _F_t_Rd = finite(_F_nt * _A_b / _Omega_J, "F_t_Rd");
  const _M_1 = finite(_l_1 * Math.pow(_t_f, 2) * _f_yf / finite(4 * _Omega_b, "4 * Omega_b"), "M_1");
  const _M_2 = finite(_l_2 * Math.pow(_t_f, 2) * _f_yf / finite(4 * _Omega_b, "4 * Omega_b"), "M_2");
  const _F_1 = finite(4 * _M_1 / _m, "F_1");
  const _F_3 = finite(2 * _n_p * _F_t_Rd, "F_3");
  const _F_2 = finite((2 * _M_2 + _n * _F_3) / finite(_m + _n, "m + n"), "F_2");
  const _F_T_Rd = finite(Math.min(_F_1, _F_2, _F_3), "F_T_Rd");
  const _l_f = finite(2 * _e_1 + (_n_p - 1) * _p_f, "l_f");
  const _F_strip = finite(_l_f * Math.pow(_t_f, 2) * _f_yf / finite(_gamma_R * _m, "gamma_R * m"), "F_strip");
  const _F_high = finite(Math.min(_F_strip, _F_3), "F_high");
  const _F_low = finite(Math.min(finite(_l_2 / _l_f, "l_2 / l_f"), finite(_l_1 / _l_f, "l_1 / l_f")) * Math.min(finite(_F_strip / 2, "F_strip / 2"), finite(_F_3 / 2, "F_3 / 2")), "F_low");
  const _range0 = finite(_m > finite(0 * _w_f, "0 * w_f") ? 1 : 0, "range0");
  return [_N, _m, _n, _l_cp_1, _l_cp_g, _l_nc_1, _l_nc_g, _l_2, _l_1, _F_t_Rd, _M_1, _M_2, _F_1, _F_3, _F_2, _F_T_Rd, _l_f, _F_strip, _F_high, _F_low, _range0];
}

export function eyeFootBolts_partialFactors(v: Readonly<Record<"F_z" | "F_l" | "F_q" | "t_e" | "h_e" | "a_w" | "w_f" | "e" | "p_f" | "n_p" | "A_s" | "f_ub" | "alpha_v" | "gamma_M2", number>>): number[] {
  const _F_z = v.F_z;
  const _F_l = v.F_l;
  const _F_q = v.F_q;
  const _t_e = v.t_e;
  const _h_e = v.h_e;
  const _a_w = v.a_w;
  const _w_f = v.w_f;
  const _e = v.e;
  const _p_f = v.p_f;
  const _n_p = v.n_p;
  const _A_s = v.A_s;
  const _f_ub = v.f_ub;
  const _alpha_v = v.alpha_v;
  const _gamma_M2 = v.gamma_M2;
  const _N = finite(_F_z + 6 * _F_l * _h_e / finite(_p_f * (_n_p + 1), "p_f * (n_p + 1)") + 2 * _F_q * _h_e / _w_f, "N");
  const _m = finite(_w_f / 2 - _t_e / 2 - 0.8 * Math.sqrt(2) * _a_w, "m");
  const _n = finite(Math.min(_e, finite(1.25 * _m, "1.25 * m")), "n");
  const _B = finite(_N / finite(2 * _n_p, "2 * n_p") * (1 + _m / finite(2 * _n, "2 * n")), "B");
  const _F_v = finite(Math.sqrt(Math.pow(_F_l, 2) + Math.pow(_F_q, 2)) / finite(2 * _n_p, "2 * n_p"), "F_v");
  const _F_t_Rd = finite(0.9 * _f_ub * _A_s / _gamma_M2, "F_t_Rd");
  const _F_v_Rd = finite(_alpha_v * _f_ub * _A_s / _gamma_M2, "F_v_Rd");
  const _u = finite(Math.max(finite(_B / _F_t_Rd, "B / F_t_Rd"), finite(_F_v / _F_v_Rd + _B / finite(1.4 * _F_t_Rd, "1.4 * F_t_Rd"), "F_v / F_v_Rd + B / (1.4 * F_t_Rd)")), "u");
  const _u_Rd = finite(1, "u_Rd");
  const _u_low = finite(Math.sqrt(Math.pow(finite(_N / finite(2 * _n_p * _F_t_Rd, "2 * n_p * F_t_Rd"), "N / (2 * n_p * F_t_Rd)"), 2) + Math.pow(finite(_F_v / _F_v_Rd, "F_v / F_v_Rd"), 2)) / finite(Math.sqrt(2), "sqrt(2)"), "u_low");
  const _u_high = finite(_N / finite(2 * _n_p * _F_t_Rd, "2 * n_p * F_t_Rd") * (1 + _m / _n) + _F_v / _F_v_Rd, "u_high");
  const _range0 = finite(_m > finite(0 * _w_f, "0 * w_f") ? 1 : 0, "range0");
  return [_N, _m, _n, _B, _F_v, _F_t_Rd, _F_v_Rd, _u, _u_Rd, _u_low, _u_high, _range0];
}

export function eyeFootBolts_allowableStress(v: Readonly<Record<"F_z" | "F_l" | "F_q" | "t_e" | "h_e" | "a_w" | "w_f" | "e" | "p_f" | "n_p" | "A_b" | "F_nt" | "F_nv" | "Omega_J", number>>): number[] {
  const _F_z = v.F_z;
  const _F_l = v.F_l;
  const _F_q = v.F_q;
  const _t_e = v.t_e;
  const _h_e = v.h_e;
  const _a_w = v.a_w;
  const _w_f = v.w_f;
  const _e = v.e;
  const _p_f = v.p_f;
  const _n_p = v.n_p;
  const _A_b = v.A_b;
  const _F_nt = v.F_nt;
  const _F_nv = v.F_nv;
  const _Omega_J = v.Omega_J;
  const _N = finite(_F_z + 6 * _F_l * _h_e / finite(_p_f * (_n_p + 1), "p_f * (n_p + 1)") + 2 * _F_q * _h_e / _w_f, "N");
  const _m = finite(_w_f / 2 - _t_e / 2 - 0.8 * Math.sqrt(2) * _a_w, "m");
  const _n = finite(Math.min(_e, finite(1.25 * _m, "1.25 * m")), "n");
  const _B = finite(_N / finite(2 * _n_p, "2 * n_p") * (1 + _m / finite(2 * _n, "2 * n")), "B");
  const _F_v = finite(Math.sqrt(Math.pow(_F_l, 2) + Math.pow(_F_q, 2)) / finite(2 * _n_p, "2 * n_p"), "F_v");
  const _F_t_Rd = finite(_F_nt * _A_b / _Omega_J, "F_t_Rd");
  const _F_v_Rd = finite(_F_nv * _A_b / _Omega_J, "F_v_Rd");
  const _u = finite(Math.max(finite(_B / _F_t_Rd, "B / F_t_Rd"), finite(_F_v / _F_v_Rd, "F_v / F_v_Rd"), finite((_F_v / _F_v_Rd + _B / _F_t_Rd) / 1.3, "(F_v / F_v_Rd + B / F_t_Rd) / 1.3")), "u");
  const _u_Rd = finite(1, "u_Rd");
  const _u_low = finite(Math.sqrt(Math.pow(finite(_N / finite(2 * _n_p * _F_t_Rd, "2 * n_p * F_t_Rd"), "N / (2 * n_p * F_t_Rd)"), 2) + Math.pow(finite(_F_v / _F_v_Rd, "F_v / F_v_Rd"), 2)) / finite(Math.sqrt(2), "sqrt(2)"), "u_low");
  const _u_high = finite(_N / finite(2 * _n_p * _F_t_Rd, "2 * n_p * F_t_Rd") * (1 + _m / _n) + _F_v / _F_v_Rd, "u_high");
  const _range0 = finite(_m > finite(0 * _w_f, "0 * w_f") ? 1 : 0, "range0");
  return [_N, _m, _n, _B, _F_v, _F_t_Rd, _F_v_Rd, _u, _u_Rd, _u_low, _u_high, _range0];
}

export function eyeFootBoltsBySolution_partialFactors(v: Readonly<Record<"F_z" | "F_l" | "F_q" | "t_e" | "h_e" | "a_w" | "w_f" | "e" | "p_f" | "n_p" | "A_s" | "f_ub" | "alpha_v" | "gamma_M2", number>>): number[] {
  const _F_z = v.F_z;
  const _F_l = v.F_l;
  const _F_q = v.F_q;
  const _t_e = v.t_e;
  const _h_e = v.h_e;
  const _a_w = v.a_w;
  const _w_f = v.w_f;
  const _e = v.e;
  const _p_f = v.p_f;
  const _n_p = v.n_p;
  const _A_s = v.A_s;
  const _f_ub = v.f_ub;
  const _alpha_v = v.alpha_v;
  const _gamma_M2 = v.gamma_M2;
  const _N = finite(_F_z + 6 * _F_l * _h_e / finite(_p_f * (_n_p + 1), "p_f * (n_p + 1)") + 2 * _F_q * _h_e / _w_f, "N");
  const _m = finite(_w_f / 2 - _t_e / 2 - 0.8 * Math.sqrt(2) * _a_w, "m");
  const _n = finite(Math.min(_e, finite(1.25 * _m, "1.25 * m")), "n");
  const _B = finite(_N / finite(2 * _n_p, "2 * n_p") * (1 + _m / finite(2 * _n, "2 * n")), "B");
  const _F_v = finite(Math.sqrt(Math.pow(_F_l, 2) + Math.pow(_F_q, 2)) / finite(2 * _n_p, "2 * n_p"), "F_v");
  const _F_t_Rd = finite(0.9 * _f_ub * _A_s / _gamma_M2, "F_t_Rd");
  const _F_v_Rd = finite(_alpha_v * _f_ub * _A_s / _gamma_M2, "F_v_Rd");
  const _u = finite(Math.max(finite(_B / _F_t_Rd, "B / F_t_Rd"), finite(_F_v / _F_v_Rd + _B / finite(1.4 * _F_t_Rd, "1.4 * F_t_Rd"), "F_v / F_v_Rd + B / (1.4 * F_t_Rd)")), "u");
  const _u_Rd = finite(1, "u_Rd");
  const _u_low = finite(Math.sqrt(Math.pow(finite(_N / finite(2 * _n_p * _F_t_Rd, "2 * n_p * F_t_Rd"), "N / (2 * n_p * F_t_Rd)"), 2) + Math.pow(finite(_F_v / _F_v_Rd, "F_v / F_v_Rd"), 2)) / finite(Math.sqrt(2), "sqrt(2)"), "u_low");
  const _u_high = finite(_N / finite(2 * _n_p * _F_t_Rd, "2 * n_p * F_t_Rd") * (1 + _m / _n) + _F_v / _F_v_Rd, "u_high");
  const _range0 = finite(_m > finite(0 * _w_f, "0 * w_f") ? 1 : 0, "range0");
  return [_N, _m, _n, _B, _F_v, _F_t_Rd, _F_v_Rd, _u, _u_Rd, _u_low, _u_high, _range0];
}

export function eyeFootBoltsBySolution_allowableStress(v: Readonly<Record<"F_z" | "F_l" | "F_q" | "t_e" | "h_e" | "a_w" | "w_f" | "e" | "p_f" | "n_p" | "A_b" | "F_nt" | "F_nv" | "Omega_J", number>>): number[] {
  const _F_z = v.F_z;
  const _F_l = v.F_l;
  const _F_q = v.F_q;
  const _t_e = v.t_e;
  const _h_e = v.h_e;
  const _a_w = v.a_w;
  const _w_f = v.w_f;
  const _e = v.e;
  const _p_f = v.p_f;
  const _n_p = v.n_p;
  const _A_b = v.A_b;
  const _F_nt = v.F_nt;
  const _F_nv = v.F_nv;
  const _Omega_J = v.Omega_J;
  const _N = finite(_F_z + 6 * _F_l * _h_e / finite(_p_f * (_n_p + 1), "p_f * (n_p + 1)") + 2 * _F_q * _h_e / _w_f, "N");
  const _m = finite(_w_f / 2 - _t_e / 2 - 0.8 * Math.sqrt(2) * _a_w, "m");
  const _n = finite(Math.min(_e, finite(1.25 * _m, "1.25 * m")), "n");
  const _B = finite(_N / finite(2 * _n_p, "2 * n_p") * (1 + _m / finite(2 * _n, "2 * n")), "B");
  const _F_v = finite(Math.sqrt(Math.pow(_F_l, 2) + Math.pow(_F_q, 2)) / finite(2 * _n_p, "2 * n_p"), "F_v");
  const _F_t_Rd = finite(_F_nt * _A_b / _Omega_J, "F_t_Rd");
  const _F_v_Rd = finite(_F_nv * _A_b / _Omega_J, "F_v_Rd");
  const _u = finite(Math.max(finite(_B / _F_t_Rd, "B / F_t_Rd"), finite(_F_v / _F_v_Rd, "F_v / F_v_Rd"), finite((_F_v / _F_v_Rd + _B / _F_t_Rd) / 1.3, "(F_v / F_v_Rd + B / F_t_Rd) / 1.3")), "u");
  const _u_Rd = finite(1, "u_Rd");
  const _u_low = finite(Math.sqrt(Math.pow(finite(_N / finite(2 * _n_p * _F_t_Rd, "2 * n_p * F_t_Rd"), "N / (2 * n_p * F_t_Rd)"), 2) + Math.pow(finite(_F_v / _F_v_Rd, "F_v / F_v_Rd"), 2)) / finite(Math.sqrt(2), "sqrt(2)"), "u_low");
  const _u_high = finite(_N / finite(2 * _n_p * _F_t_Rd, "2 * n_p * F_t_Rd") * (1 + _m / _n) + _F_v / _F_v_Rd, "u_high");
  const _range0 = finite(_m > finite(0 * _w_f, "0 * w_f") ? 1 : 0, "range0");
  return [_N, _m, _n, _B, _F_v, _F_t_Rd, _F_v_Rd, _u, _u_Rd, _u_low, _u_high, _range0];
}

export function eyeFootWall_partialFactors(v: Readonly<Record<"F_z" | "F_l" | "F_q" | "t_e" | "h_e" | "a_w" | "w_f" | "e" | "p_f" | "n_p" | "t_0" | "f_y0" | "gamma_M0" | "gamma_R", number>>): number[] {
  const _F_z = v.F_z;
  const _F_l = v.F_l;
  const _F_q = v.F_q;
  const _t_e = v.t_e;
  const _h_e = v.h_e;
  const _a_w = v.a_w;
  const _w_f = v.w_f;
  const _e = v.e;
  const _p_f = v.p_f;
  const _n_p = v.n_p;
  const _t_0 = v.t_0;
  const _f_y0 = v.f_y0;
  const _gamma_M0 = v.gamma_M0;
  const _gamma_R = v.gamma_R;
  const _N = finite(_F_z + 6 * _F_l * _h_e / finite(_p_f * (_n_p + 1), "p_f * (n_p + 1)") + 2 * _F_q * _h_e / _w_f, "N");
  const _m = finite(_w_f / 2 - _t_e / 2 - 0.8 * Math.sqrt(2) * _a_w, "m");
  const _n = finite(Math.min(_e, finite(1.25 * _m, "1.25 * m")), "n");
  const _B = finite(_N / finite(2 * _n_p, "2 * n_p") * (1 + _m / finite(2 * _n, "2 * n")), "B");
  const _F_w_Rd = finite(Math.PI * _f_y0 * Math.pow(_t_0, 2) / _gamma_M0, "F_w_Rd");
  const _m_pl = finite(_f_y0 * Math.pow(_t_0, 2) / 4, "m_pl");
  const _R_low = finite(2 * Math.PI * _m_pl / _gamma_R, "R_low");
  const _R_high = finite(16 * _m_pl / _gamma_R, "R_high");
  const _range0 = finite(_m > finite(0 * _w_f, "0 * w_f") ? 1 : 0, "range0");
  return [_N, _m, _n, _B, _F_w_Rd, _m_pl, _R_low, _R_high, _range0];
}

export function eyeFootWall_allowableStress(v: Readonly<Record<"F_z" | "F_l" | "F_q" | "t_e" | "h_e" | "a_w" | "w_f" | "e" | "p_f" | "n_p" | "t_0" | "f_y0" | "Omega_b" | "gamma_R", number>>): number[] {
  const _F_z = v.F_z;
  const _F_l = v.F_l;
  const _F_q = v.F_q;
  const _t_e = v.t_e;
  const _h_e = v.h_e;
  const _a_w = v.a_w;
  const _w_f = v.w_f;
  const _e = v.e;
  const _p_f = v.p_f;
  const _n_p = v.n_p;
  const _t_0 = v.t_0;
  const _f_y0 = v.f_y0;
  const _Omega_b = v.Omega_b;
  const _gamma_R = v.gamma_R;
  const _N = finite(_F_z + 6 * _F_l * _h_e / finite(_p_f * (_n_p + 1), "p_f * (n_p + 1)") + 2 * _F_q * _h_e / _w_f, "N");
  const _m = finite(_w_f / 2 - _t_e / 2 - 0.8 * Math.sqrt(2) * _a_w, "m");
  const _n = finite(Math.min(_e, finite(1.25 * _m, "1.25 * m")), "n");
  const _B = finite(_N / finite(2 * _n_p, "2 * n_p") * (1 + _m / finite(2 * _n, "2 * n")), "B");
  const _F_w_Rd = finite(Math.PI * _f_y0 * Math.pow(_t_0, 2) / _Omega_b, "F_w_Rd");
  const _m_pl = finite(_f_y0 * Math.pow(_t_0, 2) / 4, "m_pl");
  const _R_low = finite(2 * Math.PI * _m_pl / _gamma_R, "R_low");
  const _R_high = finite(16 * _m_pl / _gamma_R, "R_high");
  const _range0 = finite(_m > finite(0 * _w_f, "0 * w_f") ? 1 : 0, "range0");
  return [_N, _m, _n, _B, _F_w_Rd, _m_pl, _R_low, _R_high, _range0];
}

export function eyeFootWallBySolution_partialFactors(v: Readonly<Record<"F_z" | "F_l" | "F_q" | "t_e" | "h_e" | "a_w" | "w_f" | "e" | "p_f" | "n_p" | "t_0" | "f_y0" | "gamma_M0" | "gamma_R", number>>): number[] {
  const _F_z = v.F_z;
  const _F_l = v.F_l;
  const _F_q = v.F_q;
  const _t_e = v.t_e;
  const _h_e = v.h_e;
  const _a_w = v.a_w;
  const _w_f = v.w_f;
  const _e = v.e;
  const _p_f = v.p_f;
  const _n_p = v.n_p;
  const _t_0 = v.t_0;
  const _f_y0 = v.f_y0;
  const _gamma_M0 = v.gamma_M0;
  const _gamma_R = v.gamma_R;
  const _N = finite(_F_z + 6 * _F_l * _h_e / finite(_p_f * (_n_p + 1), "p_f * (n_p + 1)") + 2 * _F_q * _h_e / _w_f, "N");
  const _m = finite(_w_f / 2 - _t_e / 2 - 0.8 * Math.sqrt(2) * _a_w, "m");
  const _n = finite(Math.min(_e, finite(1.25 * _m, "1.25 * m")), "n");
  const _B = finite(_N / finite(2 * _n_p, "2 * n_p") * (1 + _m / finite(2 * _n, "2 * n")), "B");
  const _F_w_Rd = finite(Math.PI * _f_y0 * Math.pow(_t_0, 2) / _gamma_M0, "F_w_Rd");
  const _m_pl = finite(_f_y0 * Math.pow(_t_0, 2) / 4, "m_pl");
  const _R_low = finite(2 * Math.PI * _m_pl / _gamma_R, "R_low");
  const _R_high = finite(16 * _m_pl / _gamma_R, "R_high");
  const _range0 = finite(_m > finite(0 * _w_f, "0 * w_f") ? 1 : 0, "range0");
  return [_N, _m, _n, _B, _F_w_Rd, _m_pl, _R_low, _R_high, _range0];
}

export function eyeFootWallBySolution_allowableStress(v: Readonly<Record<"F_z" | "F_l" | "F_q" | "t_e" | "h_e" | "a_w" | "w_f" | "e" | "p_f" | "n_p" | "t_0" | "f_y0" | "Omega_b" | "gamma_R", number>>): number[] {
  const _F_z = v.F_z;
  const _F_l = v.F_l;
  const _F_q = v.F_q;
  const _t_e = v.t_e;
  const _h_e = v.h_e;
  const _a_w = v.a_w;
  const _w_f = v.w_f;
  const _e = v.e;
  const _p_f = v.p_f;
  const _n_p = v.n_p;
  const _t_0 = v.t_0;
  const _f_y0 = v.f_y0;
  const _Omega_b = v.Omega_b;
  const _gamma_R = v.gamma_R;
  const _N = finite(_F_z + 6 * _F_l * _h_e / finite(_p_f * (_n_p + 1), "p_f * (n_p + 1)") + 2 * _F_q * _h_e / _w_f, "N");
  const _m = finite(_w_f / 2 - _t_e / 2 - 0.8 * Math.sqrt(2) * _a_w, "m");
  const _n = finite(Math.min(_e, finite(1.25 * _m, "1.25 * m")), "n");
  const _B = finite(_N / finite(2 * _n_p, "2 * n_p") * (1 + _m / finite(2 * _n, "2 * n")), "B");
  const _F_w_Rd = finite(Math.PI * _f_y0 * Math.pow(_t_0, 2) / _Omega_b, "F_w_Rd");
  const _m_pl = finite(_f_y0 * Math.pow(_t_0, 2) / 4, "m_pl");
  const _R_low = finite(2 * Math.PI * _m_pl / _gamma_R, "R_low");
  const _R_high = finite(16 * _m_pl / _gamma_R, "R_high");
  const _range0 = finite(_m > finite(0 * _w_f, "0 * w_f") ? 1 : 0, "range0");
  return [_N, _m, _n, _B, _F_w_Rd, _m_pl, _R_low, _R_high, _range0];
}

export function eyeTubeWall_partialFactors(v: Readonly<Record<"F_z" | "F_l" | "F_q" | "t_e" | "h_e" | "l_e" | "b_0" | "t_0" | "f_y0" | "M_0" | "W_0" | "gamma_M5", number>>): number[] {
  const _F_z = v.F_z;
  const _F_l = v.F_l;
  const _F_q = v.F_q;
  const _t_e = v.t_e;
  const _h_e = v.h_e;
  const _l_e = v.l_e;
  const _b_0 = v.b_0;
  const _t_0 = v.t_0;
  const _f_y0 = v.f_y0;
  const _M_0 = v.M_0;
  const _W_0 = v.W_0;
  const _gamma_M5 = v.gamma_M5;
  const _n = finite(_M_0 / finite(_W_0 * _f_y0, "W_0 * f_y0"), "n");
  const _k_m = finite(Math.min(1, finite(1.3 * (1 - _n), "1.3 * (1 - n)")), "k_m");
  const _f_d = finite(_k_m * _f_y0 / _gamma_M5, "f_d");
  const _N = finite(_F_z + 2 * _F_l * _h_e / _l_e + 2 * _F_q * _h_e / _t_e, "N");
  const _N_Rd = finite(_f_d * Math.pow(_t_0, 2) * (2 * _l_e / _b_0 + 4 * Math.sqrt(1 - _t_e / _b_0)), "N_Rd");
  const _N_fan = finite(Math.PI / 2 * _f_d * Math.pow(_t_0, 2), "N_fan");
  const _range0 = finite(_t_e <= finite(0.85 * _b_0, "0.85 * b_0") ? 1 : 0, "range0");
  const _range1 = finite(finite(_b_0 / _t_0, "b_0 / t_0") <= 35 ? 1 : 0, "range1");
  return [_n, _k_m, _f_d, _N, _N_Rd, _N_fan, _range0, _range1];
}

export function eyeTubeWall_allowableStress(v: Readonly<Record<"F_z" | "F_l" | "F_q" | "t_e" | "h_e" | "l_e" | "b_0" | "t_0" | "f_y0" | "M_0" | "W_0" | "Omega_b", number>>): number[] {
  const _F_z = v.F_z;
  const _F_l = v.F_l;
  const _F_q = v.F_q;
  const _t_e = v.t_e;
  const _h_e = v.h_e;
  const _l_e = v.l_e;
  const _b_0 = v.b_0;
  const _t_0 = v.t_0;
  const _f_y0 = v.f_y0;
  const _M_0 = v.M_0;
  const _W_0 = v.W_0;
  const _Omega_b = v.Omega_b;
  const _n = finite(_M_0 / finite(_W_0 * 0.6 * _f_y0, "W_0 * 0.6 * f_y0"), "n");
  const _k_m = finite(_n < 1 ? Math.sqrt(1 - Math.pow(_n, 2)) : 0, "k_m");
  const _f_d = finite(_k_m * _f_y0 / _Omega_b, "f_d");
  const _N = finite(_F_z + 2 * _F_l * _h_e / _l_e + 2 * _F_q * _h_e / _t_e, "N");
  const _N_Rd = finite(_f_d * Math.pow(_t_0, 2) * (2 * _l_e / _b_0 + 4 * Math.sqrt(1 - _t_e / _b_0)), "N_Rd");
  const _N_fan = finite(Math.PI / 2 * _f_d * Math.pow(_t_0, 2), "N_fan");
  const _range0 = finite(_t_e <= finite(0.85 * _b_0, "0.85 * b_0") ? 1 : 0, "range0");
  const _range1 = finite(finite(_b_0 / _t_0, "b_0 / t_0") <= 35 ? 1 : 0, "range1");
  return [_n, _k_m, _f_d, _N, _N_Rd, _N_fan, _range0, _range1];
}

export function eyeTubeWallBySolution_partialFactors(v: Readonly<Record<"F_z" | "F_l" | "F_q" | "t_e" | "h_e" | "l_e" | "b_0" | "t_0" | "f_y0" | "M_0" | "W_0" | "gamma_M5", number>>): number[] {
  const _F_z = v.F_z;
  const _F_l = v.F_l;
  const _F_q = v.F_q;
  const _t_e = v.t_e;
  const _h_e = v.h_e;
  const _l_e = v.l_e;
  const _b_0 = v.b_0;
  const _t_0 = v.t_0;
  const _f_y0 = v.f_y0;
  const _M_0 = v.M_0;
  const _W_0 = v.W_0;
  const _gamma_M5 = v.gamma_M5;
  const _n = finite(_M_0 / finite(_W_0 * _f_y0, "W_0 * f_y0"), "n");
  const _k_m = finite(Math.min(1, finite(1.3 * (1 - _n), "1.3 * (1 - n)")), "k_m");
  const _f_d = finite(_k_m * _f_y0 / _gamma_M5, "f_d");
  const _N = finite(_F_z + 2 * _F_l * _h_e / _l_e + 2 * _F_q * _h_e / _t_e, "N");
  const _N_Rd = finite(_f_d * Math.pow(_t_0, 2) * (2 * _l_e / _b_0 + 4 * Math.sqrt(1 - _t_e / _b_0)), "N_Rd");
  const _N_fan = finite(Math.PI / 2 * _f_d * Math.pow(_t_0, 2), "N_fan");
  const _range0 = finite(_t_e <= finite(0.85 * _b_0, "0.85 * b_0") ? 1 : 0, "range0");
  const _range1 = finite(finite(_b_0 / _t_0, "b_0 / t_0") <= 35 ? 1 : 0, "range1");
  return [_n, _k_m, _f_d, _N, _N_Rd, _N_fan, _range0, _range1];
}

export function eyeTubeWallBySolution_allowableStress(v: Readonly<Record<"F_z" | "F_l" | "F_q" | "t_e" | "h_e" | "l_e" | "b_0" | "t_0" | "f_y0" | "M_0" | "W_0" | "Omega_b", number>>): number[] {
  const _F_z = v.F_z;
  const _F_l = v.F_l;
  const _F_q = v.F_q;
  const _t_e = v.t_e;
  const _h_e = v.h_e;
  const _l_e = v.l_e;
  const _b_0 = v.b_0;
  const _t_0 = v.t_0;
  const _f_y0 = v.f_y0;
  const _M_0 = v.M_0;
  const _W_0 = v.W_0;
  const _Omega_b = v.Omega_b;
  const _n = finite(_M_0 / finite(_W_0 * 0.6 * _f_y0, "W_0 * 0.6 * f_y0"), "n");
  const _k_m = finite(_n < 1 ? Math.sqrt(1 - Math.pow(_n, 2)) : 0, "k_m");
  const _f_d = finite(_k_m * _f_y0 / _Omega_b, "f_d");
  const _N = finite(_F_z + 2 * _F_l * _h_e / _l_e + 2 * _F_q * _h_e / _t_e, "N");
  const _N_Rd = finite(_f_d * Math.pow(_t_0, 2) * (2 * _l_e / _b_0 + 4 * Math.sqrt(1 - _t_e / _b_0)), "N_Rd");
  const _N_fan = finite(Math.PI / 2 * _f_d * Math.pow(_t_0, 2), "N_fan");
  const _range0 = finite(_t_e <= finite(0.85 * _b_0, "0.85 * b_0") ? 1 : 0, "range0");
  const _range1 = finite(finite(_b_0 / _t_0, "b_0 / t_0") <= 35 ? 1 : 0, "range1");
  return [_n, _k_m, _f_d, _N, _N_Rd, _N_fan, _range0, _range1];
}

export function suspensionSlack_partialFactors(v: Readonly<Record<"F" | "gamma_F" | "W" | "W_flooded" | "W_sealed" | "W_off" | "i_W" | "k_slack", number>>): number[] {
  const _F = v.F;
  const _gamma_F = v.gamma_F;
  const _W = v.W;
  const _W_flooded = v.W_flooded;
  const _W_sealed = v.W_sealed;
  const _W_off = v.W_off;
  const _i_W = v.i_W;
  const _k_slack = v.k_slack;
  const _F_up = finite(_F / _gamma_F, "F_up");
  const _W_Rd = finite((1 - _i_W) * _k_slack * _W, "W_Rd");
  const _W_low = finite(_W_sealed - _W_off, "W_low");
  const _W_high = finite(_W_flooded, "W_high");
  return [_F_up, _W_Rd, _W_low, _W_high];
}

export function suspensionSlack_allowableStress(v: Readonly<Record<"F" | "gamma_F" | "W" | "W_flooded" | "W_sealed" | "W_off" | "i_W" | "k_slack", number>>): number[] {
  const _F = v.F;
  const _gamma_F = v.gamma_F;
  const _W = v.W;
  const _W_flooded = v.W_flooded;
  const _W_sealed = v.W_sealed;
  const _W_off = v.W_off;
  const _i_W = v.i_W;
  const _k_slack = v.k_slack;
  const _F_up = finite(_F / _gamma_F, "F_up");
  const _W_Rd = finite((1 - _i_W) * _k_slack * _W, "W_Rd");
  const _W_low = finite(_W_sealed - _W_off, "W_low");
  const _W_high = finite(_W_flooded, "W_high");
  return [_F_up, _W_Rd, _W_low, _W_high];
}

export function hangingStability_partialFactors(v: Readonly<Record<"phi_air" | "phi_water" | "phi_open" | "e" | "h_G" | "phi_lim", number>>): number[] {
  const _phi_air = v.phi_air;
  const _phi_water = v.phi_water;
  const _phi_open = v.phi_open;
  const _e = v.e;
  const _h_G = v.h_G;
  const _phi_lim = v.phi_lim;
  const _phi = finite(Math.max(_phi_air, _phi_water), "phi");
  const _k_open = finite(_phi_open / _phi_lim, "k_open");
  const _phi_high = finite(Math.atan2(_e, _h_G), "phi_high");
  return [_phi, _k_open, _phi_high];
}

export function hangingStability_allowableStress(v: Readonly<Record<"phi_air" | "phi_water" | "phi_open" | "e" | "h_G" | "phi_lim", number>>): number[] {
  const _phi_air = v.phi_air;
  const _phi_water = v.phi_water;
  const _phi_open = v.phi_open;
  const _e = v.e;
  const _h_G = v.h_G;
  const _phi_lim = v.phi_lim;
  const _phi = finite(Math.max(_phi_air, _phi_water), "phi");
  const _k_open = finite(_phi_open / _phi_lim, "k_open");
  const _phi_high = finite(Math.atan2(_e, _h_G), "phi_high");
  return [_phi, _k_open, _phi_high];
}

export function liftAFrame_partialFactors(v: Readonly<Record<"W" | "F_A", number>>): number[] {
  const _W = v.W;
  const _F_A = v.F_A;
  const _F_max = finite(_F_A, "F_max");
  const _F_low = finite(_W, "F_low");
  return [_F_max, _F_low];
}

export function liftAFrame_allowableStress(v: Readonly<Record<"W" | "F_A", number>>): number[] {
  const _W = v.W;
  const _F_A = v.F_A;
  const _F_max = finite(_F_A, "F_max");
  const _F_low = finite(_W, "F_low");
  return [_F_max, _F_low];
}

export function liftWinch_partialFactors(v: Readonly<Record<"W" | "F_w", number>>): number[] {
  const _W = v.W;
  const _F_w = v.F_w;
  const _F_max = finite(_F_w, "F_max");
  const _F_low = finite(_W, "F_low");
  return [_F_max, _F_low];
}

export function liftWinch_allowableStress(v: Readonly<Record<"W" | "F_w", number>>): number[] {
  const _W = v.W;
  const _F_w = v.F_w;
  const _F_max = finite(_F_w, "F_max");
  const _F_low = finite(_W, "F_low");
  return [_F_max, _F_low];
}

export function liftLine_partialFactors(v: Readonly<Record<"W" | "F_br" | "k_d", number>>): number[] {
  const _W = v.W;
  const _F_br = v.F_br;
  const _k_d = v.k_d;
  const _F_max = finite(_F_br / _k_d, "F_max");
  const _F_low = finite(_W, "F_low");
  return [_F_max, _F_low];
}

export function liftLine_allowableStress(v: Readonly<Record<"W" | "F_br" | "k_d", number>>): number[] {
  const _W = v.W;
  const _F_br = v.F_br;
  const _k_d = v.k_d;
  const _F_max = finite(_F_br / _k_d, "F_max");
  const _F_low = finite(_W, "F_low");
  return [_F_max, _F_low];
}

export function liftSling_partialFactors(v: Readonly<Record<"F_h" | "k_leg" | "k_SKL" | "n" | "F_br" | "g_f" | "g_c" | "g_w" | "g_m" | "g_r" | "k_min", number>>): number[] {
  const _F_h = v.F_h;
  const _k_leg = v.k_leg;
  const _k_SKL = v.k_SKL;
  const _n = v.n;
  const _F_br = v.F_br;
  const _g_f = v.g_f;
  const _g_c = v.g_c;
  const _g_w = v.g_w;
  const _g_m = v.g_m;
  const _g_r = v.g_r;
  const _k_min = v.k_min;
  const _F_s = finite(_F_h * _k_leg * _k_SKL, "F_s");
  const _k_s = finite(Math.max(finite(_g_f * _g_c * _g_r * _g_w * _g_m, "g_f * g_c * g_r * g_w * g_m"), finite(_k_min * _g_r * _g_w, "k_min * g_r * g_w")), "k_s");
  const _F_max = finite(_F_br / _k_s, "F_max");
  const _F_low = finite(_F_h / _n, "F_low");
  const _F_high = finite(2 * _F_h, "F_high");
  return [_F_s, _k_s, _F_max, _F_low, _F_high];
}

export function liftSling_allowableStress(v: Readonly<Record<"F_h" | "k_leg" | "k_SKL" | "n" | "F_br" | "g_f" | "g_c" | "g_w" | "g_m" | "g_r" | "k_min", number>>): number[] {
  const _F_h = v.F_h;
  const _k_leg = v.k_leg;
  const _k_SKL = v.k_SKL;
  const _n = v.n;
  const _F_br = v.F_br;
  const _g_f = v.g_f;
  const _g_c = v.g_c;
  const _g_w = v.g_w;
  const _g_m = v.g_m;
  const _g_r = v.g_r;
  const _k_min = v.k_min;
  const _F_s = finite(_F_h * _k_leg * _k_SKL, "F_s");
  const _k_s = finite(Math.max(finite(_g_f * _g_c * _g_r * _g_w * _g_m, "g_f * g_c * g_r * g_w * g_m"), finite(_k_min * _g_r * _g_w, "k_min * g_r * g_w")), "k_s");
  const _F_max = finite(_F_br / _k_s, "F_max");
  const _F_low = finite(_F_h / _n, "F_low");
  const _F_high = finite(2 * _F_h, "F_high");
  return [_F_s, _k_s, _F_max, _F_low, _F_high];
}

export function liftShackle_partialFactors(v: Readonly<Record<"F_h" | "k_leg" | "k_SKL" | "n" | "WLL", number>>): number[] {
  const _F_h = v.F_h;
  const _k_leg = v.k_leg;
  const _k_SKL = v.k_SKL;
  const _n = v.n;
  const _WLL = v.WLL;
  const _F_s = finite(_F_h * _k_leg * _k_SKL, "F_s");
  const _F_max = finite(_WLL, "F_max");
  const _F_low = finite(_F_h / _n, "F_low");
  return [_F_s, _F_max, _F_low];
}

export function liftShackle_allowableStress(v: Readonly<Record<"F_h" | "k_leg" | "k_SKL" | "n" | "WLL", number>>): number[] {
  const _F_h = v.F_h;
  const _k_leg = v.k_leg;
  const _k_SKL = v.k_SKL;
  const _n = v.n;
  const _WLL = v.WLL;
  const _F_s = finite(_F_h * _k_leg * _k_SKL, "F_s");
  const _F_max = finite(_WLL, "F_max");
  const _F_low = finite(_F_h / _n, "F_low");
  return [_F_s, _F_max, _F_low];
}

export function liftSlack_partialFactors(v: Readonly<Record<"F_st" | "F_all" | "k_slack", number>>): number[] {
  const _F_st = v.F_st;
  const _F_all = v.F_all;
  const _k_slack = v.k_slack;
  const _F_max = finite(_k_slack * _F_st, "F_max");
  const _F_high = finite(_F_all, "F_high");
  return [_F_max, _F_high];
}

export function liftSlack_allowableStress(v: Readonly<Record<"F_st" | "F_all" | "k_slack", number>>): number[] {
  const _F_st = v.F_st;
  const _F_all = v.F_all;
  const _k_slack = v.k_slack;
  const _F_max = finite(_k_slack * _F_st, "F_max");
  const _F_high = finite(_F_all, "F_high");
  return [_F_max, _F_high];
}

export function liftLoweringSpeed_partialFactors(v: Readonly<Record<"v_c" | "v_t" | "W_w" | "rho" | "C_D" | "A_p" | "C_s" | "k_v", number>>): number[] {
  const _v_c = v.v_c;
  const _v_t = v.v_t;
  const _W_w = v.W_w;
  const _rho = v.rho;
  const _C_D = v.C_D;
  const _A_p = v.A_p;
  const _C_s = v.C_s;
  const _k_v = v.k_v;
  const _v = finite(_v_c + _v_t, "v");
  const _v_s = finite(Math.sqrt(2 * _W_w / finite(_rho * _C_D * _A_p, "rho * C_D * A_p")), "v_s");
  const _v_max = finite(_k_v * _v_s, "v_max");
  const _v_low = finite(Math.sqrt(_W_w / finite(_rho * _C_D * _A_p, "rho * C_D * A_p")), "v_low");
  const _v_high = finite(Math.sqrt(2 * _W_w / finite(_rho * 0.75 * Math.min(_C_s, _C_D) * _A_p, "rho * 0.75 * min(C_s, C_D) * A_p")), "v_high");
  return [_v, _v_s, _v_max, _v_low, _v_high];
}

export function liftLoweringSpeed_allowableStress(v: Readonly<Record<"v_c" | "v_t" | "W_w" | "rho" | "C_D" | "A_p" | "C_s" | "k_v", number>>): number[] {
  const _v_c = v.v_c;
  const _v_t = v.v_t;
  const _W_w = v.W_w;
  const _rho = v.rho;
  const _C_D = v.C_D;
  const _A_p = v.A_p;
  const _C_s = v.C_s;
  const _k_v = v.k_v;
  const _v = finite(_v_c + _v_t, "v");
  const _v_s = finite(Math.sqrt(2 * _W_w / finite(_rho * _C_D * _A_p, "rho * C_D * A_p")), "v_s");
  const _v_max = finite(_k_v * _v_s, "v_max");
  const _v_low = finite(Math.sqrt(_W_w / finite(_rho * _C_D * _A_p, "rho * C_D * A_p")), "v_low");
  const _v_high = finite(Math.sqrt(2 * _W_w / finite(_rho * 0.75 * Math.min(_C_s, _C_D) * _A_p, "rho * 0.75 * min(C_s, C_D) * A_p")), "v_high");
  return [_v, _v_s, _v_max, _v_low, _v_high];
}

export function liftDrain_partialFactors(v: Readonly<Record<"A" | "h_0" | "a_h" | "C_d" | "g" | "t_max", number>>): number[] {
  const _A = v.A;
  const _h_0 = v.h_0;
  const _a_h = v.a_h;
  const _C_d = v.C_d;
  const _g = v.g;
  const _t_max = v.t_max;
  const _t = finite(2 * _A * Math.sqrt(_h_0) / finite(_C_d * _a_h * Math.sqrt(2 * _g), "C_d * a_h * sqrt(2 * g)"), "t");
  const _t_w = finite(_t_max, "t_w");
  const _t_low = finite(_A * _h_0 / finite(_C_d * _a_h * Math.sqrt(2 * _g * _h_0), "C_d * a_h * sqrt(2 * g * h_0)"), "t_low");
  const _t_high = finite(_A * _h_0 / finite(_C_d * _a_h * Math.sqrt(2 * _g * _h_0 / 10), "C_d * a_h * sqrt(2 * g * h_0 / 10)"), "t_high");
  return [_t, _t_w, _t_low, _t_high];
}

export function liftDrain_allowableStress(v: Readonly<Record<"A" | "h_0" | "a_h" | "C_d" | "g" | "t_max", number>>): number[] {
  const _A = v.A;
  const _h_0 = v.h_0;
  const _a_h = v.a_h;
  const _C_d = v.C_d;
  const _g = v.g;
  const _t_max = v.t_max;
  const _t = finite(2 * _A * Math.sqrt(_h_0) / finite(_C_d * _a_h * Math.sqrt(2 * _g), "C_d * a_h * sqrt(2 * g)"), "t");
  const _t_w = finite(_t_max, "t_w");
  const _t_low = finite(_A * _h_0 / finite(_C_d * _a_h * Math.sqrt(2 * _g * _h_0), "C_d * a_h * sqrt(2 * g * h_0)"), "t_low");
  const _t_high = finite(_A * _h_0 / finite(_C_d * _a_h * Math.sqrt(2 * _g * _h_0 / 10), "C_d * a_h * sqrt(2 * g * h_0 / 10)"), "t_high");
  return [_t, _t_w, _t_low, _t_high];
}

export function recoveryRope_partialFactors(v: Readonly<Record<"F_br" | "k_sp" | "k_be" | "k_we" | "k_wet" | "k_age" | "k_d", number>>): number[] {
  const _F_br = v.F_br;
  const _k_sp = v.k_sp;
  const _k_be = v.k_be;
  const _k_we = v.k_we;
  const _k_wet = v.k_wet;
  const _k_age = v.k_age;
  const _k_d = v.k_d;
  const _F_left = finite(_F_br * Math.min(_k_sp, _k_be) * _k_we * _k_wet * _k_age, "F_left");
  const _F_max = finite(_F_left / _k_d, "F_max");
  const _F_low = finite(_F_br * _k_sp * _k_be * _k_we * _k_wet * _k_age, "F_low");
  const _F_high = finite(_F_br * _k_sp, "F_high");
  return [_F_left, _F_max, _F_low, _F_high];
}

export function recoveryRope_allowableStress(v: Readonly<Record<"F_br" | "k_sp" | "k_be" | "k_we" | "k_wet" | "k_age" | "k_d", number>>): number[] {
  const _F_br = v.F_br;
  const _k_sp = v.k_sp;
  const _k_be = v.k_be;
  const _k_we = v.k_we;
  const _k_wet = v.k_wet;
  const _k_age = v.k_age;
  const _k_d = v.k_d;
  const _F_left = finite(_F_br * Math.min(_k_sp, _k_be) * _k_we * _k_wet * _k_age, "F_left");
  const _F_max = finite(_F_left / _k_d, "F_max");
  const _F_low = finite(_F_br * _k_sp * _k_be * _k_we * _k_wet * _k_age, "F_low");
  const _F_high = finite(_F_br * _k_sp, "F_high");
  return [_F_left, _F_max, _F_low, _F_high];
}

export function recoveryFloatReserve_partialFactors(v: Readonly<Record<"rho" | "g" | "V" | "m" | "z" | "z_r" | "c" | "u" | "F_gr" | "F_c" | "F_ro" | "F_sn", number>>): number[] {
  const _rho = v.rho;
  const _g = v.g;
  const _V = v.V;
  const _m = v.m;
  const _z = v.z;
  const _z_r = v.z_r;
  const _c = v.c;
  const _u = v.u;
  const _F_gr = v.F_gr;
  const _F_c = v.F_c;
  const _F_ro = v.F_ro;
  const _F_sn = v.F_sn;
  const _F = finite(_F_gr + _F_c + _F_ro + _F_sn, "F");
  const _B = finite(_g * (_rho * _V * (1 - _c * _z / _z_r) * (1 - _u) - _m), "B");
  const _B_low = finite(_g * (_rho * _V * (1 - _c - _u) - _m), "B_low");
  const _B_high = finite(_g * (_rho * _V - _m), "B_high");
  const _range0 = finite(_z <= _z_r ? 1 : 0, "range0");
  return [_F, _B, _B_low, _B_high, _range0];
}

export function recoveryFloatReserve_allowableStress(v: Readonly<Record<"rho" | "g" | "V" | "m" | "z" | "z_r" | "c" | "u" | "F_gr" | "F_c" | "F_ro" | "F_sn", number>>): number[] {
  const _rho = v.rho;
  const _g = v.g;
  const _V = v.V;
  const _m = v.m;
  const _z = v.z;
  const _z_r = v.z_r;
  const _c = v.c;
  const _u = v.u;
  const _F_gr = v.F_gr;
  const _F_c = v.F_c;
  const _F_ro = v.F_ro;
  const _F_sn = v.F_sn;
  const _F = finite(_F_gr + _F_c + _F_ro + _F_sn, "F");
  const _B = finite(_g * (_rho * _V * (1 - _c * _z / _z_r) * (1 - _u) - _m), "B");
  const _B_low = finite(_g * (_rho * _V * (1 - _c - _u) - _m), "B_low");
  const _B_high = finite(_g * (_rho * _V - _m), "B_high");
  const _range0 = finite(_z <= _z_r ? 1 : 0, "range0");
  return [_F, _B, _B_low, _B_high, _range0];
}

export function recoveryFloatVisible_partialFactors(v: Readonly<Record<"rho" | "g" | "V" | "m" | "u" | "p" | "F_gr" | "F_c" | "F_ro", number>>): number[] {
  const _rho = v.rho;
  const _g = v.g;
  const _V = v.V;
  const _m = v.m;
  const _u = v.u;
  const _p = v.p;
  const _F_gr = v.F_gr;
  const _F_c = v.F_c;
  const _F_ro = v.F_ro;
  const _F = finite(_p * _rho * _V * _g + _F_gr + _F_c + _F_ro, "F");
  const _B = finite(_g * (_rho * _V * (1 - _u) - _m), "B");
  const _B_high = finite(_g * (_rho * _V - _m), "B_high");
  return [_F, _B, _B_high];
}

export function recoveryFloatVisible_allowableStress(v: Readonly<Record<"rho" | "g" | "V" | "m" | "u" | "p" | "F_gr" | "F_c" | "F_ro", number>>): number[] {
  const _rho = v.rho;
  const _g = v.g;
  const _V = v.V;
  const _m = v.m;
  const _u = v.u;
  const _p = v.p;
  const _F_gr = v.F_gr;
  const _F_c = v.F_c;
  const _F_ro = v.F_ro;
  const _F = finite(_p * _rho * _V * _g + _F_gr + _F_c + _F_ro, "F");
  const _B = finite(_g * (_rho * _V * (1 - _u) - _m), "B");
  const _B_high = finite(_g * (_rho * _V - _m), "B_high");
  return [_F, _B, _B_high];
}

export function recoveryFloatDepth_partialFactors(v: Readonly<Record<"z_r" | "z_c" | "k_c", number>>): number[] {
  const _z_r = v.z_r;
  const _z_c = v.z_c;
  const _k_c = v.k_c;
  const _z_max = finite(Math.min(_z_r, finite(_z_c / _k_c, "z_c / k_c")), "z_max");
  const _z_high = finite(_z_c, "z_high");
  return [_z_max, _z_high];
}

export function recoveryFloatDepth_allowableStress(v: Readonly<Record<"z_r" | "z_c" | "k_c", number>>): number[] {
  const _z_r = v.z_r;
  const _z_c = v.z_c;
  const _k_c = v.k_c;
  const _z_max = finite(Math.min(_z_r, finite(_z_c / _k_c, "z_c / k_c")), "z_max");
  const _z_high = finite(_z_c, "z_high");
  return [_z_max, _z_high];
}

export function recoveryReleaseLoad_partialFactors(v: Readonly<Record<"F_0" | "k_w" | "F_r", number>>): number[] {
  const _F_0 = v.F_0;
  const _k_w = v.k_w;
  const _F_r = v.F_r;
  const _F = finite(_F_0 * _k_w, "F");
  const _F_max = finite(_F_r, "F_max");
  const _F_low = finite(_F_0, "F_low");
  return [_F, _F_max, _F_low];
}

export function recoveryReleaseLoad_allowableStress(v: Readonly<Record<"F_0" | "k_w" | "F_r", number>>): number[] {
  const _F_0 = v.F_0;
  const _k_w = v.k_w;
  const _F_r = v.F_r;
  const _F = finite(_F_0 * _k_w, "F");
  const _F_max = finite(_F_r, "F_max");
  const _F_low = finite(_F_0, "F_low");
  return [_F, _F_max, _F_low];
}

export function recoveryReleaseLeastPull_partialFactors(v: Readonly<Record<"F_0" | "k_l" | "B" | "F_gr", number>>): number[] {
  const _F_0 = v.F_0;
  const _k_l = v.k_l;
  const _B = v.B;
  const _F_gr = v.F_gr;
  const _F = finite(_F_0 * _k_l, "F");
  const _F_there = finite(_B - _F_gr, "F_there");
  const _F_high = finite(_B, "F_high");
  return [_F, _F_there, _F_high];
}

export function recoveryReleaseLeastPull_allowableStress(v: Readonly<Record<"F_0" | "k_l" | "B" | "F_gr", number>>): number[] {
  const _F_0 = v.F_0;
  const _k_l = v.k_l;
  const _B = v.B;
  const _F_gr = v.F_gr;
  const _F = finite(_F_0 * _k_l, "F");
  const _F_there = finite(_B - _F_gr, "F_there");
  const _F_high = finite(_B, "F_high");
  return [_F, _F_there, _F_high];
}

export function recoveryReleaseEndurance_partialFactors(v: Readonly<Record<"T_d" | "k_t" | "T_b", number>>): number[] {
  const _T_d = v.T_d;
  const _k_t = v.k_t;
  const _T_b = v.T_b;
  const _T_need = finite(_T_d * _k_t, "T_need");
  const _T_there = finite(_T_b, "T_there");
  const _T_low = finite(_T_d, "T_low");
  return [_T_need, _T_there, _T_low];
}

export function recoveryReleaseEndurance_allowableStress(v: Readonly<Record<"T_d" | "k_t" | "T_b", number>>): number[] {
  const _T_d = v.T_d;
  const _k_t = v.k_t;
  const _T_b = v.T_b;
  const _T_need = finite(_T_d * _k_t, "T_need");
  const _T_there = finite(_T_b, "T_there");
  const _T_low = finite(_T_d, "T_low");
  return [_T_need, _T_there, _T_low];
}

export function recoveryAcoustic_partialFactors(v: Readonly<Record<"r" | "r_1" | "alpha" | "alpha_s" | "SL" | "N_1" | "B_w" | "B_1" | "DT", number>>): number[] {
  const _r = v.r;
  const _r_1 = v.r_1;
  const _alpha = v.alpha;
  const _alpha_s = v.alpha_s;
  const _SL = v.SL;
  const _N_1 = v.N_1;
  const _B_w = v.B_w;
  const _B_1 = v.B_1;
  const _DT = v.DT;
  const _TL = finite(20 * Math.log(_r / _r_1) / finite(Math.log(10), "log(10)") + _alpha * _r, "TL");
  const _NL = finite(_N_1 + 10 * Math.log(_B_w / _B_1) / finite(Math.log(10), "log(10)"), "NL");
  const _L_need = finite(_TL + _NL + _DT, "L_need");
  const _L_there = finite(_SL, "L_there");
  const _TL_low = finite(20 * Math.log(_r / _r_1) / finite(Math.log(10), "log(10)") + 0.8 * _alpha_s * _r, "TL_low");
  const _TL_high = finite(20 * Math.log(_r / _r_1) / finite(Math.log(10), "log(10)") + 1.2 * _alpha_s * _r, "TL_high");
  return [_TL, _NL, _L_need, _L_there, _TL_low, _TL_high];
}

export function recoveryAcoustic_allowableStress(v: Readonly<Record<"r" | "r_1" | "alpha" | "alpha_s" | "SL" | "N_1" | "B_w" | "B_1" | "DT", number>>): number[] {
  const _r = v.r;
  const _r_1 = v.r_1;
  const _alpha = v.alpha;
  const _alpha_s = v.alpha_s;
  const _SL = v.SL;
  const _N_1 = v.N_1;
  const _B_w = v.B_w;
  const _B_1 = v.B_1;
  const _DT = v.DT;
  const _TL = finite(20 * Math.log(_r / _r_1) / finite(Math.log(10), "log(10)") + _alpha * _r, "TL");
  const _NL = finite(_N_1 + 10 * Math.log(_B_w / _B_1) / finite(Math.log(10), "log(10)"), "NL");
  const _L_need = finite(_TL + _NL + _DT, "L_need");
  const _L_there = finite(_SL, "L_there");
  const _TL_low = finite(20 * Math.log(_r / _r_1) / finite(Math.log(10), "log(10)") + 0.8 * _alpha_s * _r, "TL_low");
  const _TL_high = finite(20 * Math.log(_r / _r_1) / finite(Math.log(10), "log(10)") + 1.2 * _alpha_s * _r, "TL_high");
  return [_TL, _NL, _L_need, _L_there, _TL_low, _TL_high];
}

export function recoveryCanister_partialFactors(v: Readonly<Record<"d" | "L" | "k_p" | "D" | "D_c" | "h_c" | "H" | "k_hex", number>>): number[] {
  const _d = v.d;
  const _L = v.L;
  const _k_p = v.k_p;
  const _D = v.D;
  const _D_c = v.D_c;
  const _h_c = v.h_c;
  const _H = v.H;
  const _k_hex = v.k_hex;
  const _V_s = finite(Math.PI * Math.pow(_d, 2) * _L / finite(4 * _k_p, "4 * k_p"), "V_s");
  const _h = finite(_V_s / finite(Math.PI / 4 * (Math.pow(_D, 2) - Math.pow(_D_c, 2)), "pi / 4 * (D ^ 2 - D_c ^ 2)") + _h_c, "h");
  const _h_max = finite(_H, "h_max");
  const _V_low = finite(Math.PI * Math.pow(_d, 2) * _L / finite(4 * _k_hex, "4 * k_hex"), "V_low");
  const _range0 = finite(_D > _D_c ? 1 : 0, "range0");
  return [_V_s, _h, _h_max, _V_low, _range0];
}

export function recoveryCanister_allowableStress(v: Readonly<Record<"d" | "L" | "k_p" | "D" | "D_c" | "h_c" | "H" | "k_hex", number>>): number[] {
  const _d = v.d;
  const _L = v.L;
  const _k_p = v.k_p;
  const _D = v.D;
  const _D_c = v.D_c;
  const _h_c = v.h_c;
  const _H = v.H;
  const _k_hex = v.k_hex;
  const _V_s = finite(Math.PI * Math.pow(_d, 2) * _L / finite(4 * _k_p, "4 * k_p"), "V_s");
  const _h = finite(_V_s / finite(Math.PI / 4 * (Math.pow(_D, 2) - Math.pow(_D_c, 2)), "pi / 4 * (D ^ 2 - D_c ^ 2)") + _h_c, "h");
  const _h_max = finite(_H, "h_max");
  const _V_low = finite(Math.PI * Math.pow(_d, 2) * _L / finite(4 * _k_hex, "4 * k_hex"), "V_low");
  const _range0 = finite(_D > _D_c ? 1 : 0, "range0");
  return [_V_s, _h, _h_max, _V_low, _range0];
}

export function recoveryCanisterBolts_partialFactors(v: Readonly<Record<"m_c" | "a_c" | "g" | "F_f" | "H" | "D_b" | "n" | "A_s" | "f_ub" | "gamma_F" | "gamma_M2", number>>): number[] {
  const _m_c = v.m_c;
  const _a_c = v.a_c;
  const _g = v.g;
  const _F_f = v.F_f;
  const _H = v.H;
  const _D_b = v.D_b;
  const _n = v.n;
  const _A_s = v.A_s;
  const _f_ub = v.f_ub;
  const _gamma_F = v.gamma_F;
  const _gamma_M2 = v.gamma_M2;
  const _F_h = finite(_gamma_F * _m_c * _a_c * _g, "F_h");
  const _F_u = finite(_gamma_F * (_m_c * _a_c * _g + _F_f), "F_u");
  const _F_t = finite(_F_u / _n + 4 * _F_h * _H / finite(_n * _D_b, "n * D_b"), "F_t");
  const _F_v = finite(_F_h / _n, "F_v");
  const _F_t_Rd = finite(0.9 * _f_ub * _A_s / _gamma_M2, "F_t_Rd");
  const _F_v_Rd = finite(0.5 * _f_ub * _A_s / _gamma_M2, "F_v_Rd");
  const _u = finite(Math.max(finite(_F_v / _F_v_Rd + _F_t / finite(1.4 * _F_t_Rd, "1.4 * F_t_Rd"), "F_v / F_v_Rd + F_t / (1.4 * F_t_Rd)"), finite(_F_t / _F_t_Rd, "F_t / F_t_Rd")), "u");
  const _u_low = finite(_F_h / finite(_n * 0.65 * _f_ub * _A_s, "n * 0.65 * f_ub * A_s"), "u_low");
  const _u_high = finite((_F_u + _F_h * (1 + 4 * _H / _D_b)) / finite(0.2 * _f_ub * _A_s, "0.2 * f_ub * A_s"), "u_high");
  const _range0 = finite(_n >= 3 ? 1 : 0, "range0");
  return [_F_h, _F_u, _F_t, _F_v, _F_t_Rd, _F_v_Rd, _u, _u_low, _u_high, _range0];
}

export function recoveryCanisterBolts_allowableStress(v: Readonly<Record<"m_c" | "a_c" | "g" | "F_f" | "H" | "D_b" | "n" | "A_s" | "A_b" | "f_ub" | "gamma_F" | "Omega_J", number>>): number[] {
  const _m_c = v.m_c;
  const _a_c = v.a_c;
  const _g = v.g;
  const _F_f = v.F_f;
  const _H = v.H;
  const _D_b = v.D_b;
  const _n = v.n;
  const _A_s = v.A_s;
  const _A_b = v.A_b;
  const _f_ub = v.f_ub;
  const _gamma_F = v.gamma_F;
  const _Omega_J = v.Omega_J;
  const _F_h = finite(_m_c * _a_c * _g, "F_h");
  const _F_u = finite(_m_c * _a_c * _g + _F_f, "F_u");
  const _F_t = finite(_gamma_F / 1.5 * (_F_u / _n + 4 * _F_h * _H / finite(_n * _D_b, "n * D_b")), "F_t");
  const _F_v = finite(_gamma_F / 1.5 * _F_h / _n, "F_v");
  const _F_t_Rd = finite(0.75 * _f_ub * _A_b / _Omega_J, "F_t_Rd");
  const _F_v_Rd = finite(0.45 * _f_ub * _A_b / _Omega_J, "F_v_Rd");
  const _u = finite(Math.max(finite((_F_v / _F_v_Rd + _F_t / _F_t_Rd) / 1.3, "(F_v / F_v_Rd + F_t / F_t_Rd) / 1.3"), finite(_F_t / _F_t_Rd, "F_t / F_t_Rd")), "u");
  const _u_low = finite(_F_h / finite(_n * 0.65 * _f_ub * _A_s, "n * 0.65 * f_ub * A_s"), "u_low");
  const _u_high = finite((_F_u + _F_h * (1 + 4 * _H / _D_b)) / finite(0.2 * _f_ub * _A_s, "0.2 * f_ub * A_s"), "u_high");
  const _range0 = finite(_n >= 3 ? 1 : 0, "range0");
  return [_F_h, _F_u, _F_t, _F_v, _F_t_Rd, _F_v_Rd, _u, _u_low, _u_high, _range0];
}

export function panelBucklingByHand_partialFactors(v: Readonly<Record<"M_0" | "N_0" | "T_0" | "A_0" | "I_0" | "J_0" | "e_0" | "M_1" | "N_1" | "T_1" | "A_1" | "I_1" | "J_1" | "e_1" | "a" | "b" | "four" | "t" | "E" | "nu" | "f_y" | "gamma_M1", number>>): number[] {
  const _M_0 = v.M_0;
  const _N_0 = v.N_0;
  const _T_0 = v.T_0;
  const _A_0 = v.A_0;
  const _I_0 = v.I_0;
  const _J_0 = v.J_0;
  const _e_0 = v.e_0;
  const _M_1 = v.M_1;
  const _N_1 = v.N_1;
  const _T_1 = v.T_1;
  const _A_1 = v.A_1;
  const _I_1 = v.I_1;
  const _J_1 = v.J_1;
  const _e_1 = v.e_1;
  const _a = v.a;
  const _b = v.b;
  const _four = v.four;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _f_y = v.f_y;
  const _gamma_M1 = v.gamma_M1;
  const _A_p0 = finite(_t * _b / 2, "A_p0");
  const _mu_0 = finite(_A_0 * _A_p0 / finite(_A_0 + _A_p0, "A_0 + A_p0"), "mu_0");
  const _sigma_x = finite(_M_0 * _e_0 * _mu_0 / finite(_I_0 + Math.pow(_e_0, 2) * _mu_0, "I_0 + e_0 ^ 2 * mu_0") / _A_p0 + _N_0 / finite(_A_0 + _A_p0, "A_0 + A_p0"), "sigma_x");
  const _A_p1 = finite(_t * _a / 2, "A_p1");
  const _mu_1 = finite(_A_1 * _A_p1 / finite(_A_1 + _A_p1, "A_1 + A_p1"), "mu_1");
  const _sigma_y = finite(_M_1 * _e_1 * _mu_1 / finite(_I_1 + Math.pow(_e_1, 2) * _mu_1, "I_1 + e_1 ^ 2 * mu_1") / _A_p1 + _N_1 / finite(_A_1 + _A_p1, "A_1 + A_p1"), "sigma_y");
  const _tau = finite(Math.max(finite(2 * _e_0 * _T_0 / _J_0, "2 * e_0 * T_0 / J_0"), finite(2 * _e_1 * _T_1 / _J_1, "2 * e_1 * T_1 / J_1")), "tau");
  const _sigma_m = finite(Math.sqrt(Math.pow(_sigma_x, 2) + _sigma_x * _sigma_y + Math.pow(_sigma_y, 2) + 3 * Math.pow(_tau, 2)), "sigma_m");
  const _sigma_1 = finite(Math.pow(Math.PI, 2) * _E / finite(12 * (1 - Math.pow(_nu, 2)), "12 * (1 - nu ^ 2)") * Math.pow(finite(_t / finite(Math.min(_a, _b), "min(a, b)"), "t / min(a, b)"), 2), "sigma_1");
  const _r = finite(Math.min(_a, _b) / finite(Math.max(_a, _b), "max(a, b)"), "r");
  const _sigma_2 = finite(Math.pow(Math.PI, 2) * _E / finite(12 * (1 - Math.pow(_nu, 2)), "12 * (1 - nu ^ 2)") * Math.pow(finite(_t / finite(Math.max(_a, _b), "max(a, b)"), "t / max(a, b)"), 2), "sigma_2");
  const _sigma_xcr = finite(_four > 0 ? (_a < _b ? Math.pow(finite(1 + Math.pow(_r, 2), "1 + r ^ 2"), 2) : 4) * _sigma_1 : _sigma_2, "sigma_xcr");
  const _sigma_ycr = finite(_four > 0 ? (_a < _b ? 4 : Math.pow(finite(1 + Math.pow(_r, 2), "1 + r ^ 2"), 2)) * _sigma_1 : _sigma_2, "sigma_ycr");
  const _tau_cr = finite(_four > 0 ? (5.34 + 4 * Math.pow(_r, 2)) * _sigma_1 : _sigma_2, "tau_cr");
  const _r_c = finite(_sigma_x / _sigma_xcr + _sigma_y / _sigma_ycr, "r_c");
  const _alpha_cr = finite(1 / finite(_r_c / 2 + Math.sqrt(Math.pow(_r_c, 2) / 4 + Math.pow(finite(_tau / _tau_cr, "tau / tau_cr"), 2)), "r_c / 2 + sqrt(r_c ^ 2 / 4 + (tau / tau_cr) ^ 2)"), "alpha_cr");
  const _alpha_ult = finite(_f_y / _sigma_m, "alpha_ult");
  const _lambda_p = finite(Math.sqrt(_alpha_ult / _alpha_cr), "lambda_p");
  const _phi = finite(0.5 * (1 + 0.21 * (_lambda_p - 0.2) + Math.pow(_lambda_p, 2)), "phi");
  const _chi_c = finite(Math.min(1, finite(1 / finite(_phi + Math.sqrt(Math.pow(_phi, 2) - Math.pow(_lambda_p, 2)), "phi + sqrt(phi ^ 2 - lambda_p ^ 2)"), "1 / (phi + sqrt(phi ^ 2 - lambda_p ^ 2))")), "chi_c");
  const _sigma_Rd = finite(_chi_c * _f_y / _gamma_M1, "sigma_Rd");
  const _sigma_xs = finite(_M_0 * _e_0 / _I_0 + _N_0 / _A_0, "sigma_xs");
  const _range0 = finite(_sigma_m <= _sigma_Rd ? 1 : 0, "range0");
  return [_A_p0, _mu_0, _sigma_x, _A_p1, _mu_1, _sigma_y, _tau, _sigma_m, _sigma_1, _r, _sigma_2, _sigma_xcr, _sigma_ycr, _tau_cr, _r_c, _alpha_cr, _alpha_ult, _lambda_p, _phi, _chi_c, _sigma_Rd, _sigma_xs, _range0];
}

export function panelBucklingByHand_allowableStress(v: Readonly<Record<"M_0" | "N_0" | "T_0" | "A_0" | "I_0" | "J_0" | "e_0" | "M_1" | "N_1" | "T_1" | "A_1" | "I_1" | "J_1" | "e_1" | "a" | "b" | "four" | "t" | "E" | "nu" | "f_y" | "Omega_b", number>>): number[] {
  const _M_0 = v.M_0;
  const _N_0 = v.N_0;
  const _T_0 = v.T_0;
  const _A_0 = v.A_0;
  const _I_0 = v.I_0;
  const _J_0 = v.J_0;
  const _e_0 = v.e_0;
  const _M_1 = v.M_1;
  const _N_1 = v.N_1;
  const _T_1 = v.T_1;
  const _A_1 = v.A_1;
  const _I_1 = v.I_1;
  const _J_1 = v.J_1;
  const _e_1 = v.e_1;
  const _a = v.a;
  const _b = v.b;
  const _four = v.four;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _f_y = v.f_y;
  const _Omega_b = v.Omega_b;
  const _A_p0 = finite(_t * _b / 2, "A_p0");
  const _mu_0 = finite(_A_0 * _A_p0 / finite(_A_0 + _A_p0, "A_0 + A_p0"), "mu_0");
  const _sigma_x = finite(_M_0 * _e_0 * _mu_0 / finite(_I_0 + Math.pow(_e_0, 2) * _mu_0, "I_0 + e_0 ^ 2 * mu_0") / _A_p0 + _N_0 / finite(_A_0 + _A_p0, "A_0 + A_p0"), "sigma_x");
  const _A_p1 = finite(_t * _a / 2, "A_p1");
  const _mu_1 = finite(_A_1 * _A_p1 / finite(_A_1 + _A_p1, "A_1 + A_p1"), "mu_1");
  const _sigma_y = finite(_M_1 * _e_1 * _mu_1 / finite(_I_1 + Math.pow(_e_1, 2) * _mu_1, "I_1 + e_1 ^ 2 * mu_1") / _A_p1 + _N_1 / finite(_A_1 + _A_p1, "A_1 + A_p1"), "sigma_y");
  const _tau = finite(Math.max(finite(2 * _e_0 * _T_0 / _J_0, "2 * e_0 * T_0 / J_0"), finite(2 * _e_1 * _T_1 / _J_1, "2 * e_1 * T_1 / J_1")), "tau");
  const _sigma_m = finite(Math.sqrt(Math.pow(_sigma_x, 2) + _sigma_x * _sigma_y + Math.pow(_sigma_y, 2) + 3 * Math.pow(_tau, 2)), "sigma_m");
  const _sigma_1 = finite(Math.pow(Math.PI, 2) * _E / finite(12 * (1 - Math.pow(_nu, 2)), "12 * (1 - nu ^ 2)") * Math.pow(finite(_t / finite(Math.min(_a, _b), "min(a, b)"), "t / min(a, b)"), 2), "sigma_1");
  const _r = finite(Math.min(_a, _b) / finite(Math.max(_a, _b), "max(a, b)"), "r");
  const _sigma_2 = finite(Math.pow(Math.PI, 2) * _E / finite(12 * (1 - Math.pow(_nu, 2)), "12 * (1 - nu ^ 2)") * Math.pow(finite(_t / finite(Math.max(_a, _b), "max(a, b)"), "t / max(a, b)"), 2), "sigma_2");
  const _sigma_xcr = finite(_four > 0 ? (_a < _b ? Math.pow(finite(1 + Math.pow(_r, 2), "1 + r ^ 2"), 2) : 4) * _sigma_1 : _sigma_2, "sigma_xcr");
  const _sigma_ycr = finite(_four > 0 ? (_a < _b ? 4 : Math.pow(finite(1 + Math.pow(_r, 2), "1 + r ^ 2"), 2)) * _sigma_1 : _sigma_2, "sigma_ycr");
  const _tau_cr = finite(_four > 0 ? (5.34 + 4 * Math.pow(_r, 2)) * _sigma_1 : _sigma_2, "tau_cr");
  const _r_c = finite(_sigma_x / _sigma_xcr + _sigma_y / _sigma_ycr, "r_c");
  const _alpha_cr = finite(1 / finite(_r_c / 2 + Math.sqrt(Math.pow(_r_c, 2) / 4 + Math.pow(finite(_tau / _tau_cr, "tau / tau_cr"), 2)), "r_c / 2 + sqrt(r_c ^ 2 / 4 + (tau / tau_cr) ^ 2)"), "alpha_cr");
  const _alpha_ult = finite(_f_y / _sigma_m, "alpha_ult");
  const _n_e = finite(_alpha_ult / _alpha_cr, "n_e");
  const _F_cr = finite(_n_e <= 2.25 ? Math.pow(0.658, _n_e) * _f_y : 0.877 * _f_y / _n_e, "F_cr");
  const _sigma_Rd = finite(_F_cr / _Omega_b, "sigma_Rd");
  const _sigma_xs = finite(_M_0 * _e_0 / _I_0 + _N_0 / _A_0, "sigma_xs");
  const _range0 = finite(_sigma_m <= _sigma_Rd ? 1 : 0, "range0");
  return [_A_p0, _mu_0, _sigma_x, _A_p1, _mu_1, _sigma_y, _tau, _sigma_m, _sigma_1, _r, _sigma_2, _sigma_xcr, _sigma_ycr, _tau_cr, _r_c, _alpha_cr, _alpha_ult, _n_e, _F_cr, _sigma_Rd, _sigma_xs, _range0];
}

export function panelBuckling_partialFactors(v: Readonly<Record<"sigma_n" | "alpha_n" | "own" | "t_n" | "a" | "b" | "t" | "E" | "nu" | "f_y" | "gamma_M1", number>>): number[] {
  const _sigma_n = v.sigma_n;
  const _alpha_n = v.alpha_n;
  const _own = v.own;
  const _t_n = v.t_n;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _f_y = v.f_y;
  const _gamma_M1 = v.gamma_M1;
  const _sigma_m = finite(_sigma_n * _t_n / _t, "sigma_m");
  const _alpha_cr = finite(_alpha_n * Math.pow(finite(_t / _t_n, "t / t_n"), 3), "alpha_cr");
  const _alpha_ult = finite(_f_y / _sigma_m, "alpha_ult");
  const _lambda_p = finite(Math.sqrt(_alpha_ult / _alpha_cr), "lambda_p");
  const _phi = finite(0.5 * (1 + 0.21 * (_lambda_p - 0.2) + Math.pow(_lambda_p, 2)), "phi");
  const _chi_c = finite(Math.min(1, finite(1 / finite(_phi + Math.sqrt(Math.pow(_phi, 2) - Math.pow(_lambda_p, 2)), "phi + sqrt(phi ^ 2 - lambda_p ^ 2)"), "1 / (phi + sqrt(phi ^ 2 - lambda_p ^ 2))")), "chi_c");
  const _sigma_Rd = finite(_chi_c * _f_y / _gamma_M1, "sigma_Rd");
  const _sigma_e = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 2) / finite(12 * (1 - Math.pow(_nu, 2)), "12 * (1 - nu ^ 2)") * (1 / finite(Math.pow(_a, 2), "a ^ 2") + 1 / finite(Math.pow(_b, 2), "b ^ 2")), "sigma_e");
  const _alpha_low = finite(_own > 0 ? Math.sqrt(3) / 2 * _sigma_e / _sigma_m : 0 * _alpha_cr, "alpha_low");
  return [_sigma_m, _alpha_cr, _alpha_ult, _lambda_p, _phi, _chi_c, _sigma_Rd, _sigma_e, _alpha_low];
}

export function panelBuckling_allowableStress(v: Readonly<Record<"sigma_n" | "alpha_n" | "own" | "t_n" | "a" | "b" | "t" | "E" | "nu" | "f_y" | "Omega_b", number>>): number[] {
  const _sigma_n = v.sigma_n;
  const _alpha_n = v.alpha_n;
  const _own = v.own;
  const _t_n = v.t_n;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _f_y = v.f_y;
  const _Omega_b = v.Omega_b;
  const _sigma_m = finite(_sigma_n * _t_n / _t, "sigma_m");
  const _alpha_cr = finite(_alpha_n * Math.pow(finite(_t / _t_n, "t / t_n"), 3), "alpha_cr");
  const _alpha_ult = finite(_f_y / _sigma_m, "alpha_ult");
  const _n_e = finite(_alpha_ult / _alpha_cr, "n_e");
  const _F_cr = finite(_n_e <= 2.25 ? Math.pow(0.658, _n_e) * _f_y : 0.877 * _f_y / _n_e, "F_cr");
  const _sigma_Rd = finite(_F_cr / _Omega_b, "sigma_Rd");
  const _sigma_e = finite(Math.pow(Math.PI, 2) * _E * Math.pow(_t, 2) / finite(12 * (1 - Math.pow(_nu, 2)), "12 * (1 - nu ^ 2)") * (1 / finite(Math.pow(_a, 2), "a ^ 2") + 1 / finite(Math.pow(_b, 2), "b ^ 2")), "sigma_e");
  const _alpha_low = finite(_own > 0 ? Math.sqrt(3) / 2 * _sigma_e / _sigma_m : 0 * _alpha_cr, "alpha_low");
  return [_sigma_m, _alpha_cr, _alpha_ult, _n_e, _F_cr, _sigma_Rd, _sigma_e, _alpha_low];
}

export function fatigueWeldRoot_partialFactors(v: Readonly<Record<"f_z_up" | "f_z_dn" | "f_h_up" | "f_h_dn" | "m_up" | "m_dn" | "f_l_up" | "f_l_dn" | "a_w" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _f_z_up = v.f_z_up;
  const _f_z_dn = v.f_z_dn;
  const _f_h_up = v.f_h_up;
  const _f_h_dn = v.f_h_dn;
  const _m_up = v.m_up;
  const _m_dn = v.m_dn;
  const _f_l_up = v.f_l_up;
  const _f_l_dn = v.f_l_dn;
  const _a_w = v.a_w;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _sigma_up = finite((_f_z_up + _f_h_up) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w") + 6 * _m_up / finite(Math.pow(_a_w, 2), "a_w ^ 2"), "sigma_up");
  const _tau_up = finite(Math.abs(_f_z_up - _f_h_up) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w"), "tau_up");
  const _s_up = finite(Math.sqrt(Math.pow(_sigma_up, 2) + Math.pow(_tau_up, 2) + Math.pow(finite(_f_l_up / _a_w, "f_l_up / a_w"), 2)), "s_up");
  const _sigma_dn = finite((_f_z_dn + _f_h_dn) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w") + 6 * _m_dn / finite(Math.pow(_a_w, 2), "a_w ^ 2"), "sigma_dn");
  const _tau_dn = finite(Math.abs(_f_z_dn - _f_h_dn) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w"), "tau_dn");
  const _s_dn = finite(Math.sqrt(Math.pow(_sigma_dn, 2) + Math.pow(_tau_dn, 2) + Math.pow(finite(_f_l_dn / _a_w, "f_l_dn / a_w"), 2)), "s_dn");
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? Math.max(_s_up, _s_dn) : Math.abs(_s_up - _s_dn), "sigma_r");
  const _sigma_2 = finite(finite(Math.abs(_z), "abs(z)") < 1 ? Math.min(_s_up, _s_dn) : 0 * _s_up, "sigma_2");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_2 = finite(_k_t * _sigma_2 / _S_k, "x_2");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * ((_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)) + (_x_2 > 1 ? Math.pow(_x_2, _m_1) : Math.pow(_x_2, _m_2))), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _y_2 = finite(_k_t * _sigma_2 / _sigma_D, "y_2");
  const _D_low = finite(_n_eq / 5000000 * ((_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)) + (_y_2 > 1 ? Math.pow(_y_2, 3) : Math.pow(_y_2, 5))), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * (Math.pow(_y_1, 3) + Math.pow(_y_2, 3)) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  return [_sigma_up, _tau_up, _s_up, _sigma_dn, _tau_dn, _s_dn, _sigma_r, _sigma_2, _k_t, _x_1, _x_2, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _y_2, _D_low, _D_high];
}

export function fatigueWeldRoot_allowableStress(v: Readonly<Record<"f_z_up" | "f_z_dn" | "f_h_up" | "f_h_dn" | "m_up" | "m_dn" | "f_l_up" | "f_l_dn" | "a_w" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _f_z_up = v.f_z_up;
  const _f_z_dn = v.f_z_dn;
  const _f_h_up = v.f_h_up;
  const _f_h_dn = v.f_h_dn;
  const _m_up = v.m_up;
  const _m_dn = v.m_dn;
  const _f_l_up = v.f_l_up;
  const _f_l_dn = v.f_l_dn;
  const _a_w = v.a_w;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _sigma_up = finite((_f_z_up + _f_h_up) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w") + 6 * _m_up / finite(Math.pow(_a_w, 2), "a_w ^ 2"), "sigma_up");
  const _tau_up = finite(Math.abs(_f_z_up - _f_h_up) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w"), "tau_up");
  const _s_up = finite(Math.sqrt(Math.pow(_sigma_up, 2) + Math.pow(_tau_up, 2) + Math.pow(finite(_f_l_up / _a_w, "f_l_up / a_w"), 2)), "s_up");
  const _sigma_dn = finite((_f_z_dn + _f_h_dn) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w") + 6 * _m_dn / finite(Math.pow(_a_w, 2), "a_w ^ 2"), "sigma_dn");
  const _tau_dn = finite(Math.abs(_f_z_dn - _f_h_dn) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w"), "tau_dn");
  const _s_dn = finite(Math.sqrt(Math.pow(_sigma_dn, 2) + Math.pow(_tau_dn, 2) + Math.pow(finite(_f_l_dn / _a_w, "f_l_dn / a_w"), 2)), "s_dn");
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? Math.max(_s_up, _s_dn) : Math.abs(_s_up - _s_dn), "sigma_r");
  const _sigma_2 = finite(finite(Math.abs(_z), "abs(z)") < 1 ? Math.min(_s_up, _s_dn) : 0 * _s_up, "sigma_2");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_2 = finite(_k_t * _sigma_2 / _S_k, "x_2");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * ((_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)) + (_x_2 > 1 ? Math.pow(_x_2, _m_1) : Math.pow(_x_2, _m_2))), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _y_2 = finite(_k_t * _sigma_2 / _sigma_D, "y_2");
  const _D_low = finite(_n_eq / 5000000 * ((_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)) + (_y_2 > 1 ? Math.pow(_y_2, 3) : Math.pow(_y_2, 5))), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * (Math.pow(_y_1, 3) + Math.pow(_y_2, 3)) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  return [_sigma_up, _tau_up, _s_up, _sigma_dn, _tau_dn, _s_dn, _sigma_r, _sigma_2, _k_t, _x_1, _x_2, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _y_2, _D_low, _D_high];
}

export function fatigueWeldToe_partialFactors(v: Readonly<Record<"f_h_up" | "f_h_dn" | "m_up" | "m_dn" | "t" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _f_h_up = v.f_h_up;
  const _f_h_dn = v.f_h_dn;
  const _m_up = v.m_up;
  const _m_dn = v.m_dn;
  const _t = v.t;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _s_up = finite(_f_h_up / _t + 6 * _m_up / finite(Math.pow(_t, 2), "t ^ 2"), "s_up");
  const _s_dn = finite(_f_h_dn / _t + 6 * _m_dn / finite(Math.pow(_t, 2), "t ^ 2"), "s_dn");
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? Math.max(_s_up, _s_dn) : Math.abs(_s_up - _s_dn), "sigma_r");
  const _sigma_2 = finite(finite(Math.abs(_z), "abs(z)") < 1 ? Math.min(_s_up, _s_dn) : 0 * _s_up, "sigma_2");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_2 = finite(_k_t * _sigma_2 / _S_k, "x_2");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * ((_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)) + (_x_2 > 1 ? Math.pow(_x_2, _m_1) : Math.pow(_x_2, _m_2))), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _y_2 = finite(_k_t * _sigma_2 / _sigma_D, "y_2");
  const _D_low = finite(_n_eq / 5000000 * ((_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)) + (_y_2 > 1 ? Math.pow(_y_2, 3) : Math.pow(_y_2, 5))), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * (Math.pow(_y_1, 3) + Math.pow(_y_2, 3)) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  return [_s_up, _s_dn, _sigma_r, _sigma_2, _k_t, _x_1, _x_2, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _y_2, _D_low, _D_high];
}

export function fatigueWeldToe_allowableStress(v: Readonly<Record<"f_h_up" | "f_h_dn" | "m_up" | "m_dn" | "t" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _f_h_up = v.f_h_up;
  const _f_h_dn = v.f_h_dn;
  const _m_up = v.m_up;
  const _m_dn = v.m_dn;
  const _t = v.t;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _s_up = finite(_f_h_up / _t + 6 * _m_up / finite(Math.pow(_t, 2), "t ^ 2"), "s_up");
  const _s_dn = finite(_f_h_dn / _t + 6 * _m_dn / finite(Math.pow(_t, 2), "t ^ 2"), "s_dn");
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? Math.max(_s_up, _s_dn) : Math.abs(_s_up - _s_dn), "sigma_r");
  const _sigma_2 = finite(finite(Math.abs(_z), "abs(z)") < 1 ? Math.min(_s_up, _s_dn) : 0 * _s_up, "sigma_2");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_2 = finite(_k_t * _sigma_2 / _S_k, "x_2");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * ((_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)) + (_x_2 > 1 ? Math.pow(_x_2, _m_1) : Math.pow(_x_2, _m_2))), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _y_2 = finite(_k_t * _sigma_2 / _sigma_D, "y_2");
  const _D_low = finite(_n_eq / 5000000 * ((_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)) + (_y_2 > 1 ? Math.pow(_y_2, 3) : Math.pow(_y_2, 5))), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * (Math.pow(_y_1, 3) + Math.pow(_y_2, 3)) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  return [_s_up, _s_dn, _sigma_r, _sigma_2, _k_t, _x_1, _x_2, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _y_2, _D_low, _D_high];
}

export function fatigueWeldCorner_partialFactors(v: Readonly<Record<"f_z_up" | "f_z_dn" | "f_h_up" | "f_h_dn" | "m_up" | "m_dn" | "f_l_up" | "f_l_dn" | "a_w" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _f_z_up = v.f_z_up;
  const _f_z_dn = v.f_z_dn;
  const _f_h_up = v.f_h_up;
  const _f_h_dn = v.f_h_dn;
  const _m_up = v.m_up;
  const _m_dn = v.m_dn;
  const _f_l_up = v.f_l_up;
  const _f_l_dn = v.f_l_dn;
  const _a_w = v.a_w;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _sigma_up = finite((_f_z_up + _f_h_up) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w") + 6 * _m_up / finite(Math.pow(_a_w, 2), "a_w ^ 2"), "sigma_up");
  const _tau_up = finite(Math.abs(_f_z_up - _f_h_up) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w"), "tau_up");
  const _s_up = finite(Math.sqrt(Math.pow(_sigma_up, 2) + Math.pow(_tau_up, 2) + Math.pow(finite(_f_l_up / _a_w, "f_l_up / a_w"), 2)), "s_up");
  const _sigma_dn = finite((_f_z_dn + _f_h_dn) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w") + 6 * _m_dn / finite(Math.pow(_a_w, 2), "a_w ^ 2"), "sigma_dn");
  const _tau_dn = finite(Math.abs(_f_z_dn - _f_h_dn) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w"), "tau_dn");
  const _s_dn = finite(Math.sqrt(Math.pow(_sigma_dn, 2) + Math.pow(_tau_dn, 2) + Math.pow(finite(_f_l_dn / _a_w, "f_l_dn / a_w"), 2)), "s_dn");
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? _s_up + _s_dn : Math.abs(_s_up - _s_dn), "sigma_r");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * (_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _D_low = finite(_n_eq / 5000000 * (_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * Math.pow(_y_1, 3) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  return [_sigma_up, _tau_up, _s_up, _sigma_dn, _tau_dn, _s_dn, _sigma_r, _k_t, _x_1, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _D_low, _D_high];
}

export function fatigueWeldCorner_allowableStress(v: Readonly<Record<"f_z_up" | "f_z_dn" | "f_h_up" | "f_h_dn" | "m_up" | "m_dn" | "f_l_up" | "f_l_dn" | "a_w" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _f_z_up = v.f_z_up;
  const _f_z_dn = v.f_z_dn;
  const _f_h_up = v.f_h_up;
  const _f_h_dn = v.f_h_dn;
  const _m_up = v.m_up;
  const _m_dn = v.m_dn;
  const _f_l_up = v.f_l_up;
  const _f_l_dn = v.f_l_dn;
  const _a_w = v.a_w;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _sigma_up = finite((_f_z_up + _f_h_up) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w") + 6 * _m_up / finite(Math.pow(_a_w, 2), "a_w ^ 2"), "sigma_up");
  const _tau_up = finite(Math.abs(_f_z_up - _f_h_up) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w"), "tau_up");
  const _s_up = finite(Math.sqrt(Math.pow(_sigma_up, 2) + Math.pow(_tau_up, 2) + Math.pow(finite(_f_l_up / _a_w, "f_l_up / a_w"), 2)), "s_up");
  const _sigma_dn = finite((_f_z_dn + _f_h_dn) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w") + 6 * _m_dn / finite(Math.pow(_a_w, 2), "a_w ^ 2"), "sigma_dn");
  const _tau_dn = finite(Math.abs(_f_z_dn - _f_h_dn) / finite(Math.sqrt(2) * _a_w, "sqrt(2) * a_w"), "tau_dn");
  const _s_dn = finite(Math.sqrt(Math.pow(_sigma_dn, 2) + Math.pow(_tau_dn, 2) + Math.pow(finite(_f_l_dn / _a_w, "f_l_dn / a_w"), 2)), "s_dn");
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? _s_up + _s_dn : Math.abs(_s_up - _s_dn), "sigma_r");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * (_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _D_low = finite(_n_eq / 5000000 * (_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * Math.pow(_y_1, 3) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  return [_sigma_up, _tau_up, _s_up, _sigma_dn, _tau_dn, _s_dn, _sigma_r, _k_t, _x_1, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _D_low, _D_high];
}

export function fatigueWeldEnd_partialFactors(v: Readonly<Record<"M_up" | "M_dn" | "N_up" | "N_dn" | "W_el" | "A" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _M_up = v.M_up;
  const _M_dn = v.M_dn;
  const _N_up = v.N_up;
  const _N_dn = v.N_dn;
  const _W_el = v.W_el;
  const _A = v.A;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _s_up = finite(_M_up / _W_el + _N_up / _A, "s_up");
  const _s_dn = finite(_M_dn / _W_el + _N_dn / _A, "s_dn");
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? _s_up + _s_dn : Math.abs(_s_up - _s_dn), "sigma_r");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * (_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _D_low = finite(_n_eq / 5000000 * (_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * Math.pow(_y_1, 3) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  return [_s_up, _s_dn, _sigma_r, _k_t, _x_1, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _D_low, _D_high];
}

export function fatigueWeldEnd_allowableStress(v: Readonly<Record<"M_up" | "M_dn" | "N_up" | "N_dn" | "W_el" | "A" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _M_up = v.M_up;
  const _M_dn = v.M_dn;
  const _N_up = v.N_up;
  const _N_dn = v.N_dn;
  const _W_el = v.W_el;
  const _A = v.A;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _s_up = finite(_M_up / _W_el + _N_up / _A, "s_up");
  const _s_dn = finite(_M_dn / _W_el + _N_dn / _A, "s_dn");
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? _s_up + _s_dn : Math.abs(_s_up - _s_dn), "sigma_r");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * (_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _D_low = finite(_n_eq / 5000000 * (_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * Math.pow(_y_1, 3) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  return [_s_up, _s_dn, _sigma_r, _k_t, _x_1, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _D_low, _D_high];
}

export function fatigueWeldIntermittent_partialFactors(v: Readonly<Record<"s_up" | "s_dn" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _s_up = v.s_up;
  const _s_dn = v.s_dn;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? _s_up + _s_dn : Math.abs(_s_up - _s_dn), "sigma_r");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * (_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _D_low = finite(_n_eq / 5000000 * (_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * Math.pow(_y_1, 3) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  return [_sigma_r, _k_t, _x_1, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _D_low, _D_high];
}

export function fatigueWeldIntermittent_allowableStress(v: Readonly<Record<"s_up" | "s_dn" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _s_up = v.s_up;
  const _s_dn = v.s_dn;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? _s_up + _s_dn : Math.abs(_s_up - _s_dn), "sigma_r");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * (_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _D_low = finite(_n_eq / 5000000 * (_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * Math.pow(_y_1, 3) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  return [_sigma_r, _k_t, _x_1, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _D_low, _D_high];
}

export function fatigueWeldPlug_partialFactors(v: Readonly<Record<"b_up" | "b_dn" | "d_p" | "p_near" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _b_up = v.b_up;
  const _b_dn = v.b_dn;
  const _d_p = v.d_p;
  const _p_near = v.p_near;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _r_n = finite((_p_near - _d_p) / _p_near, "r_n");
  const _s_up = finite(_b_up / _r_n, "s_up");
  const _s_dn = finite(_b_dn / _r_n, "s_dn");
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? _s_up + _s_dn : Math.abs(_s_up - _s_dn), "sigma_r");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * (_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _D_low = finite(_n_eq / 5000000 * (_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * Math.pow(_y_1, 3) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  const _range0 = finite(_p_near > _d_p ? 1 : 0, "range0");
  return [_r_n, _s_up, _s_dn, _sigma_r, _k_t, _x_1, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _D_low, _D_high, _range0];
}

export function fatigueWeldPlug_allowableStress(v: Readonly<Record<"b_up" | "b_dn" | "d_p" | "p_near" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _b_up = v.b_up;
  const _b_dn = v.b_dn;
  const _d_p = v.d_p;
  const _p_near = v.p_near;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _r_n = finite((_p_near - _d_p) / _p_near, "r_n");
  const _s_up = finite(_b_up / _r_n, "s_up");
  const _s_dn = finite(_b_dn / _r_n, "s_dn");
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? _s_up + _s_dn : Math.abs(_s_up - _s_dn), "sigma_r");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * (_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _D_low = finite(_n_eq / 5000000 * (_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * Math.pow(_y_1, 3) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  const _range0 = finite(_p_near > _d_p ? 1 : 0, "range0");
  return [_r_n, _s_up, _s_dn, _sigma_r, _k_t, _x_1, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _D_low, _D_high, _range0];
}

export function fatigueWeldPlugShear_partialFactors(v: Readonly<Record<"F_up" | "F_dn" | "d_p" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _F_up = v.F_up;
  const _F_dn = v.F_dn;
  const _d_p = v.d_p;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _A_w = finite(Math.PI / 4 * Math.pow(_d_p, 2), "A_w");
  const _s_up = finite(_F_up / _A_w, "s_up");
  const _s_dn = finite(_F_dn / _A_w, "s_dn");
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? Math.max(_s_up, _s_dn) : Math.abs(_s_up - _s_dn), "sigma_r");
  const _sigma_2 = finite(finite(Math.abs(_z), "abs(z)") < 1 ? Math.min(_s_up, _s_dn) : 0 * _s_up, "sigma_2");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_2 = finite(_k_t * _sigma_2 / _S_k, "x_2");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * ((_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)) + (_x_2 > 1 ? Math.pow(_x_2, _m_1) : Math.pow(_x_2, _m_2))), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _y_2 = finite(_k_t * _sigma_2 / _sigma_D, "y_2");
  const _D_low = finite(_n_eq / 5000000 * ((_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)) + (_y_2 > 1 ? Math.pow(_y_2, 3) : Math.pow(_y_2, 5))), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * (Math.pow(_y_1, 3) + Math.pow(_y_2, 3)) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  return [_A_w, _s_up, _s_dn, _sigma_r, _sigma_2, _k_t, _x_1, _x_2, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _y_2, _D_low, _D_high];
}

export function fatigueWeldPlugShear_allowableStress(v: Readonly<Record<"F_up" | "F_dn" | "d_p" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _F_up = v.F_up;
  const _F_dn = v.F_dn;
  const _d_p = v.d_p;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _A_w = finite(Math.PI / 4 * Math.pow(_d_p, 2), "A_w");
  const _s_up = finite(_F_up / _A_w, "s_up");
  const _s_dn = finite(_F_dn / _A_w, "s_dn");
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? Math.max(_s_up, _s_dn) : Math.abs(_s_up - _s_dn), "sigma_r");
  const _sigma_2 = finite(finite(Math.abs(_z), "abs(z)") < 1 ? Math.min(_s_up, _s_dn) : 0 * _s_up, "sigma_2");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_2 = finite(_k_t * _sigma_2 / _S_k, "x_2");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * ((_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)) + (_x_2 > 1 ? Math.pow(_x_2, _m_1) : Math.pow(_x_2, _m_2))), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _y_2 = finite(_k_t * _sigma_2 / _sigma_D, "y_2");
  const _D_low = finite(_n_eq / 5000000 * ((_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)) + (_y_2 > 1 ? Math.pow(_y_2, 3) : Math.pow(_y_2, 5))), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * (Math.pow(_y_1, 3) + Math.pow(_y_2, 3)) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  return [_A_w, _s_up, _s_dn, _sigma_r, _sigma_2, _k_t, _x_1, _x_2, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _y_2, _D_low, _D_high];
}

export function fatiguePlateEdge_partialFactors(v: Readonly<Record<"b_up" | "b_dn" | "d_c" | "t" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _b_up = v.b_up;
  const _b_dn = v.b_dn;
  const _d_c = v.d_c;
  const _t = v.t;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _r_c = finite(_d_c / _t, "r_c");
  const _K_h = finite(_d_c > finite(0 * _t, "0 * t") ? 1.79 + 0.25 / finite(0.39 + _r_c, "0.39 + r_c") + 0.81 / finite(1 + Math.pow(_r_c, 2), "1 + r_c ^ 2") - 0.26 / finite(1 + Math.pow(_r_c, 3), "1 + r_c ^ 3") : 1, "K_h");
  const _s_up = finite(_K_h * _b_up, "s_up");
  const _s_dn = finite(_K_h * _b_dn, "s_dn");
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? _s_up + _s_dn : Math.abs(_s_up - _s_dn), "sigma_r");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * (_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _D_low = finite(_n_eq / 5000000 * (_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * Math.pow(_y_1, 3) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  return [_r_c, _K_h, _s_up, _s_dn, _sigma_r, _k_t, _x_1, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _D_low, _D_high];
}

export function fatiguePlateEdge_allowableStress(v: Readonly<Record<"b_up" | "b_dn" | "d_c" | "t" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _b_up = v.b_up;
  const _b_dn = v.b_dn;
  const _d_c = v.d_c;
  const _t = v.t;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _r_c = finite(_d_c / _t, "r_c");
  const _K_h = finite(_d_c > finite(0 * _t, "0 * t") ? 1.79 + 0.25 / finite(0.39 + _r_c, "0.39 + r_c") + 0.81 / finite(1 + Math.pow(_r_c, 2), "1 + r_c ^ 2") - 0.26 / finite(1 + Math.pow(_r_c, 3), "1 + r_c ^ 3") : 1, "K_h");
  const _s_up = finite(_K_h * _b_up, "s_up");
  const _s_dn = finite(_K_h * _b_dn, "s_dn");
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? _s_up + _s_dn : Math.abs(_s_up - _s_dn), "sigma_r");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * (_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _D_low = finite(_n_eq / 5000000 * (_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * Math.pow(_y_1, 3) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  return [_r_c, _K_h, _s_up, _s_dn, _sigma_r, _k_t, _x_1, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _D_low, _D_high];
}

export function fatigueBoltHolePanel_partialFactors(v: Readonly<Record<"b_up" | "b_dn" | "d_0" | "p_1" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _b_up = v.b_up;
  const _b_dn = v.b_dn;
  const _d_0 = v.d_0;
  const _p_1 = v.p_1;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _r_n = finite((_p_1 - _d_0) / _p_1, "r_n");
  const _s_up = finite(_b_up / _r_n, "s_up");
  const _s_dn = finite(_b_dn / _r_n, "s_dn");
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? _s_up + _s_dn : Math.abs(_s_up - _s_dn), "sigma_r");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * (_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _D_low = finite(_n_eq / 5000000 * (_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * Math.pow(_y_1, 3) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  const _range0 = finite(_p_1 > _d_0 ? 1 : 0, "range0");
  return [_r_n, _s_up, _s_dn, _sigma_r, _k_t, _x_1, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _D_low, _D_high, _range0];
}

export function fatigueBoltHolePanel_allowableStress(v: Readonly<Record<"b_up" | "b_dn" | "d_0" | "p_1" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _b_up = v.b_up;
  const _b_dn = v.b_dn;
  const _d_0 = v.d_0;
  const _p_1 = v.p_1;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _r_n = finite((_p_1 - _d_0) / _p_1, "r_n");
  const _s_up = finite(_b_up / _r_n, "s_up");
  const _s_dn = finite(_b_dn / _r_n, "s_dn");
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? _s_up + _s_dn : Math.abs(_s_up - _s_dn), "sigma_r");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * (_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _D_low = finite(_n_eq / 5000000 * (_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * Math.pow(_y_1, 3) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  const _range0 = finite(_p_1 > _d_0 ? 1 : 0, "range0");
  return [_r_n, _s_up, _s_dn, _sigma_r, _k_t, _x_1, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _D_low, _D_high, _range0];
}

export function fatigueBoltHoleTube_partialFactors(v: Readonly<Record<"M_up" | "M_dn" | "N_up" | "N_dn" | "W_el" | "A" | "n_h" | "d_h" | "B" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _M_up = v.M_up;
  const _M_dn = v.M_dn;
  const _N_up = v.N_up;
  const _N_dn = v.N_dn;
  const _W_el = v.W_el;
  const _A = v.A;
  const _n_h = v.n_h;
  const _d_h = v.d_h;
  const _B = v.B;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _s_up = finite((_M_up / _W_el + _N_up / _A) / finite(1 - _n_h * _d_h / _B, "1 - n_h * d_h / B"), "s_up");
  const _s_dn = finite((_M_dn / _W_el + _N_dn / _A) / finite(1 - _n_h * _d_h / _B, "1 - n_h * d_h / B"), "s_dn");
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? _s_up + _s_dn : Math.abs(_s_up - _s_dn), "sigma_r");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * (_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _D_low = finite(_n_eq / 5000000 * (_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * Math.pow(_y_1, 3) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  const _range0 = finite(finite(_n_h * _d_h, "n_h * d_h") < _B ? 1 : 0, "range0");
  return [_s_up, _s_dn, _sigma_r, _k_t, _x_1, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _D_low, _D_high, _range0];
}

export function fatigueBoltHoleTube_allowableStress(v: Readonly<Record<"M_up" | "M_dn" | "N_up" | "N_dn" | "W_el" | "A" | "n_h" | "d_h" | "B" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _M_up = v.M_up;
  const _M_dn = v.M_dn;
  const _N_up = v.N_up;
  const _N_dn = v.N_dn;
  const _W_el = v.W_el;
  const _A = v.A;
  const _n_h = v.n_h;
  const _d_h = v.d_h;
  const _B = v.B;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _s_up = finite((_M_up / _W_el + _N_up / _A) / finite(1 - _n_h * _d_h / _B, "1 - n_h * d_h / B"), "s_up");
  const _s_dn = finite((_M_dn / _W_el + _N_dn / _A) / finite(1 - _n_h * _d_h / _B, "1 - n_h * d_h / B"), "s_dn");
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? _s_up + _s_dn : Math.abs(_s_up - _s_dn), "sigma_r");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * (_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _D_low = finite(_n_eq / 5000000 * (_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * Math.pow(_y_1, 3) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  const _range0 = finite(finite(_n_h * _d_h, "n_h * d_h") < _B ? 1 : 0, "range0");
  return [_s_up, _s_dn, _sigma_r, _k_t, _x_1, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _D_low, _D_high, _range0];
}

export function fatigueBoltTension_partialFactors(v: Readonly<Record<"F_up" | "F_dn" | "A_s" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _F_up = v.F_up;
  const _F_dn = v.F_dn;
  const _A_s = v.A_s;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _s_up = finite(_F_up / _A_s, "s_up");
  const _s_dn = finite(_F_dn / _A_s, "s_dn");
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? Math.max(_s_up, _s_dn) : Math.abs(_s_up - _s_dn), "sigma_r");
  const _sigma_2 = finite(finite(Math.abs(_z), "abs(z)") < 1 ? Math.min(_s_up, _s_dn) : 0 * _s_up, "sigma_2");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_2 = finite(_k_t * _sigma_2 / _S_k, "x_2");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * ((_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)) + (_x_2 > 1 ? Math.pow(_x_2, _m_1) : Math.pow(_x_2, _m_2))), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _y_2 = finite(_k_t * _sigma_2 / _sigma_D, "y_2");
  const _D_low = finite(_n_eq / 5000000 * ((_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)) + (_y_2 > 1 ? Math.pow(_y_2, 3) : Math.pow(_y_2, 5))), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * (Math.pow(_y_1, 3) + Math.pow(_y_2, 3)) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  return [_s_up, _s_dn, _sigma_r, _sigma_2, _k_t, _x_1, _x_2, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _y_2, _D_low, _D_high];
}

export function fatigueBoltTension_allowableStress(v: Readonly<Record<"F_up" | "F_dn" | "A_s" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _F_up = v.F_up;
  const _F_dn = v.F_dn;
  const _A_s = v.A_s;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _s_up = finite(_F_up / _A_s, "s_up");
  const _s_dn = finite(_F_dn / _A_s, "s_dn");
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? Math.max(_s_up, _s_dn) : Math.abs(_s_up - _s_dn), "sigma_r");
  const _sigma_2 = finite(finite(Math.abs(_z), "abs(z)") < 1 ? Math.min(_s_up, _s_dn) : 0 * _s_up, "sigma_2");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_2 = finite(_k_t * _sigma_2 / _S_k, "x_2");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * ((_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)) + (_x_2 > 1 ? Math.pow(_x_2, _m_1) : Math.pow(_x_2, _m_2))), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _y_2 = finite(_k_t * _sigma_2 / _sigma_D, "y_2");
  const _D_low = finite(_n_eq / 5000000 * ((_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)) + (_y_2 > 1 ? Math.pow(_y_2, 3) : Math.pow(_y_2, 5))), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * (Math.pow(_y_1, 3) + Math.pow(_y_2, 3)) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  return [_s_up, _s_dn, _sigma_r, _sigma_2, _k_t, _x_1, _x_2, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _y_2, _D_low, _D_high];
}

export function fatigueBoltShear_partialFactors(v: Readonly<Record<"F_up" | "F_dn" | "A_s" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _F_up = v.F_up;
  const _F_dn = v.F_dn;
  const _A_s = v.A_s;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _s_up = finite(_F_up / _A_s, "s_up");
  const _s_dn = finite(_F_dn / _A_s, "s_dn");
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? Math.max(_s_up, _s_dn) : Math.abs(_s_up - _s_dn), "sigma_r");
  const _sigma_2 = finite(finite(Math.abs(_z), "abs(z)") < 1 ? Math.min(_s_up, _s_dn) : 0 * _s_up, "sigma_2");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_2 = finite(_k_t * _sigma_2 / _S_k, "x_2");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * ((_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)) + (_x_2 > 1 ? Math.pow(_x_2, _m_1) : Math.pow(_x_2, _m_2))), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _y_2 = finite(_k_t * _sigma_2 / _sigma_D, "y_2");
  const _D_low = finite(_n_eq / 5000000 * ((_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)) + (_y_2 > 1 ? Math.pow(_y_2, 3) : Math.pow(_y_2, 5))), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * (Math.pow(_y_1, 3) + Math.pow(_y_2, 3)) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  return [_s_up, _s_dn, _sigma_r, _sigma_2, _k_t, _x_1, _x_2, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _y_2, _D_low, _D_high];
}

export function fatigueBoltShear_allowableStress(v: Readonly<Record<"F_up" | "F_dn" | "A_s" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _F_up = v.F_up;
  const _F_dn = v.F_dn;
  const _A_s = v.A_s;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _s_up = finite(_F_up / _A_s, "s_up");
  const _s_dn = finite(_F_dn / _A_s, "s_dn");
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? Math.max(_s_up, _s_dn) : Math.abs(_s_up - _s_dn), "sigma_r");
  const _sigma_2 = finite(finite(Math.abs(_z), "abs(z)") < 1 ? Math.min(_s_up, _s_dn) : 0 * _s_up, "sigma_2");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_2 = finite(_k_t * _sigma_2 / _S_k, "x_2");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * ((_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)) + (_x_2 > 1 ? Math.pow(_x_2, _m_1) : Math.pow(_x_2, _m_2))), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _y_2 = finite(_k_t * _sigma_2 / _sigma_D, "y_2");
  const _D_low = finite(_n_eq / 5000000 * ((_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)) + (_y_2 > 1 ? Math.pow(_y_2, 3) : Math.pow(_y_2, 5))), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * (Math.pow(_y_1, 3) + Math.pow(_y_2, 3)) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  return [_s_up, _s_dn, _sigma_r, _sigma_2, _k_t, _x_1, _x_2, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _y_2, _D_low, _D_high];
}

export function fatigueCrossingToe_partialFactors(v: Readonly<Record<"s_up" | "s_dn" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _s_up = v.s_up;
  const _s_dn = v.s_dn;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? _s_up + _s_dn : Math.abs(_s_up - _s_dn), "sigma_r");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * (_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _D_low = finite(_n_eq / 5000000 * (_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * Math.pow(_y_1, 3) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  return [_sigma_r, _k_t, _x_1, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _D_low, _D_high];
}

export function fatigueCrossingToe_allowableStress(v: Readonly<Record<"s_up" | "s_dn" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _s_up = v.s_up;
  const _s_dn = v.s_dn;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? _s_up + _s_dn : Math.abs(_s_up - _s_dn), "sigma_r");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * (_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _D_low = finite(_n_eq / 5000000 * (_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * Math.pow(_y_1, 3) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  return [_sigma_r, _k_t, _x_1, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _D_low, _D_high];
}

export function fatigueCrossingRoot_partialFactors(v: Readonly<Record<"f_up" | "f_dn" | "a_w" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _f_up = v.f_up;
  const _f_dn = v.f_dn;
  const _a_w = v.a_w;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _s_up = finite(_f_up / _a_w, "s_up");
  const _s_dn = finite(_f_dn / _a_w, "s_dn");
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? _s_up + _s_dn : Math.abs(_s_up - _s_dn), "sigma_r");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * (_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _D_low = finite(_n_eq / 5000000 * (_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * Math.pow(_y_1, 3) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  return [_s_up, _s_dn, _sigma_r, _k_t, _x_1, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _D_low, _D_high];
}

export function fatigueCrossingRoot_allowableStress(v: Readonly<Record<"f_up" | "f_dn" | "a_w" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _f_up = v.f_up;
  const _f_dn = v.f_dn;
  const _a_w = v.a_w;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _s_up = finite(_f_up / _a_w, "s_up");
  const _s_dn = finite(_f_dn / _a_w, "s_dn");
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? _s_up + _s_dn : Math.abs(_s_up - _s_dn), "sigma_r");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * (_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _D_low = finite(_n_eq / 5000000 * (_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * Math.pow(_y_1, 3) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  return [_s_up, _s_dn, _sigma_r, _k_t, _x_1, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _D_low, _D_high];
}

export function fatigueEyeFoot_partialFactors(v: Readonly<Record<"F_z_up" | "F_z_dn" | "F_l_up" | "F_l_dn" | "F_q_up" | "F_q_dn" | "t_e" | "h_e" | "l_e" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _F_z_up = v.F_z_up;
  const _F_z_dn = v.F_z_dn;
  const _F_l_up = v.F_l_up;
  const _F_l_dn = v.F_l_dn;
  const _F_q_up = v.F_q_up;
  const _F_q_dn = v.F_q_dn;
  const _t_e = v.t_e;
  const _h_e = v.h_e;
  const _l_e = v.l_e;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _s_up = finite(_F_z_up / finite(_t_e * _l_e, "t_e * l_e") + 6 * _F_l_up * _h_e / finite(_t_e * Math.pow(_l_e, 2), "t_e * l_e ^ 2") + 6 * _F_q_up * _h_e / finite(_l_e * Math.pow(_t_e, 2), "l_e * t_e ^ 2"), "s_up");
  const _s_dn = finite(_F_z_dn / finite(_t_e * _l_e, "t_e * l_e") + 6 * _F_l_dn * _h_e / finite(_t_e * Math.pow(_l_e, 2), "t_e * l_e ^ 2") + 6 * _F_q_dn * _h_e / finite(_l_e * Math.pow(_t_e, 2), "l_e * t_e ^ 2"), "s_dn");
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? _s_up + _s_dn : Math.abs(_s_up - _s_dn), "sigma_r");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * (_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _D_low = finite(_n_eq / 5000000 * (_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * Math.pow(_y_1, 3) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  return [_s_up, _s_dn, _sigma_r, _k_t, _x_1, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _D_low, _D_high];
}

export function fatigueEyeFoot_allowableStress(v: Readonly<Record<"F_z_up" | "F_z_dn" | "F_l_up" | "F_l_dn" | "F_q_up" | "F_q_dn" | "t_e" | "h_e" | "l_e" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _F_z_up = v.F_z_up;
  const _F_z_dn = v.F_z_dn;
  const _F_l_up = v.F_l_up;
  const _F_l_dn = v.F_l_dn;
  const _F_q_up = v.F_q_up;
  const _F_q_dn = v.F_q_dn;
  const _t_e = v.t_e;
  const _h_e = v.h_e;
  const _l_e = v.l_e;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _s_up = finite(_F_z_up / finite(_t_e * _l_e, "t_e * l_e") + 6 * _F_l_up * _h_e / finite(_t_e * Math.pow(_l_e, 2), "t_e * l_e ^ 2") + 6 * _F_q_up * _h_e / finite(_l_e * Math.pow(_t_e, 2), "l_e * t_e ^ 2"), "s_up");
  const _s_dn = finite(_F_z_dn / finite(_t_e * _l_e, "t_e * l_e") + 6 * _F_l_dn * _h_e / finite(_t_e * Math.pow(_l_e, 2), "t_e * l_e ^ 2") + 6 * _F_q_dn * _h_e / finite(_l_e * Math.pow(_t_e, 2), "l_e * t_e ^ 2"), "s_dn");
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? _s_up + _s_dn : Math.abs(_s_up - _s_dn), "sigma_r");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * (_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _D_low = finite(_n_eq / 5000000 * (_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * Math.pow(_y_1, 3) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  return [_s_up, _s_dn, _sigma_r, _k_t, _x_1, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _D_low, _D_high];
}

export function fatigueEyeFootBolts_partialFactors(v: Readonly<Record<"F_z_up" | "F_z_dn" | "F_l_up" | "F_l_dn" | "F_q_up" | "F_q_dn" | "t_e" | "h_e" | "a_w" | "w_f" | "e" | "p_f" | "n_p" | "A_s" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _F_z_up = v.F_z_up;
  const _F_z_dn = v.F_z_dn;
  const _F_l_up = v.F_l_up;
  const _F_l_dn = v.F_l_dn;
  const _F_q_up = v.F_q_up;
  const _F_q_dn = v.F_q_dn;
  const _t_e = v.t_e;
  const _h_e = v.h_e;
  const _a_w = v.a_w;
  const _w_f = v.w_f;
  const _e = v.e;
  const _p_f = v.p_f;
  const _n_p = v.n_p;
  const _A_s = v.A_s;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _m = finite(_w_f / 2 - _t_e / 2 - 0.8 * Math.sqrt(2) * _a_w, "m");
  const _n = finite(Math.min(_e, finite(1.25 * _m, "1.25 * m")), "n");
  const _N_up = finite(_F_z_up + 6 * _F_l_up * _h_e / finite(_p_f * (_n_p + 1), "p_f * (n_p + 1)") + 2 * _F_q_up * _h_e / _w_f, "N_up");
  const _s_up = finite(_N_up / finite(2 * _n_p, "2 * n_p") * (1 + _m / finite(2 * _n, "2 * n")) / _A_s, "s_up");
  const _N_dn = finite(_F_z_dn + 6 * _F_l_dn * _h_e / finite(_p_f * (_n_p + 1), "p_f * (n_p + 1)") + 2 * _F_q_dn * _h_e / _w_f, "N_dn");
  const _s_dn = finite(_N_dn / finite(2 * _n_p, "2 * n_p") * (1 + _m / finite(2 * _n, "2 * n")) / _A_s, "s_dn");
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? _s_up + _s_dn : Math.abs(_s_up - _s_dn), "sigma_r");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * (_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _D_low = finite(_n_eq / 5000000 * (_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * Math.pow(_y_1, 3) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  const _range0 = finite(_m > finite(0 * _w_f, "0 * w_f") ? 1 : 0, "range0");
  return [_m, _n, _N_up, _s_up, _N_dn, _s_dn, _sigma_r, _k_t, _x_1, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _D_low, _D_high, _range0];
}

export function fatigueEyeFootBolts_allowableStress(v: Readonly<Record<"F_z_up" | "F_z_dn" | "F_l_up" | "F_l_dn" | "F_q_up" | "F_q_dn" | "t_e" | "h_e" | "a_w" | "w_f" | "e" | "p_f" | "n_p" | "A_s" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _F_z_up = v.F_z_up;
  const _F_z_dn = v.F_z_dn;
  const _F_l_up = v.F_l_up;
  const _F_l_dn = v.F_l_dn;
  const _F_q_up = v.F_q_up;
  const _F_q_dn = v.F_q_dn;
  const _t_e = v.t_e;
  const _h_e = v.h_e;
  const _a_w = v.a_w;
  const _w_f = v.w_f;
  const _e = v.e;
  const _p_f = v.p_f;
  const _n_p = v.n_p;
  const _A_s = v.A_s;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _m = finite(_w_f / 2 - _t_e / 2 - 0.8 * Math.sqrt(2) * _a_w, "m");
  const _n = finite(Math.min(_e, finite(1.25 * _m, "1.25 * m")), "n");
  const _N_up = finite(_F_z_up + 6 * _F_l_up * _h_e / finite(_p_f * (_n_p + 1), "p_f * (n_p + 1)") + 2 * _F_q_up * _h_e / _w_f, "N_up");
  const _s_up = finite(_N_up / finite(2 * _n_p, "2 * n_p") * (1 + _m / finite(2 * _n, "2 * n")) / _A_s, "s_up");
  const _N_dn = finite(_F_z_dn + 6 * _F_l_dn * _h_e / finite(_p_f * (_n_p + 1), "p_f * (n_p + 1)") + 2 * _F_q_dn * _h_e / _w_f, "N_dn");
  const _s_dn = finite(_N_dn / finite(2 * _n_p, "2 * n_p") * (1 + _m / finite(2 * _n, "2 * n")) / _A_s, "s_dn");
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? _s_up + _s_dn : Math.abs(_s_up - _s_dn), "sigma_r");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * (_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _D_low = finite(_n_eq / 5000000 * (_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * Math.pow(_y_1, 3) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  const _range0 = finite(_m > finite(0 * _w_f, "0 * w_f") ? 1 : 0, "range0");
  return [_m, _n, _N_up, _s_up, _N_dn, _s_dn, _sigma_r, _k_t, _x_1, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _D_low, _D_high, _range0];
}

export function fatigueEyeRoot_partialFactors(v: Readonly<Record<"F_z_up" | "F_z_dn" | "F_l_up" | "F_l_dn" | "F_q_up" | "F_q_dn" | "t_e" | "h_e" | "a_w" | "l_0" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _F_z_up = v.F_z_up;
  const _F_z_dn = v.F_z_dn;
  const _F_l_up = v.F_l_up;
  const _F_l_dn = v.F_l_dn;
  const _F_q_up = v.F_q_up;
  const _F_q_dn = v.F_q_dn;
  const _t_e = v.t_e;
  const _h_e = v.h_e;
  const _a_w = v.a_w;
  const _l_0 = v.l_0;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _l_w = finite(_l_0 - 2 * _a_w, "l_w");
  const _f_up = finite(_F_z_up / finite(2 * _l_w, "2 * l_w") + 3 * _F_l_up * _h_e / finite(Math.pow(_l_w, 2), "l_w ^ 2") + _F_q_up * _h_e / finite(_t_e * _l_w, "t_e * l_w"), "f_up");
  const _s_up = finite(Math.sqrt(Math.pow(_f_up, 2) + Math.pow(finite(_F_q_up / finite(2 * _l_w, "2 * l_w"), "F_q_up / (2 * l_w)"), 2) + Math.pow(finite(_F_l_up / finite(2 * _l_w, "2 * l_w"), "F_l_up / (2 * l_w)"), 2)) / _a_w, "s_up");
  const _f_dn = finite(_F_z_dn / finite(2 * _l_w, "2 * l_w") + 3 * _F_l_dn * _h_e / finite(Math.pow(_l_w, 2), "l_w ^ 2") + _F_q_dn * _h_e / finite(_t_e * _l_w, "t_e * l_w"), "f_dn");
  const _s_dn = finite(Math.sqrt(Math.pow(_f_dn, 2) + Math.pow(finite(_F_q_dn / finite(2 * _l_w, "2 * l_w"), "F_q_dn / (2 * l_w)"), 2) + Math.pow(finite(_F_l_dn / finite(2 * _l_w, "2 * l_w"), "F_l_dn / (2 * l_w)"), 2)) / _a_w, "s_dn");
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? _s_up + _s_dn : Math.abs(_s_up - _s_dn), "sigma_r");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * (_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _D_low = finite(_n_eq / 5000000 * (_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * Math.pow(_y_1, 3) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  const _range0 = finite(_l_w > finite(0 * _l_0, "0 * l_0") ? 1 : 0, "range0");
  return [_l_w, _f_up, _s_up, _f_dn, _s_dn, _sigma_r, _k_t, _x_1, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _D_low, _D_high, _range0];
}

export function fatigueEyeRoot_allowableStress(v: Readonly<Record<"F_z_up" | "F_z_dn" | "F_l_up" | "F_l_dn" | "F_q_up" | "F_q_dn" | "t_e" | "h_e" | "a_w" | "l_0" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _F_z_up = v.F_z_up;
  const _F_z_dn = v.F_z_dn;
  const _F_l_up = v.F_l_up;
  const _F_l_dn = v.F_l_dn;
  const _F_q_up = v.F_q_up;
  const _F_q_dn = v.F_q_dn;
  const _t_e = v.t_e;
  const _h_e = v.h_e;
  const _a_w = v.a_w;
  const _l_0 = v.l_0;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _l_w = finite(_l_0 - 2 * _a_w, "l_w");
  const _f_up = finite(_F_z_up / finite(2 * _l_w, "2 * l_w") + 3 * _F_l_up * _h_e / finite(Math.pow(_l_w, 2), "l_w ^ 2") + _F_q_up * _h_e / finite(_t_e * _l_w, "t_e * l_w"), "f_up");
  const _s_up = finite(Math.sqrt(Math.pow(_f_up, 2) + Math.pow(finite(_F_q_up / finite(2 * _l_w, "2 * l_w"), "F_q_up / (2 * l_w)"), 2) + Math.pow(finite(_F_l_up / finite(2 * _l_w, "2 * l_w"), "F_l_up / (2 * l_w)"), 2)) / _a_w, "s_up");
  const _f_dn = finite(_F_z_dn / finite(2 * _l_w, "2 * l_w") + 3 * _F_l_dn * _h_e / finite(Math.pow(_l_w, 2), "l_w ^ 2") + _F_q_dn * _h_e / finite(_t_e * _l_w, "t_e * l_w"), "f_dn");
  const _s_dn = finite(Math.sqrt(Math.pow(_f_dn, 2) + Math.pow(finite(_F_q_dn / finite(2 * _l_w, "2 * l_w"), "F_q_dn / (2 * l_w)"), 2) + Math.pow(finite(_F_l_dn / finite(2 * _l_w, "2 * l_w"), "F_l_dn / (2 * l_w)"), 2)) / _a_w, "s_dn");
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? _s_up + _s_dn : Math.abs(_s_up - _s_dn), "sigma_r");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * (_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _D_low = finite(_n_eq / 5000000 * (_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * Math.pow(_y_1, 3) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  const _range0 = finite(_l_w > finite(0 * _l_0, "0 * l_0") ? 1 : 0, "range0");
  return [_l_w, _f_up, _s_up, _f_dn, _s_dn, _sigma_r, _k_t, _x_1, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _D_low, _D_high, _range0];
}

export function fatigueEyeHole_partialFactors(v: Readonly<Record<"F_up" | "F_dn" | "t_e" | "d_0" | "c_e" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _F_up = v.F_up;
  const _F_dn = v.F_dn;
  const _t_e = v.t_e;
  const _d_0 = v.d_0;
  const _c_e = v.c_e;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _r_d = finite(_d_0 / finite(2 * _c_e + _d_0, "2 * c_e + d_0"), "r_d");
  const _K_t = finite(12.882 - 52.714 * _r_d + 89.762 * Math.pow(_r_d, 2) - 51.667 * Math.pow(_r_d, 3), "K_t");
  const _s_up = finite(_K_t * _F_up / finite(2 * _c_e * _t_e, "2 * c_e * t_e"), "s_up");
  const _s_dn = finite(_K_t * _F_dn / finite(2 * _c_e * _t_e, "2 * c_e * t_e"), "s_dn");
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? _s_up + _s_dn : Math.abs(_s_up - _s_dn), "sigma_r");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * (_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _D_low = finite(_n_eq / 5000000 * (_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * Math.pow(_y_1, 3) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  const _range0 = finite(0.15 <= _r_d && _r_d <= 0.75 ? 1 : 0, "range0");
  return [_r_d, _K_t, _s_up, _s_dn, _sigma_r, _k_t, _x_1, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _D_low, _D_high, _range0];
}

export function fatigueEyeHole_allowableStress(v: Readonly<Record<"F_up" | "F_dn" | "t_e" | "d_0" | "c_e" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _F_up = v.F_up;
  const _F_dn = v.F_dn;
  const _t_e = v.t_e;
  const _d_0 = v.d_0;
  const _c_e = v.c_e;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _r_d = finite(_d_0 / finite(2 * _c_e + _d_0, "2 * c_e + d_0"), "r_d");
  const _K_t = finite(12.882 - 52.714 * _r_d + 89.762 * Math.pow(_r_d, 2) - 51.667 * Math.pow(_r_d, 3), "K_t");
  const _s_up = finite(_K_t * _F_up / finite(2 * _c_e * _t_e, "2 * c_e * t_e"), "s_up");
  const _s_dn = finite(_K_t * _F_dn / finite(2 * _c_e * _t_e, "2 * c_e * t_e"), "s_dn");
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? _s_up + _s_dn : Math.abs(_s_up - _s_dn), "sigma_r");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * (_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _D_low = finite(_n_eq / 5000000 * (_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * Math.pow(_y_1, 3) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  const _range0 = finite(0.15 <= _r_d && _r_d <= 0.75 ? 1 : 0, "range0");
  return [_r_d, _K_t, _s_up, _s_dn, _sigma_r, _k_t, _x_1, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _D_low, _D_high, _range0];
}

export function fatigueEyeOnTube_partialFactors(v: Readonly<Record<"M_up" | "M_dn" | "N_up" | "N_dn" | "W_el" | "A" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _M_up = v.M_up;
  const _M_dn = v.M_dn;
  const _N_up = v.N_up;
  const _N_dn = v.N_dn;
  const _W_el = v.W_el;
  const _A = v.A;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _s_up = finite(_M_up / _W_el + _N_up / _A, "s_up");
  const _s_dn = finite(_M_dn / _W_el + _N_dn / _A, "s_dn");
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? _s_up + _s_dn : Math.abs(_s_up - _s_dn), "sigma_r");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * (_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _D_low = finite(_n_eq / 5000000 * (_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * Math.pow(_y_1, 3) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  return [_s_up, _s_dn, _sigma_r, _k_t, _x_1, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _D_low, _D_high];
}

export function fatigueEyeOnTube_allowableStress(v: Readonly<Record<"M_up" | "M_dn" | "N_up" | "N_dn" | "W_el" | "A" | "z" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "n_eq" | "n_s" | "k_s" | "DFF", number>>): number[] {
  const _M_up = v.M_up;
  const _M_dn = v.M_dn;
  const _N_up = v.N_up;
  const _N_dn = v.N_dn;
  const _W_el = v.W_el;
  const _A = v.A;
  const _z = v.z;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _k_s = v.k_s;
  const _DFF = v.DFF;
  const _s_up = finite(_M_up / _W_el + _N_up / _A, "s_up");
  const _s_dn = finite(_M_dn / _W_el + _N_dn / _A, "s_dn");
  const _sigma_r = finite(finite(Math.abs(_z), "abs(z)") < 1 ? _s_up + _s_dn : Math.abs(_s_up - _s_dn), "sigma_r");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_s = finite(_k_s * _x_1, "x_s");
  const _D_w = finite(_n_eq / _N_k * (_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)), "D_w");
  const _D_s = finite(_n_s / _N_k * (_x_s > 1 ? Math.pow(_x_s, _m_1) : Math.pow(_x_s, _m_2)), "D_s");
  const _D = finite(_D_w + _D_s, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _D_low = finite(_n_eq / 5000000 * (_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * Math.pow(_y_1, 3) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  return [_s_up, _s_dn, _sigma_r, _k_t, _x_1, _x_s, _D_w, _D_s, _D, _D_lim, _sigma_D, _y_1, _D_low, _D_high];
}

export function fatigueSealedWall_partialFactors(v: Readonly<Record<"z" | "rho" | "g" | "gamma_F" | "round" | "H" | "B" | "t" | "z_m" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "DFF" | "n_eq" | "n_s", number>>): number[] {
  const _z = v.z;
  const _rho = v.rho;
  const _g = v.g;
  const _gamma_F = v.gamma_F;
  const _round = v.round;
  const _H = v.H;
  const _B = v.B;
  const _t = v.t;
  const _z_m = v.z_m;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _DFF = v.DFF;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _p = finite(_gamma_F * _rho * _g * _z, "p");
  const _b_w = finite(_B - 2 * _t, "b_w");
  const _h_w = finite(_H - 2 * _t, "h_w");
  const _m_c = finite(_p * (Math.pow(_b_w, 2) - _b_w * _h_w + Math.pow(_h_w, 2)) / 12, "m_c");
  const _m_m = finite(_p * Math.pow(finite(Math.max(_b_w, _h_w), "max(b_w, h_w)"), 2) / 8 - _m_c, "m_m");
  const _sigma_b = finite(_round > 0 ? 0 * _p : 6 * Math.max(_m_c, _m_m) / finite(Math.pow(_t, 2), "t ^ 2"), "sigma_b");
  const _sigma_n = finite(_p * Math.max(_B, _H) / finite(2 * _t, "2 * t"), "sigma_n");
  const _sigma = finite(_sigma_b + _sigma_n, "sigma");
  const _sigma_r = finite(_sigma, "sigma_r");
  const _k_s = finite(2 * _z_m / _z, "k_s");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_h = finite(_k_s * _x_1, "x_h");
  const _D_d = finite(_n_eq / _N_k * (_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)), "D_d");
  const _D_h = finite(_n_s / _N_k * (_x_h > 1 ? Math.pow(_x_h, _m_1) : Math.pow(_x_h, _m_2)), "D_h");
  const _D = finite(_D_d + _D_h, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _D_low = finite(_n_eq / 5000000 * (_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * Math.pow(_y_1, 3) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  return [_p, _b_w, _h_w, _m_c, _m_m, _sigma_b, _sigma_n, _sigma, _sigma_r, _k_s, _k_t, _x_1, _x_h, _D_d, _D_h, _D, _D_lim, _sigma_D, _y_1, _D_low, _D_high];
}

export function fatigueSealedWall_allowableStress(v: Readonly<Record<"z" | "rho" | "g" | "gamma_F" | "round" | "H" | "B" | "t" | "z_m" | "sigma_C" | "S_k" | "N_k" | "m_1" | "m_2" | "t_d" | "t_ref" | "k_x" | "DFF" | "n_eq" | "n_s", number>>): number[] {
  const _z = v.z;
  const _rho = v.rho;
  const _g = v.g;
  const _gamma_F = v.gamma_F;
  const _round = v.round;
  const _H = v.H;
  const _B = v.B;
  const _t = v.t;
  const _z_m = v.z_m;
  const _sigma_C = v.sigma_C;
  const _S_k = v.S_k;
  const _N_k = v.N_k;
  const _m_1 = v.m_1;
  const _m_2 = v.m_2;
  const _t_d = v.t_d;
  const _t_ref = v.t_ref;
  const _k_x = v.k_x;
  const _DFF = v.DFF;
  const _n_eq = v.n_eq;
  const _n_s = v.n_s;
  const _p = finite(_gamma_F * _rho * _g * _z, "p");
  const _b_w = finite(_B - 2 * _t, "b_w");
  const _h_w = finite(_H - 2 * _t, "h_w");
  const _m_c = finite(_p * (Math.pow(_b_w, 2) - _b_w * _h_w + Math.pow(_h_w, 2)) / 12, "m_c");
  const _m_m = finite(_p * Math.pow(finite(Math.max(_b_w, _h_w), "max(b_w, h_w)"), 2) / 8 - _m_c, "m_m");
  const _sigma_b = finite(_round > 0 ? 0 * _p : 6 * Math.max(_m_c, _m_m) / finite(Math.pow(_t, 2), "t ^ 2"), "sigma_b");
  const _sigma_n = finite(_p * Math.max(_B, _H) / finite(2 * _t, "2 * t"), "sigma_n");
  const _sigma = finite(_sigma_b + _sigma_n, "sigma");
  const _sigma_r = finite(_sigma, "sigma_r");
  const _k_s = finite(2 * _z_m / _z, "k_s");
  const _k_t = finite(_t_d > _t_ref ? Math.pow(finite(_t_d / _t_ref, "t_d / t_ref"), _k_x) : 1, "k_t");
  const _x_1 = finite(_k_t * _sigma_r / _S_k, "x_1");
  const _x_h = finite(_k_s * _x_1, "x_h");
  const _D_d = finite(_n_eq / _N_k * (_x_1 > 1 ? Math.pow(_x_1, _m_1) : Math.pow(_x_1, _m_2)), "D_d");
  const _D_h = finite(_n_s / _N_k * (_x_h > 1 ? Math.pow(_x_h, _m_1) : Math.pow(_x_h, _m_2)), "D_h");
  const _D = finite(_D_d + _D_h, "D");
  const _D_lim = finite(1 / _DFF, "D_lim");
  const _sigma_D = finite(Math.cbrt(2 / 5) * _sigma_C, "sigma_D");
  const _y_1 = finite(_k_t * _sigma_r / _sigma_D, "y_1");
  const _D_low = finite(_n_eq / 5000000 * (_y_1 > 1 ? Math.pow(_y_1, 3) : Math.pow(_y_1, 5)), "D_low");
  const _D_high = finite(1.02 * 3 / 5000000 * (_n_eq * Math.pow(_y_1, 3) + _n_s * Math.pow(finite(_k_s * _y_1, "k_s * y_1"), 3)), "D_high");
  return [_p, _b_w, _h_w, _m_c, _m_m, _sigma_b, _sigma_n, _sigma, _sigma_r, _k_s, _k_t, _x_1, _x_h, _D_d, _D_h, _D, _D_lim, _sigma_D, _y_1, _D_low, _D_high];
}

export function anodeMass_partialFactors(v: Readonly<Record<"A_c" | "A_b" | "i_m" | "f_cm" | "t_f" | "N" | "m_a" | "epsilon" | "u" | "epsilon_0", number>>): number[] {
  const _A_c = v.A_c;
  const _A_b = v.A_b;
  const _i_m = v.i_m;
  const _f_cm = v.f_cm;
  const _t_f = v.t_f;
  const _N = v.N;
  const _m_a = v.m_a;
  const _epsilon = v.epsilon;
  const _u = v.u;
  const _epsilon_0 = v.epsilon_0;
  const _I_m = finite(_i_m * (_f_cm * _A_c + _A_b), "I_m");
  const _M_Ed = finite(_I_m * _t_f / finite(_u * _epsilon, "u * epsilon"), "M_Ed");
  const _M_Rd = finite(_N * _m_a, "M_Rd");
  const _M_low = finite(_i_m * (_f_cm * _A_c + _A_b) * _t_f / _epsilon_0, "M_low");
  const _M_high = finite(_i_m * (_A_c + _A_b) * _t_f / finite(_u * _epsilon, "u * epsilon"), "M_high");
  return [_I_m, _M_Ed, _M_Rd, _M_low, _M_high];
}

export function anodeMass_allowableStress(v: Readonly<Record<"A_c" | "A_b" | "i_m" | "f_cm" | "t_f" | "N" | "m_a" | "epsilon" | "u" | "epsilon_0", number>>): number[] {
  const _A_c = v.A_c;
  const _A_b = v.A_b;
  const _i_m = v.i_m;
  const _f_cm = v.f_cm;
  const _t_f = v.t_f;
  const _N = v.N;
  const _m_a = v.m_a;
  const _epsilon = v.epsilon;
  const _u = v.u;
  const _epsilon_0 = v.epsilon_0;
  const _I_m = finite(_i_m * (_f_cm * _A_c + _A_b), "I_m");
  const _M_Ed = finite(_I_m * _t_f / finite(_u * _epsilon, "u * epsilon"), "M_Ed");
  const _M_Rd = finite(_N * _m_a, "M_Rd");
  const _M_low = finite(_i_m * (_f_cm * _A_c + _A_b) * _t_f / _epsilon_0, "M_low");
  const _M_high = finite(_i_m * (_A_c + _A_b) * _t_f / finite(_u * _epsilon, "u * epsilon"), "M_high");
  return [_I_m, _M_Ed, _M_Rd, _M_low, _M_high];
}

export function anodeCurrentInitial_partialFactors(v: Readonly<Record<"A_c" | "A_b" | "i_i" | "f_ci" | "N" | "m_a" | "rho_w" | "dE" | "rho_a" | "flush" | "L" | "b" | "d_k" | "k_d", number>>): number[] {
  const _A_c = v.A_c;
  const _A_b = v.A_b;
  const _i_i = v.i_i;
  const _f_ci = v.f_ci;
  const _N = v.N;
  const _m_a = v.m_a;
  const _rho_w = v.rho_w;
  const _dE = v.dE;
  const _rho_a = v.rho_a;
  const _flush = v.flush;
  const _L = v.L;
  const _b = v.b;
  const _d_k = v.d_k;
  const _k_d = v.k_d;
  const _I_Ed = finite(_i_i * (_f_ci * _A_c + _A_b), "I_Ed");
  const _L_a = finite(_L, "L_a");
  const _r_a = finite(Math.sqrt(1 * _m_a / finite(_rho_a * Math.PI * _L_a, "rho_a * pi * L_a") + Math.pow(finite(_d_k / 2, "d_k / 2"), 2)), "r_a");
  const _x_a = finite(Math.sqrt(1 + Math.pow(finite(_r_a / finite(2 * _L_a, "2 * L_a"), "r_a / (2 * L_a)"), 2)), "x_a");
  const _R_bar = finite(_k_d * _rho_w / finite(2 * Math.PI * _L_a, "2 * pi * L_a") * (_L_a >= finite(4 * _r_a, "4 * r_a") ? Math.log(4 * _L_a / _r_a) - 1 : Math.log(2 * _L_a / _r_a * (1 + _x_a)) + _r_a / finite(2 * _L_a, "2 * L_a") - _x_a), "R_bar");
  const _R_a = finite(_flush > 0 ? _rho_w / finite(_L + _b, "L + b") : _R_bar, "R_a");
  const _I_a = finite(_dE / _R_a, "I_a");
  const _I_Rd = finite(_N * _I_a, "I_Rd");
  const _r_in = finite(Math.sqrt(1 * _m_a / finite(_rho_a * Math.PI * _L, "rho_a * pi * L") + Math.pow(finite(_d_k / 2, "d_k / 2"), 2)), "r_in");
  const _r_out = finite(Math.sqrt(Math.pow(finite(_L / 2, "L / 2"), 2) + _m_a / finite(_rho_a * Math.PI * 0.9 * _L, "rho_a * pi * 0.9 * L") + Math.pow(finite(_d_k / 2, "d_k / 2"), 2)), "r_out");
  const _R_high = finite(_flush > 0 ? _rho_w / finite(2 * Math.sqrt(_L * _b / Math.PI), "2 * sqrt(L * b / pi)") : _k_d * _rho_w / finite(4 * Math.PI * _r_in, "4 * pi * r_in"), "R_high");
  const _R_low = finite(_flush > 0 ? _rho_w / finite(8 * Math.sqrt(_L * _b / Math.PI), "8 * sqrt(L * b / pi)") : _rho_w / finite(4 * Math.PI * _r_out, "4 * pi * r_out"), "R_low");
  const _I_low = finite(_N * _dE / _R_high, "I_low");
  const _I_high = finite(_N * _dE / _R_low, "I_high");
  return [_I_Ed, _L_a, _r_a, _x_a, _R_bar, _R_a, _I_a, _I_Rd, _r_in, _r_out, _R_high, _R_low, _I_low, _I_high];
}

export function anodeCurrentInitial_allowableStress(v: Readonly<Record<"A_c" | "A_b" | "i_i" | "f_ci" | "N" | "m_a" | "rho_w" | "dE" | "rho_a" | "flush" | "L" | "b" | "d_k" | "k_d", number>>): number[] {
  const _A_c = v.A_c;
  const _A_b = v.A_b;
  const _i_i = v.i_i;
  const _f_ci = v.f_ci;
  const _N = v.N;
  const _m_a = v.m_a;
  const _rho_w = v.rho_w;
  const _dE = v.dE;
  const _rho_a = v.rho_a;
  const _flush = v.flush;
  const _L = v.L;
  const _b = v.b;
  const _d_k = v.d_k;
  const _k_d = v.k_d;
  const _I_Ed = finite(_i_i * (_f_ci * _A_c + _A_b), "I_Ed");
  const _L_a = finite(_L, "L_a");
  const _r_a = finite(Math.sqrt(1 * _m_a / finite(_rho_a * Math.PI * _L_a, "rho_a * pi * L_a") + Math.pow(finite(_d_k / 2, "d_k / 2"), 2)), "r_a");
  const _x_a = finite(Math.sqrt(1 + Math.pow(finite(_r_a / finite(2 * _L_a, "2 * L_a"), "r_a / (2 * L_a)"), 2)), "x_a");
  const _R_bar = finite(_k_d * _rho_w / finite(2 * Math.PI * _L_a, "2 * pi * L_a") * (_L_a >= finite(4 * _r_a, "4 * r_a") ? Math.log(4 * _L_a / _r_a) - 1 : Math.log(2 * _L_a / _r_a * (1 + _x_a)) + _r_a / finite(2 * _L_a, "2 * L_a") - _x_a), "R_bar");
  const _R_a = finite(_flush > 0 ? _rho_w / finite(_L + _b, "L + b") : _R_bar, "R_a");
  const _I_a = finite(_dE / _R_a, "I_a");
  const _I_Rd = finite(_N * _I_a, "I_Rd");
  const _r_in = finite(Math.sqrt(1 * _m_a / finite(_rho_a * Math.PI * _L, "rho_a * pi * L") + Math.pow(finite(_d_k / 2, "d_k / 2"), 2)), "r_in");
  const _r_out = finite(Math.sqrt(Math.pow(finite(_L / 2, "L / 2"), 2) + _m_a / finite(_rho_a * Math.PI * 0.9 * _L, "rho_a * pi * 0.9 * L") + Math.pow(finite(_d_k / 2, "d_k / 2"), 2)), "r_out");
  const _R_high = finite(_flush > 0 ? _rho_w / finite(2 * Math.sqrt(_L * _b / Math.PI), "2 * sqrt(L * b / pi)") : _k_d * _rho_w / finite(4 * Math.PI * _r_in, "4 * pi * r_in"), "R_high");
  const _R_low = finite(_flush > 0 ? _rho_w / finite(8 * Math.sqrt(_L * _b / Math.PI), "8 * sqrt(L * b / pi)") : _rho_w / finite(4 * Math.PI * _r_out, "4 * pi * r_out"), "R_low");
  const _I_low = finite(_N * _dE / _R_high, "I_low");
  const _I_high = finite(_N * _dE / _R_low, "I_high");
  return [_I_Ed, _L_a, _r_a, _x_a, _R_bar, _R_a, _I_a, _I_Rd, _r_in, _r_out, _R_high, _R_low, _I_low, _I_high];
}

export function anodeCurrentFinal_partialFactors(v: Readonly<Record<"A_c" | "A_b" | "i_f" | "f_cf" | "N" | "m_a" | "u" | "rho_w" | "dE" | "rho_a" | "flush" | "L" | "b" | "d_k" | "k_d", number>>): number[] {
  const _A_c = v.A_c;
  const _A_b = v.A_b;
  const _i_f = v.i_f;
  const _f_cf = v.f_cf;
  const _N = v.N;
  const _m_a = v.m_a;
  const _u = v.u;
  const _rho_w = v.rho_w;
  const _dE = v.dE;
  const _rho_a = v.rho_a;
  const _flush = v.flush;
  const _L = v.L;
  const _b = v.b;
  const _d_k = v.d_k;
  const _k_d = v.k_d;
  const _I_Ed = finite(_i_f * (_f_cf * _A_c + _A_b), "I_Ed");
  const _L_a = finite(0.9 * _L, "L_a");
  const _r_a = finite(Math.sqrt((1 - _u) * _m_a / finite(_rho_a * Math.PI * _L_a, "rho_a * pi * L_a") + Math.pow(finite(_d_k / 2, "d_k / 2"), 2)), "r_a");
  const _x_a = finite(Math.sqrt(1 + Math.pow(finite(_r_a / finite(2 * _L_a, "2 * L_a"), "r_a / (2 * L_a)"), 2)), "x_a");
  const _R_bar = finite(_k_d * _rho_w / finite(2 * Math.PI * _L_a, "2 * pi * L_a") * (_L_a >= finite(4 * _r_a, "4 * r_a") ? Math.log(4 * _L_a / _r_a) - 1 : Math.log(2 * _L_a / _r_a * (1 + _x_a)) + _r_a / finite(2 * _L_a, "2 * L_a") - _x_a), "R_bar");
  const _R_a = finite(_flush > 0 ? _rho_w / finite(_L + _b, "L + b") : _R_bar, "R_a");
  const _I_a = finite(_dE / _R_a, "I_a");
  const _I_Rd = finite(_N * _I_a, "I_Rd");
  const _r_in = finite(Math.sqrt((1 - _u) * _m_a / finite(_rho_a * Math.PI * _L, "rho_a * pi * L") + Math.pow(finite(_d_k / 2, "d_k / 2"), 2)), "r_in");
  const _r_out = finite(Math.sqrt(Math.pow(finite(_L / 2, "L / 2"), 2) + _m_a / finite(_rho_a * Math.PI * 0.9 * _L, "rho_a * pi * 0.9 * L") + Math.pow(finite(_d_k / 2, "d_k / 2"), 2)), "r_out");
  const _R_high = finite(_flush > 0 ? _rho_w / finite(2 * Math.sqrt(_L * _b / Math.PI), "2 * sqrt(L * b / pi)") : _k_d * _rho_w / finite(4 * Math.PI * _r_in, "4 * pi * r_in"), "R_high");
  const _R_low = finite(_flush > 0 ? _rho_w / finite(8 * Math.sqrt(_L * _b / Math.PI), "8 * sqrt(L * b / pi)") : _rho_w / finite(4 * Math.PI * _r_out, "4 * pi * r_out"), "R_low");
  const _I_low = finite(_N * _dE / _R_high, "I_low");
  const _I_high = finite(_N * _dE / _R_low, "I_high");
  return [_I_Ed, _L_a, _r_a, _x_a, _R_bar, _R_a, _I_a, _I_Rd, _r_in, _r_out, _R_high, _R_low, _I_low, _I_high];
}

export function anodeCurrentFinal_allowableStress(v: Readonly<Record<"A_c" | "A_b" | "i_f" | "f_cf" | "N" | "m_a" | "u" | "rho_w" | "dE" | "rho_a" | "flush" | "L" | "b" | "d_k" | "k_d", number>>): number[] {
  const _A_c = v.A_c;
  const _A_b = v.A_b;
  const _i_f = v.i_f;
  const _f_cf = v.f_cf;
  const _N = v.N;
  const _m_a = v.m_a;
  const _u = v.u;
  const _rho_w = v.rho_w;
  const _dE = v.dE;
  const _rho_a = v.rho_a;
  const _flush = v.flush;
  const _L = v.L;
  const _b = v.b;
  const _d_k = v.d_k;
  const _k_d = v.k_d;
  const _I_Ed = finite(_i_f * (_f_cf * _A_c + _A_b), "I_Ed");
  const _L_a = finite(0.9 * _L, "L_a");
  const _r_a = finite(Math.sqrt((1 - _u) * _m_a / finite(_rho_a * Math.PI * _L_a, "rho_a * pi * L_a") + Math.pow(finite(_d_k / 2, "d_k / 2"), 2)), "r_a");
  const _x_a = finite(Math.sqrt(1 + Math.pow(finite(_r_a / finite(2 * _L_a, "2 * L_a"), "r_a / (2 * L_a)"), 2)), "x_a");
  const _R_bar = finite(_k_d * _rho_w / finite(2 * Math.PI * _L_a, "2 * pi * L_a") * (_L_a >= finite(4 * _r_a, "4 * r_a") ? Math.log(4 * _L_a / _r_a) - 1 : Math.log(2 * _L_a / _r_a * (1 + _x_a)) + _r_a / finite(2 * _L_a, "2 * L_a") - _x_a), "R_bar");
  const _R_a = finite(_flush > 0 ? _rho_w / finite(_L + _b, "L + b") : _R_bar, "R_a");
  const _I_a = finite(_dE / _R_a, "I_a");
  const _I_Rd = finite(_N * _I_a, "I_Rd");
  const _r_in = finite(Math.sqrt((1 - _u) * _m_a / finite(_rho_a * Math.PI * _L, "rho_a * pi * L") + Math.pow(finite(_d_k / 2, "d_k / 2"), 2)), "r_in");
  const _r_out = finite(Math.sqrt(Math.pow(finite(_L / 2, "L / 2"), 2) + _m_a / finite(_rho_a * Math.PI * 0.9 * _L, "rho_a * pi * 0.9 * L") + Math.pow(finite(_d_k / 2, "d_k / 2"), 2)), "r_out");
  const _R_high = finite(_flush > 0 ? _rho_w / finite(2 * Math.sqrt(_L * _b / Math.PI), "2 * sqrt(L * b / pi)") : _k_d * _rho_w / finite(4 * Math.PI * _r_in, "4 * pi * r_in"), "R_high");
  const _R_low = finite(_flush > 0 ? _rho_w / finite(8 * Math.sqrt(_L * _b / Math.PI), "8 * sqrt(L * b / pi)") : _rho_w / finite(4 * Math.PI * _r_out, "4 * pi * r_out"), "R_low");
  const _I_low = finite(_N * _dE / _R_high, "I_low");
  const _I_high = finite(_N * _dE / _R_low, "I_high");
  return [_I_Ed, _L_a, _r_a, _x_a, _R_bar, _R_a, _I_a, _I_Rd, _r_in, _r_out, _R_high, _R_low, _I_low, _I_high];
}

export const compiled: Readonly<Record<string, Readonly<Record<string, Run>>>> = {
  "panel-bending-four-sides": { "partial factors": panelBendingFourSides_partialFactors as Run, "allowable stress": panelBendingFourSides_allowableStress as Run },
  "panel-bending-two-sides": { "partial factors": panelBendingTwoSides_partialFactors as Run, "allowable stress": panelBendingTwoSides_allowableStress as Run },
  "panel-bending-bolts": { "partial factors": panelBendingBolts_partialFactors as Run, "allowable stress": panelBendingBolts_allowableStress as Run },
  "panel-bending-bolts-by-places": { "partial factors": panelBendingBoltsByPlaces_partialFactors as Run, "allowable stress": panelBendingBoltsByPlaces_allowableStress as Run },
  "panel-stress": { "partial factors": panelStress_partialFactors as Run, "allowable stress": panelStress_allowableStress as Run },
  "panel-shear": { "partial factors": panelShear_partialFactors as Run, "allowable stress": panelShear_allowableStress as Run },
  "panel-deflection-four-sides": { "partial factors": panelDeflectionFourSides_partialFactors as Run, "allowable stress": panelDeflectionFourSides_allowableStress as Run },
  "panel-deflection-four-sides-by-solution": { "partial factors": panelDeflectionFourSidesBySolution_partialFactors as Run, "allowable stress": panelDeflectionFourSidesBySolution_allowableStress as Run },
  "panel-deflection-two-sides": { "partial factors": panelDeflectionTwoSides_partialFactors as Run, "allowable stress": panelDeflectionTwoSides_allowableStress as Run },
  "panel-deflection-two-sides-by-solution": { "partial factors": panelDeflectionTwoSidesBySolution_partialFactors as Run, "allowable stress": panelDeflectionTwoSidesBySolution_allowableStress as Run },
  "panel-deflection-bolts": { "partial factors": panelDeflectionBolts_partialFactors as Run, "allowable stress": panelDeflectionBolts_allowableStress as Run },
  "panel-deflection-bolts-by-solution": { "partial factors": panelDeflectionBoltsBySolution_partialFactors as Run, "allowable stress": panelDeflectionBoltsBySolution_allowableStress as Run },
  "panel-deflection-bolts-by-places": { "partial factors": panelDeflectionBoltsByPlaces_partialFactors as Run, "allowable stress": panelDeflectionBoltsByPlaces_allowableStress as Run },
  "bolt-tension": { "partial factors": boltTension_partialFactors as Run, "allowable stress": boltTension_allowableStress as Run },
  "bolt-tension-by-solution": { "partial factors": boltTensionBySolution_partialFactors as Run, "allowable stress": boltTensionBySolution_allowableStress as Run },
  "bolt-tension-by-places": { "partial factors": boltTensionByPlaces_partialFactors as Run, "allowable stress": boltTensionByPlaces_allowableStress as Run },
  "bolt-shear": { "partial factors": boltShear_partialFactors as Run, "allowable stress": boltShear_allowableStress as Run },
  "bolt-shear-by-solution": { "partial factors": boltShearBySolution_partialFactors as Run, "allowable stress": boltShearBySolution_allowableStress as Run },
  "bolt-shear-by-places": { "partial factors": boltShearByPlaces_partialFactors as Run, "allowable stress": boltShearByPlaces_allowableStress as Run },
  "bolt-combined": { "partial factors": boltCombined_partialFactors as Run, "allowable stress": boltCombined_allowableStress as Run },
  "bolt-combined-by-solution": { "partial factors": boltCombinedBySolution_partialFactors as Run, "allowable stress": boltCombinedBySolution_allowableStress as Run },
  "bolt-combined-by-places": { "partial factors": boltCombinedByPlaces_partialFactors as Run, "allowable stress": boltCombinedByPlaces_allowableStress as Run },
  "bolt-bearing-panel": { "partial factors": boltBearingPanel_partialFactors as Run, "allowable stress": boltBearingPanel_allowableStress as Run },
  "bolt-bearing-panel-by-solution": { "partial factors": boltBearingPanelBySolution_partialFactors as Run, "allowable stress": boltBearingPanelBySolution_allowableStress as Run },
  "bolt-bearing-panel-by-places": { "partial factors": boltBearingPanelByPlaces_partialFactors as Run, "allowable stress": boltBearingPanelByPlaces_allowableStress as Run },
  "bolt-bearing-tube": { "partial factors": boltBearingTube_partialFactors as Run, "allowable stress": boltBearingTube_allowableStress as Run },
  "bolt-bearing-tube-by-solution": { "partial factors": boltBearingTubeBySolution_partialFactors as Run, "allowable stress": boltBearingTubeBySolution_allowableStress as Run },
  "bolt-bearing-tube-by-places": { "partial factors": boltBearingTubeByPlaces_partialFactors as Run, "allowable stress": boltBearingTubeByPlaces_allowableStress as Run },
  "bolt-tear-out": { "partial factors": boltTearOut_partialFactors as Run, "allowable stress": boltTearOut_allowableStress as Run },
  "bolt-tear-out-by-solution": { "partial factors": boltTearOutBySolution_partialFactors as Run, "allowable stress": boltTearOutBySolution_allowableStress as Run },
  "bolt-tear-out-by-places": { "partial factors": boltTearOutByPlaces_partialFactors as Run, "allowable stress": boltTearOutByPlaces_allowableStress as Run },
  "bolt-block-tear": { "partial factors": boltBlockTear_partialFactors as Run, "allowable stress": boltBlockTear_allowableStress as Run },
  "bolt-block-tear-by-solution": { "partial factors": boltBlockTearBySolution_partialFactors as Run, "allowable stress": boltBlockTearBySolution_allowableStress as Run },
  "bolt-block-tear-by-places": { "partial factors": boltBlockTearByPlaces_partialFactors as Run, "allowable stress": boltBlockTearByPlaces_allowableStress as Run },
  "bolt-block-tear-by-solution-by-places": { "partial factors": boltBlockTearBySolutionByPlaces_partialFactors as Run, "allowable stress": boltBlockTearBySolutionByPlaces_allowableStress as Run },
  "bolt-pull-through": { "partial factors": boltPullThrough_partialFactors as Run, "allowable stress": boltPullThrough_allowableStress as Run },
  "bolt-pull-through-by-solution": { "partial factors": boltPullThroughBySolution_partialFactors as Run, "allowable stress": boltPullThroughBySolution_allowableStress as Run },
  "bolt-pull-through-by-places": { "partial factors": boltPullThroughByPlaces_partialFactors as Run, "allowable stress": boltPullThroughByPlaces_allowableStress as Run },
  "bolt-wall-pull": { "partial factors": boltWallPull_partialFactors as Run, "allowable stress": boltWallPull_allowableStress as Run },
  "bolt-wall-pull-by-solution": { "partial factors": boltWallPullBySolution_partialFactors as Run, "allowable stress": boltWallPullBySolution_allowableStress as Run },
  "bolt-wall-pull-by-places": { "partial factors": boltWallPullByPlaces_partialFactors as Run, "allowable stress": boltWallPullByPlaces_allowableStress as Run },
  "bolt-anchorage": { "partial factors": boltAnchorage_partialFactors as Run, "allowable stress": boltAnchorage_allowableStress as Run },
  "bolt-anchorage-by-solution": { "partial factors": boltAnchorageBySolution_partialFactors as Run, "allowable stress": boltAnchorageBySolution_allowableStress as Run },
  "bolt-anchorage-by-places": { "partial factors": boltAnchorageByPlaces_partialFactors as Run, "allowable stress": boltAnchorageByPlaces_allowableStress as Run },
  "bolt-anchorage-by-solution-by-places": { "partial factors": boltAnchorageBySolutionByPlaces_partialFactors as Run, "allowable stress": boltAnchorageBySolutionByPlaces_allowableStress as Run },
  "bolt-stud": { "partial factors": boltStud_partialFactors as Run, "allowable stress": boltStud_allowableStress as Run },
  "bolt-stud-by-solution": { "partial factors": boltStudBySolution_partialFactors as Run, "allowable stress": boltStudBySolution_allowableStress as Run },
  "bolt-stud-by-places": { "partial factors": boltStudByPlaces_partialFactors as Run, "allowable stress": boltStudByPlaces_allowableStress as Run },
  "bolt-stud-by-solution-by-places": { "partial factors": boltStudBySolutionByPlaces_partialFactors as Run, "allowable stress": boltStudBySolutionByPlaces_allowableStress as Run },
  "bolt-thread-engagement": { "partial factors": boltThreadEngagement_partialFactors as Run, "allowable stress": boltThreadEngagement_allowableStress as Run },
  "bolt-thread-engagement-by-solution": { "partial factors": boltThreadEngagementBySolution_partialFactors as Run, "allowable stress": boltThreadEngagementBySolution_allowableStress as Run },
  "bolt-thread-engagement-by-places": { "partial factors": boltThreadEngagementByPlaces_partialFactors as Run, "allowable stress": boltThreadEngagementByPlaces_allowableStress as Run },
  "bolt-thread-engagement-by-solution-by-places": { "partial factors": boltThreadEngagementBySolutionByPlaces_partialFactors as Run, "allowable stress": boltThreadEngagementBySolutionByPlaces_allowableStress as Run },
  "bolt-pad-weld": { "partial factors": boltPadWeld_partialFactors as Run, "allowable stress": boltPadWeld_allowableStress as Run },
  "bolt-pad-weld-by-solution": { "partial factors": boltPadWeldBySolution_partialFactors as Run, "allowable stress": boltPadWeldBySolution_allowableStress as Run },
  "bolt-pad-weld-by-places": { "partial factors": boltPadWeldByPlaces_partialFactors as Run, "allowable stress": boltPadWeldByPlaces_allowableStress as Run },
  "bolt-pad-weld-by-solution-by-places": { "partial factors": boltPadWeldBySolutionByPlaces_partialFactors as Run, "allowable stress": boltPadWeldBySolutionByPlaces_allowableStress as Run },
  "bolt-clamp-slip": { "partial factors": boltClampSlip_partialFactors as Run, "allowable stress": boltClampSlip_allowableStress as Run },
  "bolt-clamp-slip-by-solution": { "partial factors": boltClampSlipBySolution_partialFactors as Run, "allowable stress": boltClampSlipBySolution_allowableStress as Run },
  "bolt-clamp-slip-by-places": { "partial factors": boltClampSlipByPlaces_partialFactors as Run, "allowable stress": boltClampSlipByPlaces_allowableStress as Run },
  "bolt-clamp-slip-by-solution-by-places": { "partial factors": boltClampSlipBySolutionByPlaces_partialFactors as Run, "allowable stress": boltClampSlipBySolutionByPlaces_allowableStress as Run },
  "bolt-slip": { "partial factors": boltSlip_partialFactors as Run, "allowable stress": boltSlip_allowableStress as Run },
  "bolt-slip-by-solution": { "partial factors": boltSlipBySolution_partialFactors as Run, "allowable stress": boltSlipBySolution_allowableStress as Run },
  "bolt-slip-by-places": { "partial factors": boltSlipByPlaces_partialFactors as Run, "allowable stress": boltSlipByPlaces_allowableStress as Run },
  "bolt-separation": { "partial factors": boltSeparation_partialFactors as Run, "allowable stress": boltSeparation_allowableStress as Run },
  "bolt-separation-by-solution": { "partial factors": boltSeparationBySolution_partialFactors as Run, "allowable stress": boltSeparationBySolution_allowableStress as Run },
  "bolt-separation-by-places": { "partial factors": boltSeparationByPlaces_partialFactors as Run, "allowable stress": boltSeparationByPlaces_allowableStress as Run },
  "bolt-separation-by-solution-by-places": { "partial factors": boltSeparationBySolutionByPlaces_partialFactors as Run, "allowable stress": boltSeparationBySolutionByPlaces_allowableStress as Run },
  "bolt-sleeve": { "partial factors": boltSleeve_partialFactors as Run, "allowable stress": boltSleeve_allowableStress as Run },
  "bolt-washer-pressure": { "partial factors": boltWasherPressure_partialFactors as Run, "allowable stress": boltWasherPressure_allowableStress as Run },
  "bolt-washer-pressure-by-solution": { "partial factors": boltWasherPressureBySolution_partialFactors as Run, "allowable stress": boltWasherPressureBySolution_allowableStress as Run },
  "bolt-washer-pressure-by-places": { "partial factors": boltWasherPressureByPlaces_partialFactors as Run, "allowable stress": boltWasherPressureByPlaces_allowableStress as Run },
  "bolt-edge-distance": { "partial factors": boltEdgeDistance_partialFactors as Run, "allowable stress": boltEdgeDistance_allowableStress as Run },
  "bolt-edge-distance-largest": { "partial factors": boltEdgeDistanceLargest_partialFactors as Run, "allowable stress": boltEdgeDistanceLargest_allowableStress as Run },
  "bolt-pitch": { "partial factors": boltPitch_partialFactors as Run, "allowable stress": boltPitch_allowableStress as Run },
  "bolt-pitch-largest": { "partial factors": boltPitchLargest_partialFactors as Run, "allowable stress": boltPitchLargest_allowableStress as Run },
  "bolt-access": { "partial factors": boltAccess_partialFactors as Run, "allowable stress": boltAccess_allowableStress as Run },
  "bolt-hydrogen": { "partial factors": boltHydrogen_partialFactors as Run, "allowable stress": boltHydrogen_allowableStress as Run },
  "bolt-group-in-plane": { "partial factors": boltGroupInPlane_partialFactors as Run, "allowable stress": boltGroupInPlane_allowableStress as Run },
  "bolt-group-in-plane-by-places": { "partial factors": boltGroupInPlaneByPlaces_partialFactors as Run, "allowable stress": boltGroupInPlaneByPlaces_allowableStress as Run },
  "bolt-group-ultimate": { "partial factors": boltGroupUltimate_partialFactors as Run, "allowable stress": boltGroupUltimate_allowableStress as Run },
  "bolt-group-ultimate-by-places": { "partial factors": boltGroupUltimateByPlaces_partialFactors as Run, "allowable stress": boltGroupUltimateByPlaces_allowableStress as Run },
  "weld-directional": { "partial factors": weldDirectional_partialFactors as Run, "allowable stress": weldDirectional_allowableStress as Run },
  "weld-directional-by-solution": { "partial factors": weldDirectionalBySolution_partialFactors as Run, "allowable stress": weldDirectionalBySolution_allowableStress as Run },
  "weld-throat": { "partial factors": weldThroat_partialFactors as Run, "allowable stress": weldThroat_allowableStress as Run },
  "weld-throat-by-solution": { "partial factors": weldThroatBySolution_partialFactors as Run, "allowable stress": weldThroatBySolution_allowableStress as Run },
  "weld-size": { "partial factors": weldSize_partialFactors as Run, "allowable stress": weldSize_allowableStress as Run },
  "weld-edge": { "partial factors": weldEdge_partialFactors as Run, "allowable stress": weldEdge_allowableStress as Run },
  "weld-corner": { "partial factors": weldCorner_partialFactors as Run, "allowable stress": weldCorner_allowableStress as Run },
  "weld-corner-by-solution": { "partial factors": weldCornerBySolution_partialFactors as Run, "allowable stress": weldCornerBySolution_allowableStress as Run },
  "weld-flare": { "partial factors": weldFlare_partialFactors as Run, "allowable stress": weldFlare_allowableStress as Run },
  "weld-length": { "partial factors": weldLength_partialFactors as Run, "allowable stress": weldLength_allowableStress as Run },
  "weld-intermittent": { "partial factors": weldIntermittent_partialFactors as Run, "allowable stress": weldIntermittent_allowableStress as Run },
  "weld-end-return": { "partial factors": weldEndReturn_partialFactors as Run, "allowable stress": weldEndReturn_allowableStress as Run },
  "weld-aluminium": { "partial factors": weldAluminium_partialFactors as Run, "allowable stress": weldAluminium_allowableStress as Run },
  "weld-aluminium-by-solution": { "partial factors": weldAluminiumBySolution_partialFactors as Run, "allowable stress": weldAluminiumBySolution_allowableStress as Run },
  "weld-group-in-plane": { "partial factors": weldGroupInPlane_partialFactors as Run, "allowable stress": weldGroupInPlane_allowableStress as Run },
  "weld-group-ultimate": { "partial factors": weldGroupUltimate_partialFactors as Run, "allowable stress": weldGroupUltimate_allowableStress as Run },
  "weld-group-across": { "partial factors": weldGroupAcross_partialFactors as Run, "allowable stress": weldGroupAcross_allowableStress as Run },
  "weld-plug": { "partial factors": weldPlug_partialFactors as Run, "allowable stress": weldPlug_allowableStress as Run },
  "weld-plug-size": { "partial factors": weldPlugSize_partialFactors as Run, "allowable stress": weldPlugSize_allowableStress as Run },
  "weld-plug-pitch": { "partial factors": weldPlugPitch_partialFactors as Run, "allowable stress": weldPlugPitch_allowableStress as Run },
  "tube-bending": { "partial factors": tubeBending_partialFactors as Run, "allowable stress": tubeBending_allowableStress as Run },
  "tube-bending-by-solution": { "partial factors": tubeBendingBySolution_partialFactors as Run, "allowable stress": tubeBendingBySolution_allowableStress as Run },
  "tube-shear": { "partial factors": tubeShear_partialFactors as Run, "allowable stress": tubeShear_allowableStress as Run },
  "tube-shear-by-solution": { "partial factors": tubeShearBySolution_partialFactors as Run, "allowable stress": tubeShearBySolution_allowableStress as Run },
  "tube-torsion": { "partial factors": tubeTorsion_partialFactors as Run, "allowable stress": tubeTorsion_allowableStress as Run },
  "tube-torsion-by-solution": { "partial factors": tubeTorsionBySolution_partialFactors as Run, "allowable stress": tubeTorsionBySolution_allowableStress as Run },
  "tube-axial-bending": { "partial factors": tubeAxialBending_partialFactors as Run, "allowable stress": tubeAxialBending_allowableStress as Run },
  "tube-axial-bending-by-solution": { "partial factors": tubeAxialBendingBySolution_partialFactors as Run, "allowable stress": tubeAxialBendingBySolution_allowableStress as Run },
  "tube-wall-line": { "partial factors": tubeWallLine_partialFactors as Run, "allowable stress": tubeWallLine_allowableStress as Run },
  "tube-wall-pressure": { "partial factors": tubeWallPressure_partialFactors as Run, "allowable stress": tubeWallPressure_allowableStress as Run },
  "tube-wall-bent": { "partial factors": tubeWallBent_partialFactors as Run, "allowable stress": tubeWallBent_allowableStress as Run },
  "tube-wall-bent-by-solution": { "partial factors": tubeWallBentBySolution_partialFactors as Run, "allowable stress": tubeWallBentBySolution_allowableStress as Run },
  "tube-wall-collapse": { "partial factors": tubeWallCollapse_partialFactors as Run, "allowable stress": tubeWallCollapse_allowableStress as Run },
  "tube-deflection": { "partial factors": tubeDeflection_partialFactors as Run, "allowable stress": tubeDeflection_allowableStress as Run },
  "tube-deflection-by-solution": { "partial factors": tubeDeflectionBySolution_partialFactors as Run, "allowable stress": tubeDeflectionBySolution_allowableStress as Run },
  "crossing-joint": { "partial factors": crossingJoint_partialFactors as Run, "allowable stress": crossingJoint_allowableStress as Run },
  "crossing-joint-by-solution": { "partial factors": crossingJointBySolution_partialFactors as Run, "allowable stress": crossingJointBySolution_allowableStress as Run },
  "crossing-side-wall": { "partial factors": crossingSideWall_partialFactors as Run, "allowable stress": crossingSideWall_allowableStress as Run },
  "crossing-side-wall-by-solution": { "partial factors": crossingSideWallBySolution_partialFactors as Run, "allowable stress": crossingSideWallBySolution_allowableStress as Run },
  "crossing-effective-width": { "partial factors": crossingEffectiveWidth_partialFactors as Run, "allowable stress": crossingEffectiveWidth_allowableStress as Run },
  "crossing-effective-width-by-solution": { "partial factors": crossingEffectiveWidthBySolution_partialFactors as Run, "allowable stress": crossingEffectiveWidthBySolution_allowableStress as Run },
  "crossing-round": { "partial factors": crossingRound_partialFactors as Run, "allowable stress": crossingRound_allowableStress as Run },
  "crossing-round-by-solution": { "partial factors": crossingRoundBySolution_partialFactors as Run, "allowable stress": crossingRoundBySolution_allowableStress as Run },
  "crossing-throat": { "partial factors": crossingThroat_partialFactors as Run, "allowable stress": crossingThroat_allowableStress as Run },
  "crossing-throat-by-solution": { "partial factors": crossingThroatBySolution_partialFactors as Run, "allowable stress": crossingThroatBySolution_allowableStress as Run },
  "crossing-weld": { "partial factors": crossingWeld_partialFactors as Run, "allowable stress": crossingWeld_allowableStress as Run },
  "crossing-flare": { "partial factors": crossingFlare_partialFactors as Run, "allowable stress": crossingFlare_allowableStress as Run },
  "eye-net-tension": { "partial factors": eyeNetTension_partialFactors as Run, "allowable stress": eyeNetTension_allowableStress as Run },
  "eye-net-tension-by-solution": { "partial factors": eyeNetTensionBySolution_partialFactors as Run, "allowable stress": eyeNetTensionBySolution_allowableStress as Run },
  "eye-tear-out": { "partial factors": eyeTearOut_partialFactors as Run, "allowable stress": eyeTearOut_allowableStress as Run },
  "eye-tear-out-by-solution": { "partial factors": eyeTearOutBySolution_partialFactors as Run, "allowable stress": eyeTearOutBySolution_allowableStress as Run },
  "eye-bearing": { "partial factors": eyeBearing_partialFactors as Run, "allowable stress": eyeBearing_allowableStress as Run },
  "eye-bearing-by-solution": { "partial factors": eyeBearingBySolution_partialFactors as Run, "allowable stress": eyeBearingBySolution_allowableStress as Run },
  "eye-foot": { "partial factors": eyeFoot_partialFactors as Run, "allowable stress": eyeFoot_allowableStress as Run },
  "eye-foot-by-solution": { "partial factors": eyeFootBySolution_partialFactors as Run, "allowable stress": eyeFootBySolution_allowableStress as Run },
  "eye-weld": { "partial factors": eyeWeld_partialFactors as Run, "allowable stress": eyeWeld_allowableStress as Run },
  "eye-weld-by-solution": { "partial factors": eyeWeldBySolution_partialFactors as Run, "allowable stress": eyeWeldBySolution_allowableStress as Run },
  "eye-weld-ultimate": { "partial factors": eyeWeldUltimate_partialFactors as Run, "allowable stress": eyeWeldUltimate_allowableStress as Run },
  "eye-weld-ultimate-by-solution": { "partial factors": eyeWeldUltimateBySolution_partialFactors as Run, "allowable stress": eyeWeldUltimateBySolution_allowableStress as Run },
  "eye-cheek-weld": { "partial factors": eyeCheekWeld_partialFactors as Run, "allowable stress": eyeCheekWeld_allowableStress as Run },
  "eye-cheek-weld-by-solution": { "partial factors": eyeCheekWeldBySolution_partialFactors as Run, "allowable stress": eyeCheekWeldBySolution_allowableStress as Run },
  "eye-foot-plate": { "partial factors": eyeFootPlate_partialFactors as Run, "allowable stress": eyeFootPlate_allowableStress as Run },
  "eye-foot-plate-by-solution": { "partial factors": eyeFootPlateBySolution_partialFactors as Run, "allowable stress": eyeFootPlateBySolution_allowableStress as Run },
  "eye-foot-bolts": { "partial factors": eyeFootBolts_partialFactors as Run, "allowable stress": eyeFootBolts_allowableStress as Run },
  "eye-foot-bolts-by-solution": { "partial factors": eyeFootBoltsBySolution_partialFactors as Run, "allowable stress": eyeFootBoltsBySolution_allowableStress as Run },
  "eye-foot-wall": { "partial factors": eyeFootWall_partialFactors as Run, "allowable stress": eyeFootWall_allowableStress as Run },
  "eye-foot-wall-by-solution": { "partial factors": eyeFootWallBySolution_partialFactors as Run, "allowable stress": eyeFootWallBySolution_allowableStress as Run },
  "eye-tube-wall": { "partial factors": eyeTubeWall_partialFactors as Run, "allowable stress": eyeTubeWall_allowableStress as Run },
  "eye-tube-wall-by-solution": { "partial factors": eyeTubeWallBySolution_partialFactors as Run, "allowable stress": eyeTubeWallBySolution_allowableStress as Run },
  "suspension-slack": { "partial factors": suspensionSlack_partialFactors as Run, "allowable stress": suspensionSlack_allowableStress as Run },
  "hanging-stability": { "partial factors": hangingStability_partialFactors as Run, "allowable stress": hangingStability_allowableStress as Run },
  "lift-a-frame": { "partial factors": liftAFrame_partialFactors as Run, "allowable stress": liftAFrame_allowableStress as Run },
  "lift-winch": { "partial factors": liftWinch_partialFactors as Run, "allowable stress": liftWinch_allowableStress as Run },
  "lift-line": { "partial factors": liftLine_partialFactors as Run, "allowable stress": liftLine_allowableStress as Run },
  "lift-sling": { "partial factors": liftSling_partialFactors as Run, "allowable stress": liftSling_allowableStress as Run },
  "lift-shackle": { "partial factors": liftShackle_partialFactors as Run, "allowable stress": liftShackle_allowableStress as Run },
  "lift-slack": { "partial factors": liftSlack_partialFactors as Run, "allowable stress": liftSlack_allowableStress as Run },
  "lift-lowering-speed": { "partial factors": liftLoweringSpeed_partialFactors as Run, "allowable stress": liftLoweringSpeed_allowableStress as Run },
  "lift-drain": { "partial factors": liftDrain_partialFactors as Run, "allowable stress": liftDrain_allowableStress as Run },
  "recovery-rope": { "partial factors": recoveryRope_partialFactors as Run, "allowable stress": recoveryRope_allowableStress as Run },
  "recovery-float-reserve": { "partial factors": recoveryFloatReserve_partialFactors as Run, "allowable stress": recoveryFloatReserve_allowableStress as Run },
  "recovery-float-visible": { "partial factors": recoveryFloatVisible_partialFactors as Run, "allowable stress": recoveryFloatVisible_allowableStress as Run },
  "recovery-float-depth": { "partial factors": recoveryFloatDepth_partialFactors as Run, "allowable stress": recoveryFloatDepth_allowableStress as Run },
  "recovery-release-load": { "partial factors": recoveryReleaseLoad_partialFactors as Run, "allowable stress": recoveryReleaseLoad_allowableStress as Run },
  "recovery-release-least-pull": { "partial factors": recoveryReleaseLeastPull_partialFactors as Run, "allowable stress": recoveryReleaseLeastPull_allowableStress as Run },
  "recovery-release-endurance": { "partial factors": recoveryReleaseEndurance_partialFactors as Run, "allowable stress": recoveryReleaseEndurance_allowableStress as Run },
  "recovery-acoustic": { "partial factors": recoveryAcoustic_partialFactors as Run, "allowable stress": recoveryAcoustic_allowableStress as Run },
  "recovery-canister": { "partial factors": recoveryCanister_partialFactors as Run, "allowable stress": recoveryCanister_allowableStress as Run },
  "recovery-canister-bolts": { "partial factors": recoveryCanisterBolts_partialFactors as Run, "allowable stress": recoveryCanisterBolts_allowableStress as Run },
  "panel-buckling-by-hand": { "partial factors": panelBucklingByHand_partialFactors as Run, "allowable stress": panelBucklingByHand_allowableStress as Run },
  "panel-buckling": { "partial factors": panelBuckling_partialFactors as Run, "allowable stress": panelBuckling_allowableStress as Run },
  "fatigue-weld-root": { "partial factors": fatigueWeldRoot_partialFactors as Run, "allowable stress": fatigueWeldRoot_allowableStress as Run },
  "fatigue-weld-toe": { "partial factors": fatigueWeldToe_partialFactors as Run, "allowable stress": fatigueWeldToe_allowableStress as Run },
  "fatigue-weld-corner": { "partial factors": fatigueWeldCorner_partialFactors as Run, "allowable stress": fatigueWeldCorner_allowableStress as Run },
  "fatigue-weld-end": { "partial factors": fatigueWeldEnd_partialFactors as Run, "allowable stress": fatigueWeldEnd_allowableStress as Run },
  "fatigue-weld-intermittent": { "partial factors": fatigueWeldIntermittent_partialFactors as Run, "allowable stress": fatigueWeldIntermittent_allowableStress as Run },
  "fatigue-weld-plug": { "partial factors": fatigueWeldPlug_partialFactors as Run, "allowable stress": fatigueWeldPlug_allowableStress as Run },
  "fatigue-weld-plug-shear": { "partial factors": fatigueWeldPlugShear_partialFactors as Run, "allowable stress": fatigueWeldPlugShear_allowableStress as Run },
  "fatigue-plate-edge": { "partial factors": fatiguePlateEdge_partialFactors as Run, "allowable stress": fatiguePlateEdge_allowableStress as Run },
  "fatigue-bolt-hole-panel": { "partial factors": fatigueBoltHolePanel_partialFactors as Run, "allowable stress": fatigueBoltHolePanel_allowableStress as Run },
  "fatigue-bolt-hole-tube": { "partial factors": fatigueBoltHoleTube_partialFactors as Run, "allowable stress": fatigueBoltHoleTube_allowableStress as Run },
  "fatigue-bolt-tension": { "partial factors": fatigueBoltTension_partialFactors as Run, "allowable stress": fatigueBoltTension_allowableStress as Run },
  "fatigue-bolt-shear": { "partial factors": fatigueBoltShear_partialFactors as Run, "allowable stress": fatigueBoltShear_allowableStress as Run },
  "fatigue-crossing-toe": { "partial factors": fatigueCrossingToe_partialFactors as Run, "allowable stress": fatigueCrossingToe_allowableStress as Run },
  "fatigue-crossing-root": { "partial factors": fatigueCrossingRoot_partialFactors as Run, "allowable stress": fatigueCrossingRoot_allowableStress as Run },
  "fatigue-eye-foot": { "partial factors": fatigueEyeFoot_partialFactors as Run, "allowable stress": fatigueEyeFoot_allowableStress as Run },
  "fatigue-eye-foot-bolts": { "partial factors": fatigueEyeFootBolts_partialFactors as Run, "allowable stress": fatigueEyeFootBolts_allowableStress as Run },
  "fatigue-eye-root": { "partial factors": fatigueEyeRoot_partialFactors as Run, "allowable stress": fatigueEyeRoot_allowableStress as Run },
  "fatigue-eye-hole": { "partial factors": fatigueEyeHole_partialFactors as Run, "allowable stress": fatigueEyeHole_allowableStress as Run },
  "fatigue-eye-on-tube": { "partial factors": fatigueEyeOnTube_partialFactors as Run, "allowable stress": fatigueEyeOnTube_allowableStress as Run },
  "fatigue-sealed-wall": { "partial factors": fatigueSealedWall_partialFactors as Run, "allowable stress": fatigueSealedWall_allowableStress as Run },
  "anode-mass": { "partial factors": anodeMass_partialFactors as Run, "allowable stress": anodeMass_allowableStress as Run },
  "anode-current-initial": { "partial factors": anodeCurrentInitial_partialFactors as Run, "allowable stress": anodeCurrentInitial_allowableStress as Run },
  "anode-current-final": { "partial factors": anodeCurrentFinal_partialFactors as Run, "allowable stress": anodeCurrentFinal_allowableStress as Run },
};
