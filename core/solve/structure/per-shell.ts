import type { ShellPart, Structure } from './structure.ts';

/**
 * What `make` gives for each shell of a structure: equal rectangles of one material and thickness (nanometres tell them
 * apart) share one, and all of it is made once a structure. `make` gets the corners, 12 coordinates in m, and the part.
 */
export function perShell<T>(
  make: (xyz: Float64Array, part: ShellPart) => T,
): (structure: Pick<Structure, 'shells'>) => readonly T[] {
  const known = new WeakMap<Structure['shells'], readonly T[]>();
  return ({ shells }) => {
    const found = known.get(shells);
    if (found) return found;
    const byShape = new Map<string, T>();
    const made = shells.map((part) => {
      const { a, b, E, nu, thickness } = part;
      const key = `${nano(a)} ${nano(b)} ${E} ${nu} ${thickness}`;
      const same = byShape.get(key);
      if (same !== undefined) return same;
      const own = make(Float64Array.of(0, 0, 0, a, 0, 0, a, b, 0, 0, b, 0), part);
      byShape.set(key, own);
      return own;
    });
    known.set(shells, made);
    return made;
  };
}

/** Nanometres: lengths that differ by rounding alone are one. */
export const nano = (length: number): number => Math.round(1e9 * length);
