import { innerPerimeter } from '../catalogue/inner-perimeter.ts';
import type { Durability } from '../document/durability-field.ts';
import type { Model } from '../model.ts';

/** Metal that draws current from the anodes, m²: coated, and bare. */
export interface ProtectedArea {
  readonly coated: number;
  readonly bare: number;
  /** Each part of it, for the list. */
  readonly parts: readonly { readonly name: string; readonly area: number; readonly bare: boolean }[];
  /** Metal that gets no protection, because it is isolated. */
  readonly isolated: readonly string[];
}

const metals = new Set(['carbon steel', 'stainless steel', 'aluminium']);

/**
 * Areas of all metal that is joined to the anodes: the outside of tubes, both faces and cut edges of panels, heads, nuts
 * and washers of bolts; bores only where the document calls them open. What panels cover of the tubes is not taken
 * off: the seam draws current too. Bolts as a washer's face and the sides of head and nut, both ends; bare, since tools
 * take their coating.
 */
export function protectedArea(
  { geometry, catalogue }: Pick<Model, 'geometry' | 'catalogue'>,
  given: Durability,
): ProtectedArea {
  const { mainTubes, crossTubes, panels } = geometry;
  const coats = given.coating !== 'none';
  const tubes = [...mainTubes, ...crossTubes];
  const lengthOf = ({ pieces }: (typeof tubes)[number]) => pieces.reduce((sum, [from, to]) => sum + to - from, 0);
  const outside = tubes.reduce((sum, tube) => sum + tube.section.outerPerimeter * lengthOf(tube), 0);
  const bores = tubes
    .filter(({ flooded }) => flooded)
    .reduce((sum, tube) => sum + innerPerimeter(tube.section) * lengthOf(tube), 0);
  const joinedOf = (id: string) => given.panelsApart[id] ?? given.panels;
  const inMetal = panels.filter(({ material }) => metals.has(material.family));
  const bonded = inMetal.filter(({ id }) => joinedOf(id) === 'bonded');
  const faces = bonded.reduce((sum, { area, cutLength, thickness }) => sum + 2 * area + cutLength * thickness, 0);
  const bolts = panels.reduce((sum, { design: { fixing }, bolts: own }) => {
    if (fixing.kind !== 'bolted') return sum;
    const { washerOuter: d, headAcrossFlats: s, headHeight, nutHeight } = catalogue.bolt(fixing.bolt);
    return sum + own.length * ((Math.PI / 2) * d ** 2 + 2 * Math.sqrt(3) * s * (headHeight + nutHeight));
  }, 0);
  const parts = [
    { name: 'Tubes, outside', area: outside, bare: !coats },
    ...(given.bores === 'open' ? [{ name: 'Bores of flooded tubes', area: bores, bare: true }] : []),
    { name: 'Panels, both faces and edges', area: faces, bare: !coats },
    ...(given.fasteners === 'bonded' ? [{ name: 'Bolts, heads, nuts and washers', area: bolts, bare: true }] : []),
  ].filter(({ area }) => area > 0);
  const sum = (bare: boolean) => parts.reduce((all, part) => (part.bare === bare ? all + part.area : all), 0);
  return {
    coated: sum(false),
    bare: sum(true),
    parts,
    isolated: [
      ...inMetal.filter(({ id }) => joinedOf(id) === 'isolated').map(({ id }) => `panel ${id}`),
      ...(given.fasteners === 'isolated' && bolts > 0 ? ['bolts'] : []),
    ],
  };
}
