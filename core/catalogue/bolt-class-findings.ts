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
  const nearest = (named.length > 0 ? named : family).reduce((a, b) => (unlike(b) < unlike(a) ? b : a));
  const against =
    named.length > 0
      ? `that of ${nearest.id}, the class that its name gives`
      : `that of ${nearest.id}, the nearest ${row.family} class of the catalogue`;
  const part = (stress: number | undefined, { ultimate }: BoltClass) => stress && stress / ultimate;
  const stresses = ['tension', 'shearThreads', 'shearShank'] as const;
  const stressNames = {
    tension: 'nominal tension',
    shearThreads: 'nominal shear with threads',
    shearShank: 'nominal shear of the shank',
  };
  return [
    far(row.id, 'yield strength', row.yield, nearest.yield, 0.15, against, MPa),
    far(row.id, 'ultimate strength', row.ultimate, nearest.ultimate, 0.15, against, MPa),
    far(row.id, 'largest hardness', row.hardnessMax, nearest.hardnessMax, 0.15, against, [1, 'HV']),
    far(row.id, 'alpha_v', row.alphaV, nearest.alphaV, 0.15, against, [1, '']),
    far(row.id, 'alpha_v of the shank', row.alphaVShank, nearest.alphaVShank, 0.15, against, [1, '']),
    ...stresses.map((key) =>
      far(
        row.id,
        `${stressNames[key]} over ultimate strength`,
        part(row.nominal?.[key], row),
        part(nearest.nominal?.[key], nearest),
        0.15,
        against,
        [1, ''],
      ),
    ),
  ].flat();
}

/** True where a text names a class: "Bolt 8.8 of the yard" names 8.8, "18.8" does not. */
const says = (text: string, name: string): boolean =>
  new RegExp(`(^|[^\\p{L}\\d.])${name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}(?![\\p{L}\\d]|\\.\\d)`, 'iu').test(text);
