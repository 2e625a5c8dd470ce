import * as z from 'zod';
import { rowIdFaults, type RowKind } from '../catalogue/catalogue.ts';
import { Refusal } from '../refusal.ts';
import { quantity } from './quantity-field.ts';
import { sectionRow } from './section-row.ts';
import { text } from './text-field.ts';
import { withRule, type Fault } from './with-rule.ts';

const factor = z.number().positive();
const length = () => quantity('length');
const stress = () => quantity('stress');

/** Where a row's numbers come from. A null source is shown as “no source”. */
const source = z.strictObject({ document: text, edition: text.optional(), clause: text.optional() }).nullable();
const named = { id: text, title: text, source };

const plastics = ['thermoplastic', 'laminate'];

const material = withRule(
  withRule(
    z.strictObject({
      ...named,
      family: z.enum(['carbon steel', 'stainless steel', 'aluminium', 'thermoplastic', 'laminate']),
      density: quantity('density'),
      youngModulus: stress(),
      poisson: z.number().positive().lt(0.5),
      yieldStrength: stress(),
      ultimateStrength: stress(),
      upToThickness: length(),
      /** beta_w of EN 1993-1-8 Table 4.1, where that table or its row's source gives one. */
      correlationFactor: factor.optional(),
      /** Strengths within reach of a weld. Aluminium only. */
      heatAffected: z.strictObject({ yield: stress(), ultimate: stress() }).optional(),
      /** Across the fibres. Laminates only. */
      across: z.strictObject({ youngModulus: stress(), ultimate: stress() }).optional(),
    }),
    ['id', 'family', 'yieldStrength', 'ultimateStrength'],
    ({ id, family, yieldStrength: yields, ultimateStrength: breaks }): Fault[] => {
      // A plastic may break where it yields.
      const metal = !plastics.includes(family);
      if (metal ? yields.si < breaks.si : yields.si <= breaks.si) return [];
      return [
        {
          path: ['yieldStrength'],
          what: `Material “${id}” yields at ${yields.typed}, ${metal ? 'not below' : 'above'} the ${breaks.typed} at which it breaks`,
          mend: 'Check both strengths and their units against the source: the ultimate strength is the larger.',
        },
      ];
    },
  ),
  ['family', 'yieldStrength', 'ultimateStrength', 'heatAffected', 'across'],
  ({ family, yieldStrength, ultimateStrength, heatAffected: beside, across }): Fault[] => {
    const faults: Fault[] = [];
    if (beside && family !== 'aluminium')
      faults.push({
        path: ['heatAffected'],
        what: `A weld does not soften ${family}: heat-affected values are for aluminium`,
        mend: 'Take the field out, or correct the family.',
      });
    if (across && family !== 'laminate')
      faults.push({
        path: ['across'],
        what: `Values across the fibres are for a laminate, this is ${family}`,
        mend: 'Take the field out, or correct the family.',
      });
    if (beside && beside.yield.si >= beside.ultimate.si)
      faults.push({
        path: ['heatAffected', 'yield'],
        what: `Beside a weld it yields at ${beside.yield.typed}, not below the ${beside.ultimate.typed} at which it breaks`,
        mend: 'Check both strengths and their units against the source: the ultimate strength is the larger.',
      });
    if (beside && (beside.yield.si > yieldStrength.si || beside.ultimate.si > ultimateStrength.si))
      faults.push({
        path: ['heatAffected'],
        what: `Beside a weld it is given as stronger (${beside.yield.typed}, ${beside.ultimate.typed}) than away from it (${yieldStrength.typed}, ${ultimateStrength.typed})`,
        mend: 'Check which strengths belong beside the weld: heat softens aluminium.',
      });
    return faults;
  },
);

const sectionFields = z.strictObject({
  ...named,
  /** Square or rectangular by its sides where left out. */
  shape: z.enum(['square', 'rectangular', 'round']).optional(),
  height: length(),
  width: length(),
  /** Design wall, and the wall as ordered where that is another. */
  wall: length(),
  nominalWall: length().optional(),
  /** Corner radii of a square or rectangular section; by default those of its process. */
  outerRadius: quantity('length', 'not negative').optional(),
  innerRadius: quantity('length', 'not negative').optional(),
  process: z.enum(['hot finished', 'cold formed']),
});
export type SectionFields = z.infer<typeof sectionFields>;

const section = withRule(
  sectionFields,
  ['id', 'shape', 'height', 'width', 'wall', 'nominalWall', 'outerRadius', 'innerRadius', 'process'],
  (row): Fault[] => {
    try {
      sectionRow(row);
      return [];
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      return [{ path: ['wall'], what: sentence(error.what), mend: `${error.mend}.` }];
    }
  },
);

const boltSizes = [
  'diameter', 'pitch', 'headAcrossFlats', 'headAcrossCorners', 'washerOuter', 'washerInner', 'holeFine', 'holeMedium', 'holeCoarse', 'holeNormal', 'holeOversize',
] as const; // prettier-ignore
type BoltSize = (typeof boltSizes)[number];

const bolt = withRule(
  z.strictObject({
    ...named,
    series: z.enum(['metric', 'inch']),
    diameter: length(),
    pitch: length(),
    tensileArea: quantity('area'),
    headAcrossFlats: length(),
    /** The least that the standards allow, of head and nut. */
    headAcrossCorners: length(),
    headHeight: length(),
    nutHeight: length(),
    washerOuter: length(),
    washerInner: length(),
    washerThickness: length(),
    /** Clearance holes of ISO 273; for inch bolts close, normal and loose of ASME B18.2.8. */
    holeFine: length(),
    holeMedium: length(),
    holeCoarse: length(),
    /** Holes for structures: EN 1090-2 Table 11; for inch bolts AISC 360 Table J3.3. Slots: the whole length. */
    holeNormal: length(),
    holeOversize: length().optional(),
    shortSlotLength: length().optional(),
    longSlotLength: length().optional(),
  }),
  boltSizes,
  (row): Fault[] => {
    const larger = (large: BoltSize, small: BoltSize, says: string): Fault[] => {
      const [above, below] = [row[large], row[small]];
      if (!above || !below || above.si >= below.si) return [];
      return [
        {
          path: [large],
          what: `${says}: ${above.typed} beside ${below.typed}`,
          mend: 'Check both values and their units against the source.',
        },
      ];
    };
    const holes = ['holeFine', 'holeMedium', 'holeCoarse', 'holeNormal', 'holeOversize'] as const;
    return [
      ...holes.flatMap((hole) => larger(hole, 'diameter', 'The bolt does not go through its hole')),
      ...larger('washerInner', 'diameter', 'The washer does not go over the bolt'),
      ...larger('washerOuter', 'washerInner', 'The washer is smaller than its bore'),
      ...larger('headAcrossCorners', 'headAcrossFlats', 'The head is smaller across corners than across flats'),
      ...larger('diameter', 'pitch', 'The thread’s pitch is larger than the bolt'),
    ];
  },
);
const boltClass = withRule(
  z.strictObject({
    ...named,
    family: z.enum(['carbon steel', 'stainless steel']),
    /** Left out where the standard sets none. */
    yield: stress().optional(),
    ultimate: stress(),
    /** alpha_v of EN 1993-1-8 Table 3.4 with threads in the shear plane, and with the shank in it. */
    alphaV: factor.optional(),
    alphaVShank: factor.optional(),
    /** Nominal stresses of AISC 360 Table J3.2. */
    nominal: z.strictObject({ tension: stress(), shearThreads: stress(), shearShank: stress() }).optional(),
    /** Greatest Vickers hardness that the standard allows: above 350, cathodic protection can crack the bolt. */
    hardnessMax: factor.optional(),
  }),
  ['id', 'yield', 'ultimate'],
  ({ id, yield: yields, ultimate }): Fault[] =>
    yields && yields.si >= ultimate.si
      ? [
          {
            path: ['yield'],
            what: `Bolt class “${id}” yields at ${yields.typed}, not below the ${ultimate.typed} at which it breaks`,
            mend: 'Check both strengths and their units against the source: the ultimate strength is the larger.',
          },
        ]
      : [],
);

const weldMetal = z.strictObject({
  ...named,
  family: z.enum(['carbon steel', 'stainless steel', 'aluminium']),
  /** Tensile strength; left out: at least that of the parts joined. */
  ultimate: stress().optional(),
  /** Shear strength of an aluminium filler, for the allowable-stress basis. */
  shear: stress().optional(),
});

const stockPlate = z.strictObject({
  ...named,
  thickness: length(),
  series: z.enum(['metric', 'inch']),
  sheets: z
    .array(z.strictObject({ width: length(), length: length() }))
    .max(40)
    .default([]),
});

/** Rows of one kind. An id is taken once, and never from a built-in row: the note must show whose numbers were used. */
function rows<T extends z.ZodType<{ readonly id: string }>>(kind: RowKind, row: T) {
  const list = withRule(z.array(row).max(500), ['*.id'], (given): Fault[] =>
    rowIdFaults(
      kind,
      given.map(({ id }) => id),
    ).map(({ index, what, mend }) => ({ path: [index, 'id'], what: sentence(what), mend: `${mend}.` })),
  );
  return list.default([]);
}

const sentence = (words: string): string => words.replace(/^\p{Ll}/u, (letter) => letter.toUpperCase());

/** Rows that the document adds to the catalogue, in the catalogue's kinds. */
export const userCatalogue = z.strictObject({
  materials: rows('material', material),
  sections: rows('section', section),
  bolts: rows('bolt', bolt),
  boltClasses: rows('boltClass', boltClass),
  weldMetals: rows('weldMetal', weldMetal),
  stockPlates: rows('stockPlate', stockPlate),
});
