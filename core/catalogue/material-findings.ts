import { far } from './far.ts';
import { materials } from './materials.ts';
import type { Material } from './rows.ts';
import { unlikeness } from './unlikeness.ts';

/** A material beside the grade that its id or title names, or else the nearest of its family; and its yield strength
 *  beside a strength that its name states. Limits: see `comparedWithNearest`. */
export function materialFindings(row: Material): string[] {
  const family = materials.filter((other) => other.family === row.family);
  const named = family.filter((other) => grades.some((grade) => grade.test(naming(row)) && grade.test(naming(other))));
  const nearest = (named.length > 0 ? named : family).reduce((a, b) => (unlike(row, b) < unlike(row, a) ? b : a));
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
    far(row.id, 'yield strength beside a weld', row.heatAffected?.yield, nearest.heatAffected?.yield, 0.15, against, [
      1e6,
      'MPa',
    ]),
    far(
      row.id,
      'ultimate strength beside a weld',
      row.heatAffected?.ultimate,
      nearest.heatAffected?.ultimate,
      0.15,
      against,
      [1e6, 'MPa'],
    ),
    far(row.id, 'modulus across the fibres', row.across?.youngModulus, nearest.across?.youngModulus, 0.15, against, [
      1e9,
      'GPa',
    ]),
    far(row.id, 'strength across the fibres', row.across?.ultimate, nearest.across?.ultimate, 0.15, against, [
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

const unlike = (a: Material, b: Material): number =>
  unlikeness([
    [a.youngModulus, b.youngModulus],
    [a.density, b.density],
    [first(a.yieldStrength), first(b.yieldStrength)],
    [first(a.ultimateStrength), first(b.ultimateStrength)],
  ]);
