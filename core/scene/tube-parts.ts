import type { HollowSection } from '../catalogue/rows.ts';
import type { Geometry, Tube } from '../geometry/geometry.ts';
import type { PartDraft } from './part-draft.ts';
import { prism, type Frame, type Section } from './prism.ts';
import { asHole, circle, roundedRectangle, type Ring } from './ring.ts';

/**
 * Tubes with the wall and corner radii as ordered, piece by piece, ends open: what `tubeBodies` weighs.
 * Bolt, vent and drain holes are not cut from the walls, nor is the saddle of a tube that ends on a round one.
 */
export const tubeParts = ({ mainTubes, crossTubes }: Pick<Geometry, 'mainTubes' | 'crossTubes'>): PartDraft[] =>
  [...mainTubes, ...crossTubes].map((tube) => ({
    kind: 'tube',
    place: tube.id,
    title: `${tube.set === 'main' ? 'Main' : 'Cross'} tube ${tube.id}, ${tube.section.id}`,
    bays: [],
    lift: 0,
    build: (into) => {
      const [section, frame] = [sectionOf(tube), frameOf(tube)];
      for (const piece of tube.pieces) prism(into, section, frame, piece);
    },
  }));

/** Corner radii grow with the wall as ordered, as the section's `nominalArea` takes them. */
const orderedRadii = ({ nominalWall, wall, outerRadius, innerRadius }: HollowSection): readonly [number, number] => [
  (outerRadius * nominalWall) / wall,
  (innerRadius * nominalWall) / wall,
];

function sectionOf({ set, section }: Tube): Section {
  const { height: H, width: B, nominalWall: t, shape } = section;
  if (shape === 'round') return { outer: circle(0, 0, H / 2), holes: [asHole(circle(0, 0, H / 2 - t))] };
  const [r_o, r_i] = orderedRadii(section);
  // The height stands along v of a main tube's frame and along u of a cross tube's.
  const ring = (less: number, r: number): Ring =>
    set === 'main' ? roundedRectangle(B - less, H - less, r) : roundedRectangle(H - less, B - less, r);
  return { outer: ring(0, r_o), holes: [asHole(ring(2 * t, r_i))] };
}

const frameOf = ({ set, at, bottom, top }: Tube): Frame =>
  set === 'main'
    ? { origin: [0, at, (bottom + top) / 2], u: [0, 1, 0], v: [0, 0, 1] }
    : { origin: [at, 0, (bottom + top) / 2], u: [0, 0, 1], v: [1, 0, 0] };
