import { hollowSection } from './hollow-section.ts';
import { materials } from './materials.ts';
import type { Bolt, HollowSection, Material } from './rows.ts';

/** A row of the user's own that the catalogue has an opinion on. */
export type ComparableRow =
  | { readonly kind: 'material'; readonly row: Material }
  | { readonly kind: 'section'; readonly row: HollowSection }
  | { readonly kind: 'bolt'; readonly row: Bolt };

/** Findings about a user's row that lies far from what the catalogue would say; empty when it does not.
 *    material: modulus, density or strength more than 15 % from the grade that its id or title names, or else from the
 *      nearest of its family; yield strength more than 5 % from a strength in ksi or MPa that its id or title states
 *    section: a property more than 1 % from the one computed from its own height, width, wall and radii
 *    bolt: tensile area more than 1 % from π/4 (d − 0.9382 P)² of ISO 898-1, or π/4 (d − 0.9743 P)² of ASME B1.1
 *  The limits are ours: wide enough for real differences, narrow enough for a slip of unit or digit. */
export function comparedWithNearest(own: ComparableRow): readonly string[] {
  switch (own.kind) {
    case 'material':
      return materialFindings(own.row);
    case 'section':
      return sectionFindings(own.row);
    case 'bolt':
      return boltFindings(own.row);
  }
}

function materialFindings(row: Material): string[] {
  const family = materials.filter((other) => other.family === row.family);
  const named = family.filter((other) => grades.some((grade) => grade.test(naming(row)) && grade.test(naming(other))));
  const nearest = (named.length > 0 ? named : family).reduce((a, b) =>
    unlikeness(row, b) < unlikeness(row, a) ? b : a,
  );
  const against =
    named.length > 0
      ? `that of ${nearest.id}, the grade that its name gives`
      : `that of ${nearest.id}, the nearest ${row.family} of the catalogue`;
  return [
    far(row.id, 'Young’s modulus', row.youngModulus, nearest.youngModulus, 0.15, against, [1e9, 'GPa']),
    far(row.id, 'density', row.density, nearest.density, 0.15, against, [1, 'kg/m³']),
    far(row.id, 'yield strength', first(row.yieldStrength), first(nearest.yieldStrength), 0.15, against, [1e6, 'MPa']),
    far(row.id, 'ultimate strength', first(row.ultimateStrength), first(nearest.ultimateStrength), 0.15, against, [
      1e6,
      'MPa',
    ]),
    statedFindings(row),
  ].flat();
}

/** What a row is called, in one text. */
const naming = ({ id, title }: Material): string => `${id} ${title}`;

/** Words by which a name gives a grade of the catalogue. A standard with many grades (A240) is no grade. */
const grades: readonly RegExp[] = [
  /\bS235/i,
  /\bS275/i,
  /\bS355/i,
  /\bS420/i,
  /\bS460/i,
  /\bA36M?\b/i,
  /\bA572\D{1,10}50\b/i,
  /\bA500M?\b/i,
  /1\.4404/,
  /1\.4462/,
  /\b316L/i,
  /\b5083\b/,
  /\b6082\b/,
  /\bPE100\b/i,
];

/** A yield strength that none of the strengths in the row's name agrees with: a slip of unit, most likely. */
function statedFindings(row: Material): string[] {
  const yieldStrength = first(row.yieldStrength);
  const stated = [...naming(row).matchAll(/((?:\d+(?:[.,]\d+)?\s*\/\s*)*\d+(?:[.,]\d+)?)\s*(ksi|MPa|N\/mm[2²])/gi)]
    .flatMap(([, numbers = '', unit = '']) => numbers.split('/').map((number) => ({ number: number.trim(), unit })))
    .map(({ number, unit }) => ({
      text: `${number} ${unit}`,
      value: Number(number.replace(',', '.')) * (unit.toLowerCase() === 'ksi' ? ksi : 1e6),
    }))
    .filter(({ value }) => value < 2e9); // above it, a modulus
  const agrees = (value: number): boolean => yieldStrength !== undefined && Math.abs(yieldStrength / value - 1) <= 0.05;
  if (stated.length === 0 || stated.some(({ value }) => agrees(value))) return [];
  return stated
    .slice(0, 1)
    .flatMap(({ text, value }) =>
      far(row.id, 'yield strength', yieldStrength, value, 0.05, `the ${text} of its name`, [1e6, 'MPa']),
    );
}

/** Pa in a ksi: 1000 lbf/in² with lbf 4.448 221 615 260 5 N and in 25.4 mm, both exact. */
const ksi = 6894757.293168361;

const first = (steps: Material['yieldStrength']): number | undefined => steps[0]?.value;

/** Sum of the logarithms of the ratios; a strength that one of the two has not does not count. */
function unlikeness(a: Material, b: Material): number {
  const pairs = [
    [a.youngModulus, b.youngModulus],
    [a.density, b.density],
    [first(a.yieldStrength), first(b.yieldStrength)],
    [first(a.ultimateStrength), first(b.ultimateStrength)],
  ] as const;
  return pairs.reduce((sum, [x, y]) => (x && y ? sum + Math.abs(Math.log(x / y)) : sum), 0);
}

function sectionFindings(row: HollowSection): string[] {
  const computed = hollowSection(row);
  const against = 'what its own dimensions give';
  return (
    [
      ['area', 'area', 1e-4, 'cm²'],
      ['nominalArea', 'area as ordered', 1e-4, 'cm²'],
      ['inertiaY', 'second moment of area about y', 1e-8, 'cm⁴'],
      ['inertiaZ', 'second moment of area about z', 1e-8, 'cm⁴'],
      ['elasticY', 'elastic modulus about y', 1e-6, 'cm³'],
      ['elasticZ', 'elastic modulus about z', 1e-6, 'cm³'],
      ['plasticY', 'plastic modulus about y', 1e-6, 'cm³'],
      ['plasticZ', 'plastic modulus about z', 1e-6, 'cm³'],
      ['torsion', 'torsion constant', 1e-8, 'cm⁴'],
      ['torsionModulus', 'torsion modulus', 1e-6, 'cm³'],
      ['shearAreaY', 'shear area along y', 1e-4, 'cm²'],
      ['shearAreaZ', 'shear area along z', 1e-4, 'cm²'],
      ['massPerMetre', 'mass per metre', 1, 'kg/m'],
      ['outerPerimeter', 'outer perimeter', 1e-3, 'mm'],
      ['innerArea', 'bore', 1e-4, 'cm²'],
    ] as const
  ).flatMap(([key, name, unit, symbol]) => far(row.id, name, row[key], computed[key], 0.01, against, [unit, symbol]));
}

function boltFindings({ id, series, diameter, pitch, tensileArea }: Bolt): string[] {
  const [depth, against] =
    series === 'metric' ? [0.9382, 'the formula of ISO 898-1'] : [0.9743, 'the formula of ASME B1.1'];
  const formula = (Math.PI / 4) * (diameter - depth * pitch) ** 2;
  return far(id, 'tensile area', tensileArea, formula, 0.01, against, [1e-6, 'mm²']);
}

function far(
  id: string,
  name: string,
  value: number | undefined,
  reference: number | undefined,
  limit: number,
  against: string,
  [unit, symbol]: readonly [number, string],
): string[] {
  if (value === undefined || reference === undefined) return [];
  const apart = value / reference - 1;
  if (Math.abs(apart) <= limit) return [];
  const print = (x: number): string => `${Number((x / unit).toPrecision(4))} ${symbol}`;
  const percent = Number((Math.abs(apart) * 100).toPrecision(2));
  return [
    `“${id}”: ${name} ${print(value)} is ${percent} % ${apart > 0 ? 'above' : 'below'} ${against} (${print(reference)})`,
  ];
}
