import { lumpedMasses, type PointMass } from '../../../../core/solve/structure/lumped-mass.ts';
import { partElements } from '../../../../core/solve/structure/part-elements.ts';
import {
  noOffset,
  type BeamPart,
  type BeamSection,
  type Structure,
  type TubeMesh,
} from '../../../../core/solve/structure/structure.ts';
import type { ElementStiffness } from '../../../../core/solve/structure/element-stiffness.ts';

export interface BareGrid {
  readonly structure: Structure;
  readonly elements: readonly ElementStiffness[];
  readonly masses: readonly PointMass[];
  /** Node of crossing (i, j). */
  readonly at: (i: number, j: number) => number;
}

/** SHS 100 × 100 × 5, stiff in shear unless told: E, G, A, I and J in SI, mass of the steel 14.704 kg/m. */
export const shs100x5: BeamSection = {
  E: 210e9,
  G: 80.769231e9,
  A: 18.732e-4,
  Iy: 279.43e-8,
  Iz: 279.43e-8,
  J: 439.41e-8,
  Ay: Infinity,
  Az: Infinity,
};
export const shs100x5Mass = 14.704;

/** A grid of tubes in one plane, all their axes level: main tubes along x at each of `ys`, cross tubes along y at each of
 *  `xs`, none where there is one line only; each length between crossings in `parts` beams. */
export function bareGrid(
  xs: readonly number[],
  ys: readonly number[],
  {
    parts,
    section = shs100x5,
    massPerLength = shs100x5Mass,
  }: { parts: number; section?: BeamSection; massPerLength?: number },
): BareGrid {
  const xyz: number[] = [];
  const node = (x: number, y: number): number => xyz.push(x, y, 0) / 3 - 1;
  const crossings = ys.map((y) => xs.map((x) => node(x, y)));
  const beams: BeamPart[] = [];
  const tubes: TubeMesh[] = [];
  const lay = (set: 'main' | 'cross', line: readonly number[], own: readonly number[], across: number): void => {
    if (line.length < 2) return;
    const stations = [line[0]!];
    const nodes = [own[0]!];
    const first = beams.length;
    for (let k = 1; k < line.length; k++)
      for (let p = 1; p <= parts; p++) {
        const place = line[k - 1]! + (p / parts) * (line[k]! - line[k - 1]!);
        const next = p === parts ? own[k]! : set === 'main' ? node(place, across) : node(across, place);
        beams.push({ tube: tubes.length, nodes: [nodes.at(-1)!, next], offsets: [noOffset, noOffset], from: stations.at(-1)!, to: place, section }); // prettier-ignore
        stations.push(place);
        nodes.push(next);
      }
    tubes.push({
      id: `${set} ${tubes.length}`,
      set,
      stations: Float64Array.from(stations),
      nodes: Int32Array.from(nodes),
      offsets: nodes.map(() => noOffset),
      beams: [first, beams.length],
    });
  };
  ys.forEach((y, j) => lay('main', xs, crossings[j]!, y));
  xs.forEach((x, i) => lay('cross', ys, crossings.map((row) => row[i]!), x)); // prettier-ignore
  const structure: Structure = {
    coordinates: Float64Array.from(xyz),
    beams,
    shells: [],
    ties: [],
    contacts: [],
    panels: [],
    tubes,
  };
  return {
    structure,
    elements: partElements(structure).elements,
    masses: lumpedMasses(structure, tubes.map(() => massPerLength), []), // prettier-ignore
    at: (i, j) => crossings[j]![i]!,
  };
}
