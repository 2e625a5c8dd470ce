import * as z from 'zod';
import { quantity } from './quantity-field.ts';
import { text } from './text-field.ts';
import { withRule, type Fault } from './with-rule.ts';

/** Where steel is lost at a rate of its own. */
export const corrosionZones = ['immersed', 'low water and splash', 'air over the sea', 'undisturbed bed'] as const;

const joined = z.enum(['bonded', 'isolated']);

const anodes = withRule(
  z.strictObject({
    alloy: z.enum(['aluminium', 'zinc']),
    /** Stand-off: round it all water; flush: one face lies on the steel. */
    form: z.enum(['stand-off', 'flush']),
    count: z.number().int().min(1).max(500),
    /** Of the alloy of one anode, without its core. */
    mass: quantity('mass'),
    length: quantity('length'),
    /** Of the flush face. */
    width: quantity('length').optional(),
    /** Steel core of a stand-off anode. */
    core: quantity('length', 'not negative').optional(),
    /** Clear distance of a stand-off anode from the steel. */
    distance: quantity('length').optional(),
    /** Where they sit in plan; each is marked there. */
    places: z
      .array(z.strictObject({ x: quantity('length', 'any'), y: quantity('length', 'any') }))
      .max(500)
      .default([]),
    source: text,
  }),
  ['form', 'count', 'width', 'distance', 'places'],
  ({ form, count, width, distance, places }): Fault[] => [
    ...(form === 'flush' && !width
      ? [{ path: ['width'], what: 'A flush anode needs the width of its face', mend: 'Give "width".' }]
      : []),
    ...(form === 'stand-off' && !distance
      ? [{ path: ['distance'], what: 'A stand-off anode needs its clear distance from the steel', mend: 'Give "distance".' }] // prettier-ignore
      : []),
    ...(places.length > 0 && places.length !== count
      ? [
          {
            path: ['places'],
            what: `${count} anodes are given, and ${places.length} places`,
            mend: 'Give each anode its place, or leave all places out.',
          },
        ]
      : []),
  ],
);

/** What the plate was found to be when it was built. */
const asBuilt = z.strictObject({
  /** The option that was built; null: the document as it stands. */
  option: text.nullable(),
  /** On the scales, dry, everything fitted; where its centre was found in plan. */
  weighed: z
    .strictObject({
      mass: quantity('mass'),
      x: quantity('length', 'any').optional(),
      y: quantity('length', 'any').optional(),
      source: text,
    })
    .optional(),
  certificates: z
    .array(
      z.strictObject({
        part: text,
        proofLoad: quantity('force'),
        workingLoad: quantity('force'),
        certificate: text,
        date: z.iso.date(),
      }),
    )
    .max(200)
    .default([]),
  torques: z
    .array(z.strictObject({ panel: text, torque: quantity('moment'), bolts: z.number().int().min(1), tool: text }))
    .max(500)
    .default([]),
  /** Resistance of the path between two parts, measured when they were assembled. */
  continuity: z
    .array(z.strictObject({ from: text, to: text, resistance: quantity('resistance', 'not negative') }))
    .max(500)
    .default([]),
});

/** What the sea does to the plate, and what is done against it. */
export const durabilityField = z.strictObject({
  /** Coating of the steel by category of its breakdown; none: bare steel. */
  coating: z.enum(['none', 'I', 'II', 'III']),
  /** Bores of flooded tubes: shut off but for their drain holes, or open to a flow that brings oxygen. */
  bores: z.enum(['stagnant', 'open']),
  /** Where the plate spends its life: what is lost of bare steel goes by it; under water at all times where it is left out. */
  zone: z.enum(corrosionZones).optional(),
  /** Panels and their bolts: joined to the tubes by metal, or kept apart from them by sleeves and washers. */
  panels: joined,
  fasteners: joined,
  /** Panels that differ, by the name of the panel. */
  panelsApart: z.record(z.string(), joined).default({}),
  /** Of the water; cool seawater where it is left out. */
  resistivity: quantity('resistivity').optional(),
  anodes: anodes.optional(),
  asBuilt: asBuilt.optional(),
});

export type Durability = z.infer<typeof durabilityField>;
