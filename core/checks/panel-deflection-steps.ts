import type { Input } from './check.ts';
import { basisFactor } from './inputs.ts';
import type { Situation } from '../loads/situation.ts';

/** Serviceability is asked for with all parts in place. */
export const inService = ({ accidental }: Situation): true | string =>
  !accidental || 'deflection is not limited with a part lost';

/** A size, like the factored pressure; the direction in which the panel bears is that of the situation. */
export const servicePressure: Input = {
  unit: 'kPa',
  meaning: 'pressure on the panel field, every load factor 1',
  from: 'loads: share',
  read: (_, bay, situation) => Math.abs(situation.servicePressures.get(bay) ?? NaN),
};

export const deflectionLimit: Input = basisFactor('k_w', 'span over deflection, least');

export const tooFarForThinPlate =
  'Beyond half the thickness the panel deflects less than these small deflections, if its edges cannot slide.';
