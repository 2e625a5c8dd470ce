import { beam, type Beam } from '../elements/beam.ts';
import type { ElementStiffness } from './element-stiffness.ts';
import { nano } from './per-shell.ts';
import { shellElements } from './shell-elements.ts';
import type { BeamPart, Structure } from './structure.ts';
import { jointElement, tieElement } from './tie.ts';

/** The structure's parts as elements, without contact: beams, shells, ties and joints, in that order. Equal parts share a matrix. */
export interface PartElements {
  readonly beams: readonly Beam[];
  readonly elements: readonly ElementStiffness[];
}

export function partElements(structure: Structure): PartElements {
  const beams = beamsOf(structure);
  const shells = shellElements(structure);
  return {
    beams,
    elements: [
      ...structure.beams.map(({ nodes }, i): ElementStiffness => ({ nodes, stiffness: beams[i]!.stiffness })),
      ...structure.shells.map(({ nodes }, i): ElementStiffness => ({ nodes, stiffness: shells[i]!.stiffness })),
      ...structure.ties.map(tieElement),
      ...(structure.joints ?? []).map(jointElement),
    ],
  };
}

/** Equal lengths of one section with equal offsets are one beam: nanometres tell them apart. */
function beamsOf({ coordinates, beams }: Structure): Beam[] {
  const known = new Map<string, Beam>();
  const sections = new Map<BeamPart['section'], number>();
  return beams.map(({ nodes, offsets, section, from, to }) => {
    if (!sections.has(section)) sections.set(section, sections.size);
    const [a, b] = nodes.map((n) => coordinates.subarray(3 * n, 3 * n + 3)) as [Float64Array, Float64Array];
    const key = [sections.get(section), nano(to - from), ...[0, 1, 2].map((k) => nano(b[k]! - a[k]!)), ...offsets.flat().map(nano)].join(' '); // prettier-ignore
    const found = known.get(key);
    if (found) return found;
    const made = beam({
      xyz: Float64Array.from([...a, ...b]),
      section,
      E: section.E,
      G: section.G,
      orientation: [0, 0, 1],
      start: { offset: offsets[0] },
      end: { offset: offsets[1] },
    });
    known.set(key, made);
    return made;
  });
}
