import * as z from 'zod';
import { Refusal } from '../refusal.ts';
import { kinds, type Kind, type Quantity } from '../quantity/kinds.ts';
import { readQuantity } from '../quantity/read-quantity.ts';
import { shown } from './shown.ts';

// The page's content policy forbids code made from text; zod probes for it otherwise.
z.config({ jitless: true });

/** The document of schema version 1: every word that the rest of the program uses. Quantities are `{ si, typed }` after reading. */
export const schemaName = 'stillplate-document/1';

type Sign = 'positive' | 'not negative' | 'any';

/** A quantity: a typed string, or `{ si, typed }` whose two values must agree. */
function quantity(kind: Kind, sign: Sign = 'positive') {
  const { word, example, unit } = kinds[kind];
  return z.unknown().transform((given, context): Quantity => {
    const stop = (message: string, mend: string) => {
      context.addIssue({ code: 'custom', message, params: { mend } });
      return z.NEVER;
    };
    try {
      const pair = typeof given === 'string' ? { typed: given } : typedPair.safeParse(given).data;
      if (!pair) {
        const what = typeof given === 'number' ? 'has no unit' : 'is no quantity';
        return stop(
          `${shown(given)} ${what}, the field needs ${word}`,
          `Write ${word} in quotation marks with its unit: ${example}.`,
        );
      }
      const read = readQuantity(pair.typed, kind);
      if (
        pair.si !== undefined &&
        !(typeof pair.si === 'number' && Math.abs(pair.si - read.si) <= 1e-9 * Math.abs(read.si))
      )
        return stop(
          `si ${shown(pair.si)} ${unit} and typed “${pair.typed}” (${read.si} ${unit}) disagree`,
          'Keep one of the two, or make them agree.',
        );
      if (sign === 'positive' && !(read.si > 0))
        return stop(
          kind === 'temperature' ? `“${read.typed}” is below absolute zero` : `“${read.typed}” must be more than zero`,
          `Write ${word} above ${kind === 'temperature' ? 'it' : 'zero'}.`,
        );
      if (sign === 'not negative' && !(read.si >= 0))
        return stop(`“${read.typed}” must not be negative`, `Write ${word} of zero or more.`);
      return read;
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      return stop(error.what, error.mend);
    }
  });
}

const typedPair = z.strictObject({ typed: z.string(), si: z.unknown().optional() });
/** One line in any script; control characters would reach a terminal or the note. */
const text = z
  .string()
  .min(1)
  .max(200)
  .regex(/^\P{Cc}*$/u, 'a text is one line, without control characters')
  .regex(/\S|^$/, 'a text is more than blanks');
const longText = z
  .string()
  .max(4000)
  .regex(/^[\P{Cc}\n\r\t]*$/u, 'a text has no control characters but line ends and tabs');
/** Ids stand in places and quantity names, so they keep to letters, digits and a few marks. */
const id = z
  .string()
  .regex(
    /^[\p{L}\p{N}][\p{L}\p{M}\p{N} _'+-]{0,39}$/u,
    'letters and digits of any script, at most 40, with spaces, - _ + or an apostrophe inside',
  );
const factor = z.number().positive();
const named = <T extends z.ZodType>(of: T) => z.record(id, of);
const length = () => quantity('length');
const place = { x: quantity('length', 'any'), y: quantity('length', 'any') };

const project = z.strictObject({
  name: text,
  number: text.optional(),
  client: text.optional(),
  vessel: text.optional(),
  site: text.optional(),
  subject: longText.optional(),
  revision: text,
  date: z.iso.date(),
});

const basis = z.strictObject({
  /** Table of factors, by name: see core/catalogue/design-basis.ts. */
  table: z.enum(['EN 1993', 'AISC 360 ASD']),
  overrides: z.array(z.strictObject({ factor: text, value: factor, reason: text })).default([]),
  life: quantity('time'),
});

const water = z.strictObject({
  depth: length(),
  density: quantity('density').optional(),
  salinity: z.number().min(0).max(42).optional(),
  temperature: quantity('temperature').optional(),
  latitude: quantity('angle', 'any').optional(),
});

const tube = z.strictObject({
  id: id.optional(),
  at: quantity('length', 'any'),
  from: quantity('length', 'any').optional(),
  to: quantity('length', 'any').optional(),
  section: text.optional(),
  material: text.optional(),
  flooding: z.enum(['flooded', 'sealed']).optional(),
});

const tubeSet = z.strictObject({
  section: text,
  material: text,
  flooding: z.enum(['flooded', 'sealed']),
  /** Holes of a flooded tube at its high and low point; none leaves air or water trapped. */
  vent: length().optional(),
  drain: length().optional(),
  /** Evenly spaced, first centre line at zero … */
  count: z.number().int().min(2).max(60).optional(),
  spacing: length().optional(),
  /** … or each by itself. */
  tubes: z.array(tube).min(2).max(60).optional(),
  /** How far each tube runs past the outermost tubes that it crosses, measured from their centre lines. */
  overhang: quantity('length', 'not negative'),
});

const eye = z.strictObject({
  material: text,
  thickness: length(),
  /** Width of the plate at its foot, along the tube. */
  width: length(),
  /** Height of the hole's centre above the tube's face. */
  height: length(),
  holeDiameter: length(),
  pinDiameter: length(),
  /** Hole's centre to the nearest edge in the direction of pull. */
  edge: length(),
  weldThroat: length(),
});

const suspension = z.strictObject({
  kind: z.enum(['line', 'bridle', 'strut']),
  attachments: z
    .array(z.strictObject({ id, ...place }))
    .min(1)
    .max(8),
  /** Height of the bridle's apex above the attachments. */
  apex: length().optional(),
  eye,
});

const grid = z.strictObject({
  arrangement: z.enum(['stacked', 'flush']),
  mainTubes: tubeSet,
  crossTubes: tubeSet,
  /** Throat of the welds at the crossings. */
  jointThroat: length(),
  suspension,
  padEyes: z
    .strictObject({
      points: z
        .array(z.strictObject({ id, ...place }))
        .min(1)
        .max(12),
      eye,
      apex: length(),
    })
    .optional(),
});

const fixing = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('bolted'),
    bolt: text,
    class: text,
    /** Largest distance of bolts along an edge. */
    pitch: length(),
    /** Bolt line to the panel's edge. */
    edgeDistance: length(),
    hole: z.enum(['fine', 'medium', 'normal', 'oversize']).default('normal'),
    shear: z.enum(['clearance', 'slip-resistant', 'fitted']),
    /** Slip factor of the faying surfaces, with how it is known. */
    slipFactor: z.strictObject({ value: factor, source: text }).optional(),
    /** How the bolt goes through or into the tube. */
    into: z.enum(['through-bolt with sleeve', 'one-sided', 'welded stud', 'tapped pad']),
    /** Document that limits the hardness of bolts above class 8.8 under cathodic protection. */
    hardnessLimit: text.optional(),
    threadsInShearPlane: z.boolean().default(true),
    countersunk: z.boolean().default(false),
  }),
  z.strictObject({
    kind: z.literal('welded'),
    throat: length(),
    pattern: z.enum(['all round', 'two sides', 'intermittent']),
    run: length().optional(),
    gap: length().optional(),
    metal: text.default('matching'),
    method: z.enum(['directional', 'throat']).default('directional'),
  }),
]);

const panelHole = z.strictObject({
  x: quantity('length', 'any'),
  y: quantity('length', 'any'),
  diameter: length(),
  purpose: z.enum(['vent', 'drain', 'lifting', 'other']),
});

/** A panel design, shared by name. */
const panelDesign = z.strictObject({
  side: z.enum(['topside', 'underside']),
  thickness: length(),
  material: text,
  /** How far the panel laps onto the tubes it bears on, from the tube's face: both main tubes, both cross tubes … */
  overlap: z.strictObject({
    onMain: quantity('length', 'not negative'),
    onCross: quantity('length', 'not negative'),
    /** … and a side that differs, by the tube on it: the main tube of lower or higher y, the cross tube of lower or higher x. */
    sides: z
      .strictObject({
        mainLow: quantity('length', 'not negative').optional(),
        mainHigh: quantity('length', 'not negative').optional(),
        crossLow: quantity('length', 'not negative').optional(),
        crossHigh: quantity('length', 'not negative').optional(),
      })
      .optional(),
  }),
  /** Side of the square cut out of each corner. */
  cornerNotch: length().optional(),
  /** Holes from the panel's centre. */
  holes: z.array(panelHole).max(40).default([]),
  support: z.enum(['four sides', 'main tubes', 'cross tubes']),
  /** What the bending check relies on at the edges. */
  edges: z.enum(['hinged', 'held']).default('hinged'),
  fixing,
  /** For plastics and laminates: modulus under the load's duration, with its source. */
  longTerm: z
    .strictObject({
      modulus: quantity('stress'),
      strength: quantity('stress'),
      duration: quantity('time'),
      source: text,
    })
    .optional(),
});

const protection = z.strictObject({
  coating: z.strictObject({ thickness: length(), dryDensity: quantity('density') }).optional(),
  cathodic: z.boolean(),
  /** Thickness lost by the end of life, for each exposed face. */
  lossPerFace: z.strictObject({
    panel: quantity('length', 'not negative'),
    tubeOutside: quantity('length', 'not negative'),
    tubeInside: quantity('length', 'not negative'),
    source: text,
  }),
});

const massAllowances = z.strictObject({
  /** Weld metal of the grid and rolling tolerance, as parts of the steel's mass. */
  weld: z.number().min(0).max(0.5),
  tolerance: z.number().min(-0.2).max(0.5),
  extras: z
    .array(
      z.strictObject({
        name: text,
        mass: quantity('mass', 'not negative'),
        volume: quantity('volume', 'not negative'),
        ...place,
        z: quantity('length', 'any'),
      }),
    )
    .default([]),
});

const service = z.strictObject({
  source: z.enum(['stated']),
  force: quantity('force'),
  measure: z.enum(['amplitude', 'range']),
  level: z.enum(['extreme', 'characteristic', 'mean']),
  returnPeriod: quantity('time'),
  includes: z.array(z.enum(['weight', 'inertia', 'drag', 'current'])).min(1),
  wavePeriod: quantity('time'),
  cyclesPerYear: z.number().positive(),
});

const loads = z.strictObject({
  service,
  /** Middle over mean of the pressure on the plate, for the stated shape beside the plan-area share. */
  pressureShape: z.strictObject({ middleOverMean: z.number().min(1).max(3), source: text }).optional(),
  crossing: z
    .strictObject({
      speed: quantity('speed'),
      slamCoefficient: z.strictObject({ value: factor, source: text }).optional(),
    })
    .optional(),
  liftOut: z
    .strictObject({
      speed: quantity('speed'),
      dragCoefficient: z.strictObject({ value: factor, source: text }),
      tilt: quantity('angle', 'not negative').optional(),
      /** On the weight of what is lifted; the rule for lifts offshore where none is stated. */
      dynamicFactor: z.strictObject({ value: z.number().min(1).max(5), source: text }).optional(),
    })
    .optional(),
  liftInAir: z
    .strictObject({ dynamicFactor: z.strictObject({ value: z.number().min(1).max(5), source: text }).optional() })
    .optional(),
  deck: z
    .strictObject({
      supports: z
        .array(z.strictObject({ id, ...place }))
        .min(3)
        .max(20),
      dynamicFactor: z.strictObject({ value: z.number().min(1).max(5), source: text }),
    })
    .optional(),
});

const source = z.strictObject({ document: text, edition: text.optional(), clause: text.optional() }).nullable();

/** Rows that the document adds to the catalogue. A null source is shown as “no source”. */
const userCatalogue = z.strictObject({
  materials: z
    .array(
      z.strictObject({
        id: text,
        title: text,
        family: z.enum(['carbon steel', 'stainless steel', 'aluminium', 'thermoplastic', 'laminate']),
        density: quantity('density'),
        youngModulus: quantity('stress'),
        poisson: z.number().min(0).lt(0.5),
        yieldStrength: quantity('stress'),
        ultimateStrength: quantity('stress'),
        upToThickness: length(),
        correlationFactor: factor.optional(),
        source,
      }),
    )
    .default([]),
  sections: z
    .array(
      z.strictObject({
        id: text,
        title: text,
        height: length(),
        width: length(),
        wall: length(),
        outerRadius: quantity('length', 'not negative'),
        innerRadius: quantity('length', 'not negative'),
        process: z.enum(['hot finished', 'cold formed']),
        source,
      }),
    )
    .default([]),
});

const merge: z.ZodType<MergePatch> = z.lazy(() =>
  z.union([z.string(), z.number(), z.boolean(), z.null(), z.array(z.any()), z.record(z.string(), merge)]),
);
export type MergePatch = string | number | boolean | null | unknown[] | { [key: string]: MergePatch };

/** What an option may change; a merge patch (RFC 7396) on these parts of the document: null takes away. */
const changes = z.strictObject({
  designs: z.record(z.string(), merge).optional(),
  panels: z.record(z.string(), z.string().nullable()).optional(),
  grid: z.record(z.string(), merge).optional(),
  loads: z.record(z.string(), merge).optional(),
  water: z.record(z.string(), merge).optional(),
  protection: z.record(z.string(), merge).optional(),
  basis: z.record(z.string(), merge).optional(),
});

const option = z.strictObject({ id, title: text, base: id.nullable(), remark: longText.optional(), changes });

export const documentSchema = z.strictObject({
  schema: z.literal(schemaName),
  project,
  units: z.enum(['metric', 'inch']),
  paper: z.enum(['A4', 'letter']),
  basis,
  water,
  grid,
  designs: named(panelDesign),
  /** Bay, or rectangle of bays ("A1:B2"), to the name of its panel design. */
  panels: z.record(z.string(), z.string()),
  protection,
  mass: massAllowances,
  loads,
  catalogue: userCatalogue.default({ materials: [], sections: [] }),
  options: z.array(option).max(50).default([]),
  /** The option that the note is about; null is the document as it stands. */
  chosen: id.nullable().default(null),
});

export type PlateDocument = z.infer<typeof documentSchema>;
export type PanelDesign = z.infer<typeof panelDesign>;
export type Fixing = PanelDesign['fixing'];
export type BoltedFixing = Extract<Fixing, { kind: 'bolted' }>;
export type WeldedFixing = Extract<Fixing, { kind: 'welded' }>;
export type TubeSet = z.infer<typeof tubeSet>;
export type Eye = z.infer<typeof eye>;
export type Loads = z.infer<typeof loads>;
export type PlateOption = z.infer<typeof option>;
