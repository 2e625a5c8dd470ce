import type { SeaDeployment } from '../document/sea-tests-field.ts';
import type { Quantity } from '../quantity/kinds.ts';
import type { SeaSetup } from './sea-setup.ts';

/** A deployment's settings in SI. */
export function seaSetupOf({ setup }: Pick<SeaDeployment, 'setup'>): SeaSetup {
  const or = <T>(given: Quantity | undefined, none: T): number | T => (given ? given.si : none);
  return {
    highPass: setup.highPass.si,
    axes: setup.axes,
    accelerationNoise: or(setup.accelerationNoise, null),
    plateNoise: or(setup.plateNoise, null),
    strokeNoise: or(setup.strokeNoise, 0),
    forceNoise: or(setup.forceNoise, 0),
    pressureNoise: or(setup.pressureNoise, 0),
    scaleError: setup.scaleError,
    clock: or(setup.clock, 0),
    stiffness: or(setup.stiffness, null),
    arm: or(setup.arm, 0),
    lineLength: or(setup.lineLength, null),
    density: or(setup.density, null),
    plateDepth: or(setup.plateDepth, null),
    waterDepth: or(setup.waterDepth, null),
    waveError: setup.waveError,
    by: setup.by ?? null,
    limit: or(setup.limit, null),
  };
}
