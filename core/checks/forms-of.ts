import { byPlaces } from './by-places.ts';
import { bySolution } from './by-solution.ts';
import type { Check } from './check.ts';

/** Every form in which a check is computed: by hand and with the whole plate's forces, each for bolts on listed places too. */
export function formsOf(check: Check): readonly Check[] {
  const own = check.solved ? [check, bySolution(check)] : [check];
  return [...new Set([...own, ...own.map(byPlaces)])];
}
