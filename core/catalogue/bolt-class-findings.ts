import { boltClasses } from './bolt-classes.ts';
import { far } from './far.ts';
import type { BoltClass } from './rows.ts';
import { unlikeness } from './unlikeness.ts';

const MPa = [1e6, 'MPa'] as const;

/** A class's strengths, hardness and shear values beside the class that its id or title names, or else the nearest of
 *  its family. What follows from the ultimate strength is held in proportion to it. Limits: see `comparedWithNearest`. */
export function boltClassFindings(row: BoltClass): string[] {
  const family = boltClasses.filter((other) => other.family === row.family);
  const named = family.filter(({ id, also = [] }) =>
    [id, ...also].some((name) => says(`${row.id} ${row.title}`, name)),
  );
  const unlike = (other: BoltClass): number =>
    unlikeness([
      [row.yield, other.yield],
      [row.ultimate, other.ultimate],
    ]);
  const among = named.length > 0 ? named : family;
  /** The nearest that has a value at all. */
  const beside = (
    name: string,
    of: (row: BoltClass) => number | null | undefined,
    limit: number,
    unit: readonly [number, string],
  ): string[] => {
    const having = among.filter((other) => of(other) != null);
    if (having.length === 0) return [];
    const nearest = having.reduce((a, b) => (unlike(b) < unlike(a) ? b : a));
    const against =
      named.length > 0
        ? `that of ${nearest.id}, the class that its name gives`
        : `that of ${nearest.id}, the nearest ${row.family} class of the catalogue`;
    return far(row.id, name, of(row), of(nearest), limit, against, unit);
  };
  const part = (stress: number | undefined, { ultimate }: BoltClass) => stress && stress / ultimate;
  return [
    beside('yield strength', (of) => of.yield, 0.15, MPa),
    beside('ultimate strength', (of) => of.ultimate, 0.15, MPa),
    beside('largest hardness', (of) => of.hardnessMax, 0.15, [1, 'HV']),
    // 0.5 and 0.6 stand beside each other in the table: both are near.
    beside('alpha_v', (of) => of.alphaV, 0.21, [1, '']),
    beside('alpha_v of the shank', (of) => of.alphaVShank, 0.21, [1, '']),
    beside('nominal tension over ultimate strength', (of) => part(of.nominal?.tension, of), 0.15, [1, '']),
    beside('nominal shear with threads over ultimate strength', (of) => part(of.nominal?.shearThreads, of), 0.15, [
      1,
      '',
    ]),
    beside('nominal shear of the shank over ultimate strength', (of) => part(of.nominal?.shearShank, of), 0.15, [
      1,
      '',
    ]),
  ].flat();
}

/** True where a text names a class: "Bolt 8.8 of the yard" names 8.8, "18.8" does not. */
const says = (text: string, name: string): boolean =>
  new RegExp(`(^|[^\\p{L}\\d.])${name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}(?![\\p{L}\\d]|\\.\\d)`, 'iu').test(text);
