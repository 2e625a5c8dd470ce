import { far } from './far.ts';
import type { WeldMetal } from './rows.ts';
import { unlikeness } from './unlikeness.ts';
import { weldMetals } from './weld-metals.ts';

/** A weld metal's strength beside the nearest of its family. A filler that only matches has none to compare. */
export function weldMetalFindings(row: WeldMetal): string[] {
  const family = weldMetals.filter(({ family: of, ultimate }) => of === row.family && ultimate !== null);
  if (family.length === 0) return [];
  const unlike = ({ ultimate }: WeldMetal): number => unlikeness([[row.ultimate, ultimate]]);
  const nearest = family.reduce((a, b) => (unlike(b) < unlike(a) ? b : a));
  const against = `that of ${nearest.id}, the nearest ${row.family} filler of the catalogue`;
  return far(row.id, 'tensile strength', row.ultimate, nearest.ultimate, 0.15, against, [1e6, 'MPa']);
}
