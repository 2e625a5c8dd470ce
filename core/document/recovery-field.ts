import * as z from 'zod';
import { quantity } from './quantity-field.ts';
import { text } from './text-field.ts';
import { withRule, type Fault } from './with-rule.ts';

const id = z.string().regex(/^[\p{L}\p{N}][\p{L}\p{M}\p{N} _'+-]{0,39}$/u, 'letters and digits of any script, at most 40, with spaces, - _ + or an apostrophe inside'); // prettier-ignore
const part = z.number().min(0).max(1);
/** A probability or a rate that somebody answers for: there is no default for any of them. */
const probability = z.strictObject({ value: z.number().min(0).max(1), source: text });
const perYear = z.strictObject({ value: z.number().min(0).max(100), source: text });

export const ropeMaterials = ['polypropylene', 'HMPE', 'polyester', 'polyamide', 'steel wire'] as const;

const rope = z.strictObject({
  material: z.enum(ropeMaterials),
  diameter: quantity('length'),
  /** New, dry and straight, by the maker's certificate. */
  breakingStrength: quantity('force'),
  mass: quantity('lineMass'),
  source: text,
  /** As it lies in the canister; from depth, drift and slack where it is left out. */
  length: quantity('length').optional(),
  /** Spare over depth and drift, as a part of both. */
  slack: part.default(0.15),
  /** What is left of the strength after each: at the splice, by wear, after a year in the sea. Wetting follows the material. */
  splice: z.number().min(0.3).max(1).default(0.9),
  wear: z.number().min(0.3).max(1).default(0.9),
  perYear: z.number().min(0.5).max(1).default(0.95),
  /** Smallest diameter that it bends over: thimble, pin or sheave. */
  bend: quantity('length').optional(),
  /** Strength left over working pull. */
  designFactor: z.number().min(1).max(20).default(5),
  /** Part longer when it breaks. */
  stretchAtBreak: z.number().positive().max(1).optional(),
  /** Part of the canister's volume that is rope. */
  packing: z.strictObject({ solid: z.number().min(0.1).max(0.9), how: z.enum(['measured', 'assumed']), source: text }),
  /** What the rope hauls: the plate itself, or a heavier line that does. */
  hauls: z.enum(['plate', 'messenger']).default('messenger'),
  /** Pull of hauling the heavier line in. */
  messengerPull: quantity('force').optional(),
});

const float = z.strictObject({
  kind: z.enum(['foam', 'hollow glass', 'hollow plastic']),
  volume: quantity('volume'),
  mass: quantity('mass'),
  diameter: quantity('length'),
  dragCoefficient: z.number().positive().max(3).default(0.6),
  ratedDepth: quantity('length'),
  /** Where it collapses; the rated depth by a stated factor where it is left out. */
  crushDepth: quantity('length').optional(),
  /** Part of its volume lost at the rated depth, in proportion above it. */
  compression: part.default(0.01),
  /** Part of its volume that has filled with water by the end of the deployment. */
  uptake: part.default(0.02),
  /** Part of its volume that must stand out of the water to be seen. */
  visible: part.default(0.3),
  source: text,
});

const canister = z.strictObject({
  /** Clear inside. */
  diameter: quantity('length'),
  height: quantity('length'),
  /** Room left over the rope, and diameter of the cone that keeps the middle of the coil open. */
  clearance: quantity('length', 'not negative'),
  cone: quantity('length', 'not negative'),
  /** Empty, in air, and volume of its material. */
  mass: quantity('mass'),
  volume: quantity('volume'),
  x: quantity('length', 'any'),
  y: quantity('length', 'any'),
  /** Of its middle over the plate's level zero. */
  z: quantity('length', 'any'),
  /** Turned into the canister this way, so that it runs out without kinks. */
  lay: z.enum(['with the lay', 'figure of eight', 'against the lay']),
  bolts: z.strictObject({
    bolt: text,
    class: text,
    count: z.number().int().min(1).max(24),
    circle: quantity('length'),
  }),
  /** Largest acceleration that the mounting sees, in g: on deck, in waves, by a snag. */
  acceleration: z.number().positive().max(20).default(2),
});

const release = z.strictObject({
  id,
  kind: z.enum(['acoustic', 'timed', 'corroding link']),
  mass: quantity('mass'),
  volume: quantity('volume'),
  rating: quantity('force'),
  /** Pull below which it may hang on. */
  leastPull: quantity('force', 'not negative'),
  /** Life of its battery, or for a timed or corroding link the longest time until it lets go. */
  endurance: quantity('time'),
  tiltLimit: quantity('angle').optional(),
  antifouled: z.boolean().default(false),
  checkedBeforeSailing: z.boolean().default(false),
  /** Not letting go when asked: on one demand, or as a rate with the inspection interval. */
  fails: probability.optional(),
  failsPerYear: perYear.optional(),
  falsePerYear: perYear.optional(),
  canister: canister.optional(),
});

/** Levels in dB re 1 µPa; frequency and bandwidth in Hz. */
const acoustic = z.strictObject({
  sourceLevel: z.number().min(100).max(230),
  frequency: z.number().min(200).max(1_000_000),
  bandwidth: z.number().positive(),
  threshold: z.number().min(-20).max(60),
  range: quantity('length'),
  /** Wind over the sea; or the level of the noise in a hertz, where it is known. */
  wind: quantity('speed', 'not negative').optional(),
  noise: z.number().min(0).max(150).optional(),
  pH: z.number().min(6.5).max(9).default(8),
  source: text,
});

const way = z.strictObject({
  id,
  kind: z.enum(['standing line', 'released float', 'lift bag', 'diver']),
  title: text,
  /** Which releases let its float go; none for a line that stands. */
  releases: z.array(id).max(2).default([]),
  /** All else that has to work, one after the other. */
  parts: z
    .array(z.strictObject({ name: text, fails: probability.optional(), falsePerYear: perYear.optional() }))
    .max(20)
    .default([]),
  left: text.default('nothing'),
});

const motion = z.strictObject({
  period: quantity('time'),
  /** Amplitudes for each metre of significant wave height. */
  heave: quantity('length', 'not negative'),
  roll: quantity('angle', 'not negative'),
  pitch: quantity('angle', 'not negative'),
});

const lift = z.strictObject({
  /** Sea at which the lift is judged: significant height, mean zero-crossing period. */
  sea: z.strictObject({ height: quantity('length'), period: quantity('time') }),
  lowering: quantity('speed'),
  hoisting: quantity('speed'),
  /** What the user says that each may carry, dynamic load included. */
  aFrame: quantity('force'),
  winch: quantity('force'),
  line: z.strictObject({ breakingStrength: quantity('force'), designFactor: z.number().min(1).max(20).default(3), stiffness: quantity('stiffness'), mass: quantity('lineMass', 'not negative') }), // prettier-ignore
  capacitySource: text,
  /** Vessel: motions by period, and the tip of crane or frame from their centre. */
  motions: z.array(motion).min(1).max(20),
  tip: z.strictObject({ along: quantity('length', 'any'), across: quantity('length', 'any') }),
  motionSource: text,
  sling: z.strictObject({
    kind: z.enum(['wire', 'polyester', 'HMPE', 'other fibre']),
    breakingStrength: quantity('force'),
    /** Strength lost at the worse of termination and bend, as a factor on the load (1.12: steel ferrule). */
    termination: z.number().min(1).max(3).default(1.25),
    /** Leg by leg in the order of the eyes, where they are not all as long as the apex asks. */
    lengths: z.array(quantity('length')).max(4).optional(),
    skew: z.strictObject({ value: z.number().min(1).max(2), source: text }).optional(),
    source: text,
  }),
  shackle: z.strictObject({ workingLoad: quantity('force'), source: text }),
  /** Longest time that trays and tubes may take to empty while the plate hangs in the splash zone. */
  drainTime: quantity('time'),
  dragCoefficient: z.strictObject({ value: z.number().positive().max(20), source: text }).optional(),
  slamCoefficient: z.strictObject({ value: z.number().positive().max(20), source: text }).optional(),
  /** Hung tilted, so that an edge leaves the water first. */
  tilt: quantity('angle').optional(),
  bed: quantity('length').optional(),
});

const repeated = (ids: readonly string[]): string[] => [...new Set(ids.filter((one, i) => ids.indexOf(one) !== i))];

/** Putting the plate down and getting it back: what the checks, the sheet and the note of it need. */
export const recoveryField = withRule(
  z.strictObject({
    deployment: quantity('time'),
    /** How often the chain is proved from end to end; once a deployment where it is left out. */
    inspection: quantity('time').optional(),
    current: quantity('speed', 'not negative'),
    /** Pull set aside for a snag while the rope runs out. */
    snag: quantity('force', 'not negative'),
    rope,
    float,
    releases: z.array(release).max(4).default([]),
    /** Part of the failures that take two at once: growth on both, one installer, one maker. */
    commonCause: z.strictObject({ beta: part, source: text }).optional(),
    acoustic: acoustic.optional(),
    ways: z.array(way).min(1).max(6),
    chosen: id,
    /** Buoyancy that the float over the plate has beyond what it carries, and all it has. */
    mainFloat: z.strictObject({ reserve: quantity('force'), whole: quantity('force'), source: text }).optional(),
    lift: lift.optional(),
  }),
  ['chosen', 'ways.*.id', 'ways.*.releases', 'releases.*.id', 'rope.hauls', 'rope.messengerPull'],
  ({ chosen, ways, releases, rope: { hauls, messengerPull } }): Fault[] => {
    const known = releases.map((one) => one.id);
    const faults: Fault[] = [
      ...repeated(ways.map((one) => one.id)).map((twice) => ({ path: ['ways'], what: `Two ways of recovery have the id “${twice}”`, mend: 'Give each its own id.' })), // prettier-ignore
      ...repeated(known).map((twice) => ({ path: ['releases'], what: `Two releases have the id “${twice}”`, mend: 'Give each its own id.' })), // prettier-ignore
    ];
    if (!ways.some((one) => one.id === chosen))
      faults.push({ path: ['chosen'], what: `The chosen way “${chosen}” is not among the ways of recovery`, mend: `Name one of: ${ways.map((one) => one.id).join(', ')}.` }); // prettier-ignore
    ways.forEach(({ id: own, kind, releases: named }, i) => {
      const stray = named.filter((one) => !known.includes(one));
      for (const one of stray)
        faults.push({ path: ['ways', i, 'releases'], what: `The way “${own}” lets go by “${one}”, which is not among the releases`, mend: `Name one of: ${known.join(', ') || 'none yet'}.` }); // prettier-ignore
      if (kind === 'released float' && named.length === 0)
        faults.push({ path: ['ways', i, 'releases'], what: `The way “${own}” has a released float and nothing that releases it`, mend: 'Name one release, or two.' }); // prettier-ignore
    });
    if (hauls === 'messenger' && !messengerPull)
      faults.push({ path: ['rope', 'messengerPull'], what: 'The rope hauls a heavier line in, and its pull is not given', mend: 'Give "messengerPull", or let the rope haul the plate: "hauls": "plate".' }); // prettier-ignore
    return faults;
  },
);

export type RecoveryFields = z.infer<typeof recoveryField>;
export type RopeFields = RecoveryFields['rope'];
export type FloatFields = RecoveryFields['float'];
export type ReleaseFields = RecoveryFields['releases'][number];
export type CanisterFields = NonNullable<ReleaseFields['canister']>;
export type WayFields = RecoveryFields['ways'][number];
export type LiftFields = NonNullable<RecoveryFields['lift']>;
export type AcousticFields = NonNullable<RecoveryFields['acoustic']>;
