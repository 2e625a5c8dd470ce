import type { Model } from '../model.ts';
import type { HeaveSystem } from '../motion/heave-system.ts';
import { linkStiffness } from './link-stiffness.ts';
import type { WaveField } from '../motion/wave-forcing.ts';
import { localGravity } from '../water/sea-water.ts';

/** Float, link and plate as a document states them, and the water about them. SI. */
export interface HeaveOf {
  readonly system: HeaveSystem;
  readonly field: WaveField;
}

/**
 * The two bodies of a document with this added mass (kg) and drag coefficient times area (m²). `deeper`: m below the stated
 * depth, on as much more line. What would have to be stated, where something is missing.
 */
export function heaveSystemOf(
  { document, mass }: Pick<Model, 'document' | 'mass'>,
  addedMass: number,
  dragArea: number,
  deeper = 0,
): HeaveOf | { readonly missing: string } {
  const { system: stated, bed } = document.hydrodynamics ?? {};
  if (!stated) return { missing: 'float and power take-off are not stated' };
  const gravity = localGravity(document);
  const { waterDensity: density } = mass;
  const { asBuilt: volume } = mass.displaced;
  const grown = mass.growth ?? { mass: 0, volume: 0 };
  const weight = (mass.total + grown.mass - density * (volume + grown.volume)) * gravity;
  if (weight <= 0) return { missing: 'the plate floats' };
  const { float, link, damping } = stated;
  return {
    system: {
      float: float ? { mass: float.mass.si, damping: float.damping.si, stiffness: density * gravity * float.waterline.si } : null, // prettier-ignore
      plate: {
        mass: mass.total + grown.mass + mass.entrainedWater + addedMass,
        damping: 0,
        drag: 0.5 * density * dragArea,
        carried: addedMass + density * (volume + grown.volume) + mass.entrainedWater,
        weight,
      },
      link: { stiffness: linkStiffness(stated, deeper), damping: damping?.si ?? 0, pushes: link === 'strut' },
    },
    field: {
      density,
      gravity,
      seaDepth: bed?.si ?? Infinity,
      plateDepth: document.water.depth.si + deeper,
      float: float ? { waterline: float.waterline.si, draught: float.draught.si } : null,
    },
  };
}
