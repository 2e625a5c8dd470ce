import { ultimateOf } from '../catalogue/strength-at-thickness.ts';
import type { Material } from '../catalogue/rows.ts';
import { missing, type Missing, type Reading } from './check.ts';

/** A part that a weld joins, with its thickness as ordered, m. */
export interface WeldedPart {
  readonly material: Material;
  readonly thickness: number;
}

const steels = ['carbon steel', 'stainless steel'];

/** Ultimate strength of the weaker part, Pa: EN 1993-1-8, 4.5.3.2(6). */
export function ultimateOfParts(parts: readonly WeldedPart[]): Reading {
  return noRule(parts) ?? Math.min(...parts.map(({ material, thickness }) => ultimateOf(material, thickness)));
}

/** beta_w of the parts, the larger of them. Sources: EN 1993-1-8 Table 4.1; EN 1993-1-4, 6.3 for stainless steel, from memory. */
export function correlationOfParts(parts: readonly WeldedPart[]): Reading {
  const without = parts.find(({ material }) => material.correlationFactor === null);
  return (
    noRule(parts) ??
    (without
      ? missing(`beta_w of ${without.material.title}: EN 1993-1-8, Table 4.1, does not list it`)
      : Math.max(...parts.map(({ material }) => material.correlationFactor as number)))
  );
}

/** Strength of the filler, Pa: its own, or that of the weaker part where it is only said to match. */
export function ultimateOfFiller(ownStrength: number | null, parts: readonly WeldedPart[]): Reading {
  return noRule(parts) ?? ownStrength ?? ultimateOfParts(parts);
}

/** Why the parts cannot be joined by a fillet weld at all. */
export function cannotBeWelded(parts: readonly WeldedPart[]): string | undefined {
  const plastic = parts.find(({ material }) => material.family === 'thermoplastic' || material.family === 'laminate');
  if (plastic) return `${plastic.material.title} cannot be arc welded`;
  const aluminium = parts.find(({ material }) => material.family === 'aluminium');
  const steel = parts.find(({ material }) => steels.includes(material.family));
  return aluminium && steel
    ? `${aluminium.material.title} cannot be welded to ${steel.material.title}: bolt it`
    : undefined;
}

function noRule(parts: readonly WeldedPart[]): Missing | undefined {
  const other = parts.find(({ material }) => !steels.includes(material.family));
  if (!other) return undefined;
  return missing(
    other.material.family === 'aluminium'
      ? `a rule for welds in ${other.material.title}: EN 1999-1-1, 8.6, its partial factor and its zones softened by heat are not held in this design basis`
      : `a rule for welds in ${other.material.title}`,
  );
}
