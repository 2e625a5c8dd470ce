import type { ElementStiffness } from '../../../../core/solve/structure/element-stiffness.ts';
import { shellStiffness, shellUnits } from '../../../../core/solve/elements/shell-stiffness.ts';
import { envelope } from '../../../../core/solve/envelope-cholesky.ts';
import { factorise } from '../../../../core/solve/sparse/factorise.ts';

export interface ShellMaterial {
  readonly thickness: number;
  readonly E: number;
  readonly nu: number;
}

/** A structure small enough to be built by hand in a benchmark: nodes, elements, held freedoms, nodal loads. */
export class BenchStructure {
  readonly xyz: number[] = [];
  readonly elements: ElementStiffness[] = [];
  readonly held = new Map<number, number>();
  readonly load = new Map<number, number>();

  get size(): number {
    return 2 * this.xyz.length;
  }

  node(x: number, y: number, z = 0): number {
    this.xyz.push(x, y, z);
    return this.xyz.length / 3 - 1;
  }

  coordinates(nodes: readonly number[]): Float64Array {
    return Float64Array.from(nodes.flatMap((n) => this.xyz.slice(3 * n, 3 * n + 3)));
  }

  shell(nodes: readonly number[], { thickness, E, nu }: ShellMaterial): void {
    const stiffness = shellStiffness(shellUnits(this.coordinates(nodes), { E, nu }), thickness);
    this.elements.push({ nodes, stiffness });
  }

  /** Freedoms by letter: x y z of displacement, X Y Z of rotation; each held at `value`. */
  hold(node: number, freedoms: string, value = 0): void {
    for (const letter of freedoms) this.held.set(6 * node + 'xyzXYZ'.indexOf(letter), value);
  }

  push(node: number, freedom: string, force: number): void {
    const k = 6 * node + 'xyzXYZ'.indexOf(freedom);
    this.load.set(k, (this.load.get(k) ?? 0) + force);
  }

  /** K u = f with the held freedoms at their values: u (6N). */
  solve(): Float64Array {
    const u = new Float64Array(this.size);
    const f = new Float64Array(this.size);
    for (const [k, value] of this.load) f[k] = value;
    for (const [k, value] of this.held) u[k] = value;
    const reactions = multiplied(this.elements, u);
    const held = Uint8Array.from(u, (_, k) => (this.held.has(k) ? 1 : 0));
    const system = { coordinates: Float64Array.from(this.xyz), elements: this.elements, held };
    const moved = factorise(system).solve(f.map((value, k) => (held[k] ? 0 : value - reactions[k]!)));
    moved.forEach((value, k) => (u[k]! += held[k] ? 0 : value));
    return u;
  }
}

/** Envelope of the free freedoms (numbered by `free`, -1 for held). */
export function assembled(elements: readonly ElementStiffness[], free: Int32Array, count: number) {
  const first = Int32Array.from({ length: count }, (_, i) => i);
  const places = elements.map(({ nodes }) => nodes.flatMap((n) => [0, 1, 2, 3, 4, 5].map((k) => free[6 * n + k]!)));
  for (const place of places) {
    const least = Math.min(...place.filter((p) => p >= 0));
    for (const p of place) if (p >= 0) first[p] = Math.min(first[p]!, least);
  }
  const K = envelope(first);
  elements.forEach(({ stiffness }, e) => {
    const place = places[e]!;
    const n = place.length;
    for (let i = 0; i < n; i++)
      for (let j = 0; j < n; j++) {
        const [r, c] = [place[i]!, place[j]!];
        if (r >= 0 && c >= 0 && c <= r) K.entries[K.start[r]! + c]! += stiffness[i * n + j]!;
      }
  });
  return K;
}

/** K u over all freedoms. */
export function multiplied(elements: readonly ElementStiffness[], u: Float64Array): Float64Array {
  const f = new Float64Array(u.length);
  for (const { nodes, stiffness } of elements) {
    const n = 6 * nodes.length;
    for (let i = 0; i < n; i++) {
      let sum = 0;
      for (let j = 0; j < n; j++) sum += stiffness[i * n + j]! * u[6 * nodes[Math.floor(j / 6)]! + (j % 6)]!;
      f[6 * nodes[Math.floor(i / 6)]! + (i % 6)]! += sum;
    }
  }
  return f;
}

/** Nodes and quadrilaterals of a map of the unit square, n × m elements; at(i, j) is a node's number. */
export function shellGrid(
  structure: BenchStructure,
  n: number,
  m: number,
  map: (s: number, t: number) => readonly [number, number, number],
  material: ShellMaterial,
  triangles = false,
) {
  const base = structure.xyz.length / 3;
  const at = (i: number, j: number): number => base + i * (m + 1) + j;
  for (let i = 0; i <= n; i++) for (let j = 0; j <= m; j++) structure.node(...map(i / n, j / m));
  const quads: number[][] = [];
  for (let i = 0; i < n; i++)
    for (let j = 0; j < m; j++) {
      const [a, b, c, d] = [at(i, j), at(i + 1, j), at(i + 1, j + 1), at(i, j + 1)];
      quads.push([a, b, c, d]);
      if (!triangles) structure.shell([a, b, c, d], material);
      else if ((i + j) % 2)
        for (const three of [
          [a, b, c],
          [a, c, d],
        ])
          structure.shell(three, material);
      else
        for (const three of [
          [a, b, d],
          [b, c, d],
        ])
          structure.shell(three, material);
    }
  return { at, quads };
}
