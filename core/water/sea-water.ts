import type { PlateDocument } from '../document/schema.ts';
import { refusal } from '../refusal.ts';
import { eos80 } from './eos80.ts';
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
