import type { TankTest } from '../document/tests-field.ts';
import type { TankSetup } from './tank-setup.ts';

/** What a document says of a test's plate and rig, with what it leaves out. */
export function tankSetupOf({ setup }: Pick<TankTest, 'setup'>): TankSetup {
  const { mass, volume, area, density, width, waterInside, rigMass, stiffness, delayBound, also, harmonics } = setup;
  return {
    mass: mass.si,
    volume: volume.si,
    area: area.si,
    density: density.si,
    width: width?.si ?? Math.sqrt(area.si),
    waterInside: waterInside?.si ?? 0,
    rigMass: rigMass?.si ?? 0,
    stiffness: stiffness?.si ?? null,
    delayBound: delayBound?.si ?? null,
    also: new Set(also),
    harmonics,
  };
}
