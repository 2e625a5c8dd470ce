import type { PlateDocument } from '../document/schema.ts';
import { refusal } from '../refusal.ts';
import { gravityAt } from './gravity-at.ts';
import { seaPressure } from './sea-pressure.ts';

/** Standard acceleration of gravity, m/s². Source: ISO 80000-3. */
export const g = 9.80665;

/**
 * Density of sea water in kg/m³ at practical salinity S, temperature in K (ITS-90) and depth in m.
 * Pressure is that of the water column above it under the local gravity, see `seaPressure`.
 * Refuses what lies outside the formula: S 0 to 42, −2 to 40 °C, 0 to 10,000 m.
 * Source: EOS-80, see `eos80`; temperature scales: t68 = 1.00024 t90.
 */
export function seaWaterDensity(salinity: number, temperature: number, depth = 0, gravity = g): number {
  const t68 = 1.00024 * (temperature - 273.15);
  if (!(depth >= 0 && depth <= 10_000))
    throw refusal({
      what: `A depth of ${depth} m is outside the formula for sea water`,
      where: { path: 'water.depth' },
      mend: 'Give a depth from 0 to 10,000 m, or give the density.',
    });
  return eos80(salinity, t68, seaPressure(salinity, t68, depth, gravity) / 1e5);
}

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

/** Density of the document's water in kg/m³: as stated, or of sea water at its salinity, temperature and depth.
 *  Refuses a document that gives neither, and one whose stated density is off the sea water's by more than 0.1 %. */
export function waterDensityOf({ water }: Pick<PlateDocument, 'water'>): number {
  const { density, salinity, temperature, depth } = water;
  const where = { path: 'water' };
  const sea =
    salinity !== undefined && temperature
      ? seaWaterDensity(salinity, temperature.si, depth.si, localGravity({ water }))
      : null;
  if (density && sea !== null && Math.abs(density.si - sea) > 1e-3 * sea)
    throw refusal({
      what: `The water’s density is given twice: ${density.typed}, and ${sea.toFixed(2)} kg/m^3 by salinity ${salinity} and ${temperature!.typed}`,
      where,
      mend: 'Keep the density, or keep salinity and temperature.',
    });
  const known = density ? density.si : sea;
  if (known === null)
    throw refusal({
      what: 'The water’s density is not given',
      where,
      mend: 'Give density (1025 kg/m^3), or salinity and temperature.',
    });
  return known;
}

/** Local gravity, m/s², for pressure and waves: by the document's latitude, standard where none is given. Weights take the standard. */
export const localGravity = ({ water }: Pick<PlateDocument, 'water'>): number =>
  water.latitude ? gravityAt(water.latitude.si) : g;

/** c0 + c1 t + c2 t² + … */
const series = (t: number, ...c: readonly number[]): number => c.reduceRight((sum, term) => sum * t + term, 0);
