import { shellUnits, type ShellUnits } from '../../solve/elements/shell-stiffness.ts';
import type { Structure } from '../../solve/structure/structure.ts';

const known = new WeakMap<Structure, readonly ShellUnits[]>();

/** Bending and membrane stiffness of each shell of a structure, for 1 m of thickness; equal rectangles share them. Made once a structure. */
export function panelUnits(structure: Structure): readonly ShellUnits[] {
  const found = known.get(structure);
  if (found) return found;
  const byShape = new Map<string, ShellUnits>();
  const made = structure.shells.map(({ a, b, E, nu }) => {
    const key = `${nano(a)} ${nano(b)} ${E} ${nu}`;
    const own = byShape.get(key) ?? shellUnits(Float64Array.of(0, 0, 0, a, 0, 0, a, b, 0, 0, b, 0), { E, nu });
    byShape.set(key, own);
    return own;
  });
  known.set(structure, made);
  return made;
}

/** Nanometres tell shapes apart, as in `partElements`. */
const nano = (length: number): number => Math.round(1e9 * length);
