import { shellRecovery, type ShellRecovery } from '../../solve/elements/shell-recovery.ts';
import type { Structure } from '../../solve/structure/structure.ts';

const known = new WeakMap<Structure, readonly ShellRecovery[]>();

/** What turns displacements into forces, for each shell of a structure; equal rectangles share one. Made once a structure. */
export function panelRecoveries(structure: Structure): readonly ShellRecovery[] {
  const found = known.get(structure);
  if (found) return found;
  const byShape = new Map<string, ShellRecovery>();
  const made = structure.shells.map(({ a, b, E, nu }) => {
    const key = `${nano(a)} ${nano(b)} ${E} ${nu}`;
    const own = byShape.get(key) ?? shellRecovery(Float64Array.of(0, 0, 0, a, 0, 0, a, b, 0, 0, b, 0), { E, nu });
    byShape.set(key, own);
    return own;
  });
  known.set(structure, made);
  return made;
}

/** Nanometres tell shapes apart, as in `partElements`. */
const nano = (length: number): number => Math.round(1e9 * length);
