import { refusal } from '../refusal.ts';
import { formulaText } from './formula-text.ts';
import type { Condition, Formula } from './formula.ts';
import { symbolsOf } from './symbols-of.ts';

/** Values by name, SI. */
export type Values = Readonly<Record<string, number>>;

/**
 * The value of a formula. Only the branch that a condition takes is evaluated. Refuses a missing name, and a part
 * that is infinite or NaN (division by zero, root of a negative number, overflow) with its text and its values.
 */
export function evaluateFormula(f: Formula, values: Values): number {
  const value = valueOf(f, values);
  if (Number.isFinite(value)) return value;
  const given = [...symbolsOf(f)].map((name) => `${name} = ${values[name]}`).join(', ');
  const text = formulaText(f);
  throw refusal({
    what: `${text} is ${value}, no finite number${given && `, with ${given}`}`,
    where: { expression: text },
    mend: 'Check the values it is made of',
  });
}

/** Whether a condition holds; `and` and `or` look at their right side only when the left does not decide. */
export function evaluateCondition(c: Condition, values: Values): boolean {
  switch (c.kind) {
    case 'not':
      return !evaluateCondition(c.of, values);
    case 'logic':
      return c.operator === 'and'
        ? evaluateCondition(c.left, values) && evaluateCondition(c.right, values)
        : evaluateCondition(c.left, values) || evaluateCondition(c.right, values);
    case 'compare': {
      const left = evaluateFormula(c.left, values);
      const right = evaluateFormula(c.right, values);
      switch (c.operator) {
        case '<':
          return left < right;
        case '<=':
          return left <= right;
        case '>':
          return left > right;
        case '>=':
          return left >= right;
        case '==':
          return left === right;
      }
    }
  }
}

function valueOf(f: Formula, values: Values): number {
  switch (f.kind) {
    case 'number':
      return f.value;
    case 'pi':
      return Math.PI;
    case 'symbol': {
      const value = Object.hasOwn(values, f.name) ? values[f.name] : undefined;
      if (value === undefined)
        throw refusal({ what: `${f.name} has no value`, where: { symbol: f.name }, mend: `Give ${f.name} a value` });
      return value;
    }
    case 'minus':
      return -evaluateFormula(f.of, values);
    case 'call':
      return Math[f.name](...(f.arguments.map((argument) => evaluateFormula(argument, values)) as [number, number]));
    case 'choice':
      return evaluateFormula(evaluateCondition(f.when, values) ? f.then : f.otherwise, values);
    case 'binary': {
      const left = evaluateFormula(f.left, values);
      const right = evaluateFormula(f.right, values);
      switch (f.operator) {
        case '+':
          return left + right;
        case '-':
          return left - right;
        case '*':
          return left * right;
        case '/':
          return left / right;
        case '^':
          return Math.pow(left, right);
      }
    }
  }
}
