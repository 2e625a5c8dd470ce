import * as z from 'zod';
import { quantity } from './quantity-field.ts';
import { columnField, recordField } from './record-field.ts';
import { text } from './text-field.ts';
import { withRule, type Fault } from './with-rule.ts';

/** Where a file has a channel, and in what unit, where its header does not say so. */
const channel = z.strictObject({ column: columnField.optional(), unit: text.optional() });

/** Which columns tell what, and which way is positive; what is left out is found by name. */
const reading = z.strictObject({
  time: channel.optional(),
  acceleration: channel.optional(),
  ahead: channel.optional(),
  stroke: channel.optional(),
  force: channel.optional(),
  pitch: channel.optional(),
  lineAngle: channel.optional(),
  plateAcceleration: channel.optional(),
  pressure: channel.optional(),
  /** The float's accelerometer reads more when the float is thrown: */
  accelerationUp: z.enum(['up', 'down']).default('up'),
  /** The stroke grows when the plate goes, seen from the float: */
  strokeGrows: z.enum(['away', 'towards']).default('away'),
});

/** Another logger's file. */
const second = withRule(
  z.strictObject({
    record: recordField,
    reading: reading.prefault({}),
    /** Its first reading comes so much later than the first file's; found from dates or motion where it is left out. */
    late: quantity('time', 'any').optional(),
    /** Its last reading comes so much later than its own clock says; with `late` it gives how fast the clocks run apart, which is
     *  found from the motion where it is left out. */
    lateAtEnd: quantity('time', 'any').optional(),
  }),
  ['late', 'lateAtEnd'],
  ({ late, lateAtEnd }): Fault[] => late === undefined && lateAtEnd !== undefined ? [{ path: ['lateAtEnd'], what: 'How late the second logger is at its end is stated, and not how late at its beginning', mend: 'State both, from two sync events, or take this one out.' }] : [], // prettier-ignore
);

/** What is known of sensors, line and water. */
const setup = z.strictObject({
  highPass: quantity('time'),
  axes: z.enum(['vertical', 'body']).default('vertical'),
  accelerationNoise: quantity('acceleration', 'not negative').optional(),
  plateNoise: quantity('acceleration', 'not negative').optional(),
  strokeNoise: quantity('length', 'not negative').optional(),
  forceNoise: quantity('force', 'not negative').optional(),
  pressureNoise: quantity('stress', 'not negative').optional(),
  /** Part of the stroke by which the scales may disagree. */
  scaleError: z.number().min(0).max(0.5).default(0),
  clock: quantity('time', 'not negative').optional(),
  stiffness: quantity('stiffness').optional(),
  arm: quantity('length', 'any').optional(),
  lineLength: quantity('length').optional(),
  /** Of the water, with the depths of plate and bed: for the waves' pressure at the plate. Deep where no bed is stated. */
  density: quantity('density').optional(),
  plateDepth: quantity('length').optional(),
  waterDepth: quantity('length').optional(),
  /** Part by which the float may follow the surface wrongly. */
  waveError: z.number().min(0).max(1).default(0.1),
  by: z.enum(['difference', 'accelerometer', 'pressure']).optional(),
  limit: quantity('length').optional(),
});

const length = () => quantity('length', 'not negative');
const banded = withRule(
  z.strictObject({ value: length(), low: length(), high: length() }),
  ['value', 'low', 'high'],
  ({ value, low, high }): Fault[] => low.si <= value.si && value.si <= high.si ? [] : [{ path: ['value'], what: 'The value lies outside its band', mend: 'Accept the deployment anew: it is written by the program.' }], // prettier-ignore
);
const way = z.enum(['difference', 'accelerometer', 'pressure']);
const part = z.number().min(0).max(1);
const curve = z.array(z.number()).max(1500);
/** Curves over one axis, SI; one that is not recorded is left out. */
const curves = z.strictObject({ at: curve, plate: curve, float: curve, stroke: curve.optional() });

/** What a deployment gave when it was accepted. */
const result = z.strictObject({
  /** Of records and settings: with others it is of another deployment. */
  key: z.string().regex(/^[0-9a-f]{64}$/, '64 hex digits'),
  programVersion: text,
  by: way,
  significant: banded,
  largest: length(),
  floatSignificant: length(),
  strokeSignificant: length().optional(),
  period: quantity('time').optional(),
  floatPeriod: quantity('time').optional(),
  within: part.optional(),
  held: z.array(z.strictObject({ part, doubleAmplitude: length() })).max(10),
  ways: z.array(z.strictObject({ by: way, significant: banded, apart: length() })).max(3),
  /** One deviation of each noise, each bound as it stands. */
  causes: z.array(z.strictObject({ id: z.enum(['acceleration', 'stroke', 'force', 'clock', 'scale', 'plate', 'pressure', 'wave']), kind: z.enum(['noise', 'bound']), value: length() })).max(10), // prettier-ignore
  takeOff: z.strictObject({ mean: quantity('force', 'any'), least: quantity('force', 'any'), largest: quantity('force', 'any'), slack: part, power: z.number().optional(), peakPower: z.number().optional() }).optional(), // prettier-ignore
  seconds: z.number().min(0),
  readings: z.number().int().min(1),
  rowsKeptOut: z.number().int().min(0),
  /** Whole record, and its first minute: s, m. Densities: Hz, m²/Hz; `floor`: what the sensors' noise makes of the plate's. */
  whole: curves,
  minute: curves,
  spectra: curves.extend({ floor: curve.optional() }),
  /** Stretches of like length: s, m, m, s. */
  windows: z.array(z.strictObject({ from: z.number(), float: z.number(), plate: z.number(), period: z.number() })).max(2000), // prettier-ignore
  steps: z.array(z.string().max(600)).max(60),
  findings: z.array(z.string().max(600)).max(60),
});

/** A stretch of time in the sea with the plate below its float, as loggers recorded it. */
export const seaDeployment = z.strictObject({
  id: z.string().regex(/^[\p{L}\p{N}][\p{L}\p{N} _-]{0,39}$/u, 'letters and digits, at most 40'),
  title: text,
  record: recordField,
  reading: reading.prefault({}),
  second: second.optional(),
  setup,
  result: result.optional(),
});

export const seaResultField = result;
export type SeaDeployment = z.infer<typeof seaDeployment>;
export type KeptSeaResult = z.infer<typeof result>;
