import type { Condition, Formula } from './formula.ts';

/** The formulas and conditions a formula or condition is made of directly, in reading order. */
export function partsOf(f: Formula | Condition): readonly (Formula | Condition)[] {
  switch (f.kind) {
    case 'number':
    case 'pi':
    case 'symbol':
      return [];
    case 'minus':
    case 'not':
      return [f.of];
    case 'binary':
    case 'compare':
    case 'logic':
      return [f.left, f.right];
    case 'call':
      return f.arguments;
    case 'choice':
      return [f.when, f.then, f.otherwise];
  }
}
