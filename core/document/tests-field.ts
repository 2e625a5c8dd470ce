import * as z from 'zod';
import { quantity } from './quantity-field.ts';
import { columnField as column, recordField } from './record-field.ts';
import { seaDeployment } from './sea-tests-field.ts';
import { text } from './text-field.ts';
import { withRule, type Fault } from './with-rule.ts';

const factor = z.number().refine((value) => value !== 0, 'must not be zero');
const id = z.string().regex(/^[\p{L}\p{N}][\p{L}\p{N} _-]{0,39}$/u, 'letters and digits, at most 40');

/** Which columns tell what, in which units, and which way is positive; what is left out is found by name. */
const reading = z.strictObject({
  time: column.optional(),
  travel: column.optional(),
  force: column.optional(),
  timeUnit: text.optional(),
  travelUnit: text.optional(),
  forceUnit: text.optional(),
  /** Travel grows when the plate goes: */
  travelUp: z.enum(['up', 'down']).default('up'),
  /** The load cell reads positive when the line: */
  forcePositive: z.enum(['pulls', 'pushes']).default('pulls'),
});

/** What is done to the readings before they are fitted; every step can be taken out again. */
const conditioning = withRule(
  z.strictObject({
    /** Readings before and after are left out; from the first reading. */
    from: quantity('time', 'not negative').optional(),
    to: quantity('time').optional(),
    /** The true value is factor × (reading − zero). */
    travelFactor: factor.optional(),
    forceFactor: factor.optional(),
    forceZero: quantity('force', 'any').optional(),
    /** The force is read this late (early where negative): its readings are taken back by it. */
    forceLate: quantity('time', 'any').optional(),
    /** How each is known. */
    source: text.optional(),
  }),
  ['from', 'to'],
  ({ from, to }): Fault[] =>
    from && to && to.si <= from.si
      ? [{ path: ['to'], what: 'The readings taken end before they begin', mend: 'Give a later end, or an earlier beginning.' }] // prettier-ignore
      : [],
);

/** From what the force's delay may be found: a stretch about a sharp event, and a run of a known mass in air. */
const delay = z.strictObject({
  eventFrom: quantity('time', 'not negative').optional(),
  eventTo: quantity('time').optional(),
  air: z.strictObject({ record: recordField, mass: quantity('mass') }).optional(),
});

/** What hung in the tank, and how it was driven. */
const setup = z.strictObject({
  mass: quantity('mass'),
  volume: quantity('volume'),
  area: quantity('area'),
  density: quantity('density'),
  /** For the Keulegan-Carpenter number; the root of the area where it is left out. */
  width: quantity('length').optional(),
  waterInside: quantity('volume', 'not negative').optional(),
  rigMass: quantity('mass', 'not negative').optional(),
  /** Of line and crane between where travel is measured and the plate. */
  stiffness: quantity('stiffness').optional(),
  delayBound: quantity('time', 'not negative').optional(),
  /** The tank: its width and length, the plate's depth under the surface and height over the floor. */
  tankWidth: quantity('length').optional(),
  tankLength: quantity('length').optional(),
  plateDepth: quantity('length').optional(),
  aboveFloor: quantity('length').optional(),
  /** Unknowns beside added mass, drag and the load cell's zero. */
  also: z.array(z.enum(['linear damping', 'dry friction', 'force drift', 'delay'])).max(4).default([]),
  harmonics: z.number().int().min(1).max(10).default(3),
  /** Length at full scale over length tested. */
  scale: z.number().min(1).max(1000).default(1),
}); // prettier-ignore

const outside = (value: number, low: number, high: number): Fault[] =>
  low <= value && value <= high
    ? []
    : [{ path: ['value'], what: 'The value lies outside its interval', mend: 'Accept the test anew: it is written by the program.' }]; // prettier-ignore
const anyMass = () => quantity('mass', 'any');
const massInterval = withRule(
  z.strictObject({ value: anyMass(), low: anyMass(), high: anyMass() }),
  ['value', 'low', 'high'],
  ({ value, low, high }) => outside(value.si, low.si, high.si),
);
const interval = withRule(
  z.strictObject({ value: z.number(), low: z.number(), high: z.number() }),
  ['value', 'low', 'high'],
  ({ value, low, high }) => outside(value, low, high),
);

const curve = z.array(z.number()).max(400);

/** What the test gave when it was accepted. */
const result = z.strictObject({
  /** Of record and settings: with others it is of another test and is not used. */
  key: z.string().regex(/^[0-9a-f]{64}$/, '64 hex digits'),
  programVersion: text,
  /** As tested, at the tank's scale. 95 %. */
  addedMass: massInterval,
  dragCoefficient: interval,
  /** Part of the force's swing that the model leaves over. */
  residual: z.number().min(0),
  readings: z.number().int().min(1),
  rowsKeptOut: z.number().int().min(0),
  runs: z
    .array(
      z.strictObject({
        period: quantity('time'),
        amplitude: quantity('length'),
        cycles: z.number().int().min(1),
        keuleganCarpenter: z.number().min(0),
        addedMass: quantity('mass', 'any'),
        dragCoefficient: z.number(),
      }),
    )
    .min(1)
    .max(500),
  /** A piece of the record for its picture: s, N, N. */
  overlay: z.strictObject({ time: curve, measured: curve, modelled: curve }),
  /** What was done to the readings, and what was found, in words. */
  steps: z.array(z.string().max(600)).max(60),
  findings: z.array(z.string().max(600)).max(60),
});

const tankTest = z.strictObject({
  id,
  title: text,
  record: recordField,
  reading: reading.prefault({}),
  conditioning: conditioning.prefault({}),
  delay: delay.optional(),
  setup,
  result: result.optional(),
});

/** Tests of the plate, or of a model of it. They are the same for every option. */
export const testsField = withRule(
  z.strictObject({
    tank: z.array(tankTest).max(20).default([]),
    sea: z.array(seaDeployment).max(20).default([]),
  }),
  ['tank.*.id', 'sea.*.id'],
  ({ tank, sea }): Fault[] => [...idFaults('tank', tank, 'tests'), ...idFaults('sea', sea, 'deployments')],
);

function idFaults(path: 'tank' | 'sea', all: readonly { readonly id: string }[], word: string): Fault[] {
  const ids = all.map((one) => one.id);
  const twice = ids.find((one, i) => ids.indexOf(one) !== i);
  return twice === undefined
    ? []
    : [{ path: [path], what: `Two ${word} have the id “${twice}”`, mend: 'Give each its own id.' }];
}

/** The test whose added mass and drag stand for the computed ones in the design, and why it may. An option may use another. */
export const testUsedField = z.strictObject({ test: id, reason: text });

type Tests = z.infer<typeof testsField>;
export type TankTest = Tests['tank'][number];
export type TankTestResult = NonNullable<TankTest['result']>;

/** What is wrong with the choice of a test. */
export function testUsedFaults(used: z.infer<typeof testUsedField> | undefined, tests: Tests | undefined): Fault[] {
  if (!used) return [];
  const tank = tests?.tank ?? [];
  const found = tank.find((one) => one.id === used.test);
  if (!found)
    return [{ path: ['testUsed', 'test'], what: `There is no test “${used.test}”`, mend: `Name one of: ${tank.map((one) => one.id).join(', ') || 'none yet'}.` }]; // prettier-ignore
  return found.result
    ? []
    : [{ path: ['testUsed', 'test'], what: `The test “${used.test}” has no accepted result`, mend: 'Accept its result on the sheet Tank test, or use computed values.' }]; // prettier-ignore
}
