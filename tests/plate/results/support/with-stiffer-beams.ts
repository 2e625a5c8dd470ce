import type { BeamSection, Structure } from '../../../../core/solve/structure/structure.ts';

/** The same structure with the beams of some of its tubes stiffer by a factor. Equal sections stay one object. */
export function withStifferBeams(
  structure: Structure,
  factor: number,
  of: (set: 'main' | 'cross') => boolean = () => true,
): Structure {
  const made = new Map<BeamSection, BeamSection>();
  const beams = structure.beams.map((beam) => {
    if (!of(structure.tubes[beam.tube]!.set)) return beam;
    const { section } = beam;
    const stiffer = made.get(section) ?? { ...section, E: factor * section.E, G: factor * section.G };
    made.set(section, stiffer);
    return { ...beam, section: stiffer };
  });
  return { ...structure, beams };
}
