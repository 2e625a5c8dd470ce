import type { Model } from '../model.ts';
import { oncePerModel } from '../once-per-model.ts';
import { forceOfCycle, forceOfPairs, type MotionForce } from '../water/motion-force.ts';
import { heaveSpreads, type PlateWater } from '../water/heave-spread.ts';
import { localGravity } from '../water/sea-water.ts';
import type { Spread } from '../water/spread.ts';
import { waveMotion } from '../water/waves/dispersion.ts';
import { extremes } from '../water/waves/extremes.ts';
import { seaSpectrum } from '../water/waves/sea-spectrum.ts';
import { massesOn } from './coarse-lattice.ts';
import { hydrodynamicsOf } from './hydrodynamics-of.ts';
import { motionInWave } from './motion-in-wave.ts';
import { coarsePlate, movingCurve } from './moving-curve.ts';
import { stormExtremes } from './sea-extremes.ts';
import { testedWater } from './tested-water.ts';
import { throughSea } from './through-sea.ts';

/** A way in which the motion of the plate through the water is told. */
export type ForceWay = 'motion' | 'record' | 'wave' | 'sea';

/** Largest force of the water on the plate in a motion. SI. */
export interface WaterForce {
  readonly way: ForceWay;
  /** Of the largest swing through the water, m, and its period, s. */
  readonly amplitude: number;
  readonly period: number;
  /** How the motion is had, in words. */
  readonly told: string;
  /** kg, and drag coefficient times area, m², at that amplitude. */
  readonly addedMass: Spread;
  readonly dragArea: Spread;
  readonly best: MotionForce;
  /** Peaks with the least and the largest coefficients, N. */
  readonly low: number;
  readonly high: number;
  /** Why the drag is beyond what is known. */
  readonly outside: string | null;
}

export interface NoForce {
  readonly way: ForceWay;
  readonly missing: string;
}

/** What a way says of the motion, before added mass and drag are known. */
interface Moved {
  readonly way: ForceWay;
  readonly amplitude: number;
  readonly period: number;
  readonly told: string;
  /** Of the water itself as it passes a plate, m: its acceleration presses on the volume of the plate too. */
  readonly water: number;
}

/**
 * Largest force of the water in each way that the document tells the motion: as a sine, as a record, in a regular wave and as
 * the most probable largest of a storm. Under a float the plate's motion through the water is solved for; without one it is
 * held still and the water moves past it. Added mass and drag are those of the largest swing's own amplitude, or the test's.
 */
export const waterForces = oncePerModel((model): readonly (WaterForce | NoForce)[] => {
  const ways = [motion(model), record(model), wave(model), storm(model)].filter((way) => way !== null);
  const moved = ways.filter((way): way is Moved => !('missing' in way));
  const at = coefficients(model, moved, () => {
    const { quantities } = hydrodynamicsOf(model).report;
    return { solid: quantities['addedMass.solid']!.value, still: quantities['addedMass.still']!.value };
  });
  return ways.map((way) => ('missing' in way ? way : forceIn(model, way, at(way.amplitude))));
});

/** The same in the motions that the document itself states or records, on one lattice that is not refined: soon had. */
export const statedForces = oncePerModel((model): readonly WaterForce[] => {
  const moved = [motion(model), record(model)].filter((way) => way !== null);
  const at = coefficients(model, moved, () => {
    const { plan, lattice } = coarsePlate(model);
    return massesOn(lattice, plan, model.mass.waterDensity);
  });
  return moved.map((way) => forceIn(model, way, at(way.amplitude)));
});

interface Coefficients {
  readonly addedMass: Spread;
  readonly dragArea: Spread;
  readonly outside: string | null;
}

function forceIn(model: Model, { water, ...way }: Moved, { addedMass, dragArea, outside }: Coefficients): WaterForce {
  const { waterDensity: density, displaced, entrainedWater, growth } = model.mass;
  const carried = density * (displaced.asBuilt + (growth?.volume ?? 0)) + entrainedWater;
  const omega = (2 * Math.PI) / way.period;
  const recorded = way.way === 'record' ? model.document.hydrodynamics!.recorded! : null;
  const of = (mass: number, CdS: number): MotionForce =>
    recorded
      ? forceOfPairs(recorded.outermost, mass, CdS, density)
      : forceOfCycle(omega ** 2 * (mass * way.amplitude + carried * water), 0.5 * density * CdS * (omega * way.amplitude) ** 2); // prettier-ignore
  return {
    ...way,
    ...{ addedMass, dragArea, outside },
    best: of(addedMass.best, dragArea.best),
    low: of(addedMass.low, dragArea.low).peak,
    high: of(addedMass.high, dragArea.high).peak,
  };
}

/** Added mass and drag in each of these ways, all solved on one lattice; `masses` in potential flow. */
function coefficients(
  model: Model,
  moved: readonly Moved[],
  masses: () => Pick<PlateWater, 'solid' | 'still'>,
): (amplitude: number) => Coefficients {
  const tested = testedWater(model);
  if (tested && !('missing' in tested)) {
    const { addedMass: A, dragCoefficient: Cd, area } = tested;
    return () => ({ addedMass: { low: A.low, best: A.value, high: A.high }, dragArea: { low: area * Cd.low, best: area * Cd.value, high: area * Cd.high }, outside: null }); // prettier-ignore
  }
  const { plan, lattice, area } = coarsePlate(model);
  const rising = [...new Set(moved.map(({ amplitude }) => amplitude))].sort((a, b) => a - b);
  const water = { density: model.mass.waterDensity, ...masses() };
  const found = new Map(heaveSpreads(plan, lattice, water, rising).map((one) => [one.amplitude, one]));
  return (amplitude) => {
    const { addedMass, drag, outside } = found.get(amplitude)!;
    return { addedMass, dragArea: { low: area * drag.low, best: area * drag.best, high: area * drag.high }, outside };
  };
}

function motion({ document }: Model): Moved | null {
  const { motion: stated } = document.hydrodynamics ?? {};
  return stated ? { way: 'motion', amplitude: stated.amplitude.si, period: stated.period.si, water: 0, told: `a sine as stated (${stated.source})` } : null; // prettier-ignore
}

function record({ document }: Model): Moved | null {
  const { recorded } = document.hydrodynamics ?? {};
  return recorded
    ? { way: 'record', amplitude: recorded.largest.si, period: recorded.period.si, water: 0, told: `as recorded in “${recorded.record.name}”, ${Math.round(recorded.seconds)} s (${recorded.source})` } // prettier-ignore
    : null;
}

const still = 'held still, for no float is stated: the water moves past it';

function wave(model: Model): Moved | NoForce | null {
  const { wave: stated, system, bed } = model.document.hydrodynamics ?? {};
  if (!stated) return null;
  const { height, period, source } = stated;
  const { document } = model;
  const rise = waveMotion(height.si / 2, (2 * Math.PI) / period.si, bed?.si ?? Infinity, -document.water.depth.si, localGravity(document)).rise; // prettier-ignore
  const words = `in a wave of ${height.typed} and ${period.typed} (${source})`;
  if (!system) return { way: 'wave', amplitude: rise, period: period.si, water: rise, told: `${words}, ${still}` };
  const { curve, area } = movingCurve(model, height.si);
  const moved = motionInWave(model, curve, area, { wave: { height: height.si, period: period.si } });
  return 'missing' in moved
    ? { way: 'wave', missing: moved.missing }
    : { way: 'wave', amplitude: moved.through, period: period.si, water: rise, told: `${words}, under its float` };
}

function storm(model: Model): Moved | NoForce | null {
  const found = stormExtremes(model.document);
  if (!found) return null;
  const { sea, system } = model.document.hydrodynamics!;
  const water = found.height.plate.mostProbable / 2;
  const words = `the most probable largest swing of a storm of ${Number((found.duration / 3600).toPrecision(3))} h in the stated sea`; // prettier-ignore
  if (!system)
    return { way: 'sea', amplitude: water, period: found.rise.plate.period, water, told: `${words}, plate ${still}` };
  const { curve, area } = movingCurve(model, sea!.significantHeight.si);
  const through = throughSea(model, { S: seaSpectrum(sea!), peakPeriod: sea!.peakPeriod.si }, curve, area);
  if ('missing' in through) return { way: 'sea', missing: through.missing };
  const { rise } = through;
  const { mostProbable, cycles } = extremes(rise.sigma, rise.period, found.duration);
  return { way: 'sea', amplitude: mostProbable, period: rise.period, water, told: `${words}, ${Math.round(cycles)} swings, under its float` }; // prettier-ignore
}
