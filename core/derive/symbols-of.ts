import type { Condition, Formula } from './formula.ts';
import { partsOf } from './parts-of.ts';

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
