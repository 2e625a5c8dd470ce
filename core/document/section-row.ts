import { hollowSection } from '../catalogue/hollow-section.ts';
import type { HollowSection } from '../catalogue/rows.ts';
import type { SectionFields } from './user-catalogue.ts';

/** A section of the document with its properties computed, SI. Refuses sizes that make no hollow section. */
export function sectionRow(row: SectionFields): HollowSection {
  const { height, width, wall, nominalWall, outerRadius, innerRadius } = row;
  return hollowSection({
    id: row.id,
    title: row.title,
    shape: row.shape ?? (height.si === width.si ? 'square' : 'rectangular'),
    process: row.process,
    height: height.si,
    width: width.si,
    wall: wall.si,
    ...(nominalWall && { nominalWall: nominalWall.si }),
    ...(outerRadius && { outerRadius: outerRadius.si }),
    ...(innerRadius && { innerRadius: innerRadius.si }),
    source: row.source,
  });
}
