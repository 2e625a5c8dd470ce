import type { Geometry, Tube } from '../geometry/geometry.ts';
import { barInertia, type Body, type Vector } from './body.ts';

/** Steel of the tubes, piece by piece: ordered section's area × length. Pieces of a cross tube let in end at the main tubes' faces. */
export function tubeBodies({ mainTubes, crossTubes }: Geometry): Body[] {
  return [...mainTubes, ...crossTubes].flatMap((tube) =>
    tube.pieces.map(([from, to]) => {
      const { section, material, set } = tube;
      const L = to - from;
      const volume = section.nominalArea * L;
      const mass = material.density * volume;
      // The section inertia of the design wall, per area, stands for that of the ordered wall: they differ by 1 % at most.
      const inertia = barInertia(
        set === 'main' ? 'x' : 'y',
        mass,
        L,
        section.inertiaY / section.area,
        section.inertiaZ / section.area,
      );
      return {
        name: tubePartName(tube),
        kind: 'tubes' as const,
        mass,
        volume,
        centre: pieceCentre(tube, from, to),
        inertia,
      };
    }),
  );
}

/** Line of the report that a tube belongs to. */
export const tubePartName = ({ set, section }: Tube): string =>
  `${set === 'main' ? 'Main' : 'Cross'} tubes, ${section.id}`;

/** Centre of a piece of a tube. m */
export function pieceCentre({ set, at, bottom, top }: Tube, from: number, to: number): Vector {
  const [along, z] = [(from + to) / 2, (bottom + top) / 2];
  return set === 'main' ? [along, at, z] : [at, along, z];
}

/** Hollow of one piece of a tube, m³. Ends are taken as closed flush, cap plates without thickness. */
export interface Bore {
  readonly tube: Tube;
  readonly volume: number;
  readonly centre: Vector;
}

/** Bores of all pieces. */
export const boresOf = ({ mainTubes, crossTubes }: Geometry): Bore[] =>
  [...mainTubes, ...crossTubes].flatMap((tube) =>
    tube.pieces.map(([from, to]) => ({
      tube,
      volume: tube.section.innerArea * (to - from),
      centre: pieceCentre(tube, from, to),
    })),
  );
