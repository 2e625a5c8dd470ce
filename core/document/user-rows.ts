import type { UserRows } from '../catalogue/catalogue.ts';
import { comparedWithNearest } from '../catalogue/compared-with-nearest.ts';
import { hollowSection } from '../catalogue/hollow-section.ts';
import type { HollowSection, Material } from '../catalogue/rows.ts';
import type { Finding } from '../finding.ts';
import { refusal } from '../refusal.ts';
import type { PlateDocument } from './schema.ts';

/**
 * The document's own catalogue rows in the catalogue's shape. A row with no source keeps none.
 * Refuses a metal whose yield strength is not below its ultimate strength, and any material whose yield is above it.
 */
export function userRows({ catalogue }: PlateDocument): Required<Pick<UserRows, 'material' | 'section'>> {
  return { material: catalogue.materials.map(materialRow), section: catalogue.sections.map(sectionRow) };
}

/** A row without a source, or one that lies far from the catalogue's nearest. */
export function userRowFindings(document: PlateDocument): readonly Finding[] {
  const { material, section } = userRows(document);
  const unsourced = [...material, ...section].filter((row) => row.source === null);
  return [
    ...unsourced.map((row) => ({
      id: 'row-without-source',
      place: row.id,
      text: `The catalogue row “${row.id}” of this document has no source`,
      mend: 'Give the certificate, standard or maker it comes from.',
    })),
    ...[...material.map((row) => ({ kind: 'material', row }) as const), ...section.map((row) => ({ kind: 'section', row }) as const)].flatMap((own) =>
      comparedWithNearest(own).map((text) => ({ id: 'row-far-from-catalogue', place: own.row.id, text, mend: 'Check the value and its unit against its source.' })),
    ),
  ];
}

function materialRow(row: PlateDocument['catalogue']['materials'][number], index: number): Material {
  const metal = row.family !== 'thermoplastic' && row.family !== 'laminate';
  const upTo = row.upToThickness.si;
  const [yields, breaks] = [row.yieldStrength, row.ultimateStrength];
  if (metal ? yields.si >= breaks.si : yields.si > breaks.si)
    throw refusal({
      what: `Material “${row.id}” yields at ${yields.typed}, ${metal ? 'not below' : 'above'} the ${breaks.typed} at which it breaks`,
      where: { path: `catalogue.materials.${index}.yieldStrength` },
      mend: 'Check both strengths and their units against the source: the ultimate strength is the larger.',
    });
  return {
    id: row.id,
    title: row.title,
    source: row.source,
    family: row.family,
    density: row.density.si,
    youngModulus: row.youngModulus.si,
    poisson: row.poisson,
    yieldStrength: [{ upTo, value: row.yieldStrength.si }],
    ultimateStrength: [{ upTo, value: row.ultimateStrength.si }],
    correlationFactor: row.correlationFactor ?? null,
    ...(metal ? {} : { longTermModulus: null }),
    forms: ['plate', 'hollow section'],
    judged: row.family === 'aluminium' ? 'bending only' : metal ? 'full' : 'no published rule',
    cautions: [],
  };
}

function sectionRow(row: PlateDocument['catalogue']['sections'][number]): HollowSection {
  return hollowSection({
    id: row.id,
    title: row.title,
    shape: row.height.si === row.width.si ? 'square' : 'rectangular',
    process: row.process,
    height: row.height.si,
    width: row.width.si,
    wall: row.wall.si,
    outerRadius: row.outerRadius.si,
    innerRadius: row.innerRadius.si,
    source: row.source,
  });
}
