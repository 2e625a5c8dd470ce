import type { Condition, Formula } from './formula.ts';
import { level, writeFormula, writtenPart, type Dialect } from './write-formula.ts';

/** A formula in the words it was read from: `readFormula` of this text gives the same tree. For refusals and tests. */
export const formulaText = (f: Formula | Condition): string => writeFormula(f, mathjsWords);

const mathjsWords: Dialect = {
  symbol: (name) => name,
  pi: 'pi',
  power: (base, exponent) => ({
    text: `${part(base, level.whole)} ^ ${part(exponent, level.whole)}`,
    level: level.power,
  }),
  call: (name, args) => `${name}(${args.map((argument) => part(argument, level.choice)).join(', ')})`,
  quotient: (left, right) => `${part(left, level.product)} / ${part(right, level.minus)}`,
  compare: (operator, left, right) => `${part(left, level.sum)} ${operator} ${part(right, level.sum)}`,
  and: 'and',
  or: 'or',
  not: 'not ',
};

const part = (f: Formula | Condition, least: number): string => writtenPart(f, least, mathjsWords);
