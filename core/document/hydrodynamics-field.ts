import * as z from 'zod';
import { quantity } from './quantity-field.ts';
import { text } from './text-field.ts';

/** What the water about the plate does, as far as it is known: each part that is left out is said to be not stated. */
export const hydrodynamicsField = z.strictObject({
  /** Heave of the plate against the water about it, as a sine. */
  motion: z
    .strictObject({
      /** Half of the stroke. */
      amplitude: quantity('length'),
      period: quantity('time'),
      source: text,
    })
    .optional(),
  sea: z
    .strictObject({
      significantHeight: quantity('length'),
      peakPeriod: quantity('time'),
      /** Peak over that of a fully grown sea (JONSWAP); one: Pierson–Moskowitz. */
      peakedness: z.number().min(1).max(10).default(1),
      source: text,
    })
    .optional(),
  /** Of the sea bed below the surface; water without end where it is left out. */
  bed: quantity('length').optional(),
  /** Years that marine growth has had since the plate was clean. */
  growth: z.strictObject({ years: z.number().min(0).max(100), source: text }).optional(),
  /** What holds the plate, for its motion in the stated sea: reactions of options can then be set side by side in one wave. */
  system: z
    .strictObject({
      /** Of power take-off and line between float and plate. */
      stiffness: quantity('stiffness'),
      damping: quantity('damping', 'not negative').optional(),
      link: z.enum(['line', 'strut']),
      /** Without it the plate hangs from a point that does not move. */
      float: z
        .strictObject({
          /** Added mass included. */
          mass: quantity('mass'),
          damping: quantity('damping', 'not negative'),
          waterline: quantity('area'),
          draught: quantity('length'),
        })
        .optional(),
      source: text,
    })
    .optional(),
});

export type Hydrodynamics = z.infer<typeof hydrodynamicsField>;
