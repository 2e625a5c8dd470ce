import type { Condition, Formula } from './formula.ts';

/** The names a formula or condition uses, in the order of first use. */
export function symbolsOf(f: Formula | Condition): ReadonlySet<string> {
  const names = new Set<string>();
  const visit = (part: Formula | Condition): void => {
    if (part.kind === 'symbol') names.add(part.name);
    else partsOf(part).forEach(visit);
  };
  visit(f);
  return names;
}

function partsOf(f: Formula | Condition): readonly (Formula | Condition)[] {
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
