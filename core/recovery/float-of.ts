import type { RecoveryFields } from '../document/recovery-field.ts';
import type { PlateDocument } from '../document/schema.ts';
import { Refusal } from '../refusal.ts';
import { growthAfter } from '../water/marine-growth.ts';
import { g, waterDensityOf } from '../water/sea-water.ts';
import { lengthOfRope, ropeWeightInWater } from './equipment.ts';
import { floatAscent, ropeSkinFriction, watchCircle, type AscentResult } from './float-ascent.ts';
import { growthOnSphere, netBuoyancy, weightInWater } from './float-buoyancy.ts';
import { secondsInYear } from './lift-stages.ts';

/** The recovery float at depth, on its way and at the surface. SI. */
export interface FloatReport {
  /** Net buoyancy at depth at the end of the deployment, before anything hangs on it, N. */
  readonly net: number;
  readonly growth: number;
  /** Of the release or link that goes up with it, N. */
  readonly carried: number;
  /** Of the rope out at the surface, N; negative where it floats. */
  readonly rope: number;
  /** Drag of rope and float at the start of the ascent is nil; pull set aside for a snag. */
  readonly snag: number;
  /** What must stay: part of the float out of the water to be seen, N. */
  readonly visible: number;
  /** Least pull for the rope on the way less the snag, N. */
  readonly reserve: number;
  readonly ascent: AscentResult | { readonly missing: string };
  readonly watchCircle: number;
  readonly searchRadius: number;
  readonly searchArea: number;
  readonly crushDepth: number;
  /** Pull of the waiting float and of the current on it at its release, N. */
  readonly waiting: number;
}

/** Rated depth by this much where no collapse depth is given: common practice, no source. */
export const crushOverRated = 1.25;

export function floatOf(document: PlateDocument): FloatReport {
  const recovery = document.recovery as RecoveryFields;
  const { float, current, snag, deployment } = recovery;
  const density = waterDensityOf(document);
  const depth = document.water.depth.si;
  const body = { volume: float.volume.si, mass: float.mass.si, ratedDepth: float.ratedDepth.si, compression: float.compression, uptake: float.uptake }; // prettier-ignore
  const net = netBuoyancy(body, depth, density);
  const grown = growthAfter(document, deployment.si / secondsInYear);
  const sphere = Math.cbrt((6 * body.volume) / Math.PI);
  const growth = growthOnSphere(sphere, grown.thickness, grown.density, density);
  const way = recovery.ways.find(({ id }) => id === recovery.chosen)!;
  const release = recovery.releases.find(({ id }) => id === way.releases[0]);
  // The heaviest case: the release goes up with its float.
  const carried = release ? Math.max(0, weightInWater(release.mass.si, release.volume.si, density)) : 0;
  const length = lengthOfRope(document);
  const perMetre = ropeWeightInWater(recovery, density);
  const rope = perMetre * Math.min(length, depth);
  const start = net - growth - carried;
  const buoyancyAtSurface = netBuoyancy(body, 0, density) - growth - carried - rope;
  const visible = float.visible * g * density * body.volume;
  const radius = watchCircle(length, depth);
  const ascent = tried(
    () =>
    floatAscent({ depth, buoyancy: start, ropeWeight: perMetre, ropeDiameter: recovery.rope.diameter.si, diameter: float.diameter.si + 2 * grown.thickness, dragCoefficient: float.dragCoefficient, density, current: current.si, skinFriction: ropeSkinFriction }), // prettier-ignore
  );
  const drift = 'missing' in ascent ? 0 : ascent.drift;
  const search = Math.max(radius, drift);
  const area = (Math.PI / 4) * (float.diameter.si + 2 * grown.thickness) ** 2;
  return {
    net,
    growth,
    carried,
    rope,
    snag: snag.si,
    visible,
    reserve: Math.min(start, start - rope) - snag.si,
    ascent: 'missing' in ascent ? ascent : { ...ascent, leastPull: Math.min(ascent.leastPull, buoyancyAtSurface) },
    watchCircle: radius,
    searchRadius: search,
    searchArea: Math.PI * search ** 2,
    crushDepth: float.crushDepth?.si ?? crushOverRated * float.ratedDepth.si,
    waiting: Math.hypot(Math.max(0, netBuoyancy({ ...body, uptake: 0 }, depth, density)), 0.5 * density * float.dragCoefficient * area * current.si ** 2), // prettier-ignore
  };
}

function tried(make: () => AscentResult): AscentResult | { readonly missing: string } {
  try {
    return make();
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return { missing: `${error.what}. ${error.mend}` };
  }
}
