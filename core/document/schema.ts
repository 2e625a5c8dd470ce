import * as z from 'zod';
import { sameSpelling } from '../catalogue/spelling.ts';
import { durabilityField } from './durability-field.ts';
import { fatigueField } from './fatigue-field.ts';
import { hydrodynamicsField } from './hydrodynamics-field.ts';
import { jointsField } from './joints-field.ts';
import { fixingDetails } from './fixing-details.ts';
import { preloadField } from './preload-field.ts';
import { quantity } from './quantity-field.ts';
import { ratesField } from './rates-field.ts';
import { recoveryField } from './recovery-field.ts';
import { testUsedFaults, testUsedField, testsField } from './tests-field.ts';
import { searchField } from './search-field.ts';
import { sensitivityField } from './sensitivity-field.ts';
import { spreadsField } from './spreads-field.ts';
import { text } from './text-field.ts';
import { userCatalogue } from './user-catalogue.ts';
import { withRule, type Fault } from './with-rule.ts';
import { boltPatternFaults, boltPlaces } from './bolt-places.ts';

/** The document of schema version 1: every word that the rest of the program uses. Quantities are `{ si, typed }` after reading. */
export const schemaName = 'stillplate-document/1';

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

const water = withRule(
  z.strictObject({
    depth: length(),
    density: quantity('density').optional(),
    salinity: z.number().min(0).max(42).optional(),
    temperature: quantity('temperature').optional(),
    latitude: quantity('angle', 'any').optional(),
  }),
  ['density', 'salinity', 'temperature'],
  ({ density, salinity, temperature }): Fault[] => {
    if (!density && (salinity === undefined || !temperature))
      return [
        {
          path: [],
          what: 'The water has neither a density nor salinity and temperature',
          mend: 'Give "density", or "salinity" with "temperature".',
        },
      ];
    return density && salinity !== undefined
      ? [
          {
            path: [],
            what: 'The water has a density and a salinity',
            mend: 'Keep one: a density, or salinity with temperature.',
          },
        ]
      : [];
  },
);

const tube = z.strictObject({
  id: id.optional(),
  at: quantity('length', 'any'),
  from: quantity('length', 'any').optional(),
  to: quantity('length', 'any').optional(),
  section: text.optional(),
  material: text.optional(),
  flooding: z.enum(['flooded', 'sealed']).optional(),
});

const tubeSet = withRule(
  z.strictObject({
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
  }),
  ['count', 'spacing', 'tubes.*.id'],
  ({ count, spacing, tubes }): Fault[] => {
    if (tubes)
      return count === undefined && !spacing
        ? []
        : [
            {
              path: [],
              what: 'The tubes are given twice: evenly spaced, and each by itself',
              mend: 'Keep "count" with "spacing", or keep "tubes".',
            },
          ];
    if (count !== undefined && spacing) return [];
    const missing = count === undefined ? 'count' : 'spacing';
    return [
      {
        path: [],
        what: count === undefined && !spacing ? 'The tubes are not given' : `“${missing}” is missing`,
        mend: 'Give "count" with "spacing" (evenly spaced), or "tubes" (each by itself).',
      },
    ];
  },
);

const eye = withRule(
  z.strictObject({
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
    /** A round plate on each face of the eye about its hole, of the eye's material. */
    cheek: z.strictObject({ thickness: length(), diameter: length(), weldThroat: length() }).optional(),
    /** A plate under the eye that it is welded to, with pairs of bolts on both sides of it, through both walls of the tube with
     *  crush sleeves; left out: the eye is welded to the tube. `gauge` across the eye, `end` and `edge` from bolt to edge. */
    footPlate: z
      .strictObject({
        thickness: length(),
        gauge: length(),
        edge: length(),
        pitch: length(),
        end: length(),
        pairs: z.number().int().min(2).max(6),
        bolt: text,
        class: text,
      })
      .optional(),
  }),
  ['cheek', 'holeDiameter', 'edge', 'width'],
  ({ cheek, holeDiameter, edge, width }): Fault[] => {
    if (!cheek) return [];
    const room = Math.min(2 * edge.si, width.si) - 2 * Math.SQRT2 * cheek.weldThroat.si;
    return cheek.diameter.si > holeDiameter.si && cheek.diameter.si <= room
      ? []
      : [{ path: ['cheek', 'diameter'], what: `A cheek plate of ${cheek.diameter.typed} does not fit between the hole of ${holeDiameter.typed} and the edge of its eye, its weld counted`, mend: 'Give a diameter over that of the hole and under twice the edge distance less two legs of the weld.' }]; // prettier-ignore
  },
);

/** Named points in plan, each with an id of its own. */
const points = (least: number, most: number) =>
  withRule(
    z
      .array(z.strictObject({ id, ...place }))
      .min(least)
      .max(most),
    ['*.id'],
    (given): Fault[] =>
      repeated(given.map((point) => point.id)).map((twice) => ({
        path: [],
        what: `The id “${twice}” is given twice`,
        mend: 'Give each point its own id.',
      })),
  );
const repeated = (ids: readonly string[]): string[] => [...new Set(ids.filter((one, i) => ids.indexOf(one) !== i))];

const suspension = withRule(
  withRule(
    z.strictObject({
      kind: z.enum(['line', 'bridle', 'strut']),
      attachments: points(1, 8),
      /** Height of the bridle's apex above the attachments. */
      apex: length().optional(),
      eye,
    }),
    ['kind', 'apex'],
    ({ kind, apex }): Fault[] =>
      kind === 'bridle' && !apex
        ? [{ path: ['apex'], what: 'A bridle needs the height of its apex', mend: 'Give "apex", for example "3 m".' }]
        : [],
  ),
  ['kind', 'attachments.*.id'],
  ({ kind, attachments }): Fault[] =>
    kind === 'line' && attachments.length > 1
      ? [
          {
            path: [],
            what: `A line has one attachment, ${attachments.length} are given`,
            mend: 'Call it a bridle and give its apex, or keep one attachment.',
          },
        ]
      : [],
);

const grid = z.strictObject({
  arrangement: z.enum(['stacked', 'flush']),
  mainTubes: tubeSet,
  crossTubes: tubeSet,
  /** Throat of the welds at the crossings. */
  jointThroat: length(),
  /** How the rounded flanks of stacked tubes are welded, and by what a throat beyond the table is proved. */
  flareWeld: z
    .strictObject({
      process: z.enum(['stick or self-shielded wire', 'gas-shielded wire', 'submerged arc']),
      proof: text.optional(),
    })
    .optional(),
  /** Rigid where it is left out. */
  joints: jointsField.optional(),
  suspension,
  padEyes: z
    .strictObject({
      points: points(1, 12),
      eye,
      apex: length(),
    })
    .optional(),
});

const fixing = z.discriminatedUnion('kind', [
  withRule(
    z.strictObject({
      kind: z.literal('bolted'),
      bolt: text,
      class: text,
      /** Bolts in lines: largest distance of bolts along an edge … */
      pitch: length().optional(),
      /** … and bolt line to the panel's edge. */
      edgeDistance: length().optional(),
      /** Or bolts anywhere: a list of places in place of both. */
      places: boltPlaces.optional(),
      hole: z.enum(['fine', 'medium', 'normal', 'oversize', 'short slot', 'long slot']).default('normal'),
      /** Which way slots run, by the edge that their row of bolts lies along. The panel is slotted, the tube has round holes. */
      slot: z.enum(['along the edge', 'across the edge']).default('along the edge'),
      shear: z.enum(['clearance', 'slip-resistant', 'fitted']),
      /** Slip factor of the faying surfaces, with how it is known. */
      slipFactor: z.strictObject({ value: factor, source: text }).optional(),
      /** How the bolt goes through or into the tube. */
      into: z.enum(['through-bolt with sleeve', 'one-sided', 'welded stud', 'tapped pad', 'clamp']),
      ...fixingDetails,
      /** Tension in the bolts after tightening: before a torque, if both are given. */
      preload: preloadField.optional(),
      /** Document that limits the hardness of bolts above class 8.8 under cathodic protection. */
      hardnessLimit: text.optional(),
      threadsInShearPlane: z.boolean().default(true),
      countersunk: z.boolean().default(false),
    }),
    ['pitch', 'edgeDistance', 'places'],
    boltPatternFaults,
  ),
  withRule(
    z.strictObject({
      kind: z.literal('welded'),
      throat: length(),
      pattern: z.enum(['all round', 'two sides', 'intermittent']),
      run: length().optional(),
      gap: length().optional(),
      /** How far ends at corners of the panel are welded on round the corner. */
      endReturn: length().optional(),
      /** Throat on a tube's rounded corner, with the trial weld whose section shows it; left out: by radius and gap. */
      cornerThroat: z.strictObject({ value: length(), source: text }).optional(),
      /** Round holes over the tubes' flats, filled with weld: beside the weld of the edge, against shear only. */
      plugs: z.strictObject({ diameter: length(), pitch: length(), edgeDistance: length() }).optional(),
      metal: text.default('matching'),
      method: z.enum(['directional', 'throat']).default('directional'),
    }),
    ['pattern', 'run', 'gap'],
    ({ pattern, run, gap }): Fault[] =>
      pattern === 'intermittent' && (!run || !gap)
        ? [
            {
              path: [],
              what: 'Intermittent welds need the length of each run and of the gap',
              mend: 'Give "run" and "gap".',
            },
          ]
        : [],
  ),
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
      /** What it bears under a washer for that duration, a design value. */
      bearing: quantity('stress').optional(),
      duration: quantity('time'),
      source: text,
    })
    .optional(),
});

const protection = z.strictObject({
  coating: z.strictObject({ thickness: length(), dryDensity: quantity('density') }).optional(),
  cathodic: z.boolean(),
  /** Dipped in molten zinc after welding. */
  galvanised: z.boolean().optional(),
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
  /** By what each panel's part of the force is found: plan area and pressure shape, or the flow about the plate as well. */
  panelShares: z.enum(['area and shape', 'area, shape and flow']).optional(),
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
      supports: points(3, 20),
      dynamicFactor: z.strictObject({ value: z.number().min(1).max(5), source: text }),
    })
    .optional(),
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
  fatigue: z.record(z.string(), merge).optional(),
  durability: z.record(z.string(), merge).optional(),
  testUsed: z.record(z.string(), merge).nullable().optional(),
  water: z.record(z.string(), merge).optional(),
  protection: z.record(z.string(), merge).optional(),
  basis: z.record(z.string(), merge).optional(),
  recovery: z.record(z.string(), merge).optional(),
  hydrodynamics: z.record(z.string(), merge).optional(),
});

/** A list of ids to choose from, in words. */
const nameOneOf = (ids: readonly string[]): string => `Name one of: ${ids.join(', ') || 'none yet'}`;

const option = z.strictObject({ id, title: text, base: id.nullable(), remark: longText.optional(), changes });

const options = withRule(z.array(option).max(50), ['*.id', '*.base'], (given): Fault[] => {
  const known = given.map((one) => one.id);
  return [
    ...repeated(known).map((twice) => ({
      path: [],
      what: `Two options have the id “${twice}”`,
      mend: 'Give each option its own id.',
    })),
    ...given.flatMap(({ id: own, base }, i): Fault[] => {
      const faults: Fault[] = [];
      if (own === 'base')
        faults.push({
          path: [i, 'id'],
          what: 'An option has the id “base”, which is the name of the document as it stands',
          mend: 'Give the option another id.',
        });
      if (base !== null && !known.includes(base))
        faults.push({
          path: [i, 'base'],
          what: `Option “${own}” builds on “${base}”, which is not among the options`,
          mend: `${nameOneOf(known.filter((other) => other !== own))}; or null for the document as it stands.`,
        });
      const circle = circleOf(given, own);
      if (circle)
        faults.push({
          path: [i, 'base'],
          what: `The bases of option “${own}” go in a circle: ${circle.join(' → ')}`,
          mend: 'Give one of them the base null.',
        });
      return faults;
    }),
  ];
});

/** The ids from an option through its bases back to itself, if they lead there. */
function circleOf(
  given: readonly { readonly id: string; readonly base: string | null }[],
  from: string,
): string[] | undefined {
  const line = [from];
  const baseOf = (of: string) => given.find((one) => one.id === of)?.base;
  for (let base = baseOf(from); base; base = baseOf(base)) {
    if (base === from) return [...line, from];
    if (line.includes(base)) return undefined;
    line.push(base);
  }
  return undefined;
}

/** What a window keeps of itself in the document, as it likes: no part of what is computed, hashed or changed by an option. */
/** Where the checks take their forces from, and where an engineer lets the smaller of two demands stand. */
const forces = withRule(
  z.strictObject({
    /** `hand`: the formulas of plates and the grid of tubes. `hand and solver`: the whole plate solved as well, and the larger demand governs. */
    from: z.enum(['hand', 'hand and solver']).default('hand'),
    /** Widest cell of the mesh; an eighth of the smallest opening where it is left out. */
    mesh: length().optional(),
    /** The whole plate is solved with each row of bolts and each panel lost in turn as well: as many solutions as there are of them. */
    losses: z.boolean().default(false),
    choose: z
      .array(
        z.strictObject({
          check: text,
          /** A bay, tube, crossing or eye; every place of the check where it is left out or empty. */
          place: z.union([text, z.literal('')]).optional(),
          take: z.enum(['hand', 'solver']),
          reason: z
            .string()
            .max(200)
            .regex(/^\P{Cc}*$/u, 'a text is one line, without control characters')
            .default(''),
        }),
      )
      .default([]),
  }),
  ['choose.*.reason'],
  ({ choose }): Fault[] =>
    choose.flatMap(({ check, place, take, reason }, i) =>
      reason.trim() === ''
        ? [
            {
              path: ['choose', i, 'reason'],
              what: `The demand by ${take} is chosen for ${check}${place ? ` at ${place}` : ''} without a reason`,
              mend: 'Say why the other demand does not count; the reason is printed in the note.',
            },
          ]
        : [],
    ),
);

const view = withRule(z.record(z.string(), z.json()), [], (given): Fault[] => {
  const size = JSON.stringify(given).length;
  return size <= largestView
    ? []
    : [
        {
          path: [],
          what: `The view has ${size} characters, the limit is ${largestView}`,
          mend: 'Take the view out: nothing that is computed is in it.',
        },
      ];
});
const largestView = 100_000;

const wholeDocument = withRule(
  withRule(
    z.strictObject({
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
      fatigue: fatigueField.optional(),
      durability: durabilityField.optional(),
      /** Putting it down and getting it back. */
      recovery: recoveryField.optional(),
      /** Motion of the plate, sea, bed and growth: what added mass and drag are reckoned for. */
      hydrodynamics: hydrodynamicsField.optional(),
      tests: testsField.optional(),
      testUsed: testUsedField.optional(),
      /** The user's own rates: without them costs say what is missing. */
      rates: ratesField.optional(),
      /** What the search for the best options may vary, and what it found. */
      search: searchField.optional(),
      /** How far inputs may be off, for the sensitivity. */
      spreads: spreadsField.optional(),
      /** How the spreads are sampled together, and what they were found to do. */
      sensitivity: sensitivityField.optional(),
      catalogue: userCatalogue.prefault({}),
      forces: forces.optional(),
      options: options.default([]),
      /** The option that the note is about; null is the document as it stands. */
      chosen: id.nullable().default(null),
      /** State of the window, left out of the hash. */
      view: view.optional(),
    }),
    ['chosen', 'options.*.id'],
    ({ chosen, options: given }): Fault[] => {
      const known = given.map((one) => one.id);
      return chosen === null || known.includes(chosen)
        ? []
        : [
            {
              path: ['chosen'],
              what: `The chosen option “${chosen}” is not among the options`,
              mend: `${nameOneOf(known)}; or null for the document as it stands.`,
            },
          ];
    },
  ),
  [
    'designs.*.material',
    'designs.*.fixing.kind',
    'catalogue.materials.*.id',
    'catalogue.materials.*.family',
    'catalogue.materials.*.heatAffected',
  ],
  // Without them the check would take the strength away from the weld, which heat has taken.
  ({ designs, catalogue }): Fault[] =>
    catalogue.materials.flatMap(({ id: own, family, heatAffected }, i) => {
      if (family !== 'aluminium' || heatAffected) return [];
      const welded = Object.entries(designs).filter(
        ([, { material, fixing }]) => fixing.kind === 'welded' && sameSpelling(material, own),
      );
      return welded.map(([name]) => ({
        path: ['catalogue', 'materials', i, 'heatAffected'],
        what: `The design “${name}” welds “${own}”, whose strengths beside a weld are not given`,
        mend: 'Give "heatAffected" with "yield" and "ultimate" from the source, or bolt the panel.',
      }));
    }),
);

const withBed = withRule(
  wholeDocument,
  ['water.depth', 'hydrodynamics.bed'],
  ({ water: { depth }, hydrodynamics }): Fault[] =>
    hydrodynamics?.bed && hydrodynamics.bed.si <= depth.si
      ? [
          {
            path: ['hydrodynamics', 'bed'],
            what: `The sea bed at ${hydrodynamics.bed.typed} lies above the plate at ${depth.typed}`,
            mend: 'Give the depth of the bed below the surface, deeper than the plate.',
          },
        ]
      : [],
);

export const documentSchema = withRule(
  withBed,
  ['tests.tank.*.id', 'tests.tank.*.result', 'testUsed'],
  ({ tests, testUsed }): Fault[] => testUsedFaults(testUsed, tests),
);

export type PlateDocument = z.infer<typeof documentSchema>;
export type PanelDesign = z.infer<typeof panelDesign>;
export type Fixing = PanelDesign['fixing'];
export type BoltedFixing = Extract<Fixing, { kind: 'bolted' }>;
export type WeldedFixing = Extract<Fixing, { kind: 'welded' }>;
export type TubeSet = z.infer<typeof tubeSet>;
export type Eye = z.infer<typeof eye>;
export type Loads = z.infer<typeof loads>;
export type Rates = z.infer<typeof ratesField>;
export type FatigueFields = z.infer<typeof fatigueField>;
export type PlateOption = z.infer<typeof option>;
