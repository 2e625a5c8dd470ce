import { liftOf } from '../recovery/lift-stages.ts';
import { dragForce, massForce, waveAtDepth } from '../recovery/wave-zone.ts';
import { tipMotion } from '../recovery/tip-motion.ts';
import { missing, type Check } from './check.ts';
import { constant } from './inputs.ts';
import { liftCautions, onEitherBasis, wetStages, withLift } from './lift-inputs.ts';

/** Slings stay taut in the water. */
export const liftSlack: Check = {
  id: 'lift-slack',
  title: 'Slings and line stay taut in the water',
  limitState: 'handling',
  source: [{ document: 'DNV-RP-N103', clause: 'section 4, slack slings', memory: true }],
  places: wetStages,
  applies: withLift,
  once: true,
  inputs: {
    F_hyd: {
      unit: 'kN',
      meaning: 'what the water and the tip’s motion take off the hook',
      from: 'loads: stages of the lift',
      read: (model, place) => liftOf(model)?.stages.find(({ id }) => id === place)?.lifting ?? missing('the stage'),
    },
    F_st: {
      unit: 'kN',
      meaning: 'least weight on the hook: in water, trapped air taken off',
      from: 'mass',
      read: (model, place) => liftOf(model)?.stages.find(({ id }) => id === place)?.leastWeight ?? missing('the stage'),
    },
    F_all: {
      unit: 'kN',
      meaning:
        'drag and inertia at the surface, at hoist, tip and wave speed, all at once and in one direction, twice over',
      from: 'loads: stages of the lift',
      read: (model) => {
        const lift = liftOf(model);
        if (!lift) return missing('the lift');
        const { load, sea, growth } = lift;
        const tip = tipMotion(load.fields, sea.Hs, sea.Tz);
        const wave = waveAtDepth(sea.Hs, sea.Tz, 0);
        const { lowering, hoisting } = model.document.recovery!.lift!;
        const speed = Math.max(lowering.si, hoisting.si) + tip.speed + wave.speed;
        const slamAndDrag = dragForce(load.density, load.dragCoefficient + load.slamCoefficient, load.area, speed);
        const moving = load.mass + growth + load.entrained + load.addedMass + load.lineMass;
        return 2 * (slamAndDrag + massForce(moving, tip.acceleration, moving, wave.acceleration));
      },
    },
    k_slack: constant(0.9, '1', 'part of the least weight that the water may take off', 'DNV-RP-N103'),
  },
  steps: onEitherBasis({ symbol: 'F_max', expression: 'k_slack * F_st', unit: 'kN', meaning: 'what may be taken off' }),
  demand: 'F_hyd',
  capacity: 'F_max',
  second: {
    title: 'no more than every force of the water at its largest, all at once, twice over (resonance on the hoist)',
    source: [{ document: 'common practice, no source' }],
    steps: [{ symbol: 'F_high', expression: 'F_all', unit: 'kN', meaning: 'all at once' }],
    of: 'F_hyd',
    high: 'F_high',
  },
  cautions: [
    ...liftCautions,
    'A line that goes slack comes taut with a jerk: a limit, not an extreme to average out.',
    'Added mass, not weight, governs a reaction plate; without tests it is uncertain to a factor of two.',
  ],
};
