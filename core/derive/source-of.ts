import type { Condition, Formula, FunctionName } from './formula.ts';
import { formulaText } from './formula-text.ts';
import { level, writeFormula, writtenPart, type Dialect } from './write-formula.ts';

/**
 * A formula as a JavaScript expression, with the same floating-point operations in the same order as
 * `evaluateFormula`, so that both give the same bits. Names are spelt by `identifier`.
 *
 * A part that can be infinite or NaN and whose consumer would hide that (1 / ∞ is 0, min(3, ∞) is 3) is wrapped
 * as `finite(part, "its text")`; every other such value reaches the result. The text needs `finite` in scope.
 */
export const sourceOf = (f: Formula | Condition, identifier: (name: string) => string = (name) => name): string =>
  writeFormula(f, javascript(identifier));

/** Functions that can turn an infinite argument into a finite value. */
const hiding: ReadonlySet<FunctionName> = new Set<FunctionName>(['min', 'max', 'atan', 'atan2', 'exp']);

function javascript(identifier: (name: string) => string): Dialect {
  const plain = (f: Formula, least: number) => writtenPart(f, least, dialect);
  const guarded = (f: Formula, least: number) =>
    f.kind === 'number' || f.kind === 'symbol' || f.kind === 'pi'
      ? plain(f, least)
      : `finite(${plain(f, level.choice)}, ${JSON.stringify(formulaText(f))})`;
  const dialect: Dialect = {
    symbol: identifier,
    pi: 'Math.PI',
    power: (base, exponent) => ({ text: `Math.pow(${guarded(base, 0)}, ${guarded(exponent, 0)})`, level: level.whole }),
    call: (name, args) =>
      `Math.${name}(${args.map((argument) => (hiding.has(name) ? guarded : plain)(argument, level.choice)).join(', ')})`,
    quotient: (left, right) => `${plain(left, level.product)} / ${guarded(right, level.minus)}`,
    compare: (operator, left, right) =>
      `${guarded(left, level.sum)} ${operator === '==' ? '===' : operator} ${guarded(right, level.sum)}`,
    and: '&&',
    or: '||',
    not: '!',
  };
  return dialect;
}
