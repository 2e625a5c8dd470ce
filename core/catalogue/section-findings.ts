import { far } from './far.ts';
import { hollowSection } from './hollow-section.ts';
import type { HollowSection } from './rows.ts';
import { standardSections } from './standard-sections.ts';
import { unlikeness } from './unlikeness.ts';

/** A section's properties beside those computed from its own sizes, and its sizes beside the nearest of the catalogue. */
export function sectionFindings(row: HollowSection): string[] {
  const computed = hollowSection(row);
  const against = 'what its own dimensions give';
  const properties = (
    [
      ['area', 'area', 1e-4, 'cm²'],
      ['nominalArea', 'area as ordered', 1e-4, 'cm²'],
      ['inertiaY', 'second moment of area about y', 1e-8, 'cm⁴'],
      ['inertiaZ', 'second moment of area about z', 1e-8, 'cm⁴'],
      ['elasticY', 'elastic modulus about y', 1e-6, 'cm³'],
      ['elasticZ', 'elastic modulus about z', 1e-6, 'cm³'],
      ['plasticY', 'plastic modulus about y', 1e-6, 'cm³'],
      ['plasticZ', 'plastic modulus about z', 1e-6, 'cm³'],
      ['torsion', 'torsion constant', 1e-8, 'cm⁴'],
      ['torsionModulus', 'torsion modulus', 1e-6, 'cm³'],
      ['shearAreaY', 'shear area along y', 1e-4, 'cm²'],
      ['shearAreaZ', 'shear area along z', 1e-4, 'cm²'],
      ['massPerMetre', 'mass per metre', 1, 'kg/m'],
      ['outerPerimeter', 'outer perimeter', 1e-3, 'mm'],
      ['innerArea', 'bore', 1e-4, 'cm²'],
    ] as const
  ).flatMap(([key, name, unit, symbol]) => far(row.id, name, row[key], computed[key], 0.01, against, [unit, symbol]));
  return [...properties, ...sizeFindings(row)];
}

function sizeFindings(row: HollowSection): string[] {
  const unlike = (other: HollowSection): number =>
    (other.shape === row.shape ? 0 : 1) +
    unlikeness([
      [row.height, other.height],
      [row.width, other.width],
      [row.nominalWall, other.nominalWall],
    ]);
  const nearest = standardSections.reduce((a, b) => (unlike(b) < unlike(a) ? b : a));
  const against = `that of ${nearest.id}, the nearest of the catalogue`;
  const radius = hollowSection({ ...sizesOf(row), shape: row.shape });
  const usual = `the usual one of a ${row.process} section of its wall`;
  return [
    far(row.id, 'height', row.height, nearest.height, 0.5, against, mm),
    far(row.id, 'width', row.width, nearest.width, 0.5, against, mm),
    far(row.id, 'wall', row.wall, nearest.wall, 0.5, against, mm),
    far(row.id, 'outer radius', row.outerRadius, radius.outerRadius, 0.5, usual, mm),
  ].flat();
}

const mm = [1e-3, 'mm'] as const;

/** What its radii follow from where they are not given. */
const sizesOf = ({ id, process, height, width, wall, nominalWall, source }: HollowSection) => ({
  id,
  process,
  height,
  width,
  wall,
  nominalWall,
  source,
});
