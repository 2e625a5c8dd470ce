import { shellForces, shellRecovery } from '../../../../core/solve/elements/shell-recovery.ts';
import { BenchStructure, shellGrid } from './bench-structure.ts';
import type { ShellMaterial } from './bench-structure.ts';

/** A thin plate a = 1 by b with D = 1 and nu given, so that w is in q a⁴/D and M in q a². Either the quarter from its middle
 *  (node 0, 0) to its corner (n, n), with the mirror planes held, or the whole from corner to corner. */
export class PlateUnderTest extends BenchStructure {
  readonly n: number;
  readonly at: (i: number, j: number) => number;
  readonly material: ShellMaterial;
  private readonly quads: number[][];

  constructor(n: number, { b = 1, nu = 0.3, whole = false, triangles = false } = {}) {
    super();
    this.n = n;
    const thickness = 0.01;
    this.material = { thickness, E: (12 * (1 - nu * nu)) / thickness ** 3, nu };
    const part = whole ? 1 : 0.5;
    const grid = shellGrid(this, n, n, (s, t) => [part * s, part * b * t, 0], this.material, triangles);
    this.at = grid.at;
    this.quads = grid.quads;
    for (let k = 0; k < this.xyz.length / 3; k++) this.hold(k, 'xyZ');
    if (!whole)
      for (let i = 0; i <= n; i++) {
        this.hold(this.at(i, 0), 'X');
        this.hold(this.at(0, i), 'Y');
      }
  }

  /** Pressure q = 1 along +z. */
  pressure(): this {
    for (const quad of this.quads) {
      const [a, , c] = quad.map((k) => this.xyz.slice(3 * k, 3 * k + 2)) as [number[], number[], number[], number[]];
      const share = ((c[0]! - a[0]!) * (c[1]! - a[1]!)) / 4;
      for (const k of quad) this.push(k, 'z', share);
    }
    return this;
  }

  moments(u: Float64Array, node: number): [number, number, number] {
    return momentsAt(this, this.material, u, node);
  }
}

/** Mx My Mxy at a node: mean over the shells that meet there. */
export function momentsAt(
  structure: BenchStructure,
  material: ShellMaterial,
  u: Float64Array,
  node: number,
): [number, number, number] {
  const sum: [number, number, number] = [0, 0, 0];
  let count = 0;
  for (const { nodes } of structure.elements) {
    const corner = nodes.indexOf(node);
    if (corner === -1 || nodes.length < 3) continue;
    const recovery = shellRecovery(structure.coordinates(nodes), material);
    const own = Float64Array.from(nodes.flatMap((k) => [...u.subarray(6 * k, 6 * k + 6)]));
    const forces = shellForces(recovery, material.thickness, own);
    for (let k = 0; k < 3; k++) sum[k]! += forces[6 * (corner + 1) + 3 + k]!;
    count++;
  }
  return sum.map((value) => value / count) as [number, number, number];
}
