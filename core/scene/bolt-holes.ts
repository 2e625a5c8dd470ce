import { placementOf, type BoltSet } from './bolt-sets.ts';

/** Holes of bolts in the walls of tubes as `Scene.holes` lists them: in the wall that the panel lies on, and of a bolt that
 *  goes through in the wall beyond. Studs and clamps have none. A wall's hole is drawn as wide as the panel's. */
export function boltHoles(sets: readonly BoltSet[]): Float32Array {
  const holes: number[] = [];
  for (const set of sets) {
    const { fixing, hole, tubeHeight } = set.seat;
    if (fixing.into === 'welded stud' || fixing.into === 'clamp') continue;
    for (const bolt of set.bolts) {
      const [x, y, z, up] = placementOf(bolt);
      holes.push(x, y, z, up, hole / 2);
      if (fixing.into === 'through-bolt with sleeve') holes.push(x, y, z - up * tubeHeight, -up, hole / 2);
    }
  }
  return Float32Array.from(holes);
}
