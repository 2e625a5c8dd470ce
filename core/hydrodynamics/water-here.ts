import type { Model } from '../model.ts';
import { localGravity, waterDensityOf } from '../water/sea-water.ts';
import { seaPressure } from '../water/sea-pressure.ts';
import { viscosity } from '../water/viscosity.ts';
import type { WaterQuantity, WaterReport } from '../water/water-report.ts';
import { waveMotion } from '../water/waves/dispersion.ts';
import { inPlaneMasses } from './in-plane-masses.ts';
import { seaAtPlate } from './sea-at-plate.ts';

type Said = Pick<WaterReport, 'unjudged'> & { readonly quantities: Record<string, WaterQuantity> };

/** The water where the plate hangs, what is left there of wave and sea, and the added mass of the plate in its own plane. SI. */
export function waterHere(model: Model): Said {
  const { document } = model;
  const { water, hydrodynamics = {} } = document;
  const quantities: Record<string, WaterQuantity> = {};
  const put = (id: string, value: number, unit: string, title: string, source: string, more: Partial<WaterQuantity> = {}) => (quantities[id] = { value, unit, title, source, ...more }); // prettier-ignore
  const gravity = localGravity(document);
  put('water.gravity', gravity, 'm/s^2', 'Gravity at the plate’s place', water.latitude ? 'WELMEC, by latitude' : 'standard: no latitude is stated'); // prettier-ignore
  const { salinity: S, temperature } = water;
  const known = S !== undefined && temperature !== undefined;
  const depth = water.depth.si;
  const pressure = known ? seaPressure(S, 1.00024 * (temperature.si - 273.15), depth, gravity) : waterDensityOf(document) * gravity * depth; // prettier-ignore
  put('water.pressure', pressure, 'Pa', 'Pressure of the water at the plate, above the air’s', known ? 'column of EOS-80' : 'density, gravity and depth'); // prettier-ignore
  if (known) put('water.viscosity', viscosity(S, temperature.si), 'Pa*s', 'Viscosity of the water', 'Sharqawy, Lienhard and Zubair 2010'); // prettier-ignore
  const { wave, bed } = hydrodynamics;
  const sea = seaAtPlate(document);
  if (sea) {
    put('sea.heightAtPlate', sea.significantHeight, 'm', 'Significant height of the water’s rise at the plate', 'linear wave theory over the spectrum'); // prettier-ignore
    put('sea.velocityAtPlate', sea.significantVelocity, 'm/s', 'Its significant vertical velocity', 'linear wave theory over the spectrum'); // prettier-ignore
  }
  if (wave || sea) {
    const at = wave ? waveMotion(wave.height.si / 2, (2 * Math.PI) / wave.period.si, bed?.si ?? Infinity, -depth, gravity) : sea!.peak; // prettier-ignore
    const of = wave ? 'the wave' : 'a wave of significant height and peak period';
    put('wave.length', at.length, 'm', `Length of ${of}`, 'linear wave theory');
    put('wave.motionAtPlate', at.rise, 'm', `Amplitude of the water’s rise at the plate in ${of}`, 'linear wave theory'); // prettier-ignore
    put('wave.velocityAtPlate', at.w, 'm/s', 'Its velocity', 'linear wave theory');
  }
  const inPlane = inPlaneMasses(model);
  for (const [id, title] of [['surge', 'Added mass along x, in the plate’s plane'], ['sway', 'Added mass along y, in the plate’s plane'], ['yaw', 'Added inertia about the upright axis through the middle']] as const) {
    const { low, best, high } = inPlane[id];
    put(`addedMass.${id}`, best, id === 'yaw' ? 'kg*m^2' : 'kg', title, 'bars in two dimensions: DNV-RP-C205 (from memory)', { low, high });
  } // prettier-ignore
  return {
    quantities,
    unjudged: known ? [] : [{ id: 'water.viscosity', reason: 'salinity and temperature are not stated' }],
  };
}
