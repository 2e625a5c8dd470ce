import { tipMotion } from '../recovery/tip-motion.ts';
import type { Check } from './check.ts';
import { constant } from './inputs.ts';
import { liftCautions, ofLift, onEitherBasis, withLift } from './lift-inputs.ts';

/** The hook never runs faster than the plate sinks. */
export const liftLoweringSpeed: Check = {
  id: 'lift-lowering-speed',
  title: 'Plate sinks faster than its hook',
  limitState: 'handling',
  source: [
    { document: 'drag and weight in water' },
    { document: 'common practice, no source', clause: 'margin of a fifth' },
  ],
  places: () => ['lowering'],
  applies: withLift,
  once: true,
  inputs: {
    v_c: ofLift('m/s', 'lowering speed', 'loads: stages of the lift', (_, { lowering }) => lowering.si),
    v_t: ofLift(
      'm/s',
      'speed of the tip of crane or frame in the sea stated',
      'loads: stages of the lift',
      ({ load, sea }) => tipMotion(load.fields, sea.Hs, sea.Tz).speed,
    ),
    W_w: ofLift(
      'kN',
      'weight of plate and equipment in water',
      'mass',
      ({ stages }) => stages.find(({ id }) => id === 'lower')!.leastWeight,
    ),
    rho: ofLift('kg/m^3', 'density of the water', 'document: water', ({ load }) => load.density),
    C_D: ofLift('1', 'drag coefficient on the solid area', 'document: recovery', ({ load }) => load.dragCoefficient),
    A_p: ofLift('m^2', 'solid plan area', 'geometry', ({ load }) => load.area),
    C_s: ofLift(
      '1',
      'steady drag coefficient of the solid plate',
      'DNV-RP-C205, from memory',
      ({ water }) => water.steady,
    ),
    k_v: constant(0.8, '1', 'part of the sinking speed', 'common practice, no source'),
  },
  steps: onEitherBasis(
    { symbol: 'v', expression: 'v_c + v_t', unit: 'm/s', meaning: 'largest speed of the hook down' },
    { symbol: 'v_s', expression: 'sqrt(2 * W_w / (rho * C_D * A_p))', unit: 'm/s', meaning: 'sinking speed' },
    { symbol: 'v_max', expression: 'k_v * v_s', unit: 'm/s', meaning: 'with its margin' },
  ),
  demand: 'v',
  capacity: 'v_max',
  second: {
    title: 'sinking speed at the least drag that a plate has, and at twice the coefficient taken',
    source: [{ document: 'DNV-RP-C205', clause: 'drag of plates square to a steady flow', memory: true }],
    steps: [
      { symbol: 'v_low', expression: 'sqrt(W_w / (rho * C_D * A_p))', unit: 'm/s', meaning: 'at twice the drag' },
      {
        symbol: 'v_high',
        expression: 'sqrt(2 * W_w / (rho * 0.75 * min(C_s, C_D) * A_p))',
        unit: 'm/s',
        meaning: 'at three quarters of the steady drag',
      },
    ],
    of: 'v_s',
    low: 'v_low',
    high: 'v_high',
  },
  cautions: liftCautions,
};
