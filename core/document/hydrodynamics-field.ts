import * as z from 'zod';
import { quantity } from './quantity-field.ts';
import { recordField } from './record-field.ts';
import { heightAndPeak } from './spectrum-rows.ts';
import { text } from './text-field.ts';
import { withRule, type Fault } from './with-rule.ts';

/** A spectrum as measured or hindcast, a table of [frequency, density]: Hz and m²/Hz, or rad/s and m²·s. */
const spectrumTable = withRule(
  z.strictObject({
    frequency: z.enum(['Hz', 'rad/s']),
    rows: z.array(z.tuple([z.number().positive(), z.number().min(0)])).min(3).max(2000), // prettier-ignore
    source: text,
  }),
  ['rows'],
  ({ rows }): Fault[] => {
    const back = rows.findIndex(([f], k) => k > 0 && f <= rows[k - 1]![0]);
    if (back >= 0) return [{ path: ['rows', back], what: `Row ${back + 1} of the spectrum does not lie above the one before it`, mend: 'Give frequencies that rise.' }]; // prettier-ignore
    return rows.some(([, S]) => S > 0) ? [] : [{ path: ['rows'], what: 'The spectrum holds no energy', mend: 'Give densities above zero.' }]; // prettier-ignore
  },
);

/** A sea state. */
const sea = withRule(
  z.strictObject({
    significantHeight: quantity('length'),
    peakPeriod: quantity('time'),
    /** Peak over that of a fully grown sea (JONSWAP); one: Pierson–Moskowitz. */
    peakedness: z.number().min(1).max(10).default(1),
    /** In place of the formula's shape; height and period above are then the table's own. */
    spectrum: spectrumTable.optional(),
    /** How long the storm lasts, for its largest wave; three hours where it is left out. */
    duration: quantity('time').optional(),
    source: text,
  }),
  ['significantHeight', 'peakPeriod', 'spectrum'],
  ({ significantHeight, peakPeriod, spectrum }): Fault[] => {
    if (!spectrum) return [];
    const { Hs, Tp } = heightAndPeak(spectrum);
    const mend = `Give ${Hs.toPrecision(4)} m and ${Tp.toPrecision(4)} s, or take the spectrum out.`;
    return [
      ...(Math.abs(significantHeight.si / Hs - 1) > 0.02 ? [{ path: ['significantHeight'], what: `The spectrum’s significant height is ${Hs.toPrecision(4)} m, stated are ${significantHeight.typed}`, mend }] : []), // prettier-ignore
      ...(Math.abs(peakPeriod.si / Tp - 1) > 0.05 ? [{ path: ['peakPeriod'], what: `The spectrum’s peak period is ${Tp.toPrecision(4)} s, stated are ${peakPeriod.typed}`, mend }] : []), // prettier-ignore
    ];
  },
);

/** How often which sea comes: the sea states of a year or of all years, each with its count. */
const scatter = withRule(
  z.strictObject({
    /** What the table's periods are. */
    period: z.enum(['peak', 'zero-crossing']),
    states: z.array(z.strictObject({ height: quantity('length'), period: quantity('time'), count: z.number().min(0) })).min(1).max(1000), // prettier-ignore
    /** How long a state lasts. */
    duration: quantity('time').prefault('3 h'),
    /** Of the seas' spectra, as of `sea`. */
    peakedness: z.number().min(1).max(10).default(1),
    /** Years in which the long-term largest is exceeded once. */
    returnPeriod: z.number().min(1).max(10_000).default(50),
    source: text,
  }),
  ['states.*.count'],
  ({ states }): Fault[] =>
    states.some(({ count }) => count > 0) ? [] : [{ path: ['states'], what: 'The scatter table counts no sea state', mend: 'Give at least one count above zero.' }], // prettier-ignore
);

/** A band of depth and how thick growth stands there after some years. */
const growthRow = z.strictObject({
  from: quantity('length', 'not negative'),
  to: quantity('length'),
  years: z.number().positive().max(100),
  thickness: quantity('length', 'not negative'),
});

/** Motion of the plate against the water as a logger recorded it, as far as forces need it; written by the program. */
export const recordedMotionField = z.strictObject({
  record: recordField,
  /** Acceleration in m/s² and velocity times its size in m²/s²: the outermost pairs of all. */
  outermost: z.array(z.tuple([z.number(), z.number()])).min(1).max(2000), // prettier-ignore
  /** Half of the largest swing, and standard deviation. */
  largest: quantity('length'),
  deviation: quantity('length'),
  period: quantity('time'),
  seconds: z.number().positive(),
  source: text,
});

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
  recorded: recordedMotionField.optional(),
  sea: sea.optional(),
  scatter: scatter.optional(),
  /** One regular wave. */
  wave: z.strictObject({ height: quantity('length'), period: quantity('time'), source: text }).optional(),
  /** Of the sea bed below the surface; water without end where it is left out. */
  bed: quantity('length').optional(),
  /** Years that marine growth has had since the plate was clean. */
  growth: z
    .strictObject({
      years: z.number().min(0).max(100),
      /** The user's own thicknesses in place of the guidance's. */
      rows: z.array(growthRow).min(1).max(60).optional(),
      /** Of the growth; 1325 kg/m³ where it is left out. */
      density: quantity('density').optional(),
      source: text,
    })
    .optional(),
  /** What holds the plate, for its motion in the stated sea: reactions of options can then be set side by side in one wave. */
  system: withRule(
    z.strictObject({
      /** Of power take-off and line between float and plate. */
      stiffness: quantity('stiffness'),
      damping: quantity('damping', 'not negative').optional(),
      link: z.enum(['line', 'strut']),
      /** Part of that spring, whose stiffness goes with its length: for natural periods against the line that is out. */
      line: z
        .strictObject({
          /** EA: pull over strain. */
          axialStiffness: quantity('force'),
          /** Free between float and plate, with the plate at its depth. */
          length: quantity('length'),
          source: text,
        })
        .optional(),
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
    }),
    ['stiffness', 'line'],
    ({ stiffness, line }): Fault[] => line && line.axialStiffness.si / line.length.si < stiffness.si ? [{ path: ['line', 'axialStiffness'], what: `The line alone has ${(line.axialStiffness.si / line.length.si / 1000).toPrecision(3)} kN/m, less than power take-off and line together (${stiffness.typed})`, mend: 'Springs in a row are softer than each of them: look at both stiffnesses and at the length.' }] : [], // prettier-ignore
  ).optional(),
});

export type Hydrodynamics = z.infer<typeof hydrodynamicsField>;
