import { all, create, type Unit } from 'mathjs';
import { refusal } from '../refusal.ts';
import { evaluateFormula } from './evaluate.ts';
import { formulaText } from './formula-text.ts';
import type { Condition, Formula } from './formula.ts';
import { symbolsOf } from './symbols-of.ts';

// Whole mathjs, for tests and tools only: nothing that a check runs on imports this file.
const math = create(all ?? {});
math.createUnit('ksi', '1000 psi');

/** A pure number, or a mathjs unit of which only the dimension has a meaning. */
export type Dimension = Unit | number;

/**
 * The dimension of a formula whose symbols have these units (mathjs words, `1` for a pure number), worked out part by
 * part over mathjs units: both branches of a choice, whatever its condition. An angle is a pure number, as in SI.
 * Refuses a sum, comparison or choice of unlike dimensions, a function of what is no pure number, and a quantity
 * raised to a power that is not written in the formula, each by its text.
 */
export function dimensionOf(f: Formula, unitsOf: Readonly<Record<string, string>>): Dimension {
  const of = (g: Formula) => dimensionOf(g, unitsOf);
  switch (f.kind) {
    case 'number':
    case 'pi':
      return 1;
    case 'symbol': {
      const unit = unitsOf[f.name];
      if (unit === undefined)
        throw refusal({
          what: `${f.name} has no unit`,
          where: { symbol: f.name },
          mend: `Declare the unit of ${f.name}, 1 for a pure number`,
        });
      return dimensionOfUnit(unit);
    }
    case 'minus':
      return of(f.of);
    case 'choice':
      requireConsistent(f.when, unitsOf);
      return alike([of(f.then), of(f.otherwise)], f);
    case 'call':
      return ofCall(f, f.arguments.map(of));
    case 'binary': {
      const left = of(f.left);
      const right = of(f.right);
      switch (f.operator) {
        case '+':
        case '-':
          return alike([left, right], f);
        case '*':
          return reduced(math.multiply(left, right) as Dimension);
        case '/':
          return reduced(math.divide(left, right) as Dimension);
        case '^':
          return raised(f, left, right);
      }
    }
  }
}

/** Refuses a formula whose dimension is not that of `unit`, or that has none. */
export function checkDimensions(f: Formula, unit: string, unitsOf: Readonly<Record<string, string>>): void {
  const dimension = dimensionOf(f, unitsOf);
  if (!same(dimension, dimensionOfUnit(unit)))
    throw refused(
      f,
      `is ${inWords(dimension)}, its unit is given as ${unit}`,
      'Correct the formula, the unit of the step or that of an input',
    );
}

/** Refuses a condition that compares unlike dimensions. */
export function requireConsistent(c: Condition, unitsOf: Readonly<Record<string, string>>): void {
  switch (c.kind) {
    case 'not':
      return requireConsistent(c.of, unitsOf);
    case 'logic':
      requireConsistent(c.left, unitsOf);
      return requireConsistent(c.right, unitsOf);
    case 'compare':
      alike([dimensionOf(c.left, unitsOf), dimensionOf(c.right, unitsOf)], c);
  }
}

function dimensionOfUnit(text: string): Dimension {
  if (text === '1') return 1;
  try {
    return reduced(math.unit(1, text));
  } catch (error) {
    throw refusal({
      what: `“${text}” is no unit: ${(error as Error).message}`,
      where: { unit: text },
      mend: 'Write a unit such as N/mm^2, kN*m or 1',
    });
  }
}

const angle = math.unit(1, 'rad').dimensions.indexOf(1);

/** Takes the angle out of a unit, and makes a pure number of one that has no dimension left. */
function reduced(value: Dimension): Dimension {
  if (typeof value === 'number') return 1;
  const turns = value.dimensions[angle] ?? 0;
  const bare = (turns === 0 ? value : math.multiply(value, math.pow(math.unit(1, 'rad'), -turns) as Unit)) as Dimension;
  return typeof bare === 'number' || bare.dimensions.every((power) => Math.abs(power) < 1e-12) ? 1 : bare;
}

const same = (a: Dimension, b: Dimension): boolean =>
  typeof a === 'number' || typeof b === 'number' ? typeof a === typeof b : a.equalBase(b);

function alike(dimensions: readonly Dimension[], part: Formula | Condition): Dimension {
  const first = dimensions[0] ?? 1;
  const other = dimensions.find((dimension) => !same(first, dimension));
  if (other !== undefined)
    throw refused(
      part,
      `puts together ${inWords(first)} and ${inWords(other)}`,
      'Give each constant that has a dimension as an input with its unit',
    );
  return first;
}

function ofCall(f: Extract<Formula, { kind: 'call' }>, args: readonly Dimension[]): Dimension {
  switch (f.name) {
    case 'abs':
    case 'min':
    case 'max':
      return alike(args, f);
    case 'atan2':
      alike(args, f);
      return 1;
    case 'sqrt':
      return reduced(math.pow(args[0] ?? 1, 1 / 2) as Dimension);
    case 'cbrt':
      return reduced(math.pow(args[0] ?? 1, 1 / 3) as Dimension);
    default: {
      const dimension = args.find((argument) => typeof argument !== 'number');
      if (dimension !== undefined)
        throw refused(f, `takes ${inWords(dimension)}`, `${f.name} needs a pure number: divide by a reference value`);
      return 1;
    }
  }
}

function raised(f: Extract<Formula, { kind: 'binary' }>, base: Dimension, exponent: Dimension): Dimension {
  if (typeof exponent !== 'number')
    throw refused(f, `has ${inWords(exponent)} as its exponent`, 'An exponent is a pure number');
  if (typeof base === 'number') return 1;
  if (symbolsOf(f.right).size > 0)
    throw refused(
      f,
      'has a dimension that changes with its exponent',
      'Write the exponent as a number, or divide the base by a reference value',
    );
  return reduced(math.pow(base, evaluateFormula(f.right, {})) as Dimension);
}

const inWords = (dimension: Dimension): string =>
  typeof dimension === 'number' ? 'a pure number' : `a quantity in ${dimension.toSI().formatUnits()}`;

function refused(f: Formula | Condition, why: string, mend: string) {
  const text = formulaText(f);
  return refusal({ what: `${text} ${why}`, where: { expression: text }, mend });
}
