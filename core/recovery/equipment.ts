import type { RecoveryFields, WayFields } from '../document/recovery-field.ts';
import { g, waterDensityOf } from '../water/sea-water.ts';
import type { PlateDocument } from '../document/schema.ts';
import { ropeMaterial } from './rope-materials.ts';
import { ropeLength } from './rope-stowage.ts';

/** Something that recovery puts on the plate. SI. */
export interface Equipment {
  readonly name: string;
  readonly mass: number;
  readonly volume: number;
  /** Null where the document does not place it. */
  readonly at: readonly [x: number, y: number, z: number] | null;
}

/** The rope's length: as stated, or from depth, drift of a rising float (a quarter of the current against half a metre a second) and slack. */
export function lengthOfRope({ recovery, water }: Pick<PlateDocument, 'recovery' | 'water'>): number {
  const { rope, current } = recovery as RecoveryFields;
  return rope.length?.si ?? ropeLength(water.depth.si, (water.depth.si * current.si) / nominalAscent, rope.slack);
}
/** m/s: for the drift in a rope's length, before the ascent itself is known; common practice, no source. */
const nominalAscent = 1;

/** Weight of a metre of the rope in water, N/m: negative floats. */
export function ropeWeightInWater({ rope }: RecoveryFields, density: number): number {
  return rope.mass.si * g * (1 - density / ropeMaterial[rope.material].density);
}

/** All that a way of recovery puts on the plate: releases, canisters, and in each canister a rope and a float. */
export function equipmentOf(document: PlateDocument, way: WayFields): readonly Equipment[] {
  const recovery = document.recovery as RecoveryFields;
  const { rope, float } = recovery;
  const length = lengthOfRope(document);
  const ropeMass = rope.mass.si * length;
  const line = (name: string, at: Equipment['at']): Equipment[] => [
    { name: `Rope${name}`, mass: ropeMass, volume: ropeMass / ropeMaterial[rope.material].density, at },
    { name: `Float${name}`, mass: float.mass.si, volume: float.volume.si, at },
  ];
  if (way.kind === 'standing line') return [{ name: 'Rope', mass: ropeMass, volume: ropeMass / ropeMaterial[rope.material].density, at: null }]; // prettier-ignore
  return way.releases.flatMap((id) => {
    const release = recovery.releases.find((one) => one.id === id);
    if (!release) return [];
    const { canister } = release;
    const at = canister ? ([canister.x.si, canister.y.si, canister.z.si] as const) : null;
    return [
      { name: `Release ${id}`, mass: release.mass.si, volume: release.volume.si, at },
      ...(canister ? [{ name: `Canister ${id}`, mass: canister.mass.si, volume: canister.volume.si, at }] : []),
      ...line(` of ${id}`, at),
    ];
  });
}

/** Mass, kg, and weight in water, N, of equipment together. */
export function addedByEquipment(
  items: readonly Equipment[],
  { water }: Pick<PlateDocument, 'water'>,
): { readonly mass: number; readonly volume: number; readonly weightInWater: number } {
  const density = waterDensityOf({ water });
  const mass = items.reduce((sum, item) => sum + item.mass, 0);
  const volume = items.reduce((sum, item) => sum + item.volume, 0);
  return { mass, volume, weightInWater: g * (mass - density * volume) };
}
