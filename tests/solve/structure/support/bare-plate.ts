import { partElements } from '../../../../core/solve/structure/part-elements.ts';
import { factorise } from '../../../../core/solve/sparse/factorise.ts';
import type { ElementStiffness } from '../../../../core/solve/structure/element-stiffness.ts';
import type { ShellPart, Structure } from '../../../../core/solve/structure/structure.ts';

export interface BarePlate {
  readonly structure: Structure;
  readonly elements: readonly ElementStiffness[];
  readonly beams: readonly never[];
  /** Node of lattice lines i, j. */
  readonly at: (i: number, j: number) => number;
  readonly n: number;
  readonly m: number;
}

/** One panel a × b of n × m equal cells, mid-plane at z = 0, and nothing else. */
export function barePlate(
  { a, b, n, m }: { readonly a: number; readonly b: number; readonly n: number; readonly m: number },
  { thickness, E, nu }: { readonly thickness: number; readonly E: number; readonly nu: number },
): BarePlate {
  const at = (i: number, j: number): number => j * (n + 1) + i;
  const xs = Float64Array.from({ length: n + 1 }, (_, i) => (a * i) / n);
  const ys = Float64Array.from({ length: m + 1 }, (_, j) => (b * j) / m);
  const shells: ShellPart[] = [];
  for (let j = 0; j < m; j++)
    for (let i = 0; i < n; i++)
      shells.push({
        panel: 0,
        nodes: [at(i, j), at(i + 1, j), at(i + 1, j + 1), at(i, j + 1)],
        thickness,
        E,
        nu,
        a: a / n,
        b: b / m,
        field: 0,
      });
  const nodes = Int32Array.from({ length: (n + 1) * (m + 1) }, (_, k) => k);
  const structure: Structure = {
    coordinates: Float64Array.from([...nodes].flatMap((k) => [xs[k % (n + 1)]!, ys[Math.floor(k / (n + 1))]!, 0])),
    beams: [],
    shells,
    ties: [],
    contacts: [],
    panels: [{ id: 'P', z: 0, xs, ys, nodes, shells: [0, shells.length], ties: [0, 0], contacts: [0, 0] }],
    tubes: [],
  };
  return { structure, elements: partElements(structure).elements, beams: [], at, n, m };
}

/** 1 at the held freedoms: letters x y z of displacement, X Y Z of rotation. */
export function heldAt(nodes: number, list: readonly (readonly [node: number, letters: string])[]): Uint8Array {
  const held = new Uint8Array(6 * nodes);
  for (const [node, letters] of list) for (const letter of letters) held[6 * node + 'xyzXYZ'.indexOf(letter)] = 1;
  return held;
}

/** Nodes of the four edges: x = 0, x = a, y = 0, y = b. */
export const edgesOf = ({ at, n, m }: BarePlate): readonly [number[], number[], number[], number[]] => [
  Array.from({ length: m + 1 }, (_, j) => at(0, j)),
  Array.from({ length: m + 1 }, (_, j) => at(n, j)),
  Array.from({ length: n + 1 }, (_, i) => at(i, 0)),
  Array.from({ length: n + 1 }, (_, i) => at(i, m)),
];

/** Displacements under nodal loads f with the held freedoms. */
export const solvedWith = ({ structure, elements }: BarePlate, held: Uint8Array, f: Float64Array): Float64Array =>
  factorise({ coordinates: structure.coordinates, elements, held }).solve(f);
