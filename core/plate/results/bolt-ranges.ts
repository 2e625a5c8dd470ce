import type { SolvedCases } from '../solve-cases.ts';
import { fixingForces, type BoltForce } from './fixing-forces.ts';

/** What turning the load round does to a bolt, N. */
export interface BoltRange {
  readonly id: string;
  readonly panel: string;
  /** Largest and least tension in the bolt itself, and their difference: what tires it. */
  readonly most: number;
  readonly least: number;
  readonly range: number;
  /** Shear as a vector: the largest change of it. */
  readonly shearRange: number;
  /** The faces part under one of the loads: from there on the bolt takes all of it. */
  readonly parts: boolean;
}

/** Ranges of each bolt over several solved loadings, given as their bolts' forces: those of one bolt are in all of them. The
 *  range is of the bolt's own tension: a preload stands in both ends of it and goes out. */
export function boltRanges(loadings: readonly (readonly BoltForce[])[]): BoltRange[] {
  const byBolt = new Map<string, BoltForce[]>();
  for (const bolts of loadings) for (const bolt of bolts) byBolt.set(bolt.id, [...(byBolt.get(bolt.id) ?? []), bolt]);
  return [...byBolt.values()].map((forces): BoltRange => {
    const [{ id, panel }] = forces as [BoltForce];
    const most = Math.max(...forces.map(({ inBolt }) => inBolt), 0);
    const least = Math.max(Math.min(...forces.map(({ inBolt }) => inBolt)), 0);
    const shearRange = Math.max(...forces.flatMap((a) => forces.map((b) => Math.hypot(a.shearX - b.shearX, a.shearY - b.shearY)))); // prettier-ignore
    return { id, panel, most, least, range: most - least, shearRange, parts: forces.some(({ parted }) => parted) };
  });
}

/** Ranges over all loadings of service that were solved, on each set of supports, the widest first. */
export function serviceRanges({ plate, solved }: SolvedCases): BoltRange[] {
  const service = solved.filter(({ situation }) => situation.loadCase === 'service');
  const ranges = boltRanges(service.map((one) => fixingForces(plate, one).bolts));
  return ranges.sort((a, b) => b.range - a.range || b.shearRange - a.shearRange);
}
