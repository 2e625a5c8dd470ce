import type { Input, Step } from './check.ts';
import { basisFactor } from './inputs.ts';
import type { Situation } from '../loads/situation.ts';

/** Serviceability is asked for with all parts in place. */
export const inService = ({ accidental }: Situation): true | string =>
  !accidental || 'deflection is not limited with a part lost';

export const gamma_L: Input = {
  unit: '1',
  meaning: 'load factor that the pressure holds, taken out again',
  from: 'loads: situation',
  read: (_, __, situation) => situation.loadFactor,
};

export const deflectionLimit: Input = basisFactor('k_w', 'span over deflection, least');

export const servicePressure: Step = {
  symbol: 'p_ser',
  expression: 'p / gamma_L',
  unit: 'kPa',
  meaning: 'pressure without load factor',
};

export const tooFarForThinPlate =
  'Beyond half the thickness the panel deflects less than these small deflections, if its edges cannot slide.';
