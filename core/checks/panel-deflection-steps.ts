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
  'Small deflections: beyond half the thickness the panel deflects less than computed where its supports cannot move together. No published curve is held for this way of holding it, and supports that slide give no membrane effect.';
