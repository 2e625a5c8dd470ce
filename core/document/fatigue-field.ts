import * as z from 'zod';
import { quantity } from './quantity-field.ts';
import { text } from './text-field.ts';
import { withRule, type Fault } from './with-rule.ts';

const cyclesPerYear = z.number().positive();

const seaState = z.strictObject({
  /** Significant wave height, zero-crossing period, part of the time. */
  height: quantity('length'),
  period: quantity('time'),
  probability: z.number().min(0).max(1),
  /** Amplitude of the force for a metre of wave amplitude in this state, where it differs. */
  forcePerMetre: quantity('lineForce').optional(),
});

const scatter = withRule(
  z.strictObject({
    kind: z.literal('scatter'),
    /** Amplitude of the force on the plate for a metre of wave amplitude. */
    forcePerMetre: quantity('lineForce'),
    states: z.array(seaState).min(1).max(400),
    source: text,
  }),
  ['states.*.probability'],
  ({ states }): Fault[] => {
    const sum = states.reduce((all, { probability }) => all + probability, 0);
    return sum > 1 + 1e-6
      ? [
          {
            path: ['states'],
            what: `The sea states take ${Number((100 * sum).toPrecision(6))} % of the time`,
            mend: 'Give each its part of the time, all together 1 or, with calms left out, less.',
          },
        ]
      : [];
  },
);

/** How often the force swings how far, where it is not the stated force of service in every cycle; all are forces on the whole plate. */
const loading = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('stated'),
    /** From largest up to largest down. */
    range: quantity('force'),
    cyclesPerYear,
    source: text,
  }),
  z.strictObject({
    kind: z.literal('weibull'),
    /** The range that is exceeded once in so many cycles. */
    largestRange: quantity('force'),
    inCycles: z.number().min(10).max(1e12),
    shape: z.number().min(0.3).max(5),
    cyclesPerYear,
    source: text,
  }),
  scatter,
]);

/** What the fatigue checks need beside the loads: history, water, access, consequence. */
export const fatigueField = z.strictObject({
  loading: loading.optional(),
  /** What surrounds the details; without it, protected where there is cathodic protection, else free to corrode. */
  environment: z.enum(['air', 'protected', 'free']).optional(),
  /** How details can be inspected and repaired, and what the loss of one would mean; without them the gravest. */
  access: z.enum(['none', 'under water', 'above water']).optional(),
  consequence: z.enum(['substantial', 'limited']).optional(),
  /** Design fatigue factor in place of that by access and consequence. */
  factor: z.strictObject({ value: z.number().min(1).max(100), reason: text }).optional(),
  /** Slams and snaps: counted beside the waves, a range of the force on the whole plate each. */
  apart: z
    .array(
      z.strictObject({
        kind: z.enum(['slam', 'snap']),
        range: quantity('force'),
        /** In the whole life. */
        cycles: z.number().positive(),
        source: text,
      }),
    )
    .max(20)
    .default([]),
});
