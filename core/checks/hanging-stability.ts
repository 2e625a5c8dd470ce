import { total } from '../mass/hanging-of.ts';
import { missing, type Check } from './check.ts';
import { constant } from './inputs.ts';

/** How the plate hangs by its suspension: upright, and how far tilted, in air and in water. */
export const hangingStability: Check = {
  id: 'hanging-stability',
  title: 'Plate hangs upright and level',
  limitState: 'stability',
  source: [
    { document: 'statics of a hanging body' },
    { document: 'common practice, no source', clause: 'tilt of 5 degrees' },
  ],
  places: () => ['suspension'],
  applies: ({ mass }) => mass.hanging.free !== 'nothing' || 'three attachments or more hold it level',
  once: true,
  rule: ({ mass }) =>
    mass.hanging.heightAboveMass > 0
      ? undefined
      : 'the point of hang is not above the centre of mass: the plate turns over',
  inputs: {
    phi_air: {
      unit: 'deg',
      meaning: 'tilt in air',
      from: 'mass: hanging',
      read: ({ mass }) => total(mass.hanging.tilt.air),
    },
    phi_water: {
      unit: 'deg',
      meaning: 'tilt in water',
      from: 'mass: hanging',
      read: ({ mass }) =>
        mass.hanging.tilt.water
          ? total(mass.hanging.tilt.water)
          : missing('a weight in water: the plate floats, and does not hang'),
    },
    phi_open: {
      unit: 'deg',
      meaning: 'for information: tilt in water with one panel lost, the worst (none to lose: as above)',
      from: 'mass: hanging',
      read: ({ mass }) =>
        mass.hanging.worstOpenBay?.tilt ??
        (mass.hanging.tilt.water
          ? total(mass.hanging.tilt.water)
          : missing('a weight in water: the plate floats, and does not hang')),
    },
    e: {
      unit: 'mm',
      meaning: 'centre of mass from the upright through the point of hang, in plan',
      from: 'mass: hanging',
      read: ({ mass }) => Math.hypot(mass.centre[0] - mass.hanging.hangX, mass.centre[1] - mass.hanging.hangY),
    },
    h_G: {
      unit: 'mm',
      meaning: 'point of hang above the centre of mass',
      from: 'mass: hanging',
      read: ({ mass }) => mass.hanging.heightAboveMass,
    },
    phi_lim: constant(5, 'deg', 'limit of tilt', 'common practice, no source'),
  },
  steps: { 'partial factors': steps(), 'allowable stress': steps() },
  demand: 'phi',
  capacity: 'phi_lim',
  second: {
    title: 'tilt in air by the offset of the centre of mass; less where it is free about one line only',
    source: [{ document: 'statics of a hanging body, derived by hand' }],
    steps: [{ symbol: 'phi_high', expression: 'atan2(e, h_G)', unit: 'deg', meaning: 'tilt by the offset' }],
    of: 'phi_air',
    high: 'phi_high',
  },
  cautions: [
    'Water held on panels or in tubes while lifting, growth and a lost panel shift the balance.',
    'Hanging freely in still water or air: waves, current and the tension of the line are left out.',
  ],
};

function steps() {
  return [
    { symbol: 'phi', expression: 'max(phi_air, phi_water)', unit: 'deg', meaning: 'larger tilt' },
    {
      symbol: 'k_open',
      expression: 'phi_open / phi_lim',
      unit: '1',
      meaning: 'for information: tilt with a panel lost over the limit',
    },
  ] as const;
}
