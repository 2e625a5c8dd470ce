import { refusal } from '../refusal.ts';

/**
 * One-atmosphere and high-pressure equation of state of sea water, EOS-80:
 *   ρ(S, t, p) = ρ(S, t, 0) / (1 − p / K(S, t, p)),   K = K_0 + A p + B p²
 * S practical salinity, t °C (IPTS-68), p bar above the atmosphere; kg/m³.
 * Source: UNESCO Technical Papers in Marine Science 44 (1983); coefficients from memory, held to its check values.
 */
export function eos80(S: number, t: number, p: number): number {
  if (!(S >= 0 && S <= 42))
    throw refusal({
      what: `A salinity of ${S} is outside the formula for sea water`,
      where: { path: 'water.salinity' },
      mend: 'Give a practical salinity from 0 to 42, or give the density.',
    });
  if (!(t >= -2.001 && t <= 40.02))
    throw refusal({
      what: `A temperature of ${t.toFixed(2)} °C is outside the formula for sea water`,
      where: { path: 'water.temperature' },
      mend: 'Give a temperature from −2 to 40 degC, or give the density.',
    });
  const S32 = S * Math.sqrt(S);
  const rho_w = series(t, 999.842594, 6.793952e-2, -9.09529e-3, 1.001685e-4, -1.120083e-6, 6.536332e-9);
  const rho_0 =
    rho_w +
    series(t, 0.824493, -4.0899e-3, 7.6438e-5, -8.2467e-7, 5.3875e-9) * S +
    series(t, -5.72466e-3, 1.0227e-4, -1.6546e-6) * S32 +
    4.8314e-4 * S ** 2;
  if (p === 0) return rho_0;
  const K_w = series(t, 19652.21, 148.4206, -2.327105, 1.360477e-2, -5.155288e-5);
  const K_0 =
    K_w + series(t, 54.6746, -0.603459, 1.09987e-2, -6.167e-5) * S + series(t, 7.944e-2, 1.6483e-2, -5.3009e-4) * S32;
  const A =
    series(t, 3.239908, 1.43713e-3, 1.16092e-4, -5.77905e-7) +
    series(t, 2.2838e-3, -1.0981e-5, -1.6078e-6) * S +
    1.91075e-4 * S32;
  const B = series(t, 8.50935e-5, -6.12293e-6, 5.2787e-8) + series(t, -9.9348e-7, 2.0816e-8, 9.1697e-10) * S;
  return rho_0 / (1 - p / (K_0 + A * p + B * p ** 2));
}

/** c0 + c1 t + c2 t² + … */
const series = (t: number, ...c: readonly number[]): number => c.reduceRight((sum, term) => sum * t + term, 0);
