import type { Finding } from '../finding.ts';
import type { Safety, Source } from '../source.ts';
import { refusal } from '../refusal.ts';

/** A factor of a design basis: value, what it divides or multiplies, and where it stands. */
export interface Factor {
  readonly value: number;
  readonly meaning: string;
  readonly source: Source;
  /** Set where a smaller value is the safer one; else a larger one is. */
  readonly saferBelow?: true;
  /** Set when the document overrides the table: the reason, printed. */
  readonly override?: string;
}

/** A named table of factors on loads and resistance; stiffness follows it. Mixing tables is not possible. */
export interface DesignBasis {
  readonly name: 'EN 1993' | 'AISC 360 ASD';
  readonly title: string;
  readonly safety: Safety;
  readonly source: readonly Source[];
  readonly factors: Readonly<Record<string, Factor>>;
  /** Deflection limit of a panel: span over this. */
  readonly cautions: readonly string[];
}

const EN1993 = (clause: string): Source => ({ document: 'EN 1993-1-1', edition: '2005', clause, memory: true });
const EN19938 = (clause: string): Source => ({ document: 'EN 1993-1-8', edition: '2005', clause });
const AISC = (clause: string): Source => ({ document: 'AISC 360', edition: '2016', clause, memory: true });

const common: Readonly<Record<string, Factor>> = {
  k_w: { value: 150, meaning: 'span over panel deflection, least', source: { document: 'common practice, no source' } },
  k_slack: {
    value: 0.9,
    meaning: 'part of the least weight in water that a force up may reach before a line counts as slack',
    source: { document: 'DNV-RP-N103', clause: 'slack sling criterion', memory: true },
    saferBelow: true,
  },
};

const tables: readonly DesignBasis[] = [
  {
    name: 'EN 1993',
    title: 'EN 1993, partial factors; actions as EN 1990 and ISO 19902',
    safety: 'partial factors',
    source: [
      { document: 'EN 1993-1-1', edition: '2005' },
      { document: 'EN 1993-1-8', edition: '2005' },
    ],
    factors: {
      ...common,
      gamma_M0: { value: 1.0, meaning: 'partial factor on yielding of sections', source: EN1993('6.1') },
      gamma_M1: { value: 1.0, meaning: 'partial factor on stability', source: EN1993('6.1') },
      gamma_M2: { value: 1.25, meaning: 'partial factor on fracture, bolts and welds', source: EN19938('Table 2.1') },
      gamma_M3: { value: 1.25, meaning: 'partial factor on slip', source: EN19938('Table 2.1') },
      gamma_F_extreme: {
        value: 1.35,
        meaning: 'load factor on an extreme environmental load',
        source: { document: 'ISO 19902', edition: '2007', clause: '9.10', memory: true },
      },
      gamma_F_characteristic: {
        value: 1.5,
        meaning: 'load factor on a characteristic variable load',
        source: { document: 'EN 1990', edition: '2002', clause: 'Table A1.2(B)', memory: true },
      },
      gamma_F_permanent: {
        value: 1.35,
        meaning: 'load factor on weight',
        source: { document: 'EN 1990', edition: '2002', clause: 'Table A1.2(B)', memory: true },
      },
      gamma_F_lift: {
        value: 1.35,
        meaning: 'load factor on lifted weight, dynamic factor apart',
        source: { document: 'EN 1990', edition: '2002', clause: 'Table A1.2(B)', memory: true },
      },
      gamma_F_accidental: {
        value: 1.0,
        meaning: 'load factor with a part lost',
        source: { document: 'EN 1990', edition: '2002', clause: 'Table A1.3', memory: true },
      },
    },
    cautions: [
      'Partial factors are the recommended ones; a National Annex may set others. Give them as overrides with a reason.',
    ],
  },
  {
    name: 'AISC 360 ASD',
    title: 'AISC 360, allowable strength design',
    safety: 'allowable stress',
    source: [{ document: 'AISC 360', edition: '2016', memory: true }],
    factors: {
      ...common,
      Omega_b: { value: 1.67, meaning: 'safety factor on bending and yielding', source: AISC('F1') },
      Omega_v: { value: 1.67, meaning: 'safety factor on shear', source: AISC('G1') },
      Omega_J: { value: 2.0, meaning: 'safety factor on bolts, welds and rupture', source: AISC('J2, J3, J4') },
      Omega_c: { value: 1.67, meaning: 'safety factor on compression', source: AISC('E1') },
      Omega_slip: { value: 1.5, meaning: 'safety factor on slip', source: AISC('J3.8') },
      gamma_F_extreme: {
        value: 1,
        meaning: 'allowable stress carries the safety; loads are not factored',
        source: AISC('B3.2'),
      },
      gamma_F_characteristic: {
        value: 1,
        meaning: 'allowable stress carries the safety; loads are not factored',
        source: AISC('B3.2'),
      },
      gamma_F_permanent: {
        value: 1,
        meaning: 'allowable stress carries the safety; loads are not factored',
        source: AISC('B3.2'),
      },
      gamma_F_lift: {
        value: 1,
        meaning: 'allowable stress carries the safety; loads are not factored',
        source: AISC('B3.2'),
      },
      gamma_F_accidental: {
        value: 1,
        meaning: 'allowable stress carries the safety; loads are not factored',
        source: AISC('B3.2'),
      },
    },
    cautions: ['No increase of the allowable for storms is taken.'],
  },
];

/** The table by name, with the document's overrides laid on. Refuses an override of a factor the table does not have. */
export function designBasis(
  name: DesignBasis['name'],
  overrides: readonly { factor: string; value: number; reason: string }[],
): DesignBasis {
  const table = tables.find((t) => t.name === name) as DesignBasis;
  const factors = { ...table.factors };
  for (const { factor, value, reason } of overrides) {
    const old = Object.hasOwn(factors, factor) ? factors[factor] : undefined;
    if (!old)
      throw refusal({
        what: `“${factor}” is no factor of the basis ${name}; factors of another table cannot be mixed in`,
        where: { path: 'basis.overrides' },
        mend: `Name one of ${Object.keys(table.factors).join(', ')}.`,
      });
    factors[factor] = { ...old, value, override: reason };
  }
  return { ...table, factors };
}

/** Overrides on the less safe side of the table, below it for most factors: which the engineer must answer for. */
export function overrideFindings({
  basis: { table: name, overrides },
}: {
  readonly basis: {
    readonly table: DesignBasis['name'];
    readonly overrides: readonly { readonly factor: string; readonly value: number; readonly reason: string }[];
  };
}): readonly Finding[] {
  const { factors } = designBasis(name, []);
  return overrides.flatMap(({ factor, value, reason }) => {
    const old = Object.hasOwn(factors, factor) ? factors[factor] : undefined;
    if (!old || (old.saferBelow ? value <= old.value : value >= old.value)) return [];
    const side = old.saferBelow ? 'above' : 'below';
    return [
      {
        id: `factor-${side}-table`,
        place: 'basis',
        text: `${factor} (${old.meaning}) is ${value}, ${side} the ${old.value} of ${name}; the reason given: “${reason}”`,
        mend: 'Take the override out, or have the responsible engineer accept the factor.',
      },
    ];
  });
}
