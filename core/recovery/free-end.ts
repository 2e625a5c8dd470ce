import type { Model } from '../model.ts';
import { g } from '../water/sea-water.ts';
import type { Lift } from './lift-stages.ts';
import { dragForce, sinkingSpeed } from './wave-zone.ts';

/** A plate that nothing holds. SI. */
export interface FreeEnd {
  /** Speed of sinking flat, by the steady drag of the plate and by three quarters of it. */
  readonly speed: number;
  readonly fastest: number;
  /** From its depth of service to the bed; null where the bed is not given. */
  readonly timeToBed: number | null;
  /** Of the blow on the bed, with the water that moves with it, J; and the pressure on the bed at rest, Pa. */
  readonly energy: number;
  readonly bearing: number;
  /** Pull of the line as the plate is towed below its float at a knot, square to the way: the worst. N */
  readonly towing: number;
  /** Buoyancy that the float over the plate may lose before it sinks, N and as a part of all; null where it is not given. */
  readonly mayLose: number | null;
  readonly mayLosePart: number | null;
}

/** m/s: one knot. */
const knot = 1852 / 3600;

/** Terminal speed, time to the bed, towing, and what the float can lose. Null without a lift, whose fields say how the water acts. */
export function freeEndOf({ document, mass }: Model, { water, load }: Lift): FreeEnd {
  const weight = g * (load.mass - load.density * load.volume);
  const speed = sinkingSpeed(weight, load.density, water.steady, water.area);
  const bed = document.recovery?.lift?.bed?.si;
  const down = bed === undefined ? null : bed - document.water.depth.si;
  const main = document.recovery?.mainFloat;
  return {
    speed,
    fastest: sinkingSpeed(weight, load.density, 0.75 * water.steady, water.area),
    timeToBed: down === null || !(speed > 0) || down < 0 ? null : down / speed,
    energy: 0.5 * (load.mass + mass.entrainedWater + water.addedMass) * speed ** 2,
    bearing: Math.max(0, weight) / water.area,
    towing: dragForce(load.density, water.steady, water.area, knot),
    mayLose: main ? main.reserve.si : null,
    mayLosePart: main ? main.reserve.si / main.whole.si : null,
  };
}
