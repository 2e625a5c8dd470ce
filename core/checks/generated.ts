// Made by `npm run generate` from the expressions in core/checks; do not edit.
import { finite } from '../derive/finite.ts';

type Run = (v: Readonly<Record<string, number>>, k: Readonly<Record<string, (...values: number[]) => number>>) => number[];

export function panelBendingFourSides_partialFactors(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "f_y" | "h" | "gamma_M0", number>>, k: Readonly<Record<"plate.hinged.stress" | "plate.held.stress", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _f_y = v.f_y;
  const _h = v.h;
  const _gamma_M0 = v.gamma_M0;
  const _sigma_hinged = finite(k["plate.hinged.stress"](_a, _b, _t, _E, _nu, _p), "sigma_hinged");
  const _sigma_held = finite(k["plate.held.stress"](_a, _b, _t, _E, _nu, _p), "sigma_held");
  const _sigma_Ed = finite(_h > 0 ? _sigma_held : _sigma_hinged, "sigma_Ed");
  const _sigma_Rd = finite(_f_y / _gamma_M0, "sigma_Rd");
  const _sigma_strip = finite(0.75 * _p * Math.pow(finite(Math.min(_a, _b), "min(a, b)"), 2) / finite(Math.pow(_t, 2), "t ^ 2"), "sigma_strip");
  const _sigma_low = finite(_sigma_strip / 6, "sigma_low");
  return [_sigma_hinged, _sigma_held, _sigma_Ed, _sigma_Rd, _sigma_strip, _sigma_low];
}

export function panelBendingFourSides_allowableStress(v: Readonly<Record<"p" | "a" | "b" | "t" | "E" | "nu" | "f_y" | "h" | "Omega_b", number>>, k: Readonly<Record<"plate.hinged.stress" | "plate.held.stress", (...values: number[]) => number>>): number[] {
  const _p = v.p;
  const _a = v.a;
  const _b = v.b;
  const _t = v.t;
  const _E = v.E;
  const _nu = v.nu;
  const _f_y = v.f_y;
  const _h = v.h;
  const _Omega_b = v.Omega_b;
  const _sigma_hinged = finite(k["plate.hinged.stress"](_a, _b, _t, _E, _nu, _p), "sigma_hinged");
  const _sigma_held = finite(k["plate.held.stress"](_a, _b, _t, _E, _nu, _p), "sigma_held");
  const _sigma_Ed = finite(_h > 0 ? _sigma_held : _sigma_hinged, "sigma_Ed");
  const _sigma_Rd = finite(_f_y / _Omega_b, "sigma_Rd");
  const _sigma_strip = finite(0.75 * _p * Math.pow(finite(Math.min(_a, _b), "min(a, b)"), 2) / finite(Math.pow(_t, 2), "t ^ 2"), "sigma_strip");
  const _sigma_low = finite(_sigma_strip / 6, "sigma_low");
  return [_sigma_hinged, _sigma_held, _sigma_Ed, _sigma_Rd, _sigma_strip, _sigma_low];
}

export const compiled: Readonly<Record<string, Readonly<Record<string, Run>>>> = {
  "panel-bending-four-sides": { "partial factors": panelBendingFourSides_partialFactors as Run, "allowable stress": panelBendingFourSides_allowableStress as Run },
};
